"""Where measurements stand: `scripts/runtime/MEASURED.md`, a part for each bench, which the bench writes
itself. `python -m scripts.measured` runs them all, which takes a quiet machine half an hour.
"""

from __future__ import annotations

import os
import platform
import re
import subprocess
import sys
from datetime import date
from pathlib import Path

from scripts import environment

PAGE = environment.ROOT / "scripts/runtime/MEASURED.md"
BENCHES = ("scripts.bench", "scripts.bench_page", "scripts.bench_calc", "scripts.growth")
HEAD = """# Measured

Written by the benches, each its own part, when they have run; nothing here is written by hand. Times are worth their ratios: both sides
of a ratio were measured in one run, on one machine, taking turns.
"""


def write(module: str, table: str, page: Path = PAGE) -> None:
    """Put a bench's table in the place of its last one. `module` names the bench, such as scripts.bench."""
    text = page.read_text(encoding="utf-8") if page.exists() else HEAD
    parts = dict(re.findall(r"^## `([\w.]+)`\n(.*?)(?=^## |\Z)", text, re.MULTILINE | re.DOTALL))
    where = f"{date.today().isoformat()}, {platform.system()} {platform.machine()}, {os.cpu_count()} cores"
    parts[module] = f"\n{where}\n\n```\n{table.rstrip()}\n```\n\n"
    body = "".join(f"## `{name}`\n\n{part.strip()}\n\n" for name, part in sorted(parts.items()))
    environment.put(page, f"{HEAD}\n{body}".rstrip() + "\n")


def main() -> None:
    failed = [name for name in BENCHES if subprocess.run([sys.executable, "-m", name]).returncode]
    if failed:
        sys.exit(f"Not measured: {', '.join(failed)}.")


if __name__ == "__main__":
    main()
