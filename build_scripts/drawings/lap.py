"""Drawings of the lap joint: donor metal laid on a worn place. The shank is cut along its middle, outside up."""

from __future__ import annotations

import math

from build_scripts.drawings import drawing
from build_scripts.drawings.bench import cap, spark, tungsten
from build_scripts.drawings.sketch import arrow, bar, gas, leader, nozzle, open_air, polar, tick
from calculators.drawing import Drawing, Point

INNER, WALL, FLAT = 8.66, 1.6, 0.5  # mm: US 7, 1.6 mm thick, a flat 0.5 mm deep on its outside
OUTER = INNER + WALL
HALF = math.degrees(math.acos(1 - FLAT / OUTER))  # half the angle that the flat takes, 18 degrees
LAYER = 0.25  # mm, one layer of donor
WIDE = 3.0  # mm, band width


def _arc(y: float, radius: float, start: float, end: float, steps: int = 40) -> list[Point]:
    """Points of the ring around its center below; ``y`` is the height of the sound outside."""
    return [polar(0, y + OUTER, radius, start + (end - start) * i / steps) for i in range(steps + 1)]


def _shank(d: Drawing, y: float, reach: float = 25.0) -> None:
    """The shank with its flat, ``reach`` degrees to both sides."""
    left = _arc(y, OUTER, 90 + reach, 90 + HALF, 10)
    right = _arc(y, OUTER, 90 - HALF, 90 - reach, 10)
    inside = _arc(y, INNER, 90 - reach, 90 + reach, 30)
    d.polygon([*left, *right, *inside], "cut")


def _strip(title: str, description: str) -> Drawing:
    return Drawing(9.0, 5.2, title, description, scale=40, left=-4.5, top=-2.6)


@drawing("lap-before")
def lap_before() -> Drawing:
    """The cleaned flat with the first donor strip on it."""
    d = _strip(
        "Lap joint before fusing",
        "A shank cut along its middle has a flat 0.5 mm deep and 6.3 mm long on its outside. A donor strip 0.25 mm "
        "thick lies on the flat and reaches a little past both ends.",
    )
    _shank(d, 0)
    d.rectangle(-3.36, FLAT - LAYER - 0.02, 6.72, LAYER, "part")
    for x in (-2.2, 2.2):
        arrow(d, (x, -0.7), (x, 0.05))
    return d


def _built(y: float, proud: float) -> list[Point]:
    """The filled flat, ``proud`` above the round."""
    top = _arc(y, OUTER + proud, 90 + HALF + 1.2, 90 - HALF - 1.2, 30)
    first, last = _arc(y, OUTER, 90 + HALF + 2.4, 90 - HALF - 2.4, 1)
    bottom = [(3.1 - 6.2 * i / 20, y + FLAT + 0.14 + 0.05 * math.sin(i * 2.4)) for i in range(21)]
    return [first, *top, last, *bottom]


@drawing("lap-fused")
def lap_fused() -> Drawing:
    """Three layers fused through, higher than the round; beam on the edge of the donor."""
    d = _strip(
        "Lap joint fused",
        "Layer on layer has been fused through. The fill stands higher than the round of the ring. The beam points at "
        "the edge of the last strip, half on the strip and half on the fill; gas flows from the side.",
    )
    _shank(d, 0)
    d.polygon(_built(0, 0.16), "hot")
    d.polygon([*_arc(0, OUTER + 0.17, 110, 95.6, 12), *_arc(0, OUTER + 0.17 + LAYER, 95.6, 110, 12)], "part")
    d.beam(-1.0, -0.2, 0.5, 2.4, 0.6)
    nozzle(d, 2.2, -1.7, 1.4, 0.55, 32)
    gas(d, -0.5, -0.35, 2.2, 18, 28)
    return d


@drawing("lap-finished")
def lap_finished() -> Drawing:
    """Round again; what was filed off is dashed."""
    d = _strip(
        "Lap joint finished",
        "The fill is filed to the round of the ring. A dashed line shows the height that was filed away.",
    )
    _shank(d, 0)
    d.polygon(_built(0, 0.0), "hot")
    d.line(_arc(0, OUTER + 0.22, 90 + HALF + 1, 90 - HALF - 1), "ghost")
    return d


