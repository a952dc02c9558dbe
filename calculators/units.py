"""One registry of units for the whole handbook.

Only the units a bench meets are defined (see ``data/bench_units.txt``), so the registry loads in a few
milliseconds inside the page.
"""

from __future__ import annotations

from functools import cache
from importlib.resources import files
from typing import Any, TypeAlias

import pint

Quantity: TypeAlias = "pint.Quantity[Any]"


def _registry() -> pint.UnitRegistry[Any]:
    registry: pint.UnitRegistry[Any] = pint.UnitRegistry(None)
    text = files("calculators").joinpath("data/bench_units.txt").read_text(encoding="utf-8")
    registry.load_definitions(text.splitlines())
    return registry


UNITS = _registry()

# How a unit is printed where pint's own short form is not what the bench writes.
_PRINTED = {"": "", "count": "", "money": "", "degree": "°", "percent": "%", "permille": "‰"}


def quantity(value: float, unit: str = "") -> Quantity:
    """``value`` in ``unit`` (pint spelling, such as ``"g/cm**3"``); no unit means a bare number."""
    return UNITS.Quantity(value, unit)


def magnitude(amount: Quantity, unit: str = "") -> float:
    """The bare number of ``amount`` in ``unit``."""
    return float(amount.to(unit).magnitude)


@cache
def unit_text(unit: str) -> str:
    """How a unit is printed: ``"g/cm**3"`` → ``"g/cm³"``."""
    if unit in _PRINTED:
        return _PRINTED[unit]
    return f"{UNITS.Unit(unit):~P}".replace("money/", "per ")


def number_text(value: float, digits: int = 4) -> str:
    """A number to so many significant digits, without trailing zeros or exponents in the usual range."""
    if value == 0:
        return "0"
    if abs(value) >= 1e7 or abs(value) < 1e-5:
        return f"{value:.{digits - 1}e}".replace("-", "−")
    places = digits
    size = abs(value)
    while size >= 1 and places > 0:
        size /= 10
        places -= 1
    while size < 0.1:
        size *= 10
        places += 1
    text = f"{value:.{places}f}"
    if "." in text:
        text = text.rstrip("0").rstrip(".")
    if text in ("-0", ""):
        text = "0"
    return text.replace("-", "−")


def quantity_text(amount: Quantity, unit: str, digits: int = 4) -> str:
    """An amount as a person reads it, number and unit tied by a no-break space."""
    return with_unit(number_text(magnitude(amount, unit), digits), unit)


def with_unit(number: str, unit: str) -> str:
    """Tie a printed number to its unit: ``"1.5 mm"``, ``"45°"``, ``"75 %"``."""
    printed = unit_text(unit)
    if not printed:
        return number
    return number + ("" if printed == "°" else "\u00a0") + printed
