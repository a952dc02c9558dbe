"""The words a calculator is declared with.

One declaration per calculator: its fields, its results, its sources, and a function that works the answer out
step by step. The page's form, the worked example, the live answer, the command line, the tests and the reference
page all come from it. The slug is the function's name with hyphens.
"""

from __future__ import annotations

import importlib
import pkgutil
from collections.abc import Callable, Sequence
from dataclasses import dataclass, field
from functools import lru_cache
from typing import Any

from . import formula
from .data import MARKS, TYPED, Figure, sources
from .drawing import Drawing
from .errors import Complaint
from .fields import Field
from .units import Quantity, quantity_text


@dataclass(frozen=True)
class Result:
    """One number of the answer.

    ``unit`` is the unit of the JSON value (empty for a text or a bare number); ``cut`` the step the trade rounds
    to (0.05 mm, 0.01 g), or where its size varies much ``digits`` the significant digits shown; ``also`` further
    units shown beside it; the first result of an answer is its headline.
    """

    name: str
    label: str
    unit: str = ""
    cut: float = 0.01
    also: tuple[str, ...] = ()
    signed: bool = False
    digits: int = 0


@dataclass(frozen=True)
class Value:
    """A result worked out: an amount or a text, with its range where the truth is a range."""

    result: Result
    value: Quantity | str
    low: Quantity | None = None
    high: Quantity | None = None
    note: str = ""
    shown: str = ""
    extra: dict[str, Any] = field(default_factory=dict)


@dataclass(frozen=True)
class Step:
    """One line of the working: what it is in words, the formula, the numbers put in, the value."""

    words: str
    formula: str
    numbers: str
    value: str


@dataclass(frozen=True)
class Caution:
    """A sentence that stands above the fold; ``stop`` means: don't go on before this is settled."""

    text: str
    stop: bool = False


@dataclass(frozen=True)
class Keepsake:
    """What a shop may keep of an answer on its device: ``values`` are texts of fields of other calculators, to be
    used where the fields in ``when`` have these texts; ``label`` tells the person what is kept."""

    label: str
    when: dict[str, str]
    values: dict[str, str]


@dataclass
class Working:
    """What a calculator writes down while it works an answer out."""

    calculator: Calculator
    values: dict[str, Value] = field(default_factory=dict)
    steps: list[Step] = field(default_factory=list)
    cautions: list[Caution] = field(default_factory=list)
    cited: list[str] = field(default_factory=list)
    errors: dict[str, str] = field(default_factory=dict)
    verdict: str = ""
    drawings: list[Drawing] = field(default_factory=list)
    keepsake: Keepsake | None = None

    def step(self, words: str, text: str, unit: str, **amounts: Quantity) -> Quantity:
        """Work out the formula ``text`` from ``amounts``, write the line down, return the value in ``unit``."""
        value = formula.evaluate(text, amounts).to(unit)
        shown = quantity_text(value, unit)
        self.steps.append(Step(words, formula.in_words(text), formula.with_numbers(text, amounts), shown))
        return value

    def note(self, words: str, how: str, value: Quantity, unit: str) -> Quantity:
        """Write down a value found another way (a table, a root, a sum); ``how`` says in words which way."""
        self.steps.append(Step(words, how, "", quantity_text(value, unit)))
        return value

    def weigh(self, reason: str, because: str, given: str) -> None:
        """Write down a rule of the data that spoke: its reason, what made it speak, what it gave to whom."""
        self.steps.append(Step(reason, because, "", given))

    def figure(self, words: str, known: Figure) -> Quantity:
        """Use a figure from the data: its source and mark go into the working and the list of sources."""
        origin = MARKS[known.mark]
        if known.source:
            self.cite(known.source)
            origin = f"{sources()[known.source].citation} ({origin})" + (f"; {known.note}" if known.note else "")
        elif known.note:
            origin = known.note if known.note == TYPED else f"{known.note} ({origin})"
        self.steps.append(Step(words, origin, "", known.text()))
        return known.value

    def result(
        self,
        name: str,
        value: Quantity | str,
        low: Quantity | None = None,
        high: Quantity | None = None,
        note: str = "",
        shown: str = "",
        **extra: Any,
    ) -> None:
        """Give one of the declared results.

        ``note`` is a few words beside it, ``shown`` replaces the printed number (``6½`` for 6.5), ``extra`` goes
        into the JSON.
        """
        self.values[name] = Value(self.calculator.result_named(name), value, low, high, note, shown, extra)

    def caution(self, text: str, stop: bool = False) -> None:
        """A caution shown with the answer; the same text is shown once."""
        if all(known.text != text for known in self.cautions):
            self.cautions.append(Caution(text, stop))

    def complain(self, field_name: str, sentence: str) -> None:
        """A field that can't be right together with the others; no answer is given."""
        self.errors.setdefault(field_name, sentence)

    def cite(self, *keys: str) -> None:
        """Name sources by their key in ``sources.toml``."""
        for key in keys:
            if key not in sources():
                raise KeyError(f"{key} is not in sources.toml")
            if key not in self.cited:
                self.cited.append(key)

    def keep(self, label: str, when: dict[str, str], values: dict[str, str]) -> None:
        """Offer the person to keep ``values`` on this device for later answers; see ``Keepsake``."""
        self.keepsake = Keepsake(label, when, values)

    def draw(self, drawing: Drawing) -> None:
        """Add a drawing to scale beside the number."""
        self.drawings.append(drawing)


@dataclass(frozen=True)
class Calculator:
    """A declared calculator. ``work`` fills a ``Working`` from the values of the fields."""

    slug: str
    title: str
    purpose: str
    fields: tuple[Field, ...]
    results: tuple[Result, ...]
    sources: tuple[str, ...]
    cautions: tuple[str, ...]
    work: Callable[..., None]
    doc: str = ""

    def result_named(self, name: str) -> Result:
        """The declared result of that name; raises ``KeyError``."""
        for one in self.results:
            if one.name == name:
                return one
        raise KeyError(name)

    def example(self) -> dict[str, str]:
        """The worked example: the text of every field."""
        return {one.name: one.example for one in self.fields}


def calculator(
    *,
    title: str,
    purpose: str,
    fields: Sequence[Field],
    results: Sequence[Result],
    sources: Sequence[str] = (),
    cautions: Sequence[str] = (),
) -> Callable[[Callable[..., None]], Calculator]:
    """Declare a calculator. The function takes a ``Working`` and one argument per field, by name."""

    def declare(work: Callable[..., None]) -> Calculator:
        return Calculator(
            slug=work.__name__.replace("_", "-"),
            title=title,
            purpose=purpose,
            fields=tuple(fields),
            results=tuple(results),
            sources=tuple(sources),
            cautions=tuple(cautions),
            work=work,
            doc=(work.__doc__ or "").strip(),
        )

    return declare


@lru_cache(maxsize=1)
def all_calculators() -> dict[str, Calculator]:
    """Every calculator by slug, found by looking through the topic folders: there is no list to keep."""
    import calculators

    found = {}
    for module in pkgutil.walk_packages(calculators.__path__, "calculators."):
        if module.name.count(".") < 2 or module.name.startswith(("calculators.fields", "calculators.data")):
            continue
        for value in vars(importlib.import_module(module.name)).values():
            if isinstance(value, Calculator):
                found[value.slug] = value
    return dict(sorted(found.items()))


__all__ = ["Calculator", "Caution", "Complaint", "Result", "Step", "Value", "Working", "all_calculators", "calculator"]
