"""Drawings of the edge joint: two parts side by side, fused along their common edge. Sections look along the seam."""

from __future__ import annotations

import math

from build_scripts.drawings import drawing
from build_scripts.drawings.bench import cap, moved, spots
from build_scripts.drawings.sketch import arrow, gas, leader, nozzle, tick
from calculators.drawing import Drawing, Point

STRIP = 0.9  # mm, thickness of each of the two parts
DEEP = 0.45  # fused depth at the line, mm
BAIL_HIGH = 6.7  # mm, the bail of the guide: 0.8 mm strip, 4 mm inside


def leg_section(x: float, y: float, side: int, down: float, thick: float = STRIP, bevel: float = 0.0) -> list[Point]:
    """One of the two parts, its inner face at ``x``; the lower end is broken off."""
    wave = [(x + side * thick * (1 - i / 8), y + down + 0.1 * math.sin(math.pi * i / 4)) for i in range(9)]
    top: list[Point] = [(x + side * bevel, y), (x + side * thick, y)]
    return [(x, y + bevel), *top, *wave] if bevel else [*top, *wave]


def topped(x: float, y: float, side: int, down: float, top: list[Point]) -> list[Point]:
    """A part whose upper edge is eaten away: ``top`` runs from its inner face outward, measured from ``x, y``."""
    return [(x + side * px, y + py) for px, py in top] + leg_section(x, y, side, down)[2:]


def pool(x: float, y: float, proud: float, deep: float = DEEP, width: float = 2 * STRIP) -> list[Point]:
    """Fused metal over both edges: round on top, a round root on the line."""
    top = cap(x, y, width, proud) if proud else [(x - width / 2, y), (x + width / 2, y)]
    root = []
    for i in range(1, 24):
        part = 1 - i / 12
        root.append((x + part * width / 2, y + deep * (1 - abs(part) ** 1.6)))
    return [*top, *root]


def _strip(title: str, description: str) -> Drawing:
    return Drawing(6.0, 3.4667, title, description, scale=60, left=-3.0, top=-1.35)


def legs(d: Drawing, x: float, y: float, down: float = 1.85, bevel: float = 0.0) -> None:
    for side in (-1, 1):
        d.polygon(leg_section(x, y, side, down, bevel=bevel), "cut")


@drawing("edge-before")
def edge_before() -> Drawing:
    """Two parts side by side, bearing lightly."""
    d = _strip(
        "Edge joint before fusing",
        "Two strips 0.9 mm thick, cut across, stand side by side. Their faces bear on each other and their edges are "
        "level.",
    )
    legs(d, 0, 0)
    for side in (-1, 1):
        arrow(d, (side * 1.9, 0.5), (side * 1.05, 0.5))
    return d


@drawing("edge-fused")
def edge_fused() -> Drawing:
    """The common edge fused to a round bead; beam on the line."""
    d = _strip(
        "Edge joint fused",
        "The two edges have melted together. The fused metal is round on top and reaches 0.45 mm down on the line. The "
        "beam points straight at the line, gas comes from the side.",
    )
    legs(d, 0, 0)
    d.polygon(pool(0, -0.06, 0.14), "hot")
    d.beam(0, -0.18, 0.45, 1.17)
    nozzle(d, 1.55, -0.85, 1.1, 0.4, 32)
    gas(d, 0.35, -0.1, 1.3, 18, 32)
    return d


@drawing("edge-finished")
def edge_finished() -> Drawing:
    """Filed level; what was there is a dashed line."""
    d = _strip(
        "Edge joint finished",
        "The edge is filed level and lightly rounded at its corners. A dashed line shows the height before fusing.",
    )
    legs(d, 0, 0.1)
    level: list[Point] = [(-STRIP, 0.28), (-0.78, 0.1), (0.78, 0.1), (STRIP, 0.28)]
    d.polygon([*level, *pool(0, 0.1, 0.0)[2:]], "hot")
    d.line(cap(0, -0.06, 2 * STRIP, 0.14), "ghost")
    return d


@drawing("edge-choice")
def edge_choice() -> Drawing:
    """Which joint: edge, butt, lap."""
    d = Drawing(
        16.0,
        5.6,
        "Side by side, end to end, one on the other",
        "Left: edge joint, two strips side by side, fused along the common edge. Middle: butt joint, two strips end to "
        "end. Right: lap joint, one strip on top of the other.",
        scale=40,
    )
    for side in (-1, 1):
        d.polygon(leg_section(2.7, 1.2, side, 2.9), "cut")
    d.polygon(pool(2.7, 1.15, 0.14, 0.6), "hot")
    d.rectangle(5.9, 2.4, 2.1, STRIP, "cut")
    d.rectangle(8.0, 2.4, 2.1, STRIP, "cut")
    d.polygon([(7.75, 2.36), (8.25, 2.36), (8.08, 2.85), (8.25, 3.34), (7.75, 3.34), (7.92, 2.85)], "hot")
    d.rectangle(11.4, 2.7, 3.9, STRIP, "cut")
    d.rectangle(12.4, 1.8, 1.9, STRIP, "cut")
    for side, x in ((-1, 12.4), (1, 14.3)):
        d.polygon(
            [(x, 2.0), (x + side * 0.5, 2.7), (x + side * 0.2, 2.95), (x - side * 0.25, 2.75), (x - side * 0.2, 2.4)],
            "hot",
        )
    for x, words in ((2.7, "edge"), (8.0, "butt"), (13.35, "lap")):
        d.text(x, 5.2, words)
    return d


