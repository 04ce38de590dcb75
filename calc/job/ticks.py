"""The checks that whoever closes the engine has ticked off.

A tick is a line of what was done that bears its check's name. So it says when and by whom, is struck and put
back as any line, comes back to the shop with the others, and a handbook that knows nothing of ticks reads it
as what it is: a line.
"""

from calc.job.record import Line, add_done, done

PREFIX = "check-"


def line_of(check: str) -> str:
    """The line by which the check of that id (calc.stations.index) is ticked off."""
    return PREFIX + check


def is_tick(line: Line) -> bool:
    return line.line.startswith(PREFIX)


def ticks(job: dict) -> dict[str, dict]:
    """{id of a check: the entry that ticked it off last, with its time and hand} of those that stand."""
    return {
        line.line.removeprefix(PREFIX): line.entries[-1]
        for line in done(job)
        if is_tick(line) and not line.struck
    }


def tick(job: dict, check: str, title: str, at: str, by: str) -> dict:
    """The job with that check ticked off; one that is ticked off already stays so. It is taken back by
    striking its line."""
    return add_done(job, f"Checked: {title}", at, by, line_of(check))
