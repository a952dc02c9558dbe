"""Axisymmetric enthalpy finite-volume solver for one pulse on a plate or a thick body.

Scaled: lengths by the spot radius a, time by a²/α (so time is the Fourier number Fo = αt/a²), temperature
θ = (T − T0)/(Tm − T0), enthalpy by c(Tm − T0). A uniform disk of radius 1 puts in the flux Q = q·a/(k(Tm − T0)).
All other faces let no heat through. Solid conductivity is 1, liquid κ, linear between; the latent heat 1/Ste is
taken up evenly over a melting range dm wide around θ = 1.

The conductivity is carried by the Kirchhoff transform ψ = ∫k dθ, so a step is dH/dt = ∇²ψ(H). Time runs by the
explicit RKL2 super-steps of Meyer, Balsara & Aslam, J. Comput. Phys. 257 (2014) 594 (formulas from memory; the
grid study checks them against plain small steps). Several pulses on one grid are computed together.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

Array = NDArray[np.float64]


@dataclass(frozen=True)
class Pulse:
    """One case in scaled form; ``flux`` is Q, ``melting_range`` is dm (0.05 for a typical alloy)."""

    flux: float
    ste: float
    kappa: float
    melting_range: float = 0.05


@dataclass(frozen=True)
class Pool:
    """What is melted at one moment: depth on the axis and radius at the surface (spot radii), surface θ."""

    depth: float
    radius: float
    surface: float
    energy_error: float


@dataclass(frozen=True)
class Grid:
    """Faces across (r) and down (z); the edge of the spot lies on a face."""

    r: Array
    z: Array

    @property
    def r_centre(self) -> Array:
        """Centers of the rings."""
        middle: Array = (self.r[1:] + self.r[:-1]) / 2
        return middle

    @property
    def z_centre(self) -> Array:
        """Centers of the layers."""
        middle: Array = (self.z[1:] + self.z[:-1]) / 2
        return middle


def growing(first: float, length: float, ratio: float) -> Array:
    """Faces from 0 to ``length``: cells that start near ``first`` and grow by about ``ratio``."""
    count = max(4, math.ceil(math.log1p(length / first * (ratio - 1)) / math.log(ratio)))
    widths = ratio ** np.arange(count)
    faces: Array = np.concatenate([[0.0], np.cumsum(widths)]) * (length / widths.sum())
    return faces


def make_grid(fourier: float, thickness: float = math.inf, fine: float = 1.0) -> Grid:
    """A grid for a pulse that ends at ``fourier``. ``fine`` = 2 halves every cell; ``thickness`` in spot radii."""
    reach = math.sqrt(fourier)
    size = min(1.0, reach)
    ratio = 1 + 0.05 / fine
    deep = 5.0 * reach + 0.5 * size
    first = (0.03 if fourier < 2 else 0.04) * size / fine
    z = growing(min(first, thickness / 12 / fine), min(deep, thickness), ratio)
    outside = growing(1.6 * first, 5.0 * reach + size, ratio)
    inside = growing(1.6 * first, 1.0, 1 + 0.1 / fine)
    widest = 0.1 / fine
    if np.diff(inside).max() > widest:  # graded by the edge, then even to the middle
        kept = inside[:-1][np.diff(inside) <= widest]
        rest = 1.0 - kept[-1]
        inside = np.concatenate([kept, kept[-1] + np.linspace(0, rest, math.ceil(rest / widest) + 1)[1:]])
    return Grid(np.concatenate([(1 - inside)[::-1], 1 + outside[1:]]), z)


class Run:
    """Pulses of one length on one grid, computed side by side."""

    def __init__(self, pulses: list[Pulse], grid: Grid) -> None:
        self.grid = grid
        self.pulses = pulses

        def column(values: list[float]) -> Array:
            return np.array(values, dtype=float)[:, None, None]

        ste = column([one.ste for one in pulses])
        self.kappa = column([one.kappa for one in pulses])
        self.dm = column([one.melting_range for one in pulses])
        self.flux = column([one.flux for one in pulses])
        self.solid = 1 - self.dm / 2
        self.liquid = 1 + self.dm / 2 + 1 / ste
        ring = np.diff(grid.r**2) / 2  # area of a ring over 2π
        dz = np.diff(grid.z)
        self.down = ring[None, :] / np.diff(grid.z_centre)[:, None]
        self.across = dz[:, None] * (grid.r[1:-1] / np.diff(grid.r_centre))[None, :]
        self.volume = dz[:, None] * ring[None, :]
        self.heated = ring * (grid.r[1:] <= 1 + 1e-9)
        out = np.zeros_like(self.volume)
        out[:-1] += self.down
        out[1:] += self.down
        out[:, :-1] += self.across
        out[:, 1:] += self.across
        self.small_step = 1 / float((out / self.volume).max() * max(1.0, float(self.kappa.max())))
        self.enthalpy = np.zeros((len(pulses), len(dz), len(ring)))
        self.time = 0.0
        self.put_in = 0.0
        self._psi, self._f, self._gain = (np.empty_like(self.enthalpy) for _ in range(3))
        self._inverse = 1 / self.volume

    def rate(self, enthalpy: Array, out: Array, beam: bool) -> Array:
        """dH/dt into ``out``."""
        f, psi, gain = self._f, self._psi, self._gain
        np.subtract(enthalpy, self.solid, out=f)
        f /= self.liquid - self.solid
        np.clip(f, 0, 1, out=f)
        np.subtract(enthalpy, self.liquid, out=psi)
        np.maximum(psi, 0, out=psi)
        psi *= self.kappa
        psi += np.minimum(enthalpy, self.solid, out=gain)
        np.multiply(f, (self.kappa - 1) / 2, out=gain)
        gain += 1
        gain *= f
        gain *= self.dm
        psi += gain
        out.fill(0.0)
        flow = np.subtract(psi[:, :-1], psi[:, 1:], out=gain[:, :-1])
        flow *= self.down
        out[:, :-1] -= flow
        out[:, 1:] += flow
        flow = np.subtract(psi[:, :, :-1], psi[:, :, 1:], out=f[:, :, :-1])
        flow *= self.across
        out[:, :, :-1] -= flow
        out[:, :, 1:] += flow
        if beam:
            out[:, 0, :] += self.flux[:, 0] * self.heated
        out *= self._inverse
        return out

    def advance(self, until: float, beam: bool = True, stages: int = 0, least_steps: int = 60) -> None:
        """Go on to the time ``until``, with the beam on or off. ``stages`` = 1 takes plain explicit steps."""
        span = until - self.time
        if stages == 1:
            steps = math.ceil(span / (0.9 * self.small_step))
            work = np.empty_like(self.enthalpy)
            for _ in range(steps):
                self.enthalpy += self.rate(self.enthalpy, work, beam) * (span / steps)
        else:
            steps = least_steps
            needed = span / steps / (0.9 * self.small_step)
            stages = max(3, math.ceil((math.sqrt(9 + 16 * needed) - 1) / 2)) | 1
            for _ in range(steps):
                self._super_step(span / steps, stages, beam)
        self.time = until
        self.put_in += span if beam else 0.0

    def _super_step(self, step: float, stages: int, beam: bool) -> None:
        def b(j: int) -> float:
            return 1 / 3 if j < 2 else (j * j + j - 2) / (2 * j * (j + 1))

        w = 4 / (stages * stages + stages - 2)
        start = self.enthalpy
        first = self.rate(start, np.empty_like(start), beam)
        before, now = start, start + (b(1) * w * step) * first
        work, spare = np.empty_like(start), np.empty_like(start)
        for j in range(2, stages + 1):
            mu = (2 * j - 1) / j * b(j) / b(j - 1)
            nu = -(j - 1) / j * b(j) / b(j - 2)
            self.rate(now, work, beam)
            work *= mu * w * step
            np.multiply(first, -(1 - b(j - 1)) * mu * w * step, out=spare)
            work += spare
            np.multiply(now, mu, out=spare)
            work += spare
            np.multiply(before, nu, out=spare)
            work += spare
            np.multiply(start, 1 - mu - nu, out=spare)
            work += spare
            if before is start:
                before, now, work = now, work, np.empty_like(start)
            else:
                before, now, work = now, work, before
        self.enthalpy = now

    def pools(self, beam: bool = True) -> list[Pool]:
        """Pool of every pulse now."""
        found = []
        for index, pulse in enumerate(self.pulses):
            solid, liquid = float(self.solid[index, 0, 0]), float(self.liquid[index, 0, 0])
            enthalpy = self.enthalpy[index]
            share = (enthalpy - solid) / (liquid - solid)
            depth = _front(np.clip(share[:, 0], 0, 1), self.grid.z)
            surface = self._surface(enthalpy, solid, liquid, pulse, beam)
            radius = _outward(surface, self.grid.r_centre)
            stored = float((enthalpy * self.volume).sum())
            given = pulse.flux * self.put_in / 2
            found.append(Pool(depth, radius, float(surface[0]), stored / given - 1 if given else 0.0))
        return found

    def _surface(self, enthalpy: Array, solid: float, liquid: float, pulse: Pulse, beam: bool) -> Array:
        """θ at the surface itself, half a cell above the center of the top layer."""
        top = enthalpy[0]
        share = np.clip((top - solid) / (liquid - solid), 0, 1)
        theta = np.minimum(top, solid) + pulse.melting_range * share + np.maximum(top - liquid, 0)
        conductivity = 1 + (pulse.kappa - 1) * share
        half = self.grid.z[1] / 2
        flux = pulse.flux * (self.grid.r[1:] <= 1 + 1e-9) if beam else 0.0
        surface: Array = theta + flux * half / conductivity
        return surface


def _front(share: Array, faces: Array) -> float:
    """Depth of the melt in a column of liquid shares.

    The summed share moves evenly with the front where a reading between cell centers would jump; it lies within
    1 % of the isotherm θ = 1 for melting ranges up to 0.1 (grid study).
    """
    return float((share * np.diff(faces)).sum()) if share[0] >= 0.5 else 0.0


def _outward(surface: Array, centre: Array) -> float:
    """Radius where θ at the surface falls to 1."""
    above = np.nonzero(surface >= 1)[0]
    if not above.size:
        return 0.0
    i = int(above[-1])
    part = (surface[i] - 1) / (surface[i] - surface[i + 1])
    return float(centre[i] + part * (centre[i + 1] - centre[i]))
