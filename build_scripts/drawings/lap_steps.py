"""Drawings of single steps at a lap joint: void, order, level, arc, faults, measuring a flat."""

from __future__ import annotations

import math

from build_scripts.drawings import drawing
from build_scripts.drawings.bench import cap, spark, tungsten
from build_scripts.drawings.lap import FLAT, HALF, INNER, OUTER, WALL, arc, shank
from build_scripts.drawings.sketch import arrow, bar, leader, polar
from calculators.drawing import Drawing, Point


@drawing("lap-void")
def lap_void() -> Drawing:
    """Fused around the rim only: the file opens the hollow."""
    d = Drawing(
        16.0,
        5.8,
        "The hidden gap",
        "Left: a strip 0.65 mm thick, fused around its rim only, looks finished. Under it the faces only touch. Right: "
        "filed to the round, its thin ends lift and a dark line shows.",
        scale=40,
        left=-1.2,
    )
    zoom = 0.98
    for x, filed in ((2.8, False), (10.8, True)):
        y = 2.2
        flat = y + FLAT * 1.6
        left = [(x + (px) * zoom, y + py * 1.6) for px, py in arc(0, OUTER, 90 + 19.5, 90 + HALF, 6)]
        right = [(x + px * zoom, y + py * 1.6) for px, py in arc(0, OUTER, 90 - HALF, 90 - 19.5, 6)]
        d.polygon([*left, *right, (x + 3.4, y + 3.0), (x - 3.4, y + 3.0)], "cut")
        if filed:
            dome = [(x + px * zoom, y + py * 1.6) for px, py in arc(0, OUTER, 90 + HALF, 90 - HALF, 30)]
            d.polygon(dome, "part")
            for side in (-1, 1):
                d.polygon(
                    [(x + side * 3.1, flat), (x + side * 1.9, flat - 0.02), (x + side * 3.05, flat - 0.22)], "hot"
                )
                d.line([(x + side * 1.9, flat), (x + side * 2.9, flat - 0.12)], "ink heavy")
        else:
            d.rectangle(x - 3.2, flat - 1.04, 6.4, 1.04, "part")
            for side in (-1, 1):
                d.polygon(
                    [
                        (x + side * 3.2, flat - 0.9),
                        (x + side * 3.55, flat),
                        (x + side * 3.2, flat + 0.3),
                        (x + side * 2.7, flat),
                    ],
                    "hot",
                )
        d.line([(x - 2.7, flat), (x + 2.7, flat)], "ink")
    leader(d, (2.8, 3.0), (2.8, 1.3), "only touching", "middle")
    leader(d, (12.9, 2.9), (14.0, 1.3), "lifts", "middle")
    return d


@drawing("lap-order")
def lap_order() -> Drawing:
    """From above: tacks, then rows of overlapping spots."""
    d = Drawing(
        8.0,
        4.2,
        "Tacks and rows",
        "The donor strip on the band from above. Tack 1 in the middle of one edge, 2 opposite, 3 to 6 at the corners. "
        "Then rows of overlapping spots across, from the middle to both ends.",
        scale=80,
        left=-4.0,
        top=-2.1,
    )
    d.rectangle(-3.9, -1.5, 7.8, 3.0, "part")
    d.rectangle(-3.3, -1.55, 6.6, 3.1, "part")
    for row in range(4):
        for i in range(9):
            d.circle(-0.45 + row * 0.3, -1.4 + i * 0.35, 0.25, "soft")
    for number, (x, y) in enumerate(((0, -1.5), (0, 1.5), (-3.2, -1.45), (3.2, 1.45), (-3.2, 1.45), (3.2, -1.45)), 1):
        d.circle(x, y, 0.25, "hot")
        d.text(x + (0.45 if x < 1 else -0.45), y + (0.55 if y < 0 else -0.35), str(number))
    arrow(d, (0.95, 0), (2.3, 0), "ink heavy")
    arrow(d, (-0.95, 0), (-2.3, 0), "ink heavy")
    return d


@drawing("lap-level")
def lap_level() -> Drawing:
    """The wide beam flattens the ripples of the last layer."""
    d = Drawing(
        8.0,
        4.0,
        "Leveling pass on a fill",
        "A beam 1.2 mm wide moves over the last layer. Behind it the ripples have flowed flat; before it they still "
        "stand.",
        scale=80,
        left=-4.0,
        top=-2.3,
    )
    d.rectangle(-3.6, 0.3, 7.2, 1.2, "cut")
    ripples: list[Point] = [(-3.6, -0.1), (0.0, -0.1)]
    for i in range(25):
        ripples.append((0.3 + i * 0.1375, -0.12 - 0.1 * abs(math.sin(i * math.pi / 4))))
    d.polygon([*ripples, (3.6, 0.4), (-3.6, 0.4)], "hot")
    d.beam(0, -0.12, 1.2, 2.0)
    d.dimension((-0.6, -0.12), (0.6, -0.12), "", 14)
    leader(d, (-0.6, -0.32), (-1.7, -1.2), "1.2 mm", "end")
    arrow(d, (0.9, -0.8), (2.4, -0.8), "ink heavy")
    return d


