"""What is told of a flywheel that is made lighter."""

from calc.declare.calculator import Output, Outputs
from calc.stations.flywheel.lighten.asked import GRAMS, TURNED
from calc.stations.shared.forms import COARSE, FINE_SHARE


class Out(Outputs):
    mass_left = Output("It weighs then", "m_2", GRAMS, main=True)
    inertia_left = Output("Moment of inertia then", "J_2", TURNED, main=True)
    mass_off = Output("Taken off", "Δm", GRAMS)
    inertia_off = Output("Moment of inertia taken off", "ΔJ", TURNED)
    mass_share = Output("Share of its mass that goes", "q_m", FINE_SHARE)
    inertia_share = Output("Share of its moment of inertia that goes", "q_J", FINE_SHARE)
    inertia_before = Output("Moment of inertia now", "J_1", TURNED)
    face_left = Output("Left behind the friction face", "t_F", COARSE, main=True)
    root_left = Output("Left at the root", "t_R", COARSE)
    rim_left = Output("Left outside the friction face", "t_S", COARSE)
    section_mass = Output("Mass by the section that was typed", "m_s", GRAMS)
    depth_wanted = Output("First cut on the engine's side, if it is flat", "a_w", COARSE)
