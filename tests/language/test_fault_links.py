"""From a guide's table of what goes wrong to the pages of the faults, and back."""

from __future__ import annotations

from posixpath import join, normpath
from urllib.parse import urlsplit

import pytest

from . import pages, sections

ALL = pages.sources()
JOINTS = [one for one in ALL if one.startswith("joints/") and not one.endswith("index.md")]
JOBS = [
    one for one in ALL if one.startswith("jobs/") and not one.endswith("index.md") and one not in sections.NO_REPAIR
]
FAULTS = [one for one in ALL if one.startswith("faults/") and not one.endswith("index.md")]


def linked_pages(page: pages.Page, folder: str, section: str = "") -> set[str]:
    """The pages of a folder that a page links to, from one of its parts or from anywhere."""
    at = page.name.removesuffix(".md")
    found = set()
    for link in page.links:
        if section in ("", link.section) and urlsplit(link.href).path:
            target = normpath(join(at, urlsplit(link.href).path))
            if target.startswith(f"{folder}/"):
                found.add(f"{target}.md")
    return found


def test_a_link_is_followed_from_the_page_it_stands_on() -> None:
    """Guards the tests below."""
    html = (
        '<article><h2>Inspect</h2><a href="../../faults/step/">a</a><h2>What goes wrong</h2>'
        '<a href="../../faults/crack/#mend">b</a> <a href="#here">c</a> <a href="../bail/">d</a></article>'
    )
    page = pages.read(html, "jobs/ring-down.md")
    assert linked_pages(page, "faults") == {"faults/step.md", "faults/crack.md"}
    assert linked_pages(page, "faults", "What goes wrong") == {"faults/crack.md"}
    assert linked_pages(page, "jobs") == {"jobs/bail.md"}


@pytest.mark.parametrize("name", [*JOINTS, *JOBS])
def test_a_guide_leads_to_two_faults(name: str) -> None:
    found = linked_pages(pages.page(name), "faults", "What goes wrong")
    assert len(found) >= 2, f"docs/{name}: link the signs under “What goes wrong” to at least two pages of docs/faults/"


@pytest.mark.parametrize("name", FAULTS)
def test_a_fault_is_reached_from_a_guide(name: str) -> None:
    guides = [one for one in [*JOINTS, *JOBS] if name in linked_pages(pages.page(one), "faults", "What goes wrong")]
    assert guides, f"docs/{name}: no guide's table “What goes wrong” links to it"


@pytest.mark.parametrize("name", FAULTS)
def test_a_fault_leads_back_to_the_joints_where_it_occurs(name: str) -> None:
    back = linked_pages(pages.page(name), "joints")
    assert back, f"docs/{name}: link to the joints where this occurs"
    lacking = [
        one for one in JOINTS if name in linked_pages(pages.page(one), "faults", "What goes wrong") and one not in back
    ]
    assert not lacking, f"docs/{name}: these joints lead here and it doesn't lead back: {', '.join(lacking)}"
