"""The learning path: eight sittings in order, each with everything a learner and the lead need."""

from __future__ import annotations

import json
import re
from html import unescape
from pathlib import Path
from urllib.parse import parse_qsl

import pytest

from build_scripts import drawings
from calculators.run import run_json

DOCS = Path(__file__).resolve().parents[2] / "docs"
LEARN = DOCS / "learn"
SITTINGS = sorted(LEARN.glob("[0-9]*.md"))
SECTIONS = [
    "What you need",
    "Safety check before",
    "Steps",
    "The practice piece",
    "How you judge it",
    "What goes wrong",
    "Check yourself",
    "What the lead signs",
    "Sources",
]
QUESTION = re.compile(r"^/// question \| ([^\n]+)\n(.*?)^///$", re.MULTILINE | re.DOTALL)
DRAWING = re.compile(r"^\s*/// drawing \| ([\w-]+)$", re.MULTILINE)
WEIGHT = re.compile(r'<a href="(?:\.\./)?#([^"]+)">(\d+(?:\.(\d+))?) g</a>')

each_sitting = pytest.mark.parametrize("page", SITTINGS, ids=lambda page: page.stem)


def part(text: str, heading: str) -> str:
    """What stands under a second-level heading."""
    return text.split(f"\n## {heading}\n", 1)[1].split("\n## ", 1)[0]


def test_there_are_eight_and_the_index_leads_to_each_in_order() -> None:
    assert [page.stem.partition("-")[0] for page in SITTINGS] == [str(number) for number in range(1, 9)]
    index = (LEARN / "index.md").read_text(encoding="utf-8")
    listed = re.search(r'<div class="sittings" markdown>(.*?)</div>', index, re.DOTALL)
    assert listed
    assert re.findall(r"\]\(([\w-]+\.md)\)", listed[1]) == [page.name for page in SITTINGS]


@each_sitting
def test_each_leads_to_the_next(page: Path) -> None:
    place = SITTINGS.index(page)
    following = SITTINGS[place + 1].name if place + 1 < len(SITTINGS) else "sign-off.md"
    assert f"]({following})" in part(page.read_text(encoding="utf-8"), "What the lead signs")


@each_sitting
def test_each_has_its_parts_in_order(page: Path) -> None:
    text = page.read_text(encoding="utf-8")
    assert re.findall(r"^## (.+)$", text, re.MULTILINE) == SECTIONS
    before = text.split("\n## ", 1)[0]
    assert "\nAt the end " in before
    assert "/// danger" in before
    for row in ("Time", "Metal", "Who is there", "Read first"):
        assert f"| {row} | " in before
    assert "The lead says yes" in part(text, "Safety check before")
    assert "| What | Measure | Passed |" in part(text, "How you judge it")


@each_sitting
def test_each_asks_enough_and_answers(page: Path) -> None:
    text = page.read_text(encoding="utf-8")
    asked = QUESTION.findall(part(text, "Check yourself"))
    assert len(asked) >= 6
    assert all(answer.strip() for _, answer in asked)
    # Marks are kept by the question's words.
    assert len({question for question, _ in asked}) == len(asked)
    assert any(question.lower().startswith("why") for question, _ in asked)
    assert any("what if" in question.lower() for question, _ in asked)
    index = (LEARN / "index.md").read_text(encoding="utf-8")
    told = re.search(rf"{re.escape(page.name)}\)\n\n    .*?(\d+) questions\.", index)
    assert told
    assert int(told[1]) == len(asked)


@each_sitting
def test_each_is_drawn_and_leads_to_faults(page: Path) -> None:
    text = page.read_text(encoding="utf-8")
    shown = DRAWING.findall(text)
    strips = re.findall(r"^([\w-]+) \| .+$", text, re.MULTILINE)
    assert any(slug.startswith("learn-") for slug in [*shown, *strips])
    for slug in shown:
        drawings.find(slug)
    linked = re.findall(r"\]\(\.\./faults/([\w-]+\.md)", part(text, "What goes wrong"))
    assert len(set(linked)) >= 3
    assert all((DOCS / "faults" / name).is_file() for name in linked)


@each_sitting
def test_every_weight_is_what_the_calculator_says(page: Path) -> None:
    told = WEIGHT.findall(page.read_text(encoding="utf-8"))
    assert len(told) >= 2
    for address, grams, decimals in told:
        fields = dict(parse_qsl(unescape(address)))
        question = {"calculator": fields.pop("calculator"), "fields": fields}
        answer = json.loads(run_json(json.dumps(question)))
        assert "errors" not in answer
        assert abs(answer["results"]["mass"]["value"] - float(grams)) <= 0.5001 * 10 ** -len(decimals)


@each_sitting
def test_time_and_metal_are_the_same_on_the_index(page: Path) -> None:
    text = page.read_text(encoding="utf-8")
    index = (LEARN / "index.md").read_text(encoding="utf-8")
    line = re.search(rf"{re.escape(page.name)}\)\n\n    (.+)", index)
    hours, metal = (re.search(rf"^\| {row} \| ([^|]+?) \|$", text, re.MULTILINE) for row in ("Time", "Metal"))
    assert line
    assert hours
    assert metal
    assert line[1].startswith(hours[1].split(",")[0])
    assert set(re.findall(r"[\d.]+ g\b", metal[1])) == set(re.findall(r"[\d.]+ g\b", line[1]))


def test_the_sign_off_sheet_has_a_box_for_every_joint_and_every_thing_seen() -> None:
    text = (LEARN / "sign-off.md").read_text(encoding="utf-8")
    matrix = re.search(r'<table class="form matrix">(.*?)</table>', text, re.DOTALL)
    assert matrix
    columns = re.findall(r'<th scope="col">([^<]+)</th>', matrix[1])
    assert columns == ["Joint", "Fit", "Tack", "Weld", "Level", "Inspect", "Test piece", "Safety", "Metals allowed"]
    joints = re.findall(r'<tr><th scope="row">([^<]+)<small>', matrix[1])
    assert joints == ["Butt", "Edge", "Lap", "Plug", "T and corner", "Pit fill"]
    assert matrix[1].count("<td></td>") == len(joints) * (len(columns) - 1)
    for words in ("Name", "Lead", "Machine", "May work alone on", "Next review"):
        assert words in text
