"""The same door from a shell: ``python -m calculators SLUG name=value ... [--json]``."""

from __future__ import annotations

import json
import os
import sys

from .data import sources
from .declare import Calculator, all_calculators
from .errors import Complaint, FieldErrors
from .fields import Choice, MetalField
from .house import read_house
from .run import SURPRISE, as_data, find, plain, work_out
from .show import value_text
from .units import unit_text

_USAGE = """python -m calculators                          list the calculators
python -m calculators SLUG --help              list its fields
python -m calculators SLUG name=value ...      work it out; fields left out take the worked example's values
                           --json              the answer as JSON
                           --ring-scale=US     read a ring size that is a number alone in this scale"""
_RING_SCALE = "--ring-scale="


def main(words: list[str]) -> int:
    """Run one command; returns the exit status (0 an answer, 2 something to correct)."""
    as_json = "--json" in words
    words = [word for word in words if word != "--json"]
    scale = "".join(word.removeprefix(_RING_SCALE) for word in words if word.startswith(_RING_SCALE))
    words = [word for word in words if not word.startswith(_RING_SCALE)]
    wants_help = any(word in ("--help", "-h") for word in words)
    words = [word for word in words if word not in ("--help", "-h")]
    if not words:
        print(_USAGE if wants_help else _listing())
        return 0
    try:
        calculator = find(words[0])
        if wants_help:
            print(_fields(calculator))
            return 0
        texts, errors = {}, {}
        for word in words[1:]:
            name, equals, text = word.partition("=")
            if not equals:
                errors[word[:60]] = 'Write every field as name=value, such as thickness="1.5 mm"'
            texts[name.strip()] = text
        if errors:
            raise FieldErrors(errors)
        asked, working = work_out(calculator, texts, read_house({"ring_scale": scale}))
    except FieldErrors as bad:
        return _complain(plain(bad.errors), as_json)
    except Complaint as complaint:  # the ring scale
        return _complain({"": complaint.sentence}, as_json)
    except (ArithmeticError, ValueError):
        return _complain({"": SURPRISE}, as_json)
    if as_json:
        print(json.dumps(as_data(asked, working), ensure_ascii=False, indent=1))
        return 0
    print(f"{calculator.title}\n")
    for value in working.values.values():
        print(f"  {value.result.label}: {value_text(value)}" + (f"  ({value.note})" if value.note else ""))
    if working.verdict:
        print(f"\n{working.verdict}")
    for caution in working.cautions:
        print(f"  {'STOP' if caution.stop else '!'} {caution.text}")
    print("\nThe working")
    for step in working.steps:
        numbers = f" = {step.numbers}" if step.numbers else ""
        print(f"  {step.words}: {step.formula}{numbers} = {step.value}")
    print("\nWhere the figures come from")
    for key in working.cited:
        print(f"  {sources()[key].citation}")
    return 0


def _complain(errors: dict[str, str], as_json: bool) -> int:
    if as_json:
        print(json.dumps({"errors": errors}, ensure_ascii=False))
    else:
        for name, sentence in errors.items():
            print(f"{name}: {sentence}" if name else sentence, file=sys.stderr)
    return 2


def _listing() -> str:
    width = max((len(slug) for slug in all_calculators()), default=0)
    return "\n".join(f"{slug:{width}}  {one.title}" for slug, one in all_calculators().items())


def _fields(calculator: Calculator) -> str:
    lines = [f"{calculator.slug}: {calculator.title}", calculator.purpose, ""]
    for one in calculator.fields:
        unit = f" [{unit_text(one.unit)}]" if one.unit else ""
        lines.append(f"  {one.name}{unit}: {one.label} ({one.kind}), example {one.example or 'empty'}")
        if one.hint:
            lines.append(f"      {one.hint}")
        if isinstance(one, Choice):
            lines.append(f"      one of: {', '.join(value for value, _ in one.options)}")
        if isinstance(one, MetalField):
            lines.append(f"      one of: {', '.join(metal.key for metal in one.listed())}, or a density")
    return "\n".join(lines)


if __name__ == "__main__":
    try:
        sys.exit(main(sys.argv[1:]))
    except BrokenPipeError:  # the reader, such as head, has seen enough
        os._exit(0)
