"""Drawings of a head fused to a shank: peg through the shank, saddle with fillets, head between two ends."""

from __future__ import annotations

from build_scripts.drawings import drawing
from build_scripts.drawings.bench import spots
from build_scripts.drawings.setting_parts import brilliant, prong
from build_scripts.drawings.sketch import Section, arrow, leader, open_air, polar, tick
from calculators.drawing import Drawing, Point

INNER, WALL = 8.66, 1.8  # mm: US 7, thickness on top
PEG, STONE = 1.2, 6.5  # mm
TOP = -(INNER + WALL)


def _strip(title: str, description: str) -> Drawing:
    return Drawing(24.0, 30.0, title, description, scale=15, left=-12.0, top=-18.2)


def _head(d: Drawing, y: float, peg: float = 0.0, stone: bool = False, x: float = 0.0) -> None:
    """A four-prong head whose foot is at ``y``, with a peg ``peg`` long below it."""
    if peg:
        d.rectangle(x - PEG / 2, y - 0.1, PEG, peg + 0.1)
    d.polygon([(x - 1.5, y), (x + 1.5, y), (x + 2.1, y - 1.4), (x - 2.1, y - 1.4)])
    d.rectangle(x - 2.5, y - 3.1, 5.0, 0.7)
    if stone:
        brilliant(d, x, y - 4.6, STONE)
    for side in (-1, 1):
        prong(d, x + side * 1.75, y - 1.0, y - 5.3, 1.0, side * 1.6)


@drawing("head-shank-before")
def head_shank_before() -> Drawing:
    """Old foot filed away, a hole in the top, the head above it."""
    d = _strip(
        "Head to shank, before",
        "A ring from the side. The old head is off, the top is filed clean and has a hole. A new head with a peg "
        "stands above it.",
    )
    d.ring_sector(0, 0, INNER, INNER + WALL, 0, 360)
    for side in (-1, 1):
        d.line([(side * PEG / 2, TOP - 0.02), (side * PEG / 2, -INNER)], "ghost")
    _head(d, TOP - 2.2, peg=1.6)
    arrow(d, (4.6, -13.8), (4.6, -11.6), "ink heavy")
    return d


@drawing("head-shank-fused")
def head_shank_fused() -> Drawing:
    """Seated, fused around the foot and inside at the peg."""
    d = _strip(
        "Head to shank, fused",
        "The head sits on the shank. Fused metal lies around its foot, and inside the ring over the end of the peg.",
    )
    d.ring_sector(0, 0, INNER, INNER + WALL, 0, 360)
    _head(d, TOP + 0.15)
    for side in (-1, 1):
        d.polygon(
            [(side * 1.35, TOP - 0.5), (side * 1.6, TOP - 0.4), (side * 2.3, TOP + 0.25), (side * 1.3, TOP + 0.4)],
            "hot",
        )
    d.polygon(
        [(-0.9, -INNER + 0.05), (-0.6, -INNER - 0.6), (0.6, -INNER - 0.6), (0.9, -INNER + 0.05), (0, -INNER + 0.35)],
        "hot",
    )
    d.polygon([(4.6, -15.2), (6.0, -14.0), (2.1, TOP + 0.25), (1.6, TOP - 0.2)], "beam")
    return d


@drawing("head-shank-finished")
def head_shank_finished() -> Drawing:
    """Flush inside, stone set."""
    d = _strip(
        "Head to shank, finished", "The inside of the ring is flush and round. The stone is set and stands level."
    )
    d.ring_sector(0, 0, INNER, INNER + WALL, 0, 360)
    _head(d, TOP + 0.15, stone=True)
    return d


