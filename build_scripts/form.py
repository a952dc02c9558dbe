"""A calculator's declaration as a form that stands on a page, with its worked example already answered in it.

The page's scripts know the form by its data attributes only: ``data-calculator`` and ``data-field`` name the
question, ``data-example`` holds the text of this page's worked example (the page's preset where it gives one, else
the shop's own value), ``data-other`` names the box for a value that no list has, ``data-house-value`` marks a field
that starts with the shop's value, and ``data-house`` carries what the shop has settled to the page's Python.
"""

from __future__ import annotations

import json
from collections.abc import Mapping
from dataclasses import dataclass, field
from html import escape

from build_scripts.errors import PageError, nearest
from build_scripts.house_values import NO_SHOP, Shop, told
from calculators.declare import Calculator, Working, all_calculators
from calculators.errors import Complaint, FieldErrors
from calculators.fields import Amount, Choice, Count, Field, MetalField, RingSizeField, StockThickness
from calculators.run import work_out
from calculators.show import answer_html
from calculators.units import magnitude, unit_text

OTHER = "other"
OTHER_METAL = "Another alloy: enter its density"


@dataclass(frozen=True)
class Form:
    """The inside of a form element, the sources that its worked example cites, and attributes of the element."""

    html: str
    cited: list[str]
    attributes: dict[str, str] = field(default_factory=dict)


@dataclass
class _Start:
    """What a form starts with; ``house`` names the fields with the shop's values, ``left_out`` tells which gave way."""

    shop: Shop
    texts: dict[str, str]
    house: list[str]
    left_out: list[str]
    working: Working


def find(slug: str) -> Calculator:
    """The calculator of that slug. Raises ``PageError`` naming the nearest known one."""
    known = all_calculators()
    if slug not in known:
        raise PageError(f"There is no calculator {slug}. {nearest(slug, known)}")
    return known[slug]


def read_presets(text: str) -> dict[str, str]:
    """The presets of a page, one ``field = text`` a line. Raises ``PageError`` for a line that is not one."""
    presets: dict[str, str] = {}
    for line in filter(None, (line.strip() for line in text.splitlines())):
        name, equals, value = (part.strip() for part in line.partition("="))
        if not (name and equals and value):
            raise PageError(f"A calculator's preset is written as field = text, not {line!r}.")
        if name in presets:
            raise PageError(f"The preset {name} is given twice.")
        presets[name] = value
    return presets


def calculator_form(
    calculator: Calculator, presets: Mapping[str, str], form_id: str, level: int = 3, shop: Shop = NO_SHOP
) -> Form:
    """What stands inside ``<form id=form_id>``: title, fields, the worked example's answer, actions.

    ``level`` is that of the title as a heading; the values of the ``shop`` fill what the page leaves open. What the
    page's search should not find stands in marked elements.
    Raises ``PageError`` when a preset names no field or is refused by its field, or when there is no answer.
    """
    start = _start(calculator, presets, shop)
    asks_size = any(isinstance(one, RingSizeField) for one in calculator.fields)
    attributes = {"data-house": json.dumps(vars(shop.house))} if asks_size and shop.house.ring_scale else {}
    return Form(_html(calculator, start, form_id, level), list(start.working.cited), attributes)


def _start(calculator: Calculator, presets: Mapping[str, str], shop: Shop) -> _Start:
    """The shop's values under the page's own. Those that have no answer with the page's numbers give way to them:
    a page can't know what a shop will settle, and the form says so."""
    values = {name: text for name, text in shop.values_for(calculator).items() if name not in presets}
    fields = {one.name: one for one in calculator.fields}
    left_out: list[str] = []
    while True:
        texts = _checked(calculator, {**values, **presets}, shop)
        try:
            asked, working = work_out(calculator, texts, shop.house)
            return _Start(shop, texts, [name for name in values if name in asked], left_out, working)
        except FieldErrors as bad:
            reasons = "; ".join(f"{name}: {sentence}" if name else sentence for name, sentence in bad.errors.items())
            blamed = [name for name in values if name in bad.errors] or list(values)
            if not blamed:
                raise PageError(
                    f"The calculator {calculator.slug} has no answer for this page's presets. {reasons}."
                ) from bad
            left_out += [
                f"{fields[name].phrase} ({bad.errors[name]})" if name in bad.errors else fields[name].phrase
                for name in blamed
            ]
            values = {name: text for name, text in values.items() if name not in blamed}


