"""Grid convergence of the solver: the same pulses on ever finer grids, and against a hundredfold of time steps.

    python -m build_scripts.heat_model.grid_study

Prints depth, radius and surface temperature by grid, their change to the finest, and writes ``grid_study.toml``
beside this file. A few minutes on one core.
"""

from __future__ import annotations

import math
import sys
from pathlib import Path

from build_scripts.heat_model.solver import Pool, Pulse, Run, make_grid
from calculators.heat.closed_forms import plate_axis_rise

HERE = Path(__file__).resolve().parent
FINE = (0.7, 1.0, 1.4, 2.0, 2.8)
CASES = (
    # Fo, β, Ste, κ, melting range, H
    (0.1, 2.5, 2.2, 0.75, 0.05, math.inf),
    (0.3, 2.0, 2.6, 0.70, 0.06, math.inf),
    (1.0, 2.0, 2.3, 0.50, 0.06, math.inf),
    (1.0, 1.3, 2.0, 0.85, 0.02, math.inf),
    (1.0, 2.2, 2.0, 0.85, 0.11, 1.0),
    (6.0, 2.0, 3.3, 1.20, 0.05, math.inf),
    (6.0, 1.3, 2.4, 0.60, 0.05, 0.8),
)


def pool_of(case: tuple[float, ...], fine: float, least_steps: int = 60) -> Pool:
    """The pool of one case on one grid."""
    fourier, beta, ste, kappa, melting_range, thickness = case
    flux = beta / plate_axis_rise(0.0, fourier, thickness)
    run = Run([Pulse(flux, ste, kappa, melting_range)], make_grid(fourier, thickness, fine))
    run.advance(fourier, least_steps=least_steps)
    return run.pools()[0]


def main() -> int:
    """Run, print, write."""
    names = ("fourier", "beta", "ste", "kappa", "melting_range", "thickness")
    lines = ["# Written by build_scripts/heat_model/grid_study.py. fine = 2 halves the cells of fine = 1."]
    for case in CASES:
        title = ", ".join(f"{name} {value:g}" for name, value in zip(names, case, strict=True))
        print(title)
        pools = [pool_of(case, fine) for fine in FINE]
        slow = pool_of(case, 1.0, least_steps=480)
        best = pools[-1]
        lines += ["", "[[case]]", *(f"{name} = {value:g}" for name, value in zip(names, case, strict=True))]
        lines.append(f"fine = [{', '.join(f'{one:g}' for one in FINE)}]")
        for name in ("depth", "radius", "surface"):
            values = [getattr(pool, name) for pool in pools]
            off = [100 * (one / getattr(best, name) - 1) for one in values]
            print(f"  {name:8}" + "  ".join(f"{a:.4f} ({b:+.2f} %)" for a, b in zip(values, off, strict=True)))
            lines.append(f"{name} = [{', '.join(f'{one:.5f}' for one in values)}]")
        step = 100 * (slow.depth / pools[1].depth - 1)
        print(f"  eight times the time steps at fine 1: depth {step:+.2f} %, energy {best.energy_error:.0e}")
        lines.append(f"depth_by_time_step_percent = {step:.3f}")
    (HERE / "grid_study.toml").write_text("\n".join(lines) + "\n", encoding="utf-8")
    return 0


if __name__ == "__main__":
    sys.exit(main())
