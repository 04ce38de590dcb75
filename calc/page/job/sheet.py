"""The size sheet: a job on paper, one page that goes into the box with the parts.

`sheet` gives its body, the same in a terminal and in the browser; `page` a whole file that needs nothing
else. What draws the codes is passed in, so that this imports no library. Every size stands in both unit
systems, of which CSS shows one.
"""

import math
import os
import re
from collections import Counter
from functools import cache
from itertools import groupby

from calc import __version__
from calc.core.reading import EntryError
from calc.core.result import VERDICT_WORDS
from calc.core.writing import to_unit, write
from calc.job.checking import sheet_of
from calc.job.parts import counts, groups, not_checked
from calc.job.record import current, done, sheet_changed
from calc.job.texts import read_size
from calc.job.verdicts import CHANGED, judge
from calc.page.html import Html, both, children, el
from calc.reference import cautions
from calc.reference.engine import STANDARD, Feature
from calc.stations import index as stations

STAGES = {"received": "As received", "finished": "As finished", "assembly": "At assembly"}
PAPERS = ("A4", "Letter")
MOST_NAMED = (
    60  # sizes without a reading that are named one by one: more leave no room for the rest of the page
)
GROUP_WORDS = {
    "chamber": "the chambers",
    "crank": "the crank",
    "crankcase": "the case",
    "cylinder": "the cylinders",
    "flywheel": "the flywheel",
    "cam": "the cam",
    "guide": "the guides",
    "head": "the heads",
    "lifter": "the lifters",
    "piston": "the pistons",
    "port": "the ports",
    "rod": "the rods",
    "spring": "the springs",
    "valve": "the valves",
}
SYSTEMS = ("metric", "inch")
CORRECTED, WARM, WORN = "†", "*", "‡"
CAUTIONS = (
    cautions.MAKER_FIRST,
    cautions.AIRCRAFT,
)  # those of the single checks stand with their calculators
CAUTIONS_OF = {
    "rod": cautions.ROD_SCRAP,
    "lifter": cautions.BREAK_IN,
    "cam": cautions.BREAK_IN,
}  # by the groups of the engine's sheet that a job's parts have

# Told by shape as well, for a printer with one ink: a tick in a ring, a cross in a square, a question in a
# diamond, a dash in a triangle.
_SHAPES = {
    "pass": '<circle cx="8" cy="8" r="7"/><path d="M4.5 8.2 7 10.8 11.6 5.2"/>',
    "fail": '<path class="full" d="M1 1h14v14H1z"/><path class="gap" d="M4 4l8 8M12 4l-8 8"/>',
    "unsure": (
        '<path d="M8 .8 15.2 8 8 15.2.8 8z"/><path d="M6 6.6C6 4 10 4 10 6.6 10 8.2 8 8 8 9.8M8 11.2v1"/>'
    ),
    "attention": '<path class="full" d="M8 1 15.5 15H.5z"/><path class="gap" d="M8 5.5v5M8 11.8v1.4"/>',
}


def css() -> str:
    """The sheet's style, the same for one that stands alone and one on a page of the site, which puts it in
    beside the sheet."""
    return _data("sheet.css")


def sheet(job: dict, codes: tuple | None = None, draw_code=None, here: str = "") -> Html:
    """The sheet's body. `codes` are the links that carry the job (calc.job.codes.links): None where there is
    no address to open, empty where the job is too large for them; `here` is an address that opens on no other
    device, where that is why there are none. `draw_code(link)` gives one as SVG, or None where it cannot."""
    rows, engine, corrected = judge(job), sheet_of(job), _corrected(job)
    stages = [stage for stage in STAGES if any(key[2] == stage for key in current(job))] or [
        "received",
        "finished",
    ]
    return el(
        "article",
        _head(job, engine),
        _sizes(rows, engine, stages, corrected),
        _notes(job, rows, engine, corrected),
        el("div", _done(job), _checks(job, rows), _order(job), _missing(job, engine), class_="sheet-words"),
        _foot(job, codes, draw_code, here),
        class_="sheet",
    )


