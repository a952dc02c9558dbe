"""The metal and the wire that a pit or a drilled hole takes."""

from __future__ import annotations

from ..declare import Result, Working, calculator
from ..fields import Choice, Length, MetalField
from ..metals import Metal
from ..units import Quantity, magnitude, number_text
from .common import METAL_MASS, WIRE_DIAMETER, WIRE_LENGTH, WIRE_YIELD, give_mass, give_wire
from .section_pictures import bowl, pit_section

_FORMULA = {
    "hemisphere": "pi / 12 * mouth ** 3",
    "cone": "pi / 12 * mouth ** 2 * depth",
    "cap": "pi / 6 * depth * (3 * (mouth / 2) ** 2 + depth ** 2)",
    "frustum": "pi / 12 * depth * (mouth ** 2 + mouth * floor + floor ** 2)",
    "cylinder": "pi / 4 * mouth ** 2 * depth",
}


@calculator(
    title="Pit fill",
    purpose="How much metal a pit takes, and how much wire to melt into it.",
    fields=[
        Choice(
            name="shape",
            label="Shape of the pit",
            example="frustum",
            options=(
                ("hemisphere", "Half a ball (opened with a ball bur)"),
                ("cone", "Cone (opened with a point)"),
                ("cap", "Shallow or deep bowl"),
                ("frustum", "Tapered, with a flat floor"),
                ("cylinder", "Drilled straight"),
            ),
            hint="As it is after you opened it to sound metal.",
        ),
        Length(name="mouth", label="Width of the mouth", example="0.8 mm", low=0.05, high=20, hint="Across the top."),
        Length(
            name="depth",
            label="Depth",
            example="0.6 mm",
            low=0.02,
            high=20,
            when=("shape", ("cone", "cap", "frustum", "cylinder")),
        ),
        Length(
            name="floor",
            label="Width of the floor",
            example="0.5 mm",
            low=0,
            high=20,
            hint="Across the bottom.",
            when=("shape", ("frustum",)),
        ),
        WIRE_DIAMETER,
        MetalField(),
        WIRE_YIELD,
    ],
    results=[
        WIRE_LENGTH,
        Result("volume", "Volume of the pit", "mm**3", 0.001),
        METAL_MASS,
    ],
    sources=["fill-geometry"],
    cautions=[
        "Open the pit until the metal is bright and sound all around. A pit closed over dirt, old solder or gas opens "
        "again under the file.",
        "Fill from the bottom up and leave it a little proud. Check at 10× after the file, before the polish.",
    ],
)
def fill_pit(
    working: Working,
    shape: str,
    mouth: Quantity,
    depth: Quantity | None,
    floor: Quantity | None,
    wire_diameter: Quantity,
    metal: Metal,
    wire_yield: Quantity,
) -> None:
    """Volumes of the solids of revolution; a hemisphere is the cap whose depth is half its mouth."""
    if floor is not None and floor > mouth:
        working.complain("floor", "The floor can't be wider than the mouth: open the mouth, or enter less")
        return
    if shape == "frustum":
        amounts = {"mouth": mouth, "depth": depth, "floor": floor}
    else:
        amounts = {"mouth": mouth, **({} if shape == "hemisphere" else {"depth": depth})}
    volume = working.step(
        "Volume of the pit", _FORMULA[shape], "mm**3", **{name: one for name, one in amounts.items() if one is not None}
    )
    length = give_wire(working, volume, wire_diameter, wire_yield)
    working.result("volume", volume)
    give_mass(working, volume, metal)
    m, w, long = (magnitude(one, "mm") for one in (mouth, wire_diameter, length))
    h = m / 2 if depth is None else magnitude(depth, "mm")
    f = m if shape == "cylinder" else 0.0 if floor is None else magnitude(floor, "mm")
    working.verdict = f"Melt in {number_text(long, 2)}\u00a0mm of wire from the bottom up, in small bites."
    if w > m:
        working.verdict = "The wire is wider than the pit's mouth: draw it down, or it bridges the pit and hides it."
    if shape == "cap" and h > m / 2 * (1 + 1e-9):
        working.caution(
            "This pit is wider inside than at its mouth. Open the mouth to its full width before you fill, or it "
            "closes over a hollow.",
            stop=True,
        )
    straight = [(-m / 2, 0.0), (-f / 2, -h), (f / 2, -h), (m / 2, 0.0)]
    walls = bowl(m, h) if shape in ("hemisphere", "cap") else straight
    told = f"A pit {m:.2f} mm across and {h:.2f} mm deep, filled; the wire beside it is {long:.2f} mm long."
    working.draw(pit_section(told, walls, h, f if shape == "frustum" else 0.0, (w, long)))
