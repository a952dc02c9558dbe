"""A seam of overlapping spots: how many, how long, how warm."""

from __future__ import annotations

import math

from ..declare import Result, Working, calculator
from ..drawing import Drawing
from ..fields import Amount, Choice, Length, Ratio, RingSizeField, StockThickness
from ..ring_scales import RingSize
from ..units import Quantity, magnitude
from . import cautions

_WHERE = ("line", "ring")
_FROM_SOURCE = 0.8  # overlap in print for leak-tight seams


@calculator(
    title="Seam of spots",
    purpose="Spots, pitch, time and heat for a seam of overlapping pulses, along a line or around a ring.",
    fields=[
        Choice(
            name="path",
            label="The seam runs",
            example="line",
            options=(("line", "along a line"), ("ring", "once around a ring")),
        ),
        Length(name="seam_length", label="Seam length", example="6 mm", low=0.2, high=500, when=("path", ("line",))),
        RingSizeField(name="ring_size", label="Ring size", example="US 7", when=("path", ("ring",))),
        StockThickness(
            name="thickness",
            label="Ring thickness",
            example="1.5 mm",
            low=0.3,
            high=6,
            hint="The seam runs around the outside.",
            when=("path", ("ring",)),
        ),
        Length(
            name="spot",
            label="Spot width on the metal",
            example="0.6 mm",
            low=0.1,
            high=4,
            hint="As melted, if you know it.",
        ),
        Ratio(
            name="overlap",
            label="Overlap of one spot on the next",
            example="70 %",
            low=0,
            high=95,
            hint="80 % is the published habit for leak-tight seams; 50 to 70 % for a tack or a cover pass.",
        ),
        Amount(name="energy", label="Energy of one pulse", example="4 J", of="J", low=0.01, high=200),
        Amount(name="rate", label="Pulses a second", example="3 Hz", of="Hz", low=0.1, high=100),
    ],
    results=[
        Result("spots", "Spots", "", 1),
        Result("pitch", "From spot to spot", "mm", 0.01),
        Result("time", "Time", "s", 1),
        Result("mean_power", "Mean power into the piece, if all is taken in", "W", 0.1),
        Result("energy_per_mm", "Energy on each millimeter of seam", "J/mm", 0.1),
        Result("full_width_fraction", "Narrowest place of the seam, of the spot width", "percent", 1),
    ],
    sources=["pulsed-seam-welding"],
    cautions=[*cautions.SETTINGS],
)
def seam_plan(
    working: Working,
    path: str,
    seam_length: Quantity | None,
    ring_size: RingSize | None,
    thickness: Quantity | None,
    spot: Quantity,
    overlap: Quantity,
    energy: Quantity,
    rate: Quantity,
) -> None:
    """Pitch is what one spot does not share with the next; the seam's edge falls in between two spots."""
    around = path == "ring" and ring_size is not None and thickness is not None
    if ring_size is not None and thickness is not None:
        seam_length = working.step(
            "Length of the seam around the outside",
            "pi * (inside_diameter + 2 * thickness)",
            "mm",
            inside_diameter=ring_size.inside_diameter,
            thickness=thickness,
        )
    assert seam_length is not None
    pitch = working.step("From spot to spot", "spot * (1 - overlap)", "mm", spot=spot, overlap=overlap)
    if not around and magnitude(seam_length, "mm") < magnitude(spot, "mm"):
        working.complain("seam_length", "The seam is shorter than one spot: enter a smaller spot or the real length")
        return
    # A ring closes on its first spot; a line has one more spot than it has gaps.
    formula = "ceil(seam_length / pitch)" if around else "ceil(seam_length / pitch) + 1"
    spots = working.step("Spots", formula, "", seam_length=seam_length, pitch=pitch)
    working.result("spots", spots)
    working.result("pitch", pitch)
    time = working.step("Time", "spots / rate", "s", spots=spots, rate=rate)
    working.result("time", time)
    working.result("mean_power", working.step("Mean power", "energy * rate", "W", energy=energy, rate=rate))
    working.result(
        "energy_per_mm",
        working.step(
            "Energy on each millimeter", "spots * energy / seam_length", "J/mm",
            spots=spots, energy=energy, seam_length=seam_length,
        ),
    )  # fmt: skip
    width = working.step("Narrowest place, by the spot", "sqrt(1 - (1 - overlap) ** 2)", "percent", overlap=overlap)
    working.result("full_width_fraction", width)
    share = magnitude(overlap)
    if share >= _FROM_SOURCE - 1e-9:
        working.verdict = "Tight enough for a seam that must not leak (80 % overlap: published habit)."
    elif share >= 0.5:
        working.verdict = "A closed seam with a wavy edge. Use 80 % where it must not leak."
    else:
        working.verdict = "The spots barely join: good for tacks, not for a seam."
    if magnitude(energy, "J") * magnitude(rate, "Hz") > 15:
        working.caution("This warms a small piece fast: rest between groups of spots, and check the heat at stones.")
    working.draw(_picture(magnitude(spot, "mm"), magnitude(pitch, "mm"), int(magnitude(spots))))


def _picture(spot: float, pitch: float, spots: int) -> Drawing:
    shown = max(2, min(spots, 9, math.floor(6 * spot / pitch) + 1))
    length = spot + (shown - 1) * pitch
    scale = 560 / (length * 1.15)
    scale = min(scale, 150 / spot)
    title = "First spots of the seam, to scale"
    picture = Drawing(
        length + 80 / scale, spot + 130 / scale, title, f"Spots {spot:.2f} mm wide, {pitch:.2f} mm apart.", scale
    )
    left, middle = 40 / scale, 60 / scale + spot / 2
    picture.rectangle(0, middle - spot / 2 - 12 / scale, length + 80 / scale, spot + 24 / scale, "part")
    for i in range(shown):
        picture.circle(left + spot / 2 + i * pitch, middle, spot / 2, "hot")
    picture.dimension(
        (left + spot / 2, middle - spot / 2), (left + spot / 2 + pitch, middle - spot / 2), f"{pitch:.2f} mm", away=22
    )
    low = middle + spot / 2
    picture.dimension((left, low), (left + spot, low), f"spot {spot:.2f} mm", away=-22)
    return picture
