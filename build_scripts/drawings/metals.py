"""What heat does in the metals: how far it runs, where it cracks, stains and gasses. Sections in mm."""

from __future__ import annotations

import math

from build_scripts.drawings import drawing
from build_scripts.drawings.setting_parts import crack
from build_scripts.drawings.sketch import arrow, gas, leader, nozzle, tick
from calculators.drawing import Drawing, Point
from calculators.heat.heat_metals import heat_metal
from calculators.metals import metals

PULSE = 5.0  # ms
WALL = 1.6


def reach(key: str, milliseconds: float = PULSE) -> float:
    """How far heat runs in that time, 2 √(a t), in mm; a is the mean diffusivity from 20 °C to melting."""
    metal = heat_metal(next(one for one in metals() if one.key == key))
    diffusivity = metal.number("conductivity") / metal.number("density") / metal.number("heat_capacity")
    return 2000 * math.sqrt(diffusivity * milliseconds / 1000)


def _dome(x: float, radius: float, wall: float) -> list[Point]:
    """The half circle below the surface at ``x``, cut off at the bottom of the wall."""
    points = [(x + radius * math.cos(math.pi * i / 48), radius * math.sin(math.pi * i / 48)) for i in range(49)]
    return [(px, min(py, wall)) for px, py in points]


@drawing("metals-spread")
def spread() -> Drawing:
    """How far heat runs during one pulse in sterling, 18k and platinum."""
    rows = (("sterling", "sterling"), ("18k gold", "18k-yellow"), ("platinum", "platinum-950-ruthenium"))
    reaches = [reach(key) for _, key in rows]
    told = f"Three walls in section, {WALL} mm thick, to scale. During a pulse of {PULSE:.0f} ms the heat runs "
    told += ", ".join(f"{far:.1f} mm in {words}" for (words, _), far in zip(rows, reaches, strict=True))
    d = Drawing(16.0, 3.6, "How far heat runs in one pulse", told + ".", scale=40, left=-8.0, top=-0.9)
    for index, ((words, _), far) in enumerate(zip(rows, reaches, strict=True)):
        x = -5.3 + 5.3 * index
        d.rectangle(x - 2.3, 0, 4.6, WALL, "part")
        d.polygon(_dome(x, far, WALL), "soft")
        d.line([point for point in _dome(x, far, WALL) if point[1] < WALL - 1e-9], "ghost")
        d.polygon(_dome(x, 0.2, WALL), "hot")
        d.text(x, 2.3, words)
    d.dimension((7.75, WALL), (7.75, 0), "", 0)
    d.text(6.0, -0.3, "1.6 mm")
    return d


@drawing("metals-white-crack")
def white_crack() -> Drawing:
    """A spot that froze at once cracks down its middle; one that cooled along a ramp does not."""
    d = Drawing(
        16.0,
        6.0,
        "Two ways to end a pulse on nickel white gold",
        "Two spots on a seam from above with the pulse drawn below each. Left: the pulse ends at once, a crack runs "
        "along the middle of the spot and on into the cold metal. Right: the pulse ends in a ramp, no crack.",
        scale=40,
        left=-8.0,
        top=-2.4,
    )
    for x, good in ((-4.0, False), (4.0, True)):
        d.rectangle(x - 3.4, -1.7, 6.8, 3.4, "part")
        d.line([(x - 3.4, 0), (x - 0.9, 0)], "edge")
        d.line([(x + 0.9, 0), (x + 3.4, 0)], "edge")
        d.circle(x, 0, 0.9, "hot")
        d.circle(x, 0, 0.45, "ghost")
        if not good:
            crack(d, (x - 0.7, 0.05), (x + 1.5, -0.1), 0.12, 8, "ink heavy")
            crack(d, (x + 0.35, 0.75), (x + 0.7, 1.35), 0.1, 4, "ink heavy")
        top, foot = 2.2, 3.1
        end = [(x + 0.6, top), (x + 0.6, foot)] if not good else [(x, top), (x + 1.5, foot)]
        d.line([(x - 1.6, foot), (x - 1.0, foot), (x - 1.0, top), *end, (x + 1.9, foot)], "ink")
        tick(d, x + 2.8, 2.7, good)
    return d


@drawing("metals-fire-stain")
def fire_stain() -> Drawing:
    """Fire stain lies below a pale skin and shows where the polish cuts through."""
    d = Drawing(
        16.0,
        5.0,
        "Fire stain in section",
        "A section through heated sterling, much enlarged. On top a thin pale skin of nearly pure silver, under it a "
        "gray stained layer, then sound metal. On the right the polish has cut through the skin and the stain shows.",
        scale=40,
        left=-8.0,
        top=-1.8,
    )
    d.rectangle(-6.0, 0, 12.0, 2.6, "cut")
    cut = [(-6.0, 0), (1.0, 0), (2.4, 0.32), (6.0, 0.36)]
    d.polygon([(-6.0, 0.35), (2.5, 0.35), (6.0, 0.37), (6.0, 1.1), (-6.0, 1.1)], "gray")
    d.polygon([*cut, (6.0, -0.1), (6.0, -0.02), (1.0, -0.02)], "bare")
    d.polygon([(-6.0, 0), (1.0, 0), (2.5, 0.35), (-6.0, 0.35)], "haze")
    d.line(cut, "ink")
    d.line([(-6.0, 0.35), (2.5, 0.35)], "edge")
    d.line([(-6.0, 1.1), (6.0, 1.1)], "edge")
    leader(d, (-4.6, 0.17), (-4.0, -0.9), "pale skin")
    leader(d, (4.2, 0.7), (4.8, -0.7), "stain")
    d.text(6.25, 2.0, "sound", "start")
    arrow(d, (2.0, -0.9), (3.4, -0.1))
    return d


@drawing("metals-palladium-gas")
def palladium_gas() -> Drawing:
    """Gas that stops with the pulse, gas that stays until the metal is dull."""
    d = Drawing(
        16.0,
        5.4,
        "Argon on palladium",
        "Two pools of palladium in section. Left: the gas has stopped with the pulse, the pool holds bubbles and its "
        "surface is dull. Right: gas is still on the spot, the pool is sound.",
        scale=40,
        left=-8.0,
        top=-3.0,
    )
    for x, good in ((-4.0, False), (4.0, True)):
        d.rectangle(x - 3.2, 0, 6.4, WALL, "cut")
        d.polygon(_dome(x, 1.1, WALL), "hot")
        nozzle(d, x - 2.1, -1.5, 1.4, 0.6, 140)
        if good:
            gas(d, x - 0.3, -0.2, 2.0, 18, 142)
        else:
            for px, py, size in ((-0.5, 0.35, 0.13), (-0.05, 0.6, 0.17), (0.45, 0.3, 0.11), (0.2, 0.2, 0.08)):
                d.circle(x + px, py, size, "dark")
            d.line([(x - 1.1, -0.03), (x + 1.1, -0.03)], "ink heavy")
        tick(d, x + 2.4, -1.2, good)
    return d
