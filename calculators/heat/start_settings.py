"""Starting settings for a joint, as ranges, and the ladder of test spots that makes them true."""

from __future__ import annotations

from ..declare import Result, Working, calculator
from ..fields import Amount, Choice, Length, StockThickness
from ..metals import Metal
from ..units import Quantity, magnitude, number_text, quantity
from . import cautions
from .aim import Machine, choose, energy_for, power_wanted
from .fields import HeatMetalField, Spread
from .heat_metals import cite_heat, heat_metal
from .ladder import ladder
from .melt_spot import ABSORPTIVITY, EFFICIENCY
from .passes import aimed_pass, leveling_pass
from .pool import Shot
from .ranges import Known, known

# Wanted depth by the thickness, and its most, mm: fused from both sides where one side can't reach (common practice).
_DEPTH = {
    "butt": (0.55, 0.6), "edge": (0.4, 0.5), "plug": (0.5, 0.6), "lap": (0.35, 0.4), "t-corner": (0.4, 0.5),
    "pit-fill": (0.3, 0.3),
}  # fmt: skip
ARC = Spread(0.77, 0.5, 0.85, True)
_MACHINE = "What your machine can do"


def _results() -> list[Result]:
    found = []
    for name in ("weld", "tack", "leveling"):
        words = name.capitalize()
        found += [
            Result(f"{name}_energy", f"{words}: energy", "J", digits=2),
            Result(f"{name}_duration", f"{words}: pulse length", "ms", 0.1),
            Result(f"{name}_spot", f"{words}: spot", "mm", 0.05),
            Result(f"{name}_rate", f"{words}: pulses a second", "Hz", 0.5),
        ]
    return [
        *found,
        Result("ladder_first", "First test spot", "J", digits=2),
        Result("ladder_step", "Step from spot to spot", "percent", 1),
        Result("ladder_last", "Last test spot", "J", digits=2),
        Result("ladder", "Test spots"),
    ]


@calculator(
    title="Starting settings",
    purpose="Where to start for a joint, as ranges, and the test spots that narrow them.",
    fields=[
        Choice(
            name="joint", label="Joint", example="butt",
            options=(("butt", "butt"), ("edge", "edge"), ("plug", "plug"), ("lap", "lap"), ("t-corner", "T or corner"),
                     ("pit-fill", "pit to fill")),
        ),
        HeatMetalField(),
        StockThickness(name="thickness", label="Metal thickness", example="1.5 mm", low=0.15, high=10),
        Choice(
            name="source", label="Machine", example="laser", options=(("laser", "laser"), ("arc", "pulsed arc")),
        ),
        Amount(
            name="max_energy", label="Most energy in a pulse", example="60 J", of="J", low=0.1, high=500,
            group=_MACHINE,
        ),
        Amount(
            name="max_peak_power", label="Most power in a pulse", example="6 kW", of="kW", low=0.02, high=50,
            group=_MACHINE, hint="Peak power, not mean.",
        ),
        Length(name="spot_min", label="Smallest spot", example="0.2 mm", low=0.05, high=4, group=_MACHINE),
        Length(name="spot_max", label="Widest spot", example="2 mm", low=0.1, high=6, group=_MACHINE),
        Amount(
            name="duration_min", label="Shortest pulse", example="0.5 ms", of="ms", low=0.05, high=50, group=_MACHINE,
        ),
        Amount(name="duration_max", label="Longest pulse", example="20 ms", of="ms", low=0.1, high=200, group=_MACHINE),
        ABSORPTIVITY,
        EFFICIENCY,
    ],
    results=_results(),
    sources=["carslaw-jaeger", "own-heat-solver"],
    cautions=[*cautions.SETTINGS, cautions.MODEL],
)  # fmt: skip
def start_settings(
    working: Working,
    joint: str,
    metal: Metal,
    thickness: Quantity,
    source: str,
    max_energy: Quantity,
    max_peak_power: Quantity,
    spot_min: Quantity,
    spot_max: Quantity,
    duration_min: Quantity,
    duration_max: Quantity,
    absorptivity: Spread | None,
    efficiency: Spread | None,
) -> None:
    """The pulse that melts as deep as the joint needs; low and high by the ends of what is not known."""
    if not _machine_fits(working, spot_min, spot_max, duration_min, duration_max):
        return
    amounts = (spot_min, spot_max, duration_min, duration_max)
    limits = [magnitude(one, unit) for one, unit in zip(amounts, ("m", "m", "s", "s"), strict=True)]
    machine = Machine(magnitude(max_energy, "J"), magnitude(max_peak_power, "W"), *limits)
    _keep(working, source, machine)
    heat = heat_metal(metal)
    cite_heat(
        working, heat, ("density", "heat_capacity", "latent_heat", "conductivity", "solidus", "liquidus", "boiling")
    )
    one = known(heat, absorptivity or (ARC if source == "arc" else None), efficiency)
    if source == "arc":
        working.cite("arc-efficiency")
        working.caution(cautions.ARC)
    elif absorptivity is None:
        working.figure("Share of the light taken in", heat.absorptivity)
    share, most = _DEPTH[joint]
    deep = working.step(
        "Depth the weld should reach from one side (common practice, no source)",
        "min(share * thickness, most)", "mm",
        share=quantity(share), thickness=thickness, most=quantity(most, "mm"),
    )  # fmt: skip
    thick = magnitude(thickness, "m")
    depth = magnitude(deep, "m")
    guess = known(heat, ARC if source == "arc" else None, None)
    weld = _pulse(depth, 0.7 * depth + (0.6e-3 if source == "arc" else 0.15e-3), thick, guess, one, machine)
    if weld is None:
        _refuse(working, depth, thick, one, machine)
        return
    tack = _pulse(0.45 * depth, weld.spot, thick, guess, one, machine)
    if tack is None or tack.energy > weld.energy:
        tack = _with_energy_for(0.45 * depth, weld, one)
    weld_energy = aimed_pass(working, "weld", depth, weld, one, machine)
    aimed_pass(working, "tack", 0.45 * depth, tack, one, machine)
    leveling_pass(working, weld, weld_energy, one, machine)
    ladder(working, weld, one, machine)
    _words(working, metal, one, weld, depth if joint in ("butt", "edge", "t-corner") else weld.thickness)


