"""Steps of the density check: the water, what a density means for gold, and what to say."""

from __future__ import annotations

from ..data import figure, load
from ..declare import Working
from ..units import Quantity, magnitude, number_text, quantity, quantity_text
from .candidates import UNIT, Reach


def water_density(working: Working, temperature: Quantity) -> Quantity:
    """Density of water by the formula of Tanaka et al. 2001, 0 to 40 °C; 998.2067 kg/m³ at 20 °C in their table."""
    parts = {name: figure(load("water")[name]).value for name in ("a1", "a2", "a3", "a4", "a5")}
    formula = "a5 * (1 - (t + a1) ** 2 * (t + a2) / (a3 * (t + a4)))"
    celsius = quantity(magnitude(temperature, "degC"))
    return working.step("Density of the water, t in °C", formula, UNIT, t=celsius, **parts)


def gold_shares(working: Working, density: Quantity) -> str:
    """Gold content if the rest were copper alone or silver alone; how far apart the two are is the point."""
    elements = {name: figure(load("elements")[name]).value for name in ("gold", "silver", "copper")}
    said = []
    for other in ("copper", "silver"):
        if elements[other] < density < elements["gold"]:
            share = working.step(
                f"Gold in it, if the rest were {other}",
                "gold * (density - other) / (density * (gold - other))",
                "permille",
                gold=elements["gold"],
                density=density,
                other=elements[other],
            )
            working.result(f"gold_with_{other}", share)
            said.append(f"{quantity_text(share, 'permille', 3)} gold with {other} alone")
    return " and ".join(said)


def say(working: Working, possible: list[Reach], piece: str, shares: str, low: float, high: float) -> None:
    """Verdict and the cautions that depend on the answer; ``low`` and ``high`` in g/cm³."""
    fine = sorted({one.metal.fineness for one in possible if one.metal.family == "gold" and one.metal.fineness})
    if piece == "hollow":
        working.verdict = (
            "Hollow, or with unknown stones, the metal itself is denser than this: it only rules out what is lighter."
        )
    elif not possible:
        working.verdict = "No metal of the handbook has this density: weigh again, look for stones, hollows and cores."
    elif len(fine) > 1:
        working.verdict = f"Golds from {number_text(fine[0])} to {number_text(fine[-1])} share this density."
    else:
        working.verdict = f"Nearest is {possible[0].metal.name}, if the piece is what it seems."
    if shares and fine and piece != "hollow":
        working.verdict += f" The same density is {shares}."
    tungsten = magnitude(figure(load("water")["tungsten"]).value, UNIT)
    if low <= tungsten <= high or any(one.metal.key == "24k-yellow" for one in possible):
        working.caution(
            f"Tungsten weighs as much as fine gold ({number_text(tungsten)} g/cm³, from memory): "
            "a core of it can't be seen here."
        )
    if piece == "stones":
        working.caution(
            "The stones count with the weight you type for them: an error there shifts the metal's density."
        )
    if high - low > 0.06 * (high + low):
        working.caution("The piece is small for this balance: the range is too wide to say much.")
