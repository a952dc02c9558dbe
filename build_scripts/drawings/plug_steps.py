"""Drawings of single steps at a plug joint: hold, bead, fuse around, depth, level, arc, faults, bend test."""

from __future__ import annotations

from build_scripts.drawings import drawing
from build_scripts.drawings.bench import cap, jaws, moved, on_circle, spark, spots, tungsten, wire
from build_scripts.drawings.plug import DEEP, PLATE, POST, SINK, STUB, fused_metal, plate_section, scaled
from build_scripts.drawings.sketch import arrow, bar, leader, open_air, tick, turn
from calculators.drawing import Drawing, Point


@drawing("plug-hold")
def plug_hold() -> Drawing:
    """Front up, post held below, square set against it."""
    d = Drawing(
        16.0,
        7.2,
        "Hold it front up",
        "A pin vise holds the post from below, 1 mm away from the plate, so that the plate lies free and the stub "
        "points up. A small square against the plate and the post shows that they meet at 90 degrees.",
        scale=40,
    )
    x, y, zoom = 6.2, 2.3, 1.0
    d.rectangle(x - 3.0, y, 6.0, PLATE * zoom, "part")
    d.rectangle(x - POST / 2, y - STUB, POST, STUB, "part")
    d.rectangle(x - POST / 2, y + PLATE, POST, 1.1, "part")
    top = y + PLATE + 1.1
    d.polygon(
        [
            (x - 0.55, top),
            (x + 0.55, top),
            (x + 0.95, top + 0.9),
            (x + 0.95, 7.2),
            (x - 0.95, 7.2),
            (x - 0.95, top + 0.9),
        ],
        "part tool",
    )
    d.line([(x, top), (x, top + 0.9)], "dim")
    for k in range(4):
        d.line([(x - 0.95, 5.6 + k * 0.35), (x + 0.95, 5.6 + k * 0.35)], "dim thin")
    corner = (x + POST / 2 + 0.04, y + PLATE + 0.04)
    d.polygon(
        [
            corner,
            (corner[0] + 2.4, corner[1]),
            (corner[0] + 2.4, corner[1] + 0.4),
            (corner[0] + 0.4, corner[1] + 0.4),
            (corner[0] + 0.4, corner[1] + 1.0),
            (corner[0], corner[1] + 1.0),
        ],
        "part tool",
    )
    leader(d, (corner[0] + 2.2, corner[1] + 0.25), (10.4, 4.3), "square")
    leader(d, (x + 0.8, 6.0), (10.4, 6.1), "pin vise")
    leader(d, (x + 0.3, y - 0.5), (8.6, 1.2), "stub, front up")
    return d


@drawing("plug-bead")
def plug_bead() -> Drawing:
    """Stub, bead, button: what the first shots make of the stub."""
    d = Drawing(
        16.0,
        6.4,
        "From stub to button",
        "Three stages side by side. 1: the beam stands on the tip of the stub. 2: the tip has drawn itself into a "
        "bead, about 0.9 mm across, wider than the hole. 3: the bead has sunk into a button that wets the plate "
        "all around.",
        scale=40,
    )
    zoom, y = 1.8, 3.9
    for i in range(3):
        x = 2.8 + i * 5.2
        for side in (-1, 1):
            d.polygon(
                scaled(
                    [
                        (side * (0.4 + SINK), 0),
                        (side * 0.4, SINK),
                        (side * 0.4, PLATE),
                        (side * 1.2, PLATE),
                        (side * 1.2, 0),
                    ],
                    x,
                    y,
                    zoom,
                ),
                "cut",
            )
        top = (y - STUB * zoom, y - 0.02 * zoom, y)[i]
        d.rectangle(x - 0.4 * zoom, top, POST * zoom, 6.4 - top, "cut")
        if i == 0:
            d.beam(x, top, 0.5 * zoom, 2.0)
            d.polygon([*cap(x, top, POST * zoom, 0.08), (x + 0.5, top + 0.25), (x - 0.5, top + 0.25)], "hot")
        elif i == 1:
            d.circle(x, y - 0.42 * zoom, 0.46 * zoom, "hot")
            d.beam(x, y - 0.88 * zoom, 0.5 * zoom, 1.9)
        else:
            d.polygon(scaled(fused_metal(0, 0, 0.3, 0.3), x, y, zoom), "hot")
        d.text(x - 1.9, 1.0, str(i + 1))
    return d


