"""The engines whose data sheets stand in calc/reference/engines, by name; see `calc.reference.sheet`."""

import os
import re
from functools import cache
from typing import Any

# What a sheet gives is imported from here.
from calc.reference.feature import STANDARD as STANDARD
from calc.reference.feature import WHAT as WHAT
from calc.reference.feature import Engine as Engine
from calc.reference.feature import Feature as Feature
from calc.reference.feature import Step as Step
from calc.reference.sheet import FEATURE as FEATURE
from calc.reference.sheet import SheetError as SheetError
from calc.reference.sheet import load as load

DEMO = "TS-16"
_LOADER: Any = __spec__.loader


@cache
def engine(name: str) -> Engine:
    """The engine family of that name: "TS-16" stands in engines/ts16.toml. KeyError where there is no such
    sheet."""
    file = re.sub(r"[^a-z0-9]", "", name.lower()) + ".toml"
    try:
        # from a folder and from a zip alike
        data: bytes = _LOADER.get_data(os.path.join(os.path.dirname(__file__), "engines", file))
    except OSError:
        archive = getattr(_LOADER, "archive", "")
        # a Python that woke without its files: whoever asked brings them, and asks again
        if archive and not os.path.exists(archive):
            raise ImportError(f"{archive} is not there yet") from None
        raise KeyError(
            f"there is no data sheet for {name!r}: calc/reference/engines/{file} does not exist"
        ) from None
    return load(data.decode(), f"calc/reference/engines/{file}")


def demo() -> Engine:
    """The invented engine that examples are worked on."""
    return engine(DEMO)
