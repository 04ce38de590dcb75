"""What the growth of the valve train does to a plunger."""


def pressed_in(rods, tip, ratio, stand):
    """What the plunger is pressed in more, m: growth of cam, lifter and pushrod, and of the tip over the shaft through the rocker, less that of what
    carries the shaft. `tip` is how far the stem's tip rises over the rocker shaft, `ratio` the rocker's valve side over its other.
    """
    return rods + tip / ratio - stand


def shim_for(shorter, ratio):
    """Shims under the rocker stand that do what a pushrod shorter by that much does: the shaft goes up and the rocker turns about the stem's tip."""
    return shorter / (1 + 1 / ratio)
