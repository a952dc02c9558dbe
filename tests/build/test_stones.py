"""The page on stones and heat shows the data file, line by line, with its marks and sources."""

from __future__ import annotations

from typing import Any

import pytest

from build_scripts.markdown_blocks import REPO
from calculators.data import MARKS, figure, load, sources
from calculators.units import magnitude

PAGE = (REPO / "docs/reference/stones-heat.md").read_text(encoding="utf-8")
ROWS = {tuple(cell.strip() for cell in line.strip("| ").split(" | ")) for line in PAGE.splitlines() if "|" in line}
LIMITS: list[dict[str, Any]] = load("stones")["limit"]
TORCH: list[dict[str, Any]] = load("stones")["torch"]


def how_known(table: dict[str, Any]) -> str:
    """The mark as the page prints it, with the citation where there is a source."""
    assert table["mark"] in MARKS
    if not table["source"]:
        assert table["mark"] not in ("published", "second-hand"), "this mark names a source"
        return str(table["mark"])
    assert table["source"] in sources()
    return f"{table['mark']} [@{table['source']}]"


@pytest.mark.parametrize("row", LIMITS, ids=lambda row: row["key"])
def test_a_limit_stands_on_the_page_as_in_the_data(row: dict[str, Any]) -> None:
    limit = magnitude(figure(row["limit"]).value, "degC")
    assert (
        row["name"],
        row["behavior"],
        how_known(row),
        f"{limit:.0f}\N{NO-BREAK SPACE}°C",
        how_known(row["limit"]),
    ) in ROWS


@pytest.mark.parametrize("row", TORCH, ids=lambda row: row["key"])
def test_a_stone_stands_on_the_page_as_in_the_data(row: dict[str, Any]) -> None:
    assert row["tier"] in "BCDE"
    assert (row["name"], row["mohs"] or "n/a", row["tier"], row["why"], how_known(row)) in ROWS


def test_the_page_has_no_line_that_the_data_lack() -> None:
    limits = [row for row in ROWS if len(row) == 5 and row[3].endswith("°C")]
    tiers = [row for row in ROWS if len(row) == 5 and row[2] in tuple("BCDE")]
    assert (len(limits), len(tiers)) == (len(LIMITS), len(TORCH))


def test_the_page_warns_before_it_tells() -> None:
    assert PAGE.index("/// danger") < PAGE.index("## Planning limits")
    assert "never as permission" in PAGE