@drawing("plug-around")
def plug_around() -> Drawing:
    """Looking at the front: the order of the deeper shots around the button."""
    d = Drawing(
        6.4,
        3.6,
        "Shots around the button",
        "The front of the plate from above. Eight numbered shots lie on the edge of the button, half on it and half on "
        "the plate. Each shot is opposite the one before.",
        scale=100,
        left=-3.2,
        top=-1.8,
    )
    d.circle(0, 0, 1.7, "part")
    d.circle(0, 0, 0.65, "ghost")
    order = [90, 270, 0, 180, 45, 225, 135, 315]
    centers = on_circle(0, 0, 0.65, [float(a) for a in order])
    spots(d, centers, 0.5)
    for number, angle in enumerate(order, 1):
        ((px, py),) = on_circle(0, 0, 1.17, [float(angle)])
        d.text(px, py + 0.06, str(number))
    return d


@drawing("plug-depth")
def plug_depth() -> Drawing:
    """Skin only against a ring as deep as it has to be."""
    d = Drawing(
        8.0,
        3.4,
        "Skin or plug",
        "Two sections. Left: only a skin 0.15 mm deep is fused and the post can tear out. Right: the fused ring "
        "reaches 0.5 mm down beside the 0.8 mm post.",
        scale=80,
        left=-4.0,
        top=-0.9,
    )
    for x, deep, good in ((-2.0, 0.15, False), (2.0, DEEP, True)):
        wire(d, x, 0, 2.05, POST)
        plate_section(d, x, 0, 1.6, sink=0.0 if not good else SINK)
        d.polygon(fused_metal(x, 0, 0.12, deep, 1.3 if good else 1.1), "hot")
        tick(d, x - 1.2, -0.5, good)
        d.dimension((x + 0.86, 0), (x + 0.86, deep), "", 0)
        leader(d, (x + 0.86, deep / 2), (x + 1.0, -0.42), f"{deep:.2f}" if not good else "0.5 mm", "start")
    return d


@drawing("plug-level")
def plug_level() -> Drawing:
    """The wide beam over the button."""
    d = Drawing(
        8.0,
        3.6,
        "Leveling pass on a plug",
        "A beam 1.2 mm wide stands over the button and melts only its skin, which flows out flat.",
        scale=80,
        left=-4.0,
        top=-1.9,
    )
    wire(d, 0, 0, 1.6, POST)
    plate_section(d, 0, 0, 3.4)
    d.polygon(fused_metal(0, 0, 0.0), "soft")
    skin = [*cap(0, 0, 1.7, 0.1), *reversed(cap(0, 0, 1.7, 0.16, -1))]
    d.polygon(skin, "hot")
    d.line(cap(0, 0, 1.5, 0.3), "ghost")
    d.beam(0, -0.1, 1.2, 1.75)
    d.dimension((-0.6, -0.1), (0.6, -0.1), "", 10)
    leader(d, (0.6, -0.22), (1.6, -0.9), "1.2 mm")
    return d


@drawing("plug-arc")
def plug_arc() -> Drawing:
    """Pulsed arc: tip on the stub, return clamp on the plate."""
    d = Drawing(
        16.0,
        6.4,
        "Pulsed arc on a plug",
        "The sharpened tungsten stands over the tip of the stub and the arc jumps to it. The return clamp bites the "
        "edge of the plate, so that the current runs from stub to plate and not through the pearl or the catch.",
        scale=40,
    )
    x, y = 7.0, 3.4
    d.rectangle(x - 3.4, y, 6.8, 1.2, "part")
    d.rectangle(x - 0.5, y + 1.2, 1.0, 1.8, "part")
    d.polygon([(x - 0.5, y), (x - 0.5, y - 0.75), *cap(x, y - 0.75, 1.0, 0.2), (x + 0.5, y)], "hot")
    tungsten(d, x, y - 1.3, 90, 1.9, 0.42)
    spark(d, (x, y - 1.28), (x, y - 0.97), 0.08)
    bar(d, x + 2.5, y - 0.2, 3.6, 0.4, 12)
    bar(d, x + 2.5, y + 1.4, 3.6, 0.4, -12)
    d.line([(x + 0.6, y + 0.6), (x + 2.3, y + 0.6)], "dim")
    arrow(d, (x + 0.7, y + 0.6), (x + 2.4, y + 0.6))
    leader(d, (x - 0.2, y - 2.3), (4.2, 0.9), "tungsten", "end")
    leader(d, (x + 5.2, y - 0.75), (13.2, 1.2), "return clamp", "middle")
    return d


