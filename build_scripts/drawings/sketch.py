"""Shapes that several drawings need: a band in section, melted metal, gas, arrows, tools. No drawings of its own."""

from __future__ import annotations

import math
from dataclasses import dataclass
from itertools import pairwise

from calculators.drawing import Drawing, Point


def polar(x: float, y: float, radius: float, degrees: float) -> Point:
    """A point on a circle around ``x, y`` (0 = right, 90 = up)."""
    angle = math.radians(degrees)
    return x + radius * math.cos(angle), y - radius * math.sin(angle)


def smooth(d: Drawing, points: list[Point], kind: str, closed: bool = False) -> None:
    """A soft line or shape through ``points`` (Catmull-Rom)."""
    count = len(points)
    ring = [points[-1], *points, points[0], points[1]] if closed else [points[0], *points, points[-1]]
    commands: list[tuple[str, list[Point]]] = [("M", [points[0]])]
    for i in range(count if closed else count - 1):
        (ax, ay), (bx, by), (cx, cy), (ex, ey) = ring[i : i + 4]
        first = (bx + (cx - ax) / 6, by + (cy - ay) / 6)
        second = (cx - (ex - bx) / 6, cy - (ey - by) / 6)
        commands.append(("C", [first, second, (cx, cy)]))
    if closed:
        commands.append(("Z", []))
    d.path(commands, kind)


@dataclass(frozen=True)
class Section:
    """A band cut along its middle: ``u`` runs along the band in mm from the seam, ``v`` outward from the inside face.

    ``inner`` is the inside radius (infinite for a straight strip); ``x, y`` is the inside face at the seam.
    """

    x: float
    y: float
    wall: float
    inner: float = math.inf

    def at(self, u: float, v: float) -> Point:
        """Picture millimetres of a place in the band; lengths are true on the neutral line."""
        if math.isinf(self.inner):
            return self.x + u, self.y - v
        angle = u / (self.inner + self.wall / 2)
        radius = self.inner + v
        return self.x + radius * math.sin(angle), self.y + self.inner - radius * math.cos(angle)

    def points(self, corners: list[Point]) -> list[Point]:
        """The outline through ``corners`` (u, v), bent with the band."""
        return [self.at(*one) for one in self._close_set([*corners, corners[0]])][:-1]

    @staticmethod
    def _close_set(corners: list[Point]) -> list[Point]:
        """``corners`` with points between them, close enough for a smooth curve."""
        found = [corners[0]]
        for (au, av), (bu, bv) in pairwise(corners):
            steps = max(1, math.ceil(abs(bu - au) / 0.25))
            found += [(au + (bu - au) * i / steps, av + (bv - av) * i / steps) for i in range(1, steps + 1)]
        return found

    def area(self, d: Drawing, corners: list[Point], kind: str) -> None:
        """A shape in the band."""
        d.polygon(self.points(corners), kind)

    def line(self, d: Drawing, corners: list[Point], kind: str = "ink") -> None:
        """An open line in the band."""
        d.line([self.at(*one) for one in self._close_set(corners)], kind)

    def melt(self, d: Drawing, u: float, width: float, depth: float, proud: float = 0.0, inside: bool = False) -> None:
        """Fused metal of one pass: ``width`` at the face, a round bottom ``depth`` down, ``proud`` above the face."""
        face, way = (0.0, -1.0) if inside else (self.wall, 1.0)
        outline = []
        for i in range(25):
            part = -1 + i / 12
            outline.append((u + part * width / 2, face - way * depth * math.sqrt(max(0.0, 1 - part * part))))
        for i in range(1, 24):
            part = 1 - i / 12
            outline.append((u + part * width / 2, face + way * proud * (1 - part * part)))
        d.polygon([self.at(*one) for one in outline], "hot")


