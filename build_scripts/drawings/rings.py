"""Drawings of sizing: ring up with a piece, ring down. Whole rings in the strips, the seam enlarged in the steps.

The ring up is US 6 to US 8, the ring down US 7 to US 6½, both 3.0 × 1.5 mm; lengths are those of ``ring-resize``.
"""

from __future__ import annotations

import math

from build_scripts.drawings import drawing
from build_scripts.drawings.sketch import Section, arrow, leader, open_air, polar, turn
from calculators.drawing import Drawing, Point

WALL = 1.5
US_6, US_6_HALF, US_7, US_8 = 8.255, 8.458, 8.661, 9.068  # inside radius, mm
ADDED = math.pi * 2 * (US_8 - US_6)  # on the neutral line, mm
TAKEN = math.pi * 2 * (US_7 - US_6_HALF)
SAW = 0.25


def _whole(title: str, description: str) -> Drawing:
    """A picture of a whole ring, 24 mm square, the seam on top."""
    return Drawing(24.0, 25.0, title, description, scale=15, left=-12.0, top=-13.0)


def _seam(d: Drawing, inner: float, degrees: float, wide: float = 0.7, proud: float = 0.2) -> None:
    """A fused seam across the wall, as it looks from the side of the ring."""
    turned = math.degrees(wide / 2 / (inner + WALL))
    d.ring_sector(0, 0, inner - proud, inner + WALL + proud, degrees - turned, degrees + turned, "hot")


def _opening(inner: float, length: float) -> float:
    """Half the angle of an opening of ``length`` on the neutral line, degrees."""
    return math.degrees(length / 2 / (inner + WALL / 2))


@drawing("ring-up-before")
def ring_up_before() -> Drawing:
    """Opened to the new size, the piece above the gap."""
    d = _whole(
        "Ring up before fusing",
        "A ring opened from US 6 to US 8 with a gap on top. Above it hangs the new piece, its ends cut like spokes.",
    )
    half = _opening(US_8, ADDED)
    d.ring_sector(0, 0.8, US_8, US_8 + WALL, 90 + half, 450 - half)
    d.ring_sector(0, -1.4, US_8, US_8 + WALL, 90 - half + 1, 90 + half - 1)
    return d


@drawing("ring-up-fused")
def ring_up_fused() -> Drawing:
    """Two seams, fused and proud."""
    d = _whole("Ring up fused", "The piece sits in the ring. Two seams are fused all around and stand proud.")
    half = _opening(US_8, ADDED)
    d.ring_sector(0, 0.8, US_8, US_8 + WALL, 0, 360)
    d.ring_sector(0, 0.8, US_8 - 0.1, US_8 + WALL + 0.1, 90 - half, 90 + half)
    for way in (-1, 1):
        turned = math.degrees(0.35 / (US_8 + WALL))
        middle = 90 + way * half
        d.ring_sector(0, 0.8, US_8 - 0.25, US_8 + WALL + 0.25, middle - turned, middle + turned, "hot")
    return d


@drawing("ring-up-finished")
def ring_up_finished() -> Drawing:
    """Flush and round, with its new inside diameter."""
    d = _whole("Ring up finished", "The ring is round and flush, 18.1 mm across the inside.")
    d.ring_sector(0, 0.8, US_8, US_8 + WALL, 0, 360)
    d.dimension((-US_8, 0.8), (US_8, 0.8), "18.1 mm")
    return d


@drawing("ring-down-before")
def ring_down_before() -> Drawing:
    """The segment to come out, between two scribed lines."""
    d = _whole("Ring down before fusing", "A US 7 ring. A small segment on top, between two lines, is to be sawn out.")
    half = _opening(US_7, TAKEN)
    d.ring_sector(0, 0, US_7, US_7 + WALL, 90 + half, 450 - half)
    d.ring_sector(0, -1.6, US_7, US_7 + WALL, 90 - half, 90 + half, "ghost")
    return d


@drawing("ring-down-fused")
def ring_down_fused() -> Drawing:
    """Closed and fused, one seam."""
    d = _whole("Ring down fused", "The ring is closed. One seam on top is fused all around and stands proud.")
    d.ring_sector(0, 0, US_6_HALF, US_6_HALF + WALL, 0, 360)
    _seam(d, US_6_HALF, 90)
    return d


