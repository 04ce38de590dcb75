"""What the handbook weighs when it has grown: `python -m scripts.growth [--copies N]`, after a build.

Each copy is all stations once more, under other names, with the formulas that they use: what a page brings
over the line then is made as the build makes it, and weighed as a good host sends it.
"""

from __future__ import annotations

import argparse
import re
import shutil
import tempfile
from functools import partial
from pathlib import Path

from calc.stations import index as stations
from scripts import environment, measured
from scripts.runtime import bundle, costs
from scripts.runtime.costs import on_the_wire


def grown(calc: Path, folder: Path, copies: int) -> Path:
    """The package `calc`, copied into `folder`, with each station and each formula `copies` times more."""
    tree = folder / "calc"
    shutil.copytree(calc, tree, ignore=shutil.ignore_patterns("__pycache__"))
    index = tree / "stations/index.py"
    text = index.read_text(encoding="utf-8")
    names = re.findall(r'"(\w+)"', re.search(r"^STATIONS = \(.*?\)", text, re.DOTALL | re.MULTILINE)[0])
    formulas = [path.stem for path in (calc / "formulas").rglob("*.py") if path.stem != "__init__"]
    for number in range(2, copies + 2):
        for path in list((tree / "formulas").glob("*")):
            if not re.search(r"__|_\d+$", path.stem):
                renamed = path.with_name(f"{path.stem}_{number}{path.suffix}")
                (shutil.copytree if path.is_dir() else shutil.copyfile)(path, renamed)
        for name in names:
            station = shutil.copytree(tree / "stations" / name, tree / "stations" / f"{name}_{number}")
            _rename(station, name, number, formulas)
    every = names + [f"{name}_{number}" for number in range(2, copies + 2) for name in names]
    index.write_text(
        re.sub(r"^STATIONS = \(.*?\)", f"STATIONS = {tuple(every)!r}", text, flags=re.DOTALL | re.MULTILINE),
        encoding="utf-8",
    )
    return tree


def _rename(station: Path, name: str, number: int, formulas: list[str]) -> None:
    """Give a copied station's calculators names of their own, and let them stand on the copied formulas."""
    text = (station / "__init__.py").read_text(encoding="utf-8")
    ids = re.findall(r'"([\w-]+)"', re.search(r"^CALCULATORS = \(.*?\)", text, re.DOTALL | re.MULTILINE)[0])
    modules = [id.replace("-", "_") for id in ids]
    for path in station.rglob("*.py"):
        text = path.read_text(encoding="utf-8")
        for id, module in zip(ids, modules, strict=True):
            text = text.replace(f'"{id}"', f'"{id}-{number}"')
            text = re.sub(rf"^def {module}\(", f"def {module}_{number}(", text, flags=re.MULTILINE)
            text = re.sub(
                rf"\bcalc\.stations\.{name}\.{module}\b", rf"calc.stations.{name}.{module}_{number}", text
            )
        text = text.replace(f"calc.stations.{name}", f"calc.stations.{name}_{number}")
        for formula in formulas:
            text = re.sub(rf"\bcalc\.formulas\.{formula}\b", f"calc.formulas.{formula}_{number}", text)
            line = rf"^(from calc\.formulas import [^#\n]*?)\b{formula}\b( as \w+)?"
            as_before = partial(_as_before, f"{formula}_{number}", formula)
            text = re.sub(line, as_before, text, flags=re.MULTILINE)
        path.write_text(text, encoding="utf-8")
    for module in modules:
        for path in (station / module, station / f"{module}.py"):
            if path.exists():
                path.rename(path.with_name(path.name.replace(module, f"{module}_{number}")))


def _as_before(renamed: str, name: str, found: re.Match) -> str:
    return f"{found[1]}{renamed}{found[2] or f' as {name}'}"


def weights(made: Path) -> dict[str, int]:
    """Bytes on the wire of what a first page brings: the memory, the program's part, each station."""
    files = [made / "memory.wasm", made / "hot.wasm", *sorted((made / bundle.STATIONS).iterdir())]
    return {path.name: on_the_wire(path) for path in files}


def main() -> None:
    parser = argparse.ArgumentParser(prog="python -m scripts.growth", description=__doc__.splitlines()[0])
    parser.add_argument("--copies", type=int, default=2)
    chosen = parser.parse_args()
    lines = []
    with tempfile.TemporaryDirectory() as folder:
        count = len(stations.ids())
        many = f"{count * (chosen.copies + 1)} calculators"
        trees = {f"{count} calculators": bundle.CALC, many: grown(bundle.CALC, Path(folder), chosen.copies)}
        for name, tree in trees.items():
            made = bundle.memory(environment.CACHE, tree)
            found = weights(made)
            first = sum(found[part] for part in ("memory.wasm", "hot.wasm"))
            lines.append(f"{name}: {first / 1e6:.2f} MB, and of a page's station {told(found)}")
            lines.append(f"    {costs.told(made / 'memory.wasm')}")
    print("\n".join(lines))
    measured.write("scripts.growth", "\n".join(lines))


def told(found: dict[str, int]) -> str:
    parts = {name: size for name, size in found.items() if name.endswith(".zip") and "_" not in name}
    return ", ".join(f"{name.removesuffix('.zip')} {size / 1e3:.0f} kB" for name, size in parts.items())


if __name__ == "__main__":
    main()
