"""Drawings of pit and spot fill: a hole opened to clean metal and filled from its bottom. Sections, face up."""

from __future__ import annotations

import math

from build_scripts.drawings import drawing
from build_scripts.drawings.bench import cap, on_circle, spark, tungsten
from build_scripts.drawings.sketch import arrow, bar, gas, leader, nozzle, open_air, smooth, tick
from calculators.drawing import Drawing, Point

MOUTH, DEPTH, FLOOR = 0.8, 0.6, 0.5  # mm, the opened pit of the guide
WALL = 1.5


def pit(
    x: float, y: float, zoom: float = 1.0, mouth: float = MOUTH, deep: float = DEPTH, floor: float = FLOOR
) -> list[Point]:
    """The opened pit from its left rim down and up to the right rim."""
    return [
        (x - mouth / 2 * zoom, y),
        (x - floor / 2 * zoom, y + deep * 0.88 * zoom),
        (x - floor * 0.36 * zoom, y + deep * zoom),
        (x + floor * 0.36 * zoom, y + deep * zoom),
        (x + floor / 2 * zoom, y + deep * 0.88 * zoom),
        (x + mouth / 2 * zoom, y),
    ]


def plate(d: Drawing, x: float, y: float, half: float, thick: float, hole: list[Point] | None = None) -> None:
    """A plate in section with a hole in its upper face."""
    d.polygon([(x - half, y), *(hole or []), (x + half, y), (x + half, y + thick), (x - half, y + thick)], "cut")


def bowl(x: float, y: float, across: float, deep: float) -> list[Point]:
    """A round-bottomed hole from left rim to right rim."""
    return list(cap(x, y, across, deep, -1))


def filled(x: float, y: float, zoom: float, proud: float) -> list[Point]:
    """The fused fill with a little of the walls, ``proud`` above the face."""
    wide = (MOUTH + 0.3) * zoom
    top = cap(x, y, wide, proud * zoom) if proud else [(x - wide / 2, y), (x + wide / 2, y)]
    low = y + (DEPTH + 0.12) * zoom
    return [
        *top,
        (x + 0.36 * zoom, low - 0.2 * zoom),
        (x + 0.2 * zoom, low),
        (x - 0.2 * zoom, low),
        (x - 0.36 * zoom, low - 0.2 * zoom),
    ]


def _strip(title: str, description: str) -> Drawing:
    return Drawing(5.0, 2.889, title, description, scale=72, left=-2.5, top=-1.2)


@drawing("pit-before")
def pit_before() -> Drawing:
    """Opened, clean, wire beside it."""
    d = _strip(
        "Pit before filling",
        "A pit opened to clean metal, 0.8 mm wide at the mouth and 0.6 mm deep, wider at the mouth than at the floor. "
        "A wire 0.35 mm thick reaches down to its bottom.",
    )
    plate(d, 0, 0, 2.2, WALL, pit(0, 0))
    bar(d, 0.05, 0.42, 1.9, 0.3, 48, "part")
    return d


@drawing("pit-fused")
def pit_fused() -> Drawing:
    """Filled from the bottom, proud."""
    d = _strip(
        "Pit filled",
        "The pit is filled from the bottom and the fill stands proud. The beam points straight down, gas flows from "
        "the side.",
    )
    plate(d, 0, 0, 2.2, WALL, pit(0, 0))
    d.polygon(filled(0, 0, 1, 0.2), "hot")
    d.beam(0, -0.19, 0.4, 1.0)
    nozzle(d, 1.3, -0.8, 0.9, 0.34, 34)
    gas(d, 0.3, -0.12, 1.1, 18, 34)
    return d


@drawing("pit-finished")
def pit_finished() -> Drawing:
    """Flush."""
    d = _strip(
        "Pit finished",
        "The fill is filed and burnished flush. A dashed line shows what stood proud.",
    )
    plate(d, 0, 0, 2.2, WALL, pit(0, 0))
    d.polygon(filled(0, 0, 1, 0.0), "hot")
    d.line(cap(0, 0, 1.1, 0.2), "ghost")
    return d


