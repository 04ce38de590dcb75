"""How long a large job takes: `python -m scripts.bench_job [READINGS …]`, milliseconds of the processor, in
CPython.

Each reading has a text of its own. "sheet" takes the sheet's places in turn, so that they have a history;
"places" are unlike places, which only a crafted job has.
"""

from __future__ import annotations

import json
import sys
import time

from calc.job import checking, contents, files, record, share
from calc.page.live import answer
from calc.reference.engine import demo

NOW = "2026-11-25T14:15+01:00"


def job(n: int, kind: str) -> dict:
    spots = [
        (feature, place)
        for feature in demo().features.values()
        if not feature.terms
        for place in feature.places or ("",)
    ]
    readings, seen = [], set()
    for i in range(n):
        feature, place = (
            spots[i % len(spots)] if kind == "sheet" else (demo().feature("crank.main_journal"), f"p{i}")
        )
        where = (feature.id, place, list(contents.STAGES)[i // len(spots) % 3])
        readings.append(
            dict(zip(("feature", "place", "stage"), where))
            | {
                "text": feature.form.write(feature.nominal * (1 + i * 1e-7), "metric"),
                "at": f"2026-11-25T{i // 60 % 24:02}:{i % 60:02}+01:00",
                "by": "MK",
                "why": "Measured again" if where in seen else "",
            }
        )
        seen.add(where)
    return checking.checked(
        record.new("bench", "Large", demo().name, "everything", NOW) | {"readings": readings}
    )


def measured(n: int, kind: str) -> dict[str, float]:
    made = job(n - 1, kind)  # room for one more
    text, one = files.dump(made), made["readings"][0]

    def ask(call, **fields):
        found = json.loads(
            answer(
                json.dumps(
                    {
                        "call": f"job-{call}",
                        "system": "metric",
                        "now": NOW,
                        "by": "JT",
                        "root": "http://x/",
                        "needs": [],
                        **fields,
                    }
                )
            )
        )
        assert found["ok"], found["errors"]

    steps = {
        "open": lambda: ask(
            "view",
            jobs=[{"key": "j", "kind": "job", "text": text, "kept": NOW, "exported": "", "changed": True}],
            key="j",
            engines=[demo().name],
            safety="persistent",
        ),
        "a reading": lambda: ask(
            "add",
            job=text,
            feature=one["feature"],
            place=one["place"],
            stage=one["stage"],
            text=one["text"],
            why="Measured again",
        ),
        "a line": lambda: ask("done", job=text, text="Ground"),
        "fields": lambda: ask(
            "fields", job=text, kind="job", calculator="guide-fit", place="1 intake", stages=["received"]
        ),
        "link": lambda: share.decode(share.encode(made)),
        "received": lambda: ask("received", job=text, key="s", kept=NOW, sheets=[], mine=[]),
        "sheet": lambda: ask("sheet", job=text, key="j"),
    }
    found = {}
    for name, step in steps.items():
        begun = time.process_time()
        step()
        found[name] = 1000 * (time.process_time() - begun)
    return found


if __name__ == "__main__":
    for kind in ("sheet", "places"):
        for n in map(int, sys.argv[1:] or ("500", "5000")):
            print(
                f"{kind:<7}{n:>6}  " + ", ".join(f"{name} {ms:.0f}" for name, ms in measured(n, kind).items())
            )
