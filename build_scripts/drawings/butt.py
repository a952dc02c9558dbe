"""Drawings of the butt joint: faces, V, tacks, passes, faults. The band is cut along its middle, inside face below."""

from __future__ import annotations

import math

from build_scripts.drawings import drawing
from build_scripts.drawings.sketch import Section, arrow, bar, gas, leader, nozzle, open_air, polar, smooth, tick, turn
from calculators.drawing import Drawing, Point

WALL = 1.5  # mm; the ring of the strips is US 7, 3.0 × 1.5 mm
INNER = 8.66
LAND = 0.5  # flat part of the faces between the two V, mm
HALF_TOP = 0.3  # half the opening of a V at the face, mm


def _vee(side: float, wall: float = WALL, land: float = LAND, half: float = HALF_TOP) -> list[Point]:
    """The face of one end with a V from outside and one from inside; ``side`` −1 left, 1 right."""
    low, high = (wall - land) / 2, (wall + land) / 2
    return [(side * half, 0.0), (0.0, low), (0.0, high), (side * half, wall)]


def _ends(d: Drawing, band: Section, reach: float, vee: bool = True, apart: float = 0.0) -> None:
    """The two ends of the band, prepared."""
    for side in (-1.0, 1.0):
        face = _vee(side, band.wall) if vee else [(0.0, 0.0), (0.0, band.wall)]
        moved = [(u + side * apart / 2, v) for u, v in face]
        band.area(d, [*moved, (side * reach, band.wall), (side * reach, 0.0)], "cut")


def _fill(band: Section, outside: bool, proud: float, half: float = HALF_TOP) -> list[Point]:
    """The fused metal of one V with a little of both walls, ``proud`` above the face."""
    low, high, bite = (band.wall - LAND) / 2, (band.wall + LAND) / 2, 0.09
    root, face, way = (high, band.wall, 1.0) if outside else (low, 0.0, -1.0)
    top = [(half + bite - 2 * (half + bite) * i / 16, i / 16) for i in range(17)]
    crown = [(u, face + way * proud * (1 - (2 * share - 1) ** 2)) for u, share in top]
    return [*crown, (-0.13, root + way * 0.02), (-0.1, root - way * 0.27), (0.1, root - way * 0.27), (0.13, root)]


def _strip(title: str, description: str) -> tuple[Drawing, Section]:
    d = Drawing(9.0, 5.2, title, description, scale=40, left=-4.5, top=-3.0)
    return d, Section(0.0, 1.2, WALL, INNER)


@drawing("butt-before")
def butt_before() -> Drawing:
    """Two ends with a V on each side, pressed together at the root."""
    d, band = _strip(
        "Butt joint before fusing",
        "A 1.5 mm band cut along its middle. Both ends are beveled outside and inside and bear on a 0.5 mm land.",
    )
    _ends(d, band, 4.2)
    for side in (-1, 1):
        arrow(d, band.at(side * 3.4, 2.1), band.at(side * 1.6, 2.1))
    return d


@drawing("butt-fused")
def butt_fused() -> Drawing:
    """Both V filled from the root, proud; beam on the seam, gas beside it."""
    d, band = _strip(
        "Butt joint fused",
        "Both grooves are filled from the root and stand proud. The fused metal meets in the core. The beam points "
        "straight at the seam and gas flows over it from the side.",
    )
    _ends(d, band, 4.2)
    for outside in (True, False):
        band.area(d, _fill(band, outside, 0.16), "hot")
    x, y = band.at(0, WALL + 0.16)
    d.beam(x, y, 0.45, 2.4)
    nozzle(d, 2.35, -1.75, 1.6, 0.55, 32)
    gas(d, 0.45, -0.55, 2.0, 18, 32)
    return d


@drawing("butt-finished")
def butt_finished() -> Drawing:
    """Flush, with the proud metal shown as a ghost."""
    d, band = _strip(
        "Butt joint finished",
        "The proud metal is filed away, inside and outside. The fused seam is level with the band on both faces.",
    )
    _ends(d, band, 4.2)
    for outside in (True, False):
        band.area(d, _fill(band, outside, 0.0), "hot")
        crown = [(u, v) for u, v in _fill(band, outside, 0.16)[:17]]
        band.line(d, crown, "ghost")
    return d


