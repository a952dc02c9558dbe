"""Numbers, amounts and ring sizes as people write them."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calculators.errors import Complaint
from calculators.fields import Length, StockThickness
from calculators.reading import WrongUnit, read_amount, read_number
from calculators.ring_scales import read_ring_size, scales
from calculators.units import magnitude

IN = 25.4  # mm, exact by definition of the international inch


@pytest.mark.parametrize(
    ("text", "mm"),
    [
        ("1.5", 1.5), ("1,5", 1.5), ("1.5 mm", 1.5), ("1.5mm", 1.5), ("1,5 Mm", 1.5), (" 1.50\u00a0mm ", 1.5),
        ("0.06 in", 0.06 * IN), ('0.06"', 0.06 * IN), ("3/64 in", 3 / 64 * IN), ("1 1/2 mm", 1.5), ("1½ mm", 1.5),
        ("½", 0.5), (".5", 0.5), ("2 cm", 20.0), ("0,125", 0.125), ("1500 µm", 1.5), ("1500 um", 1.5), ("6 1/2", 6.5),
        ("+2", 2.0), ("1e1", 10.0),
    ],
)  # fmt: skip
def test_lengths_as_typed(text: str, mm: float) -> None:
    assert magnitude(read_amount(text, "mm"), "mm") == pytest.approx(mm, rel=1e-12)


@pytest.mark.parametrize("text", ["1,234.5", "1.234,5", "1,234", "12,345", "1.2.3", "1,2,3"])
def test_a_number_that_reads_two_ways_is_refused(text: str) -> None:
    with pytest.raises(Complaint, match="two ways"):
        read_number(text)


def test_a_fraction_over_nothing_is_refused() -> None:
    with pytest.raises(Complaint, match="over 0"):
        read_number("1/0")


@pytest.mark.parametrize("text", ["", "abc", "mm", "½½½½ furlongs", "3 mm^9", "5 m**9**9", "٣", "1.5 mm mm"])
def test_no_amount(text: str) -> None:
    with pytest.raises(ValueError):
        read_amount(text, "mm")


def test_a_weight_is_no_length() -> None:
    with pytest.raises(WrongUnit):
        read_amount("12 g", "mm")


# B&S: source ASTM B258 formula; values from the reference notes' units table (computed, formula seen).
@pytest.mark.parametrize(
    ("gauge", "mm"), [(14, 1.6277), (16, 1.2908), (18, 1.0237), (20, 0.8118), (24, 0.5106), (30, 0.2546)]
)
def test_gauge_as_thickness(gauge: int, mm: float) -> None:
    field = StockThickness(name="t", label="Thickness", low=0.1, high=10, example="1 mm")
    for text in (f"{gauge} ga", f"{gauge}ga", f"{gauge} B&S", f"{gauge} gauge"):
        assert magnitude(field.read(text), "mm") == pytest.approx(mm, abs=0.00005001)


def test_limits_belong_to_the_range() -> None:
    field = Length(name="w", label="Band width", low=0.5, high=25.4, example="3 mm")
    assert magnitude(field.read("1 in"), "mm") == pytest.approx(25.4)
    assert magnitude(field.read("0.5"), "mm") == 0.5
    with pytest.raises(Complaint, match=r"Band width must be between 0\.5 and 25\.4"):
        field.read("25.41")


@pytest.mark.parametrize(
    ("text", "around"),
    [
        ("US 7", math.pi * 0.682 * IN), ("7 us", math.pi * 0.682 * IN), ("us7", math.pi * 0.682 * IN),
        ("US size 6½", math.pi * 0.666 * IN), ("US 6 1/2", math.pi * 0.666 * IN), ("6½ US", math.pi * 0.666 * IN),
        ("UK N½", 54.375), ("uk n 1/2", 54.375), ("N½", 54.375), ("N", 53.75), ("Z+3", 72.5), ("UK Z+1½", 70.625),
        ("ISO 54", 54.0), ("EU 54", 54.0), ("54 iso", 54.0), ("JP 14", math.pi * 52 / 3), ("CH 14.4", 54.4),
        ("CH 14,4", 54.4), ("17.3 mm across", math.pi * 17.3), ("54.4 mm around", 54.4),
        ("0.68 in across", math.pi * 0.68 * IN),
        ('0.68" inside diameter', math.pi * 0.68 * IN), ("54.4 circumference", 54.4), ("54.4 around", 54.4),
    ],
)  # fmt: skip
def test_ring_sizes_as_typed(text: str, around: float) -> None:
    assert read_ring_size(text).circumference == pytest.approx(around, rel=1e-12)


@given(st.sampled_from(sorted(scales())), st.floats(40, 76))
def test_a_circumference_comes_back_from_every_scale(key: str, around: float) -> None:
    scale = scales()[key]
    assert scale.circumference(scale.number(around)) == pytest.approx(around, rel=1e-12)
    assert abs(scale.circumference(scale.nearest(around)) - around) <= scale.per_size * scale.step / 2 + 1e-6


@given(st.sampled_from(sorted(scales())), st.floats(40, 76), st.floats(0.01, 5))
def test_scales_rise(key: str, around: float, more: float) -> None:
    scale = scales()[key]
    assert scale.number(around + more) > scale.number(around)
    assert scale.nearest(around + more) >= scale.nearest(around)
