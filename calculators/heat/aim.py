"""The energy that melts to a wanted depth, and the pulse a machine can give for it."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace

from .pool import Material, Shot, boiling_beta, conducted, groups, threshold_energy


@dataclass(frozen=True)
class Machine:
    """What a machine can do: J, W, m, s."""

    max_energy: float
    max_power: float
    spot_min: float
    spot_max: float
    duration_min: float
    duration_max: float

    def can(self, shot: Shot) -> bool:
        """Whether energy and power of the pulse are within reach."""
        return shot.energy <= self.max_energy and shot.energy / shot.duration <= self.max_power


def energy_for(depth: float, shot: Shot, metal: Material, absorptivity: float, efficiency: float) -> float:
    """Energy, J, of a pulse of this spot and length that melts ``depth`` m (at most 0.97 of the thickness)."""
    depth = min(depth, 0.97 * shot.thickness)
    first = threshold_energy(shot, metal, absorptivity)
    fourier, thick, _ = groups(shot, metal)
    a, edge = shot.spot / 2, boiling_beta(metal)
    calm, radius, _, _ = conducted(fourier, thick, edge, metal)
    if depth <= calm * a:
        low, high = 1.0, edge
        for _ in range(7):
            middle = (low + high) / 2
            if conducted(fourier, thick, middle, metal)[0] * a < depth:
                low = middle
            else:
                high = middle
        return (low + high) / 2 * first
    per_joule = 8 * efficiency / (math.pi * (2 * radius * a) ** 2 * metal.melt_heat)
    low, high = math.log(edge * first), math.log(1e4 * first)
    for _ in range(40):
        middle = (low + high) / 2
        energy = math.exp(middle)
        share = min(1.0, math.log(energy / first / edge) / math.log(3 * metal.boiling_scaled / edge))
        if (calm * a) ** (1 - share) * max(calm * a, per_joule * energy) ** share < depth:
            low = middle
        else:
            high = middle
    return math.exp((low + high) / 2)


def choose(
    depth: float,
    spot: float,
    thickness: float,
    metal: Material,
    absorptivity: float,
    efficiency: float,
    machine: Machine,
) -> Shot | None:
    """The shortest calm pulse the machine can give that melts ``depth``, with as wide a spot as it can; None if none.

    A pulse about as long as heat takes across the spot (Fo = 1) melts deep for its energy; where the power does not
    reach, a longer pulse or a smaller spot must do. Half the machine is kept in hand where that is possible.
    """
    spot = min(max(spot, machine.spot_min), machine.spot_max)
    spots = [spot] + [one * spot for one in (0.8, 0.64, 0.5, 0.4, 0.3) if one * spot > machine.spot_min * 1.02]
    for share, widths in ((0.55, spots[:2]), (0.75, spots), (1.0, [*spots, machine.spot_min])):
        held = replace(machine, max_energy=share * machine.max_energy, max_power=share * machine.max_power)
        for width in widths:
            shot = _at_spot(depth, width, thickness, metal, absorptivity, efficiency, held)
            if shot is not None:
                return shot
    return None


def _at_spot(
    depth: float,
    width: float,
    thickness: float,
    metal: Material,
    absorptivity: float,
    efficiency: float,
    machine: Machine,
) -> Shot | None:
    """The shortest pulse for a spot, from Fo = 1 up."""
    best = (width / 2) ** 2 / metal.diffusivity
    duration = min(max(best, machine.duration_min), machine.duration_max)
    while True:
        trial = Shot(1.0, duration, width, thickness)
        if _least(depth, trial, metal, absorptivity) <= min(machine.max_energy, machine.max_power * duration):
            shot = trial.with_energy(energy_for(depth, trial, metal, absorptivity, efficiency))
            if machine.can(shot):
                return shot
        if duration >= machine.duration_max:
            return None
        duration = min(duration * 1.8, machine.duration_max)


def _least(depth: float, shot: Shot, metal: Material, absorptivity: float) -> float:
    """Energy that ``energy_for`` can't be under: the first mark, or boiling where conduction does not reach."""
    first, edge = threshold_energy(shot, metal, absorptivity), boiling_beta(metal)
    fourier, thick, _ = groups(shot, metal)
    reaches = conducted(fourier, thick, edge, metal)[0] * shot.spot / 2 >= min(depth, 0.97 * shot.thickness)
    return first if reaches else edge * first


def power_wanted(
    depth: float, thickness: float, metal: Material, absorptivity: float, efficiency: float, machine: Machine
) -> Shot:
    """What would do it: the pulse at the smallest spot and the longest time, whatever the machine's limits."""
    shot = Shot(1.0, machine.duration_max, machine.spot_min, thickness)
    return shot.with_energy(energy_for(depth, shot, metal, absorptivity, efficiency))
