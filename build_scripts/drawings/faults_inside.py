"""What a fault looks like inside: sections of 1.5 mm walls unless the words say otherwise, drawn to scale."""

from __future__ import annotations

import math

from build_scripts.drawings import drawing
from build_scripts.drawings.sketch import Section, arrow, leader, open_air, polar, tick
from calculators.choosing.view import crack, melt, round_of
from calculators.drawing import Drawing, Point

WALL, FACE, LEFT, RIGHT = 1.5, 1.0, 2.0, 6.0  # the outer face lies at y = FACE; the two halves stand at LEFT and RIGHT


def halves(title: str, told: str, height: float = 3.3) -> Drawing:
    """An empty picture for two sections side by side, 8 mm wide."""
    return Drawing(8.0, height, title, told, scale=80)


def walls(d: Drawing, x: float, gap: float = 0.0, lift: float = 0.0, reach: float = 1.75) -> Section:
    """Two ends that meet at ``x`` with a gap; the right one ``lift`` higher."""
    band = Section(x, FACE + WALL, WALL)
    band.area(d, [(-reach, 0), (-gap / 2, 0), (-gap / 2, WALL), (-reach, WALL)], "cut")
    band.area(d, [(gap / 2, lift), (reach, lift), (reach, WALL + lift), (gap / 2, WALL + lift)], "cut")
    return band


def fill(d: Drawing, x: float, proud: float = 0.12) -> None:
    """A V filled from both faces down to where the two fills meet."""
    for face, up in ((FACE, 1.0), (FACE + WALL, -1.0)):
        d.polygon(melt(x, face, 0.8, 0.82, proud, up), "hot")


def solid(d: Drawing, x: float, reach: float = 1.75) -> None:
    """A wall without a seam."""
    d.rectangle(x - reach, FACE, 2 * reach, WALL, "cut")


@drawing("inside-pinholes")
def pinholes() -> Drawing:
    """Holes below the face: only one shows now, the next one after filing."""
    d = halves(
        "Pinholes in section",
        "A filled seam with gas holes at several depths. Filing to the dashed line opens two more.",
    )
    walls(d, 4.0, reach=3.6)
    fill(d, 4.0, 0.2)
    for x, y, radius in (
        (3.85, 0.84, 0.06),
        (4.1, 1.02, 0.08),
        (3.92, 1.28, 0.07),
        (4.05, 1.62, 0.1),
        (3.97, 2.1, 0.06),
    ):
        d.circle(x, y, radius, "dark")
    d.line([(0.4, 1.02), (7.6, 1.02)], "ghost")
    leader(d, (3.82, 0.83), (2.9, 0.45), "shows now", "end")
    leader(d, (4.15, 1.0), (5.1, 0.45), "shows after filing")
    leader(d, (4.1, 1.65), (4.9, 2.95), "hidden")
    return d


@drawing("inside-sunken-seam")
def sunken_seam() -> Drawing:
    """A gap takes its metal from both ends."""
    d = halves(
        "Where the metal of a sunken seam went",
        "Left: a gap of 0.1 mm before fusing. Right: the fused metal filled the gap and lies lower than the face.",
    )
    walls(d, LEFT, 0.1)
    d.dimension((LEFT - 0.05, FACE - 0.12), (LEFT + 0.05, FACE - 0.12), "")
    d.text(LEFT, FACE - 0.3, "gap 0.1 mm")
    walls(d, RIGHT)
    d.polygon(melt(RIGHT, FACE, 0.6, 0.5), "hot")
    dip = [*round_of(RIGHT, FACE, 0.3, -0.13, 0, 180), (RIGHT - 0.3, FACE - 0.04), (RIGHT + 0.3, FACE - 0.04)]
    open_air(d, dip)
    d.line([(RIGHT - 1.7, FACE), (RIGHT + 1.7, FACE)], "ghost")
    leader(d, (RIGHT, FACE + 0.08), (RIGHT + 0.5, FACE - 0.3), "sunken")
    arrow(d, (3.75, 1.75), (4.2, 1.75))
    return d


@drawing("inside-crack")
def cracked() -> Drawing:
    """The crack reaches below what shows."""
    d = halves(
        "A crack in section",
        "A crack runs from the face through the fused metal. The V that is ground out must pass its end.",
    )
    walls(d, LEFT)
    fill(d, LEFT)
    crack(d, [(LEFT + 0.02, 0.9), (LEFT - 0.06, 1.4), (LEFT + 0.1, 2.0)], 0.09)
    walls(d, RIGHT)
    fill(d, RIGHT)
    open_air(d, [(RIGHT - 0.75, FACE - 0.14), (RIGHT + 0.05, 2.15), (RIGHT + 0.15, 2.15), (RIGHT + 0.8, FACE - 0.14)])
    d.line([(RIGHT - 0.7, FACE), (RIGHT + 0.05, 2.15), (RIGHT + 0.15, 2.15), (RIGHT + 0.75, FACE)], "ink")
    leader(d, (RIGHT + 0.1, 2.15), (RIGHT + 0.75, 2.95), "past its end")
    arrow(d, (3.75, 1.75), (4.2, 1.75))
    return d


