"""Wire for jump rings and chain links: what a coil takes, and what the saw makes of it."""

from __future__ import annotations

from ..declare import Result, Working, calculator
from ..fields import Count, Length, MetalField, StockThickness
from ..metals import Metal
from ..units import Quantity, magnitude, number_text, quantity
from .link_picture import links_picture


@calculator(
    title="Wire for links",
    purpose="Wire and mandrel for jump rings or chain links of the inside diameter you want.",
    fields=[
        Length(
            name="inside_diameter",
            label="Inside diameter",
            example="4 mm",
            low=0.3,
            high=100,
            hint="Of the finished, closed link.",
        ),
        StockThickness(
            name="wire", label="Wire", example="0.8 mm", low=0.1, high=10, hint="Its diameter, in mm or gauge."
        ),
        Count(name="count", label="Links", example="25", low=1, high=100_000, hint="How many you need."),
        Length(
            name="kerf",
            label="Saw cut",
            example="0.25 mm",
            low=0,
            high=3,
            hint="Width your blade or disc takes; 0 for cutters (0.25 mm from memory; measure yours).",
        ),
        Length(
            name="coil_gap",
            label="Gap between turns",
            example="0 mm",
            low=0,
            high=10,
            hint="0 for a coil wound tight.",
            group="Allowances of your hand",
        ),
        Length(
            name="spare",
            label="Lost at the ends of the coil",
            example="10 mm",
            low=0,
            high=500,
            hint="Tails that hold the coil while you wind (common practice, no source).",
            group="Allowances of your hand",
        ),
        MetalField(example="sterling"),
    ],
    results=[
        Result("wire_length", "Wire to cut", "mm", 1, also=("in",)),
        Result("mandrel", "Wind on a mandrel of", "mm", 0.01, also=("in",)),
        Result("link_length", "Wire in one turn", "mm", 0.01),
        Result("links_per_length", "Links from a meter of wire", "", 1),
        Result("aspect_ratio", "Inside diameter over wire", "", 0.01),
        Result("chain_length", "Plain chain of these links, stretched out", "mm", 0.5, also=("in",)),
        Result("mass", "The links weigh", "g", 0.01, also=("dwt", "ozt")),
    ],
    sources=["link-geometry", "element-mixing"],
    cautions=[
        "Coils spring open a little when they come off the mandrel, more with hard wire: wind five, cut them, measure, "
        "and choose the mandrel again."
    ],
)
def link_wire(
    working: Working,
    inside_diameter: Quantity,
    wire: Quantity,
    count: Quantity,
    kerf: Quantity,
    coil_gap: Quantity,
    spare: Quantity,
    metal: Metal,
) -> None:
    """A turn is a helix on the wire's middle; the saw takes its cut out of each turn, so the mandrel is larger."""
    mandrel = working.step(
        "Mandrel, larger by what the saw takes", "inside + kerf / pi", "mm", inside=inside_diameter, kerf=kerf
    )
    turn = working.step(
        "Wire in one turn of the spiral",
        "sqrt((pi * (mandrel + wire)) ** 2 + (wire + gap) ** 2)",
        "mm",
        mandrel=mandrel,
        wire=wire,
        gap=coil_gap,
    )
    total = working.step("Wire to cut", "count * turn + spare", "mm", count=count, turn=turn, spare=spare)
    each = working.step("Links from a meter", "floor(meter / turn)", "", meter=quantity(1000, "mm"), turn=turn)
    ratio = working.step("Inside diameter over wire", "inside / wire", "", inside=inside_diameter, wire=wire)
    chain = working.step(
        "Plain chain: every link adds its inside, the two ends their wire",
        "count * inside + 2 * wire",
        "mm",
        count=count,
        inside=inside_diameter,
        wire=wire,
    )
    density = working.figure(f"Density of {metal.name}", metal.density)
    mass = working.step(
        "Weight of the links",
        "count * (turn - kerf) * pi / 4 * wire ** 2 * density",
        "g",
        count=count,
        turn=turn,
        kerf=kerf,
        wire=wire,
        density=density,
    )
    working.result("wire_length", total)
    working.result("mandrel", mandrel)
    working.result("link_length", turn)
    working.result("links_per_length", each, note="without the tails")
    working.result("aspect_ratio", ratio)
    working.result("chain_length", chain)
    working.result("mass", mass)
    _advice(working, magnitude(ratio), magnitude(kerf, "mm"), magnitude(turn, "mm"))
    working.draw(links_picture(inside_diameter, wire, kerf))


def _advice(working: Working, ratio: float, kerf: float, turn: float) -> None:
    """What the geometry allows: each link of a plain chain holds two others."""
    shown = number_text(ratio, 3)
    if ratio < 1:
        working.verdict = (
            f"At {shown} not even one other link of this wire fits through: open the link or thin the wire."
        )
    elif ratio < 2:
        working.verdict = f"At {shown} two other links can't pass through side by side: a plain chain will be stiff."
    else:
        working.verdict = f"At {shown} each link has room for two others side by side."
    if kerf > 0.1 * turn:
        working.complain("kerf", "The saw cut is over a tenth of a turn: enter a thinner blade, or cut with cutters")
