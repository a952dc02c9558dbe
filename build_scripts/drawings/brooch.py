"""Drawings of a brooch's back: joint, pin and catch, from behind, from the side and in section."""

from __future__ import annotations

import math

from build_scripts.drawings import drawing
from build_scripts.drawings.bench import cap
from build_scripts.drawings.setting_parts import crack
from build_scripts.drawings.sketch import gas, leader, nozzle, tick
from calculators.drawing import Drawing, Point

PLATE, PIN = 1.0, 0.9  # mm: back of the brooch, pin wire
HALF, RISE = 18.0, 12.0  # mm: half width and half height of the brooch


def _oval(x: float, y: float, across: float, up: float) -> list[Point]:
    return [(x + across * math.cos(math.pi * i / 30), y - up * math.sin(math.pi * i / 30)) for i in range(60)]


def _back(title: str, description: str) -> Drawing:
    d = Drawing(40.0, 27.0, title, description, scale=9, left=-20.0, top=-13.5)
    d.polygon(_oval(0, 0, HALF, RISE))
    return d


def _joint(d: Drawing, x: float, y: float) -> None:
    d.rectangle(x - 1.6, y - 1.8, 3.2, 3.6)
    d.rectangle(x - 1.6, y - 0.6, 3.2, 1.2, "part tool")
    d.circle(x, y, 0.35, "ink")


def _catch(d: Drawing, x: float, y: float) -> None:
    d.circle(x, y, 1.9)
    d.circle(x, y, 0.8, "ink")


def _pin(d: Drawing, y: float, start: float, end: float) -> None:
    """A pin from ``start`` on the right to its rounded point at ``end`` on the left."""
    half = PIN / 2
    upper = [(start, y - half), (end + 2.5, y - half), (end + 0.5, y - half / 2)]
    lower = [(end + 0.5, y + half / 2), (end + 2.5, y + half), (start, y + half)]
    d.polygon([*upper, (end, y), *lower], "part tool")


@drawing("brooch-before")
def brooch_before() -> Drawing:
    """The catch torn off, the place filed clean, a hole drilled for its peg."""
    d = _back(
        "Brooch, before",
        "The back of an oval brooch. The joint and the pin are there, above the middle. The catch is gone; its "
        "place is filed clean, with a hole.",
    )
    _pin(d, -3.5, 12.0, -15.0)
    _joint(d, 12.0, -3.5)
    d.circle(-12.5, -3.5, 1.9, "ghost")
    d.circle(-12.5, -3.5, 0.5, "ink")
    return d


@drawing("brooch-fused")
def brooch_fused() -> Drawing:
    """The catch fused around its foot."""
    d = _back(
        "Brooch, fused",
        "The new catch stands on its place, opening downward. Spots go around its foot on opposite sides. The pin is "
        "swung out of the way.",
    )
    _joint(d, 12.0, -3.5)
    d.polygon([(11.7, -4.6), (12.3, -4.6), (13.6, -13.2), (13.2, -13.4)], "part tool")
    _catch(d, -12.5, -3.5)
    for i in range(8):
        angle = math.pi * i / 4
        d.circle(-12.5 + 2.0 * math.cos(angle), -3.5 - 2.0 * math.sin(angle), 0.55, "hot")
    return d


@drawing("brooch-finished")
def brooch_finished() -> Drawing:
    """The pin in its catch, a little proud of it."""
    d = _back("Brooch, finished", "The pin runs from the joint through the catch and ends 1 mm beyond it.")
    _pin(d, -3.5, 12.0, -15.4)
    _joint(d, 12.0, -3.5)
    _catch(d, -12.5, -3.5)
    _pin(d, -3.5, -9.8, -15.4)
    return d


@drawing("brooch-place")
def brooch_place() -> Drawing:
    """Above the middle, joint to the right from behind."""
    d = Drawing(
        63.0,
        30.0,
        "Where joint and catch stand",
        "The back of a brooch with a dashed line through its middle. Pin, joint and catch lie on a line one third "
        "down from the top. The joint is at the right seen from behind, the catch at the left with its opening "
        "downward.",
        scale=10,
        left=-31.5,
        top=-14.5,
    )
    d.polygon(_oval(0, 0, HALF, RISE))
    d.line([(-20, 0), (20, 0)], "ghost")
    _pin(d, -4.0, 12.0, -15.4)
    _joint(d, 12.0, -4.0)
    _catch(d, -12.5, -4.0)
    d.line([(-19, -12), (-21.6, -12)], "dim thin")
    d.dimension((-20.8, -4.0), (-20.8, -12.0), "")
    d.line([(-15.6, -4.0), (-21.6, -4.0)], "dim thin")
    d.text(-21.4, -7.4, "one third", "end")
    leader(d, (12.0, -5.8), (19.5, -9.0), "joint")
    leader(d, (-12.5, -1.2), (-16.6, 12.2), "opening down", "middle")
    d.text(20.6, 0.6, "middle", "start")
    return d


