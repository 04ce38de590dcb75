"""Units: every unit that pint knows too, round trips, and what is said about an entry with two meanings."""

import pint
import pytest
from hypothesis import given
from hypothesis import strategies as st

from calc.core.kinds import KINDS
from calc.core.result import Refused
from calc.core.writing import from_unit
from calc.declare.calculator import evaluate
from calc.stations.measuring.units import TOLD, units

ureg = pint.UnitRegistry()
ureg.formatter.default_format = ""
PINT = {  # ours: pint's
    "length": {
        "mm": "mm",
        "in": "inch",
        "µm": "um",
        "cm": "cm",
        "m": "m",
        "km": "km",
        "thou": "thou",
        "ft": "foot",
    },
    "pressure": {
        "kPa": "kPa",
        "psi": "psi",
        "Pa": "Pa",
        "bar": "bar",
        "mbar": "mbar",
        "MPa": "MPa",
        "atm": "atm",
        "Torr": "torr",
        "ksi": "ksi",
        "kgf/cm²": "kgf/cm**2",
    },
    "torque": {"N·m": "N*m", "lbf·ft": "lbf*foot", "lbf·in": "lbf*inch", "kgf·m": "kgf*m", "N·cm": "N*cm"},
    "force": {"N": "N", "lbf": "lbf", "kN": "kN", "kgf": "kgf"},
    "mass": {"g": "g", "oz": "oz", "kg": "kg", "lb": "lb", "mg": "mg"},
    "volume": {
        "cm³": "cm**3",
        "in³": "inch**3",
        "L": "liter",
        "m³": "m**3",
        "US gal": "gallon",
        "imp gal": "imperial_gallon",
        "ft³": "foot**3",
    },
    "area": {"mm²": "mm**2", "in²": "inch**2", "cm²": "cm**2", "m²": "m**2"},
    "speed": {
        "m/s": "m/s",
        "ft/min": "foot/minute",
        "ft/s": "foot/s",
        "km/h": "km/hour",
        "mph": "mph",
        "in/min": "inch/minute",
    },
    "power": {"kW": "kW", "hp": "hp", "W": "W", "PS": "metric_horsepower"},
    "energy": {"J": "J", "ft·lbf": "foot*lbf", "kJ": "kJ", "BTU": "Btu_it", "kWh": "kWh"},
    "time": {"s": "s", "min": "minute", "h": "hour", "ms": "ms"},
    "angle": {"°": "degree", "rad": "radian", "mrad": "mrad", "′": "arcminute", "″": "arcsecond"},
    "density": {"kg/m³": "kg/m**3", "lb/in³": "lb/inch**3", "g/cm³": "g/cm**3"},
}


def table(**entries):
    return {row[0]: row[1] for row in evaluate(units, entries).tables[0].rows}


def plain(text):
    """A number of the table as a float."""
    mantissa, _, power = text.replace("−", "-").partition("×10")
    return float(mantissa) * 10.0 ** int(power.translate(str.maketrans("⁰¹²³⁴⁵⁶⁷⁸⁹⁻", "0123456789-")) or 0)


@pytest.mark.parametrize("name", PINT)
def test_every_pair_of_units_as_pint_converts_them(name):
    for ours, theirs in PINT[name].items():
        rows = table(value=f"12.5 {ours}", kind=name)
        for unit, expected in PINT[name].items():
            assert plain(rows[unit]) == pytest.approx(
                ureg.Quantity(12.5, theirs).to(expected).magnitude, rel=2e-9
            ), (ours, unit)


@given(
    st.sampled_from([(k, u) for k in TOLD for u in k.units if u.symbol]),
    st.floats(0.001, 9999).map(lambda x: round(x, 3)),
)
def test_any_quantity_comes_back_from_any_row(pair, number):
    """What stands in a row, typed again in that unit, is the quantity that was typed first."""
    kind, unit = pair
    rows = evaluate(units, {"value": f"{number!r} {unit.symbol}", "kind": kind.name}).tables[0].rows
    by_symbol = {u.symbol or "as a number": u for u in kind.units}
    first = from_unit(number, unit)
    for symbol, text in rows:
        if symbol in by_symbol:
            again = from_unit(plain(text), by_symbol[symbol])
            assert again == pytest.approx(first, rel=1e-9, abs=1e-9 * float(abs(by_symbol[symbol].offset)))


@pytest.mark.parametrize(
    "text, expected",
    [
        ("1 31/64 in", "1 31/64 in"),
        ("25.4 mm", "1 in"),
        ("12 mm", "15/32 in, +3.69 thou"),
        ("-0.5 in", "−1/2 in"),
        ("0 mm", "0 in"),
        ("0.1 mm", "0 in, +3.94 thou"),
        ("3/8 in", "3/8 in"),
        ("2.499 in", "2 1/2 in, −1.00 thou"),
    ],
)
def test_inches_and_64ths(text, expected):
    assert table(value=text)["inches and 64ths"] == expected


def test_an_angle_is_told_in_degrees_minutes_and_seconds_too():
    assert table(value="45.51°")["degrees, minutes, seconds"].replace("\u00a0", " ") == "45° 30′ 36.0″"
    assert table(value="45° 30' 36\"")["°"] == "45.51"


