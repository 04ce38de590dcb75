"""Splits the runtime's program in two: what calculators were seen to run, and everything.

Of the seventeen thousand functions of the program calculators run one in ten. The `hot` program keeps the
bodies of those, and has of each other one only a few bytes that call it in the `cold` program. That holds
all functions, works on the memory, tables and globals of the hot one, and is fetched the first time that
one of them is called. So nothing is left out, and no answer depends on what was seen.

Functions keep their numbers in both, so that no instruction is read or changed: only sections are written
anew. How they are written: WebAssembly Core Specification, 5.5 (binary format, modules).
"""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Collection, Iterable, Iterator

TYPE, IMPORT, FUNCTION, TABLE, MEMORY, GLOBAL, EXPORT, START, ELEMENT, CODE, DATA, DATA_COUNT, TAG = range(
    1, 14
)
A_FUNCTION, A_TABLE, A_MEMORY, A_GLOBAL, A_TAG = range(5)
CALL_INDIRECT, END, LOCAL_GET, GLOBAL_GET, GLOBAL_SET, I32_CONST, I32_OR = (
    b"\x11",
    b"\x0b",
    b"\x20",
    b"\x23",
    b"\x24",
    b"\x41",
    b"\x72",
)
FUNCTIONS, I32, CHANGES = b"\x70", b"\x7f", b"\x01"
NOTHING_TO_NOTHING = b"\x60\0\0"

LINKED = "GOT.func"  # places of functions of the browser's graphics, which the loader would make one by one
CONSTRUCTOR = "__wasm_call_ctors"
LOADER = (
    ("async function _createPyodideModule(", "const _createPyodideModule=(async function("),
    (";return moduleRtn}export default", ";return moduleRtn});export default"),
)
PARTS = "parts"  # the name under which the cold program imports what the hot one exports
BITS = 32


class SplitError(Exception):
    """The program is not written as the one that this was made for; says what is new."""


def at_once(script: str) -> str:
    """The program's loader, written so that a browser compiles its one function as it reads it.

    That function is the whole script, else read twice, and left out of the browser's code cache: a third of
    what the script costs a visit. Engines take parentheses round a function as a sign that it runs at once.
    """
    for old, new in LOADER:
        if script.count(old) != 1:
            raise SplitError(f"The loader does not hold “{old}” once: it is written otherwise.")
        script = script.replace(old, new)
    return script


def trimmed(wasm: bytes, script: str) -> bytes:
    """The program with those exports only that `script`, its loader, makes use of.

    The rest serves extension modules, of which there are none here; the loader would make an object for each.
    """
    words = Counter(re.findall(r"[\w$]+", script))
    read_at_once = set(re.findall(r'wasmExports\["([^"]+)"\]\.value', script))
    module = Module(wasm)
    # Each export is written three times to give it a name, and once more where that name is used.
    kept = [
        written
        for name, kind, _, written in module.exports()
        if kind not in (A_FUNCTION, A_GLOBAL)
        or name in read_at_once
        or words[f"_{name}"] > 3
        or words[name] > 1
    ]
    imports = [written for origin, _, written in module.imports() if origin != LINKED]
    unlinked = len(module.imports()) - len(imports)
    own = [written for _, written in module.globals()]
    return module.written(
        {IMPORT: vector(imports), EXPORT: vector(kept), GLOBAL: vector([zero()] * unlinked + own)}
    )


