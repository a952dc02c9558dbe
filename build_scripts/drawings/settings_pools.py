"""What each dial does to the pool, drawn by the model of one pulse: platinum 950 ruthenium, the middle guess."""

from __future__ import annotations

from collections.abc import Callable

from build_scripts.drawings import Draw, drawing
from build_scripts.drawings.model_shapes import guess, middle_pool, pool_panel, scalloped, shot, slab
from calculators.drawing import Drawing
from calculators.heat.pool import Shot

METAL, NAME = "platinum-950-ruthenium", "platinum 950 with ruthenium"
GOLD, GOLD_NAME = "18k-yellow", "18k yellow gold"
PULSE = shot(4.0, 4.0, 0.5)
ENERGIES, DURATIONS, SPOTS, OVERLAPS = (2, 4, 6), (2, 5, 10), (0.3, 0.6, 1.2), (50, 70, 80)


def _one(title: str, one: Shot) -> Draw:
    return lambda: pool_panel(title, METAL, NAME, one)


for _energy in ENERGIES:
    drawing(f"settings-energy-{_energy}")(_one(f"A pulse of {_energy} J in section", shot(_energy, 4.0, 0.5)))
for _duration in DURATIONS:
    drawing(f"settings-pulse-{_duration}")(_one(f"A pulse of {_duration} ms in section", shot(4.0, _duration, 0.5)))
for _spot in SPOTS:
    drawing(f"settings-spot-{_spot:g}".replace(".", "-"))(
        _one(f"A spot of {_spot:g} mm in section", shot(4.0, 4.0, _spot))
    )


@drawing("settings-end-least")
def settings_end_least() -> Drawing:
    """The end of the guesses that melts least."""
    one = shot(5.0, 3.0, 0.5)
    return pool_panel("Least that the pulse may melt", GOLD, GOLD_NAME, one, guess(GOLD).least(one))


@drawing("settings-end-middle")
def settings_end_middle() -> Drawing:
    """The middle guess."""
    return pool_panel("The middle guess", GOLD, GOLD_NAME, shot(5.0, 3.0, 0.5))


@drawing("settings-end-most")
def settings_end_most() -> Drawing:
    """The end of the guesses that melts most."""
    one = shot(5.0, 3.0, 0.5)
    return pool_panel("Most that the pulse may melt", GOLD, GOLD_NAME, one, guess(GOLD).most(one))


def _seam(overlap: int) -> Callable[[], Drawing]:
    def draw() -> Drawing:
        found = middle_pool(METAL, PULSE)
        width = found.width * 1e3
        step = width * (1 - overlap / 100)
        d = slab(f"A seam with {overlap} % overlap, cut lengthwise", "")
        least = scalloped(d, found, overlap / 100, 0.06, 1.54)
        d.description = (
            f"Pools {width:.2f} mm wide and {found.depth * 1e3:.2f} mm deep, {step:.2f} mm apart. Between two of them "
            f"the melt is {least:.2f} mm deep, {100 * least / found.depth / 1e3:.0f} % of a pool's depth."
        )
        first = 0.06 + width / 2
        d.dimension((first, 0), (first + step, 0), f"{step:.2f} mm", away=30)
        d.line([(0.02, least), (1.58, least)], "dim")
        d.text(0.8, least + 0.2, f"at least {least:.2f} mm")
        d.text(0.8, least + 0.36, f"{100 * least / found.depth / 1e3:.0f} %")
        return d

    return draw


for _overlap in OVERLAPS:
    drawing(f"settings-overlap-{_overlap}")(_seam(_overlap))
