"""Drawings of a box clasp with its folded tongue, and of a three-knuckle hinge. Sections run along the bracelet."""

from __future__ import annotations

from build_scripts.drawings import drawing
from build_scripts.drawings.sketch import arrow, gas, leader, nozzle, open_air, polar
from calculators.drawing import Drawing

LEAF, LONG, OPEN = 0.4, 9.0, 1.1  # mm: strip, free length of the tongue, opening at its free end


def _strip(title: str, description: str) -> Drawing:
    return Drawing(18.0, 9.0, title, description, scale=20, left=-9.0, top=-5.0)


def _link(d: Drawing, x: float) -> None:
    """The end link of the bracelet that carries the tongue; its right face is at ``x``."""
    d.rectangle(x - 3.2, -1.2, 3.2, 2.8)
    d.circle(x - 3.2, 0.2, 0.9, "ink")


def _tongue(d: Drawing, x: float, y: float, opening: float = OPEN, long: float = LONG) -> None:
    """Lower leaf from ``x`` to the fold at the right, upper leaf back to its free end with the thumb tab."""
    fold = x + long
    d.polygon([(x, y), (fold, y), (fold, y + LEAF), (x, y + LEAF)])
    tip = x + 1.6
    d.polygon(
        [
            (fold, y + LEAF),
            (fold + 0.35, y + LEAF / 2),
            (fold + 0.35, y - 0.1),
            (fold, y - LEAF),
            (tip, y - LEAF - opening),
            (tip, y - opening),
            (fold - 0.2, y),
        ]
    )
    d.polygon(
        [
            (tip, y - opening),
            (tip, y - LEAF - opening),
            (tip - 1.1, y - LEAF - opening - 0.1),
            (tip - 1.1, y - opening - 0.1),
        ]
    )


def _box(d: Drawing, x: float) -> None:
    """The box in section, its mouth at ``x``, going right."""
    d.polygon(
        [
            (x, 1.6),
            (x + 8.0, 1.6),
            (x + 8.0, -1.6),
            (x, -1.6),
            (x, -0.95),
            (x + 0.6, -0.95),
            (x + 0.6, -1.15),
            (x + 7.5, -1.15),
            (x + 7.5, 1.15),
            (x, 1.15),
        ],
        "cut",
    )


@drawing("clasp-before")
def clasp_before() -> Drawing:
    """The tongue torn off at its foot, the link filed clean with a slot."""
    d = _strip(
        "Clasp tongue, before",
        "The end link of a bracelet from the side. The old tongue is gone, its place is filed clean and has a slot. "
        "The new tongue, a strip folded to a long V, lies to the right of it.",
    )
    _link(d, -3.6)
    d.line([(-4.8, 0.9), (-3.6, 0.9)], "ghost")
    d.line([(-4.8, 1.3), (-3.6, 1.3)], "ghost")
    _tongue(d, -2.2, 0.9, long=10.2)
    arrow(d, (0.6, 2.6), (-2.0, 2.6), "ink heavy")
    return d


@drawing("clasp-fused")
def clasp_fused() -> Drawing:
    """The dead end in its slot, fused from below and at both sides."""
    d = _strip(
        "Clasp tongue, fused",
        "The dead end of the lower leaf sits in the slot of the link and is fused there. The fold at the far end is "
        "untouched.",
    )
    _link(d, -3.6)
    _tongue(d, -4.8, 0.9, long=11.4)
    for i in range(6):
        d.circle(-4.7 + 0.3 * i, 1.4, 0.28, "hot")
    d.polygon([(-4.1, 3.9), (-2.9, 3.9), (-3.25, 1.6), (-3.7, 1.6)], "beam")
    nozzle(d, -6.6, 3.0, 1.5, 0.6, 215)
    gas(d, -4.4, 1.8, 2.2, 16, 210)
    return d


@drawing("clasp-finished")
def clasp_finished() -> Drawing:
    """In the box: the free end bears behind the mouth."""
    d = _strip(
        "Clasp tongue, finished",
        "The tongue is in the box. The end of its upper leaf has sprung up behind the lip of the box and holds it.",
    )
    _box(d, -1.6)
    _link(d, -3.6)
    d.polygon([(-4.8, 0.7), (5.0, 0.7), (5.0, 1.1), (-4.8, 1.1)])
    d.polygon([(5.0, 1.1), (5.35, 0.9), (5.35, 0.6), (5.0, 0.3), (-0.9, -1.1), (-0.9, -0.7), (4.6, 0.7)])
    d.polygon([(-0.9, -1.1), (-0.9, -0.7), (-1.6, -0.65), (-2.6, -0.65), (-2.6, -0.92), (-1.6, -0.92)])
    d.circle(-2.3, -1.1, 0.38)
    return d


