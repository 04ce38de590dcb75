"""A result as a link: what is entered comes back as it was, and nothing that is damaged comes back at all."""

import json
from urllib.parse import parse_qsl, unquote_plus

import pytest
from hypothesis import HealthCheck, example, given, settings
from hypothesis import strategies as st

from calc.declare.calculator import evaluate
from calc.declare.standing import Standing
from calc.page.link import _BARE, MOST, Link, LinkError, _decoded, _encoded, address, read, write
from calc.page.live import answer
from calc.reference.engine import engine
from calc.stations import index as stations
from tests.entries import entries

SYSTEMS = ("metric", "inch")
ENGINES = ("", "TS-16", "RC-40")
PLACES = ("", "2", "exhaust", "2 intake")


def example_texts(calculator):
    """The worked example, as a reader types it who has read all of it."""
    texts = {}
    for declared in calculator.inputs:
        if hasattr(declared, "cells"):
            texts |= {declared.cells[place].name: text for place, text in declared.default_texts.items()}
        elif text := declared.default_text("metric"):
            texts[declared.name] = text
    return texts


LINK = Link(
    stations.find("seat-fit"),
    {"pocket_bore": "1 31/64 in", "ring_outside": "37,61", "pocket_bore.part": "26 °C"},
    "metric",
    "TS-16",
    "2 exhaust",
)


@pytest.mark.parametrize("id", stations.ids())
@pytest.mark.parametrize("system", SYSTEMS)
def test_every_example_comes_back_through_a_link(id, system):
    link = Link(stations.find(id), example_texts(stations.find(id)), system, "TS-16", "2 exhaust")
    assert read(write(link)) == link
    assert read(address(link, "https://example.org/book")) == link
    assert len(write(link)) < MOST / 3, "programs that send links cut long ones off"


@pytest.mark.parametrize("id", stations.ids())
@settings(max_examples=6, deadline=None, suppress_health_check=[HealthCheck.too_slow])
@given(data=st.data())
def test_whatever_is_entered_comes_back_and_gives_the_same_result(id, data):
    calculator = stations.find(id)
    drawn = data.draw(entries(calculator))
    system, name, which = (data.draw(st.sampled_from(one)) for one in (SYSTEMS, ENGINES, PLACES))
    found = read(write(Link(calculator, drawn, system, name, which)))
    assert found.entries == {key: text.strip() for key, text in drawn.items() if text.strip()}
    if found.entries:
        assert (found.system, found.engine, found.which) == (system, name, which)

    def told(texts):
        asked = {
            "call": "evaluate",
            "calculator": id,
            "entries": texts,
            "system": system,
            "standing": {"engine": name, "which": which, "job": {}},
        }
        return json.loads(answer(json.dumps(asked)))

    assert told(found.entries) == told(drawn)


@given(st.text())
@example("1 31/64″ ± 0.5% + “x”&y=z#?")
def test_texts_are_encoded_as_a_form_encodes_them(text):
    """Held against the library's own reading of it (WHATWG URL, application/x-www-form-urlencoded)."""
    text = text.encode("utf-8", "ignore").decode()  # no half of a surrogate pair, which no field can hold
    written = _encoded(text)
    assert unquote_plus(written) == _decoded(written) == text
    assert set(written) <= _BARE | {"+", "%"}


def test_it_is_read_as_any_address_is():
    query = write(LINK).partition("?")[2]
    assert dict(parse_qsl(query, strict_parsing=True)) | {"End": ""} == {
        "V": "1",
        "Units": "metric",
        "Engine": "TS-16",
        "Place": "2 exhaust",
        **LINK.entries,
        "End": "",
    }


def test_no_server_is_told():
    before, mark, behind = address(LINK, "https://example.org/book/").partition("#")
    assert (before, mark) == ("https://example.org/book/check-a-number/", "#")
    assert behind == write(LINK)
    assert address(LINK).startswith("check-a-number/#seat-fit?")


def test_where_nothing_was_entered_it_leads_to_the_calculator_alone():
    assert write(Link(LINK.calculator, {"pocket_bore": " "}, "inch", "TS-16")) == "seat-fit"
    assert read("#seat-fit") == Link(LINK.calculator)


@settings(max_examples=400)
@given(st.data())
def test_no_change_of_a_character_gives_another_number(data):
    """CRC-32 notices every change within 32 bits."""
    whole = write(LINK)
    at = data.draw(st.integers(0, len(whole) - 1))
    other = data.draw(st.characters(min_codepoint=33, max_codepoint=126))
    changed = data.draw(
        st.sampled_from(
            [whole[:at], whole[:at] + whole[at + 1 :], whole[:at] + other + whole[at + 1 :], whole + other]
        )
    )
    try:
        found = read(changed)
    except LinkError as error:
        assert str(error).endswith(".")
    else:  # %2B and %2b are one, and the id alone is a link too
        assert found == LINK or found.entries == {}


def test_programs_that_write_an_address_anew_do_no_harm():
    assert read(write(LINK).replace("+", "%20").replace("/", "%2F")) == LINK
    assert read(f"  https://example.org/heads/seats/?from=a-poster#{write(LINK)}\n") == LINK


