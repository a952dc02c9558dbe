"""The metals with their figures: one family, or the part of it that has a color or a base metal."""

from __future__ import annotations

from xml.etree import ElementTree

from markdown.util import AtomicString

from build_scripts import citations
from build_scripts.errors import PageError, nearest
from calculators import strengths
from calculators.data import MARKS, Figure, figure, load
from calculators.heat.heat_metals import heat_keys, heat_metal
from calculators.metals import Metal, metals
from calculators.units import number_text

# A property of the data by which a table shows part of a family: ``color = yellow, rose`` or ``base = Cu``.
PARTS = ("color", "base")
WORDS = {
    "polished": "Light taken in at 1064 nm, polished",
    "absorptivity": "Light taken in at 1064 nm, as the bench meets it",
    "conductivity": "Conductivity, mean from 20 °C to melting",
    "conductivity_cold": "Conductivity at 20 °C",
    "conductivity_liquid": "Conductivity of the liquid",
    "heat_capacity": "Heat capacity, mean from 20 °C to melting",
    "heat_capacity_cold": "Heat capacity at 20 °C",
    "latent_heat": "Heat of melting",
    "boiling": "Boils at",
}


def metal_table(family: str, text: str = "") -> ElementTree.Element:
    """Every metal of a family with each of its figures, where the figure comes from and how far it was checked.

    ``text`` may hold one ``property = value, value`` a line; only the metals with one of these values are shown.
    Raises ``PageError`` for an unknown family, property or value.
    """
    shown = part_of(family, text)
    whole = ElementTree.Element("div", {"class": "metal-figures"})
    if len(shown) > 2:
        _jumps(whole, shown)
    box = ElementTree.SubElement(whole, "div", {"class": "wide-table"})
    table = ElementTree.SubElement(box, "table", {"class": "metals"})
    head = ElementTree.SubElement(ElementTree.SubElement(table, "thead"), "tr")
    for words in ("Figure", "Value", "How it is known"):
        ElementTree.SubElement(head, "th", {"scope": "col"}).text = words
    light = light_of(family)
    if light:
        body = ElementTree.SubElement(table, "tbody")
        title = ElementTree.SubElement(ElementTree.SubElement(body, "tr"), "th", {"scope": "rowgroup", "colspan": "3"})
        title.text = "All metals of this table"
        for name, one in light.items():
            body.append(_figure_row(name, one))
    for metal in shown:
        table.append(_metal_rows(metal))
    return whole


def _jumps(parent: ElementTree.Element, shown: list[Metal]) -> None:
    """A line of links to the metals of a long table."""
    line = ElementTree.SubElement(parent, "p", {"class": "jumps"})
    for place, metal in enumerate(shown):
        link = ElementTree.SubElement(line, "a", {"href": f"#metal-{metal.key}"})
        link.text = AtomicString(metal.name)
        link.tail = " · " if place < len(shown) - 1 else ""


def part_of(family: str, text: str = "") -> list[Metal]:
    """The metals of a family that have the properties named in ``text``. Raises ``PageError`` as above."""
    shown = [one for one in metals() if one.family == family]
    if not shown:
        raise PageError(
            f"There is no metal family {family}. {nearest(family, dict.fromkeys(one.family for one in metals()))}"
        )
    for line in filter(None, map(str.strip, text.splitlines())):
        name, equals, value = (part.strip() for part in line.partition("="))
        if not equals or name not in PARTS:
            raise PageError(f"A part of a family is written as color = yellow, rose or base = Cu, not as {line}.")
        wanted = {one.strip() for one in value.split(",")}
        known = {getattr(one, name) for one in shown}
        for one in wanted - known:
            raise PageError(f"No metal of the family {family} has the {name} {one}. {nearest(one, known)}")
        shown = [one for one in shown if getattr(one, name) in wanted]
    return shown


def light_of(key: str) -> dict[str, Figure]:
    """The shares of light that a family, or one metal with a line of its own, takes in."""
    rows = load("heat_properties")["family"].get(key, {})
    return {name: figure(rows[name]) for name in ("polished", "absorptivity") if name in rows}


def all_figures(metal: Metal) -> dict[str, Figure]:
    """Density, melting, strengths, hardness and heat figures of a metal, each once, in the order of a table."""
    found = {"density": metal.density, **metal.figures, **strengths.figures(metal), **light_of(metal.key)}
    if metal.key in heat_keys():
        found = {**heat_metal(metal).figures, **found}
    order = ["density", "solidus", "liquidus", *WORDS]
    return dict(sorted(found.items(), key=lambda item: order.index(item[0]) if item[0] in order else len(order)))


def _metal_rows(metal: Metal) -> ElementTree.Element:
    rows = ElementTree.Element("tbody", {"id": f"metal-{metal.key}"})
    title = ElementTree.SubElement(ElementTree.SubElement(rows, "tr"), "th", {"scope": "rowgroup", "colspan": "3"})
    title.text = AtomicString(metal.name)
    if metal.fineness:
        ElementTree.SubElement(title, "small").text = AtomicString(f" fineness {number_text(metal.fineness)} ‰")
    if metal.composition:
        rows.append(_composition_row(metal))
    for name, one in all_figures(metal).items():
        rows.append(_figure_row(name, one))
    return rows


def _composition_row(metal: Metal) -> ElementTree.Element:
    made_of = ", ".join(f"{element} {number_text(share)}" for element, share in metal.composition.items())
    note = "nominal; makers differ" if len(metal.composition) > 1 else ""
    return _row("Made of, % by mass", made_of, metal.composition_mark, metal.composition_source, note)


def _figure_row(name: str, one: Figure) -> ElementTree.Element:
    words = WORDS.get(name, name.replace("_", " "))
    shown = _percent(one) if name in ("polished", "absorptivity") else one.text()
    return _row(words[:1].upper() + words[1:], shown, one.mark, one.source, one.note)


def _percent(one: Figure) -> str:
    value, low, high = (None if end is None else f"{100 * end.magnitude:.2g}" for end in (one.value, one.low, one.high))
    return f"{value} %" + (f" ({low} to {high})" if low and high else "")


def _row(words: str, value: str, mark: str, source: str, note: str) -> ElementTree.Element:
    row = ElementTree.Element("tr")
    ElementTree.SubElement(row, "th", {"scope": "row"}).text = AtomicString(words)
    ElementTree.SubElement(row, "td").text = AtomicString(value)
    origin = ElementTree.SubElement(row, "td")
    origin.text = AtomicString(MARKS[mark] + (f"; {note}" if note else "") + " ")
    if source:
        origin.append(citations.link(source))
    return row
