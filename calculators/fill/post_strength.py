"""What a fused post could carry, pulled and pushed sideways, and how deep a plug goes to be as strong as its post."""

from __future__ import annotations

from ..declare import Result, Working, calculator
from ..fields import Amount, Choice, Length, MetalField, StockThickness
from ..metals import Metal
from ..strengths import TEMPERS, tensile, yielding
from ..units import Quantity, magnitude, number_text, quantity_text
from .post_loads import modulus, plug_depth, pulled, pushed
from .post_pictures import Posts, butt_and_plug


def _own(name: str, label: str) -> Amount:
    group = "Strengths from your own supplier"
    return Amount(name=name, label=label, of="MPa", low=5, high=3000, required=False, group=group)


@calculator(
    title="Post strength",
    purpose="What a fused post could carry at best, and why a plug beats a butt when it is pushed sideways.",
    fields=[
        StockThickness(name="post_diameter", label="Post diameter", example="0.8 mm", low=0.3, high=5),
        MetalField(example="sterling", hint="Of the post; post and plate are taken as the same metal."),
        Choice(name="temper", label="Temper of the post", example="hard", options=TEMPERS, hint="As you fit it."),
        Choice(
            name="joint",
            label="Joint",
            example="plug",
            options=(
                ("butt-full", "Butt on the plate, fused right through"),
                ("butt-rim", "Butt on the plate, fused at the rim only"),
                ("plug", "Plug through the plate"),
            ),
        ),
        Length(
            name="depth",
            label="Depth fused",
            example="0.4 mm",
            low=0.02,
            high=6,
            hint="Plug: down into the plate. Rim: from the rim inward.",
            when=("joint", ("plug", "butt-rim")),
        ),
        StockThickness(
            name="plate_thickness", label="Plate thickness", example="1 mm", low=0.2, high=6, when=("joint", ("plug",))
        ),
        Length(name="post_length", label="Post length", example="10 mm", low=1, high=60, hint="Above the plate."),
        _own("soft_strength", "Tensile strength, annealed"),
        _own("post_tensile", "Tensile strength of the post"),
        _own("soft_yield", "Yield strength, annealed"),
        _own("post_yield", "Yield strength of the post"),
    ],
    results=[
        Result("pull", "Pull it could carry at best", "N", 1, also=("kgf",)),
        Result("side_load", "Push at the post's end that bends it for good", "N", 0.01),
        Result("plug_depth", "Plug this deep: the weld equals the post", "mm", 0.01, also=("in",)),
        Result("gives_first", "What gives first when pulled"),
        Result("weld_pull", "Pull, the weld alone", "N", 1),
        Result("post_pull", "Pull, the post alone", "N", 1),
        Result("butt_side_load", "Push from the side, full butt", "N", 0.01),
        Result("plug_side_load", "Push from the side, plug", "N", 0.01),
        Result("bending_gain", "A plug takes this many times the push of a butt", "", 0.1),
        Result("section_area", "Section of the post", "mm**2", 0.001),
        Result("section_modulus", "Section modulus of the post", "mm**3", 0.0001),
    ],
    sources=["von-mises", "chula-2004"],
    cautions=[
        "This is no promise for a real joint. It is a sound weld in handbook metal: pores, cracks and a cold rim carry "
        "far less. Bend and pull test posts of the same make until they break, and try every real one by hand.",
        "A torch softens the whole post: choose annealed. A plug gains only in a hole that fits: in a loose one the "
        "post bends at its weld.",
    ],
)
def post_strength(
    working: Working,
    post_diameter: Quantity,
    metal: Metal,
    temper: str,
    joint: str,
    depth: Quantity | None,
    plate_thickness: Quantity | None,
    post_length: Quantity,
    soft_strength: Quantity | None,
    post_tensile: Quantity | None,
    soft_yield: Quantity | None,
    post_yield: Quantity | None,
) -> None:
    """Pull: the weaker of weld and post. Push: yield strength × section modulus ÷ length, where the post starts."""
    d, length = post_diameter, post_length
    if joint == "butt-rim" and depth is not None and 2 * depth >= d:
        working.complain("depth", "A rim is less deep than half the post: enter less, or choose fused right through")
        return
    if plate_thickness is not None and depth is not None and depth > plate_thickness * (1 + 1e-9):
        working.complain("depth", "The weld can't go deeper than the plate is thick: enter less, or a thicker plate")
        return
    heated = "the weld and the heated metal"
    soft = tensile(working, metal, "annealed", soft_strength, heated)
    bends_soft = yielding(working, None if soft_strength is not None else metal, "annealed", soft, soft_yield, heated)
    post, bends = soft, bends_soft
    if temper != "annealed" or post_tensile is not None:
        post = tensile(working, metal, temper, post_tensile, "the post")
    if temper != "annealed" or post_tensile is not None or post_yield is not None:
        bends = yielding(working, None if post_tensile is not None else metal, temper, post, post_yield, "the post")
    if post.value < soft.value or bends.value < bends_soft.value:
        name = "post_tensile" if post.value < soft.value else "post_yield"
        working.complain(
            name, "A post is never softer than annealed: check the strengths you entered against each other"
        )
        return
    pull = pulled(working, joint, soft, post, d, depth)
    working.result("pull", *pull.joint.ends(), note="less in any real joint")
    round_section = modulus(working, "butt-full", d, None)
    butt = pushed(working, "Push that bends a full butt", bends_soft, round_section, length)
    plug = pushed(working, "Push that bends a plug", bends, round_section, length)
    own = plug if joint == "plug" else butt
    if joint == "butt-rim":
        rim_section = modulus(working, joint, d, depth)
        own = pushed(working, "Push that bends a rim-fused butt", bends_soft, rim_section, length)
    working.result("side_load", *own.ends(), note=f"at {quantity_text(length, 'mm', 3)}")
    equal = plug_depth(working, soft, post, d)
    working.result("plug_depth", equal)
    working.result("gives_first", "the weld" if pull.weld <= pull.post * (1 + 1e-9) else "the post")
    working.result("weld_pull", pull.weld)
    working.result("post_pull", pull.post)
    working.result("butt_side_load", *butt.ends())
    working.result("plug_side_load", *plug.ends())
    gain = working.step("Plug against butt", "plug / butt", "", plug=plug.value, butt=butt.value)
    working.result("bending_gain", gain)
    working.result("section_area", pull.area)
    working.result("section_modulus", round_section)
    times, deep = number_text(magnitude(gain), 2), quantity_text(equal, "mm", 2)
    working.verdict = (
        f"Pushed from the side a plug takes {times} times what a full butt takes, because its post leaves the plate "
        f"unheated. To match the post when pulled, the plug's weld goes {deep} deep."
        if magnitude(gain) > 1.05
        else f"This post is soft all along, so a plug bends as early as a butt. Its weld matches the post at {deep}."
    )
    if plate_thickness is not None and equal > plate_thickness:
        working.caution(
            "The plate is thinner than that depth: when pulled, the weld of this plug gives before the post."
        )
    if joint == "butt-rim":
        working.caution("Only the rim is fused: the middle is a crack from the start. Fuse it through, or plug it.")
    plate = 1.0 if plate_thickness is None else magnitude(plate_thickness, "mm")
    fused = magnitude(depth if depth is not None and joint == "plug" else equal, "mm")
    rim = magnitude(depth, "mm") if depth is not None and joint == "butt-rim" else 0.0
    left = magnitude((own if rim else butt).value, "N")
    sizes = Posts(magnitude(d, "mm"), magnitude(length, "mm"), plate, fused, rim)
    working.draw(butt_and_plug(sizes, left, magnitude(plug.value, "N")))
