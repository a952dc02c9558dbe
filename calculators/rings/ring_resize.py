"""How much metal to take out or put in when a ring changes size."""

from __future__ import annotations

from ..declare import Result, Working, calculator
from ..fields import Choice, Count, Length, MetalField, RingSizeField, StockThickness
from ..metals import Metal
from ..profiles import OPTIONS, section
from ..ring_scales import RingSize
from ..units import Quantity, magnitude, quantity, quantity_text
from .pictures import mm, ring_with_piece
from .ring_size import US_LAW

_TAPER = quantity(0.06963)  # mm of diameter per mm along a sizing stick, derived from ISO 8653 clause 4.2
_US_STEP = quantity(0.8128, "mm")  # diameter of one US size
_STRETCH_LIMIT = 0.02  # strain; common practice, no source: about half a size on a plain band
_ALLOWANCES = "Allowances of your hand"


@calculator(
    title="Ring up or down",
    purpose="What to cut out, or what piece to put in, when a ring changes size.",
    fields=[
        RingSizeField(
            name="from_size", label="Size now", example="US 6", hint="With its scale, such as US 6 or UK L½."
        ),
        RingSizeField(name="to_size", label="Size wanted", example="US 8", hint="In any scale."),
        Length(
            name="width", label="Band width", example="3 mm", low=0.5, high=30, hint="Where you cut, along the finger."
        ),
        StockThickness(
            name="thickness",
            label="Band thickness",
            example="1.5 mm",
            low=0.4,
            high=6,
            hint="Where you cut, in mm or gauge.",
        ),
        Choice(name="profile", label="Profile", example="flat", options=OPTIONS),
        MetalField(),
        Length(
            name="saw_kerf",
            label="Saw cut",
            example="0.25 mm",
            low=0,
            high=1,
            hint="Width of one cut of your blade (0.25 mm from memory; measure yours).",
            group=_ALLOWANCES,
        ),
        Length(
            name="filing_per_face",
            label="Filed off each face",
            example="0.05 mm",
            low=0,
            high=0.5,
            hint="To make one sawn face flat (0.05 mm from memory).",
            group=_ALLOWANCES,
        ),
        Length(
            name="fit_gap",
            label="Gap left at each joint",
            example="0 mm",
            low=0,
            high=0.3,
            hint="Nothing, if you fuse without filler.",
            group=_ALLOWANCES,
        ),
        Count(
            name="piece_joints",
            label="Joints at the piece",
            example="2",
            low=1,
            high=4,
            hint="Two for one piece; 1 if its other end is already joined.",
            group=_ALLOWANCES,
        ),
        US_LAW,
    ],
    results=[
        Result("length_change", "Length change on the neutral line", "mm", 0.001, also=("in",), signed=True),
        Result("piece_length", "Cut the piece this long", "mm", 0.05, also=("in",)),
        Result("scribe_length", "Scribe this length, saw inside both lines", "mm", 0.05, also=("in",)),
        Result("piece_inside_length", "Fitted piece, along the inside", "mm", 0.01),
        Result("piece_outside_length", "Fitted piece, along the outside", "mm", 0.01),
        Result("metal_mass", "Metal added or taken out", "g", 0.001, also=("dwt",)),
        Result("stretched_thickness", "Thickness if stretched or compressed instead", "mm", 0.01),
        Result("reading_error", "Reading error at mid-width, in US sizes", "", 0.01),
    ],
    sources=["sizing-blank-rule", "element-mixing"],
    cautions=[
        "A set ring changes its curve at the setting: check every stone before and after. A pattern all around can't "
        "be cut without a break in it.",
        "Adding metal to a hallmarked piece can need the assay office's consent: check local law. Use metal of the "
        "same alloy and the same fineness or better.",
        "A hollow or plated shank, or an old soldered seam, changes the job: look with a loupe before you cut.",
    ],
)
def ring_resize(
    working: Working,
    from_size: RingSize,
    to_size: RingSize,
    width: Quantity,
    thickness: Quantity,
    profile: str,
    metal: Metal,
    saw_kerf: Quantity,
    filing_per_face: Quantity,
    fit_gap: Quantity,
    piece_joints: Quantity,
    us_law: str,
) -> None:
    """At one thickness the neutral line changes by π times the change of inside diameter, whatever the section."""
    old, new = (size.on_law(us_law).inside_diameter for size in (from_size, to_size))
    cut = section(working, profile, width, thickness)
    change = working.step(
        "Length change", "pi * (new_diameter - old_diameter)", "mm", new_diameter=new, old_diameter=old
    )
    net = magnitude(change, "mm")
    if net > 0.0005:
        cut_piece = working.step(
            "Piece to cut, with what saw and file take",
            "length_change + saw_kerf + 2 * joints * filed - joints * gap",
            "mm",
            length_change=change,
            saw_kerf=saw_kerf,
            joints=piece_joints,
            filed=filing_per_face,
            gap=fit_gap,
        )
        working.result("piece_length", cut_piece)
        working.result("length_change", change)
        _curved_lengths(working, change, new, thickness, cut.neutral)
    elif net < -0.0005:
        scribe = working.step(
            "Length to scribe; the saw cuts fall inside it",
            "-length_change - 2 * filed + gap",
            "mm",
            length_change=change,
            filed=filing_per_face,
            gap=fit_gap,
        )
        if magnitude(scribe, "mm") > 2 * magnitude(saw_kerf, "mm"):
            working.result("scribe_length", scribe)
        else:
            working.caution("The part to take out is narrower than two saw cuts: saw once, then file to size.")
    working.result("length_change", change)  # keeps its place if it was given above
    density = working.figure(f"Density of {metal.name}", metal.density)
    mass = working.step(
        "Metal added or taken out",
        "abs(length_change) * section * density",
        "g",
        length_change=change,
        section=cut.area,
        density=density,
    )
    working.result("metal_mass", mass)
    _instead(working, old, new, thickness)
    error = working.step(
        "Reading error on a tapered stick",
        "width / 2 * taper / step_of_a_US_size",
        "",
        width=width,
        taper=_TAPER,
        step_of_a_US_size=_US_STEP,
    )
    working.cite("iso-8653")
    working.result("reading_error", error, note="a flat band this wide bears on the stick with its edge")
    _picture(working, new, thickness, change)


