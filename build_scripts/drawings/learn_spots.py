"""Drawings of the first sittings: the ladder of test spots, what a spot looks like, overlap, a seam on a strip."""

from __future__ import annotations

import math

from build_scripts.drawings import drawing
from build_scripts.drawings.bench import on_circle, spots
from calculators.drawing import Drawing, Point

SPOT = 0.5


@drawing("learn-ladder")
def learn_ladder() -> Drawing:
    """The strip of the first sitting with its ladders, to scale."""
    d = Drawing(
        44.0,
        19.0,
        "Ladders on the first strip",
        "A strip 40 × 12 mm from above. Two rows of eight test spots, 2 mm apart, grow from a gray shadow on the left "
        "to a pit with a raised rim. The upper row is 3 ms, the lower row 6 ms. The right half is kept free.",
        scale=14.5,
        left=-2.0,
        top=-5.0,
    )
    d.rectangle(0, 0, 40, 12, "part")
    for y in (3.6, 8.4):
        for step in range(8):
            x, across = 3.0 + 2.0 * step, 0.36 + 0.06 * step
            if step < 2:
                d.circle(x, y, across / 2, "gray")
            elif step < 7:
                d.circle(x, y, across / 2, "hot")
            else:
                d.circle(x, y, 0.52, "hot")
                d.circle(x, y, 0.24, "dark")
    d.line([(20.6, 0.8), (20.6, 11.2)], "ghost")
    d.dimension((3.0, 3.6), (5.0, 3.6), "2 mm", 26)
    d.dimension((0, 0), (40, 0), "40 mm", 32)
    d.text(10.0, 6.2, "3 ms")
    d.text(10.0, 11.0, "6 ms")
    d.text(30.4, 6.4, "keep free")
    return d


@drawing("learn-spot-kinds")
def learn_spot_kinds() -> Drawing:
    """Five test spots as the loupe shows them."""
    d = Drawing(
        16.0,
        4.4,
        "Five test spots at 10×",
        "Five fields. 1: a gray shadow. 2: a dull disk with a soft rim. 3: a bright round dimple with fine rings. "
        "4: a deep pit with a raised rim and drops around it. 5: a bright spot in a ring of black soot.",
        scale=40,
    )
    y, wide = 1.7, 0.72
    for number in range(1, 6):
        x = 1.7 + (number - 1) * 3.15
        d.circle(x, y, 1.4, "part")
        if number == 1:
            d.circle(x, y, wide, "gray")
        elif number == 2:
            d.circle(x, y, wide, "soft")
            d.circle(x, y, wide * 0.8, "soft")
        elif number == 3:
            for share in (1.0, 0.72, 0.44):
                d.circle(x, y, wide * share, "hot" if share == 1.0 else "ink thin")
        elif number == 4:
            d.circle(x, y, 1.02, "hot")
            d.circle(x, y, 0.55, "dark")
            for angle, far in ((20, 1.22), (95, 1.25), (160, 1.2), (230, 1.26), (305, 1.2)):
                ((px, py),) = on_circle(x, y, far, [float(angle)])
                d.circle(px, py, 0.08, "hot")
        else:
            d.circle(x, y, 1.25, "gray")
            d.circle(x, y, 1.05, "gray")
            d.circle(x, y, wide, "hot")
            d.circle(x, y, wide * 0.6, "ink thin")
        d.text(x, 3.95, str(number))
    return d


@drawing("learn-overlap")
def learn_overlap() -> Drawing:
    """Rows of spots at three overlaps, from above and in section."""
    d = Drawing(
        6.4,
        3.5,
        "Three overlaps",
        "Three rows of spots 0.5 mm across over 2.5 mm. At 50 % each spot covers half of the one before, at 70 % more, "
        "at 80 % the rims lie like scales. Beside each row its section: the valleys between the spots get shallower.",
        scale=100,
    )
    for y, share in ((0.55, 50), (1.65, 70), (2.75, 80)):
        step = SPOT * (1 - share / 100)
        d.rectangle(0.75, y - 0.42, 2.6, 0.84, "part")
        row = [(1.05 + step * i, y) for i in range(int(2.0 / step + 0.5) + 1)]
        spots(d, row, SPOT)
        d.text(0.36, y + 0.06, f"{share} %")
        x0, top = 3.75, y - 0.18
        d.rectangle(x0, top, 2.5, 0.6, "cut")
        points: list[Point] = [(x0 + 0.06, top)]
        for i in range(241):
            along = 2.38 * i / 240
            near = min(abs(along - 0.19 - step * k) for k in range(int(2.0 / step + 0.5) + 1))
            points.append((x0 + 0.06 + along, top + 0.4 * math.sqrt(max(0.0, 1 - (near / (SPOT / 2)) ** 2))))
        d.polygon([*points, (x0 + 2.44, top)], "hot")
    return d


