"""In place of the runtime's loader of packages, which are not loaded here: what its start asks for."""

from pathlib import Path
from site import getsitepackages

from pyodide_js import loadedPackages  # noqa: F401  a memory is expected to hold it

SITE_PACKAGES = Path(getsitepackages()[0])
DSO_DIR = SITE_PACKAGES


def init_loaded_packages():
    pass
