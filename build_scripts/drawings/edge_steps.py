"""Drawings of single steps at an edge joint: wrap, level, arc, faults, peel and opening tests."""

from __future__ import annotations

import math

from build_scripts.drawings import drawing
from build_scripts.drawings.bench import cap, moved, spark, tungsten
from build_scripts.drawings.edge import STRIP, hollow, leg_section, legs, pool, topped
from build_scripts.drawings.sketch import arrow, leader
from calculators.drawing import Drawing, Point


@drawing("edge-wrap")
def edge_wrap() -> Drawing:
    """The seam goes around the ends of the edge."""
    d = Drawing(
        16.0,
        5.6,
        "Around the corners",
        "Two strips side by side, seen at an angle. The fused line runs along the top edge and turns down 0.5 mm at "
        "both ends.",
        scale=40,
    )
    x, y, wide, tall = 3.4, 2.2, 8.0, 2.6
    back, lift = 1.1, 0.7
    d.polygon([(x, y), (x + wide, y), (x + wide + 2 * back, y - 2 * lift), (x + 2 * back, y - 2 * lift)], "part")
    d.polygon([(x, y), (x + wide, y), (x + wide, y + tall), (x, y + tall)], "part")
    d.polygon(
        [
            (x + wide, y),
            (x + wide + 2 * back, y - 2 * lift),
            (x + wide + 2 * back, y - 2 * lift + tall),
            (x + wide, y + tall),
        ],
        "part",
    )
    d.line([(x + wide + back, y - lift), (x + wide + back, y - lift + tall)], "ink")
    half = 0.24
    d.polygon(
        [
            (x + back - half, y - lift + 0.15),
            (x + wide + back - half, y - lift + 0.15),
            (x + wide + back - half, y - lift + 1.25),
            (x + wide + back + half, y - lift + 0.95),
            (x + wide + back + half, y - lift - 0.15),
            (x + back + half, y - lift - 0.15),
        ],
        "hot",
    )
    leader(d, (x + wide + back, y - lift + 0.7), (13.9, 4.7), "0.5 mm", "start")
    return d


@drawing("edge-level")
def edge_level() -> Drawing:
    """The wide beam melts the skin of the edge round."""
    d = Drawing(
        8.0,
        3.6,
        "Leveling pass on an edge",
        "A beam 1.2 mm wide stands on the fused edge and melts only its skin, which flows round.",
        scale=80,
        left=-4.0,
        top=-1.75,
    )
    legs(d, 0, 0, 1.7)
    d.polygon(pool(0, -0.02, 0.14), "soft")
    d.polygon([*cap(0, -0.02, 2 * STRIP, 0.14), *reversed(cap(0, 0.03, 1.7, 0.12, -1))], "hot")
    d.beam(0, -0.16, 1.2, 1.55)
    d.dimension((-0.6, -0.16), (0.6, -0.16), "", 12)
    leader(d, (0.6, -0.3), (1.7, -0.9), "1.2 mm")
    return d


@drawing("edge-arc")
def edge_arc() -> Drawing:
    """Pulsed arc on an edge: tungsten over the line, clamp as heat sink and return."""
    d = Drawing(
        16.0,
        6.2,
        "Pulsed arc on an edge",
        "The tungsten stands over the line. Copper jaws hold both strips 2 mm below the edge, carry the current away "
        "and take the heat.",
        scale=40,
    )
    x, y = 7.0, 2.6
    for side in (-1, 1):
        d.polygon([(x + (px - x) * 1.2, y + (py - y) * 1.2) for px, py in leg_section(x, y, side, 2.8)], "cut")
    d.polygon([(x + px * 1.2, y + py * 1.2) for px, py in pool(0, -0.02, 0.14)], "hot")
    tungsten(d, x, y - 0.62, 90, 1.8, 0.36)
    spark(d, (x, y - 0.6), (x, y - 0.24), 0.08)
    for side in (-1, 1):
        d.rectangle(x + (1.08 if side > 0 else -3.28), y + 1.4, 2.2, 1.1, "part tool")
    d.dimension((x - 1.6, y), (x - 1.6, y + 1.4), "", 0)
    d.text(x - 1.9, y + 0.85, "2 mm", "end")
    leader(d, (x + 0.15, 1.0), (9.4, 0.8), "tungsten")
    leader(d, (x + 2.6, y + 1.9), (11.4, 5.4), "copper jaws")
    return d


