"""Loads of a fused post. Weld and heated metal count as annealed; what the heat did not reach keeps its temper."""

from __future__ import annotations

from dataclasses import dataclass

from ..declare import Working
from ..formula import evaluate, names_in
from ..strengths import Strength, share
from ..units import Quantity

# The weld when pulled: soft metal over the fused section; a plug is sheared off along its wall.
WELD = {
    "butt-full": "soft * pi / 4 * d ** 2",
    "butt-rim": "soft * pi / 4 * (d ** 2 - (d - 2 * depth) ** 2)",
    "plug": "shear * soft * pi * d * depth",
}
# Section modulus of what carries a push from the side.
MODULUS = {
    "butt-full": "pi / 32 * d ** 3",
    "butt-rim": "pi / 32 * (d ** 4 - (d - 2 * depth) ** 4) / d",
    "plug": "pi / 32 * d ** 3",
}


@dataclass(frozen=True)
class Pull:
    """What the joint could carry when pulled, with what the weld and the post would carry alone."""

    joint: Strength
    weld: Quantity
    post: Quantity
    area: Quantity


def _with(text: str, amounts: dict[str, Quantity | None]) -> dict[str, Quantity]:
    return {name: one for name, one in amounts.items() if one is not None and name in names_in(text)}


def pulled(working: Working, joint: str, soft: Strength, post: Strength, d: Quantity, depth: Quantity | None) -> Pull:
    """The weaker of weld and post. Low end: a laser weld as good as in the one study seen, the post softened too."""
    shear = working.figure("Shear strength as a share of tensile strength", share("shear")) if joint == "plug" else None
    area = working.step("Section of the post", "pi / 4 * d ** 2", "mm**2", d=d)
    text = WELD[joint]
    amounts = {"d": d, "depth": depth, "shear": shear}
    weld = working.step("Pull the weld could carry", text, "N", **_with(text, {**amounts, "soft": soft.value}))
    bare = working.step("Pull the post could carry", "strength * area", "N", strength=post.value, area=area)
    pull = working.step("The weaker of the two", "min(weld, post)", "N", weld=weld, post=bare)
    held = working.figure("Laser welds of one study held this share of the whole metal", share("laser_weld"))

    def of(strength: Quantity) -> Quantity:
        return evaluate(text, _with(text, {**amounts, "soft": strength})).to("N")

    low = min(held * of(soft.low), (soft.low * area).to("N"), pull)
    high = max(min(of(soft.high), (post.high * area).to("N")), pull)
    return Pull(Strength(pull, low, high), weld, bare, area)


def modulus(working: Working, joint: str, d: Quantity, depth: Quantity | None) -> Quantity:
    """Section modulus where the post leaves the plate."""
    text = MODULUS[joint]
    words = "Section modulus of the fused rim" if joint == "butt-rim" else "Section modulus of the post"
    return working.step(words, text, "mm**3", **_with(text, {"d": d, "depth": depth}))


def pushed(working: Working, words: str, stress: Strength, section: Quantity, length: Quantity) -> Strength:
    """Push at the post's end that bends it for good where it leaves the plate."""
    push = working.step(
        words, "yield_strength * modulus / length", "N", yield_strength=stress.value, modulus=section, length=length
    )
    return Strength(push, push * (stress.low / stress.value), push * (stress.high / stress.value))


def plug_depth(working: Working, soft: Strength, post: Strength, d: Quantity) -> Quantity:
    """Depth at which the wall of a plug carries as much as its post."""
    factor = share("shear").value
    return working.step(
        "Plug depth at which weld and post carry the same",
        "d * post / (4 * shear * soft)",
        "mm",
        d=d,
        post=post.value,
        shear=factor,
        soft=soft.value,
    )