@drawing("pit-iceberg")
def pit_iceberg() -> Drawing:
    """What you see and what is under it."""
    d = Drawing(
        16.0,
        5.8,
        "Small mouth, big hole",
        "Left: a pore whose mouth is 0.1 mm wide opens into a hollow 0.6 mm wide. Middle: welded over, the gas inside "
        "stays and blows through the skin. Right: opened until no undercut is left.",
        scale=40,
    )
    zoom, y = 2.6, 1.9
    for i, words in enumerate(("found", "welded over", "opened")):
        x = 2.8 + i * 5.2
        cave: list[Point] = [
            (x - 0.13, y),
            (x - 0.22, y + 0.4),
            (x - 0.8, y + 0.75),
            (x - 0.75, y + 1.45),
            (x + 0.1, y + 1.7),
            (x + 0.85, y + 1.3),
            (x + 0.7, y + 0.7),
            (x + 0.2, y + 0.4),
            (x + 0.13, y),
        ]
        if i < 2:
            plate(d, x, y, 2.1, 2.6, cave)
            if i == 1:
                d.polygon([*cap(x, y, 1.3, 0.16), (x + 0.3, y + 0.3), (x - 0.3, y + 0.3)], "hot")
                arrow(d, (x, y + 1.2), (x, y + 0.45))
        else:
            plate(d, x, y, 2.1, 2.6, pit(x, y, zoom, 0.8, 0.7, 0.62))
            d.line(cave, "ghost")
        d.text(x, 5.4, words)
    return d


@drawing("pit-shapes")
def pit_shapes() -> Drawing:
    """Bowl, taper, and the straight hole that is too deep."""
    d = Drawing(
        16.0,
        6.2,
        "Shape of the opened pit",
        "Left: a bowl cut with a ball bur. Middle: a taper, wider at the mouth than at the floor. Right: a straight "
        "hole twice as deep as it is wide; the beam can't reach its walls.",
        scale=40,
    )
    zoom, y = 2.6, 2.3
    for i, words in enumerate(("bowl", "taper", "too straight")):
        x = 2.8 + i * 5.2
        if i == 0:
            hole = bowl(x, y, 0.8 * zoom, 0.45 * zoom)
        elif i == 1:
            hole = pit(x, y, zoom)
        else:
            hole = [(x - 0.5, y), (x - 0.5, y + 2.1), (x + 0.5, y + 2.1), (x + 0.5, y)]
        plate(d, x, y, 2.1, 2.7, hole)
        tick(d, x - 1.6, 1.2, good=i < 2)
        d.text(x, 5.75, words)
        if i < 2:
            d.dimension((hole[0][0], y), (hole[-1][0], y), "", 14)
            d.text(x, y - 0.75, "0.8 mm" if i else "0.8")
    d.beam(13.2, 2.6, 0.9, 2.4)
    return d


@drawing("pit-layers")
def pit_layers() -> Drawing:
    """Bites of wire from the bottom up."""
    d = Drawing(
        16.0,
        6.0,
        "From the bottom, in bites",
        "Three stages. 1: the bottom alone is melted until it shines. 2: the first bite of wire wets floor and walls. "
        "3: the last bite stands proud.",
        scale=40,
    )
    zoom, y = 2.6, 2.7
    for i in range(3):
        x = 2.8 + i * 5.2
        plate(d, x, y, 2.1, 2.7, pit(x, y, zoom))
        if i == 0:
            d.polygon(
                [
                    (x - 0.6, y + 1.4),
                    (x + 0.6, y + 1.4),
                    (x + 0.65, y + 1.65),
                    (x + 0.3, y + 1.85),
                    (x - 0.3, y + 1.85),
                    (x - 0.65, y + 1.65),
                ],
                "hot",
            )
            d.beam(x, y + 1.4, 0.8, 3.4)
        elif i == 1:
            d.polygon(
                [
                    (x - 0.98, y + 0.55),
                    (x - 0.4, y + 0.8),
                    (x + 0.4, y + 0.8),
                    (x + 0.98, y + 0.55),
                    (x + 0.75, y + 1.6),
                    (x + 0.4, y + 1.85),
                    (x - 0.4, y + 1.85),
                    (x - 0.75, y + 1.6),
                ],
                "hot",
            )
            bar(d, x + 0.35, y + 0.7, 3.2, 0.5, 56, "part")
        else:
            d.polygon(filled(x, y, zoom, 0.2), "hot")
            d.line(bowl(x, y + 0.25, 2.0, 0.6), "dim thin")
        d.text(x - 1.9, 1.0, str(i + 1))
    return d


