"""Drawings of prongs: a round stone 5 mm across, prongs of 1.0 mm wire. The head is cut through two prongs."""

from __future__ import annotations

from build_scripts.drawings import drawing
from build_scripts.drawings.bench import cap, moved
from build_scripts.drawings.sketch import arrow, bar, polar, smooth, tick
from calculators.drawing import Drawing, Point

RADIUS, TABLE, CROWN, PAVILION = 2.5, 1.4, 0.8, 2.15  # mm, the stone
WIRE = 1.0


def _scaled(points: list[Point], x: float, y: float, zoom: float, side: int = 1) -> list[Point]:
    return [(x + side * px * zoom, y + py * zoom) for px, py in points]


def _stone(d: Drawing, x: float, y: float, zoom: float = 1.0) -> None:
    d.polygon(
        _scaled(
            [
                (-TABLE, -CROWN),
                (TABLE, -CROWN),
                (RADIUS, -0.05),
                (RADIUS, 0.08),
                (0, PAVILION),
                (-RADIUS, 0.08),
                (-RADIUS, -0.05),
            ],
            x,
            y,
            zoom,
        ),
        "stone",
    )
    d.line(_scaled([(-RADIUS, 0.0), (RADIUS, 0.0)], x, y, zoom), "dim thin")


_SHAFT: list[Point] = [(3.2, 0.0), (2.95, 3.2), (1.95, 3.2), (2.2, 0.55), (2.52, 0.14), (2.52, -0.04)]
_TIP: list[Point] = [(2.12, -0.36), (1.92, -0.5), (1.92, -0.7), (2.1, -0.9), (2.45, -1.0), (2.85, -0.85), (3.1, -0.5)]
_WORN: list[Point] = [(2.42, -0.12), (2.4, -0.2), (2.75, -0.24), (3.1, -0.12)]


def _prong(d: Drawing, x: float, y: float, side: int, top: list[Point], zoom: float = 1.0, kind: str = "cut") -> None:
    """One prong; ``top`` runs from the stone's side over the tip to the outside."""
    d.polygon(_scaled([*_SHAFT, *top], x, y, zoom, side), kind)


_BUILT: list[Point] = [
    (2.48, 0.0),
    (2.12, -0.36),
    (1.86, -0.52),
    (1.84, -0.78),
    (2.08, -1.06),
    (2.5, -1.18),
    (2.95, -1.02),
    (3.24, -0.6),
    (3.24, -0.02),
    (2.9, 0.12),
]


def _strip(title: str, description: str) -> Drawing:
    return Drawing(9.0, 5.2, title, description, scale=40, left=-4.5, top=-2.3)


@drawing("prong-before")
def prong_before() -> Drawing:
    """Left prong sound, right prong worn flat."""
    d = _strip(
        "Prong before",
        "A head cut through two prongs. The left prong reaches over the stone; the right one is worn flat and holds "
        "only a thin lip of the stone's edge.",
    )
    _stone(d, 0, 0)
    _prong(d, 0, 0, -1, _TIP)
    _prong(d, 0, 0, 1, _WORN)
    return d


@drawing("prong-fused")
def prong_fused() -> Drawing:
    """Built up higher; the beam leans outward."""
    d = _strip(
        "Prong built up",
        "Metal has been built up on the worn prong, higher and rounder than wanted. The beam comes from above the "
        "stone and leans outward, so that a miss goes past the prong and not into the stone.",
    )
    _stone(d, 0, 0)
    _prong(d, 0, 0, -1, _TIP)
    _prong(d, 0, 0, 1, _WORN)
    smooth(d, _BUILT, "hot", closed=True)
    d.polygon([(0.9, -2.3), (1.75, -2.3), (2.62, -1.15), (2.3, -1.1)], "beam")
    return d


@drawing("prong-finished")
def prong_finished() -> Drawing:
    """Domed like its neighbor."""
    d = _strip(
        "Prong finished",
        "The new tip is filed and domed like the left one and bears on the stone.",
    )
    _stone(d, 0, 0)
    _prong(d, 0, 0, -1, _TIP)
    _prong(d, 0, 0, 1, _WORN)
    d.polygon([(2.5, -0.02), *_TIP, (3.18, -0.02), (2.8, 0.08)], "hot")
    return d


