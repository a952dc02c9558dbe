"""What a lot of filings or scrap comes to when it is melted, assayed and settled."""

from __future__ import annotations

from ..data import figure, load
from ..declare import Result, Working, calculator
from ..drawing import Drawing
from ..fields import Amount, Fineness, FinenessTyped, Mass, Price, Ratio
from ..units import Quantity, magnitude, quantity_text
from .bars import Part, weight_bars

_TERMS = "Terms of the refiner"


@calculator(
    title="Scrap and filings",
    purpose="Fine metal in a lot of scrap or filings, and what a refiner's terms leave of it.",
    fields=[
        Mass(name="mass", label="Weight of the lot", example="50 g", low=0.01, high=1_000_000, hint="As you send it."),
        Fineness(
            name="assay", label="Assay of the metal", example="14k", hint="Of the clean melt, such as 14k or 585."
        ),
        Ratio(
            name="dirt",
            label="Not metal",
            example="5 %",
            low=0,
            high=100,
            hint="Grit, wax, stones, steel: nothing in clean scrap, most of a sweep. Weigh or guess your own.",
        ),
        Ratio(
            name="melt_loss",
            label="Melt loss",
            example="0.5 %",
            low=0,
            high=100,
            hint="Metal lost in the melt; said to stay below 0.5 % for clean metal.",
        ),
        Ratio(
            name="paid_share",
            label="Share of the fine metal paid",
            example="95 %",
            low=0,
            high=100,
            hint="From the refiner's terms.",
            group=_TERMS,
        ),
        Price(
            name="price",
            label="Price of fine metal, a gram",
            required=False,
            hint="In your money; type /ozt behind a troy price.",
            group=_TERMS,
        ),
        Amount(
            name="fee",
            label="Fees of the lot",
            example="0",
            of="money",
            low=0,
            high=1e9,
            hint="Melting, assay, shipping, together.",
            group=_TERMS,
        ),
    ],
    results=[
        Result("fine_metal", "Fine metal in the melt", "g", 0.01, also=("dwt", "ozt")),
        Result("melted_mass", "The melt weighs", "g", 0.01, also=("dwt", "ozt")),
        Result("paid_metal", "Fine metal paid", "g", 0.01, also=("dwt", "ozt")),
        Result("settlement", "Settlement", "money", 0.01, signed=True),
        Result("share_of_lot", "Paid metal in the lot as you send it", "percent", 0.1),
    ],
    sources=["melt-loss", "alligation"],
    cautions=[
        "Weigh, write down and photograph the lot before it leaves. Keep metals and karats apart.",
        "Filings with cadmium or lead solder in them, or with beryllium, don't go in your own crucible: say what is in "
        "them and let a refiner melt them.",
        "Filings you melt must be dry: a wet charge can throw hot metal.",
    ],
)
def settlement(
    working: Working,
    mass: Quantity,
    assay: FinenessTyped,
    dirt: Quantity,
    melt_loss: Quantity,
    paid_share: Quantity,
    price: Quantity | None,
    fee: Quantity,
) -> None:
    """What is no metal and what the melt loses come off the weight; the assay of the melt gives the fine metal."""
    gone = magnitude(dirt + melt_loss, "percent")
    if gone > 100 + 1e-9:
        working.complain(
            "melt_loss", f"What is no metal and the melt loss come to {gone:.4g} %: enter parts that add up to 100 %"
        )
        return
    usual = working.figure("Melt loss of clean metal, as said by a refiner", figure(load("finishing")["melt"]["loss"]))
    melted = working.step(
        "Weight of the melt", "lot * (1 - dirt - melt_loss)", "g", lot=mass, dirt=dirt, melt_loss=melt_loss
    )
    fine = working.step("Fine metal", "melt * assay", "g", melt=melted, assay=assay.permille)
    paid = working.step("Fine metal paid", "fine * share", "g", fine=fine, share=paid_share)
    share = working.step("Share of the lot", "paid / lot", "percent", paid=paid, lot=mass)
    working.result("fine_metal", fine)
    working.result("melted_mass", melted)
    working.result("paid_metal", paid)
    if price is not None:
        money = working.step("Settlement", "paid * price - fee", "money", paid=paid, price=price, fee=fee)
        working.result("settlement", money, note="the fees are more than the metal" if money < 0 * money else "")
    working.result("share_of_lot", share)
    if melt_loss > usual * 2:
        working.caution("That melt loss is far above what clean metal loses: ask where the metal stayed.")
    kept = fine - paid
    working.verdict = (
        f"Of {quantity_text(mass, 'g')} sent, {quantity_text(fine, 'g')} are fine metal and "
        f"{quantity_text(paid, 'g')} are paid. The terms keep {quantity_text(kept, 'g')}."
    )
    working.draw(_bars(mass, melted, fine, paid))


def _bars(mass: Quantity, melted: Quantity, fine: Quantity, paid: Quantity) -> Drawing:
    lot, melt, pure, given = (magnitude(one, "g") for one in (mass, melted, fine, paid))
    rows = [
        (f"The lot: {lot:.2f} g", [Part(lot, "")]),
        (f"The melt: {melt:.2f} g", [Part(pure, f"fine {pure:.2f} g", "cut"), Part(melt - pure, "alloy", "ghost")]),
        (f"Paid: {given:.2f} g", [Part(given, "", "cut"), Part(pure - given, "kept", "ghost")]),
    ]
    told = "Three bars to one scale: the lot, its melt with the fine metal in it, and the fine metal paid."
    return weight_bars("From the lot to the payment, to scale", told, rows)
