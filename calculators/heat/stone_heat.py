"""Heat at a stone, an old seam or the fingers while a ring is pulsed."""

from __future__ import annotations

import math
from dataclasses import replace
from typing import NamedTuple

from ..data import Figure, figure, load
from ..declare import Result, Working, calculator
from ..fields import Amount, Choice, Count, Length, RingSizeField, StockThickness
from ..metals import Metal
from ..ring_scales import RingSize
from ..units import Quantity, magnitude, quantity
from . import cautions
from .fields import HeatMetalField, Spread, SpreadField
from .heat_metals import HeatMetal, cite_heat, heat_metal
from .melt_spot import ENERGY
from .ranges import give
from .stone_plan import most_pulses, shortest_rest, temperature_plot
from .stone_sum import Piece, Plan

_RING, _PLATE = ("piece", ("ring",)), ("piece", ("plate",))
_LIMITS = {row["key"]: row for row in load("stones")["limit"]}


class Room(NamedTuple):
    """Start and limit in °C."""

    start: float
    limit: float


@calculator(
    title="Heat at a stone or an old seam",
    purpose="How warm a stone, an old seam or your finger gets, how many pulses it stands, how long to rest.",
    fields=[
        HeatMetalField(),
        Choice(
            name="piece", label="Piece", example="ring", options=(("ring", "a ring"), ("plate", "a flat plate")),
        ),
        RingSizeField(name="ring_size", label="Ring size", example="US 7", when=_RING),
        Length(
            name="length", label="Plate length", example="25 mm", low=2, high=300, when=_PLATE,
            hint="The spot is taken in its middle.",
        ),
        Length(name="width", label="Width", example="3 mm", low=0.5, high=200),
        StockThickness(name="thickness", label="Thickness", example="1.5 mm", low=0.3, high=10),
        Length(
            name="distance", label="From the spot to the stone", example="8 mm", low=0.2, high=150,
            hint="Along the metal, to the nearest setting, seam or finger.",
        ),
        ENERGY,
        Length(name="spot", label="Spot width on the metal", example="0.6 mm", low=0.1, high=4, hint="As melted."),
        Amount(name="rate", label="Pulses a second", example="3 Hz", of="Hz", low=0.1, high=100),
        Count(name="pulses", label="Pulses in one go", example="20", low=1, high=5000),
        Count(name="goes", label="Goes", example="3", low=1, high=40),
        Amount(
            name="rest", label="Rest after each go", example="20 s", of="s", low=0, high=3600, required=False,
            hint="Empty takes the shortest rest that stays under the limit.", slide=(0, 180),
        ),
        Choice(
            name="beside", label="Stone, seam or skin nearby", example="aquamarine",
            options=tuple((key, row["name"]) for key, row in _LIMITS.items()),
        ),
        Amount(
            name="limit", label="Your own limit", example="", of="degC", low=25, high=1500, required=False,
            hint="Empty takes the planning figure for what you chose.",
        ),
        SpreadField(
            name="absorptivity", label="Share of the energy taken in", example="1", required=False,
            hint="1 is the safe plan. Put your own figure only if test spots gave it.", group="What makes it less safe",
        ),
        Amount(
            name="loss", label="Heat lost to the air", example="10", of="W/(m**2*K)", low=0, high=500,
            hint="10 for still air (from memory). A clamp or a wet cloth is not counted.",
            group="What makes it less safe",
        ),
        Amount(name="start", label="Metal at the start", example="20 degC", of="degC", low=-10, high=200, group="Room"),
    ],
    results=[
        Result("peak_temperature", "Hottest at the stone", "degC", 1),
        Result("time_of_peak", "Reached after", "s", 0.1),
        Result("pulses_before_rest", "Pulses in one go, from cold, that stay under the limit", "", 1),
        Result("rest_time", "Shortest rest between goes that stays under the limit", "s", 1),
        Result("temperature_after", "At the stone after the last rest", "degC", 1),
        Result("limit", "Limit planned with", "degC", 1),
    ],
    sources=["carslaw-jaeger", "own-heat-solver"],
    cautions=[
        "A planning figure is a caution, never permission. Shock, fillings, coatings and inclusions harm stones below "
        "any limit: if in doubt, take the stone out or send the job elsewhere.",
        "Counted as a bar of even section, without clamp or wet cloth. Where the metal narrows toward the stone, or is "
        "hollow, it gets hotter than this.",
        "The beam itself must never reach a stone, straight or thrown by polished metal. No sum here covers that.",
        cautions.LIGHT,
    ],
)  # fmt: skip
def stone_heat(
    working: Working,
    metal: Metal,
    piece: str,
    ring_size: RingSize | None,
    length: Quantity | None,
    width: Quantity,
    thickness: Quantity,
    distance: Quantity,
    energy: Quantity,
    spot: Quantity,
    rate: Quantity,
    pulses: Quantity,
    goes: Quantity,
    rest: Quantity | None,
    beside: str,
    limit: Quantity | None,
    absorptivity: Spread | None,
    loss: Quantity,
    start: Quantity,
) -> None:
    """Heat of every pulse spread along, across and through the metal, and summed."""
    heat = heat_metal(metal)
    facts = cite_heat(working, heat, ("density", "heat_capacity_cold", "conductivity_cold"))
    if ring_size is not None:
        length = working.step(
            "Ring along its middle", "pi * (inside_diameter + thickness)", "mm",
            inside_diameter=ring_size.inside_diameter, thickness=thickness,
        )  # fmt: skip
    assert length is not None
    if not _place_fits(working, magnitude(distance, "mm"), magnitude(spot, "mm"), magnitude(length, "mm")):
        return
    bar = _piece(heat, piece == "ring", [magnitude(one, "m") for one in (length, width, thickness, distance)], loss)
    room = Room(magnitude(start, "degC"), _limit(working, beside, limit))
    if room.limit <= room.start:
        working.complain("start", "The metal starts as hot as the limit: let it cool, or enter the right temperature")
        return
    taken = absorptivity or Spread(1.0, 1.0, 1.0, False)
    each = working.step(
        "Heat taken in from one pulse", "energy * share", "J", energy=energy, share=quantity(taken.value)
    )
    mass = working.step(
        "Warming of the whole piece by one pulse, once even",
        "heat / (density * heat_capacity * length * width * thickness)", "K",
        heat=each, density=facts["density"], heat_capacity=facts["heat_capacity_cold"],
        length=length, width=width, thickness=thickness,
    )  # fmt: skip
    plan = Plan(magnitude(each, "J"), int(magnitude(pulses)), magnitude(rate, "Hz"), int(magnitude(goes)))
    count = most_pulses(bar, plan, room.limit - room.start)
    shortest = shortest_rest(bar, plan, room.limit - room.start)
    taken_rest = magnitude(rest, "s") if rest is not None else (shortest or 0.0)
    plan = replace(plan, rest=taken_rest)
    _peaks(working, heat, bar, plan, room, taken)
    working.result("pulses_before_rest", quantity(count), note="no limit reached" if count >= 100000 else "")
    if shortest is not None:
        working.result("rest_time", quantity(float(math.ceil(shortest)), "s"))
    after = room.start + plan.rise(bar, plan.goes * plan.period + (10.0 if taken_rest == 0 else 0.0))
    working.result("temperature_after", quantity(after, "degC"), note="10 s later" if taken_rest == 0 else "")
    working.result("limit", quantity(room.limit, "degC"))
    _verdict(working, plan, room, count, shortest, magnitude(mass, "K"))
    name = "your limit" if limit is not None else _LIMITS[beside]["name"]
    working.draw(temperature_plot(bar, plan, room.start, room.limit, name))


