"""Drawings of joints between unlike metals: hatched one metal, plain the other. Sections in mm."""

from __future__ import annotations

from build_scripts.drawings import drawing
from build_scripts.drawings.setting_parts import crack
from build_scripts.drawings.sketch import arrow, gas, nozzle, polar, tick
from calculators.drawing import Drawing

WALL = 1.6


def _strip(title: str, description: str) -> Drawing:
    return Drawing(9.0, 5.2, title, description, scale=40, left=-4.5, top=-3.2)


def _halves(d: Drawing, x: float = 0.0, reach: float = 4.0, bevel: float = 0.0) -> None:
    """Two unlike ends that meet at ``x``; ``bevel`` opens a V from above, down to a land of 0.5 mm."""
    for side, kind in ((-1, "cut"), (1, "part")):
        d.polygon(
            [
                (x + side * bevel, 0),
                (x, 1.1 if bevel else 0),
                (x, WALL),
                (x + side * reach, WALL),
                (x + side * reach, 0),
            ],
            kind,
        )


@drawing("unlike-before")
def unlike_before() -> Drawing:
    """Two metals, V, touching at the land."""
    d = _strip(
        "Unlike metals, before",
        "Two ends in section that touch at a land of 0.5 mm below a V. The left one is hatched, the right one "
        "plain: two different metals.",
    )
    _halves(d, bevel=0.65)
    return d


@drawing("unlike-fused")
def unlike_fused() -> Drawing:
    """Filled with the softer wire, the beam more on one side."""
    d = _strip(
        "Unlike metals, fused",
        "The V is filled a little proud. The beam points more at the right metal than at the left. Gas comes from "
        "the side.",
    )
    _halves(d, bevel=0.65)
    d.polygon(
        [
            (-0.75, 0),
            (-0.5, -0.14),
            (0, -0.2),
            (0.5, -0.14),
            (0.75, 0),
            (0.2, 1.2),
            (0.16, 1.6),
            (-0.16, 1.6),
            (-0.2, 1.2),
        ],
        "hot",
    )
    d.beam(0.15, -0.16, 0.5, 2.5, 0.5)
    nozzle(d, -2.2, -1.8, 1.2, 0.5, 140)
    gas(d, -0.4, -0.4, 2.2, 16, 142)
    return d


@drawing("unlike-finished")
def unlike_finished() -> Drawing:
    """Flush; the color line stays."""
    d = _strip(
        "Unlike metals, finished", "Flush above and below. The line where the colors meet stays and is straight."
    )
    _halves(d, bevel=0.65)
    d.polygon([(-0.68, 0), (0.68, 0), (0.2, 1.2), (0.16, 1.6), (-0.16, 1.6), (-0.2, 1.2)], "hot")
    return d


@drawing("unlike-aim")
def unlike_aim() -> Drawing:
    """Where the spot goes."""
    d = Drawing(
        15.6,
        5.6,
        "Aim at the one that melts last",
        "Three spots on a seam between two metals, seen from above. Left: spot in the middle, only the easy metal "
        "has melted. Middle: two thirds on the slow metal, both have melted. Right: all of it on the easy metal, "
        "which has blown a crater.",
        scale=40,
        left=-7.8,
        top=-2.6,
    )
    for x in (-5.2, 0.0, 5.2):
        d.rectangle(x - 2.2, -1.4, 2.2, 2.8, "cut")
        d.rectangle(x, -1.4, 2.2, 2.8, "part")
    d.polygon([polar(-5.2, 0, 0.55, -90 - 12 * i) for i in range(16)], "hot")
    d.circle(-5.2, 0, 0.55, "ghost")
    d.circle(0.22, 0, 0.62, "hot")
    d.circle(4.75, 0, 0.62, "hot")
    d.circle(4.75, 0, 0.28, "ink heavy")
    for x, good in ((-5.2, False), (0.0, True), (5.2, False)):
        tick(d, x, 2.1, good)
    d.text(-6.4, -1.7, "easy")
    d.text(-4.0, -1.7, "slow")
    return d


