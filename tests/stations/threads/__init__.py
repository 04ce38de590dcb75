"""Calculators of threads, asked as a reader asks them: with texts."""

from tests.stations.measuring import asked

__all__ = ["asked"]
