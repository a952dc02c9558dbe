"""Fields for the precious metal in an alloy, and for what a gram of it costs."""

from __future__ import annotations

import re
from dataclasses import dataclass
from typing import ClassVar

from ..errors import Complaint
from ..reading import WrongUnit, read_amount, read_number, tidy
from ..units import Quantity, number_text, quantity
from .amounts import Amount
from .base import Field

_KARAT = ("k", "kt", "kt.", "karat", "karats", "carat", "carats", "c", "ct", "ct.")
_PERMILLE = ("‰", "ppt", "permille", "/1000", "per thousand", "fine")
_PERCENT = ("%", "percent", "pct")
_FULL = {"k": 24.0, "permille": 1000.0, "percent": 100.0, "share": 1.0}


@dataclass(frozen=True)
class FinenessTyped:
    """A fineness with the way it was typed: in karats (``"k"``) or not."""

    permille: Quantity
    way: str


@dataclass(frozen=True, kw_only=True)
class Fineness(Field):
    """A fineness as people write it: ``14k``, ``585``, ``58.5 %``, ``.585``. ``low`` is the least, in permille."""

    low: float = 1
    kind: ClassVar[str] = "fineness"

    def understand(self, text: str) -> FinenessTyped:
        try:
            value, unit = read_number(text)
        except ValueError:
            raise Complaint(f"{self.label} must be a number: {self.ask()}") from None
        way = self._way(value, tidy(unit).lower())
        if value > _FULL[way] or value < 0:
            limit = "24 karat" if way == "k" else "1000 per thousand"
            raise Complaint(f"{self.label} must be between 0 and {limit}: {self.ask()}")
        if not 1000 * value / _FULL[way] >= self.low:
            raise Complaint(f"{self.label} must be at least {number_text(self.low)} per thousand: {self.ask()}")
        return FinenessTyped(quantity(1000 * value / _FULL[way], "permille"), way)

    def _way(self, value: float, unit: str) -> str:
        """In what the number counts; raises ``Complaint`` where it could be read two ways."""
        if unit in _KARAT:
            return "k"
        if unit in _PERMILLE:
            return "permille"
        if unit in _PERCENT:
            return "percent"
        if unit:
            raise Complaint(f"{self.label} is a share: {self.ask()}")
        if value < 1:
            return "share" if value > 0 else "permille"
        if value <= 24:
            raise Complaint(f"{number_text(value)} can be read two ways: enter {number_text(value)}k for karats")
        if value < 100:
            raise Complaint(
                f"{number_text(value)} can be read two ways: "
                f"enter {number_text(value)} % or {number_text(10 * value)} per thousand"
            )
        return "permille"

    def ask(self) -> str:
        return "enter it such as 14k or 585"


@dataclass(frozen=True, kw_only=True)
class Price(Amount):
    """A price of a gram, in whatever money; ``/ozt`` or ``/dwt`` behind it is understood."""

    of: str = "money/g"
    low: float = 0
    high: float = 1e6
    kind: ClassVar[str] = "price"
    what: ClassVar[str] = "money for a gram"

    def amount(self, text: str) -> Quantity:
        found = re.fullmatch(r"(.*\d.*?)\s*(?:/|per )\s*(g|gram|dwt|ozt|oz t|oz|kg)\.?", tidy(text), re.IGNORECASE)
        if not found:
            return read_amount(text, self.of)
        value, unit = read_number(found[1])
        if unit:
            raise WrongUnit(unit)
        mass = {"oz": "ozt", "oz t": "ozt"}.get(found[2].lower(), found[2].lower())
        return quantity(value, f"money/{mass}").to(self.of)

    def unit_words(self) -> str:
        return "plain numbers, or with /ozt or /dwt behind"

    def ask(self) -> str:
        return "enter it such as 62.50 or 1950/ozt"
