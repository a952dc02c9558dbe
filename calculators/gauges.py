"""Gauges of wire and sheet and sizes of drills (``data/gauges.toml``).

Two gauges share the same numbers and differ by up to a quarter of the thickness: Brown & Sharpe, which the trade in
gold and silver uses in North America, and the imperial standard (SWG). They are never mixed here.
"""

from __future__ import annotations

import math
import re
from dataclasses import dataclass
from functools import lru_cache

from .data import load
from .units import Quantity, magnitude, quantity

BS, SWG = "b&s", "swg"
_BS_WORDS = ("ga", "ga.", "gauge", "g a", "b&s", "bs", "b & s", "awg")
_SWG_WORDS = ("swg", "isg", "iswg", "imperial")
_NUMBER = re.compile(r"(?P<number>[0-9]+(?:/0)?)\s*(?P<words>[A-Za-z&. ]+)")


@dataclass(frozen=True)
class Size:
    """One number of a gauge or a drill set with its size."""

    number: str
    size: Quantity

    @property
    def mm(self) -> float:
        """The size in millimeters."""
        return magnitude(self.size, "mm")


def brown_and_sharpe(gauge: float) -> Quantity:
    """Thickness of a B&S (AWG) gauge number; 0 is 1/0, −1 is 2/0. Source: the law of ASTM B258, published."""
    return quantity(0.127 * 92 ** ((36 - gauge) / 39), "mm")


def _label(gauge: int) -> str:
    return str(gauge) if gauge >= 0 else f"{1 - gauge}/0"


@lru_cache(maxsize=1)
def brown_and_sharpe_sizes() -> tuple[Size, ...]:
    """The B&S numbers of the bench, 4/0 to 40, thickest first."""
    table = load("gauges")["brown-and-sharpe"]
    return tuple(Size(_label(n), brown_and_sharpe(n)) for n in range(table["largest"], table["smallest"] + 1))


@lru_cache(maxsize=8)
def table(name: str) -> tuple[Size, ...]:
    """A table of ``data/gauges.toml`` (``imperial-standard``, ``number-drill``), in its own order."""
    rows = load("gauges")[name]
    return tuple(Size(number, quantity(size, rows["unit"])) for number, size in rows["sizes"])


def imperial_sizes() -> tuple[Size, ...]:
    """The imperial standard numbers, 7/0 to 47, thickest first."""
    return table("imperial-standard")


def number_drills() -> tuple[Size, ...]:
    """Number drills 80 to 1, smallest first."""
    return table("number-drill") + table("number-drill-large")


@lru_cache(maxsize=1)
def metric_drills() -> tuple[Size, ...]:
    """Metric drills of BS 328 up to 13.9 mm, smallest first."""
    hundredths = [10 * tenth + round(100 * more) for tenth in range(2, 10) for more in _below_one()]
    hundredths += [*range(100, 300, 5), *range(300, 1400, 10)]
    return tuple(Size(f"{size / 100:.2f}", quantity(size / 100, "mm")) for size in hundredths)


def _below_one() -> list[float]:
    steps: list[float] = load("gauges")["metric-drill"]["below_one"]
    return steps


def nearest(sizes: tuple[Size, ...], thickness: Quantity) -> Size:
    """The size nearest to ``thickness``, by ratio, as gauges step by ratio."""
    wanted = math.log(magnitude(thickness, "mm"))
    return min(sizes, key=lambda one: abs(math.log(one.mm) - wanted))


def sizes_of(scale: str) -> tuple[Size, ...]:
    """All sizes of ``BS`` or ``SWG``."""
    return brown_and_sharpe_sizes() if scale == BS else imperial_sizes()


def numbered(scale: str, number: str) -> Size | None:
    """The size of a gauge number, or None when the scale has no such number; ``1/0`` and ``00`` are understood."""
    if re.fullmatch(r"0{2,7}", number):
        number = f"{len(number)}/0"
    number = "0" if number == "1/0" else re.sub(r"^0+(?=[1-9])", "", number)
    return next((one for one in sizes_of(scale) if one.number == number), None)


def read_gauge(text: str) -> tuple[str, str] | None:
    """``("b&s", "18")`` or ``("swg", "16")`` when ``text`` is a gauge number with its word, else None."""
    found = _NUMBER.fullmatch(text.strip())
    if not found:
        return None
    words = " ".join(found["words"].lower().split())
    if words in _BS_WORDS:
        return BS, found["number"]
    if words in _SWG_WORDS:
        return SWG, found["number"]
    return None
