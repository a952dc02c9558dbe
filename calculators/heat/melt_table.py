"""The melt table: what the enthalpy solver found at the nodes of a grid of scaled pulses, and values between them.

Axes: Fourier number Fo, β (the axis temperature a pulse would reach without melting, over that of melting), Stefan
number Ste, liquid over solid conductivity κ, and plate thickness H in spot radii. Kept at each node:

``hold``    how much of the overshoot β − 1 the melting itself eats: the front lies where the closed form without
            melting gives 1 + hold·(β − 1)
``reach``   (radius − 1)/√(Fo/(1 + Fo)), radius of the pool at the surface in spot radii
``surface`` κ·(θ − 1)/(β − 1) of the surface at the end of the pulse
``after``   how much deeper the pool still gets after the pulse, as a share

The text file is written by ``build_scripts/heat_model/make_table.py``; its head records parameters and SHA-256.
"""

from __future__ import annotations

import math
from bisect import bisect_left
from collections.abc import Sequence
from dataclasses import dataclass
from functools import lru_cache
from importlib.resources import files
from operator import mul
from typing import NamedTuple

QUANTITIES = ("hold", "reach", "surface", "after")
DIGITS = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz!#$%&()*+,-./:;<=>?@[]^_`{|}~"
BASE = len(DIGITS)
LARGEST_BETA = 5.5


class Node(NamedTuple):
    """The kept quantities, at a node or between nodes."""

    hold: float
    reach: float
    surface: float
    after: float


@dataclass(frozen=True)
class MeltTable:
    """Nodes of every axis (in the variable interpolated over) and the rows: all β nodes with all quantities."""

    axes: tuple[tuple[float, ...], ...]  # ln Ste, ln κ, 1/H, ln Fo, √(β − 1)
    rows: tuple[tuple[float, ...], ...]

    def at(self, fourier: float, beta: float, ste: float, kappa: float, thickness: float) -> Node:
        """Interpolated values; outside the nodes the nearest edge counts (β must not exceed 5.5)."""
        row, width = _row(fourier, ste, kappa, thickness), len(QUANTITIES)
        places = _beta_weights(beta)
        return Node(*_mixed([weight for _, weight in places], [row[n * width : (n + 1) * width] for n, _ in places]))

    def for_metal(self, ste: float, kappa: float, k: int, m: int) -> list[float]:
        """The row of thickness node ``k`` and Fo node ``m``, between the nodes of Ste and κ."""
        _, kappas, thicknesses, fouriers = (len(axis) for axis in self.axes[:4])
        weights, rows = [], []
        for i, a in _weights(self.axes[0], math.log(ste), 3):
            for j, b in _weights(self.axes[1], math.log(kappa), 3):
                weights.append(a * b)
                rows.append(self.rows[((i * kappas + j) * thicknesses + k) * fouriers + m])
        return _mixed(weights, rows)

    def between(self, fourier: float, ste: float, kappa: float, thickness: float) -> list[float]:
        """The row between the nodes of the first four axes."""
        weights, rows = [], []
        for k, a in _weights(self.axes[2], 1 / thickness, 3):
            for m, b in _weights(self.axes[3], math.log(fourier), 4):
                weights.append(a * b)
                rows.append(_for_metal(ste, kappa, k, m))
        return _mixed(weights, rows)


def _mixed(weights: list[float], rows: Sequence[Sequence[float]]) -> list[float]:
    return [sum(map(mul, weights, column)) for column in zip(*rows, strict=True)]


# A calculator asks again and again for one metal, and for one pulse at several energies.
@lru_cache(maxsize=1024)
def _for_metal(ste: float, kappa: float, k: int, m: int) -> list[float]:
    return melt_table().for_metal(ste, kappa, k, m)


@lru_cache(maxsize=256)
def _row(fourier: float, ste: float, kappa: float, thickness: float) -> list[float]:
    return melt_table().between(fourier, ste, kappa, thickness)


@lru_cache(maxsize=512)
def _beta_weights(beta: float) -> list[tuple[int, float]]:
    return _weights(melt_table().axes[4], math.sqrt(max(beta - 1, 0.0)), 4)


def _weights(axis: tuple[float, ...], place: float, order: int) -> list[tuple[int, float]]:
    """Lagrange weights of the ``order`` nodes around ``place``; on a node that node alone."""
    place = min(max(place, axis[0]), axis[-1])
    above = bisect_left(axis, place)
    if math.isclose(axis[above], place, abs_tol=1e-12):
        return [(above, 1.0)]
    first = above - order // 2
    if order == 3 and above - 1 > 0 and place - axis[above - 1] < axis[above] - place:
        first = above - 2
    first = min(max(first, 0), len(axis) - order)
    nodes = axis[first : first + order]
    found = []
    for i, node in enumerate(nodes, first):
        weight = 1.0
        for other in nodes:
            if other != node:
                weight *= (place - other) / (node - other)
        found.append((i, weight))
    return found


@lru_cache(maxsize=1)
def melt_table() -> MeltTable:
    """The table, read once."""
    return read_table(files("calculators").joinpath("data/melt_table.txt").read_text(encoding="utf-8"))


def read_table(text: str) -> MeltTable:
    """The table from its text: lines ``# remark``, ``name number ...``, then rows of two-character numbers."""
    head: dict[str, list[float]] = {}
    rows: list[tuple[float, ...]] = []
    worth = {character: place for place, character in enumerate(DIGITS)}
    for line in text.splitlines():
        if line.startswith("# "):
            continue
        if " " in line:
            name, *numbers = line.split()
            head[name] = [float(number) for number in numbers]
            continue
        whole = [worth[line[i]] * BASE + worth[line[i + 1]] for i in range(0, len(line), 2)]
        names = QUANTITIES * (len(whole) // len(QUANTITIES))
        rows.append(tuple(head[name][0] + one * head[name][1] for name, one in zip(names, whole, strict=True)))
    axes = (
        tuple(math.log(one) for one in head["ste"]),
        tuple(math.log(one) for one in head["kappa"]),
        tuple(1 / one for one in head["thickness"]),
        tuple(math.log(one) for one in head["fourier"]),
        tuple(math.sqrt(one - 1) for one in head["beta"]),
    )
    return MeltTable(axes, tuple(rows))