def signed(id, **said):
    """A link with the right end, whatever it says."""
    from calc.page.link import _end

    said = {"V": "1", **said}
    return f"{id}?" + "&".join(f"{k}={_encoded(v)}" for k, v in said.items()) + f"&End={_end(id, said)}"


@pytest.mark.parametrize(
    ("text", "why"),
    [
        (signed("no-such", Units="metric"), 'does not have: "no-such"'),
        ("no-such", 'does not have: "no-such"'),
        (signed("seat-fit", pocket_boer="37.48"), 'nobody asks for "pocket_boer"'),
        (signed("seat-fit", **{"pocket_bore.nowhere": "37.48"}), 'nobody asks for "pocket_bore.nowhere"'),
        (signed("seat-fit", Shop="Tern Street"), 'nobody asks for "Shop"'),
        (signed("seat-fit", Engine="XX-99"), 'an engine that is not here: "XX-99"'),
        (signed("seat-fit", V="2"), "made by a newer edition"),
        ("seat-fit?V=2&something=else", "made by a newer edition"),
        (signed("seat-fit", Units="cubits"), "damaged"),
        (signed("seat-fit", Place="<b>2</b>"), "damaged"),
        (signed("seat-fit", pocket_bore="9" * MOST), "damaged"),
        ("seat-fit?V=1&pocket_bore=%FF&End=00000000", "damaged"),
        ("seat-fit?V=1&pocket_bore=1&pocket_bore=2&End=00000000", "damaged"),
        ("seat-fit?", "damaged"),
        ("", "damaged"),
        ("v1.ABCDEFGH", "damaged"),
    ],
)
def test_what_cannot_be_used_is_told_in_one_sentence(text, why):
    with pytest.raises(LinkError) as told:
        read(text)
    assert why in str(told.value)
    assert str(told.value).endswith(".") and str(told.value).count(". ") == 0


def test_what_is_too_much_for_a_link_is_told():
    with pytest.raises(LinkError, match="too much for a link"):
        write(Link(LINK.calculator, {"pocket_bore": "9" * MOST}))
    for wrong in ("javascript:alert(1)", "example.org", "https://example.org/?a=b"):
        with pytest.raises(LinkError, match="no address of a handbook"):
            address(LINK, wrong)


def test_no_entry_has_a_name_that_a_link_needs_itself():
    for calculator in stations.every():
        assert all(declared.name[0].islower() for declared in calculator.inputs), calculator.id


# --- what the page asks


def asked(**request):
    return json.loads(answer(json.dumps(request)))


def shared(texts, standing=None, system="metric", **beside):
    return asked(
        call="share",
        calculator="seat-fit",
        entries=texts,
        system=system,
        standing=standing,
        **{"engine": "TS-16", "which": "", **beside},
    )


READ = {"pocket_bore": "37.505", "ring_outside": "37.61", "valve": "intake"}
JOB = {
    "engine": "TS-16",
    "which": "2 intake",
    "job": {"pocket_bore": {"words": "Jo Tern, 3 May", "stage": "received"}},
}


def test_a_result_is_shared_with_its_title_and_its_verdict_in_words():
    reply = shared(READ, {"engine": "TS-16", "which": "intake", "job": {}})
    found = evaluate(stations.find("seat-fit"), READ, standing=Standing(engine("TS-16"), "intake"))
    assert reply["title"] == "Seat ring in its pocket"
    assert reply["text"] == f"In order: {found.verdict.headline.plain()}"
    assert read(reply["fragment"]) == Link(stations.find("seat-fit"), READ, "metric", "TS-16", "intake")


def test_of_a_job_its_numbers_leave_and_no_name():
    reply = shared(READ, JOB)
    link = read(reply["fragment"])
    assert (link.entries, link.engine, link.which) == (READ, "TS-16", "2 intake")
    assert "Tern" not in reply["fragment"] + reply["title"] + reply["text"]
    own = shared(READ, {**JOB, "engine": "The grey one of Jo Tern", "which": "Jo’s 2nd"})
    assert "Jo" not in own["fragment"] and read(own["fragment"]).engine == ""


def test_an_example_is_shared_as_one():
    reply = shared({}, None)
    assert reply["fragment"] == "seat-fit" and reply["text"].startswith("Example: ")
    chosen = shared({"valve": "exhaust"}, None, which="exhaust")
    assert read(chosen["fragment"]).engine == "TS-16"


def test_what_cannot_be_worked_out_cannot_be_shared():
    reply = shared({"pocket_bore": "thirty"}, JOB)
    assert not reply["ok"] and reply["errors"][0]["field"] == "pocket_bore"
    reply = shared({"pocket_bore": "37.5" + " " * MOST + "mm"}, JOB)
    assert not reply["ok"]


def test_a_page_is_told_what_a_link_holds_or_why_it_holds_nothing():
    reply = asked(call="link", fragment=write(LINK))
    assert reply["ok"] and reply["entries"] == LINK.entries
    assert [reply[key] for key in ("calculator", "system", "engine", "which")] == [
        "seat-fit",
        "metric",
        "TS-16",
        "2 exhaust",
    ]
    assert "data-leave-link" in reply["html"]["link"]
    reply = asked(call="link", fragment="seat-fit?V=1")
    assert not reply["ok"] and "damaged" in reply["errors"][0]["message"]
