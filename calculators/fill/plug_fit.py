"""A post through its plate: how the hole fits, and how much of the post to leave standing and melt down."""

from __future__ import annotations

from ..declare import Result, Working, calculator
from ..fields import Length, StockThickness
from ..units import Quantity, magnitude, quantity_text
from .common import mm, rule
from .plug_pictures import Plug, plug_before_and_fused


@calculator(
    title="Plug fit",
    purpose="Does the post fit its hole, and how long a stub do you leave: it fills the space and makes the bead.",
    fields=[
        StockThickness(name="post_diameter", label="Post diameter", example="0.8 mm", low=0.3, high=5),
        Length(
            name="hole_diameter",
            label="Hole diameter",
            example="0.85 mm",
            low=0.3,
            high=6,
            hint="Measure the hole, not the drill: drills cut a little wide.",
        ),
        StockThickness(name="plate_thickness", label="Plate thickness", example="1 mm", low=0.2, high=6),
        Length(
            name="stub",
            label="Stub you have",
            low=0,
            high=20,
            required=False,
            hint="What stands out on the side you fuse from. Leave it empty to see what you need.",
        ),
        Length(
            name="crown",
            label="Crown to leave proud",
            example="0.2 mm",
            low=0,
            high=2,
            hint="Height of the dome over the hole before you file (0.1 to 0.3 mm, from memory).",
        ),
    ],
    results=[
        Result("stub_to_leave", "Leave this much stub, or a little more", "mm", 0.01, also=("in",)),
        Result("stub_to_melt", "To fill the space and leave the crown", "mm", 0.01, also=("in",)),
        Result("stub_to_stop", "To make a bead as wide as the hole", "mm", 0.01, also=("in",)),
        Result("fit", "Fit of the post"),
        Result("clearance", "Hole wider than the post by", "mm", 0.01, also=("in",)),
        Result("annulus_volume", "Space around the post", "mm**3", 0.001),
        Result("bead_diameter", "Bead the stub draws up to", "mm", 0.05, also=("in",)),
        Result("stub_spare", "Your stub, beyond what it needs", "mm", 0.05, signed=True),
    ],
    sources=["fill-geometry"],
    cautions=[
        "Keep stones, pearls and organic material out of reach of heat and beam on both sides of the plate.",
        "Take a plated, filled or soldered plate to clean metal first: plating and solder boil in the weld.",
    ],
)
def plug_fit(
    working: Working,
    post_diameter: Quantity,
    hole_diameter: Quantity,
    plate_thickness: Quantity,
    stub: Quantity | None,
    crown: Quantity,
) -> None:
    """The stub fills the ring-shaped space around the post, leaves a dome and makes a bead that stops the post."""
    if post_diameter > hole_diameter * (1 + 1e-9):
        thick, wide = (quantity_text(one, "mm") for one in (post_diameter, hole_diameter))
        working.complain(
            "hole_diameter",
            f"The post ({thick}) is larger than the hole ({wide}): drill the hole to the post's diameter, or enter a "
            "thinner post",
        )
        return
    post, hole, plate = post_diameter, hole_diameter, plate_thickness
    clearance = working.step("Clearance, on the diameter", "hole - post", "mm", hole=hole, post=post)
    ring = working.step(
        "Space around the post",
        "pi / 4 * (hole ** 2 - post ** 2) * plate",
        "mm**3",
        hole=hole,
        post=post,
        plate=plate,
    )
    dome = working.step(
        "Crown over the hole", "pi / 6 * crown * (3 * (hole / 2) ** 2 + crown ** 2)", "mm**3", crown=crown, hole=hole
    )
    need = working.step(
        "Stub that fills it", "(space + dome) / (pi / 4 * post ** 2)", "mm", space=ring, dome=dome, post=post
    )
    stop = working.step(
        "Stub whose bead is as wide as the hole", "hole ** 3 / (1.5 * post ** 2)", "mm", hole=hole, post=post
    )
    leave = _larger(working, need, stop)
    fit = _verdict(working, clearance)
    working.result("fit", fit)
    working.result("clearance", clearance, note=f"{mm(magnitude(clearance, 'mm') / 2)} all around")
    working.result("annulus_volume", ring)
    melted = leave if stub is None else stub
    bead = working.step(
        "Bead of that stub" if stub is None else "Bead of your stub",
        "(1.5 * post ** 2 * stub) ** (1 / 3)",
        "mm",
        post=post,
        stub=melted,
    )
    working.result("bead_diameter", bead)
    if stub is not None:
        _check_stub(working, stub, need, stop)
    d, w, t, long, b, c = (magnitude(one, "mm") for one in (post, hole, plate, melted, bead, crown))
    working.draw(plug_before_and_fused(Plug(d, w, t, long, b, c), magnitude(ring, "mm**3")))


def _larger(working: Working, need: Quantity, stop: Quantity) -> Quantity:
    """The stub does two things, so it is as long as the longer of the two asks."""
    fills = magnitude(need, "mm") > magnitude(stop, "mm")
    most, less = ("space", "bead") if fills else ("bead", "space")
    leave = working.note(
        "Stub to leave", f"the larger of the two: what the {most} asks for", need if fills else stop, "mm"
    )
    working.result(
        "stub_to_leave", leave, note=f"the {most} asks for more than the {less}; add what a countersink takes"
    )
    working.result("stub_to_melt", need, note="metal for the space around the post and the dome over it")
    working.result("stub_to_stop", stop, note="a smaller bead lets the post slip through")
    return leave


def _check_stub(working: Working, stub: Quantity, need: Quantity, stop: Quantity) -> None:
    """What the stub the person has lacks, by reason."""
    leave = max(need, stop)
    spare = working.step("Stub beyond what it needs", "stub - needed", "mm", stub=stub, needed=leave)
    working.result("stub_spare", spare)
    if magnitude(stub - need, "mm") < -0.005:
        working.caution(
            "Your stub is too short to fill the hole and leave that crown: push more of the post through, or add wire "
            "of the same alloy."
        )
    if magnitude(stub - stop, "mm") < -0.005:
        working.caution(
            "The bead of your stub is narrower than the hole, so it won't stop the post from slipping through. Leave "
            f"{quantity_text(leave, 'mm', 2)}, or hold the post from the front until it is tacked."
        )


def _verdict(working: Working, clearance: Quantity) -> str:
    """The rule of the trade, the hole equals the post, put in figures."""
    snug = working.figure("Snug up to", rule("plug", "snug"))
    loose = working.figure("Too loose beyond", rule("plug", "loose"))
    slack = 1 + 1e-9
    if clearance <= snug * slack:
        working.verdict = "Snug. The rule is that the hole equals the post (common practice, no source)."
        return "snug"
    if clearance <= loose * slack:
        working.verdict = (
            "Loose. The rule is that the hole equals the post (common practice, no source). You can fuse it if you "
            "center the post, tack it on opposite sides and melt enough stub."
        )
        return "loose"
    working.verdict = (
        "Too loose. The rule is that the hole equals the post (common practice, no source). Take a thicker post, or "
        "plug the hole solid and drill it again: don't bridge this gap."
    )
    return "too loose"
