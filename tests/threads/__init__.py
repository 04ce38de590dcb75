"""Calculators of threads, asked as a reader asks them: with texts."""
from tests.measuring import asked

__all__ = ["asked"]
