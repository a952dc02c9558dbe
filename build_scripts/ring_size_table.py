"""The table that puts the ring-size scales side by side, one row for every half US size, made from the scales' laws."""

from __future__ import annotations

import math
from html import escape

from calculators.ring_scales import Scale, scales

FIRST, LAST, STEP = 0.0, 16.0, 0.5
COLUMNS = ("us-alternative", "uk", "iso", "japan", "swiss")
HEADS = {
    "us-alternative": ("US, other law", "number"),
    "uk": ("UK, AU", "letter"),
    "iso": ("ISO 8653", "mm around"),
    "japan": ("Japan", "number"),
    "swiss": ("CH, IT, ES", "around − 40"),
}
LOWEST = {"japan": 1.0, "swiss": 1.0, "uk": 1.0, "us-alternative": 0.0, "iso": 0.0}  # below it the scale has no name


def ring_size_table_html() -> str:
    """The comparison table as HTML.

    Each cell has the nearest size of that scale and, beside it, how much larger (+) or smaller (−) the ring of the row
    is than that size, in mm around the inside. Laws, sources and marks are those of ``ring_scales.toml``.
    """
    main = scales()["us"]
    rows = []
    number = FIRST
    while number <= LAST:
        rows.append(_row(main, number))
        number += STEP
    heads = "".join(f'<th scope="col">{HEADS[key][0]} <small>{HEADS[key][1]}</small></th>' for key in COLUMNS)
    return (
        '<div class="table-scroll" tabindex="0" role="region" aria-label="Ring sizes side by side">'
        '<table class="ring-size-table"><caption>Ring sizes side by side. Beside each size: the ring of the row is '
        "this much larger (+) or smaller (−), in mm around the inside. Below, above: off that scale.</caption>"
        '<thead><tr><th scope="col">US, CA <small>number</small></th><th scope="col">Across <small>mm</small></th>'
        f'<th scope="col">Around <small>mm</small></th>{heads}</tr></thead><tbody>{"".join(rows)}</tbody></table></div>'
    )


def _row(main: Scale, number: float) -> str:
    around = main.circumference(number)
    cells = "".join(_cell(scales()[key], around) for key in COLUMNS)
    return (
        f'<tr><th scope="row">{escape(main.size_text(number))}</th><td>{around / math.pi:.2f}</td>'
        f"<td>{around:.2f}</td>{cells}</tr>"
    )


def _cell(scale: Scale, around: float) -> str:
    nearest = scale.nearest(around)
    if nearest < LOWEST[scale.key]:
        return '<td class="quiet">below</td>'
    if nearest > scale.last:
        return '<td class="quiet">above</td>'
    off = round(around - scale.circumference(nearest), 2)
    shown = f"{off:+.2f}".replace("-", "−") if off else "0.00"
    return f"<td>{escape(scale.size_text(nearest))} <small>{shown}</small></td>"
