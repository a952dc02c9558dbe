"""The energy that melts to a wanted depth, and the pulse a machine can give for it."""

from __future__ import annotations

import math
from dataclasses import dataclass

from .pool import Material, Shot, boiling_beta, conducted, groups, reach, threshold_energy

CALM = 2e-3  # s; shorter pulses throw metal out (common practice, no source)


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
    asked = reach(depth / a, fourier, thick, metal)
    if asked.at(edge):
        low, high = 1.0, edge
        for _ in range(7):
            middle = (low + high) / 2
            if asked.at(middle):
                high = middle
            else:
                low = middle
        return (low + high) / 2 * first
    calm, radius, _, _ = conducted(fourier, thick, edge, metal)
    return edge * first * math.exp(_past_boiling(depth, calm * a, radius * a, edge * first, metal, efficiency))


def _past_boiling(
    depth: float, calm: float, radius: float, edge_energy: float, metal: Material, efficiency: float
) -> float:
    """ln of energy over that of boiling for a depth beyond ``calm``: the geometric mean of ``pool`` turned around.

    With x that logarithm, L its span and p the balance's depth at x = 0 over ``calm`` (all as logarithms), the depth
    over ``calm`` is x/L·(p + x) up to x = L, then p + x.
    """
    span = math.log(3 * metal.boiling_scaled / boiling_beta(metal))
    balance = 8 * efficiency * edge_energy / (math.pi * (2 * radius) ** 2 * metal.melt_heat)
    p, wanted = math.log(balance / calm), math.log(depth / calm)
    x = (math.sqrt(p * p + 4 * span * wanted) - p) / 2
    return min(x if x <= span else wanted - p, math.log(1e4))


def choose(
    depth: float,
    spot: float,
    thickness: float,
    metal: Material,
    absorptivity: float,
    efficiency: float,
    machine: Machine,
) -> Shot | None:
    """The calmest pulse the machine can give that melts ``depth``; None if there is none.

    A pulse about as long as heat takes across the spot (Fo = 1) melts deep for its energy, so lengths go up from
    there, and spots down from the wanted one. Of all that the machine can give, the one of least burden is taken.
    """
    spot = min(max(spot, machine.spot_min), machine.spot_max)
    best, least = None, math.inf
    for width in [max(spot * share, machine.spot_min) for share in (1, 0.8, 0.64, 0.5, 0.4, 0.3)]:
        calm = (width / 2) ** 2 / metal.diffusivity
        for stretch in range(12):
            duration = min(max(calm * 1.6**stretch, machine.duration_min), machine.duration_max)
            trial = Shot(1.0, duration, width, thickness)
            most = min(machine.max_energy, machine.max_power * duration)
            bound = _least(depth, trial, metal, absorptivity)
            hopeless = _burden(trial.with_energy(bound), spot, machine) >= least
            if hopeless and duration > CALM:
                break  # a longer pulse needs more still
            if bound <= most and not hopeless:
                shot = trial.with_energy(energy_for(depth, trial, metal, absorptivity, efficiency))
                if machine.can(shot) and (burden := _burden(shot, spot, machine)) < least:
                    best, least = shot, burden
            if duration >= machine.duration_max:
                break
        if width <= machine.spot_min:
            break
    return best


def _burden(shot: Shot, spot: float, machine: Machine) -> float:
    """What speaks against a pulse: its energy, a spot smaller than wanted (a keyhole that traps gas), a pulse under
    2 ms (spatter), a machine near its end (weights: common practice, no source)."""
    used = max(shot.energy / machine.max_energy, shot.energy / shot.duration / machine.max_power)
    return shot.energy * (spot / shot.spot) ** 3 * max(1.0, CALM / shot.duration) * (1 + 2 * max(0.0, used - 0.55))


def _least(depth: float, shot: Shot, metal: Material, absorptivity: float) -> float:
    """Energy that ``energy_for`` can't be under: the first mark, or boiling where conduction does not reach."""
    first, edge = threshold_energy(shot, metal, absorptivity), boiling_beta(metal)
    fourier, thick, _ = groups(shot, metal)
    asked = reach(min(depth, 0.97 * shot.thickness) / (shot.spot / 2), fourier, thick, metal)
    return first if asked.at(edge) else edge * first


def power_wanted(
    depth: float, thickness: float, metal: Material, absorptivity: float, efficiency: float, machine: Machine
) -> Shot:
    """What would do it: the pulse at the smallest spot and the longest time, whatever the machine's limits."""
    shot = Shot(1.0, machine.duration_max, machine.spot_min, thickness)
    return shot.with_energy(energy_for(depth, shot, metal, absorptivity, efficiency))