@drawing("unlike-between")
def unlike_between() -> Drawing:
    """A strip of a third metal that gets on with both."""
    d = Drawing(
        15.6,
        4.8,
        "A third metal between",
        "A section through three parts in line. Between the left and the right metal stands a strip 1.0 mm wide of "
        "a third one that gets on with both. There are two seams, each filled.",
        scale=40,
        left=-7.8,
        top=-2.0,
    )
    d.rectangle(-6.8, 0, 6.3, WALL, "cut")
    d.rectangle(0.5, 0, 6.3, WALL, "part")
    d.rectangle(-0.5, 0, 1.0, WALL, "part tool")
    for x in (-0.5, 0.5):
        d.polygon([(x - 0.36, 0), (x, -0.12), (x + 0.36, 0), (x + 0.1, 1.0), (x, 1.1), (x - 0.1, 1.0)], "hot")
        d.polygon([(x - 0.25, WALL), (x, WALL + 0.1), (x + 0.25, WALL), (x, 1.1)], "hot")
    d.dimension((-0.5, -0.4), (0.5, -0.4), "1.0 mm", 0)
    return d


@drawing("unlike-cold")
def unlike_cold() -> Drawing:
    """Rivet, sleeve, inlay: joints without fusing."""
    d = Drawing(
        21.0,
        7.4,
        "Three cold joints",
        "Sections. Left: two sheets held by a rivet. Middle: a sleeve rubbed over a ring of another metal. Right: "
        "an inlay in an undercut groove.",
        scale=30,
        left=-10.5,
        top=-3.4,
    )
    x = -7.0
    d.rectangle(x - 2.8, -0.9, 5.6, 0.8, "cut")
    d.rectangle(x - 2.8, -0.05, 5.6, 0.8, "part")
    d.polygon(
        [
            (x - 0.9, -1.3),
            (x + 0.9, -1.3),
            (x + 0.5, -0.85),
            (x + 0.5, 0.75),
            (x + 0.9, 1.2),
            (x - 0.9, 1.2),
            (x - 0.5, 0.75),
            (x - 0.5, -0.85),
        ],
        "part tool",
    )
    x = 0.0
    d.rectangle(x - 2.8, -0.4, 5.6, 1.2, "cut")
    d.polygon(
        [
            (x - 2.2, -1.2),
            (x + 2.2, -1.2),
            (x + 3.1, -0.6),
            (x + 3.1, 1.0),
            (x + 2.85, 1.0),
            (x + 2.85, -0.4),
            (x - 2.85, -0.4),
            (x - 2.85, 1.0),
            (x - 3.1, 1.0),
            (x - 3.1, -0.6),
        ],
        "part",
    )
    x = 7.0
    d.polygon(
        [
            (x - 2.8, -1.0),
            (x - 0.9, -1.0),
            (x - 1.3, 0.2),
            (x + 1.3, 0.2),
            (x + 0.9, -1.0),
            (x + 2.8, -1.0),
            (x + 2.8, 1.2),
            (x - 2.8, 1.2),
        ],
        "cut",
    )
    d.polygon([(x - 0.9, -1.0), (x + 0.9, -1.0), (x + 1.3, 0.2), (x - 1.3, 0.2)], "part")
    for place, words in ((-7.0, "rivet"), (0.0, "sleeve"), (7.0, "inlay")):
        d.text(place, 2.6, words)
    return d


@drawing("unlike-test")
def unlike_test() -> Drawing:
    """Bend test: bends, or breaks like glass."""
    d = Drawing(
        15.6,
        7.4,
        "The bend test",
        "Two scrap strips bent over a 6 mm rod, the seam at the top. Left: the strip bends through and through. "
        "Right: it has broken in the seam.",
        scale=40,
        left=-7.8,
        top=-4.6,
    )
    for x, good in ((-3.9, True), (3.9, False)):
        d.circle(x, 0, 1.5, "part tool")
        d.ring_sector(x, 0, 1.5, 2.2, 20, 86 if good else 84, "part")
        d.ring_sector(x, 0, 1.5, 2.2, 94 if good else 98, 160, "cut")
        if good:
            d.ring_sector(x, 0, 1.5, 2.2, 85, 95, "hot")
        else:
            d.ring_sector(x, 0, 1.5, 2.2, 84, 88, "hot")
            d.ring_sector(x, 0, 1.5, 2.2, 94, 98, "hot")
            crack(d, polar(x, 0, 2.5, 91), polar(x, 0, 1.5, 91), 0.12, 4, "ink heavy")
        for side in (-1, 1):
            arrow(d, (x + side * 2.6, -1.8), (x + side * 2.6, -0.6))
        tick(d, x, 2.1, good)
    return d
