"""Drawings of the later sittings: practice band, flat strip, posts, old solder and pits, a band with a glass stone."""

from __future__ import annotations

import math

from build_scripts.drawings import drawing
from build_scripts.drawings.bench import jaws, moved, on_circle
from build_scripts.drawings.sketch import Section, arrow, leader, open_air, polar, tick
from calculators.drawing import Drawing, Point

# US 7 has an inside diameter of 17.32 mm by the law of ring_scales.toml, US 6 16.51 mm.
INSIDE_7, INSIDE_6, WALL = 17.32, 16.51, 1.5
SEGMENT = 2.45


@drawing("learn-band")
def learn_band() -> Drawing:
    """The practice band before and after, to scale."""
    d = Drawing(
        50.0,
        24.4,
        "Practice band from US 7 to US 6",
        "Left: a band US 7, 1.5 mm thick, with two scribed lines 2.45 mm apart at the top. Right: the same band closed "
        "to US 6 with one seam at the top.",
        scale=12.8,
        top=-1.0,
    )
    for x, inside in ((12.0, INSIDE_7), (37.6, INSIDE_6)):
        y = 13.0
        d.ring_sector(x, y, inside / 2, inside / 2 + WALL, 0, 360)
        middle = inside / 2 + WALL / 2
        if inside == INSIDE_7:
            half = math.degrees(SEGMENT / 2 / middle)
            for side in (-1, 1):
                ends = [polar(x, y, r, 90 + side * half) for r in (inside / 2 - 0.3, inside / 2 + WALL + 0.3)]
                d.line(ends, "ink")
            d.dimension((x - SEGMENT / 2, y - middle), (x + SEGMENT / 2, y - middle), "2.45 mm", 30)
            d.dimension((x - inside / 2, y), (x + inside / 2, y), "17.3 mm")
        else:
            band = Section(x, y - inside / 2, WALL, inside / 2)
            for within in (False, True):
                band.melt(d, 0, 1.0, 0.8, 0.12, inside=within)
            d.dimension((x - inside / 2, y), (x + inside / 2, y), "16.5 mm")
    arrow(d, (23.2, 13.0), (26.4, 13.0))
    return d


@drawing("learn-squeeze")
def learn_squeeze() -> Drawing:
    """The band pressed on a kitchen scale, seam on top."""
    d = Drawing(
        40.0,
        33.0,
        "Press the band on a scale",
        "A band stands on a kitchen scale with its seam on top. A flat wooden block presses it down. The scale shows "
        "2 kg. The band must spring back to its diameter.",
        scale=16,
        left=-20.0,
        top=-24.0,
    )
    d.rectangle(-15, 0, 30, 1.4, "part tool")
    d.polygon([(-11, 1.4), (11, 1.4), (12, 8.4), (-12, 8.4)], "part tool")
    d.rectangle(-4.0, 3.2, 8.0, 3.4, "bare")
    d.text(0, 5.4, "2 kg")
    top = -INSIDE_6 - 2 * WALL
    d.ring_sector(0, top / 2, INSIDE_6 / 2, INSIDE_6 / 2 + WALL, 0, 360)
    band = Section(0, top + WALL, WALL, INSIDE_6 / 2)
    for within in (False, True):
        band.melt(d, 0, 1.0, 0.8, 0.05, inside=within)
    d.rectangle(-7, top - 2.2, 14, 2.2, "part")
    arrow(d, (9.4, top - 3.2), (9.4, top + 1.4))
    leader(d, (0.3, top + 0.9), (11.4, top + 6.0), "seam")
    return d


def _flat_strip(title: str, told: str) -> Drawing:
    return Drawing(15.0, 3.4, title, told, scale=22, top=0.8)


STRIP_WALL, FLAT, DEEP = 1.6, 6.0, 0.5


def _strip_profile(top: float) -> list[Point]:
    left, right = 7.5 - FLAT / 2, 7.5 + FLAT / 2
    dip = [(left, top), (left, top + 0.2), (left + 0.7, top + DEEP)]
    back = [(right - 0.7, top + DEEP), (right, top + 0.2), (right, top)]
    return [(0.4, top), *dip, *back, (14.6, top), (14.6, top + STRIP_WALL), (0.4, top + STRIP_WALL)]


@drawing("learn-flat-before")
def learn_flat_before() -> Drawing:
    """The filed flat from the side."""
    d = _flat_strip(
        "Before", "Side view of a strip 1.6 mm thick with a flat 6 mm long and 0.5 mm deep, steps at both ends."
    )
    d.polygon(_strip_profile(2.0), "cut")
    d.line([(4.5, 2.0), (10.5, 2.0)], "ghost")
    return d


