"""Packs the solver's results at the nodes into ``calculators/data/melt_table.txt``.

python -m build_scripts.heat_model.run_table     (about an hour)
python -m build_scripts.heat_model.make_table
"""

from __future__ import annotations

import hashlib
import math
import sys
from itertools import product
from pathlib import Path

from build_scripts.heat_model.nodes import BETA, FOURIER, KAPPA, MELTING_RANGE, STE, THICKNESS, plate_counts
from build_scripts.heat_model.run_table import key_of, raw_rows
from calculators.heat.closed_forms import plate_axis_rise
from calculators.heat.melt_table import BASE, DIGITS, QUANTITIES

TABLE = Path(__file__).resolve().parents[2] / "calculators" / "data" / "melt_table.txt"
Row = list[list[float]]  # per β: the four quantities


def scaled(fourier: float, thickness: float, kappa: float, pools: list[dict[str, float]], thicker: Row | None) -> Row:
    """The kept quantities of one row of β nodes.

    Where a plate is melted through, no depth is seen: the quantities of depth go on from the nodes before, or from
    the next thicker plate, but never so far that the table would deny the hole.
    """
    rise = plate_axis_rise(0.0, fourier, thickness)
    back = plate_axis_rise(thickness, fourier, thickness) / rise if math.isfinite(thickness) else 0.0
    spread = math.sqrt(fourier / (1 + fourier))
    row: Row = []
    for i, (beta, pool) in enumerate(zip(BETA, pools, strict=True)):
        depth = pool["depth"]
        through = depth > 0.985 * thickness
        hold = (plate_axis_rise(depth, fourier, thickness) / rise * beta - 1) / (beta - 1)
        after = pool["deepest"] / depth - 1 if depth else 0.0
        if through:
            if i >= 2:
                x0, x1, x2 = (math.sqrt(BETA[j] - 1) for j in (i - 2, i - 1, i))
                hold = row[i - 1][0] + (row[i - 1][0] - row[i - 2][0]) * (x2 - x1) / (x1 - x0) * 0.5
            else:
                hold = thicker[i][0] if thicker else 0.0
            hold = min(hold, (back * beta - 1) / (beta - 1))
            after = row[i - 1][3] if i else 0.0
        radius = (pool["radius"] - 1) / spread
        row.append([hold, radius, kappa * (pool["surface"] - 1) / (beta - 1), after])
    return row


def all_rows() -> list[Row]:
    """Rows in the order of the file: Ste, κ, H, Fo. A plate whose back is still cold has the thick body's row."""
    raw = {key_of(row): row["pools"] for row in raw_rows()}
    rows: list[Row] = []
    known: dict[tuple[float, ...], Row] = {}
    for ste, kappa, thickness, fourier in product(STE, KAPPA, THICKNESS, FOURIER):
        if math.isfinite(thickness) and not plate_counts(fourier, thickness):
            row = known[math.inf, fourier, ste, kappa]
        else:
            before = THICKNESS.index(thickness) - 1
            thicker = known[THICKNESS[before], fourier, ste, kappa] if before >= 0 else None
            row = scaled(fourier, thickness, kappa, raw[fourier, thickness, ste, kappa], thicker)
        known[thickness, fourier, ste, kappa] = row
        rows.append(row)
    return rows


def packed(rows: list[Row]) -> tuple[list[str], list[str]]:
    """Head lines with offset and step of every quantity, and the rows as text."""
    head, ranges = [], []
    for i, name in enumerate(QUANTITIES):
        values = [node[i] for row in rows for node in row]
        low, step = min(values), (max(values) - min(values)) / (BASE * BASE - 1) or 1e-9
        low, step = float(f"{low:.6g}"), float(f"{step * 1.00001:.6g}")
        ranges.append((low, step))
        head.append(f"{name} {low!r} {step!r}")

    def number(value: float, i: int) -> str:
        whole = min(max(round((value - ranges[i][0]) / ranges[i][1]), 0), BASE * BASE - 1)
        return DIGITS[whole // BASE] + DIGITS[whole % BASE]

    return head, ["".join(number(node[i], i) for node in row for i in range(len(QUANTITIES))) for row in rows]


def main() -> int:
    """Write the table."""
    head, lines = packed(all_rows())
    body = "\n".join(lines) + "\n"
    axes = {"ste": STE, "kappa": KAPPA, "thickness": THICKNESS, "fourier": FOURIER, "beta": BETA}
    text = [
        "# Melt table of the handbook's own enthalpy solver; see calculators/heat/melt_table.py for its quantities.",
        f"# Melting range {MELTING_RANGE} of the rise to melting; grids 1.3 and 1.7 averaged, 1.2 from Fo = 12.",
        f"# SHA-256 of the rows below: {hashlib.sha256(body.encode()).hexdigest()}",
        *(f"{name} " + " ".join(f"{one:g}" for one in nodes) for name, nodes in axes.items()),
        *head,
    ]
    TABLE.write_text("\n".join(text) + "\n" + body, encoding="utf-8")
    print(f"{TABLE.name}: {TABLE.stat().st_size} bytes, {len(lines)} rows")
    return 0


if __name__ == "__main__":
    sys.exit(main())
