"""The search finds what a person at the bench asks for: the built index, the page's engine, the page's own module."""

from __future__ import annotations

import json
import subprocess
import tomllib
from fnmatch import fnmatchcase
from pathlib import Path
from typing import Any

import pytest

from build_scripts.bootstrap import node
from build_scripts.search_index import INDEX
from build_scripts.site import SITE

ASKER = Path(__file__).with_name("ask_search.mjs")
QUESTIONS = tomllib.loads(Path(__file__).with_name("search_questions.toml").read_text(encoding="utf-8"))["question"]


def answers(asked: list[str], site: Path = SITE) -> list[list[dict[str, Any]]]:
    """What the search of the built pages finds for each question, best first."""
    assert (site / INDEX).is_file(), "Build the site first: python3 -m build_scripts build"
    run = subprocess.run(
        node("--no-warnings", str(ASKER), str(site)),
        input=json.dumps(asked),
        capture_output=True,
        text=True,
        check=False,
    )
    assert run.returncode == 0, run.stderr
    found: list[list[dict[str, Any]]] = json.loads(run.stdout)
    return found


def page(find: dict[str, Any]) -> str:
    return str(find["path"]).partition("#")[0].rstrip("/")


@pytest.fixture(scope="module")
def pages_found() -> dict[str, list[str]]:
    asked = [one["ask"] for one in QUESTIONS]
    return {question: [page(one) for one in finds] for question, finds in zip(asked, answers(asked), strict=True)}


@pytest.mark.parametrize("question", QUESTIONS, ids=[one["ask"] for one in QUESTIONS])
def test_the_right_page_is_among_the_first_three(question: dict[str, Any], pages_found: dict[str, list[str]]) -> None:
    found = pages_found[question["ask"]]
    assert len(set(found)) == len(found), "a page is listed once"
    first = [*found[:3], *(f"{name}/" for name in found[:3])]
    assert any(fnmatchcase(name, wanted) for name in first for wanted in question["pages"]), f"found {found}"


def test_the_questions_are_many_and_name_real_pages() -> None:
    assert len({one["ask"] for one in QUESTIONS}) == len(QUESTIONS) >= 70
    assert sum(one.get("held_out", False) for one in QUESTIONS) >= 25
    named = {name.removesuffix("/*") for one in QUESTIONS for name in one["pages"]}
    missing = {name for name in named if not (SITE / name / "index.html").is_file()}
    assert missing == set()


def test_unfinished_and_misspelt_words_find_the_same_page() -> None:
    for finds in answers(["earring po", "earing post", "EARRING POSTS", "  earring,post "]):
        assert page(finds[0]) == "jobs/earring-post"


def test_a_find_shows_a_line_with_the_words_marked_and_leads_to_a_part_that_exists() -> None:
    (finds,) = answers(["how much metal to fill a pit"])
    first = finds[0]
    line = "".join(piece["text"] for piece in first["line"])
    assert {"metal", "pit"} <= {piece["text"].lower() for piece in first["line"] if piece["found"]}
    assert "\n" not in line
    path, _, anchor = first["path"].partition("#")
    html = (SITE / path / "index.html").read_text(encoding="utf-8")
    assert anchor
    assert f'id="{anchor}"' in html


def test_words_that_no_page_has_find_nothing() -> None:
    assert answers(["", "the of", "qqxjz", "?!"]) == [[], [], [], []]


def test_without_the_index_there_is_no_answer(tmp_path: Path) -> None:
    with pytest.raises(AssertionError, match="Build the site first"):
        answers(["ring"], tmp_path)
