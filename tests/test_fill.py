"""Fills and posts checked another way: volumes by integration and by throwing points, and what must hold for all."""

from __future__ import annotations

import math
from typing import Any

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy import integrate  # type: ignore[import-untyped]

from calculators.run import answer

SHAPES, FITS = ("cone", "cap", "frustum", "cylinder"), ("snug", "loose", "too loose")
few = settings(max_examples=30, deadline=None)


def sizes(low: float, high: float) -> st.SearchStrategy[float]:
    return st.floats(low, high).map(lambda x: round(x, 4))


def results(slug: str, **fields: Any) -> dict[str, Any]:
    """Values of an answer; bare numbers are lengths in mm."""
    texts = {name: one if isinstance(one, str) else f"{one!r} mm" for name, one in fields.items()}
    data = answer(slug, texts)
    assert "errors" not in data, (data, texts)
    return {name: one["value"] for name, one in data["results"].items()}


def turned(radius: Any, depth: float) -> float:
    """Volume of a solid of revolution whose radius at height z is ``radius(z)``."""
    return float(integrate.quad(lambda z: math.pi * radius(z) ** 2, 0, depth, epsabs=1e-12)[0])


def thrown(inside: Any, box: list[tuple[float, float]], seed: int, count: int = 400_000) -> tuple[float, float]:
    """Volume by throwing points into a box, and four standard errors of it."""
    points = np.random.default_rng(seed).uniform([a for a, _ in box], [b for _, b in box], (count, len(box)))
    share = float(np.mean(inside(*points.T)))
    whole = math.prod(b - a for a, b in box)
    return whole * share, 4 * whole * math.sqrt(share * (1 - share) / count)


@given(sizes(14, 30), sizes(0.05, 1.4), sizes(1, 10))
@few
def test_a_flat_by_integration(across: float, depth: float, width: float) -> None:
    got = results("fill-flat-spot", outside_diameter=across, thickness=1.5, depth=depth, width=width)
    radius = across / 2
    half = math.sqrt(radius**2 - (radius - depth) ** 2)
    assert got["chord"] == pytest.approx(2 * half, rel=1e-6)
    area = integrate.quad(lambda x: math.sqrt(radius**2 - x * x) - (radius - depth), -half, half)[0]
    assert got["area"] == pytest.approx(area, rel=1e-6)
    assert got["volume"] == pytest.approx(area * width, rel=1e-6)
    assert got["strip_used"] < 100


def test_a_worn_shank_by_throwing_points() -> None:
    got = results(
        "fill-worn-shank", ring_size="18 mm across", worn_thickness=1.0, full_thickness=1.8, width=3.0, angle="100°"
    )
    half = math.radians(50)

    def inside(x: Any, y: Any, _: Any) -> Any:
        return (abs(np.hypot(x, y) - 10.4) < 0.4) & (abs(np.arctan2(x, -y)) < half)

    volume, four = thrown(inside, [(-8.5, 8.5), (-10.9, -6.0), (0.0, 3.0)], seed=7)
    assert got["volume"] == pytest.approx(volume, abs=four)
    assert four < 0.02 * volume


@pytest.mark.parametrize(
    ("mouth", "depth", "floor"), [(0.8, 0.6, 0.5), (2.0, 1.0, 0.0), (1.0, 0.3, 1.0), (0.6, 2, 0.1)]
)
def test_pits_by_integration(mouth: float, depth: float, floor: float) -> None:
    rim = mouth / 2
    ball = (rim**2 + depth**2) / (2 * depth)
    radii = {
        "hemisphere": (lambda z: math.sqrt(max(0.0, rim**2 - z * z)), rim),
        "cone": (lambda z: rim * (1 - z / depth), depth),
        "cap": (lambda z: math.sqrt(max(0.0, ball**2 - (ball - depth + z) ** 2)), depth),
        "frustum": (lambda z: rim + (floor / 2 - rim) * z / depth, depth),
        "cylinder": (lambda _: rim, depth),
    }
    for shape, (radius, deep) in radii.items():
        given_floor = {"floor": floor} if shape == "frustum" else {}
        given_depth = {} if shape == "hemisphere" else {"depth": depth}
        got = results("fill-pit", shape=shape, mouth=mouth, **given_depth, **given_floor)
        assert got["volume"] == pytest.approx(turned(radius, deep), rel=1e-6), shape


