"""Tables of metal: old solders, strengths by temper, the shares that turn one strength into another."""

from __future__ import annotations

import math
from collections.abc import Iterator
from xml.etree import ElementTree

from build_scripts.data_tables import Options, data_table
from build_scripts.data_tables.rows import KNOWN, Cell, Origin, known, origin, table, two_lines
from calculators import strengths
from calculators.data import Figure, figure, load
from calculators.metals import Metal, metals
from calculators.units import magnitude

CAPTION = (
    "Solders as history. None of these is a recipe to use. Melting points are those of the lists; what a solder does "
    "in a weld is common practice, no source."
)
SOLDER_GROUPS = {"silver": "Silver solders", "gold": "Gold solders", "soft": "Soft solders"}
FAMILIES = {
    "gold": "Gold",
    "silver": "Silver",
    "platinum": "Platinum",
    "palladium": "Palladium",
    "steel": "Steel",
    "titanium": "Titanium",
    "base": "Base metals met in repairs",
}
_WIRE = math.pi / 4 * 100 / 1000  # cm³ in 100 mm of wire of 1 mm
_FIGURES = (("strength", "MPa"), ("yield", "MPa"), ("hardness", "HV"))
_SHARES = {
    "shear": "Shear strength / tensile strength",
    "laser_weld": "Fused joint / whole metal, tensile",
    "hard_yield": "Yield / tensile, drawn wire",
    "soft_yield": "Yield / tensile, annealed",
    "per_hardness": "Tensile strength for a point of Vickers",
}


def _number(one: Figure | None, unit: str) -> str:
    if one is None:
        return ""
    value, low, high = (
        None if end is None else f"{magnitude(end, unit):.4g}" for end in (one.value, one.low, one.high)
    )
    return f"{low} to {high}" if low and high and low != high else str(value)


@data_table("solders")
def solders(_: Options) -> ElementTree.Element:
    """Solders of old and new seams: what is in them, what they do to a weld."""
    rows = load("solders")["solder"]
    groups = [
        (title, [_solder(one) for one in rows if one["metal"] == metal]) for metal, title in SOLDER_GROUPS.items()
    ]
    heads = ["Solder", "Fineness|‰", "Melts|°C", "Where you meet it", "What it does in a weld", KNOWN]
    return table("solders", CAPTION, heads, groups)


def _solder(row: dict[str, object]) -> list[Cell]:
    fineness, flow = (figure(row[name]) if isinstance(row.get(name), dict) else None for name in ("fineness", "flow"))  # type: ignore[arg-type]
    origins = [Origin("recipe", str(row["mark"]), str(row.get("source", "")))]
    origins += [origin(what, one) for what, one in (("fineness", fineness), ("melting", flow)) if one]
    return [
        two_lines(str(row["name"]), str(row["recipe"])),
        _number(fineness, "permille"),
        _number(flow, "degC"),
        str(row.get("found", "")),
        str(row.get("harm", "Lower fineness than the piece: it melts first.")),
        known(origins),
    ]


@data_table("densities")
def densities(_: Options) -> ElementTree.Element:
    """Density of every metal, what a piece of wire weighs, what a gram of wax becomes."""
    wax = figure(load("casting")["wax"]["density"])
    families = dict.fromkeys(one.family for one in metals())
    groups = [
        (FAMILIES.get(family, family), [_density(one, wax) for one in metals() if one.family == family])
        for family in families
    ]
    heads = ["Metal", "Density|g/cm³", "1 mm wire|g in 100 mm", "1 g of wax|becomes g", KNOWN]
    caption = "Density, with its spread where one is known. Wire and wax are computed from it."
    return table("densities", caption, heads, groups)


def _density(metal: Metal, wax: Figure) -> list[Cell]:
    density = magnitude(metal.density.value, "g/cm**3")
    ends = [end for end in (metal.density.low, metal.density.high) if end is not None]
    spread = " to ".join(f"{magnitude(end, 'g/cm**3'):.2f}" for end in ends)
    return [
        metal.name,
        two_lines(f"{density:.2f}", spread),
        f"{_WIRE * density:.3f}",
        f"{density / magnitude(wax.value, 'g/cm**3'):.1f}",
        known([origin("density", metal.density), origin("wax", wax)]),
    ]


@data_table("strengths")
def strength_table(_: Options) -> ElementTree.Element:
    """Tensile strength, yield strength and hardness of every metal and temper that has one."""
    groups = [(metal.name, list(_tempers(metal))) for metal in metals()]
    heads = ["Temper", "Tensile|MPa", "Yield|MPa", "Hardness|HV", KNOWN]
    caption = "Strength by temper. An empty cell: no figure was seen."
    return table("strengths", caption, heads, [group for group in groups if group[1]])


def _tempers(metal: Metal) -> Iterator[list[Cell]]:
    figures = strengths.figures(metal)
    for key, words in strengths.TEMPERS:
        found = [(name, unit, figures.get(f"{name}_{key.replace('-', '_')}")) for name, unit in _FIGURES]
        if any(one for _, _, one in found):
            notes = "; ".join(dict.fromkeys(one.note for _, _, one in found if one and one.note))
            names = {"strength": "tensile"}
            origins = [origin(names.get(name, name), one) for name, _, one in found if one]
            yield [two_lines(words, notes), *(_number(one, unit) for _, unit, one in found), known(origins)]


@data_table("strength-shares")
def shares(_: Options) -> ElementTree.Element:
    """The shares that the strength calculators use where a figure of its own is missing."""
    rows: list[list[Cell]] = []
    for name, words in _SHARES.items():
        one = strengths.share(name)
        unit = "MPa/HV" if one.unit else ""
        rows.append(
            [
                two_lines(words, one.note),
                f"{magnitude(one.value, one.unit):.4g}",
                _spread(one),
                known([origin("", one)]),
            ]
        )
        rows[-1][1] = f"{rows[-1][1]} {unit}".strip()
    return table("strength-shares", "From one strength to another", ["Share", "Value", "Spread", KNOWN], [("", rows)])


def _spread(one: Figure) -> str:
    if one.low is None or one.high is None:
        return ""
    low, high = (f"{magnitude(end, one.unit):.4g}" for end in (one.low, one.high))
    return f"{low} to {high}"
