"""Calculators of connecting rods, asked as a reader asks them: with texts."""

from tests.stations.heads import asked

__all__ = ["asked"]
