"""A post in its plate, cut through: as fitted and as fused; and a post on its plate against a plug."""

from __future__ import annotations

import math
from dataclasses import dataclass

from ..drawing import Drawing, Point
from ..units import number_text, with_unit
from .common import mm
from .section_pictures import WIDE, bar, bowl


@dataclass(frozen=True)
class Plug:
    """Sizes in mm: post, hole, plate thickness, stub behind the plate, bead it draws up to, crown left."""

    post: float
    hole: float
    plate: float
    stub: float
    bead: float
    crown: float


def plug_before_and_fused(plug: Plug, annulus: float) -> Drawing:
    """Left the post fitted with its stub up (the back of the plate is up), right the bead sunk into the hole."""
    reach = max(plug.hole * 1.7, plug.bead * 1.1)
    stub = min(plug.stub, 5 * plug.post)  # a longer one is broken off
    above = max(stub, plug.bead, plug.crown)
    below = plug.post * 0.9
    scale = min(190 / reach, 250 / (above + plug.plate + below))
    px = 1 / scale
    told = (
        f"Post {plug.post:.2f} mm in a hole {plug.hole:.2f} mm through a plate {plug.plate:.2f} mm thick, with "
        f"{plug.stub:.2f} mm of stub; then the stub melted into the hole."
    )
    height = (above + plug.plate + below) * scale + 104
    picture = Drawing(WIDE * px, height * px, "The post in its plate, before and after, to scale", told, scale)
    top = 44 * px + above
    before, fused = 222 * px, 490 * px
    for cx in (before, fused):
        _plate(picture, cx, top, plug, reach / 2)
    end = top + plug.plate + below
    _post(picture, before, top - stub, end, plug.post, broken=stub < plug.stub)
    left, right = before - plug.post / 2, before + plug.post / 2
    picture.dimension((before - plug.hole / 2, top), (before + plug.hole / 2, top), mm(plug.hole), stub * scale + 18)
    picture.dimension((left, end), (right, end), mm(plug.post), -20)
    if plug.stub * scale > 4:
        side = max(reach / 2 * scale - plug.post / 2 * scale, 40)
        picture.dimension((right, top - stub), (right, top), mm(plug.stub), side)
    picture.dimension((before - reach / 2, top + plug.plate), (before - reach / 2, top), mm(plug.plate), 14)
    _fused(picture, fused, top, end, plug)
    picture.text(fused, end + 36 * px, f"fills {with_unit(number_text(annulus, 3), 'mm**3')}")
    length, words = bar(scale)
    picture.scale_bar(length, words, (before + fused) / 2 - length / 2, end + 6 * px)
    return picture


def _plate(picture: Drawing, cx: float, top: float, plug: Plug, half: float) -> None:
    for way in (-1, 1):
        near, far = cx + way * plug.hole / 2, cx + way * half
        picture.polygon([(near, top), (far, top), (far, top + plug.plate), (near, top + plug.plate)], "cut")


def _post(picture: Drawing, cx: float, top: float, end: float, post: float, broken: bool = False) -> None:
    """A post whose lower end is broken off, and its upper end too where it is too long for the picture."""
    tooth = 4 / picture.scale
    across = [cx + post / 2 - post * i / 6 for i in range(7)]
    low = [(x, end + (tooth if i % 2 else 0)) for i, x in enumerate(across)]
    high = [(x, top - (tooth if broken and i % 2 else 0)) for i, x in enumerate(reversed(across))]
    picture.polygon([*high, *low], "part")


def _fused(picture: Drawing, cx: float, top: float, end: float, plug: Plug) -> None:
    _post(picture, cx, top, end, plug.post)
    flat = [(-plug.hole / 2, 0.0), (plug.hole / 2, 0.0)]
    dome = bowl(plug.hole, plug.crown) if plug.crown > 0 else flat
    crown = [(cx + x, top + y) for x, y in dome]
    low = top + plug.plate
    legs: list[Point] = [(plug.hole / 2, low), (plug.post / 2, low), (plug.post / 2, top)]
    outline = [*crown, *((cx + x, y) for x, y in legs), *((cx - x, y) for x, y in reversed(legs))]
    picture.polygon(outline, "hot")
    if plug.bead > 0:
        sunk = math.sqrt(max(0.0, (plug.bead / 2) ** 2 - (min(plug.bead, plug.hole) / 2) ** 2))
        picture.circle(cx, top - sunk, plug.bead / 2, "ghost")
        high = max(sunk + plug.bead / 2, plug.crown)
        picture.text(cx, top - high - 9 / picture.scale, f"bead {mm(plug.bead, 2)}")
