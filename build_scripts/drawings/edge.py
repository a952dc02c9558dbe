"""Drawings of the edge joint: two parts side by side, fused along their common edge. Sections look along the seam."""

from __future__ import annotations

import math

from build_scripts.drawings import drawing
from build_scripts.drawings.bench import cap, moved, on_circle, spark, spots, tungsten
from build_scripts.drawings.sketch import arrow, gas, leader, nozzle, open_air, tick
from calculators.drawing import Drawing, Point

STRIP = 0.9  # mm, thickness of each of the two parts
DEEP = 0.45  # fused depth at the line, mm
BAIL_HIGH = 6.7  # mm, the bail of the guide: 0.8 mm strip, 4 mm inside


def _leg(x: float, y: float, side: int, down: float, thick: float = STRIP, bevel: float = 0.0) -> list[Point]:
    """One of the two parts, its inner face at ``x``; the lower end is broken off."""
    wave = [(x + side * thick * (1 - i / 8), y + down + 0.1 * math.sin(math.pi * i / 4)) for i in range(9)]
    top: list[Point] = [(x + side * bevel, y), (x + side * thick, y)]
    return [(x, y + bevel), *top, *wave] if bevel else [*top, *wave]


def _topped(x: float, y: float, side: int, down: float, top: list[Point]) -> list[Point]:
    """A part whose upper edge is eaten away: ``top`` runs from its inner face outward, measured from ``x, y``."""
    return [(x + side * px, y + py) for px, py in top] + _leg(x, y, side, down)[2:]


def _pool(x: float, y: float, proud: float, deep: float = DEEP, width: float = 2 * STRIP) -> list[Point]:
    """Fused metal over both edges: round on top, a round root on the line."""
    top = cap(x, y, width, proud) if proud else [(x - width / 2, y), (x + width / 2, y)]
    root = []
    for i in range(1, 24):
        part = 1 - i / 12
        root.append((x + part * width / 2, y + deep * (1 - abs(part) ** 1.6)))
    return [*top, *root]


def _strip(title: str, description: str) -> Drawing:
    return Drawing(6.0, 3.4667, title, description, scale=60, left=-3.0, top=-1.35)


def _legs(d: Drawing, x: float, y: float, down: float = 1.85, bevel: float = 0.0) -> None:
    for side in (-1, 1):
        d.polygon(_leg(x, y, side, down, bevel=bevel), "cut")


@drawing("edge-before")
def edge_before() -> Drawing:
    """Two parts side by side, bearing lightly."""
    d = _strip(
        "Edge joint before fusing",
        "Two strips 0.9 mm thick, cut across, stand side by side. Their faces bear on each other and their edges are "
        "level.",
    )
    _legs(d, 0, 0)
    for side in (-1, 1):
        arrow(d, (side * 1.9, 0.5), (side * 1.05, 0.5))
    return d


@drawing("edge-fused")
def edge_fused() -> Drawing:
    """The common edge fused to a round bead; beam on the line."""
    d = _strip(
        "Edge joint fused",
        "The two edges have melted together. The fused metal is round on top and reaches 0.45 mm down on the line. The "
        "beam points straight at the line, gas comes from the side.",
    )
    _legs(d, 0, 0)
    d.polygon(_pool(0, -0.06, 0.14), "hot")
    d.beam(0, -0.18, 0.45, 1.17)
    nozzle(d, 1.55, -0.85, 1.1, 0.4, 32)
    gas(d, 0.35, -0.1, 1.3, 18, 32)
    return d


@drawing("edge-finished")
def edge_finished() -> Drawing:
    """Filed level; what was there is a dashed line."""
    d = _strip(
        "Edge joint finished",
        "The edge is filed level and lightly rounded at its corners. A dashed line shows the height before fusing.",
    )
    _legs(d, 0, 0.1)
    level: list[Point] = [(-STRIP, 0.28), (-0.78, 0.1), (0.78, 0.1), (STRIP, 0.28)]
    d.polygon([*level, *_pool(0, 0.1, 0.0)[2:]], "hot")
    d.line(cap(0, -0.06, 2 * STRIP, 0.14), "ghost")
    return d