@drawing("pit-bridge")
def pit_bridge() -> Drawing:
    """Aim at the bottom, not at the rim."""
    d = Drawing(
        16.0,
        6.0,
        "Aim at the bottom",
        "Left: the beam goes to the floor of the pit and the fill grows upward. Right: the beam melts the rim; the "
        "metal bridges the mouth and locks a hollow in.",
        scale=40,
    )
    zoom, y = 2.8, 3.0
    for x, good in ((4.2, True), (11.8, False)):
        plate(d, x, y, 2.8, 2.6, pit(x, y, zoom))
        if good:
            d.polygon(
                [
                    (x - 0.85, y + 1.0),
                    (x, y + 1.2),
                    (x + 0.85, y + 1.0),
                    (x + 0.8, y + 1.7),
                    (x + 0.4, y + 1.95),
                    (x - 0.4, y + 1.95),
                    (x - 0.8, y + 1.7),
                ],
                "hot",
            )
            d.beam(x, y + 1.15, 0.9, 3.6)
        else:
            d.polygon([*cap(x, y, 3.0, 0.3), (x + 1.0, y + 0.45), (x, y + 0.3), (x - 1.0, y + 0.45)], "hot")
            d.beam(x + 1.0, y - 0.2, 0.9, 2.2)
        tick(d, x - 2.2, 1.4, good)
    leader(d, (11.8, 4.1), (14.9, 2.2), "hollow", "middle")
    return d


@drawing("pit-field")
def pit_field() -> Drawing:
    """A few single pores against a sponge."""
    d = Drawing(
        16.0,
        6.2,
        "Single pores or a sponge",
        "Two faces from above, 4 by 3 mm. Left: three single pores, each can be opened and filled. Right: dozens of "
        "fine pores over the whole face; cut the place out or cast the piece again.",
        scale=40,
    )
    for x, many in ((0.9, False), (8.9, True)):
        d.rectangle(x, 0.6, 6.2, 4.65, "part")
        if not many:
            for px, py, radius in ((1.4, 1.3, 0.16), (3.9, 2.9, 0.22), (4.9, 1.1, 0.12)):
                open_air(d, on_circle(x + px, 0.6 + py, radius, [20.0 * k for k in range(18)]))
                d.circle(x + px, 0.6 + py, 0.6, "ghost")
        else:
            for k in range(46):
                px = 0.35 + (k * 0.618034 % 1) * 5.5
                py = 0.35 + (k * k * 0.354878 % 1) * 3.95
                open_air(d, on_circle(x + px, 0.6 + py, 0.05 + 0.05 * (k % 3), [40.0 * j for j in range(9)]))
        d.text(x + 3.1, 5.95, "cut it out" if many else "fill")
    return d


@drawing("pit-level")
def pit_level() -> Drawing:
    """Wide beam over the fill."""
    d = Drawing(
        8.0,
        3.8,
        "Leveling pass on a spot",
        "A beam 1.2 mm wide melts the skin of the fill and of the metal around it, so that no rim is left.",
        scale=80,
        left=-4.0,
        top=-2.1,
    )
    plate(d, 0, 0, 3.5, WALL, pit(0, 0))
    d.polygon(filled(0, 0, 1, 0.0), "soft")
    d.polygon([*cap(0, 0, 1.5, 0.06), *reversed(bowl(0, 0, 1.5, 0.14))], "hot")
    d.line(cap(0, 0, 1.1, 0.2), "ghost")
    d.beam(0, -0.07, 1.2, 1.9)
    d.dimension((-0.6, -0.07), (0.6, -0.07), "", 16)
    leader(d, (0.6, -0.28), (1.6, -1.0), "1.2 mm")
    return d


