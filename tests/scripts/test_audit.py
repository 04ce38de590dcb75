"""The audit: what it must find, and that it never counts as looked through what was not."""

import hashlib
import json
from email.message import Message

import pytest

from scripts import audit, environment

HASH = "--hash=sha256:" + hashlib.sha256(b"").hexdigest()


@pytest.mark.parametrize("name", audit.LISTS)
def test_every_package_of_every_list_is_pinned_with_hashes(name):
    found, wrong = audit.pins((environment.REQUIREMENTS / f"{name}.txt").read_text(encoding="utf-8"))
    assert not wrong and found
    # what comes along is pinned as well, and each name once for each machine
    assert len({(pin.name, pin.marker) for pin in found}) == len(found)


@pytest.mark.parametrize(
    "line",
    [
        "left",
        "left==1.0",
        "left>=1.0 " + HASH,
        "left==1.0 --hash=md5:0",
        "left @ https://example.org/left.whl",
        "-e .",
        "--index-url https://example.org",
    ],
)
def test_what_is_not_pinned_is_told(line):
    found, wrong = audit.pins(f"# a list\nright==2.0 \\\n    {HASH} \\\n    {HASH}\n    # via left\n{line}\n")
    assert [(pin.name, pin.version, pin.hashes) for pin in found] == [("right", "2.0", 2)]
    assert len(wrong) == 1 and line[:60] in wrong[0]


def test_a_pin_for_another_machine_is_not_wanted_here():
    found, wrong = audit.pins(
        f"One_Two==1.0 ; python_full_version < '3.0' {HASH}\nthree==3.0 ; python_full_version >= '3.0'"
        f" {HASH}\n"
    )
    assert not wrong and audit.wanted_here(found) == {"three": "3.0"} and found[0].name == "one-two"


@pytest.mark.parametrize("folder", audit.LOCKED, ids=lambda folder: folder.name)
def test_every_lock_of_npm_is_in_order(folder):
    assert audit.lock_faults(json.loads((folder / "package-lock.json").read_text(encoding="utf-8"))) == []


def test_no_lock_of_npm_is_left_out():
    assert {path.parent for path in (environment.ROOT / "scripts").rglob("package-lock.json")} == set(
        audit.LOCKED
    )


@pytest.mark.parametrize(
    "change, told",
    [
        ({"integrity": None}, "has no digest"),
        ({"integrity": "sha1-abc"}, "has no digest"),
        ({"hasInstallScript": True}, "wants to run a script"),
        ({"resolved": "https://example.org/left.tgz"}, "does not come from the registry"),
        ({"version": "2.0.1"}, "asked for as 2.0.0"),
    ],
)
def test_what_is_wrong_with_a_lock_is_told(change, told):
    package = {"version": "2.0.0", "integrity": "sha512-abc", **change}
    lock = {
        "lockfileVersion": 3,
        "packages": {"": {"dependencies": {"left": "2.0.0"}}, "node_modules/left": package},
    }
    assert any(told in line for line in audit.lock_faults(lock))


def test_what_is_installed_otherwise_is_told():
    must, may = {"a": "1", "b": "2", "c": "3"}, {"d": "4", "e": "5"}
    wrong = audit.not_as_pinned({"pip": "26", "a": "1", "b": "2.1", "d": "4", "e": "6", "x": "9"}, must, may)
    assert wrong == [
        "b 2 is pinned, 2.1 is installed",
        "c 3 is pinned, nothing is installed",
        "e 6 is installed, and no list names it",
        "x 9 is installed, and no list names it",
    ]


def test_a_changed_file_of_a_package_is_told(tmp_path):
    about = tmp_path / "left-1.0.dist-info"
    about.mkdir()
    (about / "METADATA").write_text("Metadata-Version: 2.1\nName: left\nVersion: 1.0\n")
    (tmp_path / "left.py").write_text("")
    # base 64 of the SHA-256 of nothing: FIPS 180-4's empty message
    record = "left.py,sha256=47DEQpj8HBSa-_TImW-5JCeuQeRkm5NMpJWZG3hSuFU,0\ngone.py,sha256=47DEQpj8HBSa-_TImW-5JCeuQeRkm5NMpJWZG3hSuFU,0\nleft-1.0.dist-info/RECORD,,\n"
    (about / "RECORD").write_text(record)
    left = audit.metadata.Distribution.at(about)
    assert audit.changed_files(left) == ["left: gone.py is missing"]
    (tmp_path / "left.py").write_text("import os")
    assert audit.changed_files(left) == ["left: left.py is not as it came", "left: gone.py is missing"]


