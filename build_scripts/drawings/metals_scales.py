"""Scales drawn from the data: melting ranges, the light a surface takes in, colors of titanium and steel."""

from __future__ import annotations

from build_scripts.drawings import drawing
from build_scripts.drawings.sketch import tick
from build_scripts.metal_tables import light_of
from calculators.drawing import Drawing
from calculators.metals import Metal, metals
from calculators.units import magnitude

LEFT, RIGHT, ROW = 130.0, 620.0, 44.0
ZINC_BOILS = 907.0  # °C, crc-transitions; the note of the boiling points in heat_properties.toml says the same


def _metal(key: str) -> Metal:
    return next(one for one in metals() if one.key == key)


def melting(key: str) -> tuple[float, float]:
    """First and last melt of a metal, °C."""
    found = _metal(key).figures
    return magnitude(found["solidus"].value, "degC"), magnitude(found["liquidus"].value, "degC")


def _ranges(
    title: str,
    told: str,
    rows: list[tuple[str, float, float]],
    scale: tuple[float, float],
    marks: tuple[float, ...],
    line: tuple[float, str] | None = None,
) -> Drawing:
    """Bars from low to high on one scale; ``line`` is one value across all bars with its word above."""
    top = 34.0 if line else 10.0
    foot = top + ROW * len(rows) + 8
    d = Drawing(640, foot + 40, title, told, scale=1.0)
    low, high = scale

    def place(value: float) -> float:
        return LEFT + (value - low) / (high - low) * (RIGHT - LEFT)

    for index, (words, start, end) in enumerate(rows):
        y = top + ROW * index + 8
        d.text(LEFT - 14, y + 21, words, "end")
        width = max(5.0, place(end) - place(start))
        d.rectangle(place(start) if width > 5 else place(start) - 2.5, y, width, 28, "hot")
    if line:
        d.line([(place(line[0]), 30), (place(line[0]), foot)], "ghost")
        d.text(place(line[0]), 22, line[1])
    d.line([(LEFT, foot), (RIGHT, foot)], "ink")
    for one in marks:
        d.line([(place(one), foot), (place(one), foot + 8)], "ink")
        d.text(place(one), foot + 30, f"{one:.0f}")
    return d


def _melting_bars(
    title: str, rows: list[tuple[str, str]], scale: tuple[float, float], marks: tuple[float, ...], zinc: bool
) -> Drawing:
    bars = [(words, *melting(key)) for words, key in rows]
    told = "Melting ranges in °C: " + "; ".join(f"{words} {low:.0f} to {high:.0f}" for words, low, high in bars) + "."
    told += f" A dashed line stands where zinc boils, at {ZINC_BOILS:.0f}." if zinc else ""
    return _ranges(title, told, bars, scale, marks, (ZINC_BOILS, "zinc") if zinc else None)


@drawing("metals-gold-melting")
def gold_melting() -> Drawing:
    """Where each karat of yellow gold melts, against zinc boiling."""
    rows = [(karat, f"{karat}-yellow") for karat in ("9k", "14k", "18k", "22k", "24k")]
    return _melting_bars("Where yellow golds melt", rows, (780, 1090), (800, 1000), zinc=True)


@drawing("metals-zinc")
def zinc() -> Drawing:
    """Base metals that hold zinc melt where zinc already boils."""
    rows = [("brass", "brass"), ("nickel silver", "nickel-silver"), ("copper", "copper")]
    return _melting_bars("Where base metals melt", rows, (860, 1140), (900, 1100), zinc=True)


@drawing("metals-platinum-hot")
def platinum_hot() -> Drawing:
    """Everything that touches platinum melts before it."""
    rows = [
        ("sterling", "sterling"), ("gold", "18k-yellow"), ("steel", "steel-316l"), ("palladium", "palladium-950"),
        ("platinum", "platinum-950-ruthenium"),
    ]  # fmt: skip
    return _melting_bars("What touches platinum melts first", rows, (700, 1850), (1000, 1500), zinc=False)


@drawing("metals-white-melting")
def white_melting() -> Drawing:
    """Nickel whites melt like yellow gold, palladium whites far above."""
    rows = [("nickel", "14k-white-nickel"), ("palladium", "14k-white-palladium"), ("yellow", "14k-yellow")]
    return _melting_bars("Where 14k golds melt", rows, (780, 1240), (800, 1000, 1200), zinc=True)


@drawing("metals-light")
def light() -> Drawing:
    """The share of light each family takes in, polished and as the bench meets it."""
    families = ("silver", "gold", "platinum", "steel", "titanium")
    shares = {
        name: [100 * float(end.magnitude) for one in (known["absorptivity"], known["polished"])
               for end in (one.low, one.high, one.value) if end is not None]
        for name in families for known in [light_of(name)]
    }  # fmt: skip
    told = "Share of light at 1064 nm in percent. " + "; ".join(
        f"{name}: polished {share[5]:.1f}, at the bench {share[0]:.0f} to {share[1]:.0f}"
        for name, share in shares.items()
    )
    bars = [(name, share[0], share[1]) for name, share in shares.items()]
    d = _ranges("Light taken in at 1064 nm", told + ".", bars, (0, 62), (0, 20, 40))
    for index, share in enumerate(shares.values()):
        x = LEFT + share[5] / 62 * (RIGHT - LEFT)
        y = 10 + ROW * index + 8
        d.line([(x, y - 5), (x, y + 33)], "ink heavy")
    return d


@drawing("metals-steel-scale")
def steel_scale() -> Drawing:
    """Colors, the band that sensitizes, and melting on one scale."""
    rows = [("colors", 290.0, 540.0), ("sensitized", 425.0, 815.0), ("melts", *melting("steel-316l"))]
    told = (
        f"A scale in °C. Temper colors 290 to 540, sensitized 425 to 815, melting {rows[2][1]:.0f} to {rows[2][2]:.0f}."
    )
    return _ranges("What heat does to stainless steel", told, rows, (0, 1520), (0, 500, 1000, 1500))


@drawing("metals-titanium-colors")
def titanium_colors() -> Drawing:
    """Titanium in air: the film grows, the color tells."""
    steps = (("silver", 0.0, True), ("straw", 3.0, True), ("gold", 6.0, False), ("blue", 10.0, False),
             ("violet", 14.0, False), ("gray", 22.0, False))  # fmt: skip
    told = (
        "Six pieces of titanium side by side, the film of oxide on each thicker than on the one before (not to scale): "
        "silver, straw, gold, blue, violet, gray. Check marks under silver and straw, crosses under the others."
    )
    d = Drawing(640, 190, "Colors of hot titanium", told, scale=1.0)
    for index, (words, film, good) in enumerate(steps):
        x = 14 + 104 * index
        d.rectangle(x, 60, 92, 56, "cut")
        if film:
            d.rectangle(x, 60 - film, 92, film, "haze")
            d.line([(x, 60 - film), (x + 92, 60 - film)], "ink")
        d.text(x + 46, 142, words)
        tick(d, x + 46, 168, good)
    return d
