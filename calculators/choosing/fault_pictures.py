"""The picture of a fault by its slug."""

from __future__ import annotations

from ..drawing import Drawing
from . import shape_pictures, surface_pictures


def picture(slug: str) -> Drawing:
    """What the fault of that slug looks like; raises ``AttributeError`` for an unknown slug."""
    name = slug.replace("-", "_")
    module = surface_pictures if hasattr(surface_pictures, name) else shape_pictures
    drawn: Drawing = getattr(module, name)()
    return drawn