@pytest.mark.parametrize(
    "fields, words",
    [
        ([("License-Expression", "MIT"), ("License", "long")], "MIT"),
        (
            [("Classifier", "License :: OSI Approved :: BSD License"), ("License", "whole text")],
            "BSD License",
        ),
        ([("License", "\nApache 2.0\nand more")], "Apache 2.0"),
        ([], "not stated"),
    ],
)
def test_a_licence_is_told_in_the_packages_own_words(fields, words):
    about = Message()
    for name, value in fields:
        about[name] = value
    assert audit.licence(about) == words


# Reports as pip-audit 2.10 and npm 10 write them.
SKIPPED = {
    "dependencies": [
        {"name": "left", "skip_reason": "Dependency not found on PyPI and could not be audited: left (1.0)"},
        {
            "name": "right",
            "version": "2.0",
            "vulns": [{"id": "PYSEC-0000-1", "fix_versions": ["2.1"], "aliases": [], "description": ""}],
        },
        {"name": "third", "version": "3.0", "vulns": []},
    ],
    "fixes": [],
}
REFUSED = {
    "message": "405 Method Not Allowed - POST https://registry.npmjs.org/-/npm/v1/security/advisories/bulk",
    "error": {"summary": "", "detail": ""},
}
FAULTY = {
    "auditReportVersion": 2,
    "vulnerabilities": {"left": {"name": "left", "severity": "high", "range": "<1.0.1"}},
    "metadata": {},
}


def test_a_package_that_the_database_does_not_know_counts_as_not_asked_about():
    known = audit.read_pip_audit(SKIPPED)
    assert known.checked == ["right", "third"] and known.faults == ["right 2.0: PYSEC-0000-1, mended in 2.1"]
    assert known.unchecked == {"left": "Dependency not found on PyPI and could not be audited"}


def test_a_registry_that_gives_no_answer_counts_as_not_asked():
    known = audit.read_npm_audit(REFUSED, ["left", "right"])
    assert (
        known.checked == []
        and known.faults == []
        and set(known.unchecked) == {"left", "right"}
        and "405" in known.unchecked["left"]
    )


def test_a_known_fault_is_told():
    known = audit.read_npm_audit(FAULTY, ["left", "right"])
    assert (
        known.checked == ["left", "right"]
        and known.faults == ["npm left: high, versions <1.0.1"]
        and not known.unchecked
    )


@pytest.mark.parametrize(
    "answers, checked", [([[]], 0), ([["a"], ["a", "b"], *[[]] * (len(audit.LISTS) - 2)], 2)]
)
def test_where_nothing_is_known_of_the_shortest_list_the_others_are_not_asked_about(
    answers, checked, monkeypatch
):
    asked = []

    def run(command, *_, **__):
        report = {
            "dependencies": [{"name": name, "version": "1", "vulns": []} for name in answers[len(asked)]]
        }
        asked.append(command)
        return audit.subprocess.CompletedProcess(command, 0, json.dumps(report), "")

    monkeypatch.setattr(audit, "_tool", lambda: "python")
    monkeypatch.setattr(audit, "_run", run)
    known = audit.ask_pip_audit(["a", "b", "c"])
    assert len(asked) == len(answers) and len(known.checked) == checked
    assert len(known.unchecked) == 3 - checked


@pytest.mark.parametrize(
    "wrong, unchecked, status",
    [
        ([], {}, 0),
        ([], {"left": "no line"}, 2),
        (["left: a fault"], {}, 1),
        (["left: a fault"], {"right": "no line"}, 1),
    ],
)
def test_the_exit_status_tells_a_fault_from_what_was_not_looked_through(
    wrong, unchecked, status, monkeypatch, capsys
):
    monkeypatch.setattr(environment, "enter", lambda *_: None)
    monkeypatch.setattr(
        audit, "not_as_pinned", lambda *_: []
    )  # another environment than the project's may run this
    monkeypatch.setattr(audit, "changed_files", lambda _: [])
    monkeypatch.setattr(audit, "npm_not_as_locked", lambda *_: [])
    monkeypatch.setattr(
        audit,
        "ask_pip_audit",
        lambda names: audit.Known([n for n in names if n not in unchecked], wrong, unchecked),
    )
    monkeypatch.setattr(audit, "ask_npm_audit", lambda _, names: audit.Known(names, [], {}))
    assert audit.main() == status
    said = capsys.readouterr()
    assert ("All in order." in said.out) == (status == 0)
    assert ("no line" in said.out) == bool(unchecked)
