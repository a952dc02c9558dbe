"""Stones, prongs, cracks and filled grooves that the drawings of settings share. No drawings of its own."""

from __future__ import annotations

import math

from calculators.drawing import Drawing, Point


def brilliant(d: Drawing, x: float, y: float, across: float) -> None:
    """A faceted stone from the side; ``y`` is its girdle, ``across`` its diameter. Proportions of a round brilliant."""
    half, table, crown, pavilion = across / 2, across * 0.275, across * 0.15, across * 0.43
    d.polygon(
        [(x - half, y), (x - table, y - crown), (x + table, y - crown), (x + half, y), (x, y + pavilion)], "stone"
    )
    d.line([(x - half, y), (x + half, y)], "dim thin")


def cabochon(d: Drawing, x: float, y: float, across: float, height: float) -> None:
    """A domed stone from the side standing on ``y``."""
    points = [
        (x + across / 2 * math.cos(math.pi * i / 30), y - height * math.sin(math.pi * i / 30) ** 0.8) for i in range(31)
    ]
    d.polygon(points, "stone")


def crack(d: Drawing, start: Point, end: Point, swing: float = 0.05, bends: int = 5, kind: str = "ink") -> None:
    """A jagged line from ``start`` to ``end``; the bends shrink toward the end, as a crack does."""
    (ax, ay), (bx, by) = start, end
    length = math.hypot(bx - ax, by - ay) or 1.0
    nx, ny = -(by - ay) / length, (bx - ax) / length
    line = [start]
    for i in range(1, bends):
        part = i / bends
        side = swing * (1 if i % 2 else -1) * (1.2 - part)
        line.append((ax + (bx - ax) * part + nx * side, ay + (by - ay) * part + ny * side))
    line.append(end)
    d.line(line, kind)


def prong(d: Drawing, x: float, foot: float, top: float, wide: float, lean: float, kind: str = "part") -> None:
    """A prong from the side: straight from ``foot`` up to ``top``, leaning outward by ``lean``, its tip bent inward."""
    side = math.copysign(1, lean)
    tip = x + lean
    d.polygon(
        [
            (x - side * wide / 2, foot),
            (tip - side * wide / 2, top + wide * 0.9),
            (tip - side * wide * 1.1, top + wide * 0.25),
            (tip - side * wide * 0.8, top - wide * 0.15),
            (tip, top),
            (tip + side * wide / 2, top + wide * 0.6),
            (x + side * wide / 2, foot),
        ],
        kind,
    )


def groove(x: float, top: float, depth: float, angle: float = 60.0, root: float = 0.1) -> list[Point]:
    """A V open at ``top``: left edge, root, right edge."""
    half = root / 2 + depth * math.tan(math.radians(angle / 2))
    return [(x - half, top), (x - root / 2, top + depth), (x + root / 2, top + depth), (x + half, top)]


def filled(x: float, top: float, wide: float, depth: float, proud: float = 0.12, root: float = 0.25) -> list[Point]:
    """Fused metal that fills a V ``wide`` at the top: a low dome above, a round root below."""
    over = [(x + wide / 2 * (1 - i / 10), top - proud * (1 - (1 - i / 10) ** 2)) for i in range(21)]
    under = [
        (x - root * math.cos(math.pi * i / 10), top + depth + root * 0.5 * math.sin(math.pi * i / 10))
        for i in range(11)
    ]
    return [*over, *under]
