"""Drawings of work near stones that take no heat: cover, heat sink, way of the beam. Ring US 7, domed stone."""

from __future__ import annotations

from build_scripts.drawings import drawing
from build_scripts.drawings.setting_parts import brilliant, cabochon, crack
from build_scripts.drawings.sketch import arrow, gas, leader, lens, nozzle, polar, tick
from calculators.drawing import Drawing

INNER, WALL = 8.66, 1.6
TOP = -(INNER + WALL)


def _strip(title: str, description: str) -> Drawing:
    return Drawing(24.0, 30.0, title, description, scale=15, left=-12.0, top=-17.2)


def _ring(d: Drawing, x: float = 0.0, covered: bool = False) -> None:
    """A ring with a domed stone in a bezel on top; ``covered`` wraps the stone."""
    d.ring_sector(x, 0, INNER, INNER + WALL, 0, 360)
    cabochon(d, x, TOP - 1.6, 7.0, 3.0)
    d.polygon([(x - 3.6, TOP + 0.5), (x + 3.6, TOP + 0.5), (x + 3.8, TOP - 2.0), (x - 3.8, TOP - 2.0)])
    if covered:
        d.path(
            [
                ("M", [(x - 4.2, TOP - 1.2)]),
                ("C", [(x - 4.6, TOP - 5.6), (x + 4.6, TOP - 5.6), (x + 4.2, TOP - 1.2)]),
                ("L", [(x + 3.8, TOP - 1.6)]),
                ("C", [(x + 3.6, TOP - 4.9), (x - 3.6, TOP - 4.9), (x - 3.8, TOP - 1.6)]),
                ("Z", []),
            ],
            "part tool",
        )


@drawing("heat-shy-before")
def heat_shy_before() -> Drawing:
    """A cracked shank below an opal."""
    d = _strip("Heat-shy stone, before", "A ring with an opal in a bezel on top. The shank has a crack at the bottom.")
    _ring(d)
    crack(d, polar(0, 0, INNER + WALL, 271), polar(0, 0, INNER, 269), 0.3, 4, "ink heavy")
    return d


@drawing("heat-shy-fused")
def heat_shy_fused() -> Drawing:
    """Stone covered, copper on both sides of the shank, the seam far below."""
    d = _strip(
        "Heat-shy stone, fused",
        "The stone is covered. Copper jaws grip the shank on both sides, between the seam at the bottom and the "
        "stone. The beam comes from below.",
    )
    _ring(d, covered=True)
    for side in (-1, 1):
        d.rectangle(side * (INNER + WALL / 2) - 1.7, 1.6, 3.4, 3.0, "part tool")
    d.ring_sector(0, 0, INNER - 0.15, INNER + WALL + 0.2, 267, 273, "hot")
    d.polygon([(2.2, 13.0), (3.6, 12.4), (0.45, INNER + WALL), (-0.2, INNER + WALL + 0.1)], "beam")
    return d


@drawing("heat-shy-finished")
def heat_shy_finished() -> Drawing:
    """Whole, the stone as it was."""
    d = _strip("Heat-shy stone, finished", "The shank is whole. The opal is as it was.")
    _ring(d)
    return d


@drawing("heat-shy-aim")
def heat_shy_aim() -> Drawing:
    """A miss must go past the stone."""
    d = Drawing(
        42.0,
        21.0,
        "Where a miss goes",
        "A seam on the shoulder of a ring, twice. Left: the beam comes from the side of the finger hole and would "
        "go on to the stone. Right: it comes along the shoulder from above and would go past.",
        scale=15,
        left=-21.0,
        top=-17.0,
    )
    for x, good in ((-10.5, False), (10.5, True)):
        d.ring_sector(x, 0, INNER, INNER + WALL, 25, 155)
        cabochon(d, x, TOP - 1.6, 7.0, 3.0)
        d.polygon([(x - 3.6, TOP + 0.5), (x + 3.6, TOP + 0.5), (x + 3.8, TOP - 2.0), (x - 3.8, TOP - 2.0)])
        spot = polar(x, 0, INNER + WALL, 55)
        inside = polar(x, 0, INNER, 55)
        if good:
            d.polygon(
                [(spot[0] - 0.2, spot[1]), (spot[0] + 0.4, spot[1] + 0.2), (x + 9.8, -15.6), (x + 8.8, -16.0)], "beam"
            )
            d.line([spot, (x + 3.4, 0.4)], "ghost")
        else:
            d.polygon(
                [(inside[0] - 0.1, inside[1] + 0.3), (inside[0] + 0.4, inside[1]), (x + 8.4, -1.4), (x + 7.8, -0.6)],
                "beam",
            )
            d.line([inside, (x + 1.6, -15.6)], "ghost")
        tick(d, x, 1.6, good)
    return d


