"""What stops the build: always a sentence that names the page's slip and the nearest thing that exists."""

from __future__ import annotations

import difflib
from collections.abc import Iterable


class PageError(Exception):
    """A page asks for something that does not exist or cannot be used; the text is a sentence for its writer."""


def nearest(word: str, known: Iterable[str]) -> str:
    """The end of a sentence that helps with a misspelt name: the nearest known one, or all of them."""
    names = sorted(known)
    close = difflib.get_close_matches(word, names, 1, 0.4)
    if close:
        return f"The nearest is {close[0]}."
    return f"Known are {', '.join(names)}." if names else "None is known yet."
