"""Every value in the data carries a mark, and a source where the mark promises one."""

from __future__ import annotations

import re
import tomllib
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest

from calculators.data import MARKS, figure, sources
from calculators.declare import all_calculators

DATA = Path(__file__).parent.parent / "calculators" / "data"
NEEDS_SOURCE = {"published", "second-hand"}


def figures(part: Any, where: str) -> Iterator[tuple[str, dict[str, Any]]]:
    """Every table with a value and a unit, with its place."""
    if isinstance(part, dict):
        if "value" in part and "unit" in part:
            yield where, part
        for name, inner in part.items():
            yield from figures(inner, f"{where}.{name}")
    elif isinstance(part, list):
        for number, inner in enumerate(part):
            key = inner.get("key", number) if isinstance(inner, dict) else number
            yield from figures(inner, f"{where}.{key}")


ALL = [
    pytest.param(table, id=where)
    for path in sorted(DATA.glob("*.toml"))
    for where, table in figures(tomllib.loads(path.read_text(encoding="utf-8")), path.stem)
]


@pytest.mark.parametrize("table", ALL)
def test_a_figure_has_its_mark_and_source(table: dict[str, Any]) -> None:
    assert table.get("mark") in MARKS
    if table["mark"] in NEEDS_SOURCE:
        assert table.get("source"), "this mark names a source"
    if table.get("source"):
        assert table["source"] in sources()
    known = figure(table)
    if known.low is not None and known.high is not None:
        assert known.low <= known.value <= known.high


@pytest.mark.parametrize("source", sources().values(), ids=lambda one: one.key)
def test_a_source_says_what_it_is_and_how_far_it_was_seen(source: Any) -> None:
    assert re.fullmatch(r"[a-z0-9-]+", source.key)
    assert len(source.citation) > 10
    assert source.extent


@pytest.mark.parametrize("slug", sorted(all_calculators()))
def test_a_calculator_names_only_known_sources(slug: str) -> None:
    assert set(all_calculators()[slug].sources) <= set(sources())
