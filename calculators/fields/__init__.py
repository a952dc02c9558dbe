"""The kinds of field a calculator may ask for."""

from .amounts import Amount, Count, Length, Mass, Ratio, StockThickness
from .base import Field
from .choices import Choice, MetalField, RingSizeField

__all__ = [
    "Amount",
    "Choice",
    "Count",
    "Field",
    "Length",
    "Mass",
    "MetalField",
    "Ratio",
    "RingSizeField",
    "StockThickness",
]
