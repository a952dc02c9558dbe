"""How warm a place on a ring or plate gets from a train of pulses at another place.

Every pulse leaves its heat at a point of the surface. A bar of rectangular section lets the warm spot spread along,
across and through independently, so the rise after one pulse is E/(m·c) times one kernel for each direction
(Carslaw & Jaeger 1959, ch. X: images for short times, Fourier series for long ones; from memory), times
exp(−t/τ) for what the air takes. Trains are sums of it: the last pulses one by one, older ones by the
Euler–Maclaurin sum. SI units.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from functools import cached_property, lru_cache

_DIRECT = 6  # pulses summed one by one
_STEP = 0.2  # of ln t between nodes


def slab_kernel(length: float, source: float, place: float, spread: float) -> float:
    """Insulated slab, ``spread`` = αt: 1 once heat is even. Source and place are measured from one end."""
    if spread < 0.08 * length * length:
        total = 0.0
        for n in (-1, 0, 1):
            for x in (place - source + 2 * n * length, place + source + 2 * n * length):
                total += math.exp(-x * x / (4 * spread))
        return length * total / math.sqrt(4 * math.pi * spread)
    total, n = 1.0, 1
    while True:
        damp = math.exp(-((n * math.pi / length) ** 2) * spread)
        if damp < 1e-10:
            return total
        total += 2 * damp * math.cos(n * math.pi * source / length) * math.cos(n * math.pi * place / length)
        n += 1


def ring_kernel(length: float, distance: float, spread: float) -> float:
    """Closed ring of circumference ``length``: 1 once heat is even."""
    if spread < 0.02 * length * length:
        total = sum(math.exp(-((distance + n * length) ** 2) / (4 * spread)) for n in (-2, -1, 0, 1))
        return length * total / math.sqrt(4 * math.pi * spread)
    total, n = 1.0, 1
    while True:
        damp = math.exp(-((2 * math.pi * n / length) ** 2) * spread)
        if damp < 1e-10:
            return total
        total += 2 * damp * math.cos(2 * math.pi * n * distance / length)
        n += 1


def _first_spread(distance: float) -> float:
    return distance**2 / 4 / 29.9


@lru_cache(maxsize=16)
def _logs(closed: bool, length: float, width: float, thickness: float, distance: float) -> list[float]:
    """Log of the three kernels' product without its steep part exp(−s²/4αt), over even steps of ln αt."""
    first = _first_spread(distance)
    count = math.ceil(math.log(2.0 / first) / _STEP)  # αt up to 2 m², hours for any metal
    found = []
    for i in range(count + 1):
        spread = first * math.exp(_STEP * i)
        if closed:
            value = ring_kernel(length, distance, spread)
        else:
            value = slab_kernel(length, length / 2, length / 2 + distance, spread)
        value *= slab_kernel(width, width / 2, width / 2, spread) * slab_kernel(thickness, 0.0, 0.0, spread)
        found.append(math.log(value) + distance**2 / (4 * spread))
    return found


