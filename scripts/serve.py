"""Build the site and serve it: `python3 scripts/serve.py [--watch] [--port N] [--host ADDRESS]`.

Needs nothing but Python and the package registry: what is missing is installed into `.venv`.
"""

from __future__ import annotations

import argparse
import socket
import subprocess
import sys
import threading
import time
from collections.abc import Callable
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent
# Run as a file, this folder stands first, and test.py in it would hide the standard library's `test`.
sys.path[0] = str(ROOT)

from scripts import environment  # noqa: E402

EVERYWHERE = "0.0.0.0"
LOOK_AGAIN = 0.5  # s


def _lan_address() -> str:
    """This machine's address in its own network, as far as it can be told (nothing is sent)."""
    with socket.socket(socket.AF_INET, socket.SOCK_DGRAM) as probe:
        try:
            probe.connect(("192.0.2.1", 9))  # an address kept for documentation
            return probe.getsockname()[0]
        except OSError:
            return socket.gethostname()


def build_at_every_change(sources: Callable[[], str], command: list[str]) -> None:
    """Runs the build's `command` whenever the digest of the sources is another one; never returns."""
    built = sources()
    while True:
        time.sleep(LOOK_AGAIN)
        built = build_if_changed(built, sources(), command)


def build_if_changed(built: str, now: str, command: list[str]) -> str:
    """`now`; where that is not what was built, the command was run for it, and what to do is said.

    In a process of its own: in this one Python would go on with the modules as they were. A build that fails
    says why itself, and the site stays as it was.
    """
    if now != built:
        begun = time.monotonic()
        print("Something changed. Building …", flush=True)
        if subprocess.run(command, cwd=ROOT).returncode == 0:
            print(f"Load the page again to see it ({time.monotonic() - begun:.0f} s).", flush=True)
        else:
            print("What is served is as it was before.", flush=True)
    return now


def main() -> None:
    parser = argparse.ArgumentParser(prog="scripts/serve.py", description=__doc__.splitlines()[0])
    parser.add_argument("--port", type=int, default=8000)
    parser.add_argument(
        "--host", default="127.0.0.1", help=f"{EVERYWHERE} lets other devices in the network in"
    )
    parser.add_argument("--watch", action="store_true", help="build again at every change")
    chosen = parser.parse_args()
    try:
        environment.enter("scripts.serve", "site")
    except environment.Missing as missing:
        sys.exit(str(missing))

    from scripts.build import SITE, BuildFailed, build, sources_digest
    from scripts.server import server

    print("Building the site, if anything changed …", flush=True)
    try:
        build()
    except BuildFailed as error:
        sys.exit(f"The site was not built. {error}")
    try:
        serving = server(SITE, environment.CACHE / "compressed", chosen.host, chosen.port)
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
        build_again = [sys.executable, "-m", "scripts.build"]
        threading.Thread(
            target=build_at_every_change, args=(sources_digest, build_again), daemon=True
        ).start()
    try:
        serving.serve_forever()
    except KeyboardInterrupt:
        print()


if __name__ == "__main__":
    main()
