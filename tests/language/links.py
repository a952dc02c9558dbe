"""Links, anchors and descriptions of pictures in the built site."""

from __future__ import annotations

from collections.abc import Callable, Collection, Iterable, Mapping
from posixpath import normpath
from urllib.parse import parse_qsl, unquote, urlsplit

from .pages import Link, Page, Picture

# The fields of every calculator by its slug.
Fields = Mapping[str, Collection[str]]


def broken(links: Iterable[Link], at: str, page_at: Callable[[str], Page | None], fields: Fields) -> list[str]:
    """The links that lead nowhere. ``at`` is the page's folder in the site, such as ``jobs/ring-down/``.

    ``page_at`` reads a file below the site: an empty page for a file that is no page, None when there is no such file.
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
        page = page_at(target)
        if page is None:
            found.append(f"the link “{link.text}” leads to {link.href or 'nothing'}, which is not in the site")
        else:
            wrong = _wrong_fragment(told.fragment, page, fields)
            found += [f"the link “{link.text}” leads to {link.href}, and {one}" for one in wrong]
    return found


def _wrong_fragment(fragment: str, page: Page, fields: Fields) -> list[str]:
    """What the page lacks of what stands behind the ``#``: an anchor, or a calculator's form with these fields."""
    if not fragment.startswith("calculator="):
        return ["that page has no such anchor"] if fragment and unquote(fragment) not in page.ids else []
    (_, slug), *texts = parse_qsl(fragment, keep_blank_values=True)
    if slug not in fields:
        return [f"there is no calculator {slug}"]
    found = [] if slug in page.calculators else [f"that page has no calculator {slug}"]
    return found + [f"{slug} has no field {name}" for name, _ in texts if name not in fields[slug]]


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