@drawing("head-shank-choice")
def head_shank_choice() -> Drawing:
    """Peg, saddle, between the ends."""
    d = Drawing(
        42.0,
        13.6,
        "Three ways to join a head",
        "The tops of three rings. Left: a peg goes through the shank. Middle: the foot is filed to the curve and "
        "fused all around. Right: the shank ends on both sides of the head, with a seam on each side.",
        scale=15,
        left=-21.0,
        top=-17.4,
    )
    for x, words in ((-14.0, "peg"), (0.0, "saddle"), (14.0, "between")):
        if words == "between":
            d.ring_sector(x, 0, INNER, INNER + WALL, 50, 76)
            d.ring_sector(x, 0, INNER, INNER + WALL, 104, 130)
            d.polygon([(x - 1.9, -INNER + 0.1), (x + 1.9, -INNER + 0.1), (x + 2.2, TOP - 1.4), (x - 2.2, TOP - 1.4)])
            d.rectangle(x - 2.5, TOP - 3.1, 5.0, 0.7)
            for side in (-1, 1):
                prong(d, x + side * 1.9, TOP - 1.0, TOP - 5.3, 1.0, side * 1.5)
                d.polygon(
                    [
                        (x + side * 1.8, TOP - 0.2),
                        (x + side * 2.7, TOP + 0.3),
                        (x + side * 2.4, -INNER + 0.25),
                        (x + side * 1.8, -INNER),
                    ],
                    "hot",
                )
        else:
            d.ring_sector(x, 0, INNER, INNER + WALL, 50, 130)
            _head(d, TOP + 0.15, x=x)
            if words == "peg":
                for side in (-1, 1):
                    d.line([(x + side * PEG / 2, TOP + 0.2), (x + side * PEG / 2, -INNER)], "ghost")
                d.polygon(
                    [
                        (x - 0.8, -INNER + 0.05),
                        (x - 0.6, -INNER - 0.5),
                        (x + 0.6, -INNER - 0.5),
                        (x + 0.8, -INNER + 0.05),
                    ],
                    "hot",
                )
            for side in (-1, 1):
                d.polygon(
                    [(x + side * 1.35, TOP - 0.5), (x + side * 2.3, TOP + 0.25), (x + side * 1.3, TOP + 0.4)], "hot"
                )
        d.text(x, -5.0, words)
    return d


@drawing("head-shank-seat")
def head_shank_seat() -> Drawing:
    """Foot hollow to the shank's curve."""
    d = Drawing(
        15.6,
        5.2,
        "The foot fits the curve",
        "Two heads on a shank, looking along the finger hole. Left: a flat foot bears in the middle only and rocks. "
        "Right: the foot is hollowed with a round file and bears everywhere.",
        scale=40,
        left=-7.8,
        top=-3.4,
    )
    for x, good in ((-3.9, False), (3.9, True)):
        band = Section(x, 1.1, 1.2, INNER)
        band.area(d, [(-3.4, 1.2), (3.4, 1.2), (3.4, 0), (-3.4, 0)], "cut")
        foot = (
            [band.at(u, 1.2) for u in (-2.0, -1.5, -1.0, -0.5, 0.0, 0.5, 1.0, 1.5, 2.0)]
            if good
            else [(x - 2.0, -0.1), (x + 2.0, -0.1)]
        )
        d.polygon([(x - 2.6, -1.9), *foot, (x + 2.6, -1.9)])
        tick(d, x, -2.6, good)
    return d


