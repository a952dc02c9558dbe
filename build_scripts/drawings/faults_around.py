"""What explains the faults of shape, heat and neighbors: edges, springs, posts, links, stones, rings."""

from __future__ import annotations

import math

from build_scripts.drawings import drawing
from build_scripts.drawings.faults_inside import FACE, LEFT, RIGHT, WALL, halves, solid
from build_scripts.drawings.sketch import arrow, gas, leader, nozzle, polar, tick
from calculators.choosing.view import melt, round_of
from calculators.drawing import Drawing


@drawing("inside-blown-edge")
def blown_edge() -> Drawing:
    """Half of the beam over air, and the beam moved inward."""
    d = halves(
        "Aim at an edge",
        "Left: half the beam passes the rim and the edge rolls back. Right: aimed a spot's width inside, it holds.",
    )
    d.rectangle(LEFT - 1.6, FACE + 0.3, 1.1, 0.6, "cut")
    d.rectangle(RIGHT - 1.6, FACE + 0.3, 1.6, 0.6, "cut")
    d.circle(LEFT - 0.5, FACE + 0.6, 0.42, "hot")
    d.line([(LEFT - 0.3, FACE + 0.3), (LEFT, FACE + 0.3), (LEFT, FACE + 0.9), (LEFT - 0.3, FACE + 0.9)], "ghost")
    d.beam(LEFT, FACE + 0.3, 0.5, 1.0)
    d.polygon(melt(RIGHT - 0.5, FACE + 0.3, 0.5, 0.3), "hot")
    d.beam(RIGHT - 0.5, FACE + 0.3, 0.5, 1.0)
    d.dimension((RIGHT - 0.5, FACE + 0.9), (RIGHT, FACE + 0.9), "0.5 mm", -22)
    tick(d, LEFT - 1.05, 2.9, good=False)
    tick(d, RIGHT - 1.05, 2.9, good=True)
    return d


@drawing("inside-burn-through")
def burn_through() -> Drawing:
    """The pool is deeper than the wall; a copper chill behind it."""
    d = halves(
        "A pool against a thin wall",
        "Left: a pool 0.4 mm deep in a 0.3 mm wall falls through. Right: weaker, over a copper backing.",
    )
    wall, low = 0.3, FACE + 0.4
    d.rectangle(LEFT - 1.6, low, 1.2, wall, "cut")
    d.rectangle(LEFT + 0.4, low, 1.2, wall, "cut")
    d.rectangle(RIGHT - 1.6, low, 3.2, wall, "cut")
    for side in (-1, 1):
        d.circle(LEFT + side * 0.42, low + 0.17, 0.21, "hot")
    d.polygon(round_of(LEFT, low + 0.75, 0.17, 0.22), "hot")
    d.rectangle(RIGHT - 1.2, low + wall, 2.4, 0.7, "part tool")
    d.polygon(melt(RIGHT, low, 0.5, 0.2), "hot")
    d.beam(LEFT, low, 0.5, 1.2)
    d.beam(RIGHT, low, 0.5, 1.2)
    leader(d, (RIGHT + 0.8, low + 0.75), (RIGHT + 0.9, 2.95), "copper", "middle")
    tick(d, LEFT, 2.9, good=False)
    tick(d, RIGHT - 0.8, 2.9, good=True)
    return d


@drawing("inside-spatter")
def spatter() -> Drawing:
    """A spot that boils throws metal; a wider, longer one does not."""
    d = halves(
        "What throws spatter",
        "Left: a small hard spot boils, opens a pit and throws drops. Right: a wider, longer pulse melts calmly.",
    )
    for x in (LEFT, RIGHT):
        solid(d, x)
    d.polygon(melt(LEFT, FACE, 0.5, 0.9), "hot")
    d.polygon(melt(LEFT, FACE, 0.26, 0.72), "dark")
    d.beam(LEFT, FACE, 0.26, 0.95)
    for angle, far in ((55, 0.9), (30, 1.2), (125, 0.85), (150, 1.25), (42, 1.5), (140, 1.6)):
        x, y = polar(LEFT, FACE, far, angle)
        d.circle(x, max(y, 0.08), 0.06, "hot")
    d.polygon(melt(RIGHT, FACE, 0.75, 0.4, 0.03), "hot")
    d.beam(RIGHT, FACE, 0.6, 0.95)
    tick(d, LEFT, 2.9, good=False)
    tick(d, RIGHT, 2.9, good=True)
    return d


