"""Density by weighing in air and in water, and what it leaves possible."""

from __future__ import annotations

from ..data import figure, load
from ..declare import Result, Working, calculator
from ..fields import Amount, Choice, Mass
from ..units import Quantity, magnitude, quantity_text
from .candidates import UNIT, chart, names, split
from .weighing import gold_shares, say, water_density

_PIECES = (
    ("solid", "Solid metal, no stones"),
    ("stones", "Set with stones you know"),
    ("hollow", "Hollow, or with stones you don't know"),
)
_SET = ("piece", ("stones",))


@calculator(
    title="Density check",
    purpose="Density from two weighings, in air and in water, and the alloys it leaves possible.",
    fields=[
        Mass(name="mass_in_air", label="Weight in air", example="4.25 g", low=0.05, high=10_000, hint="Clean and dry."),
        Mass(
            name="mass_in_water",
            label="Weight in water",
            example="3.975 g",
            low=0,
            high=10_000,
            hint="Hanging free on a thin thread, no bubbles, the thread's weight tared away.",
        ),
        Amount(
            name="water_temperature",
            label="Water temperature",
            example="20 °C",
            of="degC",
            low=0,
            high=40,
            hint="Clean water; distilled is best.",
        ),
        Mass(
            name="readability",
            label="Last digit of your balance",
            example="0.005 g",
            low=0.00001,
            high=1,
            hint="The smallest step it shows.",
        ),
        Choice(
            name="piece",
            label="The piece",
            example="solid",
            options=_PIECES,
            hint="Air inside and stones both falsify it.",
        ),
        Mass(
            name="stone_mass",
            label="Weight of the stones",
            example="0.5 ct",
            low=0.0001,
            high=1000,
            hint="All of them together, as known from before they were set.",
            when=_SET,
        ),
        Amount(
            name="stone_density",
            label="Density of the stones",
            example="3.52 g/cm3",
            of=UNIT,
            low=1,
            high=8,
            hint="3.52 for diamond, 4.0 for sapphire (from memory).",
            when=_SET,
        ),
    ],
    results=[
        Result("density", "Density of the metal", UNIT, 0.01),
        Result("could_be", "It could be"),
        Result("cannot_be", "It can't be"),
        Result("gold_with_copper", "Gold in it, if the rest were copper", "permille", 1),
        Result("gold_with_silver", "Gold in it, if the rest were silver", "permille", 1),
        Result("volume", "Volume", "mm**3", 0.1),
        Result("water_density", "Density of the water", UNIT, 0.0001),
    ],
    sources=["hydrostatic-weighing", "tanaka-water", "element-mixing"],
    cautions=[
        "Density alone never proves fineness: alloys of different fineness share a density, and a core, a plating or a "
        "filling can be chosen to match. It can only rule out. An assay proves.",
        "Bubbles, a heavy thread, dirt and trapped water all falsify it: a bubble makes the metal seem lighter.",
    ],
)
def density_check(
    working: Working,
    mass_in_air: Quantity,
    mass_in_water: Quantity,
    water_temperature: Quantity,
    readability: Quantity,
    piece: str,
    stone_mass: Quantity | None,
    stone_density: Quantity | None,
) -> None:
    """The loss of weight in water is the water pushed aside; air pushes a little too and is taken into account."""
    if mass_in_water >= mass_in_air:
        text = quantity_text(mass_in_air, "g")
        working.complain("mass_in_water", f"In water a piece weighs less than in air: enter less than {text}")
        return
    if mass_in_air - mass_in_water <= 2 * readability:
        working.complain(
            "readability", "The two weighings differ by no more than the balance can tell: enter a finer balance"
        )
        return
    water = water_density(working, water_temperature)
    air = working.figure("Density of air", figure(load("water")["air"]))
    loss = {"in_air": mass_in_air, "in_water": mass_in_water, "water": water, "air": air}
    volume = working.step("Volume", "(in_air - in_water) / (water - air)", "mm**3", **loss)
    mass = working.step(
        "Mass without the push of the air", "in_air + volume * air", "g", in_air=mass_in_air, volume=volume, air=air
    )
    spread = working.step(
        "What half a digit in each weighing does to the volume",
        "digit / (water - air)",
        "mm**3",
        digit=readability,
        water=water,
        air=air,
    )
    if stone_mass is not None and stone_density is not None:
        stones = {"stones": stone_mass, "stone_density": stone_density}
        mass = working.step("Mass of the metal", "mass - stones", "g", mass=mass, stones=stone_mass)
        volume = working.step(
            "Volume of the metal", "volume - stones / stone_density", "mm**3", volume=volume, **stones
        )
    if magnitude(mass, "g") <= 0 or volume <= spread:
        working.complain("stone_mass", "The stones take up all of the piece: enter what the stones alone weigh")
        return
    density = working.step("Density", "mass / volume", UNIT, mass=mass, volume=volume)
    low = working.step("At least", "mass / (volume + spread)", UNIT, mass=mass, volume=volume, spread=spread)
    high = working.step("At most", "mass / (volume - spread)", UNIT, mass=mass, volume=volume, spread=spread)
    working.result("density", density, low, high, note="range from the last digit of the balance")
    ends = magnitude(low, UNIT), magnitude(high, UNIT)
    possible, out = split(working, *ends, at_least=piece == "hollow")
    for name, found in (("could_be", possible), ("cannot_be", out)):
        working.result(name, names(found), shown=names(found, 8), metals=[one.metal.key for one in found])
    shares = gold_shares(working, density)
    working.result("volume", volume)
    working.result("water_density", water)
    say(working, possible, piece, shares, *ends)
    working.draw(chart(*ends, magnitude(density, UNIT)))