@drawing("edge-choice")
def edge_choice() -> Drawing:
    """Which joint: edge, butt, lap."""
    d = Drawing(
        16.0,
        5.6,
        "Side by side, end to end, one on the other",
        "Left: edge joint, two strips side by side, fused along the common edge. Middle: butt joint, two strips end to "
        "end. Right: lap joint, one strip on top of the other.",
        scale=40,
    )
    for side in (-1, 1):
        d.polygon(_leg(2.7, 1.2, side, 2.9), "cut")
    d.polygon(_pool(2.7, 1.15, 0.14, 0.6), "hot")
    d.rectangle(5.9, 2.4, 2.1, STRIP, "cut")
    d.rectangle(8.0, 2.4, 2.1, STRIP, "cut")
    d.polygon([(7.75, 2.36), (8.25, 2.36), (8.08, 2.85), (8.25, 3.34), (7.75, 3.34), (7.92, 2.85)], "hot")
    d.rectangle(11.4, 2.7, 3.9, STRIP, "cut")
    d.rectangle(12.4, 1.8, 1.9, STRIP, "cut")
    for side, x in ((-1, 12.4), (1, 14.3)):
        d.polygon(
            [(x, 2.0), (x + side * 0.5, 2.7), (x + side * 0.2, 2.95), (x - side * 0.25, 2.75), (x - side * 0.2, 2.4)],
            "hot",
        )
    for x, words in ((2.7, "edge"), (8.0, "butt"), (13.35, "lap")):
        d.text(x, 5.2, words)
    return d


@drawing("edge-bear")
def edge_bear() -> Drawing:
    """How the two parts must touch at the edge."""
    d = Drawing(
        16.0,
        6.0,
        "The edges must bear",
        "Three sections. Left, good: the faces touch at the top, where the beam goes, and may part a little further "
        "down. Middle: the tops stand apart, a gap of 0.2 mm. Right: one edge stands higher than the other.",
        scale=40,
        top=0.0,
    )
    for i, words in enumerate(("touch on top", "gap", "step")):
        x, y = 2.8 + i * 5.2, 1.4
        for side in (-1, 1):
            leg = _leg(x, y, side, 3.0, 1.1)
            if words == "touch on top":
                leg = moved(leg, (x, y), side * 2.5)
            elif words == "gap":
                leg = [(px + side * 0.12, py) for px, py in leg]
            elif side > 0:
                leg = [(px, py - (0.4 if py < y + 1 else 0.0)) for px, py in leg]
            d.polygon(leg, "cut")
        d.text(x + 0.15, 5.65, words)
        tick(d, x - 1.9, 1.0, good=i == 0)
    return d


@drawing("edge-bevel")
def edge_bevel() -> Drawing:
    """Thick parts get a V along the edge, filled from the root."""
    d = Drawing(
        16.0,
        5.6,
        "A groove for thick parts",
        "Left: two parts of 0.9 mm stay square. Right: two parts of 1.5 mm are beveled by 0.5 mm each, which makes a "
        "groove of 90 degrees; wire fills it from the root.",
        scale=40,
    )
    zoom = 1.6
    for x, thick, bevel in ((3.6, 0.9, 0.0), (11.0, 1.5, 0.5)):
        y = 1.5
        for side in (-1, 1):
            leg = [(x + (px - x) * zoom, y + (py - y) * zoom) for px, py in _leg(x, y, side, 1.9, thick, bevel)]
            d.polygon(leg, "cut")
        d.dimension((x, y + 3.0 - 1.3), (x + thick * zoom, y + 3.0 - 1.3), "", 0)
        leader(
            d,
            (x + thick * zoom * 0.8, y + 1.7),
            (x + thick * zoom + 0.6, y + 2.6),
            "0.9 mm" if thick < 1 else "1.5 mm",
            "start",
        )
    d.circle(11.0, 1.5 + (0.5 - 0.21) * zoom, 0.15 * zoom, "hot")
    leader(d, (11.2, 1.85), (12.2, 0.75), "wire 0.3 mm")
    return d


