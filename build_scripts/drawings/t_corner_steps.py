"""Drawings of single steps at T and corner joints: fillet, pull, level, arc, faults, bend test."""

from __future__ import annotations

import math

from build_scripts.drawings import drawing
from build_scripts.drawings.bench import moved, spark, tungsten
from build_scripts.drawings.sketch import bar, leader, open_air, tick, turn
from build_scripts.drawings.t_corner import LEG, fillet, upright_section
from calculators.drawing import Drawing


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
        body = [(x + px * 1.5, y + py * 1.5) for px, py in upright_section(0, 0, 2.1)]
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
    d.polygon([(px * zoom, py * zoom) for px, py in upright_section(0, 0, 1.5)], "cut")
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
    d.polygon([(x + px * 1.4, y + py * 1.4) for px, py in upright_section(0, 0, 2.0)], "cut")
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