@drawing("inside-dull-ring")
def dull_ring() -> Drawing:
    """The frosted skin lies outside the pool."""
    d = halves(
        "A dull ring in section", "Around the melted spot a wide thin skin only reached the melting point or met air."
    )
    solid(d, 4.0, 3.6)
    d.polygon(melt(4.0, FACE, 2.4, 0.1), "gray")
    d.polygon(melt(4.0, FACE, 2.4, 0.1), "gray")
    d.polygon(melt(4.0, FACE, 0.5, 0.35), "hot")
    d.beam(4.0, FACE, 0.5, 0.8)
    leader(d, (3.1, FACE + 0.04), (2.4, 0.55), "dull skin", "end")
    leader(d, (4.1, 1.2), (5.6, 0.55), "melted")
    return d


@drawing("inside-undercut")
def undercut() -> Drawing:
    """Grooves at the toes of a proud bead."""
    d = halves(
        "Undercut in section",
        "A proud bead with a groove melted at each side. A limit of a tenth of the wall is 0.15 mm here.",
    )
    walls(d, 4.0, reach=3.6)
    d.polygon(melt(4.0, FACE, 1.0, 0.6, 0.2), "hot")
    for side in (-1, 1):
        groove = round_of(4.0 + side * 0.55, FACE, 0.12, -0.22, 0, 180)
        open_air(d, [*groove, (4.0 + side * 0.55 - 0.12, FACE - 0.03), (4.0 + side * 0.55 + 0.12, FACE - 0.03)])
    d.line([(1.0, FACE + 0.15), (3.3, FACE + 0.15)], "ghost")
    d.dimension((1.6, FACE), (1.6, FACE + 0.15), "")
    d.text(1.6, FACE - 0.2, "limit 0.15 mm")
    leader(d, (4.56, FACE + 0.15), (5.4, 0.5), "groove")
    return d


@drawing("inside-cold-lap")
def cold_lap() -> Drawing:
    """Filler that lies on cold metal, and filler that wets."""
    d = halves(
        "Cold lap and good wetting",
        "Left: the bead meets the wall at a steep edge with a gap under it. Right: the edge runs out thin.",
    )
    solid(d, LEFT)
    solid(d, RIGHT)
    bead = round_of(LEFT, FACE - 0.22, 0.75, 0.32, -200, 160)
    d.polygon(bead, "hot")
    d.polygon(
        [(LEFT - 0.62, FACE), (LEFT - 0.3, FACE - 0.02), (LEFT - 0.3, FACE + 0.02), (LEFT - 0.62, FACE + 0.02)], "dark"
    )
    d.polygon([(LEFT + 0.75, FACE), (LEFT + 0.15, FACE - 0.02), (LEFT + 0.15, FACE + 0.02)], "dark")
    d.polygon(melt(RIGHT, FACE, 1.5, 0.45, 0.25), "hot")
    leader(d, (LEFT + 0.5, FACE), (LEFT + 1.0, 0.45), "not joined")
    leader(d, (RIGHT + 0.68, FACE - 0.05), (RIGHT + 0.75, 0.45), "runs out thin", "middle")
    tick(d, LEFT, 2.9, good=False)
    tick(d, RIGHT, 2.9, good=True)
    return d


@drawing("inside-hollow-core")
def hollow_core() -> Drawing:
    """Two skins that do not meet, and a V that lets them meet."""
    d = halves(
        "Hollow core and a fused core",
        "Left: pulses 0.4 mm deep on square faces leave 0.7 mm unfused. Right: a V lets the fill meet.",
    )
    walls(d, LEFT)
    for face, up in ((FACE, 1.0), (FACE + WALL, -1.0)):
        d.polygon(melt(LEFT, face, 0.5, 0.4, 0.04, up), "hot")
    d.line([(LEFT, FACE + 0.4), (LEFT, FACE + WALL - 0.4)], "ink heavy")
    d.dimension((LEFT, FACE + 0.4), (LEFT, FACE + WALL - 0.4), "", -50)
    leader(d, (LEFT - 0.6, 1.9), (LEFT - 0.9, 2.95), "0.7 mm", "end")
    walls(d, RIGHT)
    fill(d, RIGHT)
    tick(d, LEFT, 2.95, good=False)
    tick(d, RIGHT, 2.95, good=True)
    return d


