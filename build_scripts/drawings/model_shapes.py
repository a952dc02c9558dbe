"""Pools drawn by the calculators' own model of one pulse, to scale. No drawings of its own."""

from __future__ import annotations

import math
from functools import lru_cache

from calculators.drawing import Drawing
from calculators.heat.heat_metals import HeatMetal, heat_metal
from calculators.heat.pictures import bowl, soft_depth
from calculators.heat.pool import Material, Pool, Shot
from calculators.heat.ranges import Known, known
from calculators.metals import metals

WIDTH, ABOVE, BELOW, SCALE = 1.6, 0.42, 0.9, 187.5  # mm of metal, and picture units to the mm: 300 units wide
MIDDLE = 0.56  # leaves room for the depth at the right
THICK = 1.5e-3  # m


@lru_cache(maxsize=32)
def heat_of(key: str) -> HeatMetal:
    """The heat figures of a metal by its key."""
    return heat_metal(next(metal for metal in metals() if metal.key == key))


@lru_cache(maxsize=32)
def guess(key: str) -> Known:
    """What is known of a metal before any test spot."""
    return known(heat_of(key), None, None)


def shot(energy: float, duration: float, spot: float) -> Shot:
    """A pulse of J, ms and mm on metal 1.5 mm thick."""
    return Shot(energy, duration * 1e-3, spot * 1e-3, THICK)


def middle_pool(key: str, one: Shot) -> Pool:
    """The pool at the middle guess of everything that is not known."""
    return guess(key).shoot(one)


def told(one: Shot, found: Pool, metal: str) -> str:
    """The figures of a pool in a sentence, for a drawing's description."""
    pulse = f"{one.energy:g} J, {one.duration * 1e3:g} ms, spot {one.spot * 1e3:g} mm on {metal}"
    if found.regime == "no melt":
        return f"{pulse}: nothing melts, the surface reaches {found.surface:.0f} °C."
    return (
        f"{pulse}: a pool {found.width * 1e3:.2f} mm wide and {found.depth * 1e3:.2f} mm deep, "
        f"surface {found.surface:.0f} °C, {found.regime}."
    )


def slab(title: str, description: str) -> Drawing:
    """An empty panel: metal cut through, its surface at 0."""
    d = Drawing(WIDTH, ABOVE + BELOW, title, description, SCALE, top=-ABOVE)
    d.rectangle(0, 0, WIDTH, BELOW, "part")
    return d


def pool_panel(title: str, key: str, name: str, one: Shot, found: Pool | None = None) -> Drawing:
    """One pulse: its light, the pool with its depth and width, the softened zone around."""
    found = found or middle_pool(key, one)
    d = slab(title, told(one, found, name))
    melted = found.regime != "no melt"
    middle = MIDDLE if melted else WIDTH / 2
    put_pool(d, middle, one, guess(key).nominal, found)
    spot = one.spot * 1e3
    wide = spot / 2 + min(0.08 + 0.12 * spot, 0.15)
    d.polygon([(middle - wide, -0.17), (middle + wide, -0.17), (middle + spot / 2, 0), (middle - spot / 2, 0)], "beam")
    half, depth = found.width * 500, found.depth * 1e3
    if melted:
        d.dimension((middle - half, 0), (middle + half, 0), f"{2 * half:.2f} mm", away=42)
        _depth(d, middle + half, depth)
    else:
        d.text(middle, BELOW - 0.36, "no melt,")
        d.text(middle, BELOW - 0.22, f"surface {found.surface:.0f} °C")
    return d


def _depth(d: Drawing, right: float, depth: float) -> None:
    """The depth beside the pool; where it is too shallow for arrows its words stand lower, out of the lines."""
    if depth >= 0.2:
        d.dimension((right, depth), (right, 0), f"{depth:.2f} mm", away=-22)
        return
    across = right + 0.1
    d.line([(right - 0.12, depth), (across + 0.06, depth)], "dim thin")
    d.line([(across, 0), (across, depth)], "dim heavy")
    d.line([(across, depth), (across + 0.06, depth + 0.1)], "dim thin")
    d.text(across + 0.05, depth + 0.2, f"{depth:.2f} mm", "start")


def put_pool(d: Drawing, middle: float, one: Shot, metal: Material, found: Pool) -> None:
    """The pool as half an ellipse under the surface, and the softened zone by the closed form."""
    half, depth = found.width * 500, found.depth * 1e3
    soft = min(soft_depth(one, metal, min(found.beta, 12)) * 1e3, BELOW)
    if soft > depth:
        reach = min((half or one.spot * 500) + soft - depth, middle, d.width - middle)
        d.polygon(bowl(middle, 0, reach, soft), "soft")
    if depth > 0:
        d.polygon(bowl(middle, 0, half, depth), "hot")


def scalloped(d: Drawing, found: Pool, overlap: float, start: float, end: float) -> float:
    """A seam cut lengthwise: pools a step apart. Returns the least depth between two, mm."""
    half, depth = found.width * 500, found.depth * 1e3
    pitch = 2 * half * (1 - overlap)
    count = int((end - start - 2 * half) / pitch + 1e-9) + 1
    for i in range(count):
        d.polygon(bowl(start + half + i * pitch, 0, half, depth), "hot")
    return depth * math.sqrt(1 - (1 - overlap) ** 2)
