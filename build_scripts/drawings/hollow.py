"""Drawings of hollow bangles: sections along the tube, wall 0.3 mm, outside 6 mm."""

from __future__ import annotations

import math

from build_scripts.drawings import drawing
from build_scripts.drawings.sketch import arrow, gas, leader, nozzle, open_air, polar, tick
from calculators.drawing import Drawing, Point

WALL, TUBE = 0.3, 6.0  # mm


def _strip(title: str, description: str) -> Drawing:
    return Drawing(18.0, 11.0, title, description, scale=20, left=-9.0, top=-6.4)


def _tube(d: Drawing, left: float, right: float, top: list[Point] | None = None, vent: bool = True) -> None:
    """Both walls of the tube between ``left`` and ``right``; ``top`` replaces the middle of the upper wall."""
    if top is None:
        d.rectangle(left, -TUBE / 2, right - left, WALL, "cut")
    else:
        under = [(px, py + WALL) for px, py in reversed(top)]
        d.polygon([(left, -3.0), *top, (right, -3.0), (right, -2.7), *under, (left, -2.7)], "cut")
    low = TUBE / 2 - WALL
    if vent:
        d.rectangle(left, low, 4.6 - left, WALL, "cut")
        d.rectangle(5.4, low, right - 5.4, WALL, "cut")
    else:
        d.rectangle(left, low, right - left, WALL, "cut")


@drawing("hollow-before")
def hollow_before() -> Drawing:
    """A split, pressed level, and a vent on the inside."""
    d = _strip(
        "Hollow bangle, before",
        "A hollow bangle cut along its tube. The upper wall has a split, one edge is pressed in. A vent of 0.8 mm "
        "has been drilled through the inner wall.",
    )
    d.polygon([(-8.2, -3.0), (-1.4, -3.0), (-0.25, -2.2), (-0.4, -1.95), (-1.5, -2.7), (-8.2, -2.7)], "cut")
    d.rectangle(0.2, -3.0, 8.0, WALL, "cut")
    d.rectangle(-8.2, 2.7, 12.8, WALL, "cut")
    d.rectangle(5.4, 2.7, 2.8, WALL, "cut")
    arrow(d, (5.0, 1.2), (5.0, 4.2))
    return d


@drawing("hollow-fused")
def hollow_fused() -> Drawing:
    """Short weak shots along the split."""
    d = _strip(
        "Hollow bangle, fused",
        "The split is fused with small spots that go through the wall and stand a little proud. Warm air leaves by "
        "the vent.",
    )
    _tube(d, -8.2, 8.2)
    d.polygon([(-0.45, -3.0), (-0.3, -2.66), (0.3, -2.66), (0.45, -3.0), (0.2, -3.12), (-0.2, -3.12)], "hot")
    d.polygon([(-1.7, -6.2), (-0.7, -6.3), (0.18, -3.15), (-0.2, -3.1)], "beam")
    nozzle(d, 3.4, -5.2, 1.6, 0.7, 38)
    gas(d, 0.6, -3.3, 3.2, 14, 36)
    arrow(d, (5.0, 1.2), (5.0, 4.2))
    return d


@drawing("hollow-finished")
def hollow_finished() -> Drawing:
    """Flush; the vent closed with a wire."""
    d = _strip(
        "Hollow bangle, finished",
        "The seam is flush. The vent has been closed last, with a short wire fused around its rim.",
    )
    _tube(d, -8.2, 8.2)
    d.polygon([(-0.4, -3.0), (-0.28, -2.68), (0.28, -2.68), (0.4, -3.0)], "hot")
    d.polygon([(4.45, 3.0), (4.62, 2.45), (5.38, 2.45), (5.55, 3.0)], "hot")
    return d


def _dented(d: Drawing, x: float, deep: float) -> None:
    points = [(x - 3.0 + 0.25 * i, -3.0 + deep * math.cos(math.pi * (i - 12) / 24) ** 2) for i in range(25)]
    under = [(px, py + WALL) for px, py in reversed(points)]
    d.polygon([(x - 4.6, -3.0), *points, (x + 4.6, -3.0), (x + 4.6, -2.7), *under, (x - 4.6, -2.7)], "cut")
    d.rectangle(x - 4.6, 2.7, 9.2, WALL, "cut")


@drawing("hollow-dent")
def hollow_dent() -> Drawing:
    """Pull a dent by a wire tacked into it."""
    d = Drawing(
        31.0,
        14.0,
        "Pull a dent out",
        "Three sections. A dent 1.5 mm deep; a wire is tacked upright into its lowest place and pulled; the wall is "
        "level, the wire is cut off.",
        scale=20,
        left=-15.5,
        top=-9.6,
    )
    _dented(d, -10.3, 1.5)
    _dented(d, 0, 0.8)
    d.rectangle(-0.3, -8.2, 0.6, 6.0, "part")
    for side in (-1, 1):
        d.circle(side * 0.42, -2.25, 0.3, "hot")
    arrow(d, (1.2, -6.0), (1.2, -8.6), "ink heavy")
    d.rectangle(5.7, -3.0, 9.2, WALL, "cut")
    d.rectangle(5.7, 2.7, 9.2, WALL, "cut")
    d.polygon([(9.8, -3.0), (9.9, -2.72), (10.7, -2.72), (10.8, -3.0)], "hot")
    return d


