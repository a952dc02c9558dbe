"""A ring size in every scale."""

from __future__ import annotations

import math

from ..declare import Result, Working, calculator
from ..fields import Choice, RingSizeField
from ..ring_scales import RingSize, Scale, scales
from ..units import magnitude, number_text, quantity
from .pictures import ring_with_section

US_LAW = Choice(
    name="us_law",
    label="US law",
    example="us",
    hint="Two laws are in print. They agree near US 5 and part by 0.14 size at US 13.",
    group="Which US table your stick follows",
    options=(
        ("us", "0.458 in across at size 0, 0.032 in a size"),
        ("us-alternative", "36.3 mm around at size 0, 2.60 mm a size"),
    ),
)
_NAMES = {"us": "US and Canada", "uk": "UK and Australia", "iso": "ISO 8653", "japan": "Japan", "swiss": "Swiss"}


@calculator(
    title="Ring size in every scale",
    purpose="Turn a size of any scale, or a measured ring, into the other scales and into millimeters.",
    fields=[
        RingSizeField(
            name="size",
            label="Ring size",
            example="US 7",
            hint="With its scale: US 6 1/2, UK N½, ISO 54, JP 14, CH 14, or 17.3 mm across, or 54.4 mm around.",
        ),
        US_LAW,
    ],
    results=[
        Result("inside_diameter", "Inside diameter", "mm", 0.01, also=("in",)),
        Result("inside_circumference", "Inside circumference", "mm", 0.01, also=("in",)),
        *(Result(key, name) for key, name in _NAMES.items()),
    ],
    sources=["iso-8653", "ring-size-encyclopaedia", "rowlett", "japan-size-table"],
    cautions=[
        "Sizing sticks differ. Measure the ring and the finger on the same stick, and check yours against "
        "calipers at two sizes."
    ],
)
def ring_size(working: Working, size: RingSize, us_law: str) -> None:
    """Inside diameter and circumference, and the nearest size of each scale with how far off it is."""
    size = size.on_law(us_law)
    around = size.inside_circumference
    if size.scale:
        law = scales()[us_law if size.scale == "us" else size.scale]
        zero, each = (figure.value for figure in law.figures)
        formula = "at_zero + per_size * number"
        if law.figures[0].unit == "inch" or law.key == "japan":
            formula = f"pi * ({formula})"
        number = quantity(size.number)
        around = working.step(f"Law of the scale {law.name}", formula, "mm", at_zero=zero, per_size=each, number=number)
        working.cite(law.figures[0].source)
    across = working.step("Inside diameter", "circumference / pi", "mm", circumference=around)
    working.result("inside_diameter", across)
    working.result("inside_circumference", around)
    circumference = magnitude(around, "mm")
    for key in _NAMES:
        _nearest(working, key, scales()[us_law if key == "us" else key], circumference)
    _other_law(working, us_law, circumference)
    d, t = magnitude(across, "mm"), 1.5
    described = f"Circle of {number_text(d)} mm inside diameter with a band 1.5 mm thick drawn around it."
    working.draw(ring_with_section("The ring to scale", described, d, t, 3.0, "flat"))


def _nearest(working: Working, key: str, scale: Scale, circumference: float) -> None:
    """The nearest size of a scale; ``off`` is how much larger the ring is than that size (mm around)."""
    exact, near = scale.number(circumference), scale.nearest(circumference)
    off = circumference - scale.circumference(near)
    on_scale = scale.first <= near <= scale.last
    note = f"{'+' if off >= 0 else '−'}{abs(off):.2f} mm around" if abs(off) >= 0.005 else "exactly"
    if not on_scale:
        note = f"off this scale, which runs {scale.size_text(scale.first)} to {scale.size_text(scale.last)}"
    shown = scale.size_text(near) if key == "uk" else quantity(near)
    working.result(
        key,
        shown,
        shown=scale.size_text(near),
        note=note,
        exact=float(f"{exact:.6g}"),
        off_mm=round(off, 4),
        on_scale=on_scale,
    )


def _other_law(working: Working, us_law: str, circumference: float) -> None:
    here, other = scales()[us_law], scales()["us-alternative" if us_law == "us" else "us"]
    by_other = working.step(
        "The same ring by the other US law",
        "(circumference - at_zero) / per_size",
        "",
        circumference=quantity(circumference, "mm"),
        at_zero=quantity(other.at_zero, "mm"),
        per_size=quantity(other.per_size, "mm"),
    )
    gap = magnitude(by_other) - here.number(circumference)
    working.verdict = (
        f"By the other US law in print this ring is {abs(gap):.2f} size {'larger' if gap > 0 else 'smaller'}."
        if abs(gap) >= 0.005
        else "Both US laws in print agree here."
    )
    if not math.isclose(gap, 0, abs_tol=0.1):
        working.caution("Ask which table the customer's size came from: the two US laws differ by over 0.1 size here.")
