"""The pages the handbook promises are there, each with its sections (``tests/page_inventory.toml``)."""

from __future__ import annotations

from typing import Any

import pytest

from tests.build import pages

INVENTORY = pages.data("page_inventory")
KINDS: dict[str, dict[str, Any]] = INVENTORY["kinds"]
OF_A_KIND = [
    pytest.param(f"{kind['folder']}/{page}", kind, id=f"{kind['folder']}/{page}")
    for kind in KINDS.values()
    for page in kind["pages"]
]


@pytest.mark.parametrize(("path", "kind"), OF_A_KIND)
def test_a_page_has_the_sections_of_its_kind_in_their_order(path: str, kind: dict[str, Any]) -> None:
    found = pages.headings(path)
    missing = [one for one in kind["sections"] if one not in found]
    assert not missing, f"{path} lacks {missing}"
    places = [found.index(one) for one in kind["sections"]]
    assert places == sorted(places), f"{path} has its sections in another order"


@pytest.mark.parametrize(("path", "kind"), OF_A_KIND)
def test_a_page_has_the_blocks_and_questions_of_its_kind(path: str, kind: dict[str, Any]) -> None:
    shown = pages.blocks(path)
    assert not set(kind["blocks"]) - set(shown)
    assert shown.count("question") >= kind["questions"]
    for said in kind["says"]:
        assert said.lower() in pages.words(path), f"{path} doesn't say {said}"


def test_every_page_is_in_the_inventory() -> None:
    listed = {f"{kind['folder']}/{page}" for kind in KINDS.values() for page in kind["pages"]}
    listed |= {one["path"] for one in INVENTORY["page"]}
    there = {file.relative_to(pages.DOCS).as_posix().removesuffix(".md") for file in pages.DOCS.rglob("*.md")}
    # Left out: lists of a folder, some with more in them, and what a shop writes for itself.
    lists = {one for one in there if one.endswith("/index") or one.startswith("house/")}
    assert there - lists - listed == set()


@pytest.mark.parametrize("page", INVENTORY["page"], ids=lambda one: one["path"])
def test_a_single_page_has_what_it_promises(page: dict[str, Any]) -> None:
    assert pages.text(page["path"]).startswith("---\ntitle: ")
    assert not set(page["sections"]) - set(pages.headings(page["path"]))


@pytest.mark.parametrize("path", [f"jobs/{one}" for one in KINDS["job"]["pages"]])
def test_a_job_names_its_joint_or_the_guide_it_leans_on(path: str) -> None:
    guides = {f"joints/{one}" for one in KINDS["joint"]["pages"]}
    assert pages.links(path) & guides, f"{path} links to no joint guide"


@pytest.mark.parametrize("topic", INVENTORY["topic"], ids=lambda one: ", ".join(one["words"]))
def test_safety_treats_its_topics(topic: dict[str, Any]) -> None:
    missing = [one for one in topic["words"] if one not in pages.words(topic["page"])]
    assert not missing
