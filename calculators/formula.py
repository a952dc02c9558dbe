"""Formulas that are worked out and printed from one and the same text.

A step of the working is written once, ``"pi * (inside_diameter + thickness)"``. The number is computed from that
text and the line a person reads is set from it, so the two can never drift apart. Only arithmetic is understood:
numbers, names, ``+ - * / **``, ``pi`` and a few functions.
"""

from __future__ import annotations

import ast
import math
import operator
from collections.abc import Callable, Mapping
from functools import lru_cache
from typing import Any

from .units import UNITS, Quantity, number_text, quantity, with_unit


def _of_number(function: Callable[[float], float]) -> Callable[[Quantity], Quantity]:
    return lambda x: quantity(function(float(x.to("").magnitude)))


def _smallest(*amounts: Quantity) -> Quantity:
    return min(amounts)


def _largest(*amounts: Quantity) -> Quantity:
    return max(amounts)


_FUNCTIONS: dict[str, Callable[..., Quantity]] = {
    "sqrt": lambda x: x**0.5,
    "abs": abs,
    "min": _smallest,
    "max": _largest,
    **{name: _of_number(getattr(math, name)) for name in ("exp", "log", "erfc", "radians")},
    # 0.6 ÷ 0.2 is three, whatever the last bit of the quotient says.
    "ceil": _of_number(lambda x: math.ceil(x - 1e-9)),
    "floor": _of_number(lambda x: math.floor(x + 1e-9)),
    "sin": lambda x: quantity(math.sin(float(x.to("radian").magnitude))),
    "cos": lambda x: quantity(math.cos(float(x.to("radian").magnitude))),
    "tan": lambda x: quantity(math.tan(float(x.to("radian").magnitude))),
    "asin": lambda x: quantity(math.asin(float(x.to("").magnitude)), "radian"),
    "acos": lambda x: quantity(math.acos(float(x.to("").magnitude)), "radian"),
    "atan": lambda x: quantity(math.atan(float(x.to("").magnitude)), "radian"),
}
_CONSTANTS = {"pi": (math.pi, "π")}
_OPERATION: dict[type, Callable[[Any, Any], Any]] = {
    ast.Add: operator.add,
    ast.Sub: operator.sub,
    ast.Mult: operator.mul,
    ast.Div: operator.truediv,
}
_STRENGTH = {ast.Add: 1, ast.Sub: 1, ast.Mult: 2, ast.Div: 2, ast.USub: 3, ast.Pow: 4}
_SIGN = {ast.Add: " + ", ast.Sub: " − ", ast.Mult: " × ", ast.Div: " ÷ "}
_RAISED = str.maketrans("0123456789.-", "⁰¹²³⁴⁵⁶⁷⁸⁹·⁻")


@lru_cache(maxsize=512)
def _tree(text: str) -> ast.expr:
    return ast.parse(text, mode="eval").body


def evaluate(text: str, values: Mapping[str, Quantity]) -> Quantity:
    """Work out ``text`` with ``values``; units are carried and checked by pint.

    Raises ``ValueError`` for a name that was not given or for anything but arithmetic.
    """

    def work(node: ast.expr) -> Any:
        match node:
            case ast.Constant(value=int() | float() as number):
                return quantity(number)
            case ast.Name(id=name) if name in values:
                return values[name]
            case ast.Name(id=name) if name in _CONSTANTS:
                return quantity(_CONSTANTS[name][0])
            case ast.Name(id=name):
                raise ValueError(f"{name} has no value in {text!r}")
            case ast.UnaryOp(op=ast.USub(), operand=inner):
                return -work(inner)
            case ast.BinOp(left=left, op=ast.Pow(), right=right):
                power = float(work(right).to("").magnitude)
                return work(left) ** (int(power) if power.is_integer() else power)
            case ast.BinOp(left=left, op=sign, right=right) if type(sign) in _OPERATION:
                return _OPERATION[type(sign)](work(left), work(right))
            case ast.Call(func=ast.Name(id=name), args=parts) if name in _FUNCTIONS:
                return _FUNCTIONS[name](*(work(part) for part in parts))
        raise ValueError(f"{ast.dump(node)} is not arithmetic in {text!r}")

    value: Quantity = work(_tree(text))
    return value


def names_in(text: str) -> set[str]:
    """The names of the amounts a formula needs."""
    functions = {node.func for node in ast.walk(_tree(text)) if isinstance(node, ast.Call)}
    names = {node.id for node in ast.walk(_tree(text)) if isinstance(node, ast.Name) and node not in functions}
    return names - set(_CONSTANTS)


def in_words(text: str) -> str:
    """The formula as a person reads it: ``"π × (inside diameter + thickness)"``."""
    return _typeset(_tree(text), lambda name: name.replace("_", " "))


def with_numbers(text: str, values: Mapping[str, Quantity]) -> str:
    """The formula with the numbers put in: ``"π × (17.32 mm + 1.5 mm)"``."""
    return _typeset(_tree(text), lambda name: amount_text(values[name]))


def amount_text(amount: Quantity) -> str:
    """An amount in its own unit, four significant digits."""
    unit = str(amount.units) if amount.units != UNITS.Unit("") else ""
    return with_unit(number_text(float(amount.magnitude)), unit)


def _typeset(node: ast.expr, name_text: Callable[[str], str]) -> str:
    def put(part: ast.expr, outer: int, right_of: bool = False) -> str:
        text, own = place(part)
        return f"({text})" if own < outer or (right_of and own == outer) else text

    def place(part: ast.expr) -> tuple[str, int]:
        if isinstance(part, ast.Constant) and isinstance(part.value, (int, float)):
            return number_text(float(part.value), 6), 9
        if isinstance(part, ast.Name):
            if part.id in _CONSTANTS:
                return _CONSTANTS[part.id][1], 9
            text = name_text(part.id)
            return text, 3 if text.startswith("−") else 9
        if isinstance(part, ast.UnaryOp):
            return "−" + put(part.operand, 3), 3
        if isinstance(part, ast.BinOp) and isinstance(part.op, ast.Pow):
            power = _typeset(part.right, name_text)
            base = put(part.left, 5)
            if isinstance(part.left, ast.Name) and (" " in base or "\u00a0" in base):
                base = f"({base})"
            return (base + power.translate(_RAISED) if power.isdigit() else f"{base}^({power})"), 4
        if isinstance(part, ast.BinOp):
            own = _STRENGTH[type(part.op)]
            not_free = isinstance(part.op, (ast.Sub, ast.Div))
            return put(part.left, own) + _SIGN[type(part.op)] + put(part.right, own, not_free), own
        if isinstance(part, ast.Call) and isinstance(part.func, ast.Name):
            inside = ", ".join(_typeset(argument, name_text) for argument in part.args)
            if part.func.id == "sqrt":
                return f"√({inside})", 9
            if part.func.id == "abs":
                return f"|{inside}|", 9
            return f"{part.func.id}({inside})", 9
        raise ValueError(ast.dump(part))

    return place(node)[0]
