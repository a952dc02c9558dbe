"""Ring-size scales: straight lines between a number or letter and the inside circumference of the ring.

Figures and their sources are in ``data/ring_scales.toml``. Lengths here are plain millimetres; the calculators
put units on them.
"""

from __future__ import annotations

import math
import re
from dataclasses import dataclass
from functools import lru_cache

from .data import Figure, figure, load
from .errors import Complaint
from .reading import WrongUnit, read_amount, read_number, tidy
from .units import Quantity, magnitude, number_text, quantity

SMALLEST, LARGEST = 10.0, 27.0  # inside diameter, mm: a baby's ring to the largest sizing stick
_HALVES = {0.0: "", 0.25: "¼", 0.5: "½", 0.75: "¾"}
_EXAMPLES = "US 7, 6 1/2 US, UK N½, ISO 54, JP 14, CH 14, 17.3 mm across or 54.4 mm around"


@dataclass(frozen=True)
class Scale:
    """One ring-size scale: inside circumference = ``at_zero + per_size × number`` (mm)."""

    key: str
    name: str
    step: float
    first: float
    last: float
    at_zero: float
    per_size: float
    figures: tuple[Figure, Figure]

    def circumference(self, number: float) -> float:
        """Inside circumference in mm of a number on this scale."""
        return self.at_zero + self.per_size * number

    def number(self, circumference: float) -> float:
        """Where a circumference in mm falls on the scale, between the sizes."""
        return (circumference - self.at_zero) / self.per_size

    def nearest(self, circumference: float) -> float:
        """The nearest size that the scale has (halves rounded up, so a tie goes to the larger ring)."""
        return math.floor(self.number(circumference) / self.step + 0.5 + 1e-9) * self.step

    def size_text(self, number: float) -> str:
        """A size as the scale writes it: ``6½``, ``N½``, ``54``."""
        if self.key == "uk":
            return uk_letter(number)
        whole = math.floor(number)
        part = number - whole
        if part in _HALVES:
            return (str(whole) if whole or not part else "") + _HALVES[part]
        return number_text(number)


def uk_letter(number: float) -> str:
    """UK letter of a number (A = 1, A½ = 1.5, Z = 26, Z+1 = 27); ``below A`` under the scale."""
    if number < 1:
        return "below A"
    whole = math.floor(number)
    half = "½" if number - whole >= 0.5 else ""
    if whole <= 26:
        return chr(ord("A") + whole - 1) + half
    return f"Z+{whole - 26}{half}"


@lru_cache(maxsize=1)
def scales() -> dict[str, Scale]:
    """All scales by key."""
    found = {}
    for row in load("ring_scales")["scale"]:
        figures = figure(row["at_zero"]), figure(row["per_size"])
        factor = math.pi if row["measure"] == "diameter" else 1.0
        at_zero, per_size = (factor * magnitude(part.value, "mm") for part in figures)
        found[row["key"]] = Scale(
            row["key"], row["name"], row["step_of_scale"], row["first"], row["last"], at_zero, per_size, figures
        )
    return found


@dataclass(frozen=True)
class RingSize:
    """A ring size as it was given: ``circumference`` inside in mm, the ``scale`` it was read on (or None)."""

    text: str
    circumference: float
    scale: str = ""
    number: float = 0.0

    @property
    def inside_circumference(self) -> Quantity:
        """Length around the inside of the ring."""
        return quantity(self.circumference, "mm")

    @property
    def inside_diameter(self) -> Quantity:
        """Across the inside of the ring."""
        return quantity(self.circumference / math.pi, "mm")

    def on_law(self, us_law: str) -> RingSize:
        """The same words read by another US law; sizes of other scales stay as they are."""
        if self.scale != "us":
            return self
        return RingSize(self.text, scales()[us_law].circumference(self.number), "us", self.number)


