"""The usual jobs of a bench each lead to a page; each word of the trade and the standards can be looked up."""

from __future__ import annotations

import re
from typing import Any

import pytest

from tests.build import pages

JOBS: list[dict[str, Any]] = pages.data("bench_jobs")["job"]
VOCABULARY = pages.data("joint_vocabulary")
GLOSSARY = "reference/glossary"


@pytest.mark.parametrize("job", JOBS, ids=lambda one: one["name"])
def test_a_bench_job_leads_to_a_page_with_its_joints(job: dict[str, Any]) -> None:
    assert job["pages"]
    linked = set().union(*(pages.links(path) for path in job["pages"]))
    for joint in job["joints"]:
        assert f"joints/{joint}" in linked, f"no link to the {joint} guide"


@pytest.mark.parametrize("job", JOBS, ids=lambda one: one["name"])
def test_the_page_of_a_job_tells_what_goes_wrong_with_it(job: dict[str, Any]) -> None:
    told = " ".join(pages.words(path) for path in job["pages"])
    missing = [sign for sign in job["signs"] if not any(one in told for one in sign.split("|"))]
    assert not missing


@pytest.mark.parametrize("term", VOCABULARY["term"], ids=lambda one: one["name"])
def test_a_word_of_the_joint_stands_in_the_glossary(term: dict[str, Any]) -> None:
    assert term["heading"] in pages.headings(GLOSSARY, 3)
    assert term["standard"].lower() in pages.words(GLOSSARY), f"the glossary lacks {term['standard']}"


@pytest.mark.parametrize("term", [one for one in VOCABULARY["term"] if one["numbers"]], ids=lambda one: one["name"])
def test_the_number_of_a_flaw_stands_beside_its_word(term: dict[str, Any]) -> None:
    table = pages.text(GLOSSARY).partition("## Names in the standards")[2]
    lines = [line for line in table.splitlines() if term["standard"].lower() in line.lower()]
    found = {number for line in lines for number in re.findall(r"\b\d{3,4}\b", line)}
    assert set(term["numbers"]) <= found, f"{term['standard']}: {sorted(found)}"


@pytest.mark.parametrize("symbol", VOCABULARY["symbol"], ids=lambda one: one["name"])
def test_a_symbol_of_a_drawing_stands_in_the_glossary(symbol: dict[str, Any]) -> None:
    table = pages.text(GLOSSARY).partition("## Symbols on a drawing")[2].lower()
    assert f"| {symbol['name'].lower()} |" in table
