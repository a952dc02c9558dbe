"""Rules of the bench as data: each says when it speaks, what for, with how many points, and why.

A rule in TOML names fields with the choices it speaks for (``load = ["side"]``), limits of amounts
(``over = { thickness = 1.0 }``, in mm), its ``reason`` and its ``points``. Fields left open make no rule speak.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field
from typing import Any

from ..data import MARKS
from ..declare import Working
from ..units import quantity

Facts = Mapping[str, str | float | None]
_OWN = {"reason", "points", "over", "under", "mark", "source", "says", "stop"}


@dataclass(frozen=True)
class Rule:
    """One rule; ``says`` is the sentence of a rule that warns instead of giving points."""

    choices: Mapping[str, tuple[str, ...]]
    over: Mapping[str, float]
    under: Mapping[str, float]
    points: Mapping[str, int]
    reason: str = ""
    mark: str = "common practice"
    source: str = ""
    says: str = ""
    stop: bool = False

    def speaks(self, facts: Facts) -> bool:
        """Whether everything the rule asks for is known and so."""
        if any(facts.get(name) not in values for name, values in self.choices.items()):
            return False
        return all(_number(facts, name) > limit for name, limit in self.over.items()) and all(
            _number(facts, name, 1) < limit for name, limit in self.under.items()
        )

    def fields(self) -> list[str]:
        """The fields the rule looks at."""
        return [*self.choices, *self.over, *self.under]


def _number(facts: Facts, name: str, way: int = -1) -> float:
    """An amount, or one that meets no limit when it is not known."""
    value = facts.get(name)
    return float(value) if isinstance(value, (int, float)) else way * float("inf")


def read_rules(tables: Iterable[Mapping[str, Any]]) -> tuple[Rule, ...]:
    """Rules from their TOML tables; raises ``ValueError`` for an unknown mark."""
    found = []
    for table in tables:
        choices = {
            name: (value,) if isinstance(value, str) else tuple(value)
            for name, value in table.items()
            if name not in _OWN
        }
        rest = {name: table[name] for name in ("reason", "mark", "source", "says", "stop") if name in table}
        if rest.get("mark", "common practice") not in MARKS:
            raise ValueError(f"{rest['mark']} is not one of {', '.join(MARKS)}")
        over, under, points = (dict(table.get(name, {})) for name in ("over", "under", "points"))
        found.append(Rule(choices, over, under, points, **rest))
    return tuple(found)


@dataclass
class Standing:
    """What one candidate got, and from which rules."""

    slug: str
    total: int
    parts: list[tuple[int, Rule]] = field(default_factory=list)


def tally(rules: Iterable[Rule], facts: Facts, start: Mapping[str, int]) -> list[Standing]:
    """Every candidate of ``start`` with its points, best first; equal points keep the order of ``start``."""
    standings = {slug: Standing(slug, points) for slug, points in start.items()}
    for rule in rules:
        if rule.speaks(facts):
            for slug, points in rule.points.items():
                standings[slug].total += points
                standings[slug].parts.append((points, rule))
    return sorted(standings.values(), key=lambda one: -one.total)


def show_tally(
    working: Working, rules: Iterable[Rule], facts: Facts, standings: list[Standing], titles: Mapping[str, str],
    words: Mapping[str, str], head: str = "",
) -> None:  # fmt: skip
    """Write into the working which rule spoke for what, then the totals of the first four."""
    for rule in rules:
        if rule.speaks(facts):
            given = ", ".join(titles[slug] + f" {points:+d}".replace("-", "−") for slug, points in rule.points.items())
            because = ", ".join(words.get(name, name) for name in rule.fields())
            working.weigh(rule.reason, f"{because} ({MARKS[rule.mark]})", given)
            if rule.source:
                working.cite(rule.source)
    for one in standings[:4]:
        own = one.total - sum(points for points, _ in one.parts)
        parts = ([f"{own} {head}"] if own else []) + [str(points).replace("-", "−") for points, _ in one.parts]
        working.note(titles[one.slug], " + ".join(parts) or "no rule spoke", quantity(one.total), "")
