"""The runtime's program in two parts, tried on a small program written by hand; `test_bundle` tries the real one."""

import json
import subprocess

import pytest

from scripts import environment
from scripts.runtime import split
from scripts.runtime.split import END, export, leb, name_of, signed, sized, vector, zero

I32 = b"\x7f"
GET, ADD, CALL, CONST, SET_GLOBAL, GET_GLOBAL = b"\x20", b"\x6a", b"\x10", b"\x41", b"\x24", b"\x23"
SECTIONS = {
    split.TYPE: vector([b"\x60" + vector([I32]) + vector([I32]), b"\x60\0\0"]),
    split.IMPORT: vector(
        [
            name_of("env") + name_of("told") + b"\0\0",
            name_of("GOT.func") + name_of("draw") + b"\3" + I32 + b"\1",
        ]
    ),
    split.FUNCTION: vector([b"\0", b"\0", b"\0", b"\1"]),
    split.TABLE: vector([b"\x70\0\1"]),
    split.MEMORY: vector([b"\0\1"]),
    split.TAG: vector([b"\0\1"]),
    split.GLOBAL: vector([zero(), I32 + b"\0" + CONST + signed(7) + END]),
    # told(0) is imported; twice(x) = thrice(x) - x is written as x + x; thrice(x) = twice(x) + x; count(x) counts its calls
    split.EXPORT: vector(
        [
            export(name, 0, number)
            for name, number in {
                "twice": 1,
                "thrice": 2,
                "count": 3,
                "__wasm_call_ctors": 4,
                "spare": 1,
            }.items()
        ]
    ),
    split.ELEMENT: vector([b"\0" + CONST + signed(0) + END + vector([leb(1)])]),
    split.CODE: vector(
        map(
            sized,
            (
                b"\0" + GET + b"\0" + GET + b"\0" + ADD + END,
                b"\0" + GET + b"\0" + CALL + b"\1" + GET + b"\0" + ADD + END,
                b"\0"
                + GET_GLOBAL
                + b"\1"
                + CONST
                + signed(1)
                + ADD
                + SET_GLOBAL
                + b"\1"
                + GET
                + b"\0"
                + CALL
                + b"\0"
                + GET_GLOBAL
                + b"\1"
                + ADD
                + END,
                b"\0" + END,
            ),
        )
    ),
}
ORDER = (
    split.TYPE,
    split.IMPORT,
    split.FUNCTION,
    split.TABLE,
    split.MEMORY,
    split.TAG,
    split.GLOBAL,
    split.EXPORT,
    split.ELEMENT,
    split.CODE,
)
WASM = b"\0asm\1\0\0\0" + b"".join(bytes((number,)) + sized(SECTIONS[number]) for number in ORDER)
SCRIPT = "var " + "; ".join(
    f'_{name}; _{name} = wasmExports["{name}"]; _{name}()'
    for name in ("twice", "thrice", "count", "__wasm_call_ctors")
)
SCRIPT += "; _twice(); _thrice(); _count(); ___wasm_call_ctors()"

RUN = """
import { readFileSync } from "node:fs";
const [program, hot, cold] = process.argv.slice(2);
const { instantiate } = await import(program);
let fetched = 0;
const imports = { env: { told: (x) => 100 * x } };
const { exports: e } = await instantiate(await WebAssembly.compile(readFileSync(hot)), imports, () => (fetched++, readFileSync(cold)));
const found = [e.twice(4), fetched, e.thrice(4), fetched, e.count(5), e.count(5), e.count(5), fetched];
const seen = e.seen0?.value;
console.log(JSON.stringify({ found, seen, parts: Object.keys(e).sort() }));
"""


def run(tmp_path, hot: bytes, cold: bytes) -> dict:
    for name, content in (("hot.wasm", hot), ("cold.wasm", cold), ("run.mjs", RUN.encode())):
        (tmp_path / name).write_bytes(content)
    program = environment.ROOT / "docs/assets/js/program.mjs"
    done = subprocess.run(
        [environment.node(), "run.mjs", program, "hot.wasm", "cold.wasm"],
        cwd=tmp_path,
        capture_output=True,
        text=True,
    )
    assert done.returncode == 0, done.stderr
    return json.loads(done.stdout)


@pytest.fixture
def whole():
    return split.trimmed(WASM, SCRIPT)


@pytest.mark.parametrize(
    "seen, fetched", [({0, 1, 2}, [0, 0, 0]), ({0}, [0, 1, 1]), (set(), [1, 1, 1]), ({1}, [1, 1, 1])]
)
def test_whatever_was_seen_the_answers_are_the_same_and_the_rest_is_fetched_once(
    tmp_path, whole, seen, fetched
):
    twice, first, thrice, second, *counts, third = run(tmp_path, split.hot(whole, seen), split.cold(whole))[
        "found"
    ]
    assert (twice, thrice) == (8, 12)
    assert counts == [501, 502, 503], "both parts count in the same global"
    assert [first, second, third] == fetched


def test_marks_tell_which_functions_ran(tmp_path, whole):
    assert run(tmp_path, split.marked(split.hot(whole)), split.cold(whole))["seen"] == 0b0111


def test_exports_that_the_loader_makes_no_use_of_are_left_out(tmp_path, whole):
    parts = run(tmp_path, split.hot(whole), split.cold(whole))["parts"]
    assert "spare" not in parts and {"twice", "count", "cold", "memory0"} <= set(parts)


@pytest.mark.parametrize(
    "spoil, told",
    [
        (lambda wasm: b"\0ams" + wasm[4:], "not WebAssembly"),
        (
            lambda wasm: wasm.replace(
                name_of("env") + name_of("told") + b"\0\0", name_of("env") + name_of("told") + b"\2\0"
            ),
            "imports something of kind 2",
        ),
        (
            lambda wasm: wasm.replace(I32 + b"\0" + CONST + signed(7), I32 + b"\0" + b"\x23" + signed(7)),
            "not a plain number",
        ),
    ],
)
def test_a_program_that_is_written_otherwise_is_refused(spoil, told):
    with pytest.raises(split.SplitError, match=told):
        split.hot(split.trimmed(spoil(WASM), SCRIPT))


@pytest.mark.parametrize("number", [0, 1, 63, 64, 127, 128, 16_384, 2**31 - 1])
def test_numbers_are_written_as_they_are_read(number):
    assert split.Reader(leb(number)).number() == number
    assert signed(number)[-1] & 0x40 == 0, "the sign of a positive number"


def test_a_loader_that_is_written_otherwise_is_refused():
    with pytest.raises(split.SplitError, match="is written otherwise"):
        split.at_once("export default function () {}")
