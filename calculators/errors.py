"""What the handbook says when a field can't be used: always a sentence telling the person what to enter."""

from __future__ import annotations


class Complaint(Exception):
    """One field that can't be used as it is.

    ``sentence`` is shown beside the field; ``field`` is its name, filled in by whoever knows it
    (empty when the sentence is about the whole question).
    """

    def __init__(self, sentence: str, field: str = "") -> None:
        super().__init__(sentence)
        self.sentence = sentence
        self.field = field


class FieldErrors(Exception):
    """All the complaints of one question together: ``{field name: sentence}``."""

    def __init__(self, errors: dict[str, str]) -> None:
        super().__init__("; ".join(errors.values()))
        self.errors = errors
