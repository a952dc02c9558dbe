"""The metal for the new tip of a worn prong."""

from __future__ import annotations

from ..declare import Result, Working, calculator
from ..fields import Length, MetalField, StockThickness
from ..metals import Metal
from ..units import Quantity, magnitude
from .common import METAL_MASS, WIRE_DIAMETER, WIRE_LENGTH, WIRE_YIELD, give_mass, give_wire
from .section_pictures import prong_side


@calculator(
    title="Prong tip",
    purpose="How much metal, and how much wire, builds a worn prong up again.",
    fields=[
        StockThickness(
            name="diameter",
            label="Prong diameter",
            example="1 mm",
            low=0.3,
            high=4,
            hint="Where the prong is still full; take the mean for an oval one.",
        ),
        Length(
            name="height",
            label="Height to add",
            example="0.4 mm",
            low=0,
            high=5,
            hint="Straight part, below the dome.",
        ),
        Length(
            name="dome",
            label="Height of the dome",
            example="0.5 mm",
            low=0,
            high=2,
            hint="Half the diameter makes half a ball; 0 leaves the tip flat.",
        ),
        WIRE_DIAMETER,
        MetalField(),
        WIRE_YIELD,
    ],
    results=[
        WIRE_LENGTH,
        Result("volume", "Volume of the new tip", "mm**3", 0.001),
        Result("bead_diameter", "The same metal as a bead", "mm", 0.05, also=("in",)),
        METAL_MASS,
    ],
    sources=["fill-geometry"],
    cautions=[
        "The beam must never cross the stone, and a polished prong can throw it there. Know the stone's limits, keep "
        "heat short, or take the stone out.",
        "Look under the tip with a loupe before and after: a chip, a crack or a void under the metal is found there.",
    ],
)
def prong_tip(
    working: Working,
    diameter: Quantity,
    height: Quantity,
    dome: Quantity,
    wire_diameter: Quantity,
    metal: Metal,
    wire_yield: Quantity,
) -> None:
    """A cylinder with a spherical cap on it; half the diameter makes the cap a hemisphere."""
    if dome > diameter / 2 * (1 + 1e-9):
        working.complain("dome", "The dome can't be higher than half the prong's diameter: enter less, or 0 for flat")
        return
    if magnitude(height + dome, "mm") == 0:
        working.complain("height", "Enter the height to add, or the height of the dome: both are 0")
        return
    straight = working.step(
        "Straight part", "pi / 4 * diameter ** 2 * height", "mm**3", diameter=diameter, height=height
    )
    cap = working.step(
        "Dome", "pi / 6 * dome * (3 * (diameter / 2) ** 2 + dome ** 2)", "mm**3", dome=dome, diameter=diameter
    )
    volume = working.step("Volume of the new tip", "straight + dome", "mm**3", straight=straight, dome=cap)
    length = give_wire(working, volume, wire_diameter, wire_yield)
    working.result("volume", volume)
    bead = working.step("As a bead", "(6 * volume / pi) ** (1 / 3)", "mm", volume=volume)
    working.result("bead_diameter", bead)
    give_mass(working, volume, metal)
    d, h, k, w, long = (magnitude(one, "mm") for one in (diameter, height, dome, wire_diameter, length))
    working.verdict = (
        "Fuse the first wire to bright metal all around, then build up and dome it; file, don't melt, to shape."
    )
    if h > 1.5 * d:
        working.verdict = (
            "That is a long way to build up. A peg of the same alloy let into the prong is stronger than a stack of "
            "beads (common practice, no source)."
        )
    told = f"A prong {d:.2f} mm thick with {h:.2f} mm added and a dome {k:.2f} mm high."
    working.draw(prong_side(told, d, h, k, (w, long)))
