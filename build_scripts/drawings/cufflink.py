"""Drawings of the cufflink: post through the plate, hinged back at its other end."""

from __future__ import annotations

from build_scripts.drawings import drawing
from build_scripts.drawings.bench import cap, on_circle
from build_scripts.drawings.sketch import arrow, gas, leader, nozzle, tick, turn
from calculators.drawing import Drawing, Point

POST, PLATE, LONG = 2.0, 1.2, 16.0  # mm: post, plate of the front, from plate to back
TENON = 1.4  # mm, the end turned down to go through the plate


def _tenon(x: float, y: float, through: float, down: float, tenon: float = TENON) -> list[Point]:
    """The post below a plate whose front is at ``y``; its tenon stands ``through`` proud of the front."""
    t, p = tenon / 2, POST / 2
    return [
        (x - t, y - through),
        (x + t, y - through),
        (x + t, y + PLATE),
        (x + p, y + PLATE),
        (x + p, y + PLATE + down),
        (x - p, y + PLATE + down),
        (x - p, y + PLATE),
        (x - t, y + PLATE),
    ]


def _plate(d: Drawing, x: float, y: float, half: float, hole: float = TENON) -> None:
    for side in (-1, 1):
        edge = [(x + side * (hole / 2 + 0.25), y), (x + side * hole / 2, y + 0.25)]
        d.polygon(
            [*edge, (x + side * hole / 2, y + PLATE), (x + side * half, y + PLATE), (x + side * half, y)],
            "cut",
        )


def _strip(title: str, description: str) -> Drawing:
    return Drawing(9.0, 5.2, title, description, scale=40, left=-4.5, top=-2.0)


def _fused(crown: float, wide: float = 2.2, deep: float = 0.7) -> list[Point]:
    top = cap(0, 0, wide, crown) if crown else [(-wide / 2, 0), (wide / 2, 0)]
    right = [(0.95, 0.3), (0.8, deep), (0.52, deep), (0.3, 0.4)]
    return [*top, *right, *[(-px, py) for px, py in reversed(right)]]


@drawing("cuff-before")
def cuff_before() -> Drawing:
    """Tenon through the plate, shoulder against the back."""
    d = _strip(
        "Cufflink post before fusing",
        "A 2.0 mm post has an end turned down to 1.4 mm. The end goes through a plate of 1.2 mm and stands 1.0 mm "
        "proud at the front; the shoulder bears on the back.",
    )
    _plate(d, 0, 0, 3.9)
    d.polygon(_tenon(0, 0, 1.0, 1.9), "cut")
    arrow(d, (1.6, 2.9), (1.6, 2.0))
    return d


@drawing("cuff-fused")
def cuff_fused() -> Drawing:
    """Button at the front, fused around the tenon."""
    d = _strip(
        "Cufflink post fused",
        "The end of the post has melted to a button that is fused 0.7 mm deep around it. The beam points at the edge "
        "of the button; gas flows from the side.",
    )
    _plate(d, 0, 0, 3.9)
    d.polygon(_tenon(0, 0, 0.0, 1.9), "cut")
    d.polygon(_fused(0.5), "hot")
    d.polygon([(-1.9, -2.0), (-0.5, -2.0), (-0.62, -0.32), (-1.1, -0.05)], "beam")
    nozzle(d, 2.2, -1.3, 1.2, 0.5, 30)
    gas(d, 0.5, -0.3, 1.9, 18, 30)
    return d


@drawing("cuff-finished")
def cuff_finished() -> Drawing:
    """Front flush, shoulder tight."""
    d = _strip(
        "Cufflink post finished",
        "The front is flush; a dashed line shows what was filed away. The shoulder sits tight on the back.",
    )
    _plate(d, 0, 0, 3.9)
    d.polygon(_tenon(0, 0, 0.0, 1.9), "cut")
    d.polygon(_fused(0.0), "hot")
    d.line(cap(0, 0, 2.2, 0.5), "ghost")
    return d


