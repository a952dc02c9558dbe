"""How long one answer takes in this Python, worked example and page fragment included."""

from __future__ import annotations

import statistics
import time

from calculators.heat import melt_table, pool, spot_fit, stone_sum
from calculators.run import answer

SLUGS = ("melt-spot", "start-settings", "test-spots", "seam-plan", "stone-heat", "bead", "gas")


def answer_times(repeats: int = 15) -> dict[str, float]:
    """Median time of an answer by calculator, ms: data files read, but nothing remembered of the question."""
    return {slug: statistics.median(times_of(slug, {}, repeats)) for slug in SLUGS}


def times_of(slug: str, fields: dict[str, str], repeats: int) -> list[float]:
    """Processor times of the same answer, ms, each as if it were asked for the first time."""
    kept = (
        pool.conducted, pool.reach, pool._groups, melt_table._row, melt_table._for_metal, melt_table._beta_weights,
        spot_fit._nodes, stone_sum._logs,
    )  # fmt: skip
    answer(slug, fields, html=True)
    times = []
    for _ in range(repeats):
        for one in kept:
            one.cache_clear()
        started = time.process_time()
        answer(slug, fields, html=True)
        times.append(1e3 * (time.process_time() - started))
    return times
