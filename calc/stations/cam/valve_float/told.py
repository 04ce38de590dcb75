"""What is told of a valve that may leave its lobe."""

from calc.declare.calculator import Output, Outputs
from calc.stations.cam.valve_float.asked import GRAMS
from calc.stations.shared.forms import COARSE, NEWTON, TIMES, TURNS


class Out(Outputs):
    speed = Output("Follower leaves its lobe at", "n_f", TURNS, main=True)
    margin = Output("Margin over the highest speed", "k", TIMES, main=True)
    mass = Output("All that moves, as felt at the valve", "m", GRAMS)
    lift = Output("It leaves at a lift of", "L_f", COARSE)
    spring = Output("Spring's force there", "F", NEWTON)
    inertia = Output("Inertia there at the highest speed", "F_i", NEWTON)
    load_wanted = Output("Spring load at full lift that gives the margin", "F_w", NEWTON)
