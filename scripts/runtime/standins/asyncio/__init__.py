"""In place of asyncio, of which the runtime's core wants these two; neither is ever called here."""

from inspect import iscoroutinefunction  # noqa: F401


def ensure_future(*_):
    raise NotImplementedError("Nothing is waited for in the browser's Python.")
