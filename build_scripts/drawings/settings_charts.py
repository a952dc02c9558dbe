"""Charts made by the heat model: warmth by rate, first melt marks by metal, depth by energy, melting and boiling."""

from __future__ import annotations

import math
from collections.abc import Iterable

from build_scripts.drawings import chart
from build_scripts.drawings.model_shapes import guess, heat_of, shot
from calculators.data import figure, load
from calculators.drawing import Drawing, Point
from calculators.heat.pictures import Plot
from calculators.heat.pool import Shot, boiling_beta, threshold_energy
from calculators.heat.stone_sum import Piece, Plan

METAL = "18k-yellow"
_US_7 = 17.35  # mm inside; the middle of a shank 1.5 mm thick is 18.85 mm across


def ring(key: str, distance: float) -> Piece:
    """A shank 3 × 1.5 mm of ring size US 7 in still air; ``distance`` mm from spot to stone."""
    heat = heat_of(key)
    conductivity, density, capacity = (
        heat.number(name) for name in ("conductivity_cold", "density", "heat_capacity_cold")
    )
    around = math.pi * (_US_7 + 1.5) * 1e-3
    return Piece(True, around, 3e-3, 1.5e-3, distance * 1e-3, conductivity, density, capacity, 10.0)


@chart("settings-rates")
def settings_rates() -> Drawing:
    """Twenty pulses at three rates: warmth 8 mm away."""
    piece, end = ring(METAL, 8.0), 30.0
    lines = {}
    for rate in (1.0, 3.0, 8.0):
        plan = Plan(3.0, 20, rate)
        times = [end * i / 240 for i in range(241)]
        lines[rate] = [(time, 20 + plan.rise(piece, time)) for time in times]
    peaks = {rate: max(points, key=lambda point: point[1]) for rate, points in lines.items()}
    told = "; ".join(f"{rate:g} a second: {peaks[rate][1]:.0f} °C after {peaks[rate][0]:.0f} s" for rate in lines)
    plot = Plot("Twenty pulses at three rates", f"{told}.", (0, end), (0, 180), "seconds", "°C, 8 mm from the seam")
    for points in lines.values():
        plot.line(points)
    for rate, (time, hot) in peaks.items():
        plot.point(time, hot)
        plot.words(time + 0.3, hot + 1, f"{rate:g} Hz: {hot:.0f} °C")
    return plot.picture


@chart("model-two-branches")
def model_two_branches() -> Drawing:
    """Depth against energy on platinum: conduction, transition, penetration, with the range."""
    one, base = guess("platinum-950-ruthenium"), shot(1.0, 4.0, 0.5)
    energies = [0.5 + 0.1 * i for i in range(96)]
    depths = [(energy, one.shoot(base.with_energy(energy)).depth * 1e3) for energy in energies]
    low = [(energy, one.least(base.with_energy(energy)).depth * 1e3) for energy in energies]
    high = [(energy, one.most(base.with_energy(energy)).depth * 1e3) for energy in energies]
    first = threshold_energy(base, one.nominal, one.absorptivity.value)
    edge, full = boiling_beta(one.nominal) * first, 3 * one.nominal.boiling_scaled * first
    told = (
        f"Platinum 950 ruthenium 1.5 mm thick, 4 ms, 0.5 mm. First melt mark {first:.1f} J, boiling from {edge:.1f} J, "
        f"penetration from {full:.1f} J. The band runs from the least to the most that is possible."
    )
    plot = Plot("Depth against energy", told, (0, 10), (0, 1.6), "J in a pulse", "mm deep")
    plot.band(low, high)
    plot.line(depths, "ink heavy")
    for energy, words in ((first, "melts"), (edge, "boils"), (full, "vapor hole")):
        late = energy > 8  # there the curve is where the words would be
        tall = 0.16 if late else 1.05
        plot.line([(energy, 0), (energy, tall)], "dim")
        plot.words(energy, tall - 0.1 if late else tall, words, "end" if late else "start")
    return plot.picture


class Bars:
    """Ranges as bars on a logarithmic axis, one row a thing."""

    def __init__(
        self, title: str, rows: int, ends: Point, ticks: Iterable[float], words: str, left: float = 190.0
    ) -> None:
        self.left, self.right, self.top, self.ends = left, 622.0, 14.0, ends
        self.picture = Drawing(640, 44 * rows + 80, title, "", scale=1)
        base = self.top + 44 * rows
        for tick in ticks:
            px = self.at(tick)
            self.picture.line([(px, self.top), (px, base + 6)], "dim thin")
            self.picture.text(px, base + 28, f"{tick:g}")
        self.picture.line([(self.left, base), (self.right, base)], "ink")
        self.picture.text((self.left + self.right) / 2, base + 58, words)
        self.row = 0

    def at(self, value: float) -> float:
        """Place of a value along the axis."""
        low, high = self.ends
        share = math.log(min(max(value, low), high) / low) / math.log(high / low)
        return self.left + share * (self.right - self.left)

    def bar(self, name: str, low: float, middle: float, high: float, kind: str = "hot") -> None:
        """A row: its name, the range, a line at the middle."""
        y = self.top + 44 * self.row + 22
        self.picture.text(self.left - 10, y + 7, name, "end")
        self.picture.rectangle(self.at(low), y - 10, self.at(high) - self.at(low), 20, kind)
        self.picture.line([(self.at(middle), y - 15), (self.at(middle), y + 15)], "ink heavy")
        self.row += 1


