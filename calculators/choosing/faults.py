"""The faults with their causes, and the rules that find them, read from ``data/fault_rules.toml``."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from functools import lru_cache

from ..data import load
from .rules import Facts, Rule, read_rules


@dataclass(frozen=True)
class Cause:
    """Why a fault comes, how to tell, and how often it is the one (1 seldom, 5 mostly)."""

    title: str
    tell: str
    likely: int
    more: tuple[Rule, ...]

    def points(self, facts: Facts) -> int:
        """How likely it is, given the answers."""
        return self.likely + sum(rule.points["more"] for rule in self.more if rule.speaks(facts))


@dataclass(frozen=True)
class Fault:
    """A fault as its page has it; ``unlike`` says what you would see if it were another one."""

    slug: str
    title: str
    looks: str
    mend: str
    stop: str
    common: int
    unlike: Mapping[str, str]
    causes: tuple[Cause, ...]

    @property
    def page(self) -> str:
        """Its page below ``docs``, without the ending."""
        return f"faults/{self.slug}"

    def ranked(self, facts: Facts) -> list[Cause]:
        """The causes, likeliest first."""
        return sorted(self.causes, key=lambda cause: -cause.points(facts))


@lru_cache(maxsize=1)
def faults() -> dict[str, Fault]:
    """Every fault by slug, in the order of the data."""
    found = {}
    for slug, table in load("fault_rules")["fault"].items():
        causes = []
        for one in table["cause"]:
            more = read_rules({**row, "points": {"more": row["points"]}} for row in one.get("more", []))
            causes.append(Cause(one["title"], one["tell"], one["likely"], more))
        plain = {name: table[name] for name in ("title", "looks", "mend", "stop", "common", "unlike")}
        found[slug] = Fault(slug, causes=tuple(causes), **plain)
    return found


@lru_cache(maxsize=1)
def fault_rules() -> tuple[Rule, ...]:
    """What each answer speaks for."""
    return read_rules(load("fault_rules")["rule"])
