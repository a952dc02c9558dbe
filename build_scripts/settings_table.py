"""Starting settings of a joint by metal and thickness, worked out by the model while the site is built.

The page's script adds a line with the shop's own values under each line it has some for: a row says in
``data-fields`` what it asked, and each ``data-result`` names the result whose text stands there.
"""

from __future__ import annotations

import json
from collections.abc import Mapping
from html import escape
from typing import Any

from build_scripts import form
from build_scripts.errors import PageError
from build_scripts.house_values import NO_SHOP, Shop
from calculators.metals import metals
from calculators.run import answer

CALCULATOR = "start-settings"
METALS = (
    "14k-yellow", "18k-yellow", "14k-rose", "14k-white-nickel", "18k-white-palladium", "sterling",
    "platinum-950-ruthenium", "palladium-950", "steel-316l", "titanium-2",
)  # fmt: skip
PASSES = (("tack", "Tack"), ("weld", "Weld"), ("leveling", "Leveling"))


def settings_table_html(joint: str, text: str, shop: Shop = NO_SHOP) -> str:
    """The table of a joint; ``text`` holds ``thickness = 1 mm, 2 mm`` and, where wanted, ``metals`` and ``source``.

    The shop's values for the calculator, such as the limits of its machine, go before those of its example.
    Raises ``PageError`` for a line that is not one of these, and where the calculator refuses its field.
    """
    given = form.read_presets(text)
    source, thicknesses = given.pop("source", "laser"), _parts(given.pop("thickness", ""))
    chosen = _parts(given.pop("metals", "")) or list(METALS)
    if given or not thicknesses:
        raise PageError("A settings table is written with thickness = 1 mm, 2 mm, and may have metals and source.")
    house = _house_values(shop, source)
    fixed = {**house, "joint": joint, "source": source}
    rows = "".join(_metal_rows(metal, thicknesses, fixed, house) for metal in chosen)
    heads = "".join(f'<th scope="col">{words}</th>' for _, words in PASSES)
    return (
        f'<div class="own-values" data-own-values="{source}" hidden></div>'
        f'<div class="wide-table"><table class="settings" data-own-calculator="{CALCULATOR}">'
        f"<caption>{escape(_caption(source, house))}</caption>"
        '<thead><tr><th scope="col">Metal</th><th scope="col">Thick</th><th scope="col">First test spot</th>'
        f"{heads}</tr></thead>{rows}</table></div>"
    )


def _house_values(shop: Shop, source: str) -> dict[str, str]:
    """The shop's values that the table does not set itself: those of its laser don't speak for an arc."""
    calculator = form.find(CALCULATOR)
    values = shop.values_for(calculator)
    if values.get("source", calculator.example()["source"]) != source:
        return {}
    return {name: value for name, value in values.items() if name not in ("joint", "source", "metal", "thickness")}


def _parts(text: str) -> list[str]:
    return [part for part in (one.strip() for one in text.split(",")) if part]


def _caption(source: str, house: Mapping[str, str]) -> str:
    limits = {**form.find(CALCULATOR).example(), **house}
    machine = "an arc" if source == "arc" else "a laser"
    whose = " (house values)" if {"max_energy", "max_peak_power"} & set(house) else ""
    return (
        f"Starting points from the model, for {machine} of up to {limits['max_energy']} and "
        f"{limits['max_peak_power']}{whose}. Each range runs from the most to the least that the metal may take in. "
        "Begin at the first test spot, on scrap, never in the middle."
    )


def _metal_rows(key: str, thicknesses: list[str], fixed: dict[str, str], house: Mapping[str, str]) -> str:
    name = next((one.name for one in metals() if one.key == key), None)
    if name is None:
        raise PageError(f"The settings table names no metal {key}: use the key that the metals data gives it.")
    rows = []
    for place, thickness in enumerate(thicknesses):
        head = f'<th scope="rowgroup" rowspan="{len(thicknesses)}">{escape(name)}</th>' if place == 0 else ""
        rows.append(_row(head, {**fixed, "metal": key, "thickness": thickness}, house))
    return f"<tbody>{''.join(rows)}</tbody>"


def _row(head: str, fields: dict[str, str], house: Mapping[str, str]) -> str:
    told = answer(CALCULATOR, fields)
    start = f'<tr data-fields="{escape(json.dumps(fields))}">{head}<th scope="row">{fields["thickness"]}</th>'
    if "errors" in told:
        if set(told["errors"]) - {"max_energy", "max_peak_power", *house}:
            raise PageError(f"The settings table can't be worked out: {'; '.join(told['errors'].values())}.")
        return f'{start}<td colspan="4">Out of reach of this machine: see the calculator below.</td></tr>'
    results: dict[str, dict[str, Any]] = told["results"]
    cells = "".join(
        f"<td><b>{_shown(results, f'{name}_energy', 'range')}</b> "
        f"<small>{_shown(results, f'{name}_duration')}, {_shown(results, f'{name}_spot')}</small></td>"
        for name, _ in PASSES
    )
    return f"{start}<td>{_shown(results, 'ladder_first')}</td>{cells}</tr>"


def _shown(results: dict[str, dict[str, Any]], name: str, part: str = "text") -> str:
    known = results[name]
    text = escape(known.get(part, known["text"]).replace(" ", "\u00a0"))
    return f'<span data-result="{name}" data-part="{part}">{text}</span>'