@drawing("ring-down-finished")
def ring_down_finished() -> Drawing:
    """Flush and round, with its new inside diameter."""
    d = _whole("Ring down finished", "The ring is round and flush, 16.9 mm across the inside.")
    d.ring_sector(0, 0, US_6_HALF, US_6_HALF + WALL, 0, 360)
    d.dimension((-US_6_HALF, 0), (US_6_HALF, 0), "16.9 mm")
    return d


@drawing("ring-cut-place")
def ring_cut_place() -> Drawing:
    """Where to cut a set ring: at the old seam, away from stones and marks."""
    d = Drawing(
        42.0,
        25.0,
        "Where to cut",
        "A ring with a stone on top. The cut goes at the bottom, through the old seam, away from the stone; the mark "
        "inside the shank is left whole.",
        scale=15,
        left=-21.0,
        top=-13.5,
    )
    outer = US_7 + WALL
    d.ring_sector(0, 0, US_7, outer, 0, 360)
    foot = -outer
    d.polygon([(-1.6, foot + 0.3), (1.6, foot + 0.3), (2.4, foot - 1.6), (-2.4, foot - 1.6)])
    d.polygon([(-2.1, foot - 1.9), (-1.3, foot - 2.7), (1.3, foot - 2.7), (2.1, foot - 1.9), (0, foot - 0.2)], "stone")
    d.ring_sector(0, 0, US_7, outer, 268.5, 271.5, "soft")
    d.line([polar(0, 0, US_7 - 0.8, 270), polar(0, 0, outer + 0.9, 270)], "ink heavy")
    leader(d, polar(0, 0, outer + 0.9, 270), (6.5, 10.9), "cut out the old seam")
    for i in range(3):
        middle = polar(0, 0, US_7 + 0.02, 200 + i * 5)
        d.circle(*middle, 0.22, "ink")
    leader(d, polar(0, 0, US_7 - 0.2, 205), (-12.5, 6.0), "mark", "end")
    return d


@drawing("ring-up-piece")
def ring_up_piece() -> Drawing:
    """The fitted piece: ends like spokes, inside shorter than outside."""
    d = Drawing(
        14.0,
        7.4,
        "The piece and its two lengths",
        "The opening enlarged. The piece has ends cut like spokes of a wheel: 4.7 mm along the inside, 5.5 mm along "
        "the outside. Its ends touch the ring along the whole face.",
        scale=45,
        left=-7.0,
        top=-4.1,
    )
    band = Section(0.0, 1.0, WALL, US_8)
    half = ADDED / 2
    for side in (-1.0, 1.0):
        near, far = side * (half + 0.03), side * 6.6
        band.area(d, [(near, 0), (near, WALL), (far, WALL), (far, 0)], "cut")
    band.area(d, [(-half, 0), (-half, WALL), (half, WALL), (half, 0)], "part")
    for side in (-1.0, 1.0):
        band.line(d, [(side * half, -1.5), (side * half, 0)], "ghost")
    d.dimension(band.at(-half, WALL), band.at(half, WALL), "5.5 mm", 48)
    d.dimension(band.at(-half, 0), band.at(half, 0), "4.7 mm", -22)
    return d


@drawing("ring-up-stock")
def ring_up_stock() -> Drawing:
    """End on: the stock is a little wider and thicker than the shank."""
    d = Drawing(
        8.0,
        3.7,
        "Sizing stock against the shank",
        "End-on view: the stock is 3.2 mm wide and 1.7 mm thick. Behind it, dashed, the shank, 3.0 by 1.5 mm. The "
        "piece overlaps by 0.1 mm on every side.",
        scale=80,
    )
    d.rectangle(2.4, 1.0, 3.2, 1.7, "cut")
    d.rectangle(2.5, 1.1, 3.0, 1.5, "ghost")
    d.dimension((2.4, 1.0), (5.6, 1.0), "3.2 mm", 18)
    d.dimension((5.6, 1.0), (5.6, 2.7), "1.7", 18)
    leader(d, (2.5, 2.4), (1.5, 3.3), "shank 3.0 × 1.5", "middle")
    return d


