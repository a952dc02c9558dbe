"""Read numbers and amounts the way people write them at a bench.

``1.5``, ``1,5``, ``1 1/2``, ``1½``, ``3/64 in``, ``0.06"``, ``1.5mm``. A number that could be read two ways
(``1,234`` or ``1,234.5``) is refused with a sentence instead of guessed.
"""

from __future__ import annotations

import re
from typing import NamedTuple

import pint

from .errors import Complaint
from .units import UNITS, Quantity, quantity

LONGEST = 60  # nobody types a longer amount on purpose

_VULGAR = {
    "¼": "1/4", "½": "1/2", "¾": "3/4", "⅐": "1/7", "⅑": "1/9", "⅒": "1/10", "⅓": "1/3", "⅔": "2/3",
    "⅕": "1/5", "⅖": "2/5", "⅗": "3/5", "⅘": "4/5", "⅙": "1/6", "⅚": "5/6", "⅛": "1/8", "⅜": "3/8",
    "⅝": "5/8", "⅞": "7/8",
}  # fmt: skip
_SAME = {"−": "-", "–": "-", "⁄": "/", "″": '"', "”": '"', "“": '"', "\u00a0": " ", "\u202f": " ", "μ": "µ"}
_NUMBER = re.compile(
    r"(?P<sign>[+-]?)\s*(?:(?P<whole>[0-9]+)\s+)?(?P<top>[0-9]+)\s*/\s*(?P<bottom>[0-9]+)"
    r"|(?P<plain>[+-]?(?:[0-9]+(?:[.,][0-9]*)*|[.,][0-9]+)(?:[eE][+-]?[0-9]+)?)"
)
_POWER = r"(?:\^|\*\*)?[23]"  # the only powers a bench needs; anything higher is a slip
_UNIT = re.compile(rf"(?:[A-Za-zµ°_]+|%|‰)(?:{_POWER})?(?:[/*][A-Za-zµ°_]+(?:{_POWER})?)*")
# Words people write that are not the registry's own spelling.
_UNIT_WORDS = {
    '"': "inch", "inches": "inch", "ins": "inch", "mms": "mm", "grams": "g", "gm": "g", "gms": "g", "gr.": "grain",
    "grains": "grain", "cts": "ct", "carats": "ct", "oz t": "ozt", "ozs": "oz", "pct": "%", "secs": "s",
    "seconds": "s", "minutes": "min", "mins": "min", "hours": "h", "degrees": "deg", "°": "deg", "j": "J", "w": "W",
    "kw": "kW", "mj": "mJ", "hz": "Hz", "v": "V", "n": "N", "mpa": "MPa", "c": "degC", "°c": "degC", "f": "degF",
    "°f": "degF", "ppt": "permille", "l": "liter",
}  # fmt: skip


class WrongUnit(Exception):
    """The amount is readable, but its unit measures something else (grams for a width)."""


class Read(NamedTuple):
    """A number and the unit text that followed it (empty when none was typed)."""

    value: float
    unit: str


def plain_name(text: str) -> str:
    """A name as it is compared: lower case, no hyphens, single spaces."""
    return " ".join(text.lower().replace("-", " ").split())


def tidy(text: str) -> str:
    """One spelling for the many ways of typing fractions, minus signs, inch marks and spaces."""
    for mark, plain in _VULGAR.items():
        text = text.replace(mark, f" {plain} ")
    for mark, plain in _SAME.items():
        text = text.replace(mark, plain)
    return " ".join(text.split())


def read_plain_number(text: str) -> float:
    """A number with a decimal point or a decimal comma.

    Raises ``Complaint`` for anything that could be read two ways.
    """
    if "," in text and "." in text:
        raise Complaint(f"{text} can be read two ways: enter it with a point and no comma, such as 1234.5")
    if text.count(",") > 1 or text.count(".") > 1:
        raise Complaint(f"{text} can be read two ways: enter it with one decimal point, such as 1234.5")
    if re.fullmatch(r"[+-]?[1-9][0-9]{0,2},[0-9]{3}", text):
        whole, part = text.split(",")
        raise Complaint(f"{text} can be read two ways: enter {whole}.{part} or {whole}{part}")
    return float(text.replace(",", "."))


def read_number(text: str) -> Read:
    """Split ``text`` into a number and the unit written after it.

    Raises ``ValueError`` when there is no number, ``Complaint`` when it can be read two ways.
    """
    text = tidy(text)
    found = _NUMBER.match(text)
    if not found:
        raise ValueError(text)
    if found["plain"] is None:
        if int(found["bottom"]) == 0:
            raise Complaint("A fraction can't be over 0: enter it such as 1/2")
        value = int(found["whole"] or 0) + int(found["top"]) / int(found["bottom"])
        value = -value if found["sign"] == "-" else value
    else:
        value = read_plain_number(found["plain"])
    return Read(value, text[found.end() :].strip())


def read_unit(typed: str) -> pint.Unit:
    """The unit a person wrote: ``mm``, ``Mm`` (a tablet's capital), ``"``, ``g/cm3``.

    Raises ``ValueError`` when it is no unit of the bench.
    """
    word = _UNIT_WORDS.get(typed.lower(), typed).replace("³", "3").replace("²", "2")
    if not _UNIT.fullmatch(word):
        raise ValueError(typed)
    word = re.sub(rf"(?<=[a-zµ]){_POWER}", lambda power: "**" + power[0][-1], word)
    for spelling in (word, word.lower()):
        try:
            return UNITS.Unit(spelling)
        except pint.UndefinedUnitError:
            continue
    raise ValueError(typed)


def read_amount(text: str, unit: str) -> Quantity:
    """An amount in ``unit`` or in any unit of the same kind written after the number.

    Raises ``ValueError`` when it is not a number, ``WrongUnit`` when the unit measures something else.
    """
    value, typed = read_number(text)
    if not typed:
        return quantity(value, unit)
    parsed = read_unit(typed)
    if not parsed.is_compatible_with(UNITS.Unit(unit)):
        raise WrongUnit(typed)
    return UNITS.Quantity(value, parsed).to(unit)
