"""Every built page, checked for its language. Each message says where, what, and what to do.

Build the site first: ``python3 -m build_scripts build``.
"""

from __future__ import annotations

from functools import cache

import pytest

from build_scripts.site import SITE
from calculators.declare import all_calculators

from . import citing, figures, links, pages, sections, sentences, spelling, wording

ALL = pages.sources()
GUIDES = [name for name in ALL if name.split("/")[0] in ("joints", "jobs", "faults", "safety", "learn")]
TOP = [name for name in ALL if "/" not in name]
REFERENCE = [name for name in ALL if name.startswith("reference/")]

# Guides are read at the bench with a ring in the other hand.
GUIDE_GRADE, GUIDE_LONGEST, GUIDE_MEAN = 8, 30, 15
# Reference pages quote law, standards and chemistry, whose words are longer than ours, and are read at a table.
REFERENCE_GRADE, REFERENCE_LONGEST, REFERENCE_MEAN = 10, 35, 17


def limits(name: str) -> tuple[float, int, float]:
    """Highest grade, longest sentence and highest mean length for a page."""
    if name in REFERENCE:
        return REFERENCE_GRADE, REFERENCE_LONGEST, REFERENCE_MEAN
    return GUIDE_GRADE, GUIDE_LONGEST, GUIDE_MEAN


def running_sentences(page: pages.Page) -> list[str]:
    """The sentences of a page's running text."""
    return [one for block in page.running() for one in sentences.sentences(block.text)]


def complain(page: pages.Page, found: list[str]) -> None:
    """Fail with all that was found on a page."""
    assert not found, f"docs/{page.name}:\n" + "\n".join(f"  - {one}" for one in found)


@cache
def page_at(file: str) -> pages.Page | None:
    """A built file, read; an empty page when it is none."""
    path = SITE / file
    if not path.is_file():
        return None
    return pages.read(path.read_text(encoding="utf-8")) if path.suffix == ".html" else pages.Page(file)


@cache
def fields() -> dict[str, frozenset[str]]:
    """The fields of every calculator."""
    return {slug: frozenset(one.name for one in told.fields) for slug, told in all_calculators().items()}


@pytest.fixture
def page(request: pytest.FixtureRequest) -> pages.Page:
    """The built page of the parameter's name."""
    return pages.page(request.param)


every_page = pytest.mark.parametrize("page", ALL, indirect=True)
every_guide = pytest.mark.parametrize("page", [*GUIDES, *TOP], indirect=True)
every_repair = pytest.mark.parametrize(
    "page", [one for one in GUIDES if one.split("/")[0] in sections.REQUIRED], indirect=True
)


@every_page
def test_has_text(page: pages.Page) -> None:
    """Guards the other tests: a page that reads as empty would pass them all."""
    assert page.has_article, f"site/ shows no article for docs/{page.name}"
    assert page.blocks, f"docs/{page.name} has no text that the checker can read"


@every_page
def test_spelling(page: pages.Page) -> None:
    found = []
    for block in page.blocks:
        for word in spelling.misspelled(block.text, in_sources=block.kind == "citation"):
            found.append(f"“{word}” in “{block.text[:120]}”: mend it; a word of the trade goes into trade_words.txt")
    for picture in page.pictures:
        for word in spelling.misspelled(f"{picture.title}. {picture.description}"):
            found.append(f"“{word}” in the description of the drawing “{picture.title}”")
    complain(page, found)


@every_page
def test_reading_grade(page: pages.Page) -> None:
    told = running_sentences(page)
    limit = limits(page.name)[0]
    reached = sentences.grade(told)
    heavy = sorted(told, key=lambda one: sentences.grade([one]), reverse=True)[:5]
    found = [f"grade {reached:.1f}, at most {limit}. Shorten these first:", *heavy] if reached > limit else []
    complain(page, found)


@every_page
def test_no_long_sentence(page: pages.Page) -> None:
    longest = limits(page.name)[1]
    lengths = [(len(sentences.words(one)), one) for one in running_sentences(page)]
    complain(page, [f"{count} words, at most {longest}: split “{one}”" for count, one in lengths if count > longest])


@every_page
def test_sentences_are_short_on_the_whole(page: pages.Page) -> None:
    limit = limits(page.name)[2]
    mean = sentences.mean_length(running_sentences(page))
    complain(page, [f"{mean:.1f} words a sentence, under {limit} wanted"] if mean >= limit else [])


@every_repair
def test_has_its_parts(page: pages.Page) -> None:
    wanted = sections.required(page)
    found = sections.faults_of_order(page.sections(), wanted)
    complain(page, found + (sections.faults_of_opening(page) if wanted else []))


@every_page
def test_figures_have_units(page: pages.Page) -> None:
    found = []
    for one in running_sentences(page):
        found += [f"“… {where} …” has no unit, in “{one}”" for where in figures.unmeasured(one)]
    complain(page, found)


@every_page
def test_wording(page: pages.Page) -> None:
    found = []
    for block in page.blocks:
        if block.kind != "citation":  # a title of somebody else's
            found += [f"{said}, in “{block.text[:120]}”" for said in wording.banned(block.text)]
    for picture in page.pictures:
        said = wording.banned(f"{picture.title}. {picture.description}")
        found += [f"{one}, in the description of the drawing “{picture.title}”" for one in said]
    complain(page, found)


@every_page
def test_links_lead_somewhere(page: pages.Page) -> None:
    at = pages.built_file(page.name).parent.relative_to(SITE).as_posix() + "/"
    complain(page, links.broken(page.links, "" if at == "./" else at, page_at, fields()))


@every_page
def test_pictures_are_described(page: pages.Page) -> None:
    complain(page, links.undescribed(page.pictures))


@every_page
def test_lists_what_it_cites(page: pages.Page) -> None:
    complain(page, citing.faults_of_page(page))


def test_every_source_is_cited() -> None:
    unused = citing.uncited(citing.listed(), citing.cited())
    assert not unused, f"sources.toml lists what nothing cites: {', '.join(unused)}. Cite it or take it out."


def test_every_citation_is_listed() -> None:
    unknown = citing.unlisted(citing.listed(), citing.cited())
    assert not unknown, f"cited and not in sources.toml: {unknown}. Add it with its citation and extent."
