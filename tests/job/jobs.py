"""Jobs to test with: one as a shop would keep it, and any that can be."""

import random
from datetime import datetime, timedelta

from hypothesis import strategies as st

from calc.job import contents, record
from calc.job.contents import STAGES
from calc.job.record import add_done, add_reading, new
from calc.reference.engine import demo

AT = "2026-11-25T09:12+01:00"


def job(**fields) -> dict:
    """`done` may be given as bare texts."""
    if isinstance(fields.get("done"), list):
        fields["done"] = [
            one if isinstance(one, dict) else {"line": f"line-{n}", "text": one, "at": "", "by": ""}
            for n, one in enumerate(fields["done"])
        ]
    return {
        **new(
            "k3J9",
            "Orchard frost fan",
            "TS-16",
            "two heads, crank, four rods",
            AT,
            "Tern Street Engine Works",
        ),
        **fields,
    }


def done(job: dict) -> list[str]:
    """The lines of what was done that stand."""
    return [line.text for line in record.done(job) if not line.struck]


def reading(
    feature="crank.main_journal",
    place="2",
    stage="finished",
    text="54.987 mm ± 0.004 mm",
    at="2026-11-25T14:15+01:00",
    by="MK",
    why="",
    **beside,
) -> dict:
    return dict(feature=feature, place=place, stage=stage, text=text, at=at, by=by, why=why, **beside)


def ordinary() -> dict:
    """What a shop hands over with a crank, four rods, case and flywheel: 39 readings, each with its doubt and time."""
    draw, at = random.Random(3), datetime(2026, 11, 23, 8, 30)
    made = new(
        "k3J9xQ2bLm",
        "Orchard frost fan, north field",
        "TS-16",
        "crank, four rods, case halves, flywheel",
        "2026-11-23T08:12+01:00",
        "Tern Street Engine Works",
    )

    def read(feature, stage, doubt="0.004", off=0.0, spread=6, by="MK"):
        nonlocal made, at
        on_sheet = demo().feature(feature)
        for place in on_sheet.places or ("",):
            at += timedelta(minutes=draw.randint(1, 6))
            size = on_sheet.nominal * 1000 + off + draw.randint(-spread, spread) / 10**on_sheet.form.decimals
            made = add_reading(
                made,
                feature,
                place,
                stage,
                f"{size:.{on_sheet.form.decimals}f} mm" + (f" ± {doubt} mm" if doubt else ""),
                at.isoformat(timespec="minutes") + "+01:00",
                by,
            )

    read("crank.main_journal", "received", off=-0.04)
    read("crank.rod_journal", "received", off=-0.03)
    read("rod.big_end_bore", "received", "0.006", 0.012)
    read("crankcase.main_housing", "received", "0.006")
    read("crank.bow", "received", "", 0.01, 1)
    read("flywheel.runout", "received", "", 0.1)
    at += timedelta(hours=26)
    read("crank.main_journal", "finished", off=-0.25)
    read("crank.rod_journal", "finished", off=-0.25, by="JT")
    read("rod.big_end_bore", "finished", "0.006", spread=4)
    read("rod.bush_bore", "finished", "0.003", spread=2, by="JT")
    read("crankcase.main_shell_wall", "finished", "0.002", 0.125, 2)
    read("rod.shell_wall", "finished", "0.002", 0.125, 2)
    read("crank.end_float", "finished", "0.01", spread=2)
    for line in (
        "Mains and rod journals ground 0.25 mm under, fillets polished",
        "Big ends honed round",
        "Small-end bushes pressed in and honed",
        "Flywheel faced 0.2 mm",
    ):
        made = add_done(made, line, at.isoformat(timespec="minutes") + "+01:00", "MK")
    return made


def texts(most, least=0):
    """Anything that a person may have typed or pasted, markup and strange scripts included."""
    odd = st.sampled_from(
        [
            "<script>alert(1)</script>",
            "\"'&<>",
            "µ ± °",
            "\n",
            "\t",
            "Ünïcôdé 漢字 🛠️",
            "\u202e",
            "0",
            "null",
            "\\",
            "%00",
            "1.1",
        ]
    )
    plain = st.text(st.characters(exclude_categories=("Cs", "Cc")), max_size=most)
    return st.one_of(plain, odd).filter(lambda text: least <= len(text.strip()) and len(text) <= most)


numbers = st.one_of(
    st.decimals(0, 200, places=3).map(str),
    st.integers(0, 9999).map(str),
    st.sampled_from(["1 31/64", "0.000001", "1e-3", "5/8", "-0.02"]),
)
sizes = st.builds(
    lambda n, unit, doubt: f"{n} {unit}{doubt}",
    numbers,
    st.sampled_from(["mm", "in", "µm", "thou"]),
    st.sampled_from(["", " ± 0.004 mm", " ± 0.0002 in", " ± 2 µm"]),
)
moments = st.one_of(
    st.datetimes(min_value=datetime(2020, 1, 1)).map(lambda t: t.isoformat(timespec="minutes") + "+01:00"),
    st.datetimes().map(lambda t: f"{t.isoformat(timespec='seconds')}Z"),
    st.datetimes().map(lambda t: t.isoformat(timespec="milliseconds")),
    st.dates().map(str),
    st.sampled_from([AT, "0001-01-01", "9999-12-31T23:59-23:59"]),
)
features = st.one_of(
    st.sampled_from(list(demo().features)),
    st.from_regex(r"[a-z_][a-z0-9_]{0,20}\.[a-z0-9_]{1,20}", fullmatch=True),
)


@st.composite
def any_reading(draw):
    text = draw(st.one_of(sizes, st.just("")))
    made = reading(
        draw(features),
        draw(st.one_of(st.sampled_from(["", "1", "2", "3 intake"]), texts(40))),
        draw(st.sampled_from(list(STAGES))),
        text,
        draw(moments),
        draw(texts(60)),
        draw(texts(200, least=0 if text else 1)),
    )
    beside = draw(
        st.fixed_dictionaries(
            {},
            optional={
                "part": st.sampled_from(["31 °C", "80 °F", "295.15 K ± 1 K"]),
                "gauge": st.just("20.5 °C"),
                "of": st.sampled_from(["forged-steel", "al-si-t6", "cheese"]),
            },
        )
    )
    return made | beside


@st.composite
def any_done(draw):
    """Lines with names of their own or those that they get, some of them struck and put back."""
    entries, known = [], set()
    for text in draw(st.lists(texts(400, 1), max_size=4)):
        at, by = draw(st.one_of(st.just(""), moments)), draw(texts(60))
        name = draw(
            st.one_of(
                st.just(""),
                st.from_regex("[A-Za-z0-9_-]{1,40}", fullmatch=True).filter(lambda name: name not in known),
            )
        ) or contents.name_of_line(text, at, by, known)
        known.add(name)
        entries += [
            {"line": name, "text": said, "at": at, "by": by}
            for said in (text, "", text)[: draw(st.integers(1, 3))]
        ]
    return entries


@st.composite
def any_job(draw):
    made = job(
        id=draw(st.from_regex("[A-Za-z0-9_-]{1,64}", fullmatch=True)),
        name=draw(texts(120, 1)),
        engine=draw(st.one_of(st.sampled_from(["TS-16", "RC-40"]), texts(40, 1))),
        received=draw(texts(600)),
        started=draw(moments),
        by=draw(texts(60)),
        done=draw(any_done()),
        readings=draw(st.lists(any_reading(), max_size=8)),
    )
    return {key: value for key, value in made.items() if key != "sheet"} | draw(
        st.sampled_from([{}, {"sheet": "0123abcd"}])
    )
