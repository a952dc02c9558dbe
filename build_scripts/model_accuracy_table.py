"""Tables on how well the heat model does, made from what its own benchmark and grid study wrote down."""

from __future__ import annotations

import tomllib
from collections.abc import Iterable
from html import escape
from pathlib import Path

from build_scripts.errors import PageError, nearest
from calculators.data import load
from calculators.declare import all_calculators

GRID_STUDY = Path(__file__).parent / "heat_model" / "grid_study.toml"
_ROWS = {
    "depth_thick": "Depth of the pool, thick metal", "width_thick": "Width at the surface, thick metal",
    "surface_thick": "Surface temperature (over room), thick metal", "depth_plate": "Depth, plate 0.3 to 2 mm",
    "width_plate": "Width, plate 0.3 to 2 mm", "surface_plate": "Surface temperature (over room), plate",
    "stone": "Warmth at a stone",
}  # fmt: skip


def model_accuracy_html(wanted: str) -> str:
    """The table ``errors``, ``grid`` or ``times``. Raises ``PageError`` for another name."""
    known = {"errors": _errors, "grid": _grid, "times": _times}
    if wanted not in known:
        raise PageError(f"There is no table {wanted} of the model's accuracy. {nearest(wanted, known)}")
    return known[wanted]()


def _table(caption: str, heads: Iterable[str], rows: Iterable[list[str]]) -> str:
    """Plain table whose first column heads its rows."""
    head = "".join(f'<th scope="col">{escape(one)}</th>' for one in heads)
    body = "".join(
        f'<tr><th scope="row">{escape(row[0])}</th>{"".join(f"<td>{escape(cell)}</td>" for cell in row[1:])}</tr>'
        for row in rows
    )
    return (
        f'<div class="table-scroll" tabindex="0" role="region" aria-label="{escape(caption)}"><table>'
        f"<caption>{escape(caption)}</caption><thead><tr>{head}</tr></thead><tbody>{body}</tbody></table></div>"
    )


def _percent(share: float) -> str:
    number = 100 * share
    return f"{number:.1f} %" if number >= 0.095 else f"{number:.2g} %" if number >= 0.0095 else "under 0.01 %"


def _errors() -> str:
    found = load("model_accuracy")
    rows = [
        [words, *(_percent(found[name][end]) for end in ("median", "p90", "worst")), f"{found[name]['cases']:.0f}"]
        for name, words in _ROWS.items()
    ]
    holes = found["holes"]
    rows.append(
        ["Plates melted through", f"{holes['foretold']:.0f} foretold", f"{holes['false']:.0f} false alarms", "",
         f"{holes['cases']:.0f}"]
    )  # fmt: skip
    return _table(
        "The model against numerical solutions, random cases",
        ("", "Half of the cases within", "9 of 10 within", "Worst", "Cases"),
        rows,
    )


def _grid() -> str:
    rows = []
    for case in tomllib.loads(GRID_STUDY.read_text(encoding="utf-8"))["case"]:
        used = case["fine"].index(1.4)  # the nearest to the grids that the table was made on
        off = [100 * (case[name][used] / case[name][-1] - 1) for name in ("depth", "radius", "surface")]
        off.append(case["depth_by_time_step_percent"])
        thick = "thick" if case["thickness"] == float("inf") else f"{case['thickness']:g} spot radii"
        rows.append(
            [f"Fo {case['fourier']:g}, β {case['beta']:g}, {thick}", *(f"{round(one, 2) + 0.0:+.2f} %" for one in off)]
        )
    return _table(
        "What a finer grid and finer time steps change",
        ("Pulse", "Depth", "Radius", "Surface", "Depth, eight times the time steps"),
        [[cell.replace("-", "−") for cell in row] for row in rows],
    )


def _times() -> str:
    titles = {slug: one.title for slug, one in all_calculators().items()}
    rows = [[titles[slug], f"{time:.0f} ms"] for slug, time in load("model_accuracy")["time_ms"].items()]
    return _table("Time of one answer, worked example, on the computer that ran the benchmark", ("", "Median"), rows)
