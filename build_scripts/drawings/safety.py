"""Drawings of the safety pages: laser light, eyewear, the arc's current and its light."""

from __future__ import annotations

import math

from build_scripts.drawings import drawing
from build_scripts.drawings.sketch import arrow, bar, gas, leader, nozzle, polar, smooth, tick
from calculators.drawing import Drawing, Point

STRIP = (300.0, 220.0)


def _strip(title: str, description: str) -> Drawing:
    return Drawing(*STRIP, title, description, scale=1.0)


@drawing("laser-cabinet")
def laser_cabinet() -> Drawing:
    """A pulsed laser's cabinet from the side."""
    d = Drawing(
        640,
        400,
        "Laser cabinet from the side",
        "A closed cabinet with walls cut through. The beam comes down inside. You look in through a microscope with a "
        "filter and a shutter, and reach in through two sleeved ports. A switch on the lid stops the beam.",
        scale=1.0,
        left=24.0,
        top=16.0,
    )
    for x, y, w, h in ((190, 150, 16, 130), (190, 350, 16, 40), (534, 150, 16, 240), (206, 374, 328, 16)):
        d.rectangle(x, y, w, h, "cut")
    d.rectangle(190, 134, 130, 16, "cut")
    d.rectangle(440, 134, 110, 16, "cut")
    d.rectangle(320, 60, 120, 90, "part")  # the head that brings the beam down
    d.beam(380, 312, 4, 162)
    d.ring_sector(380, 330, 13, 18, 0, 360, "part")
    d.circle(380, 314, 3, "hot")
    for side in (5, -5):  # tweezers that come out of the sleeve
        d.line([(264, 330 + side), (330, 330 + side * 1.4), (363, 330 + side * 0.4)], "ink heavy")
    _microscope(d)
    d.line([(190, 282), (226, 298), (264, 316), (264, 345), (226, 349), (190, 350)], "ink")
    d.line([(226, 298), (226, 349)], "ghost")
    nozzle(d, 396, 300, 74, 9, 40)
    gas(d, 386, 312, 22, 30, 60)
    d.polygon([(424, 316), (470, 324), (550, 324), (550, 346), (470, 346), (424, 346)], "tool")
    arrow(d, (404, 334), (440, 334))
    arrow(d, (550, 335), (612, 335))
    d.rectangle(514, 118, 22, 16, "hot")  # the lid switch
    leader(d, (525, 118), (552, 84), "interlock")
    leader(d, (600, 335), (610, 370), "extraction", "middle")
    leader(d, (204, 340), (110, 384), "hand port", "middle")
    leader(d, (240, 100), (176, 150), "filter, shutter", "end")
    leader(d, (380, 250), (450, 220), "beam")
    return d


def _microscope(d: Drawing) -> None:
    start, lean = (318.0, 150.0), 131.0
    bar(d, start[0], start[1], 128, 44, lean, "part")
    end = polar(start[0], start[1], 128, lean)
    bar(d, end[0], end[1], 34, 28, lean, "tool")
    for along in (50, 64):
        at = polar(start[0], start[1], along, lean)
        side: Point = polar(0, 0, 22, lean + 90)
        d.line([(at[0] - side[0], at[1] - side[1]), (at[0] + side[0], at[1] + side[1])], "ink heavy")


@drawing("laser-reflect-flat")
def laser_reflect_flat() -> Drawing:
    """A polished flat sends the beam on."""
    d = _strip(
        "Beam on a polished flat",
        "A beam comes down at a slant on a flat polished face and leaves at the same slant, almost as narrow.",
    )
    d.rectangle(30, 168, 240, 30, "part")
    d.polygon([(42, 20), (66, 20), (153, 168), (147, 168)], "beam")
    d.polygon([(147, 168), (153, 168), (262, 20), (232, 20)], "beam")
    arrow(d, (200, 96), (230, 50))
    return d


@drawing("laser-reflect-curve")
def laser_reflect_curve() -> Drawing:
    """A polished shank spreads the beam."""
    d = _strip(
        "Beam on a polished ring shank",
        "A beam comes straight down on the top of a round polished ring and spreads out as a fan on both sides.",
    )
    d.ring_sector(150, 240, 82, 100, 20, 160, "part")
    d.polygon([(138, 10), (162, 10), (153, 140), (147, 140)], "beam")
    for angle in (18, 38, 58, 122, 142, 162):
        arrow(d, polar(150, 138, 14, angle), polar(150, 138, 92, angle))
    return d


@drawing("laser-reflect-matte")
def laser_reflect_matte() -> Drawing:
    """A matte face scatters weakly in every direction."""
    d = _strip(
        "Beam on a matte face",
        "A beam comes down on a rough face. Short arrows leave it in every direction: each is weak, none is nothing.",
    )
    rough = [(30 + 10 * i, 168 + (5 if i % 2 else 0)) for i in range(25)]
    d.polygon([*rough, (270, 198), (30, 198)], "part")
    d.polygon([(138, 10), (162, 10), (153, 170), (147, 170)], "beam")
    for angle in range(15, 176, 15):
        if abs(angle - 90) > 10:
            arrow(d, polar(150, 164, 14, angle), polar(150, 164, 16 + 40 * math.sin(math.radians(angle)) + 8, angle))
    return d


