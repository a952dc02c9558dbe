"""Drawings of eyeglass frames: a broken bridge, a hinge foot, a liner in a rim. Sizes in mm."""

from __future__ import annotations

from build_scripts.drawings import drawing
from build_scripts.drawings.bench import spots
from build_scripts.drawings.setting_parts import crack
from build_scripts.drawings.sketch import arrow, gas, leader, nozzle, tick, turn
from calculators.drawing import Drawing, Point


def _strip(title: str, description: str) -> Drawing:
    return Drawing(15.0, 9.0, title, description, scale=24, left=-7.5, top=-5.2)


def _bridge(d: Drawing, gap: float, grind: bool = False) -> None:
    """The bridge of a frame, 1.4 mm thick, broken in the middle; V at the ends on request."""
    for side in (-1, 1):
        d.line([(side * 7.2, 3.4), (side * 6.4, 1.0), (side * 5.6, -0.4), (side * 5.4, -2.4)], "ink")
        end: list[Point] = (
            [(side * (gap + 0.55), -1.2), (side * gap, -0.5), (side * (gap + 0.55), 0.2)]
            if grind
            else [(side * gap, -1.2), (side * (gap + 0.15), -0.4), (side * gap, 0.2)]
        )
        d.polygon([(side * 5.6, -0.4), (side * 5.5, 1.0), (side * 3.4, 0.3), *reversed(end), (side * 3.4, -1.1)])


@drawing("frame-before")
def frame_before() -> Drawing:
    """The bridge broken, lenses out."""
    d = _strip(
        "Eyeglass frame, before",
        "The bridge of a metal frame from the front, the lenses taken out. It has broken in the middle.",
    )
    _bridge(d, 0.3)
    return d


@drawing("frame-fused")
def frame_fused() -> Drawing:
    """V on both sides, filled, gas on both sides."""
    d = _strip(
        "Eyeglass frame, fused",
        "Both ends carry a V. The seam is filled a little proud. Beam and gas come to it from in front.",
    )
    _bridge(d, 0.02, grind=True)
    d.polygon(
        [(-0.7, -1.2), (0, -1.45), (0.7, -1.2), (0.25, -0.5), (0.7, 0.2), (0, 0.45), (-0.7, 0.2), (-0.25, -0.5)], "hot"
    )
    d.polygon([(-2.6, -4.9), (-1.4, -5.1), (0.2, -1.5), (-0.3, -1.4)], "beam")
    nozzle(d, 3.0, -3.6, 1.6, 0.7, 40)
    gas(d, 0.6, -1.5, 2.9, 14, 42)
    return d


@drawing("frame-finished")
def frame_finished() -> Drawing:
    """Flush and bent to its curve."""
    d = _strip("Eyeglass frame, finished", "The bridge is whole and flush. The frame lies level.")
    for side in (-1, 1):
        d.line([(side * 7.2, 3.4), (side * 6.4, 1.0), (side * 5.6, -0.4), (side * 5.4, -2.4)], "ink")
    upper = [(-5.6, -0.4), (-3.4, -1.1), (0, -1.2), (3.4, -1.1), (5.6, -0.4)]
    d.polygon([*upper, (5.5, 1.0), (3.4, 0.3), (0, 0.2), (-3.4, 0.3), (-5.5, 1.0)])
    return d


@drawing("frame-parts")
def frame_parts() -> Drawing:
    """Where frames break, and which places to leave alone."""
    d = Drawing(
        63.0,
        24.0,
        "Where frames break",
        "The front of a metal frame with both rims, bridge, pads and hinge blocks. Marks show the bridge, the hinge "
        "block and the rim beside the closing screw.",
        scale=10,
        left=-31.5,
        top=-12.0,
    )
    for side in (-1, 1):
        d.add(f'<ellipse class="ink heavy" cx="{d.x(side * 13.5):.1f}" cy="{d.y(0):.1f}" rx="105" ry="80"/>')
        d.polygon([(side * 23.9, -3.4), (side * 27.0, -3.4), (side * 27.0, 0.4), (side * 23.9, 0.4)])
        d.add(f'<ellipse class="ink" cx="{d.x(side * 3.1):.1f}" cy="{d.y(4.6):.1f}" rx="7" ry="14"/>')
    d.polygon([(-3.6, -2.4), (3.6, -2.4), (3.2, -1.0), (-3.2, -1.0)])
    for x, y in ((0.0, -1.7), (23.9, -1.5), (-22.4, 4.4)):
        d.circle(x, y, 1.5, "ink")
    leader(d, (0, -3.2), (0, -9.6), "bridge", "middle")
    leader(d, (24.6, -2.9), (24.6, -8.4), "hinge block", "middle")
    leader(d, (-23.2, 5.6), (-25.2, 9.4), "rim", "middle")
    return d