@drawing("brooch-stance")
def brooch_stance() -> Drawing:
    """The pin at rest stands above the catch."""
    d = Drawing(
        42.0,
        16.0,
        "The pin at rest",
        "The back of the brooch from its edge, plate above. The heel of the pin bears on the plate. At rest the pin "
        "stands off by 10 to 15 degrees; the dashed line is the pin in its catch.",
        scale=15,
        left=-21.0,
        top=-5.0,
    )
    d.rectangle(-18.0, -2.0, 36.0, 1.2, "cut")
    d.rectangle(11.0, -0.8, 3.2, 3.6)
    angle = math.radians(12)
    tip = (12.6 - 27.0 * math.cos(angle), 1.6 + 27.0 * math.sin(angle))
    d.polygon([(12.6, 1.1), (12.6 + 1.6, -0.6), (13.2, 2.0), (12.6, 2.05), tip, (tip[0], tip[1] - 0.1)], "part tool")
    d.circle(12.6, 1.6, 0.4, "ink")
    d.line([(12.0, 1.6), (-15.0, 1.6)], "ghost")
    d.polygon(
        [
            (-13.4, -0.8),
            (-11.2, -0.8),
            (-11.2, 0.2),
            (-10.8, 1.6),
            (-11.2, 2.6),
            (-13.0, 2.9),
            (-13.6, 2.2),
            (-12.4, 2.0),
            (-12.0, 1.4),
            (-12.8, 0.6),
        ]
    )
    leader(d, (14.2, -0.4), (15.6, 4.6), "heel")
    d.text(-5.5, 4.4, "10° to 15°")
    leader(d, (-13.2, 2.6), (-16.2, 5.6), "catch", "middle")
    return d


def _plate(d: Drawing, x: float, hole: float = 0.0, deep: float = PLATE) -> None:
    if hole:
        d.polygon(
            [
                (x - 3.0, 0),
                (x - hole / 2, 0),
                (x - hole / 2, deep),
                (x + hole / 2, deep),
                (x + hole / 2, 0),
                (x + 3.0, 0),
                (x + 3.0, PLATE + 0.4),
                (x - 3.0, PLATE + 0.4),
            ],
            "cut",
        )
    else:
        d.rectangle(x - 3.0, 0, 6.0, PLATE + 0.4, "cut")


@drawing("brooch-foot")
def brooch_foot() -> Drawing:
    """Foot plate, peg in a blind hole, bare wire."""
    d = Drawing(
        21.0,
        8.2,
        "Three ways to stand a catch",
        "Sections. Left: a wide foot fused around its rim. Middle: a peg in a blind hole 0.8 mm deep, fused around. "
        "Right: a bare wire on the face, cracked at its root.",
        scale=30,
        left=-10.5,
        top=-4.8,
    )
    for x in (-7.0, 0.0, 7.0):
        _plate(d, x, 0.9 if x == 0.0 else 0.0, 0.8)
    d.rectangle(-8.6, -0.5, 3.2, 0.5, "cut")
    d.rectangle(-7.4, -3.4, 0.8, 2.9, "cut")
    d.polygon([(-0.45, -3.4), (0.45, -3.4), (0.45, 0.8), (-0.45, 0.8)], "cut")
    d.rectangle(6.55, -3.4, 0.9, 3.4, "cut")
    for side in (-1, 1):
        d.polygon(
            [(-7 + side * 1.5, -0.45), (-7 + side * 1.75, -0.4), (-7 + side * 2.1, 0.05), (-7 + side * 1.6, 0.3)], "hot"
        )
        d.polygon([(side * 0.4, -0.55), (side * 0.95, 0.05), (side * 0.6, 0.4), (side * 0.36, 0.5)], "hot")
        d.polygon([(7 + side * 0.4, -0.4), (7 + side * 0.8, 0.02), (7 + side * 0.35, 0.2)], "hot")
    crack(d, (6.4, -0.1), (7.5, -0.2), 0.08, 5, "ink heavy")
    for x, good in ((-5.2, True), (1.7, True), (8.7, False)):
        tick(d, x, -2.8, good)
    return d


@drawing("brooch-pin")
def brooch_pin() -> Drawing:
    """The point, bullet and needle."""
    d = Drawing(
        15.6,
        5.2,
        "The point",
        "Two pin ends 0.9 mm thick. Left, rounded like a bullet and polished: it parts the threads. Right, a needle "
        "point: it cuts them and pricks.",
        scale=40,
        left=-7.8,
        top=-2.6,
    )
    bullet = [(-4.0 + y, x) for x, y in cap(0, 0, PIN, 2.2, -1)]
    d.polygon([(-7.4, -0.45), *bullet, (-7.4, 0.45)], "part tool")
    d.polygon([(1.2, -0.45), (3.8, -0.45), (7.2, 0), (3.8, 0.45), (1.2, 0.45)], "part tool")
    tick(d, -5.2, 1.5, True)
    tick(d, 3.8, 1.5, False)
    return d


@drawing("brooch-hold")
def brooch_hold() -> Drawing:
    """The pin swung away, the front on leather, gas from the side."""
    d = Drawing(
        21.0,
        9.0,
        "The pin out of the way",
        "Section of a brooch lying face down on leather. The catch stands on its back. Beam and gas come into its "
        "corner from the left. A copper block under the place takes the heat from the front.",
        scale=30,
        left=-10.5,
        top=-5.4,
    )
    d.rectangle(-9.5, 1.8, 19.0, 1.0, "part tool")
    d.rectangle(-8.5, 0.2, 17.0, 1.0, "cut")
    d.rectangle(-2.6, 1.2, 5.2, 0.6, "part")
    d.rectangle(-1.6, -0.4, 3.2, 0.6, "cut")
    d.polygon(
        [
            (-0.9, -0.4),
            (-0.9, -2.2),
            (0.0, -2.9),
            (0.9, -2.4),
            (0.9, -1.5),
            (0.5, -1.5),
            (0.4, -2.1),
            (0.0, -2.4),
            (-0.4, -2.0),
            (-0.4, -0.4),
        ],
        "part",
    )
    d.polygon([(-4.6, -4.2), (-5.3, -3.4), (-1.75, 0.25), (-1.5, -0.05)], "beam")
    nozzle(d, 4.6, -2.2, 1.6, 0.6, 35)
    gas(d, 1.9, -0.3, 3.0, 14, 34)
    leader(d, (1.6, 1.5), (4.4, 3.3), "copper")
    leader(d, (-8.0, 2.4), (-6.6, 3.3), "leather")
    return d
