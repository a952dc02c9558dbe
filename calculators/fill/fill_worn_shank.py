"""The metal that a worn shank lacks, back to full thickness."""

from __future__ import annotations

from ..declare import Result, Working, calculator
from ..fields import Amount, Choice, Length, MetalField, RingSizeField, StockThickness
from ..metals import Metal
from ..ring_scales import RingSize
from ..units import Quantity, magnitude
from . import common
from .common import mm
from .ring_pictures import ring_with_place, worn_place


@calculator(
    title="Worn shank",
    purpose="What metal brings a worn shank back to full thickness, and the strip to lay on it.",
    fields=[
        RingSizeField(
            name="ring_size",
            label="Ring size",
            example="US 7",
            hint="With its scale, such as US 7 or ISO 54, or 17.3 mm across.",
        ),
        StockThickness(
            name="worn_thickness",
            label="Worn thickness",
            example="0.9 mm",
            low=0.1,
            high=9,
            hint="The thinnest place of the shank.",
        ),
        StockThickness(
            name="full_thickness",
            label="Full thickness",
            example="1.6 mm",
            low=0.4,
            high=10,
            hint="What the shank had, or what you want it to have again.",
        ),
        Length(name="width", label="Band width where it is worn", example="2.5 mm", low=0.5, high=30),
        Choice(
            name="given_by",
            label="The worn part is given by",
            example="angle",
            options=(("angle", "Its angle around the ring"), ("length", "Its length along the outside")),
        ),
        Amount(
            name="angle",
            label="Angle of the worn part",
            example="120°",
            of="degree",
            low=1,
            high=360,
            hint="A third of the ring is 120°, half is 180°.",
            when=("given_by", ("angle",)),
        ),
        Length(
            name="length",
            label="Length of the worn part",
            example="20 mm",
            low=0.5,
            high=100,
            hint="Along the outside of the worn shank, with a strip of paper.",
            when=("given_by", ("length",)),
        ),
        MetalField(),
        *common.STRIP_FIELDS,
    ],
    results=[
        *common.STRIP_RESULTS,
        Result("volume", "Volume of the fill", "mm**3", 0.01),
        common.METAL_MASS,
        Result("angle", "Angle of the worn part", "degree", 1),
        *common.LAYER_RESULTS,
    ],
    sources=["fill-geometry", "ring-size-encyclopaedia"],
    cautions=[
        "The wear is taken as even over its whole length. A shank that thins toward the middle needs less: about two "
        "thirds of this for an even hollow.",
        common.CLEAN,
        common.SAME_METAL,
    ],
)
def fill_worn_shank(
    working: Working,
    ring_size: RingSize,
    worn_thickness: Quantity,
    full_thickness: Quantity,
    width: Quantity,
    given_by: str,
    angle: Quantity | None,
    length: Quantity | None,
    metal: Metal,
    overhang: Quantity,
    file_allowance: Quantity,
    layer_height: Quantity,
    pass_width: Quantity,
) -> None:
    """A sector of a ring between the worn and the full outside radius: width × φ/2 × (R_full² − R_worn²)."""
    if worn_thickness >= full_thickness:
        working.complain(
            "worn_thickness", "The worn thickness must be less than the full thickness: enter less, or swap the two"
        )
        return
    inside = ring_size.inside_diameter
    worn = working.step("Outside radius, worn", "inside / 2 + worn", "mm", inside=inside, worn=worn_thickness)
    full = working.step("Outside radius, full", "inside / 2 + full", "mm", inside=inside, full=full_thickness)
    if length is not None:
        angle = working.step(
            "Angle of the worn part", "length / worn_radius", "degree", length=length, worn_radius=worn
        )
        if magnitude(angle, "degree") > 360:
            working.complain("length", "The worn part is longer than the ring is around: enter less, or check the size")
            return
    assert angle is not None
    arc_length = working.step(
        "Length along the worn outside", "angle * worn_radius", "mm", angle=angle.to("radian"), worn_radius=worn
    )
    volume = working.step(
        "Volume of the fill",
        "width * angle / 2 * (full_radius ** 2 - worn_radius ** 2)",
        "mm**3",
        width=width,
        angle=angle.to("radian"),
        full_radius=full,
        worn_radius=worn,
    )
    missing = full_thickness - worn_thickness
    common.give_strip(working, arc_length, width, missing, volume, overhang=overhang, file_allowance=file_allowance)
    working.result("volume", volume)
    common.give_mass(working, volume, metal)
    working.result("angle", angle)
    common.give_layers(working, missing + file_allowance, width, layer_height, pass_width)
    thin = working.figure("A wall thinner than this asks for a half shank", common.rule("shank", "thin_wall"))
    working.verdict = (
        "Build up in thin layers, each fused through to the ring: a strip held only at its rim lifts in wear."
    )
    if worn_thickness < thin:
        left = mm(magnitude(worn_thickness, "mm"))
        working.verdict = (
            f"Only {left} is left: a half shank may last longer than this fill (from memory). Compare first."
        )
    i, low, o, over, extra = (magnitude(x, "mm") for x in (inside / 2, worn, full, overhang, file_allowance))
    told = f"Ring {2 * i:.2f} mm inside, worn by {o - low:.2f} mm over {magnitude(angle, 'degree'):.0f}°."
    place = worn_place(low, o, magnitude(angle, "radian"), over, extra)
    working.draw(ring_with_place("The ring with its worn part, to scale", told, i, o, place))
