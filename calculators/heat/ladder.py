"""A ladder of test spots: first shot, step, what to look for, when to stop."""

from __future__ import annotations

import math

from ..declare import Working
from ..drawing import Point
from ..units import quantity
from .aim import Machine
from .pictures import Plot
from .pool import Shot, boiling_beta, threshold_energy
from .ranges import Known

STEP = 1.25


def tidy_energy(energy: float) -> float:
    """Two significant digits, as a dial is set."""
    return float(f"{energy:.2g}")


def ladder(working: Working, weld: Shot, one: Known, machine: Machine) -> None:
    """Rungs from below the first possible mark to where the surest case boils; results and plot."""
    first = max(0.02, 0.9 * threshold_energy(weld, one.poor, one.absorptivity.high))
    boil = threshold_energy(weld, one.good, one.absorptivity.low, boiling_beta(one.good))
    most = min(machine.max_energy, machine.max_power * weld.duration)
    last = min(boil, most)
    # Twelve rungs are enough for one strip of scrap: a wide range takes a wider step.
    step = max(STEP, (last / first) ** (1 / 11)) if last > first else STEP
    count = max(3, math.ceil(math.log(max(last / first, 1.01)) / math.log(step)) + 1)
    rungs = [tidy_energy(min(first * step**i, most)) for i in range(count)]
    rungs = list(dict.fromkeys(rungs))
    working.note(
        "First test spot: just under the first mark, if the surface takes in the most",
        "0.9 × energy for β = 1", quantity(rungs[0], "J"), "J",
    )  # fmt: skip
    working.result("ladder_first", quantity(rungs[0], "J"))
    working.result("ladder_step", quantity(100 * (step - 1), "percent"), note="more each time")
    working.result("ladder_last", quantity(rungs[-1], "J"), note="or where you must stop")
    text = (
        f"{', '.join(f'{rung:g}' for rung in rungs)} J at {weld.duration * 1e3:.2g} ms and {weld.spot * 1e3:.2g} mm. "
        "Look with the loupe after each: nothing, then a dull mark, then a shiny pool you can measure. "
        "Stop at the first spatter, deep dent or hole, or when the pool is twice the spot. Write down every width."
    )
    working.result("ladder", text, rungs=rungs, duration_ms=weld.duration * 1e3, spot_mm=weld.spot * 1e3)
    _plot(working, weld, one, rungs)


def _plot(working: Working, weld: Shot, one: Known, rungs: list[float]) -> None:
    """Width to expect at every rung, with low and high."""
    span = rungs[-1] - rungs[0]
    places = [rungs[0] + span * (i / 5) ** 1.4 for i in range(6)]
    middle: list[Point] = []
    low: list[Point] = []
    high: list[Point] = []
    for energy in places:
        shot = weld.with_energy(energy)
        middle.append((energy, one.shoot(shot).width * 1e3))
        low.append((energy, one.least(shot).width * 1e3))
        high.append((energy, one.most(shot).width * 1e3))
    top = max(width for _, width in high) * 1.12 or 1.0
    told = f"Width of the pool from {rungs[0]:g} to {rungs[-1]:g} J, a band from least to most."
    plot = Plot("Width to expect on the ladder", told, (0, rungs[-1]), (0, top), "J in a pulse", "mm melted width")
    plot.band(low, high)
    plot.line(middle)
    for rung in rungs:
        plot.point(rung, 0, 5)
    working.draw(plot.picture)
