"""Figures with their source and mark, read from the TOML files beside this module."""

from __future__ import annotations

import tomllib
from dataclasses import dataclass
from functools import cache, lru_cache
from importlib.resources import files
from typing import Any

from ..units import Quantity, magnitude, quantity, quantity_text

# How far a figure was verified. The order is from firm to weak.
MARKS = {
    "published": "published",
    "computed": "computed",
    "second-hand": "second-hand",
    "common practice": "common practice, no source",
    "from memory": "from memory",
}
TYPED = "typed by you"  # the note of a figure that the person gave: it needs no mark


@dataclass(frozen=True)
class Figure:
    """One value of the world: amount, spread if known, where it comes from, how far it was verified.

    ``source`` is a key of ``sources.toml``, or empty for a mark that needs none.
    """

    value: Quantity
    unit: str
    source: str
    mark: str
    low: Quantity | None = None
    high: Quantity | None = None
    note: str = ""

    def text(self, digits: int = 4) -> str:
        """The value with its spread: ``"15.45 g/cm³ (15.22 to 15.68)"``."""
        shown = quantity_text(self.value, self.unit, digits)
        if self.low is None or self.high is None:
            return shown
        low, high = (f"{magnitude(end, self.unit):.{digits}g}" for end in (self.low, self.high))
        return f"{shown} ({low} to {high})"


@dataclass(frozen=True)
class Source:
    """Where something was read: ``citation`` for the page, ``extent`` how much of it was seen."""

    key: str
    citation: str
    extent: str


@cache
def load(name: str) -> dict[str, Any]:
    """The whole TOML file ``data/<name>.toml``."""
    return tomllib.loads(files(__name__).joinpath(f"{name}.toml").read_text(encoding="utf-8"))


def figure(table: dict[str, Any]) -> Figure:
    """A ``Figure`` from its TOML table; raises ``KeyError`` or ``ValueError`` when source or mark is missing."""
    if table["mark"] not in MARKS:
        raise ValueError(f"{table['mark']} is not one of {', '.join(MARKS)}")
    unit = table["unit"]

    def end(name: str) -> Quantity | None:
        return quantity(float(table[name]), unit) if name in table else None

    return Figure(
        value=quantity(float(table["value"]), unit),
        unit=unit,
        source=table.get("source", ""),
        mark=table["mark"],
        low=end("low"),
        high=end("high"),
        note=table.get("note", ""),
    )


@lru_cache(maxsize=1)
def sources() -> dict[str, Source]:
    """Every source of the handbook by key."""
    return {key: Source(key, table["citation"], table["extent"]) for key, table in load("sources").items()}
