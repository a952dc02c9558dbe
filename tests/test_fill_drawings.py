"""The lettering of the fill drawings stays inside its picture and apart, whatever is asked.

A letter at 18 units counts as 9.8 wide: that is what the text measures in the browser, rounded up.
"""

from __future__ import annotations

import html
import itertools
import re
from typing import Any

import pytest

from calculators.run import find, work_out

LETTER, ABOVE, BELOW = 9.8, 15, 4
_TEXT = re.compile(r'<text class="label" x="([-\d.]+)" y="([-\d.]+)" text-anchor="(\w+)">(.*?)</text>')
JOBS: list[tuple[str, dict[str, list[str]]]] = [
    ("fill-flat-spot", {"outside_diameter": ["16", "21", "30", "60"], "thickness": ["1", "2.5"],
                        "depth": ["0.05", "0.4", "0.9"]}),
    ("fill-worn-shank", {"ring_size": ["US 3", "US 13"], "worn_thickness": ["0.8"], "full_thickness": ["1", "2", "6"],
                         "angle": ["10", "45", "90", "180", "360"]}),
    ("fill-pit", {"shape": ["hemisphere", "cone", "cap", "frustum", "cylinder"], "mouth": ["0.25", "1", "5"],
                  "depth": ["0.1", "0.6", "4"], "floor": ["0", "0.25"], "wire_diameter": ["0.2", "1"]}),
    ("fill-gap", {"thickness": ["0.8", "1.5", "6"], "gap": ["0", "0.05", "1.25"], "chamfer_depth": ["0", "0.4"],
                  "chamfer_angle": ["30", "90", "140"], "both_faces": ["yes", "no"]}),
    ("prong-tip", {"diameter": ["0.6", "1.25", "3"], "height": ["0", "0.35", "4"], "dome": ["0.05", "0.3"]}),
    ("plug-fit", {"post_diameter": ["0.4", "0.8", "2"], "hole_diameter": ["2", "2.25"],
                  "plate_thickness": ["0.3", "1", "5"], "stub": ["", "0.15", "9"], "crown": ["0", "0.25"]}),
    ("post-strength", {"post_diameter": ["0.5", "0.95", "3"], "plate_thickness": ["0.45", "1", "5"],
                       "depth": ["0.1", "0.24"],
                       "joint": ["butt-full", "butt-rim", "plug"], "post_length": ["1.5", "11", "45"]}),
]  # fmt: skip


def boxes(drawing: Any) -> list[tuple[float, float, float, float, str]]:
    """Left, top, right, bottom and words of every lettering, in picture units."""
    found = []
    for x, y, anchor, words in _TEXT.findall("".join(drawing.body)):
        wide = LETTER * len(html.unescape(words))
        left = float(x) - {"start": 0.0, "middle": wide / 2, "end": wide}[anchor]
        found.append((left, float(y) - ABOVE, left + wide, float(y) + BELOW, words))
    return found


@pytest.mark.parametrize(("slug", "grid"), JOBS, ids=[slug for slug, _ in JOBS])
def test_lettering_stays_inside_and_apart(slug: str, grid: dict[str, list[str]]) -> None:
    seen = 0
    for values in itertools.product(*grid.values()):
        fields = dict(zip(grid, values, strict=True))
        for drawing in work_out(find(slug), fields)[1].drawings:
            wide, high = drawing.width * drawing.scale, drawing.height * drawing.scale
            assert wide == pytest.approx(640)
            found = boxes(drawing)
            assert len(found) >= 3
            for left, top, right, bottom, words in found:
                assert left >= 0, (fields, words)
                assert top >= 0, (fields, words)
                assert right <= wide, (fields, words)
                assert bottom <= high, (fields, words)
            for a, b in itertools.combinations(found, 2):
                apart = a[2] <= b[0] or b[2] <= a[0] or a[3] <= b[1] or b[3] <= a[1]
                assert apart, (fields, a[4], b[4])
            seen += 1
    assert seen == len(list(itertools.product(*grid.values())))