def _curved_lengths(working: Working, change: Quantity, new: Quantity, thickness: Quantity, neutral: Quantity) -> None:
    """The fitted piece has radial ends: shorter along the inside than along the outside."""
    for name, words, reach in (
        ("piece_inside_length", "Fitted piece along the inside", "new_diameter"),
        ("piece_outside_length", "Fitted piece along the outside", "(new_diameter + 2 * thickness)"),
    ):
        amounts = {"length_change": change, "new_diameter": new, "neutral": neutral}
        if "thickness" in reach:
            amounts["thickness"] = thickness
        formula = f"length_change * {reach} / (new_diameter + 2 * neutral)"
        working.result(name, working.step(words, formula, "mm", **amounts))


def _instead(working: Working, old: Quantity, new: Quantity, thickness: Quantity) -> None:
    """Stretching or compressing: the volume stays, the width is held, so the thickness gives."""
    area = working.step("Thickness × neutral diameter stays", "t * (old + t)", "mm**2", t=thickness, old=old)
    other = working.step(
        "Thickness afterward", "(sqrt(new ** 2 + 4 * constant) - new) / 2", "mm", new=new, constant=area
    )
    working.result("stretched_thickness", other)
    strain = working.step(
        "Stretch of the neutral line", "(new + t) / (old + t2) - 1", "", new=new, old=old, t=other, t2=thickness
    )
    share = abs(magnitude(strain))
    if share < 1e-6:
        working.verdict = "Both sizes are the same ring: nothing to cut."
    elif share <= _STRETCH_LIMIT:
        how = "Stretching" if magnitude(strain) > 0 else "Compressing"
        working.verdict = (
            f"{how} is reasonable for a plain, unset, unseamed band that has been annealed: the metal moves by "
            f"{100 * share:.1f} %. Cut if it has stones, a pattern, an old seam or a hollow shank "
            "(2 % limit: common practice, no source)."
        )
    else:
        working.verdict = (
            f"Cut and fuse: the metal would have to move by {100 * share:.1f} %, more than the 2 % a plain band "
            f"takes well, and the wall would end at {quantity_text(other, 'mm', 3)} (common practice, no source)."
        )


def _picture(working: Working, new: Quantity, thickness: Quantity, change: Quantity) -> None:
    net, inside, wall = (magnitude(one, "mm") for one in (change, new, thickness))
    if net > 0:
        label, title = f"piece {mm(net)} on the neutral line", "The ring at its new size, with the piece"
        told = (
            f"Ring {inside:.2f} mm inside; a piece {net:.2f} mm long on the neutral line sits at the base of the shank."
        )
    else:
        label, title = f"taken out: {mm(-net)}", "The ring at its new size; what was taken out, laid on it"
        told = f"Ring {inside:.2f} mm inside; the {-net:.2f} mm taken out is marked at the base of the shank."
    working.draw(ring_with_piece(title, told, inside, wall, abs(net), label))
