"""What a link or a file asks for is bounded before anything is made of it, and a large job grows no faster than it is large.

Memory is what tracemalloc counts; work is counted in lines of Python that ran, which no busy machine changes.
"""

import json
import sys
import time
import tracemalloc

import pytest

from calc.job import contents, files, share
from calc.job.contents import JobError
from calc.job.files import load
from calc.job.share import decode
from calc.page.live import answer
from tests.job.jobs import AT, job, reading
from tests.job.test_share import deflated, sealed

MOST_MEMORY, MOST_SECONDS = 64_000_000, 2.0
MANY = 8_000_000
HEAD = "id\x1fn\x1fTS-16\x1f\x1fr\x1f2026-11-25\x1f"
COLUMNS = (
    "head",
    "feature",
    "place",
    "stages",
    "numbers",
    "rest",
    "at",
    "by",
    "why",
    "part",
    "gauge",
    "of",
    "line",
    "done",
    "done_at",
    "done_by",
)


def code(form="2", **columns) -> str:
    """A link's code with these columns in the place of those of one ordinary reading."""
    ordinary = dict.fromkeys(COLUMNS, "") | {
        "head": HEAD,
        "feature": "crank.main_journal",
        "stages": "r",
        "numbers": "a54",
        "rest": " mm",
        "at": "0",
    }
    return sealed(deflated("\x1e".join((ordinary | columns).values()).encode()), form)


def rows(n=5000, **columns) -> str:
    return code(**{"stages": "r" * n, "numbers": "a1" * n, **columns})


CODES = {
    "nothing, inflated": sealed(deflated(bytes(100_000_000)), "2"),
    "columns": sealed(deflated(b"\x1e" * MANY), "2"),
    "readings": code(stages="r" * MANY),
    "fields": code(feature="\x1f" * MANY),
    "numbers": code(numbers="a" * MANY),
    "one number": code(numbers="a" + "9" * MANY),
    "the job's own line": code(head=HEAD + "\x1f" * MANY),
    "lines done": code(done="\x1f" * MANY),
    "names of lines": code(done="x", line="\x1f" * MANY),
    "lines done, form 1": sealed(deflated((HEAD + "\x1f" * MANY + "\x1e" * 11).encode()), "1"),
    "a long text": code(rest="9" * MANY),
    "times": rows(at="\x1f".join(["9" * 4000] * 5000)),
    "all of it long": rows(
        why="w" * 200, by="b" * 60, place="p" * 40, feature="a." + "b" * 70, part="1" * 40, of="o" * 40
    ),
    "no two alike": rows(
        feature="shop.jig",
        numbers="a" * 5000,
        rest="\x1f".join(f"{n} {n}/{n + 7} in ± 0.00{n} thou" for n in range(1, 5001)),
    ),
    "of no sheet": rows(
        feature="shop.jig", numbers="a" * 5000, rest="\x1f".join(f"{n} cm3" for n in range(1, 5001))
    ),
    "characters": "2" + "A" * 20_000_000,
    "spaces": " " * 20_000_000,
}
FILES = {
    "a key many times": "{" + ",".join(['"k": 1'] * 40_000) + "}",
    "keys": "{" + ",".join(f'"k{n}": 1' for n in range(40_000)) + ', "k7": 1}',
    "lists of nothing": "[" + "[]," * 1_900_000 + "[]]",
    "texts of nothing": "[" + '"ab",' * 1_100_000 + '""]',
    "a whole number": "9" * 4_000_000,
    "numbers": "[" + ",".join(["9" * 4000] * 1400) + "]",
    "a fraction": "0." + "1" * 5_000_000,
    "deep": "[" * 3_000_000,
    "deep objects": '{"a":' * 1_000_000,
    "a long text": '"' + "a" * 5_900_000 + '"',
    "an open text": '"' + "\\n" * 2_900_000,
    "quotes": '["' + '\\"' * 2_900_000 + '"]',
    "commas": "[" + "," * 5_900_000,
    "done, form 1": json.dumps({**job(), "version": 1, "done": [str(n) for n in range(60_000)]}),
    "bytes": b'"' + "\U0001f6e0".encode() * 2_400_000 + b'"',
    "more bytes": b" " * 11_000_000,
}


