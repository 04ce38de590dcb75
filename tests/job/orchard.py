"""An ordinary job as it leaves the shop: 46 sizes, one of them corrected, one in doubt."""

from pathlib import Path

from calc.job.files import load


def orchard() -> dict:
    return load((Path(__file__).parent / "orchard.json").read_text(encoding="utf-8"))
