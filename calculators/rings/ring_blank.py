"""The strip for a whole ring."""

from __future__ import annotations

from ..declare import Result, Working, calculator
from ..fields import Choice, Length, MetalField, RingSizeField, StockThickness
from ..metals import Metal
from ..profiles import OPTIONS, section
from ..ring_scales import RingSize
from ..units import Quantity, magnitude, quantity_text
from .pictures import ring_with_section
from .ring_size import US_LAW


@calculator(
    title="Ring blank",
    purpose="Length and weight of the strip for a whole ring, before any saw or file allowance.",
    fields=[
        RingSizeField(
            name="size", label="Finished size", example="US 7", hint="With its scale, such as US 7 or ISO 54."
        ),
        StockThickness(
            name="thickness", label="Strip thickness", example="1.5 mm", low=0.4, high=6, hint="In mm or gauge."
        ),
        Length(name="width", label="Strip width", example="3 mm", low=0.5, high=30),
        Choice(name="profile", label="Profile", example="flat", options=OPTIONS),
        MetalField(),
        US_LAW,
    ],
    results=[
        Result("blank_length", "Cut the strip this long", "mm", 0.05, also=("in",)),
        Result("blank_mass", "It weighs", "g", 0.01, also=("dwt", "ozt")),
        Result("section_area", "Section of the strip", "mm**2", 0.01),
        Result("short_by_two_thicknesses", "Circumference plus two thicknesses comes out short by", "mm", 0.05),
        Result("short_by_one_third", "A neutral line at one third comes out short by", "mm", 0.05),
    ],
    sources=["sizing-blank-rule", "element-mixing"],
    cautions=["Add what your saw and file take, and the overlap if you true the ends after bending."],
)
def ring_blank(
    working: Working,
    size: RingSize,
    thickness: Quantity,
    width: Quantity,
    profile: str,
    metal: Metal,
    us_law: str,
) -> None:
    """The blank is as long as the neutral line: π × (inside diameter + 2 × its distance from the inside)."""
    inside = size.on_law(us_law).inside_diameter
    cut = section(working, profile, width, thickness)
    length = working.step(
        "Length on the neutral line",
        "pi * (inside_diameter + 2 * neutral)",
        "mm",
        inside_diameter=inside,
        neutral=cut.neutral,
    )
    density = working.figure(f"Density of {metal.name}", metal.density)
    mass = working.step("Weight", "length * section * density", "g", length=length, section=cut.area, density=density)
    working.result("blank_length", length)
    working.result("blank_mass", mass)
    working.result("section_area", cut.area)
    two = working.step(
        "Rule heard at benches: circumference plus two thicknesses",
        "pi * inside_diameter + 2 * thickness",
        "mm",
        inside_diameter=inside,
        thickness=thickness,
    )
    third = working.step(
        "Rule heard at benches: neutral line a third from the inside",
        "pi * (inside_diameter + 2 * thickness / 3)",
        "mm",
        inside_diameter=inside,
        thickness=thickness,
    )
    working.result("short_by_two_thicknesses", length - two)
    working.result("short_by_one_third", length - third)
    working.verdict = (
        f"Two rules in circulation give {quantity_text(two, 'mm')} (circumference plus two thicknesses) and "
        f"{quantity_text(third, 'mm')} (neutral line at one third). For a flat strip both come out short by about "
        "one thickness: a ring about half a size small at this wall."
        if profile in ("flat", "square")
        else "Two rules in circulation, made for flat strip, give "
        f"{quantity_text(two, 'mm')} and {quantity_text(third, 'mm')}."
    )
    d, t, w = (magnitude(one, "mm") for one in (inside, thickness, width))
    told = f"Ring {d:.2f} mm inside and {t:.2f} mm thick, with its cut section {w:.2f} mm wide."
    working.draw(ring_with_section("The ring and its section, to scale", told, d, t, w, profile))
