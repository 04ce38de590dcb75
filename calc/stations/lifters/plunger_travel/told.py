"""What is told of a plunger in its travel."""

from calc.declare.calculator import Output, Outputs
from calc.stations.shared.forms import COARSE


class Out(Outputs):
    top = Output("Left to the upper stop, at worst", "u_min", COARSE, main=True)
    bottom = Output("Left to the lower stop, at worst", "l_min", COARSE, main=True)
    pushrod_wanted = Output("Pushrod to fit", "L_w", COARSE, main=True)
    longer = Output("Longer than the one fitted by", "ΔL", COARSE)
    shim = Output("Shims under the rocker stand that do the same", "t_s", COARSE)
    change = Output("Pressed in more when running, by", "Δ_run", COARSE)
    running = Output("Pressed in, running", "p_run", COARSE)
    warming = Output("Pressed in, warming up", "p_warm", COARSE)
    left_cold = Output("Travel left below, cold", "l_cold", COARSE)
    left_running = Output("Travel left below, running", "l_run", COARSE)
    preload_least = Output("Pressed in cold, least that serves", "p_low", COARSE)
    preload_most = Output("Pressed in cold, most that serves", "p_high", COARSE)
