"""Drawings of a split bezel: pulled together, fused from the foot upward, a steel slip between beam and stone."""

from __future__ import annotations

import math

from build_scripts.drawings import drawing
from build_scripts.drawings.setting_parts import cabochon, crack
from build_scripts.drawings.sketch import arrow, gas, leader, nozzle, open_air, polar, tick
from calculators.drawing import Drawing, Point

STONE, WALL, TALL = 8.0, 0.4, 3.0  # mm across, bezel wall, bezel height
OUT = STONE / 2 + WALL


def _strip(title: str, description: str) -> Drawing:
    return Drawing(12.0, 8.0, title, description, scale=30, left=-6.0, top=-4.6)


def _bezel(d: Drawing, stone: bool, lift: float = 0.35) -> None:
    """Bezel on its plate from the side, the rim rubbed over a domed stone."""
    if stone:
        cabochon(d, 0, -1.2, STONE - 0.9, 2.6)
    d.polygon(
        [(-OUT, 1.6), (-OUT, -1.0), (-OUT + lift, -1.4), (OUT - lift, -1.4), (OUT, -1.0), (OUT, 1.6)]
        if stone
        else [(-OUT, 1.6), (-OUT, -1.4), (OUT, -1.4), (OUT, 1.6)]
    )
    d.rectangle(-5.2, 1.6, 10.4, 0.9)


@drawing("bezel-before")
def bezel_before() -> Drawing:
    """A split from the rim down."""
    d = _strip(
        "Bezel split, before",
        "A bezel 3 mm high with a domed stone, from the side. Its wall has split from the rim nearly to the plate, and "
        "the rim gapes.",
    )
    _bezel(d, stone=True)
    open_air(d, [(-0.35, -1.42), (0.3, -1.42), (0.12, -0.5), (0.0, 0.2)])
    crack(d, (0.0, 0.1), (0.1, 1.2), 0.08, 4, "ink heavy")
    return d


@drawing("bezel-fused")
def bezel_fused() -> Drawing:
    """Stone out, seam fused from the foot to the rim."""
    d = _strip(
        "Bezel split, fused",
        "The stone is out and the wall is closed. Spots run from the plate up to the rim, where the last ones stand "
        "proud. Beam and gas come from outside.",
    )
    _bezel(d, stone=False)
    for i in range(12):
        d.circle(0, 1.45 - 0.25 * i, 0.26, "hot")
    d.polygon([(2.2, -4.3), (3.1, -3.8), (0.22, -1.0), (-0.02, -1.25)], "beam")
    nozzle(d, -2.3, -3.1, 1.3, 0.55, 135)
    gas(d, -0.5, -1.5, 2.3, 16, 138)
    return d


@drawing("bezel-finished")
def bezel_finished() -> Drawing:
    """Stone back, rim closed."""
    d = _strip("Bezel split, finished", "The stone is set again. The rim lies on it all around and no seam is seen.")
    _bezel(d, stone=True)
    return d


def _plan(d: Drawing, x: float, y: float, gap: float, stone: bool = True) -> None:
    """The bezel from above with a gap of ``gap`` degrees at the bottom."""
    d.ring_sector(x, y, STONE / 2, OUT, -90 + gap / 2, 270 - gap / 2)
    if stone:
        d.circle(x, y, STONE / 2 - 0.05, "stone")


@drawing("bezel-close")
def bezel_close() -> Drawing:
    """Pull together without closing on the stone."""
    d = Drawing(
        31.0,
        11.6,
        "Pull the ends together",
        "The bezel from above, twice. Left: the split gapes by 0.5 mm. Right: the wall is pushed toward the "
        "split from both sides until the ends bear on each other.",
        scale=20,
        left=-15.5,
        top=-5.6,
    )
    _plan(d, -7.2, 0, 7)
    _plan(d, 7.2, 0, 0.6)
    for side in (-1, 1):
        start, end = polar(7.2, 0, 5.6, 270 + side * 55), polar(7.2, 0, 5.2, 270 + side * 16)
        arrow(d, start, end, "ink heavy")
    leader(d, (-7.2, 4.3), (-6.0, 5.4), "0.5 mm")
    return d


