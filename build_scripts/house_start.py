"""What the start page says of the shop: its own pages, and the law of the place where it works."""

from __future__ import annotations

import difflib
from pathlib import Path
from xml.etree import ElementTree

from markdown.util import AtomicString

from build_scripts import listings
from build_scripts.errors import PageError
from build_scripts.house_values import FILE, FOLDER
from build_scripts.page_block import PageBlock
from calculators.reading import plain_name

LAW_FOLDER = "reference/marks-and-law/"  # a page a place, its title ending in ``: United States``
ALL_LAW = (f"{LAW_FOLDER}index.md", "reference/fineness-marks.md")
SHORT_NAMES = {"us": "united states", "usa": "united states", "uk": "united kingdom", "eu": "european union"}


def law_page(jurisdiction: str, docs: Path) -> str:
    """The address of what the handbook says on the law of a place; of all places, where it has nothing on this one.

    Empty without a jurisdiction, or without any such page. Raises ``PageError`` for a name that is nearly a known one.
    """
    known = {}
    for one in listings.page_files(docs):
        if one.path.startswith(LAW_FOLDER) and one.path not in ALL_LAW:
            places = one.title.rpartition(":")[2].split(",")
            known.update({plain_name(place): one.path for place in places})
    whole = next((path for path in ALL_LAW if (docs / path).is_file()), "")
    if not jurisdiction or not (known or whole):
        return ""
    wanted = plain_name(jurisdiction)
    wanted = SHORT_NAMES.get(wanted, wanted)
    if wanted in known:
        return f"/{known[wanted]}"
    close = difflib.get_close_matches(wanted, known, 1, 0.8)
    if close:
        raise PageError(f"{FILE}, jurisdiction: there is no place {jurisdiction}. The nearest is {close[0].title()}.")
    return f"/{whole}" if whole else ""


class HouseBlock(PageBlock):
    """``/// house`` on the start page: links to the shop's pages and its law; nothing where there is no shop."""

    NAME, RAW = "house", True

    def on_create(self, parent: ElementTree.Element) -> ElementTree.Element:
        self.parent = parent
        return ElementTree.SubElement(parent, "nav", {"class": "house-links", "aria-label": "This shop"})

    def fill(self, block: ElementTree.Element, text: str) -> None:
        docs = self.page.docs
        pages = [one for one in listings.page_files(docs) if one.path.startswith(f"{FOLDER}/")]
        links = [(one.title, f"/{one.path}") for one in pages if one.path == f"{FOLDER}/index.md"] or [
            (one.title, f"/{one.path}") for one in pages
        ]
        jurisdiction = self.page.shop.jurisdiction
        if law := law_page(jurisdiction, docs):
            links.append((f"Marks and law: {jurisdiction}", law))
        if not links:
            self.parent.remove(block)
            return
        ElementTree.SubElement(block, "b").text = "This shop"
        for words, address in links:
            ElementTree.SubElement(block, "a", {"href": address}).text = AtomicString(words)