@drawing("clasp-spring")
def clasp_spring() -> Drawing:
    """Fuse at the dead end, never near the fold."""
    d = Drawing(
        31.0,
        12.0,
        "Heat at the dead end only",
        "A tongue from the side. The fused place is at the dead end, where nothing bends. A soft zone around it "
        "ends after a few millimeters. The fold and the free leaf stay hard.",
        scale=20,
        left=-15.5,
        top=-6.0,
    )
    d.rectangle(-14.0, -1.4, 4.2, 4.2)
    d.rectangle(-11.4, -0.2, 4.4, 1.4, "soft")
    d.polygon([(-11.4, 0.4), (10.0, 0.4), (10.0, 1.2), (-11.4, 1.2)])
    d.polygon([(10.0, 1.2), (10.8, 0.8), (10.8, 0.0), (10.0, -0.4), (-6.0, -3.4), (-6.0, -2.6), (9.4, 0.4)])
    for i in range(5):
        d.circle(-11.2 + 0.5 * i, 1.25, 0.42, "hot")
    d.line([(-9.8, 1.9), (-9.8, 3.0)], "dim thin")
    leader(d, (-10.6, 1.6), (-8.6, 3.8), "fused")
    leader(d, (-8.0, 0.8), (-4.2, 3.8), "soft")
    leader(d, (10.6, 0.6), (9.4, 3.8), "hard: keep away", "end")
    d.dimension((-6.0, -2.6), (-6.0, 0.4), "open")
    return d


@drawing("clasp-fit")
def clasp_fit() -> Drawing:
    """How the end must meet the lip."""
    d = Drawing(
        15.6,
        6.6,
        "Tongue and lip",
        "The mouth of the box in section, enlarged. The end of the upper leaf stands 0.2 mm behind the lip and "
        "reaches 0.4 mm above its lower edge.",
        scale=40,
        left=-7.8,
        top=-3.0,
    )
    d.polygon([(-2.6, -2.0), (6.6, -2.0), (6.6, -1.3), (-1.2, -1.3), (-1.2, -0.4), (-2.6, -0.4)], "cut")
    d.polygon([(-1.0, -0.8), (6.6, 0.6), (6.6, 1.15), (-1.0, -0.25)], "part")
    d.polygon([(-2.6, 1.8), (6.6, 1.8), (6.6, 2.5), (-2.6, 2.5)], "cut")
    d.rectangle(-6.8, 1.2, 13.4, 0.55, "part")
    d.line([(-1.2, -0.35), (-1.2, 0.9)], "ghost")
    d.line([(-1.0, -0.2), (-1.0, 0.9)], "ghost")
    leader(d, (-1.1, 0.6), (-2.6, 0.6), "0.2 mm", "end")
    leader(d, (-1.2, -0.6), (-3.6, -0.6), "lip", "end")
    return d


def _hinge(d: Drawing, x: float, y: float, play: float) -> None:
    """Three knuckles on two leaves, seen from the front; ``play`` is the gap at each side of the middle one."""
    d.rectangle(x - 3.4, y - 3.4, 6.8, 2.6)
    d.rectangle(x - 3.4, y + 0.8, 6.8, 2.6)
    for left, right, half in (
        (-3.0, -1.1 - play / 2, -1),
        (-1.1 + play / 2, 1.1 - play / 2, 1),
        (1.1 + play / 2, 3.0, -1),
    ):
        d.rectangle(x + left, y - 0.8, right - left, 1.6, "part")
        d.line([(x + left, y + half * 0.8), (x + right, y + half * 0.8)], "ink heavy")
    d.rectangle(x - 3.4, y - 0.25, 0.4, 0.5, "part tool")
    d.rectangle(x + 3.0, y - 0.25, 0.4, 0.5, "part tool")


@drawing("hinge-worn")
def hinge_worn() -> Drawing:
    """A hinge with play and one without."""
    d = Drawing(
        21.0,
        8.6,
        "A hinge with play",
        "Two hinges of three knuckles from the front. Left: the middle knuckle has gaps of 0.4 mm on both sides, "
        "the halves slide. Right: built up and filed to fit, 0.05 mm of play.",
        scale=30,
        left=-10.5,
        top=-4.3,
    )
    _hinge(d, -5.2, 0, 0.8)
    _hinge(d, 5.2, 0, 0.1)
    arrow(d, (-9.9, 0), (-9.0, 0), "ink heavy")
    arrow(d, (-0.5, 0), (-1.4, 0), "ink heavy")
    return d


@drawing("hinge-bore")
def hinge_bore() -> Drawing:
    """A steel rod keeps the bore open while the knuckle is fused down."""
    d = Drawing(
        15.6,
        6.4,
        "Keep the bore open",
        "A knuckle on its leaf, looking along the pin, twice. Left: a blackened steel rod stands in the bore while "
        "fillets are fused on both sides of the foot. Right: shots beside the bore without a rod have closed it.",
        scale=40,
        left=-7.8,
        top=-3.4,
    )
    for x in (-3.9, 3.9):
        d.rectangle(x - 2.8, 1.0, 5.6, 1.0, "cut")
        d.circle(x, 0, 1.05, "cut")
    d.circle(-3.9, 0, 0.5, "part tool")
    for side in (-1, 1):
        x = -3.9
        d.polygon(
            [
                (x + side * 0.72, 0.6),
                (x + side * 0.9, 0.5),
                (x + side * 1.7, 1.02),
                (x + side * 1.2, 1.25),
                (x + side * 0.35, 1.1),
                (x + side * 0.3, 0.92),
            ],
            "hot",
        )
    open_air(d, [polar(3.9, 0, 0.5, 15 * i) for i in range(24)])
    d.polygon([(4.62, -0.6), (4.95, -0.3), (4.95, 0.2), (4.4, 0.42), (3.95, 0.3), (3.7, -0.05), (4.05, -0.25)], "hot")
    d.polygon([(-1.2, -2.6), (-0.4, -2.0), (-2.5, 0.85), (-2.85, 0.55)], "beam")
    leader(d, (-3.9, 0), (-5.2, -1.6), "steel rod", "end")
    leader(d, (4.1, 0.2), (5.7, -1.3), "closed")
    return d
