"""Drawings of the plug: a post through a plate. Sections: front face of the plate above, the post hangs below."""

from __future__ import annotations

from build_scripts.drawings import drawing
from build_scripts.drawings.bench import cap, moved, wire
from build_scripts.drawings.sketch import arrow, gas, leader, nozzle, tick, turn
from calculators.drawing import Drawing, Point

POST, PLATE, STUB = 0.8, 1.0, 0.8  # mm; the stud of the guide
SINK = 0.2  # depth of the countersink at the front, mm
DEEP = 0.5  # how far the fused ring reaches down beside the post, mm


def plate_section(
    d: Drawing, x: float, y: float, half: float, hole: float = POST, sink: float = SINK, thick: float = PLATE
) -> None:
    """The plate on both sides of its hole, front face at ``y``."""
    for side in (-1, 1):
        edge = [(x + side * (hole / 2 + sink), y), (x + side * hole / 2, y + sink)]
        d.polygon(
            [*edge, (x + side * hole / 2, y + thick), (x + side * half, y + thick), (x + side * half, y)],
            "cut",
        )


def fused_metal(x: float, y: float, crown: float, deep: float = DEEP, width: float = 1.5) -> list[Point]:
    """The fused plug: a rounded top ``crown`` above the face, a ring ``deep`` down around the post."""
    top = cap(x, y, width, crown) if crown else [(x - width / 2, y), (x + width / 2, y)]
    foot = [(x + width / 2 - 0.12, y + deep * 0.55), (x + POST / 2 + 0.1, y + deep), (x + POST / 2 - 0.16, y + deep)]
    middle = [(x + 0.12, y + deep * 0.5), (x - 0.12, y + deep * 0.5)]
    other = [(2 * x - px, py) for px, py in reversed(foot)]
    return [*top, *foot, *middle, *other]


def _strip(title: str, description: str) -> Drawing:
    return Drawing(6.0, 3.4667, title, description, scale=60, left=-3.0, top=-1.45)


@drawing("plug-before")
def plug_before() -> Drawing:
    """The post through its hole, stub proud of the front."""
    d = _strip(
        "Plug before fusing",
        "A 0.8 mm post stands in a hole of the same size through a 1.0 mm plate. The hole is countersunk a little at "
        "the front. A stub 0.8 mm long stands proud of the front; the rest of the post hangs below.",
    )
    plate_section(d, 0, 0, 2.6)
    wire(d, 0, -STUB, 1.85, POST)
    arrow(d, (0.85, 1.75), (0.85, 1.25))
    return d


@drawing("plug-fused")
def plug_fused() -> Drawing:
    """The stub melted down into a button, fused deep around the post."""
    d = _strip(
        "Plug fused",
        "The stub has melted down into a low button that covers the hole. The fused ring reaches 0.5 mm down between "
        "post and plate. The beam points at the edge of the button; gas flows from the side.",
    )
    wire(d, 0, 0, 1.85, POST)
    plate_section(d, 0, 0, 2.6)
    d.polygon(fused_metal(0, 0, 0.3), "hot")
    d.polygon([(-1.25, -1.45), (-0.25, -1.45), (-0.4, -0.16), (-0.86, 0.0)], "beam")
    nozzle(d, 1.5, -0.95, 1.2, 0.4, 32)
    gas(d, 0.3, -0.2, 1.3, 18, 32)
    return d


@drawing("plug-finished")
def plug_finished() -> Drawing:
    """Flush at the front."""
    d = _strip(
        "Plug finished",
        "The button is filed flush with the front; a dashed line shows what was taken away. Below, the post stands "
        "square to the plate.",
    )
    wire(d, 0, 0, 1.85, POST)
    plate_section(d, 0, 0, 2.6)
    d.polygon(fused_metal(0, 0, 0.0), "hot")
    d.line(cap(0, 0, 1.5, 0.3), "ghost")
    d.line([(0.4, 1.2), (0.6, 1.2), (0.6, 1.0)], "dim")
    return d