@drawing("laser-eyewear-mark")
def laser_eyewear_mark() -> Drawing:
    """What the mark on a laser eye protector says."""
    d = Drawing(
        640,
        260,
        "Mark on laser eyewear",
        "One lens of a pair of laser eyewear with the mark I 1050-1100 LB7. Three lines name its parts: pulse mode, "
        "wavelength, strength.",
        scale=1.0,
    )
    outline = [(90, 70), (320, 56), (550, 70), (570, 130), (520, 196), (400, 206), (320, 188), (240, 206), (120, 196)]
    smooth(d, [*outline, (70, 130)], "stone", closed=True)
    for x, words in ((205, "I"), (320, "1050–1100"), (440, "LB7")):
        d.text(x, 138, words)
    leader(d, (205, 148), (150, 226), "pulse mode", "middle")
    leader(d, (320, 148), (320, 226), "wavelength, nm", "middle")
    leader(d, (440, 148), (490, 226), "strength", "middle")
    return d


def _tip(d: Drawing, x: float, y: float, lean: float) -> None:
    """A sharpened tungsten electrode just off ``x, y``, with its arc."""
    point = polar(x, y, 9, lean)
    shoulder = polar(x, y, 34, lean)
    side = polar(0, 0, 6, lean + 90)
    left: Point = (shoulder[0] + side[0], shoulder[1] + side[1])
    right: Point = (shoulder[0] - side[0], shoulder[1] - side[1])
    d.polygon([point, left, right], "tool")
    bar(d, shoulder[0], shoulder[1], 34, 12, lean)
    d.line([point, polar(x, y, 0, lean)], "hot")


def _clip(d: Drawing, x: float, y: float, lean: float) -> None:
    """A return clip whose jaws meet at ``x, y``."""
    for side in (9, -9):
        start = polar(x, y, 5, lean + 180)
        end = polar(polar(x, y, 44, lean)[0], polar(x, y, 44, lean)[1], side, lean + 90)
        d.line([start, end], "ink heavy")
    start = polar(x, y, 44, lean)
    smooth(d, [start, polar(x, y, 60, lean), polar(x, y, 78, lean - 8)], "ink")


def _ring_with_stone(d: Drawing) -> None:
    d.ring_sector(150, 98, 42, 52, 0, 360, "part")
    d.polygon([(130, 50), (170, 50), (164, 36), (136, 36)], "part")
    d.polygon([(130, 30), (170, 30), (162, 20), (138, 20)], "stone")
    d.polygon([(130, 30), (170, 30), (150, 48)], "stone")


@drawing("arc-path-near")
def arc_path_near() -> Drawing:
    """The clip right beside the weld."""
    d = _strip(
        "Return clip beside the weld",
        "A ring upside down in use: the tip points at the seam in the shank and the clip holds the shank beside it. "
        "The current's way through the metal is short.",
    )
    _ring_with_stone(d)
    _tip(d, 150, 151, 292)
    d.line([polar(150, 98, 47, a) for a in range(222, 271, 4)], "hot")
    _clip(d, *polar(150, 98, 47, 222), 212)
    tick(d, 278, 24, True)
    return d


@drawing("arc-path-stone")
def arc_path_stone() -> Drawing:
    """The clip on the head: current through the setting."""
    d = _strip(
        "Return clip on the head",
        "The tip points at the seam in the shank and the clip holds the head: the current runs round the shank and "
        "through the setting with its stone.",
    )
    _ring_with_stone(d)
    _tip(d, 150, 151, 292)
    d.line([*[polar(150, 98, 47, a) for a in range(270, 89, -4)], (132, 36)], "hot")
    _clip(d, 132, 34, 172)
    tick(d, 278, 24, False)
    return d


@drawing("arc-path-chain")
def arc_path_chain() -> Drawing:
    """The clip at the far end of a chain: current through every link."""
    d = _strip(
        "Return clip at the far end of a chain",
        "The tip points at one link and the clip holds another far away: the current jumps from link to link between.",
    )
    for i in range(6):
        x = 74 + i * 34
        if i % 2 == 0:
            d.ring_sector(x, 140, 14, 21, 0, 360, "part")
        else:
            d.rectangle(x - 22, 136, 44, 8, "part")
    d.line([(210, 119), (194, 138), (92, 140), (74, 122), (55, 134)], "hot")
    _tip(d, 210, 117, 62)
    _clip(d, 53, 142, 238)
    tick(d, 278, 24, False)
    return d


@drawing("arc-screen")
def arc_screen() -> Drawing:
    """The bench from above: who sees the arc."""
    d = Drawing(
        640,
        340,
        "Arc bench from above",
        "Seen from above: a bench with an arc, the worker behind a filter, opaque screens on three sides, another "
        "person outside the screens.",
        scale=1.0,
    )
    d.rectangle(200, 110, 240, 110, "part")
    d.circle(320, 160, 6, "hot")
    for angle in range(0, 360, 30):
        d.line([polar(320, 160, 13, angle), polar(320, 160, 28, angle)], "hot")
    d.line([(180, 250), (180, 80), (460, 80), (460, 250)], "ink heavy")
    d.line([(278, 206), (362, 206)], "ink heavy")
    for x, y in ((320, 268), (556, 120)):
        d.add(f'<ellipse class="part" cx="{x}" cy="{y + 8}" rx="48" ry="19"/>')
        d.circle(x, y, 20, "part")
    for end in ((450, 130), (450, 190), (190, 130), (190, 190)):
        d.line([(320 + (end[0] - 320) * 0.3, 160 + (end[1] - 160) * 0.3), end], "beam")
    leader(d, (290, 206), (120, 268), "filter, shutter", "middle")
    leader(d, (250, 80), (230, 44), "screen", "middle")
    leader(d, (556, 147), (556, 200), "others", "middle")
    return d
