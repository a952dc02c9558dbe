"""What the law of a place says on fineness (``data/fineness.toml``)."""

from __future__ import annotations

import math
from dataclasses import dataclass
from functools import lru_cache
from typing import Any

from ..data import Figure, figure, load

METALS = (("gold", "Gold"), ("silver", "Silver"), ("platinum", "Platinum"), ("palladium", "Palladium"))


@dataclass(frozen=True)
class Law:
    """Fineness of one metal in one place. No minus figure means that none was seen."""

    place: str
    name: str
    metal: str
    measured: str
    standards: tuple[float, ...]
    standards_source: str
    standards_mark: str
    standards_note: str
    minus_alloy: Figure | None
    minus_article: Figure | None

    def stamp(self, permille: float) -> tuple[str, float] | None:
        """The highest mark an alloy of ``permille`` may carry and the content that mark stands for, or None."""
        reach = permille + (self.minus_alloy.value.magnitude if self.minus_alloy else 0.0) + 1e-9
        if self.measured == "karat":
            karat = min(24, math.floor(reach * 24 / 1000))
            return (f"{karat}K", 1000 * karat / 24) if karat >= 1 else None
        if not self.standards:
            return f"{math.floor(reach)}", float(math.floor(reach))
        reached = [one for one in self.standards if one <= reach]
        return (f"{max(reached):g}", max(reached)) if reached else None


def _law(row: dict[str, Any]) -> Law:
    minus = {name: figure(row[name]) if name in row else None for name in ("minus_alloy", "minus_article")}
    return Law(
        place=row["place"],
        name=row["name"],
        metal=row["metal"],
        measured=row["measured"],
        standards=tuple(row["standards"]),
        standards_source=row.get("standards_source", ""),
        standards_mark=row["standards_mark"],
        standards_note=row.get("standards_note", ""),
        **minus,
    )


@lru_cache(maxsize=1)
def laws() -> tuple[Law, ...]:
    """Every law in the order of the data."""
    return tuple(_law(row) for row in load("fineness")["law"])


def places() -> tuple[tuple[str, str], ...]:
    """The places, as options of a choice."""
    return tuple({law.place: law.name for law in laws()}.items())


def law_of(place: str, metal: str) -> Law | None:
    """The law of a place on a metal, or None where the handbook has none."""
    return next((law for law in laws() if (law.place, law.metal) == (place, metal)), None)


def least_solder(place: str, metal: str, article: float) -> Figure | None:
    """The least fineness of solder in an article of ``article`` permille, where a table was seen."""
    rows = [
        row
        for row in load("fineness")["solder"]
        if (row["place"], row["metal"]) == (place, metal)
        and row["article_from"] <= article + 1e-9
        and article <= row.get("article_to", 1000)
    ]
    return figure(max(rows, key=lambda row: row["article_from"])["least"]) if rows else None


def addition_limit(place: str, metal: str) -> tuple[Figure, Figure] | None:
    """Most metal (mass, share of the piece) that a repair may add without consent, where a law was seen."""
    for row in load("fineness")["addition"]:
        if (row["place"], row["metal"]) == (place, metal):
            return figure(row["most"]), figure(row["share"])
    return None