@drawing("heat-shy-cover")
def heat_shy_cover() -> Drawing:
    """Putty over everything that is not to be hit."""
    d = Drawing(
        42.0,
        15.0,
        "Cover the stone",
        "A prong head in section along the stone, twice. Left: tape on top only, light reaches the stone from below "
        "between the prongs. Right: putty above, below and between, only the place of the repair is open.",
        scale=15,
        left=-21.0,
        top=-8.0,
    )
    for x, full in ((-10.5, False), (10.5, True)):
        if full:
            d.path(
                [
                    ("M", [(x - 5.0, -0.6)]),
                    ("C", [(x - 5.2, -5.2), (x + 3.0, -5.6), (x + 3.6, -2.0)]),
                    ("C", [(x + 3.8, 2.4), (x + 2.0, 5.6), (x, 5.4)]),
                    ("C", [(x - 3.4, 5.4), (x - 5.0, 3.0), (x - 5.0, -0.6)]),
                    ("Z", []),
                ],
                "part tool",
            )
        brilliant(d, x, 0, 7.0)
        if not full:
            d.rectangle(x - 2.4, -1.6, 4.8, 0.5, "part tool")
        for side in (-1, 1):
            d.polygon([(x + side * 3.2, -1.2), (x + side * 4.3, -1.0), (x + side * 2.4, 5.8), (x + side * 1.4, 5.8)])
        if not full:
            d.polygon([(x + 6.6, 5.2), (x + 7.4, 4.4), (x + 1.4, 1.0), (x + 1.1, 1.4)], "beam")
        tick(d, x + 6.6, -4.0, full)
    leader(d, (6.6, -3.2), (3.4, -6.0), "putty", "end")
    leader(d, (-11.5, -1.5), (-13.6, -5.4), "tape", "middle")
    return d


@drawing("stone-beam")
def stone_beam() -> Drawing:
    """One missed shot: crater above, cone below."""
    d = Drawing(
        42.0,
        16.0,
        "One missed shot",
        "A stone from the side. The beam misses the prong, goes in at the top and out below. Under the loupe: a "
        "crater at the top, a cone with cracks around it at the other side, near the girdle.",
        scale=15,
        left=-21.0,
        top=-8.4,
    )
    x = -9.5
    brilliant(d, x, 0, 9.0)
    for side in (-1, 1):
        d.polygon([(x + side * 4.1, -1.5), (x + side * 5.4, -1.2), (x + side * 3.2, 6.4), (x + side * 2.0, 6.4)])
    d.polygon([(x + 4.2, -8.0), (x + 5.8, -8.0), (x + 2.6, 1.9), (x + 2.2, 1.7)], "beam")
    d.circle(x + 3.3, -0.9, 0.35, "ink heavy")
    d.circle(x + 2.4, 1.8, 0.35, "ink heavy")
    lens(d, 8.4, 0, 6.6)
    d.line([(2.4, 2.6), (14.2, -3.0)], "ink")
    d.polygon([(7.2, 0.3), (8.9, -0.5), (8.9, 2.8)], "stone")
    for dx, dy in ((-2.6, 2.4), (-0.6, 3.8), (3.2, 2.0), (3.8, 3.6)):
        crack(d, (8.3 + dx * 0.25, 0.8 + dy * 0.25), (8.3 + dx, 0.8 + dy), 0.2, 4)
    leader(d, (x + 3.3, -0.9), (x - 1.6, -6.4), "crater", "end")
    leader(d, (8.7, 1.6), (12.6, 5.6), "cone", "start")
    return d


@drawing("stone-warm")
def stone_warm() -> Drawing:
    """Where the heat of a row of shots goes, with and without copper."""
    d = Drawing(
        42.0,
        24.0,
        "Where the heat goes",
        "Two rings with a seam at the bottom. Left: heat runs up both sides to the stone. Right: copper jaws on "
        "both sides take it before it gets there.",
        scale=15,
        left=-21.0,
        top=-14.6,
    )
    for x, sink in ((-10.5, False), (10.5, True)):
        d.ring_sector(x, 0, 6.6, 7.9, 0, 360)
        cabochon(d, x, -9.0, 5.4, 2.4)
        d.polygon([(x - 2.8, -7.4), (x + 2.8, -7.4), (x + 3.0, -9.4), (x - 3.0, -9.4)])
        d.ring_sector(x, 0, 6.5, 8.1, 266, 274, "hot")
        for side in (-1, 1):
            if sink:
                d.rectangle(x + side * 7.0 - 1.4, 1.0, 2.8, 2.6, "part tool")
                arrow(d, polar(x, 0, 8.7, 270 + side * 30), polar(x, 0, 8.7, 270 + side * 58))
            else:
                arrow(d, polar(x, 0, 8.7, 270 + side * 30), polar(x, 0, 8.7, 270 + side * 62))
                arrow(d, polar(x, 0, 8.7, 270 + side * 92), polar(x, 0, 8.7, 270 + side * 130))
        tick(d, x, 0, sink)
    return d


@drawing("heat-shy-gas")
def heat_shy_gas() -> Drawing:
    """Cool gas on the seam, dry, from the stone's side."""
    d = Drawing(
        42.0,
        14.0,
        "Gas from the stone's side",
        "A shoulder of a ring with the stone at the left. The gas tube comes from the stone's side and blows over "
        "the shoulder onto the seam: it shields the seam and cools what lies between.",
        scale=15,
        left=-21.0,
        top=-9.0,
    )
    d.rectangle(-16.0, 0, 33.0, 2.4, "part")
    cabochon(d, -11.0, -1.4, 7.0, 3.0)
    d.rectangle(-15.0, -1.8, 8.0, 1.8)
    d.polygon([(7.2, 0), (7.6, 1.4), (8.4, 1.4), (8.8, 0), (8.0, -0.3)], "hot")
    nozzle(d, -0.6, -4.4, 4.6, 1.5, 154)
    gas(d, 7.2, -0.8, 8.2, 10, 154)
    d.polygon([(11.2, -8.6), (13.0, -8.0), (8.4, -0.25), (7.7, -0.35)], "beam")
    return d
