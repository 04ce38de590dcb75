"""Markup that takes the place of other markup: as if it had been written anew, but what stays the same is not touched."""

import json

import pytest
from playwright.sync_api import expect

from calc.page.live import answer
from calc.stations.index import ids
from tests.browser.live import entry, fill_in, message, part, plain, reply, shows

pytestmark = pytest.mark.browser

SWAP = "import(new URL('/assets/js/swap.mjs', location)).then(({ swap }) => swap)"


def parts(id: str, system: str, entries=None, standing=None) -> list[str]:
    """Every part of a calculator's answer."""
    asked = {"call": "evaluate", "calculator": id, "entries": entries or {}, "system": system}
    return list(json.loads(answer(json.dumps(asked | {"standing": standing})))["html"].values())


def test_whatever_stood_there_it_is_as_if_it_had_been_written_anew(page):
    """Through all calculators' answers, one after the other in one place, of the kind and of any other; the browser's own parser says what is meant."""
    page.goto("/about/")
    written = [html for id in ids() for html in parts(id, "metric")]
    unread = [html for id in ids() for html in parts(id, "metric", standing={"engine": "TS-16", "which": ""})]
    wrong = page.evaluate(
        f"""async (written) => {{
            const swap = await {SWAP};
            const [place, anew] = [document.createElement("div"), document.createElement("template")];
            document.body.append(place);
            return written.filter((html) => {{
                swap(place, html);
                anew.innerHTML = html;
                return place.innerHTML.replaceAll(' open=""', "") !== anew.innerHTML.replaceAll(' open=""', ""); // folds stay as they were
            }}).map((html) => html.slice(0, 200));
        }}""",
        written + written[::-1] + unread + written[:: len(parts("seat-fit", "metric"))] + written,
    )
    assert len(written) > 100 and wrong == []


@pytest.mark.parametrize(
    "before, after, kept",
    [
        ("<p>a</p><p>b</p>", "<p>a</p><p>c</p>", ["P", "P"]),
        ("<p>a</p><ul></ul>", "<h4>new</h4><p>b</p><ul></ul>", ["P", "UL"]),  # something comes in front
        ("<ul></ul><p>a</p><dl></dl>", "<p>b</p><dl></dl>", ["P", "DL"]),  # goes from there
        ("<p>a</p><ul></ul><dl></dl>", "<p>a</p><dl></dl>", ["P", "DL"]),  # goes from between
        ("<p>a</p>", "text", []),
        ("text", "<p>a</p>text", ["#text"]),
        ("<p>a</p>", "", []),
    ],
)
def test_what_stays_is_the_same_node(page, before, after, kept):
    page.goto("/about/")
    found = page.evaluate(
        f"""async ([before, after]) => {{
            const swap = await {SWAP};
            const place = document.createElement("div");
            place.innerHTML = before;
            const old = new Set(place.childNodes);
            swap(place, after);
            return [place.innerHTML, [...place.childNodes].filter((node) => old.has(node)).map((node) => node.nodeName)];
        }}""",
        [before, after],
    )
    assert found == [after, kept]


def test_a_key_touches_what_it_changes_and_nothing_else(live):
    fill_in(live)
    first = reply(live)["html"]
    for name in ("verdict", "result"):
        shows(live, first[name], name)
    live.evaluate("""(live) => {
        globalThis.stood = [];
        globalThis.touched = [];
        const watch = new MutationObserver((changes) => touched.push(...changes.map(({ target }) => target.outerHTML)));
        for (const part of live.querySelectorAll("[data-part=verdict], [data-part=result]")) {
            stood.push(...part.querySelectorAll("*"));
            watch.observe(part, { subtree: true, childList: true }); // words and attributes may change, no element goes or comes
        }
    }""")
    entry(live, "ring_outside").fill("37.611")
    second = reply(live)["html"]
    assert second["verdict"] != first["verdict"] and second["result"] != first["result"]
    for name in ("verdict", "result"):
        shows(live, second[name], name)
    assert live.page.evaluate("stood.length > 40 && stood.every((element) => element.isConnected)")
    assert live.page.evaluate("touched") == []


def test_focus_folds_and_what_a_refusal_or_the_other_units_left_are_right_after_a_key(live):
    page = live.page
    fill_in(live)
    shows(live, reply(live)["html"]["result"], "result")
    numbers = live.locator("details[data-keep=numbers]")
    numbers.locator("summary").click()
    numbers.locator("summary").focus()
    fill = "(entry) => { entry.value = %r; entry.dispatchEvent(new Event('input', { bubbles: true })); }"
    entry(live, "ring_outside").evaluate(
        fill % "37.2"
    )  # too small: another verdict, other remarks; the focus stays where it is
    shows(live, reply(live)["html"]["verdict"])
    shows(live, reply(live)["html"]["result"], "result")
    expect(numbers).to_have_attribute("open", "")
    expect(numbers.locator("summary")).to_be_focused()
    entry(live, "ring_outside").evaluate(fill % "37.2 kg")
    expect(message(live, "ring_outside")).to_be_visible()
    expect(part(live, "verdict")).to_have_attribute("data-stale", "")
    page.click("[data-units-choice=inch]")
    expect(message(live, "ring_outside")).to_be_visible()
    entry(live, "ring_outside").fill("37.61 mm")
    expect(message(live, "ring_outside")).to_be_hidden()
    expect(part(live, "verdict")).not_to_have_attribute("data-stale", "")
    shows(live, reply(live, "inch")["html"]["verdict"])
    shows(live, reply(live, "inch")["html"]["result"], "result")
    live.locator("[data-reset]").click()
    example = plain(page, "".join(parts("seat-fit", "metric")[:1]))
    expect(part(live, "verdict")).to_have_text(example, use_inner_text=False)