def page(
    job: dict,
    codes: tuple | None = None,
    draw_code=None,
    *,
    system: str = "metric",
    paper: str = "A4",
    here: str = "",
) -> str:
    """The sheet as one HTML file that needs nothing else. ValueError for a system or paper that there is
    not."""
    if system not in SYSTEMS or paper not in PAPERS:
        raise ValueError(f"{system} and {paper}: give metric or inch, A4 or Letter")
    head = el(
        "head",
        Html('<meta charset="utf-8">'),
        Html('<meta name="viewport" content="width=device-width, initial-scale=1">'),
        el("title", f"Size sheet: {job['name']}"),
        el("style", Html(css() + f"\n@page sheet {{ size: {paper}; }}\n")),
    )
    return (
        "<!DOCTYPE html>\n"
        + el("html", head, el("body", sheet(job, codes, draw_code, here)), lang="en", data_units=system)
        + "\n"
    )


# --- Above the sizes -------------------------------------------------------------------------


def _head(job, engine) -> Html:
    days, hands = _read_by(job)
    facts = (
        ("Engine", job["engine"]),
        ("Received", job["received"] or "not told"),
        ("Shop", job["by"] or "not told"),
        ("Job", job["id"]),
        ("Handbook", f"Sizebook {__version__}"),
        ("Started", _day(job["started"])),
        ("Read", days),
        ("By", hands),
    )
    if engine is None:
        warning = (
            f"This handbook has no data sheet of {job['engine']}: the readings stand here as they were taken,"
            " and none is judged."
        )
    else:
        told = {feature.source for feature in engine.features.values()}
        warning = (
            "Invented limits. " if "invented" in told else f"Limits from {', '.join(sorted(told))}. "
        ) + engine.about
        if sheet_changed(job):
            warning += f" {CHANGED}"
    return el(
        "header",
        el("div", el("p", "Size sheet", class_="sheet-kind"), el("h1", job["name"])),
        el("dl", *(el("div", el("dt", name), el("dd", value)) for name, value in facts)),
        el("p", warning, class_="sheet-warning"),
    )


def _day(at: str) -> str:
    return at[:10]


def _read_by(job) -> tuple[str, str]:
    """When the readings that count were taken, and how many by whom: 2026-11-18 to 2026-11-24, MK (31), RB
    (9)."""
    readings = list(current(job).values())
    if not readings:
        return "nothing yet", "nobody"
    days, hands = (
        sorted(_day(reading["at"]) for reading in readings),
        Counter(reading["by"] or "not signed" for reading in readings),
    )
    return days[0] if days[0] == days[-1] else f"{days[0]} to {days[-1]}", ", ".join(
        f"{by} ({n})" for by, n in hands.items()
    )


# --- The sizes -------------------------------------------------------------------------------


def _sizes(rows, engine, stages, corrected) -> Html:
    """Each size with its limits as a head, and under it a line for each place."""
    head = el(
        "tr",
        el("th", "Place", scope="col"),
        *(el("th", STAGES[stage], " ±", scope="col", colspan="2", class_="n") for stage in stages),
        el("th", "Verdict", scope="col"),
    )
    bodies, wide = [], len(stages) > 2
    for feature, alike in groupby(rows, key=lambda row: row.feature):
        alike, known = list(alike), engine.features.get(feature) if engine else None
        bodies.append(
            el(
                "tbody",
                el(
                    "tr",
                    el(
                        "th",
                        el("b", alike[0].label),
                        " ",
                        _limits(known, alike),
                        colspan=2 + 2 * len(stages),
                        scope="rowgroup",
                    ),
                    class_="of",
                ),
                *(_row(known, row, stages, corrected) for row in alike),
            )
        )
    return el(
        "div",
        el("table", el("thead", head), *bodies),
        class_="sheet-sizes" + (" wide" if wide else ""),
        tabindex="0",
        role="group",
        aria_label="Sizes",
    )


def _limits(feature, rows) -> Html | str:
    """What the size is judged by: the limits of the size that it was finished to, and the wear limit that it
    was received with."""
    if feature is None:
        return "not on a data sheet here"
    steps = {judged.step for row in rows for judged in (row.assembly or row.finished,) if judged} or {
        row.step for row in rows
    }
    said = [_span(feature.at(step), step) for step in sorted(steps, key=lambda step: abs(step.offset))]
    if feature.wear is not None and (
        any(row.received for row in rows) or (feature.low, feature.high) == (None, None)
    ):
        worn = {row.received.step for row in rows if row.received} or {STANDARD}
        said += [
            children(
                "worn at ",
                both(*(feature.form.write(feature.at(step).wear, s) for s in SYSTEMS)),
                f" ({step.name})" if step.offset else "",
            )
            for step in sorted(worn, key=lambda step: abs(step.offset))
        ]
    if all(row.derived for row in rows):
        said.append("worked out")
    return _joined([one for one in said if one])


