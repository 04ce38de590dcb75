"""What physics says about the direction of every result: it stands beside the outside numbers (`tests/checks/`), and the sweep holds it to that.

Only the direction is judged here, the rest held, anywhere within the accepted ranges; how much it is, the checks judge.
"""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from calc.core.result import Refused
from calc.declare.calculator import evaluate
from calc.declare.choice import Choice
from calc.declare.open_input import Open
from calc.stations import index as stations
from tests.checks import Trend, trends_of
from tests.entries import entries, is_count, neighbourhoods, numbers, written

# Those whose results hang on tables, on choices or on entries of any kind alone, or on readings round a turn, which may be high at
# any of its places: no number to rise or fall with; or on which of several parts are chosen.
WITHOUT = {"iso-fit", "units", "thread-limits", "shaft-bow", "set-pairing"}


def places(calculator) -> list:
    """(number that may be entered, its example, {output: (1 or −1, the name that says so)}) for all that a result rises or falls with."""
    found, ways = [], {key: trend.ways for key, trend in trends_of(calculator.function.__module__).items()}
    for i in calculator.inputs:
        for number, example in numbers(i):
            name, _, rest = number.name.partition(".")
            column = f"{name}.{rest.partition('.')[2]}"
            trends = {
                key: (way[said], said) for key, way in ways.items() for said in (name, column) if said in way
            }
            if trends and (example is not None or not rest):  # rows that the example leaves empty stay empty
                found.append((number, example, trends))
    return found


def results(calculator, held, number, entered) -> list:
    """The results for each number that may be entered, in that order; left out where the entries do not go together."""
    found = []
    for value in entered:
        try:
            found.append(
                {
                    key: n.value
                    for key, n in evaluate(
                        calculator, {**held, number.name: written(value, number.form.metric)}
                    ).outputs.items()
                }
            )
        except Refused:
            pass
    return found


def compare(calculator, place, small, large) -> set:
    """Hold the results of a smaller and a larger number against what is declared; gives back which (output, input) moved."""
    moved = set()
    for key, (trend, said) in place[2].items():
        output = calculator.output[key]
        change = trend * (large[key] - small[key])
        last = 10.0 ** -output.form.places("metric") * float(output.form.metric.factor)
        slack = (
            1e-9 * max(abs(small[key]), abs(large[key])) + 1e-6 * last
        )  # what rounding in the last bits may do
        assert change >= -slack, (
            f"{key} is said to {'rise' if trend > 0 else 'fall'} with {place[0].name}, but goes from {small[key]!r} to {large[key]!r}"
        )
        if change > slack:
            moved.add((key, said))
    return moved


@pytest.mark.parametrize("id", [id for id in stations.ids() if id not in WITHOUT])
def test_results_rise_and_fall_with_what_physics_says(id):
    c = stations.find(id)
    swept, moved = places(c), set()

    held = entries(c, most=4)
    drawn = [
        st.tuples(
            st.just(place),
            held,
            st.one_of(
                [st.lists(x, min_size=2, max_size=3, unique=True) for x in neighbourhoods(*place[:2])]
            ).map(sorted),
        )
        for place in swept
    ]

    @settings(
        max_examples=max(
            settings.default.max_examples // 2,
            2 * len({said for *_, trends in swept for _, said in trends.values()}),
        )
    )
    @given(st.sampled_from(drawn).flatmap(lambda each: each))
    def sweep(drawn):
        place, held, entered = drawn
        found = results(
            c,
            {
                name: text.partition("±")[0]
                for name, text in held.items()
                if not name.startswith(f"{place[0].name}.")
            },
            place[0],
            entered,
        )
        for small, large in zip(found, found[1:]):
            moved.update(compare(c, place, small, large))

    sweep()

    declared = {(key, said) for *_, trends in swept for key, (_, said) in trends.items()}
    for place in swept:
        look_closer(c, place, moved)
    assert not declared - moved, f"never seen to move: {sorted(declared - moved)}"


def look_closer(calculator, place, moved) -> None:
    """Where the sweep saw no change: steps about the example, with each other entry in turn."""
    number, example, trends = place
    declared = {(key, said) for key, (_, said) in trends.items()}
    for held in others(calculator, number):
        if declared <= moved:
            return
        found = results(calculator, held, number, steps(calculator, number, example))
        for pair in zip(found, found[1:]):
            moved.update(compare(calculator, place, *pair))


def steps(calculator, number, example) -> list:
    """Numbers about the example, or about those of its like where it has none, and the ends of what is usual."""
    low, high = number.hard_range
    alike = [
        like
        for i in calculator.inputs
        for other, like in numbers(i)
        if like and other.form.kind is number.form.kind
    ]
    middles = [example] if example is not None else alike or [(low + high) / 2]
    shares = (0, 1e-3, -1e-3, 0.03, -0.03, 0.1, -0.1, 0.3, -0.3, -0.9)
    about = [
        middle + (round(10 * share) if is_count(number) else share * (abs(middle) or high - low))
        for middle in middles
        for share in shares
    ]
    return sorted({min(max(x, low), high) for x in (*about, *(number.usual_range or ()))})


def others(calculator, number):
    """Entries for one other input each: every option, every kind, an optional one left out or filled, a number at an end of what is usual."""
    yield {}
    for i in calculator.inputs:
        if isinstance(i, Choice):
            yield from ({i.name: option} for option in i.options)
        elif isinstance(i, Open):
            yield from ({i.name: f"0.1 {kind.metric.symbol}"} for kind in i.kinds)
        for other, example in numbers(i):
            optional = other.optional and other.name != number.name
            if optional:
                yield {other.name: ""}
            if optional and example is None:
                yield from (
                    {other.name: written(like, other.form.metric)}
                    for j in calculator.inputs
                    for alike, like in numbers(j)
                    if like is not None and alike.form.kind is other.form.kind
                )
            if other.usual_range and other.name != number.name:
                yield from ({other.name: written(end, other.form.metric)} for end in other.usual_range)


def test_only_calculators_without_a_number_to_follow_declare_nothing():
    assert {id for id in stations.ids() if not places(stations.find(id))} == WITHOUT


@pytest.mark.parametrize("id", stations.ids())
def test_a_trend_names_a_result_and_numbers_that_are_asked_for(id):
    c = stations.find(id)
    asked = {number.name.partition(".")[0] for i in c.inputs for number, _ in numbers(i)}
    columns = {f"{i.name}.{n}" for i in c.inputs for n in range(1, 1 + len(getattr(i, "columns", ())))}
    for key, trend in trends_of(c.function.__module__).items():
        assert key in c.output
        assert trend.ways.keys() <= asked | columns, f"{key}: {trend.ways.keys() - asked - columns}"


def test_an_input_that_a_result_both_rises_and_falls_with_is_refused():
    with pytest.raises(ValueError, match="named twice"):
        Trend(rises="size", falls="size").ways
