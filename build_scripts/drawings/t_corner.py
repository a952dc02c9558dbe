"""Drawings of T and corner joints: an upright on a plate, two plates at an angle. Sections look along the seam."""

from __future__ import annotations

import math

from build_scripts.drawings import drawing
from build_scripts.drawings.bench import moved, on_circle
from build_scripts.drawings.sketch import arrow, gas, leader, nozzle, polar, tick
from calculators.drawing import Drawing, Point

UPRIGHT, PLATE, LEG = 0.8, 1.0, 0.6  # mm: wall of the upright, plate, leg of the fillet


def upright_section(x: float, y: float, tall: float, thick: float = UPRIGHT) -> list[Point]:
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
    d.polygon(upright_section(0, 0, 1.9), "cut")
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
    d.polygon(upright_section(0, 0, 1.9), "cut")
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
    d.polygon(upright_section(0, 0, 1.9), "cut")
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
        body = [(x + px * zoom, y + py * zoom) for px, py in upright_section(0, 0, 1.9)]
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