def _pulse(depth: float, spot: float, thick: float, guess: Known, one: Known, machine: Machine) -> Shot | None:
    """Length and spot by the guess for the metal, so that the shop's own values move the energy only; by those
    values where the machine can't give that energy."""
    found = choose(depth, spot, thick, guess.nominal, guess.absorptivity.value, guess.efficiency.value, machine)
    if found is not None:
        found = _with_energy_for(depth, found, one)
        if machine.can(found):
            return found
    return choose(depth, spot, thick, one.nominal, one.absorptivity.value, one.efficiency.value, machine)


def _with_energy_for(depth: float, shot: Shot, one: Known) -> Shot:
    return shot.with_energy(energy_for(depth, shot, one.nominal, one.absorptivity.value, one.efficiency.value))


def _machine_fits(working: Working, *ends: Quantity) -> bool:
    spot_min, spot_max, duration_min, duration_max = ends
    if spot_min > spot_max:
        working.complain("spot_min", "The smallest spot is wider than the widest: enter the two the other way around")
    if duration_min > duration_max:
        working.complain(
            "duration_min", "The shortest pulse is longer than the longest: enter the two the other way around"
        )
    return not working.errors


def _keep(working: Working, source: str, machine: Machine) -> None:
    """Offer to keep the machine's limits for the other settings of this device."""
    limits = {
        "max_energy": (machine.max_energy, "J"),
        "max_peak_power": (machine.max_power / 1e3, "kW"),
        "spot_min": (machine.spot_min * 1e3, "mm"),
        "spot_max": (machine.spot_max * 1e3, "mm"),
        "duration_min": (machine.duration_min * 1e3, "ms"),
        "duration_max": (machine.duration_max * 1e3, "ms"),
    }
    energy, power, *ends = (number_text(number) for number, _ in limits.values())
    working.keep(
        f"This {'pulsed arc' if source == 'arc' else 'laser'}: {energy} J, {power} kW, "
        f"spot {ends[0]} to {ends[1]} mm, pulse {ends[2]} to {ends[3]} ms",
        {"source": source},
        {name: f"{number_text(number)} {unit}" for name, (number, unit) in limits.items()},
    )


def _refuse(working: Working, depth: float, thick: float, one: Known, machine: Machine) -> None:
    """The machine can't melt it: say what would."""
    wanted = power_wanted(depth, thick, one.nominal, one.absorptivity.value, one.efficiency.value, machine)
    power = wanted.energy / wanted.duration
    field, has = "max_energy", f"{machine.max_energy:.3g} J"
    if power > machine.max_power:
        field, has = "max_peak_power", f"{machine.max_power / 1e3:.3g} kW"
    working.complain(
        field,
        f"With {has} this machine most likely can't melt {depth * 1e3:.2f} mm deep in this metal. About "
        f"{number_text(power / 1e3, 2)} kW and {number_text(wanted.energy, 2)} J in a spot of "
        f"{machine.spot_min * 1e3:.2g} mm would. Enter a "
        "smaller spot or a longer pulse if the machine has it, thinner metal, or a darkened surface's absorptivity",
    )


def _words(working: Working, metal: Metal, one: Known, weld: Shot, depth: float) -> None:
    thick = weld.thickness
    says = ["Shoot the test spots on scrap first, from the lowest up."]
    if not one.absorptivity.typed_range:
        says.append("The ranges are this wide because nobody knows how much light your surface takes in.")
    if thick > 2 * depth + 1e-4:
        says.append("One side does not reach the middle: fuse from every side, or open a V and fill it.")
    elif thick > 1.02 * depth:
        says.append("Fuse from both sides so that the two meet.")
    working.verdict = " ".join(says)
    if one.most(weld).through:
        working.caution(
            "If the surface takes in the most it may, the middle setting burns through: begin at the low end."
        )
    for text in cautions.of_metal(metal.key):
        working.caution(text)
