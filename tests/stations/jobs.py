"""What a job calls for, from readings: its checks and what is to be ordered."""

from calc.reference.engine import engine
from calc.stations import index as stations
from tests.job.jobs import job, reading


def checks(*readings, **fields) -> list:
    return stations.checks(
        job(**{"received": "", "readings": [reading(*told) for told in readings], **fields})
    )


def titles(*readings, **fields) -> list:
    return [check.title for check in checks(*readings, **fields)]


def nominal(*groups, sheet="TS-16", doubt=""):
    """Every size of these groups read at its nominal size; lengths with a doubt."""
    return [
        (f.id, place, "finished", f.text + (doubt if f.text.endswith(" mm") else ""))
        for f in engine(sheet).features.values()
        if not f.follows and f.id.partition(".")[0] in groups
        for place in f.places or ("",)
    ]


def by_title(found, title):
    return next(check for check in found if check.title == title)


def needed(*readings, **fields) -> list:
    return stations.orders(job(**{"readings": [reading(*told) for told in readings], **fields}))


def said(row) -> tuple:
    return row.part, row.size.plain(), row.places, row.state


def finished(feature, **sizes):
    """Readings as finished, by place: finished("crank.main_journal", p1="54.743 mm")."""
    return [
        (feature, place.removeprefix("p").replace("_", " "), "finished", text)
        for place, text in sizes.items()
    ]