@drawing("inside-discoloration")
def discoloration() -> Drawing:
    """Gas has to cover all that is still hot."""
    d = halves(
        "Gas over all that is hot",
        "Left: gas covers the spot, but the metal behind it is still hot and takes color. Right: it covers both.",
    )
    for x, wide in ((LEFT, 0.5), (RIGHT, 1.9)):
        solid(d, x)
        d.polygon(melt(x - 0.5, FACE, 2.0, 0.22), "soft")
        d.polygon(melt(x + 0.3, FACE, 0.5, 0.35), "hot")
        count = round(wide / 0.16)
        for i in range(count):
            for row in range(3):
                d.circle(x + 0.55 - 0.16 * i, FACE - 0.1 - 0.17 * row, 0.04, "gas")
    d.polygon(melt(LEFT - 0.75, FACE, 1.4, 0.1), "haze")
    d.polygon(melt(LEFT - 0.75, FACE, 1.4, 0.1), "haze")
    leader(d, (LEFT - 0.8, FACE + 0.04), (LEFT - 1.0, 0.5), "takes color", "middle")
    tick(d, LEFT, 2.9, good=False)
    tick(d, RIGHT, 2.9, good=True)
    return d


@drawing("inside-soft-spring")
def soft_spring() -> Drawing:
    """The softened length by beam and by torch."""
    d = halves(
        "How far the softness goes",
        "Two spring tongues. A pulse softens a short length beside the seam; a torch softens all of it.",
    )
    for y, reach, word in ((0.75, 0.5, "pulse"), (2.2, 6.6, "torch")):
        d.rectangle(0.3, y - 0.2, 0.9, 0.75, "part")
        d.rectangle(1.2, y, 6.4, 0.35, "part")
        d.rectangle(1.2, y, reach if reach < 6.4 else 6.4, 0.35, "soft")
        d.rectangle(1.2, y, reach if reach < 6.4 else 6.4, 0.35, "soft")
        d.polygon(melt(1.2, y, 0.4, 0.3), "hot")
        d.text(0.4, y + 0.85, word, "start")
    d.text(3.6, 1.6, "still springy", "start")
    d.text(3.6, 3.05, "soft to the tip", "start")
    return d


@drawing("inside-post-turns")
def post_turns() -> Drawing:
    """A post held by a skin, and one plugged and fused deep."""
    d = halves(
        "Why a post turns",
        "Left: a 0.8 mm post held only by a skin at its rim. Right: plugged through the plate and fused deep.",
    )
    for x in (LEFT, RIGHT):
        d.rectangle(x - 1.6, 1.7, 3.2, 1.0, "cut")
    d.rectangle(LEFT - 0.4, 0.1, 0.8, 1.6, "cut")
    for side in (-1, 1):
        d.polygon(round_of(LEFT + side * 0.4, 1.7, 0.12, 0.1, 0, 360), "hot")
    d.line([(LEFT - 0.28, 1.7), (LEFT + 0.28, 1.7)], "ink heavy")
    d.rectangle(RIGHT - 0.4, 0.1, 0.8, 2.6, "cut")
    d.polygon(melt(RIGHT, 2.7, 1.3, 0.65, 0.08, -1.0), "hot")
    tick(d, LEFT, 3.12, good=False)
    tick(d, RIGHT, 3.12, good=True)
    return d


@drawing("inside-stiff-link")
def stiff_link() -> Drawing:
    """A neighbor in the way of the beam, and a neighbor moved away."""
    d = halves(
        "Keep the neighbor away",
        "Left: the next link's wire lies under the spot and gets tied. Right: pulled aside, with a gap of 1 mm.",
    )
    for x, away in ((LEFT, 0.92), (RIGHT, 1.9)):
        d.circle(x, 1.15, 0.45, "cut")
        d.circle(x + away, 1.55, 0.45, "cut")
        d.polygon(melt(x, 0.74, 0.55, 0.3, 0.06), "hot")
    d.polygon(round_of(LEFT + 0.47, 1.35, 0.17, 0.26), "hot")
    d.beam(LEFT + 0.1, 0.72, 0.5, 0.65)
    d.beam(RIGHT, 0.72, 0.5, 0.65)
    d.dimension((RIGHT + 0.45, 2.15), (RIGHT + 1.45, 2.15), "1 mm", 0)
    tick(d, LEFT + 0.4, 2.9, good=False)
    tick(d, RIGHT + 0.9, 2.9, good=True)
    return d


