"""The drawings of the pages: one function a drawing, found by looking through this folder.

A drawing is a function without arguments, marked ``@drawing("butt-before")``, that returns a
``calculators.drawing.Drawing``. There is no list to keep: put it in a module here and a page can show it. A chart is
a drawing marked ``@chart("...")`` instead: it may carry the names and figures of its axes.
"""

from __future__ import annotations

import importlib
import pkgutil
from collections.abc import Callable
from functools import lru_cache

from build_scripts.errors import PageError, nearest
from calculators.drawing import Drawing

Draw = Callable[[], Drawing]
_known: dict[str, Draw] = {}
_charts: set[str] = set()


def drawing(slug: str) -> Callable[[Draw], Draw]:
    """Register a drawing under the name that pages show it by. Raises ``ValueError`` when the name is taken."""

    def register(draw: Draw) -> Draw:
        other = _known.get(slug)
        if other is not None and (other.__module__, other.__qualname__) != (draw.__module__, draw.__qualname__):
            raise ValueError(f"Two drawings are called {slug}: {other.__module__} and {draw.__module__}.")
        _known[slug] = draw
        return draw

    return register


def chart(slug: str) -> Callable[[Draw], Draw]:
    """Register a chart: a drawing that is read along axes and so needs more lettering than a picture."""
    _charts.add(slug)
    return drawing(slug)


def is_chart(slug: str) -> bool:
    """Whether that drawing is a chart."""
    all_drawings()
    return slug in _charts


@lru_cache(maxsize=1)
def all_drawings() -> dict[str, Draw]:
    """Every drawing of this folder by its slug."""
    for module in pkgutil.iter_modules(__path__, f"{__name__}."):
        importlib.import_module(module.name)
    return dict(sorted(_known.items()))


def find(slug: str) -> Drawing:
    """The drawing of that slug, drawn. Raises ``PageError`` naming the nearest known one."""
    known = all_drawings()
    if slug not in known:
        raise PageError(f"There is no drawing {slug}. {nearest(slug, known)}")
    return known[slug]()
