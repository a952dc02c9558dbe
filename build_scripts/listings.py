"""Lists that keep themselves: all sources, all calculators, the pages of a folder."""

from __future__ import annotations

import re
import sys
from collections.abc import Iterable, Mapping
from functools import lru_cache
from pathlib import Path
from typing import Any, NamedTuple
from xml.etree import ElementTree

import yaml
from markdown.util import AtomicString

from build_scripts import citations
from build_scripts.errors import PageError, nearest
from calculators.data import sources
from calculators.declare import Calculator, all_calculators

_FRONT_MATTER = re.compile(r"\A---\n(.*?)\n---\n", re.DOTALL)
_SHOWN_CODE = re.compile(r"^```.*?^```", re.DOTALL | re.MULTILINE)  # a page that shows how a block is written
_CALCULATOR = re.compile(r"^[ ]*/{3,}[ ]*calculator[ ]*\|[ ]*([\w-]+)[ ]*$", re.MULTILINE)


class PageFile(NamedTuple):
    """What a listing needs to know of a page.

    ``path`` is below ``docs``, ``picture`` the slug of a drawing, ``home`` the calculators this page is the place for.
    """

    path: str
    title: str
    description: str
    calculators: tuple[str, ...]
    picture: str = ""
    home: tuple[str, ...] = ()


@lru_cache(maxsize=4)
def page_files(docs: Path) -> tuple[PageFile, ...]:
    """Every Markdown page below ``docs`` in the order of its path. The notes of a shop are no pages."""
    files = {*docs.rglob("*.md"), *(docs / "house").rglob("*.md")}  # that folder may be a link, which rglob passes by
    pages = sorted(file for file in files if not file.is_relative_to(docs / "house/notes"))
    return tuple(_page_file(file, docs) for file in pages)


def _page_file(file: Path, docs: Path) -> PageFile:
    text = file.read_text(encoding="utf-8-sig")
    told = _front_matter(text, file.relative_to(docs).as_posix())
    heading = re.search(r"^# (.+)$", text, re.MULTILINE)
    title = str(told.get("title") or (heading.group(1) if heading else file.stem.replace("-", " ").capitalize()))
    description, picture = (str(told.get(name, "")) for name in ("description", "picture"))
    carried = tuple(_CALCULATOR.findall(_SHOWN_CODE.sub("", text)))
    home = tuple(str(told.get("home", "")).split())
    return PageFile(file.relative_to(docs).as_posix(), title, description, carried, picture, home)


def _front_matter(text: str, path: str) -> dict[str, Any]:
    """What the lines between ``---`` say of a page. Raises ``PageError``."""
    front = _FRONT_MATTER.match(text)
    try:
        told = yaml.safe_load(front.group(1)) if front else {}
    except yaml.YAMLError as slip:
        told = slip
    if not isinstance(told, dict | None):
        raise PageError(
            f"docs/{path}: the lines between --- at its top can't be read. Write each as name: text, "
            'and a text with a colon in quotes, such as title: "Rings: ours".'
        )
    return told or {}


def in_folder(folder: str, docs: Path) -> list[PageFile]:
    """The pages of one folder below ``docs``, by title, without its index. Raises ``PageError`` when there is none."""
    prefix = folder.strip("/") + "/"
    found = [one for one in page_files(docs) if one.path.startswith(prefix) and one.path != prefix + "index.md"]
    # A folder inside is shown by its index alone.
    found = [one for one in found if "/" not in one.path.removeprefix(prefix).removesuffix("/index.md")]
    if not found:
        folders = {one.path.rpartition("/")[0] for one in page_files(docs)} - {""}
        raise PageError(f"There is no page in the folder {folder}. {nearest(folder, folders)}")
    return sorted(found, key=lambda one: one.title.lower())


def page_list(pages: list[PageFile]) -> ElementTree.Element:
    """Large links, each with the page's one line."""
    listed = ElementTree.Element("ul", {"class": "page-list"})
    for one in pages:
        line = ElementTree.SubElement(listed, "li")
        ElementTree.SubElement(line, "a", {"href": f"/{one.path}"}).text = AtomicString(one.title)
        if one.description:
            ElementTree.SubElement(line, "p").text = AtomicString(one.description)
    return listed


def calculators_by_topic() -> dict[str, list[Calculator]]:
    """Every calculator by title under its topic: what the docstring of its folder says up to the first colon."""
    topics: dict[str, list[Calculator]] = {}
    for one in sorted(all_calculators().values(), key=lambda calculator: calculator.title.lower()):
        told = sys.modules[one.work.__module__.rpartition(".")[0]].__doc__ or ""
        topics.setdefault(re.split(r"[:.\n]", told.strip())[0], []).append(one)
    return dict(sorted(topics.items()))


def pages_carrying(wanted: Iterable[Calculator], docs: Path) -> dict[str, PageFile]:
    """The page that says it is the calculator's home, else the first that carries it, for those that have one."""
    slugs = {one.slug for one in wanted}
    carrying: dict[str, PageFile] = {}
    for page in page_files(docs):
        if page.path.startswith("house/"):
            continue
        for slug in slugs.intersection(page.calculators):
            if slug in page.home:
                carrying[slug] = page
            carrying.setdefault(slug, page)
    return carrying


def calculator_list(listed_ones: Iterable[Calculator], pages: Mapping[str, PageFile]) -> ElementTree.Element:
    """Large links to the calculators on their pages, or further down on this page."""
    listed = ElementTree.Element("ul", {"class": "page-list"})
    for one in listed_ones:
        line = ElementTree.SubElement(listed, "li")
        page = pages.get(one.slug)
        address = f"/{page.path}#{one.slug}" if page else f"#{one.slug}"
        ElementTree.SubElement(line, "a", {"href": address}).text = AtomicString(one.title)
        ElementTree.SubElement(line, "p").text = AtomicString(one.purpose)
        if page:
            ElementTree.SubElement(line, "p", {"class": "quiet"}).text = AtomicString(f"On the page {page.title}")
    return listed


def source_list() -> ElementTree.Element:
    """Every source of the handbook, in order of its citation, with how far it was seen."""
    listed = ElementTree.Element("ul", {"class": "source-list"})
    for one in sorted(sources().values(), key=lambda source: source.citation.lower()):
        line = ElementTree.SubElement(listed, "li", {"id": citations.anchor(one.key)})
        line.text = AtomicString(f"{one.citation} ")
        ElementTree.SubElement(line, "small").text = AtomicString(f"({one.extent})")
    return listed
