"""Test everything: `python3 scripts/test.py [arguments for pytest]`.

Needs nothing but Python and the package registry: what is missing is installed into `.venv`, and
a browser where we may install one. The whole runs in a process for each core (`-n 1` or another number says
otherwise); what is named runs in one, which begins sooner.
"""

from __future__ import annotations

import os
import sys
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent
# Run as a file, this folder stands first, and this file in it would hide the standard library's `test`.
sys.path[0] = str(ROOT)

from scripts import environment  # noqa: E402


def main() -> None:
    try:
        environment.enter("scripts.test", "site", "test")
        os.environ["SIZEBOOK_CHROMIUM"] = environment.browser()
        environment.typeface()
    except environment.Missing as missing:
        sys.exit(str(missing))

    import pytest

    from scripts.build import BuildFailed, build

    asked = sys.argv[1:]
    whole = not any(names_tests(each) for each in asked)
    if whole and "SIZEBOOK_SITE" not in os.environ:
        try:
            build()  # once, before several processes want it
        except BuildFailed as error:
            sys.exit(f"The site was not built. {error}")
    sys.exit(pytest.main(["--rootdir", str(ROOT), *(processes() if whole else []), *asked]))


def names_tests(argument: str) -> bool:
    return Path(argument.partition("::")[0]).exists()


def processes() -> list[str]:
    """A process for each core: each begins with its half, in order, and takes of the other's when it is done,
    so that both end together."""
    return ["-n", str(os.cpu_count() or 1), "--dist", "worksteal"]


if __name__ == "__main__":
    main()