@given(sizes(0.5, 4), sizes(0, 0.4), st.floats(0, 0.5), st.integers(10, 140), st.booleans(), sizes(1, 8))
@few
def test_a_seam_by_integration(t: float, gap: float, part: float, angle: int, both: bool, width: float) -> None:
    depth, flare = part * t, math.tan(math.radians(angle / 2))
    got = results(
        "fill-gap", width=width, thickness=t, gap=gap, chamfer_depth=depth, chamfer_angle=f"{angle}°",
        both_faces="yes" if both else "no",
    )  # fmt: skip

    def opening(y: float) -> float:
        from_inside = max(0.0, depth - (t - y)) if both else 0.0
        return gap + 2 * flare * (max(0.0, depth - y) + from_inside)

    corners = [depth, t - depth] if 0 < depth < t else None
    area = integrate.quad(opening, 0, t, points=corners)[0]
    assert got["volume"] == pytest.approx(area * width, rel=1e-6, abs=1e-9)
    assert got["mouth"] == pytest.approx(opening(0), rel=1e-6, abs=1e-9)


@given(sizes(0.5, 3), sizes(0, 2), st.floats(0.05, 0.5))
@few
def test_a_prong_by_integration_and_as_a_bead(d: float, height: float, part: float) -> None:
    dome = part * d
    got = results("prong-tip", diameter=d, height=height, dome=dome)
    ball = ((d / 2) ** 2 + dome**2) / (2 * dome)
    top = turned(lambda z: math.sqrt(max(0.0, ball**2 - (ball - dome + z) ** 2)), dome)
    assert got["volume"] == pytest.approx(top + math.pi / 4 * d * d * height, rel=1e-6)
    assert 4 / 3 * math.pi * (got["bead_diameter"] / 2) ** 3 == pytest.approx(got["volume"], rel=1e-6)


def test_a_plug_by_throwing_points() -> None:
    got = results("plug-fit", post_diameter=0.8, hole_diameter=0.9, plate_thickness=1.0)
    volume, four = thrown(
        lambda x, y, _: abs(np.hypot(x, y) - 0.425) < 0.025, [(-0.45, 0.45), (-0.45, 0.45), (0.0, 1.0)], seed=11
    )
    assert got["annulus_volume"] == pytest.approx(volume, abs=four)
    assert four < 0.02 * volume


@given(sizes(0.4, 2), st.floats(0, 0.4), sizes(0.3, 3), sizes(0, 0.5))
@few
def test_the_stub_holds_just_the_metal_that_is_wanted(post: float, part: float, plate: float, crown: float) -> None:
    hole = round(post * (1 + part), 4)
    fields = {"post_diameter": post, "hole_diameter": hole, "plate_thickness": plate, "crown": crown}
    got = results("plug-fit", **fields)
    ball = ((hole / 2) ** 2 + crown**2) / (2 * crown) if crown else 0.0
    dome = turned(lambda z: math.sqrt(max(0.0, ball**2 - (ball - crown + z) ** 2)), crown) if crown else 0.0
    stub = math.pi / 4 * post**2 * got["stub_to_melt"]
    assert stub == pytest.approx(got["annulus_volume"] + dome, rel=1e-6, abs=1e-7)
    stops = 4 / 3 * math.pi * (hole / 2) ** 3 / (math.pi / 4 * post**2)  # as much wire as a ball as wide as the hole
    assert got["stub_to_leave"] == pytest.approx(max(stops, got["stub_to_melt"]), rel=1e-6)
    left = math.pi / 4 * post**2 * got["stub_to_leave"]
    assert math.pi / 6 * got["bead_diameter"] ** 3 == pytest.approx(left, rel=1e-6, abs=1e-7)
    given_stub = round(got["stub_to_leave"] + 0.25, 4)
    assert results("plug-fit", **fields, stub=given_stub)["stub_spare"] == pytest.approx(0.25, abs=1e-4)


def second_moment(outer: float, inner: float = 0.0) -> float:
    """∫ y² over a ring section, by integration over its height."""

    def chord(y: float, d: float) -> float:
        return 2 * math.sqrt(max(0.0, d * d / 4 - y * y))

    whole = integrate.quad(lambda y: y * y * chord(y, outer), -outer / 2, outer / 2)[0]
    return float(whole - (integrate.quad(lambda y: y * y * chord(y, inner), -inner / 2, inner / 2)[0] if inner else 0))


