"""Fields that only the heat calculators ask for."""

from __future__ import annotations

import re
from dataclasses import dataclass
from typing import ClassVar, NamedTuple

from ..errors import Complaint
from ..fields import MetalField
from ..fields.base import Field
from ..metals import Metal, metals
from ..reading import WrongUnit, read_amount, read_number, tidy
from ..units import magnitude
from .heat_metals import heat_keys

SEEN = ("none", "mark", "melt", "hole")
_PARTS = re.compile(r"\s*[;|/]\s*|\s*,\s+|\s+(?![A-Za-z°%µ])")
_BETWEEN = re.compile(r"\s*(?:\bto\b|–|—|\.\.\.?|(?<=[0-9%])\s*-\s*(?=[0-9.]))\s*")


@dataclass(frozen=True, kw_only=True)
class HeatMetalField(MetalField):
    """A metal whose heat figures are known; a bare density is not enough here."""

    hint: str = "Metals whose heat figures are known."
    kind: ClassVar[str] = "metal"

    def listed(self) -> tuple[Metal, ...]:
        return tuple(metal for metal in metals() if metal.key in heat_keys())

    def understand(self, text: str) -> Metal:
        metal = super().understand(text)
        if metal.key not in heat_keys():
            raise Complaint(
                "The density alone does not say how a metal takes heat: choose the nearest metal of the list"
            )
        return metal


class Spread(NamedTuple):
    """A number with its low and high end."""

    value: float
    low: float
    high: float
    typed_range: bool


@dataclass(frozen=True, kw_only=True)
class SpreadField(Field):
    """A share with its range: ``0.12``, ``12 %``, ``0.10 to 0.15``, ``0.12 (0.10 to 0.15)``, ``0.12 ± 0.02``.

    A single number gets ±20 %: nobody knows it better without saying so. 1 stays 1, the safe end.
    """

    lowest: float = 0.002
    highest: float = 1.0
    kind: ClassVar[str] = "spread"
    room: ClassVar[int] = 16

    def understand(self, text: str) -> Spread:
        text = tidy(text).lower()
        value: float | None = None
        inside = re.fullmatch(r"(.+?)\s*\((.+)\)", text)
        if inside:
            value, text = self._one(inside[1]), inside[2]
        ends = _BETWEEN.split(text)
        around = re.split(r"\s*(?:±|\+/-|\+-)\s*", text)
        if len(ends) == 2:
            low, high = (self._one(part) for part in ends)
            if low > high:
                raise Complaint(f"{self.label}: enter the smaller number first, such as {self.show()}")
            value = (low * high) ** 0.5 if value is None else value
        elif len(around) == 2:
            value = self._one(around[0])
            off = self._one(around[1], anything=True)
            off = off * value if "%" in around[1] and "%" not in around[0] else off
            low, high = max(value - off, self.lowest), min(value + off, self.highest)
        else:
            value = self._one(text)
            if value >= 0.999:
                return Spread(value, value, value, False)
            return Spread(value, value / 1.2, min(value * 1.2, 1.0), False)
        if not low <= value <= high:
            raise Complaint(f"{self.label}: the middle must lie within its range, such as {self.show()}")
        return Spread(value, low, high, True)

    def _one(self, text: str, anything: bool = False) -> float:
        try:
            number = magnitude(read_amount(text, ""), "")
        except (ValueError, WrongUnit):
            raise Complaint(f"{self.label} must be a number or a range: enter it such as {self.show()}") from None
        if not anything and not self.lowest <= number <= self.highest:
            raise Complaint(
                f"{self.label} must be between {self.lowest:g} and {self.highest:g}: enter it such as {self.show()}"
            )
        return number

    def show(self) -> str:
        """How to write it."""
        return "0.12 or 0.10 to 0.15"

    def ask(self) -> str:
        return f"enter it such as {self.show()}"


class SeenShot(NamedTuple):
    """One test spot: J, ms, mm; ``seen`` one of none, mark, melt, hole; ``width`` and ``depth`` in mm or None."""

    energy: float
    duration: float
    spot: float
    seen: str
    width: float | None
    depth: float | None


@dataclass(frozen=True, kw_only=True)
class ShotField(Field):
    """One test spot in a line: ``1.2 J, 4 ms, 0.5 mm, 0.35 mm`` or ``... none``, and a sectioned depth last."""

    required: bool = False
    kind: ClassVar[str] = "shot"
    room: ClassVar[int] = 27

    def understand(self, text: str) -> SeenShot:
        parts = [part for part in _PARTS.split(tidy(text).lower()) if part]
        if len(parts) not in (4, 5):
            raise Complaint(f"{self.label}: {self.ask()}")
        energy = self._amount(parts[0], "J", "energy", 0.01, 200)
        duration = self._amount(parts[1], "ms", "duration", 0.1, 50)
        spot = self._amount(parts[2], "mm", "spot", 0.1, 4)
        word = {"no": "none", "nothing": "none", "marked": "mark", "melted": "melt", "pool": "melt", "spatter": "hole"}
        seen = word.get(parts[3], parts[3])
        width = None
        if seen not in SEEN:
            if not parts[3][0].isdigit() and parts[3][0] not in ".,":
                raise Complaint(
                    f"{self.label}: write what you saw as none, mark, melt, hole, or as a width such as 0.35 mm"
                )
            seen, width = "melt", self._amount(parts[3], "mm", "seen width", 0.02, 8)
        depth = self._amount(parts[4], "mm", "sectioned depth", 0.01, 8) if len(parts) == 5 else None
        if depth is not None and seen == "none":
            raise Complaint(f"{self.label}: a shot that left no mark has no depth. Leave the depth out")
        return SeenShot(energy, duration, spot, seen, width, depth)

    def _amount(self, text: str, unit: str, what: str, low: float, high: float) -> float:
        try:
            number = magnitude(read_amount(text, unit), unit)
        except (ValueError, WrongUnit):
            raise Complaint(f"{self.label}: write the {what} as a number in {unit}; {self.ask()}") from None
        if not low <= number <= high:
            raise Complaint(f"{self.label}: the {what} must be between {low:g} and {high:g} {unit}")
        return number

    def ask(self) -> str:
        return (
            "write energy, duration, spot, then what you saw, such as 1.2 J, 4 ms, 0.5 mm, 0.35 mm "
            "(or none, mark, hole)"
        )


class DialPair(NamedTuple):
    """A known point of the dial: number on it, ms, J."""

    dial: float
    duration: float
    energy: float


@dataclass(frozen=True, kw_only=True)
class DialField(Field):
    """A known point of the machine's dial: ``250 V, 4 ms, 3.1 J`` (or percent)."""

    required: bool = False
    kind: ClassVar[str] = "dial"
    room: ClassVar[int] = 20

    def understand(self, text: str) -> DialPair:
        parts = [part for part in _PARTS.split(tidy(text).lower().replace("%", " ").strip()) if part]
        if len(parts) != 3:
            raise Complaint(f"{self.label}: {self.ask()}")
        numbers = []
        for part, unit in zip(parts, ("v", "ms", "j"), strict=True):
            try:
                number, typed = read_number(part)
            except ValueError:
                raise Complaint(f"{self.label}: {self.ask()}") from None
            if typed.lower() not in ("", unit) or not 0.01 <= number <= 10000:
                raise Complaint(f"{self.label}: {self.ask()}")
            numbers.append(number)
        return DialPair(*numbers)

    def ask(self) -> str:
        return "write what the dial says, the milliseconds and the joules, such as 250 V, 4 ms, 3.1 J"
