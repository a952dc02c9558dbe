"""Drawings of T and corner joints: an upright on a plate, two plates at an angle. Sections look along the seam."""

from __future__ import annotations

import math

from build_scripts.drawings import drawing
from build_scripts.drawings.bench import moved, on_circle, spark, tungsten
from build_scripts.drawings.sketch import arrow, bar, gas, leader, nozzle, open_air, polar, tick, turn
from calculators.drawing import Drawing, Point

UPRIGHT, PLATE, LEG = 0.8, 1.0, 0.6  # mm: wall of the upright, plate, leg of the fillet


def _upright(x: float, y: float, tall: float, thick: float = UPRIGHT) -> list[Point]:
    """The upright standing on ``y``; its upper end is broken off."""
    wave = [(x - thick / 2 + thick * i / 8, y - tall + 0.08 * math.sin(math.pi * i / 4)) for i in range(9)]
    return [(x - thick / 2, y), *wave, (x + thick / 2, y)]


def fillet(x: float, y: float, side: int, leg: float = LEG, bite: float = 0.18, hollow: float = 0.06) -> list[Point]:
    """A fillet in the corner at ``x, y`` (face of the upright, face of the plate), fused ``bite`` into both."""
    face = []
    for i in range(13):
        part = i / 12
        px, py = x + side * leg * part, y - leg * (1 - part)
        sag = hollow * math.sin(math.pi * part)
        face.append((px - side * sag, py + sag))
    return [
        *face,
        (x + side * leg * 0.55, y + bite * 0.8),
        (x + side * 0.02, y + bite),
        (x - side * bite, y + bite * 0.3),
        (x - side * bite * 0.8, y - leg * 0.5),
    ]


def _strip(title: str, description: str) -> Drawing:
    return Drawing(6.0, 3.4667, title, description, scale=60, left=-3.0, top=-2.1)


@drawing("t-before")
def t_before() -> Drawing:
    """The upright bears on the plate."""
    d = _strip(
        "T joint before fusing",
        "An upright 0.8 mm thick stands with a flat foot on a plate 1.0 mm thick. Nothing shows between them.",
    )
    d.rectangle(-2.6, 0, 5.2, PLATE, "cut")
    d.polygon(_upright(0, 0, 1.9), "cut")
    arrow(d, (0.85, -1.5), (0.85, -0.9))
    return d


@drawing("t-fused")
def t_fused() -> Drawing:
    """Fillets on both sides; the beam leans into the corner."""
    d = _strip(
        "T joint fused",
        "Fillets with legs of 0.6 mm are fused into both corners. The beam comes at about 45 degrees into the corner. "
        "Gas flows from the other side.",
    )
    d.rectangle(-2.6, 0, 5.2, PLATE, "cut")
    d.polygon(_upright(0, 0, 1.9), "cut")
    for side in (-1, 1):
        d.polygon(fillet(side * UPRIGHT / 2, 0, side), "hot")
    d.polygon([(-2.25, -1.75), (-2.8, -1.15), (-0.82, -0.12), (-0.55, -0.42)], "beam")
    nozzle(d, 1.9, -1.35, 1.0, 0.4, 38)
    gas(d, 0.85, -0.45, 1.3, 18, 40)
    return d


@drawing("t-finished")
def t_finished() -> Drawing:
    """Even, slightly hollow fillets."""
    d = _strip(
        "T joint finished",
        "Both fillets are even and slightly hollow. The upright stands square on the plate.",
    )
    d.rectangle(-2.6, 0, 5.2, PLATE, "cut")
    d.polygon(_upright(0, 0, 1.9), "cut")
    for side in (-1, 1):
        d.polygon(fillet(side * UPRIGHT / 2, 0, side, hollow=0.1), "hot")
    return d


