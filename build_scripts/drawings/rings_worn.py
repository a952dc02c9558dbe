"""Drawings of sizing without a cut, and of the half shank."""

from __future__ import annotations

import math

from build_scripts.drawings import drawing
from build_scripts.drawings.sketch import Section, arrow, leader, polar
from calculators.drawing import Drawing

WALL = 1.8
US_10 = 9.881  # inside radius, mm
TAPER = 0.06963  # mm of diameter a mm of a ring stick, ISO 8653
WORN, SOUND = 0.8, 1.6  # thickness of a worn shank at its thinnest and where it is sound, mm
INNER = 8.66
HALF_CUT = 68.0  # degrees from the bottom to each seam of a half shank


MARK, NEXT_MARK = -2.0, -2.0 + 0.2032 / TAPER  # US 10 and 10¼ along the mandrel drawn, mm


def _mandrel(title: str, description: str, edge: float, words: str) -> Drawing:
    """A mandrel lying on its side, thin end left, with a 4 mm band whose thick-side edge stands at ``edge``."""
    d = Drawing(36.0, 31.0, title, description, scale=10, left=-18.0, top=-16.5)
    thin, thick = US_10 - TAPER / 2 * 14.5, US_10 + TAPER / 2 * 18.5
    d.polygon([(-16.5, -thin), (16.5, -thick), (16.5, thick), (-16.5, thin)], "part tool")
    for mark in (MARK, NEXT_MARK):
        d.line([(mark, -US_10), (mark, US_10)], "ink")
    radius = US_10 + TAPER / 2 * (edge - 2 - MARK) + WALL
    d.rectangle(edge - 4, -radius, 4, 2 * radius)
    d.line([(edge, radius + 0.3), (edge, radius + 1.1)], "ink heavy")
    d.text(edge + 0.8, radius + 2.2, words, "start")
    return d


@drawing("stretch-before")
def stretch_before() -> Drawing:
    """The band at its size mark."""
    return _mandrel("Stretch, before", "The edge of a plain band stands at the mark 10 of a mandrel.", MARK, "10")


@drawing("stretch-work")
def stretch_work() -> Drawing:
    """Mallet blows around the band, driving it toward the thick end."""
    d = _mandrel(
        "Stretch, at work",
        "A mallet strikes the band while it is turned. Each turn moves it a little toward the thick end.",
        MARK + 1.4,
        "",
    )
    d.rectangle(MARK - 2.6, -16.0, 4.2, 3.6, "part tool")
    d.rectangle(MARK + 1.6, -14.8, 14.0, 1.2, "part tool")
    arrow(d, (2.2, 0), (8.0, 0), "ink heavy")
    return d


@drawing("stretch-after")
def stretch_after() -> Drawing:
    """A quarter size further along, a little thinner."""
    return _mandrel(
        "Stretch, after", "The band has moved 2.9 mm toward the thick end: a quarter size larger.", NEXT_MARK, "10¼"
    )


@drawing("stretch-tears")
def stretch_tears() -> Drawing:
    """Where a stretched ring gives way: old seam and stone holes."""
    d = Drawing(
        42.0,
        23.6,
        "Where a stretched ring gives way",
        "A ring with three stones set into the band on top and an old seam at the bottom. The thin metal beside the "
        "stones and the old seam stretch first and crack.",
        scale=15,
        left=-21.0,
        top=-12.3,
    )
    outer = INNER + 1.8
    d.ring_sector(0, 0, INNER, outer, 0, 360)
    for angle in (72, 90, 108):
        axis = math.radians(angle)
        across = (math.sin(axis), math.cos(axis))
        top = polar(0, 0, outer + 0.25, angle)
        tip = polar(0, 0, outer - 1.25, angle)
        shoulder = polar(0, 0, outer - 0.2, angle)
        d.polygon(
            [
                (top[0] - 0.55 * across[0], top[1] - 0.55 * across[1]),
                (top[0] + 0.55 * across[0], top[1] + 0.55 * across[1]),
                (shoulder[0] + 0.95 * across[0], shoulder[1] + 0.95 * across[1]),
                tip,
                (shoulder[0] - 0.95 * across[0], shoulder[1] - 0.95 * across[1]),
            ],
            "stone",
        )
    for angle in (81, 99, 63, 117):
        d.line([polar(0, 0, INNER, angle), polar(0, 0, INNER + 0.7, angle + 1.6)], "ink")
    d.ring_sector(0, 0, INNER, outer, 267.5, 272.5, "soft")
    d.line([polar(0, 0, INNER, 269), polar(0, 0, INNER + 0.9, 271), polar(0, 0, outer, 269.5)], "ink heavy")
    leader(d, polar(0, 0, INNER + 0.3, 62), (13.0, -6.0), "cracks")
    leader(d, polar(0, 0, outer, 270), (6.5, 10.8), "old seam tears")
    return d


