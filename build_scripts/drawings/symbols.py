"""Weld symbols of the standards for the joints of this handbook, for the glossary."""

from __future__ import annotations

from build_scripts.drawings import drawing
from calculators.drawing import Drawing


@drawing("weld-symbols")
def weld_symbols() -> Drawing:
    """Six symbols, each standing on its piece of the reference line."""
    told = (
        "Six symbols on a level line: two upright strokes; a V; a right triangle with its upright side on the left; a "
        "box open at the bottom; three upright strokes; a circle."
    )
    d = Drawing(16.0, 4.4, "Weld symbols", told, 40)
    base, high = 2.7, 1.1
    names = ("butt", "V", "fillet", "plug", "edge", "spot")
    for index, name in enumerate(names):
        x = 1.35 + 2.66 * index
        d.line([(x - 1.0, base), (x + 1.0, base)], "ink")
        top = base - high
        if name == "butt":
            for dx in (-0.15, 0.15):
                d.line([(x + dx, base), (x + dx, top)], "ink heavy")
        elif name == "V":
            d.line([(x - 0.5, top), (x, base), (x + 0.5, top)], "ink heavy")
        elif name == "fillet":
            d.line([(x - 0.5, base), (x - 0.5, top), (x + 0.6, base)], "ink heavy")
        elif name == "plug":
            d.line([(x - 0.6, base), (x - 0.6, top + 0.3), (x + 0.6, top + 0.3), (x + 0.6, base)], "ink heavy")
        elif name == "edge":
            for dx in (-0.3, 0.0, 0.3):
                d.line([(x + dx, base), (x + dx, top)], "ink heavy")
        else:
            d.circle(x, base, 0.45, "ink heavy")
        d.text(x, base + 1.1, name)
    return d