@chart("solder-melt-boil")
def solder_melt_boil() -> Drawing:
    """From melting to boiling: what old solders hold, and what they sit in."""
    picture = Drawing(640, 400, "From melting to boiling", "", scale=1)
    left, right, top, base, hottest = 120.0, 606.0, 12.0, 330.0, 3000.0

    def at(degrees: float) -> float:
        return left + degrees / hottest * (right - left)

    for tick in range(0, 3001, 500):
        picture.line([(at(tick), top), (at(tick), base + 6)], "dim thin")
        picture.text(at(tick), base + 28, f"{tick}")
    picture.text((left + right) / 2, base + 58, "°C, from melting to boiling")
    told, y = [], top + 24
    for row in load("solder_metals").values():
        low, high = (float(figure(row[name]).value.to("degC").magnitude) for name in ("melting", "boiling"))
        picture.rectangle(at(low), y - 11, at(high) - at(low), 22, "hot")
        picture.text(left - 10, y + 7, row["name"], "end")
        told.append(f"{row['name']} {low:.0f} to {high:.0f} °C")
        y += 42
    for key, name in (("sterling", "sterling"), ("14k-yellow", "14k gold"), ("platinum-950-ruthenium", "platinum")):
        material = guess(key).nominal
        low, high = material.melting, min(material.boiling, hottest)
        picture.rectangle(at(low), y - 11, at(high) - at(low), 22, "part tool")
        picture.text(left - 10, y + 7, name, "end")
        told.append(f"{name} {low:.0f} to {material.boiling:.0f} °C")
        y += 42
    picture.line([(left, base), (right, base)], "ink")
    picture.description = "Liquid from and to: " + ", ".join(told) + ". Platinum's bar goes on beyond the picture."
    return picture


FIRST_MARKS = {
    "fine-silver": "fine silver", "sterling": "sterling", "24k-yellow": "fine gold", "22k-yellow": "22k yellow",
    "18k-yellow": "18k yellow", "14k-yellow": "14k yellow", "18k-white-palladium": "18k white (Pd)",
    "palladium-950": "palladium 950", "platinum-950-ruthenium": "platinum 950", "steel-316l": "steel 316L",
    "titanium-2": "titanium",
}  # fmt: skip


def first_mark(key: str, base: Shot) -> tuple[float, float, float]:
    """Energy of the first melt mark, J: least, middle, most."""
    one = guess(key)
    return (
        threshold_energy(base, one.poor, one.absorptivity.high),
        threshold_energy(base, one.nominal, one.absorptivity.value),
        threshold_energy(base, one.good, one.absorptivity.low),
    )


@chart("metals-first-mark")
def metals_first_mark() -> Drawing:
    """Energy to the first melt mark by metal."""
    base = shot(1.0, 4.0, 0.5)
    bars = Bars(
        "Energy of the first melt mark", len(FIRST_MARKS), (0.2, 60), (0.2, 0.5, 1, 2, 5, 10, 20, 50),
        "J to the first mark, 4 ms, 0.5 mm", 180,
    )  # fmt: skip
    told = []
    for key, name in FIRST_MARKS.items():
        low, middle, high = first_mark(key, base)
        bars.bar(name, low, middle, high)
        told.append(f"{name} {middle:.2g} J ({low:.2g} to {high:.2g})")
    bars.picture.description = "By the model, 1.5 mm thick: " + ", ".join(told) + "."
    return bars.picture


@chart("metals-light-taken")
def metals_light_taken() -> Drawing:
    """Share of light taken in by a clean mirror, and the guess for a bench surface, by family."""
    families = load("heat_properties")["family"]
    names = ("silver", "copper", "gold", "palladium", "platinum", "steel", "titanium")
    bars = Bars(
        "Share of the light taken in", 2 * len(names), (0.003, 1), (0.003, 0.01, 0.03, 0.1, 0.3, 1),
        "share taken in near 1064 nm", 200,
    )  # fmt: skip
    told = []
    for name in names:
        for kind, words, look in (("polished", f"{name}, mirror", "part tool"), ("absorptivity", "bench", "hot")):
            one = figure(families[name][kind])
            low, middle, high = (
                float((one.value if end is None else end).magnitude) for end in (one.low, one.value, one.high)
            )
            bars.bar(words, low, middle, high, look)
            told.append(f"{name} {'mirror' if kind == 'polished' else 'at the bench'} {low:g} to {high:g}")
    bars.picture.description = ", ".join(told) + "."
    return bars.picture
