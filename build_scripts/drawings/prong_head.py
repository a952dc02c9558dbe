"""Drawings of a new prong on an old head: notch in the rails, peg in a drilled base. Head for a 6.5 mm stone."""

from __future__ import annotations

from build_scripts.drawings import drawing
from build_scripts.drawings.bench import jaws, on_circle, spots
from build_scripts.drawings.setting_parts import brilliant, crack, prong
from build_scripts.drawings.sketch import arrow, gas, leader, nozzle, open_air, tick
from calculators.drawing import Drawing

STONE = 6.5  # mm across
LOW, HIGH = 1.7, 2.75  # mm, half width of the lower and the upper rail
RAIL, WIRE = 0.8, 1.0  # mm, height of a rail, prong wire


def _strip(title: str, description: str) -> Drawing:
    return Drawing(9.0, 7.4, title, description, scale=40, left=-4.5, top=-5.6)


def _rails(d: Drawing, cut: bool = False) -> None:
    """Foot and upper rail of the head; ``cut`` ends them at the notch for the new wire."""
    for half, top, tall in ((LOW + 0.2, -0.1, RAIL + 0.2), (HIGH - 0.15, -2.3, RAIL * 0.8)):
        low, high = (_inner(top + tall) + 0.45, _inner(top) + 0.45) if cut else (half, half)
        d.polygon([(-half, top), (high, top), (low, top + tall), (-half, top + tall)])


def _inner(y: float) -> float:
    """Where the inner edge of the new straight wire is at height ``y``."""
    return LOW - 0.4 + (0.7 - y) * 1.7 / 5.7


def _prong(d: Drawing, side: int, straight: bool = False) -> None:
    """A whole prong; straight before the stone is set."""
    if straight:
        d.polygon(
            [
                (side * (LOW - 0.4), 0.7),
                (side * (LOW + 0.6), 0.7),
                (side * (LOW + 2.3), -5.0),
                (side * (LOW + 1.3), -5.0),
            ]
        )
    else:
        prong(d, side * LOW, 0.7, -4.3, WIRE, side * 1.65)


@drawing("prong-head-before")
def prong_head_before() -> Drawing:
    """One prong gone, the stump cut down, notches in the rails."""
    d = _strip(
        "Prong to head, before",
        "The head of a ring from the side, the stone taken out. The left prong stands. The right one is gone: its "
        "stump is cut away and both rails have a notch as wide as the new wire.",
    )
    _rails(d, cut=True)
    _prong(d, -1)
    d.line([(_inner(0.7), 0.7), (_inner(-5.0), -5.0), (_inner(-5.0) + WIRE, -5.0), (_inner(0.7) + WIRE, 0.7)], "ghost")
    return d


@drawing("prong-head-fused")
def prong_head_fused() -> Drawing:
    """The new prong fused at both rails."""
    d = _strip(
        "Prong to head, fused",
        "A new straight wire lies in both notches and is fused to both rails. Beam and gas come through the open head.",
    )
    _rails(d)
    _prong(d, -1)
    _prong(d, 1, straight=True)
    for y, tall in ((0.4, 0.5), (-1.98, 0.32)):
        for way in (-1, 1):
            d.circle(_inner(y + way * tall / 2), y + way * tall / 2, 0.24, "hot")
    d.polygon([(-0.3, -4.9), (0.55, -5.2), (_inner(-2.1) + 0.2, -2.2), (_inner(-2.1) - 0.18, -2.05)], "beam")
    nozzle(d, 0.1, -3.0, 0.9, 0.4, 155)
    gas(d, 1.75, -2.3, 1.6, 14, 157)
    return d


@drawing("prong-head-finished")
def prong_head_finished() -> Drawing:
    """The stone back in, both prongs over its edge."""
    d = _strip("Prong to head, finished", "The stone is set again. Both prongs are alike and reach over its edge.")
    _rails(d)
    brilliant(d, 0, -3.6, STONE)
    _prong(d, -1)
    _prong(d, 1)
    return d


@drawing("prong-head-choice")
def prong_head_choice() -> Drawing:
    """Notch, peg, and the butt that breaks."""
    d = Drawing(
        15.6,
        6.0,
        "Three ways to stand a prong",
        "Left: the wire lies in a notch of the rail and is fused along both sides. Middle: a peg on the wire goes "
        "into a hole in the base. Right: the wire stands end to end on a stump and breaks at the soft root.",
        scale=40,
        left=-7.8,
        top=-4.0,
    )
    d.rectangle(-7.2, -0.9, 4.0, 0.8, "part")
    d.rectangle(-7.2, 0.5, 4.0, 0.8, "part")
    d.rectangle(-5.7, -3.6, 1.0, 4.9, "part")
    for x in (-5.78, -4.62):
        for y in (-0.5, 0.9):
            d.rectangle(x - 0.14, y - 0.38, 0.28, 0.76, "hot")
    d.polygon(
        [(-1.8, -0.3), (-0.42, -0.3), (-0.42, 1.0), (0.42, 1.0), (0.42, -0.3), (1.8, -0.3), (1.8, 1.6), (-1.8, 1.6)],
        "cut",
    )
    d.polygon(
        [(-0.5, -3.6), (0.5, -3.6), (0.5, -0.3), (0.4, -0.3), (0.4, 1.0), (-0.4, 1.0), (-0.4, -0.3), (-0.5, -0.3)],
        "cut",
    )
    for side in (-1, 1):
        d.polygon(
            [(side * 0.4, 0.35), (side * 0.62, -0.1), (side * 0.95, -0.3), (side * 0.5, -0.75), (side * 0.36, -0.2)],
            "hot",
        )
    d.rectangle(4.0, 0.2, 2.6, 1.4, "cut")
    d.polygon([(4.8, -3.6), (5.8, -3.6), (5.8, 0.2), (4.8, 0.2)], "cut")
    d.polygon([(4.7, -0.75), (5.9, -0.75), (5.95, -0.45), (5.85, -0.3), (4.75, -0.3), (4.65, -0.45)], "hot")
    crack(d, (5.9, -0.32), (4.9, -0.4), 0.06, 5, "ink heavy")
    for x, good in ((-3.7, True), (1.4, True), (6.9, False)):
        tick(d, x, -2.6, good)
    return d