@pytest.mark.parametrize(("d", "rim", "length"), [(0.8, 0.2, 10.0), (1.2, 0.35, 8.0), (2.0, 0.1, 25.0)])
def test_pushes_and_pulls_by_integration(d: float, rim: float, length: float) -> None:
    common = {"post_diameter": d, "post_length": length, "metal": "sterling", "temper": "annealed"}
    full = results("post-strength", joint="butt-full", **common)
    only = results("post-strength", joint="butt-rim", depth=rim, **common)
    plug = results("post-strength", joint="plug", depth=0.5, plate_thickness=1.0, **common)
    inner = d - 2 * rim
    assert full["side_load"] == pytest.approx(124 * second_moment(d) / (d / 2) / length, rel=1e-6)
    assert only["side_load"] == pytest.approx(124 * second_moment(d, inner) / (d / 2) / length, rel=1e-6)
    ring = integrate.quad(lambda r: 2 * math.pi * r, inner / 2, d / 2)[0]
    assert only["pull"] == pytest.approx(283 * ring, rel=1e-6)
    assert plug["weld_pull"] == pytest.approx(0.577 * 283 * math.pi * d * 0.5, rel=1e-6)


def test_at_the_equal_depth_weld_and_post_carry_the_same() -> None:
    for temper in ("annealed", "half-hard", "hard", "spring"):
        fields: dict[str, Any] = {"post_diameter": 0.9, "metal": "sterling", "temper": temper, "joint": "plug"}
        deep = results("post-strength", depth=0.3, plate_thickness=2.0, **fields)["plug_depth"]
        at = results("post-strength", depth=deep, plate_thickness=2.0, **fields)
        assert at["weld_pull"] == pytest.approx(at["post_pull"], rel=1e-6)


@given(sizes(0.3, 4), sizes(0.05, 3), st.sampled_from(SHAPES))
@few
def test_deeper_pits_take_more(mouth: float, depth: float, shape: str) -> None:
    fields = {"shape": shape, "mouth": mouth} | ({"floor": 0.3} if shape == "frustum" else {})
    one, two = (results("fill-pit", depth=k * depth, **fields) for k in (1, 1.5))
    assert two["volume"] > one["volume"] > 0
    assert two["wire_length"] > one["wire_length"]


@given(sizes(16, 26), sizes(0.05, 0.6), sizes(1, 8), sizes(1, 8))
@few
def test_flats_are_monotone_and_add_up_over_the_width(across: float, depth: float, a: float, b: float) -> None:
    fields = {"outside_diameter": across, "thickness": 1.4}
    one, two, both = (results("fill-flat-spot", depth=depth, width=w, **fields) for w in (a, b, a + b))
    assert one["volume"] + two["volume"] == pytest.approx(both["volume"], rel=1e-6)
    deeper = results("fill-flat-spot", depth=2 * depth, width=a, **fields)
    assert all(deeper[name] > one[name] for name in ("volume", "chord", "area", "metal_mass"))
    assert deeper["wall_left"] < one["wall_left"]


@given(sizes(12, 22), sizes(0.4, 1.2), sizes(0.1, 0.5), sizes(0.1, 0.5), st.integers(10, 170), st.integers(10, 170))
@few
def test_worn_shanks_add_up_over_angle_and_thickness(
    across: float, worn: float, a: float, b: float, one: int, two: int
) -> None:
    def volume(low: float, high: float, angle: int) -> float:
        return float(
            results(
                "fill-worn-shank", ring_size=f"{across} mm across", worn_thickness=low, full_thickness=high,
                angle=f"{angle}°",
            )["volume"]
        )  # fmt: skip

    middle, full = worn + a, worn + a + b
    assert volume(worn, full, one) + volume(worn, full, two) == pytest.approx(volume(worn, full, one + two), rel=1e-6)
    assert volume(worn, middle, one) + volume(middle, full, one) == pytest.approx(volume(worn, full, one), rel=1e-6)


@given(sizes(0.1, 8))
@few
def test_limits_of_the_pits(mouth: float) -> None:
    def volume(**fields: Any) -> float:
        return float(results("fill-pit", mouth=mouth, **fields)["volume"])

    half = mouth / 2
    assert volume(shape="hemisphere") == pytest.approx(volume(shape="cap", depth=half), rel=1e-6)
    assert volume(shape="frustum", depth=half, floor=0.0) == pytest.approx(volume(shape="cone", depth=half), rel=1e-6)
    straight = volume(shape="frustum", depth=half, floor=mouth)
    assert straight == pytest.approx(volume(shape="cylinder", depth=half), rel=1e-6)


@given(sizes(0.3, 4), sizes(0.2, 4))
@few
def test_a_plug_without_clearance_needs_only_its_crown(post: float, plate: float) -> None:
    got = results("plug-fit", post_diameter=post, hole_diameter=post, plate_thickness=plate, crown="0")
    assert got["annulus_volume"] == got["clearance"] == got["stub_to_melt"] == 0
    assert got["fit"] == "snug"


