"""Blocks that become a table made at the build, from the data or by the model."""

from __future__ import annotations

from xml.etree import ElementTree

from markdown.util import AtomicString

from build_scripts import data_tables, metal_tables, model_accuracy_table, ring_size_table, settings_table
from build_scripts.page_block import PageBlock


class MetalTableBlock(PageBlock):
    """``/// metal-table | gold``: the metals of a family with every figure; ``color = white`` shows part of it."""

    NAME, ARGUMENT, RAW = "metal-table", True, True

    def fill(self, block: ElementTree.Element, text: str) -> None:
        block.append(metal_tables.metal_table(self.argument, text))


class DataTableBlock(PageBlock):
    """``/// data-table | gauges``: a table made from the data, with ``place = uk`` and the like a line."""

    NAME, ARGUMENT, RAW = "data-table", True, True

    def fill(self, block: ElementTree.Element, text: str) -> None:
        block.append(data_tables.build(self.argument, text))


class RingSizeTableBlock(PageBlock):
    """``/// ring-size-table``: the ring-size scales side by side."""

    NAME, RAW = "ring-size-table", True

    def fill(self, block: ElementTree.Element, text: str) -> None:
        block.text = AtomicString(self.store(ring_size_table.ring_size_table_html()))


class SettingsTableBlock(PageBlock):
    """``/// settings-table | butt`` with ``thickness = 1 mm, 2 mm``: starting settings of a joint by the model."""

    NAME, ARGUMENT, RAW = "settings-table", True, True

    def fill(self, block: ElementTree.Element, text: str) -> None:
        block.text = AtomicString(self.store(settings_table.settings_table_html(self.argument, text, self.page.shop)))


class ModelAccuracyBlock(PageBlock):
    """``/// model-accuracy | errors``: a table of the heat model's own benchmark (also ``grid``, ``times``)."""

    NAME, ARGUMENT, RAW = "model-accuracy", True, True

    def fill(self, block: ElementTree.Element, text: str) -> None:
        block.text = AtomicString(self.store(model_accuracy_table.model_accuracy_html(self.argument)))


TABLE_BLOCKS: tuple[type[PageBlock], ...] = (
    DataTableBlock,
    MetalTableBlock,
    ModelAccuracyBlock,
    RingSizeTableBlock,
    SettingsTableBlock,
)
