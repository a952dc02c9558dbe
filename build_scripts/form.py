"""A calculator's declaration as a form that stands on a page, with its worked example already answered in it.

The page's scripts know the form by its data attributes only: ``data-calculator`` and ``data-field`` name the
question, ``data-example`` holds the text of this page's worked example (the page's preset where it gives one),
``data-other`` names the box for a value that no list has.
"""

from __future__ import annotations

from collections.abc import Mapping
from html import escape
from typing import NamedTuple

from build_scripts.errors import PageError, nearest
from calculators.declare import Calculator, Working, all_calculators
from calculators.errors import Complaint, FieldErrors
from calculators.fields import Amount, Choice, Count, Field, MetalField, StockThickness
from calculators.run import work_out
from calculators.show import answer_html
from calculators.units import unit_text

OTHER = "other"
OTHER_METAL = "Another alloy: enter its density"


class Form(NamedTuple):
    """The inside of a form element, and the sources that its worked example cites."""

    html: str
    cited: list[str]


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


def calculator_form(calculator: Calculator, presets: Mapping[str, str], form_id: str, level: int = 3) -> Form:
    """What stands inside ``<form id=form_id>``: title, fields, the worked example's answer, actions.

    ``level`` is that of the title as a heading. What the page's search should not find stands in marked elements.
    Raises ``PageError`` when a preset names no field or is refused by its field, or when there is no answer.
    """
    texts = _checked(calculator, presets)
    try:
        _, working = work_out(calculator, texts)
    except FieldErrors as bad:
        told = "; ".join(f"{name}: {sentence}" if name else sentence for name, sentence in bad.errors.items())
        raise PageError(f"The calculator {calculator.slug} has no answer for this page's presets. {told}.") from bad
    return Form(_html(calculator, texts, form_id, working, level), list(working.cited))


def _checked(calculator: Calculator, presets: Mapping[str, str]) -> dict[str, str]:
    """The text of every field, with choices spelt as their list spells them."""
    names = [one.name for one in calculator.fields]
    for name in presets:
        if name not in names:
            raise PageError(f"The calculator {calculator.slug} has no field {name}. {nearest(name, names)}")
    texts = {**calculator.example(), **presets}
    for one in calculator.fields:
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


def _html(calculator: Calculator, texts: Mapping[str, str], form_id: str, working: Working, level: int) -> str:
    plain = [one for one in calculator.fields if not one.group]
    groups: dict[str, list[Field]] = {}
    for one in calculator.fields:
        if one.group:
            groups.setdefault(one.group, []).append(one)
    fields = "".join(_field(one, texts, form_id) for one in plain)
    fields += "".join(
        f'<details class="field-group"><summary>{escape(name)}</summary><div class="fields">'
        + "".join(_field(one, texts, form_id) for one in members)
        + "</div></details>"
        for name, members in groups.items()
    )
    return (
        '<div class="calculator-head">'
        f'<h{level} class="calculator-title" id="{form_id}-title">{escape(calculator.title)}</h{level}>'
        f"<p>{escape(calculator.purpose)}</p>"
        "<noscript data-search-exclude><p>Scripts are off in this browser, so the numbers stay as they are: "
        "the answer is the worked example with the values shown.</p></noscript></div>"
        f'<div class="calculator-fields" data-search-exclude><div class="fields">{fields}</div></div>'
        '<div class="calculator-answer" data-search-exclude>'
        '<p class="form-status" data-status role="status">Worked example with the values shown</p>'
        f'<section class="answer" data-answer aria-live="polite" aria-label="Answer: {escape(calculator.title)}">'
        f"{answer_html(working)}</section>"
        '<p class="actions"><button type="button" data-reset>Start again</button>'
        '<button type="button" data-copy-link>Copy link</button>'
        '<button type="button" data-print>Print</button></p></div>'
    )


def _field(one: Field, texts: Mapping[str, str], form_id: str) -> str:
    text = texts[one.name]
    box_id = f"{form_id}-{one.name}"
    hint = f'<p class="hint" id="{box_id}-hint">{escape(one.hint)}</p>' if one.hint else ""
    described = f"{box_id}-hint {box_id}-error" if hint else f"{box_id}-error"
    hidden = "" if one.asked(dict(texts)) else " hidden"
    if isinstance(one, Choice):
        box = _select(one, text, _options(one, text), box_id, described)
    elif isinstance(one, MetalField):
        box = _metal(one, text, box_id, described)
    else:
        box = _box(one, text, box_id, described, f'name="{one.name}" data-example="{escape(text)}"')
    optional = "" if one.required else " <small>(may stay empty)</small>"
    return (
        f'<div class="field" data-field="{one.name}"{hidden}>'
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
    size = max(6, len(text) + 1)
    return (
        f'<span class="box"><input type="text" id="{box_id}" {names} value="{escape(text)}" size="{size}" '
        f'inputmode="{mode}" autocomplete="off" autocapitalize="off" spellcheck="false" '
        f'aria-describedby="{described}">{_unit(unit, box_id)}</span>'
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
