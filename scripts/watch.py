"""The edit loop: `python3 scripts/serve.py --watch` shows an edit of calc/ or docs/ in the open page.

A draft is built at once: the pages, and the calculators as sources, which browsers start from as they are.
The page then loads itself anew. The whole build follows when nothing has changed for a while, so that what a
reader gets is there when the edit is done.
"""

from __future__ import annotations

import os
import signal
import subprocess
import sys
import threading
from pathlib import Path

from watchdog.events import FileSystemEvent, FileSystemEventHandler
from watchdog.observers import Observer

from scripts.build import BUILT_FROM
from scripts.environment import ROOT
from scripts.server import TYPES, Handler

WATCHED = ("calc", "docs", "overrides", "tests/checks")
TOGETHER = 0.1  # s: an editor writes a file in several steps
QUIET = 20  # s without an edit until the whole is built
EVERY = 300  # ms between two looks of the page

RELOAD, STATE, WORKER = "/reload.mjs", "/build-state", "/sw.js"
RELOAD_SCRIPT = f"""
const state = async () => (await fetch("{STATE}", {{ cache: "no-store" }})).text();
const first = await state();
setInterval(async () => (await state().catch(() => first)) !== first && location.reload(), {EVERY});
"""
# What was kept for no signal would stand in the way of what was just edited.
NO_WORKER = """
self.addEventListener("install", () => self.skipWaiting());
self.addEventListener("activate", () => self.registration.unregister());
"""


class EditHandler(Handler):
    """Serves a site that is being edited: its pages load themselves anew after each draft."""

    def send_head(self):
        address = self.path.partition("?")[0]
        if address == STATE:
            return self._plain(self._state(), "text/plain")
        if address in (RELOAD, WORKER):
            return self._plain(RELOAD_SCRIPT if address == RELOAD else NO_WORKER, TYPES[".js"])
        page = Path(self.translate_path(self.path))
        if page.is_dir() and address.endswith("/"):
            page /= "index.html"
        if page.suffix == ".html" and page.is_file():
            html = page.read_text(encoding="utf-8")
            script = f'<script type="module" src="{RELOAD}"></script></head>'
            return self._plain(html.replace("</head>", script, 1), TYPES[".html"])
        return super().send_head()

    def _plain(self, text: str, kind: str) -> None:
        self._answer(200, text.encode(), {"Content-Type": kind, "Cache-Control": "no-store"})

    def _state(self) -> str:
        """Another one after each edit; the whole build that follows a draft is of the same edit."""
        try:
            return (Path(self.directory) / BUILT_FROM).read_text().partition(" ")[0]
        except OSError:  # one takes the other's place just now
            return ""


class Edits(FileSystemEventHandler):
    """Builds a draft after each edit, and the whole when there was none for a while."""

    def __init__(self, say=print):
        self.say, self.edited, self.whole = say, threading.Event(), None

    def on_any_event(self, event: FileSystemEvent) -> None:
        if event.event_type in ("opened", "closed_no_write") or event.is_directory:
            return
        if "__pycache__" not in str(event.src_path):
            self.edited.set()

    def watch(self) -> None:
        """Build again and again, for ever."""
        observer = Observer()
        for name in WATCHED:
            observer.schedule(self, str(ROOT / name), recursive=True)
        observer.start()
        while True:
            if self.edited.wait(QUIET):
                while self.edited.wait(TOGETHER):
                    self.edited.clear()
                self.draft()
            elif self.whole is None:
                self.whole = _build()
            elif self.whole.poll() is not None:
                self.edited.wait()

    def end(self) -> None:
        if self.whole and self.whole.poll() is None:
            os.killpg(self.whole.pid, signal.SIGTERM)
            self.whole.wait()

    def draft(self) -> None:
        self.end()
        self.whole = None
        done = _build("--draft")
        words = done.communicate()[0].strip()
        if done.returncode:
            words = f"{words}\nWhat is served is as it was before."
        self.say(words, flush=True)


def _build(*how: str) -> subprocess.Popen:
    """In a process of its own, which reads what was edited, in one group with those that it begins."""
    return subprocess.Popen(
        [sys.executable, "-m", "scripts.build", *how],
        cwd=ROOT,
        stdout=subprocess.PIPE,
        stderr=subprocess.STDOUT,
        text=True,
        start_new_session=True,
    )
