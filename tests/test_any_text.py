"""Whatever is typed into whatever field: an answer or sentences, never a traceback, never a number that is none."""

from __future__ import annotations

import json
import math
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from calculators.declare import all_calculators
from calculators.run import answer, run_json, work_out

SLUGS = sorted(all_calculators())
NASTY = [
    "", " ", "abc", "-1", "0", "inf", "-inf", "nan", "1e9", "1e400", "12 g", "1,234.5", "1,234", "x" * 10_000,
    "<script>alert(1)</script>", "0.1", "10/0", "1/0 mm", "½", "٣", "5 mm mm", "1e-30", "--3", "3 mm^9", "999 ga",
    "US 400", "UK Ñ", "Z+9", "US 1/0", "𝟙", "1\x002", "1 kg/m3", "0 g/cm3", "% %", "1" * 50,
]  # fmt: skip
texts = st.one_of(
    st.sampled_from(NASTY),
    st.text(max_size=30),
    st.builds(
        "{}{}{}".format,
        st.floats(allow_nan=True, allow_infinity=True, width=32),
        st.sampled_from(["", " "]),
        st.sampled_from(["mm", "in", "g", "ga", "%", "J", "ms", "us", "across", "around", "g/cm3", "°C"]),
    ),
)


def check(data: dict[str, Any]) -> None:
    assert "detail" not in data, data
    if "errors" in data:
        assert data["errors"]
        for sentence in data["errors"].values():
            assert sentence[:1].isupper() or sentence[:1].isdigit() or not sentence[:1].isalpha(), sentence
            for word in ("Traceback", "Error", "invalid", "valid", "lease", "orry", "nan", "None"):
                assert word not in sentence, sentence
            assert len(sentence) < 400
    else:
        for result in data["results"].values():
            for name in ("value", "low", "high"):
                if isinstance(result.get(name), float):
                    assert math.isfinite(result[name])
    json.dumps(data, allow_nan=False)


def fields_of(slug: str) -> st.SearchStrategy[dict[str, str]]:
    names = [one.name for one in all_calculators()[slug].fields]
    return st.dictionaries(st.sampled_from(names), texts, min_size=1, max_size=4)


@pytest.mark.parametrize("slug", SLUGS)
@given(data=st.data())
@settings(max_examples=60, deadline=None)
def test_any_text_in_any_field(slug: str, data: st.DataObject) -> None:
    check(answer(slug, data.draw(fields_of(slug)), html=True))


@pytest.mark.parametrize("slug", SLUGS)
def test_every_nasty_text_in_every_field(slug: str) -> None:
    for one in all_calculators()[slug].fields:
        for text in NASTY:
            check(answer(slug, {one.name: text}))


@pytest.mark.parametrize("slug", SLUGS)
def test_all_bad_fields_are_told_at_once(slug: str) -> None:
    calculator = all_calculators()[slug]
    asked, _ = work_out(calculator, {})
    bad = dict.fromkeys(asked, "\x07 nonsense <b>")
    errors = answer(slug, bad)["errors"]
    choosing = {one.when[0] for one in calculator.fields if one.when}
    always = {one.name for one in calculator.fields if one.when is None}
    assert always <= set(errors), choosing


@given(st.text(max_size=200))
@settings(max_examples=100, deadline=None)
def test_any_request_through_the_door(request: str) -> None:
    check(json.loads(run_json(request)))
    check(json.loads(run_json(json.dumps({"calculator": request, "fields": {request: request}}))))


@pytest.mark.parametrize(
    "request_text", ["", "[]", "{}", "3", '{"calculator": "ring-size"}', '{"calculator":1,"fields":[]}']
)
def test_a_broken_request_gets_a_sentence(request_text: str) -> None:
    assert json.loads(run_json(request_text))["errors"]
