"""Test everything: `python3 scripts/test.py [arguments for pytest]`.

Needs nothing but Python and the package registry: what is missing is installed into `.venv`, and
a browser where we may install one.
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

    sys.exit(pytest.main(["--rootdir", str(ROOT), *sys.argv[1:]]))


if __name__ == "__main__":
    main()
