"""Which alloys a density leaves possible."""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache

from ..data import Figure, figure, load
from ..declare import Working
from ..drawing import Drawing
from ..metals import Metal, metals
from ..units import magnitude, number_text

UNIT = "g/cm**3"


@dataclass(frozen=True)
class Reach:
    """A metal with the densities its kind may have, in g/cm³, and the source of a published range."""

    metal: Metal
    low: float
    high: float
    source: str

    def distance(self, density: float) -> float:
        """How far ``density`` lies from the nominal alloy."""
        return abs(magnitude(self.metal.density.value, UNIT) - density)


def _ends(known: Figure) -> list[float]:
    """Low and high of a figure, or its value where it has no spread."""
    ends = [magnitude(end, UNIT) for end in (known.low, known.high) if end is not None]
    return ends or [magnitude(known.value, UNIT)]


@lru_cache(maxsize=1)
def reaches() -> tuple[Reach, ...]:
    """Every metal of the handbook: nominal density with its spread, widened by the published range of its kind."""
    kinds = {key: figure(row["density"]) for row in load("density_ranges")["kind"] for key in row["metals"]}
    found = []
    for metal in metals():
        kind = kinds.get(metal.key)
        ends = _ends(metal.density) + (_ends(kind) if kind else [])
        found.append(Reach(metal, min(ends), max(ends), kind.source if kind else ""))
    return tuple(found)


def split(working: Working, low: float, high: float, at_least: bool) -> tuple[list[Reach], list[Reach]]:
    """Metals that a density between ``low`` and ``high`` leaves possible, and the others, nearest first.

    ``at_least``: the metal itself may be denser than measured, as with a hollow piece.
    """
    middle = (low + high) / 2
    possible = [one for one in reaches() if one.high >= low and (at_least or one.low <= high)]
    possible.sort(key=lambda one: one.distance(middle))
    working.cite(*dict.fromkeys(one.source for one in possible if one.source))
    out = [one for one in reaches() if one not in possible]
    return possible, sorted(out, key=lambda one: one.distance(middle))


def names(found: list[Reach], most: int = 1000) -> str:
    """Names in one line, the first ``most`` of them."""
    if not found:
        return "none of the handbook's metals"
    more = f" and {len(found) - most} more" if len(found) > most else ""
    return ", ".join(one.metal.name for one in found[:most]) + more


def chart(low: float, high: float, measured: float) -> Drawing:
    """Densities of the nearest metals as bars on one scale, with the measured band across them."""
    near = sorted(reaches(), key=lambda one: one.distance(measured))[:9]
    near.sort(key=lambda one: one.low)
    first, last = min([one.low for one in near] + [low]), max([one.high for one in near] + [high])
    first, last = first - 0.04 * (last - first), last + 0.04 * (last - first)
    across, row = 330 / (last - first), 34.0
    title = "Where the measured density lies"
    told = f"Bars: densities of {', '.join(one.metal.name for one in near)}. Band: {low:.2f} to {high:.2f} g/cm³."
    picture = Drawing(640, row * len(near) + 76, title, told, 1.0)

    def place(density: float) -> float:
        return 290 + (density - first) * across

    foot = row * len(near) + 24
    picture.rectangle(place(low), 10, max(2.0, place(high) - place(low)), foot - 10, "hot")
    for index, one in enumerate(near):
        top = 20 + row * index
        picture.text(280, top + 16, one.metal.name, "end")
        picture.rectangle(place(one.low), top, max(2.0, place(one.high) - place(one.low)), 20, "part")
    picture.line([(290, foot), (620, foot)], "ink")
    step = next(one for one in (0.1, 0.2, 0.5, 1.0, 2.0, 5.0) if (last - first) / one <= 7)
    tick = step * (int(first / step) + 1)
    while tick < last:
        picture.line([(place(tick), foot), (place(tick), foot + 8)], "ink")
        picture.text(place(tick), foot + 28, number_text(tick, 3))
        tick += step
    picture.text(280, foot + 28, "g/cm³", "end")
    return picture