@drawing("butt-saw")
def butt_saw() -> Drawing:
    """Looking down on the band: a square cut, and the step that a slanted one makes."""
    d = Drawing(
        16.0,
        6.4,
        "Saw square across the band",
        "Left: a saw blade crosses a 3 mm band at right angles. Right: a slanted cut closes with a step at both edges.",
        scale=40,
    )
    y = 2.0
    d.rectangle(0.5, y, 3.0, 3.0)
    d.rectangle(3.75, y, 3.0, 3.0)
    d.rectangle(3.5, 0.6, 0.25, 5.4, "part tool")
    for i in range(13):
        d.line([(3.5, 0.85 + i * 0.4), (3.36, 0.95 + i * 0.4), (3.5, 1.05 + i * 0.4)], "ink")
    d.line([(3.75, y + 0.55), (4.3, y + 0.55), (4.3, y)], "dim")
    d.text(4.5, y + 0.75, "90°", "start")
    tick(d, 1.0, 1.3, good=True)
    low, slope = 0.42, 0.55
    d.polygon([(9.0, y), (12.2 - slope, y), (12.2 + slope, y + 3.0), (9.0, y + 3.0)])
    d.polygon([(12.2 - slope, y - low), (15.5, y - low), (15.5, y + 3.0 - low), (12.2 + slope, y + 3.0 - low)])
    tick(d, 9.5, 1.3, good=False)
    d.dimension((14.6, y), (14.6, y - low), "")
    leader(d, (14.6, y - low / 2), (14.0, 0.85), "step", "end")
    return d


@drawing("butt-file-faces")
def butt_file_faces() -> Drawing:
    """The closed ring before a lamp, and the seam magnified: dark, or a line of light."""
    d = Drawing(
        16.0,
        8.2,
        "Hold the closed seam to a lamp",
        "Left: a closed ring in front of a lamp. Right, magnified: no light through the seam is good; a line of "
        "light is a gap and goes back to the file.",
        scale=40,
    )
    x, y, scale = 4.6, 5.1, 0.27
    d.circle(x, 0.85, 0.5, "ink")
    for angle in range(210, 331, 30):
        d.line([polar(x, 0.85, 0.65, angle), polar(x, 0.85, 1.0, angle)], "ink")
    d.ring_sector(x, y, INNER * scale, (INNER + WALL) * scale, 90, 450)
    d.line([(x, y - INNER * scale), (x, y - (INNER + WALL) * scale)], "ink")
    for place, good in ((9.2, True), (13.6, False)):
        d.circle(place, 3.6, 1.75, "ink")
        gap = 0.0 if good else 0.11
        for side in (-1, 1):
            edge = [(place + side * gap / 2, 2.9), (place + side * gap / 2, 4.5)]
            far = [(place + side * 1.5, 4.5), (place + side * 1.5, 2.9)]
            d.polygon(edge + far, "cut")
        if not good:
            d.rectangle(place - gap / 2, 2.3, gap, 2.8, "hot")
        tick(d, place, 6.0, good)
    d.line([polar(x, y, (INNER + WALL) * scale, 88), (7.5, 3.2)], "dim thin")
    d.text(9.2, 7.1, "no light")
    d.text(13.6, 7.1, "light: file again")
    return d


@drawing("butt-close")
def butt_close() -> Drawing:
    """Close past the seam, then back, so that the ends bear on each other."""
    d = Drawing(
        16.0,
        6.6,
        "Close with spring",
        "Left: one end is pushed past the other, toward the inside. Right: lifted back, the two ends press on each "
        "other by themselves.",
        scale=40,
    )
    y, scale = 4.0, 0.24
    inner, outer = INNER * scale, (INNER + WALL) * scale
    angles = [92 + 4 * i for i in range(93)]  # one turn, the last 65 degrees pushed inward
    reach = [outer * (1 - 0.17 * max(0.0, (angle - 395) / 65) ** 1.5) for angle in angles]
    over = [polar(4.0, y, r, a) for r, a in zip(reach, angles, strict=True)]
    under = [polar(4.0, y, r - (outer - inner), a) for r, a in zip(reach, angles, strict=True)]
    d.polygon(over + under[::-1])
    turn(d, 4.0, y, outer + 0.45, 62, 100)
    d.text(4.0, 0.75, "past")
    d.ring_sector(11.6, y, inner, outer, 90, 450)
    d.line([(11.6, y - inner), (11.6, y - outer)], "ink")
    for side in (-1, 1):
        arrow(d, polar(11.6, y, outer + 0.4, 90 - side * 34), polar(11.6, y, outer + 0.4, 90 - side * 8))
    d.text(11.6, 0.75, "back, and it bears")
    arrow(d, (7.1, y), (8.5, y))
    return d


