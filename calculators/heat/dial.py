"""A machine's dial: joules from volts (or percent) and milliseconds, fitted to known pairs."""

from __future__ import annotations

import math
from typing import NamedTuple

from .fields import DialPair


class Dial(NamedTuple):
    """J = factor × dial^power × ms^length; ``off`` is the largest miss as a share."""

    factor: float
    power: float
    length: float
    off: float

    def energy(self, dial: float, duration: float) -> float:
        """Joules at a dial number and ms."""
        return float(self.factor * dial**self.power * duration**self.length)

    def setting(self, energy: float, duration: float) -> float:
        """The dial number for an energy at ms."""
        return float((energy / self.factor / duration**self.length) ** (1 / self.power))

    def words(self) -> str:
        """The law in words."""
        return f"J = {self.factor:.3g} × dial^{self.power:.2f} × ms^{self.length:.2f}"


def fit_dial(pairs: list[DialPair]) -> Dial | None:
    """Least squares in logarithms; the length's power is 1 unless four pairs of unlike lengths give it.

    None where the dial numbers are all alike, or energy does not rise with them.
    """
    x = [math.log(pair.dial) for pair in pairs]
    t = [math.log(pair.duration) for pair in pairs]
    y = [math.log(pair.energy) for pair in pairs]
    if max(x) - min(x) < 0.02:
        return None
    free = len(pairs) >= 4 and max(t) - min(t) > 0.2
    n, mx, mt, my = len(pairs), sum(x) / len(x), sum(t) / len(t), sum(y) / len(y)
    xx = sum((a - mx) ** 2 for a in x)
    xy = sum((a - mx) * (b - my) for a, b in zip(x, y, strict=True))
    xt = sum((a - mx) * (b - mt) for a, b in zip(x, t, strict=True))
    tt = sum((b - mt) ** 2 for b in t)
    ty = sum((a - mt) * (b - my) for a, b in zip(t, y, strict=True))
    det = xx * tt - xt * xt
    length = (xx * ty - xt * xy) / det if free and det > 1e-9 * n else 1.0
    power = (xy - length * xt) / xx
    if power <= 0.05:
        return None
    factor = math.exp(my - power * mx - length * mt)
    off = max(abs(factor * p.dial**power * p.duration**length / p.energy - 1) for p in pairs)
    return Dial(factor, power, length, off)
