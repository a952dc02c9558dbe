"""From what you see, where and when, to the fault, its causes in order, and the mend."""

from __future__ import annotations

from ..declare import Result, Working, calculator
from ..fields import Choice
from .fault_pictures import picture
from .faults import Fault, fault_rules, faults
from .rules import Standing, show_tally, tally

SIGNS = (
    ("holes", "Small holes or dark dots"),
    ("line", "A line at the seam"),
    ("dip", "A groove or a low place"),
    ("step", "One side stands higher"),
    ("black", "Black or brown film"),
    ("dull", "A gray, dull place"),
    ("color", "A wrong color"),
    ("lumps", "Balls or lumps on top"),
    ("missing", "Metal melted away"),
    ("through", "A hole right through"),
    ("broke", "It opened or broke"),
    ("soft", "It bends and stays bent"),
    ("turns", "A part turns or wobbles"),
    ("stiff", "It doesn't move freely"),
    ("shape", "Wrong shape or size"),
    ("stone", "A stone changed"),
)
PLACES = (
    ("seam", "In the seam"),
    ("beside", "Beside the seam"),
    ("last", "In the last spot of a run"),
    ("edge", "At an edge, rim or thin wall"),
    ("inside", "In the broken or sawn face, or inside the band"),
    ("around", "All over the piece"),
    ("post", "At a post, pin or prong"),
    ("link", "At a link, hinge or catch"),
    ("set", "At a stone or its setting"),
)
MOMENTS = (
    ("during", "While fusing"),
    ("pickle", "After pickle"),
    ("filing", "While filing"),
    ("polish", "After polish"),
    ("wear", "In wear"),
)
METALS = (
    ("yellow", "Yellow gold"),
    ("rose", "Rose gold"),
    ("white-nickel", "White gold, nickel"),
    ("white-palladium", "White gold, palladium"),
    ("silver", "Silver"),
    ("platinum", "Platinum"),
    ("palladium", "Palladium"),
    ("steel", "Steel"),
    ("titanium", "Titanium"),
)
TOOLS = (("beam", "Beam (laser)"), ("arc", "Pulsed arc"), ("torch", "Torch"))
WORDS = {"sign": "sign you see", "place": "place", "when": "moment it showed", "metal": "metal", "tool": "heat"}
COUNT = ("first", "second", "third", "fourth")


@calculator(
    title="Find a fault",
    purpose="What went wrong, its causes in order of likelihood, how to tell them apart, and the mend.",
    fields=[
        Choice(name="sign", label="Sign you see", example="holes", options=SIGNS, required=False),
        Choice(name="place", label="Place", example="seam", options=PLACES, required=False),
        Choice(name="when", label="Moment it showed", example="polish", options=MOMENTS, required=False),
        Choice(name="metal", label="Metal", example="silver", options=METALS, required=False),
        Choice(name="tool", label="Heat", example="beam", options=TOOLS, required=False),
    ],
    results=[
        Result("fault", "Most likely"),
        *(Result(f"cause_{i}", f"{word.capitalize()} cause to test") for i, word in enumerate(COUNT, 1)),
        Result("mend", "Mend"),
        Result("second", "If not, then"),
        Result("third", "Or"),
        Result("clear", "How clear it is"),
    ],
    sources=["own-weighing"],
    cautions=["Before you mend: enclosure shut, extraction on, shutter alive. The maker's manual comes first."],
)
def find_fault(
    working: Working, sign: str | None, place: str | None, when: str | None, metal: str | None, tool: str | None
) -> None:
    """Each answer gives points to faults; within the fault each cause starts from how often it is the one."""
    facts = {"sign": sign, "place": place, "when": when, "metal": metal, "tool": tool}
    known, rules = faults(), fault_rules()
    standings = tally(rules, facts, {slug: fault.common for slug, fault in known.items()})
    first, second, third = standings[:3]
    fault = known[first.slug]
    titles = {slug: one.title for slug, one in known.items()}
    show_tally(working, rules, facts, standings, titles, WORDS, "for how often it comes")
    working.result("fault", fault.title, note=fault.looks, page=fault.page)
    for number, cause in enumerate(fault.ranked(facts)[:4], 1):
        working.weigh(f"Cause: {cause.title}", f"{cause.likely} for how often it is the one", f"{cause.points(facts)}")
        working.result(f"cause_{number}", cause.title, note=cause.tell)
    working.result("mend", fault.mend)
    for name, other in (("second", second), ("third", third)):
        working.result(name, titles[other.slug], note=_unlike(fault, known[other.slug]), page=f"faults/{other.slug}")
    ahead = first.total - second.total
    working.result("clear", "Clear" if ahead >= 3 else "Close: read both pages", note=f"points ahead: {ahead}")
    working.verdict = "Compare the picture, then test the causes in the order below before you fire again."
    working.caution(f"Start over when this is so: {fault.stop}")
    _conflicts(working, facts, first, titles)
    working.draw(picture(first.slug))


def _unlike(fault: Fault, other: Fault) -> str:
    """What you would see if it were the other one."""
    told = fault.unlike.get(other.slug, other.looks)
    return f"Then you see: {told[:1].lower()}{told[1:]}".rstrip(".") + "."


def _conflicts(working: Working, facts: dict[str, str | None], first: Standing, titles: dict[str, str]) -> None:
    """Say what does not go together, and what is missing."""
    if not any(facts[name] for name in ("sign", "place", "when")):
        working.caution("Nothing is chosen, so this is only the fault that comes most often. Choose the sign you see.")
        return
    if not facts["sign"]:
        working.caution("The sign you see is not chosen: without it this is a guess. Look once more at 10×.")
    named = {"sign": dict(SIGNS), "place": dict(PLACES), "when": dict(MOMENTS)}
    for rule in fault_rules():
        name = next(iter(rule.choices))
        own = rule.points.get(first.slug, 0)
        if rule.speaks(facts) and (own < 0 or (own == 0 and name != "when")):
            best = max(rule.points, key=lambda slug: rule.points[slug])
            working.caution(
                f"“{named[name][str(facts[name])]}” does not go with {titles[first.slug].lower()}: it speaks for "
                f"{titles[best].lower()}. Check that answer, or read both pages."
            )
