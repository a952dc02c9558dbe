"""Runs the solver at every node of the melt table. The raw results go to a cache; ``make_table`` packs them.

    python -m build_scripts.heat_model.run_table

About an hour on one core. A run that was stopped goes on where it was.
"""

from __future__ import annotations

import json
import math
import sys
import time
from itertools import product
from pathlib import Path
from typing import Any

from build_scripts.heat_model.nodes import BETA, FOURIER, KAPPA, MELTING_RANGE, STE, THICKNESS, plate_counts
from build_scripts.heat_model.solver import Pulse, Run, make_grid
from calculators.heat.closed_forms import plate_axis_rise

RAW = Path(__file__).resolve().parents[2] / ".cache" / "heat_model" / "nodes.jsonl"
AFTER = (0.03, 0.06, 0.1, 0.15, 0.2, 0.27, 0.35, 0.45, 0.6, 0.8, 1.0)


def solve(fourier: float, thickness: float, ste: float, kappa: float, fine: float) -> list[dict[str, float]]:
    """Pool at the end of the pulse and its greatest depth afterward, for every β node."""
    rise = plate_axis_rise(0.0, fourier, thickness)
    pulses = [Pulse(beta / rise, ste, kappa, MELTING_RANGE) for beta in BETA]
    run = Run(pulses, make_grid(fourier, thickness, fine))
    run.advance(fourier)
    found = [vars(pool) | {"deepest": pool.depth} for pool in run.pools()]
    for part in AFTER:
        run.advance(fourier + part * min(fourier, 1.0), beam=False, least_steps=3)
        depths = [pool.depth for pool in run.pools(beam=False)]
        if all(depth <= one["deepest"] for depth, one in zip(depths, found, strict=True)):
            break
        for depth, one in zip(depths, found, strict=True):
            one["deepest"] = max(depth, one["deepest"])
    return found


def averaged(fourier: float, thickness: float, ste: float, kappa: float) -> list[dict[str, float]]:
    """Mean of two grids, which halves the noise of a front that moves from cell to cell."""
    grids = (1.3, 1.7) if fourier < 10 else (1.2,)
    runs = [solve(fourier, thickness, ste, kappa, fine) for fine in grids]
    return [{key: sum(run[i][key] for run in runs) / len(runs) for key in runs[0][i]} for i in range(len(BETA))]


def main() -> int:
    """Run what is not in the cache yet."""
    RAW.parent.mkdir(parents=True, exist_ok=True)
    done = {key_of(row) for row in raw_rows()}
    started = time.time()
    with RAW.open("a", encoding="utf-8") as out:
        for ste, kappa, thickness, fourier in product(STE, KAPPA, THICKNESS, FOURIER):
            case = {"fourier": fourier, "thickness": thickness, "ste": ste, "kappa": kappa}
            if (math.isfinite(thickness) and not plate_counts(fourier, thickness)) or key_of(case) in done:
                continue
            row = case | {"pools": averaged(**case)}
            out.write(json.dumps(row) + "\n")
            out.flush()
            print(f"{time.time() - started:7.0f} s  {case}", flush=True)
    return 0


def raw_rows() -> list[dict[str, Any]]:
    """What has been run so far."""
    return [json.loads(line) for line in RAW.read_text("utf-8").splitlines()] if RAW.exists() else []


def key_of(row: dict[str, Any]) -> tuple[float, ...]:
    """The node a row belongs to."""
    return tuple(row[name] for name in ("fourier", "thickness", "ste", "kappa"))


if __name__ == "__main__":
    sys.exit(main())