def _place_fits(working: Working, distance: float, spot: float, length: float) -> bool:
    if distance <= spot:
        working.complain(
            "distance", "The stone lies in or at the weld pool: it can't stay. Take it out, or enter the real distance"
        )
    elif distance > length / 2:
        working.complain(
            "distance", f"The far side of this piece is {length / 2:.1f} mm away: enter a shorter distance"
        )
    return not working.errors


def _piece(heat: HeatMetal, closed: bool, sizes: list[float], loss: Quantity) -> Piece:
    conductivity, density, capacity = (
        heat.number(name) for name in ("conductivity_cold", "density", "heat_capacity_cold")
    )
    length, width, thickness, distance = sizes
    return Piece(
        closed, length, width, thickness, distance, conductivity, density, capacity, magnitude(loss, "W/(m**2*K)")
    )


def _limit(working: Working, beside: str, typed: Quantity | None) -> float:
    row = _LIMITS[beside]
    working.caution(f"{row['name']}: {row['behavior']}.")
    if typed is not None:
        return magnitude(typed, "degC")
    known: Figure = figure(row["limit"])
    return magnitude(working.figure(f"Planning limit for {row['name']}", known), "degC")


def _peaks(working: Working, heat: HeatMetal, bar: Piece, plan: Plan, room: Room, taken: Spread) -> None:
    """Peak with low and high from conductivity, heat capacity and the share taken in."""
    rise, lag = plan.peak(bar)
    ends = []
    for end, share in (("low", taken.low), ("high", taken.high)):
        other = replace(
            bar, conductivity=heat.number("conductivity_cold", end), loss=bar.loss * (1.5 if end == "low" else 0.5)
        )
        ends.append(plan.at_lag(other, lag * bar.diffusivity / other.diffusivity) * share / taken.value)
    low, high = min(rise, *ends), max(rise, *ends)
    capacity = heat.number("heat_capacity_cold", "high") / heat.number("heat_capacity_cold")
    working.note(
        "Sum of all pulses at the stone, at its highest",
        "spread along, across and through the metal; images for short times, Fourier series for long ones",
        quantity(rise, "K"), "K",
    )  # fmt: skip
    give(working, "peak_temperature", [room.start + one for one in (rise, low / capacity, high * capacity)], "degC")
    working.result("time_of_peak", quantity(plan.last_pulse + lag, "s"))


def _verdict(working: Working, plan: Plan, room: Room, count: int, shortest: float | None, even: float) -> None:
    high = working.values["peak_temperature"].high
    hottest = magnitude(high, "degC") if high is not None else math.inf
    if count == 0:
        working.caution("One single pulse already passes the limit at this distance.", stop=True)
        working.verdict = "Don't do it this way: take the stone out, go farther off, or use less energy."
        return
    if hottest <= room.limit:
        working.verdict = "The plan stays under the limit, as far as this model knows."
    elif magnitude(working.values["peak_temperature"].value, "degC") <= room.limit:  # type: ignore[arg-type]
        working.verdict = "The plan may pass the limit: its high end does. Rest longer or pulse less."
    else:
        working.verdict = f"The plan passes the limit. Stop after {count} pulses"
        if shortest is None:
            working.verdict += "; no rest is long enough for goes of this many."
        else:
            working.verdict += f", or rest {math.ceil(shortest)} s between goes."
    if plan.count * plan.goes * even > 0.8 * (room.limit - room.start):
        working.verdict += " The whole piece gets warm: only time or fewer pulses help."