def gas(d: Drawing, x: float, y: float, reach: float, spread: float = 25.0, lean: float = 90.0) -> None:
    """Shielding gas: rows of dots that come down on ``x, y`` from the side ``lean`` (degrees, 90 = from above)."""
    for row, share in enumerate((0.35, 0.6, 0.85, 1.1)):
        for offset in (-1, 0, 1) if row % 2 else (-0.5, 0.5):
            px, py = polar(x, y, reach * share, lean + offset * spread / 2)
            d.circle(px, py, 2.6 / d.scale, "gas")


def nozzle(d: Drawing, x: float, y: float, length: float, width: float, lean: float) -> None:
    """The end of a gas tube whose mouth is at ``x, y``, lying back toward ``lean`` degrees."""
    (sx, sy), (ox, oy) = polar(0, 0, width / 2, lean - 90), polar(0, 0, length, lean)
    d.polygon([(x + sx, y + sy), (x - sx, y - sy), (x - sx + ox, y - sy + oy), (x + sx + ox, y + sy + oy)], "part tool")


def arrow(d: Drawing, start: Point, end: Point, kind: str = "ink") -> None:
    """A straight arrow with its head at ``end``."""
    length = math.hypot(end[0] - start[0], end[1] - start[1]) or 1.0
    ux, uy = (end[0] - start[0]) / length, (end[1] - start[1]) / length
    head = 9 / d.scale
    d.line([start, end], kind)
    wings = [(end[0] - head * ux + s * head * 0.5 * uy, end[1] - head * uy - s * head * 0.5 * ux) for s in (1, -1)]
    d.line([wings[0], end, wings[1]], kind)


def turn(d: Drawing, x: float, y: float, radius: float, start: float, end: float, kind: str = "ink") -> None:
    """A curved arrow around ``x, y`` from one angle to another, head at the end."""
    steps = 24
    d.line([polar(x, y, radius, start + (end - start) * i / steps) for i in range(steps + 1)], kind)
    tip, way = polar(x, y, radius, end), math.copysign(1, end - start)
    head = 9 / d.scale
    back = end + 90 - 180 * (way > 0)
    for side in (28, -28):
        d.line([polar(tip[0], tip[1], head, back + side), tip], kind)


def leader(d: Drawing, place: Point, label: Point, words: str, anchor: str = "start") -> None:
    """A thin line from a place to its words; the words stand beyond the end of the line."""
    d.line([place, label], "dim thin")
    shift = {"start": 5, "end": -5, "middle": 0}[anchor] / d.scale
    drop = {"start": 6, "end": 6, "middle": 20 if label[1] > place[1] else -6}[anchor] / d.scale
    d.text(label[0] + shift, label[1] + drop, words, anchor)


def lens(d: Drawing, x: float, y: float, radius: float) -> None:
    """The rim of a magnified view."""
    d.circle(x, y, radius, "ink")


def bar(d: Drawing, x: float, y: float, length: float, width: float, degrees: float, kind: str = "part tool") -> None:
    """A straight bar (file, wire, jaw) from ``x, y`` on its long axis, ``length`` toward ``degrees``."""
    (ux, uy), (sx, sy) = polar(0, 0, length, degrees), polar(0, 0, width / 2, degrees + 90)
    d.polygon([(x + sx, y + sy), (x + sx + ux, y + sy + uy), (x - sx + ux, y - sy + uy), (x - sx, y - sy)], kind)


def tick(d: Drawing, x: float, y: float, good: bool) -> None:
    """A check mark or a cross, 16 picture units wide."""
    size = 8 / d.scale
    if good:
        d.line([(x - size, y), (x - size * 0.3, y + size * 0.8), (x + size, y - size)], "ink heavy")
    else:
        d.line([(x - size, y - size), (x + size, y + size)], "ink heavy")
        d.line([(x - size, y + size), (x + size, y - size)], "ink heavy")


def open_air(d: Drawing, points: list[Point]) -> None:
    """A hole or hollow through which the page shows."""
    corners = " ".join(f"{d.x(px):.2f},{d.y(py):.2f}" for px, py in points)
    d.add(f'<polygon class="ink" style="fill:var(--md-default-bg-color,#faf7f1)" points="{corners}"/>')
