"""Tables of sizes: units, the two wire gauges side by side, drills, the drill for a post."""

from __future__ import annotations

from collections.abc import Iterator
from xml.etree import ElementTree

from build_scripts.data_tables import Options, data_table
from build_scripts.data_tables.rows import KNOWN, Cell, Origin, known, table
from calculators.data import load
from calculators.gauges import BS, SWG, Size, metric_drills, number_drills, numbered, sizes_of
from calculators.units import UNITS, magnitude, number_text, quantity, unit_text, with_unit

FIRST_GAUGE, LAST_GAUGE = "1", "36"  # thicker is plate, thinner is not welded at a bench
POST_GAUGES = ("14", "16", "17", "18", "19", "20", "21", "22", "24")
SMALLEST_DRILL, LARGEST_DRILL = 80, 50
LARGEST_METRIC = 2.99
_TINY = 1e-9


@data_table("units")
def units(_: Options) -> ElementTree.Element:
    """Units of the bench in metric ones, exactly."""
    rows: list[list[Cell]] = []
    for one in load("unit_factors")["unit"]:
        value = magnitude(UNITS.Quantity(one["unit"]), one["into"])
        exact = with_unit(f"{value:.12g}", one["into"])
        rows.append([one["name"], exact, one["from"], known([Origin("", one["mark"], one["source"])])])
    return table("units", "Units that are exact", ["Unit", "Is exactly", "From", KNOWN], [("", rows)])


@data_table("unit-factors")
def unit_factors(_: Options) -> ElementTree.Element:
    """What to multiply by to turn one unit into another."""
    rows: list[list[Cell]] = []
    for one in load("unit_factors")["factor"]:
        factor = magnitude(quantity(1, one["from"]), one["into"])
        origins = [Origin("", one["mark"], one["source"])]
        rows.append([unit_text(one["from"]), unit_text(one["into"]), number_text(factor, 6), known(origins)])
    caption = "Factors, to six figures"
    return table("unit-factors", caption, ["To turn", "into", "multiply by", KNOWN], [("", rows)])


@data_table("gauges")
def gauges(_: Options) -> ElementTree.Element:
    """Brown & Sharpe and imperial standard gauge of the same number, side by side."""
    law, swg = load("gauges")["brown-and-sharpe"], load("gauges")["imperial-standard"]
    origins = [Origin("B&S", law["mark"], law["source"]), Origin("SWG", swg["mark"], swg["source"])]
    rows: list[list[Cell]] = []
    sizes = sizes_of(BS)
    first, last = (next(i for i, one in enumerate(sizes) if one.number == end) for end in (FIRST_GAUGE, LAST_GAUGE))
    for here in sizes[first : last + 1]:
        other = numbered(SWG, here.number)
        if other is not None:
            share = f"{100 * (other.mm / here.mm - 1):+.0f}\u00a0%".replace("-", "−")
            rows.append([here.number, *_both(here), *_both(other), share, known(origins)])
    heads = ["No.", "B&S|mm", "B&S|in", "SWG|mm", "SWG|in", "SWG is", KNOWN]
    caption = "One number, two gauges. The column before the last says how much thicker the imperial one is."
    return table("gauges", caption, heads, [("", rows)])


def _both(size: Size) -> list[str]:
    return [f"{size.mm:.3f}", f"{magnitude(size.size, 'inch'):.4f}"]


def _drill_origin(size: Size) -> Origin:
    """The source of one number drill: two tables share the set."""
    for name in ("number-drill", "number-drill-large"):
        rows = load("gauges")[name]
        if size.number in [number for number, _ in rows["sizes"]]:
            return Origin("", rows["mark"], rows["source"])
    raise KeyError(size.number)


@data_table("number-drills")
def drills(_: Options) -> ElementTree.Element:
    """Number drills of the bench, with the first metric drill that is not smaller."""
    rows: list[list[Cell]] = []
    for size in number_drills():
        if LARGEST_DRILL <= int(size.number) <= SMALLEST_DRILL:
            metric = _not_smaller(metric_drills(), size.mm)
            rows.append([size.number, *_both(size), metric.number, known([_drill_origin(size)])])
    caption = f"Number drills {SMALLEST_DRILL} to {LARGEST_DRILL}, smallest first"
    heads = ["No.", "Size|mm", "Size|in", "Metric drill not smaller|mm, computed", KNOWN]
    return table("number-drills", caption, heads, [("", rows)])


@data_table("metric-drills")
def metric(_: Options) -> ElementTree.Element:
    """Metric drills, a row for each tenth of a millimeter."""
    told = load("gauges")["metric-drill"]
    tenths: dict[str, list[str]] = {}
    for size in metric_drills():
        if size.mm <= LARGEST_METRIC:
            tenths.setdefault(size.number[:-1], []).append(size.number)
    rows: list[list[Cell]] = []
    for tenth, numbers in tenths.items():
        rows.append([f"{tenth}…", "  ".join(numbers), known([_of(told)])])
    caption = "Metric drills below 3 mm, in millimeters. From 3 to 13.9 mm every tenth has one."
    return table("metric-drills", caption, ["From", "Sizes", KNOWN], [("", rows)])


def _of(told: dict[str, str]) -> Origin:
    return Origin("", told["mark"], told["source"])


def _not_smaller(sizes: tuple[Size, ...], mm: float) -> Size:
    return next(one for one in sizes if one.mm >= mm - _TINY)


@data_table("post-drills")
def post_drills(_: Options) -> ElementTree.Element:
    """For each wire the first drill that is not smaller: the hole of a plug."""
    return table(
        "post-drills",
        "The drill for a post: the first that is not smaller than the wire",
        ["Wire|B&S", "Wire|mm", "Metric drill|mm", "Number drill|No. and mm", KNOWN],
        [("", _post_rows())],
    )


def _post_rows() -> Iterator[list[Cell]]:
    law, drill = load("gauges")["brown-and-sharpe"], load("gauges")["metric-drill"]
    for number in POST_GAUGES:
        wire = numbered(BS, number)
        if wire is None:
            raise KeyError(number)
        metric_size, numbered_size = (_not_smaller(sizes, wire.mm) for sizes in (metric_drills(), number_drills()))
        origins = [
            Origin("choice of drill", "computed"),
            Origin("wire", law["mark"], law["source"]),
            Origin("metric", drill["mark"], drill["source"]),
            Origin("number", *_drill_origin(numbered_size)[1:]),
        ]
        numbers = f"{numbered_size.number} ({numbered_size.mm:.2f})"
        yield [number, f"{wire.mm:.2f}", metric_size.number, numbers, known(origins)]
