"""One pulse on metal: what it melts, in which way, how hot the surface gets.

Scaled groups (Carslaw & Jaeger 1959, §10.5): Fo = αt/a², β = Q/Qm where Q = q·a/(kΔT) is the flux and Qm the flux
that just melts the center by the end of the pulse. β < 1 melts nothing; up to θb/1.1 heat is only conducted; from
θb to 3θb the surface boils and is pressed in more and more; beyond, the weld is a vapor depression, and only an
energy balance with a measured melting efficiency says how deep. SI units throughout.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from functools import lru_cache

from .closed_forms import plate_axis_rise
from .melt_table import LARGEST_BETA, Node, melt_table

EFFICIENCY = 0.11  # middle of the guess 0.05 to 0.25, for a weld that no one has sectioned yet
EFFICIENCY_RANGE = (0.05, 0.25)


@dataclass(frozen=True)
class Material:
    """Heat figures in SI; temperatures in °C, ``melting`` the middle of the melting range."""

    density: float
    heat_capacity: float
    latent_heat: float
    conductivity: float
    conductivity_liquid: float
    melting: float
    boiling: float
    start: float = 20.0

    @property
    def rise(self) -> float:
        """From the start to melting, K."""
        return self.melting - self.start

    @property
    def diffusivity(self) -> float:
        """α = k/(ρc), m²/s."""
        return self.conductivity / (self.density * self.heat_capacity)

    @property
    def ste(self) -> float:
        """Stefan number cΔT/L."""
        return self.heat_capacity * self.rise / self.latent_heat

    @property
    def kappa(self) -> float:
        """Conductivity of the liquid over that of the solid."""
        return self.conductivity_liquid / self.conductivity

    @property
    def boiling_scaled(self) -> float:
        """θb: the rise to boiling over the rise to melting."""
        return (self.boiling - self.start) / self.rise

    @property
    def melt_heat(self) -> float:
        """Heat that melts a cubic meter from the start: ρ(cΔT + L), J/m³."""
        return self.density * (self.heat_capacity * self.rise + self.latent_heat)


@dataclass(frozen=True)
class Shot:
    """A square pulse: J, s, spot diameter in m, metal thickness in m (``math.inf`` for thick)."""

    energy: float
    duration: float
    spot: float
    thickness: float = math.inf

    def with_energy(self, energy: float) -> Shot:
        """The same pulse at another energy."""
        return replace(self, energy=energy)


@dataclass(frozen=True)
class Pool:
    """Depth and width in m, surface in °C; ``regime`` is no melt, conduction, transition or penetration."""

    regime: str
    beta: float
    depth: float
    width: float
    surface: float
    deepest: float
    through: bool


def groups(shot: Shot, metal: Material) -> tuple[float, float, float]:
    """Fo, H and the closed-form rise at the center over q·a/k."""
    return _groups(shot.duration, shot.spot, shot.thickness, metal)


@lru_cache(maxsize=512)
def _groups(duration: float, spot: float, thickness: float, metal: Material) -> tuple[float, float, float]:
    a = spot / 2
    fourier, thick = metal.diffusivity * duration / a**2, thickness / a
    return fourier, thick, plate_axis_rise(0.0, fourier, thick)


def beta_of(shot: Shot, metal: Material, absorptivity: float) -> float:
    """β: the axis temperature without melting at the end of the pulse, over that of melting."""
    a = shot.spot / 2
    _, _, rise = groups(shot, metal)
    flux = absorptivity * shot.energy / shot.duration / (math.pi * a * a)
    return flux * a / (metal.conductivity * metal.rise) * rise


def threshold_energy(shot: Shot, metal: Material, absorptivity: float, beta: float = 1.0) -> float:
    """The energy of the pulse that gives this β (1: the first melt mark), J."""
    return beta / beta_of(shot.with_energy(1.0), metal, absorptivity)


def boiling_beta(metal: Material) -> float:
    """β up to which heat is only conducted."""
    return max(1.05, min(metal.boiling_scaled / 1.1, LARGEST_BETA))


@lru_cache(maxsize=512)
def conducted(fourier: float, thick: float, beta: float, metal: Material) -> tuple[float, float, float, float]:
    """Depth and radius in spot radii, θ at the surface, later growth of the depth; 1 ≤ β ≤ 5.5."""
    rise = plate_axis_rise(0.0, fourier, thick)
    node = _node(fourier, thick, beta, metal)
    depth = _depth(fourier, thick, rise, _front(node, beta) * rise)
    return depth, _radius(node, fourier, beta), 1 + node.surface / metal.kappa * (beta - 1), max(node.after, 0.0)


def radius(fourier: float, thick: float, beta: float, metal: Material) -> float:
    """The radius of ``conducted`` without looking for the depth."""
    return _radius(_node(fourier, thick, beta, metal), fourier, beta)


class _Reach:
    """Whether heat that is only conducted melts to one depth (spot radii): no root is needed to know that."""

    def __init__(self, depth: float, fourier: float, thick: float, metal: Material) -> None:
        self.groups, self.metal = (fourier, thick), metal
        self.share = plate_axis_rise(depth, fourier, thick) / plate_axis_rise(0.0, fourier, thick)

    def at(self, beta: float) -> bool:
        """The pool of this β ends there or deeper."""
        return self.share >= _front(_node(*self.groups, beta, self.metal), beta)


@lru_cache(maxsize=256)
def reach(depth: float, fourier: float, thick: float, metal: Material) -> _Reach:
    """A question asked at many β: whether conduction alone melts as deep as ``depth`` spot radii."""
    return _Reach(depth, fourier, thick, metal)


def _node(fourier: float, thick: float, beta: float, metal: Material) -> Node:
    return melt_table().at(max(fourier, 1e-6), beta, metal.ste, metal.kappa, max(thick, 1e-6))


def _front(node: Node, beta: float) -> float:
    """What the closed form without melting gives at the front, over its value at the center of the surface."""
    return (1 + min(node.hold, 1.0) * (beta - 1)) / beta


def _radius(node: Node, fourier: float, beta: float) -> float:
    wide = max(0.0, 1 + node.reach * math.sqrt(fourier / (1 + fourier)))
    return wide * min(1.0, math.sqrt(max(beta - 1, 0.0) / 0.07))  # below the first node the pool shrinks to nothing


def _depth(fourier: float, thick: float, rise: float, wanted: float) -> float:
    """Depth at which the closed form falls to ``wanted``: a bracket, then regula falsi (Illinois)."""
    if wanted >= rise:
        return 0.0
    near, f_near = 0.0, rise - wanted
    far = min(thick, 0.5 * min(1.0, math.sqrt(fourier)))
    while (f_far := plate_axis_rise(far, fourier, thick) - wanted) >= 0:
        if far >= thick:
            return far
        near, f_near = far, f_far
        far = min(thick, 2 * far)
    middle = far
    for _ in range(40):
        middle = (near * f_far - far * f_near) / (f_far - f_near)
        f = plate_axis_rise(middle, fourier, thick) - wanted
        if abs(f) < 2e-6 * rise or far - near < 1e-7:
            break
        if f > 0:
            near, f_near, f_far = middle, f, f_far / 2
        else:
            far, f_far, f_near = middle, f, f_near / 2
    return middle


def pool(shot: Shot, metal: Material, absorptivity: float, efficiency: float = EFFICIENCY) -> Pool:
    """What one pulse melts. ``efficiency`` counts only where the surface boils."""
    fourier, thick, _ = groups(shot, metal)
    a = shot.spot / 2
    beta = beta_of(shot, metal, absorptivity)
    if beta < 1:
        return Pool("no melt", beta, 0.0, 0.0, metal.start + beta * metal.rise, 0.0, False)
    edge = boiling_beta(metal)
    depth, radius, surface, after = conducted(fourier, thick, min(beta, edge), metal)
    theta = min(max(surface, 1.0), metal.boiling_scaled)
    deepest = min(depth * (1 + after), thick)
    regime = "conduction"
    if beta > edge:
        share = min(1.0, math.log(beta / edge) / math.log(3 * metal.boiling_scaled / edge))
        regime = "transition" if share < 1 else "penetration"
        width = max(2 * radius * a, 1e-9)
        balance = 8 * shot.energy * efficiency / (math.pi * width**2 * metal.melt_heat) / a
        depth = depth ** (1 - share) * max(depth, balance) ** share if depth > 0 else balance * share
        depth = min(depth, thick)
        deepest = max(deepest, depth)
        theta = metal.boiling_scaled
    return Pool(
        regime,
        beta,
        depth * a,
        2 * radius * a,
        metal.start + theta * metal.rise,
        deepest * a,
        depth >= 0.999 * thick,
    )
