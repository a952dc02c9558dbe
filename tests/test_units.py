"""The bench's units against pint's whole registry and SciPy's constants, which know nothing of ours."""

from __future__ import annotations

import pint
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy import constants  # type: ignore[import-untyped]

from calculators.gauges import (
    BS,
    SWG,
    brown_and_sharpe,
    metric_drills,
    nearest,
    number_drills,
    numbered,
    read_gauge,
    sizes_of,
)
from calculators.units import magnitude, quantity

WHOLE: pint.UnitRegistry[float] = pint.UnitRegistry()

# Ours, and the name of the same unit in pint's own registry.
PAIRS = [
    ("mm", "millimeter"), ("cm", "centimeter"), ("um", "micrometer"), ("in", "inch"), ("L", "liter"),
    ("mL", "milliliter"), ("kg", "kilogram"), ("mg", "milligram"), ("gr", "grain"), ("dwt", "pennyweight"),
    ("ozt", "troy_ounce"), ("ct", "carat"), ("oz", "ounce"), ("ms", "millisecond"), ("min", "minute"), ("h", "hour"),
    ("Hz", "hertz"), ("deg", "degree"), ("percent", "percent"), ("permille", "permille"), ("N", "newton"),
    ("J", "joule"), ("W", "watt"), ("Pa", "pascal"), ("MPa", "megapascal"), ("GPa", "gigapascal"), ("bar", "bar"),
    ("kgf", "kilogram_force"), ("V", "volt"), ("F", "farad"), ("uF", "microfarad"),
    ("g/cm**3", "gram/centimeter**3"),
]  # fmt: skip
BASE = {"[length]": "meter", "[mass]": "kilogram", "[time]": "second", "[current]": "ampere"}


def base_of(unit: pint.Unit) -> str:
    """The base unit of the same kind, spelled so that both registries know it."""
    return " * ".join(f"{BASE[kind]} ** {power}" for kind, power in unit.dimensionality.items()) or ""


@pytest.mark.parametrize(("ours", "theirs"), PAIRS)
def test_a_unit_is_what_pint_says(ours: str, theirs: str) -> None:
    base = base_of(WHOLE.Unit(theirs))
    assert magnitude(quantity(1, ours), base) == pytest.approx(WHOLE.Quantity(1, theirs).to(base).magnitude, rel=1e-12)


@pytest.mark.parametrize(
    ("ours", "base", "value"),
    [
        ("in", "meter", constants.inch),
        ("gr", "kilogram", constants.grain),
        ("ozt", "kilogram", constants.troy_ounce),
        ("ct", "kilogram", constants.carat),
        ("oz", "kilogram", constants.oz),
        ("min", "second", constants.minute),
        ("h", "second", constants.hour),
        ("deg", "radian", constants.degree),
        ("bar", "pascal", constants.bar),
        ("kgf", "newton", constants.kgf),
        ("L", "meter ** 3", constants.liter),
        ("um", "meter", constants.micron),
    ],
)
def test_a_unit_is_what_scipy_says(ours: str, base: str, value: float) -> None:
    assert magnitude(quantity(1, ours), base) == pytest.approx(value, rel=1e-12)


@given(st.floats(-200, 3000))
@settings(max_examples=40, deadline=None)
def test_temperatures_agree_with_scipy(celsius: float) -> None:
    ours = quantity(celsius, "degC")
    for name, unit in (("Fahrenheit", "degF"), ("Kelvin", "kelvin")):
        there = float(constants.convert_temperature(celsius, "Celsius", name))
        assert magnitude(ours, unit) == pytest.approx(there, rel=1e-12, abs=1e-9)


def test_vickers_is_force_over_area() -> None:
    assert magnitude(quantity(1, "HV"), "MPa") == pytest.approx(9.80665, rel=1e-12)


# Reference rows of the unit checks: what the troy tables and wire tables say, to their last digit.
@pytest.mark.parametrize(
    ("value", "unit", "wanted", "there", "within"),
    [
        (1, "dwt", 1.555174, "g", 5e-7),
        (1, "ozt", 31.1034768, "g", 5e-8),
        (1, "ozt", 480, "gr", 1e-9),
        (1, "ozt", 20, "dwt", 1e-9),
        (1, "ozt", 155.52, "ct", 0.005),
        (1, "g", 0.6430149, "dwt", 5e-8),
        (1, "oz", 28.34952, "g", 5e-6),
        (1, "kg", 32.15075, "ozt", 5e-6),
        (1, "ct", 0.2, "g", 1e-15),
    ],
)
def test_troy_weights(value: float, unit: str, wanted: float, there: str, within: float) -> None:
    assert magnitude(quantity(value, unit), there) == pytest.approx(wanted, abs=within)


