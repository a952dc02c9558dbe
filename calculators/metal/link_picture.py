"""Links to scale: one with its saw cut, and three joined."""

from __future__ import annotations

import math

from ..drawing import Drawing
from ..units import Quantity, magnitude
from .shapes import mm


def links_picture(inside: Quantity, wire: Quantity, kerf: Quantity) -> Drawing:
    """One link to scale with its cut, and three joined beside it."""
    d, t, k = (magnitude(one, "mm") for one in (inside, wire, kerf))
    outer = d / 2 + t
    long = 3 * d + 2 * t
    scale = 540 / (2 * outer + long + outer)
    words = f"A link {mm(d)} inside of wire {mm(t)}, and three such links joined, seen on their faces and edges."
    picture = Drawing(640 / scale, 2 * outer + 90 / scale, "Links, to scale", words, scale)
    cx, cy = 30 / scale + outer, 20 / scale + outer
    half = math.degrees(k / (d + t)) if k else 0.4
    picture.ring_sector(cx, cy, d / 2, outer, 90 + half, 450 - half)
    picture.dimension((cx - d / 2, cy), (cx + d / 2, cy), mm(d))
    left = cx + outer + outer
    for index in (0, 2):
        picture.ring_sector(left + index * d + outer, cy, d / 2, outer, 0, 360)
    picture.rectangle(left + d, cy - t / 2, d + 2 * t, t)
    picture.dimension((left, cy + outer), (left + long, cy + outer), mm(long), away=-22)
    return picture