@drawing("butt-v-choice")
def butt_v_choice() -> Drawing:
    """Which preparation for which wall: square, V from outside and inside, double V with wire."""
    d = Drawing(
        16.0,
        6.6,
        "Preparation by wall thickness",
        "Three sections to scale. A 0.8 mm wall: faces square. A 1.5 mm wall: a small V outside and inside, 0.5 mm "
        "land. A 2.2 mm wall: deeper V on both sides, 0.5 mm land.",
        scale=40,
    )
    for x, wall in ((2.7, 0.8), (8.0, 1.5), (13.3, 2.2)):
        band = Section(x, 4.2, wall)
        half = 0.0 if wall < 1 else (wall - LAND) / 2 * math.tan(math.radians(31))
        for side in (-1.0, 1.0):
            face = _vee(side, wall, LAND, half) if half else [(0.0, 0.0), (0.0, wall)]
            band.area(d, [*face, (side * 2.1, wall), (side * 2.1, 0.0)], "cut")
        d.dimension((x - 2.1, 4.2), (x - 2.1, 4.2 - wall), "", 12)
        d.text(x, 5.3, "2.2 mm" if wall > 2 else f"{wall:g}")
    leader(d, (13.3, 3.1), (14.4, 1.25), "land 0.5", "middle")
    leader(d, (8.0, 2.9), (8.0, 1.9), "60°", "middle")
    d.text(2.7, 2.9, "square")
    return d


@drawing("butt-tacks")
def butt_tacks() -> Drawing:
    """Looking at the seam end-on: where the four tacks go, in order."""
    d = Drawing(
        16.0,
        6.4,
        "Tack on opposite sides",
        "The seam seen end-on, 3.0 mm wide and 1.5 mm thick. Tacks in order: 1 outside middle, 2 inside middle, 3 one "
        "edge, 4 the other edge.",
        scale=56,
        left=0,
    )
    d.width, d.height = 11.4, 4.6
    x, y = 4.2, 1.6
    d.rectangle(x, y, 3.0, WALL, "cut")
    for px, py, tx, ty, number in (
        (x + 1.5, y, x + 1.5, y - 0.5, "1"),
        (x + 1.5, y + WALL, x + 1.5, y + WALL + 0.8, "2"),
        (x, y + 0.75, x - 0.55, y + 0.87, "3"),
        (x + 3.0, y + 0.75, x + 3.55, y + 0.87, "4"),
    ):
        d.circle(px, py, 0.25, "hot")
        d.text(tx, ty, number)
    d.text(x + 1.5, 0.45, "outside")
    d.text(x + 1.5, 4.4, "inside")
    return d


@drawing("butt-overlap")
def butt_overlap() -> Drawing:
    """Looking down on the seam: overlapping spots, half on each side."""
    d = Drawing(
        8.0,
        3.3,
        "Overlap the spots",
        "Spots 0.5 mm across step along the seam by 0.15 mm, each half on one end and half on the other.",
        scale=80,
    )
    d.rectangle(0.3, 0.9, 7.4, 1.5)
    d.line([(0.3, 1.65), (7.7, 1.65)], "ghost")
    for i in range(15):
        d.circle(2.0 + i * 0.15, 1.65, 0.25, "hot")
    arrow(d, (4.6, 1.65), (5.6, 1.65), "ink heavy")
    d.dimension((1.75, 1.4), (2.25, 1.4), "0.5 mm", 62)
    d.dimension((3.95, 1.9), (4.1, 1.9), "", -14)
    leader(d, (4.02, 2.1), (4.5, 2.85), "step 0.15 mm")
    return d


