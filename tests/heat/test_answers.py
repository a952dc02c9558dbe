"""What every answer on settings and heat must bring: cautions, a well-formed drawing, speed, ranges that hold."""

from __future__ import annotations

import math
import time
import xml.etree.ElementTree as ET

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from build_scripts.heat_model.timing import times_of
from calculators.data import MARKS, figure, load, sources
from calculators.heat.heat_metals import heat_keys
from calculators.metals import metals
from calculators.run import answer, find, work_out

SLUGS = ("melt-spot", "start-settings", "test-spots", "seam-plan", "stone-heat", "bead", "gas")
ON_SETTINGS = ("melt-spot", "start-settings", "test-spots", "seam-plan", "bead")


@pytest.mark.parametrize("slug", ON_SETTINGS)
def test_every_settings_answer_carries_the_cautions(slug: str) -> None:
    told = " ".join(one["text"] for one in answer(slug, {})["cautions"])
    for words in ("scrap of the same metal and thickness", "Class 4", "fume", "manual", "safety officer"):
        assert words in told


@pytest.mark.parametrize("slug", [slug for slug in SLUGS if slug != "gas"])
def test_drawings_are_well_formed(slug: str) -> None:
    _, working = work_out(find(slug), {})
    assert working.drawings
    for drawing in working.drawings:
        root = ET.fromstring(drawing.svg())  # noqa: S314 - our own picture
        assert root.get("viewBox")
        assert "nan" not in drawing.svg()


@pytest.mark.parametrize("slug", SLUGS)
def test_an_answer_is_quick(slug: str) -> None:
    """20 ms is the aim on a quiet machine; the best of ten may take three times that on a busy one."""
    answer(slug, {}, html=True)
    best = 1.0
    for _ in range(10):
        started = time.process_time()
        answer(slug, {}, html=True)
        best = min(best, time.process_time() - started)
    assert best < 0.06


@pytest.mark.parametrize("metal", sorted(heat_keys()))
def test_start_settings_are_quick_for_every_metal(metal: str) -> None:
    """The aim is 20 ms of processor time, nothing remembered. Silver takes about 15.

    The limit is the best of eight under 20 ms; where this computer is slower than the one measured, by as much more.
    Its speed may change between the two measurements, so there are three tries.
    """
    tries = (min(times_of("start-settings", {"metal": metal}, 8)) / max(1.0, yardstick() / 4.0) for _ in range(3))
    assert any(time < 20 for time in tries)


def yardstick() -> float:
    """Processor time of 50 000 error functions, ms: 4.0 to 4.5 on the computer on which silver takes 15 ms."""
    best = math.inf
    for _ in range(8):
        started = time.process_time()
        sum(math.erfc(i / 1e5) for i in range(50000))
        best = min(best, 1e3 * (time.process_time() - started))
    return best


def test_every_heat_figure_has_source_or_honest_mark() -> None:
    known = {metal.key for metal in metals()}
    assert heat_keys() <= known
    for key, rows in load("heat_properties").items():
        for row in [one for family in rows.values() for one in family.values()] if key == "family" else rows.values():
            one = figure(row)
            assert one.mark in MARKS
            assert one.source in sources() if one.source else one.mark == "from memory"
            if one.low is not None and one.high is not None:
                assert one.low <= one.value <= one.high


@pytest.mark.parametrize("metal", sorted(heat_keys()))
@pytest.mark.parametrize("slug", ["melt-spot", "start-settings", "stone-heat", "bead"])
def test_every_metal_has_an_answer(slug: str, metal: str) -> None:
    data = answer(
        slug,
        {"metal": metal, "max_energy": "150 J", "max_peak_power": "20 kW"} if "start" in slug else {"metal": metal},
    )
    assert "errors" not in data, data
    for value in data["results"].values():
        if "low" in value and "high" in value:
            assert value["low"] <= value["value"] * (1 + 1e-6) + 1e-9
            assert value["value"] <= value["high"] * (1 + 1e-6) + 1e-9


def test_test_spots_narrow_the_settings() -> None:
    """The range typed over from the fit must shrink the range of the settings."""
    fitted = answer("test-spots", {})["results"]["to_settings"]["absorptivity"]
    before = answer("start-settings", {})["results"]["weld_energy"]
    after = answer("start-settings", {"absorptivity": fitted})["results"]["weld_energy"]
    assert after["high"] / after["low"] < 0.75 * before["high"] / before["low"]


@given(
    metal=st.sampled_from(sorted(heat_keys())),
    energy=st.floats(0.1, 60),
    duration=st.floats(0.3, 20),
    spot=st.floats(0.15, 3),
    thickness=st.one_of(st.none(), st.floats(0.15, 5)),
)
@settings(max_examples=80, deadline=None)
def test_ranges_hold_their_value(
    metal: str, energy: float, duration: float, spot: float, thickness: float | None
) -> None:
    texts = {"metal": metal, "energy": f"{energy:.4f}", "duration": f"{duration:.4f}", "spot": f"{spot:.4f}"}
    data = answer("melt-spot", {**texts, "thickness": f"{thickness:.4f}" if thickness else ""})
    assert "errors" not in data, data
    for name in ("melt_depth", "melt_width"):
        one = data["results"][name]
        assert one["low"] - 1e-9 <= one["value"] <= one["high"] + 1e-9
    if thickness:
        typed = float(f"{thickness:.4f}")
        assert data["results"]["melt_depth"]["high"] <= typed * (1 + 1e-7)  # as typed, to the answer's eight digits


def test_one_spot_only_is_told() -> None:
    data = answer("test-spots", {f"shot_{i}": "" for i in range(2, 9)} | {"shot_1": "4 J, 3 ms, 0.5 mm, 0.4 mm"})
    assert any("One spot only" in one["text"] for one in data["cautions"])
