"""From the part, its load and its surroundings to the joint, with the reasons and what would change the choice."""

from __future__ import annotations

from ..declare import Result, Working, calculator
from ..fields import Choice, Length, StockThickness
from ..units import Quantity, magnitude
from .joint_pictures import picture
from .joints import ACCESS, CHOICES, LOADS, OPENS, PARTS, THICK, WEAR, WORDS, joint_rules, joints, warnings
from .rules import Standing, show_tally, tally


@calculator(
    title="Choose a joint",
    purpose="The joint for a part and its load, why, the second choice, and what would change the choice.",
    fields=[
        Choice(name="part", label="Part", example="post", options=PARTS, required=False),
        Choice(name="load", label="Load", example="side", options=LOADS, required=False),
        Choice(name="access", label="Access", example="both", options=ACCESS, required=False),
        StockThickness(
            name="thickness",
            label="Thickness at the joint",
            example="1 mm",
            low=0.1,
            high=10,
            required=False,
            hint="Of the wall, the plate or the wire that you join to.",
        ),
        Length(
            name="stone",
            label="Nearest stone",
            example="",
            low=0,
            high=200,
            required=False,
            hint="How far the nearest stone is from the joint; leave it empty where there is none.",
        ),
        Choice(name="wear", label="Wear", example="daily", options=WEAR, required=False),
        Choice(name="opens", label="Opening again", example="no", options=OPENS, required=False),
    ],
    results=[
        Result("joint", "Joint"),
        Result("prepare", "Prepare"),
        Result("second", "Second choice"),
        Result("change", "What would change it"),
        Result("clear", "How clear it is"),
    ],
    sources=["own-weighing"],
    cautions=["Find the metal, old solder and hollows before you choose. The maker's manual comes first."],
)
def choose_joint(
    working: Working,
    part: str | None,
    load: str | None,
    access: str | None,
    thickness: Quantity | None,
    stone: Quantity | None,
    wear: str | None,
    opens: str | None,
) -> None:
    """Every answer gives points to joints; the reasons are the data's, and the sum decides."""
    facts: dict[str, str | float | None] = {
        "part": part, "load": load, "access": access, "wear": wear, "opens": opens,
        "thickness": None if thickness is None else magnitude(thickness, "mm"),
        "stone": None if stone is None else magnitude(stone, "mm"),
    }  # fmt: skip
    standings = _standings(facts)
    first, second = standings[:2]
    known = joints()
    joint, other = known[first.slug], known[second.slug]
    show_tally(working, joint_rules(), facts, standings, {slug: one.title for slug, one in known.items()}, WORDS)
    wall = facts["thickness"] if isinstance(facts["thickness"], float) else THICK
    working.result("joint", joint.title, page=joint.page)
    working.result("prepare", joint.thick if wall > joint.thick_from else joint.thin)
    working.result("second", other.title, note=f"{second.total} points; the first has {first.total}", page=other.page)
    working.result("change", _changes(facts, first.slug))
    ahead = first.total - second.total
    working.result("clear", "Clear" if ahead >= 3 else "Close: read both pages", note=f"points ahead: {ahead}")
    reasons = sorted((one for one in first.parts if one[0] > 0), key=lambda one: -one[0])[:2]
    working.verdict = " ".join(rule.reason for _, rule in reasons) or "No answer speaks for another joint yet."
    _conflicts(working, facts, first)
    working.draw(picture(first.slug, wall, joint.title))


def _standings(facts: dict[str, str | float | None]) -> list[Standing]:
    return tally(joint_rules(), facts, dict.fromkeys(joints(), 0))


def _changes(facts: dict[str, str | float | None], chosen: str) -> str:
    """Which other single answer would lead to another joint: tried one by one."""
    found: dict[str, list[str]] = {}
    for name, options in CHOICES.items():
        for value, words in options:
            best = _standings({**facts, name: value})[0].slug
            if name != "part" and best != chosen:
                found.setdefault(best, []).append(f"{WORDS[name]}: {words[0].lower()}{words[1:]}")
    for name in ("thickness", "stone"):
        limits = sorted({rule.over.get(name, rule.under.get(name, 0)) for rule in joint_rules()} - {0})
        for limit, side, way in [(limits[0], "under", 0.9), *((one, "over", 1.1) for one in limits)]:
            best = _standings({**facts, name: limit * way})[0].slug
            told = f"{WORDS[name]} {side} {limit:g} mm"
            if best != chosen and told not in found.get(best, []):
                found.setdefault(best, []).append(told)
    if not found:
        return "No other single answer but the part itself."
    return " ".join(f"{joints()[slug].title} if {', or '.join(reasons)}." for slug, reasons in found.items())


def _conflicts(working: Working, facts: dict[str, str | float | None], first: Standing) -> None:
    """Say what does not go together, what speaks against the choice, and what is missing."""
    for rule in warnings():
        if rule.speaks(facts):
            working.caution(rule.says, rule.stop)
    title = joints()[first.slug].title.lower()
    for points, rule in first.parts:
        if points < 0:
            against = " and ".join(WORDS[name] for name in rule.fields())
            working.caution(f"Against a {title} speaks the {against}: {rule.reason[:1].lower()}{rule.reason[1:]}")
    if not facts["part"]:
        missing = "Nothing" if not any(facts.values()) else "No part"
        working.caution(f"{missing} is chosen, so this is only the nearest advice. Choose the part.")