@drawing("butt-fill")
def butt_fill() -> Drawing:
    """Wire laid into the root of the V, then layer on layer."""
    d = Drawing(
        8.0,
        4.4,
        "Fill from the root",
        "Left: a 0.3 mm wire lies in the root of the V and the beam melts its end into both walls. Right: layers "
        "one, two and three; the last one stands proud.",
        scale=80,
    )
    for x in (2.1, 5.9):
        band = Section(x, 3.6, 1.3)
        for side in (-1.0, 1.0):
            face = [(side * 0.02, 0.0), (0.0, 0.5), (side * 0.5, 1.3)]
            band.area(d, [*face, (side * 1.7, 1.3), (side * 1.7, 0.0)], "cut")
    d.circle(2.1, 2.86, 0.15, "part")
    d.beam(2.1, 2.72, 0.4, 2.3)
    leader(d, (2.24, 2.84), (2.9, 1.9), "wire 0.3 mm")
    x = 5.9
    layers: list[list[Point]] = [
        [(-0.19, 0.74), (0.19, 0.74), (0.1, 0.36), (-0.1, 0.36)],
        [(-0.42, 1.04), (0.42, 1.04), (0.19, 0.74), (-0.19, 0.74)],
    ]
    band = Section(x, 3.6, 1.3)
    crown = [(0.66 - 1.32 * i / 14, 1.3 + 0.17 * (1 - (2 * i / 14 - 1) ** 2)) for i in range(15)]
    layers.append([*crown, (-0.42, 1.04), (0.42, 1.04)])
    for number, layer in enumerate(layers, 1):
        band.area(d, layer, "hot")
        height = (0.55, 0.9, 1.2)[number - 1]
        leader(d, band.at(0.3 if number > 1 else 0.08, height), (7.72, 3.1 - number * 0.48), str(number))
    d.text(5.9, 4.2, "proud")
    return d


@drawing("butt-level")
def butt_level() -> Drawing:
    """The leveling pass: a wider beam that only melts the skin."""
    d = Drawing(
        8.0,
        4.0,
        "Leveling pass",
        "A beam 1.2 mm wide melts the skin of the proud seam flat. It does not reach the core.",
        scale=80,
    )
    band = Section(4.0, 3.5, WALL)
    band.area(d, [(-3.6, 0), (3.6, 0), (3.6, WALL), (-3.6, WALL)], "cut")
    band.area(d, _fill(band, True, 0.0), "soft")
    band.area(d, _fill(band, False, 0.0), "soft")
    skin = [(0.66 - 1.32 * i / 16, 0.06 * (1 - (2 * i / 16 - 1) ** 2)) for i in range(17)]
    under = [(-0.66 + 1.32 * i / 16, -0.16 * math.sqrt(max(0.0, 1 - (2 * i / 16 - 1) ** 2))) for i in range(17)]
    band.area(d, [(u, WALL + v) for u, v in skin + under], "hot")
    ridge = [(0.45 - 0.9 * i / 12, WALL + 0.2 * (1 - (2 * i / 12 - 1) ** 2)) for i in range(13)]
    band.line(d, ridge, "ghost")
    d.beam(4.0, 1.94, 1.2, 1.7)
    d.dimension((3.4, 1.94), (4.6, 1.94), "", 14)
    leader(d, (4.6, 1.76), (5.5, 1.1), "1.2 mm")
    return d


@drawing("butt-arc")
def butt_arc() -> Drawing:
    """Pulsed arc: tip on the seam, clamp close by on the same part."""
    d = Drawing(
        16.0,
        7.2,
        "Pulsed arc on a shank",
        "A sharpened tungsten tip stands over the seam. The return clamp bites the shank close by. The current runs "
        "through the short way between them, not through the setting with the stone.",
        scale=40,
    )
    x, y, scale = 8.0, 3.7, 0.27
    inner, outer = INNER * scale, (INNER + WALL) * scale
    d.ring_sector(x, y, inner, outer, 0, 360)
    d.polygon(
        [
            (x - 0.75, y + outer - 0.1),
            (x + 0.75, y + outer - 0.1),
            (x + 1.0, y + outer + 0.5),
            (x - 1.0, y + outer + 0.5),
        ]
    )
    d.polygon([(x - 0.8, y + outer + 0.5), (x, y + outer - 0.05), (x + 0.8, y + outer + 0.5)], "stone")
    seam = polar(x, y, outer, 90)
    d.circle(seam[0], seam[1] + 0.08, 0.16, "hot")
    d.polygon(
        [(x - 0.12, 0.35), (x + 0.12, 0.35), (x + 0.12, 0.5), (x + 0.02, 0.72), (x - 0.02, 0.72), (x - 0.12, 0.5)],
        "part tool",
    )
    d.line([(x, 0.74), (x - 0.06, 0.82), (x + 0.05, 0.88), (x, seam[1])], "ink")
    bar(d, *polar(x, y, outer + 0.02, 45), 2.6, 0.34, 28)
    bar(d, *polar(x, y, inner - 0.02, 38), 3.2, 0.34, 12)
    turn(d, x, y, (inner + outer) / 2, 84, 50)
    leader(d, (12.1, 1.95), (13.0, 3.2), "return clamp", "middle")
    leader(d, (x - 0.1, 0.55), (6.2, 0.9), "tungsten", "end")
    return d


