"""Heat figures of the metals (``data/heat_properties.toml``), under the keys of ``metals.toml``."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from functools import lru_cache

from ..data import Figure, figure, load
from ..declare import Working
from ..metals import Metal
from ..units import Quantity, magnitude, quantity
from .pool import Material

START = 20.0  # °C: the means of the data run from here


@dataclass(frozen=True)
class HeatMetal:
    """A metal with its heat figures; ``cold`` conducts as at 20 °C, for heat far from the pool."""

    metal: Metal
    figures: dict[str, Figure]
    absorptivity: Figure
    polished: Figure

    def number(self, name: str, end: str = "value") -> float:
        """A figure in SI (temperatures in °C); ``end`` is value, low or high."""
        known = self.metal.density if name == "density" else self.figures[name]
        amount = getattr(known, end)
        unit = {"solidus": "degC", "liquidus": "degC", "boiling": "degC", "density": "kg/m**3"}.get(name, known.unit)
        return magnitude(known.value if amount is None else amount, "J/kg" if name == "latent_heat" else unit)

    def material(self, start: float = START) -> Material:
        """The nominal material; ``start`` is the temperature before the pulse, °C."""
        return Material(
            density=self.number("density"),
            heat_capacity=self.number("heat_capacity"),
            latent_heat=self.number("latent_heat"),
            conductivity=self.number("conductivity"),
            conductivity_liquid=self.number("conductivity_liquid"),
            melting=(self.number("solidus") + self.number("liquidus")) / 2,
            boiling=self.number("boiling"),
            start=start,
        )

    def conducting(self, material: Material, end: str) -> Material:
        """The same material with solid and liquid conductivity at the ``low`` or ``high`` end of what is known."""
        share = self.number("conductivity", end) / self.number("conductivity")
        return replace(
            material,
            conductivity=material.conductivity * share,
            conductivity_liquid=material.conductivity_liquid * share,
        )


@lru_cache(maxsize=1)
def heat_keys() -> frozenset[str]:
    """Keys of the metals whose heat figures are known."""
    return frozenset(load("heat_properties")) - {"family"}


@lru_cache(maxsize=64)
def _figures(key: str) -> dict[str, Figure]:
    return {name: figure(row) for name, row in load("heat_properties")[key].items()}


def heat_metal(metal: Metal) -> HeatMetal:
    """The heat figures of a metal; raises ``KeyError`` where none are known."""
    families = load("heat_properties")["family"]
    family = families[metal.family if metal.family in families else metal.key]
    return HeatMetal(metal, _figures(metal.key), figure(family["absorptivity"]), figure(family["polished"]))


def cite_heat(working: Working, known: HeatMetal, names: Iterator[str] | tuple[str, ...]) -> dict[str, Quantity]:
    """Write the heat figures into the working, each with source and mark; returns them by name."""
    words = {
        "density": "Density",
        "heat_capacity": "Heat capacity, mean from 20 °C to melting",
        "heat_capacity_cold": "Heat capacity at 20 °C",
        "latent_heat": "Latent heat of melting",
        "conductivity": "Conductivity, mean from 20 °C to melting",
        "conductivity_cold": "Conductivity at 20 °C",
        "conductivity_liquid": "Conductivity of the liquid",
        "solidus": "Solidus",
        "liquidus": "Liquidus",
        "boiling": "Boiling",
    }
    found = {}
    for name in names:
        one = known.metal.density if name == "density" else known.figures[name]
        found[name] = working.figure(f"{words[name]} of {known.metal.name}", one)
    return found


def kelvin(rise: float) -> Quantity:
    """A temperature difference."""
    return quantity(rise, "K")