@drawing("edge-tacks")
def edge_tacks() -> Drawing:
    """Looking down on the edge: tacks, then runs, then the ends."""
    d = Drawing(
        8.0,
        3.4,
        "Tack, then run",
        "The common edge from above, 4 mm long. Tack 1 in the middle, 2 and 3 at the ends. Then overlapping spots "
        "along the line, half on each part.",
        scale=80,
        left=-4.0,
        top=-1.55,
    )
    d.rectangle(-3.0, -0.72, 6.0, 0.72, "part")
    d.rectangle(-3.0, 0.0, 6.0, 0.72, "part")
    for i in range(13):
        d.circle(-2.72 + i * 0.225, 0, 0.34, "soft")
    spots(d, [(0.0, 0.0), (-2.72, 0.0), (2.72, 0.0)], 0.68)
    for x, number in ((0.0, "1"), (-2.72, "2"), (2.72, "3")):
        d.text(x, -1.0, number)
    arrow(d, (0.6, 0), (1.9, 0), "ink heavy")
    d.dimension((-3.0, 0.72), (3.0, 0.72), "", -22)
    d.text(0, 1.52, "4 mm")
    return d


@drawing("edge-aim")
def edge_aim() -> Drawing:
    """Beam on the line, against beam on one part."""
    d = Drawing(
        16.0,
        6.0,
        "Aim at the line",
        "Left: the beam stands on the line and both edges melt. Right: the beam stands on one part; its edge melts "
        "away and the other one stays cold.",
        scale=40,
    )
    for x, good in ((4.2, True), (11.8, False)):
        y = 2.5
        for side in (-1, 1):
            eaten = side > 0 and not good
            leg = _topped(x, y, side, 2.2, _hollow()) if eaten else _leg(x, y, side, 2.2)
            d.polygon([(x + (px - x) * 1.4, y + (py - y) * 1.4) for px, py in leg], "cut")
        if good:
            d.polygon([(x + px * 1.4, y + py * 1.4) for px, py in _pool(0, -0.02, 0.12)], "hot")
            d.beam(x, y - 0.2, 0.7, 2.0)
        else:
            hole = [(x + px * 1.4, y + py * 1.4) for px, py in _hollow()]
            d.polygon([*hole, *[(px, py + 0.25) for px, py in reversed(hole)]], "hot")
            d.beam(x + 0.68, y + 0.45, 0.7, 2.6)
        tick(d, x - 2.3, 1.2, good)
    return d


def _hollow() -> list[Point]:
    """The hollow that a shot on one part leaves in its edge, from the line outward."""
    return [(STRIP * i / 12, 0.06 + 0.46 * math.sin(math.pi * i / 24) ** 1.2) for i in range(13)]


@drawing("edge-wrap")
def edge_wrap() -> Drawing:
    """The seam goes around the ends of the edge."""
    d = Drawing(
        16.0,
        5.6,
        "Around the corners",
        "Two strips side by side, seen at an angle. The fused line runs along the top edge and turns down 0.5 mm at "
        "both ends.",
        scale=40,
    )
    x, y, wide, tall = 3.4, 2.2, 8.0, 2.6
    back, lift = 1.1, 0.7
    d.polygon([(x, y), (x + wide, y), (x + wide + 2 * back, y - 2 * lift), (x + 2 * back, y - 2 * lift)], "part")
    d.polygon([(x, y), (x + wide, y), (x + wide, y + tall), (x, y + tall)], "part")
    d.polygon(
        [
            (x + wide, y),
            (x + wide + 2 * back, y - 2 * lift),
            (x + wide + 2 * back, y - 2 * lift + tall),
            (x + wide, y + tall),
        ],
        "part",
    )
    d.line([(x + wide + back, y - lift), (x + wide + back, y - lift + tall)], "ink")
    half = 0.24
    d.polygon(
        [
            (x + back - half, y - lift + 0.15),
            (x + wide + back - half, y - lift + 0.15),
            (x + wide + back - half, y - lift + 1.25),
            (x + wide + back + half, y - lift + 0.95),
            (x + wide + back + half, y - lift - 0.15),
            (x + back + half, y - lift - 0.15),
        ],
        "hot",
    )
    leader(d, (x + wide + back, y - lift + 0.7), (13.9, 4.7), "0.5 mm", "start")
    return d