@dataclass(frozen=True)
class Piece:
    """A ring (closed) or a flat plate hit in its middle: sizes and distance in m, W/(m·K), kg/m³, J/(kg·K)."""

    closed: bool
    length: float
    width: float
    thickness: float
    distance: float
    conductivity: float
    density: float
    heat_capacity: float
    loss: float

    @property
    def diffusivity(self) -> float:
        """α, m²/s."""
        return self.conductivity / (self.density * self.heat_capacity)

    @property
    def heat_per_kelvin(self) -> float:
        """m·c, J/K."""
        return self.density * self.heat_capacity * self.length * self.width * self.thickness

    @property
    def decay(self) -> float:
        """1/τ by the air, 1/s."""
        around = 2 * (self.width + self.thickness) if self.closed else 2 * self.width
        return self.loss * around / (self.density * self.heat_capacity * self.width * self.thickness)

    def kernel(self, time: float) -> float:
        """Rise at the place per joule taken in, K/J, at ``time`` after one pulse."""
        spread = self.diffusivity * time
        if self.distance**2 / (4 * spread) > 30:
            return 0.0
        if self.closed:
            along = ring_kernel(self.length, self.distance, spread)
        else:
            along = slab_kernel(self.length, self.length / 2, self.length / 2 + self.distance, spread)
        across = slab_kernel(self.width, self.width / 2, self.width / 2, spread)
        through = slab_kernel(self.thickness, 0.0, 0.0, spread)
        return along * across * through * math.exp(-time * self.decay) / self.heat_per_kelvin

    @cached_property
    def first(self) -> float:
        """Before this time nothing arrives, s."""
        return _first_spread(self.distance) / self.diffusivity

    @cached_property
    def _nodes(self) -> tuple[list[float], list[float], list[float]]:
        """Log of the kernel without its steep parts, kernel × time, and integral of the kernel, at the nodes."""
        logs = _logs(self.closed, self.length, self.width, self.thickness, self.distance)
        self.__dict__["_own"] = (logs, math.log(self.first), self.distance**2 / (4 * self.diffusivity), self.decay)
        times = [self.first * math.exp(_STEP * i) for i in range(len(logs))]
        slopes = [time * self._kernel_at(time) for time in times]
        middles = [t * self._kernel_at(t) for t in (time * math.exp(_STEP / 2) for time in times)]
        integral = [0.0]
        for low, middle, high in zip(slopes, middles, slopes[1:], strict=False):
            integral.append(integral[-1] + _STEP / 6 * (low + 4 * middle + high))
        return times, slopes, integral

    def _kernel_at(self, time: float) -> float:
        logs, start, steep, decay = self.__dict__["_own"]
        x = (math.log(time) - start) / _STEP
        i = min(max(int(x) - 1, 0), len(logs) - 4)
        p = x - i
        q, r, s = p - 1, p - 2, p - 3
        a, b, c, d = logs[i : i + 4]
        value = (d * p - a * s) * q * r / 6 + (b * r - c * q) * p * s / 2
        power = value - steep / time - time * decay
        return math.exp(power) / self.heat_per_kelvin if power > -300 else 0.0

    def rise_of_one(self, time: float) -> float:
        """The kernel from its nodes, K/J."""
        _ = self._nodes
        return self._kernel_at(time) if time > self.first else 0.0

    def integral(self, time: float) -> float:
        """Integral of the kernel from 0 to ``time``, K·s/J: cubic between the nodes."""
        if time <= self.first:
            return 0.0
        _, slopes, sums = self._nodes
        x = math.log(time / self.first) / _STEP
        i = min(int(x), len(sums) - 2)
        p = x - i
        h0, h1 = slopes[i] * _STEP, slopes[i + 1] * _STEP
        rise = sums[i + 1] - sums[i]
        return sums[i] + p * (h0 + p * (3 * rise - 2 * h0 - h1 + p * (h0 + h1 - 2 * rise)))

    def rise_of_train(self, time: float, count: int, rate: float) -> float:
        """Rise per joule of each pulse, ``time`` after the first of ``count`` pulses at ``rate``, K/J."""
        if time <= 0:
            return 0.0
        fired = min(count, math.floor(time * rate + 1e-9) + 1)
        last = time - (fired - 1) / rate
        direct = min(fired, _DIRECT)
        total = sum(self.rise_of_one(last + i / rate) for i in range(direct))
        older = fired - direct
        if older > 3:
            a, b, gap = last + direct / rate, time, 1 / rate
            total += rate * (self.integral(b) - self.integral(a))
            total += (self.rise_of_one(a) + self.rise_of_one(b)) / 2
            slope = self.rise_of_one(b + gap / 2) - self.rise_of_one(b - gap / 2)
            total += (slope - self.rise_of_one(a + gap / 2) + self.rise_of_one(a - gap / 2)) / 12
        else:
            total += sum(self.rise_of_one(last + (direct + i) / rate) for i in range(older))
        return total


@dataclass(frozen=True)
class Plan:
    """``goes`` times ``count`` pulses at ``rate`` (1/s), with ``rest`` s after each; ``energy`` J taken in by each."""

    energy: float
    count: int
    rate: float
    goes: int = 1
    rest: float = 0.0

    @property
    def period(self) -> float:
        """From the start of a go to the start of the next, s."""
        return self.count / self.rate + self.rest

    @property
    def last_pulse(self) -> float:
        """Time of the very last pulse, s."""
        return (self.goes - 1) * self.period + (self.count - 1) / self.rate

    def rise(self, piece: Piece, time: float) -> float:
        """Rise at the place, K, at ``time`` after the first pulse."""
        each = (piece.rise_of_train(time - i * self.period, self.count, self.rate) for i in range(self.goes))
        return self.energy * sum(each)

    def at_lag(self, piece: Piece, lag: float) -> float:
        """Rise at ``lag`` s after the last pulse, K."""
        return self.rise(piece, self.last_pulse + lag)

    def peak(self, piece: Piece) -> tuple[float, float]:
        """Highest rise, K, and how long after the last pulse, s: every pulse before only adds to it."""
        arrive = piece.distance**2 / (2 * piece.diffusivity)
        lags = [0.15 * arrive * 1.6**i for i in range(8)]
        rises = [self.at_lag(piece, lag) for lag in lags]
        best = max(range(len(lags)), key=lambda i: rises[i])
        low, high = math.log(lags[max(best - 1, 0)]), math.log(lags[min(best + 1, len(lags) - 1)])
        golden = (math.sqrt(5) - 1) / 2
        x, y = high - golden * (high - low), low + golden * (high - low)
        at_x, at_y = (self.at_lag(piece, math.exp(one)) for one in (x, y))
        for _ in range(6):
            if at_x > at_y:
                high, y, at_y = y, x, at_x
                x = high - golden * (high - low)
                at_x = self.at_lag(piece, math.exp(x))
            else:
                low, x, at_x = x, y, at_y
                y = low + golden * (high - low)
                at_y = self.at_lag(piece, math.exp(y))
        return max((at_x, math.exp(x)), (at_y, math.exp(y)), (rises[best], lags[best]))
