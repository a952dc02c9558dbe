"""The checker of parts, sources, links and pictures: what must fail and what must pass."""

from __future__ import annotations

from pathlib import Path

import pytest

from . import citing, links, pages, sections, test_pages
from .pages import article

# Parts of a guide


def headings(*names: str) -> str:
    return "".join(f"<h2>{one}</h2><p>Text.</p>" for one in names)


OPENING = '<p><a href="../../joints/butt/">Butt</a></p><div class="strip"></div><div class="danger"></div>'


def test_parts_in_order_pass() -> None:
    test_pages.test_has_its_parts(article(OPENING + headings(*sections.JOB)))
    test_pages.test_has_its_parts(article(OPENING + headings(*sections.JOB[:3], "A part more", *sections.JOB[3:])))


@pytest.mark.parametrize("lost", sections.JOB)
def test_a_missing_part_fails(lost: str) -> None:
    with pytest.raises(AssertionError, match=f"the part “{lost}” is missing"):
        test_pages.test_has_its_parts(article(OPENING + headings(*(one for one in sections.JOB if one != lost))))


def test_parts_out_of_order_or_double_fail() -> None:
    first, second, *rest = sections.JOB
    with pytest.raises(AssertionError, match=f"“{second}” is out of order"):
        test_pages.test_has_its_parts(article(OPENING + headings(second, first, *rest)))
    with pytest.raises(AssertionError, match="stands there twice"):
        test_pages.test_has_its_parts(article(OPENING + headings(*sections.JOB, first)))


@pytest.mark.parametrize(
    ("lost", "said"), [("strip", "the strip is missing"), ("danger", "the danger"), ("joints", "names no joint")]
)
def test_an_opening_that_lacks_something_fails(lost: str, said: str) -> None:
    with pytest.raises(AssertionError, match=said):
        test_pages.test_has_its_parts(article(OPENING.replace(lost, "other") + headings(*sections.JOB)))


def test_which_pages_have_required_parts() -> None:
    assert sections.required(article("", "joints/butt.md")) == sections.JOINT
    assert sections.required(article("", "faults/step.md")) == sections.FAULT
    assert sections.required(article("", "jobs/index.md")) == ()
    assert sections.required(article("", "reference/glossary.md")) == ()


# Sources


def test_a_key_is_found_wherever_it_is_cited(tmp_path: Path) -> None:
    known = sorted(citing.listed())[0]
    docs, calculators = tmp_path / "docs", tmp_path / "calculators"
    docs.mkdir()
    calculators.mkdir()
    (docs / "a.md").write_text("It melts [@from-page].", encoding="utf-8")
    (calculators / "a.toml").write_text(
        'source = "from-table"\n[[row]]\nsources = ["one", "two"]\ndensity_source = "deep"\nname = "no-key"\n',
        encoding="utf-8",
    )
    (calculators / "a.py").write_text(f'sources=["{known}", "not-a-key"]', encoding="utf-8")
    found = citing.cited(docs, calculators)
    assert set(found) == {"from-page", "from-table", "one", "two", "deep", known}
    assert found["from-page"] == "docs/a.md"


def test_uncited_and_unlisted_are_told_apart() -> None:
    found = {"used": "docs/a.md", "lost": "docs/b.md"}
    assert citing.uncited({"used", "idle"}, found) == ["idle"]
    assert citing.unlisted({"used", "idle"}, found) == {"lost": "docs/b.md"}


CITES = '<p>It melts <a class="citation" href="#cited-book">1</a>.</p>'
LIST = '<h2>Sources</h2><ol class="cited"><li id="cited-book">A book.</li></ol>'


def test_a_page_lists_what_it_cites() -> None:
    assert citing.faults_of_page(article(CITES + LIST)) == []
    assert citing.faults_of_page(article("<p>Nothing cited.</p>")) == []
    assert "has no list" in citing.faults_of_page(article(CITES))[0]
    assert "#cited-book, which its list lacks" in citing.faults_of_page(article(CITES + LIST.replace("-book", "-b")))[0]
    assert "its last part is “More”" in citing.faults_of_page(article(CITES + LIST + "<h2>More</h2>"))[0]


# Links and pictures

SITE = {
    "index.html": article(""),
    "jobs/bail/index.html": article('<h2 id="inspect">Inspect</h2>'),
    "learn/index.html": article('<form data-calculator="stock-weight" id="stock-weight"></form>'),
    "assets/card.pdf": pages.Page("assets/card.pdf"),
}
FIELDS = {"stock-weight": {"shape", "width"}, "gauge": {"number"}}


def broken(href: str) -> list[str]:
    """What is said about a link on ``jobs/ring-down/``."""
    told = article(f'<p><a href="{href}">there</a></p>')
    return links.broken(told.links, "jobs/ring-down/", lambda file: SITE.get(file), FIELDS)


@pytest.mark.parametrize(
    "href",
    [
        "../bail/",
        "../bail/#inspect",
        "../../",
        "../../assets/card.pdf",
        "https://example.org/gone",
        "../../learn/#stock-weight",
        "../../learn/#calculator=stock-weight",
        "../../learn/#calculator=stock-weight&amp;shape=strip&width=12+mm",
        "../../learn/#calculator=stock-weight&width=",
    ],
)
def test_a_link_that_leads_somewhere(href: str) -> None:
    assert broken(href) == []


@pytest.mark.parametrize(
    ("href", "said"),
    [
        ("../gone/", "which is not in the site"),
        ("../../assets/gone.pdf", "which is not in the site"),
        ("", "which is not in the site"),
        ("../bail/#gone", "no such anchor"),
        ("../../learn/#gone", "no such anchor"),
        ("../../learn/#q=bail", "no such anchor"),
        ("../gone/#calculator=stock-weight", "which is not in the site"),
        ("../../learn/#calculator=gone&shape=strip", "there is no calculator gone"),
        ("../../learn/#calculator=gauge&number=20", "that page has no calculator gauge"),
        ("../bail/#calculator=stock-weight", "that page has no calculator stock-weight"),
        ("../../learn/#calculator=stock-weight&width=1+mm&gone=", "stock-weight has no field gone"),
    ],
)
def test_a_broken_link(href: str, said: str) -> None:
    found = broken(href)
    assert len(found) == 1
    assert said in found[0]


def test_the_fields_are_those_of_the_declarations() -> None:
    assert {"shape", "width", "metal"} <= test_pages.fields()["stock-weight"]
    assert "gone" not in test_pages.fields()["stock-weight"]


@pytest.mark.parametrize(
    ("html", "said"),
    [
        ('<img src="a.png">', "a.png, has no alt text"),
        ('<img src="a.png" alt=" ">', "a.png, has no alt text"),
        ("<svg><path/></svg>", "has no title"),
        ("<svg><title>A ring</title></svg>", "“A ring”, has no desc"),
        ("<svg><title>A ring</title><desc>A ring</desc></svg>", "by its title alone"),
    ],
)
def test_undescribed(html: str, said: str) -> None:
    found = links.undescribed(article(html).pictures)
    assert len(found) == 1
    assert said in found[0]


@pytest.mark.parametrize(
    "html",
    [
        '<img src="a.png" alt="A ring in a clamp">',
        "<svg><title>A ring</title><desc>It is cut at six.</desc></svg>",
        '<svg aria-hidden="true"><path/></svg>',
        '<img src="line.svg" role="presentation">',
    ],
)
def test_described(html: str) -> None:
    told = article(html)
    assert len(told.pictures) == 1
    assert links.undescribed(told.pictures) == []
