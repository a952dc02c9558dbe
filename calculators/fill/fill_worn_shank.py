"""The metal that a worn shank lacks, back to full thickness."""

from __future__ import annotations

import math

from ..declare import Result, Working, calculator
from ..fields import Amount, Choice, Length, MetalField, RingSizeField, StockThickness
from ..metals import Metal
from ..ring_scales import RingSize
from ..units import Quantity, magnitude
from .common import (
    FILE_ALLOWANCE,
    LAYER_HEIGHT,
    LAYER_RESULTS,
    METAL_MASS,
    OVERHANG,
    PASS_WIDTH,
    STRIP_RESULTS,
    give_layers,
    give_mass,
    give_strip,
    mm,
    rule,
)
from .ring_pictures import Place, arc, ring_with_place


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
        OVERHANG,
        FILE_ALLOWANCE,
        LAYER_HEIGHT,
        PASS_WIDTH,
    ],
    results=[
        *STRIP_RESULTS,
        Result("volume", "Volume of the fill", "mm**3", 0.01),
        METAL_MASS,
        Result("angle", "Angle of the worn part", "degree", 1),
        *LAYER_RESULTS,
    ],
    sources=["fill-geometry", "ring-size-encyclopaedia"],
    cautions=[
        "The wear is taken as even over its whole length. A shank that thins toward the middle needs less: about two "
        "thirds of this for an even hollow.",
        "Clean to bright, sound metal first, and look for an old seam, solder or a hollow shank. Use metal of the same "
        "alloy and the same fineness or better; a hallmarked piece can need the assay office's consent.",
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
    worn = working.step(
        "Outside radius where worn", "inside / 2 + worn_thickness", "mm", inside=inside, worn_thickness=worn_thickness
    )
    full = working.step(
        "Outside radius at full thickness",
        "inside / 2 + full_thickness",
        "mm",
        inside=inside,
        full_thickness=full_thickness,
    )
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
    give_strip(working, arc_length, width, missing, volume, overhang=overhang, file_allowance=file_allowance)
    working.result("volume", volume)
    give_mass(working, volume, metal)
    working.result("angle", angle)
    give_layers(working, missing + file_allowance, width, layer_height, pass_width)
    thin = working.figure("A wall thinner than this asks for a half shank", rule("shank", "thin_wall"))
    working.verdict = "Bend the strip to the ring, tack both ends, fuse its rim all around, then close it and file it."
    if worn_thickness < thin:
        working.verdict = (
            f"Only {mm(magnitude(worn_thickness, 'mm'))} is left. A half shank may last longer than this fill "
            "(from memory): compare the work before you start."
        )
    _picture(working, inside / 2, worn, full, angle, overhang, file_allowance)


def _picture(
    working: Working,
    inside: Quantity,
    worn: Quantity,
    full: Quantity,
    angle: Quantity,
    overhang: Quantity,
    file_allowance: Quantity,
) -> None:
    inner, low, outer, over, extra = (magnitude(one, "mm") for one in (inside, worn, full, overhang, file_allowance))
    half = min(magnitude(angle, "radian") / 2, math.pi - 1e-6)
    wide = min(half + over / low, math.pi - 1e-6)
    place = Place(
        floor=arc(low, -half, half),
        strip=arc(low, -half, half)
        + arc(outer, half, wide)
        + arc(outer + extra, wide, -wide)
        + arc(outer, -wide, -half),
        length=mm(2 * half * low),
        depth=(outer - low, mm(outer - low)),
        arc_length=True,
    )
    told = f"Ring {2 * inner:.2f} mm inside, worn by {outer - low:.2f} mm over {math.degrees(2 * half):.0f}°."
    working.draw(ring_with_place("The ring with its worn part, to scale", told, inner, outer, place))
