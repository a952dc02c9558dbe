"""The fit of test spots: absorptivity and melting efficiency with intervals.

Every shot has a likelihood of the absorptivity A, on a grid of ln A. A measured width is normal around the model's
width; "none", "mark", "melt" and "hole" are normal in ln β around their thresholds. The metal's guess is a weak
log-normal prior. Stated errors: reading 0.03 mm, model and spot together 6 % of a width, 12 % of a depth, thresholds
8 % of β (15 % for a hole): judgments, from memory. The interval holds 90 % of the posterior.
"""

from __future__ import annotations

import math
from bisect import bisect_right
from dataclasses import dataclass
from functools import cached_property, lru_cache

from .fields import SeenShot
from .pool import Material, Shot, beta_of, boiling_beta, conducted, groups

READING, WIDTH_SHARE, DEPTH_SHARE, MARK_SHARE, HOLE_SHARE = 0.03, 0.06, 0.12, 0.08, 0.15
COUNT, LEAST, MOST = 161, 0.004, 1.0
GRID = [LEAST * (MOST / LEAST) ** (i / (COUNT - 1)) for i in range(COUNT)]
LEVEL = 0.9  # share of the posterior inside the interval
_BETAS = (1.0, 1.02, 1.08, 1.2, 1.4, 1.75, 2.2, 2.8, 3.6, 5.5)
_DOUBT = 6.0  # drop of log likelihood, against every shot on its own, from which shots contradict each other


def _below(x: float) -> float:
    """ln of the normal distribution, floored: one slip of the pencil must not rule everything."""
    return math.log(max(0.5 * math.erfc(-x / math.sqrt(2)), 1e-7))


@lru_cache(maxsize=64)
def _nodes(
    duration: float, spot: float, thickness: float, material: Material
) -> tuple[list[float], list[float], list[float]]:
    """Pool against β for one pulse length (ms) and spot (mm): the energy only moves a shot along it."""
    fourier, thick, _ = groups(Shot(1.0, duration * 1e-3, spot * 1e-3, thickness), material)
    edge = boiling_beta(material)
    betas = [beta for beta in _BETAS if beta < edge * 0.97] + [edge]
    pools = [conducted(fourier, thick, beta, material) for beta in betas]
    return betas, [pool[1] * spot for pool in pools], [pool[0] * spot / 2 for pool in pools]


@dataclass(frozen=True)
class Curve:
    """A shot's model: width and depth, mm, against β up to boiling, and β at A = 1."""

    seen: SeenShot
    material: Material
    thickness: float

    @cached_property
    def shot(self) -> Shot:
        """The shot in SI."""
        return Shot(self.seen.energy, self.seen.duration * 1e-3, self.seen.spot * 1e-3, self.thickness)

    @cached_property
    def full(self) -> float:
        """β if all energy were taken in."""
        return beta_of(self.shot, self.material, 1.0)

    @cached_property
    def edge(self) -> float:
        """β at which the surface boils."""
        return boiling_beta(self.material)

    @cached_property
    def nodes(self) -> tuple[list[float], list[float], list[float]]:
        """β, width and depth in mm, at the nodes."""
        return _nodes(self.seen.duration, self.seen.spot, self.thickness, self.material)

    def at(self, beta: float, what: int) -> float:
        """Width (1) or depth (2) at β, mm."""
        betas, values = self.nodes[0], self.nodes[what]
        if beta <= 1:
            return 0.0
        if beta >= betas[-1]:
            return values[-1]
        i = bisect_right(betas, beta) - 1
        # The pool opens like a root of β − 1: interpolate in that.
        x0, x, x1 = (math.sqrt(one - 1) for one in (betas[i], beta, betas[i + 1]))
        return values[i] + (values[i + 1] - values[i]) * (x - x0) / (x1 - x0)

    def log_likelihood(self, absorptivity: float) -> float:
        """ln of how well this A explains the shot."""
        beta = absorptivity * self.full
        log_beta = math.log(beta)
        seen = self.seen
        if seen.width is not None:
            wide = self.at(beta, 1)
            error = math.hypot(READING, WIDTH_SHARE * max(wide, seen.width))
            if beta > self.edge:  # boiling pools grow wider than the model holds them
                error = math.hypot(error, 0.2 * wide)
            total = max(-0.5 * ((seen.width - wide) / error) ** 2, -16.0)
        elif seen.seen == "none":
            total = _below(-log_beta / MARK_SHARE)
        elif seen.seen == "mark":
            total = _below((log_beta + 0.12) / MARK_SHARE) + _below((0.22 - log_beta) / MARK_SHARE)
        elif seen.seen == "melt":
            total = _below(log_beta / MARK_SHARE)
        else:
            through = self.at(beta, 2) * 1e-3 >= 0.99 * self.thickness
            total = 0.0 if through else _below((log_beta - math.log(self.edge)) / HOLE_SHARE)
        if seen.depth is not None and beta <= self.edge:
            deep = self.at(beta, 2)
            error = math.hypot(READING, DEPTH_SHARE * max(deep, seen.depth))
            total += max(-0.5 * ((seen.depth - deep) / error) ** 2, -16.0)
        return total


