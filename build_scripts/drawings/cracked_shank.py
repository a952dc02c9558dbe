"""Drawings of a cracked shank: find its ends, open it to a V, or saw it out. Sections are cut along the band."""

from __future__ import annotations

from build_scripts.drawings import drawing
from build_scripts.drawings.setting_parts import crack
from build_scripts.drawings.sketch import Section, arrow, gas, leader, lens, nozzle, polar, tick
from calculators.drawing import Drawing, Point

WALL, INNER = 1.6, 8.66  # mm: US 7
DEEP = 1.1  # mm, depth of the crack from outside
OPEN = 0.55  # mm, half the width of the V at the outside: 60 degrees, 0.95 deep


def _strip(title: str, description: str) -> tuple[Drawing, Section]:
    d = Drawing(9.0, 5.2, title, description, scale=40, left=-4.5, top=-2.6)
    return d, Section(0.0, 1.6, WALL, INNER)


def _band(d: Drawing, band: Section, notch: list[Point] | None = None) -> None:
    """The band in section with a notch in its outside."""
    outside = [(-4.0, WALL), *(notch or []), (4.0, WALL)]
    band.area(d, [*outside, (4.0, 0), (-4.0, 0)], "cut")


@drawing("crack-before")
def crack_before() -> Drawing:
    """A crack from outside, two thirds through."""
    d, band = _strip(
        "Cracked shank before",
        "A shank 1.6 mm thick, cut along its middle. A crack runs from the outside 1.1 mm deep, two thirds of the way.",
    )
    _band(d, band)
    crack(d, band.at(0, WALL), band.at(0.12, WALL - DEEP), 0.09, kind="ink heavy")
    return d


@drawing("crack-fused")
def crack_fused() -> Drawing:
    """Opened to its end, filled from the root, proud."""
    d, band = _strip(
        "Cracked shank fused",
        "The crack has been ground out to a V and filled from its root in layers. The last one stands proud. The beam "
        "points at the fill, gas comes from the side.",
    )
    _band(d, band)
    band.area(
        d,
        [(-0.8, WALL), (-0.25, 0.42), (0.1, 0.3), (0.45, 0.42), (0.9, WALL), (0.5, WALL + 0.2), (-0.4, WALL + 0.2)],
        "hot",
    )
    for height in (0.75, 1.1, 1.4):
        half = 0.2 + 0.32 * (height - 0.4)
        band.line(d, [(0.08 - half, height), (0.08 + half, height)], "dim thin")
    x, y = band.at(0.1, WALL + 0.2)
    d.beam(x, y, 0.5, 2.0, -0.5)
    nozzle(d, 2.2, -1.5, 1.3, 0.55, 35)
    gas(d, 0.4, -0.25, 1.9, 18, 33)
    return d


@drawing("crack-finished")
def crack_finished() -> Drawing:
    """Filed flush."""
    d, band = _strip("Cracked shank finished", "The fill is filed to the round of the band. No line is left.")
    _band(d, band)
    band.area(d, [(-0.78, WALL), (-0.25, 0.42), (0.1, 0.3), (0.45, 0.42), (0.88, WALL)], "hot")
    band.line(d, [(-0.7, WALL + 0.2), (0.8, WALL + 0.2)], "ghost")
    return d


@drawing("crack-ends")
def crack_ends() -> Drawing:
    """What you see, and what is there."""
    d = Drawing(
        15.6,
        5.4,
        "A crack is longer than it looks",
        "The outside of a band 3 mm wide, seen from above, before and after. Left: a short dark line. Right: the band "
        "has been bent open a little and lit from the side; the crack runs across nearly the whole width.",
        scale=40,
        left=-7.8,
        top=-2.7,
    )
    for x in (-3.9, 3.9):
        d.rectangle(x - 3.4, -1.5, 6.8, 3.0)
    crack(d, (-3.9, -0.5), (-3.8, 0.5), 0.08, 4)
    crack(d, (3.9, 1.5), (3.75, -1.2), 0.1, 9, "ink heavy")
    for way in (-1, 1):
        arrow(d, (3.9 + way * 0.9, 1.9), (3.9 + way * 2.2, 1.9), "ink heavy")
    lens(d, 3.8, -1.15, 0.55)
    d.text(-3.9, 2.6, "at rest")
    d.text(3.9, 2.6, "opened")
    return d