@drawing("t-kinds")
def t_kinds() -> Drawing:
    """T, closed corner, open corner, miter."""
    d = Drawing(
        16.0,
        5.6,
        "T and three corners",
        "From left: a T with a fillet on both sides; a closed corner, one plate covers the edge of the other; an open "
        "corner, the inner edges touch and leave a groove outside; a miter, both edges filed to 45 degrees.",
        scale=40,
    )
    t = 0.9
    for i, words in enumerate(("T", "closed", "open", "miter")):
        x, y = 1.2 + i * 4.0, 3.6
        if i == 0:
            d.rectangle(x - 0.8, y, 3.0, t, "cut")
            d.rectangle(x + 0.25, y - 2.4, t, 2.4, "cut")
            for side in (-1, 1):
                d.polygon(fillet(x + 0.7 + side * t / 2, y, side, 0.55), "hot")
        elif i == 1:
            d.rectangle(x, y, 2.4, t, "cut")
            d.rectangle(x, y - 2.4, t, 2.4, "cut")
            d.polygon(
                [(x - 0.08, y - 0.25), (x - 0.08, y + 0.3), (x + 0.4, y + 0.12), (x + 0.55, y), (x + 0.3, y - 0.12)],
                "hot",
            )
            d.polygon(fillet(x + t, y, 1, 0.4), "hot")
        elif i == 2:
            d.rectangle(x + t, y, 2.0, t, "cut")
            d.rectangle(x, y - 2.4, t, 2.4, "cut")
            d.polygon(
                [
                    (x - 0.05, y),
                    *on_circle(x + t, y, t + 0.05, [180 + 6.0 * k for k in range(16)]),
                    (x + t + 0.2, y + 0.5),
                    (x + t + 0.12, y - 0.14),
                    (x + 0.4, y - 0.2),
                ],
                "hot",
            )
        else:
            d.polygon([(x, y + t), (x + 2.4, y + t), (x + 2.4, y), (x + t, y)], "cut")
            d.polygon([(x, y + t), (x, y - 2.4), (x + t, y - 2.4), (x + t, y)], "cut")
            d.polygon(
                [
                    (x - 0.08, y + t - 0.35),
                    (x - 0.08, y + t + 0.08),
                    (x + 0.35, y + t + 0.08),
                    (x + 0.36, y + t - 0.36),
                ],
                "hot",
            )
            d.polygon(fillet(x + t, y, 1, 0.35), "hot")
        d.text(x + 0.9, 5.3, words)
    return d


@drawing("t-foot")
def t_foot() -> Drawing:
    """The foot is filed to the face it stands on."""
    d = Drawing(
        16.0,
        6.0,
        "File the foot to the face",
        "Left: a flat foot on a flat plate, no light. Middle: a foot on a round shank, filed hollow to the same curve. "
        "Right: a round foot on a flat plate touches in one line only and rocks.",
        scale=40,
    )
    for i in range(3):
        x, y = 2.8 + i * 5.2, 3.4
        if i == 1:
            top = [polar(x, y + 3.2, 3.2, 130 - 80 * k / 20) for k in range(21)]
            d.polygon([*top, (x + 2.05, y + 1.7), (x - 2.05, y + 1.7)], "cut")
            foot = [polar(x, y + 3.2, 3.2, 90 + 12 - 24 * k / 10) for k in range(11)]
            d.polygon([*foot, (x + 0.66, y - 2.4), (x - 0.66, y - 2.4)], "cut")
        else:
            d.rectangle(x - 2.0, y, 4.0, 1.5, "cut")
            if i == 0:
                d.rectangle(x - 0.66, y - 2.4, 1.32, 2.4, "cut")
            else:
                foot = [
                    (x + 0.66 * math.cos(math.radians(a)), y - 0.45 + 0.45 * math.sin(math.radians(a)))
                    for a in range(180, -1, -15)
                ]
                d.polygon(moved([*foot, (x + 0.66, y - 2.4), (x - 0.66, y - 2.4)], (x, y), 0), "cut")
        tick(d, x - 1.7, 1.2, good=i < 2)
    for x, words in ((2.8, "flat"), (8.0, "hollow"), (13.2, "rocks")):
        d.text(x, 5.8, words)
    return d


