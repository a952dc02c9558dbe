"""Closed forms for a uniform disk source, without melting. Scaled as in Carslaw & Jaeger (1959), §10.5.

Lengths by the spot radius a, temperature rise by q·a/k, time by a²/α: the Fourier number Fo = αt/a². A plate of
thickness H with an insulated back is the thick body with images of the source at 2nH.
"""

from __future__ import annotations

import math

_ROOT_PI = math.sqrt(math.pi)
_FAR = 5.5  # ierfc(5.5) is 1e-15 of ierfc(0)


def ierfc(x: float) -> float:
    """Integral of erfc from x to infinity; Carslaw & Jaeger (1959), App. II."""
    return math.exp(-x * x) / _ROOT_PI - x * math.erfc(x) if x < _FAR else 0.0


def axis_rise(depth: float, fourier: float) -> float:
    """Temperature rise on the axis at ``depth`` in a thick body after Fo, over q·a/k."""
    reach = 2 * math.sqrt(fourier)
    near = depth / reach
    if near >= _FAR:
        return 0.0
    far = math.sqrt(depth * depth + 1) / reach
    # ierfc twice, written out: the innermost sum of every answer.
    rise = math.exp(-near * near) / _ROOT_PI - near * math.erfc(near)
    return reach * (rise - (math.exp(-far * far) / _ROOT_PI - far * math.erfc(far) if far < _FAR else 0.0))


def plate_axis_rise(depth: float, fourier: float, thickness: float) -> float:
    """The same in a plate of ``thickness`` (spot radii; ``math.inf`` for a thick body), by images."""
    rise = axis_rise(depth, fourier)
    if thickness > 2 * _FAR * math.sqrt(fourier):
        return rise
    n = 1
    while True:
        pair = axis_rise(2 * n * thickness - depth, fourier) + axis_rise(2 * n * thickness + depth, fourier)
        rise += pair
        if pair < 1e-7 * rise:
            return rise
        n += 1


def steady_axis_rise(depth: float) -> float:
    """The rise on the axis after a very long time: √(1 + z²) − z."""
    return math.sqrt(1 + depth * depth) - depth