@drawing("bezel-slip")
def bezel_slip() -> Drawing:
    """A slip of steel behind the seam."""
    d = Drawing(
        15.6,
        6.0,
        "A slip of steel behind the seam",
        "The wall of the bezel at the split, seen from above and enlarged. A slip of steel 0.1 mm thick stands "
        "between wall and stone. The beam comes from outside and would hit the slip if it missed.",
        scale=40,
        left=-7.8,
        top=-3.4,
    )
    d.polygon([(-6.2, -1.6), (6.2, -1.6), (6.2, -0.2), (-6.2, -0.2)], "stone")
    d.rectangle(-3.0, -0.16, 6.0, 0.12, "part tool")
    for side in (-1, 1):
        d.polygon([(side * 6.2, 0), (side * 0.02, 0), (side * 0.02, 0.4), (side * 6.2, 0.4)], "cut")
    d.polygon([(-0.22, 0.4), (0.22, 0.4), (0.55, 2.3), (-0.55, 2.3)], "beam")
    leader(d, (2.6, -0.1), (3.6, 1.2), "steel 0.1 mm")
    leader(d, (-4.6, -0.9), (-4.2, -2.3), "stone", "middle")
    leader(d, (-4.6, 0.2), (-4.2, 1.5), "wall 0.4 mm", "middle")
    return d


@drawing("bezel-rim")
def bezel_rim() -> Drawing:
    """Rim that draws back, and rim with a wire over it."""
    d = Drawing(
        15.6,
        6.0,
        "The rim draws back",
        "The upper end of the seam from outside, twice. Left: fused without wire, the rim has melted back into a "
        "notch. Right: a wire stood over the rim gives the metal, and is filed to the dashed line.",
        scale=40,
        left=-7.8,
        top=-3.0,
    )
    x = -3.9
    notch: list[Point] = [
        (x + 0.5 * math.cos(math.pi * i / 12), -1.0 + 0.7 * math.sin(math.pi * i / 12)) for i in range(13)
    ]
    d.polygon([(x + 3.0, -1.0), *notch, (x - 3.0, -1.0), (x - 3.0, 2.0), (x + 3.0, 2.0)])
    for i in range(5):
        d.circle(x, 1.75 - 0.38 * i, 0.3, "hot")
    x = 3.9
    d.rectangle(x - 3.0, -1.0, 6.0, 3.0)
    for i in range(8):
        d.circle(x, 1.75 - 0.38 * i, 0.3, "hot")
    d.polygon([(x - 0.45, -1.0), (x - 0.3, -1.35), (x, -1.5), (x + 0.3, -1.35), (x + 0.45, -1.0)], "hot")
    d.polygon([(x + 0.15, -1.35), (x + 0.35, -1.2), (x + 2.3, -2.4), (x + 2.15, -2.6)], "part")
    d.line([(x - 3.2, -1.0), (x + 3.2, -1.0)], "ghost")
    tick(d, -3.9, 2.5, False)
    tick(d, 3.9, 2.5, True)
    leader(d, (x + 1.6, -2.1), (x + 2.4, -1.6), "wire")
    return d


@drawing("bezel-build")
def bezel_build() -> Drawing:
    """A worn rim built up with wire, in section."""
    d = Drawing(
        15.6,
        6.4,
        "A worn rim in section",
        "Left: the rim is worn to an edge and hardly covers the stone. Right: a wire of 0.4 mm lies along the rim, "
        "fused from outside, and the dashed line shows the rim rubbed over.",
        scale=40,
        left=-7.8,
        top=-3.4,
    )
    for x, built in ((-3.9, False), (3.9, True)):
        d.polygon(
            [(x + 0.42, 1.8), (x + 0.42, -0.6), (x + 1.0, -1.5), (x + 2.2, -2.2), (x + 3.0, -2.4), (x + 3.0, 1.8)],
            "stone",
        )
        d.polygon([(x, 2.4), (x, -0.5), (x + 0.3, -0.9), (x + 0.4, -0.6), (x + 0.4, 2.4)], "cut")
        if built:
            d.polygon(
                [
                    (x - 0.1, -0.5),
                    (x - 0.08, -1.4),
                    (x + 0.1, -1.6),
                    (x + 0.36, -1.45),
                    (x + 0.4, -0.75),
                    (x + 0.3, -0.45),
                    (x + 0.1, -0.35),
                ],
                "hot",
            )
            d.line([(x, -0.7), (x + 0.2, -1.15), (x + 0.75, -1.55)], "ghost")
            d.polygon([(x - 0.16, -1.0), (x + 0.12, -1.3), (x - 0.5, -3.3), (x - 1.3, -3.0)], "beam")
            d.line([(x + 0.46, -0.75), (x + 0.98, -1.57), (x + 2.2, -2.28), (x + 3.0, -2.48)], "ink heavy")
        d.rectangle(x, 1.8, 3.0, 0.6, "cut")
    leader(d, (-3.75, -0.7), (-5.0, -1.2), "worn", "end")
    leader(d, (5.9, -2.25), (5.5, -3.0), "cover", "middle")
    return d