@drawing("learn-flat-built")
def learn_flat_built() -> Drawing:
    """Three layers, proud."""
    d = _flat_strip("Built", "Three fused layers fill the flat and stand 0.2 mm proud.")
    d.polygon(_strip_profile(2.0), "cut")
    for low, high, short in ((2.5, 2.22, 0.45), (2.22, 1.96, 0.0), (1.96, 1.76, 0.15)):
        d.polygon(
            [(4.5 + short, low), (10.5 - short, low), (10.5 - short * 0.4, high), (4.5 + short * 0.4, high)], "hot"
        )
    return d


@drawing("learn-flat-finished")
def learn_flat_finished() -> Drawing:
    """Filed flush: nothing to see but the old shape."""
    d = _flat_strip("Finished", "The fill is filed flush; the strip has its 1.6 mm again.")
    d.rectangle(0.4, 2.0, 14.2, STRIP_WALL, "cut")
    d.polygon([(4.5, 2.0), (4.5, 2.2), (5.2, 2.5), (9.8, 2.5), (10.5, 2.2), (10.5, 2.0)], "soft")
    return d


@drawing("learn-posts")
def learn_posts() -> Drawing:
    """The strip for posts from above."""
    d = Drawing(
        44.0,
        16.6,
        "Strip for posts",
        "A strip 40 × 8 mm from above. Places 1 to 6 are plugged posts, 7 and 8 posts on the face, 4.2 mm apart. At "
        "the right end stand two uprights with fillets on both sides.",
        scale=14.5,
        left=-2.0,
        top=-5.0,
    )
    d.rectangle(0, 0, 40, 8, "part")
    for i in range(8):
        x = 2.6 + 4.2 * i
        d.circle(x, 4, 0.85, "hot")
        d.circle(x, 4, 0.4, "ghost" if i < 6 else "part")
        d.text(x, 9.9, str(i + 1))
    for x in (35.0, 38.2):
        d.rectangle(x - 0.9, 2, 1.8, 4, "hot")
        d.rectangle(x - 0.4, 2, 0.8, 4, "part")
    d.dimension((2.6, 4), (6.8, 4), "4.2 mm", 26)
    d.dimension((0, 0), (40, 0), "40 mm", 32)
    return d


@drawing("learn-push")
def learn_push() -> Drawing:
    """A post pushed sideways against a kitchen scale."""
    d = Drawing(
        32.0,
        18.4,
        "Push the post sideways",
        "The strip is held upright in pliers. The tip of the post, 10 mm from the strip, is pressed down on a kitchen "
        "scale that shows 100 g.",
        scale=20,
        left=-14.0,
        top=-10.0,
    )
    d.rectangle(-1, -7.2, 1, 9.2, "part")
    d.polygon([(-1, -0.65), (-1.06, -0.4), (-1.06, 0.4), (-1, 0.65)], "hot")
    d.rectangle(-0.55, -0.4, 10.55, 0.8, "part")
    jaws(d, -0.5, -5.4, 1.0, 4.4, 90, 1.3)
    d.rectangle(7.0, 0.4, 9.6, 0.9, "part tool")
    d.polygon([(8.6, 1.3), (15.0, 1.3), (16.2, 7.4), (7.4, 7.4)], "part tool")
    d.rectangle(9.6, 3.0, 4.4, 2.6, "bare")
    d.text(11.8, 4.7, "100 g")
    d.dimension((0, -0.4), (10, -0.4), "10 mm", 40)
    arrow(d, (-4.6, -1.8), (-4.6, 1.6))
    return d


@drawing("learn-old-seam")
def learn_old_seam() -> Drawing:
    """A soldered strip: where to shoot, where to cut."""
    d = Drawing(
        16.0,
        7.4,
        "Cut out the solder",
        "Left: one test pulse on a soldered seam has opened pits and soot. Right: both saw cuts fall 0.75 mm beside "
        "the last color of the solder.",
        scale=40,
    )
    for x, shot in ((0.5, True), (8.5, False)):
        d.rectangle(x, 1.8, 7.0, 3.0, "part")
        d.rectangle(x + 3.35, 1.8, 0.3, 3.0, "gray")
        d.line([(x + 3.35, 1.8), (x + 3.35, 4.8)], "edge thin")
        d.line([(x + 3.65, 1.8), (x + 3.65, 4.8)], "edge thin")
        if shot:
            d.circle(x + 3.5, 3.3, 0.75, "gray")
            d.circle(x + 3.5, 3.3, 0.45, "hot")
            for px, py, size in ((-0.15, -0.1, 0.1), (0.18, 0.12, 0.13), (0.05, -0.25, 0.06)):
                d.circle(x + 3.5 + px, 3.3 + py, size, "dark")
        else:
            for side in (-1, 1):
                place = x + 3.5 + side * 0.9
                d.line([(place, 1.2), (place, 5.4)], "ghost")
            d.dimension((x + 3.65, 1.8), (x + 4.4, 1.8), "", 18)
            leader(d, (x + 4.02, 1.3), (x + 4.9, 0.8), "0.75 mm")
        tick(d, x + 3.5, 6.4, not shot)
    return d


