"""What a shop's test spots say about its surface and machine."""

from __future__ import annotations

from ..declare import Result, Working, calculator
from ..drawing import Drawing
from ..fields import Choice, StockThickness
from ..metals import Metal
from ..units import Quantity, magnitude, quantity
from . import cautions
from .dial import Dial, fit_dial
from .fields import DialField, DialPair, HeatMetalField, SeenShot, ShotField
from .heat_metals import heat_metal
from .pictures import Plot
from .pool import Material, threshold_energy
from .ranges import give
from .spot_fit import Curve, Fit, efficiency, fit, information

_EXAMPLES = (
    "2 J, 3 ms, 0.5 mm, none", "3 J, 3 ms, 0.5 mm, mark", "4 J, 3 ms, 0.5 mm, 0.4 mm", "5 J, 3 ms, 0.5 mm, 0.48 mm",
    "", "", "", "",
)  # fmt: skip
_SHOTS = tuple(f"shot_{i + 1}" for i in range(len(_EXAMPLES)))
_DIALS = tuple(f"dial_{i + 1}" for i in range(4))


@calculator(
    title="Test spots",
    purpose="Share of the energy your surface takes in, and melting efficiency, from spots you shot on scrap.",
    fields=[
        HeatMetalField(),
        StockThickness(name="thickness", label="Thickness of the scrap", example="1.5 mm", low=0.1, high=20),
        Choice(
            name="source", label="Machine", example="laser", options=(("laser", "laser"), ("arc", "pulsed arc")),
        ),
        *(
            ShotField(
                name=name, label=f"Spot {i + 1}", example=_EXAMPLES[i],
                hint="Energy, length, spot, then none, mark, melt, hole or the width; last, a sectioned depth."
                if i == 0 else "",
            )
            for i, name in enumerate(_SHOTS)
        ),
        *(
            DialField(
                name=name, label=f"Known point {i + 1}", group="Your machine's dial",
                hint="Dial (volts or percent), milliseconds, joules, such as 250 V, 4 ms, 3.1 J." if i == 0 else "",
            )
            for i, name in enumerate(_DIALS)
        ),
    ],
    results=[
        Result("absorptivity", "Share of the energy taken in", "", 0.001),
        Result("melting_efficiency", "Melting efficiency of deep welds", "", 0.01),
        Result("first_mark", "First melt mark, at the pulse length and spot of your last shot", "J", 0.01),
        Result("next_shot", "Shoot this next"),
        Result("to_settings", "Type into the settings"),
        Result("dial", "Your dial"),
    ],
    sources=["own-heat-solver"],
    cautions=[*cautions.SETTINGS, cautions.MODEL],
)  # fmt: skip
def test_spots(
    working: Working, metal: Metal, thickness: Quantity, source: str, **rows: SeenShot | DialPair | None
) -> None:
    """A likelihood of the absorptivity from every shot, on a grid, with the metal's guess as a weak prior."""
    heat = heat_metal(metal)
    material = heat.material()
    thick = magnitude(thickness, "m")
    named = [(name, shot) for name in _SHOTS if isinstance(shot := rows[name], SeenShot)]
    pairs = [pair for name in _DIALS if isinstance(pair := rows[name], DialPair)]
    dial = _dial(working, pairs)
    if not named:
        working.complain("shot_1", "Enter at least one test spot: energy, duration, spot, then what you saw")
    if working.errors:
        return
    curves = [Curve(shot, material, thick) for _, shot in named]
    prior = working.figure("Guess before any shot", heat.absorptivity)
    guess = tuple(
        float(one.magnitude) for one in (prior, heat.absorptivity.low or prior, heat.absorptivity.high or prior)
    )
    if source == "arc":
        guess = (0.77, 0.5, 0.9)
        working.cite("arc-efficiency")
        working.caution(cautions.ARC)
    found = fit(curves, (guess[0], guess[1], guess[2]))
    if found.odd_one is not None:
        working.complain(
            named[found.odd_one][0],
            "This spot does not fit the others: by the same model one surface can't give both. Check its energy, "
            "length and spot, whether the surface was alike, or leave it out",
        )
        return
    working.note(
        "Most likely share taken in, and the range that holds 90 of 100",
        f"likelihood of {len(curves)} shots on a grid: a width within 0.03 mm and 6 %, a threshold within 8 %",
        quantity(found.middle), "",
    )  # fmt: skip
    give(working, "absorptivity", (found.middle, found.low, found.high), "")
    deep = efficiency(curves, found)
    if deep is not None:
        give(working, "melting_efficiency", deep, "")
    _next(working, curves, found, material, dial)
    text = f"{found.low:.3g} to {found.high:.3g}"
    words = f"absorptivity {text}" + (f"; efficiency {deep[1]:.2g} to {deep[2]:.2g}" if deep else "")
    melted = f"{deep[1]:.2g} to {deep[2]:.2g}" if deep else ""
    working.result("to_settings", words, absorptivity=text, efficiency=melted)
    working.keep(
        f"{metal.name}, {'pulsed arc' if source == 'arc' else 'laser'}: {words}",
        {"metal": metal.key, "source": source},
        {"absorptivity": text, **({"efficiency": melted} if melted else {})},
    )
    if dial is not None:
        note = f"misses your points by up to {100 * dial.off:.1f} %" if len(pairs) > 2 else "two points: not checked"
        working.result("dial", dial.words(), note=note)
    _verdict(working, named, found, (guess[1], guess[2]))
    working.draw(_plot(curves, found))


