"""Fields for amounts: a number with a unit, between limits."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import ClassVar

from ..errors import Complaint
from ..gauges import numbered, read_gauge, sizes_of
from ..reading import WrongUnit, read_amount, read_number, tidy
from ..units import Quantity, magnitude, number_text, quantity, with_unit
from .base import Field


@dataclass(frozen=True, kw_only=True)
class Amount(Field):
    """A quantity with a unit. ``low`` and ``high`` are limits in ``of`` (the unit), both included.

    ``slide`` gives the ends, in ``of``, between which a person may also try values by sliding.
    """

    of: str = ""
    low: float
    high: float
    slide: tuple[float, float] | None = None
    kind: ClassVar[str] = "amount"
    what: ClassVar[str] = "an amount"

    @property
    def unit(self) -> str:
        return self.of

    def understand(self, text: str) -> Quantity:
        try:
            value = self.amount(text)
        except WrongUnit as wrong:
            raise Complaint(f"{self.label} is {self.what}: enter it in {self.unit_words()}, not {wrong}") from None
        except ValueError:
            raise Complaint(f"{self.label} must be a number: {self.ask()}") from None
        number = magnitude(value, self.of)
        slack = 1e-9 * max(abs(self.low), abs(self.high))  # so that 0.4 mm typed in inches is still 0.4 mm
        if not math.isfinite(number) or not self.low - slack <= number <= self.high + slack:
            raise Complaint(f"{self.label} must be between {self.limits()}")
        return value

    def amount(self, text: str) -> Quantity:
        """Read number and unit; raises ``ValueError`` or ``WrongUnit``."""
        return read_amount(text, self.of)

    def limits(self) -> str:
        """The limits in words: ``0.4 and 6 mm``."""
        return f"{number_text(self.low, 6)} and {with_unit(number_text(self.high, 6), self.of)}"

    def unit_words(self) -> str:
        """The unit a person may type."""
        return with_unit("", self.of).strip() or "plain numbers"


@dataclass(frozen=True, kw_only=True)
class Length(Amount):
    """A length, in mm unless another unit is typed."""

    of: str = "mm"
    kind: ClassVar[str] = "length"
    what: ClassVar[str] = "a length"

    def unit_words(self) -> str:
        return "mm or in"


@dataclass(frozen=True, kw_only=True)
class Mass(Amount):
    """A mass, in grams unless another unit is typed."""

    of: str = "g"
    kind: ClassVar[str] = "mass"
    what: ClassVar[str] = "a weight"

    def unit_words(self) -> str:
        return "g, dwt, ozt or ct"


@dataclass(frozen=True, kw_only=True)
class Ratio(Amount):
    """A share, in percent unless typed otherwise."""

    of: str = "percent"
    kind: ClassVar[str] = "ratio"
    what: ClassVar[str] = "a share"


@dataclass(frozen=True, kw_only=True)
class Count(Amount):
    """A whole number of things."""

    of: str = ""
    kind: ClassVar[str] = "count"

    def amount(self, text: str) -> Quantity:
        value, unit = read_number(text)
        if unit:
            raise ValueError(text)
        if math.isfinite(value) and value != int(value):
            raise Complaint(f"{self.label} must be a whole number: {self.ask()}")
        return quantity(value)


@dataclass(frozen=True, kw_only=True)
class StockThickness(Length):
    """A thickness as a length or as a gauge number: ``1.5 mm``, ``18 ga`` (B&S), ``16 SWG`` (imperial)."""

    kind: ClassVar[str] = "stock thickness"

    def amount(self, text: str) -> Quantity:
        text = tidy(text)
        gauge = read_gauge(text)
        if gauge is None:
            return super().amount(text)
        size = numbered(*gauge)
        if size is None:
            ends = f"{sizes_of(gauge[0])[0].number} to {sizes_of(gauge[0])[-1].number}"
            raise Complaint(f"{self.label}: gauge numbers run from {ends}. Enter one such as 18 ga")
        return size.size.to("mm")

    def unit_words(self) -> str:
        return "mm, in, ga (B&S) or SWG"
