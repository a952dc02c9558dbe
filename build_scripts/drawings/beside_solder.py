"""Drawings of fusing beside an old solder seam: distance, heat sink, order, and test pulse. Solder is gray."""

from __future__ import annotations

from build_scripts.drawings import drawing
from build_scripts.drawings.bench import spots
from build_scripts.drawings.setting_parts import crack
from build_scripts.drawings.sketch import Section, arrow, bar, gas, leader, nozzle, tick
from calculators.drawing import Drawing

WALL, INNER = 1.6, 8.66  # mm
POOL = 0.3  # mm, half of the pool of a shot
HARD, SOFT = (0.37, 0.40, 0.54), (0.57, 0.78, 2.01)  # mm from the middle of the pool: thick piece, sheet, wire


def _strip(title: str, description: str) -> tuple[Drawing, Section]:
    d = Drawing(9.0, 5.2, title, description, scale=40, left=-4.5, top=-2.6)
    return d, Section(0.0, 1.6, WALL, INNER)


def _band(d: Drawing, band: Section) -> None:
    """A band with an old solder seam at the left."""
    band.area(d, [(-4.0, WALL), (4.0, WALL), (4.0, 0), (-4.0, 0)], "cut")
    band.area(d, [(-2.3, WALL), (-2.15, WALL), (-2.15, 0), (-2.3, 0)], "part tool")


@drawing("beside-before")
def beside_before() -> Drawing:
    """A crack 3 mm from a solder seam."""
    d, band = _strip(
        "Beside old solder, before",
        "A band in section. An old solder seam runs through it at the left. A crack from outside lies 3 mm to the "
        "right.",
    )
    _band(d, band)
    crack(d, band.at(0.9, WALL), band.at(1.0, 0.8), 0.08, kind="ink heavy")
    return d


@drawing("beside-fused")
def beside_fused() -> Drawing:
    """Filled, with a copper jaw between."""
    d, band = _strip(
        "Beside old solder, fused",
        "The crack is opened and filled. A copper jaw lies on the band between the fill and the solder seam.",
    )
    x, y = band.at(-1.0, WALL)
    bar(d, x, y + 0.15, 2.6, 0.55, 118, "part")
    _band(d, band)
    band.area(d, [(0.4, WALL), (0.8, 0.7), (1.1, 0.7), (1.5, WALL), (1.2, WALL + 0.14), (0.7, WALL + 0.14)], "hot")
    bx, by = band.at(0.95, WALL + 0.15)
    d.beam(bx, by, 0.5, 2.0, 0.3)
    nozzle(d, 3.1, -1.3, 1.0, 0.45, 35)
    gas(d, 1.5, -0.2, 1.8, 14, 35)
    return d


@drawing("beside-finished")
def beside_finished() -> Drawing:
    """Flush; the old seam untouched."""
    d, band = _strip("Beside old solder, finished", "The fill is flush. The old seam is as it was.")
    _band(d, band)
    band.area(d, [(0.42, WALL), (0.8, 0.7), (1.1, 0.7), (1.48, WALL)], "hot")
    return d


@drawing("beside-choice")
def beside_choice() -> Drawing:
    """Cut out, weld beside, or leave."""
    d = Drawing(
        15.6,
        4.6,
        "Cut out, beside, or never",
        "Three bands in section with an old seam. Left: the seam is cut out between dashed lines. Middle: the fused "
        "place keeps its distance. Right: a seam fused over the solder is full of pits.",
        scale=40,
        left=-7.8,
        top=-2.3,
    )
    for x in (-5.2, 0.0, 5.2):
        d.rectangle(x - 2.2, -0.8, 4.4, WALL, "cut")
    d.rectangle(-5.3, -0.8, 0.15, WALL, "part tool")
    for x in (-5.7, -4.7):
        d.line([(x, -1.2), (x, 1.2)], "ghost")
    d.rectangle(-1.2, -0.8, 0.15, WALL, "part tool")
    d.polygon([(0.5, -0.8), (0.9, 0.1), (1.1, 0.1), (1.5, -0.8), (1.0, -0.92)], "hot")
    d.dimension((-1.05, -1.1), (0.5, -1.1), "")
    d.polygon([(4.6, -0.8), (5.05, 0.2), (5.35, 0.2), (5.8, -0.8), (5.2, -0.95)], "hot")
    for px, py in ((5.0, -0.6), (5.3, -0.35), (5.15, -0.05), (5.45, -0.7), (4.85, -0.75)):
        d.circle(px, py, 0.08, "ink heavy")
    d.rectangle(5.13, 0.2, 0.15, 0.6, "part tool")
    for x, good in ((-5.2, True), (0.0, True), (5.2, False)):
        tick(d, x, 1.75, good)
    return d


