"""An answer as an HTML fragment. The build and the page use this same function, so both show the same thing."""

from __future__ import annotations

import json
import math
from decimal import Decimal
from html import escape

from .data import sources
from .declare import Result, Value, Working
from .units import Quantity, magnitude, number_text, with_unit


def cut_text(amount: Quantity, result: Result, unit: str = "") -> str:
    """An amount rounded to the step the trade uses, with its unit tied on: ``"5.55 mm"``."""
    if unit and unit != result.unit:
        return with_unit(number_text(magnitude(amount, unit), 3), unit)
    value = magnitude(amount, result.unit)
    if result.digits:
        places = max(0, result.digits - 1 - math.floor(math.log10(abs(value)))) if value else 0
        return with_unit(f"{value:.{places}f}".replace("-", "−"), result.unit)
    places = max(0, -Decimal(str(result.cut)).normalize().as_tuple().exponent)  # type: ignore[operator]
    rounded = round(value / result.cut) * result.cut
    text = f"{rounded:.{places}f}"
    if float(text) == 0 and value != 0:
        text = f"under {result.cut:g}"
    sign = "+" if result.signed and value > 0 and text[0].isdigit() else ""
    return with_unit(sign + text.replace("-", "−"), result.unit)


def value_text(value: Value) -> str:
    """A result as a person reads it, with its range where there is one."""
    if value.shown or isinstance(value.value, str):
        return value.shown or str(value.value)
    shown = cut_text(value.value, value.result)
    span = range_text(value)
    return f"{shown} ({span.removesuffix(with_unit('', value.result.unit))})" if span else shown


def range_text(value: Value) -> str:
    """The range of a result, ``"5.8 to 28 J"``; empty where it has none."""
    if value.low is None or value.high is None:
        return ""
    unit = with_unit("", value.result.unit)
    return f"{cut_text(value.low, value.result).removesuffix(unit)} to {cut_text(value.high, value.result)}"


def _shown(value: Value) -> str:
    """The text of a result; as a link where it leads to a page (``page="joints/butt"``).

    The link has no address yet: the build and the page's script each know how deep their page lies and set it.
    """
    text = escape(value_text(value))
    page = value.extra.get("page", "")
    return f'<a data-page="{escape(page)}">{text}</a>' if page else text


def _also(value: Value) -> str:
    if isinstance(value.value, str):
        return ""
    return ", ".join(cut_text(value.value, value.result, unit) for unit in value.result.also)


def answer_html(working: Working) -> str:
    """The whole answer: number first, cautions, drawing, further numbers; below them working and sources."""
    headline, *others = working.values.values()
    drawings = [f'<figure class="to-scale">{drawing.svg()}</figure>' for drawing in working.drawings]
    main = [_headline(headline, working.verdict), _keepsake(working), _cautions(working), *drawings, _others(others)]
    more = [_working(working), _sources(working)]
    return f'<div class="answer-main"><div>{"".join(main)}</div></div>\n<div class="answer-more">{"".join(more)}</div>'


def _headline(value: Value, verdict: str) -> str:
    also = " · ".join(escape(text) for text in (_also(value), value.note) if text)
    return (
        f'<div class="headline"><p class="result-label">{escape(value.result.label)}</p>'
        f'<p class="number" data-result="{value.result.name}">{_shown(value)}</p>'
        + (f'<p class="also">{also}</p>' if also else "")
        + (f'<p class="verdict">{escape(verdict)}</p>' if verdict else "")
        + "</div>"
    )


def _keepsake(working: Working) -> str:
    """The button that keeps values of this answer on the device; the page's script acts on it."""
    if working.keepsake is None:
        return ""
    kept = escape(json.dumps(vars(working.keepsake), ensure_ascii=False))
    told = f"<small>{escape(working.keepsake.label)}</small>"
    return f'<p class="keep"><button type="button" data-keep="{kept}">Keep on this device</button> {told}</p>'


def _cautions(working: Working) -> str:
    if not working.cautions:
        return ""
    ordered = sorted(working.cautions, key=lambda caution: not caution.stop)
    items = "".join(
        f'<li class="stop"><strong>Stop.</strong> {escape(one.text)}</li>'
        if one.stop
        else f"<li>{escape(one.text)}</li>"
        for one in ordered
    )
    return f'<ul class="cautions" aria-label="Cautions">{items}</ul>'


def _long(value: Value) -> str:
    """Sentences read better under their label than beside it."""
    told = isinstance(value.value, str) and len(value_text(value)) + len(value.note) > 36
    return ' class="words"' if told else ""


def _others(values: list[Value]) -> str:
    if not values:
        return ""
    rows = "".join(
        f'<div{_long(one)}><dt>{escape(one.result.label)}</dt><dd data-result="{one.result.name}"><b>{_shown(one)}</b>'
        + "".join(f" <small>{escape(text)}</small>" for text in (_also(one), one.note) if text)
        + "</dd></div>"
        for one in values
    )
    return f'<dl class="results">{rows}</dl>'


def _working(working: Working) -> str:
    if not working.steps:
        return ""
    items = "".join(
        f'<li><span class="words">{escape(step.words)}</span> <span class="formula">{escape(step.formula)}</span>'
        + (f' <span class="numbers">= {escape(step.numbers)}</span>' if step.numbers else "")
        + f' <span class="value">= {escape(step.value)}</span></li>'
        for step in working.steps
    )
    return f'<details class="working" open><summary>The working</summary><ol>{items}</ol></details>'


def _sources(working: Working) -> str:
    if not working.cited:
        return ""
    known = sources()
    items = "".join(
        f"<li>{escape(known[key].citation)} <small>({escape(known[key].extent)})</small></li>" for key in working.cited
    )
    return (
        f'<details class="answer-sources" open><summary>Where the figures come from</summary><ul>{items}</ul></details>'
    )