@drawing("inside-step")
def step() -> Drawing:
    """Filing a step away costs the wall."""
    d = halves(
        "A step in section",
        "The right end stands 0.3 mm higher. Filed flush on both faces, 1.2 mm of a 1.5 mm wall is left.",
    )
    band = walls(d, 4.0, lift=0.3, reach=3.6)
    band.melt(d, 0.02, 0.5, 0.4, -0.05)
    for y in (FACE, FACE + WALL - 0.3):
        d.line([(0.4, y), (7.6, y)], "ghost")
    d.dimension((7.0, FACE), (7.0, FACE + WALL - 0.3), "")
    leader(d, (7.0, 1.9), (6.4, 2.95), "1.2 mm left", "end")
    d.dimension((3.2, FACE), (3.2, FACE - 0.3), "")
    d.text(3.0, FACE - 0.15, "0.3 mm", "end")
    return d


@drawing("inside-shrink-hole")
def shrink_hole() -> Drawing:
    """The pool freezes from the rim; the last metal is missing in the middle."""
    d = halves(
        "A shrink hole in section",
        "Left: a pool that froze at once has a pipe in its middle. Right: the same pool topped up by a weaker shot.",
    )
    solid(d, LEFT)
    d.polygon(melt(LEFT, FACE, 1.0, 0.7), "hot")
    pipe = [
        (LEFT - 0.2, FACE - 0.03),
        (LEFT - 0.06, FACE + 0.25),
        (LEFT, FACE + 0.5),
        (LEFT + 0.06, FACE + 0.25),
        (LEFT + 0.2, FACE - 0.03),
    ]
    d.polygon(pipe, "dark")
    for side in (-1, 1):
        arrow(d, (LEFT + side * 0.12, FACE + 0.35), (LEFT + side * 0.42, FACE + 0.35))
    solid(d, RIGHT)
    d.polygon(melt(RIGHT, FACE, 1.0, 0.7, 0.06), "hot")
    d.polygon(melt(RIGHT, FACE, 0.7, 0.55, 0.06), "hot")
    leader(d, (LEFT, FACE + 0.1), (LEFT + 0.6, 0.5), "pipe")
    leader(d, (RIGHT + 0.3, FACE + 0.2), (RIGHT + 0.7, 0.5), "weaker shot", "middle")
    return d


@drawing("inside-seam-line")
def seam_line() -> Drawing:
    """Old solder left between the new seams."""
    d = halves(
        "Why a line shows",
        "Left: old solder left in the faces shows as a line after polish. Right: cut out to clean metal, no line.",
    )
    walls(d, LEFT, 0.16)
    d.rectangle(LEFT - 0.08, FACE, 0.16, WALL, "gray")
    d.rectangle(LEFT - 0.08, FACE, 0.16, WALL, "gray")
    d.polygon(melt(LEFT, FACE, 0.55, 0.4), "hot")
    d.line([(LEFT - 1.75, FACE + 0.42), (LEFT + 1.75, FACE + 0.42)], "ghost")
    leader(d, (LEFT + 0.06, FACE + 0.9), (LEFT + 0.6, 2.95), "old solder")
    walls(d, RIGHT)
    fill(d, RIGHT, 0.0)
    tick(d, RIGHT, 2.95, good=True)
    return d


def curve(x: float, y: float, reach: float, start: float, end: float) -> list[Point]:
    """A piece of a circle for drafts and swirls."""
    return [polar(x, y, reach, start + (end - start) * i / 12) for i in range(13)]


@drawing("inside-black-soot")
def black_soot() -> Drawing:
    """Gas too strong draws air in; gas from the side, close and soft, covers the spot."""
    d = halves(
        "Gas on the spot",
        "Left: a hard jet from far off draws air in at the spot. Right: a soft flow from 5 to 10 mm covers it.",
    )
    for x in (LEFT, RIGHT):
        solid(d, x)
        d.polygon(melt(x, FACE + 0.0, 0.5, 0.35), "hot")
        d.line([(x, 0.1), (x, FACE)], "dim thin")
    for i in range(5):
        d.circle(LEFT + 0.55 + 0.28 * i, FACE - 0.12 - 0.14 * i, 0.05, "gas")
    for y in (0.35, 0.7):
        line = curve(LEFT - 0.75, y, 0.3, 200, -20)
        d.line(line, "ink")
        arrow(d, line[-2], line[-1])
    for i in range(30):
        px, py = RIGHT - 0.3 + 0.19 * (i % 8) + 0.1 * (i // 8 % 2), FACE - 0.08 - 0.16 * (i // 8)
        d.circle(px, py, 0.04, "gas")
    for i in range(26):
        d.circle(LEFT - 0.45 + (i % 13) * 0.075, FACE - 0.03 * (1 + math.sin(i * 2.1)), 0.025, "dark")
    d.text(LEFT - 1.2, 0.4, "air", "end")
    tick(d, LEFT, 2.9, good=False)
    tick(d, RIGHT, 2.9, good=True)
    return d