@drawing("edge-bear")
def edge_bear() -> Drawing:
    """How the two parts must touch at the edge."""
    d = Drawing(
        16.0,
        6.0,
        "The edges must bear",
        "Three sections. Left, good: the faces touch at the top, where the beam goes, and may part a little further "
        "down. Middle: the tops stand apart, a gap of 0.2 mm. Right: one edge stands higher than the other.",
        scale=40,
        top=0.0,
    )
    for i, words in enumerate(("touch on top", "gap", "step")):
        x, y = 2.8 + i * 5.2, 1.4
        for side in (-1, 1):
            leg = leg_section(x, y, side, 3.0, 1.1)
            if words == "touch on top":
                leg = moved(leg, (x, y), side * 2.5)
            elif words == "gap":
                leg = [(px + side * 0.12, py) for px, py in leg]
            elif side > 0:
                leg = [(px, py - (0.4 if py < y + 1 else 0.0)) for px, py in leg]
            d.polygon(leg, "cut")
        d.text(x + 0.15, 5.65, words)
        tick(d, x - 1.9, 1.0, good=i == 0)
    return d


@drawing("edge-bevel")
def edge_bevel() -> Drawing:
    """Thick parts get a V along the edge, filled from the root."""
    d = Drawing(
        16.0,
        5.6,
        "A groove for thick parts",
        "Left: two parts of 0.9 mm stay square. Right: two parts of 1.5 mm are beveled by 0.5 mm each, which makes a "
        "groove of 90 degrees; wire fills it from the root.",
        scale=40,
    )
    zoom = 1.6
    for x, thick, bevel in ((3.6, 0.9, 0.0), (11.0, 1.5, 0.5)):
        y = 1.5
        for side in (-1, 1):
            leg = [(x + (px - x) * zoom, y + (py - y) * zoom) for px, py in leg_section(x, y, side, 1.9, thick, bevel)]
            d.polygon(leg, "cut")
        d.dimension((x, y + 3.0 - 1.3), (x + thick * zoom, y + 3.0 - 1.3), "", 0)
        leader(
            d,
            (x + thick * zoom * 0.8, y + 1.7),
            (x + thick * zoom + 0.6, y + 2.6),
            "0.9 mm" if thick < 1 else "1.5 mm",
            "start",
        )
    d.circle(11.0, 1.5 + (0.5 - 0.21) * zoom, 0.15 * zoom, "hot")
    leader(d, (11.2, 1.85), (12.2, 0.75), "wire 0.3 mm")
    return d


@drawing("edge-tacks")
def edge_tacks() -> Drawing:
    """Looking down on the edge: tacks, then runs, then the ends."""
    d = Drawing(
        8.0,
        3.4,
        "Tack, then run",
        "The common edge from above, 4 mm long. Tack 1 in the middle, 2 and 3 at the ends. Then overlapping spots "
        "along the line, half on each part.",
        scale=80,
        left=-4.0,
        top=-1.55,
    )
    d.rectangle(-3.0, -0.72, 6.0, 0.72, "part")
    d.rectangle(-3.0, 0.0, 6.0, 0.72, "part")
    for i in range(13):
        d.circle(-2.72 + i * 0.225, 0, 0.34, "soft")
    spots(d, [(0.0, 0.0), (-2.72, 0.0), (2.72, 0.0)], 0.68)
    for x, number in ((0.0, "1"), (-2.72, "2"), (2.72, "3")):
        d.text(x, -1.0, number)
    arrow(d, (0.6, 0), (1.9, 0), "ink heavy")
    d.dimension((-3.0, 0.72), (3.0, 0.72), "", -22)
    d.text(0, 1.52, "4 mm")
    return d


@drawing("edge-aim")
def edge_aim() -> Drawing:
    """Beam on the line, against beam on one part."""
    d = Drawing(
        16.0,
        6.0,
        "Aim at the line",
        "Left: the beam stands on the line and both edges melt. Right: the beam stands on one part; its edge melts "
        "away and the other one stays cold.",
        scale=40,
    )
    for x, good in ((4.2, True), (11.8, False)):
        y = 2.5
        for side in (-1, 1):
            eaten = side > 0 and not good
            leg = topped(x, y, side, 2.2, hollow()) if eaten else leg_section(x, y, side, 2.2)
            d.polygon([(x + (px - x) * 1.4, y + (py - y) * 1.4) for px, py in leg], "cut")
        if good:
            d.polygon([(x + px * 1.4, y + py * 1.4) for px, py in pool(0, -0.02, 0.12)], "hot")
            d.beam(x, y - 0.2, 0.7, 2.0)
        else:
            hole = [(x + px * 1.4, y + py * 1.4) for px, py in hollow()]
            d.polygon([*hole, *[(px, py + 0.25) for px, py in reversed(hole)]], "hot")
            d.beam(x + 0.68, y + 0.45, 0.7, 2.6)
        tick(d, x - 2.3, 1.2, good)
    return d


def hollow() -> list[Point]:
    """The hollow that a shot on one part leaves in its edge, from the line outward."""
    return [(STRIP * i / 12, 0.06 + 0.46 * math.sin(math.pi * i / 24) ** 1.2) for i in range(13)]
