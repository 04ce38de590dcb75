"""Connecting rods: both ends made round and to size again, straight, equal in weight, and their bolts."""

TITLE = "Rods"
PURPOSE = "Big ends resized, small ends bushed, rods straight and alike, bolts."
CALCULATORS = ("rod-align", "rod-bolt", "big-end-resize", "small-end-bush", "rod-weights")
RODS = ("1", "2", "3", "4")  # as readings of a set are listed
