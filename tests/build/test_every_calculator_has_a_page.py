"""Every calculator and every data table stands where a reader needs it, not only on the list of calculators."""

from __future__ import annotations

import re

import pytest

from build_scripts import data_tables
from build_scripts.listings import PageFile, page_files, pages_carrying
from calculators.declare import all_calculators
from calculators.metals import metals
from tests.build import pages

LISTS = {"numbers.md"}  # the list itself
PAGES = [one for one in page_files(pages.DOCS) if one.path not in LISTS]


@pytest.mark.parametrize("slug", sorted(all_calculators()))
def test_a_calculator_stands_on_a_guide_or_a_reference_page(slug: str) -> None:
    carrying = [one.path for one in PAGES if slug in one.calculators]
    assert carrying, f"{slug} stands on no page but the list"


HOMES = [(slug, one) for one in PAGES for slug in one.home]


@pytest.mark.parametrize(("slug", "page"), HOMES, ids=[slug for slug, _ in HOMES])
def test_the_list_leads_to_the_home_of_a_calculator(slug: str, page: PageFile) -> None:
    assert slug in page.calculators, f"{page.path} says it is the home of {slug} but doesn't carry it"
    assert [name for name, _ in HOMES].count(slug) == 1
    assert pages_carrying([all_calculators()[slug]], pages.DOCS)[slug] == page


def shown(block: str) -> set[str]:
    """The names that a block is given anywhere in the pages."""
    lines = (re.findall(rf"^ */{{3,}} *{block} *\| *(.+?) *$", pages.text(one.path[:-3]), re.M) for one in PAGES)
    return {name for found in lines for name in found}


@pytest.mark.parametrize("name", sorted(data_tables.all_tables()))
def test_a_data_table_stands_on_a_page(name: str) -> None:
    assert name in shown("data-table")


@pytest.mark.parametrize("family", sorted({one.family for one in metals()}))
def test_every_family_of_metals_has_its_table(family: str) -> None:
    assert family in {name.split()[0] for name in shown("metal-table")}
