"""The pool of one pulse: table, regimes, energy balance, and what must hold for every pulse."""

from __future__ import annotations

import hashlib
import math
from importlib.resources import files
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from build_scripts.heat_model.benchmark import by_solver
from calculators.heat.aim import Machine, choose, energy_for
from calculators.heat.heat_metals import heat_keys, heat_metal
from calculators.heat.melt_table import melt_table
from calculators.heat.pool import Material, Shot, conducted, pool, threshold_energy
from calculators.metals import metals

METALS = {metal.key: heat_metal(metal) for metal in metals() if metal.key in heat_keys()}
MATERIALS = {key: heat.material() for key, heat in METALS.items()}
shots = st.builds(
    Shot,
    energy=st.floats(0.05, 80),
    duration=st.floats(0.5e-3, 20e-3),
    spot=st.floats(0.2e-3, 2e-3),
    thickness=st.one_of(st.just(math.inf), st.floats(0.2e-3, 3e-3)),
)
materials = st.sampled_from(sorted(MATERIALS)).map(MATERIALS.__getitem__)
shares = st.floats(0.02, 1.0)


def test_the_table_is_the_one_recorded() -> None:
    text = files("calculators").joinpath("data/melt_table.txt").read_text("utf-8")
    lines = text.splitlines()
    recorded = next(line.split()[-1] for line in lines if line.startswith("# SHA-256"))
    body = "\n".join(line for line in lines if " " not in line) + "\n"
    assert hashlib.sha256(body.encode()).hexdigest() == recorded
    assert len(text) < 60_000
    assert len(melt_table().rows) == 3 * 3 * 6 * 12


@pytest.mark.parametrize(
    ("fourier", "ste", "kappa", "depth", "off"), [(0.3, 2.6, 0.7, 0.279, 0.006), (1.0, 2.3, 0.5, 0.42, 0.01)]
)
def test_depths_computed_twice(fourier: float, ste: float, kappa: float, depth: float, off: float) -> None:
    """FV1 and FV2 through the table: figures of another solver and of FiPy 4.0.3."""
    material = Material(1.0, ste, 1.0, 1.0, kappa, melting=1.0, boiling=10.0, start=0.0)
    found = conducted(fourier, math.inf, 2.0, material)
    assert found[0] == pytest.approx(depth, abs=off)
    if fourier == 1.0:
        assert found[2] == pytest.approx(2.771, abs=0.01)


@pytest.mark.parametrize(
    ("metal", "thickness"), [("14k-rose", 0.9), ("platinum-950-ruthenium", math.inf), ("sterling", 1.4)]
)
def test_against_the_solver_now(metal: str, thickness: float) -> None:
    """Cases of neither the table nor the benchmark; the issue asks for 4 % (median) and 10 % (90 of 100)."""
    group: dict[str, Any] = {
        "metal": metal,
        "spot": 0.73,
        "duration": 4.4,
        "thickness": thickness,
        "betas": [1.35, 2.05],
    }
    material = MATERIALS[metal]
    a = group["spot"] / 2
    fourier = material.diffusivity * 1e6 * group["duration"] * 1e-3 / a**2
    for beta, true in zip(group["betas"], by_solver(group, METALS[metal]), strict=True):
        depth, radius, _, _ = conducted(fourier, thickness / a, beta, material)
        assert depth == pytest.approx(true["depth"], rel=0.04)
        assert radius == pytest.approx(true["radius"], rel=0.02)


@pytest.mark.parametrize(
    ("metal", "low", "high"),
    [("14k-yellow", 0.9, 4.3), ("platinum-950-ruthenium", 1.9, 9.7)],
)
def test_energy_of_a_deep_weld(metal: str, low: float, high: float) -> None:
    """0.4 mm deep, 0.6 mm wide at efficiency 0.25 and 0.05, from the design notes (computed).

    Their 316L (1.9 to 9.5 J) lies 5 % under ours: theirs takes the density of hot steel, ours that of 20 °C.
    """
    heat = MATERIALS[metal].melt_heat * 0.5 * math.pi / 4 * 0.6e-3**2 * 0.4e-3
    assert heat / 0.25 == pytest.approx(low, abs=0.055)
    assert heat / 0.05 == pytest.approx(high, abs=0.055)


def test_conduction_alone_stays_shallow() -> None:
    """Surface at boiling, 0.5 mm and 4 ms: between about 0.09 and 0.22 mm in the notes' alloys (computed)."""
    for key, material in MATERIALS.items():
        shot = Shot(1.0, 4e-3, 0.5e-3)
        energy = threshold_energy(shot, material, 0.3, material.boiling_scaled / 1.1)
        assert 0.05e-3 < pool(shot.with_energy(energy * 0.999), material, 0.3).depth < 0.3e-3, key


def test_regimes_come_in_order() -> None:
    order = ["no melt", "conduction", "transition", "penetration"]
    shot = Shot(1.0, 3e-3, 0.5e-3, 1.5e-3)
    seen = [pool(shot.with_energy(0.2 * 1.1**i), MATERIALS["14k-yellow"], 0.2).regime for i in range(70)]
    assert list(dict.fromkeys(seen)) == order


@given(shot=shots, material=materials, share=shares, more=st.floats(1.001, 2))
@settings(max_examples=250, deadline=None)
def test_more_energy_never_melts_less(shot: Shot, material: Material, share: float, more: float) -> None:
    one, two = pool(shot, material, share), pool(shot.with_energy(shot.energy * more), material, share)
    assert two.depth >= one.depth * (1 - 1e-4) - 1e-9
    assert two.width >= one.width * (1 - 1e-4) - 1e-9
    assert two.surface >= one.surface - 0.5
    assert two.beta > one.beta


@given(shot=shots, material=materials, share=shares)
@settings(max_examples=150, deadline=None)
def test_melt_never_holds_more_heat_than_was_taken_in(shot: Shot, material: Material, share: float) -> None:
    """The conduction pool, taken as half an ellipsoid, needs less than the pulse gave."""
    found = pool(shot, material, share)
    if found.regime == "conduction" and not found.through:
        volume = 2 / 3 * math.pi * (found.width / 2) ** 2 * found.depth
        assert volume * material.melt_heat <= share * shot.energy * 1.02


@given(shot=shots, material=materials, share=shares, depth=st.floats(0.05e-3, 0.8e-3))
@settings(max_examples=60, deadline=None)
def test_the_aimed_energy_melts_that_deep(shot: Shot, material: Material, share: float, depth: float) -> None:
    depth = min(depth, 0.9 * shot.thickness)
    energy = energy_for(depth, shot, material, share, 0.11)
    # The energy is right to 3 %; a thin sheet's depth may run through its whole thickness within that.
    less, more = (pool(shot.with_energy(energy * part), material, share, 0.11).depth for part in (0.97, 1.03))
    assert less - 1e-6 <= depth <= more + 1e-6


def test_a_machine_that_can_not_melt_it_gives_none() -> None:
    weak = Machine(1.0, 200.0, 0.5e-3, 2e-3, 0.5e-3, 10e-3)
    assert choose(0.4e-3, 0.5e-3, 1.5e-3, MATERIALS["fine-silver"], 0.06, 0.11, weak) is None
    strong = Machine(60.0, 6000.0, 0.2e-3, 2e-3, 0.5e-3, 20e-3)
    shot = choose(0.4e-3, 0.5e-3, 1.5e-3, MATERIALS["platinum-950-ruthenium"], 0.28, 0.11, strong)
    assert shot is not None
    assert strong.can(shot)
    assert strong.spot_min <= shot.spot <= strong.spot_max
