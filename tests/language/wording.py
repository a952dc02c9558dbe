"""Words and signs that don't stand in the handbook, each with what to write instead."""

from __future__ import annotations

import re

# A pattern and what to do about it. Words match whole and in any case.
_BANNED: tuple[tuple[str, str], ...] = (
    (r"—|(?<=\w) – (?=\w)|(?<=\w)--(?=\w)| -- ", "a dash: write two sentences, a colon or a comma"),
    (r"!", "an exclamation mark: say what happens instead"),
    (r"\bsimply\b", "leave it out"),
    (r"\beas(?:il|ie)(?:y|r to use)\b|\beffortless(?:ly)?\b|\bhassle\b", "say what the work takes"),
    (r"\bensur(?:e|es|ed|ing)\b", "say the action: check, close, hold"),
    (r"\bplease\b|\bsorry\b", "say what to do"),
    (r"\binvalid\b", "say what to enter or bring"),
    (r"\bit is (?:important|essential|crucial|vital) (?:to|that)\b", "give the reason instead"),
    (r"\bin order to\b", "write “to”"),
    (r"\boptimal(?:ly)?\b|\boptimum results?\b", "give the figure"),
    (r"\butiliz(?:e|es|ed|ing)\b", "write “use”"),
    (r"\bproper(?:ly)? (?:fit|technique|care)\b", "say what right looks like"),
    (r"\bstate[- ]of[- ]the[- ]art\b|\bcutting[- ]edge\b|\bworld[- ]class\b|\bbest[- ]in[- ]class\b", "no marketing"),
    (r"\bcoming soon\b|\b(?:TODO|FIXME|TBD|lorem)\b|\bto be (?:written|added|done)\b", "finish it or take it out"),
)  # fmt: skip
_COMPILED = [(re.compile(pattern, re.IGNORECASE), advice) for pattern, advice in _BANNED]

# British words that the American dictionary lets through.
_BRITISH = {
    "grey": "gray",  # with a capital the dictionary takes it for a name
    "towards": "toward",
    "whilst": "while",
    "amongst": "among",
    "burnt": "burned",
    "learnt": "learned",
    "spelt": "spelled",
    "anticlockwise": "counterclockwise",
}
_BRITISH_WORD = re.compile(rf"\b(?:{'|'.join(_BRITISH)})\b", re.IGNORECASE)


def banned(text: str) -> list[str]:
    """What a text says that the handbook doesn't, each with what to do."""
    found = [f"“{match.group()}”: {advice}" for pattern, advice in _COMPILED for match in pattern.finditer(text)]
    found += [f"“{match.group()}”: write “{_BRITISH[match.group().lower()]}”" for match in _BRITISH_WORD.finditer(text)]
    return found