def _checked(calculator: Calculator, presets: Mapping[str, str], shop: Shop) -> dict[str, str]:
    """The text of every field, with choices spelt as their list spells them."""
    names = [one.name for one in calculator.fields]
    for name in presets:
        if name not in names:
            raise PageError(f"The calculator {calculator.slug} has no field {name}. {nearest(name, names)}")
    texts = {**calculator.example(), **presets}
    for one in calculator.fields:
        texts[one.name] = one.in_house(texts[one.name], shop.house)
        try:
            value = one.read(texts[one.name])
        except Complaint as complaint:
            asked = one.name in presets or one.asked(texts)
            if asked:
                raise PageError(
                    f"The calculator {calculator.slug} refuses {one.name} = {texts[one.name]!r}: {complaint.sentence}."
                ) from complaint
            continue
        if isinstance(one, Choice) and value is not None:
            texts[one.name] = value
        if isinstance(one, MetalField) and value is not None and value in one.listed():
            texts[one.name] = value.key
        elif one.unit:
            texts[one.name] = _without_unit(texts[one.name], one.unit)
    return texts


def _without_unit(text: str, unit: str) -> str:
    """The bare number where the unit behind the box says the rest: ``"1.5 mm"`` → ``"1.5"``."""
    for spelling in (unit_text(unit), unit.replace("**", "")):
        if spelling and text.endswith(spelling):
            return text.removesuffix(spelling).strip()
    return text


def _html(calculator: Calculator, start: _Start, form_id: str, level: int) -> str:
    plain = [one for one in calculator.fields if not one.group]
    groups: dict[str, list[Field]] = {}
    for one in calculator.fields:
        if one.group:
            groups.setdefault(one.group, []).append(one)
    fields = "".join(_field(one, start, form_id) for one in plain)
    fields += "".join(
        f'<details class="field-group"><summary>{escape(name)}</summary><div class="fields">'
        + "".join(_field(one, start, form_id) for one in members)
        + "</div></details>"
        for name, members in groups.items()
    )
    return (
        '<div class="calculator-head">'
        f'<h{level} class="calculator-title" id="{form_id}-title">{escape(calculator.title)}</h{level}>'
        f"<p>{escape(calculator.purpose)}</p>{_house_words(calculator, start)}"
        "<noscript data-search-exclude><p>Scripts are off in this browser, so the numbers stay as they are: "
        "the answer is the worked example with the values shown.</p></noscript></div>"
        f'<div class="calculator-fields" data-search-exclude><div class="fields">{fields}</div></div>'
        '<div class="calculator-answer" data-search-exclude>'
        '<p class="form-status" data-status role="status">Worked example with the values shown</p>'
        f'<section class="answer" data-answer aria-live="polite" aria-label="Answer: {escape(calculator.title)}">'
        f"{answer_html(start.working)}</section>"
        '<p class="actions"><button type="button" data-reset>Start again</button>'
        '<button type="button" data-copy-link>Copy link</button>'
        '<button type="button" data-print>Print</button></p></div>'
    )


def _house_words(calculator: Calculator, start: _Start) -> str:
    """Which of the numbers shown are the shop's, and which had to give way to the page's."""
    fields = {one.name: one for one in calculator.fields}
    words = ""
    if start.house:
        used = "; ".join(told(fields[name], start.texts[name]) for name in start.house)
        words += f"<b>House values:</b> {escape(used)}. "
    if start.left_out:
        words += f"<b>House value not used here:</b> {escape('; '.join(start.left_out))}."
    return f'<p class="house-values" data-search-exclude>{words.strip()}</p>' if words else ""


