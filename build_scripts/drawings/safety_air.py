"""Drawings of the safety pages: fume, sealed hollows, cylinders, argon in a room."""

from __future__ import annotations

from build_scripts.drawings import drawing
from build_scripts.drawings.sketch import arrow, bar, leader, nozzle, polar, smooth, tick
from calculators.drawing import Drawing

STRIP = (300.0, 220.0)


def _strip(title: str, description: str) -> Drawing:
    return Drawing(*STRIP, title, description, scale=1.0)


def _plume(d: Drawing, points: list[tuple[float, float]]) -> None:
    for shift in (-7, 0, 7):
        smooth(d, [(x + shift * i / 2, y) for i, (x, y) in enumerate(points)], "ghost")


@drawing("fume-capture")
def fume_capture() -> Drawing:
    """An extraction mouth near the weld and one too far away, to the same scale."""
    d = Drawing(
        640,
        330,
        "Extraction near and far",
        "Left: the mouth of the extraction is 40 mm from the weld and the fume goes in. "
        "Right: it is 160 mm away and the fume rises past it to the face.",
        scale=1.0,
    )
    for x, away, good in ((70, 40, True), (330, 160, False)):
        bar(d, x - 40, 274, 230 if good else 320, 10, 0)
        d.rectangle(x, 256, 50, 12, "part")
        d.circle(x + 25, 256, 4, "hot")
        mouth = x + 25 + away
        nozzle(d, mouth, 250, 62, 34, 12)
        d.dimension((x + 25, 292), (mouth, 292), "", 0)
        d.text(mouth + 10, 298, f"{away} mm", "start")
        tick(d, x + 25, 40, good)
    _plume(d, [(95, 250), (106, 240), (122, 240), (136, 246)])
    arrow(d, (112, 232), (132, 238))
    _plume(d, [(355, 250), (352, 200), (362, 150), (354, 104)])
    _face(d, 410, 96)
    return d


def _face(d: Drawing, x: float, y: float) -> None:
    """A head from the side, looking left and down."""
    outline = [(-34, -4), (-30, -26), (-12, -40), (14, -40), (32, -22), (32, 6), (22, 26), (20, 44)]
    smooth(d, [(x + a, y + b) for a, b in outline], "ink")
    jaw = [(-34, -4), (-42, 10), (-34, 13), (-36, 22), (-30, 34), (-10, 34), (-6, 48)]
    smooth(d, [(x + a, y + b) for a, b in jaw], "ink")


def _shell(d: Drawing) -> None:
    d.ring_sector(150, 120, 62, 70, 0, 360, "cut")


@drawing("hollow-sealed")
def hollow_sealed() -> Drawing:
    """A sealed hollow: hot air presses on the thinnest place."""
    d = _strip(
        "Sealed hollow heated",
        "A hollow bead cut open, heated from above. Arrows inside press outward on the wall all around.",
    )
    _shell(d)
    d.beam(150, 50, 5, 44)
    d.circle(150, 52, 7, "hot")
    for angle in range(0, 360, 45):
        arrow(d, polar(150, 120, 14, angle), polar(150, 120, 54, angle))
    tick(d, 278, 24, False)
    return d


@drawing("hollow-vented")
def hollow_vented() -> Drawing:
    """A hollow with a vent hole that points away."""
    d = _strip(
        "Vented hollow heated",
        "A hollow bead cut open with a small hole at the lower right. An arrow of air leaves through the hole.",
    )
    d.ring_sector(150, 120, 62, 70, -34, 320, "cut")
    d.beam(150, 50, 5, 44)
    d.circle(150, 52, 7, "hot")
    arrow(d, polar(150, 120, 20, 323), polar(150, 120, 112, 323))
    tick(d, 278, 24, True)
    return d


@drawing("hollow-wet")
def hollow_wet() -> Drawing:
    """Water left in a hollow."""
    d = _strip(
        "Water in a hollow",
        "A hollow bead cut open with a small hole, a pool of water at its bottom and steam lines rising from it.",
    )
    d.ring_sector(150, 120, 62, 70, -34, 320, "cut")
    d.polygon([polar(150, 120, 62, a) for a in range(228, 313, 4)], "stone")
    for x in (132, 150, 168):
        smooth(d, [(x, 160), (x - 6, 144), (x + 6, 128), (x - 4, 108)], "ghost")
    tick(d, 278, 24, False)
    return d