@drawing("butt-faults")
def butt_faults() -> Drawing:
    """Four faults in section."""
    d = Drawing(
        16.0,
        5.2,
        "Faults of a butt seam",
        "Four sections: sunken, the seam lies below the face; hollow core, only the skins are fused; step, the ends "
        "do not line up; pinhole, a gas hole near the face.",
        scale=40,
    )
    words = ("sunken", "hollow core", "step", "pinhole")
    for i, word in enumerate(words):
        x = 2.1 + i * 3.93
        band = Section(x, 3.3, WALL)
        lift = 0.3 if word == "step" else 0.0
        for side in (-1.0, 1.0):
            rise = lift if side > 0 else 0.0
            corners = [(0.0, rise), (0.0, WALL + rise), (side * 1.65, WALL + rise), (side * 1.65, rise)]
            band.area(d, corners, "cut")
        if word == "sunken":
            dip = [(-0.3 + 0.05 * k, WALL - 0.28 * (1 - (k / 6 - 1) ** 2)) for k in range(13)]
            band.area(d, [*dip, (0.16, 0.3), (0.1, 0.0), (-0.1, 0.0), (-0.16, 0.3)], "hot")
            open_air(d, [band.at(u, v) for u, v in [*dip, (0.3, WALL + 0.06), (-0.3, WALL + 0.06)]])
        elif word == "hollow core":
            band.melt(d, 0, 0.5, 0.4, 0.05)
            band.melt(d, 0, 0.5, 0.4, 0.05, inside=True)
        elif word == "step":
            smooth(d, [band.at(u, v) for u, v in ((-0.3, 1.5), (0.28, 1.8), (0.12, 0.3), (-0.12, 0.0))], "hot", True)
        else:
            band.area(d, _fill(band, True, 0.0), "hot")
            band.area(d, _fill(band, False, 0.0), "hot")
            for u, v, radius in ((0.05, 1.28, 0.12), (-0.06, 0.95, 0.07)):
                open_air(d, [polar(*band.at(u, v), radius, 15 * k) for k in range(24)])
        d.text(x, 4.5, word)
    return d


@drawing("butt-bend-test")
def butt_bend_test() -> Drawing:
    """The practice piece bent over a rod with the seam at the top of the bend."""
    d = Drawing(
        16.0,
        6.4,
        "Bend the practice piece",
        "Two strips fused end to end are bent by 90 degrees over a 6 mm rod, seam at the top of the bend, first one "
        "way and then the other.",
        scale=40,
    )
    x, y, inner = 8.0, 5.0, 3.0
    d.circle(x, y, inner, "part tool")
    d.ring_sector(x, y, inner, inner + WALL, 45, 135, "cut")
    for way in (1, -1):
        start, angle = polar(x, y, inner, 90 - way * 45), -45 if way > 0 else 225
        far = polar(x, y, inner + WALL, 90 - way * 45)
        ux, uy = polar(0, 0, 1.7, angle)
        d.polygon([start, far, (far[0] + ux, far[1] + uy), (start[0] + ux, start[1] + uy)], "cut")
    d.ring_sector(x, y, inner, inner + WALL, 88, 92, "hot")
    leader(d, polar(x, y, inner + WALL / 2, 90), (4.2, 1.1), "seam outermost", "end")
    d.text(x, 4.6, "rod 6 mm")
    turn(d, x, y, inner + WALL + 1.0, 58, 20)
    return d
