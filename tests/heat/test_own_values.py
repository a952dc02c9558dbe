"""What a shop's own values do to the starting settings: they narrow, and never move the pulse without need."""

from __future__ import annotations

from typing import Any

import pytest

from calculators.heat.heat_metals import heat_keys, heat_metal
from calculators.metals import metals
from calculators.run import answer

METALS = [one for one in metals() if one.key in heat_keys()]
PASSES = ("tack", "weld", "leveling")


def settings(**fields: str) -> dict[str, Any] | None:
    found: dict[str, Any] | None = answer("start-settings", fields).get("results")
    return found


@pytest.mark.parametrize("metal", METALS, ids=lambda one: one.key)
@pytest.mark.parametrize("thickness", ["0.6 mm", "1.5 mm"])
def test_a_narrower_absorptivity_gives_a_narrower_range_inside_the_wide_one(metal: Any, thickness: str) -> None:
    prior = heat_metal(metal).absorptivity
    low, middle, high = (float(one.magnitude) for one in (prior.low, prior.value, prior.high))  # type: ignore[union-attr]
    wide = settings(metal=metal.key, thickness=thickness)
    # Around the guess itself, a fifth of its width: the machine can what it could before.
    own = settings(
        metal=metal.key,
        thickness=thickness,
        absorptivity=f"{middle} ({middle * (low / middle) ** 0.2:.4g} to {middle * (high / middle) ** 0.2:.4g})",
    )
    assert (wide is None) == (own is None)
    if wide is None or own is None:
        return
    for name in PASSES:
        was, now = wide[f"{name}_energy"], own[f"{name}_energy"]
        assert now["low"] > was["low"]
        assert now["high"] <= was["high"] * 1.001
    assert (
        own["weld_energy"]["high"] / own["weld_energy"]["low"]
        < wide["weld_energy"]["high"] / wide["weld_energy"]["low"]
    )


@pytest.mark.parametrize("metal", METALS, ids=lambda one: one.key)
def test_the_shop_s_own_values_leave_pulse_length_and_spot(metal: Any) -> None:
    prior = heat_metal(metal).absorptivity
    wide = settings(metal=metal.key, thickness="0.8 mm")
    own = settings(metal=metal.key, thickness="0.8 mm", absorptivity=f"{float(prior.value.magnitude) * 1.2:.4g}")
    if wide is None or own is None:
        assert metal.key in ("copper", "fine-silver")  # out of reach of the worked example's machine
        return
    for name in ("weld_duration", "weld_spot"):
        assert own[name]["value"] == wide[name]["value"]


@pytest.mark.parametrize("metal", METALS, ids=lambda one: one.key)
@pytest.mark.parametrize("joint", ["butt", "edge", "plug", "pit-fill"])
@pytest.mark.parametrize("thickness", ["0.3 mm", "0.5 mm", "1 mm"])
def test_a_tack_never_takes_more_than_the_weld(metal: Any, joint: str, thickness: str) -> None:
    found = settings(metal=metal.key, joint=joint, thickness=thickness)
    if found is not None:
        assert found["tack_energy"]["value"] <= found["weld_energy"]["value"] * (1 + 1e-9)
