"""The nodes of the melt table and the scaled quantities kept at them. The calculators read the same text."""

from __future__ import annotations

import math

FOURIER = (0.01, 0.05, 0.12, 0.25, 0.5, 0.9, 1.6, 3.0, 6.0, 12.0, 30.0, 150.0)
BETA = (1.07, 1.2, 1.45, 1.85, 2.5, 3.7, 5.5)
STE = (1.2, 2.2, 4.2)
KAPPA = (0.35, 0.75, 1.6)
THICKNESS = (math.inf, 4.0, 2.0, 1.0, 0.5, 0.3)
MELTING_RANGE = 0.05


def plate_counts(fourier: float, thickness: float) -> bool:
    """Whether heat has reached the back of a plate by the end of the pulse."""
    return thickness < 4.5 * math.sqrt(fourier)