@drawing("lap-arc")
def lap_arc() -> Drawing:
    """Pulsed arc with wire fed to the worn place."""
    d = Drawing(
        16.0,
        6.4,
        "Pulsed arc with wire",
        "The tungsten stands over the worn place. A wire touches the ring just before the spot and its end melts into "
        "it. The return clamp holds the shank beside the place.",
        scale=40,
    )
    x, y = 7.6, 3.5
    d.rectangle(x - 5.0, y, 9.0, 1.6, "cut")
    d.polygon([*cap(x - 0.5, y, 2.6, 0.3), (x + 0.5, y + 0.35), (x - 1.4, y + 0.35)], "hot")
    tungsten(d, x, y - 0.75, 78, 2.0, 0.42)
    spark(d, (x, y - 0.72), (x - 0.05, y - 0.3), 0.08)
    bar(d, x + 0.55, y - 0.15, 4.6, 0.26, 16, "part")
    bar(d, x - 3.2, y - 0.22, 3.8, 0.4, 169)
    bar(d, x - 3.2, y + 1.82, 3.8, 0.4, 191)
    leader(d, (x + 3.4, y - 0.9), (12.8, 1.4), "wire", "start")
    leader(d, (x + 0.3, 1.2), (5.4, 0.9), "tungsten", "end")
    leader(d, (2.8, y + 2.15), (5.2, y + 2.65), "return clamp", "start")
    return d


@drawing("lap-faults")
def lap_faults() -> Drawing:
    """Four faults of a lap in section."""
    d = Drawing(
        16.0,
        5.6,
        "Faults of a lap",
        "Four sections: gap under the donor, fused at its rim only; cold lap, a bead that rolled over the ring without "
        "wetting it; wavy, ripples left by uneven shots; undercut, a groove beside the fill.",
        scale=40,
    )
    y = 2.4
    for i, words in enumerate(("gap under", "cold lap", "wavy", "undercut")):
        x = 2.1 + i * 3.93
        top: list[Point] = [(x - 1.7, y), (x + 1.7, y)]
        if words == "undercut":
            top = [
                (x - 1.7, y),
                (x + 0.6, y),
                *[(x + 0.6 + 0.06 * k, y + 0.3 * math.sin(math.pi * k / 10)) for k in range(1, 10)],
                (x + 1.2, y),
                (x + 1.7, y),
            ]
        d.polygon([*top, (x + 1.7, y + 1.6), (x - 1.7, y + 1.6)], "cut")
        if words == "gap under":
            d.rectangle(x - 1.0, y - 0.5, 2.0, 0.44, "part")
            for side in (-1, 1):
                d.polygon(
                    [
                        (x + side * 0.9, y - 0.5),
                        (x + side * 1.3, y),
                        (x + side * 1.0, y + 0.25),
                        (x + side * 0.7, y - 0.02),
                    ],
                    "hot",
                )
            d.line([(x - 0.7, y - 0.03), (x + 0.7, y - 0.03)], "ink heavy")
        elif words == "cold lap":
            d.polygon([(x - 1.1, y - 0.02), *cap(x, y - 0.3, 2.5, 0.5), (x + 1.1, y - 0.02)], "hot")
            for side in (-1, 1):
                d.line([(x + side * 1.25, y - 0.28), (x + side * 0.7, y)], "ink heavy")
        elif words == "wavy":
            wave = [(x - 1.2 + 0.1 * k, y - 0.12 - 0.32 * abs(math.sin(k * math.pi / 8))) for k in range(25)]
            d.polygon([(x - 1.3, y), *wave, (x + 1.3, y), (x + 1.0, y + 0.3), (x - 1.0, y + 0.3)], "hot")
        else:
            d.polygon([*cap(x - 0.4, y, 2.0, 0.35), (x + 0.4, y + 0.35), (x - 1.1, y + 0.35)], "hot")
        d.text(x, 5.2, words)
    return d


@drawing("flat-measure")
def flat_measure() -> Drawing:
    """Measure the sound wall and what is left in the middle of the flat."""
    d = Drawing(
        20.0,
        8.4,
        "Measure a flat",
        "The ring to scale, flat at the top. Calipers give the sound wall beside the flat, 1.6 mm, and the wall in the "
        "middle of the flat, 1.1 mm. The difference is the depth, 0.5 mm.",
        scale=32,
        left=-10.0,
        top=-1.7,
    )
    shank(d, 0, 62)
    d.line(arc(0, OUTER, 90 + HALF, 90 - HALF), "ghost")
    d.dimension((0, FLAT), (0, WALL), "", 0)
    leader(d, (0, 1.1), (0.0, 3.2), "1.1 mm", "middle")
    outer, inner = polar(0, OUTER, OUTER, 50), polar(0, OUTER, INNER, 50)
    d.dimension(inner, outer, "", 0)
    leader(d, ((outer[0] + inner[0]) / 2, (outer[1] + inner[1]) / 2), (4.0, 5.3), "1.6 mm", "end")
    ends = [polar(0, OUTER, OUTER, 90 + side * HALF) for side in (1, -1)]
    d.dimension(ends[0], ends[1], "", 28)
    d.text(0, -0.85, "6.3 mm")
    return d
