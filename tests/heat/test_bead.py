"""Wire end to bead against two one-dimensional solutions whose melt is stirred evenly and stays at melting.

One keeps enthalpies in fixed cells and puts the heat in at the front; the other rides on the front itself and solves
for the temperature of the solid with SciPy. They share no code and no grid.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from functools import partial

import numpy as np
import pytest
from numpy.typing import NDArray
from scipy.integrate import solve_ivp  # type: ignore[import-untyped]
from scipy.optimize import brentq  # type: ignore[import-untyped]

from calculators.heat.closed_forms import ierfc


def melted(flux: float, fourier: float, ste: float, cells: int = 40) -> float:
    """Length melted (1 = the length aimed at) after Fo with the heat put in at the front of the melt."""
    size = 1 / cells
    count = int((1 + 5 * math.sqrt(fourier)) / size)
    enthalpy, full = np.zeros(count), 1 + 1 / ste
    steps = math.ceil(fourier / (0.4 * size * size))
    step = fourier / steps
    for _ in range(steps):
        theta = np.minimum(enthalpy, 1.0)
        flow = np.concatenate([[0.0], (theta[:-1] - theta[1:]) / size, [0.0]])
        enthalpy += (flow[:-1] - flow[1:]) / size * step
        front = int(np.argmax(enthalpy < full))
        enthalpy[front] += flux * step / size
    return float(np.clip((enthalpy - 1) * ste, 0, 1).sum() * size)


def melted_on_the_front(flux: float, fourier: float, ste: float, nodes: int = 80) -> float:
    """Length melted after Fo: solid heated from its end to melting (closed form), then eaten away from the front."""
    start = math.pi / (4 * flux * flux)
    if start >= fourier:
        return 0.0
    x = (6 * math.sqrt(fourier) + 1) * np.sinh(3.5 * np.linspace(0, 1, nodes + 1)) / math.sinh(3.5)
    h, g = np.diff(x)[:-1], np.diff(x)[1:]
    reach = 2 * math.sqrt(start)
    warm = np.array([flux * reach * ierfc(place / reach) for place in x])

    def slope(_: float, state: NDArray[np.float64]) -> NDArray[np.float64]:
        u = np.concatenate([[1.0], state[1:], [0.0]])
        at_front = (u[1] - 1) * x[2] / (x[1] * (x[2] - x[1])) - (u[2] - 1) * x[1] / (x[2] * (x[2] - x[1]))
        speed = max(0.0, ste * (flux + at_front))
        bend = 2 * (u[2:] * h - u[1:-1] * (h + g) + u[:-2] * g) / (h * g * (h + g))
        tilt = (u[2:] * h**2 - u[:-2] * g**2 + u[1:-1] * (g**2 - h**2)) / (h * g * (h + g))
        return np.concatenate([[speed], bend + speed * tilt])

    state = np.concatenate([[0.0], warm[1:-1]])
    done = solve_ivp(slope, (start, fourier), state, method="LSODA", rtol=1e-6, atol=1e-8)
    return float(done.y[0, -1])


def formula(fourier: float, ste: float) -> float:
    """Energy over that which only warms the length to melting."""
    share = ste / (1 + ste)
    return 1.11 * (1 + 1 / ste) * (1 + share * fourier / (1 + 0.885 * math.sqrt(fourier)))


def energy(solve: Callable[[float, float, float], float], fourier: float, ste: float) -> float:
    """Energy that melts the whole length by a solution."""
    about = formula(fourier, ste) / fourier
    flux = brentq(lambda one: solve(one, fourier, ste) - 1, 0.85 * about, 1.02 * about, xtol=1e-4 * about)
    return float(flux) * fourier


@pytest.mark.parametrize("ste", [1.9, 3.0])
@pytest.mark.parametrize("fourier", [0.2, 1.0, 5.0])
def test_formula_lies_a_little_above_a_bead_at_melting(ste: float, fourier: float) -> None:
    """5 to 9 % above, which is room for a bead hotter than melting; the page says so. 40 cells are 1 to 2 % off."""
    assert 1.04 < formula(fourier, ste) / energy(melted, fourier, ste) < 1.1


@pytest.mark.parametrize("ste", [1.5, 4.0])
@pytest.mark.parametrize("fourier", [0.2, 0.6, 2.0, 5.0])
def test_the_second_solution_says_the_same(ste: float, fourier: float) -> None:
    """From 80 to 300 nodes it moves by 0.1 %: 5.1 to 8.9 % over the whole span of Fo and every metal's Ste."""
    ratio = formula(fourier, ste) / energy(melted_on_the_front, fourier, ste)
    assert 1.05 < ratio < 1.0905
    assert ratio * 0.915 < 1, "the low end of the answer is a bead at melting"


def test_the_two_solutions_meet_as_cells_get_smaller() -> None:
    """Fo 1, Ste 3: 1.4837, 1.4739, 1.4715 with 20, 40, 80 cells; the other gives 1.4691."""
    coarse = energy(partial(melted, cells=20), 1.0, 3.0)
    fine = energy(partial(melted, cells=40), 1.0, 3.0)
    other = energy(melted_on_the_front, 1.0, 3.0)
    assert coarse > fine > other
    assert 2 * fine - coarse == pytest.approx(other, rel=5e-3)
