"""Dials that the model of one pulse does not reach: the shape of the pulse, and the shielding gas. In principle."""

from __future__ import annotations

import math

from build_scripts.drawings import drawing
from build_scripts.drawings.sketch import arrow, gas, nozzle, smooth
from calculators.drawing import Drawing, Point

SIZE = (300.0, 220.0)


def _axes(title: str, description: str) -> Drawing:
    d = Drawing(*SIZE, title, description, scale=1.0)
    d.line([(40, 20), (40, 180), (285, 180)], "ink")
    d.text(48, 24, "power", "start")
    d.text(280, 206, "time", "end")
    return d


def _pulse(d: Drawing, outline: list[Point]) -> None:
    d.polygon([(outline[0][0], 180), *outline, (outline[-1][0], 180)], "hot")


@drawing("settings-shape-square")
def shape_square() -> Drawing:
    """Full power from start to end."""
    d = _axes("Square pulse", "Power jumps up, stays level, and drops to nothing at once.")
    _pulse(d, [(70, 70), (200, 70)])
    return d


@drawing("settings-shape-down")
def shape_down() -> Drawing:
    """A soft end."""
    d = _axes("Pulse with a soft end", "Power jumps up, stays level for a while, then runs out slowly.")
    _pulse(d, [(70, 60), (140, 60), (265, 168)])
    arrow(d, (200, 76), (240, 110))
    return d


@drawing("settings-shape-spike")
def shape_spike() -> Drawing:
    """A hard start."""
    d = _axes("Pulse with a hard start", "A short high peak opens the surface, then a lower level does the melting.")
    _pulse(d, [(70, 42), (92, 42), (104, 100), (220, 100)])
    return d


def _shop(title: str, description: str) -> Drawing:
    d = Drawing(*SIZE, title, description, scale=1.0)
    d.rectangle(0, 176, 300, 44, "part")
    d.polygon(
        [(150 + 26 * math.cos(math.pi * i / 16), 176 + 15 * math.sin(math.pi * i / 16)) for i in range(17)], "hot"
    )
    return d


@drawing("settings-gas-right")
def gas_right() -> Drawing:
    """Close, slanted, gentle."""
    d = _shop("Gas right", "The nozzle stands close and slanted. Gas lies over the pool like a blanket.")
    nozzle(d, 190, 148, 110, 22, 38)
    for row, (y, start, end) in enumerate(((168, 84, 216), (158, 98, 208), (148, 116, 186))):
        for i in range(int((end - start) / 15) + 1):
            d.circle(start + 15 * i + 5 * (row % 2), y, 2.6, "gas")
    return d


@drawing("settings-gas-far")
def gas_far() -> Drawing:
    """Too far: it thins out before the pool."""
    d = _shop("Gas too far", "The nozzle stands far away. The gas spreads out and hardly reaches the pool.")
    nozzle(d, 232, 62, 80, 22, 38)
    gas(d, 224, 70, 90, 60, 215)
    arrow(d, (60, 120), (130, 162))
    d.text(56, 112, "air")
    return d


@drawing("settings-gas-hard")
def gas_hard() -> Drawing:
    """Too hard: it drags air in."""
    d = _shop("Gas too hard", "A hard stream hits the metal, swirls up beside the pool and drags air in from the side.")
    nozzle(d, 184, 136, 116, 22, 50)
    for i in range(8):
        d.circle(180 - 5 * i, 140 + 4.4 * i, 2.6, "gas")
    smooth(d, [(140, 168), (100, 160), (84, 136), (102, 118), (118, 132), (108, 146)], "ink")
    arrow(d, (112, 132), (104, 150))
    arrow(d, (36, 130), (86, 166))
    d.text(36, 120, "air")
    return d
