"""A ring seen from the side with a place to fill at the base of its shank, and that place drawn larger."""

from __future__ import annotations

import math
from dataclasses import dataclass

from ..drawing import Drawing, Point
from ..units import number_text
from .common import mm

_WIDE, _RING = 640.0, 262.0  # picture units


@dataclass(frozen=True)
class Place:
    """The place to fill, in mm from the middle of the ring, y upward (so the base of the shank is negative).

    ``floor`` runs from left to right along the worn face; ``strip`` is the outline of the metal laid on it;
    ``length`` is lettered, ``depth`` is a height with its lettering. ``arc_length`` says that the length is
    measured along the curve.
    """

    floor: list[Point]
    strip: list[Point]
    length: str
    depth: tuple[float, str]
    arc_length: bool = False


def arc(radius: float, start: float, end: float) -> list[Point]:
    """Points on a circle between two angles in radians, measured from the base of the shank, right positive."""
    steps = max(2, math.ceil(abs(end - start) / 0.05))
    angles = [start + (end - start) * i / steps for i in range(steps + 1)]
    return [(radius * math.sin(a), -radius * math.cos(a)) for a in angles]


def flat_place(outer: float, depth: float, half: float, over: float, extra: float) -> Place:
    """A flat ``half`` mm long on each side of the base, with a straight strip on it."""
    level = outer - depth
    ends = half + over
    strip = [(-ends, -level), (ends, -level), (ends, -outer - extra), (-ends, -outer - extra)]
    return Place([(-half, -level), (half, -level)], strip, mm(2 * half), (depth, mm(depth)))


def worn_place(low: float, outer: float, angle: float, over: float, extra: float) -> Place:
    """A part worn down to the radius ``low`` over ``angle`` radians, with a bent strip on it."""
    half = min(angle / 2, math.pi - 1e-6)
    wide = min(half + over / low, math.pi - 1e-6)
    strip = arc(low, -half, half) + arc(outer, half, wide) + arc(outer + extra, wide, -wide) + arc(outer, -wide, -half)
    return Place(arc(low, -half, half), strip, mm(2 * half * low), (outer - low, mm(outer - low)), arc_length=True)


def _put(points: list[Point], x: float, y: float, zoom: float = 1.0) -> list[Point]:
    return [(x + px * zoom, y - py * zoom) for px, py in points]


def ring_with_place(title: str, told: str, inner: float, outer: float, place: Place) -> Drawing:
    """Left the whole ring to scale, right the place larger (left out when it is most of the ring)."""
    half = math.atan2(place.floor[-1][0], -place.floor[-1][1])
    span = max(x for x, _ in place.strip) - min(x for x, _ in place.strip)
    scale = _RING / (2 * outer)
    zoom = min(200 / span, 150 / place.depth[0]) / scale
    detail = zoom >= 1.6 and half < 1.2
    px = 1 / scale
    picture = Drawing(_WIDE * px, (_RING + (74 if detail else 100)) * px, title, told, scale)
    cx, cy = (10 + _RING / 2) * px if detail else _WIDE * px / 2, (10 + _RING / 2) * px
    body = place.floor + arc(outer, half, 2 * math.pi - half)
    _with_hole(picture, _put(body, cx, cy), _put(arc(inner, 0, 2 * math.pi), cx, cy))
    fill = place.floor + arc(outer, half, -half)
    picture.polygon(_put(fill, cx, cy), "hot")
    if 2 * inner * scale > 80:
        picture.dimension((cx - inner, cy), (cx + inner, cy), mm(2 * inner))
    picture.scale_bar(5, "5 mm", cx - 2.5, cy + outer + 26 * px)
    if detail:
        _detail(picture, inner, outer, place, zoom)
    else:
        picture.text(cx, cy + outer + 78 * px, f"{place.length} long, {place.depth[1]} deep")
    return picture


def _with_hole(picture: Drawing, rim: list[Point], hole: list[Point]) -> None:
    paths = "".join(
        "M" + "L".join(f"{picture.x(x):.2f},{picture.y(y):.2f}" for x, y in points) + "Z" for points in (rim, hole)
    )
    picture.add(f'<path class="part" fill-rule="evenodd" d="{paths}"/>')


def _detail(picture: Drawing, inner: float, outer: float, place: Place, zoom: float) -> None:
    px = 1 / picture.scale
    half = math.atan2(place.floor[-1][0], -place.floor[-1][1])
    reach = half + 24 * px / zoom / outer
    lowest = -min(y for _, y in place.strip)
    wall = (outer - inner) * zoom / px
    deep = place.depth[0] * zoom / px + 30
    shown = min(wall, max(120.0, deep)) * px / zoom  # a thick band is broken off above
    middle = outer - shown / 2
    cx, cy = 414 * px, 150 * px - middle * zoom
    band = arc(outer, -reach, -half) + place.floor + arc(outer, half, reach) + arc(outer - shown, reach, -reach)
    picture.polygon(_put(band, cx, cy, zoom), "part")
    picture.polygon(_put(place.floor + arc(outer, half, -half), cx, cy, zoom), "hot")
    picture.polygon(_put(place.strip, cx, cy, zoom), "ghost")
    (left, top), (right, _) = place.floor[0], place.floor[-1]
    mid = min(y for _, y in place.floor) if place.arc_length else top
    ends = _put([(left, -lowest), (right, -lowest)], cx, cy, zoom)
    if place.arc_length:
        x, y = cx, cy + lowest * zoom + 24 * px
        picture.text(x, y, f"{place.length} along the curve")
    else:
        picture.dimension(ends[0], ends[1], place.length, away=-16)
    edge = max(x for x, _ in (band if place.arc_length else place.strip))
    upper, lower = _put([(edge, mid), (edge, mid - place.depth[0])], cx, cy, zoom)
    picture.dimension(upper, lower, place.depth[1], away=14)
    highest = min(y for _, y in _put(band, cx, cy, zoom))
    picture.text(cx, highest - 12 * px, f"×{number_text(zoom, 2)}")