@drawing("inside-cracked-stone")
def cracked_stone() -> Drawing:
    """Three ways the shot reaches a stone."""
    d = halves(
        "How a shot reaches a stone",
        "A set stone in section. The beam can go through it, bounce off polished metal into it, or warm its seat.",
        3.9,
    )
    x, girdle = 4.0, 1.25
    d.polygon(
        [(x - 1.5, girdle), (x - 0.85, girdle - 0.5), (x + 0.85, girdle - 0.5), (x + 1.5, girdle), (x, girdle + 1.3)],
        "stone",
    )
    for side in (-1, 1):
        prong = [(1.75, 0.85), (1.25, 0.95), (1.3, 1.1), (1.6, 1.3), (1.6, 3.0), (2.0, 3.0), (2.0, 1.1)]
        d.polygon([(x + side * px, py) for px, py in prong], "part")
    d.rectangle(x - 2.4, 3.0, 4.8, 0.5, "part")
    d.beam(x - 0.5, 3.0, 0.3, 2.95, -0.1)
    d.line([(x + 3.2, 0.9), (x + 2.3, 3.0)], "hot heavy")
    d.line([(x + 2.3, 3.0), (x + 0.9, 1.65)], "hot heavy")
    d.polygon(melt(x - 1.95, 3.0, 0.6, 0.3, 0.05), "hot")
    arrow(d, (x - 1.75, 2.75), (x - 1.65, 1.7))
    d.text(x - 1.15, 0.25, "through", "end")
    leader(d, (x + 2.3, 2.95), (x + 2.8, 2.5), "reflected")
    d.text(x - 2.15, 2.4, "heat", "end")
    return d


@drawing("inside-out-of-round")
def out_of_round() -> Drawing:
    """A seam that shrinks on one side pulls the ends up; from both sides it stays."""
    d = halves(
        "Shrinking pulls the joint",
        "Left: all shots from inside; cooling, the seam opens outside and the ring peaks. Right: both sides in turn.",
    )
    lean = math.radians(6)
    for x, tilt in ((LEFT, lean), (RIGHT, 0.0)):
        for side in (-1, 1):
            corners = [(0.0, WALL), (1.7, WALL), (1.7, 0.0), (0.0, 0.0)]
            turned = [
                (px * math.cos(tilt) + py * math.sin(tilt), py * math.cos(tilt) - px * math.sin(tilt))
                for px, py in corners
            ]
            d.polygon([(x + side * px, FACE + WALL - py) for px, py in turned], "cut")
        d.polygon(melt(x, FACE + WALL, 0.6, 0.5, 0.0, -1.0), "hot")
        for side in (-1, 1):
            arrow(d, (x + side * 1.0, FACE + WALL + 0.3), (x + side * 0.25, FACE + WALL + 0.3))
    d.polygon(melt(RIGHT, FACE, 0.6, 0.5), "hot")
    for side in (-1, 1):
        arrow(d, (RIGHT + side * 1.0, FACE - 0.2), (RIGHT + side * 0.25, FACE - 0.2))
    leader(d, (LEFT, FACE + 0.1), (LEFT + 0.3, 0.4), "opens, peaks")
    tick(d, RIGHT, 3.12, good=True)
    tick(d, LEFT, 3.12, good=False)
    return d


@drawing("gas-nozzle-place")
def gas_nozzle_place() -> Drawing:
    """Where the gas tube stands."""
    d = halves(
        "Where the gas tube stands",
        "A gas tube from the side, its mouth 5 to 10 mm from the spot, covers the spot and what is behind it.",
    )
    d.rectangle(0.3, 2.3, 7.4, 0.7, "part")
    d.polygon(melt(3.2, 2.3, 0.3, 0.2), "hot")
    nozzle(d, 5.6, 1.35, 2.2, 0.7, 22)
    gas(d, 3.4, 2.15, 2.2, 34, 22)
    d.beam(3.2, 2.3, 0.15, 2.2)
    d.text(4.0, 0.9, "5 to 10 mm")
    return d