@drawing("pit-arc")
def pit_arc() -> Drawing:
    """Pulsed arc in a pit: a slim tip, wire in the pit."""
    d = Drawing(
        16.0,
        6.2,
        "Pulsed arc in a pit",
        "A slim tungsten points to the middle of the pit, in which the end of a wire stands. The return clamp holds "
        "the piece close by.",
        scale=40,
    )
    x, y, zoom = 7.0, 3.3, 1.9
    plate(d, x, y, 4.2, 2.2, pit(x, y, zoom))
    bar(d, x - 0.1, y + 0.9, 4.2, 0.42, 152, "part")
    tungsten(d, x + 0.2, y + 0.05, 78, 3.0, 0.4)
    spark(d, (x + 0.2, y + 0.08), (x + 0.05, y + 0.75), 0.08)
    bar(d, x + 3.2, y - 0.22, 3.6, 0.4, 10)
    bar(d, x + 3.2, y + 2.42, 3.6, 0.4, -4)
    leader(d, (x + 0.75, 1.2), (9.3, 0.9), "tungsten")
    leader(d, (x - 2.8, y - 0.5), (3.0, 1.4), "wire", "middle")
    leader(d, (x + 5.4, y - 0.65), (13.0, 1.9), "return clamp", "middle")
    return d


@drawing("pit-faults")
def pit_faults() -> Drawing:
    """Four faults of a fill in section."""
    d = Drawing(
        16.0,
        5.8,
        "Faults of a fill",
        "Four sections: hollow below a bridged mouth; bead that sits in the pit without wetting it; sunken fill; a new "
        "pore opened beside the fill by the heat.",
        scale=40,
    )
    zoom, y = 1.7, 2.0
    for i, words in enumerate(("hollow", "not wetted", "sunken", "next pore")):
        x = 2.1 + i * 3.93
        plate(d, x, y, 1.65, 2.4, pit(x, y, zoom))
        if words == "hollow":
            d.polygon([*cap(x, y, 1.8, 0.2), (x + 0.55, y + 0.3), (x - 0.55, y + 0.3)], "hot")
        elif words == "not wetted":
            d.circle(x, y + 0.25, 0.52, "hot")
        elif words == "sunken":
            d.polygon(
                [(x - 0.68, y), *bowl(x, y + 0.02, 1.3, 0.4), (x + 0.68, y), (x + 0.5, y + 1.15), (x - 0.5, y + 1.15)],
                "hot",
            )
        else:
            d.polygon(filled(x, y, zoom, 0.08), "hot")
            smooth(
                d,
                [(x + 1.2, y), (x + 1.12, y + 0.35), (x + 1.3, y + 0.5), (x + 1.42, y + 0.3), (x + 1.3, y)],
                "ink heavy",
                True,
            )
        d.text(x, 5.3, words)
    return d


@drawing("pit-burs")
def pit_burs() -> Drawing:
    """A ball bur opening the pore, at a slant."""
    d = Drawing(
        16.0,
        6.0,
        "Open it with a ball bur",
        "A ball bur 0.8 mm across goes in at a slant, turning slowly, and cuts the pore into a bowl. The loupe shows "
        "one bright color when it is done.",
        scale=40,
    )
    zoom, x, y = 3.0, 6.6, 3.2
    plate(d, x, y, 4.6, 2.4, bowl(x, y, 0.82 * zoom, 0.42 * zoom))
    radius = 0.4 * zoom
    d.circle(x, y + 0.05, radius, "part tool")
    for k in range(-2, 3):
        lean = math.radians(62)
        ox = k * 0.42
        d.line(
            [
                (x + ox * 0.5 - 0.9 * math.cos(lean), y + 0.05 + 0.9 * math.sin(lean) * (1 - abs(k) * 0.18)),
                (x + ox * 0.9 + 0.8 * math.cos(lean), y + 0.05 - 0.8 * math.sin(lean) * (1 - abs(k) * 0.1)),
            ],
            "dim thin",
        )
    bar(d, x + 0.55, y - 1.0, 3.2, 0.7, 62)
    d.dimension((x - radius, y + 1.75), (x + radius, y + 1.75), "", 0)
    leader(d, (x + radius, y + 1.75), (x + 2.2, y + 1.95), "0.8 mm")
    return d
