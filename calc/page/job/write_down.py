"""A form for a reading that no calculator asks for, on the job's own page and with a check."""

from calc.job.checking import sheet_of
from calc.job.contents import STAGES
from calc.page.html import Html, children, el
from calc.page.job.forms import QUIET, field, message, picks, reasons
from calc.page.job.pieces import job_of, limits, what_group
from calc.reference.engine import Feature


def write(asked: dict) -> dict:
    """The form again, for the feature that was chosen in it."""
    stages, only = tuple(asked["stages"].split()), tuple(asked["only"].split())
    return {"html": {"write": write_down(job_of(asked["job"]), asked, stages, only, asked["form"])}}


def write_down(
    job: dict, asked: dict, stages: tuple[str, ...], only: tuple[str, ...] = (), key: str = "write"
) -> Html:
    """The form. Once the feature is chosen it shows places and limits.

    `only` are the features to choose from, all that can be measured where it is empty; `asked` holds what is
    chosen already. For a place that was read before it asks why, once that was refused.
    """
    sheet = sheet_of(job)
    features = sheet.features if sheet else {}
    offered = [features[id] for id in only if id in features] or [f for f in features.values() if not f.terms]
    alone = len(offered) == 1
    chosen = asked.get("feature", "")
    feature = next((f for f in offered if f.id == chosen), offered[0] if alone else None)
    hidden = [
        el("input", type="hidden", name=name, value=value)
        for name, value in (("stages", " ".join(stages)), ("only", " ".join(only)), ("form", key))
    ]
    return el(
        "form",
        *hidden,
        el("div", data_job_kept=key, role="status"),
        el("input", type="hidden", name="feature", value=offered[0].id)
        if alone
        else _which_size(offered, feature, key),
        _reading_of(job, feature, asked, stages, key, named=alone) if feature else None,
        message(key, ""),
        data_job_call="add",
        data_job_form=key,
        **QUIET,
        class_="job-form",
    )


def _which_size(offered: list[Feature], chosen: Feature | None, key: str) -> Html:
    """The features to choose from, by groups of the sheet."""
    by_group: dict[str, list[Feature]] = {}
    for feature in offered:
        by_group.setdefault(feature.id.partition(".")[0], []).append(feature)
    groups = [
        el(
            "optgroup",
            *(el("option", f.label, value=f.id, selected=f is chosen) for f in found),
            label=what_group(group),
        )
        for group, found in by_group.items()
    ]
    entry = el(
        "select",
        el("option", "Choose…", value="", selected=chosen is None),
        *groups,
        id=f"{key}-feature",
        name="feature",
        data_job_again="write",
    )
    return el(
        "div",
        el("label", "Which size", for_=f"{key}-feature"),
        el("div", entry, class_="entry"),
        class_="field",
    )


def _reading_of(
    job: dict, feature: Feature, asked: dict, stages: tuple[str, ...], key: str, named: bool
) -> Html:
    """What is asked of one feature; `named` where no choice above it says which."""
    where = [(place, place) for place in feature.places]
    when = [(stage, STAGES[stage]) for stage in stages]
    return children(
        el(
            "p",
            children(el("strong", feature.label), ". ") if named else None,
            *limits(job, feature.id),
            class_="job-limits",
        ),
        picks(key, "place", "Which one?", where, asked.get("place", "")) if where else None,
        (
            picks(key, "stage", "When?", when, asked.get("stage") or "finished")
            if len(when) > 1
            else el("input", type="hidden", name="stage", value=stages[0])
        ),
        field(
            key,
            "What you read",
            "text",
            hint=f"Measure with {feature.tool}." if feature.tool else "",
            inputmode="decimal",
            maxlength=100,
        ),
        el("div", *reasons(key), data_job_reasons=True, hidden=True),
        el("div", el("button", "Keep", type="submit", class_="go"), class_="job-buttons"),
    )
