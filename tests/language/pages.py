"""The built pages as a reader sees them: blocks of text, links, anchors and pictures of one article.

Only the built ``site/`` is read, never the renderer. Code and the lettering of drawings are not text.
"""

from __future__ import annotations

import re
from dataclasses import dataclass, field
from functools import cache
from html.parser import HTMLParser
from pathlib import Path

from build_scripts.bootstrap import REPO
from build_scripts.site import SITE

DOCS = REPO / "docs"


def _set(text: str) -> frozenset[str]:
    return frozenset(text.split())


# A block ends where one of these begins or ends.
BREAKS = _set(
    "address article aside blockquote br button caption dd details div dl dt fieldset figcaption figure form h1 h2 h3"
    " h4 h5 h6 header hr input label legend li main nav ol option p pre section select small summary table tbody td"
    " tfoot th thead tr ul"
)
VOID = _set("area base br col embed hr img input link meta source track wbr")
SILENT = _set("script style svg code pre noscript math")
SILENT_CLASSES = _set("formula numbers headerlink citation")
HEADINGS = ("h1", "h2", "h3", "h4", "h5", "h6")

# The kinds of block whose text is read as sentences.
RUNNING = ("paragraph", "item", "caption", "question")


@dataclass(frozen=True)
class Block:
    """A stretch of text: its kind, its words, and the second-level heading it stands under."""

    kind: str  # heading, paragraph, item, cell, caption, question, calculator or citation
    text: str
    section: str


@dataclass(frozen=True)
class Link:
    """A link of the article: where to, its words, the section and whether it stands in a table."""

    href: str
    text: str
    section: str
    in_table: bool
    css: str


@dataclass
class Picture:
    """An image or a drawing: what a person hears who can't see it."""

    tag: str
    attributes: dict[str, str]
    title: str = ""
    description: str = ""


@dataclass
class Page:
    """One built page."""

    name: str  # its source below docs/, such as jobs/ring-down.md
    blocks: list[Block] = field(default_factory=list)
    headings: list[tuple[int, str]] = field(default_factory=list)
    links: list[Link] = field(default_factory=list)
    pictures: list[Picture] = field(default_factory=list)
    ids: set[str] = field(default_factory=set)  # of the whole page, not the article alone
    calculators: set[str] = field(default_factory=set)  # the slugs of the forms on it
    cited: list[str] = field(default_factory=list)  # keys in the page's own list of sources
    boxes: list[str] = field(default_factory=list)  # the kinds of box in order: strip, danger, glance ...
    has_article: bool = False

    @property
    def folder(self) -> str:
        """``joints``, ``jobs`` ... or nothing for a page at the top."""
        return self.name.rpartition("/")[0].split("/")[0]

    @property
    def is_index(self) -> bool:
        """Whether it is a start or a list page."""
        return self.name.endswith("index.md")

    def sections(self) -> list[str]:
        """The second-level headings in order."""
        return [text for level, text in self.headings if level == 2]

    def running(self) -> list[Block]:
        """The blocks read as sentences; a table cell only where it ends like a sentence."""
        return [one for one in self.blocks if one.kind in RUNNING or (one.kind == "cell" and one.text.endswith("."))]