@drawing("t-hold")
def t_hold() -> Drawing:
    """Upright held by tweezers, a square beside it."""
    d = Drawing(
        16.0,
        6.6,
        "Hold it square",
        "The plate lies on a flat block. Cross-lock tweezers on a stand hold the upright from above; a small square "
        "stands against it. Both corners stay open to the beam.",
        scale=40,
    )
    x, y = 6.4, 4.6
    d.rectangle(1.0, y + 1.0, 11.0, 0.9, "part tool")
    d.rectangle(x - 3.4, y, 6.8, 1.0, "cut")
    d.rectangle(x - 0.4, y - 3.0, 0.8, 3.0, "cut")
    for side in (-1, 1):
        d.polygon(
            [
                (x + side * 0.4, y - 2.2),
                (x + side * 0.4, y - 2.9),
                (x + side * 0.9, 0.2),
                (x + side * 1.3, 0.2),
                (x + side * 0.8, y - 2.4),
            ],
            "part tool",
        )
    cx = x - 0.45
    d.polygon(
        [
            (cx, y - 0.02),
            (cx, y - 1.9),
            (cx - 0.35, y - 1.9),
            (cx - 0.35, y - 0.4),
            (cx - 1.8, y - 0.4),
            (cx - 1.8, y - 0.02),
        ],
        "part tool",
    )
    leader(d, (x + 1.0, 1.0), (9.2, 1.2), "tweezers")
    leader(d, (cx - 1.5, y - 0.25), (2.6, 2.6), "square", "middle")
    return d


@drawing("t-aim")
def t_aim() -> Drawing:
    """Into the root, leaning to the heavier part."""
    d = Drawing(
        16.0,
        6.0,
        "Aim into the corner",
        "Left: the beam stands at 45 degrees on the root, a little more of it on the plate; both melt. Right: the beam "
        "hits the upright above the corner; it cuts a groove there and the plate stays cold.",
        scale=40,
    )
    zoom = 1.8
    for x, good in ((4.6, True), (12.4, False)):
        y = 4.2
        d.rectangle(x - 3.2, y, 5.6, 1.6, "cut")
        body = [(x + px * zoom, y + py * zoom) for px, py in _upright(0, 0, 1.9)]
        if not good:
            groove = [(x - 0.72 + 0.3 * math.sin(math.pi * k / 8), y - 0.9 - 0.12 * k + 0.5) for k in range(9)]
            body = [(x - 0.72, y), *groove, *body[1:]]
        d.polygon(body, "cut")
        if good:
            d.polygon([(x + px * zoom, y + py * zoom) for px, py in fillet(-UPRIGHT / 2, 0, -1, 0.5)], "hot")
            d.polygon([(x - 3.55, y - 2.5), (x - 2.75, y - 3.3), (x - 1.0, y - 0.72), (x - 1.5, y - 0.22)], "beam")
        else:
            d.polygon([*groove, *[(px + 0.22, py) for px, py in reversed(groove)]], "hot")
            d.polygon([(x - 3.5, y - 2.9), (x - 2.8, y - 3.7), (x - 0.55, y - 1.1), (x - 0.72, y - 0.62)], "beam")
        tick(d, x + 1.7, 1.4, good)
    d.line([(3.0, 4.2), *[polar(3.88, 4.2, 1.7, 180 - 45 * k / 8) for k in range(9)]], "dim thin")
    d.text(1.7, 3.55, "45°", "end")
    return d