def _field(one: Field, start: _Start, form_id: str) -> str:
    texts = start.texts
    text = texts[one.name]
    box_id = f"{form_id}-{one.name}"
    scale = start.shop.house.ring_scale if isinstance(one, RingSizeField) else ""
    words = f"{one.hint} A number alone is read as {scale}.".strip() if scale else one.hint
    hint = f'<p class="hint" id="{box_id}-hint">{escape(words)}</p>' if words else ""
    own = " data-house-value" if one.name in start.house else ""
    described = f"{box_id}-hint {box_id}-error" if hint else f"{box_id}-error"
    hidden = "" if one.asked(texts) else " hidden"
    if isinstance(one, Choice):
        box = _select(one, text, _options(one, text), box_id, described)
    elif isinstance(one, MetalField):
        box = _metal(one, text, box_id, described)
    else:
        box = _box(one, text, box_id, described, f'name="{one.name}" data-example="{escape(text)}"')
    optional = "" if one.required else " <small>(may stay empty)</small>"
    return (
        f'<div class="field" data-field="{one.name}"{own}{hidden}>'
        f'<label for="{box_id}">{escape(one.label)}{optional}</label>'
        f'{box}<p class="field-error" id="{box_id}-error" hidden></p>{hint}</div>'
    )


def _box(one: Field, text: str, box_id: str, described: str, names: str) -> str:
    """A text box as wide as its digits, with its unit behind it."""
    unit = unit_text(one.unit) if one.unit else ""
    described = f"{box_id}-unit {described}" if unit else described
    # A gauge, a ring size or a name needs letters; a plain amount gets the number pad.
    mode = "text"
    if isinstance(one, Count):
        mode = "numeric"
    elif isinstance(one, Amount) and not isinstance(one, StockThickness):
        mode = "decimal"
    size = max(one.room, len(text) + 1)
    return (
        f'<span class="box"><input type="text" id="{box_id}" {names} value="{escape(text)}" size="{size}" '
        f'inputmode="{mode}" autocomplete="off" autocapitalize="off" spellcheck="false" '
        f'aria-describedby="{described}">{_unit(unit, box_id)}</span>{_slide(one, text)}'
    )


def _slide(one: Field, text: str) -> str:
    """A slide under the box, for trying values with a finger; it only writes into the box."""
    if not isinstance(one, Amount) or one.slide is None:
        return ""
    low, high = one.slide
    try:
        at = magnitude(one.understand(text), one.of)
    except Complaint:
        at = low
    return (
        f'<input type="range" data-slide min="{low:g}" max="{high:g}" step="{(high - low) / 180:g}" '
        f'value="{min(max(at, low), high):g}" autocomplete="off" aria-label="{escape(one.label)}, {unit_text(one.of)}">'
    )


def _unit(unit: str, box_id: str) -> str:
    return f'<span class="unit" id="{box_id}-unit">{escape(unit)}</span>' if unit else ""


def _select(one: Field, chosen: str, options: str, box_id: str, described: str, more: str = "") -> str:
    return (
        f'<span class="box"><select id="{box_id}" name="{one.name}" data-example="{escape(chosen)}" '
        f'autocomplete="off" aria-describedby="{described}"{more}>{options}</select></span>'
    )


def _options(one: Choice, chosen: str) -> str:
    none = "" if one.required else _option("", "Not chosen", not chosen)
    return none + "".join(_option(value, words, value == chosen) for value, words in one.options)


def _option(value: str, words: str, chosen: bool) -> str:
    return f'<option value="{escape(value)}"{" selected" if chosen else ""}>{escape(words)}</option>'


def _metal(one: MetalField, chosen: str, box_id: str, described: str) -> str:
    """The metals by family, and a box for the density of an alloy that is not among them."""
    listed = one.listed()
    typed = all(chosen != metal.key for metal in listed)
    options = "" if one.required else _option("", "Not chosen", not chosen)
    for family in dict.fromkeys(metal.family for metal in listed):
        inside = "".join(_option(m.key, m.name, m.key == chosen) for m in listed if m.family == family)
        options += f'<optgroup label="{escape(family.replace("-", " ").capitalize())}">{inside}</optgroup>'
    options += _option(OTHER, OTHER_METAL, typed and bool(chosen))
    other_id = f"{box_id}-other"
    own = chosen if typed else ""
    density = (
        f'<span class="box" data-other-box{"" if own else " hidden"}>'
        f'<input type="text" id="{other_id}" value="{escape(own)}" size="8" '
        'inputmode="decimal" autocomplete="off" spellcheck="false" '
        f'aria-label="Density" aria-describedby="{other_id}-unit {described}">'
        f"{_unit(unit_text(one.unit), other_id)}</span>"
    )
    return _select(one, chosen, options, box_id, described, f' data-other="{other_id}"') + density