def _joined(parts: list) -> Html:
    return children(*[x for n, part in enumerate(parts) for x in (("; ", part) if n else (part,))])


def _span(feature: Feature, step) -> Html | str:
    shape, name = feature.form, f" ({step.name})" if step.offset else ""
    if feature.low is not None and feature.high is not None:
        return children(
            both(*(f"{shape.bare(feature.low, s)}–{shape.write(feature.high, s)}" for s in SYSTEMS)), name
        )
    if feature.low is None and feature.high is None:
        return (
            children("nominal ", both(*(shape.write(feature.nominal, s) for s in SYSTEMS)), name)
            if feature.wear is None
            else ""
        )
    words, limit = ("up to ", feature.high) if feature.low is None else ("from ", feature.low)
    return children(words, both(*(shape.write(limit, s) for s in SYSTEMS)), name)


def _row(feature, row, stages, corrected) -> Html:
    return el(
        "tr",
        el("td", row.place or "\u2013", class_="place"),
        *(
            _judged(feature, getattr(row, stage), corrected, row.was_worn and stage == "received")
            for stage in stages
        ),
        el("td", _verdict(row), class_="verdict"),
        class_=f"is-{row.state or 'none'}",
    )


def _judged(feature, judged, corrected, was_worn) -> Html:
    """Size and doubt as two cells, digit for digit as they were typed where the unit is the reader's."""
    if judged is None:
        return children(el("td", class_="n"), el("td", class_="pm"))
    reading = judged.reading
    warm = bool(reading) and bool({"part", "gauge"} & set(reading))
    marks = (
        (CORRECTED if reading and _key(reading) in corrected else "")
        + (WARM if warm else "")
        + (WORN if was_worn else "")
    )
    if feature is None or judged.value is None:
        return el("td", reading["text"], marks, class_="n", colspan="2")
    typed, digits = (
        (read_size(reading["text"], feature.form.kind, feature.form.metric), _digits(reading["text"]))
        if reading and not warm
        else (None, "")
    )
    shown, doubts = [], []
    for system in SYSTEMS:
        own = typed is not None and typed.unit == feature.form.unit(system) and _says(digits, typed, feature)
        shown.append(digits if own else judged.value.form.bare(float(judged.value), system))
        doubts.append(f"±\u2009{_doubt(judged.U, feature, system, own)}" if judged.U else "")
    return children(el("td", both(*shown), class_="n"), el("td", both(*doubts), marks, class_="pm"))


def _digits(text: str) -> str:
    """The number of a typed size, without unit and doubt: "54.987 mm ± 4 µm" → 54.987, "1 31/64 in" → 1
    31/64."""
    found = re.match(r"\s*\(?\s*([+\-−]?\s?[\d.,/ \u00a0\u202f]*\d)", text)
    return found[1].replace("-", "−").replace(",", ".") if found else text.strip()


def _says(digits: str, typed, feature: Feature) -> bool:
    """Do the digits alone tell the whole size? Not those of 5.4987e1 mm, 44° 54′ or 4½ in."""
    try:
        return read_size(digits, feature.form.kind, typed.unit).value == typed.value
    except EntryError:
        return False


def _doubt(U: float, feature: Feature, system: str, own: bool) -> str:
    """A doubt as it was typed, or to two figures in the other unit system."""
    shape = feature.form.difference
    number = to_unit(U, shape.unit(system))
    return (
        write(U, shape.unit(system), max(0, (5 if own else 1) - math.floor(math.log10(number))))
        .rstrip("0")
        .rstrip(".")
    )


def _verdict(row) -> Html:
    if not row.state:
        return el("span", "not judged")
    return children(_shape(row.state), VERDICT_WORDS[row.state])


