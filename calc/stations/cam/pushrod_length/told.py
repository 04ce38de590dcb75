"""What is told of pushrods that are to be ordered, or kept."""

from calc.declare.calculator import Output, Outputs
from calc.stations.shared.forms import COARSE


class Out(Outputs):
    length = Output("Pushrod to fit", "L_w", COARSE, main=True)
    off = Output("With the one at hand the adjuster stands off its middle by", "d", COARSE, main=True)
    longer = Output("To fit, longer than the one at hand by", "ΔL", COARSE, main=True)
    apart = Output("With the one to fit, off its middle by at most", "d_w", COARSE)
    run = Output("Contact runs across the tip by, at most", "c", COARSE, feature="rocker.contact_run")
    up = Output("Shaft higher for square at half lift, by", "t", COARSE)
    with_shims = Output("Pushrod to fit once the shaft stands so", "L_t", COARSE)