def _cylinder(d: Drawing, x: float, floor: float, height: float, width: float) -> None:
    shoulder = floor - height + width * 0.9
    points = [(x - width / 2, floor), (x - width / 2, shoulder), (x - width * 0.22, floor - height)]
    mirrored = [(2 * x - px, py) for px, py in reversed(points)]
    d.polygon(points + mirrored, "part")
    d.rectangle(x - width * 0.2, floor - height - width * 0.55, width * 0.4, width * 0.55, "tool")


@drawing("gas-cylinders")
def gas_cylinders() -> Drawing:
    """Oxygen and fuel stored apart, to scale: 1.5 m cylinders, 6 m between."""
    d = Drawing(
        8.0,
        3.4,
        "Cylinders in store",
        "Two cylinders 1.5 m tall stand strapped to the wall with their caps on, "
        "oxygen at the left, fuel at the right, 6 m apart.",
        scale=80.0,
    )
    floor = 2.55
    d.line([(0.1, floor), (7.9, floor)], "ink heavy")
    for x, words in ((0.9, "oxygen"), (7.1, "fuel")):
        _cylinder(d, x, floor, 1.45, 0.24)
        for y in (1.5, 2.05):
            d.line([(x - 0.32, y), (x + 0.32, y)], "ink heavy")
            for end in (-0.32, 0.32):
                d.circle(x + end, y, 0.05, "tool")
        d.text(x, 2.85, words)
    leader(d, (0.9, 1.02), (1.5, 0.7), "cap on")
    leader(d, (1.2, 1.5), (1.75, 1.35), "strap")
    d.dimension((1.02, 2.2), (6.98, 2.2), "6 m", 0)
    return d


@drawing("gas-room")
def gas_room() -> Drawing:
    """A small room with an argon leak."""
    d = Drawing(
        640,
        380,
        "Argon in a small room",
        "A small closed room from the side. Gas from a cylinder lies thick near the floor and thin above. "
        "An alarm hangs at sitting breathing height beside a seated person; air leaves by a low opening in the door.",
        scale=1.0,
    )
    d.line([(40, 330), (40, 40), (600, 40), (600, 250)], "ink heavy")
    d.line([(40, 330), (600, 330), (600, 306)], "ink heavy")
    for y, step, start in ((320, 22, 52), (304, 28, 60), (286, 38, 54), (262, 56, 70), (230, 88, 80)):
        x = start
        while x < 590:
            if not (62 < x < 134) and not (372 < x < 470):
                d.circle(x, y, 3.2, "gas")
            x += step
    _cylinder(d, 98, 330, 170, 52)
    d.line([(40, 220), (126, 220), (126, 228), (40, 228)], "ink heavy")
    _sitter(d, 420, 330)
    d.rectangle(300, 190, 26, 20, "tool")
    leader(d, (313, 190), (300, 120), "oxygen alarm", "middle")
    arrow(d, (566, 290), (630, 290))
    leader(d, (602, 264), (522, 150), "low opening", "middle")
    leader(d, (192, 304), (222, 196), "argon sinks", "middle")
    return d


def _sitter(d: Drawing, x: float, floor: float) -> None:
    """A person on a stool at a bench, from the side, in plain lines."""
    d.circle(x, floor - 152, 17, "ink")
    smooth(d, [(x + 2, floor - 134), (x + 10, floor - 100), (x + 10, floor - 64)], "ink heavy")
    smooth(d, [(x + 10, floor - 64), (x - 30, floor - 62), (x - 34, floor - 30), (x - 34, floor - 2)], "ink heavy")
    smooth(d, [(x + 4, floor - 120), (x - 16, floor - 96), (x - 50, floor - 92)], "ink heavy")
    d.line([(x - 6, floor - 56), (x + 26, floor - 56)], "ink heavy")
    d.line([(x + 10, floor - 56), (x + 10, floor)], "ink")
    d.line([(x - 100, floor - 84), (x - 44, floor - 84)], "ink heavy")
    d.line([(x - 94, floor - 84), (x - 94, floor)], "ink")
