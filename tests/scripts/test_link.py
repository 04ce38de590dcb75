"""The slow line: what arrives is what was sent, and not sooner than the line allows (never later is not promised)."""

import http.client
import threading
import time

import pytest

from scripts.link import Link
from scripts.server import server

BODY = bytes(range(256)) * 400  # 102 400 bytes
RATE = 4e6  # bit/s
ROUND_TRIP = 0.05  # s


@pytest.fixture
def link(tmp_path):
    (tmp_path / "site").mkdir()
    (tmp_path / "site/body.bin").write_bytes(BODY)
    serving = server(tmp_path / "site", tmp_path / "cache")
    threading.Thread(target=serving.serve_forever, args=(0.05,), daemon=True).start()
    with Link(serving.server_port, RATE, ROUND_TRIP) as made:
        yield made
    serving.shutdown()
    serving.server_close()


def fetch(link) -> tuple[bytes, float]:
    started = time.monotonic()
    connection = http.client.HTTPConnection("127.0.0.1", link.port, timeout=60)
    connection.request("GET", "/body.bin")
    body = connection.getresponse().read()
    connection.close()
    return body, time.monotonic() - started


def test_what_arrives_is_what_was_sent_and_is_counted(link):
    body, _ = fetch(link)
    assert body == BODY
    assert len(BODY) < link.received < len(BODY) + 1000  # with the headers


def test_one_takes_the_time_of_the_handshake_the_way_and_its_bits(link):
    _, taken = fetch(link)
    assert taken >= 2 * ROUND_TRIP + len(BODY) * 8 / RATE


def test_two_share_the_line(link):
    taken = []
    both = [threading.Thread(target=lambda: taken.append(fetch(link)[1])) for _ in range(2)]
    for one in both:
        one.start()
    for one in both:
        one.join()
    assert max(taken) >= 2 * ROUND_TRIP + 2 * len(BODY) * 8 / RATE
