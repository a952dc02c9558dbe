"""From typed fields to the model's shots and ranges: low and high by the ends of what is not known."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass

from ..data import Figure, load
from ..declare import Working
from ..units import quantity
from .fields import Spread
from .heat_metals import HeatMetal
from .pool import EFFICIENCY, EFFICIENCY_RANGE, Material, Pool, Shot, pool

GUESS = Spread(EFFICIENCY, *EFFICIENCY_RANGE, False)


@dataclass(frozen=True)
class Known:
    """Nominal material with its conductivity ends, absorptivity, melting efficiency."""

    nominal: Material
    poor: Material
    good: Material
    absorptivity: Spread
    efficiency: Spread

    def shoot(
        self, shot: Shot, absorptivity: str = "value", conductivity: str = "value", efficiency: str = "value"
    ) -> Pool:
        """The pool with each unknown at its value, low or high end (low conductivity melts more)."""
        material = {"value": self.nominal, "low": self.poor, "high": self.good}[conductivity]
        return pool(shot, material, getattr(self.absorptivity, absorptivity), getattr(self.efficiency, efficiency))

    def least(self, shot: Shot) -> Pool:
        """Every unknown at the end that melts less."""
        return self.shoot(shot, "low", "high", "low")

    def most(self, shot: Shot) -> Pool:
        """Every unknown at the end that melts more."""
        return self.shoot(shot, "high", "low", "high")


def known(metal: HeatMetal, absorptivity: Spread | None, efficiency: Spread | None, start: float = 20.0) -> Known:
    """What is known of a metal. An absorptivity from the shop's own spots holds for the conductivity it was fitted
    with, so its range already covers that of the conductivity."""
    nominal = metal.material(start)
    fitted = absorptivity is not None and absorptivity.typed_range
    poor, good = (nominal, nominal) if fitted else (metal.conducting(nominal, "low"), metal.conducting(nominal, "high"))
    if absorptivity is None:
        absorptivity = prior(metal.absorptivity)
    return Known(nominal, poor, good, absorptivity, efficiency or GUESS)


def prior(known: Figure) -> Spread:
    """A figure of the data as a number with its range."""
    ends = [float((known.value if end is None else end).magnitude) for end in (known.value, known.low, known.high)]
    return Spread(ends[0], ends[1], ends[2], False)


def give(working: Working, name: str, numbers: Sequence[float], unit: str, note: str = "") -> None:
    """A result from its middle, low and high numbers."""
    middle, low, high = (quantity(one, unit) for one in numbers)
    working.result(name, middle, low, high, note)


def model_error(what: str) -> float:
    """The model's own error that 9 of 10 benchmark cases stay under, as a share (``data/model_accuracy.toml``)."""
    return float(load("model_accuracy")[what]["p90"])


def dominant(working: Working, shot: Shot, one: Known, size: Callable[[Pool], float]) -> str:
    """A sentence on which unknown widens the range most."""
    del working
    names = {
        "absorptivity": "how much light this surface takes in",
        "conductivity": "how well this alloy conducts heat",
        "efficiency": "how much of the energy ends as melt once the surface boils",
    }
    wide = {
        name: abs(size(one.shoot(shot, **{name: "high"})) - size(one.shoot(shot, **{name: "low"}))) for name in names
    }
    most = max(wide, key=lambda name: wide[name])
    if wide[most] <= 0:
        return ""
    return f"The range comes mostly from {names[most]}."
