"""Reads the shop's folder before the pages are built, so that a slip in it is told in a sentence that names the file.

A page of the shop, or a note, is rendered once on its own. Its links are looked up as well: what a strict build says
of a note's link would name the page of the handbook that the note stands on.
"""

from __future__ import annotations

import posixpath
from html.parser import HTMLParser
from pathlib import Path
from typing import Any
from urllib.parse import unquote, urlsplit

import markdown
import yaml

from build_scripts import house_notes, house_start, house_values
from build_scripts.bootstrap import REPO
from build_scripts.errors import PageError, nearest

SURPLUS_ENDING = (".md.txt", ".toml.txt")


def check(docs: Path) -> None:
    """Read everything in the shop's folder. Raises ``PageError`` with a sentence for the person who wrote it."""
    house = docs / house_values.FOLDER
    if not house.is_dir():
        return
    for file in sorted(house.rglob("*.txt")):
        if file.name.endswith(SURPLUS_ENDING):
            raise PageError(f"{_name(file, docs)} is not read: rename it to {file.name.removesuffix('.txt')}.")
    for file in house.rglob("*.md"):  # before anything lists the pages
        house_values.read_text(file, _name(file, docs))
    house_start.law_page(house_values.shop(docs).jurisdiction, docs)
    for path, file in house_notes.note_files(docs).items():
        _read(file, path, docs)
        _render((docs / path).read_text(encoding="utf-8"), _name(file, docs), docs)  # the page with its note
    for file in house_notes.own_pages(docs):
        _read(file, file.relative_to(docs).as_posix(), docs)


def _name(file: Path, docs: Path) -> str:
    return f"docs/{file.relative_to(docs).as_posix()}"


def _read(file: Path, page: str, docs: Path) -> None:
    """Render one file as it will stand on ``page``, and look its links up."""
    name = _name(file, docs)
    found = _Links()
    found.feed(_render(house_values.read_text(file, name), name, docs))
    for link in found.links:
        _look_up(link, name, page, docs)


def _render(text: str, name: str, docs: Path) -> str:
    names, options = _extensions(docs)
    try:
        shown = house_notes.without_front_matter(text)
        return str(markdown.markdown(shown, extensions=names, extension_configs=options))
    except PageError as slip:
        raise PageError(f"{name}: {slip}") from slip


def _extensions(docs: Path) -> tuple[list[str], dict[str, Any]]:
    """What the pages are rendered with, as the site's own settings name it."""
    listed = yaml.safe_load((REPO / "mkdocs.yml").read_text(encoding="utf-8"))["markdown_extensions"]
    options: dict[str, Any] = {}
    for one in listed:
        options.update(one if isinstance(one, dict) else {one: {}})
    options["build_scripts.markdown_blocks"] = {"docs": str(docs)}
    return list(options), options


def _look_up(link: str, name: str, page: str, docs: Path) -> None:
    parts = urlsplit(link)
    if parts.scheme or parts.netloc or not parts.path:
        return
    path = posixpath.normpath(posixpath.join("/", posixpath.dirname(page), unquote(parts.path))).lstrip("/")
    if path.startswith(f"{house_notes.NOTES}/"):
        raise PageError(
            f"{name} leads to {path}, which is not built: keep pictures and pages outside the notes folder."
        )
    if (docs / path).is_file():
        return
    ending = Path(path).suffix or ".md"
    files = (*docs.rglob(f"*{ending}"), *(docs / house_values.FOLDER).rglob(f"*{ending}"))
    known = (one.relative_to(docs).as_posix() for one in files)
    near = nearest(path, [f"/{one}" for one in known if not one.startswith(f"{house_notes.NOTES}/")])
    raise PageError(f"{name} leads to {link}, and there is no such file. {near} Begin a link with a slash.")


class _Links(HTMLParser):
    """Where the links and pictures of a text lead."""

    def __init__(self) -> None:
        super().__init__()
        self.links: list[str] = []

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        place = {"a": "href", "img": "src"}.get(tag, "")
        self.links += [value for name, value in attrs if name == place and value]
