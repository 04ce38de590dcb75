"""Draw the icons of the home screen from the mark, with the browser that the tests use.

    .venv/bin/python -m scripts.icons

They are small and change with the mark only, so they lie beside it; docs/manifest.webmanifest names them.
"""

from __future__ import annotations

import os
import re
import shutil
from pathlib import Path
from typing import TYPE_CHECKING

from scripts.environment import ROOT

if TYPE_CHECKING:
    from playwright.sync_api import Browser

IMAGES = ROOT / "docs/assets/img"
MARK = IMAGES / "mark.svg"
# Of a maskable icon a device may show no more than a circle of 0.8 of its width (W3C, Web Application
# Manifest, "Icon masks and safe zone"). The mark reaches out to 0.92 of its half width: 0.8 / 0.92 = 0.87.
WITHIN = 0.8
ICONS = {"icon-192.png": (192, False), "icon-512.png": (512, False), "icon-maskable-512.png": (512, True)}


def maskable(mark: str) -> str:
    """The mark with its ground to the edge, and drawn small enough for any mask."""
    ground = re.search(r'<rect width="48" height="48" rx="6" fill="(#[0-9a-f]{6})"/>', mark)
    if not ground:
        raise ValueError(f"{MARK.name} has no ground that could reach to the edge.")
    move = 24 * (1 - WITHIN)
    drawn = mark.replace(
        ground[0],
        f'<rect width="48" height="48" fill="{ground[1]}"/>'
        f'<g transform="translate({move:g} {move:g}) scale({WITHIN:g})">',
    )
    return drawn.replace("</svg>", "</g></svg>")


def draw(browser: Browser, folder: Path) -> None:
    """Write every icon as PNG into a folder."""
    mark = MARK.read_text(encoding="utf-8")
    for name, (size, masked) in ICONS.items():
        page = browser.new_page(viewport={"width": size, "height": size})
        drawn = maskable(mark) if masked else mark
        page.set_content(
            f"<style>html, body {{ margin: 0; background: none }} svg {{ display: block }}</style>{drawn}"
        )
        page.screenshot(path=folder / name, omit_background=True)
        page.close()


def main() -> None:
    from playwright.sync_api import sync_playwright

    path = os.environ.get("SIZEBOOK_CHROMIUM") or shutil.which("chromium")
    with sync_playwright() as playwright:
        browser = playwright.chromium.launch(executable_path=path, args=["--no-sandbox"])
        draw(browser, IMAGES)
        browser.close()


if __name__ == "__main__":
    main()
