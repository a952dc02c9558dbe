"""Fields that choose from a list: plain choices, metals, ring sizes."""

from __future__ import annotations

import difflib
from dataclasses import dataclass
from typing import ClassVar

from ..errors import Complaint
from ..house import House
from ..metals import Metal, metal_of_density, metals
from ..reading import WrongUnit, plain_name, read_amount
from ..ring_scales import RingSize, on_scale, read_ring_size
from ..units import magnitude
from .base import Field


@dataclass(frozen=True, kw_only=True)
class Choice(Field):
    """One of ``options``: pairs of the value used in code and the words shown."""

    options: tuple[tuple[str, str], ...]
    kind: ClassVar[str] = "choice"

    def understand(self, text: str) -> str:
        wanted = plain_name(text)
        names = {}
        for value, words in self.options:
            names[plain_name(value)] = value
            names[plain_name(words)] = value
        if wanted in names:
            return names[wanted]
        close = difflib.get_close_matches(wanted, names, 1)
        near = f" Did you mean {names[close[0]]}?" if close else ""
        listed = ", ".join(value for value, _ in self.options)
        raise Complaint(f"Choose the {self.phrase} from {listed}.{near}")

    def missing(self) -> str:
        return f"Choose the {self.phrase}"


@dataclass(frozen=True, kw_only=True)
class MetalField(Field):
    """A metal of the handbook, or a density typed for any other alloy."""

    name: str = "metal"
    label: str = "Metal"
    example: str = "18k yellow"
    hint: str = "For an alloy that is not listed, choose the last line and type its density."
    families: tuple[str, ...] = ()
    kind: ClassVar[str] = "metal"

    @property
    def unit(self) -> str:
        return "g/cm**3"

    def listed(self) -> tuple[Metal, ...]:
        """The metals this field offers, in the order of the data."""
        return tuple(metal for metal in metals() if not self.families or metal.family in self.families)

    def understand(self, text: str) -> Metal:
        wanted = plain_name(text)
        names = {name: metal for metal in self.listed() for name in metal.names()}
        if wanted in names:
            return names[wanted]
        try:
            density = read_amount(text, self.unit)
        except (ValueError, WrongUnit, Complaint):
            close = difflib.get_close_matches(wanted, names, 1)
            near = f" Did you mean {names[close[0]].key}?" if close else ""
            raise Complaint(f"Choose a metal from the list, or enter its density such as 15.4 g/cm3.{near}") from None
        if not 1 <= magnitude(density, self.unit) <= 23:
            raise Complaint("Density must be between 1 and 23 g/cm³: enter it such as 15.4 g/cm3")
        return metal_of_density(density)

    def missing(self) -> str:
        return "Choose the metal"


@dataclass(frozen=True, kw_only=True)
class RingSizeField(Field):
    """A ring size in any scale, or a measured inside diameter or circumference."""

    kind: ClassVar[str] = "ring size"

    def in_house(self, text: str, house: House) -> str:
        return on_scale(text, house.ring_scale)

    def understand(self, text: str) -> RingSize:
        return read_ring_size(text)

    def ask(self) -> str:
        return "enter a size such as US 7"
