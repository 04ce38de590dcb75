"""Calculators of connecting rods, asked as a reader asks them: with texts."""
from tests.heads import asked

__all__ = ["asked"]