def taken(read, hostile) -> tuple[float, int]:
    """Seconds of the processor, and the most bytes that stood at once beside what is read."""
    begun = time.process_time()
    refused_or_read(read, hostile)
    seconds = time.process_time() - begun
    tracemalloc.start()
    refused_or_read(read, hostile)
    peak = tracemalloc.get_traced_memory()[1]
    tracemalloc.stop()
    return seconds, peak


def refused_or_read(read, hostile):
    try:
        read(hostile)
    except JobError as error:
        assert str(error).endswith(".") and len(str(error)) < 400


@pytest.mark.parametrize("hostile", CODES.values(), ids=CODES)
def test_no_link_takes_more_than_a_phone_has(hostile):
    seconds, peak = taken(decode, hostile)
    assert peak < MOST_MEMORY and seconds < MOST_SECONDS


@pytest.mark.parametrize("hostile", FILES.values(), ids=FILES)
def test_no_file_takes_more_than_a_phone_has(hostile):
    seconds, peak = taken(load, hostile)
    assert peak < MOST_MEMORY and seconds < MOST_SECONDS


def test_the_largest_job_that_there_may_be_is_read_within_the_same_bounds():
    full = job(
        readings=[
            reading(place="\U0001f6e0" * 40, why="\U0001f6e0" * 200, by="\U0001f6e0" * 60, at=AT)
            for _ in range(5000)
        ]
    )
    file = files.dump(full)
    seconds, peak = taken(load, file)
    assert (
        peak < MOST_MEMORY
        and seconds < MOST_SECONDS
        and len(file) < contents.LONGEST_FILE
        and len(file.encode()) < contents.MOST_BYTES
    )
    assert load(file.encode()) == full


def test_a_job_that_no_link_holds_says_so(monkeypatch):
    monkeypatch.setattr(share, "LONGEST", 60)
    with pytest.raises(JobError, match="too large for a code or a link; give its file instead"):
        share.encode(job(readings=[reading()]))


# --- How work grows


def large(n: int) -> str:
    """As many readings, no two of the same place, some of them corrected and taken back; of places that the sheet has not, as many as there may be."""
    made = [reading(place=f"p{i}", text=f"54.{i:04} mm ± 0.004 mm") for i in range(n // 2)]
    return files.dump(
        job(
            readings=made
            + [reading(place=f"p{i}", text="" if i % 3 else "54.9 mm", why="again") for i in range(n // 2)]
        )
    )


def ask(call, **fields):
    found = json.loads(
        answer(
            json.dumps(
                {
                    "call": f"job-{call}",
                    "system": "metric",
                    "now": AT,
                    "by": "MK",
                    "root": "http://x/",
                    "needs": [],
                    **fields,
                }
            )
        )
    )
    assert found["ok"], found["errors"]


ASKED = {
    "open": lambda text: ask(
        "view",
        jobs=[{"key": "j", "kind": "job", "text": text, "kept": AT, "exported": "", "changed": True}],
        key="j",
        engines=["TS-16"],
        safety="persistent",
    ),
    "a reading": lambda text: ask(
        "add",
        job=text,
        feature="crank.main_journal",
        place="p7",
        stage="finished",
        text="54.9 mm",
        why="again",
    ),
    "a line": lambda text: ask("done", job=text, text="Ground"),
    "fields": lambda text: ask(
        "fields",
        job=text,
        kind="job",
        calculator="guide-fit",
        place="1 intake",
        stages=["received", "finished"],
    ),
    "received": lambda text: ask(
        "received", job=text, key="s", kept=AT, sheets=[], mine=[{"key": "m", "text": text}]
    ),
    "sheet": lambda text: ask("sheet", job=text, key="j"),
}


def lines_run(work) -> int:
    """Also those of a comprehension: each turn of it is one."""
    ran = 0

    def trace(frame, event, _):
        nonlocal ran
        ran += event == "line"
        return trace

    before = sys.gettrace()
    sys.settrace(trace)
    try:
        work()
    finally:
        sys.settrace(before)
    return ran


@pytest.mark.parametrize("call", ASKED.values(), ids=ASKED)
def test_work_grows_as_a_job_does(call):
    """Four times the readings take at most five times the work; where each reading looks through all of them it is near sixteen."""
    small, big = large(200), large(800)
    call(small), call(big)  # what is kept of texts that were read once is kept now
    few, many = lines_run(lambda: call(small)), lines_run(lambda: call(big))
    assert many < 5 * few
