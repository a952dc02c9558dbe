"""Closed forms of Carslaw & Jaeger (1959), values recomputed with math.erfc and by two numerical solutions."""

from __future__ import annotations

import math

import pytest
from scipy.integrate import quad  # type: ignore[import-untyped]

from calculators.heat.closed_forms import axis_rise, ierfc, plate_axis_rise, steady_axis_rise


@pytest.mark.parametrize(
    ("x", "value"),
    [(0, 0.56419), (0.1, 0.469822), (0.2, 0.386608), (0.5, 0.199641), (1, 0.050255), (1.5, 0.008623), (2, 0.000978)],
)
def test_ierfc(x: float, value: float) -> None:
    """CJ1: Carslaw & Jaeger, App. II (definition)."""
    assert ierfc(x) == pytest.approx(value, abs=1e-6)
    assert ierfc(x) == pytest.approx(quad(math.erfc, x, math.inf)[0], abs=1e-9)


@pytest.mark.parametrize(
    ("fourier", "value"), [(0.01, 0.112838), (0.1, 0.352882), (1, 0.729097), (10, 0.911164), (100, 0.971802)]
)
def test_disk_source_center(fourier: float, value: float) -> None:
    """CJ2: §10.5."""
    assert axis_rise(0, fourier) == pytest.approx(value, abs=1e-5)


def test_steady_at_one_radius() -> None:
    """CJ3: √2 − 1, and the long time goes there."""
    assert steady_axis_rise(1) == pytest.approx(0.414214, abs=1e-6)
    assert axis_rise(1, 1e8) == pytest.approx(0.414214, abs=1e-4)


@pytest.mark.parametrize(("fourier", "value"), [(0.1, 0.360388), (1, 1.130578), (10, 2.228094)])
def test_plate_by_images(fourier: float, value: float) -> None:
    """CJ4: plate 0.5 spot radii thick, insulated back."""
    assert plate_axis_rise(0, fourier, 0.5) == pytest.approx(value, abs=1e-5)


def test_fine_gold_without_melting() -> None:
    """CJ5: 500 W absorbed, 0.5 mm, 5 ms, k = 318, ρ = 19300, c = 129 at 20 °C."""
    k, alpha, a = 318.0, 318 / (19300 * 129), 0.25e-3
    fourier = alpha * 5e-3 / a**2
    rise = 500 / (math.pi * a**2) * a / k * axis_rise(0, fourier)
    assert alpha == pytest.approx(0.00012773, rel=0.002)
    assert fourier == pytest.approx(10.218, rel=0.002)
    assert rise == pytest.approx(1826.0, rel=0.002)
