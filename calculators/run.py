"""The one door: text per field in, plain data out.

The page, the command line and the tests all come through here. Nothing that a person types leads to anything but
an answer or sentences.
"""

from __future__ import annotations

import difflib
import json
import math
from collections.abc import Mapping
from contextlib import suppress
from typing import Any

from .data import sources
from .declare import Calculator, Value, Working, all_calculators
from .errors import Complaint, FieldErrors
from .fields import Choice
from .house import NO_HOUSE, House, read_house
from .show import answer_html, cut_text, range_text
from .units import Quantity, magnitude, unit_text

SURPRISE = "This calculator can't work with these numbers together. Check each one, or start from the example again"


def find(slug: str) -> Calculator:
    """The calculator of that slug; raises ``FieldErrors`` naming the nearest known one."""
    known = all_calculators()
    if slug in known:
        return known[slug]
    raise FieldErrors({"": f"There is no calculator {slug[:60]}.{_nearest(slug, list(known))}"})


def _nearest(word: str, known: list[str]) -> str:
    return f" The nearest is {difflib.get_close_matches(word, known, 1, 0)[0]}"


def work_out(
    calculator: Calculator, texts: Mapping[str, str], house: House = NO_HOUSE
) -> tuple[dict[str, str], Working]:
    """Read all fields and work the answer out.

    Fields left out take the worked example's text; ``house`` is what the shop has settled. Returns the texts of the
    fields that counted, spelt out, and the working.
    Raises ``FieldErrors`` with a sentence for every field that can't be used.
    """
    names = [one.name for one in calculator.fields]
    errors = {name: f"There is no field {name[:60]}.{_nearest(name, names)}" for name in texts if name not in names}
    given = {**calculator.example(), **{name: text for name, text in texts.items() if name in names}}
    given.update(_implied(calculator, texts))
    given.update({one.name: one.in_house(given[one.name], house) for one in calculator.fields})
    chosen = _chosen(calculator, given)
    asked: dict[str, str] = {}
    read: dict[str, Any] = {}
    for one in calculator.fields:
        if not one.asked(chosen):
            read[one.name] = None
            continue
        asked[one.name] = given[one.name]
        try:
            read[one.name] = one.read(given[one.name])
        except Complaint as complaint:
            errors[one.name] = complaint.sentence
    if errors:
        raise FieldErrors(errors)
    working = Working(calculator)
    working.cite(*calculator.sources)
    for text in calculator.cautions:
        working.caution(text)
    try:
        calculator.work(working, **read)
    except Complaint as complaint:
        raise FieldErrors({complaint.field: complaint.sentence}) from complaint
    if working.errors:
        raise FieldErrors(working.errors)
    if not all(_finite(value) for value in working.values.values()):
        raise FieldErrors({"": SURPRISE})
    return asked, working


def _chosen(calculator: Calculator, given: Mapping[str, str]) -> dict[str, str]:
    """The texts with every choice in its own spelling, so that ``Plug through the plate`` counts as ``plug``."""
    found = dict(given)
    for one in calculator.fields:
        if isinstance(one, Choice):
            with suppress(Complaint):
                found[one.name] = one.read(given[one.name]) or ""
    return found


def _implied(calculator: Calculator, texts: Mapping[str, str]) -> dict[str, str]:
    """What a field that was typed says about a choice that was left out.

    ``ring_size="US 7"`` alone means that the ring is given by its size: without this the field would be dropped
    silently and the worked example's ring answered instead. The page always sends the choice, so it never differs.
    """
    found: dict[str, str] = {}
    example = calculator.example()
    for one in calculator.fields:
        typed = bool(texts.get(one.name, "").strip())
        if typed and one.when and one.when[0] not in texts and not one.asked(example):
            found.setdefault(one.when[0], one.when[1][0])
    return found


def _finite(value: Value) -> bool:
    amounts = (value.value, value.low, value.high)
    return all(math.isfinite(float(one.magnitude)) for one in amounts if one is not None and not isinstance(one, str))


def answer(slug: str, texts: Mapping[str, str], html: bool = False, house: House = NO_HOUSE) -> dict[str, Any]:
    """The answer as plain data, or ``{"calculator", "errors": {field: sentence}}``.

    With ``html`` the fragment for the page's answer panel comes along.
    """
    try:
        asked, working = work_out(find(slug), texts, house)
        data = as_data(asked, working)
        return {**data, "html": answer_html(working)} if html else data
    except FieldErrors as bad:
        return {"calculator": slug, "errors": plain(bad.errors)}
    except (ArithmeticError, ValueError) as surprise:  # numbers that no limit foresaw
        return {"calculator": slug, "errors": {"": SURPRISE}, "detail": repr(surprise)}


def plain(data: Any) -> Any:
    """The same data with plain spaces: no-break spaces are for the printed page only."""
    if isinstance(data, str):
        return data.replace("\u00a0", " ")
    if isinstance(data, dict):
        return {name: plain(part) for name, part in data.items()}
    return [plain(part) for part in data] if isinstance(data, list) else data


def as_data(asked: dict[str, str], working: Working) -> dict[str, Any]:
    """The JSON of an answer; see DEVELOPERS.md for its form."""
    known = sources()
    data = {
        "calculator": working.calculator.slug,
        "inputs": asked,
        "results": {name: _value_data(value) for name, value in working.values.items()},
        "verdict": working.verdict,
        "steps": [vars(step) for step in working.steps],
        "cautions": [{"text": caution.text, "stop": caution.stop} for caution in working.cautions],
        "sources": [
            {"key": key, "citation": known[key].citation, "extent": known[key].extent} for key in working.cited
        ],
    }
    plain_data: dict[str, Any] = plain(data)
    return plain_data


def plain_number(amount: Quantity, unit: str) -> float | int:
    """A number for the JSON, to eight significant digits so that every Python gives the same text."""
    number = float(f"{magnitude(amount, unit):.8g}")
    return int(number) if number.is_integer() and abs(number) < 1e15 else number


def _value_data(value: Value) -> dict[str, Any]:
    unit = value.result.unit
    if isinstance(value.value, str):
        data: dict[str, Any] = {"value": value.value, "unit": unit_text(unit)}
    else:
        data = {"value": plain_number(value.value, unit), "unit": unit_text(unit)}
        data["text"] = value.shown or cut_text(value.value, value.result)
        if span := range_text(value):
            data["range"] = span
    for name, end in (("low", value.low), ("high", value.high)):
        if end is not None:
            data[name] = plain_number(end, unit)
    return {**data, **value.extra, **({"note": value.note} if value.note else {})}


def run_json(request: str) -> str:
    """The door for the page: ``{"calculator", "fields"}`` as JSON in, the answer with its ``html`` as JSON out.

    ``"house"`` may stand beside them: what the shop has settled, as the form carries it.
    """
    try:
        asked = json.loads(request)
        slug, texts = str(asked["calculator"]), {str(k): str(v) for k, v in asked["fields"].items()}
        house = read_house(asked.get("house", {}))
    except (ValueError, KeyError, TypeError, AttributeError, Complaint):
        return json.dumps({"calculator": "", "errors": {"": "The page asked a question that can't be read. Reload it"}})
    return json.dumps(answer(slug, texts, html=True, house=house), ensure_ascii=False)
