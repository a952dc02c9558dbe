"""Citations in the text: ``[@key]`` becomes a number that leads to the source, and the page lists what it cites.

Numbers run in the order of the page. Keys are those of ``calculators/data/sources.toml``.
"""

from __future__ import annotations

from collections.abc import Iterator
from re import Match
from xml.etree import ElementTree

from markdown import Markdown
from markdown.inlinepatterns import InlineProcessor
from markdown.treeprocessors import Treeprocessor
from markdown.util import AtomicString

from build_scripts.errors import PageError, nearest
from calculators.data import Source, sources

PATTERN = r"\[@([^\]\n]*)\]"
SOURCES_PAGE = "/reference/sources.md"  # the build makes it relative to each page and checks the anchor
LIST_CLASS = "cited"


def find(key: str) -> Source:
    """The source of that key. Raises ``PageError`` naming the nearest known one."""
    known = sources()
    if key not in known:
        raise PageError(f"There is no source {key} in sources.toml. {nearest(key, known)}")
    return known[key]


def link(key: str) -> ElementTree.Element:
    """A citation; its number is filled in once the whole page is read. Raises ``PageError``."""
    mark = ElementTree.Element("a", {"class": "citation", "data-key": find(key).key, "href": ""})
    mark.text = AtomicString("")
    return mark


def anchor(key: str) -> str:
    """The anchor of a source on the sources page."""
    return f"source-{key}"


class Cite(InlineProcessor):
    """Turns ``[@key]`` into a citation."""

    def handleMatch(self, m: Match[str], data: str) -> tuple[ElementTree.Element, int, int]:  # noqa: N802
        """The element for one citation and where its text stood."""
        return link(m.group(1).strip()), m.start(0), m.end(0)


class NumberCitations(Treeprocessor):
    """Numbers the citations in the order of the page and fills the page's own list in."""

    def __init__(self, md: Markdown, also_cited: list[str]) -> None:
        super().__init__(md)
        self.also_cited = also_cited  # what the page's worked examples cite, by their own lists

    def run(self, root: ElementTree.Element) -> None:
        marks = [one for one in root.iter("a") if one.get("data-key")]
        lists = [one for one in root.iter("ol") if one.get("class") == LIST_CLASS]
        if len(lists) > 1:
            raise PageError("A page lists what it cites once: one /// cited block is enough.")
        numbers: dict[str, int] = {}
        for mark in marks:
            key = mark.attrib.pop("data-key")
            number = numbers.setdefault(key, len(numbers) + 1)
            mark.text = AtomicString(f"[{number}]")
            mark.set("data-search-exclude", "")
            mark.set("aria-label", f"Source {number}: {find(key).citation}")
            mark.set("href", f"#cited-{key}" if lists else f"{SOURCES_PAGE}#{anchor(key)}")
        if lists:
            lists[0].set("data-search-exclude", "")
            keys = list(dict.fromkeys([*numbers, *self.also_cited]))
            if not keys:
                raise PageError(
                    "This page has a /// cited block, but neither its text nor its calculators cite a source."
                )
            lists[0].extend(_lines(keys))


def _lines(keys: list[str]) -> Iterator[ElementTree.Element]:
    for key in keys:
        source = find(key)
        line = ElementTree.Element("li", {"id": f"cited-{key}"})
        link_to_all = ElementTree.SubElement(line, "a", {"href": f"{SOURCES_PAGE}#{anchor(key)}"})
        link_to_all.text = AtomicString(source.citation)
        link_to_all.tail = AtomicString(f" ({source.extent})")
        yield line
