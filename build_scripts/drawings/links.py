"""Drawings of jump rings and chain links: wire 0.8 mm, 4 mm inside."""

from __future__ import annotations

import math

from build_scripts.drawings import drawing
from build_scripts.drawings.bench import cap, on_circle
from build_scripts.drawings.sketch import arrow, gas, leader, nozzle, polar, tick
from calculators.drawing import Drawing, Point

WIRE, INSIDE = 0.8, 4.0  # mm
INNER, OUTER = INSIDE / 2, INSIDE / 2 + WIRE


def _ring(d: Drawing, x: float, y: float, zoom: float = 1.0, gap: float = 0.0, seam: float = 90.0) -> None:
    """A link from the side; ``gap`` in degrees at ``seam``."""
    d.ring_sector(x, y, INNER * zoom, OUTER * zoom, seam + gap / 2, seam + 360 - gap / 2 - 0.01)
    if gap == 0:
        d.line([polar(x, y, INNER * zoom, seam), polar(x, y, OUTER * zoom, seam)], "ink")


def _lens(x: float, y: float, zoom: float, half: float, proud: float = 0.0, seam: float = 90.0) -> list[Point]:
    """Fused metal over a seam, ``half`` degrees to both sides."""
    outside = [polar(x, y, (OUTER + proud) * zoom, seam + half - half * k / 5) for k in range(11)]
    inside = [polar(x, y, (INNER - proud) * zoom, seam - half + half * k / 5) for k in range(11)]
    waist = half * 0.45
    middle = (INNER + OUTER) / 2 * zoom
    return [*outside, polar(x, y, middle, seam - waist), *inside, polar(x, y, middle, seam + waist)]


def _strip(title: str, description: str) -> Drawing:
    return Drawing(9.0, 5.2, title, description, scale=40, left=-4.5, top=-2.1)


@drawing("link-before")
def link_before() -> Drawing:
    """Ends flush, bearing on each other."""
    d = _strip(
        "Link before fusing",
        "The upper half of a jump ring, wire 0.8 mm, 4 mm inside. Its two ends meet flush at the top and press on each "
        "other.",
    )
    _ring(d, 0, 1.4)
    for side in (-1, 1):
        arrow(d, polar(0, 1.4, 3.35, 90 - side * 38), polar(0, 1.4, 3.35, 90 - side * 10))
    return d


@drawing("link-fused")
def link_fused() -> Drawing:
    """Fused from front and back, beam on the seam."""
    d = _strip(
        "Link fused",
        "The seam is fused and stands a little proud. The beam points at it, gas flows from the side.",
    )
    _ring(d, 0, 1.4)
    d.polygon(_lens(0, 1.4, 1, 9, 0.06), "hot")
    d.beam(0, -1.45, 0.4, 0.65)
    nozzle(d, 1.9, -1.5, 1.3, 0.45, 20)
    gas(d, 0.3, -1.15, 1.7, 18, 14)
    return d


@drawing("link-finished")
def link_finished() -> Drawing:
    """Round again, next link free."""
    d = _strip(
        "Link finished",
        "The seam is round like the rest of the wire. The neighboring link, seen edge-on, hangs free.",
    )
    _ring(d, 0, 1.4)
    d.polygon(_lens(0, 1.4, 1, 9), "hot")
    d.polygon([*cap(0, 2.35, WIRE, 0.4), (WIRE / 2, 3.4), (-WIRE / 2, 3.4)], "part")
    return d


@drawing("link-coil")
def link_coil() -> Drawing:
    """The coil on its mandrel and the saw cut along it."""
    d = Drawing(
        16.0,
        6.4,
        "Wind, then saw along the coil",
        "A close coil of 0.8 mm wire on a 4 mm mandrel. One saw cut along the coil makes a ring of each turn.",
        scale=40,
    )
    y, zoom = 3.4, 0.9
    d.rectangle(0.6, y - INNER * zoom, 14.2, 2 * INNER * zoom, "part tool")
    for k in range(11):
        x = 3.2 + k * WIRE * zoom
        lean = WIRE * zoom / 2
        points = [
            (x, y + OUTER * zoom),
            (x - 0.34 * lean, y + OUTER * zoom - 0.3),
            (x + lean - 0.36, y - OUTER * zoom + 0.3),
            (x + lean, y - OUTER * zoom),
            (x + lean + 0.3, y - OUTER * zoom + 0.25),
            (x + 0.36, y + OUTER * zoom - 0.25),
        ]
        d.polygon(points, "part")
    d.line([(2.6, y - 1.55), (12.4, y - 1.55)], "ghost")
    arrow(d, (12.8, y - 1.55), (14.6, y - 1.55), "ink heavy")
    leader(d, (11.0, y - 1.55), (12.2, 0.75), "saw along here", "middle")
    d.dimension((1.6, y - INNER * zoom), (1.6, y + INNER * zoom), "", 0)
    d.text(1.9, y + 0.2, "4 mm", "start")
    return d


