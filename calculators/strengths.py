"""Strength of a metal in a temper: from its own figures, or estimated from its hardness, or typed by the person.

Figures stand with the metals (``data/metals.toml``) and in ``data/strengths.toml``; estimates carry their spread.
"""

from __future__ import annotations

from dataclasses import dataclass

from .data import Figure, figure, load
from .declare import Working
from .errors import Complaint
from .metals import Metal, metals
from .units import Quantity

TEMPERS = (
    ("annealed", "Annealed (dead soft)"),
    ("half-hard", "Half-hard"),
    ("hard", "Hard drawn"),
    ("spring", "Spring hard"),
)
_KINDS = ("strength", "hardness")


@dataclass(frozen=True)
class Strength:
    """A stress (or the load it carries) with its spread; both ends are the value itself where none is known."""

    value: Quantity
    low: Quantity
    high: Quantity

    def ends(self) -> tuple[Quantity, Quantity | None, Quantity | None]:
        """Value, low end, high end, the ends left out where there is no spread."""
        spread_known = self.low < self.value or self.high > self.value
        return (self.value, self.low, self.high) if spread_known else (self.value, None, None)

    def times(self, share: Strength) -> Strength:
        """Product of two figures with their spreads."""
        return Strength(self.value * share.value, self.low * share.low, self.high * share.high)


def share(name: str) -> Figure:
    """A share or ratio of ``data/strengths.toml``."""
    return figure(load("strengths")["shares"][name])


def figures(metal: Metal) -> dict[str, Figure]:
    """Every strength, yield and hardness known of a metal, by name such as ``strength_half_hard``."""
    more = load("strengths")["metals"].get(metal.key, {})
    return {**{name: figure(row) for name, row in more.items()}, **metal.figures}


def spread(known: Figure) -> Strength:
    """A figure with its ends."""
    low = known.value if known.low is None else known.low
    return Strength(known.value, low, known.value if known.high is None else known.high)


def tensile(working: Working, metal: Metal, temper: str, typed: Quantity | None, place: str) -> Strength:
    """Tensile strength of ``place`` (the weld, the post) in a temper; writes the steps down.

    Raises ``Complaint`` naming the tempers or metals that are known.
    """
    if typed is not None:
        working.note(f"Strength of {place}", "as you entered it", typed, "MPa")
        return Strength(typed, typed, typed)
    known, name = figures(metal), temper.replace("-", "_")
    if f"strength_{name}" in known:
        direct = known[f"strength_{name}"]
        working.figure(f"Strength of {place}, {temper}", direct)
        return spread(direct)
    if f"hardness_{name}" in known:
        hardness, ratio = known[f"hardness_{name}"], share("per_hardness")
        working.figure(f"Hardness of {place}, {temper}", hardness)
        working.figure("Strength for each point of hardness", ratio)
        value = working.step(
            f"Strength of {place}, estimated",
            "hardness * ratio",
            "MPa",
            hardness=hardness.value,
            ratio=ratio.value,
        )
        both = spread(hardness).times(spread(ratio))
        return Strength(value, both.low.to("MPa"), both.high.to("MPa"))
    raise Complaint(*_unknown(metal, temper, known))


def _unknown(metal: Metal, temper: str, known: dict[str, Figure]) -> tuple[str, str]:
    tempers = [key for key, _ in TEMPERS if {f"{kind}_{key.replace('-', '_')}" for kind in _KINDS} & set(known)]
    if "annealed" in tempers:
        return f"{metal.name}: no strength is known here when {temper}. Choose {' or '.join(tempers)}", "temper"
    named = ", ".join(one.key for one in metals() if {f"{kind}_annealed" for kind in _KINDS} & set(figures(one)))
    return f"{metal.name}: no strength is known here. Choose {named}, or enter its strengths yourself below", "metal"


def yielding(
    working: Working, metal: Metal | None, temper: str, strength: Strength, typed: Quantity | None, place: str
) -> Strength:
    """Stress at which ``place`` starts to bend for good: known, or a share of its tensile strength.

    Without a metal (its strength was typed) only the share is used.
    """
    if typed is not None:
        working.note(f"Yield strength of {place}", "as you entered it", typed, "MPa")
        return Strength(typed, typed, typed)
    direct = figures(metal).get(f"yield_{temper.replace('-', '_')}") if metal else None
    if direct is not None:
        working.figure(f"Yield strength of {place}, {temper}", direct)
        return spread(direct)
    part = share("soft_yield" if temper == "annealed" else "hard_yield")
    working.figure(f"Yield as a share of strength, {'soft' if temper == 'annealed' else 'worked'} metal", part)
    value = working.step(
        f"Yield strength of {place}, estimated", "strength * part", "MPa", strength=strength.value, part=part.value
    )
    both = strength.times(spread(part))
    return Strength(value, both.low, both.high)