def marked(wasm: bytes) -> bytes:
    """The program with a bit for each function, set when it is entered, in globals exported as seen0, seen1,
    …"""
    module = Module(wasm)
    first = module.imported(A_GLOBAL) + len(module.globals())
    bodies = []
    for number, (locals_, instructions) in enumerate(module.bodies()):
        place, bit = leb(first + number // BITS), signed(1 << number % BITS)
        bodies.append(
            sized(locals_ + GLOBAL_GET + place + I32_CONST + bit + I32_OR + GLOBAL_SET + place + instructions)
        )
    count = -(-len(bodies) // BITS)
    exports = [export(f"seen{i}", A_GLOBAL, first + i) for i in range(count)]
    return module.written(
        {
            GLOBAL: vector([written for _, written in module.globals()] + [zero()] * count),
            EXPORT: vector([written for *_, written in module.exports()] + exports),
            CODE: vector(bodies),
        }
    )


def hot(wasm: bytes, seen: Collection[int] | None = None) -> bytes:
    """The program with the bodies of the functions `seen`, or of all. It begins with the memory of a Python
    that has started, so it has no data of its own, and what would construct it is empty."""
    module = Module(wasm)
    (constructor,) = (
        number - module.imported(A_FUNCTION)
        for name, kind, number, _ in module.exports()
        if name == CONSTRUCTOR
    )
    types, tables = module.entries(TYPE), module.entries(TABLE)
    nothing = leb(len(types))
    table = leb(len(tables))
    bodies = []
    for number, (kind, (locals_, instructions)) in enumerate(
        zip(module.types(), module.bodies(), strict=True)
    ):
        if number == constructor:
            locals_, instructions = b"\0", END
        elif seen is not None and number not in seen:
            passed = b"".join(LOCAL_GET + leb(i) for i in range(taken_by(types[kind])))
            fetch = I32_CONST + signed(0) + CALL_INDIRECT + nothing + table
            locals_, instructions = (
                b"\0",
                fetch + passed + I32_CONST + signed(number + 1) + CALL_INDIRECT + leb(kind) + table + END,
            )
        bodies.append(sized(locals_ + instructions))
    return module.written(
        {
            TYPE: vector([*types, NOTHING_TO_NOTHING]),
            TABLE: vector([*tables, FUNCTIONS + b"\0" + leb(len(bodies) + 1)]),
            EXPORT: vector(
                [written for *_, written in module.exports()] + [export(*part[:3]) for part in parts(module)]
            ),
            CODE: vector(bodies),
            DATA: None,
            DATA_COUNT: None,
        }
    )


def cold(wasm: bytes) -> bytes:
    """All functions, working on the hot program's parts; puts them into its table, each at its number and
    one."""
    module = Module(wasm)
    own = module.imported(A_FUNCTION)
    shared = [
        name_of(PARTS) + name_of(name) + bytes((kind,)) + type_ for name, kind, _, type_ in parts(module)
    ]
    table = len(module.entries(TABLE))
    functions = vector([leb(own + i) for i in range(len(module.types()))])
    return module.written(
        {
            IMPORT: vector([written for _, _, written in module.imports()] + shared),
            TABLE: None,
            MEMORY: None,
            TAG: None,
            GLOBAL: vector([written for changes, written in module.globals() if not changes]),
            EXPORT: vector([]),
            START: None,
            ELEMENT: vector([b"\x02" + leb(table) + I32_CONST + signed(1) + END + b"\0" + functions]),
            DATA: None,
            DATA_COUNT: None,
        }
    )


def parts(module: Module) -> list[tuple[str, int, int, bytes]]:
    """What both programs share: name, kind, number, and type as an import has it."""
    found = [(f"tag{i}", A_TAG, i, written) for i, written in enumerate(module.entries(TAG))]
    found += [(f"memory{i}", A_MEMORY, i, written) for i, written in enumerate(module.entries(MEMORY))]
    tables = module.entries(TABLE)
    found += [(f"table{i}", A_TABLE, i, written) for i, written in enumerate(tables)]
    found.append(("cold", A_TABLE, len(tables), FUNCTIONS + b"\0" + leb(len(module.types()) + 1)))
    changing = [changes for changes, _ in module.globals()]
    if module.imported(A_GLOBAL) or changing != sorted(changing, reverse=True):
        raise SplitError("Globals that change stand behind one that does not, or are imported.")
    return found + [(f"global{i}", A_GLOBAL, i, I32 + CHANGES) for i in range(sum(changing))]


class Module:
    """A WebAssembly module as its sections, in order."""

    def __init__(self, wasm: bytes):
        if wasm[:8] != b"\0asm\1\0\0\0":
            raise SplitError("The program is not WebAssembly of version 1.")
        self.sections: list[tuple[int, bytes]] = []
        reader = Reader(wasm, 8)
        while not reader.done:
            self.sections.append((reader.byte(), reader.bytes(reader.number())))
        self.section = dict(self.sections)

    def written(self, changed: dict[int, bytes | None]) -> bytes:
        """The module with some sections changed; `None` leaves one out."""
        sections = [(number, changed.get(number, content)) for number, content in self.sections]
        return b"\0asm\1\0\0\0" + b"".join(
            bytes((number,)) + sized(content) for number, content in sections if content is not None
        )

    def imports(self) -> list[tuple[str, int, bytes]]:
        """Where from, kind, and the import as it is written."""

        def one(reader):
            origin, _, kind = reader.name(), reader.name(), reader.byte()
            if kind not in (A_FUNCTION, A_GLOBAL):
                raise SplitError(f"The program imports something of kind {kind}.")
            reader.number() if kind == A_FUNCTION else reader.bytes(2)
            return origin, kind

        return [(*found, written) for found, written in self._each(IMPORT, one)]

    def imported(self, kind: int) -> int:
        return sum(k == kind for _, k, _ in self.imports())

    def exports(self) -> list[tuple[str, int, int, bytes]]:
        """Name, kind, number, and the export as it is written."""

        def one(reader):
            return reader.name(), reader.byte(), reader.number()

        return [(*found, written) for found, written in self._each(EXPORT, one)]

    def globals(self) -> list[tuple[bool, bytes]]:
        """Whether it can change, and the global as it is written."""

        def one(reader):
            start = reader.bytes(3)
            reader.number()
            if start[:1] + start[2:] != I32 + I32_CONST or reader.bytes(1) != END:
                raise SplitError("The program has a global that is not a plain number.")
            return start[1:2] == CHANGES

        return self._each(GLOBAL, one)

    def entries(self, section: int) -> list[bytes]:
        """Types, tables, memories or tags as they are written."""

        def limits(reader):
            for _ in range(1 + (reader.byte() & 1)):
                reader.number()

        def a_type(reader):
            if reader.byte() != NOTHING_TO_NOTHING[0]:
                raise SplitError("The program has a type that is not a function's.")
            for _ in range(2):
                reader.bytes(reader.number())

        one = {
            TYPE: a_type,
            TABLE: lambda reader: (reader.byte(), limits(reader)),
            MEMORY: limits,
            TAG: lambda reader: (reader.byte(), reader.number()),
        }
        return [written for _, written in self._each(section, one[section])]

    def types(self) -> list[int]:
        """The type of each function of its own."""
        return [number for number, _ in self._each(FUNCTION, Reader.number)]

    def bodies(self) -> Iterator[tuple[bytes, bytes]]:
        """Of each function of its own, what declares its locals, and its instructions."""
        reader = Reader(self.section[CODE])
        for _ in range(reader.number()):
            body = Reader(reader.bytes(reader.number()))
            for _ in range(body.number()):
                body.number(), body.byte()
            yield body.content[: body.at], body.content[body.at :]

    def _each(self, section: int, one) -> list[tuple]:
        reader = Reader(self.section[section])
        found = []
        for _ in range(reader.number()):
            start = reader.at
            read = one(reader)
            found.append((read, reader.content[start : reader.at]))
        return found


class Reader:
    def __init__(self, content: bytes, at: int = 0):
        self.content, self.at = content, at

    @property
    def done(self) -> bool:
        return self.at >= len(self.content)

    def byte(self) -> int:
        self.at += 1
        return self.content[self.at - 1]

    def bytes(self, size: int) -> bytes:
        self.at += size
        return self.content[self.at - size : self.at]

    def number(self) -> int:
        """An unsigned LEB128; one with a sign has the same length."""
        value = shift = 0
        while True:
            byte = self.byte()
            value |= (byte & 0x7F) << shift
            shift += 7
            if byte < 0x80:
                return value

    def name(self) -> str:
        return self.bytes(self.number()).decode()


def taken_by(type_: bytes) -> int:
    """How many values a function of that type takes."""
    return Reader(type_, 1).number()


def leb(number: int) -> bytes:
    """Unsigned LEB128."""
    out = bytearray()
    while number > 0x7F:
        out.append(number & 0x7F | 0x80)
        number >>= 7
    return bytes(out + bytes((number,)))


def signed(number: int) -> bytes:
    """The 32 bits of a number as signed LEB128."""
    number = number - (1 << BITS) if number >> BITS - 1 else number
    out = bytearray()
    while not -0x40 <= number < 0x40:
        out.append(number & 0x7F | 0x80)
        number >>= 7
    return bytes(out + bytes((number & 0x7F,)))


def vector(written: Iterable[bytes]) -> bytes:
    written = list(written)
    return leb(len(written)) + b"".join(written)


def sized(content: bytes) -> bytes:
    return leb(len(content)) + content


def name_of(text: str) -> bytes:
    return sized(text.encode())


def export(name: str, kind: int, number: int) -> bytes:
    return name_of(name) + bytes((kind,)) + leb(number)


def zero() -> bytes:
    """A global that holds 0 and can change."""
    return I32 + CHANGES + I32_CONST + b"\0" + END
