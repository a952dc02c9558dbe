"""Drawings of bails: before, fused and finished, the blank, the worn place."""

from __future__ import annotations

import math

from build_scripts.drawings import drawing
from build_scripts.drawings.bench import cap, on_circle
from build_scripts.drawings.edge import BAIL_HIGH, pool
from build_scripts.drawings.sketch import leader, open_air
from calculators.drawing import Drawing, Point


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
    d.polygon(pool(0, -0.02, 0.18, 0.55, 1.64), "hot")
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
    d.polygon([(px, BAIL_HIGH - py) for px, py in pool(0, 0, 0.0, 0.5, 1.62)], "hot")
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
