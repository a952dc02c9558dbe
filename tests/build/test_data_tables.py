"""The tables that the build makes from the data: figures of the reference notes, a mark on every row."""

from __future__ import annotations

import re
from xml.etree import ElementTree

import markdown
import pytest

from build_scripts import data_tables
from build_scripts.errors import PageError
from calculators.data import MARKS, sources
from calculators.run import answer

# Reference notes on units: B&S by its law, SWG from a textbook, share of the one over the other; drills in inches.
GAUGES = {
    "14": (1.6277, 2.032, 24.8),
    "16": (1.2908, 1.626, 25.9),
    "22": (0.644, 0.711, 10.5),
    "24": (0.5106, 0.559, 9.4),
    "26": (0.405, 0.457, 12.9),
}
DRILLS = {"50": 0.0700, "54": 0.0550, "61": 0.0390, "69": 0.0292, "74": 0.0225, "80": 0.0135}
FACTORS = {("g", "dwt"): 0.6430149, ("kg", "ozt"): 32.15075, ("g", "ct"): 5.0}
UNITS = {"pennyweight (dwt)": 1.55517384, "ounce avoirdupois (oz)": 28.349523125, "carat (ct), stones": 0.2}


def rows(name: str, options: str = "") -> list[list[str]]:
    """The rows of a table as plain text, its title rows left out."""
    table = data_tables.build(name, options)
    found = [["".join(cell.itertext()) for cell in line] for line in table.iter("tr")]
    return [cells for cells in found[1:] if len(cells) > 1]


def number(text: str) -> float:
    return float(re.sub(r"[^0-9.]", "", text))


@pytest.mark.parametrize("name", sorted(data_tables.all_tables()))
def test_every_row_says_how_it_is_known(name: str) -> None:
    table = data_tables.build(name)
    bodies = [line for body in table.iter("tbody") for line in body if len(line) > 1]
    assert bodies
    for line in bodies:
        assert line[0].tag == "th"
        assert line[0].get("scope") == "row"
        last = line[-1]
        assert last.get("class") == "known"
        for part in last:
            words = (part.text or "").rpartition(": ")[2].strip()
            assert words in MARKS.values()
            keys = [one.get("data-key") for one in part.iter("a")]
            assert set(keys) <= set(sources())
            assert keys or words not in ("published", "second-hand"), f"{line[0].text} names no source"


def test_the_two_gauges_stand_in_their_own_columns() -> None:
    by_number = {line[0]: line for line in rows("gauges")}
    for name, (bs, swg, share) in GAUGES.items():
        line = by_number[name]
        assert number(line[1]) == pytest.approx(bs, abs=0.0006)
        assert number(line[3]) == pytest.approx(swg, abs=0.0006)
        assert number(line[2]) == pytest.approx(bs / 25.4, abs=0.0001)
        assert number(line[4]) == pytest.approx(swg / 25.4, abs=0.0001)
        assert number(line[5]) == pytest.approx(share, abs=0.55)


def test_number_drills_agree_with_the_reference_notes() -> None:
    found = {line[0]: line for line in rows("number-drills")}
    assert list(found) == [str(one) for one in range(80, 49, -1)]
    for name, inch in DRILLS.items():
        assert number(found[name][2]) == pytest.approx(inch, abs=0.00005)
    for line in found.values():
        assert number(line[3]) >= number(line[1]) - 0.0006


def test_the_drill_for_a_post_is_never_smaller_than_its_wire() -> None:
    for line in rows("post-drills"):
        wire, metric = number(line[1]), number(line[2])
        in_brackets = number(line[3].partition("(")[2])
        assert metric >= wire - 0.005
        assert in_brackets >= wire - 0.01


def test_factors_and_exact_units() -> None:
    found = {(line[0], line[1]): number(line[2]) for line in rows("unit-factors")}
    for pair, value in FACTORS.items():
        assert found[pair] == pytest.approx(value, rel=1e-5)
    exact = {line[0]: number(line[1]) for line in rows("units")}
    for name, value in UNITS.items():
        assert exact[name] == pytest.approx(value, rel=1e-11)


def test_what_british_law_asks_of_solder_and_lets_you_add() -> None:
    # Hallmarking Act 1973, sections 4(3) and 5(4), text in force from 6 April 2025
    solder = {line[0]: number(line[1]) for line in rows("solder-law", "place = uk")}
    assert solder["Gold from 375"] == 375
    assert solder["Gold from 916"] == 750
    assert solder["Silver from 800"] == 650
    assert solder["Platinum from 850"] == 950
    assert solder["Palladium from 950"] == 700
    added = {line[0]: (number(line[1]), number(line[2])) for line in rows("addition-law", "place = uk")}
    assert added == {"Gold": (1, 50), "Silver": (5, 50), "Platinum": (0.5, 50), "Palladium": (1, 50)}


def test_one_place_only() -> None:
    html = ElementTree.tostring(data_tables.build("fineness-law", "place = us"), encoding="unicode")
    assert "United Kingdom" not in html
    assert len(rows("fineness-law", "place = us")) == 3


def test_a_wrong_name_or_option_stops_the_build() -> None:
    with pytest.raises(PageError, match=r"There is no data table gauge\. The nearest is gauges"):
        data_tables.build("gauge")
    with pytest.raises(PageError, match="no option country"):
        data_tables.build("fineness-law", "country = uk")
    with pytest.raises(PageError, match="no option place"):
        data_tables.build("gauges", "place = uk")
    with pytest.raises(PageError, match=r"There is no law of fin in the data\. The nearest is finland"):
        data_tables.build("fineness-law", "place = fin")
    with pytest.raises(PageError, match="is written as place = uk"):
        data_tables.build("fineness-law", "uk")


def test_the_block_puts_the_table_and_its_citations_on_the_page() -> None:
    text = "/// data-table | number-drills\n///\n\n/// cited\n///\n"
    html = markdown.markdown(text, extensions=["tables", "toc", "build_scripts.markdown_blocks"])
    assert 'data-table="number-drills"' in html
    assert re.findall(r'<li id="cited-([\w-]+)">', html) == ["drill-table", "drill-code"]


def test_wax_becomes_metal_by_the_ratio_of_the_densities() -> None:
    # Fill geometry check G18 of the reference notes: 1.20 g of wax at 0.96 becomes 19.31 g of 18 ct at 15.45
    factor = {line[0]: number(line[3]) for line in rows("densities")}
    assert 1.2 * factor["18k yellow gold"] == pytest.approx(19.31, abs=0.06)  # the table shows one decimal


def test_the_weight_of_wire_is_that_of_the_calculator() -> None:
    found = {line[0]: number(line[2]) for line in rows("densities")}
    for metal, name in (("sterling", "Sterling silver"), ("24k-yellow", "Fine gold, 24k")):
        got = answer("stock-weight", {"shape": "round-wire", "diameter": "1 mm", "length": "100 mm", "metal": metal})
        assert found[name] == pytest.approx(got["results"]["mass"]["value"], abs=0.0006)
