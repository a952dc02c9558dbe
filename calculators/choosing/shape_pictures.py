"""Faults of shape, strength and surroundings, as the eye or the loupe shows them."""

from __future__ import annotations

import math

from ..drawing import Drawing
from . import view
from .view import SEAM


def blown_edge() -> Drawing:
    """A bite melted out of the edge of a band."""
    d = view.field(
        "Blown edge at 10×", "Where the seam ends, the edge of the band has melted back into a bay with a round rim."
    )
    bay = [
        (SEAM + 0.75 * math.cos(a), 0.6 + 0.62 * math.sin(a)) for a in (math.radians(180 - 9 * i) for i in range(21))
    ]
    d.polygon([(0.1, 0.6), *bay, (6.3, 0.6), (6.3, 3.5), (0.1, 3.5)], "part")
    view.spots(d, (SEAM, 3.3), (SEAM, 1.5), 0.5)
    rim = [(x + (SEAM - x) * 0.28, y * 0.72 + 0.6 * 0.28) for x, y in bay]
    d.polygon(bay + rim[::-1], "hot")
    d.line([(SEAM - 0.75, 0.6), (SEAM + 0.75, 0.6)], "ghost")
    return d


def burn_through() -> Drawing:
    """A hole right through a thin wall."""
    d = view.field(
        "Burn-through at 10×", "A thin wall with a hole melted through it. The rim of the hole is round and thick."
    )
    view.band(d)
    view.spots(d, (SEAM, 0.6), (SEAM, 1.2), 0.5)
    view.spots(d, (SEAM, 3.4), (SEAM, 2.8), 0.5)
    ring = view.round_of(SEAM, 2.0, 0.66, 0.74)
    hole = [(x + 0.04 * math.sin(5 * i), y + 0.04 * math.cos(4 * i)) for i, (x, y) in enumerate(ring)]
    d.polygon([(SEAM + (x - SEAM) * 1.38, 2 + (y - 2) * 1.36) for x, y in hole], "hot")
    d.polygon([(SEAM + (x - SEAM) * 0.9, 2 + (y - 2) * 0.9) for x, y in hole], "dark")
    return d


def step() -> Drawing:
    """Two ends that do not line up."""
    d = view.field(
        "Step at 10×", "A band from above. One end stands 0.3 mm to the side of the other, and one face stands higher."
    )
    d.rectangle(0.1, 0.75, SEAM - 0.1, 2.7, "part")
    d.rectangle(SEAM, 0.45, 6.3 - SEAM, 2.7, "part")
    d.polygon([(SEAM - 0.09, 0.75), (SEAM, 0.75), (SEAM, 3.15), (SEAM - 0.09, 3.15)], "dark")
    view.spots(d, (SEAM + 0.1, 0.95), (SEAM + 0.1, 2.95), 0.46)
    d.line([(SEAM, 3.15), (SEAM, 3.45)], "ink")
    return d


def hollow_core() -> Drawing:
    """The sawn seam: a fused skin around faces that only touched."""
    d = view.field(
        "Hollow core, the seam broken open",
        "The face of a broken seam, 3.0 × 1.5 mm. A bright fused rim 0.4 mm deep surrounds a gray filed core.",
    )
    left, top, wide, high, deep = 0.8, 0.8, 4.8, 2.4, 0.64
    d.rectangle(left, top, wide, high, "hot")
    d.rectangle(left + deep, top + deep, wide - 2 * deep, high - 2 * deep, "part")
    d.rectangle(left + deep, top + deep, wide - 2 * deep, high - 2 * deep, "gray")
    for i in range(1, 12):
        x = left + deep + i * (wide - 2 * deep) / 12
        d.line([(x - 0.1, top + high - deep - 0.05), (x + 0.1, top + deep + 0.05)], "dim thin")
    return d


def soft_spring() -> Drawing:
    """A clasp tongue that stays where it was pressed."""
    d = view.field(
        "Spring gone soft",
        "A clasp tongue from the side. It stays down; a dashed outline shows where it should be.",
    )

    def leaf(rise: float, kind: str) -> None:
        top = [(1.4 + 0.22 * i, 2.45 - rise * (i / 20) ** 1.6) for i in range(21)]
        d.polygon(top + [(x, y + 0.22) for x, y in reversed(top)], kind)

    leaf(1.75, "ghost")
    d.rectangle(0.2, 2.95, 5.8, 0.4, "part")
    d.polygon([(0.2, 2.3), (1.4, 2.4), (1.4, 2.95), (0.2, 2.95)], "part")
    leaf(0.35, "part")
    d.polygon([(1.15, 2.38), (2.1, 2.4), (2.1, 2.7), (1.15, 2.8)], "soft")
    view.spots(d, (1.38, 2.5), (1.38, 2.85), 0.36)
    d.line([(5.5, 0.9), (5.5, 1.85)], "ink")
    d.line([(5.4, 1.7), (5.5, 1.85), (5.6, 1.7)], "ink")
    return d