@drawing("compress-die")
def compress_die() -> Drawing:
    """A band pressed into a smooth conical hole."""
    d = Drawing(
        42.0,
        22.0,
        "Compress in a die",
        "A plain band, cut through the middle, stands in a block with a smooth conical hole. A flat plate presses it "
        "down; the hole closes it evenly all around.",
        scale=15,
        left=-21.0,
        top=-6.5,
    )
    slope = math.tan(math.radians(4))
    outer = US_10 + WALL
    for side in (-1, 1):
        top, bottom = side * (outer + 2 * slope), side * (outer - 12 * slope)
        d.polygon([(top, 0), (side * 18, 0), (side * 18, 14), (bottom, 14)], "part tool")
    d.rectangle(-US_10, -2, 2 * US_10, 4, "ink")
    for side in (-1, 1):
        d.polygon([(side * US_10, -2), (side * outer, -2), (side * outer, 2), (side * US_10, 2)], "cut")
    d.rectangle(-outer, -4, 2 * outer, 2, "part tool")
    for x in (-8, 0, 8):
        arrow(d, (x, -6.2), (x, -4.3), "ink heavy")
    d.text(15, 8, "die")
    return d


def _worn(angle: float) -> float:
    """Outside radius of the worn ring at an angle from the bottom, degrees."""
    share = min(1.0, abs(angle) / 60)
    return INNER + WORN + (SOUND - WORN) * (1 - math.cos(math.pi * share)) / 2


def _head(d: Drawing) -> None:
    """The head with its stone, on top of the ring."""
    foot = -(INNER + SOUND)
    d.polygon([(-1.6, foot + 0.3), (1.6, foot + 0.3), (2.4, foot - 1.4), (-2.4, foot - 1.4)])
    d.polygon([(-2.1, foot - 1.7), (-1.3, foot - 2.4), (1.3, foot - 2.4), (2.1, foot - 1.7), (0, foot - 0.2)], "stone")


def _top(d: Drawing) -> None:
    """The sound upper part of the ring, cut at both sides."""
    d.ring_sector(0, 0, INNER, INNER + SOUND, HALF_CUT - 90, 270 - HALF_CUT)
    _head(d)


def _worn_ring(d: Drawing) -> None:
    """The whole ring, worn outside at the bottom."""
    angles = [-180 + 3 * i for i in range(120)]
    over = [polar(0, 0, _worn(a), 270 + a) for a in angles]
    under = [polar(0, 0, INNER, 270 + a) for a in reversed(angles)]
    d.path([("M", [over[0]]), ("L", over[1:]), ("Z", []), ("M", [under[0]]), ("L", under[1:]), ("Z", [])])
    _head(d)


def _shank(title: str, description: str, width: float = 24.0) -> Drawing:
    """A picture of a set ring, the stone on top, the worn part at the bottom."""
    return Drawing(width, 26.0, title, description, scale=15, left=-width / 2, top=-13.8)


@drawing("half-shank-before")
def half_shank_before() -> Drawing:
    """Worn thin at the bottom; the old outline as a ghost."""
    d = _shank("Half shank, before", "A ring worn to 0.8 mm at the bottom. The dashed line is its old outside.")
    _worn_ring(d)
    d.line([polar(0, 0, INNER + SOUND, 270 - 58 + 116 * i / 40) for i in range(41)], "ghost")
    return d


