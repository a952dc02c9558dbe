"""All metals side by side, for the page that leads to the families."""

from __future__ import annotations

from xml.etree import ElementTree

from build_scripts.data_tables import Options, data_table
from build_scripts.data_tables.rows import KNOWN, Cell, known, origin, table, two_lines
from build_scripts.metal_tables import all_figures, light_of
from calculators.data import Figure
from calculators.metals import Metal, metals
from calculators.units import magnitude

CAPTION = (
    "All metals side by side. Melting is the first and the last melt. Conductivity is at 20 °C. Light is the share "
    "that a clean polished surface takes in at 1064 nm, for an alloy that of its main pure metal. An empty cell: no "
    "figure was seen."
)


@data_table("metals-compared")
def metals_compared(_: Options) -> ElementTree.Element:
    """Density, melting, conductivity and light of every metal, each row with its origins."""
    titles = dict.fromkeys(_title(one) for one in metals())
    groups = [(title, [_cells(one) for one in metals() if _title(one) == title]) for title in titles]
    heads = ["Metal", "Density|g/cm³", "Melts|°C", "Conducts|W/(m·K)", "Light|%", KNOWN]
    return table("metals-compared", CAPTION, heads, groups)


def _title(metal: Metal) -> str:
    return " ".join(filter(None, (metal.color, metal.family, "metals" if metal.family == "base" else ""))).capitalize()


def _cells(metal: Metal) -> list[Cell]:
    figures = {**light_of(metal.family), **all_figures(metal)}
    named = (
        ("density", "density"),
        ("solidus", "melting"),
        ("liquidus", "melting"),
        ("conductivity_cold", "conductivity"),
        ("polished", "light"),
    )
    solidus, liquidus = (_shown(figures.get(name), "degC", 0) for name in ("solidus", "liquidus"))
    return [
        two_lines(metal.name, ""),
        _shown(metal.density, "g/cm**3", 2),
        solidus if solidus == liquidus else f"{solidus} to {liquidus}",
        _shown(figures.get("conductivity_cold"), "W/(m*K)", 0),
        _shown(figures.get("polished"), "percent", 1),
        known(origin(words, figures[name]) for name, words in named if name in figures),
    ]


def _shown(one: Figure | None, unit: str, places: int) -> str:
    return "" if one is None else f"{magnitude(one.value, unit):.{places}f}"