@drawing("plug-choice")
def plug_choice() -> Drawing:
    """Three ways to set a post: through, into a blind hole, on the face."""
    d = Drawing(
        16.0,
        6.4,
        "Three ways to set a post",
        "Left: plug, the post goes through the plate and is fused from the front. Middle: blind hole, the post sits in "
        "a pit and is fused around its foot, for plates with a stone on the front. Right: the post only stands on the "
        "face; it is fused around the rim.",
        scale=40,
    )
    zoom = 1.7
    for i, words in enumerate(("plug", "blind hole", "on the face")):
        x, y = 2.8 + i * 5.2, 2.0
        half, plate, post = 2.0, PLATE * zoom, POST * zoom
        if i == 0:
            for side in (-1, 1):
                d.rectangle(x + (post / 2 if side > 0 else -half), y, half - post / 2, plate, "cut")
            wire(d, x, y, 5.1, post)
            d.polygon([(px, py) for px, py in scaled(fused_metal(0, 0, 0.12), x, y, zoom)], "hot")
        else:
            sunk = 0.9 if i == 1 else 0.0
            floor = y + plate - sunk
            d.polygon(
                [
                    (x - half, y),
                    (x + half, y),
                    (x + half, y + plate),
                    (x + post / 2, y + plate),
                    (x + post / 2, floor),
                    (x - post / 2, floor),
                    (x - post / 2, y + plate),
                    (x - half, y + plate),
                ],
                "cut",
            )
            wire(d, x, floor, 5.1, post)
            for side in (-1, 1):
                root = (x + side * (post / 2), y + plate)
                shape = [
                    (root[0] + side * 0.5, root[1]),
                    (root[0] + side * 0.12, root[1] + 0.14),
                    (root[0], root[1] + 0.5),
                    (root[0] - side * 0.26, root[1] + 0.05),
                    (root[0] - side * 0.1, root[1] - (0.4 if i == 1 else 0.18)),
                    (root[0] + side * 0.18, root[1] - 0.24),
                ]
                d.polygon(shape, "hot")
        if i:
            d.polygon([(x - 1.5, y), (x - 0.9, y - 0.9), (x + 0.9, y - 0.9), (x + 1.5, y)], "stone")
        d.text(x, 6.05, words)
    return d


def scaled(points: list[Point], x: float, y: float, zoom: float) -> list[Point]:
    return [(x + px * zoom, y + py * zoom) for px, py in points]


@drawing("plug-drill")
def plug_drill() -> Drawing:
    """The plate on hardwood, drill upright, a countersink beside it."""
    d = Drawing(
        16.0,
        6.8,
        "Drill on hardwood",
        "Left: a drill of the post's own size stands at right angles to the plate, which lies on a wooden block. "
        "Right: the finished hole with a countersink 0.2 mm deep at the front.",
        scale=40,
    )
    x, y = 4.2, 3.4
    d.rectangle(0.8, y + 1.6, 6.8, 1.5, "part tool")
    for px in (1.6, 2.9, 5.2, 6.6):
        d.line([(px, y + 1.85), (px + 0.55, y + 1.85)], "dim thin")
        d.line([(px - 0.4, y + 2.5), (px + 0.5, y + 2.5)], "dim thin")
    d.rectangle(1.4, y, 5.6, 1.6, "cut")
    d.polygon(
        [(x - 0.62, 1.0), (x + 0.62, 1.0), (x + 0.62, y + 0.35), (x, y + 0.75), (x - 0.62, y + 0.35)], "part tool"
    )
    for k in range(4):
        low = y + 0.05 - k * 0.6
        d.line([(x - 0.62, low), (x + 0.62, low - 0.55)], "dim")
    d.rectangle(x - 0.95, 0.2, 1.9, 0.8, "part tool")
    turn(d, x, 1.55, 1.25, 205, 335)
    d.line([(x + 0.62, y), (x + 0.62, y - 0.01)], "ink")
    d.line([(5.2, y), (5.2, y - 0.38), (4.82, y - 0.38)], "dim")
    d.text(5.45, y - 0.3, "90°", "start")
    zoom, px = 2.1, 12.2
    for side in (-1, 1):
        d.polygon(
            scaled(
                [
                    (side * (POST / 2 + SINK), 0),
                    (side * POST / 2, SINK),
                    (side * POST / 2, PLATE),
                    (side * 1.45, PLATE),
                    (side * 1.45, 0),
                ],
                px,
                y,
                zoom,
            ),
            "cut",
        )
    d.dimension((px - POST / 2 * zoom, y + PLATE * zoom), (px + POST / 2 * zoom, y + PLATE * zoom), "", -16)
    d.text(px, y + PLATE * zoom + 1.05, "0.8 mm")
    d.dimension((px + 1.2 * zoom, y), (px + 1.2 * zoom, y + SINK * zoom), "", 0)
    leader(d, (px + 1.2 * zoom, y + 0.1), (13.6, 2.3), "0.2 mm", "middle")
    return d


