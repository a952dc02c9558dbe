"""Shapes of stock: the section of wire, strip, sheet and tube, and the whole of a disc or a sphere."""

from __future__ import annotations

import math

from ..declare import Working
from ..drawing import Drawing, Point
from ..profiles import dome, outline
from ..units import Quantity, magnitude, number_text, quantity, with_unit

SHAPES = (
    ("round-wire", "Round wire"),
    ("square-wire", "Square wire"),
    ("half-round", "Half-round wire"),
    ("strip", "Rectangular strip"),
    ("sheet", "Sheet"),
    ("tube", "Tube"),
    ("disc", "Disc"),
    ("sphere", "Sphere, bead"),
)
ROUND = ("round-wire", "tube", "disc", "sphere")
LONG = ("round-wire", "square-wire", "half-round", "strip", "sheet", "tube")
WIDE = ("half-round", "strip", "sheet")
THICK = ("half-round", "strip", "sheet", "disc")


def section(working: Working, shape: str, size: dict[str, Quantity]) -> Quantity:
    """Area of the section of long stock; for a disc its thickness is the length."""
    if shape in ("round-wire", "disc"):
        return working.step("Section", "pi / 4 * diameter ** 2", "mm**2", diameter=size["diameter"])
    if shape == "square-wire":
        return working.step("Section", "side ** 2", "mm**2", side=size["side"])
    if shape == "tube":
        return working.step(
            "Section", "pi * wall * (diameter - wall)", "mm**2", diameter=size["diameter"], wall=size["wall"]
        )
    if shape == "half-round":
        width, height = (magnitude(size[name], "mm") for name in ("width", "thickness"))
        how = "arc of a circle on the width" if height < width / 2 else "half an ellipse on the width"
        return working.note("Section", how, quantity(dome(width, height)[0], "mm**2"), "mm**2")
    return working.step("Section", "width * thickness", "mm**2", width=size["width"], thickness=size["thickness"])


def mm(value: float, digits: int = 3) -> str:
    """A length as it is lettered in a drawing."""
    return with_unit(number_text(value, digits), "mm")


def section_drawing(shape: str, size: dict[str, Quantity], length: Quantity | None) -> Drawing:
    """The section to scale with its sizes; beside it the thing from the side where that says more."""
    bare = {name: magnitude(value, "mm") for name, value in size.items()}
    wide = bare.get("width") or bare.get("side") or bare["diameter"]
    tall = bare.get("thickness") if shape in WIDE else wide
    high = tall if tall is not None else wide
    scale = min(340 / wide, 240 / high)
    margin, foot = 90 / scale, 110 / scale
    words = f"Section of {dict(SHAPES)[shape].lower()}, {mm(wide)} across."
    picture = Drawing(640 / scale, high + foot + 40 / scale, "The section, to scale", words, scale)
    left, top = (640 / scale - wide) / 2 - margin / 2, 30 / scale
    _section(picture, shape, bare, left, top, wide, high)
    picture.dimension((left, top + high), (left + wide, top + high), mm(wide), away=-18)
    right = left + wide
    if shape == "tube":
        picture.text(right + 12 / scale, top + high / 2, f"wall {mm(bare['wall'])}", "start")
    elif shape == "disc":
        _edge_on(picture, bare, right + 60 / scale, top, high)
    elif shape in WIDE:
        if high * scale > 50:
            picture.dimension((right, top), (right, top + high), mm(high), away=14)
        else:
            picture.text(right + 12 / scale, top + high / 2 + 6 / scale, mm(high), "start")
    if length is not None:
        picture.text(left + wide / 2, top + high + 64 / scale, f"× {mm(magnitude(length, 'mm'), 4)} long")
    bar = 10 ** math.floor(math.log10(160 / scale))
    picture.scale_bar(bar, mm(bar), left + (wide - bar) / 2, top + high + 84 / scale)
    return picture


def _section(
    picture: Drawing, shape: str, bare: dict[str, float], left: float, top: float, wide: float, high: float
) -> None:
    middle = left + wide / 2
    if shape == "half-round":
        points: list[Point] = [(middle + x, top + high + y) for x, y in outline("half-round", wide, high)]
        picture.polygon(points, "cut")
    elif shape == "tube":
        picture.ring_sector(middle, top + high / 2, wide / 2 - bare["wall"], wide / 2, 0, 360, "cut")
    elif shape in ("disc", "sphere"):
        picture.circle(middle, top + high / 2, wide / 2)
    elif shape == "round-wire":
        picture.circle(middle, top + high / 2, wide / 2, "cut")
    else:
        picture.rectangle(left, top, wide, high, "cut")


def _edge_on(picture: Drawing, bare: dict[str, float], left: float, top: float, high: float) -> None:
    """A disc seen on its edge, at the same scale."""
    thick = bare["thickness"]
    picture.rectangle(left, top, thick, high)
    picture.text(left + thick + 12 / picture.scale, top + high / 2, mm(thick), "start")
