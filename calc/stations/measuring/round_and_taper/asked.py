"""What is asked of a bore or a journal along and round it."""

from calc.core.working import Number
from calc.declare.calculator import Inputs, Rows, choice, column, given, grid, measured
from calc.stations.shared.forms import ROUGH, SIZE

DIRECTIONS = ("A", "B", "C", "D")
SIZES = "0.5 to 2000 mm"
JOURNAL, BORE = "journal", "bore"
WHOLE, PER_100 = "whole", "per-100"


class In(Inputs):
    diameters: Rows = grid(
        "Diameters at stations",
        rows=tuple(map(str, range(1, 6))),
        columns=tuple(
            column(f"Across {d}", f"d_{d}", SIZE, hard=SIZES, optional=i > 1)
            for i, d in enumerate(DIRECTIONS)
        ),
        least=2,
        tool="a micrometer or a bore gauge",
        hint=(
            "Stations from one end to the other, clear of fillets and edges; A and B square to each other. C"
            " and D, and whole stations, may stay empty."
        ),
        example="51.994; 51.990 | 51.993; 51.990 | 51.992; 51.989",
    )
    what: str = choice(
        "Kind of part", {JOURNAL: "A journal, measured outside", BORE: "A bore"}, must=True, example=JOURNAL
    )
    low: Number | None = given(
        "Lower limit", "L", SIZE, hard=SIZES, hint="Of a part as made or re-machined.", example="51.985 mm"
    )
    high: Number | None = given("Upper limit", "H", SIZE, hard=SIZES, example="52.000 mm")
    worn: Number | None = given(
        "Wear limit",
        "d_w",
        SIZE,
        hard=SIZES,
        hint="A journal may not be smaller anywhere, a bore not larger.",
    )
    round_limit: Number | None = given(
        "Out of round, at most",
        "Δ_r,max",
        SIZE,
        hard="0 to 5 mm",
        hint="Difference of diameters, not of radii.",
        example="0.008 mm",
    )
    taper_limit: Number | None = given(
        "Taper, at most", "Δ_t,max", SIZE, hard="0 to 5 mm", example="0.008 mm"
    )
    taper_over: str = choice(
        "Taper limit is",
        {WHOLE: "over all the stations", PER_100: "for each 100 mm along the part"},
        hint="As the maker writes it.",
        default=WHOLE,
    )
    length: Number = measured(
        "From the first station to the last",
        "l",
        ROUGH,
        tool="a rule",
        hard="1 to 2000 mm",
        usual="5 to 400 mm",
        when=("taper_over", PER_100),
        hint="Counts where the taper is told for a length.",
        example="20 mm",
    )
