"""What a calculator costs is told of every station, from what is built."""

import struct

import brotli

from calc.stations import index
from scripts import environment
from scripts.runtime import costs


def test_each_station_is_weighed_by_its_own_part(tmp_path):
    for n, name in enumerate(index.STATIONS, 1):
        (tmp_path / f"{name}.zip").write_bytes(bytes(range(256)) * n)
    found = costs.costs(tmp_path, environment.ROOT)
    assert list(found) == list(index.STATIONS)
    for name, cost in found.items():
        part = (tmp_path / f"{name}.zip").read_bytes()
        assert len(brotli.decompress(brotli.compress(part, quality=11))) == len(part)
        assert cost.wire == len(brotli.compress(part, quality=11))
        assert cost.calculators == len(index.station(name).CALCULATORS)
        assert 10_000 < cost.each[1] < 1_000_000, "the heap of a calculator"


def test_the_table_tells_the_mean_of_all():
    told = costs.table({"a": costs.Cost(1, 3000, 50_000), "b": costs.Cost(3, 5000, 30_000)})
    assert told.splitlines()[-1].split() == ["all", "4", "2.0", "20"]


def test_the_memory_is_as_full_as_its_last_page_says(tmp_path):
    """By the form that docs/assets/js/memory.mjs tells: 24 bytes, count of pages, length of the state, the pages' numbers."""
    memory = tmp_path / "memory.wasm"
    memory.write_bytes(bytes(24) + struct.pack("<II3I", 3, 2, 0, 7, 3839) + b"{}")
    assert costs.filled(memory) == 0.5  # 3840 pages of 4 KiB are 15 of 30 MiB
    assert costs.told(memory).startswith("Python's memory, without calculators: 15.0 of 30 MiB, 50%")