@drawing("t-fillet")
def t_fillet() -> Drawing:
    """Leg and thickness of a fillet."""
    d = Drawing(
        8.0,
        4.2,
        "Size of a fillet",
        "A fillet in the corner, enlarged. Its legs are 0.6 mm. Its thickness, from the root straight to the face, is "
        "0.42 mm, seven tenths of the leg.",
        scale=80,
        left=-3.2,
        top=-2.8,
    )
    zoom = 2.6
    d.rectangle(-1.6, 0, 5.4, 1.1, "cut")
    d.rectangle(-1.6, -2.6, 1.6, 2.6, "cut")
    d.polygon([(px * zoom, py * zoom) for px, py in fillet(0, 0, 1, hollow=0.0)], "hot")
    d.dimension((0, 0), (LEG * zoom, 0), "", -50)
    d.text(LEG * zoom / 2, 0.98, "0.6 mm")
    d.dimension((0, 0), (LEG * zoom / 2, -LEG * zoom / 2), "", 0)
    leader(d, (LEG * zoom / 4, -LEG * zoom / 4), (1.5, -1.7), "0.42 mm")
    return d


@drawing("t-pull")
def t_pull() -> Drawing:
    """One side first pulls the upright over."""
    d = Drawing(
        16.0,
        5.8,
        "Sides in turn",
        "Left: all shots on one side have pulled the upright toward that side by 6 degrees. Right: shots on alternate "
        "sides, numbered 1 to 4, keep it square.",
        scale=40,
    )
    y = 4.0
    for x, good in ((4.0, False), (11.6, True)):
        d.rectangle(x - 3.0, y, 6.0, 1.3, "cut")
        body = [(x + px * 1.5, y + py * 1.5) for px, py in _upright(0, 0, 2.1)]
        d.polygon(body if good else moved(body, (x - 0.6, y), 6), "cut")
        if good:
            for side, words in ((-1, "1, 3"), (1, "2, 4")):
                d.polygon([(x + px * 1.5, y + py * 1.5) for px, py in fillet(side * 0.4, 0, side, 0.45)], "hot")
                d.text(x + side * 1.7, y - 0.35, words)
        else:
            d.polygon([(x + px * 1.5, y + py * 1.5) for px, py in fillet(-0.44, 0, -1, 0.45)], "hot")
            turn(d, x, y - 0.2, 3.2, 88, 104)
        tick(d, x + 2.4, 1.2, good)
    return d


@drawing("t-level")
def t_level() -> Drawing:
    """The wide beam smooths the fillet."""
    d = Drawing(
        8.0,
        4.2,
        "Leveling pass in a corner",
        "A beam 1.0 to 1.2 mm wide stands at 45 degrees on the fillet and melts its skin; the ripples flow into one "
        "even hollow.",
        scale=80,
        left=-4.4,
        top=-3.0,
    )
    zoom = 1.9
    d.rectangle(-4.0, 0, 6.8, 1.0, "cut")
    d.polygon([(px * zoom, py * zoom) for px, py in _upright(0, 0, 1.5)], "cut")
    d.polygon([(px * zoom, py * zoom) for px, py in fillet(0.4, 0, 1)], "hot")
    d.polygon([(px * zoom, py * zoom) for px, py in fillet(-0.4, 0, -1, hollow=0.12)], "hot")
    d.polygon([(-3.9, -2.5), (-2.7, -2.95), (-0.82, -1.05), (-1.75, -0.12)], "beam")
    leader(d, (-1.9, -1.3), (-3.3, -0.7), "1.2 mm", "end")
    return d


