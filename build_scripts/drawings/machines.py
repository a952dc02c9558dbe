"""Machines in principle: how light, arc and flame reach the metal, and how much of a shank each one heats."""

from __future__ import annotations

import math

from build_scripts.drawings import drawing
from build_scripts.drawings.sketch import arrow, leader, polar, smooth
from calculators.drawing import Drawing

SIZE = (300.0, 260.0)


@drawing("machine-beam-path")
def beam_path() -> Drawing:
    """From the rod of crystal to the piece."""
    d = Drawing(
        640, 380, "Way of the beam in principle",
        "A lamp pumps a crystal between two mirrors. Light leaves through the front mirror, passes a beam shutter "
        "and widening lenses, turns down at a slanted mirror that lets you look through it, and is gathered by a lens. "
        "A cover slide under the lens catches spatter.",
        scale=1.0,
    )  # fmt: skip
    d.rectangle(84, 92, 150, 22, "stone")
    d.rectangle(84, 66, 150, 14, "part")
    d.rectangle(58, 78, 8, 50, "part tool")
    d.rectangle(252, 78, 8, 50, "part tool")
    d.polygon([(66, 96), (66, 110), (84, 110), (84, 96)], "beam")
    d.polygon([(234, 96), (252, 96), (252, 110), (234, 110)], "beam")
    d.polygon([(260, 97), (350, 97), (350, 109), (260, 109)], "beam")
    d.polygon([(350, 97), (392, 85), (392, 121), (350, 109)], "beam")
    d.polygon([(392, 85), (520, 85), (484, 121), (392, 121)], "beam")
    d.rectangle(300, 72, 8, 22, "part tool")
    d.rectangle(300, 112, 8, 22, "part tool")
    d.path([("M", [(350, 82)]), ("Q", [(338, 103), (350, 124)]), ("Q", [(362, 103), (350, 82)]), ("Z", [])], "stone")
    d.path([("M", [(392, 76)]), ("Q", [(378, 103), (392, 130)]), ("Q", [(406, 103), (392, 76)]), ("Z", [])], "stone")
    d.polygon([(472, 133), (466, 127), (526, 67), (532, 73)], "part tool")
    d.polygon([(484, 121), (520, 85), (520, 214), (484, 214)], "beam")
    d.path([("M", [(472, 214)]), ("Q", [(502, 194), (532, 214)]), ("Q", [(502, 234), (472, 214)]), ("Z", [])], "stone")
    d.polygon([(484, 214), (520, 214), (504, 326), (500, 326)], "beam")
    d.rectangle(470, 250, 64, 8, "stone")
    d.rectangle(420, 326, 164, 26, "part")
    d.polygon([(502 + 13 * math.cos(math.pi * i / 12), 326 + 9 * math.sin(math.pi * i / 12)) for i in range(13)], "hot")
    d.line([(502, 62), (502, 18)], "ghost")
    leader(d, (160, 66), (160, 40), "lamp", "middle")
    leader(d, (120, 114), (108, 150), "crystal", "middle")
    leader(d, (304, 134), (304, 168), "shutter", "middle")
    leader(d, (502, 18), (522, 18), "your eye")
    leader(d, (532, 214), (560, 204), "lens")
    leader(d, (534, 254), (560, 264), "slide")
    return d


@drawing("machine-arc-path")
def arc_path() -> Drawing:
    """The round trip of the current."""
    d = Drawing(
        640, 360, "Way of the arc's current in principle",
        "The machine stores charge. On the pulse, current runs through a tungsten tip, jumps the gap as an arc, "
        "crosses the piece and comes back through the return clamp. Argon flows around the tip.",
        scale=1.0,
    )  # fmt: skip
    d.rectangle(40, 90, 130, 180, "part tool")
    for x in (88, 106):
        d.line([(x, 150), (x, 210)], "ink heavy")
    d.line([(60, 180), (88, 180)], "ink")
    d.line([(106, 180), (150, 180)], "ink")
    smooth(d, [(150, 180), (170, 130), (260, 70), (380, 62), (428, 92)], "ink heavy")
    smooth(d, [(60, 180), (60, 240), (110, 300), (240, 320), (330, 300)], "ink heavy")
    tip = (432.0, 206.0)
    d.polygon([tip, (442, 176), (442, 92), (422, 92), (422, 176)], "part tool")
    for side in (-1, 1):
        d.line([(432 + side * 26, 92), (432 + side * 26, 170), (432 + side * 20, 186)], "ink")
        for i in range(4):
            d.circle(432 + side * (17 - i), 186 + 12 * i, 2.6, "gas")
    d.polygon([(428, 208), (436, 208), (450, 240), (414, 240)], "beam")
    d.rectangle(320, 240, 240, 40, "part")
    d.polygon(
        [(432 + 26 * math.cos(math.pi * i / 16), 240 + 20 * math.sin(math.pi * i / 16)) for i in range(17)], "hot"
    )
    d.polygon([(318, 226), (372, 232), (372, 240), (318, 240)], "part tool")
    d.polygon([(318, 294), (372, 288), (372, 280), (318, 280)], "part tool")
    d.rectangle(308, 224, 14, 72, "part tool")
    arrow(d, (424, 262), (386, 262))
    arrow(d, (250, 73), (300, 66))
    leader(d, (446, 130), (486, 120), "tungsten")
    leader(d, (452, 200), (494, 192), "argon")
    leader(d, (316, 296), (330, 330), "return clamp")
    leader(d, (105, 90), (105, 62), "store", "middle")
    return d


