"""Pin the Python packages again: `python -m scripts.pin` (needs `uv`, from PyPI).

Each `requirements/*.in` names what we use; the `.txt` beside it holds one version of everything
that comes along, for all Python versions and machines alike, with the hashes of all its files.
"""

import subprocess
import sys
from pathlib import Path

REQUIREMENTS = Path(__file__).resolve().parent / "requirements"
# What is installed into one environment must agree.
CONSTRAINTS = {
    "test": ("--constraints", "site.txt"),
    "audit": ("--constraints", "test.txt"),
    "nightly": ("--constraints", "test.txt"),
    "successor": ("--constraints", "test.txt"),
}


def main() -> None:
    for name in ("site", "node", "test", "audit", "nightly", "successor"):
        subprocess.run(
            [
                "uv",
                "pip",
                "compile",
                "--quiet",
                "--universal",
                "--fork-strategy",
                "fewest",
                "--python-version",
                "3.11",
                "--generate-hashes",
                "--no-emit-index-url",
                "--custom-compile-command",
                "python -m scripts.pin",
                *sys.argv[1:],
                *CONSTRAINTS.get(name, ()),
                f"{name}.in",
                "--output-file",
                f"{name}.txt",
            ],
            cwd=REQUIREMENTS,
            check=True,
        )


if __name__ == "__main__":
    main()