# Brown & Sharpe to five decimals of an inch; imperial standard in mm; number drills in inches (unit checks).
BS_ROWS = """4/0 0.46000, 3/0 0.40964, 0 0.32486, 1 0.28930, 3 0.22942, 4 0.20431, 5 0.18194, 6 0.16202, 7 0.14429,
8 0.12849, 10 0.10190, 11 0.09074, 12 0.08081, 13 0.07196, 14 0.06408, 15 0.05707, 16 0.05082, 17 0.04526, 18 0.04030,
20 0.03196, 21 0.02846, 24 0.02010, 25 0.01790, 27 0.01420, 28 0.01264, 29 0.01126, 30 0.01003"""
SWG_ROWS = "14 2.032, 16 1.626, 22 0.711, 24 0.559, 26 0.457"
DRILL_ROWS = """50 0.0700, 51 0.0670, 52 0.0635, 54 0.0550, 56 0.0465, 57 0.0430, 58 0.0420, 59 0.0410, 61 0.0390,
63 0.0370, 64 0.0360, 65 0.0350, 66 0.0330, 68 0.0310, 69 0.0292, 70 0.0280, 71 0.0260, 74 0.0225, 75 0.0210,
76 0.0200, 77 0.0180, 78 0.0160, 79 0.0145, 80 0.0135"""


def rows(text: str) -> list[tuple[str, float]]:
    return [(row.split()[0], float(row.split()[1])) for row in text.replace("\n", " ").split(",")]


@pytest.mark.parametrize(("number", "inch"), rows(BS_ROWS))
def test_brown_and_sharpe_rows(number: str, inch: float) -> None:
    size = numbered(BS, number)
    assert size is not None
    assert size.mm / 25.4 == pytest.approx(inch, abs=5.1e-6)


@pytest.mark.parametrize(("number", "mm"), rows(SWG_ROWS))
def test_imperial_rows(number: str, mm: float) -> None:
    size = numbered(SWG, number)
    assert size is not None
    assert size.mm == pytest.approx(mm, abs=5.1e-4)


@pytest.mark.parametrize(("number", "inch"), rows(DRILL_ROWS))
def test_number_drill_rows(number: str, inch: float) -> None:
    found = [one for one in number_drills() if one.number == number]
    assert len(found) == 1
    assert found[0].mm / 25.4 == pytest.approx(inch, abs=1e-9)


def test_every_scale_runs_one_way_without_gaps() -> None:
    for scale in (BS, SWG):
        sizes = [one.mm for one in sizes_of(scale)]
        assert sizes == sorted(sizes, reverse=True)
        assert len(set(sizes)) == len(sizes)
    for drills in (number_drills(), metric_drills()):
        sizes = [one.mm for one in drills]
        assert sizes == sorted(sizes)
    assert [one.number for one in number_drills()] == [str(number) for number in range(80, 0, -1)]
    assert len([one for one in metric_drills() if one.mm < 1]) == 32  # four to each tenth from 0.2 to 0.9 mm


@given(st.integers(-3, 40))
@settings(max_examples=40, deadline=None)
def test_thirty_nine_numbers_are_a_factor_of_ninety_two(number: int) -> None:
    ratio = magnitude(brown_and_sharpe(number) / brown_and_sharpe(number + 39))
    assert ratio == pytest.approx(92, rel=1e-12)


@given(st.sampled_from([BS, SWG]), st.data())
@settings(max_examples=40, deadline=None)
def test_the_nearest_gauge_to_a_gauge_is_itself(scale: str, data: st.DataObject) -> None:
    size = data.draw(st.sampled_from(sizes_of(scale)))
    assert nearest(sizes_of(scale), size.size) == size
    assert numbered(scale, size.number) == size


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        ("18 ga", (BS, "18")), ("18GA", (BS, "18")), ("18 B&S", (BS, "18")), ("18 awg", (BS, "18")),
        ("16 SWG", (SWG, "16")), ("16 Imperial", (SWG, "16")), ("2/0 ga", (BS, "2/0")), ("18", None), ("18 mm", None),
        ("ga", None), ("1.5 ga", None),
    ],
)  # fmt: skip
def test_gauges_as_typed(text: str, meant: tuple[str, str] | None) -> None:
    assert read_gauge(text) == meant