@drawing("prong-head-notch")
def prong_head_notch() -> Drawing:
    """The notch seen from above: half the wire."""
    d = Drawing(
        15.6,
        5.0,
        "The notch takes half of the wire",
        "A rail seen from above, twice. Left: a half-round notch 0.5 mm deep, as wide as the wire. Right: the 1.0 "
        "mm wire lies in it, half inside. Two shots on each side join it.",
        scale=40,
        left=-7.8,
        top=-2.5,
    )
    for x in (-3.9, 3.9):
        d.rectangle(x - 2.6, -0.2, 5.2, 1.2, "part")
    open_air(d, [*on_circle(-3.9, -0.2, 0.5, [180 + 15 * i for i in range(13)])])
    d.line([(-4.36, -0.2), (-3.44, -0.2)], "ghost")
    d.circle(3.9, -0.2, 0.5, "cut")
    spots(d, [(3.33, -0.2), (4.47, -0.2)], 0.4)
    d.dimension((-4.4, -0.2), (-3.4, -0.2), "1.0 mm", 34)
    leader(d, (-3.9, 0.25), (-2.6, 1.7), "0.5 mm deep")
    leader(d, (4.5, -0.3), (5.0, -1.3), "aim here")
    return d


@drawing("prong-head-peg")
def prong_head_peg() -> Drawing:
    """Peg and hole, to scale."""
    d = Drawing(
        15.6,
        6.4,
        "Peg and hole",
        "Section to scale. A prong of 1.0 mm has a peg 0.8 mm thick and 1.2 mm long turned on its end. The base has a "
        "hole of 0.8 mm with a countersink. Right: fused around from above.",
        scale=40,
        left=-7.8,
        top=-3.6,
    )
    x = -2.6
    d.polygon(
        [
            (x - 2.2, 0),
            (x - 0.6, 0),
            (x - 0.4, 0.2),
            (x - 0.4, 1.25),
            (x + 0.4, 1.25),
            (x + 0.4, 0.2),
            (x + 0.6, 0),
            (x + 2.2, 0),
            (x + 2.2, 1.9),
            (x - 2.2, 1.9),
        ],
        "cut",
    )
    d.polygon(
        [
            (x - 0.5, -3.2),
            (x + 0.5, -3.2),
            (x + 0.5, -1.7),
            (x + 0.4, -1.7),
            (x + 0.4, -0.5),
            (x - 0.4, -0.5),
            (x - 0.4, -1.7),
            (x - 0.5, -1.7),
        ],
        "cut",
    )
    arrow(d, (x + 1.2, -1.6), (x + 1.2, -0.5))
    leader(d, (x - 0.45, -1.1), (x - 1.3, -1.1), "peg 0.8 mm", "end")
    leader(d, (x - 0.5, 0.1), (x - 1.2, -0.4), "countersink", "end")
    x = 4.6
    d.rectangle(x - 2.2, 0, 4.4, 1.9, "cut")
    d.polygon(
        [
            (x - 0.5, -2.7),
            (x + 0.5, -2.7),
            (x + 0.5, 0),
            (x + 0.4, 0.1),
            (x + 0.4, 1.2),
            (x - 0.4, 1.2),
            (x - 0.4, 0.1),
            (x - 0.5, 0),
        ],
        "cut",
    )
    for side in (-1, 1):
        d.polygon(
            [
                (x + side * 0.36, 0.75),
                (x + side * 0.66, 0.4),
                (x + side * 0.95, 0),
                (x + side * 0.55, -0.4),
                (x + side * 0.34, 0),
            ],
            "hot",
        )
    d.beam(x + 0.7, -0.15, 0.4, 1.9, 1.2)
    return d


@drawing("prong-head-hold")
def prong_head_hold() -> Drawing:
    """The wire held at its far end, the height and lean checked against the other prong."""
    d = Drawing(
        15.6,
        7.6,
        "Hold the wire, check the lean",
        "The head from the side without its stone. Tweezers hold the new wire at its upper end, 3 mm above the rail. "
        "Dividers set to the stone's width stand between the two prongs at the height of the seat.",
        scale=40,
        left=-7.8,
        top=-6.3,
    )
    _rails(d)
    _prong(d, -1)
    _prong(d, 1, straight=True)
    jaws(d, 3.23, -4.1, 1.0, 2.1, 73, 0.35)
    d.dimension((-3.0, -3.6), (3.0, -3.6), "stone")
    for side in (-1, 1):
        d.line([(side * 2.75, -3.6), (side * 3.3, -3.6)], "ghost")
    return d
