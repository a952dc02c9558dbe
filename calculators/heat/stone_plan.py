"""What a plan of pulses and rests allows: most pulses, shortest rest, and its picture."""

from __future__ import annotations

import math
from dataclasses import replace

from ..drawing import Drawing
from .pictures import Plot
from .stone_sum import Piece, Plan

MOST = 100000
LONGEST_REST = 3600.0


def most_pulses(piece: Piece, plan: Plan, room: float) -> int:
    """The most pulses of one go from cold whose peak stays within ``room`` K; ``MOST`` where none is too many."""
    plan = replace(plan, goes=1, rest=0.0)

    def fits(count: int, lag: float) -> bool:
        return replace(plan, count=count).at_lag(piece, lag) <= room

    few, lag = plan.count, 0.0
    for _ in range(4):  # the time of the peak moves a little with the count: search, look again, search
        _, lag = replace(plan, count=max(few, 1)).peak(piece)
        before, few, many = few, 0, max(1, few)
        if fits(many, lag):
            few, many = many, many * 2
            while many <= MOST and fits(many, lag):
                few, many = many, many * 4
        if many > MOST:
            return MOST
        while many - few > 1:
            middle = (few + many) // 2
            few, many = (middle, many) if fits(middle, lag) else (few, middle)
        if few == before:
            break
    while few and replace(plan, count=few).peak(piece)[0] > room:
        few -= 1
    return few


def shortest_rest(piece: Piece, plan: Plan, room: float) -> float | None:
    """The shortest rest between goes, s, that keeps the plan within ``room`` K; None where one go is too much.

    A single go is planned as if the same were done once more.
    """
    plan = replace(plan, goes=max(plan.goes, 2), rest=0.0)
    peak, lag = plan.peak(piece)
    if peak <= room:
        return 0.0
    one, own_lag = replace(plan, goes=1).peak(piece)
    if one >= room or replace(plan, rest=LONGEST_REST).at_lag(piece, own_lag) > room:
        return None
    short, long, guess = 0.0, LONGEST_REST, 30.0
    while long - short > max(0.01 * long, 0.05):
        trial = replace(plan, rest=guess)
        if max(trial.at_lag(piece, lag), trial.at_lag(piece, own_lag)) <= room:
            long = guess
        else:
            short = guess
        guess = math.sqrt(short * long) if short else long / 8
    while replace(plan, rest=long).peak(piece)[0] > room:
        long *= 1.01
    return long


def temperature_plot(piece: Piece, plan: Plan, start: float, limit: float, name: str) -> Drawing:
    """Temperature at the stone against time, with the limit."""
    end = plan.goes * plan.period + max(10.0, 0.1 * plan.goes * plan.period)
    arrive = piece.distance**2 / (2 * piece.diffusivity)
    end = max(end, plan.last_pulse + 4 * arrive)
    # Even steps would beat against the pulses: sample each go at whole pulses, shifted to where the heat arrives.
    times = {0.0, end}
    for i in range(plan.goes):
        begin = i * plan.period
        every = max(1, round(plan.count * plan.goes / 45))
        times |= {begin + j / plan.rate + 0.7 * arrive for j in range(0, plan.count, every)}
        tail = (plan.period if i < plan.goes - 1 else end) - plan.count / plan.rate
        last = begin + (plan.count - 1) / plan.rate
        times |= {last + max(tail, arrive) * (k / 5) ** 2 for k in range(6)}
    ordered = sorted(time for time in times if time <= end)
    points = [(time, start + plan.rise(piece, time)) for time in ordered]
    hottest = max(value for _, value in points)
    top = max(hottest, min(limit, start + 3 * (hottest - start))) * 1.08
    told = f"The stone starts at {start:.0f} °C and reaches {hottest:.0f} °C; the limit is {limit:.0f} °C."
    plot = Plot("Temperature at the stone", told, (0, end), (min(start, 0), top), "seconds", "°C at the stone")
    peak = max(points, key=lambda point: point[1])
    if limit <= top:
        plot.line([(0, limit), (end, limit)], "dim heavy")
        # The words keep to the half of the line that the peak does not use, and are short enough for it.
        words = f"{name}: {limit:.0f} °C"
        words = words if len(words) < 30 else f"limit: {limit:.0f} °C"
        early = peak[0] < 0.5 * end
        plot.words(end if early else 0, limit, words, "end" if early else "start")
    plot.line(points)
    plot.point(*peak)
    plot.words(*peak, f"{peak[1]:.0f} °C", "end" if peak[0] > 0.8 * end else "start")
    return plot.picture