@drawing("cuff-parts")
def cuff_parts() -> Drawing:
    """The whole link to scale."""
    d = Drawing(
        24.0,
        11.0,
        "Parts of a cufflink, to scale",
        "Side view to scale: front plate 9 mm high and 1.2 mm thick, post 2.0 mm thick and 16 mm long, swivel back 8 "
        "mm long on a pin at the end of the post.",
        scale=26.67,
        left=-3.0,
        top=-5.4,
    )
    d.rectangle(0, -4.5, PLATE, 9.0, "part")
    d.rectangle(PLATE, -POST / 2, LONG - 1.5, POST, "part")
    fork = PLATE + LONG - 1.5
    d.polygon(
        [
            (fork, -1.2),
            *[(px, py) for px, py in on_circle(fork + 1.5, 0, 1.2, [90 - 15.0 * k for k in range(13)])],
            (fork, 1.2),
        ],
        "part",
    )
    d.polygon([*[(fork + 1.5 + px, py) for px, py in _capsule(3.9, 1.05)]], "part")
    d.circle(fork + 1.5, 0, 0.45, "part tool")
    turn(d, fork + 1.5, 0, 3.2, 80, 20)
    d.dimension((PLATE, 1.0), (PLATE + LONG, 1.0), "", -70)
    d.text(PLATE + LONG / 2, 4.7, "16 mm")
    d.dimension((7.0, -1.0), (7.0, 1.0), "", 0)
    leader(d, (7.0, 0), (8.4, -2.4), "2.0 mm")
    leader(d, (0.6, -4.0), (2.6, -4.6), "plate")
    leader(d, (fork + 1.7, -3.0), (fork - 0.5, -4.2), "back", "end")
    return d


def _capsule(half: float, across: float) -> list[Point]:
    """An upright bar with round ends, ``half`` long to both sides."""
    top = cap(0, -half + across, 2 * across, across)
    return [*top, *reversed(cap(0, half - across, 2 * across, across, -1))]


@drawing("cuff-shoulder")
def cuff_shoulder() -> Drawing:
    """The shoulder takes the lever: with it and without."""
    d = Drawing(
        16.0,
        6.4,
        "A shoulder takes the load",
        "Left: the shoulder bears on the plate when the post is pushed sideways. Right: the shoulder stands off by 0.3 "
        "mm; the thin end alone takes the load and bends.",
        scale=40,
    )
    for x, good in ((4.0, True), (11.8, False)):
        y, zoom = 1.4, 1.25
        off = 0.0 if good else 0.35
        for side in (-1, 1):
            d.polygon(
                [
                    (x + side * TENON / 2 * zoom, y),
                    (x + side * TENON / 2 * zoom, y + PLATE * zoom),
                    (x + side * 3.3, y + PLATE * zoom),
                    (x + side * 3.3, y),
                ],
                "cut",
            )
        body = [(x + px * zoom, y + (py + (off if py > 1.0 else 0)) * zoom) for px, py in _tenon(0, 0, 0, 1.8)]
        d.polygon(body, "cut")
        d.polygon([(x + px * zoom, y + py * zoom) for px, py in _fused(0.0)], "hot")
        arrow(d, (x + 3.0, y + 3.0), (x + 1.5, y + 3.0), "ink heavy")
        tick(d, x - 2.6, y + 3.2, good)
    leader(d, (13.0, 3.2), (14.2, 5.6), "gap", "middle")
    return d


@drawing("cuff-hold")
def cuff_hold() -> Drawing:
    """Front up, the hinge wrapped and away from the heat."""
    d = Drawing(
        16.0,
        7.2,
        "Front up, hinge down",
        "A split block of copper grips the post under the plate and takes the heat. The hinged back hangs below, far "
        "from the spot, wrapped in wet paper.",
        scale=40,
    )
    x, y, zoom = 7.0, 1.5, 0.62
    d.rectangle(x - 4.5, y, 9.0, PLATE * zoom, "part")
    d.polygon([*cap(x, y, 2.2 * zoom, 0.5 * zoom)], "hot")
    low = y + PLATE * zoom
    d.rectangle(x - POST / 2 * zoom, low, POST * zoom, 4.3, "part")
    for side in (-1, 1):
        d.polygon(
            [
                (x + side * POST / 2 * zoom, low + 0.25),
                (x + side * 3.2, low + 0.25),
                (x + side * 3.2, low + 1.7),
                (x + side * POST / 2 * zoom, low + 1.7),
            ],
            "part tool",
        )
    d.polygon([(x - 2.1 + px, low + 4.0 + py) for px, py in ((0, 0), (4.2, 0), (4.2, 0.9), (0, 0.9))], "part")
    d.polygon([(x - 2.5, low + 2.9), (x + 2.5, low + 2.9), (x + 2.5, 7.0), (x - 2.5, 7.0)], "ghost")
    leader(d, (x + 2.6, low + 1.0), (11.6, 3.3), "copper")
    leader(d, (x + 2.5, low + 4.0), (11.6, 6.3), "wet paper")
    return d