def _strip_piece(title: str, told: str) -> Drawing:
    d = Drawing(9.2, 4.4, title, told, scale=35, left=-0.1, top=1.0)
    d.rectangle(0, 1.2, 9.0, 3.0, "part")
    d.rectangle(0, 4.2, 9.0, 1.0, "cut")
    return d


@drawing("learn-seam-before")
def learn_seam_before() -> Drawing:
    """A strip with a scribed line, from above and in section."""
    d = _strip_piece("Before", "Part of a strip 1 mm thick, dulled, with one scribed line to follow.")
    d.line([(0.6, 2.7), (8.4, 2.7)], "ink")
    return d


@drawing("learn-seam-fused")
def learn_seam_fused() -> Drawing:
    """The line covered by overlapping spots."""
    d = _strip_piece("Fused", "The line is covered by a row of spots 0.5 mm across, 0.15 mm apart, like scales.")
    spots(d, [(0.6 + 0.15 * i, 2.7) for i in range(53)], SPOT)
    floor = [(0.45 + 0.075 * i, 4.2 + (0.38 if i % 2 else 0.4)) for i in range(109)]
    d.polygon([(0.35, 4.2), *floor, (8.65, 4.2)], "hot")
    return d


@drawing("learn-seam-leveled")
def learn_seam_leveled() -> Drawing:
    """The same line after the leveling pass."""
    d = _strip_piece("Leveled", "The leveling pass, 1.2 mm wide, has smoothed the scales. It is 0.15 mm deep.")
    ends = [
        *on_circle(8.2, 2.7, 0.6, [90 - 15.0 * i for i in range(13)]),
        *on_circle(0.8, 2.7, 0.6, [270 - 15.0 * i for i in range(13)]),
    ]
    d.polygon(ends, "hot")
    d.polygon([(0.35, 4.2), (8.65, 4.2), (8.5, 4.58), (0.5, 4.58)], "soft")
    d.polygon([(0.2, 4.2), (8.8, 4.2), (8.6, 4.35), (0.4, 4.35)], "hot")
    return d


@drawing("learn-section")
def learn_section() -> Drawing:
    """Where the saw goes through a test strip, and the two sections it can show."""
    d = Drawing(
        16.0,
        7.6,
        "Saw through the middle of the strip",
        "Above: a strip 3 mm wide with its seam, sawn along its middle. Below: two sections of the 1.5 mm wall. In the "
        "left one fused metal from both sides meets in the middle. In the right one a gray line is left in the core.",
        scale=40,
    )
    d.rectangle(3.2, 0.4, 9.6, 2.1, "part")
    spots(d, [(8.0, 0.55 + 0.105 * i) for i in range(18)], 0.35)
    d.line([(2.2, 1.45), (13.8, 1.45)], "ghost")
    d.text(14.9, 1.6, "saw")
    for x, good in ((3.9, True), (12.1, False)):
        top, zoom = 3.6, 1.75
        d.rectangle(x - 3.0, top, 6.0, 1.5 * zoom, "cut")
        for side in (0, 1):
            face = top + (1.5 * zoom if side else 0.0)
            way = -1.0 if side else 1.0
            reach = (0.85 if good else 0.5) * zoom
            width = (0.62 if good else 0.42) * zoom
            bowl = [
                (x + width * math.cos(math.radians(a)), face + way * reach * math.sin(math.radians(a)))
                for a in range(0, 181, 10)
            ]
            d.polygon(bowl, "hot")
        if not good:
            d.line([(x, top + 0.5 * zoom), (x, top + 1.0 * zoom)], "ink heavy")
        d.text(x, 7.05, "joined" if good else "gray line: reject")
    return d