@dataclass(frozen=True)
class Fit:
    """Posterior of A: middle, low, high; the shot that fits worst (index) or None where all fit together."""

    middle: float
    low: float
    high: float
    odd_one: int | None


def fit(curves: list[Curve], guess: tuple[float, float, float]) -> Fit:
    """The posterior of A; ``guess`` is value, low, high for the metal, taken as a weak prior."""
    each = [[curve.log_likelihood(one) for one in GRID] for curve in curves]
    together = [sum(column) for column in zip(*each, strict=True)]
    best = max(range(COUNT), key=lambda i: together[i])
    alone = sum(max(row) for row in each)
    odd = None
    if len(curves) > 1 and alone - together[best] > _DOUBT:
        odd = max(range(len(curves)), key=lambda j: max(each[j]) - each[j][best])
    spread = 0.75 * math.log(guess[2] / guess[1])
    prior = [-0.5 * (math.log(one / guess[0]) / spread) ** 2 for one in GRID]
    logs = [one + two for one, two in zip(together, prior, strict=True)]
    top = max(logs)
    weights = [math.exp(one - top) for one in logs]
    total = sum(weights)
    ends = []
    for share in (0.5, (1 - LEVEL) / 2, (1 + LEVEL) / 2):
        run = 0.0
        for i, weight in enumerate(weights):
            if run + weight >= share * total:
                part = (share * total - run) / weight - 0.5
                ends.append(GRID[i] * (MOST / LEAST) ** (part / (COUNT - 1)))
                break
            run += weight
    return Fit(min(ends[0], 1.0), ends[1], min(ends[2], 1.0), odd)


def efficiency(curves: list[Curve], found: Fit) -> tuple[float, float, float] | None:
    """Melting efficiency with its interval, from depths of welds whose surface boiled; None where there are none."""
    middles, errors = [], []
    for curve in curves:
        if curve.seen.depth is None:
            continue
        logs = [_log_efficiency(curve, one) for one in (found.middle, found.low, found.high)]
        if logs[0] is None:
            continue
        known = [one for one in logs if one is not None]
        middles.append(logs[0])
        share = _share(curve, found.middle * curve.full)
        reading = math.hypot(READING / (curve.seen.depth or 1), DEPTH_SHARE) / share
        errors.append(math.hypot(reading, (max(known) - min(known)) / 3.3))
    if not middles:
        return None
    weights = [1 / one**2 for one in errors]
    middle = sum(w * m for w, m in zip(weights, middles, strict=True)) / sum(weights)
    error = math.sqrt(1 / sum(weights))
    if len(middles) > 1:  # shots that scatter more than stated widen the interval
        chi = sum(w * (m - middle) ** 2 for w, m in zip(weights, middles, strict=True)) / (len(middles) - 1)
        error *= math.sqrt(max(1.0, chi))
    return math.exp(middle), math.exp(middle - 1.645 * error), min(1.0, math.exp(middle + 1.645 * error))


def _share(curve: Curve, beta: float) -> float:
    edge = curve.edge
    return min(1.0, math.log(beta / edge) / math.log(3 * curve.material.boiling_scaled / edge)) if beta > edge else 0.0


def _log_efficiency(curve: Curve, absorptivity: float) -> float | None:
    """ln of the efficiency that gives the depth seen, at this A; None where conduction alone explains it."""
    share = _share(curve, absorptivity * curve.full)
    depth = curve.seen.depth
    if share < 0.25 or depth is None:
        return None
    calm, wide = curve.nodes[2][-1] * 1e-3, curve.nodes[1][-1] * 1e-3
    if depth * 1e-3 <= calm:
        return None
    balance = (math.log(depth * 1e-3) - (1 - share) * math.log(calm)) / share
    return balance - math.log(8 * curve.seen.energy / (math.pi * wide**2 * curve.material.melt_heat))


def information(curve: Curve, absorptivity: float) -> float:
    """How much a width read off this shot would tell about ln A: (dw/dlnA)²/error²."""
    beta = absorptivity * curve.full
    if beta > curve.edge:
        return 0.0
    up, down = (curve.at(beta * factor, 1) for factor in (1.03, 1 / 1.03))
    wide = (up + down) / 2
    if wide <= 0:
        return 0.0
    return float(((up - down) / (2 * math.log(1.03)) / math.hypot(READING, WIDTH_SHARE * wide)) ** 2)
