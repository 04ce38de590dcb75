"""What takes too long for every change: `python3 -m scripts.nightly [sweep] [same] [mutants] [pages]`, all
without a name.

    sweep    every formula, every calculator and its trends with two thousand new examples each, not the same
             hundred as in each test
    same     a thousand accepted entries of every calculator in the reader's Python and in CPython      [--count N] [--seed N] [--only ID …]
    mutants  formulas spoilt in one place after the other: the tests must see it                        [--groups NAME …] [--children N]
    pages    every page against the rules of accessibility, instead of the fewest that hold all that pages are made of

Results stand in .cache/nightly/<name>.json. Ends with 1 where something does not hold. Run it at low
priority: `nice -n 15`.
"""

import argparse
import json
import os
import subprocess
import sys

from scripts import environment

FOLDER = environment.CACHE / "nightly"


def sweep(_options) -> tuple[dict, bool]:
    tests = ["tests/formulas", "tests/test_every_calculator.py", "tests/test_trends.py"]
    return tested(tests, {"SIZEBOOK_HYPOTHESIS": "thorough"})


def pages(_options) -> tuple[dict, bool]:
    return tested(
        ["tests/browser/test_accessibility.py", "tests/browser/test_standing.py"],
        {"SIZEBOOK_PAGES": "every", "SIZEBOOK_CHROMIUM": environment.browser()},
    )


def tested(tests: list[str], how: dict[str, str]) -> tuple[dict, bool]:
    """Run tests with more in their environment."""
    done = subprocess.run(
        [sys.executable, "-m", "pytest", *tests, "-q"],
        cwd=environment.ROOT,
        env={**os.environ, **how},
        check=False,
    )
    return {"tests": tests, "exit": done.returncode}, done.returncode == 0


def compare(options) -> tuple[dict, bool]:
    from scripts.nightly import same

    told = same.run(options.only, options.count, options.seed)
    return told, all(
        not each["shown_differently"] and each["largest"] < same.LARGEST for each in told.values()
    )


def spoil(options) -> tuple[dict, bool]:
    from scripts.nightly import mutants

    told, holds = {}, True
    for group in options.groups or mutants.GROUPS:
        found = mutants.run([group], options.children)
        for module, each in found.items():
            print(
                f"{module:32} {each['killed']:5} killed, {each['survived']} survived, {each['untested']}"
                f" untested: {each['score']:.0%}",
                flush=True,
            )
            holds = holds and (group not in mutants.FORMULAS or each["score"] >= mutants.WANTED)
        told |= found
    return told, holds


WORK = {"sweep": sweep, "same": compare, "mutants": spoil, "pages": pages}


def main() -> None:
    try:
        environment.enter("scripts.nightly", "site", "test", "nightly")
    except environment.Missing as missing:
        sys.exit(str(missing))
    parser = argparse.ArgumentParser(
        prog="scripts.nightly", description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter
    )
    parser.add_argument("work", nargs="*", help=", ".join(WORK))
    parser.add_argument("--count", type=int, default=1000)
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--only", nargs="*", default=())
    parser.add_argument("--groups", nargs="*", default=())
    parser.add_argument("--children", type=int, default=1)
    options = parser.parse_args()
    if unknown := set(options.work) - set(WORK):
        parser.error(f"{', '.join(sorted(unknown))} is none of {', '.join(WORK)}")
    FOLDER.mkdir(parents=True, exist_ok=True)
    all_hold = True
    for name in options.work or WORK:
        told, holds = WORK[name](options)
        environment.put(FOLDER / f"{name}.json", json.dumps(told, indent=1, ensure_ascii=False))
        print(f"{name}: {'holds' if holds else 'DOES NOT HOLD'}", flush=True)
        all_hold = all_hold and holds
    sys.exit(not all_hold)


if __name__ == "__main__":
    main()
