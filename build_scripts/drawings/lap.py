"""Drawings of the lap joint: donor metal laid on a worn place. The shank is cut along its middle, outside up."""

from __future__ import annotations

import math

from build_scripts.drawings import drawing
from build_scripts.drawings.sketch import arrow, gas, leader, nozzle, open_air, polar, tick
from calculators.drawing import Drawing, Point

INNER, WALL, FLAT = 8.66, 1.6, 0.5  # mm: US 7, 1.6 mm thick, a flat 0.5 mm deep on its outside
OUTER = INNER + WALL
HALF = math.degrees(math.acos(1 - FLAT / OUTER))  # half the angle that the flat takes, 18 degrees
LAYER = 0.25  # mm, one layer of donor
WIDE = 3.0  # mm, band width


def arc(y: float, radius: float, start: float, end: float, steps: int = 40) -> list[Point]:
    """Points of the ring around its center below; ``y`` is the height of the sound outside."""
    return [polar(0, y + OUTER, radius, start + (end - start) * i / steps) for i in range(steps + 1)]


def shank(d: Drawing, y: float, reach: float = 25.0) -> None:
    """The shank with its flat, ``reach`` degrees to both sides."""
    left = arc(y, OUTER, 90 + reach, 90 + HALF, 10)
    right = arc(y, OUTER, 90 - HALF, 90 - reach, 10)
    inside = arc(y, INNER, 90 - reach, 90 + reach, 30)
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
    shank(d, 0)
    d.rectangle(-3.36, FLAT - LAYER - 0.02, 6.72, LAYER, "part")
    for x in (-2.2, 2.2):
        arrow(d, (x, -0.7), (x, 0.05))
    return d


def _built(y: float, proud: float) -> list[Point]:
    """The filled flat, ``proud`` above the round."""
    top = arc(y, OUTER + proud, 90 + HALF + 1.2, 90 - HALF - 1.2, 30)
    first, last = arc(y, OUTER, 90 + HALF + 2.4, 90 - HALF - 2.4, 1)
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
    shank(d, 0)
    d.polygon(_built(0, 0.16), "hot")
    d.polygon([*arc(0, OUTER + 0.17, 110, 95.6, 12), *arc(0, OUTER + 0.17 + LAYER, 95.6, 110, 12)], "part")
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
    shank(d, 0)
    d.polygon(_built(0, 0.0), "hot")
    d.line(arc(0, OUTER + 0.22, 90 + HALF + 1, 90 - HALF - 1), "ghost")
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
    left = arc(0, OUTER, 113, 90 + HALF, 10)
    right = arc(0, OUTER, 90 - HALF, 67, 10)
    inside = arc(0, INNER, 67, 113, 30)
    edge = left[-1][0]
    floor = [(edge + 0.02, 0.7), (edge + 0.9, 0.5), (-edge - 0.9, 0.5), (-edge - 0.02, 0.7)]
    d.polygon([*left, *floor, *right, *inside], "cut")
    d.line(arc(0, OUTER, 90 + HALF, 90 - HALF), "ghost")
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
