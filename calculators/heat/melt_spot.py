"""What one pulse melts."""

from __future__ import annotations

import math
from typing import NamedTuple

from ..declare import Result, Working, calculator
from ..fields import Amount, Choice, Length, StockThickness
from ..metals import Metal
from ..units import Quantity, magnitude
from . import cautions
from .fields import HeatMetalField, Spread, SpreadField
from .heat_metals import heat_metal
from .one_pulse import work_pulse
from .pictures import pool_section
from .pool import Pool, Shot
from .ranges import Known, dominant, give, known, model_error

ENERGY = Amount(name="energy", label="Energy of one pulse", example="5 J", of="J", low=0.01, high=200)
DURATION = Amount(
    name="duration", label="Pulse length", example="4 ms", of="ms", low=0.1, high=50, hint="Milliseconds."
)
SPOT = Length(
    name="spot", label="Spot diameter", example="0.5 mm", low=0.1, high=4, hint="Where the beam or arc meets the metal."
)
ABSORPTIVITY = SpreadField(
    name="absorptivity",
    label="Share of the light taken in",
    required=False,
    hint="From your test spots, such as 0.12 or 0.10 to 0.15. Empty takes the wide guess for the metal.",
    group="What your test spots say",
)
EFFICIENCY = SpreadField(
    name="efficiency",
    label="Melting efficiency",
    required=False,
    hint="Share of the pulse that ends as melt in a deep weld, from a sectioned spot. Empty takes 0.05 to 0.25.",
    group="What your test spots say",
)
REGIME_WORDS = {
    "no melt": "Nothing melts.",
    "conduction": "A conduction weld: shallow and calm, the surface stays below boiling.",
    "transition": "Between conduction and penetration: the surface starts to boil and is pressed in.",
    "penetration": "A penetration weld: vapor opens a hole that closes behind the pulse. Deep, but it spits and pores.",
}


_CROWDED = {"middle": 1.0, "edge": 2.0, "corner": 4.0}


class Ends(NamedTuple):
    """The pool at the middle and at both ends of what is not known."""

    middle: Pool
    least: Pool
    most: Pool


@calculator(
    title="One pulse: what it melts",
    purpose="How deep and how wide one pulse melts, in which way, and how sure that is.",
    fields=[
        HeatMetalField(),
        ENERGY,
        DURATION,
        SPOT,
        StockThickness(
            name="thickness",
            label="Metal thickness",
            example="1.5 mm",
            low=0.1,
            high=20,
            required=False,
            hint="Under the spot, in mm or gauge. Empty means thick.",
        ),
        ABSORPTIVITY,
        EFFICIENCY,
        Amount(
            name="start",
            label="Metal temperature before the pulse",
            example="20 degC",
            of="degC",
            low=0,
            high=400,
            group="Warm metal",
            hint="A warm piece melts sooner.",
        ),
        Choice(
            name="place",
            label="Where the spot lies",
            example="middle",
            options=(
                ("middle", "well inside the piece"),
                ("edge", "whole spot close to an edge, or on a narrow shank"),
                ("corner", "whole spot close to a corner"),
            ),
            group="Edges",
        ),
    ],
    results=[
        Result("melt_depth", "Melted depth", "mm", 0.01),
        Result("melt_width", "Melted width at the surface", "mm", 0.01),
        Result("surface_temperature", "Surface at the end of the pulse", "degC", 10),
        Result("regime", "Kind of weld"),
        Result("fluence", "Energy on each square millimeter", "J/mm**2", 0.1),
        Result("peak_power", "Power during the pulse", "W", 10),
    ],
    sources=["carslaw-jaeger", "own-heat-solver"],
    cautions=[*cautions.SETTINGS, cautions.MODEL],
)
def melt_spot(
    working: Working,
    metal: Metal,
    energy: Quantity,
    duration: Quantity,
    spot: Quantity,
    thickness: Quantity | None,
    absorptivity: Spread | None,
    efficiency: Spread | None,
    start: Quantity,
    place: str,
) -> None:
    """Closed form of the disk source, with what melting holds back from the solver's table."""
    heat = heat_metal(metal)
    one = known(heat, absorptivity, efficiency, magnitude(start, "degC"))
    thick = magnitude(thickness, "m") if thickness is not None else math.inf
    shot = Shot(magnitude(energy, "J"), magnitude(duration, "s"), magnitude(spot, "m"), thick)
    middle = work_pulse(working, heat, one, shot)
    # An edge throws heat back: at worst as if the heat beyond it fell on the piece again (images; not validated).
    crowded = shot.with_energy(shot.energy * _CROWDED[place])
    ends = Ends(middle, one.least(shot), one.most(crowded))
    if place != "middle":
        working.caution("Near an edge only the high end counts the heat thrown back; this is a bound, not validated.")
    _sizes(working, ends, thick)
    give(working, "surface_temperature", [each.surface for each in ends], "degC")
    spread = sorted({each.regime for each in ends}, key=list(REGIME_WORDS).index)
    working.result("regime", middle.regime, note="may be " + " or ".join(spread) if len(spread) > 1 else "")
    working.result(
        "fluence",
        working.step("Energy per area", "energy / (pi * (spot / 2) ** 2)", "J/mm**2", energy=energy, spot=spot),
    )
    working.result("peak_power", working.step("Power", "energy / duration", "W", energy=energy, duration=duration))
    _verdict(working, one, shot, ends)
    for text in cautions.of_metal(metal.key):
        working.caution(text)
    working.draw(pool_section(shot, one.nominal, middle, math.isfinite(thick)))


def _sizes(working: Working, ends: Ends, thick: float) -> None:
    """Depth and width with low and high; the model's own benchmark error widens both.

    Where the surface boils the pool is held at the width it has then; it may be a fifth wider (a judgment).
    """
    plate = "plate" if math.isfinite(thick) else "thick"
    off = model_error(f"depth_{plate}")
    low = min(one.depth for one in ends) * (1 - off)
    high = max(one.deepest for one in ends) * (1 + off)
    note = "through the metal" if ends.middle.through else ""
    give(working, "melt_depth", [one * 1e3 for one in (ends.middle.depth, low, min(high, thick))], "mm", note)
    off = model_error(f"width_{plate}")
    low = min(one.width for one in ends) * (1 - off)
    high = max(one.width * (1.2 if one.regime in ("transition", "penetration") else 1 + off) for one in ends)
    give(working, "melt_width", [one * 1e3 for one in (ends.middle.width, low, high)], "mm")


def _verdict(working: Working, one: Known, shot: Shot, ends: Ends) -> None:
    says = [REGIME_WORDS[ends.middle.regime]]
    if ends.middle.regime == "no melt" and ends.most.regime != "no melt":
        says = ["Most likely nothing melts, but it may."]
    if ends.most.through:
        says.append("It may go through.")
    says.append(dominant(working, shot, one, lambda each: each.depth))
    if not one.absorptivity.typed_range:
        says.append("Three test spots narrow it.")
    working.verdict = " ".join(filter(None, says))
    if ends.most.regime == "penetration":
        working.caution("At the high end this pulse drills and spits metal. Start lower and come up.")
