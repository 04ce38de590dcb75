"""What the handbook weighs when it has grown: the copies are calculators of their own that answer as the first do."""

import json
import subprocess
import sys

from calc.stations import index as stations
from scripts import growth
from scripts.runtime import bundle


def run(folder, *arguments: str) -> str:
    command = [sys.executable, "-m", "calc", *arguments]
    return subprocess.run(command, cwd=folder, capture_output=True, text=True, check=True).stdout


def test_a_copy_answers_as_the_first_and_stands_on_formulas_of_its_own(tmp_path):
    growth.grown(bundle.CALC, tmp_path, 1)
    listed = json.loads(run(tmp_path, "list", "--json"))
    assert len(listed) == 2 * len(stations.ids())
    first, copy = (run(tmp_path, "run", id, "--example") for id in ("sine-bar", "sine-bar-2"))
    assert first == copy
    formula = tmp_path / "calc/formulas/trigonometry_2.py"
    spoilt = formula.read_text(encoding="utf-8").replace("length * sin(angle)", "2 * length * sin(angle)", 1)
    formula.write_text(spoilt, encoding="utf-8")
    assert (
        run(tmp_path, "run", "sine-bar", "--example")
        == first
        != run(tmp_path, "run", "sine-bar-2", "--example")
    )
