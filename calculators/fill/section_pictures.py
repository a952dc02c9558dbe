"""Cut sections to scale of a pit, a seam and a prong, each with the wire that fills it."""

from __future__ import annotations

import math

from ..drawing import Drawing, Point
from ..units import number_text, with_unit
from .common import mm

WIDE = 640.0  # picture units


def bowl(mouth: float, depth: float) -> list[Point]:
    """Points of a spherical cap from the left rim down and up to the right one (x across, y upward, mouth at 0).

    A cap deeper than half its mouth is wider inside than at its mouth.
    """
    rim = mouth / 2
    radius = (rim * rim + depth * depth) / (2 * depth)
    lean = math.asin(min(1.0, rim / radius))
    half = lean if depth <= radius else math.pi - lean
    turns = [-half + 2 * half * i / 48 for i in range(49)]
    return [(radius * math.sin(a), radius - depth - radius * math.cos(a)) for a in turns]


def pit_section(told: str, walls: list[Point], depth: float, floor: float, wire: tuple[float, float]) -> Drawing:
    """A pit cut through its middle and, beside it, the wire to melt into it; ``wire`` is its diameter and length."""
    mouth = walls[-1][0] - walls[0][0]
    belly = max(x for x, _ in walls) * 2
    scale = min(250 / (1.5 * belly), 170 / depth)
    px = 1 / scale
    picture = Drawing(WIDE * px, (depth * scale + 150) * px, "The pit cut through, and its wire, to scale", told, scale)
    cx, top = 242 * px, 54 * px
    side = belly / 2 + 46 * px
    pit = [(cx + x, top - y) for x, y in walls]
    block = [(cx - side, top), *pit, (cx + side, top)]
    low = top + depth + 34 * px
    picture.polygon([*block, (cx + side, low), (cx - side, low)], "cut")
    picture.polygon(pit, "hot")
    picture.dimension(pit[0], pit[-1], mm(mouth), away=18)
    picture.dimension((cx - side, top + depth), (cx - side, top), mm(depth), away=16)
    if floor * scale > 2:
        picture.dimension((cx - floor / 2, top + depth), (cx + floor / 2, top + depth), mm(floor), away=-46)
    _wire(picture, 408 * px, top, wire)
    length, words = bar(scale)
    picture.scale_bar(length, words, 508 * px - length / 2, low - 4 * px)
    return picture


def bar(scale: float) -> tuple[float, str]:
    """A scale bar of a round length, between 40 and 120 picture units long."""
    length = next(one for one in (0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10, 20) if one * scale >= 40 or one == 20)
    return length, mm(length)


def _wire(picture: Drawing, x: float, y: float, wire: tuple[float, float]) -> None:
    """The wire lying down, in true thickness; broken off where it is too long for the picture."""
    px = 1 / picture.scale
    diameter, length = wire
    room = picture.width - x - 12 * px
    if length <= 0:
        return
    if diameter > 130 * px:  # far thicker than the pit: lettering says enough
        room = 0.0
    elif length <= room:
        picture.rectangle(x, y, length, diameter, "part")
    else:
        gap = 14 * px
        for a, b, ends in ((0.0, room / 2 - gap / 2, 1), (room / 2 + gap / 2, room, -1)):
            zigzag = [(b if ends > 0 else a, y + diameter * i / 4) for i in range(5)]
            jag = [(px_ + (4 * px if i % 2 else -4 * px), py_) for i, (px_, py_) in enumerate(zigzag)]
            far = a if ends > 0 else b
            outline = [(x + far, y + diameter), (x + far, y), *((x + jx, jy) for jx, jy in jag)]
            picture.polygon(outline, "part")
    picture.text(x, y - 14 * px, f"wire {mm(length)}", "start")


def seam_section(
    told: str, thickness: float, gap: float, depth: float, angle: float, both: bool, wire: tuple[float, float]
) -> Drawing:
    """A butt seam cut across: the gap, the V from outside (and from inside), and the wire."""
    flare = depth * math.tan(angle / 2)
    mouth = gap + 2 * flare
    scale = min(170 / thickness, 170 / max(mouth, 0.4 * thickness))
    px = 1 / scale
    picture = Drawing(WIDE * px, max(thickness * scale + 130, 190) * px, "The seam cut across, to scale", told, scale)
    cx, top = 238 * px, 54 * px
    reach = mouth / 2 + 40 * px
    low = top + thickness
    inner = flare if both else 0.0
    right = [
        (gap / 2 + flare, top),
        (gap / 2, top + depth),
        (gap / 2, low - (depth if both else 0)),
        (gap / 2 + inner, low),
    ]
    left = [(-x, y) for x, y in right]
    if mouth > 0:
        picture.polygon([(cx + x, y) for x, y in [*right, *reversed(left)]], "hot")
    for face, way in ((right, 1), (left, -1)):
        picture.polygon([*((cx + x, y) for x, y in face), (cx + way * reach, low), (cx + way * reach, top)], "cut")
    if mouth * scale > 3:
        picture.dimension((cx - mouth / 2, top), (cx + mouth / 2, top), mm(mouth), away=18)
    picture.dimension((cx + reach, top), (cx + reach, low), mm(thickness), away=16)
    if flare > 0:
        picture.dimension((cx - reach, top + depth), (cx - reach, top), mm(depth), away=16)
    x = cx + reach + 112 * px
    picture.text(x, top + 78 * px, f"gap {mm(gap)}" if gap else "no gap", "start")
    if flare > 0:
        turn = with_unit(number_text(math.degrees(angle), 3), "degree")
        picture.text(x, top + 104 * px, f"V {turn}", "start")
    _wire(picture, x, top, wire)
    length, words = bar(scale)
    picture.scale_bar(length, words, cx - length / 2, low + 26 * px)
    return picture


def prong_side(told: str, diameter: float, height: float, dome: float, wire: tuple[float, float]) -> Drawing:
    """A prong from the side with what is added to it, and the wire."""
    stump = 1.2 * diameter
    tall = height + dome
    scale = min(230 / (tall + stump), 150 / diameter)
    px = 1 / scale
    picture = Drawing(WIDE * px, (scale * (tall + stump) + 80) * px, "The prong and its new tip, to scale", told, scale)
    cx, shoulder = 180 * px, 24 * px + dome + height
    half, neck = diameter / 2, 24 * px + dome
    jag = [(cx + half - diameter * i / 6, shoulder + stump + (5 * px if i % 2 else 0)) for i in range(7)]
    picture.polygon([(cx - half, shoulder), (cx + half, shoulder), *jag], "part")
    crown = [(cx + x, neck + y) for x, y in bowl(diameter, dome)] if dome > 0 else []
    rim = crown or [(cx - half, neck), (cx + half, neck)]
    picture.polygon([*rim, (cx + half, shoulder), (cx - half, shoulder)], "hot")
    if height > 0:
        picture.dimension((cx + half, neck), (cx + half, shoulder), mm(height), away=18)
    if dome > 0:
        picture.dimension((cx - half, neck), (cx - half, neck - dome), mm(dome), away=18)
    end = shoulder + stump
    picture.dimension((cx - half, end), (cx + half, end), mm(diameter), away=-22)
    _wire(picture, 370 * px, 60 * px, wire)
    length, words = bar(scale)
    picture.scale_bar(length, words, 490 * px - length / 2, end)
    return picture
