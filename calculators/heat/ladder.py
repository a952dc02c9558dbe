"""A ladder of test spots: first shot, step, what to look for, when to stop."""

from __future__ import annotations

import math

from ..declare import Working
from ..drawing import Point
from ..units import quantity
from .aim import Machine
from .pictures import Plot
from .pool import Material, Shot, boiling_beta, groups, radius, threshold_energy
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
    last, a = rungs[-1], one.absorptivity
    middle = _widths(weld, one.nominal, a.value, last)
    low, high = _widths(weld, one.good, a.low, last), _widths(weld, one.poor, a.high, last)
    top = max(width for _, width in [*middle, *low, *high]) * 1.12 or 1.0
    told = f"Width of the pool from {rungs[0]:g} to {last:g} J, a band from least to most."
    plot = Plot("Width to expect on the ladder", told, (0, last), (0, top), "J in a pulse", "mm melted width")
    plot.band(low, high)
    plot.line(middle)
    for rung in rungs:
        plot.point(rung, 0, 5)
    working.draw(plot.picture)


def _widths(weld: Shot, metal: Material, absorptivity: float, last: float) -> list[Point]:
    """Energy and width, mm, from nothing to ``last`` J; the width is held once the surface boils."""
    first = threshold_energy(weld, metal, absorptivity)
    fourier, thick, _ = groups(weld, metal)
    edge = boiling_beta(metal)
    points: list[Point] = [(0.0, 0.0)]
    for i in range(8):
        beta = 1 + (edge - 1) * (i / 7) ** 2
        width = radius(fourier, thick, beta, metal) * weld.spot * 1e3 if i else 0.0
        if beta * first >= last:
            x, y = points[-1]
            share = (last - x) / (beta * first - x)
            return [*points, (last, y + share * (width - y))]
        points.append((beta * first, width))
    return [*points, (last, points[-1][1])]
