"""Drawings to scale in one style: SVG written with the handbook's classes, so that CSS gives light, dark and paper.

Coordinates are millimetres of the thing drawn (or of the picture, for sketches); y grows downward. One
millimetre is ``scale`` units of the picture; lines keep one weight whatever the scale.

Classes: ``part`` metal seen from outside, ``cut`` a cut face (hatched), ``hot`` fused metal, ``beam``, ``gas``,
``ghost`` what was or will be there, ``soft`` the softened zone, ``ink`` plain lines, ``dim`` dimensions, ``stone``.
"""

from __future__ import annotations

import math
import zlib
from dataclasses import dataclass, field
from html import escape

Point = tuple[float, float]


def _n(value: float) -> str:
    text = f"{value:.2f}".rstrip("0").rstrip(".")
    return "0" if text in ("-0", "") else text


@dataclass
class Drawing:
    """A picture ``width`` × ``height`` in its own millimetres; ``title`` and ``description`` serve screen readers."""

    width: float
    height: float
    title: str
    description: str
    scale: float = 20.0
    left: float = 0.0
    top: float = 0.0
    body: list[str] = field(default_factory=list)
    words: int = 0

    def x(self, value: float) -> float:
        """Millimetres to picture units, across."""
        return (value - self.left) * self.scale

    def y(self, value: float) -> float:
        """Millimetres to picture units, down."""
        return (value - self.top) * self.scale

    def _points(self, points: list[Point]) -> str:
        return " ".join(f"{_n(self.x(px))},{_n(self.y(py))}" for px, py in points)

    def add(self, svg: str) -> None:
        """Raw SVG in picture units, for hands and other free shapes."""
        self.body.append(svg)

    def polygon(self, points: list[Point], kind: str = "part") -> None:
        """A closed shape."""
        self.body.append(f'<polygon class="{kind}" points="{self._points(points)}"/>')

    def rectangle(self, x: float, y: float, width: float, height: float, kind: str = "part") -> None:
        """A box with its corner at ``x, y``."""
        self.polygon([(x, y), (x + width, y), (x + width, y + height), (x, y + height)], kind)

    def line(self, points: list[Point], kind: str = "ink") -> None:
        """An open line through ``points``."""
        self.body.append(f'<polyline class="{kind}" points="{self._points(points)}"/>')

    def circle(self, x: float, y: float, radius: float, kind: str = "part") -> None:
        """A full circle."""
        self.body.append(
            f'<circle class="{kind}" cx="{_n(self.x(x))}" cy="{_n(self.y(y))}" r="{_n(radius * self.scale)}"/>'
        )

    def path(self, commands: list[tuple[str, list[Point]]], kind: str = "part") -> None:
        """A free path: ``[("M", [(0, 0)]), ("C", [(1, 0), (2, 1), (3, 1)]), ("Z", [])]`` in millimetres."""
        data = " ".join(letter + self._points(points) for letter, points in commands)
        self.body.append(f'<path class="{kind}" d="{data}"/>')

    def ring_sector(
        self, x: float, y: float, inner: float, outer: float, start: float, end: float, kind: str = "part"
    ) -> None:
        """Part of a ring between two angles in degrees (0 = right, 90 = up); a full turn makes a whole ring."""
        if end - start >= 359.999:
            r_out, r_in = _n(outer * self.scale), _n(inner * self.scale)
            cx, cy = self.x(x), self.y(y)
            both = "".join(
                f"M{_n(cx - r)},{_n(cy)}a{t},{t} 0 1 0 {_n(2 * r)},0a{t},{t} 0 1 0 {_n(-2 * r)},0Z"
                for r, t in ((outer * self.scale, r_out), (inner * self.scale, r_in))
            )
            self.body.append(f'<path class="{kind}" fill-rule="evenodd" d="{both}"/>')
            return
        steps = max(2, math.ceil((end - start) / 3))
        angles = [math.radians(start + (end - start) * i / steps) for i in range(steps + 1)]
        points = [(x + outer * math.cos(a), y - outer * math.sin(a)) for a in angles]
        points += [(x + inner * math.cos(a), y - inner * math.sin(a)) for a in reversed(angles)]
        self.polygon(points, kind)

    def text(self, x: float, y: float, words: str, anchor: str = "middle", kind: str = "label") -> None:
        """A few words; ``anchor`` is start, middle or end."""
        self.words += len(words.split())
        place = f'x="{_n(self.x(x))}" y="{_n(self.y(y))}" text-anchor="{anchor}"'
        self.body.append(f'<text class="{kind}" {place}>{escape(words)}</text>')

    def dimension(self, start: Point, end: Point, words: str, away: float = 0.0) -> None:
        """A dimension line with arrow ends between two points, moved ``away`` picture units to its left side."""
        (ax, ay), (bx, by) = ((self.x(px), self.y(py)) for px, py in (start, end))
        length = math.hypot(bx - ax, by - ay) or 1.0
        ux, uy = (bx - ax) / length, (by - ay) / length
        nx, ny = uy, -ux
        if away:
            for px, py in ((ax, ay), (bx, by)):
                reach = away + math.copysign(6, away)
                self.body.append(
                    f'<path class="dim thin" d="M{_n(px)},{_n(py)}L{_n(px + nx * reach)},{_n(py + ny * reach)}"/>'
                )
        ax, ay, bx, by = ax + nx * away, ay + ny * away, bx + nx * away, by + ny * away
        head = min(9.0, length / 3)
        arrows = "".join(
            f"M{_n(px + s * ux * head + nx * head * k / 3)},{_n(py + s * uy * head + ny * head * k / 3)}"
            f"L{_n(px)},{_n(py)}"
            for px, py, s in ((ax, ay, 1), (bx, by, -1))
            for k in (1, -1)
        )
        self.body.append(f'<path class="dim" d="M{_n(ax)},{_n(ay)}L{_n(bx)},{_n(by)}{arrows}"/>')
        side = math.copysign(1, away or 1)
        tx, ty = (ax + bx) / 2 + nx * 14 * side, (ay + by) / 2 + ny * 14 * side
        anchor = "middle" if abs(nx) < 0.5 else ("start" if nx * side > 0 else "end")
        self.words += len(words.split())
        self.body.append(
            f'<text class="label" x="{_n(tx)}" y="{_n(ty + 6)}" text-anchor="{anchor}">{escape(words)}</text>'
        )

    def scale_bar(self, length: float, words: str, x: float, y: float) -> None:
        """A bar of ``length`` mm that shows the scale."""
        self.line([(x, y), (x + length, y)], "dim heavy")
        self.text(x + length / 2, y + 24 / self.scale, words)

    def beam(self, x: float, y: float, spot: float, height: float, lean: float = 0.0) -> None:
        """A beam that narrows to ``spot`` wide at ``x, y``, coming from ``height`` above, leaning by ``lean``."""
        top = spot * 2.2
        self.polygon(
            [
                (x + lean - top / 2, y - height),
                (x + lean + top / 2, y - height),
                (x + spot / 2, y),
                (x - spot / 2, y),
            ],
            "beam",
        )

    def svg(self) -> str:
        """The whole picture as an SVG element that fits its column."""
        inside = "".join(self.body)
        mark = f"{zlib.crc32((inside + self.title).encode()):08x}"
        inside = inside.replace('class="cut"', f'class="cut" style="fill:url(#hatch-{mark})"')
        width, height = _n(self.width * self.scale), _n(self.height * self.scale)
        hatch = (
            f'<defs><pattern id="hatch-{mark}" width="9" height="9" patternUnits="userSpaceOnUse" '
            'patternTransform="rotate(45)"><rect class="hatch-ground" width="9" height="9"/>'
            '<path class="hatch-line" d="M0,0V9"/></pattern></defs>'
            if "url(#hatch" in inside
            else ""
        )
        return (
            f'<svg class="drawing" viewBox="0 0 {width} {height}" role="img" '
            f'aria-labelledby="t-{mark} d-{mark}"><title id="t-{mark}">{escape(self.title)}</title>'
            f'<desc id="d-{mark}">{escape(self.description)}</desc>{hatch}{inside}</svg>'
        )