@drawing("crack-choice")
def crack_choice() -> Drawing:
    """Fill, saw out, or replace."""
    d = Drawing(
        15.6,
        4.6,
        "Fill, saw out, or replace",
        "Three bands in section. Left: a crack less than half through a sound wall is opened and filled. Middle: a "
        "crack through the wall is sawn out between two dashed lines. Right: several cracks in a thin wall mean a "
        "new half.",
        scale=40,
        left=-7.8,
        top=-2.3,
    )
    for x, wall in ((-5.2, 1.6), (0.0, 1.6), (5.2, 0.9)):
        d.rectangle(x - 2.2, 0.8 - wall, 4.4, wall, "cut")
    d.polygon([(-5.75, -0.8), (-5.25, 0.05), (-5.15, 0.05), (-4.65, -0.8)], "hot")
    crack(d, (0.0, -0.8), (0.05, 0.8), 0.1, 6, "ink heavy")
    for x in (-0.45, 0.5):
        d.line([(x, -1.2), (x, 1.2)], "ghost")
    crack(d, (4.3, -0.1), (4.35, 0.8), 0.08, 4, "ink heavy")
    crack(d, (5.3, 0.8), (5.25, 0.15), 0.08, 4, "ink heavy")
    crack(d, (6.3, -0.1), (6.2, 0.6), 0.08, 4, "ink heavy")
    for x, words in ((-5.2, "fill"), (0.0, "saw out"), (5.2, "new half")):
        d.text(x, 1.8, words)
    return d


@drawing("crack-open")
def crack_open() -> Drawing:
    """The V goes past the end of the crack."""
    d = Drawing(
        15.6,
        5.6,
        "Open the crack past its end",
        "Two bands in section. Left: the V stops above the end of the crack, a dark line is left below it. Right: "
        "the V goes 0.2 mm past the end, into clean metal.",
        scale=40,
        left=-7.8,
        top=-2.6,
    )
    for x, deep, good in ((-3.9, 0.7, False), (3.9, 1.3, True)):
        half = 0.06 + deep * 0.577
        d.polygon(
            [
                (x - 3.2, -0.8),
                (x - half, -0.8),
                (x - 0.06, -0.8 + deep),
                (x + 0.06, -0.8 + deep),
                (x + half, -0.8),
                (x + 3.2, -0.8),
                (x + 3.2, 0.8),
                (x - 3.2, 0.8),
            ],
            "cut",
        )
        tick(d, x, 1.7, good)
    crack(d, (-3.9, -0.1), (-3.85, 0.3), 0.05, 3, "ink heavy")
    leader(d, (-3.85, 0.2), (-1.9, 2.0), "left behind")
    d.dimension((6.4, 0.3), (6.4, 0.5), "")
    d.line([(3.95, 0.3), (6.7, 0.3)], "ghost")
    d.line([(3.95, 0.5), (6.7, 0.5)], "ghost")
    leader(d, (6.4, 0.4), (5.9, 1.9), "0.2 mm", "middle")
    return d


@drawing("crack-places")
def crack_places() -> Drawing:
    """Where rings crack."""
    d = Drawing(
        42.0,
        23.4,
        "Where a shank cracks",
        "A ring from the side. Cracks sit at the old seam at the bottom, at the thin shoulder beside the head, and "
        "at a stamped mark inside.",
        scale=15,
        left=-21.0,
        top=-11.9,
    )
    d.ring_sector(0, 0, INNER, INNER + WALL, 0, 360)
    d.polygon([(-2.2, -10.0), (2.2, -10.0), (2.9, -11.5), (-2.9, -11.5)])
    crack(d, polar(0, 0, INNER + WALL, 268), polar(0, 0, INNER, 270), 0.3, 4, "ink heavy")
    crack(d, polar(0, 0, INNER + WALL, 66), polar(0, 0, INNER + 0.3, 64), 0.3, 4, "ink heavy")
    crack(d, polar(0, 0, INNER, 205), polar(0, 0, INNER + 1.1, 204), 0.3, 4, "ink heavy")
    leader(d, polar(0, 0, INNER + 1.0, 269), (5.0, 10.9), "old seam")
    leader(d, polar(0, 0, INNER + WALL, 66), (9.0, -9.4), "thin shoulder")
    leader(d, polar(0, 0, INNER, 205), (-12.2, 7.6), "stamp", "end")
    return d
