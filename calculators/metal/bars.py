"""Bars whose lengths are to scale: shares of a metal, and parts of a weight."""

from __future__ import annotations

from dataclasses import dataclass

from ..drawing import Drawing

LEFT, LONG, TALL = 20.0, 600.0, 54.0


@dataclass(frozen=True)
class Part:
    """A part of a bar: how much, its words, and the class it is drawn with."""

    amount: float
    words: str
    kind: str = "part"


def share_bar(title: str, description: str, share: float, cells: int, marks: list[tuple[float, str]]) -> Drawing:
    """A bar of a whole alloy with ``share`` of it filled, cut in ``cells``, and marks below it."""
    picture = Drawing(640, 190, title, description, 1.0)
    top = 30.0
    picture.rectangle(LEFT, top, LONG * share, TALL, "cut")
    picture.rectangle(LEFT + LONG * share, top, LONG * (1 - share), TALL, "ghost")
    for index in range(1, cells):
        x = LEFT + LONG * index / cells
        picture.line([(x, top + TALL - 10), (x, top + TALL)], "ink")
    for row, (place, words) in enumerate(marks):
        x, foot = LEFT + LONG * place, top + TALL + 34 + 30 * row
        picture.line([(x, top - 8), (x, foot - 18)], "dim")
        anchor = "end" if place > 0.5 else "start"
        picture.text(x + (-6 if place > 0.5 else 6), foot, words, anchor)
    return picture


def weight_bars(title: str, description: str, rows: list[tuple[str, list[Part]]]) -> Drawing:
    """Rows of bars at one scale; every row a sum of parts, with its words above it."""
    most = max(sum(part.amount for part in parts) for _, parts in rows)
    scale = LONG / most if most else 1.0
    picture = Drawing(640, 104.0 * len(rows) + 16, title, description, 1.0)
    for index, (words, parts) in enumerate(rows):
        top = 104.0 * index + 34
        picture.text(LEFT, top - 10, words, "start")
        x = LEFT
        for part in parts:
            wide = part.amount * scale
            picture.rectangle(x, top, wide, 40, part.kind)
            if wide > 9.5 * len(part.words):
                picture.text(x + wide / 2, top + 62, part.words)
            x += wide
    return picture
