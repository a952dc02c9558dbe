"""The shop's own values, ``docs/house/values.toml``: presets of calculators, its ring-size scale, where it works.

The folder docs/house belongs to the shop: git leaves it alone, and without it everything is as it was. A slip in the
file stops the build with a sentence that names it and says what to write.
"""

from __future__ import annotations

import re
import tomllib
from collections.abc import Mapping
from dataclasses import dataclass, field
from functools import lru_cache
from pathlib import Path
from typing import Any

from build_scripts.errors import PageError, nearest
from calculators.declare import Calculator, all_calculators
from calculators.errors import Complaint, FieldErrors
from calculators.fields import Choice, Field, MetalField
from calculators.house import NO_HOUSE, House, read_house
from calculators.run import work_out
from calculators.units import with_unit

FOLDER = "house"
FILE = f"docs/{FOLDER}/values.toml"
EVERY = "every"
SETTINGS = ("ring_scale", "jurisdiction")


@dataclass(frozen=True)
class Shop:
    """What a shop has settled: presets by calculator (or ``every``) and field, and its settings."""

    presets: Mapping[str, Mapping[str, str]] = field(default_factory=dict)
    house: House = NO_HOUSE
    jurisdiction: str = ""

    def values_for(self, calculator: Calculator) -> dict[str, str]:
        """The shop's texts for the fields of a calculator.

        A value for every calculator is left out where a field can't take it: a metal that is not in its list.
        """
        every, own = self.presets.get(EVERY, {}), self.presets.get(calculator.slug, {})
        found = {one.name: every[one.name] for one in calculator.fields if one.name in every}
        fitting = {one.name for one in calculator.fields if one.name in found and self._takes(one, found[one.name])}
        return {**{name: text for name, text in found.items() if name in fitting}, **own}

    def _takes(self, one: Field, text: str) -> bool:
        try:
            one.read(one.in_house(text, self.house))
        except Complaint:
            return False
        return True


NO_SHOP = Shop()


@lru_cache(maxsize=4)
def shop(docs: Path) -> Shop:
    """What the shop of this folder of pages has settled; nothing, when it has no file. Raises ``PageError``."""
    file = docs / FOLDER / "values.toml"
    if not file.is_file():
        return NO_SHOP
    parsed = _parsed(file)
    settings = {name: _text(name, parsed.pop(name), FILE) for name in SETTINGS if name in parsed}
    for name, value in parsed.items():
        if not isinstance(value, dict):
            raise PageError(_stray(name, value))
    try:
        house = read_house(settings)
    except Complaint as complaint:
        raise PageError(f"{FILE}, ring_scale: {complaint.sentence}.") from complaint
    presets = {slug: _presets(slug, table, house) for slug, table in parsed.items()}
    settled = Shop(presets, house, settings.get("jurisdiction", "").strip())
    for slug in presets:
        if slug != EVERY:
            _work_together(slug, settled)
    return settled


def told(one: Field, text: str) -> str:
    """A value as a person reads it beside its label: ``metal 14k yellow gold``, ``band width 3 mm``."""
    shown = text
    value = one.read(text)
    if isinstance(one, Choice):
        shown = dict(one.options).get(value, text)
    elif isinstance(one, MetalField) and value is not None:
        shown = value.name if value in one.listed() else with_unit(text, one.unit)
    elif one.unit and re.fullmatch(r"[0-9.,]+", text):
        shown = with_unit(text, one.unit)
    return f"{one.phrase} {shown or 'left empty'}"


def _parsed(file: Path) -> dict[str, Any]:
    try:
        return tomllib.loads(read_text(file, FILE) + "\n")  # so that a slip in the last line has a place
    except tomllib.TOMLDecodeError as slip:
        place = re.search(r"at (line \d+)", str(slip))
        where = f"{FILE}, {place[1] if place else 'the last line'}"
        if "overwrite" in str(slip) or "twice" in str(slip):
            reason = "stands there a second time. Write each name and each heading in brackets once"
        else:
            reason = (
                'can\'t be read. Write every line as name = "value", with the value in quotes, such as '
                'max_energy = "45 J", and every heading in brackets, such as [every]'
            )
        raise PageError(f"{where}: this {reason}.") from slip


def read_text(file: Path, name: str) -> str:
    """The text of one of the shop's files. Raises ``PageError`` when it was saved in an old encoding."""
    try:
        return file.read_text(encoding="utf-8-sig")
    except UnicodeDecodeError as reason:
        raise PageError(f"{name} can't be read: save it again in your editor with the encoding UTF-8.") from reason


def _text(name: str, value: Any, where: str) -> str:
    if isinstance(value, bool) or not isinstance(value, str | int | float):
        raise PageError(f'{where}, {name}: write one value in quotes, such as {name} = "...".')
    return str(value)


def _stray(name: str, value: Any) -> str:
    """The sentence for a line above the first heading that is no setting."""
    if any(one.name == name for calculator in all_calculators().values() for one in calculator.fields):
        return (
            f"{FILE}: {name} = {value!r} stands above every heading. Put it below [{EVERY}], "
            "or below the name of a calculator in brackets, such as [start-settings]."
        )
    return f"{FILE}: there is no setting {name}. {nearest(name, SETTINGS)}"


def _presets(slug: str, table: Mapping[str, Any], house: House) -> dict[str, str]:
    """The values of one heading, each tried in its field."""
    where = f"{FILE}, [{slug}]"
    known = all_calculators()
    if slug != EVERY and slug not in known:
        raise PageError(f"{FILE}: there is no calculator {slug}. {nearest(slug, [*known, EVERY])}")
    askers = list(known.values()) if slug == EVERY else [known[slug]]
    fields: dict[str, list[Field]] = {}
    for one in (one for calculator in askers for one in calculator.fields):
        fields.setdefault(one.name, []).append(one)
    texts: dict[str, str] = {}
    for name, value in table.items():
        if name in SETTINGS:
            raise PageError(f"{where}: {name} is a setting. Write it above the first heading in brackets.")
        if name not in fields:
            who = "no calculator has a field" if slug == EVERY else "there is no field"
            raise PageError(f"{where}: {who} {name}. {nearest(name, fields)}")
        texts[name] = _text(name, value, where)
        refused: list[str] = []
        for one in fields[name]:
            try:
                one.read(one.in_house(texts[name], house))
            except Complaint as complaint:
                refused.append(complaint.sentence)
        if len(refused) == len(fields[name]):
            raise PageError(f"{where}, {name} = {texts[name]!r}: {refused[0]}.")
    return texts


def _work_together(slug: str, settled: Shop) -> None:
    """Refuse values of one calculator that have no answer with each other."""
    one = all_calculators()[slug]
    try:
        work_out(one, {**one.example(), **settled.presets[slug]}, settled.house)
    except FieldErrors as bad:
        reasons = "; ".join(f"{name}: {sentence}" if name else sentence for name, sentence in bad.errors.items())
        raise PageError(
            f"{FILE}, [{slug}]: these values have no answer together. {reasons}. Change one, or take one out."
        ) from bad
