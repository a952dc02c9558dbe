"""The handbook's own blocks for Python-Markdown: calculators, drawings, boxes and lists that keep themselves.

Needs Python-Markdown and pymdownx only, so it works under any renderer built on them. A slip in a page (a name that
does not exist, a preset its field refuses, a block left open) raises ``PageError`` and stops the build.
"""

from __future__ import annotations

import re
from pathlib import Path
from typing import Any
from xml.etree import ElementTree

from markdown import Markdown
from markdown.treeprocessors import Treeprocessor
from markdown.util import AtomicString
from pymdownx.blocks import BlocksExtension, BlocksProcessor

from build_scripts import citations, form, house_notes, house_start, listings
from build_scripts.errors import PageError
from build_scripts.page_block import PageBlock, PageState
from build_scripts.table_blocks import TABLE_BLOCKS

REPO = Path(__file__).resolve().parent.parent
_LEFTOVER = re.compile(r"^\s*/{3,}.*", re.MULTILINE)


class CalculatorBlock(PageBlock):
    """``/// calculator | slug`` with one preset a line."""

    NAME, ARGUMENT, RAW, TAG = "calculator", True, True, "form"

    def fill(self, block: ElementTree.Element, text: str) -> None:
        self.put(block, self.argument, form.read_presets(text))

    def put(self, block: ElementTree.Element, slug: str, presets: dict[str, str]) -> None:
        """Make ``block`` the form of that calculator."""
        form_id = self.page.unique(slug)
        filled = form.calculator_form(form.find(slug), presets, form_id, self.heading_level(), self.page.shop)
        self.page.cited += filled.cited
        self.page.shown.add(slug)
        attributes = {"class": "calculator", "data-calculator": slug, "id": form_id, "autocomplete": "off"}
        block.attrib.update({**attributes, "aria-labelledby": f"{form_id}-title", **filled.attributes})
        self.store_linked(block, filled.html)


class StripBlock(PageBlock):
    """``/// strip`` with ``drawing | caption`` a line: drawings side by side, read as one."""

    NAME, RAW = "strip", True

    def fill(self, block: ElementTree.Element, text: str) -> None:
        rows = [line.partition("|") for line in text.splitlines() if line.strip()]
        if not rows or not all(bar and slug.strip() and caption.strip() for slug, bar, caption in rows):
            raise PageError("A strip is written as one drawing | caption a line.")
        for slug, _, caption in rows:
            figure = ElementTree.SubElement(block, "figure")
            self.put_drawing(figure, slug.strip())
            ElementTree.SubElement(figure, "figcaption").text = caption.strip()


class DrawingBlock(PageBlock):
    """``/// drawing | slug`` with its caption in Markdown."""

    NAME, ARGUMENT, TAG = "drawing", True, "figure"

    def on_create(self, parent: ElementTree.Element) -> ElementTree.Element:
        figure = ElementTree.SubElement(parent, "figure", {"class": "step-drawing"})
        self.put_drawing(figure, self.argument)
        self.caption = ElementTree.SubElement(figure, "figcaption")
        return figure

    def on_add(self, block: ElementTree.Element) -> ElementTree.Element:
        return self.caption

    def on_end(self, block: ElementTree.Element) -> None:
        if not (self.caption.text or len(self.caption)):
            block.remove(self.caption)


class DangerBlock(PageBlock):
    """``/// danger`` around the stop rules and dangers of a page; a title of one's own after ``|``."""

    NAME, ARGUMENT, TAG = "danger", None, "section"

    def on_create(self, parent: ElementTree.Element) -> ElementTree.Element:
        title = self.argument or "Stop rules and dangers"
        box = ElementTree.SubElement(parent, "section", {"class": "danger", "aria-label": title})
        ElementTree.SubElement(box, "p", {"class": "box-title", "data-search-exclude": ""}).text = title
        return box


class QuestionBlock(PageBlock):
    """``/// question | Why …?`` around the answer, which stays hidden until asked for."""

    NAME, ARGUMENT = "question", True

    def on_create(self, parent: ElementTree.Element) -> ElementTree.Element:
        box = ElementTree.SubElement(parent, "details", {"class": "self-check"})
        ElementTree.SubElement(box, "summary").text = self.argument
        return box


class GlanceBlock(PageBlock):
    """``/// glance`` around a table or list of settings and metal."""

    NAME, ARGUMENT, TAG = "glance", None, "section"

    def on_create(self, parent: ElementTree.Element) -> ElementTree.Element:
        box = ElementTree.SubElement(
            parent, "section", {"class": "glance", "aria-label": self.argument or "At a glance"}
        )
        if self.argument:
            ElementTree.SubElement(box, "p", {"class": "box-title"}).text = self.argument
        return box


class DoorsBlock(PageBlock):
    """``/// doors`` with ``page | drawing | title | words`` a line: the large doors of the start page."""

    NAME, RAW, TAG = "doors", True, "nav"

    def fill(self, block: ElementTree.Element, text: str) -> None:
        block.set("aria-label", "Ways in")
        doors = ElementTree.SubElement(block, "ul")
        for line in filter(None, (line.strip() for line in text.splitlines())):
            page, slug, title, words = ([part.strip() for part in line.split("|")] + [""] * 4)[:4]
            if not words:
                raise PageError(f"A door is written as page | drawing | title | words, not {line!r}.")
            door = ElementTree.SubElement(doors, "li")
            self.put_drawing(ElementTree.SubElement(door, "span", {"aria-hidden": "true"}), slug)
            ElementTree.SubElement(door, "a", {"href": f"/{page}"}).text = AtomicString(title)
            ElementTree.SubElement(door, "p").text = AtomicString(words)


