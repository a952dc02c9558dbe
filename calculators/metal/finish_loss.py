"""What filing, emery and polishing take off a face: thickness left and metal lost."""

from __future__ import annotations

from functools import lru_cache
from typing import Any

from ..data import Figure, figure, load
from ..declare import Result, Working, calculator
from ..drawing import Drawing
from ..fields import Choice, Count, Length, MetalField, StockThickness
from ..metals import Metal
from ..units import Quantity, magnitude, number_text, quantity, quantity_text
from .shapes import mm

_FACES = (("one", "One face"), ("both", "Both faces"))


@lru_cache(maxsize=1)
def _methods() -> dict[str, tuple[str, Figure]]:
    """Key of each method with its name and what one going-over takes off one face."""
    rows: list[dict[str, Any]] = load("finishing")["method"]
    return {row["key"]: (row["name"], figure(row["removal"])) for row in rows}


def _passes(key: str, example: str) -> Count:
    name, removal = _methods()[key]
    low, high = (number_text(magnitude(end, "mm")) for end in (removal.low, removal.high) if end is not None)
    hint = f"Even goings-over; each takes {low} to {high} mm off a face (from memory; measure yours)."
    return Count(name=f"{key}_passes", label=name, example=example, low=0, high=50, hint=hint)


@calculator(
    title="Loss in finishing",
    purpose="Thickness left and metal lost after filing, emery and polishing.",
    fields=[
        StockThickness(
            name="thickness", label="Thickness now", example="1.6 mm", low=0.05, high=30, hint="Before finishing."
        ),
        Length(
            name="width", label="Width of the face", example="3 mm", low=0.1, high=500, hint="Across what you finish."
        ),
        Length(
            name="length", label="Length of the face", example="60 mm", low=0.1, high=5000, hint="Around, for a ring."
        ),
        Choice(
            name="faces", label="Finished on", example="one", options=_FACES, hint="The passes count for each face."
        ),
        MetalField(),
        _passes("file", "1"),
        _passes("emery", "2"),
        _passes("rubber", "0"),
        _passes("cutting_buff", "1"),
        _passes("color_buff", "1"),
        _passes("tumble", "0"),
    ],
    results=[
        Result("thickness_left", "Thickness left", "mm", 0.01, also=("in",)),
        Result("thickness_lost", "Taken off", "mm", 0.001),
        Result("mass_lost", "Metal lost", "g", 0.001, also=("dwt",)),
        Result("share_lost", "Share of the piece", "percent", 0.1),
    ],
    sources=["element-mixing"],
    cautions=[
        "Hands differ by a factor of two and more: measure a piece before and after, and use your own count.",
        "Catch filings and buff dust: most of the metal lost here can be refined. Dust of alloys with nickel, and of "
        "old solder with cadmium or lead, must not be breathed.",
    ],
)
def finish_loss(
    working: Working,
    thickness: Quantity,
    width: Quantity,
    length: Quantity,
    faces: str,
    metal: Metal,
    **passes: Quantity,
) -> None:
    """Every going-over takes a layer off each face it goes over; the layers add up, and so do their ranges."""
    sides = quantity(2 if faces == "both" else 1)
    lost = quantity(0, "mm")
    ends = [quantity(0, "mm"), quantity(0, "mm")]
    for key, (name, removal) in _methods().items():
        count = passes[f"{key}_passes"]
        if not magnitude(count):
            continue
        each = working.figure(f"{name}, one going-over", removal)
        layer = working.step(name, "faces * times * layer", "mm", faces=sides, times=count, layer=each)
        lost = lost + layer
        for index, end in enumerate((removal.low, removal.high)):
            ends[index] = ends[index] + sides * count * (each if end is None else end)
    left = working.step("Thickness left", "thickness - taken_off", "mm", thickness=thickness, taken_off=lost)
    if magnitude(left, "mm") <= 0:
        working.complain("thickness", "That finishing goes through the piece: enter fewer goings-over or thicker stock")
        return
    density = working.figure(f"Density of {metal.name}", metal.density)
    area = {"width": width, "length": length, "density": density}
    mass = working.step("Metal lost", "taken_off * width * length * density", "g", taken_off=lost, **area)
    share = working.step("Share of the piece", "taken_off / thickness", "percent", taken_off=lost, thickness=thickness)
    low, high = ends
    per_mm = width * length * density
    working.result("thickness_left", left, max(thickness - high, 0 * thickness), thickness - low)
    working.result("thickness_lost", lost, low, high)
    working.result("mass_lost", mass, (low * per_mm).to("g"), (high * per_mm).to("g"))
    working.result("share_lost", share, (low / thickness).to("percent"), (high / thickness).to("percent"))
    if high >= thickness:
        working.caution("With a heavy hand this goes through the piece.", stop=True)
    working.verdict = (
        f"Start at {quantity_text(thickness + high - lost, 'mm', 3)} if {quantity_text(left, 'mm', 3)} must be left "
        f"even with a heavy hand. {_published(working)}"
    )
    working.draw(_picture(thickness, lost, high, faces))


def _published(working: Working) -> str:
    """Published shares of the weight to set against the sum."""
    said = []
    for key in ("hand", "tumble"):
        row = load("finishing")["share"][key]
        known = figure(row["loss"])
        working.figure(f"Share of the weight lost in {row['name']}, as published", known)
        said.append(f"{row['name']} {known.text()}")
    return f"Published shares of the weight: {', '.join(said)} (second-hand)."


def _picture(thickness: Quantity, lost: Quantity, high: Quantity, faces: str) -> Drawing:
    """The section with the layer that goes, and the most that may go, to scale."""
    t, taken, most = (magnitude(one, "mm") for one in (thickness, lost, high))
    scale = 200 / t
    told = f"Section {mm(t)} thick; {mm(taken)} of it is taken off, at most {mm(most)}."
    picture = Drawing(640 / scale, t + 60 / scale, "What is taken off, to scale", told, scale)
    left, top, wide = 60 / scale, 20 / scale, 400 / scale
    part = 0.5 if faces == "both" else 1.0
    upper, lower = taken * part, taken * (1 - part)
    picture.rectangle(left, top, wide, t, "ghost")
    picture.rectangle(left, top + upper, wide, t - upper - lower, "cut")
    picture.dimension((left + wide, top + upper), (left + wide, top + t - lower), mm(t - taken, 4), away=16)
    picture.text(left + wide / 2, top + t + 34 / scale, f"before {mm(t)}, taken off {mm(taken, 3)}")
    return picture
