"""Drawings of the butt joint: faces, V, tacks, passes, faults. The band is cut along its middle, inside face below."""

from __future__ import annotations

import math

from build_scripts.drawings import drawing
from build_scripts.drawings.sketch import Section, arrow, gas, leader, nozzle, open_air, polar, smooth
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
