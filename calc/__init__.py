"""The calculators of the handbook: pure Python, standard library only."""
