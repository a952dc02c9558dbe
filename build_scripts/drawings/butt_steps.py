"""Drawings of single steps at a butt joint: saw, look for light, close, arc, bend test."""

from __future__ import annotations

from build_scripts.drawings import drawing
from build_scripts.drawings.butt import INNER, WALL
from build_scripts.drawings.sketch import arrow, bar, leader, polar, tick, turn
from calculators.drawing import Drawing


@drawing("butt-saw")
def butt_saw() -> Drawing:
    """Looking down on the band: a square cut, and the step that a slanted one makes."""
    d = Drawing(
        16.0,
        6.4,
        "Saw square across the band",
        "Left: a saw blade crosses a 3 mm band at right angles. Right: a slanted cut closes with a step at both edges.",
        scale=40,
    )
    y = 2.0
    d.rectangle(0.5, y, 3.0, 3.0)
    d.rectangle(3.75, y, 3.0, 3.0)
    d.rectangle(3.5, 0.6, 0.25, 5.4, "part tool")
    for i in range(13):
        d.line([(3.5, 0.85 + i * 0.4), (3.36, 0.95 + i * 0.4), (3.5, 1.05 + i * 0.4)], "ink")
    d.line([(3.75, y + 0.55), (4.3, y + 0.55), (4.3, y)], "dim")
    d.text(4.5, y + 0.75, "90°", "start")
    tick(d, 1.0, 1.3, good=True)
    low, slope = 0.42, 0.55
    d.polygon([(9.0, y), (12.2 - slope, y), (12.2 + slope, y + 3.0), (9.0, y + 3.0)])
    d.polygon([(12.2 - slope, y - low), (15.5, y - low), (15.5, y + 3.0 - low), (12.2 + slope, y + 3.0 - low)])
    tick(d, 9.5, 1.3, good=False)
    d.dimension((14.6, y), (14.6, y - low), "")
    leader(d, (14.6, y - low / 2), (14.0, 0.85), "step", "end")
    return d


@drawing("butt-file-faces")
def butt_file_faces() -> Drawing:
    """The closed ring before a lamp, and the seam magnified: dark, or a line of light."""
    d = Drawing(
        16.0,
        8.2,
        "Hold the closed seam to a lamp",
        "Left: a closed ring in front of a lamp. Right, magnified: no light through the seam is good; a line of "
        "light is a gap and goes back to the file.",
        scale=40,
    )
    x, y, scale = 4.6, 5.1, 0.27
    d.circle(x, 0.85, 0.5, "ink")
    for angle in range(210, 331, 30):
        d.line([polar(x, 0.85, 0.65, angle), polar(x, 0.85, 1.0, angle)], "ink")
    d.ring_sector(x, y, INNER * scale, (INNER + WALL) * scale, 90, 450)
    d.line([(x, y - INNER * scale), (x, y - (INNER + WALL) * scale)], "ink")
    for place, good in ((9.2, True), (13.6, False)):
        d.circle(place, 3.6, 1.75, "ink")
        gap = 0.0 if good else 0.11
        for side in (-1, 1):
            edge = [(place + side * gap / 2, 2.9), (place + side * gap / 2, 4.5)]
            far = [(place + side * 1.5, 4.5), (place + side * 1.5, 2.9)]
            d.polygon(edge + far, "cut")
        if not good:
            d.rectangle(place - gap / 2, 2.3, gap, 2.8, "hot")
        tick(d, place, 6.0, good)
    d.line([polar(x, y, (INNER + WALL) * scale, 88), (7.5, 3.2)], "dim thin")
    d.text(9.2, 7.1, "no light")
    d.text(13.6, 7.1, "light: file again")
    return d


