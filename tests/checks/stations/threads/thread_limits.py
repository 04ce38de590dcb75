"""Outside limits of threads, asked of the calculator."""
from tests.checks import Check, asked

TABLE = "ISO 965-2 / ASME B1.13M, table of limits of size, from memory"
UN = "screw_thread_lib 0.0.6 (PyPI), sizes of ASME B1.1-2019"

CHECKS = [
    Check("thread-limits", "M14×1.5 6g pitch diameter, least, mm", {"size": "M14x1.5"}, 12.854, 5e-5, asked("thread-limits", "pitch_low", "mm"), TABLE, "standard"),
    Check("thread-limits", "M10×1.25 6H bore, most, mm", {"size": "M10x1.25", "part": "hole"}, 8.912, 5e-5, asked("thread-limits", "crest_high", "mm"), TABLE, "standard"),
    Check("thread-limits", "M8×1.25 6h outside, most, mm", {"fit": "bare"}, 8.0, 5e-5, asked("thread-limits", "crest_high", "mm"), TABLE, "standard"),
    Check("thread-limits", "½-20 2B pitch diameter, most, in", {"size": "1/2-20", "part": "hole"}, 0.4731, 5e-6, asked("thread-limits", "pitch_high", "in"), UN, "library"),
    Check("thread-limits", "¼-28 2A outside, least, in", {"size": "1/4-28"}, 0.2425, 5e-6, asked("thread-limits", "crest_low", "in"), UN, "library"),
    Check("thread-limits", "play of M8×1.25 6H/6g, tightest, mm", {}, 0.028, 1e-9, asked("thread-limits", "tightest", "mm"), "ISO 965-1, deviation of g at a pitch of 1.25 mm, from memory", "standard"),
]
