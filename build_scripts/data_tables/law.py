"""Tables of fineness: karats and stamps, what the law of a place allows, least solder, metal added without consent.

``place = uk`` in the block shows one place only.
"""

from __future__ import annotations

from collections.abc import Iterable
from typing import Any
from xml.etree import ElementTree

from build_scripts.data_tables import Options, data_table
from build_scripts.data_tables.rows import KNOWN, Cell, Origin, known, origin, table, two_lines
from build_scripts.errors import PageError, nearest
from calculators.data import Figure, figure, load
from calculators.metal.laws import Law, laws, places
from calculators.units import magnitude, number_text

NOT_SEEN = "not seen"


@data_table("karats")
def karats(_: Options) -> ElementTree.Element:
    """Karat in parts per thousand, with the stamp that is usual for it."""
    rows: list[list[Cell]] = []
    for one in load("fineness")["karat"]:
        origins = [Origin("parts", "computed"), Origin("stamp", one["mark"], one.get("source", ""))]
        stamps = ", ".join(str(stamp) for stamp in one["stamps"])
        rows.append([str(one["karat"]), f"{1000 * one['karat'] / 24:.2f}", stamps, known(origins)])
    heads = ["Karat", "Parts in 1000", "Usual stamp", KNOWN]
    return table("karats", "Karat, parts in a thousand, stamp", heads, [("", rows)])


def _wanted(options: Options) -> dict[str, str]:
    """The places to show, key and name, in the order of the data."""
    every = dict(places())
    if "place" not in options:
        return every
    if options["place"] not in every:
        raise PageError(f"There is no law of {options['place']} in the data. {nearest(options['place'], every)}")
    return {options["place"]: every[options["place"]]}


def _amount(one: Figure | None) -> Cell:
    if one is None:
        return NOT_SEEN
    value = number_text(magnitude(one.value, "permille"))
    return two_lines("nothing" if value == "0" else value, one.note)


@data_table("fineness-law", "place")
def fineness_law(options: Options) -> ElementTree.Element:
    """Standards of fineness and what may be missing, by place and metal."""
    wanted = _wanted(options)
    groups = [
        ("" if len(wanted) == 1 else name, [_law(one) for one in laws() if one.place == place])
        for place, name in wanted.items()
    ]
    heads = ["Metal", "Standards|‰", "Alloy below its mark|at most ‰", "Whole piece with solder|at most ‰ below", KNOWN]
    return table("fineness-law", f"Standards and tolerances{_behind(wanted)}", heads, groups)


def _behind(wanted: dict[str, str]) -> str:
    return f", {next(iter(wanted.values()))}" if len(wanted) == 1 else " by place"


def _law(law: Law) -> list[Cell]:
    standards = ", ".join(number_text(one) for one in law.standards)
    if not standards:
        standards = "any karat, as marked" if law.measured == "karat" else "any, as marked"
    origins = [Origin("standards", law.standards_mark, law.standards_source)]
    limits = (("alloy", law.minus_alloy), ("whole piece", law.minus_article))
    origins += [origin(what, one) for what, one in limits if one]
    return [
        law.metal.capitalize(),
        two_lines(standards, law.standards_note),
        _amount(law.minus_alloy),
        _amount(law.minus_article),
        known(origins),
    ]


def _by_place(wanted: dict[str, str], rows: Iterable[dict[str, Any]], make: Any) -> list[tuple[str, list[list[Cell]]]]:
    listed = list(rows)
    groups = [(name, [make(one) for one in listed if one["place"] == place]) for place, name in wanted.items()]
    return [("" if len(wanted) == 1 else name, made) for name, made in groups if made]


@data_table("solder-law", "place")
def solder_law(options: Options) -> ElementTree.Element:
    """The least fineness of solder in a marked piece, by place."""
    wanted = _wanted(options)
    heads = ["Piece|standard, ‰", "Solder at least|‰", "Note", KNOWN]
    groups = _by_place(wanted, load("fineness")["solder"], _solder)
    return table("solder-law", f"Least fineness of solder{_behind(wanted)}", heads, groups)


def _solder(row: dict[str, Any]) -> list[Cell]:
    least = figure(row["least"])
    article = f"{row['metal'].capitalize()} from {row['article_from']}"
    return [article, number_text(magnitude(least.value, "permille")), least.note, known([origin("", least)])]


@data_table("addition-law", "place")
def addition_law(options: Options) -> ElementTree.Element:
    """Metal that may be added to a marked piece without consent, by place."""
    wanted = _wanted(options)
    heads = ["Metal", "At most|g", "and at most|of the piece before", KNOWN]
    groups = _by_place(wanted, load("fineness")["addition"], _addition)
    return table("addition-law", f"Metal added without consent{_behind(wanted)}", heads, groups)


def _addition(row: dict[str, Any]) -> list[Cell]:
    most, share = figure(row["most"]), figure(row["share"])
    of_piece = f"{number_text(magnitude(share.value, 'percent'))}\u00a0%"
    grams = number_text(magnitude(most.value, "g"))
    return [row["metal"].capitalize(), grams, of_piece, known([origin("", most), origin("", share)])]
