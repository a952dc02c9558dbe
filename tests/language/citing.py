"""Sources: what is listed, what is cited, and each page's own list."""

from __future__ import annotations

import re
import tomllib
from collections.abc import Iterable, Iterator, Mapping
from pathlib import Path
from typing import Any

from build_scripts.citations import PATTERN

from .pages import DOCS, Page

CALCULATORS = DOCS.parent / "calculators"
SOURCES = CALCULATORS / "data/sources.toml"


def listed() -> set[str]:
    """The keys of sources.toml."""
    return set(tomllib.loads(SOURCES.read_text(encoding="utf-8")))


def cited_in_text(text: str) -> set[str]:
    """The keys cited in a page's Markdown."""
    return {key.strip() for key in re.findall(PATTERN, text)}


def cited_in_data(told: Any) -> Iterator[str]:
    """The keys named as ``source``, ``sources`` or ``..._source`` anywhere in a table of data."""
    if isinstance(told, Mapping):
        for name, value in told.items():
            if name in ("source", "sources") or name.endswith("_source"):
                yield from (one for one in ([value] if isinstance(value, str) else value) if one)
            else:
                yield from cited_in_data(value)
    elif isinstance(told, list):
        for one in told:
            yield from cited_in_data(one)


def cited_in_python(text: str, known: Iterable[str]) -> set[str]:
    """The known keys that Python names: a calculator's ``sources=[...]`` or ``working.cite(...)``."""
    return set(re.findall(r"""["']([\w.-]+)["']""", text)) & set(known)


def cited(docs: Path = DOCS, calculators: Path = CALCULATORS) -> dict[str, str]:
    """Every cited key with one place that cites it."""
    found: dict[str, str] = {}
    for file in sorted(docs.rglob("*.md")):
        for key in cited_in_text(file.read_text(encoding="utf-8")):
            found.setdefault(key, f"docs/{file.relative_to(docs).as_posix()}")
    for file in sorted(calculators.rglob("*.toml")):
        if file != SOURCES:
            for key in cited_in_data(tomllib.loads(file.read_text(encoding="utf-8"))):
                found.setdefault(key, f"calculators/{file.relative_to(calculators).as_posix()}")
    known = listed()
    for file in sorted(calculators.rglob("*.py")):
        for key in cited_in_python(file.read_text(encoding="utf-8"), known):
            found.setdefault(key, f"calculators/{file.relative_to(calculators).as_posix()}")
    return found


def uncited(known: Iterable[str], found: Iterable[str]) -> list[str]:
    """The keys that are listed and that nothing cites."""
    return sorted(set(known) - set(found))


def unlisted(known: Iterable[str], found: Mapping[str, str]) -> dict[str, str]:
    """The keys that are cited and not listed, each with its place."""
    return {key: place for key, place in found.items() if key not in set(known)}


def faults_of_page(page: Page) -> list[str]:
    """What is wrong with a page's own list of sources."""
    marks = [link for link in page.links if "citation" in link.css.split()]
    if not marks:
        return []
    if not page.cited:
        return ["it cites sources and has no list: end it with ## Sources and a /// cited block"]
    missing = sorted({link.href for link in marks} - {f"#cited-{key}" for key in page.cited})
    found = [f"it cites {href}, which its list lacks" for href in missing]
    if page.sections() and page.sections()[-1] != "Sources":
        found.append(f"its last part is “{page.sections()[-1]}”: its list of sources comes last, under ## Sources")
    return found
