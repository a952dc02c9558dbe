"""The metal that a flat on a shank lacks, and the strip to lay on it."""

from __future__ import annotations

from ..declare import Result, Working, calculator
from ..fields import Choice, Length, MetalField, RingSizeField, StockThickness
from ..metals import Metal
from ..ring_scales import RingSize
from ..units import Quantity, magnitude, quantity_text
from . import common
from .ring_pictures import flat_place, ring_with_place


@calculator(
    title="Flat spot on a shank",
    purpose="What metal a flat worn or filed on the outside of a ring lacks, and the strip that fills it.",
    fields=[
        Choice(
            name="given_by",
            label="You know",
            example="outside-diameter",
            options=(("outside-diameter", "The outside diameter"), ("ring-size", "The ring size")),
        ),
        Length(
            name="outside_diameter",
            label="Outside diameter",
            example="20.523 mm",
            low=8,
            high=120,
            hint="Across the ring where it is still round.",
            when=("given_by", ("outside-diameter",)),
        ),
        RingSizeField(
            name="ring_size",
            label="Ring size",
            example="US 7",
            hint="With its scale, such as US 7 or ISO 54.",
            when=("given_by", ("ring-size",)),
        ),
        StockThickness(
            name="thickness",
            label="Band thickness",
            example="1.6 mm",
            low=0.4,
            high=10,
            hint="Where the shank is still sound.",
        ),
        Length(
            name="depth",
            label="Depth of the flat",
            example="0.5 mm",
            low=0.02,
            high=10,
            hint="Sound thickness less the thickness left in the middle of the flat.",
        ),
        Length(name="width", label="Band width at the flat", example="3 mm", low=0.5, high=30),
        MetalField(),
        *common.STRIP_FIELDS,
    ],
    results=[
        *common.STRIP_RESULTS,
        Result("chord", "Length of the flat", "mm", 0.01, also=("in",)),
        Result("area", "Area missing, seen from the side", "mm**2", 0.001),
        Result("volume", "Volume of the fill", "mm**3", 0.01),
        common.METAL_MASS,
        Result("wall_left", "Wall left in the middle of the flat", "mm", 0.01),
        *common.LAYER_RESULTS,
    ],
    sources=["fill-geometry"],
    cautions=[common.CLEAN, common.SAME_METAL],
)
def fill_flat_spot(
    working: Working,
    given_by: str,
    outside_diameter: Quantity | None,
    ring_size: RingSize | None,
    thickness: Quantity,
    depth: Quantity,
    width: Quantity,
    metal: Metal,
    overhang: Quantity,
    file_allowance: Quantity,
    layer_height: Quantity,
    pass_width: Quantity,
) -> None:
    """A flat cuts a circular segment off the ring: area R²/2 × (θ − sin θ), θ from the depth of the flat."""
    if depth >= thickness:
        left = quantity_text(thickness, "mm")
        working.complain(
            "depth", f"The flat can't be as deep as the shank is thick ({left}): enter less, or correct the thickness"
        )
        return
    across = outside_diameter
    if across is None:
        assert ring_size is not None
        working.cite("ring-size-encyclopaedia")
        inside = ring_size.inside_diameter
        across = working.step("Outside diameter", "inside + 2 * thickness", "mm", inside=inside, thickness=thickness)
    if across <= 2 * thickness:
        working.complain(
            "thickness", "Twice the thickness is more than the ring is across: enter a thinner band or a larger ring"
        )
        return
    radius = working.step("Outside radius", "outside_diameter / 2", "mm", outside_diameter=across)
    angle = working.step(
        "Angle the flat takes up", "2 * acos(1 - depth / radius)", "radian", depth=depth, radius=radius
    )
    chord = working.step("Length of the flat", "2 * radius * sin(angle / 2)", "mm", radius=radius, angle=angle)
    area = working.step("Area missing", "radius ** 2 / 2 * (angle - sin(angle))", "mm**2", radius=radius, angle=angle)
    volume = working.step("Volume of the fill", "area * width", "mm**3", area=area, width=width)
    common.give_strip(working, chord, width, depth, volume, overhang=overhang, file_allowance=file_allowance)
    working.result("chord", chord)
    working.result("area", area)
    working.result("volume", volume)
    common.give_mass(working, volume, metal)
    wall = working.step("Wall left", "thickness - depth", "mm", thickness=thickness, depth=depth)
    working.result("wall_left", wall)
    common.give_layers(working, depth + file_allowance, width, layer_height, pass_width)
    thin = working.figure("A wall thinner than this asks for a half shank", common.rule("shank", "thin_wall"))
    working.verdict = (
        "Lay the metal on in thin layers, each fused through to the ring: a strip held only at its rim lifts in wear."
    )
    if wall < thin:
        working.caution("The wall that is left is thin. A half shank may last longer than a fill (from memory).")
    r, t, h, half = (magnitude(one, "mm") for one in (radius, thickness, depth, chord / 2))
    over, extra = magnitude(overhang, "mm"), magnitude(file_allowance, "mm")
    told = f"Ring {2 * r:.2f} mm outside with a flat {2 * half:.2f} mm long and {h:.2f} mm deep; the strip lies on it."
    place = flat_place(r, h, half, over, extra)
    working.draw(ring_with_place("The ring with its flat, to scale", told, r - t, r, place))
