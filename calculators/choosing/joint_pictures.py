"""The joints in section, to scale for the thickness that was asked."""

from __future__ import annotations

from ..drawing import Drawing
from ..units import number_text
from .view import melt, round_of

SLUGS = ("butt", "edge", "lap", "plug", "t-corner", "pit-fill", "opens")
_TOLD = {
    "butt": "Two ends face to face, fused from both faces.",
    "edge": "Two strips side by side, fused along their common edge.",
    "lap": "New metal laid on a worn place and fused through.",
    "plug": "A post through its hole, with a bead melted from its end and fused deep around it.",
    "t-corner": "One part stands on the face of another, with a fillet on both sides.",
    "pit-fill": "A pit opened to its bottom and filled from there.",
    "opens": "A pin through two knuckles: it can be taken apart and put together again.",
}


def picture(slug: str, thickness: float, title: str = "The joint") -> Drawing:
    """The joint of that slug in walls ``thickness`` mm thick."""
    size = max(0.5, thickness / 1.3)
    shown = number_text(thickness, 3)
    d = Drawing(6.4 * size, 4 * size, f"{title} in section", f"{_TOLD[slug]} Wall {shown} mm, to scale.", 100 / size)
    _DRAW[slug](d, thickness, 3.2 * size, 1.4 * size)
    d.dimension((0.55 * size, 1.4 * size), (0.55 * size, 1.4 * size + thickness), "")
    d.text(0.3 * size, 1.75 * size + thickness, f"{shown} mm", "start")
    return d


def _wall(d: Drawing, x: float, y: float, wide: float, thick: float) -> None:
    d.rectangle(x - wide, y, wide, thick, "cut")
    d.rectangle(x, y, wide, thick, "cut")


def _butt(d: Drawing, t: float, x: float, y: float) -> None:
    _wall(d, x, y, x - y * 0.55, t)
    deep = min(0.45, t / 2) if t <= 1 else t / 2 + 0.03
    for face, up in ((y, 1.0), (y + t, -1.0)):
        d.polygon(melt(x, face, 0.5 if t <= 1 else 0.35 + t * 0.35, deep, 0.1, up), "hot")
    d.beam(x, y - 0.1, 0.5, y - 0.15, 0)


def _edge(d: Drawing, t: float, x: float, y: float) -> None:
    for left in (x - t, x):
        d.rectangle(left, y, t, 3.9 * y / 1.4 - y, "cut")
    d.polygon(melt(x, y, min(2 * t, 1.2), 0.45, 0.15), "hot")
    d.beam(x, y - 0.15, 0.5, y - 0.2)


def _lap(d: Drawing, t: float, x: float, y: float) -> None:
    wide = x - y * 0.55
    d.rectangle(x - wide, y, 2 * wide, t, "cut")
    deep = min(0.3 * t, 0.5)
    d.polygon([*round_of(x, y, wide * 0.6, -deep, 0, 180), *round_of(x, y, wide * 0.6, -0.2, 180, 360)], "hot")
    d.line([(x - wide * 0.6, y), (x + wide * 0.6, y)], "ghost")
    d.beam(x, y - 0.2, 0.5, y - 0.25)


def _plug(d: Drawing, t: float, x: float, y: float) -> None:
    half, wide = min(0.45, t * 0.6), x - y * 0.55
    d.rectangle(x - wide, y, wide - half, t, "cut")
    d.rectangle(x + half, y, wide - half, t, "cut")
    d.rectangle(x - half, y, 2 * half, 3.9 * y / 1.4 - y, "cut")
    d.polygon(melt(x, y, half * 3, min(t * 0.6, 0.7), 0.12), "hot")
    d.beam(x, y - 0.12, 0.5, y - 0.17)


def _t_corner(d: Drawing, t: float, x: float, y: float) -> None:
    wide = x - y * 0.55
    d.rectangle(x - wide, y, 2 * wide, t, "cut")
    d.rectangle(x - t / 2, 0.1 * y, t, 0.9 * y, "cut")
    leg = min(0.5, t * 0.7)
    for side in (-1, 1):
        foot = x + side * t / 2
        d.polygon([(foot, y - leg), (foot + side * leg, y), (foot, y + leg * 0.5), (foot - side * leg * 0.4, y)], "hot")


def _pit_fill(d: Drawing, t: float, x: float, y: float) -> None:
    wide = x - y * 0.55
    d.rectangle(x - wide, y, 2 * wide, t, "cut")
    deep = min(t * 0.55, 0.8)
    d.polygon([(x - deep * 0.8, y), *round_of(x, y + deep * 0.7, deep * 0.4, -deep * 0.3, 180, 0), (x + deep * 0.8, y),
               *round_of(x, y, deep * 0.8, 0.12, 0, 180)], "hot")  # fmt: skip
    d.beam(x, y - 0.12, 0.4, y - 0.17)


def _opens(d: Drawing, t: float, x: float, y: float) -> None:
    wide = x - y * 0.55
    outer = max(t, 0.6)
    for side in (-1, 1):
        d.rectangle(x if side > 0 else x - wide, y, wide, t, "cut")
    d.circle(x, y + t / 2, outer, "cut")
    d.circle(x, y + t / 2, outer * 0.45, "part")


_DRAW = {
    "butt": _butt,
    "edge": _edge,
    "lap": _lap,
    "plug": _plug,
    "t-corner": _t_corner,
    "pit-fill": _pit_fill,
    "opens": _opens,
}
