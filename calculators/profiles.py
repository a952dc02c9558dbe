"""Cross-sections of a ring's band, with their exact areas.

Width runs along the finger, thickness from the inside of the ring outward.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import dataclass

from .drawing import Point
from .units import Quantity


@dataclass(frozen=True)
class Profile:
    """A cross-section: ``formula`` gives its area from ``width`` and ``thickness``.

    ``outline`` gives points around it (mm) with the inside of the ring at y = 0 and the outside at y = thickness.
    """

    key: str
    name: str
    formula: str
    outline: Callable[[float, float], list[Point]]

    def amounts(self, width: Quantity, thickness: Quantity) -> dict[str, Quantity]:
        """The names the formula needs."""
        return {
            name: amount for name, amount in (("width", width), ("thickness", thickness)) if name in self.formula
        }
