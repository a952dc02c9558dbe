"""The settings tables of the joint guides: what the calculator answers, nothing typed by hand."""

from __future__ import annotations

import json
import re
from html import unescape
from pathlib import Path

import pytest

from build_scripts.bootstrap import REPO
from build_scripts.errors import PageError
from build_scripts.settings_table import settings_table_html
from calculators.run import answer

GUIDES = sorted(one for one in (REPO / "docs/joints").glob("*.md") if one.stem != "index")
_ROW = re.compile(r'<tr data-fields="([^"]*)">(.*?)</tr>')
_PART = re.compile(r'<span data-result="(\w+)" data-part="(\w+)">([^<]*)</span>')


def rows(html: str) -> list[tuple[dict[str, str], str]]:
    return [(json.loads(unescape(fields)), inside) for fields, inside in _ROW.findall(html)]


@pytest.mark.parametrize("source", ["laser", "arc"])
def test_every_cell_is_the_calculator_s_answer(source: str) -> None:
    table = rows(settings_table_html("plug", f"thickness = 0.5 mm, 1 mm\nsource = {source}"))
    assert len(table) == 20
    for fields, inside in table:
        assert fields["joint"] == "plug"
        assert fields["source"] == source
        results = answer("start-settings", fields)["results"]
        shown = _PART.findall(inside)
        assert len(shown) == 10
        for name, part, text in shown:
            known = results[name]
            assert text.replace("\u00a0", " ") == known.get(part, known["text"])


def test_a_machine_that_cannot_is_said_to() -> None:
    html = settings_table_html("butt", "thickness = 1.5 mm\nmetals = copper")
    assert "Out of reach of this machine" in html
    assert "data-result" not in html


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("metals = copper", "thickness = 1 mm, 2 mm"),
        ("thickness = 1 mm\ncolor = red", "may have metals and source"),
        ("thickness = 1 mm\nmetals = unobtainium", "no metal unobtainium"),
        ("thickness = 90 mm\nmetals = copper", "must be between"),
        ("thickness = 1 mm\nsource = sun", "Choose the machine"),
    ],
)
def test_a_slip_in_the_page_stops_the_build(text: str, told: str) -> None:
    with pytest.raises(PageError, match=re.escape(told)):
        settings_table_html("butt", text)


@pytest.mark.parametrize("guide", GUIDES, ids=lambda one: one.stem)
def test_every_joint_guide_has_its_tables_and_the_way_to_narrow_them(guide: Path) -> None:
    text = guide.read_text(encoding="utf-8")
    tables = re.findall(r"^/// settings-table \| ([\w-]+)\n((?:.+\n)+?)///$", text, re.MULTILINE)
    assert [joint for joint, _ in tables] == [guide.stem, guide.stem]
    assert [("source = arc" in lines) for _, lines in tables] == [False, True]
    assert re.search(rf"^/// calculator \| start-settings\njoint = {guide.stem}$", text, re.MULTILINE)
    assert "/// calculator | test-spots" in text
