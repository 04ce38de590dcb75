"""What the project rests on, looked through: `python3 scripts/audit.py`.

- Every Python package is pinned to one version with the hashes of its files, every npm package to one with
  its digest.
- What is installed is what is pinned, no more, and its files are as they came.
- The licence of each.
- Known faults of each, by pip-audit and npm audit, which ask databases elsewhere.

Ends with 0 where all was looked through and is in order, 1 where something is not, and 2 where nothing was
found but not all could be looked through: what was not is always said by name.
"""

from __future__ import annotations

import base64
import hashlib
import json
import re
import shutil
import subprocess
import sys
import venv
from dataclasses import dataclass
from importlib import metadata
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent
if __name__ == "__main__":
    sys.path[0] = str(ROOT)  # run as a file, this folder stands first

from scripts import environment  # noqa: E402

LISTS = ("site", "test", "node", "audit", "nightly", "successor")
INSTALLED = ("site", "test")  # in every environment that tests
OPTIONAL = ("node", "audit", "nightly", "successor")  # where they were needed
OF_PYTHON = {"pip", "setuptools"}  # venv brings them
LOCKED = (ROOT / "scripts/runtime", ROOT / "scripts/typecheck")  # each with a package-lock.json
PINNED = re.compile(
    r"^(?P<name>[A-Za-z0-9._-]+)==(?P<version>[^\s;]+)\s*(?:;\s*(?P<marker>[^\\]+?))?\s*(?P<hashes>(?:--hash=sha256:[0-9a-f]{64}\s*)+)$"
)


@dataclass(frozen=True)
class Pin:
    name: str
    version: str
    marker: str
    hashes: int


@dataclass
class Known:
    """What a database of faults was asked: `checked` are the packages that it knew, `faults` what it told of
    them."""

    checked: list[str]
    faults: list[str]
    unchecked: dict[str, str]  # package → why


# --- pins -------------------------------------------------------------------


def normal(name: str) -> str:
    """PyPA, "Names and normalization"."""
    return re.sub(r"[-_.]+", "-", name).lower()


def pins(text: str) -> tuple[list[Pin], list[str]]:
    """The pins of a requirements list, and what in it is none."""
    found, wrong = [], []
    lines = re.sub(r"\\\n", " ", text).splitlines()
    for line in (re.sub(r"(^|\s)#.*", "", line).strip() for line in lines):
        if not line:
            continue
        pin = PINNED.match(line)
        if pin:
            found.append(
                Pin(
                    normal(pin["name"]),
                    pin["version"],
                    (pin["marker"] or "").strip(),
                    pin["hashes"].count("--hash"),
                )
            )
        else:
            wrong.append(f"“{line[:80]}” is not pinned to one version with hashes")
    return found, wrong


def lock_faults(lock: dict) -> list[str]:
    """What in an npm lock would let something else be installed (npm documentation, package-lock.json)."""
    wrong = []
    if lock.get("lockfileVersion") != 3:
        wrong.append("package-lock.json is not of version 3")
    packages = lock.get("packages", {})
    for kind in ("dependencies", "devDependencies"):
        for name, version in packages.get("", {}).get(kind, {}).items():
            held = packages.get(f"node_modules/{name}", {}).get("version")
            if version != held:
                wrong.append(f"npm {name} is asked for as {version}, and {held} is locked")
    for path, package in packages.items():
        if not path:
            continue
        if not str(package.get("integrity", "")).startswith("sha512-"):
            wrong.append(f"npm {path} has no digest")
        if package.get("link") or not package.get("resolved", "https://registry.npmjs.org/").startswith(
            "https://registry.npmjs.org/"
        ):
            wrong.append(f"npm {path} does not come from the registry")
        if package.get("hasInstallScript"):
            wrong.append(f"npm {path} wants to run a script when it is installed")
    return wrong


# --- what is installed ------------------------------------------------------


def wanted_here(pinned: list[Pin]) -> dict[str, str]:
    """Name → version of those pins that hold for this Python and machine."""
    from packaging.markers import Marker

    return {pin.name: pin.version for pin in pinned if not pin.marker or Marker(pin.marker).evaluate()}


def not_as_pinned(installed: dict[str, str], must: dict[str, str], may: dict[str, str]) -> list[str]:
    """Where an environment differs from its lists."""
    wrong = [
        f"{name} {version} is pinned, {installed.get(name, 'nothing')} is installed"
        for name, version in must.items()
        if installed.get(name) != version
    ]
    return wrong + [
        f"{name} {version} is installed, and no list names it"
        for name, version in installed.items()
        if name not in OF_PYTHON and name not in must and may.get(name) != version
    ]