@drawing("prong-aim")
def prong_aim() -> Drawing:
    """Where the line of the beam goes if it misses."""
    d = Drawing(
        16.0,
        6.4,
        "Where a miss goes",
        "Left: the beam comes from above the stone and leans outward; its line, drawn on, leaves the piece. Right: it "
        "comes from outside; its line goes into the stone.",
        scale=40,
    )
    for x, good in ((3.6, True), (11.4, False)):
        y = 3.8
        _stone(d, x, y)
        _prong(d, x, y, -1, _TIP)
        _prong(d, x, y, 1, _WORN)
        if good:
            d.polygon(_scaled([(0.6, -3.1), (1.5, -3.1), (2.72, -0.3), (2.45, -0.22)], x, y, 1), "beam")
            d.line(_scaled([(2.6, -0.24), (4.0, 2.4)], x, y, 1), "ghost")
        else:
            d.polygon(_scaled([(3.6, -2.9), (4.4, -2.5), (2.75, -0.2), (2.5, -0.32)], x, y, 1), "beam")
            d.line(_scaled([(2.6, -0.2), (0.4, 1.75)], x, y, 1), "ghost")
        tick(d, x - 2.6, 1.2, good)
    return d


@drawing("prong-top")
def prong_top() -> Drawing:
    """From above: tangent to the stone."""
    d = Drawing(
        16.0,
        6.4,
        "Past the stone, seen from above",
        "The stone with its four prongs from above. Left: the beam runs past the stone, along its edge. Right: it runs "
        "across the stone to reach the prong on the far side.",
        scale=40,
    )
    for x, good in ((4.2, True), (11.8, False)):
        y = 3.2
        d.circle(x, y, RADIUS, "stone")
        d.circle(x, y, TABLE, "stone")
        for angle in (45, 135, 225, 315):
            px, py = polar(x, y, 2.45, angle)
            d.circle(px, py, 0.5, "hot" if angle == 45 else "part")
        px, py = polar(x, y, 2.6, 45)
        start = (px - 1.25, py - 1.25) if good else (px - 4.4, py + 2.6)
        arrow(d, start, (px - 0.1, py - 0.1) if good else (px - 0.45, py + 0.27), "ink heavy")
        tick(d, x + 2.9, 5.4, good)
    return d


@drawing("prong-look")
def prong_look() -> Drawing:
    """What is worn: how much covers the stone."""
    d = Drawing(
        16.0,
        6.2,
        "How much is left",
        "Three prong tips at the edge of the stone, enlarged. Left: sound, 0.6 mm over the edge, 0.5 mm high. Middle: "
        "worn to a lip, build it up. Right: worn through at the bend, replace the prong.",
        scale=40,
    )
    zoom, y = 1.7, 2.9
    for i, words in enumerate(("sound", "build up", "replace")):
        x = -0.9 + i * 5.2
        d.polygon(
            _scaled([(1.2, -CROWN), (TABLE, -CROWN), (RADIUS, -0.05), (RADIUS, 0.08), (1.2, 1.15)], x, y, zoom), "stone"
        )
        if i < 2:
            _short(d, x, y, zoom, _TIP if i == 0 else _WORN)
        else:
            broken = [(3.18, 0.3), (3.11, 1.2), (2.11, 1.2), (2.2, 0.6), (2.45, 0.48), (2.75, 0.56)]
            d.polygon(_scaled(broken, x, y, zoom), "cut")
        d.text(x + 2.3 * zoom, 5.75, words)
    return d


@drawing("prong-bites")
def prong_bites() -> Drawing:
    """Bites of wire: first the stump, then over the edge."""
    d = Drawing(
        16.0,
        6.2,
        "Build in bites",
        "Three stages at the worn tip, enlarged. 1: one shot on the bare stump. 2: a bite of wire on the outside of "
        "the stump, away from the stone. 3: bites laid inward until the tip covers the edge.",
        scale=40,
    )
    zoom, y = 1.75, 3.6
    for i in range(3):
        x = -1.2 + i * 5.2
        d.polygon(
            _scaled([(1.1, -CROWN), (TABLE, -CROWN), (RADIUS, -0.05), (RADIUS, 0.08), (1.1, 1.2)], x, y, zoom), "stone"
        )
        _short(d, x, y, zoom)
        if i == 0:
            d.polygon(
                _scaled([(2.55, -0.22), *cap(2.78, -0.22, 0.56, 0.08), (2.95, 0.02), (2.65, 0.02)], x, y, zoom), "hot"
            )
        elif i == 1:
            d.polygon(_scaled([*cap(2.85, -0.2, 0.7, 0.42), (3.1, 0.06), (2.7, 0.06)], x, y, zoom), "hot")
            bar(d, *_scaled([(3.0, -0.62)], x, y, zoom)[0], 2.6, 0.5, 50, "part")
        else:
            smooth(d, _scaled(_BUILT, x, y, zoom), "hot", closed=True)
        d.text(x + 2.0 * zoom, 1.2, str(i + 1))
    return d


