"""The metals reference: a page for each family, each metal on one page, every figure with its origin."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from build_scripts import data_tables, metal_tables
from build_scripts.drawings.metals_scales import ZINC_BOILS
from build_scripts.errors import PageError
from build_scripts.markdown_blocks import REPO
from calculators.data import MARKS, load
from calculators.metals import metals

FOLDER = REPO / "docs/reference/metals"
PAGES = sorted(one for one in FOLDER.glob("*.md") if one.stem != "index")
SECTIONS = [
    "What it is", "How to tell it", "How it takes heat", "Surface, gas, pulse", "Metal to add", "What heat ruins",
    "Hardness beside the seam", "Finish", "Fume and skin", "In each joint", "What goes wrong", "Figures",
    "Check yourself", "Sources",
]  # fmt: skip
TABLE = re.compile(r"^/// metal-table \| (\S+)\n(.*?)^///$", re.MULTILINE | re.DOTALL)


def tables(page: Path) -> list[tuple[str, str]]:
    """Family and options of each table of metals on a page."""
    return TABLE.findall(page.read_text(encoding="utf-8"))


def test_each_family_has_a_page_and_each_metal_stands_on_one() -> None:
    shown = [
        (metal.key, page.stem) for page in PAGES for table in tables(page) for metal in metal_tables.part_of(*table)
    ]
    assert sorted(key for key, _ in shown) == sorted(metal.key for metal in metals())
    families = {metal.key: metal.family for metal in metals()}
    assert {families[key] for key, _ in shown} == {metal.family for metal in metals()}


@pytest.mark.parametrize("page", PAGES, ids=lambda page: page.stem)
def test_a_page_has_its_sections_in_order_drawings_and_links(page: Path) -> None:
    text = page.read_text(encoding="utf-8")
    assert re.findall(r"^## (.+)$", text, re.MULTILINE) == SECTIONS
    assert "/// drawing | metals-" in text
    assert text.index("/// danger") < text.index("## What it is")
    assert len(set(re.findall(r"\(\.\./\.\./faults/([\w-]+)\.md\)", text))) >= 5
    assert {"butt", "edge", "lap", "plug"} <= set(re.findall(r"\(\.\./\.\./joints/([\w-]+)\.md\)", text))
    assert text.count("/// question |") >= 3
    assert "Unmarked claims in the text of this page are common practice, no source." in text
    assert "from memory" in text


@pytest.mark.parametrize("page", PAGES, ids=lambda page: page.stem)
def test_every_row_of_a_page_s_tables_shows_its_origin(page: Path) -> None:
    assert tables(page)
    for table in tables(page):
        rows = [row for row in metal_tables.metal_table(*table).iter("tr") if row.find("td") is not None]
        assert rows
        for row in rows:
            name, value, origin = row
            assert name.text
            assert value.text
            told = origin.text or ""
            assert told.startswith(tuple(MARKS.values()))
            if told.startswith(("published", "second-hand")):
                assert len(origin), f"{page.stem}: {name.text} names no source"


def test_every_metal_has_a_melting_range() -> None:
    for metal in metals():
        assert {"solidus", "liquidus"} <= set(metal.figures), metal.key


def test_a_white_gold_holds_a_bleacher_and_no_other_does() -> None:
    for metal in metals():
        assert (metal.family == "gold") == (metal.color in ("yellow", "white", "rose"))
        if metal.family == "gold":
            bleached = metal.composition.get("Ni", 0) + metal.composition.get("Pd", 0) > 0
            assert (metal.color == "white") == bleached, metal.key
        if metal.color == "rose":
            assert metal.composition["Cu"] > 2 * metal.composition["Ag"]


def test_the_index_leads_to_all_and_compares_all() -> None:
    text = (FOLDER / "index.md").read_text(encoding="utf-8")
    for block in ("/// pages | reference/metals", "/// data-table | metals-compared", "/// calculator | density-check"):
        assert block in text
    rows = [row for row in data_tables.build("metals-compared").iter("tr") if row.find("td") is not None]
    assert len(rows) == len(metals())
    for row in rows:
        known = row[-1]
        assert known.get("class") == "known"
        assert len(known), row[0].text


@pytest.mark.parametrize(
    ("text", "says"),
    [
        ("color = green", "has the color green"),
        ("shade = white", "A part of a family"),
        ("white", "A part of a family"),
    ],
)
def test_a_part_that_the_data_lack_stops_the_build(text: str, says: str) -> None:
    with pytest.raises(PageError, match=says):
        metal_tables.metal_table("gold", text)


def test_the_drawn_boiling_of_zinc_is_that_of_the_data() -> None:
    notes = [row["boiling"].get("note", "") for key, row in load("heat_properties").items() if key != "family"]
    told = {float(found[1]) for note in notes if (found := re.search(r"zinc in it boils at (\d+)", note))}
    assert told == {ZINC_BOILS}
