"""Drawings of stock: each form with the sizes that its weight is worked out from."""

from __future__ import annotations

import math

from build_scripts.drawings import drawing
from build_scripts.drawings.sketch import leader
from calculators.drawing import Drawing, Point
from calculators.profiles import outline

SCALE = 40.0  # picture units a mm
WIDE, HIGH = 16.0, 7.4
BACK: Point = (6.6, -2.2)  # from the front face of a length to its far end


def _circle(x: float, y: float, radius: float) -> list[Point]:
    return [(x + radius * math.cos(math.radians(a)), y + radius * math.sin(math.radians(a))) for a in range(0, 360, 5)]


def _hull(points: list[Point]) -> list[Point]:
    """The convex outline around ``points`` (monotone chain)."""

    def half(ordered: list[Point]) -> list[Point]:
        chain: list[Point] = []
        for px, py in ordered:
            while (
                len(chain) > 1
                and (
                    (chain[-1][0] - chain[-2][0]) * (py - chain[-2][1])
                    - (chain[-1][1] - chain[-2][1]) * (px - chain[-2][0])
                )
                <= 0
            ):
                chain.pop()
            chain.append((px, py))
        return chain[:-1]

    ordered = sorted(set(points))
    return half(ordered) + half(ordered[::-1])


def _along(d: Drawing, start: Point, end: Point, words: str) -> None:
    """A dimension below a slanting edge, its word clear of the line."""
    d.dimension(start, end, "", -22)
    d.text((start[0] + end[0]) / 2 + 1.0, (start[1] + end[1]) / 2 + 1.35, words, "start")


def _below(d: Drawing, start: Point, end: Point, words: str) -> None:
    """A dimension below a level edge, its word clear of the ends even where it is wider."""
    d.dimension(start, end, "", -16)
    d.text((start[0] + end[0]) / 2, start[1] + 1.05, words)


def _length(d: Drawing, face: list[Point], back: Point = BACK) -> None:
    """A length of stock seen from its front end; the cut face is drawn by the caller."""
    d.polygon(_hull(face + [(x + back[0], y + back[1]) for x, y in face]), "part")


@drawing("stock-round-wire")
def round_wire() -> Drawing:
    """Round wire with diameter and length."""
    told = "A length of round wire from its cut end. Its diameter is measured across, its length along."
    d = Drawing(WIDE, HIGH, "Round wire", told, SCALE)
    x, y, radius = 4.6, 4.7, 1.1
    face = _circle(x, y, radius)
    _length(d, face)
    d.polygon(face, "cut")
    _below(d, (x - radius, y + radius), (x + radius, y + radius), "diameter")
    low = (x + radius * 0.32, y + radius * 0.95)
    _along(d, (low[0] + 1.2, low[1] - 0.1), (low[0] + BACK[0], low[1] + BACK[1] + 0.2), "length")
    return d


@drawing("stock-half-round")
def half_round() -> Drawing:
    """Half-round wire with width, height and length."""
    told = "A length of half-round wire, flat side down. Width across the flat side, height to the top of the dome."
    d = Drawing(WIDE, HIGH, "Half-round wire", told, SCALE)
    wide, high, x, y = 4.0, 1.7, 4.4, 5.0
    face: list[Point] = [(x + px, y + py) for px, py in outline("half-round", wide, high)]
    _length(d, face)
    d.polygon(face, "cut")
    _below(d, (x - wide / 2, y), (x + wide / 2, y), "width")
    d.dimension((x - wide / 2, y), (x - wide / 2, y - high), "height", 16)
    _along(d, (x + wide / 2, y), (x + wide / 2 + BACK[0], y + BACK[1]), "length")
    return d


@drawing("stock-sheet")
def sheet() -> Drawing:
    """Sheet or strip with width, length and thickness."""
    told = "A piece of sheet lying flat. Width across its front edge, length to the back, thickness of the edge."
    d = Drawing(WIDE, HIGH, "Sheet and strip", told, SCALE)
    wide, thick, x, y = 7.0, 0.5, 1.9, 4.7
    back: Point = (4.4, -2.6)
    face: list[Point] = [(x, y), (x + wide, y), (x + wide, y + thick), (x, y + thick)]
    _length(d, face, back)
    far = (x + wide + back[0], y + back[1])
    d.polygon([(x + wide, y), far, (far[0], far[1] + thick), (x + wide, y + thick)], "part")
    d.polygon(face, "cut")
    _below(d, (x, y + thick), (x + wide, y + thick), "width")
    _along(d, (x + wide, y + thick), (x + wide + back[0], y + thick + back[1]), "length")
    leader(d, (x + 0.1, y + thick / 2), (x - 0.1, y - 1.5), "thickness", "middle")
    return d


@drawing("stock-tube")
def tube() -> Drawing:
    """Tube with outside diameter, wall and length."""
    told = "A length of tube from its cut end. The diameter is the outside one, the wall is measured at the edge."
    d = Drawing(WIDE, HIGH, "Tube", told, SCALE)
    x, y, radius, wall = 4.6, 4.3, 1.5, 0.35
    face = _circle(x, y, radius)
    _length(d, face)
    d.ring_sector(x, y, radius - wall, radius, 0, 360, "cut")
    d.circle(x, y, radius - wall, "part tool")
    _below(d, (x - radius, y + radius), (x + radius, y + radius), "outside diameter")
    leader(d, (x - radius + wall / 2, y - 0.2), (x - radius - 1.1, y - 1.6), "wall", "middle")
    low = (x + radius * 0.32, y + radius * 0.95)
    _along(d, (low[0] + 1.5, low[1] - 0.3), (low[0] + BACK[0], low[1] + BACK[1] + 0.2), "length")
    return d


@drawing("stock-disc-bead")
def disc_and_bead() -> Drawing:
    """A disc from above and on its edge, and a solid bead."""
    told = "Left a disc from above, with its diameter, and on its edge, with its thickness. Right a solid bead."
    d = Drawing(WIDE, HIGH, "Disc and bead", told, SCALE)
    radius, thick = 2.0, 0.6
    x, y = 2.9, 2.6
    d.circle(x, y, radius, "part")
    _below(d, (x - radius, y + radius), (x + radius, y + radius), "diameter")
    edge = 6.4
    d.rectangle(edge, y - radius, thick, 2 * radius, "part")
    _below(d, (edge, y + radius), (edge + thick, y + radius), "thickness")
    ball, r = 12.2, 1.6
    d.circle(ball, y + radius - r, r, "part")
    _below(d, (ball - r, y + radius), (ball + r, y + radius), "diameter")
    return d
