"""Drawings of measuring: the ring stick with a flat and a rounded band, and the template at true size."""

from __future__ import annotations

import math

from build_scripts.drawings import drawing
from build_scripts.drawings.sketch import arrow, leader
from calculators.drawing import Drawing
from calculators.ring_scales import scales

TAPER = 0.06963  # mm of diameter a mm of stick: 76 − 41 mm of circumference on 160 mm, ISO 8653
BAND = 8.0  # width of the band drawn, mm


@drawing("stick-contact")
def stick_contact() -> Drawing:
    """One wall of an 8 mm band on the stick: flat inside, rounded inside."""
    d = Drawing(
        16.0,
        12.0,
        "Where a band touches the stick",
        "A ring stick stands thick end down. Left: an 8 mm band, flat inside, touches with its lower edge only and is "
        "read there. Right: a band rounded inside touches with its middle and is read at its middle.",
        scale=40,
    )
    slope = TAPER / 2
    for left, rounded in ((0.6, False), (8.6, True)):
        face = left + 3.4
        d.polygon([(left, 0.6), (face, 0.6), (face + slope * 10.8, 11.4), (left, 11.4)], "part tool")
        low = 10.0
        touch = low - BAND / 2 if rounded else low
        inside = face + slope * (touch - 0.6)
        if rounded:
            bulge = [(inside + 0.55 * (2 * i / 20 - 1) ** 2, low - BAND + BAND * i / 20) for i in range(21)]
            d.polygon([*bulge, (inside + 1.8, low), (inside + 1.8, low - BAND)], "cut")
        else:
            d.rectangle(inside, low - BAND, 1.8, BAND, "cut")
        arrow(d, (inside - 2.4, touch), (inside - 0.1, touch), "ink heavy")
    d.text(2.3, 9.3, "lower edge")
    d.text(10.2, 5.3, "middle")
    leader(d, (5.8, 3.0), (6.4, 1.4), "flat", "middle")
    leader(d, (13.8, 3.0), (14.6, 1.4), "rounded", "middle")
    return d


class TrueSize(Drawing):
    """A drawing that comes out of the printer in true millimetres, if nothing is scaled."""

    def svg(self) -> str:
        """The picture with its size in mm; on a narrow screen it shrinks, on paper it must not."""
        size = f"width:{self.width:g}mm;max-width:100%"
        paper = (
            f"@media print{{svg.true-size{{width:{self.width:g}mm!important;max-width:none!important}}"
            "figure:has(>svg.true-size){max-width:none!important;margin-inline:0!important}}"
        )
        text = super().svg().replace('<svg class="drawing"', f'<svg class="drawing true-size" style="{size}"', 1)
        return text.replace("</desc>", f"</desc><style>{paper}</style>", 1)


def _words(d: Drawing, x: float, y: float, words: str, size: float, anchor: str = "middle") -> None:
    d.add(
        f'<text class="label" style="font-size:{size * d.scale:g}px" x="{d.x(x):g}" y="{d.y(y):g}" '
        f'text-anchor="{anchor}">{words}</text>'
    )


@drawing("ring-size-template")
def ring_size_template() -> Drawing:
    """Circles of the inside diameters of US 3 to 14½ in half sizes, and a 50 mm bar, at true size."""
    d = TrueSize(
        160.0,
        148.0,
        "Ring sizes at true size",
        "Twenty-four circles from US 3 to US 14½ in half sizes, their outer edges as large as the inside of the ring, "
        "and a bar of 50 mm to check the print with.",
        scale=10,
    )
    line = 0.2
    pen = f"fill:none;stroke:currentColor;stroke-width:{line * d.scale:g};vector-effect:none"
    d.add(f'<path style="{pen}" d="M30,40V80M530,40V80M30,60H530"/>')
    _words(d, 28, 4.8, "50 mm", 3.6)
    _words(d, 57, 7.2, "Print at 100 %, without fitting. Measure this bar first.", 3.6, "start")
    law = scales()["us"]
    for i in range(24):
        number = 3 + i / 2
        across = law.circumference(number) / math.pi
        x, y = 13.4 + 26.6 * (i % 6), 26 + 33.5 * (i // 6)
        radius = (across - line) / 2 * d.scale
        d.add(f'<circle style="{pen}" cx="{d.x(x):g}" cy="{d.y(y):g}" r="{radius:.3f}"/>')
        _words(d, x, y + 1.4, law.size_text(number), 4)
        _words(d, x, y + 16.2, f"{across:.2f} mm", 3)
    return d
