"""The sizes a piece of stock is asked for, each only for the shapes that have it."""

from __future__ import annotations

from ..fields import Field, Length, StockThickness
from .shapes import LONG, ROUND, THICK, WIDE

SIZES: tuple[Field, ...] = (
    StockThickness(
        name="diameter",
        label="Diameter",
        example="1 mm",
        low=0.05,
        high=300,
        hint="Outside, in mm or gauge.",
        when=("shape", ROUND),
    ),
    StockThickness(
        name="side",
        label="Side of the square",
        example="1 mm",
        low=0.05,
        high=50,
        hint="In mm or gauge.",
        when=("shape", ("square-wire",)),
    ),
    Length(name="width", label="Width", example="3 mm", low=0.05, high=1000, hint="Across.", when=("shape", WIDE)),
    StockThickness(
        name="thickness",
        label="Thickness",
        example="1 mm",
        low=0.02,
        high=100,
        hint="Of half-round, its height; in mm or gauge.",
        when=("shape", THICK),
    ),
    StockThickness(
        name="wall",
        label="Tube wall",
        example="0.3 mm",
        low=0.02,
        high=50,
        hint="In mm or gauge.",
        when=("shape", ("tube",)),
    ),
    Length(
        name="length",
        label="Length",
        example="100 mm",
        low=0.05,
        high=100_000,
        hint="How much of it you have or need.",
        when=("shape", LONG),
    ),
)
