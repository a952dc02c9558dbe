"""Links, anchors and descriptions of pictures in the built site."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from posixpath import normpath
from urllib.parse import unquote, urlsplit

from .pages import Link, Picture


def broken(links: Iterable[Link], at: str, ids_of: Callable[[str], frozenset[str] | None]) -> list[str]:
    """The links that lead nowhere. ``at`` is the page's folder in the site, such as ``jobs/ring-down/``.

    ``ids_of`` gives the anchors of a file below the site, an empty set for a file that is no page, and None when there
    is no such file.
    """
    found = []
    for link in links:
        told = urlsplit(link.href)
        if told.scheme or told.netloc:
            continue  # elsewhere
        path = unquote(told.path)
        target = normpath(at + path) if path else normpath(at or ".")
        if not path or path.endswith(("/", "..", ".")):
            target = "index.html" if target == "." else f"{target}/index.html"
        ids = ids_of(target)
        if ids is None:
            found.append(f"the link “{link.text}” leads to {link.href or 'nothing'}, which is not in the site")
        elif told.fragment and unquote(told.fragment) not in ids:
            found.append(f"the link “{link.text}” leads to {link.href}, and that page has no such anchor")
    return found


def undescribed(pictures: Iterable[Picture]) -> list[str]:
    """The pictures that a person who can't see them hears nothing about."""
    found = []
    for place, one in enumerate(pictures, 1):
        if one.attributes.get("aria-hidden") == "true" or one.attributes.get("role") == "presentation":
            continue
        if one.tag == "img" and not one.attributes.get("alt", "").strip():
            found.append(f"picture {place}, the image {one.attributes.get('src', '')}, has no alt text")
        if one.tag == "svg":
            lacks = [name for name, text in (("title", one.title), ("desc", one.description)) if not text]
            if lacks:
                found.append(f"picture {place}, a drawing{f' “{one.title}”' if one.title else ''}, has no {lacks[0]}")
            elif one.title == one.description:
                found.append(f"picture {place}, “{one.title}”, is described by its title alone: say what it shows")
    return found