def changed_files(distribution: metadata.Distribution) -> list[str]:
    """Files that are not what the package's own record says (PyPA, "Recording installed projects")."""
    wrong = []
    for file in distribution.files or ():
        if file.hash is None or file.hash.mode != "sha256":
            continue
        path = Path(distribution.locate_file(file))
        digest = (
            base64.urlsafe_b64encode(hashlib.sha256(path.read_bytes()).digest()).rstrip(b"=").decode()
            if path.exists()
            else "missing"
        )
        if digest != file.hash.value:
            wrong.append(
                f"{distribution.name}: {file} is {'missing' if digest == 'missing' else 'not as it came'}"
            )
    return wrong


def npm_not_as_locked(lock: dict, folder: Path) -> list[str]:
    """Where an installed node_modules differs from the lock."""
    wrong = []
    for path, package in lock["packages"].items():
        if path:
            own = folder.parent / path / "package.json"
            version = json.loads(own.read_text(encoding="utf-8"))["version"] if own.exists() else "nothing"
            if version != package["version"] and not package.get("optional"):
                wrong.append(f"npm {path}: {package['version']} is locked, {version} is installed")
    return wrong


# --- licences ---------------------------------------------------------------


def licence(about: metadata.PackageMetadata) -> str:
    """A package's licence in its own words, the shortest that it gives."""
    classified = [
        c.rpartition(" :: ")[2] for c in about.get_all("Classifier", []) if c.startswith("License :: ")
    ]
    first_line = next(
        (line.strip() for line in (about.get("License") or "").splitlines() if line.strip()), ""
    )
    return (
        about.get("License-Expression")
        or ", ".join(c for c in classified if c != "OSI Approved")
        or first_line[:60]
        or "not stated"
    )


# --- known faults -----------------------------------------------------------


def read_pip_audit(report: dict) -> Known:
    """pip-audit says “No known vulnerabilities found” of packages, too, that it could not ask about: those
    are told apart here."""
    known = Known([], [], {})
    for package in report["dependencies"]:
        if "skip_reason" in package:
            known.unchecked[package["name"]] = re.sub(r": \S+ \([^)]*\)$", "", package["skip_reason"])
            continue
        known.checked.append(package["name"])
        for fault in package.get("vulns", []):
            mended = ", ".join(fault.get("fix_versions", [])) or "no version yet"
            known.faults.append(f"{package['name']} {package['version']}: {fault['id']}, mended in {mended}")
    return known


def read_npm_audit(report: dict, names: list[str]) -> Known:
    """npm audit's report (version 2), which names only what has faults."""
    if report.get("auditReportVersion") != 2:
        why = (
            report.get("message") or report.get("error", {}).get("summary") or "its answer was not understood"
        )
        return Known([], [], dict.fromkeys(names, why))
    return Known(
        names,
        [
            f"npm {name}: {fault['severity']}, versions {fault['range']}"
            for name, fault in report["vulnerabilities"].items()
        ],
        {},
    )


def ask_pip_audit(names: list[str]) -> Known:
    """Asks about the shortest list first: where nothing is known even of that, there is no use in asking
    about the others."""
    known = Known([], [], {})
    try:
        python = _tool()
        for name in sorted(LISTS, key=lambda name: (environment.REQUIREMENTS / f"{name}.txt").stat().st_size):
            done = _run(
                [
                    str(python),
                    "-m",
                    "pip_audit",
                    "-r",
                    str(environment.REQUIREMENTS / f"{name}.txt"),
                    "--require-hashes",
                    "--disable-pip",
                    "--progress-spinner",
                    "off",
                    "--format",
                    "json",
                ]
            )
            told = read_pip_audit(json.loads(done.stdout))
            known = Known(
                sorted({*known.checked, *told.checked}),
                list(dict.fromkeys(known.faults + told.faults)),
                known.unchecked | told.unchecked,
            )
            if not known.checked:
                break
        why = next(iter(known.unchecked.values()), "pip-audit did not name it")
    except (subprocess.SubprocessError, OSError, ValueError, KeyError) as error:
        why = _short(error)
    return Known(
        known.checked,
        known.faults,
        {name: known.unchecked.get(name, why) for name in names if name not in map(normal, known.checked)},
    )


def ask_npm_audit(locked: Path, names: list[str]) -> Known:
    try:
        npm = environment.npm(environment.node())
        done = _run([*npm, "audit", "--package-lock-only", "--json"], locked)
        return read_npm_audit(json.loads(done.stdout), names)
    except (subprocess.SubprocessError, OSError, ValueError, KeyError, environment.Missing) as error:
        return Known([], [], dict.fromkeys(names, _short(error)))