@drawing("t-arc")
def t_arc() -> Drawing:
    """Pulsed arc: the tip points into the root."""
    d = Drawing(
        16.0,
        6.2,
        "Pulsed arc in a corner",
        "The tungsten points at 45 degrees into the corner, nearer to the plate than to the upright. The return clamp "
        "bites the plate.",
        scale=40,
    )
    x, y = 6.8, 4.2
    d.rectangle(x - 3.8, y, 7.6, 1.2, "cut")
    d.polygon([(x + px * 1.4, y + py * 1.4) for px, py in _upright(0, 0, 2.0)], "cut")
    for side in (-1, 1):
        d.polygon([(x + px * 1.4, y + py * 1.4) for px, py in fillet(side * 0.4, 0, side, 0.45)], "hot")
    tungsten(d, x - 1.5, y - 0.75, 132, 2.2, 0.42)
    spark(d, (x - 1.48, y - 0.73), (x - 1.0, y - 0.32), 0.09)
    bar(d, x + 2.6, y - 0.22, 3.6, 0.4, 10)
    bar(d, x + 2.6, y + 1.42, 3.6, 0.4, -4)
    leader(d, (x - 2.4, y - 1.75), (2.6, 1.2), "tungsten", "middle")
    leader(d, (x + 5.0, y - 0.65), (12.6, 2.0), "return clamp", "middle")
    return d


@drawing("t-faults")
def t_faults() -> Drawing:
    """Four faults of a fillet in section."""
    d = Drawing(
        16.0,
        5.6,
        "Faults of a fillet",
        "Four sections: one side only; open root, the metal bridges the corner and leaves a hollow behind it; "
        "undercut, a groove in the upright above the fillet; cold, a bead lies in the corner and has not wetted.",
        scale=40,
    )
    y = 3.3
    for i, words in enumerate(("one side", "open root", "undercut", "cold")):
        x = 2.1 + i * 3.93
        d.rectangle(x - 1.7, y, 3.4, 1.1, "cut")
        half = 0.5
        if words == "undercut":
            bites = [(x - half + 0.24 * math.sin(math.pi * k / 8), y - 0.55 - 0.07 * k) for k in range(9)]
            d.polygon([(x - half, y), *bites, (x - half, y - 2.2), (x + half, y - 2.2), (x + half, y)], "cut")
        else:
            d.rectangle(x - half, y - 2.2, 2 * half, 2.2, "cut")
        sides = (-1,) if words == "one side" else (-1, 1)
        for side in sides:
            if words == "cold":
                d.circle(x + side * (half + 0.36), y - 0.36, 0.36, "hot")
            else:
                d.polygon(fillet(x + side * half, y, side, 0.6, 0.12), "hot")
                if words == "open root":
                    open_air(d, [(x + side * half, y), (x + side * half, y - 0.22), (x + side * (half + 0.22), y)])
        d.text(x, 5.2, words)
    return d


@drawing("t-bend-test")
def t_bend_test() -> Drawing:
    """The upright of the practice piece bent flat to one side, then the other."""
    d = Drawing(
        16.0,
        5.4,
        "Bend the practice piece",
        "The upright is bent over to 45 degrees to one side. A good fillet stays shut on the stretched side; the "
        "upright bends above.",
        scale=40,
    )
    x, y = 7.0, 4.0
    d.rectangle(x - 4.0, y, 8.0, 1.0, "cut")
    outer = [(x - 0.4, y), (x - 0.4, y - 0.7)]
    inner = [(x + 0.4, y), (x + 0.4, y - 0.7)]
    for k in range(11):
        angle = 45 * k / 10
        a = math.radians(angle)
        px, py = x + 1.6 - 1.6 * math.cos(a), y - 0.7 - 1.6 * math.sin(a)
        outer.append((px - 0.4 * math.cos(a), py - 0.4 * math.sin(a)))
        inner.append((px + 0.4 * math.cos(a), py + 0.4 * math.sin(a)))
    a = math.radians(45)
    for line in (outer, inner):
        px, py = line[-1]
        line.append((px + 1.9 * math.sin(a), py - 1.9 * math.cos(a)))
    d.polygon([*outer, *reversed(inner)], "cut")
    for side in (-1, 1):
        d.polygon(fillet(x + side * 0.4, y, side, 0.6), "hot")
    d.line([(x, y - 0.7), (x, y - 3.7)], "ghost")
    turn(d, x, y - 0.7, 2.9, 88, 55)
    d.text(x + 2.7, 2.0, "45°", "start")
    return d
