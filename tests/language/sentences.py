"""Sentences, words, syllables, and the reading grade.

What counts as text, kept the same for every page: paragraphs, list items, captions, questions and answers, and the
table cells that end with a period. Headings and other cells are labels, not sentences; code, formulas, the lettering
of drawings, citation marks and lists of sources are not ours to read. A block's end ends its sentence.
"""

from __future__ import annotations

import re
from collections.abc import Iterable
from functools import cache

import pyphen

# A period after these does not end a sentence.
_ABBREVIATIONS = re.compile(
    r"(?:\b(?:No|Nos|Fig|Vol|pp|p|ca|vs|cf|ed|eds|St|Dr|approx|art|Art|sec|e\.g|i\.e|(?<!\d )(?<!°)[A-Z])\.)$"
)
_END = re.compile(r"(?<=[.?!])([”\"’)\]]*)\s+(?=[“\"‘(\[]?[A-Z0-9×…])")
_WORD = re.compile(r"\S*[A-Za-z0-9À-ÿ½¼¾⅓…]\S*")
_VOWELS = re.compile(r"[aeiouyàáâäèéêëìíîïòóôöùúûü]+")
# fuse, holes, fused; but not table, faces, touches, melted.
_SILENT_END = re.compile(
    r"(?<![aeiouy])(?<![^aeiouy]l)e$|(?<![aeiouyszxcg])(?<![cs]h)(?<![^aeiouy]l)es$|(?<![aeiouytd])ed$"
)
_PARTS = re.compile(r"[A-Za-zÀ-ÿ]+(?:['’][A-Za-z]+)?")
_HYPHENS = pyphen.Pyphen(lang="en_US", left=1, right=1)


def sentences(text: str) -> list[str]:
    """The sentences of a block. A number such as 0.5 or an abbreviation such as “No. 4” ends none; a raised dot parts
    the links of a row."""
    if " · " in text:
        return [one for part in text.split(" · ") for one in sentences(part)]
    found, start = [], 0
    for end in _END.finditer(text):
        sentence = text[start : end.start(1) + len(end.group(1))]
        if _ABBREVIATIONS.search(sentence):
            continue
        found.append(sentence.strip())
        start = end.end()
    found.append(text[start:].strip())
    return [one for one in found if _WORD.search(one)]


def words(sentence: str) -> list[str]:
    """What stands between spaces and holds a letter or a digit. A compound with hyphens is one word."""
    return _WORD.findall(sentence)


@cache
def syllables(word: str) -> int:
    """Syllables of a word as the sum of its parts; a figure, a symbol or a unit counts as one.

    Hyphenation leaves short syllables unbroken (a-ny, ea-sy), so where the runs of vowels are more, they are taken.
    """
    return max(1, sum(_part_syllables(part.lower()) for part in _PARTS.findall(word)))


def _part_syllables(part: str) -> int:
    stem = re.sub(r"['’]s?$", "", part)
    runs = len(_VOWELS.findall(stem))
    if runs > 1 and _SILENT_END.search(stem):
        runs -= 1
    return max(1, runs, len(_HYPHENS.positions(stem)) + 1)


def grade(all_sentences: Iterable[str]) -> float:
    """The Flesch–Kincaid grade level of some sentences.

    0.39 × words per sentence + 11.8 × syllables per word − 15.59: Kincaid, Fishburne, Rogers and Chissom, Derivation of
    new readability formulas for Navy enlisted personnel, Research Branch Report 8-75, Naval Technical Training Command,
    1975. The formula wants running text, so a page is taken as a whole, never one sentence.
    """
    told = [words(one) for one in all_sentences]
    count = sum(len(one) for one in told)
    if not count:
        return 0.0
    spoken = sum(syllables(word) for one in told for word in one)
    return 0.39 * count / len(told) + 11.8 * spoken / count - 15.59


def mean_length(all_sentences: Iterable[str]) -> float:
    """Words per sentence."""
    lengths = [len(words(one)) for one in all_sentences]
    return sum(lengths) / len(lengths) if lengths else 0.0