@drawing("edge-faults")
def edge_faults() -> Drawing:
    """Four faults of an edge in section."""
    d = Drawing(
        16.0,
        5.6,
        "Faults of an edge",
        "Four sections: skin only, fused 0.1 mm deep; blown edge, one part has melted away; sunken, a gap drew the "
        "metal down; and thin wall, the outside was filed away beside the seam.",
        scale=40,
    )
    for i, words in enumerate(("skin only", "blown edge", "sunken", "filed thin")):
        x, y = 2.1 + i * 3.93, 1.2
        for side in (-1, 1):
            leg = leg_section(x, y, side, 3.0)
            if words == "blown edge" and side > 0:
                leg = topped(x, y, side, 3.0, hollow())
            if words == "sunken":
                leg = topped(x + side * 0.08, y, side, 3.0, [*_dip(), (STRIP, 0.0)])
            if words == "filed thin" and side > 0:
                outer = [(x + 0.9 - 0.5 * math.sin(math.pi * k / 10), y + 0.4 + 0.15 * k) for k in range(11)]
                leg = [(x, y), (x + STRIP, y), *outer, *leg[2:]]
            d.polygon(leg, "cut")
        if words == "skin only":
            d.polygon(pool(x, y - 0.02, 0.1, 0.12), "hot")
        elif words == "blown edge":
            hole = [(x + px, y + py) for px, py in hollow()]
            d.polygon([*hole, *[(px, py + 0.2) for px, py in reversed(hole)]], "hot")
        elif words == "sunken":
            right = [(x + 0.08 + px, y + py) for px, py in _dip()]
            left = [(2 * x - px, py) for px, py in reversed(right)]
            d.polygon([*left, *right, (x + 0.25, y + 0.8), (x - 0.25, y + 0.8)], "hot")
        else:
            d.polygon(pool(x, y, 0.05), "hot")
        d.text(x, 5.3, words)
    return d


def _dip() -> list[Point]:
    """A sunken edge from the line outward."""
    return [(0.6 * i / 8, 0.42 * (1 - (i / 8) ** 2)) for i in range(9)]


@drawing("edge-peel")
def edge_peel() -> Drawing:
    """Pulling along the parts is easy to hold, opening them is not."""
    d = Drawing(
        16.0,
        5.8,
        "Pull and peel",
        "Left: a pull along the strips loads the whole fused edge. Right: a load between the strips, far from the "
        "seam, peels it open from the root.",
        scale=40,
    )
    x, y = 4.0, 1.3
    for side in (-1, 1):
        d.polygon(leg_section(x, y, side, 3.0), "cut")
    d.polygon(pool(x, y, 0.12), "hot")
    arrow(d, (x + 0.45, 4.5), (x + 0.45, 5.5), "ink heavy")
    arrow(d, (x - 0.45, 1.0), (x - 0.45, 0.1), "ink heavy")
    x = 11.6
    for side in (-1, 1):
        d.polygon(moved(leg_section(x, y, side, 3.0), (x + side * 0.2, y), side * 9), "cut")
    d.polygon(pool(x, y - 0.02, 0.12, 0.3, 1.5), "hot")
    for side in (-1, 1):
        arrow(d, (x + side * 1.5, 4.0), (x + side * 2.7, 4.0), "ink heavy")
    leader(d, (x, y + 0.32), (x - 2.4, 0.7), "root", "end")
    return d


@drawing("edge-open-test")
def edge_open_test() -> Drawing:
    """The practice piece pried open with pliers."""
    d = Drawing(
        16.0,
        6.0,
        "Open the practice piece",
        "The two strips are spread by 30 degrees with pliers. A good edge holds and the strips bend beside it.",
        scale=40,
    )
    x, y = 8.0, 1.2
    for side in (-1, 1):
        outer: list[Point] = []
        inner: list[Point] = []
        for i in range(25):
            down = i / 24 * 3.4
            push = 0.0 if down < 0.5 else 0.23 * (down - 0.5) ** 1.55
            outer.append((x + side * (STRIP + push), y + down))
            inner.append((x + side * push, y + down))
        d.polygon([*inner, *reversed(outer)], "cut")
        arrow(d, (x + side * 2.7, y + 3.3), (x + side * 3.9, y + 2.9), "ink heavy")
    d.polygon(pool(x, y, 0.12), "hot")
    return d
