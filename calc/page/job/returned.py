"""What a sheet that came back has for the job that it tells of, and the one tap that takes it over."""

from collections.abc import Sequence

from calc.job import returned
from calc.job.checking import feature_of
from calc.job.contents import MOST_DONE, STAGES
from calc.job.record import Line
from calc.job.returned import New
from calc.job.ticks import is_tick
from calc.page.html import Html, children, el
from calc.page.job.pieces import count, hour, job_of, made, reading

MOST_SHOWN = 40
_LONGEST_NAME = 60  # of the sheet, in a reason


def offer(job: dict, key: str, sheet: dict, of: str, kept: str, now: str, *, on_sheet: bool) -> Html | None:
    """What of the sheet (on this device as `of`, since `kept`) the job (`key`) has not. `on_sheet`: it stands
    on the sheet's own page.

    None where the sheet is of another job, and on the job's page where it has nothing new.
    """
    if not returned.belongs(job, sheet):
        return None
    new, late = returned.compare(job, sheet, _named(sheet, kept))
    lines, beyond = returned.done(job, sheet)
    if not new and not lines and not on_sheet:
        return None
    belongs = children(
        "This sheet" if on_sheet else children("The sheet that came here ", hour(kept, now)),
        " belongs to ",
        children("the job ", el("strong", job["name"]), " on this device") if on_sheet else "this job",
    )
    return el(
        "section",
        (
            _offered(job, new, lines, belongs, (key, of), now)
            if new or lines
            else _nothing_new(belongs, bool(late))
        ),
        _left_out(
            "because the job has a later reading of the same size",
            [_line(job, one, now, False) for one in late],
        ),
        _left_out(
            f"because a job has room for {MOST_DONE} lines of what was done", [line.text for line in beyond]
        ),
        class_="job-returned",
    )


def _offered(
    job: dict, new: list[New], lines: list[Line], belongs: Html, keys: tuple[str, str], now: str
) -> Html:
    """What the job has not, and the one tap that takes it over; `keys` are those of the job and of the
    sheet."""
    many = len(new) + len(lines)
    has = [
        el("strong", count(len(found), what)) for found, what in ((new, "reading"), (lines, "line")) if found
    ]
    tap = el(
        "button",
        "Take it over into the job" if many == 1 else f"Take all {many} over into the job",
        type="button",
        data_job_do="take-over",
        data_key=keys[0],
        data_of=keys[1],
        class_="go",
    )
    return children(
        el(
            "p",
            belongs,
            " and has ",
            *has[:1],
            *(children(" and ", more) for more in has[1:]),
            " of what was done" if lines else None,
            " that the job has not:",
        ),
        _listed([_line(job, one, now, True) for one in new] + [_done(line) for line in lines]),
        el("div", tap, class_="job-buttons"),
        el(
            "p",
            "Nothing is overwritten: a size that the job has already stays in its history, and what was"
            " taken over can be taken back there" + (", a line struck." if lines else "."),
            class_="job-facts",
        ),
    )


def _nothing_new(belongs: Html, late: bool) -> Html:
    return el(
        "p",
        belongs,
        ", which has ",
        "none of its later readings to take." if late else "all of its readings.",
        tabindex="-1",
        data_job_taken=True,
    )


def _left_out(why: str, found: Sequence[str]) -> Html | None:
    return children(el("p", f"Left out, {why}:"), _listed(found)) if found else None


def _listed(found: Sequence[str]) -> Html:
    return el(
        "ul",
        *(el("li", line) for line in found[:MOST_SHOWN]),
        el("li", f"and {len(found) - MOST_SHOWN} more") if len(found) > MOST_SHOWN else None,
    )


def _done(line: Line) -> Html:
    said = "Struck: " if line.struck else "" if is_tick(line) else "Done: "
    return children(said, line.text)


def _line(job: dict, one: New, now: str, replaced: bool) -> Html:
    feature, read = feature_of(job, one.reading["feature"]), one.reading
    what = reading(job, read) if read["text"] else "taken back"
    who = ", ".join(filter(None, (STAGES[read["stage"]], hour(read["at"], now), read["by"])))
    instead = (
        children(", instead of ", reading(job, one.before))
        if replaced and one.before and one.before["text"]
        else None
    )
    return children(
        feature.label if feature else read["feature"],
        " ",
        read["place"],
        ": ",
        what,
        instead,
        " ",
        el("span", who, class_="job-who"),
    )


def take_over(asked: dict) -> dict:
    """The job with the readings of a sheet and the lines of what was done that it has not; `kept` is when the
    sheet came here."""
    sheet = job_of(asked["sheet"])
    return made(returned.take_over(job_of(asked["job"]), sheet, _named(sheet, asked["kept"])))


def _named(sheet: dict, kept: str) -> str:
    return f"From the sheet “{sheet['name'][:_LONGEST_NAME]}” that came back {hour(kept)}"
