"""The three passes of a joint as results: energy with its range, pulse length, spot and rate."""

from __future__ import annotations

from dataclasses import replace

from ..declare import Working
from ..units import quantity
from .aim import Machine, energy_for
from .pool import Shot, threshold_energy
from .ranges import Known, give

WIDE = 1.2e-3  # m, beam of the leveling pass (common practice, no source)
MORE = 1.15  # "slightly more" power of the leveling pass (common practice, no source)
_COMMON = "common practice, no source"
Energies = tuple[float, float, float]


def aimed_pass(working: Working, name: str, depth: float, shot: Shot, one: Known, machine: Machine) -> Energies:
    """Energy with its range by the unknowns; pulse length, spot and rate by what is common. Returns the energies."""
    a, f = one.absorptivity, one.efficiency
    # A poor conductor melts sooner, but where the pulse is short for the depth it needs more to get there.
    metals = {id(metal): metal for metal in (one.poor, one.nominal, one.good)}.values()
    low = min(energy_for(depth, shot, metal, a.high, f.high) for metal in metals)
    wanted = max(energy_for(depth, shot, metal, a.low, f.low) for metal in metals)
    high = min(wanted, machine.max_energy, machine.max_power * shot.duration)
    working.note(
        f"{name.capitalize()}: energy that melts {depth * 1e3:.2f} mm deep at {shot.duration * 1e3:.2g} ms "
        f"and a spot of {shot.spot * 1e3:.2g} mm",
        "found as a root of the one-pulse model",
        quantity(shot.energy, "J"),
        "J",
    )
    energies = (shot.energy, min(low, shot.energy), max(high, shot.energy))
    note = "the high end is what the machine gives at this pulse length" if wanted > high * 1.001 else ""
    give(working, f"{name}_energy", energies, "J", note)
    longest = min(shot.duration * 1.5, machine.duration_max)
    durations = (shot.duration, max(shot.duration / 1.5, machine.duration_min), longest)
    give(working, f"{name}_duration", [each * 1e3 for each in durations], "ms")
    spots = (shot.spot, max(shot.spot / 1.25, machine.spot_min), min(shot.spot * 1.25, machine.spot_max))
    give(working, f"{name}_spot", [each * 1e3 for each in spots], "mm")
    _rate(working, name, shot.energy * a.high, (0.5, 1.0) if name == "tack" else (1.0, 4.0))
    return energies


def leveling_pass(working: Working, weld: Shot, energies: Energies, one: Known, machine: Machine) -> None:
    """Wider beam, slightly more power: common practice, held against the model."""
    spot = min(max(WIDE, weld.spot), machine.spot_max)
    most = min(machine.max_energy, machine.max_power * weld.duration)
    level = [min(each * MORE, most) for each in energies]
    working.step(
        "Leveling: slightly more power than the weld (common practice, no source)",
        "more * energy",
        "J",
        more=quantity(MORE),
        energy=quantity(energies[0], "J"),
    )
    melts = threshold_energy(replace(weld, spot=spot), one.nominal, one.absorptivity.value)
    note = _COMMON
    if level[0] < melts:
        note += f"; by the model cold metal needs {melts:.0f} J to melt so wide, so level while it is warm"
        level[2] = max(level[2], min(1.1 * melts, most))
    give(working, "leveling_energy", level, "J", note)
    working.result("leveling_duration", quantity(weld.duration * 1e3, "ms"))
    spots = (spot, max(0.8 * spot, machine.spot_min), min(1.25 * spot, machine.spot_max))
    give(working, "leveling_spot", [each * 1e3 for each in spots], "mm", _COMMON)
    _rate(working, "leveling", level[0] * one.absorptivity.high, (2.0, 6.0))


def _rate(working: Working, name: str, warmth: float, ends: tuple[float, float]) -> None:
    """Pulses a second: slow enough to watch, and not over about 10 W into a small piece."""
    high = max(0.5, min(ends[1], 10 / warmth))
    low = min(ends[0], high)
    give(working, f"{name}_rate", ((low * high) ** 0.5, low, high), "Hz", _COMMON)
