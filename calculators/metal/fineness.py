"""Karat and per thousand, what a law lets you stamp, and what a soldered or filled piece comes to."""

from __future__ import annotations

from ..declare import Result, Working, calculator
from ..fields import Choice, Fineness, FinenessTyped, Mass
from ..units import Quantity, magnitude, number_text, quantity, quantity_text
from .bars import share_bar
from .laws import METALS, Law, law_of, laws, places
from .whole_piece import melted_together, rules_of_adding

_WITH = "With solder or fill in the piece"


@calculator(
    title="Fineness",
    purpose="Karat in parts per thousand and back, the mark a law allows, and what added metal does to it.",
    fields=[
        Fineness(name="fineness", label="Fineness", example="14k", hint="Such as 14k, 585, 58.5 % or .585."),
        Choice(name="metal", label="Metal", example="gold", options=METALS, hint="The metal the mark is about."),
        Choice(name="law", label="Law", example="us", options=places(), hint="Where the piece is to be sold."),
        Mass(
            name="article_mass",
            label="Weight of the piece",
            low=0.01,
            high=10_000,
            required=False,
            hint="Before anything is added.",
            group=_WITH,
        ),
        Mass(
            name="added_mass",
            label="Weight of what is added",
            low=0.0001,
            high=10_000,
            required=False,
            hint="Solder or filler that stays in the piece.",
            group=_WITH,
        ),
        Fineness(
            name="added_fineness",
            label="Fineness of what is added",
            low=0,
            required=False,
            hint="Of the same metal: 500 for a solder with half gold, 585 for wire of 585.",
            group=_WITH,
        ),
    ],
    results=[
        Result("permille", "Parts per thousand", "permille", 0.1),
        Result("karat", "Karat", "", 0.01),
        Result("stamp", "Highest mark this law allows"),
        Result("least_alloy", "Least content of the alloy for that mark", "permille", 0.01),
        Result("least_article", "Least content of the whole piece, solder included", "permille", 0.01),
        Result("whole_fineness", "The piece with what is added", "permille", 0.01),
        Result("least_solder", "Least content of the solder", "permille", 1),
        Result("addition_limit", "Most you may add to a hallmarked piece without consent", "g", 0.01),
    ],
    sources=["fineness-list"],
    cautions=["Laws on marks change and differ by place: your assay office and the text in force decide."],
)
def fineness(
    working: Working,
    fineness: FinenessTyped,
    metal: str,
    law: str,
    article_mass: Quantity | None,
    added_mass: Quantity | None,
    added_fineness: FinenessTyped | None,
) -> None:
    """24 karat is the whole; a mark stands for a least content less what the law lets you fall short."""
    if fineness.way == "k" and metal != "gold":
        working.complain("fineness", f"Karats count gold only: enter the {metal} per thousand, such as 925")
        return
    content = fineness.permille
    karat = quantity(24 * magnitude(content))
    if fineness.way == "k":
        working.step("Karat in parts per thousand", "karat / 24", "permille", karat=karat)
    else:
        working.step("Parts per thousand in karat", "24 * content", "", content=content)
    working.result("permille", content, note=f"{number_text(100 * magnitude(content))} %")
    if metal == "gold":
        working.result("karat", karat)
    known = law_of(law, metal)
    marks = [(magnitude(content), quantity_text(content, "permille"))]
    found = known.stamp(magnitude(content, "permille")) if known else None
    least: Quantity | None = None
    if known is None:
        working.verdict = f"The handbook has no {metal} law for this place: ask its assay office."
    elif found is None:
        working.verdict = f"{known.name}: too low for any {metal} mark of this law."
        working.result("stamp", "none", note=f"{known.name}: the lowest is {number_text(min(known.standards))}")
    else:
        least = _marks(working, known, *found)
        marks.append((found[1] / 1000, f"{found[0]} means {quantity_text(quantity(found[1], 'permille'), 'permille')}"))
        working.verdict = f"{known.name}: its content allows the mark {found[0]}.{_trap(content, metal)}"
    given = {"article_mass": article_mass, "added_mass": added_mass, "added_fineness": added_fineness}
    missing = [name for name, value in given.items() if value is None]
    if article_mass is not None and added_mass is not None and added_fineness is not None:
        whole = melted_together(working, content, article_mass, added_mass, added_fineness.permille, least)
        rules_of_adding(working, law, metal, content, article_mass, added_mass, added_fineness.permille)
        marks.append((magnitude(whole), f"with the fill {quantity_text(whole, 'permille')}"))
    elif len(missing) < len(given):
        for name in missing:
            working.complain(
                name, "Enter this too: the weight of the piece, what is added, and its fineness go together"
            )
    told = f"Bar of the alloy, {quantity_text(content, 'percent')} of it {metal}."
    working.draw(share_bar("Share of fine metal", told, magnitude(content), 24 if metal == "gold" else 20, marks))


def _marks(working: Working, law: Law, mark: str, stands_for: float) -> Quantity | None:
    """Give the mark and the least contents; returns the least content of the whole piece."""
    note = law.standards_note or ("counted in karats" if law.measured == "karat" else "")
    working.result("stamp", mark, note=", ".join(text for text in (law.name, note) if text))
    if law.standards_source:
        working.cite(law.standards_source)
    least: Quantity | None = None
    nominal = quantity(stands_for, "permille")
    for name, words, minus in (
        ("least_alloy", "Least content of the alloy", law.minus_alloy),
        ("least_article", "Least content of the whole piece", law.minus_article),
    ):
        if minus is None:
            continue
        short = working.figure(f"{words} may fall short by", minus)
        value = working.step(words, "mark - short", "permille", mark=nominal, short=short)
        working.result(name, value, note=minus.note)
        least = value if name == "least_article" else least
    return least


def _trap(content: Quantity, metal: str) -> str:
    """A stamp that lies just above the content, as 585 does above 14/24."""
    bare = magnitude(content, "permille")
    stamps = {one for law in laws() if law.metal == metal for one in law.standards}
    above = [one for one in stamps if bare + 0.05 < one <= bare + 2.5]
    if not above:
        return ""
    return (
        f" It is {number_text(bare)}, so it falls short of the stamp {min(above):g}: "
        f"where {min(above):g} is the least content it would not pass."
    )
