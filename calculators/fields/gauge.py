"""A field for a gauge number of either gauge, or a thickness."""

from __future__ import annotations

from dataclasses import dataclass
from typing import ClassVar

from ..errors import Complaint
from ..gauges import read_gauge
from ..reading import tidy
from ..units import Quantity
from .amounts import StockThickness


@dataclass(frozen=True)
class GaugeTyped:
    """What was typed: the thickness, and the gauge and number when it was a gauge number."""

    thickness: Quantity
    scale: str = ""
    number: str = ""


@dataclass(frozen=True, kw_only=True)
class GaugeField(StockThickness):
    """A gauge number of either gauge, or a thickness; a whole number alone could be both and is refused."""

    kind: ClassVar[str] = "gauge"

    @property
    def unit(self) -> str:
        return ""

    def understand(self, text: str) -> GaugeTyped:  # type: ignore[override]
        text = tidy(text)
        if text.isdigit() and text.isascii():
            raise Complaint(f"{text} can be a gauge or millimeters: enter {text} ga, {text} SWG or {text} mm")
        thickness = super().understand(text)
        return GaugeTyped(thickness, *(read_gauge(text) or ()))
