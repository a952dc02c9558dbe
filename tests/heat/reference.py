"""An independent solution of one pulse: temperature formulation, apparent heat capacity, SciPy's BDF in time.

Nothing of the handbook's solver is used: other unknown (θ, not enthalpy), other latent heat (a smooth bump of heat
capacity), other grid, other time integration.
"""

from __future__ import annotations

import math

import numpy as np
from numpy.typing import NDArray
from scipy.integrate import solve_ivp  # type: ignore[import-untyped]
from scipy.sparse import diags  # type: ignore[import-untyped]

Array = NDArray[np.float64]


def melt(
    fourier: float,
    flux: float,
    ste: float,
    kappa: float,
    melting_range: float,
    thickness: float = math.inf,
    n: int = 26,
) -> tuple[float, float, float]:
    """Depth and radius in spot radii, and θ at the center of the surface, at the end of the pulse."""
    reach = math.sqrt(fourier)
    far_z, far_r = min(thickness, 4.2 * reach + 0.3), 1 + 4.2 * reach
    z = far_z * np.sinh(2.2 * np.linspace(0, 1, n + 1)) / math.sinh(2.2)
    inner = int(0.55 * n)
    r_in = 1 - np.linspace(1, 0, inner + 1) ** 1.25
    step = r_in[-1] - r_in[-2]
    out = int(0.6 * n)
    grow = np.linspace(0, 1, out + 1)[1:]
    span = far_r - 1
    slope = min(step * out / span, 1.0)
    r = np.concatenate([r_in, 1 + span * (slope * grow + (1 - slope) * grow**3)])
    zc, rc = (z[1:] + z[:-1]) / 2, (r[1:] + r[:-1]) / 2
    dz, area = np.diff(z), np.diff(r**2) / 2
    shape = (len(dz), len(area))
    volume = dz[:, None] * area[None, :]
    heat_in = np.zeros(shape)
    heat_in[0] = flux * area * (rc < 1)
    width = melting_range / 4  # the bump of latent heat has this standard deviation

    def conductivity(theta: Array) -> Array:
        return 1 + (kappa - 1) * np.clip((theta - 1) / melting_range + 0.5, 0, 1)

    def slope_of(_: float, flat: Array) -> Array:
        theta = flat.reshape(shape)
        k = conductivity(theta)
        gain = heat_in.copy()
        # The temperature at a face shared by cells of unlike conductivity: harmonic mean.
        half = dz[:, None] / 2 / k
        flow = (theta[:-1] - theta[1:]) / (half[:-1] + half[1:]) * area[None, :]
        gain[:-1] -= flow
        gain[1:] += flow
        half_r = np.diff(r)[None, :] / 2 / k
        flow = (theta[:, :-1] - theta[:, 1:]) / (half_r[:, :-1] + half_r[:, 1:]) * r[1:-1] * dz[:, None]
        gain[:, :-1] -= flow
        gain[:, 1:] += flow
        capacity = 1 + np.exp(-0.5 * ((theta - 1) / width) ** 2) / (math.sqrt(2 * math.pi) * width * ste)
        return np.asarray((gain / volume / capacity).ravel())

    size, m = len(dz) * len(area), len(area)
    pattern = diags([1.0, 1.0, 1.0, 1.0, 1.0], [0, 1, -1, m, -m], shape=(size, size))
    done = solve_ivp(
        slope_of, (0, fourier), np.zeros(size), method="BDF", jac_sparsity=pattern, rtol=2e-4, atol=2e-5,
        max_step=fourier / 60,
    )  # fmt: skip
    theta = done.y[:, -1].reshape(shape)
    surface = theta[0] + flux * dz[0] / 2 / conductivity(theta[0]) * (rc < 1)
    return _crossing(theta[:, 0], zc, float(surface[0])), _crossing(surface, rc, float(surface[0])), float(surface[0])


def _crossing(theta: Array, place: Array, first: float) -> float:
    values, places = np.concatenate([[first], theta]), np.concatenate([[0.0], place])
    below = np.nonzero(values < 1)[0]
    if not below.size:
        return float(places[-1])
    i = int(below[0])
    if i == 0:
        return 0.0
    return float(places[i - 1] + (values[i - 1] - 1) / (values[i - 1] - values[i]) * (places[i] - places[i - 1]))
