"""The kinds of field a calculator may ask for."""

from .amounts import Amount, Count, Length, Mass, Ratio, StockThickness
from .base import Field
from .choices import Choice, MetalField, RingSizeField
from .fineness import Fineness, FinenessTyped, Price
from .gauge import GaugeField, GaugeTyped

__all__ = [
    "Amount",
    "Choice",
    "Count",
    "Field",
    "Fineness",
    "FinenessTyped",
    "GaugeField",
    "GaugeTyped",
    "Length",
    "Mass",
    "MetalField",
    "Price",
    "Ratio",
    "RingSizeField",
    "StockThickness",
]
