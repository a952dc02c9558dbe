"""A gauge number in millimeters and inches, and the other way, with the two gauges kept apart."""

from __future__ import annotations

from ..declare import Result, Working, calculator
from ..drawing import Drawing
from ..fields import GaugeField, GaugeTyped
from ..gauges import (
    BS,
    SWG,
    Size,
    brown_and_sharpe,
    metric_drills,
    nearest,
    number_drills,
    numbered,
    sizes_of,
)
from ..units import Quantity, magnitude, number_text, quantity
from .shapes import mm

_NAMES = {BS: "B&S", SWG: "SWG"}


@calculator(
    title="Gauge and thickness",
    purpose="A gauge number in millimeters and inches, or the nearest gauge and drill to a thickness.",
    fields=[
        GaugeField(
            name="gauge",
            label="Gauge or thickness",
            example="18 ga",
            low=0.03,
            high=13,
            hint="Such as 18 ga (Brown & Sharpe), 18 SWG (imperial), 1.02 mm or 0.04 in.",
        )
    ],
    results=[
        Result("thickness", "Thickness", "mm", 0.001, also=("in",)),
        Result("brown_and_sharpe", "Nearest B&S gauge"),
        Result("imperial_standard", "Nearest imperial SWG"),
        Result("other_gauge", "The same number in the other gauge", "mm", 0.001, also=("in",)),
        Result("number_drill", "Nearest number drill"),
        Result("metric_drill", "Nearest metric drill"),
    ],
    sources=["awg-law", "rowlett-wire", "inch"],
    cautions=[
        "Brown & Sharpe (AWG) and the imperial gauge (SWG) use the same numbers for different sizes: ask which one a "
        "supplier means, and measure the stock."
    ],
)
def gauge(working: Working, gauge: GaugeTyped) -> None:
    """B&S follows a law, 0.127 mm × 92^((36 − n)/39); the imperial gauge and number drills are tables."""
    thickness = gauge.thickness
    if gauge.scale == BS:
        size = numbered(BS, gauge.number)
        thickness = working.step(
            "Brown & Sharpe law",
            "at_number_36 * 92 ** ((36 - number) / 39)",
            "mm",
            at_number_36=brown_and_sharpe(36),
            number=quantity(_place(size) if size else 36),
        )
    elif gauge.scale == SWG:
        working.note("Imperial standard wire gauge", f"number {gauge.number} of the table", thickness, "mm")
    else:
        working.step("In inches", "thickness / inch", "", thickness=thickness, inch=quantity(1, "inch"))
    working.result("thickness", thickness)
    for name, scale in (("brown_and_sharpe", BS), ("imperial_standard", SWG)):
        _give(working, name, nearest(sizes_of(scale), thickness), thickness, _NAMES[scale])
    other = _other(working, gauge)
    _give(working, "number_drill", nearest(number_drills(), thickness), thickness, "No.", before=True)
    _give(working, "metric_drill", nearest(metric_drills(), thickness), thickness, "mm")
    working.cite("drill-table", "drill-code", "drill-encyclopaedia")
    working.draw(_picture(gauge, thickness, other))


def _place(size: Size) -> int:
    """The number as the law counts it: 2/0 is −1."""
    return 1 - int(size.number[:-2]) if size.number.endswith("/0") else int(size.number)


def _give(working: Working, name: str, size: Size, thickness: Quantity, word: str, before: bool = False) -> None:
    """A nearest size: its number with its word, and how far off it is; nothing within a tenth is said so."""
    here = magnitude(thickness, "mm")
    off = here - size.mm
    if abs(off) > 0.1 * here:
        working.result(name, "none near", note=f"the nearest, {size.number}, is {mm(size.mm, 4)}")
        return
    note = f"{mm(size.mm, 4)}, exactly"
    if abs(off) >= 5e-5:
        note = f"{mm(size.mm, 4)}; yours is {mm(abs(off), 2)} {'thicker' if off > 0 else 'thinner'}"
    words = f"{word} {size.number}" if before else f"{size.number} {word}"
    working.result(name, words, note=note, number=size.number, mm=float(f"{size.mm:.6g}"))


def _other(working: Working, typed: GaugeTyped) -> Size | None:
    """The same number read in the other gauge, and by how much it differs."""
    if not typed.scale:
        working.verdict = "A thickness in millimeters leaves no doubt. A gauge number alone does."
        return None
    scale = SWG if typed.scale == BS else BS
    same = numbered(scale, typed.number)
    if same is None:
        working.verdict = f"The {_NAMES[scale]} table has no number {typed.number}."
        return None
    share = magnitude(
        working.step("The other gauge against this one", "other / this - 1", "", other=same.size, this=typed.thickness)
    )
    working.result("other_gauge", same.size, note=f"{typed.number} {_NAMES[scale]}")
    working.verdict = (
        f"{typed.number} {_NAMES[typed.scale]} is {mm(magnitude(typed.thickness, 'mm'), 4)}. "
        f"{typed.number} {_NAMES[scale]} is {number_text(100 * abs(share), 3)} % "
        f"{'thicker' if share > 0 else 'thinner'}: don't mix them up."
    )
    return same


def _picture(typed: GaugeTyped, thickness: Quantity, other: Size | None) -> Drawing:
    """Wire of this size, cut across, and beside it the same number of the other gauge."""
    here = magnitude(thickness, "mm")
    pair = [(here, f"{typed.number} {_NAMES[typed.scale]}" if typed.scale else "this size")]
    if other is not None:
        pair.append((other.mm, f"{typed.number} {_NAMES[SWG if typed.scale == BS else BS]}"))
    most = max(size for size, _ in pair)
    scale = 180 / most
    told = " and ".join(f"{words}, {mm(size, 4)}" for size, words in pair)
    picture = Drawing(640 / scale, most + 120 / scale, "Wire cut across, to scale", f"Circles: {told}.", scale)
    base = most + 20 / scale
    for index, (size, words) in enumerate(pair):
        across = (640 / scale) * (index + 1) / (len(pair) + 1)
        picture.circle(across, base - size / 2, size / 2, "cut")
        picture.dimension((across - size / 2, base), (across + size / 2, base), mm(size, 4), away=-20)
        picture.text(across, base + 76 / scale, words)
    return picture