@drawing("lap-choice")
def lap_choice() -> Drawing:
    """Layers, patch, or half shank."""
    d = Drawing(
        16.0,
        5.6,
        "Layers, patch or new half",
        "Three sections. Left: thin layers, each fused through, on a shallow flat. Middle: a fitted patch on thin "
        "sheet, fused around its rim only. Right: worn below half, the piece is replaced.",
        scale=40,
    )
    x, y = 2.8, 2.2
    d.polygon(
        [
            (x - 2.2, y),
            (x - 1.5, y),
            (x - 1.2, y + 0.5),
            (x + 1.2, y + 0.5),
            (x + 1.5, y),
            (x + 2.2, y),
            (x + 2.2, y + 1.6),
            (x - 2.2, y + 1.6),
        ],
        "cut",
    )
    for i in range(3):
        half = 1.25 + 0.13 * i
        d.polygon(
            [
                (x - half, y + 0.55 - i * 0.25),
                (x + half, y + 0.55 - i * 0.25),
                (x + half + 0.1, y + 0.3 - i * 0.25),
                (x - half - 0.1, y + 0.3 - i * 0.25),
            ],
            "hot",
        )
    x = 8.0
    d.rectangle(x - 2.2, y + 0.4, 4.4, 0.5, "cut")
    open_air(d, [(x - 0.6, y + 0.35), (x - 0.25, y + 0.95), (x + 0.25, y + 0.95), (x + 0.6, y + 0.35)])
    d.rectangle(x - 1.3, y, 2.6, 0.4, "cut")
    for side in (-1, 1):
        foot = x + side * 1.3
        d.polygon(
            [
                (foot - side * 0.15, y),
                (foot, y),
                (foot + side * 0.35, y + 0.4),
                (foot, y + 0.62),
                (foot - side * 0.25, y + 0.4),
            ],
            "hot",
        )
    x = 13.2
    d.rectangle(x - 2.2, y, 1.5, 1.6, "cut")
    d.rectangle(x + 0.7, y, 1.5, 1.6, "cut")
    d.rectangle(x - 0.7, y, 1.4, 1.6, "part")
    for side in (-1, 1):
        d.polygon(
            [
                (x + side * 0.7 + px, y + py)
                for px, py in ((-0.25, 0), (0.25, 0), (0.06, 0.8), (0.25, 1.6), (-0.25, 1.6), (-0.06, 0.8))
            ],
            "hot",
        )
    for px, words in ((2.8, "layers"), (8.0, "patch"), (13.2, "new piece")):
        d.text(px, 5.2, words)
    return d


@drawing("lap-clean")
def lap_clean() -> Drawing:
    """File the worn place to clean metal, with a small step at both ends."""
    d = Drawing(
        9.0,
        4.4,
        "File to clean metal, with a step",
        "The flat is filed flat and even. At both ends a step of 0.2 mm gives the donor an edge to meet, where before "
        "it ran out to nothing.",
        scale=71,
        left=-4.5,
        top=-1.6,
    )
    left = _arc(0, OUTER, 113, 90 + HALF, 10)
    right = _arc(0, OUTER, 90 - HALF, 67, 10)
    inside = _arc(0, INNER, 67, 113, 30)
    edge = left[-1][0]
    floor = [(edge + 0.02, 0.7), (edge + 0.9, 0.5), (-edge - 0.9, 0.5), (-edge - 0.02, 0.7)]
    d.polygon([*left, *floor, *right, *inside], "cut")
    d.line(_arc(0, OUTER, 90 + HALF, 90 - HALF), "ghost")
    leader(d, (edge + 0.04, 0.6), (-2.6, -0.9), "step 0.2 mm", "middle")
    d.dimension((0, 0), (0, 0.5), "", 0)
    leader(d, (0, 0.2), (1.6, -0.7), "0.5 mm", "start")
    return d


