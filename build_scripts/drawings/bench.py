"""Bench tools and parts that several joints show: broken-off wire, spots, tungsten, pliers. No drawings of its own."""

from __future__ import annotations

import math

from build_scripts.drawings.sketch import polar
from calculators.drawing import Drawing, Point


def cap(x: float, y: float, width: float, height: float, up: float = 1.0, steps: int = 24) -> list[Point]:
    """A rounded top from left to right, ``width`` at its foot on ``y``; ``up`` −1 turns it downward."""
    found = []
    for i in range(steps + 1):
        part = -1 + 2 * i / steps
        found.append((x + part * width / 2, y - up * height * math.sqrt(max(0.0, 1 - part * part))))
    return found


def moved(points: list[Point], origin: Point, degrees: float) -> list[Point]:
    """Points turned around ``origin`` (counterclockwise as seen)."""
    turn = math.radians(degrees)
    found = []
    for px, py in points:
        dx, dy = px - origin[0], py - origin[1]
        found.append(
            (
                origin[0] + dx * math.cos(turn) + dy * math.sin(turn),
                origin[1] - dx * math.sin(turn) + dy * math.cos(turn),
            )
        )
    return found


def wire(d: Drawing, x: float, top: float, bottom: float, across: float, kind: str = "cut", tilt: float = 0.0) -> None:
    """An upright wire in section whose lower end is broken off (it goes on); ``tilt`` turns it around its top."""
    half, wave = across / 2, across * 0.14
    end = [(x + half - across * i / 12, bottom + wave * math.sin(2 * math.pi * i / 12)) for i in range(13)]
    corners = [(x - half, top), (x + half, top), *end]
    d.polygon(moved(corners, (x, top), tilt) if tilt else corners, kind)


def tungsten(d: Drawing, x: float, y: float, lean: float = 90.0, length: float = 1.6, width: float = 0.3) -> None:
    """A sharpened electrode whose point is at ``x, y``, lying back toward ``lean`` degrees."""
    shape = [
        (0.0, 0.0),
        (width * 1.6, width / 2),
        (length, width / 2),
        (length, -width / 2),
        (width * 1.6, -width / 2),
    ]
    angle = math.radians(lean)
    points = []
    for along, side in shape:
        points.append(
            (
                x + along * math.cos(angle) - side * math.sin(angle),
                y - along * math.sin(angle) - side * math.cos(angle),
            )
        )
    d.polygon(points, "part tool")


def spark(d: Drawing, start: Point, end: Point, size: float = 0.06) -> None:
    """A short arc between two points."""
    (ax, ay), (bx, by) = start, end
    length = math.hypot(bx - ax, by - ay) or 1.0
    nx, ny = -(by - ay) / length * size, (bx - ax) / length * size
    line = []
    for i in range(5):
        side = 0 if i in (0, 4) else (1 if i % 2 else -1)
        line.append((ax + (bx - ax) * i / 4 + side * nx, ay + (by - ay) * i / 4 + side * ny))
    d.line(line, "ink")


def spots(d: Drawing, centers: list[Point], across: float, numbered: bool = False) -> None:
    """Round marks of single shots, numbered in their order on request."""
    for number, (x, y) in enumerate(centers, 1):
        d.circle(x, y, across / 2, "hot")
        if numbered:
            d.text(x, y, str(number))


def on_circle(x: float, y: float, radius: float, angles: list[float]) -> list[Point]:
    """Places on a circle at the given angles."""
    return [polar(x, y, radius, angle) for angle in angles]


def jaws(d: Drawing, x: float, y: float, gap: float, reach: float, degrees: float, width: float = 0.7) -> None:
    """Two slim plier jaws that hold something ``gap`` thick at ``x, y``, coming from ``degrees``."""
    for side in (1.0, -1.0):
        shape = [
            (x - gap * 0.9, y - side * gap / 2),
            (x + reach, y - side * gap / 2),
            (x + reach, y - side * (gap / 2 + width)),
            (x + reach * 0.25, y - side * (gap / 2 + width * 0.8)),
            (x - gap * 0.9, y - side * (gap / 2 + width * 0.35)),
        ]
        d.polygon(moved(shape, (x, y), degrees), "part tool")