def _shape(state: str) -> Html:
    return Html(f'<svg class="shape" viewBox="0 0 16 16" aria-hidden="true">{_SHAPES[state]}</svg>')


# --- Below the sizes --------------------------------------------------------------------------


def _notes(job, rows, engine, corrected) -> Html:
    """How to read the table, what was corrected, and what to do about each size that is not simply in
    order."""
    said = (
        "± expanded doubt, k = 2; a reading without one is taken as it is. As received is judged by the wear"
        " limit, else by the limits; proven at 95 % (ISO 14253-1)."
    )
    if any({"part", "gauge"} & set(reading) for reading in current(job).values()):
        said += f" {WARM} Read warm, brought to 20 °C."
    if any(row.was_worn for row in rows):
        said += f" {WORN} Was worn past its limit."
    corrections = [
        el("li", f"{CORRECTED} ", _correction(engine, key, told)) for key, told in corrected.items()
    ]
    left = {}
    for row in rows:
        if row.state != "pass":
            left.setdefault((row.label, row.state, row.words.plain(), row.do.plain()), []).append(row)
    todo = [
        el(
            "li",
            _shape(state) if state else None,
            el(
                "b", " ".join(filter(None, (label, ", ".join(row.place for row in alike if row.place)))), ": "
            ),
            alike[0].words,
            ". ",
            alike[0].do,
        )
        for (label, state, *_), alike in left.items()
    ]
    return el(
        "div",
        el("p", said),
        el("ul", *corrections, *todo) if corrections or todo else None,
        class_="sheet-notes",
    )


def _corrected(job) -> dict:
    """{(feature, place, stage): all that was read there} where it was read more than once, in the order of
    the sheet; what was taken back comes last."""
    told = {}
    for reading in job["readings"]:
        told.setdefault(_key(reading), []).append(reading)
    return {key: told[key] for key in {**current(job), **told} if len(told[key]) > 1}


def _key(reading) -> tuple:
    return reading["feature"], reading["place"], reading["stage"]


def _correction(engine, key, told) -> str:
    """What a reading was before, until when, by whom and why it was changed."""
    feature, place, stage = key
    label = engine.features[feature].label if engine and feature in engine.features else feature
    steps = [
        f"{old['text'] or 'nothing'} until {' '.join(filter(None, (_day(new['at']), new['by'])))},"
        f" {new['why']}"
        for old, new in zip(told, told[1:])
    ]
    return (
        f"{' '.join(filter(None, (label, place)))}, {STAGES[stage].lower()}: was"
        f" {'; '.join(steps)}{'' if told[-1]['text'] else '; taken back'}."
    )


def _done(job) -> Html | None:
    standing = [line.text for line in done(job) if not line.struck]
    return (
        el("section", el("h2", "Done"), el("ul", *(el("li", line) for line in standing)))
        if standing
        else None
    )


def _order(job) -> Html | None:
    rows = stations.orders(job)
    if not rows:
        return el("section", el("h2", "To order by size"), el("p", "Nothing that these sizes tell."))
    return el(
        "section",
        el("h2", "To order by size"),
        el(
            "ul",
            *(
                el(
                    "li",
                    _shape(row.state) if row.state != "pass" else None,
                    el("b", row.part, f" {', '.join(row.places)}" if row.places else "", ": ", row.size),
                    ". ",
                    el("span", row.because, ". ", class_="because"),
                    row.do,
                )
                for row in rows
            ),
        ),
    )


def _checks(job, rows) -> Html:
    return el(
        "section",
        el("h2", "Check before closing up, in this order"),
        el(
            "ol",
            *(
                el(
                    "li",
                    el("b", check.title, ". "),
                    check.do,
                    children(" On this sheet: ", check.said, ".") if check.said else None,
                )
                for check in stations.checks(job, rows)
            ),
            class_="sheet-checks",
        ),
    )


def _missing(job, engine) -> Html:
    missing, every = not_checked(job)
    if engine is None:
        return el(
            "section", el("h2", "Not checked"), el("p", "Which sizes these parts have is not known here.")
        )
    left = sum(len(places) for _, places in missing)
    if not left:
        return el(
            "section",
            el("h2", "Not checked"),
            el(
                "p",
                (
                    f"Nothing: all {every} sizes of these parts were read."
                    if every
                    else "No size of these parts has limits here."
                ),
            ),
        )
    return el(
        "section",
        el("h2", f"Not checked: {left} of {every} sizes"),
        el(
            "p",
            f"Without a reading as finished, at all places where none is named: {_named(missing, engine)}.",
        ),
    )