@drawing("plug-faults")
def plug_faults() -> Drawing:
    """Four faults of a plug in section."""
    d = Drawing(
        16.0,
        5.6,
        "Faults of a plug",
        "Four sections: skin only, the post is fused 0.1 mm deep; moat, a groove around the button; leaning post; and "
        "pinhole, a gas hole under the face.",
        scale=40,
    )
    zoom, y = 1.3, 1.5
    for i, words in enumerate(("skin only", "moat", "leans", "pinhole")):
        x = 2.1 + i * 3.93
        hole = 0.66 if words == "leans" else 0.52
        for side in (-1, 1):
            d.polygon(
                [(x + side * hole, y), (x + side * hole, y + 1.3), (x + side * 1.65, y + 1.3), (x + side * 1.65, y)],
                "cut",
            )
        post = [(x - 0.52, y), (x + 0.52, y), (x + 0.52, y + 2.7), (x - 0.52, y + 2.7)]
        d.polygon(moved(post, (x, y + 0.65), 9) if words == "leans" else post, "cut")
        if words == "skin only":
            d.polygon(scaled(fused_metal(0, 0, 0.1, 0.1, 1.2), x, y, zoom), "hot")
        elif words == "moat":
            d.polygon(scaled(fused_metal(0, 0, 0.1, 0.4, 1.2), x, y, zoom), "hot")
            for side in (-1, 1):
                groove = cap(x + side * 0.82, y - 0.02, 0.42, 0.3, -1)
                open_air(d, groove)
        else:
            d.polygon(scaled(fused_metal(0, 0, 0.1, 0.4, 1.3), x, y, zoom), "hot")
            if words == "pinhole":
                open_air(d, on_circle(x + 0.28, y + 0.05, 0.13, [15.0 * k for k in range(24)]))
                open_air(d, on_circle(x - 0.3, y + 0.3, 0.08, [15.0 * k for k in range(24)]))
        d.text(x, 5.2, words)
    return d


@drawing("plug-bend-test")
def plug_bend_test() -> Drawing:
    """The post bent to 20 degrees with pliers and back."""
    d = Drawing(
        16.0,
        7.4,
        "Bend the practice post",
        "Pliers hold the post 3 mm from the plate and bend it by 20 degrees. A good plug bends in the wire; a bad one "
        "opens at the plate.",
        scale=40,
        left=-3.0,
        top=-4.1,
    )
    d.rectangle(0, -2.6, PLATE, 5.2, "part")
    d.polygon([*[(0, 0.65), (-0.14, 0.3), (-0.14, -0.3), (0, -0.65)]], "hot")
    d.polygon([(PLATE, -0.4), (11.0, -0.4), (11.0, 0.4), (PLATE, 0.4)], "ghost")
    shape: list[Point] = [(PLATE, 0.4), (PLATE, -0.4), (2.4, -0.4)]
    start = (2.4, 0.0)
    far = moved([(2.4, -0.4), (11.0, -0.4), (11.0, 0.4), (2.4, 0.4)], start, 20)
    shape += [far[1], far[2], (2.5, 0.4)]
    d.polygon(shape, "part")
    tip = moved([(5.0, 0.0)], start, 20)[0]
    jaws(d, tip[0], tip[1], 0.8, 7.0, 20, 0.6)
    turn(d, 2.4, 0, 6.0, 1, 12)
    d.text(9.2, -0.75, "20°", "middle")
    return d


@drawing("earring-place")
def earring_place() -> Drawing:
    """Where the post goes on a stud, and what happens when it sits too low."""
    d = Drawing(
        16.0,
        6.6,
        "Where the post goes",
        "Left: the back of a stud 9 mm high with the post one third down from the top. Middle: side view, the stud "
        "stands upright against the ear. Right: the post sits at the middle and the stud tips forward.",
        scale=40,
    )
    zoom, top = 0.5, 0.9
    tall = 9.0 * zoom
    d.circle(2.9, top + tall / 2, tall / 2, "part")
    d.circle(2.9, top + tall / 3, 0.22, "hot")
    d.dimension((0.35, top), (0.35, top + tall / 3), "", 0)
    leader(d, (0.35, top + tall / 6), (0.5, 0.5), "one third")
    for x, share, lean in ((8.0, 1 / 3, 0.0), (13.0, 0.5, -13.0)):
        place = (x, top + tall * share)
        body = [(x - 0.3, top), (x + 0.3, top), (x + 0.3, top + tall), (x - 0.3, top + tall)]
        post = [
            (x + 0.3, place[1] - 0.2),
            (x + 2.4, place[1] - 0.2),
            (x + 2.4, place[1] + 0.2),
            (x + 0.3, place[1] + 0.2),
        ]
        d.path([("M", [(x + 0.75, 0.3)]), ("C", [(x + 0.5, 2.0), (x + 0.5, 4.6), (x + 1.0, 6.2)])], "ghost")
        for shape in (body, post):
            d.polygon(moved(shape, place, -lean), "part")
        tick(d, x - 1.3, 5.6, good=lean == 0.0)
    leader(d, (8.56, 5.2), (9.6, 5.9), "ear")
    return d