@drawing("edge-level")
def edge_level() -> Drawing:
    """The wide beam melts the skin of the edge round."""
    d = Drawing(
        8.0,
        3.6,
        "Leveling pass on an edge",
        "A beam 1.2 mm wide stands on the fused edge and melts only its skin, which flows round.",
        scale=80,
        left=-4.0,
        top=-1.75,
    )
    _legs(d, 0, 0, 1.7)
    d.polygon(_pool(0, -0.02, 0.14), "soft")
    d.polygon([*cap(0, -0.02, 2 * STRIP, 0.14), *reversed(cap(0, 0.03, 1.7, 0.12, -1))], "hot")
    d.beam(0, -0.16, 1.2, 1.55)
    d.dimension((-0.6, -0.16), (0.6, -0.16), "", 12)
    leader(d, (0.6, -0.3), (1.7, -0.9), "1.2 mm")
    return d


@drawing("edge-arc")
def edge_arc() -> Drawing:
    """Pulsed arc on an edge: tungsten over the line, clamp as heat sink and return."""
    d = Drawing(
        16.0,
        6.2,
        "Pulsed arc on an edge",
        "The tungsten stands over the line. Copper jaws hold both strips 2 mm below the edge, carry the current away "
        "and take the heat.",
        scale=40,
    )
    x, y = 7.0, 2.6
    for side in (-1, 1):
        d.polygon([(x + (px - x) * 1.2, y + (py - y) * 1.2) for px, py in _leg(x, y, side, 2.8)], "cut")
    d.polygon([(x + px * 1.2, y + py * 1.2) for px, py in _pool(0, -0.02, 0.14)], "hot")
    tungsten(d, x, y - 0.62, 90, 1.8, 0.36)
    spark(d, (x, y - 0.6), (x, y - 0.24), 0.08)
    for side in (-1, 1):
        d.rectangle(x + (1.08 if side > 0 else -3.28), y + 1.4, 2.2, 1.1, "part tool")
    d.dimension((x - 1.6, y), (x - 1.6, y + 1.4), "", 0)
    d.text(x - 1.9, y + 0.85, "2 mm", "end")
    leader(d, (x + 0.15, 1.0), (9.4, 0.8), "tungsten")
    leader(d, (x + 2.6, y + 1.9), (11.4, 5.4), "copper jaws")
    return d


@drawing("edge-faults")
def edge_faults() -> Drawing:
    """Four faults of an edge in section."""
    d = Drawing(
        16.0,
        5.6,
        "Faults of an edge",
        "Four sections: skin only, fused 0.1 mm deep; blown edge, one part has melted away; sunken, a gap drew the "
        "metal down; and thin wall, the outside was filed away beside the seam.",
        scale=40,
    )
    for i, words in enumerate(("skin only", "blown edge", "sunken", "filed thin")):
        x, y = 2.1 + i * 3.93, 1.2
        for side in (-1, 1):
            leg = _leg(x, y, side, 3.0)
            if words == "blown edge" and side > 0:
                leg = _topped(x, y, side, 3.0, _hollow())
            if words == "sunken":
                leg = _topped(x + side * 0.08, y, side, 3.0, [*_dip(), (STRIP, 0.0)])
            if words == "filed thin" and side > 0:
                outer = [(x + 0.9 - 0.5 * math.sin(math.pi * k / 10), y + 0.4 + 0.15 * k) for k in range(11)]
                leg = [(x, y), (x + STRIP, y), *outer, *leg[2:]]
            d.polygon(leg, "cut")
        if words == "skin only":
            d.polygon(_pool(x, y - 0.02, 0.1, 0.12), "hot")
        elif words == "blown edge":
            hole = [(x + px, y + py) for px, py in _hollow()]
            d.polygon([*hole, *[(px, py + 0.2) for px, py in reversed(hole)]], "hot")
        elif words == "sunken":
            right = [(x + 0.08 + px, y + py) for px, py in _dip()]
            left = [(2 * x - px, py) for px, py in reversed(right)]
            d.polygon([*left, *right, (x + 0.25, y + 0.8), (x - 0.25, y + 0.8)], "hot")
        else:
            d.polygon(_pool(x, y, 0.05), "hot")
        d.text(x, 5.3, words)
    return d


