"""What must hold for every ring: there and back, monotone, whatever unit is typed; sections by integration."""

from __future__ import annotations

import math
from collections.abc import Callable
from typing import Any

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st
from scipy import integrate  # type: ignore[import-untyped]

from calculators.declare import Working, all_calculators
from calculators.profiles import NAMES, outline, section
from calculators.run import answer
from calculators.units import magnitude, quantity

across = st.floats(12, 25).map(lambda d: round(d, 3))
walls = st.floats(0.4, 4).map(lambda t: round(t, 3))
widths = st.floats(1, 12).map(lambda w: round(w, 2))
profiles = st.sampled_from([name for name in NAMES if name != "square"])


def results(slug: str, **fields: str) -> dict[str, Any]:
    data = answer(slug, fields)
    assert "errors" not in data, data
    return {name: one["value"] for name, one in data["results"].items()}


@given(across, across, walls, widths, profiles)
@settings(max_examples=40, deadline=None)
def test_up_then_down_returns_the_same_metal(a: float, b: float, t: float, w: float, profile: str) -> None:
    common = {"thickness": f"{t} mm", "width": f"{w} mm", "profile": profile}
    up = results("ring-resize", from_size=f"{a} mm across", to_size=f"{b} mm across", **common)
    down = results("ring-resize", from_size=f"{b} mm across", to_size=f"{a} mm across", **common)
    assert up["length_change"] == pytest.approx(-down["length_change"], abs=1e-7)
    assert up["metal_mass"] == pytest.approx(down["metal_mass"], abs=1e-7)
    back = results(
        "ring-resize",
        from_size=f"{b} mm across",
        to_size=f"{a} mm across",
        **{**common, "thickness": f"{min(6, max(0.4, up['stretched_thickness']))} mm"},
    )
    if 0.4 <= up["stretched_thickness"] <= 6:
        assert back["stretched_thickness"] == pytest.approx(t, rel=1e-5)


@given(across, st.floats(0.05, 3), walls)
@settings(max_examples=40, deadline=None)
def test_a_larger_step_needs_a_longer_piece_and_thins_more(a: float, step: float, t: float) -> None:
    assume(a + 2 * step < 26)
    one, two = (
        results("ring-resize", from_size=f"{a} mm across", to_size=f"{a + k * step} mm across", thickness=f"{t} mm")
        for k in (1, 2)
    )
    assert two["length_change"] > one["length_change"] > 0
    assert two["piece_length"] > one["piece_length"] > one["length_change"]
    assert two["stretched_thickness"] < one["stretched_thickness"] < t
    assert one["piece_inside_length"] < one["length_change"] < one["piece_outside_length"]


@given(across, walls, widths, profiles)
@settings(max_examples=40, deadline=None)
def test_millimeters_and_inches_give_the_same_blank(d: float, t: float, w: float, profile: str) -> None:
    metric = results("ring-blank", size=f"{d} mm across", thickness=f"{t} mm", width=f"{w} mm", profile=profile)
    inches = results(
        "ring-blank",
        size=f"{d / 25.4} in across",
        thickness=f"{t / 25.4} in",
        width=f"{w / 25.4} in",
        profile=profile,
    )
    assert metric == pytest.approx(inches, rel=1e-6)


@given(across, walls)
@settings(max_examples=30, deadline=None)
def test_a_resized_ring_is_two_blanks_apart(d: float, t: float) -> None:
    small, large = (results("ring-blank", size=f"{x} mm across", thickness=f"{t} mm") for x in (d, d + 1))
    change = results("ring-resize", from_size=f"{d} mm across", to_size=f"{d + 1} mm across", thickness=f"{t} mm")
    assert large["blank_length"] - small["blank_length"] == pytest.approx(change["length_change"], abs=2e-6)


@pytest.mark.parametrize("profile", sorted(NAMES))
@pytest.mark.parametrize(("width", "thickness"), [(3.0, 1.5), (4.0, 1.2), (2.0, 2.0), (1.6, 2.4), (6.0, 1.8)])
def test_section_and_centroid_by_numerical_integration(profile: str, width: float, thickness: float) -> None:
    """Source: SciPy adaptive quadrature of the shape's own edges (independent of the closed forms)."""
    if profile == "square" and width != thickness:
        return
    half = width / 2

    def rise(x: float, height: float) -> float:
        if height >= half:
            return height * math.sqrt(max(0.0, 1 - (x / half) ** 2))
        radius = (half**2 + height**2) / (2 * height)
        return math.sqrt(max(0.0, radius**2 - x**2)) - (radius - height)

    def half_oval(x: float) -> float:
        return thickness / 2 * (1 - math.sqrt(max(0.0, 1 - (x / half) ** 2)))

    edges: dict[str, Callable[[float], tuple[float, float]]] = {
        "flat": lambda x: (0.0, thickness),
        "square": lambda x: (0.0, thickness),
        "round": lambda x: (half_oval(x), thickness - half_oval(x)),
        "half-round": lambda x: (0.0, rise(x, thickness)),
        "d": lambda x: (0.0, thickness / 2 + rise(x, thickness / 2)),
        "comfort": lambda x: (thickness / 4 - rise(x, thickness / 4), thickness),
    }

    low_high: Callable[[float], tuple[float, float]] = edges[profile]
    area, _ = integrate.quad(lambda x: low_high(x)[1] - low_high(x)[0], -half, half, limit=200)
    moment, _ = integrate.quad(lambda x: (low_high(x)[1] ** 2 - low_high(x)[0] ** 2) / 2, -half, half, limit=200)
    got = section(Working(all_calculators()["ring-blank"]), profile, quantity(width, "mm"), quantity(thickness, "mm"))
    assert magnitude(got.area, "mm**2") == pytest.approx(area, rel=1e-6)
    assert magnitude(got.neutral, "mm") == pytest.approx(moment / area, rel=1e-6)


@pytest.mark.parametrize("profile", sorted(NAMES))
def test_the_drawn_outline_encloses_the_section(profile: str) -> None:
    width, thickness = (2.0, 2.0) if profile == "square" else (4.0, 1.6)
    points = outline(profile, width, thickness)
    pairs = zip(points, points[1:] + points[:1], strict=True)
    drawn = abs(sum(x1 * y2 - x2 * y1 for (x1, y1), (x2, y2) in pairs)) / 2
    got = section(Working(all_calculators()["ring-blank"]), profile, quantity(width, "mm"), quantity(thickness, "mm"))
    assert drawn == pytest.approx(magnitude(got.area, "mm**2"), rel=0.01)  # the outline is a polygon of 24 to 48 sides
