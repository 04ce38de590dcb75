"""The benches report no times of a machine that was not quiet, and no other site than the one measured."""

import pytest

from scripts import bench


def test_times_that_lie_close_together_are_reported():
    bench.steady("cold", [100, 104, 98, 101, 99, 160, 100])  # one outlier moves no median


@pytest.mark.parametrize("times", [[100, 200, 100, 200, 100, 200, 150], [300, 500, 700, 900]])
def test_times_that_lie_far_apart_are_refused_and_told(times):
    with pytest.raises(
        bench.NotMeasured,
        match=r"not quiet: ours, warm took .*200|not quiet: ours, warm took 300, 500, 700, 900 ms",
    ):
        bench.steady("ours, warm", times)


def test_a_machine_with_other_work_is_refused_by_its_load(monkeypatch):
    monkeypatch.setattr(bench.os, "getloadavg", lambda: (1.9, 1.0, 0.5))
    monkeypatch.setattr(bench, "PATIENCE", 0)
    with pytest.raises(bench.NotMeasured, match="its load is 1.9"):
        bench.wait_until_quiet()


def test_a_machine_that_comes_to_rest_is_waited_for(monkeypatch):
    loads = iter([(1.9,), (0.9,), (0.2,)])
    monkeypatch.setattr(bench.os, "getloadavg", lambda: next(loads))
    monkeypatch.setattr(bench.time, "sleep", lambda _: None)
    bench.wait_until_quiet()
    assert next(loads, None) is None