@drawing("butt-close")
def butt_close() -> Drawing:
    """Close past the seam, then back, so that the ends bear on each other."""
    d = Drawing(
        16.0,
        6.6,
        "Close with spring",
        "Left: one end is pushed past the other, toward the inside. Right: lifted back, the two ends press on each "
        "other by themselves.",
        scale=40,
    )
    y, scale = 4.0, 0.24
    inner, outer = INNER * scale, (INNER + WALL) * scale
    angles = [92 + 4 * i for i in range(93)]  # one turn, the last 65 degrees pushed inward
    reach = [outer * (1 - 0.17 * max(0.0, (angle - 395) / 65) ** 1.5) for angle in angles]
    over = [polar(4.0, y, r, a) for r, a in zip(reach, angles, strict=True)]
    under = [polar(4.0, y, r - (outer - inner), a) for r, a in zip(reach, angles, strict=True)]
    d.polygon(over + under[::-1])
    turn(d, 4.0, y, outer + 0.45, 62, 100)
    d.text(4.0, 0.75, "past")
    d.ring_sector(11.6, y, inner, outer, 90, 450)
    d.line([(11.6, y - inner), (11.6, y - outer)], "ink")
    for side in (-1, 1):
        arrow(d, polar(11.6, y, outer + 0.4, 90 - side * 34), polar(11.6, y, outer + 0.4, 90 - side * 8))
    d.text(11.6, 0.75, "back, and it bears")
    arrow(d, (7.1, y), (8.5, y))
    return d


@drawing("butt-arc")
def butt_arc() -> Drawing:
    """Pulsed arc: tip on the seam, clamp close by on the same part."""
    d = Drawing(
        16.0,
        7.2,
        "Pulsed arc on a shank",
        "A sharpened tungsten tip stands over the seam. The return clamp bites the shank close by. The current runs "
        "through the short way between them, not through the setting with the stone.",
        scale=40,
    )
    x, y, scale = 8.0, 3.7, 0.27
    inner, outer = INNER * scale, (INNER + WALL) * scale
    d.ring_sector(x, y, inner, outer, 0, 360)
    foot = y + outer
    d.polygon([(x - 0.75, foot - 0.1), (x + 0.75, foot - 0.1), (x + 1.0, foot + 0.5), (x - 1.0, foot + 0.5)])
    d.polygon([(x - 0.8, foot + 0.5), (x, foot - 0.05), (x + 0.8, foot + 0.5)], "stone")
    seam = polar(x, y, outer, 90)
    d.circle(seam[0], seam[1] + 0.08, 0.16, "hot")
    d.polygon(
        [(x - 0.12, 0.35), (x + 0.12, 0.35), (x + 0.12, 0.5), (x + 0.02, 0.72), (x - 0.02, 0.72), (x - 0.12, 0.5)],
        "part tool",
    )
    d.line([(x, 0.74), (x - 0.06, 0.82), (x + 0.05, 0.88), (x, seam[1])], "ink")
    bar(d, *polar(x, y, outer + 0.02, 45), 2.6, 0.34, 28)
    bar(d, *polar(x, y, inner - 0.02, 38), 3.2, 0.34, 12)
    turn(d, x, y, (inner + outer) / 2, 84, 50)
    leader(d, (12.1, 1.95), (13.0, 3.2), "return clamp", "middle")
    leader(d, (x - 0.1, 0.55), (6.2, 0.9), "tungsten", "end")
    return d


@drawing("butt-bend-test")
def butt_bend_test() -> Drawing:
    """The practice piece bent over a rod with the seam at the top of the bend."""
    d = Drawing(
        16.0,
        6.4,
        "Bend the practice piece",
        "Two strips fused end to end are bent by 90 degrees over a 6 mm rod, seam at the top of the bend, first one "
        "way and then the other.",
        scale=40,
    )
    x, y, inner = 8.0, 5.0, 3.0
    d.circle(x, y, inner, "part tool")
    d.ring_sector(x, y, inner, inner + WALL, 45, 135, "cut")
    for way in (1, -1):
        start, angle = polar(x, y, inner, 90 - way * 45), -45 if way > 0 else 225
        far = polar(x, y, inner + WALL, 90 - way * 45)
        ux, uy = polar(0, 0, 1.7, angle)
        d.polygon([start, far, (far[0] + ux, far[1] + uy), (start[0] + ux, start[1] + uy)], "cut")
    d.ring_sector(x, y, inner, inner + WALL, 88, 92, "hot")
    leader(d, polar(x, y, inner + WALL / 2, 90), (4.2, 1.1), "seam outermost", "end")
    d.text(x, 4.6, "rod 6 mm")
    turn(d, x, y, inner + WALL + 1.0, 58, 20)
    return d
