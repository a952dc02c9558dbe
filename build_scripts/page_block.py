"""What every block of the handbook has in common: the page it stands on, reading its text, keeping finished HTML."""

from __future__ import annotations

import re
from dataclasses import dataclass, field
from html import unescape
from pathlib import Path
from typing import ClassVar
from xml.etree import ElementTree

from markdown.util import AtomicString
from pymdownx.blocks.block import Block

from build_scripts import drawings, house_values

HEADINGS = ("h1", "h2", "h3", "h4", "h5", "h6")
_PAGE_LINK = re.compile(r'<a data-page="([^"]*)">([^<]*)</a>')  # as calculators.show writes them
_ID = re.compile(r'(\bid="|\baria-labelledby="|url\(#)([^")]*)')


@dataclass
class PageState:
    """What the blocks of one page have to know of each other."""

    docs: Path
    ids: set[str] = field(default_factory=set)
    cited: list[str] = field(default_factory=list)
    shown: set[str] = field(default_factory=set)
    note: ElementTree.Element | None = None
    is_house_page: bool = False

    @property
    def shop(self) -> house_values.Shop:
        """What the shop of this handbook has settled."""
        return house_values.shop(self.docs)

    def unique(self, wanted: str) -> str:
        """``wanted``, or with a number behind it when the page has it already."""
        name, number = wanted, 2
        while name in self.ids:
            name, number = f"{wanted}-{number}", number + 1
        self.ids.add(name)
        return name

    def clear(self) -> None:
        """Start on another page."""
        self.ids.clear()
        self.cited.clear()
        self.shown.clear()
        self.note = None
        self.is_house_page = False


class PageBlock(Block):
    """A block of the handbook; ``text`` is what stands between its lines when it is read raw."""

    RAW: ClassVar[bool] = False
    TAG: ClassVar[str] = "div"

    @property
    def page(self) -> PageState:
        """The state shared by the blocks of this page."""
        state: PageState = self.config["page"]
        return state

    def on_markdown(self) -> str:
        return "raw" if self.RAW else "block"

    def on_create(self, parent: ElementTree.Element) -> ElementTree.Element:
        return ElementTree.SubElement(parent, self.TAG, {"class": self.NAME})

    def on_end(self, block: ElementTree.Element) -> None:
        if self.RAW:
            text, block.text = block.text or "", ""
            self.fill(block, text)

    def fill(self, block: ElementTree.Element, text: str) -> None:
        """Put the block's content in, made from the text between its lines."""

    def store(self, html: str) -> str:
        """Keep finished HTML out of Markdown's hands; the returned mark is replaced by it at the end.

        A drawing shown twice on a page gets ids of its own each time.
        """
        known = {name: name for kind, name in _ID.findall(html) if kind == 'id="'}
        fresh = {name: self.page.unique(name) for name in known}
        changed = {name: other for name, other in fresh.items() if name != other}
        if changed:
            html = _ID.sub(
                lambda found: found[1] + " ".join(changed.get(word, word) for word in found[2].split(" ")), html
            )
        return str(self.md.htmlStash.store(html))

    def store_linked(self, element: ElementTree.Element, html: str) -> None:
        """Finished HTML as the content of ``element``; its links to pages become real ones, which the build checks."""
        first, *rest = _PAGE_LINK.split(html)
        element.text = AtomicString(self.store(first))
        for page, words, after in zip(rest[::3], rest[1::3], rest[2::3], strict=True):
            link = ElementTree.SubElement(element, "a", {"href": f"/{page}.md", "data-page": page})
            link.text, link.tail = AtomicString(unescape(words)), AtomicString(self.store(after))

    def put_drawing(self, figure: ElementTree.Element, slug: str) -> None:
        """Put a drawing of the registry into a figure."""
        svg = drawings.find(slug).svg().replace("<svg ", "<svg data-search-exclude ", 1)
        figure.text = AtomicString(self.store(svg))

    def heading_level(self) -> int:
        """One below the last heading before this block. Those of a note are about to move down by one."""
        before, down = (self.md.parser.root, 0) if self.page.note is None else (self.page.note, 1)
        levels = [int(one.tag[1]) for one in before.iter() if one.tag in HEADINGS]
        return min(levels[-1] + down + 1 if levels else 2, 6)
