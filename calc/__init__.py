"""Sizes of re-machined engine parts, checked: pure Python, the same at build, in a terminal and in the
browser."""

__version__ = "0.4.0"
