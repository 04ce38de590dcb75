"""In place of the runtime's event loop: no calculator waits for anything, and asyncio is a third of the
library."""

from pyodide_js._api import scheduleCallback  # noqa: F401  a memory is expected to hold it


def _initialize_event_loop():
    pass
