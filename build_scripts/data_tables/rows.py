"""What the data tables are put together from: cells, the cell that says how a row is known, the table itself."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from typing import NamedTuple
from xml.etree import ElementTree

from markdown.util import AtomicString

from build_scripts import citations
from calculators.data import MARKS, Figure

Cell = str | ElementTree.Element
KNOWN = "How it is known"


class Origin(NamedTuple):
    """Where one value of a row comes from: what it is, its mark, the key of its source or nothing."""

    what: str
    mark: str
    source: str = ""


def origin(what: str, figure: Figure) -> Origin:
    """The origin of a figure of the data."""
    return Origin(what, figure.mark, figure.source)


def two_lines(first: str, second: str) -> ElementTree.Element:
    """A cell with a quieter second line."""
    cell = ElementTree.Element("td")
    cell.text = AtomicString(first)
    if second:
        small = ElementTree.SubElement(cell, "small")
        small.text = AtomicString(second)
    return cell


def known(origins: Iterable[Origin]) -> ElementTree.Element:
    """The cell that says how a row is known: one mark where all values share it, else each value with its own."""
    by_mark: dict[str, list[Origin]] = {}
    for one in origins:
        by_mark.setdefault(one.mark, []).append(one)
    cell = ElementTree.Element("td", {"class": "known"})
    for mark, ones in by_mark.items():
        part = ElementTree.SubElement(cell, "span")
        whats = ", ".join(dict.fromkeys(one.what for one in ones if one.what))
        named = f"{whats}: " if len(by_mark) > 1 and whats else ""
        part.text = AtomicString(f"{named}{MARKS[mark]} ")
        for source in dict.fromkeys(one.source for one in ones if one.source):
            part.append(citations.link(source))
    return cell


def table(
    name: str, caption: str, heads: Sequence[str], groups: Iterable[tuple[str, Iterable[Sequence[Cell]]]]
) -> ElementTree.Element:
    """A table whose rows stand in groups with a title each; an empty title means no title row.

    The first cell of a row is its heading. A head may have a unit behind a bar: ``"Thickness|mm"``.
    """
    box = ElementTree.Element(
        "div", {"class": "table-scroll", "tabindex": "0", "role": "region", "aria-label": caption.partition(".")[0]}
    )
    made = ElementTree.SubElement(box, "table", {"class": "data-table", "data-table": name})
    ElementTree.SubElement(made, "caption").text = AtomicString(caption)
    row = ElementTree.SubElement(ElementTree.SubElement(made, "thead"), "tr")
    for head in heads:
        words, _, unit = head.partition("|")
        cell = ElementTree.SubElement(row, "th", {"scope": "col"})
        cell.text = AtomicString(words)
        if unit:
            ElementTree.SubElement(cell, "small").text = AtomicString(unit)
    for title, rows in groups:
        body = ElementTree.SubElement(made, "tbody")
        if title:
            line = ElementTree.SubElement(body, "tr")
            ElementTree.SubElement(line, "th", {"scope": "rowgroup", "colspan": str(len(heads))}).text = AtomicString(
                title
            )
        for cells in rows:
            _row(body, cells)
    return box


def _row(body: ElementTree.Element, cells: Sequence[Cell]) -> None:
    row = ElementTree.SubElement(body, "tr")
    for place, cell in enumerate(cells):
        made = cell if isinstance(cell, ElementTree.Element) else two_lines(cell, "")
        if place == 0:
            made.tag = "th"
            made.set("scope", "row")
        row.append(made)
