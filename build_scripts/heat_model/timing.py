"""How long one answer takes in this Python, worked example and page fragment included."""

from __future__ import annotations

import statistics
import time

from calculators.run import answer

SLUGS = ("melt-spot", "start-settings", "test-spots", "seam-plan", "stone-heat", "bead", "gas")


def answer_times(repeats: int = 15) -> dict[str, float]:
    """Median time of an answer by calculator, ms, after the first."""
    found = {}
    for slug in SLUGS:
        answer(slug, {}, html=True)
        times = []
        for _ in range(repeats):
            started = time.perf_counter()
            answer(slug, {}, html=True)
            times.append(1e3 * (time.perf_counter() - started))
        found[slug] = statistics.median(times)
    return found
