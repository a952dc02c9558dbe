"""Cross-sections of a ring's band: exact area, and how far from the inside of the ring the neutral line lies.

Width runs along the finger, thickness from the inside of the ring outward. Domes are arcs of a circle where they
are flatter than a half circle, and half ellipses where they are taller; the two agree where they meet.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from .declare import Working
from .drawing import Point
from .errors import Complaint
from .units import Quantity, magnitude, quantity

# Share of the thickness taken by the dome; band makers differ, so these are common practice, no source.
D_DOME, COMFORT_DOME = 1 / 2, 1 / 4

NAMES = {
    "flat": "Flat",
    "half-round": "Half-round",
    "d": "D (straight sides, domed outside)",
    "square": "Square",
    "round": "Round or oval wire",
    "comfort": "Comfort (inside curved, outside flat)",
}
OPTIONS = tuple(NAMES.items())


@dataclass(frozen=True)
class Section:
    """A worked-out section: ``area`` in mm², ``neutral`` the distance of its centroid from the inside in mm."""

    area: Quantity
    neutral: Quantity


def dome(width: float, height: float) -> tuple[float, float]:
    """Area (mm²) and centroid height above the chord (mm) of a dome ``width`` wide and ``height`` high."""
    if height <= 0:
        return 0.0, 0.0
    if height >= width / 2:
        return math.pi * width * height / 4, 4 * height / (3 * math.pi)
    radius = (width * width / 4 + height * height) / (2 * height)
    half = math.asin(width / 2 / radius)
    area = radius * radius * (half - math.sin(half) * math.cos(half))
    centroid = 2 * radius**3 * math.sin(half) ** 3 / 3 / area - radius * math.cos(half)
    return area, centroid


def _box_and_dome(width: float, thickness: float, share: float) -> tuple[float, float]:
    """Area and centroid, from the flat side, of a box with a dome that takes ``share`` of the thickness."""
    cap, above = dome(width, share * thickness)
    box_height = (1 - share) * thickness
    box = width * box_height
    return box + cap, (box * box_height / 2 + cap * (box_height + above)) / (box + cap)


def section(working: Working, profile: str, width: Quantity, thickness: Quantity) -> Section:
    """Area and neutral line of a profile; writes the steps down. Raises ``Complaint`` for a square that isn't."""
    w, t = magnitude(width, "mm"), magnitude(thickness, "mm")
    if profile == "square" and abs(w - t) > 0.02 * max(w, t):
        raise Complaint("A square band is as wide as it is thick: enter the same for both, or choose flat", "width")
    if profile in ("flat", "square", "round"):
        formula = "pi / 4 * width * thickness" if profile == "round" else "width * thickness"
        area = working.step("Section of the band", formula, "mm**2", width=width, thickness=thickness)
        neutral = working.step("Neutral line, from the inside", "thickness / 2", "mm", thickness=thickness)
        return Section(area, neutral)
    if profile == "half-round":
        square_mm, rise = dome(w, t)
        how = "arc of a circle on the width" if t < w / 2 else "half an ellipse on the width"
    elif profile == "d":
        square_mm, rise = _box_and_dome(w, t, D_DOME)
        how = "straight sides for half the thickness, a dome above (common practice, no source)"
    else:
        square_mm, from_outside = _box_and_dome(w, t, COMFORT_DOME)
        rise = t - from_outside
        how = "flat outside, inside dome a quarter of the thickness (common practice, no source)"
    area = working.note("Section of the band", how, quantity(square_mm, "mm**2"), "mm**2")
    neutral = working.note("Neutral line, from the inside", "centroid of that section", quantity(rise, "mm"), "mm")
    return Section(area, neutral)


def outline(profile: str, width: float, thickness: float) -> list[Point]:
    """Points around the section in mm, inside of the ring at y = 0, outside at y = −thickness (upward)."""
    half = width / 2

    def arc(height: float, base: float, up: float) -> list[Point]:
        points = []
        for i in range(25):
            x = -half + width * i / 24
            if height >= half:
                rise = height * math.sqrt(max(0.0, 1 - (x / half) ** 2))
            else:
                radius = (half * half + height * height) / (2 * height)
                rise = math.sqrt(max(0.0, radius * radius - x * x)) - (radius - height)
            points.append((x, base - up * rise))
        return points

    if profile == "round":
        turn = [2 * math.pi * i / 48 for i in range(48)]
        return [(half * math.cos(a), -thickness / 2 + thickness / 2 * math.sin(a)) for a in turn]
    if profile == "half-round":
        return arc(thickness, 0.0, 1)
    if profile == "d":
        return [(-half, 0.0), *arc(thickness * D_DOME, -thickness * (1 - D_DOME), 1), (half, 0.0)]
    if profile == "comfort":
        rise = thickness * COMFORT_DOME
        return [(-half, -thickness), *arc(rise, -rise, -1), (half, -thickness)]
    return [(-half, 0.0), (-half, -thickness), (half, -thickness), (half, 0.0)]