def post_turns() -> Drawing:
    """A post on its plate with a line around its foot and a turning arrow."""
    d = view.field(
        "Post that turns", "An ear post on its plate. A dark line runs around its foot, and an arrow shows it turning."
    )
    d.polygon(view.round_of(SEAM, 3.05, 2.5, 0.7), "part")
    d.polygon(view.round_of(SEAM, 2.98, 0.62, 0.2), "hot")
    d.polygon(view.round_of(SEAM, 2.95, 0.46, 0.13), "dark")
    d.polygon([(SEAM - 0.4, 0.3), (SEAM + 0.4, 0.3), *view.round_of(SEAM, 2.93, 0.4, 0.1, 0, -180)], "part")
    d.line(view.round_of(SEAM, 1.5, 0.95, 0.32, 150, 390), "ink")
    x, y = view.round_of(SEAM, 1.5, 0.95, 0.32, 390, 400)[0]
    d.line([(x + 0.12, y + 0.16), (x, y), (x - 0.18, y + 0.1)], "ink")
    return d


def stiff_link() -> Drawing:
    """Two links fused together where they touch."""
    d = view.field("Link gone stiff", "Two chain links. Where they cross, a drop of melted metal ties them together.")
    for x in (2.1, 4.3):
        d.ring_sector(x, 2.0, 0.95, 1.5, 0, 360, "part")
    over = [view.round_of(2.1, 2.0, r, r, 15, 62) for r in (0.95, 1.5)]
    d.polygon(over[0] + over[1][::-1], "bare")
    for arc in over:
        d.line(arc, "edge")
    d.polygon(view.round_of(3.2, 2.98, 0.36, 0.3), "hot")
    d.line(view.round_of(3.15, 2.93, 0.2, 0.16, 90, 190), "ink")
    view.spots(d, (0.88, 1.8), (0.88, 2.2), 0.6)
    view.spots(d, (5.52, 1.8), (5.52, 2.2), 0.6)
    return d


def cracked_stone() -> Drawing:
    """A set stone with a crack through its table."""
    d = view.field(
        "Cracked stone at 10×",
        "A round 3 mm stone in four prongs. A jagged line runs from its edge across the table.",
    )
    x, y = SEAM, 2.0
    d.circle(x, y, 1.5, "stone")
    table = [view.round_of(x, y, 0.85, 0.85, 22.5 + 45 * i, 33)[0] for i in range(8)]
    d.polygon(table, "stone")
    for i, corner in enumerate(table):
        for way in (-22.5, 22.5):
            d.line([corner, view.round_of(x, y, 1.5, 1.5, 22.5 + 45 * i + way, 400)[0]], "dim thin")
    for angle in (45, 135, 225, 315):
        px, py = view.round_of(x, y, 1.56, 1.56, angle, angle + 10)[0]
        d.circle(px, py, 0.3, "part")
    view.crack(d, [(x + 1.35, y + 0.55), (x + 0.3, y + 0.1), (x - 0.5, y + 0.35), (x - 0.75, y - 0.3)], 0.1)
    view.crack(d, [(x + 0.3, y + 0.1), (x + 0.15, y - 0.55)], 0.06)
    return d


def out_of_round() -> Drawing:
    """A sized ring that peaks at its seam, with the round it should have."""
    d = view.field(
        "Out of round", "A ring peaks at its seam and is flat beside it. A dashed circle is the round it should be."
    )
    x, y, radius, wall = SEAM, 2.1, 1.45, 0.25

    def shape(r: float) -> list[tuple[float, float]]:
        found = []
        for i in range(73):
            angle = math.radians(90 + 5 * i)
            away = abs(math.degrees(math.atan2(math.sin(angle - math.pi / 2), math.cos(angle - math.pi / 2))))
            bump = 0.22 * math.exp(-((away / 14) ** 2)) - 0.16 * math.exp(-(((away - 48) / 24) ** 2))
            found.append((x + (r + bump) * math.cos(angle), y - (r + bump) * math.sin(angle)))
        return found

    outer, inner = shape(radius + wall), shape(radius)
    d.polygon([*outer, *inner[::-1]], "part")
    d.circle(x, y, radius, "ghost")
    top = y - radius - 0.22
    d.polygon([(x - 0.09, top), (x + 0.09, top), (x + 0.11, top - wall), (x - 0.11, top - wall)], "hot")
    return d
