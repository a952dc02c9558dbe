"""Writes what the search of the pages reads: every page and section of the built site, and the words of the bench.

Reads the built pages only. What stands in an element with ``data-search-exclude`` is left out. The file holds text,
not an inverted index: the browser builds that in a moment, and the text is needed to show a line of each find.
``search_synonyms.toml`` goes in as it is read; it is used at query time only, by ``docs/assets/js/search-query.js``.
"""

from __future__ import annotations

import json
import re
import tomllib
from html.parser import HTMLParser
from pathlib import Path
from typing import NamedTuple

from build_scripts.bootstrap import REPO

INDEX = "assets/search-index.json"
SYNONYMS = REPO / "build_scripts/data/search_synonyms.toml"

# How much a find counts, by the longest beginning of its path: what a hand at the bench acts on comes first,
# long lists that mention everything come last.
WEIGHTS = {
    "": 1.0,
    "jobs/": 1.5,
    "joints/": 1.3,
    "faults/": 1.5,
    "learn/": 0.9,
    "reference/": 1.0,
    "safety/": 1.3,
    "reference/glossary/": 0.7,
    "reference/sources/": 0.1,
}
LIST_WEIGHT = 0.5  # the list of a section: what it lists is found itself

CELLS = {"td", "th"}
INLINE = {"a", "abbr", "b", "code", "em", "i", "img", "label", "mark", "small", "span", "strong", "sub", "sup", "wbr"}
UNREAD = {"nav", "noscript", "script", "select", "style", "svg"}
VOID = {"area", "base", "br", "col", "embed", "hr", "img", "input", "link", "meta", "source", "track", "wbr"}
HEADINGS = {"h1", "h2", "h3", "h4"}


class SearchError(Exception):
    """The search index cannot be made; the text names the page or the group of words and the reason."""


class Section(NamedTuple):
    """The text under one heading, a line per paragraph; anchor and heading are empty for the top of a page."""

    anchor: str
    heading: str
    text: str


class PageText(NamedTuple):
    """One page as the search sees it; ``path`` is its address below the site, ending in a slash."""

    path: str
    title: str
    description: str
    weight: float
    sections: list[Section]


def write_index(site: Path, synonyms: Path = SYNONYMS) -> int:
    """Write the index of the built site; return the number of pages in it. Raises SearchError."""
    pages = [read_page(site, file) for file in sorted(site.rglob("index.html"))]
    if not pages:
        raise SearchError("The built site has no pages to search.")
    data = {"pages": pages, **read_synonyms(synonyms)}
    target = site / INDEX
    target.parent.mkdir(exist_ok=True)
    target.write_text(json.dumps(data, ensure_ascii=False, separators=(",", ":")), encoding="utf-8")
    return len(pages)


def read_page(site: Path, file: Path) -> PageText:
    """The text of one built page, section by section. Raises SearchError when it has no main heading."""
    path = file.parent.relative_to(site).as_posix().removeprefix(".")
    path = f"{path}/" if path else ""
    reader = _Reader()
    reader.feed(file.read_text(encoding="utf-8"))
    reader.close()
    if not reader.title:
        raise SearchError(f"{path or 'The start page'} has no main heading to be found by.")
    weight = max((len(start), weight) for start, weight in WEIGHTS.items() if path.startswith(start))[1]
    only_lists = path.count("/") == 1 and any(file.parent.glob("*/index.html"))
    sections = [Section(anchor, heading, _tidy(text)) for anchor, heading, text in reader.sections()]
    return PageText(path, reader.title, reader.description, weight * (LIST_WEIGHT if only_lists else 1), sections)


def read_synonyms(file: Path) -> dict[str, list[object]]:
    """Groups of words that mean the same, and words that lead to others one way. Raises SearchError."""
    try:
        told = tomllib.loads(file.read_text(encoding="utf-8"))
    except (OSError, tomllib.TOMLDecodeError) as reason:
        raise SearchError(f"{file.name} cannot be read: {reason}") from reason
    same = [group["words"] for group in told.get("same", [])]
    leads = [[group["from"], group["to"]] for group in told.get("leads", [])]
    for words in [*same, *(side for pair in leads for side in pair)]:
        if not words or not all(isinstance(word, str) and word == word.lower().strip() and word for word in words):
            raise SearchError(f"{file.name}: words are written small, none is empty: {words}")
    if short := [words for words in same if len(words) < 2]:
        raise SearchError(f"{file.name}: a group of one word says nothing: {short}")
    return {"same": same, "leads": leads}


def _tidy(text: str) -> str:
    lines = (re.sub(r"\s+([.,;:])", r"\1", " ".join(line.split())).strip(" ·") for line in text.split("\n"))
    return "\n".join(filter(None, lines))


class _Reader(HTMLParser):
    """Title, description and sections of one page."""

    def __init__(self) -> None:
        super().__init__(convert_charrefs=True)
        self.title = self.description = ""
        self._parts: list[tuple[str, list[str], list[str]]] = [("", [], [])]  # anchor, heading, text
        self._open: list[tuple[str, bool]] = []  # inside the article: tag, and whether it is left out
        self._into: list[str] | None = None  # the heading being read

    def sections(self) -> list[tuple[str, str, str]]:
        """Anchor, heading and raw text of the top of the page and of each part below it that says something."""
        found = ((anchor, " ".join("".join(words).split()), "".join(text)) for anchor, words, text in self._parts)
        return [one for one in found if one[2].strip() or not one[0]]

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        told = dict(attrs)
        if tag == "meta" and told.get("name") == "description":
            self.description = told.get("content") or ""
        if not self._open and tag != "article":
            return
        out = "data-search-exclude" in told or tag in UNREAD
        if tag not in VOID:
            self._open.append((tag, out))
        if any(left_out for _, left_out in self._open):
            return
        if tag in HEADINGS and (tag == "h1" or told.get("id")):
            if tag != "h1":
                self._parts.append((told.get("id") or "", [], []))
            self._into = self._parts[-1][1]
        elif tag not in INLINE:
            self._parts[-1][2].append(" · " if tag in CELLS else "\n")

    def handle_endtag(self, tag: str) -> None:
        if not any(tag == opened for opened, _ in self._open):
            return
        while self._open.pop()[0] != tag:
            pass  # HTML may leave p, li and td open
        if tag in HEADINGS and self._into is not None:
            if tag == "h1":
                self.title = " ".join("".join(self._into).split())
                self._into.clear()
            self._into = None
        elif tag not in INLINE | CELLS and self._open:
            self._parts[-1][2].append("\n")

    def handle_data(self, data: str) -> None:
        if self._open and not any(left_out for _, left_out in self._open):
            (self._parts[-1][2] if self._into is None else self._into).append(data)
