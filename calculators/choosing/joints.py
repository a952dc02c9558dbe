"""The joints to choose from, and the rules that choose, read from ``data/joint_rules.toml``."""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache

from ..data import load
from .rules import Rule, read_rules

PARTS = (
    ("shank", "Ring shank or band, end to end"),
    ("link", "Jump ring or chain link"),
    ("bail", "Ends of a bail"),
    ("post", "Post or pin on a plate"),
    ("prong", "Broken prong"),
    ("tip", "Worn prong tip"),
    ("worn", "Worn or flat place"),
    ("pit", "Pit or small hole"),
    ("crack", "Crack"),
    ("bezel", "Bezel or strip seam"),
    ("sheet", "Two sheets, or a patch"),
    ("stands", "Head, tube or wire on a face"),
    ("corner", "Corner of a box or collet"),
    ("moving", "Hinge, clasp or catch"),
)
LOADS = (
    ("along", "Pulled along the metal"),
    ("side", "Pushed from the side"),
    ("flex", "Squeezed or bent again and again"),
    ("twist", "Twisted"),
    ("pry", "Pried open at one side"),
    ("rub", "Only rubbed"),
    ("none", "Hardly any"),
)
ACCESS = (("both", "From both sides"), ("one", "From one side only"))
WEAR = (("light", "Light"), ("daily", "Daily"), ("hard", "Hard, daily"))
OPENS = (("no", "No, closed for good"), ("yes", "Yes, it must open again"))
WORDS = {
    "part": "part", "load": "load", "access": "access", "thickness": "thickness",
    "stone": "nearest stone", "wear": "wear", "opens": "opening again",
}  # fmt: skip
CHOICES = {"part": PARTS, "load": LOADS, "access": ACCESS, "wear": WEAR, "opens": OPENS}

THICK = 1.0  # mm; above this a wall is prepared as thick (common practice)


@dataclass(frozen=True)
class Joint:
    """A joint with its page and how its faces are prepared, up to ``thick_from`` mm and above."""

    slug: str
    title: str
    page: str
    thin: str
    thick: str
    thick_from: float = THICK


@lru_cache(maxsize=1)
def joints() -> dict[str, Joint]:
    """Every joint by slug."""
    return {slug: Joint(slug, **table) for slug, table in load("joint_rules")["joint"].items()}


@lru_cache(maxsize=1)
def joint_rules() -> tuple[Rule, ...]:
    """What each answer speaks for."""
    return read_rules(load("joint_rules")["rule"])


@lru_cache(maxsize=1)
def warnings() -> tuple[Rule, ...]:
    """What does not go together, and what a stone asks for."""
    return read_rules(load("joint_rules")["warning"])
