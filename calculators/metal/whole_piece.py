"""A piece with solder or fill in it: what it comes to as a whole, and the rules of adding."""

from __future__ import annotations

from ..declare import Working
from ..units import Quantity, magnitude, quantity, quantity_text
from .laws import addition_limit, least_solder


def melted_together(
    working: Working, content: Quantity, article: Quantity, added: Quantity, its: Quantity, least: Quantity | None
) -> Quantity:
    """Content of the whole piece; sets it against the least content of the whole, where the law has one."""
    whole = working.step(
        "The piece with what is added",
        "(piece * content + added * its_content) / (piece + added)",
        "permille",
        piece=article,
        content=content,
        added=added,
        its_content=its,
    )
    passes = ""
    if least is not None:
        passes = "passes as a whole" if whole >= least - quantity(1e-6, "permille") else "fails as a whole"
        working.verdict += f" With what is added the piece {passes}: {quantity_text(whole, 'permille')}."
    working.result("whole_fineness", whole, note=passes)
    return whole


def rules_of_adding(
    working: Working, place: str, metal: str, content: Quantity, article: Quantity, added: Quantity, its: Quantity
) -> None:
    """The least fineness of solder, and how much a repair may add, where a text was seen."""
    known = least_solder(place, metal, magnitude(content, "permille"))
    if known is not None:
        least = working.figure("Least content of the solder", known)
        working.result("least_solder", least, note=known.note)
        if its < least:
            working.caution(
                f"{quantity_text(its, 'permille')} is below what this law asks of the solder: "
                "use filler of the piece's own alloy."
            )
    limit = addition_limit(place, metal)
    if limit is not None:
        most, share = (working.figure(words, one) for words, one in zip(("At most", "And at most"), limit, strict=True))
        allowed = working.step(
            "Most you may add without consent", "min(most, share * piece)", "g", most=most, share=share, piece=article
        )
        working.result("addition_limit", allowed)
        if added > allowed or its < content:
            working.caution("This addition to a hallmarked piece needs the assay office's consent first.", stop=True)
