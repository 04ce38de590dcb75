"""Cylinders and pistons. Checks and orders; no calculators yet."""
