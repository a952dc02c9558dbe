"""Formulas are worked out and printed from the same text."""

from __future__ import annotations

import math

import pint
import pytest
from hypothesis import given
from hypothesis import strategies as st

from calculators.formula import evaluate, in_words, names_in, with_numbers
from calculators.units import quantity

D, T = quantity(17.3228, "mm"), quantity(1.5, "mm")


def test_worked_out_with_units() -> None:
    assert evaluate("pi * (d + t)", {"d": D, "t": T}).to("mm").magnitude == pytest.approx(math.pi * 18.8228)
    assert evaluate("sqrt(a ** 2)", {"a": D}).to("mm").magnitude == pytest.approx(17.3228)
    assert evaluate("acos(1 - h / r)", {"h": T, "r": D}).to("radian").magnitude == pytest.approx(
        math.acos(1 - 1.5 / 17.3228)
    )
    assert evaluate("2 - -3 ** 2", {}).magnitude == 11


def test_printed_as_people_read() -> None:
    text = "pi * (inside_diameter + 2 * t) ** 2 / (a - (b - c))"
    assert in_words(text) == "π × (inside diameter + 2 × t)² ÷ (a − (b − c))"
    assert with_numbers("pi * (d + t)", {"d": D, "t": T}) == "π × (17.32\u00a0mm + 1.5\u00a0mm)"
    assert with_numbers("d ** 2", {"d": D}) == "(17.32\u00a0mm)²"
    assert in_words("-a - (b + c) / (d * e)") == "−a − (b + c) ÷ (d × e)"
    assert in_words("a / b / c") == "a ÷ b ÷ c"
    assert in_words("a / (b / c)") == "a ÷ (b ÷ c)"
    assert names_in("pi * sqrt(d) + t") == {"d", "t"}


@given(
    st.recursive(
        st.sampled_from("abc"), lambda x: st.builds("({} {} {})".format, x, st.sampled_from("+-*/"), x), max_leaves=8
    )
)
def test_the_printed_formula_means_the_same(text: str) -> None:
    values = {"a": 2.0, "b": 3.0, "c": 7.0}
    printed = in_words(text).replace("×", "*").replace("÷", "/").replace("−", "-")
    try:
        expected = eval(text, {}, values)  # noqa: S307 (our own generated text)
    except ZeroDivisionError:
        return
    assert eval(printed, {}, values) == pytest.approx(expected)  # noqa: S307
    got = evaluate(text, {name: quantity(value) for name, value in values.items()})
    assert got.magnitude == pytest.approx(expected)


@pytest.mark.parametrize("text", ["__import__('os')", "a.b", "[1]", "'x'", "lambda: 1", "a if b else c", "unknown"])
def test_only_arithmetic_is_understood(text: str) -> None:
    with pytest.raises(ValueError):
        evaluate(text, {"a": D, "b": D, "c": D})


def test_units_that_do_not_fit_are_noticed() -> None:
    with pytest.raises(pint.DimensionalityError):
        evaluate("d + m", {"d": D, "m": quantity(1, "g")})
