"""The filler that a gap in a butt seam, or a V opened on it, takes."""

from __future__ import annotations

from ..declare import Result, Working, calculator
from ..fields import Amount, Choice, Length, MetalField, StockThickness
from ..metals import Metal
from ..units import Quantity, magnitude, number_text, quantity
from .common import METAL_MASS, WIRE_DIAMETER, WIRE_LENGTH, WIRE_YIELD, give_mass, give_wire, rule
from .section_pictures import seam_section


@calculator(
    title="Gap or V in a seam",
    purpose="How much metal, and how much wire, fills a seam that gapes or that you opened to a V.",
    fields=[
        Length(name="width", label="Length of the seam", example="3 mm", low=0.2, high=100, hint="The band's width."),
        StockThickness(
            name="thickness", label="Thickness", example="1.5 mm", low=0.2, high=10, hint="Of the metal at the seam."
        ),
        Length(name="gap", label="Gap", example="0.05 mm", low=0, high=3, hint="0 where the faces touch."),
        Length(
            name="chamfer_depth",
            label="Depth of the V",
            example="0.7 mm",
            low=0,
            high=10,
            hint="From one side; 0 for a plain seam.",
        ),
        Amount(
            name="chamfer_angle",
            label="Angle of the V",
            example="60°",
            of="degree",
            low=1,
            high=150,
            hint="The whole angle between the two faces.",
        ),
        Choice(
            name="both_faces",
            label="V from both sides",
            example="yes",
            options=(("yes", "Outside and inside"), ("no", "From one side only")),
        ),
        WIRE_DIAMETER,
        MetalField(),
        WIRE_YIELD,
    ],
    results=[
        WIRE_LENGTH,
        Result("volume", "Volume to fill", "mm**3", 0.001),
        Result("area", "Section of the seam to fill", "mm**2", 0.001),
        Result("mouth", "Width of the V at the surface", "mm", 0.01),
        METAL_MASS,
    ],
    sources=["fill-geometry"],
    cautions=[
        "Fit first: a gap that is closed with filler shrinks, pulls and shows. File the faces flat until they meet.",
        "Fill a V from its root, and use wire of the same alloy and the same fineness or better.",
    ],
)
def fill_gap(
    working: Working,
    width: Quantity,
    thickness: Quantity,
    gap: Quantity,
    chamfer_depth: Quantity,
    chamfer_angle: Quantity,
    both_faces: str,
    wire_diameter: Quantity,
    metal: Metal,
    wire_yield: Quantity,
) -> None:
    """The gap is a slot through the thickness; each V adds two triangles: depth² × tan(angle ÷ 2)."""
    sides = 2 if both_faces == "yes" else 1
    if sides * chamfer_depth > thickness * (1 + 1e-9):
        most = magnitude(thickness, "mm") / sides
        working.complain(
            "chamfer_depth",
            f"The V can't be deeper than {number_text(most, 4)} mm here"
            + (", half the thickness, when it comes from both sides" if sides == 2 else ", the thickness")
            + ": enter less",
        )
        return
    mouth = working.step(
        "Width of the V at the surface",
        "gap + 2 * depth * tan(angle / 2)",
        "mm",
        gap=gap,
        depth=chamfer_depth,
        angle=chamfer_angle,
    )
    area = working.step(
        "Section to fill",
        "thickness * gap + sides * depth ** 2 * tan(angle / 2)",
        "mm**2",
        thickness=thickness,
        gap=gap,
        sides=quantity(sides),
        depth=chamfer_depth,
        angle=chamfer_angle,
    )
    volume = working.step("Volume to fill", "section * width", "mm**3", section=area, width=width)
    length = give_wire(working, volume, wire_diameter, wire_yield)
    working.result("volume", volume)
    working.result("area", area)
    working.result("mouth", mouth)
    give_mass(working, volume, metal)
    wide = working.figure("A gap wider than this wants a piece, not filler", rule("seam", "wide_gap"))
    if magnitude(volume, "mm**3") == 0:
        working.verdict = "Nothing to fill: the faces touch and there is no V. Fuse it without wire."
    elif gap > wide:
        working.verdict = (
            "This gap is wide. Close the ring, file the faces again, or let in a piece of the same alloy: filler alone "
            "leaves a sunken or hollow seam."
        )
    else:
        working.verdict = "Fill from the root in short bites, a little proud, then level it."
    t, g, c, w, long = (magnitude(one, "mm") for one in (thickness, gap, chamfer_depth, wire_diameter, length))
    told = f"A seam in metal {t:.2f} mm thick with a gap of {g:.2f} mm and a V {c:.2f} mm deep, filled."
    working.draw(seam_section(told, t, g, c, magnitude(chamfer_angle, "radian"), sides == 2, (w, long)))