@given(sizes(0.4, 2), sizes(0.001, 0.3), sizes(0.001, 0.3))
@few
def test_a_wider_hole_needs_more_stub(post: float, a: float, b: float) -> None:
    one, two = (results("plug-fit", post_diameter=post, hole_diameter=round(post + x, 4)) for x in (a, a + b))
    assert two["annulus_volume"] > one["annulus_volume"]
    assert two["stub_to_melt"] > one["stub_to_melt"]
    assert FITS.index(two["fit"]) >= FITS.index(one["fit"])


def test_a_shallow_flat_nears_two_thirds_of_chord_times_depth() -> None:
    got = results("fill-flat-spot", outside_diameter=100.0, thickness=1.5, depth=0.02)
    assert got["area"] == pytest.approx(2 / 3 * got["chord"] * 0.02, rel=2e-4)


@given(sizes(0.4, 2), sizes(0.05, 0.6), sizes(3, 20))
@few
def test_posts_are_monotone(d: float, depth: float, length: float) -> None:
    def post(**fields: Any) -> dict[str, Any]:
        return results("post-strength", metal="sterling", joint="plug", plate_thickness=3.0, **fields)

    base = post(post_diameter=d, depth=depth, post_length=length)
    thicker = post(post_diameter=1.2 * d, depth=depth, post_length=length)
    deeper = post(post_diameter=d, depth=1.5 * depth, post_length=length)
    longer = post(post_diameter=d, depth=depth, post_length=1.5 * length)
    softer = post(post_diameter=d, depth=depth, post_length=length, temper="annealed")
    assert thicker["pull"] > base["pull"]
    assert deeper["pull"] >= base["pull"]
    assert longer["side_load"] == pytest.approx(base["side_load"] / 1.5, rel=1e-6)
    assert softer["side_load"] < base["side_load"]
    assert softer["bending_gain"] == pytest.approx(1)


LENGTHS: dict[str, dict[str, float]] = {
    "fill-flat-spot": {"outside_diameter": 20.5, "thickness": 1.6, "depth": 0.5, "width": 3, "overhang": 0.2,
                       "file_allowance": 0.15, "layer_height": 0.26, "pass_width": 0.49},
    "fill-worn-shank": {"worn_thickness": 0.9, "full_thickness": 1.6, "width": 2.5, "length": 12, "overhang": 0.2,
                        "file_allowance": 0.15, "layer_height": 0.26, "pass_width": 0.49},
    "fill-pit": {"mouth": 0.8, "depth": 0.6, "floor": 0.5, "wire_diameter": 0.35},
    "fill-gap": {"width": 3, "thickness": 1.5, "gap": 0.05, "chamfer_depth": 0.7, "wire_diameter": 0.35},
    "prong-tip": {"diameter": 1, "height": 0.4, "dome": 0.45, "wire_diameter": 0.35},
    "plug-fit": {"post_diameter": 0.8, "hole_diameter": 0.9, "plate_thickness": 1, "stub": 0.7, "crown": 0.2},
    "post-strength": {"post_diameter": 0.8, "depth": 0.4, "plate_thickness": 1, "post_length": 10},
}  # fmt: skip


@given(st.sampled_from(sorted(LENGTHS)), st.floats(0.9, 1.1), st.data())
@few
def test_millimeters_and_inches_give_the_same_answer(slug: str, scale: float, data: st.DataObject) -> None:
    lengths = {name: value * scale for name, value in LENGTHS[slug].items()}
    in_inches = data.draw(st.sets(st.sampled_from(sorted(lengths)), min_size=1))
    mixed = {name: f"{one / 25.4!r} in" if name in in_inches else one for name, one in lengths.items()}
    metric, other = results(slug, **lengths), results(slug, **mixed)
    assert metric.keys() == other.keys()
    for name, value in metric.items():
        near = value if isinstance(value, str) else pytest.approx(value, rel=1e-6, abs=1e-9)
        assert other[name] == near, name


@given(st.sampled_from(["fill-pit", "prong-tip"]), sizes(1.1, 3))
@few
def test_a_larger_job_takes_metal_by_the_cube_of_its_size(slug: str, scale: float) -> None:
    one = results(slug, **LENGTHS[slug])
    large = results(slug, **{name: value * scale for name, value in LENGTHS[slug].items() if name != "wire_diameter"})
    assert large["volume"] == pytest.approx(one["volume"] * scale**3, rel=1e-6)
    assert large["metal_mass"] == pytest.approx(one["metal_mass"] * scale**3, rel=1e-6)