def _short(d: Drawing, x: float, y: float, zoom: float, top: list[Point] | None = None) -> None:
    """A prong without its long shaft, worn unless another top is given."""
    shaft = [(3.2, 0.0), (3.11, 1.2), (2.11, 1.2), (2.2, 0.55), (2.52, 0.14), (2.52, -0.04)]
    d.polygon(_scaled([*shaft, *(top or _WORN)], x, y, zoom), "cut")


@drawing("prong-peg")
def prong_peg() -> Drawing:
    """A broken prong: drilled stump, peg, fillet."""
    d = Drawing(
        16.0,
        6.4,
        "A peg in the stump",
        "Left: the stump of a broken prong, 1.2 mm thick, drilled 0.6 mm wide and 1.2 mm deep. Middle: a new prong "
        "with a peg of 0.6 mm goes in. Right: fused all around its foot and filed even.",
        scale=40,
    )
    zoom, y = 1.5, 3.4
    for i in range(3):
        x = 2.8 + i * 5.2
        half, hole, deep = 0.6 * zoom, 0.3 * zoom, 1.2 * zoom
        d.polygon(
            [
                (x - half, y),
                (x - hole, y),
                (x - hole, y + deep),
                (x + hole, y + deep),
                (x + hole, y),
                (x + half, y),
                (x + half, 6.1),
                (x - half, 6.1),
            ],
            "cut",
        )
        if i:
            lift = 0.7 if i == 1 else 0.0
            d.polygon(
                [
                    (x - hole, y - lift + deep),
                    (x - hole, y - lift),
                    (x - half, y - lift),
                    (x - half, y - 1.9 - lift * 0.6),
                    (x + half, y - 1.9 - lift * 0.6),
                    (x + half, y - lift),
                    (x + hole, y - lift),
                    (x + hole, y - lift + deep),
                ],
                "cut",
            )
        if i == 1:
            arrow(d, (x + 1.6, y - 1.6), (x + 1.6, y - 0.6))
        if i == 2:
            for side in (-1, 1):
                d.polygon(
                    [
                        (x + side * half * 1.06, y - 0.3),
                        (x + side * half * 1.06, y + 0.3),
                        (x + side * hole * 0.8, y + 0.08),
                        (x + side * hole * 0.8, y - 0.06),
                    ],
                    "hot",
                )
    d.dimension((2.8 - 0.45, 3.4), (2.8 + 0.45, 3.4), "", 12)
    d.text(2.8, 2.75, "0.6 mm")
    d.dimension((1.5, 3.4), (1.5, 3.4 + 1.8), "", 0)
    d.text(1.3, 4.5, "1.2", "end")
    return d


@drawing("prong-faults")
def prong_faults() -> Drawing:
    """Four faults of a tip."""
    d = Drawing(
        16.0,
        5.8,
        "Faults of a tip",
        "Four tips at the edge of the stone: cold bead that only lies on the stump; gap, the tip stands off the stone; "
        "crack at the root; glaze, metal has spattered onto the stone.",
        scale=40,
    )
    zoom, y = 1.25, 3.0
    for i, words in enumerate(("cold bead", "gap", "crack", "glaze")):
        x = -0.75 + i * 3.93
        d.polygon(
            _scaled([(1.2, -CROWN), (TABLE, -CROWN), (RADIUS, -0.05), (RADIUS, 0.08), (1.2, 1.2)], x, y, zoom), "stone"
        )
        _short(d, x, y, zoom)
        if words == "cold bead":
            d.circle(*_scaled([(2.75, -0.66)], x, y, zoom)[0], 0.42 * zoom, "hot")
        elif words == "gap":
            smooth(d, _scaled(moved(_BUILT, (2.9, 0.0), -22), x, y, zoom), "hot", closed=True)
        else:
            smooth(d, _scaled(_BUILT, x, y, zoom), "hot", closed=True)
            if words == "crack":
                d.line(_scaled([(3.3, -0.1), (3.0, -0.2), (2.8, -0.05), (2.5, -0.12)], x, y, zoom), "ink heavy")
            else:
                for px, py in ((1.55, -0.74), (1.7, -0.6), (1.4, -0.86)):
                    d.circle(*_scaled([(px, py)], x, y, zoom)[0], 0.07, "hot")
        d.text(x + 2.4 * zoom, 5.3, words)
    return d