@drawing("link-open")
def link_open() -> Drawing:
    """Twist sideways; don't pull apart."""
    d = Drawing(
        16.0,
        6.2,
        "Open and close sideways",
        "Left: seen from above, two pliers twist the ends past each other, one away and one toward you; the ring keeps "
        "its round. Right: ends pulled apart in the plane of the ring; it never closes round again.",
        scale=40,
    )
    x, y = 4.2, 3.0
    d.rectangle(x - 2.8, y - 0.4, 2.72, 0.8, "part")
    d.rectangle(x + 0.08, y - 0.75, 2.72, 0.8, "part")
    arrow(d, (x - 1.5, y + 0.7), (x - 1.5, y + 1.7), "ink heavy")
    arrow(d, (x + 1.5, y - 1.05), (x + 1.5, y - 2.05), "ink heavy")
    tick(d, x - 2.6, 0.9, good=True)
    x = 11.8
    _ring(d, x, y + 0.3, 0.95, 44)
    for side in (-1, 1):
        base = polar(x, y + 0.3, OUTER * 0.95 + 0.25, 90 - side * 40)
        arrow(d, base, (base[0] + side * 1.1, base[1] + 0.45), "ink heavy")
    tick(d, x - 3.5, 0.6, good=False)
    return d


@drawing("link-ends")
def link_ends() -> Drawing:
    """Flush, gap, step."""
    d = Drawing(
        16.0,
        5.6,
        "Look at the ends",
        "Three seams enlarged. Left: flush and bearing. Middle: a gap of 0.15 mm. Right: one end stands higher than "
        "the other.",
        scale=40,
    )
    for i, words in enumerate(("flush", "gap", "step")):
        x, y = 2.8 + i * 5.2, 2.0
        gap = 0.18 if words == "gap" else 0.0
        lift = 0.45 if words == "step" else 0.0
        d.rectangle(x - 2.1, y, 2.1 - gap, 1.9, "part")
        d.rectangle(x + gap, y - lift, 2.1 - gap, 1.9, "part")
        tick(d, x - 1.8, 0.9, good=i == 0)
        d.text(x, 5.2, words)
    return d


@drawing("link-sides")
def link_sides() -> Drawing:
    """The seam end-on: one side only, front and back, all around."""
    d = Drawing(
        16.0,
        6.0,
        "From front and back",
        "The wire cut at its seam. Left: 0.8 mm wire fused from the front only, half of it is joined. Middle: 0.8 mm "
        "from front and back, joined through. Right: 1.5 mm wire fused from four sides, a core is left open.",
        scale=40,
    )
    zoom = 2.6
    for i, words in enumerate(("front only", "front, back", "1.5 mm")):
        x, y = 2.8 + i * 5.2, 2.9
        radius = (0.4 if i < 2 else 0.75) * zoom
        d.circle(x, y, radius, "cut")
        deep = 0.42 * zoom
        angles: tuple[int, ...] = ((90,), (90, 270), (90, 270, 0, 180))[i]
        for angle in angles:
            half = 62 if i < 2 else 40
            rim = on_circle(x, y, radius, [angle - half + half * k / 8 for k in range(17)])
            foot = polar(x, y, radius - deep * 1.02, angle)
            d.polygon(
                [
                    *rim,
                    polar(x, y, radius * 0.55, angle + half * 0.55),
                    foot,
                    polar(x, y, radius * 0.55, angle - half * 0.55),
                ],
                "hot",
            )
        if i == 0:
            d.beam(x, y - radius, 0.8, 1.6)
        d.text(x, 5.75, words)
    return d


