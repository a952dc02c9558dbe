"""Tables of the pages that are made from the data at build time, every row with its source and mark.

A table is a function of the options that stand in its block, marked ``@data_table("gauges")``, that returns the table
as an element. There is no list to keep: put it in a module here and ``/// data-table | gauges`` shows it.
"""

from __future__ import annotations

import importlib
import pkgutil
from collections.abc import Callable, Mapping
from functools import lru_cache
from xml.etree import ElementTree

from build_scripts.errors import PageError, nearest

Options = Mapping[str, str]
MakeTable = Callable[[Options], ElementTree.Element]
_known: dict[str, MakeTable] = {}
_allowed: dict[str, tuple[str, ...]] = {}


def data_table(name: str, *options: str) -> Callable[[MakeTable], MakeTable]:
    """Register a table under the name that pages show it by, with the options it takes."""

    def register(make: MakeTable) -> MakeTable:
        _known[name], _allowed[name] = make, options
        return make

    return register


@lru_cache(maxsize=1)
def all_tables() -> dict[str, MakeTable]:
    """Every table of this folder by its name."""
    for module in pkgutil.iter_modules(__path__, f"{__name__}."):
        importlib.import_module(module.name)
    return dict(sorted(_known.items()))


def build(name: str, text: str = "") -> ElementTree.Element:
    """The table of that name; ``text`` holds one ``option = value`` a line.

    Raises ``PageError`` for a table or an option that does not exist.
    """
    known = all_tables()
    if name not in known:
        raise PageError(f"There is no data table {name}. {nearest(name, known)}")
    options = {}
    for line in filter(None, map(str.strip, text.splitlines())):
        option, equals, value = line.partition("=")
        if not equals:
            raise PageError(f"An option of a data table is written as place = uk, not as {line}.")
        if option.strip() not in _allowed[name]:
            raise PageError(f"The data table {name} has no option {option.strip()}.")
        options[option.strip()] = value.strip()
    return known[name](options)
