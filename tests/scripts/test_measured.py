"""Measurements are written by what measured them, each in its own place."""

import re
from types import SimpleNamespace

import pytest

from scripts import measured


def test_a_bench_writes_its_own_part_and_leaves_the_others(tmp_path):
    page = tmp_path / "MEASURED.md"
    measured.write("scripts.bench", "cold 0.27", page)
    measured.write("scripts.bench_calc", "import 60 ms\nexample 0.4 ms", page)
    measured.write("scripts.bench", "cold 0.22\n", page)
    text = page.read_text(encoding="utf-8")
    assert text.startswith(measured.HEAD) and "0.27" not in text
    assert text.count("## `scripts.bench`") == text.count("cold 0.22") == 1
    assert "import 60 ms\nexample 0.4 ms\n```" in text and text.endswith("```\n")
    measured.write("scripts.bench", "cold 0.22", page)
    assert page.read_text(encoding="utf-8") == text


def test_one_command_runs_every_bench_and_tells_which_did_not_measure(monkeypatch):
    ran = []

    def run(command):
        ran.append(command[-1])
        return SimpleNamespace(returncode=int(command[-1] == "scripts.bench_page"))

    monkeypatch.setattr(measured.subprocess, "run", run)
    with pytest.raises(SystemExit, match=r"Not measured: scripts\.bench_page\.$"):
        measured.main()
    assert ran == list(measured.BENCHES)
    page = measured.PAGE.read_text(encoding="utf-8")
    assert set(re.findall(r"^## `(.*)`", page, re.MULTILINE)) <= set(ran)
