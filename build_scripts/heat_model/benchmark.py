"""Benchmark of the calculators' model against the solver, on random cases that no table node was made from.

    python -m build_scripts.heat_model.benchmark

Prints median, 90 % and worst errors of depth, width, surface and stone temperature, and the time of one answer; writes
``calculators/data/model_accuracy.toml``. Runs already made are kept in a cache, so it goes on where it was stopped.
"""

from __future__ import annotations

import json
import math
import random
import statistics
import sys
from collections.abc import Callable, Sequence
from pathlib import Path
from typing import Any

from build_scripts.heat_model.solver import Pulse, Run, make_grid
from build_scripts.heat_model.stone_reference import stone_errors
from build_scripts.heat_model.timing import answer_times
from calculators.heat.closed_forms import plate_axis_rise
from calculators.heat.heat_metals import HeatMetal, heat_keys, heat_metal
from calculators.heat.pool import Shot as ModelShot
from calculators.heat.pool import conducted, groups
from calculators.metals import metals

REPO = Path(__file__).resolve().parents[2]
CACHE = REPO / ".cache" / "heat_model" / "benchmark.jsonl"
ACCURACY = REPO / "calculators" / "data" / "model_accuracy.toml"
GROUPS, PULSES, FINE, SEED = 126, 3, 2.0, 20240611


def random_groups() -> list[dict[str, Any]]:
    """Metals, spots, pulse lengths and thicknesses at random, three strengths each; every other one is thick."""
    dice = random.Random(SEED)  # noqa: S311 - a fixed seed, not a secret
    keys = sorted(heat_keys())
    found = []
    for i in range(GROUPS):
        found.append(
            {
                "metal": dice.choice(keys),
                "spot": round(math.exp(dice.uniform(math.log(0.2), math.log(1.5))), 3),
                "duration": round(math.exp(dice.uniform(math.log(0.5), math.log(20))), 3),
                "thickness": round(math.exp(dice.uniform(math.log(0.3), math.log(2))), 3) if i % 2 else math.inf,
                "betas": [round(dice.uniform(1.1, 4.5), 3) for _ in range(PULSES)],
            }
        )
    return found


def by_solver(group: dict[str, Any], heat: HeatMetal) -> list[dict[str, float]]:
    """The pools of a group by the solver, with the metal's own melting range."""
    material = heat.material()
    a = group["spot"] / 2
    fourier = material.diffusivity * 1e6 * group["duration"] * 1e-3 / a**2
    thick = group["thickness"] / a
    width = max(0.03, (heat.number("liquidus") - heat.number("solidus")) / material.rise)
    rise = plate_axis_rise(0.0, fourier, thick)
    run = Run(
        [Pulse(beta / rise, material.ste, material.kappa, width) for beta in group["betas"]],
        make_grid(fourier, thick, FINE if fourier < 30 else 1.6),
    )
    run.advance(fourier)
    return [vars(pool) for pool in run.pools()]


def cases() -> list[dict[str, float]]:
    """Every case with the solver's and the model's depth, radius and surface."""
    known = {metal.key: heat_metal(metal) for metal in metals() if metal.key in heat_keys()}
    CACHE.parent.mkdir(parents=True, exist_ok=True)
    lines = [json.loads(line) for line in CACHE.read_text("utf-8").splitlines()] if CACHE.exists() else []
    kept = {json.dumps(one["group"]): one["pools"] for one in lines}
    found = []
    with CACHE.open("a", encoding="utf-8") as out:
        for number, group in enumerate(random_groups()):
            heat = known[group["metal"]]
            key = json.dumps(group)
            if key not in kept:
                kept[key] = by_solver(group, heat)
                out.write(json.dumps({"group": group, "pools": kept[key]}) + "\n")
                out.flush()
                print(f"group {number}: {key}", flush=True)
            material = heat.material()
            thick = group["thickness"] * 1e-3
            shot = ModelShot(1.0, group["duration"] * 1e-3, group["spot"] * 1e-3, thick)
            fourier, scaled_thick, _ = groups(shot, material)
            for beta, pool in zip(group["betas"], kept[key], strict=True):
                depth, radius, surface, _ = conducted(fourier, scaled_thick, beta, material)
                found.append(
                    {
                        "plate": float(math.isfinite(thick)), "thick": scaled_thick, "fourier": fourier, "beta": beta,
                        "depth": depth, "radius": radius, "surface": surface,
                        "true_depth": pool["depth"], "true_radius": pool["radius"], "true_surface": pool["surface"],
                    }
                )  # fmt: skip
    return found


def summary(errors: Sequence[float]) -> dict[str, float]:
    """Median, 90 % and worst of the sizes of errors, as shares."""
    sizes = sorted(abs(one) for one in errors)
    return {
        "median": statistics.median(sizes),
        "p90": sizes[min(len(sizes) - 1, math.ceil(0.9 * len(sizes)) - 1)],
        "worst": sizes[-1],
        "cases": len(sizes),
    }


def melt_errors(found: list[dict[str, float]]) -> dict[str, dict[str, float]]:
    """Errors by quantity, thick and plate apart. Depth of melted-through plates is no number: they are counted."""
    report: dict[str, dict[str, float]] = {}
    share: Callable[[dict[str, float], str], float] = lambda one, name: one[name] / one[f"true_{name}"] - 1  # noqa: E731
    for name, plate in (("thick", 0.0), ("plate", 1.0)):
        part = [one for one in found if one["plate"] == plate]
        holes = [one for one in part if one["true_depth"] > 0.985 * one["thick"]]
        solid = [one for one in part if one["true_depth"] <= 0.985 * one["thick"] and one["true_depth"] > 0]
        report[f"depth_{name}"] = summary([share(one, "depth") for one in solid])
        report[f"width_{name}"] = summary([share(one, "radius") for one in part if one["true_radius"] > 0])
        report[f"surface_{name}"] = summary([share(one, "surface") for one in part])
        if plate:
            seen = sum(one["depth"] > 0.985 * one["thick"] for one in holes)
            false = sum(one["depth"] > 0.985 * one["thick"] for one in solid)
            report["holes"] = {"cases": len(holes), "foretold": seen, "false": false}
    return report


def write(report: dict[str, dict[str, float]]) -> None:
    """The figures as TOML for the pages and for the calculators' ranges."""
    lines = [
        "# Errors of the model against numerical solutions: shares of the true value, stone temperature of the rise.",
        "# Written by build_scripts/heat_model/benchmark.py (seeded random cases apart from the table's nodes).",
    ]
    for name, row in report.items():
        lines += ["", f"[{name}]", *(f"{key} = {value:.4g}" for key, value in row.items())]
    ACCURACY.write_text("\n".join(lines) + "\n", encoding="utf-8")


def main() -> int:
    """Run, print, write."""
    report = melt_errors(cases())
    report["stone"] = summary(stone_errors(60))
    report["time_ms"] = answer_times()
    for name, row in report.items():
        shown = "  ".join(
            f"{key} {value:.0f}" if name in ("holes",) or key == "cases"
            else f"{key} {value:.1f}" if name == "time_ms" else f"{key} {100 * value:.1f} %"
            for key, value in row.items()
        )  # fmt: skip
        print(f"{name:14} {shown}")
    write(report)
    return 0


if __name__ == "__main__":
    sys.exit(main())
