"""The faults as the loupe shows them: the same pictures that the fault finder gives with its answer."""

from __future__ import annotations

from functools import partial

from build_scripts.drawings import drawing
from calculators.choosing.fault_pictures import picture
from calculators.choosing.faults import faults

for _slug in faults():
    drawing(f"fault-{_slug}")(partial(picture, _slug))