@drawing("beside-zones")
def beside_zones() -> Drawing:
    """How far one shot brings solder to its limit, in thick metal, sheet and wire."""
    d = Drawing(
        15.6,
        6.6,
        "How far one shot reaches",
        "Three pools 0.6 mm across, to scale: in a thick piece, in sheet, in wire. An inner dashed line shows how "
        "far the metal passes 500 degrees, an outer one 150 degrees: near in the thick piece, two millimeters away "
        "in the wire.",
        scale=40,
        left=-7.8,
        top=-3.3,
    )
    d.rectangle(-7.4, -1.7, 4.4, 3.4)
    d.rectangle(-2.2, -1.4, 4.4, 2.8)
    d.rectangle(2.8, -0.35, 4.8, 0.7)
    for x, hard, soft in zip((-5.2, 0.0, 5.2), HARD, SOFT, strict=True):
        if x > 5:
            for reach in (hard, soft):
                for side in (-1, 1):
                    d.line([(x + side * reach, -0.75), (x + side * reach, 0.75)], "ghost")
        else:
            d.circle(x, 0, hard, "ghost")
            d.circle(x, 0, soft, "ghost")
        d.circle(x, 0, POOL, "hot")
    for x, words in ((-5.2, "thick"), (0.0, "sheet"), (5.2, "wire")):
        d.text(x, 2.5, words)
    d.dimension((5.2, -1.1), (7.21, -1.1), "2 mm", 0)
    return d


@drawing("beside-sink")
def beside_sink() -> Drawing:
    """Jaws between the fused place and the solder."""
    d = Drawing(
        15.6,
        6.2,
        "Copper between",
        "A strip in section. Left the solder seam, right the fused place. Two copper jaws grip the strip between "
        "them, above and below. Heat that comes from the right goes into the jaws.",
        scale=40,
        left=-7.8,
        top=-3.1,
    )
    d.rectangle(-6.8, -0.6, 13.6, 1.2, "cut")
    d.rectangle(-4.0, -0.6, 0.18, 1.2, "part tool")
    for side in (-1, 1):
        d.polygon([(-2.2, side * 0.6), (0.2, side * 0.6), (0.6, side * 2.7), (-2.6, side * 2.7)])
    d.polygon([(2.4, -0.6), (2.8, 0.3), (3.1, 0.3), (3.5, -0.6), (2.95, -0.75)], "hot")
    arrow(d, (2.2, 0), (0.4, 0))
    arrow(d, (-0.6, -0.9), (-0.6, -2.2))
    arrow(d, (-0.6, 0.9), (-0.6, 2.2))
    leader(d, (-3.9, -0.4), (-4.8, -1.6), "solder", "middle")
    leader(d, (0.4, -2.0), (1.6, -2.4), "copper")
    return d


@drawing("beside-order")
def beside_order() -> Drawing:
    """Begin near the solder, go away from it."""
    d = Drawing(
        15.6,
        4.8,
        "Begin near, go away",
        "A seam from above with an old solder line at its left end. The first run begins 1 mm from the solder and "
        "goes to the right. The second begins further right, after a rest.",
        scale=40,
        left=-7.8,
        top=-2.4,
    )
    d.rectangle(-7.0, -1.4, 14.0, 2.8)
    d.rectangle(-5.1, -1.4, 0.18, 2.8, "part tool")
    spots(d, [(-3.6 + 0.25 * i, 0) for i in range(12)], 0.5)
    spots(d, [(0.6 + 0.25 * i, 0) for i in range(12)], 0.5)
    arrow(d, (-3.4, -0.75), (-1.2, -0.75), "ink heavy")
    arrow(d, (0.8, -0.75), (3.0, -0.75), "ink heavy")
    d.text(-3.9, -0.6, "1")
    d.text(0.3, -0.6, "2")
    d.dimension((-4.92, 0.8), (-3.85, 0.8), "")
    leader(d, (-4.4, 0.8), (-3.6, 1.9), "1 mm")
    return d


@drawing("beside-test")
def beside_test() -> Drawing:
    """One weak shot on the freshly filed face."""
    d = Drawing(
        15.6,
        4.6,
        "The test pulse",
        "Two filed faces from the front, each with one weak shot. Left: bright and smooth, clean metal. Right: "
        "gray, with pits and a sooty rim, solder is left.",
        scale=40,
        left=-7.8,
        top=-2.3,
    )
    for x in (-3.9, 3.9):
        d.rectangle(x - 3.0, -1.3, 6.0, 2.6)
    d.circle(-3.9, 0, 0.45, "hot")
    d.rectangle(3.75, -1.3, 0.3, 2.6, "part tool")
    d.circle(3.9, 0, 0.62, "ghost")
    d.circle(3.9, 0, 0.45, "hot")
    for px, py in ((3.75, -0.15), (4.05, 0.1), (3.85, 0.22), (4.1, -0.2)):
        d.circle(px, py, 0.06, "ink heavy")
    tick(d, -3.9, 1.85, True)
    tick(d, 3.9, 1.85, False)
    return d
