"""What the browser tests ask of a calculator on a page."""

import json

from playwright.sync_api import expect

from calc.page.live import answer

CALCULATOR = "seat-fit"


def opened(page, address):
    """The calculator of a page, just loaded."""
    page.goto(address)
    return page.locator(f"live-calculator[data-calculator={CALCULATOR}]")


def fill_in(live, pocket_bore="37.505", ring_outside="37.61", valve="intake") -> None:
    """All that the calculator must have read; what else it needs stands in by the sheet or is assumed."""
    entry(live, "valve").select_option(valve)
    entry(live, "pocket_bore").fill(pocket_bore)
    entry(live, "ring_outside").fill(ring_outside)


def entry(live, name):
    return live.locator(f"[data-entry][name={name}]")


def message(live, name):
    return live.locator(f"[data-message-for={name}]")


def part(live, name):
    return live.locator(f"[data-part={name}]")


def reply(live, system="metric", standing=None) -> dict:
    """What CPython answers to the entries that stand in the form, for the engine that the site begins with."""
    entries = {
        e.get_attribute("name"): e.input_value()
        for e in live.locator("[data-entry]").all()
        if e.input_value().strip()
    }
    asked = {
        "call": "evaluate",
        "calculator": CALCULATOR,
        "anchor": live.get_attribute("id"),
        "entries": entries,
        "system": system,
        "standing": standing or {"engine": "TS-16", "which": entries.get("valve", ""), "job": {}},
    }
    return json.loads(answer(json.dumps(asked)))


def plain(page, html: str) -> str:
    """The text of markup, as the browser reads it."""
    return page.evaluate(
        "html => { const e = document.createElement('template'); e.innerHTML = html; return e.content.textContent }",
        html,
    )


def shows(live, html: str, name="verdict"):
    expect(part(live, name)).to_have_text(plain(live.page, html).strip(), use_inner_text=False)


def wait_for_state(page, state: str):
    """Wait until the page's runtime is in a state."""
    reached = page.evaluate(
        """(state) => import(new URL('/assets/js/runtime.mjs', location)).then(({ runtime }) =>
        new Promise((done) => {
            const look = () => ['failed', state].includes(runtime.state) && done(runtime.state);
            runtime.addEventListener('state', look);
            look();
        }))""",
        state,
    )
    assert reached == state
