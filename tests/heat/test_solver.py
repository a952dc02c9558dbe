"""The enthalpy solver against closed forms, itself on finer grids, and figures computed twice elsewhere."""

from __future__ import annotations

import math

import numpy as np
import pytest

from build_scripts.heat_model.solver import Pulse, Run, make_grid
from calculators.heat.closed_forms import axis_rise, plate_axis_rise
from tests.heat.reference import melt


@pytest.mark.parametrize(
    ("fourier", "ste", "kappa", "depth", "off", "surface"),
    [(0.3, 2.6, 0.7, 0.279, 0.006, None), (1.0, 2.3, 0.5, 0.42, 0.01, 2.771)],
)
def test_depths_computed_twice(
    fourier: float, ste: float, kappa: float, depth: float, off: float, surface: float | None
) -> None:
    """FV1 and FV2: β = 2, melting range 0.06, by another enthalpy solver and by FiPy 4.0.3."""
    run = Run([Pulse(2 / axis_rise(0, fourier), ste, kappa, 0.06)], make_grid(fourier, fine=1.6))
    run.advance(fourier)
    pool = run.pools()[0]
    assert pool.depth == pytest.approx(depth, abs=off)
    if surface is not None:
        assert pool.surface == pytest.approx(surface, abs=0.01)


@pytest.mark.parametrize("thickness", [math.inf, 0.5])
def test_without_melting_it_is_the_closed_form(thickness: float) -> None:
    run = Run([Pulse(0.1, 2.0, 0.7)], make_grid(1.0, thickness))
    run.advance(1.0)
    assert run.pools()[0].surface / 0.1 == pytest.approx(plate_axis_rise(0, 1.0, thickness), rel=2e-3)


def test_energy_is_conserved_and_small_steps_agree() -> None:
    """Super-steps against plain explicit steps on one grid, with the beam on and after it."""
    pulses = [Pulse(beta / axis_rise(0, 0.5), 2.2, 0.7) for beta in (1.5, 3.0)]
    fast, plain = (Run(pulses, make_grid(0.5, fine=0.7)) for _ in range(2))
    for run, stages in ((fast, 0), (plain, 1)):
        run.advance(0.5, stages=stages)
        assert all(abs(pool.energy_error) < 1e-9 for pool in run.pools())
        run.advance(0.6, beam=False, stages=stages)
        assert all(abs(pool.energy_error) < 1e-9 for pool in run.pools(beam=False))
    for one, two in zip(fast.pools(False), plain.pools(False), strict=True):
        assert one.depth == pytest.approx(two.depth, rel=0.01, abs=1e-3)
        assert one.surface == pytest.approx(two.surface, rel=2e-3)
    assert float(np.abs(fast.enthalpy - plain.enthalpy).max()) < 0.02 * float(plain.enthalpy.max())


@pytest.mark.parametrize(
    ("fourier", "beta", "ste", "kappa", "dm", "thickness"),
    [
        (0.3, 2, 2.6, 0.7, 0.06, math.inf),
        (1, 2.5, 2, 0.9, 0.06, 1.0),
        (5, 1.6, 3, 1.2, 0.06, 1.2),
        (0.1, 3, 2, 0.6, 0.08, math.inf),
    ],
)
def test_independent_solution(
    fourier: float, beta: float, ste: float, kappa: float, dm: float, thickness: float
) -> None:
    """SciPy's BDF on another formulation; its own grid error is about 2 % in depth at this size."""
    flux = beta / plate_axis_rise(0, fourier, thickness)
    run = Run([Pulse(flux, ste, kappa, dm)], make_grid(fourier, thickness, 1.5))
    run.advance(fourier)
    pool = run.pools()[0]
    depth, radius, surface = melt(fourier, flux, ste, kappa, dm, thickness, n=36)
    assert pool.depth == pytest.approx(depth, rel=0.03)
    assert pool.radius == pytest.approx(radius, rel=0.01)
    assert pool.surface == pytest.approx(surface, rel=0.01)