@drawing("frame-liner")
def frame_liner() -> Drawing:
    """Butt of a thin temple, with and without a peg."""
    d = Drawing(
        31.5,
        7.4,
        "A thin temple",
        "Two temples of 1.2 mm in section. Left: ends butted bare, cracked beside the seam. Right: a peg of 0.6 mm "
        "stands in holes of both ends, and the seam is filled around it.",
        scale=20,
        left=-15.75,
        top=-3.6,
    )
    for x, pegged in ((-7.8, False), (7.8, True)):
        if pegged:
            for side in (-1, 1):
                d.polygon(
                    [
                        (x + side * 6.6, -1.2),
                        (x + side * 0.6, -1.2),
                        (x + side * 0.05, -0.6),
                        (x + side * 0.05, 0.6),
                        (x + side * 0.6, 1.2),
                        (x + side * 6.6, 1.2),
                    ],
                    "cut",
                )
            d.rectangle(x - 2.4, -0.6, 4.8, 1.2, "part tool")
            for way in (-1, 1):
                d.polygon(
                    [
                        (x - 0.75, way * 1.2),
                        (x, way * 1.5),
                        (x + 0.75, way * 1.2),
                        (x + 0.2, way * 0.55),
                        (x - 0.2, way * 0.55),
                    ],
                    "hot",
                )
        else:
            d.rectangle(x - 6.6, -1.2, 6.6, 2.4, "cut")
            d.rectangle(x, -1.2, 6.6, 2.4, "cut")
            for way in (-1, 1):
                d.polygon([(x - 0.6, way * 1.2), (x, way * 1.35), (x + 0.6, way * 1.2), (x, way * 0.5)], "hot")
            crack(d, (x + 0.7, -1.2), (x + 0.5, 1.2), 0.15, 6, "ink heavy")
        tick(d, x, 2.8, pegged)
    leader(d, (9.6, 0.2), (11.6, 2.6), "peg")
    return d


@drawing("frame-cover")
def frame_cover() -> Drawing:
    """Gas on the front and behind, for titanium."""
    d = Drawing(
        31.5,
        11.0,
        "Gas in front and behind",
        "A titanium bridge in section between two nozzles. One blows onto the spot, the other onto the back of the "
        "seam, from before the first shot until nothing glows.",
        scale=20,
        left=-15.75,
        top=-6.0,
    )
    d.rectangle(-9.0, -0.7, 18.0, 1.4, "cut")
    d.polygon([(-0.7, -0.7), (0.7, -0.7), (0.3, 0.7), (-0.3, 0.7)], "hot")
    d.polygon([(-0.8, -5.6), (0.8, -5.6), (0.25, -0.75), (-0.25, -0.75)], "beam")
    nozzle(d, 4.2, -3.4, 2.4, 1.0, 35)
    gas(d, 0.8, -1.1, 3.9, 14, 35)
    nozzle(d, -4.2, 3.0, 2.4, 1.0, 215)
    gas(d, -0.6, 0.9, 3.9, 14, 213)
    leader(d, (5.6, -4.2), (9.4, -4.4), "front")
    leader(d, (-5.6, 3.8), (-9.4, 4.0), "back", "end")
    return d


@drawing("frame-level")
def frame_level() -> Drawing:
    """Four touches on a glass plate."""
    d = Drawing(
        63.0,
        15.0,
        "On the glass plate",
        "A frame upside down on a flat plate, from the front. Both rims touch the plate, and both temple tips. "
        "Left: one temple stands off.",
        scale=10,
        left=-31.5,
        top=-9.0,
    )
    for x, good in ((-16.0, False), (16.0, True)):
        d.rectangle(x - 14.0, 3.0, 28.0, 0.9, "part tool")
        for side in (-1, 1):
            y = -0.4 if good or side < 0 else -1.0
            d.add(f'<ellipse class="ink heavy" cx="{d.x(x + side * 5.2):.1f}" cy="{d.y(y):.1f}" rx="42" ry="32"/>')
        d.line([(x - 1.1, -1.4), (x + 1.1, -1.4 if good else -1.8)], "ink heavy")
        d.line([(x - 9.4, -1.2), (x - 12.6, 2.9)], "ink heavy")
        d.line([(x + 9.4, -1.2 if good else -1.9), (x + 12.6, 2.9 if good else 0.6)], "ink heavy")
        tick(d, x, 5.0, good)
    turn(d, -3.4, 1.8, 1.5, -60, 60)
    return d


@drawing("frame-hinge")
def frame_hinge() -> Drawing:
    """The hinge foot fused around, screw out, threads covered."""
    d = Drawing(
        31.5,
        8.4,
        "A hinge foot on its block",
        "A hinge foot from above on the hinge block. Its screw is out and its bore is stopped with a steel rod. "
        "Spots go around the foot, away from the bore.",
        scale=20,
        left=-15.75,
        top=-4.2,
    )
    d.rectangle(-9.0, -2.6, 14.0, 5.2)
    d.rectangle(-4.2, -1.7, 6.4, 3.4)
    d.rectangle(2.2, -1.2, 4.6, 2.4)
    d.circle(5.2, 0, 0.7, "part tool")
    d.line([(5.2, -3.4), (5.2, -0.7)], "ink")
    d.line([(5.2, 0.7), (5.2, 3.4)], "ink")
    spots(d, [(-4.2 + 1.05 * i, side * 1.7) for i in range(6) for side in (-1, 1)] + [(-4.2, 0.0)], 0.8)
    leader(d, (5.6, 0.2), (8.6, 2.2), "steel rod")
    arrow(d, (-8.2, -3.6), (-4.6, -2.2))
    return d