@drawing("hollow-vent")
def hollow_vent() -> Drawing:
    """Where the vents go: inside, at both ends of the hollow, away from you."""
    d = Drawing(
        140.0,
        77.0,
        "Where the vent goes",
        "A round hollow bangle from the side. Two small holes go through the inner wall, one near the repair, one "
        "on the other side, so that water can run out and air can move.",
        scale=4.5,
        left=-70.0,
        top=-38.5,
    )
    d.ring_sector(0, 0, 30.0, 36.0, 0, 360, "part")
    for angle in (62, 240):
        d.line([polar(0, 0, 29.0, angle), polar(0, 0, 32.0, angle)], "ink heavy")
    spot = [polar(0, 0, 36.4, a) for a in (88, 90, 92)]
    d.polygon([*spot, *[polar(0, 0, 35.0, a) for a in (92, 88)]], "hot")
    leader(d, polar(0, 0, 36.4, 90), (40.0, -32.0), "repair")
    leader(d, polar(0, 0, 29.5, 62), (42.0, -10.0), "vent")
    leader(d, polar(0, 0, 29.5, 240), (-42.0, 20.0), "second vent", "end")
    return d


@drawing("hollow-sleeve")
def hollow_sleeve() -> Drawing:
    """A liner under the joint of two tube ends."""
    d = Drawing(
        31.0,
        12.0,
        "A liner under the joint",
        "Two tube ends in section. Left: bare ends 0.3 mm thick, hard to line up, easy to burn through. Right: a "
        "short tube that fits inside carries both ends; the spots fuse all three together.",
        scale=20,
        left=-15.5,
        top=-6.0,
    )
    for x, liner in ((-7.8, False), (7.8, True)):
        for y in (-3.0, 2.7):
            d.rectangle(x - 6.4, y + (0.25 if not liner else 0), 6.3, WALL, "cut")
            d.rectangle(x + 0.1, y, 6.3, WALL, "cut")
        if liner:
            for y in (-2.68, 2.36):
                d.rectangle(x - 2.5, y, 5.0, 0.32, "part")
            for y, way in ((-3.0, 1), (3.0, -1)):
                d.polygon(
                    [
                        (x - 0.5, y),
                        (x - 0.3, y + way * 0.5),
                        (x + 0.3, y + way * 0.5),
                        (x + 0.5, y),
                        (x, y - way * 0.12),
                    ],
                    "hot",
                )
        tick(d, x, 4.8, liner)
    leader(d, (9.6, 2.5), (12.0, 0.0), "liner")
    return d


@drawing("hollow-patch")
def hollow_patch() -> Drawing:
    """A patch over a hole, rim beveled."""
    d = Drawing(
        15.6,
        4.8,
        "A patch on a hole",
        "Section, enlarged. A hole worn through a wall of 0.3 mm. A patch of the same thickness, its rim beveled, "
        "overlaps by 0.5 mm all around and is fused at its rim.",
        scale=40,
        left=-7.8,
        top=-2.4,
    )
    d.rectangle(-7.0, 0, 14.0, WALL, "cut")
    open_air(d, [(-1.6, -0.02), (1.6, -0.02), (1.4, 0.36), (-1.4, 0.36)])
    d.polygon([(-2.4, 0), (-2.0, -0.3), (2.0, -0.3), (2.4, 0)], "cut")
    for side in (-1, 1):
        d.polygon(
            [(side * 2.0, -0.28), (side * 2.2, -0.24), (side * 2.75, 0.02), (side * 2.4, 0.22), (side * 2.0, 0.05)],
            "hot",
        )
    d.dimension((1.5, 0.55), (2.4, 0.55), "")
    leader(d, (1.95, 0.55), (2.8, 1.5), "overlap 0.5 mm")
    leader(d, (-2.3, -0.1), (-3.6, -1.3), "fuse here", "end")
    return d


@drawing("hollow-close")
def hollow_close() -> Drawing:
    """Close the vent with a wire."""
    d = Drawing(
        21.0,
        6.4,
        "Close the vent",
        "Three sections of a wall with a hole of 0.8 mm. A wire of 0.8 mm stands in the hole, 0.6 mm proud; spots "
        "around its rim; cut off, filed, flush.",
        scale=30,
        left=-10.5,
        top=-4.0,
    )
    for x, step in ((-7.0, 0), (0.0, 1), (7.0, 2)):
        d.rectangle(x - 2.8, 0, 2.4, WALL, "cut")
        d.rectangle(x + 0.4, 0, 2.4, WALL, "cut")
        if step < 2:
            d.rectangle(x - 0.4, -2.8, 0.8, 3.2, "cut")
        if step == 1:
            for side in (-1, 1):
                d.polygon(
                    [
                        (x + side * 0.36, -0.35),
                        (x + side * 0.8, -0.02),
                        (x + side * 0.6, 0.26),
                        (x + side * 0.36, 0.34),
                    ],
                    "hot",
                )
        if step == 2:
            d.polygon([(x - 0.75, 0), (x - 0.5, 0.35), (x + 0.5, 0.35), (x + 0.75, 0)], "hot")
    return d
