"""Raising or lowering the fineness of an alloy by adding metal."""

from __future__ import annotations

from ..declare import Result, Working, calculator
from ..drawing import Drawing
from ..fields import Fineness, FinenessTyped, Mass
from ..units import Quantity, magnitude, quantity, quantity_text
from .bars import Part, weight_bars


@calculator(
    title="Alloy up or down",
    purpose="How much fine metal, or how much alloy, turns what you have into the fineness you want.",
    fields=[
        Mass(name="mass", label="Weight you have", example="7 g", low=0.01, high=100_000, hint="Clean metal."),
        Fineness(name="from_fineness", label="Fineness you have", example="10k", low=0, hint="Such as 10k or 417."),
        Fineness(name="to_fineness", label="Fineness you want", example="14k", hint="Such as 14k or 585."),
        Fineness(
            name="added_fineness",
            label="Fineness of what you add",
            example="24k",
            low=0,
            hint="24k or 999.9 to go up; 0 for alloy without the precious metal to go down.",
        ),
    ],
    results=[
        Result("metal_to_add", "Add", "g", 0.001, also=("dwt", "ozt")),
        Result("total_mass", "Weight afterward", "g", 0.01, also=("dwt",)),
        Result("fine_metal", "Fine metal in it", "g", 0.001),
    ],
    sources=["alligation"],
    cautions=[
        "The mixture is only as sure as the fineness you start from: have old metal assayed before it gets a mark.",
        "Color, melting range and workability depend on what the rest is made of, not on the fineness alone.",
        "Zinc and cadmium fume from a melt, and old solder may hold either: extraction on, and no unknown solder in "
        "the crucible.",
    ],
)
def alloy_up(
    working: Working,
    mass: Quantity,
    from_fineness: FinenessTyped,
    to_fineness: FinenessTyped,
    added_fineness: FinenessTyped,
) -> None:
    """The fine metal before and after is the same sum: mass × (wanted − have) = added × (its fineness − wanted)."""
    have, want, add = (one.permille for one in (from_fineness, to_fineness, added_fineness))
    if abs(magnitude(want - have, "permille")) < 1e-6:
        added = quantity(0, "g")
        working.note("To add", "nothing: it already is what you want", added, "g")
    elif not _possible(working, have, want, add):
        return
    else:
        added = working.step(
            "To add",
            "mass * (wanted - have) / (its_own - wanted)",
            "g",
            mass=mass,
            wanted=want,
            have=have,
            its_own=add,
        )
    total = working.step("Weight afterward", "mass + added", "g", mass=mass, added=added)
    fine = working.step("Fine metal in it", "total * wanted", "g", total=total, wanted=want)
    working.result("metal_to_add", added)
    working.result("total_mass", total)
    working.result("fine_metal", fine)
    check = magnitude((mass * have + added * add) / total, "permille")
    working.verdict = (
        f"{quantity_text(mass, 'g')} at {quantity_text(have, 'permille')} and {quantity_text(added, 'g')} at "
        f"{quantity_text(add, 'permille')} make {quantity_text(total, 'g')} at {check:.1f}\u00a0‰."
    )
    working.draw(_bars(mass, added, have, add))


def _possible(working: Working, have: Quantity, want: Quantity, add: Quantity) -> bool:
    """Adding moves the fineness toward that of what is added and never past it."""
    up = want > have
    if (up and add > want) or (not up and add < want):
        return True
    way, need = ("raise", "finer") if up else ("lower", "less fine")
    working.complain(
        "added_fineness",
        f"Metal of {quantity_text(add, 'permille')} can't {way} it to {quantity_text(want, 'permille')}: "
        f"enter what you add {need} than that",
    )
    return False


def _bars(mass: Quantity, added: Quantity, have: Quantity, add: Quantity) -> Drawing:
    """Fine metal and the rest, before and after, as bars at one scale."""
    rows = []
    bare = [(magnitude(one, "g"), magnitude(share)) for one, share in ((mass, have), (added, add))]
    for words, kept in (("What you have", bare[:1]), ("With what you add", bare)):
        fine = sum(weight * share for weight, share in kept)
        rest = sum(weight * (1 - share) for weight, share in kept)
        rows.append(
            (
                f"{words}: {sum(weight for weight, _ in kept):.3f} g",
                [Part(fine, f"fine {fine:.3f} g", "cut"), Part(rest, f"rest {rest:.3f} g", "ghost")],
            )
        )
    told = "Two bars to one scale: the weight before and after, each split in fine metal and the rest."
    return weight_bars("Fine metal before and after, to scale", told, rows)
