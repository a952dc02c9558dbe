"""What the filling calculators share: wire for a volume, a strip to lay on, passes, the weight of the fill."""

from __future__ import annotations

from ..data import Figure, figure, load
from ..declare import Result, Working
from ..fields import Length, Ratio, StockThickness
from ..metals import Metal
from ..units import Quantity, magnitude, number_text, with_unit

HAND = "Allowances of your hand"

WIRE_DIAMETER = StockThickness(
    name="wire_diameter",
    label="Filler wire",
    example="0.35 mm",
    low=0.1,
    high=2,
    hint="Diameter, in mm or gauge; 0.25 to 0.5 mm is usual (common practice, no source).",
)
WIRE_YIELD = Ratio(
    name="wire_yield",
    label="Share of the wire that ends up in the joint",
    example="85 %",
    low=20,
    high=100,
    hint="85 % is from memory; weigh a job before and after to find yours.",
    group=HAND,
)
OVERHANG = Length(
    name="overhang",
    label="Strip overlaps on each side",
    example="0.2 mm",
    low=0,
    high=3,
    hint="0.2 mm is from memory; more if your strip shrinks away when it melts.",
    group=HAND,
)
FILE_ALLOWANCE = Length(
    name="file_allowance",
    label="Left proud for the file",
    example="0.15 mm",
    low=0,
    high=1,
    hint="0.15 to 0.3 mm is usual (from memory).",
    group=HAND,
)
LAYER_HEIGHT = Length(
    name="layer_height",
    label="Height one layer of wire adds",
    example="0.25 mm",
    low=0.05,
    high=1,
    hint="From memory; measure it on scrap.",
    group=HAND,
)
PASS_WIDTH = Length(
    name="pass_width",
    label="Width one pass covers",
    example="0.5 mm",
    low=0.1,
    high=3,
    hint="From memory; about the melted width less a third for overlap.",
    group=HAND,
)

STRIP_FIELDS = (OVERHANG, FILE_ALLOWANCE, LAYER_HEIGHT, PASS_WIDTH)
CLEAN = "Clean to bright, sound metal first. An old seam, solder or a hollow shank under it changes the job."
SAME_METAL = (
    "Use metal of the same alloy and the same fineness or better. Adding metal to a hallmarked piece can need the "
    "assay office's consent: check local law."
)

WIRE_LENGTH = Result("wire_length", "Filler wire to use", "mm", 0.5, also=("in",))
METAL_MASS = Result("metal_mass", "The fill weighs", "g", 0.001, also=("dwt",))
STRIP_RESULTS = (
    Result("strip_length", "Cut the strip this long", "mm", 0.05, also=("in",)),
    Result("strip_width", "Strip width", "mm", 0.05, also=("in",)),
    Result("strip_thickness", "Strip thickness", "mm", 0.05, also=("in",)),
    Result("strip_used", "Share of the strip that stays in the ring", "percent", 0.1),
)
LAYER_RESULTS = (
    Result("layers", "Layers, if you build up with wire instead", "", 1),
    Result("passes", "Passes, all layers together", "", 1),
)


def rule(group: str, name: str) -> Figure:
    """A rule of the bench from ``data/fill_rules.toml``, with its mark."""
    return figure(load("fill_rules")[group][name])


def mm(value: float, digits: int = 3) -> str:
    """A length as it is lettered in a drawing."""
    return with_unit(number_text(value, digits), "mm")


def give_mass(working: Working, volume: Quantity, metal: Metal) -> None:
    """Weight of the fill."""
    density = working.figure(f"Density of {metal.name}", metal.density)
    working.result(
        "metal_mass", working.step("Weight of the fill", "volume * density", "g", volume=volume, density=density)
    )


def give_wire(working: Working, volume: Quantity, wire_diameter: Quantity, wire_yield: Quantity) -> Quantity:
    """Length of wire whose metal fills the volume, when only a share of it ends up there."""
    length = working.step(
        "Length of wire",
        "volume / (share * pi / 4 * wire ** 2)",
        "mm",
        volume=volume,
        share=wire_yield,
        wire=wire_diameter,
    )
    working.result("wire_length", length)
    return length


def give_strip(
    working: Working, length: Quantity, width: Quantity, height: Quantity, fill: Quantity, **hand: Quantity
) -> None:
    """The strip to lay on a place ``length`` × ``width`` × ``height``; ``hand`` is overhang and file_allowance."""
    overhang, allowance = hand["overhang"], hand["file_allowance"]
    long = working.step("Strip length", "length + 2 * overhang", "mm", length=length, overhang=overhang)
    wide = working.step("Strip width", "width + 2 * overhang", "mm", width=width, overhang=overhang)
    thick = working.step("Strip thickness", "height + allowance", "mm", height=height, allowance=allowance)
    used = working.step(
        "Share of the strip that stays",
        "fill / (length * width * thickness)",
        "percent",
        fill=fill,
        length=long,
        width=wide,
        thickness=thick,
    )
    size = " × ".join(number_text(magnitude(one, "mm"), 3) for one in (wide, thick))
    working.result("strip_length", long, note=f"of strip {size}\u00a0mm")
    working.result("strip_width", wide)
    working.result("strip_thickness", thick)
    working.result("strip_used", used, note="the rest is filed off: catch it")


def give_layers(working: Working, height: Quantity, width: Quantity, layer: Quantity, span: Quantity) -> None:
    """How often you go over the place when you build up with wire."""
    layers = working.step("Layers", "ceil(height / layer)", "", height=height, layer=layer)
    across = working.step("Passes side by side", "ceil(width / pass_width)", "", width=width, pass_width=span)
    passes = working.step("Passes in all", "layers * side_by_side", "", layers=layers, side_by_side=across)
    working.result("layers", layers)
    working.result("passes", passes)