@drawing("plug-fit")
def plug_fit() -> Drawing:
    """A close hole holds the post square; a loose one lets it lean and must be filled."""
    d = Drawing(
        16.0,
        6.6,
        "Fit of post and hole",
        "Left: hole and post are the same size; the post stands by itself. Right: a hole 0.2 mm too wide lets the post "
        "lean and leaves a gap that swallows the stub.",
        scale=40,
    )
    zoom = 2.0
    for x, good in ((4.2, True), (11.8, False)):
        hole = POST if good else POST + 0.2
        y = 2.4
        for side in (-1, 1):
            d.polygon(
                scaled(
                    [(side * hole / 2, 0), (side * hole / 2, PLATE), (side * 1.7, PLATE), (side * 1.7, 0)], x, y, zoom
                ),
                "cut",
            )
        middle = (x, y + PLATE * zoom / 2)
        shape = [
            (x - POST * zoom / 2, y - STUB * zoom),
            (x + POST * zoom / 2, y - STUB * zoom),
            (x + POST * zoom / 2, 5.9),
            (x - POST * zoom / 2, 5.9),
        ]
        d.polygon(shape if good else moved(shape, middle, 8), "cut")
        tick(d, x - 3.1, 1.0 - 0.15, good)
    d.text(1.6, 1.0, "stands", "start")
    d.text(9.2, 1.0, "leans", "start")
    return d


@drawing("plug-stub")
def plug_stub() -> Drawing:
    """The whole post to scale with its three lengths."""
    d = Drawing(
        16.0,
        5.6,
        "Post, plate and stub to scale",
        "Side view to scale: a 1.0 mm plate, the stub 0.8 mm proud at its front, the wearing length 10 mm at its back, "
        "post 0.8 mm thick. The whole wire is 11.8 mm.",
        scale=40,
        left=-2.4,
        top=-2.4,
    )
    d.rectangle(0, -1.9, PLATE, 3.8, "part")
    d.polygon([(PLATE, -0.4), (10.6, -0.4), (11.0, -0.18), (11.0, 0.18), (10.6, 0.4), (PLATE, 0.4)])
    d.line([(9.0, -0.4), (9.12, -0.3), (9.12, 0.3), (9.0, 0.4)], "dim")
    d.rectangle(-STUB, -0.4, STUB, POST)
    for a, b in (((0, -0.4), (PLATE, -0.4)), ((0, 0.4), (PLATE, 0.4))):
        d.line([a, b], "ghost")
    d.dimension((PLATE, 0.4), (11.0, 0.4), "", -34)
    d.text(6.0, 2.05, "10 mm")
    d.dimension((-STUB, -0.4), (0, -0.4), "", 12)
    d.text(-0.45, -1.15, "0.8", "end")
    d.dimension((0, 1.9), (PLATE, 1.9), "", -16)
    d.text(PLATE / 2, 3.0, "1.0")
    d.dimension((12.0, -0.4), (12.0, 0.4), "", 0)
    d.text(12.25, 0.15, "0.8", "start")
    d.text(-1.5, -2.0, "front", "middle")
    d.text(3.0, -2.0, "back", "middle")
    return d