def _dip() -> list[Point]:
    """A sunken edge from the line outward."""
    return [(0.6 * i / 8, 0.42 * (1 - (i / 8) ** 2)) for i in range(9)]


@drawing("edge-peel")
def edge_peel() -> Drawing:
    """Pulling along the parts is easy to hold, opening them is not."""
    d = Drawing(
        16.0,
        5.8,
        "Pull and peel",
        "Left: a pull along the strips loads the whole fused edge. Right: a load between the strips, far from the "
        "seam, peels it open from the root.",
        scale=40,
    )
    x, y = 4.0, 1.3
    for side in (-1, 1):
        d.polygon(_leg(x, y, side, 3.0), "cut")
    d.polygon(_pool(x, y, 0.12), "hot")
    arrow(d, (x + 0.45, 4.5), (x + 0.45, 5.5), "ink heavy")
    arrow(d, (x - 0.45, 1.0), (x - 0.45, 0.1), "ink heavy")
    x = 11.6
    for side in (-1, 1):
        d.polygon(moved(_leg(x, y, side, 3.0), (x + side * 0.2, y), side * 9), "cut")
    d.polygon(_pool(x, y - 0.02, 0.12, 0.3, 1.5), "hot")
    for side in (-1, 1):
        arrow(d, (x + side * 1.5, 4.0), (x + side * 2.7, 4.0), "ink heavy")
    leader(d, (x, y + 0.32), (x - 2.4, 0.7), "root", "end")
    return d


@drawing("edge-open-test")
def edge_open_test() -> Drawing:
    """The practice piece pried open with pliers."""
    d = Drawing(
        16.0,
        6.0,
        "Open the practice piece",
        "The two strips are spread by 30 degrees with pliers. A good edge holds and the strips bend beside it.",
        scale=40,
    )
    x, y = 8.0, 1.2
    for side in (-1, 1):
        outer: list[Point] = []
        inner: list[Point] = []
        for i in range(25):
            down = i / 24 * 3.4
            push = 0.0 if down < 0.5 else 0.23 * (down - 0.5) ** 1.55
            outer.append((x + side * (STRIP + push), y + down))
            inner.append((x + side * push, y + down))
        d.polygon([*inner, *reversed(outer)], "cut")
        arrow(d, (x + side * 2.7, y + 3.3), (x + side * 3.9, y + 2.9), "ink heavy")
    d.polygon(_pool(x, y, 0.12), "hot")
    return d


@drawing("bail-before")
def bail_before() -> Drawing:
    """A bail bent from strip, its two ends side by side at the bottom."""
    d = _bail_strip(
        "Bail before fusing", "A bail bent from strip, seen from the side. Its two ends stand side by side."
    )
    _bail(d, 0, 0)
    return d


@drawing("bail-fused")
def bail_fused() -> Drawing:
    """The ends fused along their edge, beam from below."""
    d = _bail_strip(
        "Bail fused",
        "The bail lies with its ends up. They are fused along the common edge; the beam points at the line. The "
        "pendant does not hang on it yet.",
        -1.2,
    )
    _bail(d, 0, BAIL_HIGH, up=True)
    d.polygon(_pool(0, -0.02, 0.18, 0.55, 1.64), "hot")
    d.beam(0, -0.2, 0.5, 1.0)
    return d


@drawing("bail-finished")
def bail_finished() -> Drawing:
    """The bail leveled, ring and pendant hung on it afterward."""
    d = _bail_strip(
        "Bail finished",
        "The edge is leveled. Only now the pendant's jump ring, dashed and seen edge-on, is hung in the bail.",
        -0.2,
    )
    _bail(d, 0, 0)
    d.polygon([(px, BAIL_HIGH - py) for px, py in _pool(0, 0, 0.0, 0.5, 1.62)], "hot")
    ring = [*cap(0, 3.9, 0.9, 0.45), *reversed(cap(0, 7.2, 0.9, 0.45, -1))]
    d.polygon(ring, "ghost")
    return d


