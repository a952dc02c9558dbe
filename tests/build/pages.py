"""What the tests of the pages need: a page's headings, blocks, links, and its text without mark-up."""

from __future__ import annotations

import re
import tomllib
from functools import cache
from pathlib import Path
from typing import Any

REPO = Path(__file__).resolve().parents[2]
DOCS = REPO / "docs"


def data(name: str) -> dict[str, Any]:
    """One of the tests' own data files."""
    return tomllib.loads((REPO / "tests" / f"{name}.toml").read_text(encoding="utf-8"))


@cache
def text(path: str) -> str:
    """The Markdown of a page; fails with its name when there is none."""
    file = DOCS / f"{path}.md"
    assert file.is_file(), f"there is no page docs/{path}.md"
    return file.read_text(encoding="utf-8")


def headings(path: str, level: int = 2) -> list[str]:
    """The headings of one level, without their anchors."""
    found = re.findall(rf"^{'#' * level} (.+?)\s*(?:\{{.*\}})?$", text(path), re.MULTILINE)
    return [one.strip() for one in found]


def blocks(path: str) -> list[str]:
    """The names of the blocks of a page, in order."""
    return re.findall(r"^[ ]*/{3,}[ ]*([a-z][a-z-]*)", text(path), re.MULTILINE)


def links(path: str) -> set[str]:
    """The pages a page links to, as paths below docs without ``.md``."""
    here = (DOCS / path).parent
    found = re.findall(r"\]\(([^)#\s]+)\.md(?:#[^)]*)?\)", text(path))
    return {(here / one).resolve().relative_to(DOCS.resolve()).as_posix() for one in found}


def words(path: str) -> str:
    """The text in lower case with single spaces."""
    return " ".join(text(path).lower().split())