class CitedBlock(PageBlock):
    """``/// cited``: what this page cites; filled in once the whole page is read."""

    NAME, TAG = "cited", "ol"


class SourcesListBlock(PageBlock):
    """``/// sources-list``: every source of the handbook."""

    NAME, RAW = "sources-list", True

    def fill(self, block: ElementTree.Element, text: str) -> None:
        block.append(listings.source_list())


class PagesBlock(PageBlock):
    """``/// pages | jobs``: the pages of a folder with their one-line descriptions."""

    NAME, ARGUMENT, RAW = "pages", True, True

    def fill(self, block: ElementTree.Element, text: str) -> None:
        block.append(listings.page_list(listings.in_folder(self.argument, self.page.docs)))


class PicturesBlock(PageBlock):
    """``/// pictures | faults``: the pages of a folder by the drawing that each names as its ``picture``."""

    NAME, ARGUMENT, RAW, TAG = "pictures", True, True, "ul"

    def fill(self, block: ElementTree.Element, text: str) -> None:
        for one in listings.in_folder(self.argument, self.page.docs):
            link = ElementTree.SubElement(ElementTree.SubElement(block, "li"), "a", {"href": f"/{one.path}"})
            if one.picture:
                self.put_drawing(ElementTree.SubElement(link, "span", {"aria-hidden": "true"}), one.picture)
            ElementTree.SubElement(link, "b").text = AtomicString(one.title)


class CalculatorsBlock(CalculatorBlock):
    """``/// calculators``: every calculator by topic; those that no page carries stand below the lists themselves."""

    NAME, ARGUMENT, TAG = "calculators", False, "div"

    def fill(self, block: ElementTree.Element, text: str) -> None:
        homeless: list[str] = []
        for topic, members in listings.calculators_by_topic().items():
            ElementTree.SubElement(block, "h2").text = topic
            pages = listings.pages_carrying(members, self.page.docs)
            block.append(listings.calculator_list(members, pages))
            homeless += [one.slug for one in members if one.slug not in pages]
        if homeless:
            ElementTree.SubElement(block, "h2").text = "The others, ready to use"
        for slug in homeless:
            self.put(ElementTree.SubElement(block, "form"), slug, {})


class CheckBlocks(Treeprocessor):
    """Stops the build when a block was left open or could not be read."""

    def __init__(self, md: Markdown, processor: BlocksProcessor) -> None:
        super().__init__(md)
        self.processor = processor

    def run(self, root: ElementTree.Element) -> None:
        for entry in self.processor.stack:
            raise PageError(f"The block /// {entry.block.NAME} is never closed: end it with a line of its own, ///.")
        for element in root.iter():
            for text in (element.text, element.tail):
                if text and element.tag not in ("pre", "code") and not isinstance(text, AtomicString):
                    left = _LEFTOVER.search(text)
                    if left:
                        raise PageError(
                            f"The block {left[0].strip()!r} is not known or lacks its name. "
                            f"Known are {', '.join(sorted(self.processor.blocks))}."
                        )


BLOCKS: tuple[type[PageBlock], ...] = (
    CalculatorBlock,
    CalculatorsBlock,
    CitedBlock,
    DangerBlock,
    DoorsBlock,
    DrawingBlock,
    GlanceBlock,
    house_notes.HouseNoteBlock,
    house_start.HouseBlock,
    PagesBlock,
    PicturesBlock,
    QuestionBlock,
    SourcesListBlock,
    StripBlock,
    *TABLE_BLOCKS,
)


class HandbookExtension(BlocksExtension):
    """Registers the blocks and the citations. ``docs`` is the folder of the pages, for the lists."""

    def __init__(self, *args: Any, **kwargs: Any) -> None:
        self.config = {"docs": [str(REPO / "docs"), "The folder of the pages"]}
        super().__init__(*args, **kwargs)
        self.page = PageState(Path(self.getConfig("docs")))

    def extendMarkdownBlocks(self, md: Markdown, block_mgr: BlocksProcessor) -> None:  # noqa: N802
        """Add everything to a Markdown instance."""
        md.registerExtension(self)
        for block in BLOCKS:
            block_mgr.register(block, {"page": self.page})
        md.treeprocessors.register(CheckBlocks(md, block_mgr), "handbook-check", 25)
        md.preprocessors.register(house_notes.AddNote(md, self.page), "handbook-house-note", 32)
        md.treeprocessors.register(house_notes.PlaceNote(md, self.page), "handbook-house-note", 24)
        md.inlinePatterns.register(citations.Cite(citations.PATTERN, md), "handbook-cite", 175)
        md.treeprocessors.register(citations.NumberCitations(md, self.page.cited), "handbook-citations", 15)

    def reset(self) -> None:
        """Forget the page before."""
        self.page.clear()


def makeExtension(**kwargs: Any) -> HandbookExtension:  # noqa: N802 - the name Python-Markdown looks for
    """The extension, as Python-Markdown asks for it."""
    return HandbookExtension(**kwargs)
