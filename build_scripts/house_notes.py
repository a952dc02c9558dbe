"""The shop's own words: notes on pages of the handbook, ``docs/house/notes/<page>.md``, and pages of its own.

A renderer does not tell an extension which page it reads, so a page is known by its words: they are compared with the
files that have a note. The note is read at the end of its page and then moved to its place, so that the page's own
anchors stay what they are without a note.
"""

from __future__ import annotations

import re
from functools import lru_cache
from pathlib import Path
from typing import NamedTuple
from xml.etree import ElementTree

from markdown import Markdown
from markdown.preprocessors import Preprocessor
from markdown.treeprocessors import Treeprocessor

from build_scripts.errors import PageError, nearest
from build_scripts.house_values import FOLDER, read_text
from build_scripts.page_block import HEADINGS, PageBlock, PageState

NOTES = f"{FOLDER}/notes"
_FRONT_MATTER = re.compile(r"\A---\n.*?\n---\n", re.DOTALL)


class HousePage(NamedTuple):
    """What the shop has to do with a page: its path below ``docs``, and the text of the note on it."""

    path: str
    note: str = ""

    @property
    def is_own(self) -> bool:
        """Whether the whole page is the shop's."""
        return self.path.startswith(f"{FOLDER}/")


def note_files(docs: Path) -> dict[str, Path]:
    """Every note by the path of its page. Raises ``PageError`` for a note on a page that does not exist."""
    notes = docs / NOTES
    found = {file.relative_to(notes).as_posix(): file for file in sorted(notes.rglob("*.md"))}
    pages = [file.relative_to(docs).as_posix() for file in docs.rglob("*.md")]
    pages = [page for page in pages if not page.startswith(f"{FOLDER}/")]
    for path in found:
        if path not in pages:
            raise PageError(
                f"docs/{NOTES}/{path}: the handbook has no page {path}. {nearest(path, pages)} "
                "Give the note the folder and the name of its page."
            )
    return found


def own_pages(docs: Path) -> list[Path]:
    """The shop's own pages, without its notes."""
    house = docs / FOLDER
    return [file for file in sorted(house.rglob("*.md")) if not file.is_relative_to(docs / NOTES)]


@lru_cache(maxsize=4)
def _by_words(docs: Path) -> dict[str, HousePage]:
    """Every page that the shop has something to do with, by its words."""
    found = {}
    for file in own_pages(docs):
        path = file.relative_to(docs).as_posix()
        found[_words(read_text(file, f"docs/{path}"))] = HousePage(path)
    for path, file in note_files(docs).items():
        note = read_text(file, f"docs/{NOTES}/{path}")
        found[_words(read_text(docs / path, f"docs/{path}"))] = HousePage(path, without_front_matter(note))
    return found


def without_front_matter(text: str) -> str:
    """The Markdown below the lines between ``---`` at the top of a file."""
    return _FRONT_MATTER.sub("", text.replace("\r\n", "\n"))


def _words(text: str) -> str:
    return " ".join(without_front_matter(text).split())


class AddNote(Preprocessor):
    """Puts a page's note behind its text, in a block of its own."""

    def __init__(self, md: Markdown, page: PageState) -> None:
        super().__init__(md)
        self.page = page

    def run(self, lines: list[str]) -> list[str]:
        """The lines of the page with those of its note."""
        known = _by_words(self.page.docs).get(_words("\n".join(lines)))
        self.page.is_house_page = known is not None and known.is_own
        if known is None or not known.note.strip():
            return lines
        longest = max((len(slashes) for slashes in re.findall(r"/{3,}", known.note)), default=3)
        fence = "/" * (longest + 1)
        return [*lines, "", f"{fence} {HouseNoteBlock.NAME}", "", *known.note.splitlines(), "", fence, ""]


class HouseNoteBlock(PageBlock):
    """The box around a note; its headings rank below the title of the page and keep out of the page's anchors."""

    NAME, TAG = "house-note", "section"

    def on_create(self, parent: ElementTree.Element) -> ElementTree.Element:
        box = ElementTree.SubElement(parent, "section", {"class": "house-note", "aria-label": "House note"})
        title = ElementTree.SubElement(box, "p", {"class": "box-title", "data-search-exclude": ""})
        title.text = "House note"
        ElementTree.SubElement(title, "small").text = "written by this shop"
        self.page.note = box
        return box

    def on_end(self, block: ElementTree.Element) -> None:
        for number, one in enumerate([one for one in block.iter() if one.tag in HEADINGS], 1):
            one.tag = HEADINGS[min(HEADINGS.index(one.tag) + 1, len(HEADINGS) - 1)]
            one.set("id", self.page.unique(f"house-note-{number}"))


class PlaceNote(Treeprocessor):
    """Moves the note up: below the danger box, so that it never pushes it down, or else below the first sentence."""

    def __init__(self, md: Markdown, page: PageState) -> None:
        super().__init__(md)
        self.page = page

    def run(self, root: ElementTree.Element) -> None:
        """Put the note where it is read first after what can hurt, and mark a page of the shop as its own."""
        top = next((place for place, one in enumerate(root, 1) if one.tag == "h1"), 0)
        note, self.page.note = self.page.note, None
        if note is not None:
            root.remove(note)
            root.insert(self._place(root, top), note)
        if self.page.is_house_page:
            mark = ElementTree.Element("p", {"class": "house-mark", "data-search-exclude": ""})
            mark.text = "House page: written by this shop, not part of the handbook."
            root.insert(top, mark)

    @staticmethod
    def _place(root: ElementTree.Element, top: int) -> int:
        opening = list(root)[top:]
        ends = [place for place, one in enumerate(opening) if one.tag == "h2"]
        opening = opening[: ends[0]] if ends else opening
        for place, one in enumerate(opening, top + 1):
            if any(box.get("class") == "danger" for box in one.iter("section")):
                return place
        return top + 1 if opening and opening[0].tag == "p" else top
