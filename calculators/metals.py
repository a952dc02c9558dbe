"""The metals of the handbook, each figure with its source and mark (``data/metals.toml``)."""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache
from typing import Any

from .data import TYPED, Figure, figure, load
from .reading import plain_name
from .units import Quantity


@dataclass(frozen=True)
class Metal:
    """An alloy: ``density`` always, other figures (melting range, strength ...) in ``figures`` where sourced.

    ``composition`` is nominal, in percent by mass; ``composition_source`` and ``composition_mark`` say where it comes
    from and how far it was verified. ``color`` is yellow, white or rose for golds, empty for all others.
    """

    key: str
    name: str
    family: str
    aliases: tuple[str, ...]
    density: Figure
    fineness: float | None
    composition: dict[str, float]
    figures: dict[str, Figure]
    composition_mark: str = "from memory"
    composition_source: str = ""
    color: str = ""

    @property
    def base(self) -> str:
        """Symbol of the element of which there is most by mass; empty where the composition is not known."""
        return max(self.composition, key=lambda element: self.composition[element], default="")

    def names(self) -> set[str]:
        """Every way this metal may be typed, in lower case with single spaces."""
        return {plain_name(name) for name in (self.key, self.name, *self.aliases)}


@lru_cache(maxsize=1)
def metals() -> tuple[Metal, ...]:
    """All metals in the order of the data file."""
    return tuple(_metal(row) for row in load("metals")["metal"])


def metal_of_density(density: Quantity) -> Metal:
    """An unlisted alloy of which only the density is known, as typed by the user."""
    typed = Figure(density, "g/cm**3", "", "from memory", note=TYPED)
    return Metal("typed", "metal of the density you typed", "typed", (), typed, None, {}, {})


def _metal(row: dict[str, Any]) -> Metal:
    figures = {name: figure(value) for name, value in row.items() if isinstance(value, dict) and "mark" in value}
    return Metal(
        key=row["key"],
        name=row["name"],
        family=row["family"],
        aliases=tuple(row.get("aliases", ())),
        density=figures.pop("density"),
        fineness=row.get("fineness"),
        composition=dict(row.get("composition", {})),
        figures=figures,
        composition_mark=row.get("composition_mark", "from memory"),
        composition_source=row.get("composition_source", ""),
        color=row.get("color", ""),
    )
