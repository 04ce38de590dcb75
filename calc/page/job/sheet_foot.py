"""The foot of the size sheet: codes, cautions and signatures, which stay together."""

from collections.abc import Callable, Sequence

from calc.job.parts import groups
from calc.page.html import Html, children, el
from calc.reference import cautions

CAUTIONS = (
    cautions.MAKER_FIRST,
    cautions.AIRCRAFT,
)  # those of the single checks stand with their calculators


CAUTIONS_OF = {
    "rod": cautions.ROD_SCRAP,
    "lifter": cautions.BREAK_IN,
    "cam": cautions.BREAK_IN,
}  # by the groups of the engine's sheet that a job's parts have


def foot(
    job: dict, codes: Sequence[str] | None, draw_code: Callable[[str], str | None] | None, here: str
) -> Html:
    drawn = [svg for link in codes or () if draw_code and (svg := draw_code(link))]
    figures = _figures(drawn) if codes and len(drawn) == len(codes) else None
    words = _opens(codes) if codes and figures else _without_codes(codes, here)
    theirs = groups(job)
    own = dict.fromkeys(caution for group, caution in CAUTIONS_OF.items() if group in theirs)
    return el(
        "div",
        figures,
        el(
            "div",
            el("p", words),
            el("div", el("h2", "Take care"), *(el("p", caution.text) for caution in (*CAUTIONS, *own))),
            _signatures(),
            class_="sheet-last",
        ),
        class_="sheet-foot",
    )


def _figures(drawn: list[str]) -> Html:
    every = len(drawn)
    return el(
        "div",
        *(
            el("figure", Html(svg), el("figcaption", f"{n} of {every}") if every > 1 else None)
            for n, svg in enumerate(drawn, 1)
        ),
        class_="sheet-codes",
    )


def _opens(codes: Sequence[str]) -> Html:
    opens = (
        "The code opens these sizes at home"
        if len(codes) == 1
        else (
            f"These sizes do not fit one code: all {len(codes)}, scanned one after the other in any order,"
            " open them at home"
        )
    )
    return children(
        el("b", opens),
        ", each check with its calculator filled in: ",
        codes[0].partition("#")[0],
        ". The sizes are in the link itself; no server sees them.",
    )


def _without_codes(codes: Sequence[str] | None, here: str) -> Html:
    if codes is not None and not codes:
        why = "These sizes are too many for codes."
    elif here:
        why = (
            f"This sheet carries no code: the handbook was opened at {here}, which no other device can open."
        )
    else:
        why = "This sheet carries no code."
    return children(
        el("b", why),
        " Send the job's file along with it: the handbook opens that, each check with its calculator"
        " filled in.",
    )


def _signatures() -> Html:
    return el(
        "div",
        *(
            el("p", el("b", words), *(el("span", what) for what in ("Name", "Date", "Signature")))
            for words in ("Machined and measured", "Checked before closing up")
        ),
        class_="sheet-sign",
    )