def _shank(title: str, description: str) -> Drawing:
    """A shank 1.5 mm thick seen from the side, 12 mm of it; one millimeter is 24 units."""
    d = Drawing(300 / 24, 260 / 24, title, description, scale=24.0, left=-6.25, top=-7.0)
    d.rectangle(-6.25, 0, 12.5, 1.5, "part")
    return d


@drawing("machine-spot-laser")
def spot_laser() -> Drawing:
    """A beam on a shank, to scale."""
    d = _shank(
        "Laser on a shank", "A beam 0.5 mm wide melts a spot 0.5 mm wide and 0.2 mm deep in a shank 1.5 mm thick."
    )
    d.polygon([(-1.4, -7), (1.4, -7), (0.25, 0), (-0.25, 0)], "beam")
    d.polygon([(0.25 * math.cos(math.pi * i / 12), 0.2 * math.sin(math.pi * i / 12)) for i in range(13)], "hot")
    d.scale_bar(1, "1 mm", -5.2, 2.5)
    return d


@drawing("machine-spot-arc")
def spot_arc() -> Drawing:
    """An arc on the same shank, to scale."""
    d = _shank("Arc on a shank", "A tungsten tip 0.6 mm thick. Its arc melts about 1 mm across and 0.5 mm deep.")
    d.polygon([(0, -0.7), (0.3, -2.0), (0.3, -7), (-0.3, -7), (-0.3, -2.0)], "part tool")
    d.polygon([(-0.1, -0.65), (0.1, -0.65), (0.45, 0), (-0.45, 0)], "beam")
    d.polygon([(0.5 * math.cos(math.pi * i / 16), 0.5 * math.sin(math.pi * i / 16)) for i in range(17)], "hot")
    d.scale_bar(1, "1 mm", -5.2, 2.5)
    return d


@drawing("machine-spot-torch")
def spot_torch() -> Drawing:
    """A flame on the same shank, to scale."""
    d = _shank("Torch on a shank", "A flame several millimeters wide wraps the shank. Centimeters of it glow.")
    d.rectangle(-6.25, 0, 12.5, 1.5, "soft")
    d.rectangle(-3.4, 0, 6.8, 1.5, "hot")
    d.path(
        [
            ("M", [(-0.5, -7)]), ("C", [(-3.2, -4.5), (-4.2, -1.5), (-4.6, 0)]), ("L", [(4.6, 0)]),
            ("C", [(4.2, -1.5), (3.2, -4.5), (0.5, -7)]), ("Z", []),
        ],
        "beam",
    )  # fmt: skip
    d.path(
        [("M", [(-0.5, -7)]), ("C", [(-1.1, -5.4), (-0.7, -3.4), (0, -2.2)]),
         ("C", [(0.7, -3.4), (1.1, -5.4), (0.5, -7)]), ("Z", [])], "ink",
    )  # fmt: skip
    d.scale_bar(1, "1 mm", -5.2, 2.5)
    return d


@drawing("machine-lens-care")
def lens_care() -> Drawing:
    """Spatter on the cover slide throws the beam about."""
    d = Drawing(
        640, 250, "Clean and spattered cover slide",
        "Left, a clean slide: the beam stays narrow. Right, drops of metal on the slide block and scatter it: the spot "
        "is wide and weak, and the slide gets hot.",
        scale=1.0,
    )  # fmt: skip
    for x, dirty in ((160, False), (480, True)):
        half = 34 if dirty else 6
        d.polygon([(x - 50, 20), (x + 50, 20), (x + 26, 104), (x - 26, 104)], "beam")
        d.polygon([(x - 26, 112), (x + 26, 112), (x + half, 200), (x - half, 200)], "beam")
        d.rectangle(x - 66, 104, 132, 8, "stone")
        d.rectangle(x - 110, 200, 220, 24, "part")
        if dirty:
            for at, size in ((-16, 5), (2, 7), (15, 4), (-40, 5), (36, 6)):
                d.circle(x + at, 113 + size / 2, size, "dark")
            for angle in (212, 330):
                arrow(d, polar(x, 116, 14, angle), polar(x, 116, 62, angle))
        else:
            d.polygon(
                [(x + 8 * math.cos(math.pi * i / 12), 200 + 8 * math.sin(math.pi * i / 12)) for i in range(13)], "hot"
            )
    return d