def _by_group(missing, engine) -> dict:
    """{group: words} of the groups of the engine's sheet of which most was not read: "every size of the rods
    but Big-end bore, bolted up"."""

    def group(feature):
        return feature.id.partition(".")[0]

    unread = {
        feature.id: None for feature, places in missing if len(places) == len(feature.places or ("",))
    }  # in the order of the sheet
    left, read = Counter(id.partition(".")[0] for id in unread), {}
    for feature in engine.features.values():
        if counts(feature) and feature.id not in unread:
            read.setdefault(group(feature), []).append(feature.label)
    return {
        name: (
            f"every size of {GROUP_WORDS.get(name, name)}"
            + (f" but {', '.join(read[name])}" if name in read else "")
        )
        for name, n in left.items()
        if n > 2 * len(read.get(name, ()))
    }


def _named(missing, engine) -> str:
    """The sizes by name, with their places where some of them were read; intake and exhaust of the same as
    one. Where there are too many for a page, most by their group."""
    grouped = _by_group(missing, engine) if len(missing) > MOST_NAMED else {}
    missing = [
        (feature, places)
        for feature, places in missing
        if feature.id.partition(".")[0] not in grouped or len(places) < len(feature.places or ("",))
    ]
    whole = {feature.label for feature, left in missing if len(left) == len(feature.places or ("",))}
    names = []
    for feature, left in missing:
        base, _, kind = feature.label.rpartition(", ")
        if feature.label not in whole:
            names.append(f"{feature.label} ({', '.join(left)})")
        elif kind == "exhaust" and f"{base}, intake" in whole:
            continue
        else:
            names.append(
                feature.label + (" and exhaust" if kind == "intake" and f"{base}, exhaust" in whole else "")
            )
    return "; ".join([*grouped.values(), *names])


def _foot(job, codes, draw_code, here) -> Html:
    """Codes, cautions and signatures, which stay together."""
    drawn = [svg for link in codes or () if draw_code and (svg := draw_code(link))]
    figures = None
    if codes and len(drawn) == len(codes):
        figures = el(
            "div",
            *(
                el("figure", Html(svg), el("figcaption", f"{n} of {len(codes)}") if len(codes) > 1 else None)
                for n, svg in enumerate(drawn, 1)
            ),
            class_="sheet-codes",
        )
        opens = (
            "The code opens these sizes at home"
            if len(codes) == 1
            else (
                f"These sizes do not fit one code: all {len(codes)}, scanned one after the other in any"
                " order, open them at home"
            )
        )
        words = children(
            el("b", opens),
            ", each check with its calculator filled in: ",
            codes[0].partition("#")[0],
            ". They ride in the link itself and are sent nowhere.",
        )
    else:
        why = (
            "These sizes are too many for codes."
            if codes == ()
            else (
                f"This sheet carries no code: the handbook was opened at {here}, which no other device can"
                " open."
                if here
                else "This sheet carries no code."
            )
        )
        words = children(
            el("b", why),
            " Send the job's file along with it: the handbook opens that, each check with its calculator"
            " filled in.",
        )
    theirs = groups(job)
    cautions = [
        *CAUTIONS,
        *dict.fromkeys(caution for group, caution in CAUTIONS_OF.items() if group in theirs),
    ]
    return el(
        "div",
        figures,
        el(
            "div",
            el("p", words),
            el("div", el("h2", "Take care"), *(el("p", caution.text) for caution in cautions)),
            _signatures(),
            class_="sheet-last",
        ),
        class_="sheet-foot",
    )


def _signatures() -> Html:
    return el(
        "div",
        *(
            el("p", el("b", words), *(el("span", what) for what in ("Name", "Date", "Signature")))
            for words in ("Measured and finished as here", "Checked before closing up")
        ),
        class_="sheet-sign",
    )


@cache
def _data(name: str) -> str:
    return __spec__.loader.get_data(
        os.path.join(os.path.dirname(__file__), name)
    ).decode()  # from a folder and from a zip alike
