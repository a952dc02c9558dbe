"""Faults of the surface as the loupe shows them: holes, lines, grooves, lumps, color."""

from __future__ import annotations

from ..drawing import Drawing
from . import view
from .view import SEAM

HOLES = (
    (0.05, 0.9, 0.06), (-0.1, 1.35, 0.035), (0.12, 1.7, 0.08), (-0.06, 2.15, 0.05),
    (0.02, 2.5, 0.03), (-0.13, 2.85, 0.07), (0.1, 3.15, 0.04),
)  # fmt: skip


def pinholes() -> Drawing:
    """Dark round dots in a filed seam."""
    d = view.field("Pinholes at 10×", "A filed band with a seam across it. In the seam sit seven round dark holes.")
    view.band(d)
    d.rectangle(SEAM - 0.3, 0.4, 0.6, 3.2, "hot")
    view.filed(d, 0.4, 3.6, [])
    for x, y, radius in HOLES:
        d.circle(SEAM + x, y, radius, "dark")
    return d


def sunken_seam() -> Drawing:
    """File strokes that stop at the seam."""
    d = view.field(
        "Sunken seam at 10×", "A filed band. The file strokes stop on both sides of the seam, which lies lower."
    )
    view.band(d)
    view.filed(d, 0.4, 3.6, [(SEAM - 0.36, SEAM + 0.36)])
    view.seam(d, across=0.56)
    for side in (-1, 1):
        edge = [(SEAM + side * (0.36 + 0.03 * (i % 2)), 0.4 + i * 0.2) for i in range(17)]
        d.line(edge, "ink")
    return d


def crack() -> Drawing:
    """A jagged dark line along the seam and out of it."""
    d = view.field(
        "Crack at 10×", "A seam of spots with a thin jagged dark line along its middle that runs out into the metal."
    )
    view.band(d)
    view.seam(d)
    view.crack(d, [(SEAM - 0.05, 0.4), (SEAM + 0.05, 1.5), (SEAM - 0.06, 2.5), (SEAM + 0.6, 3.25)], 0.09)
    view.crack(d, [(SEAM + 0.02, 1.5), (SEAM + 0.42, 1.85)], 0.05)
    return d


def black_soot() -> Drawing:
    """A dark cloud of dust around the seam."""
    d = view.field("Black soot at 10×", "A seam of spots in a cloud of black dust, thick at the seam, thin far out.")
    view.band(d)
    view.seam(d)
    for x, y, size in view.scatter(260, SEAM + 0.15, 2.0, 2.1, 1.75):
        if 0.45 < y < 3.55:
            d.circle(x, y, 0.018 + 0.03 * size, "dark")
    return d


def dull_ring() -> Drawing:
    """A gray frosted ring around each of three spots."""
    d = view.field("Dull ring at 10×", "Three bright spots on polished metal, each with a broad gray frosted ring.")
    view.band(d)
    for x in (1.5, 3.2, 4.9):
        d.circle(x, 2.0, 0.75, "gray")
        for px, py, size in view.scatter(70, x, 2.0, 0.75, 0.75):
            if (px - x) ** 2 + (py - 2.0) ** 2 > 0.09:
                d.circle(px, py, 0.008 + 0.008 * size, "dark")
        d.circle(x, 2.0, 0.26, "hot")
    return d


def undercut() -> Drawing:
    """A dark groove along each side of the seam."""
    d = view.field("Undercut at 10×", "A proud seam of spots with a narrow dark groove melted along both of its sides.")
    view.band(d)
    view.seam(d, across=0.62)
    for side in (-1, 1):
        inner = [(SEAM + side * (0.31 + 0.02 * (i % 2)), 0.5 + i * 0.15) for i in range(21)]
        outer = [(SEAM + side * (0.39 + 0.02 * ((i + 1) % 2)), 0.5 + i * 0.15) for i in range(21)]
        d.polygon(inner + outer[::-1], "dark")
    return d


def cold_lap() -> Drawing:
    """A lump of wire that lies on the metal with a dark line under its rim."""
    d = view.field(
        "Cold lap at 10×", "Melted filler lies on the metal like a drop on wax: its rim is round and casts a dark line."
    )
    view.band(d)
    d.line([(SEAM, 0.4), (SEAM, 3.6)], "ink")
    for aside, y, wide, high in ((0.05, 1.15, 0.62, 0.5), (-0.08, 2.05, 0.7, 0.55), (0.06, 2.95, 0.6, 0.45)):
        x = SEAM + aside
        d.polygon(view.round_of(x + 0.05, y + 0.06, wide, high), "dark")
        d.polygon(view.round_of(x, y, wide, high), "hot")
        d.line(view.round_of(x - 0.05, y - 0.05, wide * 0.6, high * 0.6, 100, 170), "ink")
    return d


def seam_line_after_polish() -> Drawing:
    """A pale line across a polished band."""
    d = view.field(
        "Seam line after polish at 10×", "A polished band. A thin straight line of another color runs across it."
    )
    view.band(d)
    d.rectangle(SEAM - 0.07, 0.4, 0.14, 3.2, "gray")
    for side in (-1, 1):
        d.line([(SEAM + side * 0.07, 0.4), (SEAM + side * 0.07, 3.6)], "dim thin")
    for x, y, long in ((0.9, 0.9, 1.5), (1.2, 1.15, 0.8), (4.2, 2.8, 1.4), (4.6, 3.05, 0.8)):
        d.line([(x, y), (x + long, y)], "dim thin")
    return d


def spatter() -> Drawing:
    """Small balls stuck around the seam."""
    d = view.field("Spatter at 10×", "A seam with a rough crater; small round balls are stuck to the metal around it.")
    view.band(d)
    view.seam(d)
    d.polygon(view.round_of(SEAM, 2.0, 0.22, 0.26), "dark")
    for x, y, size in view.scatter(34, SEAM, 2.0, 2.7, 1.5):
        if abs(x - SEAM) > 0.35:
            radius = 0.03 + 0.06 * size
            d.circle(x + 0.02, y + 0.03, radius, "dark")
            d.circle(x, y, radius, "hot")
    return d


def discoloration() -> Drawing:
    """Bands of straw and blue beside the seam."""
    d = view.field(
        "Discoloration at 10×",
        "A bright seam; beside it lie bands of color: straw at the seam, then blue, then gray.",
    )
    view.band(d)
    edges = (0.2, 0.75, 1.3, 1.9)
    for kind, inner, outer in zip(("soft", "haze", "gray"), edges, edges[1:], strict=False):
        for way in (90, -90):
            far = view.round_of(SEAM, 2.0, outer, 1.58, way - 180, way)
            d.polygon(far + view.round_of(SEAM, 2.0, inner, 1.58, way - 180, way)[::-1], kind)
    view.seam(d)
    return d


def shrink_hole() -> Drawing:
    """A dark pit in the middle of the last spot."""
    d = view.field(
        "Shrink hole at 10×",
        "A row of spots. The last one has a dark pit in its middle, with short lines around it.",
    )
    view.band(d)
    view.spots(d, (1.2, 2.0), (4.4, 2.0), 0.9, 0.3)
    for i in range(9):
        start, end = (view.round_of(4.4, 2.0, r, r, i * 40, i * 40 + 10)[0] for r in (0.18, 0.34))
        d.line([start, end], "ink")
    d.polygon(view.round_of(4.4, 2.0, 0.15, 0.12), "dark")
    return d
