"""Every reference case, refusal and regression of tests/cases and tests/regressions, through the one door."""

from __future__ import annotations

import pytest

from calculators.declare import all_calculators
from calculators.run import answer
from tests.case_files import MARKS, Case, read

REFERENCE, REFUSALS, REGRESSIONS = read("cases", "case"), read("cases", "refusal"), read("regressions", "case")


def _check(case: Case) -> None:
    data = answer(case.slug, case.fields)
    assert "errors" not in data, data
    assert case.expect, "a case must expect something"
    for name, expected in case.expect.items():
        value = data["results"][name]["value"]
        if isinstance(expected, str):
            assert value == expected
        else:
            assert value == pytest.approx(expected, rel=0, abs=case.within[name]), name


@pytest.mark.parametrize("case", REFERENCE, ids=str)
def test_reference(case: Case) -> None:
    assert case.source, "a reference case names its source"
    assert case.mark in MARKS
    _check(case)


@pytest.mark.parametrize("case", REGRESSIONS, ids=str)
def test_regression(case: Case) -> None:
    _check(case)


@pytest.mark.parametrize("case", REFUSALS, ids=str)
def test_refusal(case: Case) -> None:
    data = answer(case.slug, case.fields)
    assert "errors" in data, data
    assert case.says
    for name, part in case.says.items():
        assert part in data["errors"].get(name, ""), data["errors"]


@pytest.mark.parametrize("slug", sorted(all_calculators()))
def test_every_calculator_has_reference_cases(slug: str) -> None:
    assert any(case.slug == slug for case in REFERENCE), f"write tests/cases/{slug}.toml"


@pytest.mark.parametrize("slug", sorted(all_calculators()))
def test_the_worked_example_answers(slug: str) -> None:
    data = answer(slug, {}, html=True)
    assert "errors" not in data, data
    assert data["results"]
    assert data["steps"], "the working is part of an answer"
    assert data["sources"], "an answer says where its figures come from"
    assert "<svg" in data["html"], "an answer has a drawing"


def test_no_case_names_an_unknown_calculator() -> None:
    known = set(all_calculators())
    assert {case.slug for case in REFERENCE + REFUSALS + REGRESSIONS} <= known
