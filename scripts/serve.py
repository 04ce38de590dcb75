"""Build the site and serve it: `python3 scripts/serve.py [--port N] [--host ADDRESS] [--watch]`.

With `--watch` an edit of calc/ or docs/ shows by itself in the open page, within seconds (scripts/watch.py).

Needs nothing but Python and the package registry: what is missing is installed into `.venv`.
"""

from __future__ import annotations

import argparse
import atexit
import socket
import sys
import threading
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent
# Run as a file, this folder stands first, and test.py in it would hide the standard library's `test`.
sys.path[0] = str(ROOT)

from scripts import environment  # noqa: E402

EVERYWHERE = "0.0.0.0"


def _lan_address() -> str:
    """This machine's address in its own network, as far as it can be told (nothing is sent)."""
    with socket.socket(socket.AF_INET, socket.SOCK_DGRAM) as probe:
        try:
            probe.connect(("192.0.2.1", 9))  # an address kept for documentation
            return probe.getsockname()[0]
        except OSError:
            return socket.gethostname()


def main() -> None:
    parser = argparse.ArgumentParser(prog="scripts/serve.py", description=__doc__.splitlines()[0])
    parser.add_argument("--port", type=int, default=8000)
    parser.add_argument(
        "--host", default="127.0.0.1", help=f"{EVERYWHERE} lets other devices in the network in"
    )
    parser.add_argument("--watch", action="store_true", help="show each edit in the open page")
    chosen = parser.parse_args()
    try:
        environment.enter("scripts.serve", "site")
    except environment.Missing as missing:
        sys.exit(str(missing))

    from scripts.build import SITE, BuildFailed, build
    from scripts.server import Handler, server
    from scripts.watch import EditHandler, Edits

    print("Building the site, if anything changed …", flush=True)
    try:
        build(draft=chosen.watch)
    except BuildFailed as error:
        sys.exit(f"The site was not built. {error}")
    try:
        handler = EditHandler if chosen.watch else Handler
        serving = server(SITE, environment.CACHE / "compressed", chosen.host, chosen.port, handler=handler)
    except OSError as error:
        sys.exit(
            f"Port {chosen.port} on {chosen.host} cannot be used ({error.strerror}); choose another with"
            " --port."
        )
    here = "localhost" if chosen.host in ("127.0.0.1", EVERYWHERE) else chosen.host
    print(f"Sizebook: http://{here}:{serving.server_port}/")
    if chosen.host == EVERYWHERE:
        print(f"In this network: http://{_lan_address()}:{serving.server_port}/")
        print(
            "Other devices can read and calculate there; to work with no signal they need https (see"
            " README.md)."
        )
    print("Stop with Ctrl-C.", flush=True)
    if chosen.watch:
        edits = Edits()
        atexit.register(edits.end)
        threading.Thread(target=edits.watch, daemon=True).start()
    try:
        serving.serve_forever()
    except KeyboardInterrupt:
        print()


if __name__ == "__main__":
    main()
