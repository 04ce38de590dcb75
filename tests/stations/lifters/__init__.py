"""Calculators of the lifters, asked with texts as those of the heads are."""