def _bail_strip(title: str, description: str, top: float = -0.65) -> Drawing:
    return Drawing(13.846, 8.0, title, description, scale=26, left=-6.923, top=top)


def _bail(d: Drawing, x: float, y: float, up: bool = False) -> None:
    """A teardrop bail 6.7 mm high, 0.8 mm strip, from ``y`` down (or with its ends up), its two ends side by side."""
    way = -1 if up else 1
    middle: list[Point] = []
    for i in range(30):
        angle = math.radians(90 - 110 * i / 29)
        middle.append((2.4 * math.cos(angle), 2.8 - 2.4 * math.sin(angle)))
    (sx, sy), (ex, ey) = middle[-1], (0.41, BAIL_HIGH - 0.9)
    reach = 1.1
    slope = math.radians(-20 - 90)
    c1, c2 = (sx + reach * math.cos(slope), sy - reach * math.sin(slope)), (ex, ey - reach)
    for i in range(1, 16):
        t = i / 15
        weights = ((1 - t) ** 3, 3 * t * (1 - t) ** 2, 3 * t * t * (1 - t), t**3)
        places = ((sx, sy), c1, c2, (ex, ey))
        middle.append(
            (
                sum(w * q[0] for w, q in zip(weights, places, strict=True)),
                sum(w * q[1] for w, q in zip(weights, places, strict=True)),
            )
        )
    middle.append((0.41, BAIL_HIGH))
    outer: list[Point] = []
    inner: list[Point] = []
    for i, (px, py) in enumerate(middle):
        (ax, ay), (bx, by) = middle[max(0, i - 1)], middle[min(len(middle) - 1, i + 1)]
        length = math.hypot(bx - ax, by - ay)
        nx, ny = (by - ay) / length, -(bx - ax) / length
        if i == 0:
            nx, ny = 0.0, -1.0
        outer.append((px + 0.4 * nx, py + 0.4 * ny))
        inner.append((max(0.0, px - 0.4 * nx), py - 0.4 * ny))
    left = [(-px, py) for px, py in reversed(outer)]
    back = [*reversed(inner), *[(-px, py) for px, py in inner[1:]]]
    d.polygon([(x + px, y + way * py) for px, py in [*left, *outer[1:], *back]], "cut")


@drawing("bail-blank")
def bail_blank() -> Drawing:
    """The flat blank of the bail with its sizes."""
    d = Drawing(
        20.0,
        7.2,
        "Blank of a bail",
        "The flat blank to scale: 17 mm long, 4 mm wide in the middle, tapering to 2.5 mm at both ends, strip 0.8 mm "
        "thick.",
        scale=32,
        left=-10.0,
        top=-3.4,
    )
    left, right = -8.5, 8.5
    d.polygon(
        [(left, -1.25), (-2.0, -2.0), (2.0, -2.0), (right, -1.25), (right, 1.25), (2.0, 2.0), (-2.0, 2.0), (left, 1.25)]
    )
    d.dimension((left, 1.25), (right, 1.25), "", -46)
    d.text(0, 3.4, "17 mm")
    d.dimension((0, -2.0), (0, 2.0), "", 0)
    d.text(0.35, 0.2, "4 mm", "start")
    d.dimension((-7.7, -1.34), (-7.7, 1.34), "", 0)
    d.text(-7.35, 0.2, "2.5 mm", "start")
    return d


@drawing("bail-worn")
def bail_worn() -> Drawing:
    """Where a bail wears: measure there."""
    d = Drawing(
        20.0,
        8.0,
        "Where a bail wears",
        "The bail from the side. The chain has worn a groove into its top from inside and the pendant's ring has worn "
        "one at the bottom. Calipers measure what is left at the top.",
        scale=32,
        left=-10.0,
        top=-0.9,
    )
    _bail(d, -2.0, 0)
    open_air(d, on_circle(-2.0, 0.92, 0.44, [10.0 * k for k in range(36)]))
    d.dimension((-2.0, 0.0), (-2.0, 0.48), "", 0)
    leader(d, (-2.0, 0.2), (1.6, -0.2), "measure here")
    leader(d, (-2.0, 5.2), (1.6, 5.6), "and here")
    return d
