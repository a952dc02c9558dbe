"""Drawings of watch cases and bracelets: a lug with its bar hole, a link pin, a pulled-out hinge of a pocket watch."""

from __future__ import annotations

from build_scripts.drawings import drawing
from build_scripts.drawings.bench import spots
from build_scripts.drawings.setting_parts import crack
from build_scripts.drawings.sketch import arrow, gas, leader, nozzle, open_air, polar, tick
from calculators.drawing import Drawing, Point

BAR = 0.9  # mm, hole of the spring bar


def _strip(title: str, description: str) -> Drawing:
    return Drawing(9.0, 5.6, title, description, scale=40, left=-4.5, top=-3.2)


def _lug(d: Drawing, hole: float = 0.0, high: float = 0.0) -> None:
    """A lug from the side: case on the left, tip lower right; the hole at its place, enlarged upward by ``high``."""
    d.path(
        [
            ("M", [(-4.2, -2.0)]),
            ("C", [(-2.0, -2.2), (1.5, -1.8), (3.4, 1.4)]),
            ("L", [(2.6, 1.9)]),
            ("C", [(1.2, 1.2), (-1.5, 1.1), (-4.2, 1.3)]),
            ("Z", []),
        ]
    )
    if hole:
        ring = [polar(0.9, 0.15, hole / 2, 15 * i) for i in range(24)]
        open_air(d, [(px, py - (high if py < 0.15 else 0.0)) for px, py in ring])


@drawing("watch-before")
def watch_before() -> Drawing:
    """The bar hole worn oval, close to the edge."""
    d = _strip(
        "Lug hole, before",
        "A lug of a watch case from its inner side. The hole for the spring bar is worn oval upward, close to the "
        "edge.",
    )
    _lug(d, BAR, 0.5)
    return d


@drawing("watch-fused")
def watch_fused() -> Drawing:
    """A pin of the case metal in the reamed hole, fused around."""
    d = _strip(
        "Lug hole, fused",
        "The hole is reamed round and plugged with a pin of the same metal. Spots go around the pin, opposite each "
        "other.",
    )
    _lug(d)
    d.circle(0.9, 0.05, 0.7, "cut")
    spots(d, [polar(0.9, 0.05, 0.7, 45 * i) for i in range(8)], 0.4)
    nozzle(d, 3.4, -2.0, 1.1, 0.45, 50)
    gas(d, 1.9, -0.3, 2.1, 14, 50)
    return d


@drawing("watch-finished")
def watch_finished() -> Drawing:
    """Drilled anew at the old place."""
    d = _strip(
        "Lug hole, finished",
        "The plug is flush. A new round hole is drilled at the old place, with sound metal around it.",
    )
    _lug(d, BAR)
    d.circle(0.9, 0.05, 0.85, "ghost")
    return d


@drawing("watch-strip-down")
def watch_strip_down() -> Drawing:
    """What comes out before any pulse."""
    d = Drawing(
        42.0,
        21.0,
        "What comes out first",
        "A watch taken apart, from the side: bracelet, crystal, movement, case and back, each apart from the next. "
        "Only the bare case goes to the machine.",
        scale=15,
        left=-21.0,
        top=-10.5,
    )
    d.path(
        [
            ("M", [(-9.0, -6.6)]),
            ("C", [(-5.0, -8.0), (5.0, -8.0), (9.0, -6.6)]),
            ("L", [(9.0, -6.0), (-9.0, -6.0)]),
            ("Z", []),
        ],
        "stone",
    )
    d.rectangle(-7.5, -4.2, 15.0, 2.0, "part tool")
    d.rectangle(7.5, -3.5, 3.0, 0.6, "part tool")
    d.polygon(
        [(-13.0, 2.0), (-10.5, -0.6), (10.5, -0.6), (13.0, 2.0), (11.6, 2.4), (10.0, 1.6), (-10.0, 1.6), (-11.6, 2.4)]
    )
    d.rectangle(-8.5, 4.0, 17.0, 0.9)
    d.rectangle(-7.8, 6.2, 15.6, 0.5, "ink")
    parts = (
        (8.8, -6.3, "crystal"),
        (10.5, -3.2, "movement"),
        (12.4, 1.2, "case"),
        (8.5, 4.45, "back"),
        (7.8, 6.45, "seal"),
    )
    for x, y, words in parts:
        leader(d, (x, y), (13.2, y), words)
    for y in (-5.3, -1.5, 3.2, 5.6):
        arrow(d, (0, y + 0.45), (0, y - 0.45))
    return d


