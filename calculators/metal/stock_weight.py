"""What a piece of stock weighs, and how much stock a weight is."""

from __future__ import annotations

from ..declare import Result, Working, calculator
from ..fields import Choice, Mass, MetalField, Price
from ..metals import Metal
from ..units import Quantity, magnitude, quantity, quantity_text
from .shapes import SHAPES, section, section_drawing
from .stock_fields import SIZES


@calculator(
    title="Weight of stock",
    purpose="Weight and cost of wire, strip, sheet, tube, a disc or a bead; or the length for a weight.",
    fields=[
        Choice(
            name="shape", label="Shape", example="round-wire", options=SHAPES, hint="Its section, or the whole thing."
        ),
        *SIZES,
        MetalField(),
        Mass(
            name="wanted_mass",
            label="Or a weight you want",
            low=0.001,
            high=100_000,
            required=False,
            hint="Fill it in to learn the length, or the size of a disc or bead, of this weight.",
        ),
        Price(
            name="price", label="Price of a gram", required=False, hint="In your money; type /ozt behind a troy price."
        ),
    ],
    results=[
        Result("mass", "It weighs", "g", 0.001, also=("dwt", "ozt")),
        Result("volume", "Volume", "mm**3", 0.01),
        Result("cost", "Metal in it costs", "money", 0.01),
        Result("length_for_mass", "Length of the weight you want", "mm", 0.1, also=("in",)),
        Result("diameter_for_mass", "Diameter of the weight you want", "mm", 0.01, also=("in",)),
    ],
    sources=["element-mixing"],
    cautions=[
        "Trade alloys of one karat differ in density by a few percent: weigh a cut of your own stock to be sure."
    ],
)
def stock_weight(
    working: Working,
    shape: str,
    diameter: Quantity | None,
    side: Quantity | None,
    width: Quantity | None,
    thickness: Quantity | None,
    wall: Quantity | None,
    length: Quantity | None,
    metal: Metal,
    wanted_mass: Quantity | None,
    price: Quantity | None,
) -> None:
    """Weight is volume times density; the length or size for a weight is the same read backward."""
    given = {"diameter": diameter, "side": side, "width": width, "thickness": thickness, "wall": wall}
    size = {name: value for name, value in given.items() if value is not None}
    if wall is not None and diameter is not None and 2 * wall >= diameter:
        half = quantity_text(diameter / 2, "mm")
        working.complain("wall", f"A tube wall is less than half the diameter: enter less than {half}")
        return
    if shape == "sphere":
        volume = working.step("Volume", "pi / 6 * diameter ** 3", "mm**3", **size)
    else:
        area = section(working, shape, size)
        long = size["thickness"] if length is None else length
        volume = working.step("Volume", "section * length", "mm**3", section=area, length=long)
    density = working.figure(f"Density of {metal.name}", metal.density)
    mass = working.step("Weight", "volume * density", "g", volume=volume, density=density)
    low, high = (None if end is None else (volume * end).to("g") for end in (metal.density.low, metal.density.high))
    working.result("mass", mass, low, high)
    working.result("volume", volume)
    if price is not None:
        cost = working.step("Cost of the metal", "mass * price", "money", mass=mass, price=price)
        working.result("cost", cost, note="metal only, at the price of a gram of this alloy")
    if wanted_mass is not None:
        _backward(working, shape, wanted_mass, volume, mass, diameter, length)
    if length is None:
        working.verdict = f"{quantity_text(volume, 'mm**3')} of {metal.name}."
    else:
        each = quantity(10, "mm") * mass / length
        working.verdict = f"Every 10 mm of it weigh {quantity_text(each, 'g', 3)}."
    if magnitude(mass, "g") < 0.01:
        working.caution("That is less than a balance with two decimals can tell apart.")
    working.draw(section_drawing(shape, size, length))


def _backward(
    working: Working,
    shape: str,
    wanted: Quantity,
    volume: Quantity,
    mass: Quantity,
    diameter: Quantity | None,
    length: Quantity | None,
) -> None:
    """Length of long stock for a weight; for a disc or a bead its diameter, at the same thickness."""
    if length is not None:
        found = working.step(
            "Length of that weight", "length * wanted / mass", "mm", length=length, wanted=wanted, mass=mass
        )
        working.result("length_for_mass", found)
    elif diameter is not None:
        root = "1 / 3" if shape == "sphere" else "1 / 2"
        found = working.step(
            "Diameter of that weight",
            f"diameter * (wanted / mass) ** ({root})",
            "mm",
            diameter=diameter,
            wanted=wanted,
            mass=mass,
        )
        working.result("diameter_for_mass", found)