@pytest.mark.parametrize(
    "text, headline",
    [
        ("26 ft·lb", "26 lbf·ft is 35.251267 N·m"),
        ("35 N·m", "35 N·m is 25.814675 lbf·ft"),
        ("68 °F", "68 °F is 20 °C"),
        ("1 31/64 in", "1.484375 in is 37.703125 mm"),
        ("45°", "45° is 45°"),
        ("8.5:1", "8.5 is 8.5"),
    ],
)
def test_headline_says_what_was_taken_and_the_other_systems_unit(text, headline):
    found = evaluate(units, {"value": text})
    assert found.verdict.headline.plain() == found.verdict.headline.plain("inch") == headline
    assert found.verdict.state == "pass"


@pytest.mark.parametrize(
    "text, kind, note",
    [
        ("35 lb", "mass", "Took lb as a mass; it may be a force too."),
        ("20 °C", "temperature", "Took °C as a temperature; it may be a temperature difference too."),
        ("2 g", "mass", "Took g as a mass; it may be an acceleration too."),
        ("5 MPa", "pressure", None),
        ("26 ft·lb", "torque", None),
        ("5 mm", "length", None),
        ("3 tenths", "length", "Took tenths as ten-thousandths of an inch (0.0001 in)."),
    ],
)
def test_two_meanings_are_told_where_they_would_make_other_numbers(text, kind, note):
    found = evaluate(units, {"value": text})
    notes = [r.text.plain() for r in found.remarks if r.field == "value"]
    assert notes == ([note] if note else [])
    assert f" {kind}: " in found.verdict.do.plain()


def test_the_choice_decides_between_meanings_and_reads_a_bare_number():
    assert table(value="35 lb", kind="force")["N"] == "155.6877565"
    assert table(value="12", kind="temperature")["°F"] == "53.6"
    inch = evaluate(units, {"value": "12", "kind": "temperature"}, "inch")
    assert dict(inch.tables[0].rows)["°F"] == "12"
    assert not [r for r in evaluate(units, {"value": "35 lb", "kind": "mass"}).remarks if r.field]


@pytest.mark.parametrize(
    "entries, field, words",
    [
        ({"value": "12"}, "value", "names no unit that is known here; give a number with its unit"),
        ({"value": "12 furlong"}, "value", "names no unit"),
        ({"value": "12 gal"}, "value", "write US gal or imp gal"),
        ({"value": ""}, "value", "nothing was given"),
        ({"value": "12 mm", "kind": "torque"}, "value", "mm is a length, and a torque belongs here"),
        ({"value": "12 mm 13 mm"}, "value", "more than one number"),
        ({"value": "nan mm"}, "value", "is not a size"),
        ({"kind": "weight"}, "kind", "is not a choice; choose one of"),
    ],
)
def test_refusals(entries, field, words):
    with pytest.raises(Refused) as refused:
        evaluate(units, entries)
    (error,) = refused.value.errors
    assert error.field == field and words in str(error)


def test_every_kind_but_a_count_can_be_converted():
    assert {kind.name for kind in TOLD} == set(KINDS) - {"count"}
    for kind in TOLD:
        example = kind.example.split(",")[0].split(" or ")[0]
        rows = table(value=example, kind=kind.name)
        assert len(rows) >= len(kind.units)


def test_a_doubt_goes_along():
    found = evaluate(units, {"value": "54.987 mm ± 4 µm"})
    assert found.doubts["inch"] == pytest.approx(4e-6)


@pytest.mark.parametrize(
    "typed, shown",
    [
        ("20 µin", {"metric": "0.000508 mm", "inch": "0.00002 in"}),
        ("0.00002 in", {"metric": "0.000508 mm", "inch": "0.00002 in"}),
        ("1e-12 m", {"metric": "0.000000001 mm"}),
        ("3.5 daNm", {"metric": "35 N·m"}),
        ("1 US quart", {"metric": "946.353 cm³"}),
        ("1 imp pt", {"metric": "568.261 cm³"}),
    ],
)
def test_no_more_digits_are_written_than_tell_something(typed, shown):
    """1 in is 25.4 mm; quart and pint from NIST SP 811 appendix B (from memory): 9.463529e-4 m³, imperial pint 4.54609/8 L."""
    found = evaluate(units, {"value": typed})
    told = {"metric": found.outputs["metric"].text(), "inch": found.outputs["inch"].text("inch")}
    assert {system: told[system] for system in shown} == shown
    assert found.verdict.headline.plain().startswith(
        {"0.00002 in": "0.00002 in is", "1e-12 m": "0.000000000001 m is"}.get(typed, "")
    )
    assert len(found.verdict.headline.plain()) < 45


def test_nothing_is_colder_than_absolute_zero():
    for typed in ("-460 °F", "-273.2 °C", "-1 K"):
        for system in ("metric", "inch"):
            with pytest.raises(
                Refused, match="below absolute zero; give −273.15 °C, −459.67 °F, 0 K or more"
            ):
                evaluate(units, {"value": typed}, system)
    assert evaluate(units, {"value": "-460 °F", "kind": "temperature difference"})["metric"] == pytest.approx(
        -460 / 1.8
    )


def test_a_standard_cubic_centimetre_is_a_leak_and_a_flow():
    """1 Pa·m³/s is 592 sccm (vacuum handbooks, from memory): 101325 Pa × 10⁻⁶ m³ in 60 s."""
    found = evaluate(units, {"value": "592 sccm"})
    assert found["metric"] == pytest.approx(1.0, rel=1e-3)
    assert any("0 °C and 1 atm" in r.text.plain() for r in found.remarks) and any(
        "flow rate" in r.text.plain() for r in found.remarks
    )