@drawing("head-shank-peg")
def head_shank_peg() -> Drawing:
    """Peg, hole, chamfer, and where to fuse."""
    d = Drawing(
        15.6,
        6.4,
        "Peg and shank in section",
        "Section to scale through the top of a ring 1.8 mm thick. A peg of 1.2 mm stands 0.8 mm proud inside. The "
        "hole has a wide chamfer outside, in which the head bears. Right: fused inside as a button and outside "
        "around the foot.",
        scale=40,
        left=-7.8,
        top=-3.4,
    )
    for x, fused in ((-3.9, False), (3.9, True)):
        band = Section(x, 1.4, WALL, INNER)
        band.area(d, [(-3.4, WALL), (-1.3, WALL), (-0.62, WALL - 0.5), (-0.6, 0), (-3.4, 0)], "cut")
        band.area(d, [(3.4, WALL), (1.3, WALL), (0.62, WALL - 0.5), (0.6, 0), (3.4, 0)], "cut")
        low = 1.4 if fused else 2.2
        d.polygon(
            [
                (x - 2.0, -2.6),
                (x - 1.25, -0.4),
                (x - 0.6, 0.1),
                (x - 0.6, low),
                (x + 0.6, low),
                (x + 0.6, 0.1),
                (x + 1.25, -0.4),
                (x + 2.0, -2.6),
            ],
            "cut",
        )
        if fused:
            d.polygon(
                [
                    (x - 1.0, 1.43),
                    (x - 0.75, 1.0),
                    (x - 0.5, 0.85),
                    (x + 0.5, 0.85),
                    (x + 0.75, 1.0),
                    (x + 1.0, 1.43),
                    (x + 0.5, 1.72),
                    (x - 0.5, 1.72),
                ],
                "hot",
            )
            for side in (-1, 1):
                d.polygon(
                    [(x + side * 1.1, -0.3), (x + side * 1.38, -0.85), (x + side * 1.95, -0.2), (x + side * 1.5, 0.1)],
                    "hot",
                )
    d.dimension((-2.9, 1.4), (-2.9, 2.2), "")
    d.text(-2.6, 2.75, "0.8 mm", "start")
    d.line([(-3.3, 2.2), (-2.7, 2.2)], "dim thin")
    leader(d, (4.3, 1.6), (5.0, 2.5), "inside first")
    return d


@drawing("head-shank-upright")
def head_shank_upright() -> Drawing:
    """Three looks: from the front, from the side, from above."""
    d = Drawing(
        42.0,
        16.0,
        "Three looks at the tacked head",
        "Left: from the front, the head leans and the dashed line shows upright. Middle: from the side it leans "
        "over the edge of the band. Right: from above it is turned against the shank.",
        scale=15,
        left=-21.0,
        top=-18.0,
    )
    d.ring_sector(-13.0, 0, INNER, INNER + WALL, 40, 140)
    d.add(f'<g transform="rotate(9 {d.x(-13.0):.1f} {d.y(TOP):.1f})">')
    _head(d, TOP, stone=True, x=-13.0)
    d.add("</g>")
    d.line([(-13.0, -17.6), (-13.0, -7.6)], "ghost")
    d.rectangle(0.6, TOP, 2.6, 7.0)
    d.add(f'<g transform="rotate(-10 {d.x(1.9):.1f} {d.y(TOP):.1f})">')
    _head(d, TOP, stone=True, x=1.9)
    d.add("</g>")
    d.line([(1.9, -17.6), (1.9, -4.0)], "ghost")
    d.rectangle(8.4, -12.0, 11.8, 2.6)
    d.add(f'<g transform="rotate(20 {d.x(14.3):.1f} {d.y(-10.7):.1f})">')
    d.circle(14.3, -10.7, STONE / 2, "stone")
    for px, py in ((-1, -1), (1, -1), (1, 1), (-1, 1)):
        d.circle(14.3 + px * 2.2, -10.7 + py * 2.2, 0.75)
    d.add("</g>")
    d.line([(8.0, -10.7), (20.6, -10.7)], "ghost")
    return d


@drawing("head-shank-order")
def head_shank_order() -> Drawing:
    """Four tacks, then the foot in short runs."""
    d = Drawing(
        15.6,
        5.6,
        "Order of the tacks",
        "The foot of the head on the shank, seen from above. Tacks one and two lie opposite each other along the band, "
        "three and four across it.",
        scale=40,
        left=-7.8,
        top=-2.8,
    )
    d.rectangle(-6.8, -1.5, 13.6, 3.0)
    d.circle(0, 0, 1.9)
    open_air(d, [polar(0, 0, 1.2, 12 * i) for i in range(30)])
    places: list[Point] = [(-1.9, 0), (1.9, 0), (0, -1.5), (0, 1.5)]  # where the foot meets the band
    spots(d, places, 0.5)
    for number, (x, y) in enumerate(((-2.5, 0.14), (2.5, 0.14), (0.0, -1.95), (0.0, 2.3)), 1):
        d.text(x, y, str(number))
    return d
