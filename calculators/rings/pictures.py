"""Drawings to scale that the ring calculators share."""

from __future__ import annotations

import math

from ..drawing import Drawing
from ..profiles import outline
from ..units import number_text


def mm(value: float, places: int = 2) -> str:
    """A length as it is lettered in a drawing."""
    return f"{value:.{places}f} mm"


def ring_with_section(
    title: str, description: str, inside: float, thickness: float, width: float, profile: str
) -> Drawing:
    """A ring seen from the side and, beside it, its cut section at four times the scale; sizes in mm."""
    outer = inside / 2 + thickness
    zoom = min(4.0, 2 * outer / max(width, thickness, 0.1) * 0.6)
    picture_width = 2 * outer + 6 + max(width * zoom, 6) + 6
    scale = 640 / picture_width
    height = 2 * outer + 96 / scale
    picture = Drawing(picture_width, height, title, description, scale)
    cx, cy = outer + 1.5, outer + 1
    picture.ring_sector(cx, cy, inside / 2, outer, 0, 360)
    picture.dimension((cx - inside / 2, cy), (cx + inside / 2, cy), mm(inside))
    left, base = 2 * outer + 6 + max(width * zoom, 6) / 2, cy + thickness * zoom / 2
    picture.polygon([(left + x * zoom, base + y * zoom) for x, y in outline(profile, width, thickness)], "cut")
    edge = left - width * zoom / 2
    picture.dimension((edge, base), (edge + width * zoom, base), mm(width), away=-26)
    picture.dimension((edge, base), (edge, base - thickness * zoom), mm(thickness), away=-14)
    picture.text(left, base - thickness * zoom - 12 / scale, f"section ×{number_text(zoom, 2)}")
    picture.scale_bar(5, "5 mm", cx - 2.5, cy + outer + 30 / scale)
    return picture


def ring_with_piece(title: str, description: str, inside: float, thickness: float, piece: float, label: str) -> Drawing:
    """A ring of the finished size with ``piece`` mm of its neutral line marked at the base of the shank."""
    outer = inside / 2 + thickness
    scale = 640 / (2 * outer + 22)
    picture = Drawing(2 * outer + 22, 2 * outer + 90 / scale, title, description, scale)
    cx, cy = outer + 11, outer + 1
    half = math.degrees(piece / (inside + thickness))
    picture.ring_sector(cx, cy, inside / 2, outer, -90 + half, 270 - half)
    picture.ring_sector(cx, cy, inside / 2, outer, -90 - half, -90 + half, "hot")
    picture.dimension((cx - inside / 2, cy), (cx + inside / 2, cy), mm(inside))
    picture.text(cx, cy + outer + 28 / scale, label)
    picture.scale_bar(5, "5 mm", cx - 2.5, cy + outer + 46 / scale)
    return picture