def _dial(working: Working, pairs: list[DialPair]) -> Dial | None:
    if len(pairs) == 1:
        working.complain("dial_2", "One point can't fix a dial: enter a second with another dial number")
    if len(pairs) < 2:
        return None
    dial = fit_dial(pairs)
    if dial is None:
        working.complain(
            "dial_2", "These points give no rising law: enter points with different dial numbers and joules"
        )
    return dial


def _next(working: Working, curves: list[Curve], found: Fit, material: Material, dial: Dial | None) -> None:
    """First mark for the last shot's pulse, and the energy whose width would tell most about A."""
    last = curves[-1]
    mark = [threshold_energy(last.shot, material, one) for one in (found.middle, found.high, found.low)]
    give(working, "first_mark", mark, "J")
    best, most = mark[0] * 1.2, 0.0
    for factor in (1.05, 1.15, 1.3, 1.5, 1.8, 2.2, 2.7):
        energy = mark[0] * factor
        trial = Curve(last.seen._replace(energy=energy), material, last.thickness)
        told = sum(information(trial, one) for one in (found.low, found.middle, found.high))
        if told > most:
            best, most = energy, told
    text = f"{best:.2g} J, {last.seen.duration:g} ms, {last.seen.spot:g} mm: measure its width"
    if dial is not None:
        text += f" (dial at about {dial.setting(best, last.seen.duration):.3g})"
    working.result("next_shot", text, energy=best, duration_ms=last.seen.duration, spot_mm=last.seen.spot)


def _verdict(working: Working, named: list[tuple[str, SeenShot]], found: Fit, guess: tuple[float, float]) -> None:
    off = 50 * (found.high / found.low) ** 0.5 - 50 * (found.low / found.high) ** 0.5
    says = [f"Your surface takes in {found.middle:.2g} of the energy, known to about ±{off:.0f} %."]
    if len(named) == 1:
        working.caution("One spot only: the range still leans on the guess for the metal. Shoot at least two more.")
    widths = sum(shot.width is not None for _, shot in named)
    if widths == 0:
        says.append("Measured widths would narrow it further.")
    if found.high / found.low > 0.8 * guess[1] / guess[0]:
        says.append("These spots say little more than the guess: shoot closer to the first mark.")
    working.verdict = " ".join(says)
    working.caution("This holds for this surface, this metal and this spot size: matte, dark or polished, it changes.")


def _plot(curves: list[Curve], found: Fit) -> Drawing:
    """Width over spot against energy over that of the first mark: all shots on one curve, or nearly."""
    places = [(curve, found.middle * curve.full) for curve in curves]
    right = max(2.0, 1.1 * max(beta for _, beta in places))
    last = curves[-1]
    steps = [0.0, found.middle / found.high] + [0.8 + (right - 0.8) * (i / 30) ** 1.5 for i in range(31)]
    steps = sorted({*steps, 1.0, found.middle / found.low})

    def wide(beta: float) -> float:
        return last.at(beta, 1) / last.seen.spot

    tall = max([wide(right), *((c.seen.width or 0) / c.seen.spot for c in curves)]) * 1.15 or 1.0
    told = f"Shots and fitted curve; share taken in {found.middle:.2g}, {found.low:.2g} to {found.high:.2g}."
    plot = Plot(
        "Your spots and the fit", told, (0, right), (0, tall), "energy over that of the first mark", "width over spot"
    )
    low = [(beta, wide(beta * found.low / found.middle)) for beta in steps]
    high = [(beta, wide(beta * found.high / found.middle)) for beta in steps]
    plot.band(low, high)
    plot.line([(beta, wide(beta)) for beta in steps])
    for curve, beta in places:
        seen = curve.seen
        height = seen.width / seen.spot if seen.width is not None else 0.0
        plot.point(beta, height, 7, "hot" if seen.seen in ("melt", "hole") else "ghost")
        if seen.width is None:
            plot.words(beta, height, seen.seen)
    return plot.picture
