"""Crankcase: crank, camshaft and case. Checks and orders; no calculators yet."""
