"""Shapes for the pictures of joints and faults: a piece of metal at 10×, rows of spots, holes, cracks, dust."""

from __future__ import annotations

import math
from itertools import pairwise

from ..drawing import Drawing, Point

ACROSS, DOWN, SCALE = 6.4, 4.0, 100.0  # the field of a picture in mm, and picture units a mm
SEAM = ACROSS / 2


def field(title: str, told: str) -> Drawing:
    """An empty field of 6.4 × 4 mm."""
    return Drawing(ACROSS, DOWN, title, told, SCALE)


def band(d: Drawing, top: float = 0.4, bottom: float = 3.6, left: float = 0.1, right: float = 6.3) -> None:
    """A band of metal from above; its broken-off ends are wavy."""
    steps = 12
    ends = []
    for x, way in ((right, 1), (left, -1)):
        for i in range(steps + 1):
            share = i / steps if way > 0 else 1 - i / steps
            ends.append((x + 0.05 * math.sin(share * 3 * math.pi), top + (bottom - top) * share))
    d.polygon(ends, "part")


def spots(d: Drawing, start: Point, end: Point, across: float = 0.5, step: float = 0.15, kind: str = "hot") -> None:
    """A row of round spots, each lying over the one before it, as a seam of single shots looks."""
    count = max(1, round(math.hypot(end[0] - start[0], end[1] - start[1]) / step))
    for i in range(count + 1):
        share = i / count
        d.circle(start[0] + (end[0] - start[0]) * share, start[1] + (end[1] - start[1]) * share, across / 2, kind)


def seam(d: Drawing, x: float = SEAM, top: float = 0.4, bottom: float = 3.6, across: float = 0.5) -> None:
    """A seam of spots from edge to edge of the band."""
    spots(d, (x, top + across / 2), (x, bottom - across / 2), across)


def filed(d: Drawing, top: float, bottom: float, gaps: list[tuple[float, float]], step: float = 0.2) -> None:
    """File strokes along the band; they stop where ``gaps`` (from x, to x) lie lower than the file."""
    for i in range(1, round((bottom - top) / step)):
        y = top + i * step
        edges = [0.25 + 0.1 * (i % 3)]
        for start, end in gaps:
            edges += [start, end]
        edges.append(6.2 - 0.08 * (i % 4))
        for j in range(0, len(edges), 2):
            d.line([(edges[j], y), (edges[j + 1], y)], "dim thin")


def jagged(points: list[Point], sway: float = 0.05, pieces: int = 6) -> list[Point]:
    """A line through ``points`` that trembles like a crack."""
    found = [points[0]]
    for (ax, ay), (bx, by) in pairwise(points):
        length = math.hypot(bx - ax, by - ay) or 1.0
        nx, ny = -(by - ay) / length, (bx - ax) / length
        for i in range(1, pieces + 1):
            share = i / pieces
            side = 0.0 if i == pieces else sway * math.sin(5.3 * i + 2.1 * len(found))
            found.append((ax + (bx - ax) * share + nx * side, ay + (by - ay) * share + ny * side))
    return found


def crack(d: Drawing, points: list[Point], width: float = 0.05) -> None:
    """A crack: a dark sliver through ``points``, widest in the middle."""
    line = jagged(points)
    last = len(line) - 1
    up = [(x + width / 2 * math.sin(math.pi * i / last), y) for i, (x, y) in enumerate(line)]
    down = [(x - width / 2 * math.sin(math.pi * i / last), y) for i, (x, y) in enumerate(line)]
    d.polygon(up + down[::-1], "dark")


def scatter(number: int, x: float, y: float, wide: float, high: float) -> list[tuple[float, float, float]]:
    """``number`` places around ``x, y``, always the same ones, denser toward the middle; the third value is 0 to 1."""
    found = []
    for i in range(number):
        radius, angle = ((i + 0.5) / number) ** 0.75, i * 2.39996
        found.append(
            (x + wide * radius * math.cos(angle), y + high * radius * math.sin(angle), (i * i * 0.7548 + i * 0.31) % 1)
        )
    return found


def round_of(x: float, y: float, wide: float, high: float, start: float = 0, end: float = 360) -> list[Point]:
    """Points of an ellipse or a part of it (0 = right, 90 = up)."""
    steps = max(6, round((end - start) / 10))
    angles = [math.radians(start + (end - start) * i / steps) for i in range(steps + 1)]
    return [(x + wide * math.cos(a), y - high * math.sin(a)) for a in angles]


def melt(x: float, face: float, wide: float, deep: float, proud: float = 0.0, up: float = 1.0) -> list[Point]:
    """Fused metal in section: ``wide`` at the face, a round bottom ``deep`` down; ``up`` −1 turns it over."""
    below = round_of(x, face, wide / 2, -deep * up, 0, 180)
    above = round_of(x, face, wide / 2, -proud * up, 180, 360) if proud else []
    return below + above


def scale_bar(d: Drawing, words: str = "1 mm") -> None:
    """One millimeter, at the lower right."""
    d.line([(ACROSS - 1.3, DOWN - 0.24), (ACROSS - 0.3, DOWN - 0.24)], "dim heavy")
    if words:
        d.text(ACROSS - 1.4, DOWN - 0.17, words, "end")
