"""The search index of a small site of its own: what goes in, what stays out, what stops the build."""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from build_scripts import search_index
from build_scripts.search_index import Section

PAGE = """<html><head><meta name="description" content="A post set anew."></head><body><nav>Menu</nav>
<article><h1 id="post">Earring <em>post</em></h1><p>It snapped<br>off <a data-search-exclude href="#c">[1]</a>.</p>
<p data-search-exclude>Not <b>this</b></p><svg><title>Nor this</title><path d="M0"/></svg>
<h2 id="work">Work it out</h2><table><tr><td>0.8&nbsp;mm</td><td>silver</td></tr></table>
<ul><li>One</li><li>Two <img src="a.png"> more</li></ul>
<h2 id="empty">Empty</h2><script>nor(this)</script></article><footer>Foot</footer></body></html>"""
WORDS = '[[same]]\nwords = ["shank", "band"]\n[[leads]]\nfrom = ["opal"]\nto = ["stone"]\n'


@pytest.fixture
def site(tmp_path: Path) -> Path:
    folder = tmp_path / "site"
    (folder / "jobs/post").mkdir(parents=True)
    (folder / "jobs/post/index.html").write_text(PAGE, encoding="utf-8")
    (folder / "404.html").write_text("<article>No page</article>", encoding="utf-8")
    (tmp_path / "words.toml").write_text(WORDS, encoding="utf-8")
    return folder


def test_a_page_and_its_parts(site: Path) -> None:
    found = search_index.read_page(site, site / "jobs/post/index.html")
    assert found.path == "jobs/post/"
    assert found.title == "Earring post"
    assert found.description == "A post set anew."
    assert found.weight == search_index.WEIGHTS["jobs/"]
    assert found.sections == [
        Section("", "", "It snapped\noff."),
        Section("work", "Work it out", "0.8 mm · silver\nOne\nTwo more"),
    ]


def test_the_list_of_a_section_counts_less_than_its_pages(site: Path) -> None:
    (site / "jobs/index.html").write_text(PAGE, encoding="utf-8")
    listing = search_index.read_page(site, site / "jobs/index.html")
    assert listing.weight < search_index.read_page(site, site / "jobs/post/index.html").weight


def test_the_index_holds_pages_and_words(site: Path) -> None:
    assert search_index.write_index(site, site.parent / "words.toml") == 1
    data = json.loads((site / search_index.INDEX).read_text(encoding="utf-8"))
    assert [page[0] for page in data["pages"]] == ["jobs/post/"]
    assert data["same"] == [["shank", "band"]]
    assert data["leads"] == [[["opal"], ["stone"]]]


def test_a_page_without_a_heading_stops_the_build(site: Path) -> None:
    (site / "jobs/post/index.html").write_text("<article><p>Text</p></article>", encoding="utf-8")
    with pytest.raises(search_index.SearchError, match="jobs/post/ has no main heading"):
        search_index.write_index(site, site.parent / "words.toml")


@pytest.mark.parametrize(
    ("words", "told"),
    [
        ('[[same]]\nwords = ["Shank", "band"]', "written small"),
        ('[[same]]\nwords = ["shank", ""]', "none is empty"),
        ('[[same]]\nwords = ["shank"]', "says nothing"),
        ('[[leads]]\nfrom = ["opal"]\nto = []', "none is empty"),
        ("[[same]", "cannot be read"),
    ],
)
def test_words_that_cannot_be_used_stop_the_build(site: Path, words: str, told: str) -> None:
    (site.parent / "words.toml").write_text(words, encoding="utf-8")
    with pytest.raises(search_index.SearchError, match=told):
        search_index.write_index(site, site.parent / "words.toml")
