"""Spelling: an American English dictionary, the words of our trade, and the units and symbols of the project's data."""

from __future__ import annotations

import re
from functools import cache
from pathlib import Path

from spylls.hunspell import Dictionary

from build_scripts.bootstrap import NODE_MODULES

HERE = Path(__file__).parent
TRADE_WORDS = HERE / "trade_words.txt"  # good on every page
CITED_WORDS = HERE / "cited_words.txt"  # names and titles: good in a list of sources only

# Letters beside a digit (14k, M2.5) or with a point inside (e.g., U.S.C., a file's name) are no words.
_LETTER = "A-Za-zÀ-ÖØ-öø-ÿ"
_WORD = re.compile(rf"(?<![{_LETTER}\d.@_µ₀-₉])[{_LETTER}]++(?:['’][{_LETTER}]++)*+(?![\d_₀-₉²³½]|\.[{_LETTER}\d])")
_CARAT_OF_GOLD = re.compile(
    r"\b\d+(?:\.\d+)?[ -]?(?:carats?|ct)\b[ -](?:\w+[ -])?(?:gold|yellow|white|rose|red|alloy|shank|ring|band|wire)"
    r"|\bcarats? (?:gold|fineness|mark|stamp)\b",
    re.IGNORECASE,
)


@cache
def dictionary() -> Dictionary:
    """The hunspell dictionary that npm brings as ``dictionary-en``."""
    return Dictionary.from_files(str(NODE_MODULES / "dictionary-en/index"))


def read_list(file: Path) -> list[str]:
    """The words of a list, one a line."""
    return file.read_text(encoding="utf-8").split("\n")[:-1]


@cache
def _listed(file: Path) -> frozenset[str]:
    return frozenset(read_list(file))


@cache
def is_known(word: str, in_sources: bool = False) -> bool:
    """Whether a word is spelled right. A lower-case word of a list may start a sentence; a name keeps its capital."""
    plain = word.replace("’", "'")
    bare = re.sub(r"'s?$", "", plain)
    for file in (TRADE_WORDS, CITED_WORDS) if in_sources else (TRADE_WORDS,):
        listed = _listed(file)
        if {plain, bare, _lower_first(plain), _lower_first(bare)} & listed:
            return True
    return bool(dictionary().lookup(plain))


def _lower_first(word: str) -> str:
    return word[:1].lower() + word[1:]


def words(text: str) -> list[str]:
    """The words of a text; the parts of a compound each for itself."""
    return _WORD.findall(text)


def misspelled(text: str, in_sources: bool = False) -> list[str]:
    """The words of a text that neither the dictionary nor our lists know, and carats that count gold."""
    found = [word for word in words(text) if not is_known(word, in_sources)]
    if not in_sources:
        found += [match.group() for match in _CARAT_OF_GOLD.finditer(text)]
    return found
