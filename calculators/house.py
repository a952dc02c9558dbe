"""What a shop settles once for all its questions: so far the ring-size scale that a number alone is read in.

The calculators know no file of the shop. Whoever asks passes a ``House`` along: the page from its form, the
command line from its option. Without one everything is read as if no shop had settled anything.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from .ring_scales import code_of_scale


@dataclass(frozen=True)
class House:
    """``ring_scale`` is the short name of a scale (``US``, ``JP``), or empty where numbers alone are refused."""

    ring_scale: str = ""


NO_HOUSE = House()


def read_house(texts: Mapping[str, str]) -> House:
    """The settings of a shop from their texts; raises ``Complaint`` for a ring scale that there is not."""
    scale = str(texts.get("ring_scale", "")).strip()
    return House(ring_scale=code_of_scale(scale) if scale else "")