class _Reader(HTMLParser):
    """Fills a Page from HTML."""

    def __init__(self, page: Page) -> None:
        super().__init__(convert_charrefs=True)
        self.page = page
        self.stack: list[tuple[str, frozenset[str]]] = []
        self.buffer: list[str] = []
        self.section = ""
        self.link: tuple[str, str, list[str]] | None = None
        self.picture: Picture | None = None
        self.picture_text: list[str] = []

    # What stands open around this place.
    def _inside(self, *tags: str) -> bool:
        return any(tag in tags for tag, _ in self.stack)

    def _inside_class(self, *names: str) -> bool:
        return any(not classes.isdisjoint(names) for _, classes in self.stack)

    def _kind(self) -> str:
        if self._inside_class("cited", "sources-list", "answer-sources"):
            return "citation"
        if self._inside_class("calculator"):
            return "calculator"
        if self._inside("td", "th"):
            return "cell"
        for tags, kind in ((HEADINGS, "heading"), (("figcaption",), "caption"), (("summary",), "question")):
            if self._inside(*tags):
                return kind
        return "item" if self._inside("li") else "paragraph"

    def _flush(self) -> None:
        text = re.sub(r"\s+(?=[.,;:)]( |$)|\s)", "", re.sub(r"\s", " ", "".join(self.buffer))).strip()
        self.buffer.clear()
        if not text:
            return
        kind = self._kind()
        heading = next((tag for tag, _ in self.stack if tag in HEADINGS), None)
        if heading and kind == "heading":
            self.page.headings.append((int(heading[1]), text))
            if heading == "h2":
                self.section = text
        self.page.blocks.append(Block(kind, text, self.section))

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        told = {name: value or "" for name, value in attrs}
        classes = frozenset(told.get("class", "").split())
        if told.get("id"):
            self.page.ids.add(told["id"])
        if told.get("data-calculator"):
            self.page.calculators.add(told["data-calculator"])
        if tag == "article":
            self.page.has_article = True
        if self._inside("article"):
            self._start_inside(tag, told, classes)
        if tag not in VOID:
            self.stack.append((tag, classes))

    def _start_inside(self, tag: str, told: dict[str, str], classes: frozenset[str]) -> None:
        if tag in BREAKS:
            self._flush()
        if tag == "li" and self._inside_class("cited") and told.get("id", "").startswith("cited-"):
            self.page.cited.append(told["id"].removeprefix("cited-"))
        self.page.boxes.extend(sorted(classes & {"strip", "danger", "glance"}))
        if tag == "a":
            self.link = (told.get("href", ""), told.get("class", ""), [])
        if tag == "img":
            self.page.pictures.append(Picture("img", told))
        if tag == "svg":
            self.picture = Picture("svg", told)
        if tag in ("title", "desc"):
            self.picture_text = []

    def handle_endtag(self, tag: str) -> None:
        if tag in VOID:
            return
        if self._inside("article"):
            self._end_inside(tag)
        while self.stack:
            opened, _ = self.stack.pop()
            if opened == tag:
                return

    def _end_inside(self, tag: str) -> None:
        if tag in BREAKS:
            self._flush()
        if tag == "a" and self.link:
            href, css, words = self.link
            text = re.sub(r"\s+", " ", "".join(words)).strip()
            self.page.links.append(Link(href, text, self.section, self._inside("td", "th"), css))
            self.link = None
        if self.picture is not None:
            heard = " ".join(" ".join(self.picture_text).split())
            if tag == "title":
                self.picture.title = heard
            if tag == "desc":
                self.picture.description = heard
            if tag == "svg":
                self.page.pictures.append(self.picture)
                self.picture = None

    def handle_data(self, data: str) -> None:
        if not self._inside("article"):
            return
        if self._inside("title", "desc"):
            self.picture_text.append(data)
        if self._inside(*SILENT) or self._inside_class(*SILENT_CLASSES):
            # Something stood here: keep the words before and after apart, and the sentence whole.
            if self._inside("code") and not self._inside("pre", "svg"):
                self.buffer.append("…")
            return
        if self.link:
            self.link[2].append(data)
        self.buffer.append(data)


def read(html: str, name: str = "page.md") -> Page:
    """The page that this HTML shows."""
    page = Page(name)
    reader = _Reader(page)
    reader.feed(html)
    reader.close()
    return page


def article(html: str, name: str = "jobs/bail.md") -> Page:
    """A page whose article is this HTML."""
    return read(f"<article>{html}</article>", name)


def sources() -> list[str]:
    """Every Markdown page below docs/, as its path."""
    return sorted(file.relative_to(DOCS).as_posix() for file in DOCS.rglob("*.md"))


def built_file(name: str) -> Path:
    """Where the build puts a page."""
    stem = name.removesuffix(".md")
    return SITE / ("index.html" if stem == "index" else f"{stem.removesuffix('/index')}/index.html")


@cache
def page(name: str) -> Page:
    """A built page by its source's path. Raises ``FileNotFoundError`` with what to do when the site is not built."""
    file = built_file(name)
    if not file.is_file() or file.stat().st_mtime < (DOCS / name).stat().st_mtime:
        raise FileNotFoundError(f"site/ has no page of the present {name}: run python3 -m build_scripts build first.")
    return read(file.read_text(encoding="utf-8"), name)
