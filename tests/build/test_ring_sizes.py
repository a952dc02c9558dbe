"""The ring-size table and the template at true size.

Expected sizes are rows of the reference table of ring sizes (US law seen in print; UK and Japan second-hand), each
given there to 0.001 mm; the table shows 0.01 mm.
"""

from __future__ import annotations

import math
import re

import pytest

from build_scripts import drawings
from build_scripts.ring_size_table import ring_size_table_html

# US size: across, around, other US law's nearest, UK letter and offset, ISO, Japan
ROWS = {
    "3": ("14.07", "44.21", "3", "F½", -0.168, "44", "4"),
    "7": ("17.32", "54.42", "7", "N½", 0.046, "54", "14"),
    "10": ("19.76", "62.08", "10", "T½", 0.207, "62", "21"),
    "13": ("22.20", "69.74", "12¾", "Z+1", -0.258, "70", "29"),
}


def cells(size: str) -> list[str]:
    row = re.search(rf'<tr><th scope="row">{size}</th>(.*?)</tr>', ring_size_table_html())
    assert row, f"no row for US {size}"
    return re.findall(r"<td[^>]*>(.*?)</td>", row[1])


@pytest.mark.parametrize("size", ROWS)
def test_rows_agree_with_the_reference_table(size: str) -> None:
    across, around, other, uk, uk_off, iso, japan = ROWS[size]
    found = cells(size)
    assert found[:2] == [across, around]
    named = [re.sub(r" <small>.*", "", one) for one in found[2:6]]
    assert named == [other, uk, iso, japan]
    offset = re.search(r"<small>(.*?)</small>", found[3])
    assert offset
    assert float(offset[1].replace("−", "-")) == pytest.approx(uk_off, abs=0.0055)


def test_a_ring_off_a_scale_is_said_to_be_off_it() -> None:
    assert cells("0")[3] == "below"
    assert cells("16")[3] == "above"


def test_template_is_true_to_size() -> None:
    svg = drawings.find("ring-size-template").svg()
    box = re.search(r'viewBox="0 0 ([0-9.]+)', svg)
    width = re.search(r"width:([0-9.]+)mm!important", svg)
    assert box
    assert width
    units_per_mm = float(box[1]) / float(width[1])
    bar = re.search(r"M[0-9.]+,60H[0-9.]+", svg)
    assert bar
    start, end = (float(one) for one in re.findall(r"M([0-9.]+),60H([0-9.]+)", bar[0])[0])
    assert (end - start) / units_per_mm == pytest.approx(50.0, abs=1e-9)
    line = re.search(r"stroke-width:([0-9.]+)", svg)
    assert line
    radii = [float(one) for one in re.findall(r'<circle[^>]* r="([0-9.]+)"', svg)]
    assert len(radii) == 24
    for index, radius in enumerate(radii):
        inch_law = 25.4 * (0.458 + 0.032 * (3 + index / 2))
        assert (2 * radius + float(line[1])) / units_per_mm == pytest.approx(inch_law, abs=0.001)
    assert math.isclose(max(radii) / units_per_mm * 2 + 0.2, 23.42, abs_tol=0.01)