@drawing("half-shank-fused")
def half_shank_fused() -> Drawing:
    """The new lower half, thicker than wanted, two seams."""
    d = _shank("Half shank, fused", "A new lower half, a little too thick, is fused on with a seam at each side.")
    _top(d)
    d.ring_sector(0, 0, INNER, INNER + SOUND + 0.2, 270 - HALF_CUT, 270 + HALF_CUT)
    for way in (-1, 1):
        middle = 270 + way * HALF_CUT
        d.ring_sector(0, 0, INNER - 0.2, INNER + SOUND + 0.4, middle - 2, middle + 2, "hot")
    return d


@drawing("half-shank-finished")
def half_shank_finished() -> Drawing:
    """Filed to one line with the old shoulders."""
    d = _shank("Half shank, finished", "The new half runs into the old shoulders without a step.")
    d.ring_sector(0, 0, INNER, INNER + SOUND, 0, 360)
    _head(d)
    return d


@drawing("half-shank-measure")
def half_shank_measure() -> Drawing:
    """Where to cut: the shank is still full here, the stone is far."""
    d = _shank(
        "Where to cut the old shank",
        "Cut lines at both sides where the shank is still 1.6 mm thick. Below, it thins to 0.8 mm.",
        42.0,
    )
    _worn_ring(d)
    for way in (-1, 1):
        angle = 270 + way * HALF_CUT
        d.line([polar(0, 0, INNER - 1, angle), polar(0, 0, INNER + SOUND + 1, angle)], "ink heavy")
    leader(d, polar(0, 0, INNER + SOUND + 1, 270 + HALF_CUT), (13.0, 1.0), "1.6 mm: cut")
    leader(d, polar(0, 0, INNER + WORN / 2, 272), (8.5, 10.6), "0.8 mm")
    return d


@drawing("half-shank-joint")
def half_shank_joint() -> Drawing:
    """One shoulder enlarged: flush inside, proud outside, V on both sides."""
    d = Drawing(
        14.0,
        5.6,
        "Seam at the shoulder",
        "Old shoulder left, new stock right. They are level on the inside. Outside, the stock stands 0.2 mm higher and "
        "is filed down to the dashed line later. A V is filed outside and inside.",
        scale=45,
        left=-7.0,
        top=-3.2,
    )
    band = Section(0.0, 0.6, SOUND, INNER)
    band.area(d, [(-0.35, 0), (0, 0.55), (0, 1.05), (-0.35, SOUND), (-6.0, SOUND), (-6.0, 0)], "cut")
    stock = SOUND + 0.2
    band.area(d, [(0.35, 0), (0, 0.55), (0, 1.05), (0.4, stock), (6.0, stock), (6.0, 0)], "part")
    band.line(d, [(0.4, SOUND), (6.0, SOUND)], "ghost")
    d.text(*band.at(-3.0, -1.0), "old")
    d.text(*band.at(3.0, -1.0), "new")
    leader(d, band.at(4.2, stock), (5.2, -1.6), "0.2 proud", "middle")
    return d


@drawing("half-shank-fit")
def half_shank_fit() -> Drawing:
    """The new half held in the old top by its own spring."""
    d = _shank(
        "Fit the new half",
        "The new half is bent a little wider than the opening. Pressed together, it bears on both shoulders.",
        42.0,
    )
    _top(d)
    angles = [270 - HALF_CUT + 2 * HALF_CUT * i / 40 for i in range(41)]
    wide = [(1.05 * px, py + 1.6) for px, py in (polar(0, 0, INNER + SOUND + 0.2, a) for a in angles)]
    thin = [(1.05 * px, py + 1.6) for px, py in (polar(0, 0, INNER, a) for a in reversed(angles))]
    d.polygon(wide + thin)
    for way in (-1, 1):
        arrow(d, (way * 14.5, 6.6), (way * 12.2, 6.6), "ink heavy")
    arrow(d, (0, 9.2), (0, 6.8), "ink heavy")
    return d