@drawing("lap-line")
def lap_line() -> Drawing:
    """Aim on the donor's edge: wetted against shrunk to a bead."""
    d = Drawing(
        16.0,
        6.2,
        "Aim on the donor's edge",
        "Left: half of the beam on the donor, half on the ring. The donor flows out thin onto the ring. Right: the "
        "beam hits the donor alone. It shrinks into a bead that sits on the cold ring.",
        scale=40,
    )
    zoom, y = 2.4, 4.0
    for x, good in ((4.2, True), (11.8, False)):
        d.rectangle(x - 3.4, y, 6.8, 1.7, "cut")
        if good:
            d.rectangle(x - 3.4, y - LAYER * zoom, 3.2, LAYER * zoom, "part")
            d.polygon(
                [
                    (x - 0.75, y - LAYER * zoom),
                    (x - 0.2, y - LAYER * zoom),
                    (x + 0.25, y - 0.22),
                    (x + 0.95, y),
                    (x + 0.45, y + 0.6),
                    (x - 0.25, y + 0.75),
                    (x - 0.65, y + 0.35),
                ],
                "hot",
            )
            d.beam(x, y - 0.32, 1.2, 2.7)
        else:
            d.rectangle(x - 3.4, y - LAYER * zoom, 2.1, LAYER * zoom, "part")
            d.circle(x - 0.95, y - 0.5, 0.5, "hot")
            d.beam(x - 0.95, y - 0.98, 1.2, 2.2)
        tick(d, x + 2.6, 1.2, good)
    leader(d, (1.6, y - 0.3), (1.0, 2.3), "donor", "middle")
    return d


@drawing("lap-layers")
def lap_layers() -> Drawing:
    """Across the band: three layers, each fused through, edges past the sides."""
    d = Drawing(
        8.0,
        4.2,
        "Layer on layer",
        "The band cut across, 3.0 mm wide. Three layers 0.25 mm thick are numbered. Each one is fused into the one "
        "below by about 0.15 mm. The last one stands 0.15 mm above the old height.",
        scale=80,
        left=-4.0,
        top=-1.4,
    )
    d.rectangle(-WIDE / 2, FLAT, WIDE, WALL - FLAT, "cut")
    for i in range(3):
        foot = FLAT - i * LAYER + (0.13 if i == 0 else 0.06)
        top = FLAT - (i + 1) * LAYER + (0.02 if i < 2 else -0.02)
        half = WIDE / 2 + 0.12
        d.polygon(
            [
                (-half, top + 0.05),
                (-half + 0.12, top),
                (half - 0.12, top),
                (half, top + 0.05),
                (half - 0.05, foot - 0.06),
                (half - 0.3, foot),
                (-half + 0.3, foot),
                (-half + 0.05, foot - 0.06),
            ],
            "hot",
        )
        leader(d, (half - 0.1, (foot + top) / 2), (2.5, 0.62 - i * 0.45), str(i + 1))
    d.line([(-WIDE / 2 - 0.4, 0), (WIDE / 2 + 0.3, 0)], "ghost")
    d.dimension((-1.95, 0), (-1.95, -0.25), "", 0)
    leader(d, (-1.95, -0.15), (-2.5, -0.8), "0.15 to 0.25", "middle")
    return d


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
        left = [(x + (px) * zoom, y + py * 1.6) for px, py in _arc(0, OUTER, 90 + 19.5, 90 + HALF, 6)]
        right = [(x + px * zoom, y + py * 1.6) for px, py in _arc(0, OUTER, 90 - HALF, 90 - 19.5, 6)]
        d.polygon([*left, *right, (x + 3.4, y + 3.0), (x - 3.4, y + 3.0)], "cut")
        if filed:
            dome = [(x + px * zoom, y + py * 1.6) for px, py in _arc(0, OUTER, 90 + HALF, 90 - HALF, 30)]
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
    _shank(d, 0, 62)
    d.line(_arc(0, OUTER, 90 + HALF, 90 - HALF), "ghost")
    d.dimension((0, FLAT), (0, WALL), "", 0)
    leader(d, (0, 1.1), (0.0, 3.2), "1.1 mm", "middle")
    outer, inner = polar(0, OUTER, OUTER, 50), polar(0, OUTER, INNER, 50)
    d.dimension(inner, outer, "", 0)
    leader(d, ((outer[0] + inner[0]) / 2, (outer[1] + inner[1]) / 2), (4.0, 5.3), "1.6 mm", "end")
    ends = [polar(0, OUTER, OUTER, 90 + side * HALF) for side in (1, -1)]
    d.dimension(ends[0], ends[1], "", 28)
    d.text(0, -0.85, "6.3 mm")
    return d
