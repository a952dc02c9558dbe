"""The chooser and the finder: whatever is chosen leads to advice, rules and pages agree, conflicts are told."""

from __future__ import annotations

import itertools
import re
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from build_scripts.markdown_blocks import REPO
from calculators.choosing.faults import fault_rules, faults
from calculators.choosing.find_fault import MOMENTS, PLACES, SIGNS
from calculators.choosing.joints import CHOICES, joint_rules, joints, warnings
from calculators.data import sources
from calculators.run import answer

BLANK_JOINT = dict.fromkeys(("part", "load", "access", "thickness", "stone", "wear", "opens"), "")
BLANK_FAULT = dict.fromkeys(("sign", "place", "when", "metal", "tool"), "")
DOCS = REPO / "docs"


def cautions(data: dict[str, Any]) -> str:
    return " ".join(one["text"] for one in data["cautions"])


@pytest.mark.parametrize("fault", faults().values(), ids=lambda one: one.slug)
def test_the_page_of_a_fault_says_the_same_as_the_finder(fault: Any) -> None:
    page = (DOCS / f"{fault.page}.md").read_text(encoding="utf-8")
    causes = page.split("## Likely causes, in order")[1].split("## Mend")[0]
    listed = re.findall(r"^\d+\. \*\*(.+?)\.\*\*", causes, re.MULTILINE)
    assert listed == [cause.title for cause in fault.causes]
    assert [cause.likely for cause in fault.causes] == sorted((c.likely for c in fault.causes), reverse=True)
    assert f"picture: fault-{fault.slug}" in page
    assert set(fault.unlike) <= set(faults())
    for part in ("## Is it this?", "## Prevent", "## When to stop and start over", "## Sources"):
        assert part in page


@pytest.mark.parametrize("slug", faults())
def test_every_fault_can_be_reached_by_the_finder(slug: str) -> None:
    found = {
        answer("find-fault", {**BLANK_FAULT, "sign": sign, "place": place})["results"]["fault"]["page"]
        for (sign, _), (place, _) in itertools.product(SIGNS, PLACES)
    }
    assert f"faults/{slug}" in found


def test_a_rule_names_only_what_there_is() -> None:
    signs = {"sign": dict(SIGNS), "place": dict(PLACES), "when": dict(MOMENTS)}
    for rule in fault_rules():
        assert rule.reason
        assert set(rule.points) <= set(faults())
        assert all(value in signs[name] for name, values in rule.choices.items() for value in values)
    for rule in (*joint_rules(), *warnings()):
        assert rule.says or rule.reason
        assert set(rule.points) <= set(joints())
        assert not rule.source or rule.source in sources()
        assert all(value in dict(CHOICES[name]) for name, values in rule.choices.items() for value in values)
        assert {*rule.over, *rule.under} <= {"thickness", "stone"}


def test_every_choice_has_a_rule() -> None:
    """A choice that no rule looks at would be asked for nothing; daily wear is the plain case in between."""
    asked = {(name, value) for rule in joint_rules() for name, values in rule.choices.items() for value in values}
    missing = {(name, value) for name, options in CHOICES.items() for value, _ in options} - asked
    assert missing == {("wear", "daily")}
    heard = {(name, value) for rule in fault_rules() for name, values in rule.choices.items() for value in values}
    named = {"sign": SIGNS, "place": PLACES, "when": MOMENTS}
    assert {(name, value) for name, options in named.items() for value, _ in options} == heard


@given(
    picked=st.fixed_dictionaries({name: st.sampled_from(["", *dict(options)]) for name, options in CHOICES.items()}),
    thickness=st.sampled_from(["", "0.2 mm", "0.59 mm", "1 mm", "1.01 mm", "10 mm", "18 ga"]),
    stone=st.sampled_from(["", "0", "2.9 mm", "3 mm", "9 mm", "200 mm"]),
)
@settings(max_examples=250, deadline=None)
def test_the_chooser_is_never_a_dead_end(picked: dict[str, str], thickness: str, stone: str) -> None:
    data = answer("choose-joint", {**picked, "thickness": thickness, "stone": stone}, html=True)
    results = data["results"]
    assert (DOCS / f"{results['joint']['page']}.md").exists()
    assert results["second"]["value"] != results["joint"]["value"]
    assert results["prepare"]["value"]
    assert results["change"]["value"]
    assert "<svg" in data["html"]
    if not picked["part"]:
        assert "nearest advice" in cautions(data)


@pytest.mark.parametrize("part", dict(CHOICES["part"]))
def test_what_would_change_the_choice_does_change_it(part: str) -> None:
    """The sentence is checked by asking again with that one answer changed."""
    fields = {**BLANK_JOINT, "part": part, "load": "along", "opens": "no"}
    first = answer("choose-joint", fields)["results"]
    told = first["change"]["value"]
    for name, options in CHOICES.items():
        for value, words in options:
            other = answer("choose-joint", {**fields, name: value})["results"]["joint"]["value"]
            sentence = f": {words[0].lower()}{words[1:]}"
            if name != "part":
                assert (other != first["joint"]["value"]) == (sentence in told), (name, value, told)


def test_nothing_chosen_gets_advice_and_says_so() -> None:
    joint = answer("choose-joint", BLANK_JOINT)
    assert "Nothing is chosen" in cautions(joint)
    fault = answer("find-fault", BLANK_FAULT)
    assert fault["results"]["fault"]["value"] == "Pinholes"
    assert "Nothing is chosen" in cautions(fault)


def test_contradictions_are_named() -> None:
    shank = answer("choose-joint", {**BLANK_JOINT, "part": "shank", "opens": "yes"})
    assert "can't open again" in cautions(shank)
    post = answer("choose-joint", {**BLANK_JOINT, "part": "post", "load": "side", "thickness": "0.3 mm"})
    assert "Against a plug joint speaks the thickness" in cautions(post)
    stone = answer("find-fault", {**BLANK_FAULT, "sign": "stone", "place": "inside"})
    assert stone["results"]["fault"]["value"] == "Cracked stone"
    assert "does not go with cracked stone" in cautions(stone)


def test_a_stone_close_by_stops() -> None:
    near = answer("choose-joint", {"part": "shank", "stone": "2 mm"})
    assert any(one["stop"] and "3 mm" in one["text"] for one in near["cautions"])
    assert not any(one["stop"] for one in answer("choose-joint", {"part": "shank", "stone": ""})["cautions"])


@given(
    st.fixed_dictionaries(
        {
            "sign": st.sampled_from(["", *dict(SIGNS)]),
            "place": st.sampled_from(["", *dict(PLACES)]),
            "when": st.sampled_from(["", *dict(MOMENTS)]),
            "metal": st.sampled_from(["", "yellow", "silver", "titanium"]),
            "tool": st.sampled_from(["", "beam", "arc", "torch"]),
        }
    )
)
@settings(max_examples=250, deadline=None)
def test_the_finder_is_never_a_dead_end_and_adds_up(picked: dict[str, str]) -> None:
    data = answer("find-fault", picked)
    results = data["results"]
    slug = results["fault"]["page"].removeprefix("faults/")
    assert results["fault"]["value"] == faults()[slug].title
    total = faults()[slug].common + sum(
        rule.points.get(slug, 0) for rule in fault_rules() if rule.speaks({k: v or None for k, v in picked.items()})
    )
    shown = next(step["value"] for step in data["steps"] if step["words"] == results["fault"]["value"])
    assert shown.replace("−", "-") == str(total)
    assert len({results[f"cause_{i}"]["value"] for i in (1, 2, 3, 4)}) == 4
