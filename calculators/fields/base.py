"""What every field of a calculator has in common."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Any, ClassVar

from ..errors import Complaint
from ..reading import LONGEST

if TYPE_CHECKING:
    from ..house import House


@dataclass(frozen=True, kw_only=True)
class Field:
    """One question a calculator asks.

    ``name`` is the argument of the calculator's function; ``label`` stands above the box; ``example`` is the
    worked example's text; ``hint`` is one sentence; ``phrase`` is the label inside a sentence ("the band
    thickness"); ``group`` collects seldom-changed fields under a heading; ``when`` names a choice field and the
    values for which this field is asked at all. A field that is not ``required`` may be left empty (None).
    ``room`` is how many characters its box has room for at least.
    """

    name: str
    label: str
    example: str = ""
    hint: str = ""
    group: str = ""
    required: bool = True
    when: tuple[str, tuple[str, ...]] | None = None
    kind: ClassVar[str] = "text"
    room: ClassVar[int] = 6

    @property
    def phrase(self) -> str:
        """The label as it stands inside a sentence: ``band thickness``, ``US law``."""
        first, rest = self.label[:1], self.label[1:]
        return self.label if rest[:1].isupper() else first.lower() + rest

    @property
    def unit(self) -> str:
        """The unit assumed when none is typed; empty where there is none."""
        return ""

    def in_house(self, text: str, house: House) -> str:
        """What was typed, spelt out by what the shop has settled; most kinds of field need nothing of it."""
        return text

    def read(self, text: str) -> Any:
        """The value of what was typed, or None when an optional field is empty.

        Raises ``Complaint`` with a sentence that tells the person what to enter.
        """
        text = text.strip()
        if not text:
            if self.required:
                raise Complaint(self.missing())
            return None
        if len(text) > LONGEST:
            raise Complaint(f"{self.label} is too long to read: {self.ask()}")
        return self.understand(text)

    def understand(self, text: str) -> Any:
        """Turn non-empty text into a value; each kind of field has its own."""
        return text

    def missing(self) -> str:
        """What is said when the field is empty."""
        return f"Enter the {self.phrase}"

    def ask(self) -> str:
        """The end of a sentence that tells the person what to enter."""
        return f"enter it such as {self.example}" if self.example else "enter a short text"

    def asked(self, texts: dict[str, str]) -> bool:
        """Whether this field counts, given what was chosen in the others."""
        return self.when is None or texts.get(self.when[0], "").strip() in self.when[1]