_SCALE_WORDS = {
    "us": "us|usa|u\\.s\\.|american|ca|canada",
    "uk": "uk|u\\.k\\.|gb|british|au|australia|nz|za|ie",
    "iso": "iso|eu|de|germany|fr|france",
    "japan": "jp|jcs|japan|japanese",
    "swiss": "ch|swiss|it|italy|es|spain|nl",
}
_BARE = re.compile(r"[0-9.,/ ]+")
_ACROSS = re.compile(r"(?:inside |inner )?(?:across|diameter|dia\.?|id|i\.d\.|ø)(?: inside)?", re.I)
_AROUND = re.compile(r"(?:inside |inner )?(?:around|circumference|circ\.?)(?: inside)?", re.I)
_UK = re.compile(r"([A-Za-z])\s*(?:\+\s*([0-9]{1,2}))?\s*(1/2|\.5|,5)?")


def read_ring_size(text: str) -> RingSize:
    """A ring size in any scale, or a measured inside diameter or circumference.

    Raises ``Complaint`` with a sentence that says how to write it.
    """
    text = tidy(text)
    for word, of_circle in ((_ACROSS, math.pi), (_AROUND, 1.0)):
        if word.search(text):
            return _measured(text, word.sub(" ", text).strip(), of_circle)
    for key, words in _SCALE_WORDS.items():
        named = re.fullmatch(rf"(?:({words})\s*(?:size)?\s*(.*)|(.*?)\s*\b({words}))", text, re.I)
        if named:
            return _on_scale(text, key, (named[2] if named[1] else named[3]).strip())
    if re.fullmatch(_UK, text):
        return _on_scale(text, "uk", text)
    if re.fullmatch(r'[0-9.,/ ]+(?:mm|cm|in|inch|")', text, re.I):
        raise Complaint(f"Add across or around after {text}, or name a scale: {_EXAMPLES}")
    if _BARE.fullmatch(text):
        raise Complaint(f"Name the scale as well: US {text}, JP {text}, CH {text} or ISO {text}, whichever it is")
    raise Complaint(f"Enter a ring size such as {_EXAMPLES}")


def code_of_scale(name: str) -> str:
    """The short name of a scale from any of its names: ``US``, ``UK``, ``ISO``, ``JP``, ``CH``.

    Raises ``Complaint`` naming them.
    """
    for words in _SCALE_WORDS.values():
        if re.fullmatch(words, name.strip(), re.I):
            return words.partition("|")[0].upper()
    codes = [words.partition("|")[0].upper() for words in _SCALE_WORDS.values()]
    raise Complaint(f"There is no ring-size scale {name[:20]}: enter one of {', '.join(codes)}")


def on_scale(text: str, code: str) -> str:
    """A number alone with the scale written before it (``6`` → ``US 6``); any other text, or no scale: as it was."""
    return f"{code} {text.strip()}" if code and _BARE.fullmatch(tidy(text)) else text


def _measured(text: str, amount: str, of_circle: float) -> RingSize:
    try:
        length = magnitude(read_amount(amount, "mm"), "mm")
    except (ValueError, WrongUnit):
        raise Complaint("Enter the measured ring as a length, such as 17.3 mm across or 54.4 mm around") from None
    return _checked(RingSize(text, length * of_circle))


def _on_scale(text: str, key: str, size: str) -> RingSize:
    scale = scales()[key]
    if key == "uk":
        letter = re.fullmatch(_UK, size)
        if not letter or (letter[2] and letter[1].upper() != "Z"):
            raise Complaint("UK sizes are letters: enter A to Z, with ½ if needed, or Z+1 to Z+6, such as UK N½")
        number = ord(letter[1].upper()) - ord("A") + 1 + float(letter[2] or 0) + (0.5 if letter[3] else 0.0)
    else:
        try:
            number, rest = read_number(size)
        except ValueError:
            rest, number = "?", 0.0
        if rest:
            raise Complaint(f"Enter the size as a number, such as {_EXAMPLES}")
    if not scale.first <= number <= scale.last:
        low, high = scale.size_text(scale.first), scale.size_text(scale.last)
        raise Complaint(f"{scale.name}: sizes here run from {low} to {high}. Enter one of these, or measure in mm")
    return _checked(RingSize(text, scale.circumference(number), key, number))


def _checked(size: RingSize) -> RingSize:
    across = size.circumference / math.pi
    if not SMALLEST <= across <= LARGEST:
        raise Complaint(
            f"The inside of a ring must be between {SMALLEST:g} and {LARGEST:g} mm across. "
            "Check the number, and whether it is across or around"
        )
    return size
