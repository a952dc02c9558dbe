"""Pictures of pools and plots, in the handbook's drawing style."""

from __future__ import annotations

import math
from collections.abc import Sequence

from ..drawing import Drawing, Point
from ..units import number_text
from .closed_forms import plate_axis_rise
from .pool import Material, Pool, Shot, groups

_SOFT = 0.5  # share of the absolute melting temperature above which a cold-worked metal softens (from memory)


def soft_depth(shot: Shot, metal: Material, beta: float) -> float:
    """Depth in m that passes the softening temperature by the end of the pulse, from the closed form."""
    fourier, thick, rise = groups(shot, metal)
    wanted = ((metal.melting + 273.15) * _SOFT - 273.15 - metal.start) / metal.rise
    if wanted >= beta or wanted <= 0:
        return 0.0
    near, far = 0.0, min(thick, 12 * math.sqrt(fourier) + 1)
    for _ in range(24):
        middle = (near + far) / 2
        if beta * plate_axis_rise(middle, fourier, thick) / rise > wanted:
            near = middle
        else:
            far = middle
    return near * shot.spot / 2


def pool_section(shot: Shot, metal: Material, found: Pool, thickness_shown: bool) -> Drawing:
    """The plate cut through the middle of the spot: pool, softened zone, spot, to scale."""
    spot, depth, width = shot.spot * 1e3, found.depth * 1e3, found.width * 1e3
    soft = min(soft_depth(shot, metal, min(found.beta, 12)) * 1e3, 3 * max(spot, depth))
    plate = shot.thickness * 1e3 if thickness_shown else max(1.2 * soft, 1.6 * depth, 0.8 * spot)
    shown = min(plate, max(1.5 * soft, 2.2 * depth, 1.2 * spot, 0.4))
    side = max(width / 2 + max(soft - depth, 0) * 1.15, spot) + 0.25 * max(spot, shown)
    scale = min(560 / (2 * side), 300 / shown)
    above = 92 / scale
    words = f"Spot {spot:.2f} mm wide on the metal, pool {width:.2f} mm wide and {depth:.2f} mm deep."
    picture = Drawing(2 * side, shown + above + 62 / scale, "Section through the pool, to scale", words, scale)
    middle, top = side, above
    picture.rectangle(0, top, 2 * side, shown, "part")
    if soft > depth:
        reach = min((width / 2 or spot / 2) + (soft - depth), side * 0.98)
        picture.polygon(bowl(middle, top, reach, min(soft, shown)), "soft")
    if depth > 0:
        picture.polygon(bowl(middle, top, width / 2, depth), "hot")
        picture.dimension((middle - width / 2, top), (middle + width / 2, top), f"{width:.2f} mm", away=46)
        picture.dimension((middle + width / 2, top + depth), (middle + width / 2, top), f"{depth:.2f} mm", away=-16)
    picture.beam(middle, top, spot, 30 / scale)
    if thickness_shown and shown >= plate:
        picture.line([(0, top + shown), (2 * side, top + shown)], "ink")
    bar = 10 ** math.floor(math.log10(side))
    bar *= 5 if bar * 5 < side else 2 if bar * 2 < side else 1
    picture.scale_bar(bar, f"{bar:g} mm", 10 / scale, top + shown + 18 / scale)
    if soft > depth:
        picture.text(2 * side - 8 / scale, top + shown + 42 / scale, "softened zone, about", "end")
    return picture


def bowl(middle: float, top: float, half: float, depth: float) -> list[Point]:
    """Outline of a bowl: half an ellipse under the surface."""
    angles = [math.pi * i / 32 for i in range(33)]
    return [(middle + half * math.cos(a), top + depth * math.sin(a)) for a in angles]


def nice_step(span: float, about: int = 5) -> float:
    """A round step that divides ``span`` into about so many."""
    raw = span / about
    ten = 10 ** math.floor(math.log10(raw))
    return float(next(step * ten for step in (1, 2, 5, 10) if step * ten >= raw * 0.999))


class Plot:
    """A plain plot of lines and points: x to the right, y up, ticks at round numbers."""

    def __init__(
        self, title: str, description: str, x_range: Point, y_range: Point, x_words: str, y_words: str
    ) -> None:
        self.x0, self.x1 = x_range
        self.y0, self.y1 = y_range
        self.left, self.right, self.top, self.base = 74.0, 622.0, 42.0, 318.0
        self.picture = Drawing(640, 380, title, description, scale=1)
        for axis in ("x", "y"):
            self._ticks(axis)
        self.picture.line([(self.left, self.top), (self.left, self.base), (self.right, self.base)], "ink")
        self.picture.text((self.left + self.right) / 2, 372, x_words)
        self.picture.text(8, 24, y_words, "start")

    def _ticks(self, axis: str) -> None:
        low, high = (self.x0, self.x1) if axis == "x" else (self.y0, self.y1)
        step = nice_step(high - low)
        value = math.ceil(low / step - 1e-9) * step
        while value <= high + 1e-9 * step:
            px, py = self.at(value, self.y0) if axis == "x" else self.at(self.x0, value)
            words = number_text(round(value / step) * step, 4)
            if axis == "x":
                self.picture.line([(px, py), (px, py + 6)], "dim")
                self.picture.text(px, py + 26, words)
            else:
                self.picture.line([(px, py), (self.right, py)], "dim thin")
                self.picture.text(px - 8, py + 6, words, "end")
            value += step

    def at(self, x: float, y: float) -> Point:
        """Picture place of a value, held inside the frame."""
        across = (x - self.x0) / ((self.x1 - self.x0) or 1)
        up = (y - self.y0) / ((self.y1 - self.y0) or 1)
        across, up = min(max(across, 0.0), 1.0), min(max(up, 0.0), 1.0)
        return self.left + across * (self.right - self.left), self.base - up * (self.base - self.top)

    def line(self, points: Sequence[Point], kind: str = "ink") -> None:
        """A line through values."""
        self.picture.line([self.at(*point) for point in points], kind)

    def band(self, low: Sequence[Point], high: Sequence[Point], kind: str = "soft") -> None:
        """The area between two lines."""
        self.picture.polygon([self.at(*p) for p in low] + [self.at(*p) for p in reversed(high)], kind)

    def point(self, x: float, y: float, size: float = 6, kind: str = "hot") -> None:
        """A dot."""
        self.picture.circle(*self.at(x, y), size, kind)

    def words(self, x: float, y: float, words: str, anchor: str = "start") -> None:
        """A few words beside a value."""
        px, py = self.at(x, y)
        self.picture.text(px + (6 if anchor == "start" else -6), py - 6, words, anchor)