@drawing("link-chain")
def link_chain() -> Drawing:
    """Where the seam goes in a chain: away from its neighbors."""
    d = Drawing(
        16.0,
        6.2,
        "Keep the neighbors away",
        "Left: the seam sits halfway between the two neighbors, which hang to the sides. Right: the seam lies on a "
        "neighbor; the beam fuses both and the chain goes stiff.",
        scale=40,
    )
    zoom = 0.72
    for x, good in ((4.2, True), (11.8, False)):
        y = 3.3
        seam = 90.0 if good else 172.0
        for side in (-1, 1):
            cx = x + side * (INNER + OUTER) / 2 * zoom
            d.polygon(
                [
                    (cx + px, y + py)
                    for px, py in [*cap(side * 0.75, -0.29, 2.5, 0.0), *reversed(cap(side * 0.75, 0.29, 2.5, 0.0))]
                ],
                "part",
            )
        _ring(d, x, y, zoom, 0, seam)
        d.polygon(_lens(x, y, zoom, 10, 0.05, seam), "hot")
        px, py = polar(x, y, OUTER * zoom + 0.05, seam)
        d.beam(px, py, 0.4, 1.3 if good else 2.3, 0 if good else -0.6)
        tick(d, x + 2.9, 1.0, good)
    return d


@drawing("link-pull")
def link_pull() -> Drawing:
    """Pull test between two hooks, seam at the side."""
    d = Drawing(
        16.0,
        5.6,
        "Pull it with the seam at the side",
        "A link hangs between two round hooks of 2 mm wire. Its seam sits at the side, where the pull goes straight "
        "through it.",
        scale=40,
    )
    x, y = 8.0, 2.9
    _ring(d, x, y, 0.8, 0, 90)
    d.polygon(_lens(x, y, 0.8, 9, 0, 90), "hot")
    for side in (-1, 1):
        hook = x + side * (INNER * 0.8 - 0.75)
        d.circle(hook, y, 0.75, "part tool")
        arrow(d, (x + side * 2.7, y), (x + side * 4.4, y), "ink heavy")
    leader(d, (x, y - OUTER * 0.8), (x + 1.9, 0.6), "seam")
    return d


@drawing("link-faults")
def link_faults() -> Drawing:
    """Four faults of a link, the wire at its seam enlarged."""
    d = Drawing(
        16.0,
        5.0,
        "Faults of a link",
        "Four seams enlarged: half fused, a dark line is left at the back; step, one end stands higher; lump, too much "
        "wire; thin, the wire has a neck on both sides of the seam.",
        scale=40,
    )
    for i, words in enumerate(("half fused", "step", "lump", "thin")):
        x, y, thick = 2.1 + i * 3.93, 1.7, 1.2
        lift = 0.35 if words == "step" else 0.0
        if words == "thin":
            neck = [(x - 0.75 + 0.1 * k, y + 0.3 * math.sin(math.pi * k / 5) ** 2) for k in range(6)]
            right = [(2 * x - px, py) for px, py in reversed(neck)]
            top = [(x - 1.7, y), *neck, *right, (x + 1.7, y)]
            d.polygon([*top, *[(px, 2 * y + thick - py) for px, py in reversed(top)]], "part")
        else:
            d.rectangle(x - 1.7, y, 1.7, thick, "part")
            d.rectangle(x, y - lift, 1.7, thick, "part")
        if words == "half fused":
            d.polygon([*cap(x, y, 0.7, 0.08), (x + 0.1, y + 0.55), (x - 0.1, y + 0.55)], "hot")
            d.line([(x, y + 0.55), (x, y + thick)], "ink heavy")
        elif words == "step":
            d.polygon(
                [
                    (x - 0.4, y),
                    (x, y - 0.1),
                    (x + 0.35, y - lift),
                    (x + 0.3, y + thick - lift),
                    (x, y + thick - 0.15),
                    (x - 0.35, y + thick),
                ],
                "hot",
            )
        elif words == "lump":
            d.polygon([*cap(x, y, 1.5, 0.5), *reversed(cap(x, y + thick, 1.5, 0.5, -1))], "hot")
        else:
            d.rectangle(x - 0.25, y, 0.5, thick, "hot")
        d.text(x, 4.4, words)
    return d
