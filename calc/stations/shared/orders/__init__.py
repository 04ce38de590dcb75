"""What is ordered by size.

A size is named only where the readings say it. Where their doubt straddles two sizes, or none fits, the row
says so instead.
"""
