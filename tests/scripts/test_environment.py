"""The environment: made once, brought up to date when its list changes, and clear about what is missing."""

import os
import re
import subprocess
import sys
from pathlib import Path

import pytest

from scripts import environment
from scripts.environment import Missing

LISTS = sorted(environment.REQUIREMENTS.glob("*.txt"))


def program(folder: Path, name: str, says: str = "") -> Path:
    path = folder / name
    path.write_text(f"#!/bin/sh\necho '{says}'\n")
    path.chmod(0o755)
    return path


@pytest.fixture
def own_path(tmp_path, monkeypatch):
    """An empty PATH, and no name given for the browser."""
    folder = tmp_path / "bin"
    folder.mkdir()
    monkeypatch.setenv("PATH", str(folder))
    monkeypatch.delenv("SIZEBOOK_CHROMIUM", raising=False)
    return folder


@pytest.fixture
def machine(tmp_path, monkeypatch):
    """An environment in a folder of its own, with the steps written down that would take long."""
    done = []
    monkeypatch.setattr(environment, "VENV", tmp_path / "venv")
    monkeypatch.setattr(environment, "PYTHON", tmp_path / "venv/python")
    monkeypatch.setattr(environment, "REQUIREMENTS", tmp_path)
    for name in ("site", "test"):
        (tmp_path / f"{name}.txt").write_text(f"{name}==1")

    def make_venv():
        done.append("venv")
        environment.PYTHON.touch()

    monkeypatch.setattr(environment, "_make_venv", make_venv)
    monkeypatch.setattr(environment, "_run_pip", lambda *arguments: done.append(Path(arguments[-1]).stem))
    return done


def test_installs_once(machine):
    environment.install("site", "test")
    environment.install("site", "test")
    environment.install("site")
    assert machine == ["venv", "site", "test"]


def test_installs_again_when_the_list_changes(machine, tmp_path):
    environment.install("site", "test")
    (tmp_path / "test.txt").write_text("test==2")
    environment.install("site", "test")
    assert machine == ["venv", "site", "test", "test"]


def test_tries_again_after_a_failure(machine, monkeypatch):
    run_pip = environment._run_pip

    def fail(*_):
        raise Missing("no registry")

    monkeypatch.setattr(environment, "_run_pip", fail)
    with pytest.raises(Missing):
        environment.install("site")
    monkeypatch.setattr(environment, "_run_pip", run_pip)
    environment.install("site")
    assert machine == ["venv", "site"]


def test_another_python_gets_another_environment(machine, monkeypatch):
    environment.install("site")
    monkeypatch.setattr(sys, "version", "4.0.0")
    environment.install("site")
    assert machine == ["venv", "site", "venv", "site"]


def test_a_torn_record_is_no_record(machine):
    environment.install("site")
    environment._stamp().write_text('{"python": "3.')
    environment.install("site")
    assert machine == ["venv", "site", "venv", "site"]


def test_old_python_is_refused(monkeypatch):
    monkeypatch.setattr(environment, "OLDEST_PYTHON", (99, 0))
    with pytest.raises(Missing, match="Python 99.0 or newer is needed"):
        environment.enter("scripts.serve", "site")


def test_node_of_the_machine_is_used_where_it_is_new_enough(own_path):
    node = program(own_path, "node", "v20.0.0")
    assert environment.node() == str(node)


@pytest.mark.parametrize("version", ["v19.9.0", "not a version"])
def test_node_comes_from_the_registry_where_it_is_not(version, own_path, tmp_path, monkeypatch):
    program(own_path, "node", version)
    asked = []
    monkeypatch.setattr(environment, "install", lambda *sets: asked.append(sets))
    monkeypatch.setattr(environment, "PYTHON", program(tmp_path, "python", "/wheel"))
    assert environment.node() == str(Path("/wheel/bin/node"))
    assert asked == [("node",)]


def test_browser_that_was_named_wins(own_path, monkeypatch):
    program(own_path, "chromium")
    named = program(own_path, "special")
    monkeypatch.setenv("SIZEBOOK_CHROMIUM", str(named))
    assert environment.browser() == str(named)


def test_browser_that_was_named_but_is_not_there(own_path, monkeypatch):
    program(own_path, "chromium")
    monkeypatch.setenv("SIZEBOOK_CHROMIUM", "/nowhere/chromium")
    with pytest.raises(Missing, match="SIZEBOOK_CHROMIUM is '/nowhere/chromium'"):
        environment.browser()


@pytest.mark.parametrize("name", environment.BROWSERS)
def test_browser_on_the_path(name, own_path):
    there = program(own_path, name)
    assert environment.browser() == str(there)


def test_browser_that_is_missing_is_named(own_path):
    with pytest.raises(Missing, match="install it .* or set SIZEBOOK_CHROMIUM"):
        environment.browser()


@pytest.mark.parametrize("path", LISTS, ids=lambda path: path.stem)
def test_everything_is_pinned_with_hashes(path):
    pinned = [
        line
        for line in path.read_text().replace("\\\n", " ").splitlines()
        if line and not line.lstrip().startswith("#")
    ]
    assert pinned
    for line in pinned:
        # A marker may leave out what some Python does not need.
        assert re.fullmatch(r"[a-z0-9-]+==[0-9a-z.]+( ; [^\\]+?)?( +--hash=sha256:[0-9a-f]{64})+", line), line
    assert len({line.partition("==")[0] for line in pinned}) == len(pinned), (
        "one version for every Python and machine"
    )


@pytest.mark.parametrize("path", LISTS, ids=lambda path: path.stem)
def test_the_pinned_list_follows_what_we_name(path):
    named = {
        line.strip()
        for line in path.with_suffix(".in").read_text().splitlines()
        if line and line[0] not in "#-"
    }
    pinned = set(re.findall(r"^([a-z0-9-]+)==", path.read_text(), re.MULTILINE))
    assert named and named <= pinned


@pytest.mark.parametrize("script", ["serve.py", "test.py"])
def test_run_as_a_file_nothing_hides_the_standard_library(script):
    code = (
        "import runpy, sys; sys.argv = [sys.argv[1]]; sys.path[0] = sys.argv[0].rsplit('/', 1)[0];"
        "runpy.run_path(sys.argv[0], run_name='imported'); import test; print(test.__file__)"
    )
    path = environment.ROOT / "scripts" / script
    done = subprocess.run(
        [sys.executable, "-c", code, str(path)], capture_output=True, text=True, cwd=os.path.sep
    )
    assert done.returncode == 0, done.stderr
    assert not done.stdout.startswith(str(environment.ROOT)), done.stdout


@pytest.mark.skipif(sys.platform != "linux", reason="other systems bring their typefaces")
@pytest.mark.parametrize(
    "there, asks",
    [
        ("LiberationSans-Regular.ttf", 0),
        ("Arial.ttf", 0),
        ("LiberationSansNarrow-Regular.ttf", 1),
        ("DejaVuSans.ttf", 1),
    ],
)
def test_a_typeface_for_the_sheet_is_installed_where_there_is_none(there, asks, tmp_path, monkeypatch):
    (tmp_path / "truetype").mkdir()
    (tmp_path / "truetype" / there).touch()
    asked = []
    monkeypatch.setattr(environment, "FONTS", (str(tmp_path), str(tmp_path / "none")))
    monkeypatch.setattr(environment, "_apt_install", lambda package: asked.append(package) or True)
    environment.typeface()
    assert asked == ["fonts-liberation"] * asks
    monkeypatch.setattr(environment, "_apt_install", lambda package: False)
    if asks:
        with pytest.raises(environment.Missing, match="Liberation Sans or Arial"):
            environment.typeface()