def _tool() -> Path:
    """A Python with pip-audit, in an environment of its own, so that it does not count itself among what it
    looks through."""
    digest = hashlib.sha256((environment.REQUIREMENTS / "audit.txt").read_bytes()).hexdigest()[:12]
    folder = environment.CACHE / "audit" / digest
    python = folder / ("Scripts/python.exe" if sys.platform == "win32" else "bin/python")
    if not (folder / "ready").exists():
        shutil.rmtree(folder, ignore_errors=True)
        venv.create(folder, with_pip=True)
        _run(
            [
                str(python),
                "-m",
                "pip",
                "--disable-pip-version-check",
                "install",
                "--quiet",
                "--require-hashes",
                "--only-binary",
                ":all:",
                "-r",
                str(environment.REQUIREMENTS / "audit.txt"),
            ],
            check=True,
        )
        (folder / "ready").touch()
    return python


def _run(command: list[str], cwd: Path = ROOT, check: bool = False) -> subprocess.CompletedProcess:
    return subprocess.run(command, cwd=cwd, check=check, capture_output=True, text=True, timeout=300)


def _short(error: Exception) -> str:
    return (str(error).splitlines() or [type(error).__name__])[0][:160]


# --- all of it --------------------------------------------------------------


def main() -> int:
    try:
        environment.enter("scripts.audit", *INSTALLED)
    except environment.Missing as missing:
        sys.exit(str(missing))
    wrong: list[str] = []
    pinned: dict[str, list[Pin]] = {}
    for name in LISTS:
        pinned[name], faults = pins((environment.REQUIREMENTS / f"{name}.txt").read_text(encoding="utf-8"))
        wrong += [f"requirements/{name}.txt: {fault}" for fault in faults]
    locks = {
        folder: json.loads((folder / "package-lock.json").read_text(encoding="utf-8")) for folder in LOCKED
    }
    wrong += [fault for lock in locks.values() for fault in lock_faults(lock)]
    npm = {
        folder: {
            path.rpartition("node_modules/")[2]: package for path, package in lock["packages"].items() if path
        }
        for folder, lock in locks.items()
    }
    print(
        f"Pinned: {len({p.name for some in pinned.values() for p in some})} Python packages with"
        f" {sum(p.hashes for some in pinned.values() for p in some)} hashes, {sum(map(len, npm.values()))}"
        " npm packages."
    )

    distributions = {normal(d.name): d for d in metadata.distributions()}
    installed = {name: d.version for name, d in distributions.items()}
    must, may = (
        {k: v for name in names for k, v in wanted_here(pinned[name]).items()}
        for names in (INSTALLED, OPTIONAL)
    )
    wrong += not_as_pinned(installed, must, may)
    wrong += [fault for d in distributions.values() for fault in changed_files(d)]
    print(
        f"Installed: {len(installed)} Python packages in {sys.prefix}, each file compared with its package's"
        " record."
    )
    from scripts.runtime import bundle

    for folder, lock in locks.items():
        wrong += npm_not_as_locked(lock, bundle.packages(environment.CACHE, folder))

    print("\nLicences, in each package's own words:")
    for name, distribution in sorted(distributions.items()):
        print(f"  {name} {distribution.version}: {licence(distribution.metadata)}")
    for name, package in sorted(
        (pair for packages in npm.values() for pair in packages.items()), key=lambda pair: pair[0]
    ):
        print(f"  npm {name} {package['version']}: {package.get('license', 'not stated')}")

    unchecked: dict[str, str] = {}
    print()
    everything = sorted({pin.name for some in pinned.values() for pin in some})
    for what, known in (
        ("Python", ask_pip_audit(everything)),
        *(("npm", ask_npm_audit(folder, sorted(npm[folder]))) for folder in LOCKED),
    ):
        wrong += known.faults
        unchecked |= {f"{what} {name}": why for name, why in known.unchecked.items()}
        print(
            f"Known faults, {what}: {len(known.checked)} packages asked about, {len(known.faults)} faults;"
            f" {len(known.unchecked)} NOT asked about."
        )
    for why in sorted(set(unchecked.values())):
        names = [name for name, because in unchecked.items() if because == why]
        print(
            f"  Not asked about, since: {why}\n   "
            f" {', '.join(names[:8])}{f' and {len(names) - 8} more' if len(names) > 8 else ''}"
        )

    for fault in wrong:
        print(f"WRONG: {fault}", file=sys.stderr)
    print(
        "\n"
        + (
            "Not in order, see above."
            if wrong
            else (
                "Nothing wrong was found, but not all could be looked through: see NOT asked about."
                if unchecked
                else "All in order."
            )
        )
    )
    return 1 if wrong else 2 if unchecked else 0


if __name__ == "__main__":
    sys.exit(main())