@drawing("ring-up-tacks")
def ring_up_tacks() -> Drawing:
    """Order of the tacks at two seams."""
    d = Drawing(
        14.0,
        6.0,
        "Tacks at two seams",
        "First seam: tack 1 outside, tack 2 inside. Second seam: tack 3 outside, tack 4 inside. Then check the size.",
        scale=45,
        left=-7.0,
        top=-3.0,
    )
    band = Section(0.0, 1.0, WALL, US_8)
    half = ADDED / 2
    for side in (-1.0, 1.0):
        near, far = side * half, side * 6.6
        band.area(d, [(near, 0), (near, WALL), (far, WALL), (far, 0)], "cut")
    band.area(d, [(-half, -0.1), (-half, WALL + 0.1), (half, WALL + 0.1), (half, -0.1)], "part")
    for number, (side, outside) in enumerate(((-1, True), (-1, False), (1, True), (1, False)), 1):
        place, label = (WALL + 0.05, WALL + 0.55) if outside else (-0.05, -0.95)
        d.circle(*band.at(side * half, place), 0.24, "hot")
        d.text(*band.at(side * half, label), str(number))
    return d


@drawing("ring-down-scribe")
def ring_down_scribe() -> Drawing:
    """Two scribed lines, the saw cuts inside of them."""
    d = Drawing(
        8.0,
        4.4,
        "Scribe, and saw inside the lines",
        "Two lines 1.2 mm apart on the outside edge of the band. Both saw cuts fall between the lines, so the kerf is "
        "taken from the waste.",
        scale=80,
        left=-4.0,
        top=-2.1,
    )
    band = Section(0.0, 1.6, WALL, US_7)
    half = (TAKEN - 0.1) / 2
    band.area(d, [(-3.4, 0), (-3.4, WALL), (3.4, WALL), (3.4, 0)], "part")
    for side in (-1.0, 1.0):
        near = side * (half - SAW)
        open_air(d, band.points([(side * half, 0), (side * half, WALL), (near, WALL), (near, 0)]))
        band.line(d, [(side * half, -0.25), (side * half, WALL + 0.25)], "ink heavy")
    d.dimension(band.at(-half, WALL), band.at(half, WALL), "1.2 mm", 42)
    leader(d, band.at(half - SAW / 2, 0.1), (1.6, 2.1), "saw cut")
    d.text(*band.at(0, 0.6), "waste")
    return d


@drawing("ring-round-up")
def ring_round_up() -> Drawing:
    """Egg-shaped after closing, round again on the mandrel."""
    d = Drawing(
        44.0,
        23.5,
        "Round the ring on the mandrel",
        "Left: after closing, the ring is egg-shaped, narrow at the seam. Right: tapped round on the mandrel with a "
        "mallet, it touches the steel all around.",
        scale=14.5,
        left=-22.0,
        top=-11.5,
    )
    outer = US_6_HALF + WALL
    egg: list[list[Point]] = []
    for radius in (outer, US_6_HALF):
        ring = []
        for i in range(72):
            angle = math.radians(5 * i)
            lift = 1 - 0.13 * max(0.0, math.sin(angle)) ** 2
            tall = 1 + 0.06 * math.sin(angle)
            ring.append((-11 + radius * math.cos(angle) * lift, -radius * math.sin(angle) * tall))
        egg.append(ring)
    d.polygon(egg[0])
    open_air(d, egg[1])
    d.line([(-11, egg[0][18][1]), (-11, egg[1][18][1])], "ink heavy")
    d.circle(11, 0, US_6_HALF, "part tool")
    d.ring_sector(11, 0, US_6_HALF, outer, 0, 360)
    d.line([(11, -US_6_HALF), (11, -outer)], "ink heavy")
    turn(d, 11, 0, outer + 0.9, 60, 20)
    for angle in (235, 270, 305):
        arrow(d, polar(11, 0, outer + 1.9, angle), polar(11, 0, outer + 0.4, angle))
    d.text(11, 0.4, "mandrel")
    d.text(-11, 0.4, "egg")
    return d