@drawing("learn-pit-plate")
def learn_pit_plate() -> Drawing:
    """Ten bowls in a plate, with one in section."""
    d = Drawing(
        32.0,
        15.0,
        "Ten bowls to fill",
        "A plate 20 × 10 mm with two rows of five bowls, 0.8 mm across, 3 mm apart. Beside it one bowl in section at "
        "five times the size: 0.4 mm deep, with a wire 0.3 mm on its floor.",
        scale=20,
        left=-1.0,
        top=-3.0,
    )
    d.rectangle(0, 0, 20, 10, "part")
    for row in (3.5, 6.5):
        for i in range(5):
            d.circle(4 + 3 * i, row, 0.4, "dark")
    d.dimension((4, 3.5), (7, 3.5), "3 mm", 26)
    x, y, zoom = 26.2, 1.8, 5.0
    d.rectangle(x - 4.2, y, 8.4, 1.5 * zoom, "cut")
    open_air(d, on_circle(x, y, 0.4 * zoom, [180 + 10.0 * i for i in range(19)]))
    d.circle(x, y + 0.24 * zoom, 0.15 * zoom, "part")
    d.dimension((x - 0.4 * zoom, y), (x + 0.4 * zoom, y), "0.8 mm", 14)
    return d


@drawing("learn-glass-ring")
def learn_glass_ring() -> Drawing:
    """The last practice ring: seam at the bottom, glass in a tube at the top."""
    d = Drawing(
        32.0,
        30.0,
        "Band with a glass stone",
        "A band US 7 with a glass stone of 4 mm in a tube at the top. The seam lies opposite, at the bottom, 27 mm "
        "away along the band. A bent strip of dull metal covers the stone.",
        scale=20,
        left=-16.0,
        top=-16.4,
    )
    outer = INSIDE_7 / 2 + WALL
    d.ring_sector(0, 0, INSIDE_7 / 2, outer, 0, 360)
    band = moved(
        [(-0.5, -outer - 0.12), (0.5, -outer - 0.12), (0.4, -INSIDE_7 / 2 + 0.1), (-0.4, -INSIDE_7 / 2 + 0.1)],
        (0, 0),
        180,
    )
    d.polygon(band, "hot")
    top = -outer
    d.polygon([(-2.5, top + 0.35), (-2.5, top - 2.4), (2.5, top - 2.4), (2.5, top + 0.35)], "part")
    d.polygon([(-2.0, top - 2.4), (-1.1, top - 3.1), (1.1, top - 3.1), (2.0, top - 2.4)], "stone")
    d.line([(-3.6, top + 0.4), (-3.6, top - 4.0), (3.6, top - 4.0), (3.6, top + 0.4)], "ink heavy")
    leader(d, (3.6, top - 2.2), (6.0, top - 2.6), "dull shield")
    leader(d, (0.4, outer - 0.6), (4.4, 12.4), "seam")
    middle = INSIDE_7 / 2 + WALL / 2
    start = 90 + math.degrees(2.5 / middle)
    d.line([polar(0, 0, middle, start + (270 - start) * i / 40) for i in range(41)], "dim")
    leader(d, polar(0, 0, middle, 187), (-11.4, 3.4), "27 mm", "end")
    return d


@drawing("learn-bend-both")
def learn_bend_both() -> Drawing:
    """The fused strip bent over a rod, one way and the other, with the angle."""
    d = Drawing(
        32.0,
        13.4,
        "Bend both ways over 6 mm",
        "A strip 1.5 mm thick bent by 90 degrees over a rod 6 mm across. First the marked face of the seam is outside, "
        "then, after straightening, the same face is inside.",
        scale=20,
    )
    for x, outside in ((8.0, True), (24.0, False)):
        y, rod = 7.8, 3.0
        d.circle(x, y, rod, "part tool")
        arc = [135.0 - 5 * i for i in range(19)]
        outline = [polar(x, y, rod + WALL, a) for a in arc]
        for side in (1, -1):
            turned = 90 - 45 * side
            run = polar(0, 0, 6.4, turned - 90 * side)
            corners = [polar(x, y, r, turned) for r in (rod + WALL, rod)]
            ends = [(cx + run[0], cy + run[1]) for cx, cy in corners]
            outline += ends if side == 1 else ends[::-1]
            if side == 1:
                outline += [polar(x, y, rod, a) for a in reversed(arc)]
        d.polygon(outline)
        d.ring_sector(x, y, rod, rod + WALL, 84, 96, "hot")
        face = rod + WALL + 0.12 if outside else rod - 0.12
        d.line([polar(x, y, face, 72 + 36 * i / 8) for i in range(9)], "ink heavy")
        d.text(x, 2.2, "marked face out" if outside else "marked face in")
        d.text(x, y + 0.35, "6 mm")
    return d
