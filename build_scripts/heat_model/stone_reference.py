"""An independent numerical solution for the heat at a stone: a plain 3-D finite-volume bar, no closed form in it.

A ring is cut open into a bar that is periodic along its length. The energy of a pulse goes into the surface cell at
the spot; heat is conducted cell to cell in all three directions and lost to the air from the outside. The cells'
equations are linear, so they are advanced exactly in time by the eigenvectors of the conduction matrices.
"""

from __future__ import annotations

import math
import random

import numpy as np
from numpy.typing import NDArray

from calculators.heat.heat_metals import heat_keys, heat_metal
from calculators.heat.stone_sum import Piece, Plan
from calculators.metals import metals

Array = NDArray[np.float64]


def _modes(cells: int, size: float, closed: bool) -> tuple[Array, Array]:
    """Eigenvalues and eigenvectors of the one-dimensional cell-to-cell conduction matrix (over α)."""
    matrix = np.zeros((cells, cells))
    for i in range(cells):
        for j in (i - 1, i + 1):
            if closed or 0 <= j < cells:
                matrix[i, j % cells] += 1 / size**2
                matrix[i, i] -= 1 / size**2
    values, vectors = np.linalg.eigh(matrix)
    return values, vectors


def rise_at(piece: Piece, plan: Plan, times: list[float], fine: float = 1.0) -> list[float]:
    """Rise in K at the stone at ``times`` by the cells of the bar, advanced exactly in time between the pulses."""
    across = 2 * round(4 * fine) + 1
    through = round(8 * fine)
    along = round(piece.length / piece.distance * 14 * fine)
    sizes = (piece.length / along, piece.width / across, piece.thickness / through)
    parts = [
        _modes(cells, size, closed)
        for cells, size, closed in zip((along, across, through), sizes, (piece.closed, False, False), strict=True)
    ]
    source = (0 if piece.closed else along // 2, across // 2, 0)
    # The stone lies between two cell centers along the bar: linear between them.
    place = piece.distance / sizes[0]
    low = int(place)
    # Only the line across and through the source cell is needed: separate modes, combined by outer products.
    rates = (
        piece.diffusivity * (parts[0][0][:, None, None] + parts[1][0][None, :, None] + parts[2][0][None, None, :])
        - piece.decay
    )
    hit = [vectors[cell] for (_, vectors), cell in zip(parts, source, strict=True)]
    seen_along = (1 - place + low) * parts[0][1][(source[0] + low) % along] + (place - low) * parts[0][1][
        (source[0] + low + 1) % along
    ]
    shape = ((hit[0] * seen_along)[:, None, None] * (hit[1] ** 2)[None, :, None] * (hit[2] ** 2)[None, None, :]).ravel()
    flat = rates.ravel()
    cell = math.prod(sizes) * piece.density * piece.heat_capacity
    pulses = [go * plan.period + i / plan.rate for go in range(plan.goes) for i in range(plan.count)]
    found = []
    for time in times:
        total = sum(float(shape @ np.exp(flat * (time - pulse))) for pulse in pulses if pulse < time)
        found.append(plan.energy * total / cell)
    return found


def random_pieces(count: int, seed: int) -> list[tuple[Piece, Plan]]:
    """Rings at random with short trains."""
    dice = random.Random(seed)  # noqa: S311 - a fixed seed, not a secret
    known = [heat_metal(metal) for metal in metals() if metal.key in heat_keys()]
    found = []
    for _ in range(count):
        metal = dice.choice(known)
        thickness = dice.uniform(1.0, 2.5) * 1e-3
        piece = Piece(
            closed=True, length=dice.uniform(46, 66) * 1e-3, width=dice.uniform(2, 6) * 1e-3, thickness=thickness,
            distance=dice.uniform(2.0, 12) * 1e-3, conductivity=metal.number("conductivity_cold"),
            density=metal.number("density"), heat_capacity=metal.number("heat_capacity_cold"),
            loss=dice.uniform(5, 30),
        )  # fmt: skip
        found.append((piece, Plan(1.0, dice.randint(1, 25), dice.uniform(1, 8))))
    return found


def stone_errors(count: int = 30, seed: int = 7) -> list[float]:
    """Errors of the peak rise, as shares of it; the reference is taken to zero cell size from two grids."""
    errors = []
    for piece, plan in random_pieces(count, seed):
        rise, lag = plan.peak(piece)
        when = [plan.last_pulse + lag]
        coarse, fine = (rise_at(piece, plan, when, grid)[0] for grid in (1.0, 1.6))
        true = fine + (fine - coarse) / (1.6**2 - 1)
        errors.append(rise / true - 1)
    return errors