@drawing("watch-lug-choice")
def watch_lug_choice() -> Drawing:
    """Plug and drill; build the edge; cracked through."""
    d = Drawing(
        31.5,
        8.6,
        "Three lugs",
        "Left: hole worn oval, sound edge: plug and drill. Middle: the hole has broken out at the edge: build up "
        "first. Right: the lug is cracked through: V from both sides.",
        scale=20,
        left=-15.75,
        top=-4.6,
    )
    for x, kind in ((-10.5, 0), (0.0, 1), (10.5, 2)):
        d.polygon([(x - 3.6, -2.6), (x + 2.0, -2.6), (x + 3.4, -0.8), (x + 3.4, 1.4), (x + 2.4, 2.0), (x - 3.6, 2.0)])
        ring: list[Point] = [polar(x + 2.0, 0.2, 0.75, 15 * i) for i in range(24)]
        if kind == 0:
            open_air(d, [(px, py - (0.7 if py < 0.2 else 0)) for px, py in ring])
        if kind == 1:
            open_air(d, [(x + 3.6, -0.5), (x + 2.0, -0.55), (x + 1.3, 0.2), (x + 2.0, 0.95), (x + 3.6, 0.9)])
        if kind == 2:
            open_air(d, ring)
            crack(d, (x - 0.6, -2.6), (x - 0.3, 2.0), 0.2, 7, "ink heavy")
    for x, words in ((-10.5, "plug"), (0.0, "build up"), (10.5, "V")):
        d.text(x, 3.6, words)
    return d


@drawing("watch-rod")
def watch_rod() -> Drawing:
    """Both lugs on one rod, so that the new hole is in line."""
    d = Drawing(
        42.0,
        17.0,
        "Drill in line with the other lug",
        "The two lugs of one side from above. A straight rod through the sound hole points at the middle of the "
        "plug in the other lug. Drill there.",
        scale=15,
        left=-21.0,
        top=-8.5,
    )
    d.path([("M", [(-17.0, 8.0)]), ("C", [(-8.0, 3.6), (8.0, 3.6), (17.0, 8.0)]), ("Z", [])])
    for side in (-1, 1):
        d.polygon([(side * 10.0, 5.6), (side * 13.0, 6.4), (side * 12.6, -4.0), (side * 10.2, -4.0)])
    d.rectangle(-16.0, -2.4, 26.2, 0.9, "part tool")
    d.rectangle(10.2, -2.6, 2.4, 1.3, "hot")
    d.line([(12.8, -1.95), (18.0, -1.95)], "ghost")
    leader(d, (11.4, -2.6), (13.6, -6.0), "plug")
    leader(d, (-2.0, -2.4), (-1.0, -6.0), "rod")
    return d


@drawing("watch-link")
def watch_link() -> Drawing:
    """Pin of a bracelet fused at one end only."""
    d = Drawing(
        31.5,
        8.0,
        "A link pin, fused at one end",
        "Three links in section along their pin. One weak shot holds the pin in the outer link at the right. In the "
        "middle link it turns freely.",
        scale=20,
        left=-15.75,
        top=-4.0,
    )
    for left, right in ((-9.0, -3.2), (-3.0, 3.0), (3.2, 9.0)):
        d.rectangle(left, -2.0, right - left, 1.45, "cut")
        d.rectangle(left, 0.55, right - left, 1.45, "cut")
    d.rectangle(-8.8, -0.5, 17.7, 1.0, "part tool")
    d.polygon([(8.5, -0.85), (9.05, -0.8), (9.15, 0.8), (8.5, 0.85)], "hot")
    tick(d, 11.4, 0, True)
    leader(d, (8.9, -0.6), (10.0, -3.0), "one shot")
    leader(d, (0, 0.3), (1.4, 3.2), "turns")
    return d
