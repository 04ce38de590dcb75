"""What a calculator costs whoever opens a page: its station's bytes on the wire, and the heap that they fill.

The heap is what CPython takes for the station's modules, as this machine counts it (`tracemalloc`). In the
browser pointers are half as long, so there it is less.
"""

from __future__ import annotations

import json
import struct
import subprocess
import sys
from pathlib import Path
from typing import NamedTuple

import brotli

from calc.stations import index

HEAD, PAGE = 24, 4096  # bytes of memory.wasm
COMPILED = 30 * 2**20  # bytes: what the runtime's memory begins with, and a kept one may not outgrow
ALLOWED = 0.8  # of it, so that there is room for what comes
QUALITY = 11  # of brotli: as a host that compresses in advance

# In a Python of its own: first what every page has, then each station's calculators.
HEAP = """
import json, sys, tracemalloc
import calc.page.live
import calc.page.job.calls
from calc.stations import index
tracemalloc.start()
found = {}
for name in index.STATIONS:
    before, _ = tracemalloc.get_traced_memory()
    for id in index.station(name).CALCULATORS:
        index.find(id)
    found[name] = tracemalloc.get_traced_memory()[0] - before
print(json.dumps(found))
"""


class Cost(NamedTuple):
    """Of a station: calculators, bytes on the wire, bytes of heap."""

    calculators: int
    wire: int
    heap: int

    @property
    def each(self) -> tuple[float, float]:
        """Of one calculator: bytes on the wire and of heap."""
        return self.wire / self.calculators, self.heap / self.calculators


def on_the_wire(path: Path) -> int:
    """Bytes of a file as a good host sends it."""
    return len(brotli.compress(path.read_bytes(), quality=QUALITY))


def costs(parts: Path, root: Path) -> dict[str, Cost]:
    """What each station costs, by name: its part in the folder `parts`, its modules under `root`."""
    ran = subprocess.run([sys.executable, "-c", HEAP], cwd=root, capture_output=True, text=True, check=True)
    heap = json.loads(ran.stdout)
    return {
        name: Cost(len(index.station(name).CALCULATORS), on_the_wire(parts / f"{name}.zip"), heap[name])
        for name in index.STATIONS
    }


def filled(memory: Path) -> float:
    """How far Python's memory reaches into what the runtime is compiled with (0 to 1).

    `memory` is memory.wasm, whose form docs/assets/js/memory.mjs tells.
    """
    content = memory.read_bytes()
    (count,) = struct.unpack_from("<I", content, HEAD)
    pages = struct.unpack_from(f"<{count}I", content, HEAD + 8)
    return (pages[-1] + 1) * PAGE / COMPILED


def told(memory: Path) -> str:
    """How full Python's memory is, as a line; no calculators are in it, they come when they are asked for."""
    share, whole = filled(memory), COMPILED / 2**20
    used = f"{share * whole:.1f} of {whole:.0f} MiB, {share:.0%}"
    return f"Python's memory, without calculators: {used}; {ALLOWED:.0%} are allowed"


def table(found: dict[str, Cost]) -> str:
    """One line a station, and what one calculator costs in the mean of all."""
    lines = [f"{'a calculator costs':<20}{'wire, kB':>10}{'heap, kB':>10}"]
    for name, cost in found.items():
        wire, heap = cost.each
        lines.append(f"{name:<20}{wire / 1e3:>10.1f}{heap / 1e3:>10.0f}")
    count = sum(cost.calculators for cost in found.values())
    wire, heap = (sum(getattr(cost, what) for cost in found.values()) / count for what in ("wire", "heap"))
    lines.append(f"{'all ' + str(count):<20}{wire / 1e3:>10.1f}{heap / 1e3:>10.0f}")
    return "\n".join(lines)
