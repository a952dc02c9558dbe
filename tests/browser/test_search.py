"""The search on a tablet: typed, chosen, gone back to, with the server gone."""

from __future__ import annotations

import re
from collections.abc import Callable

import pytest
from playwright.sync_api import BrowserContext, Page, expect

from .conftest import RING, RING_PAGE, Server
from .test_accessibility import serious_findings

FIELD, FINDS, STATUS = ".search-form:visible input", ".search-finds:visible", ".search-status:visible"


def ask_in_sheet(page: Page, words: str) -> None:
    page.get_by_role("button", name="Search", exact=True).click()
    expect(page.locator(FIELD)).to_be_focused()
    page.locator(FIELD).press_sequentially(words)
    expect(page.locator(STATUS)).not_to_be_empty()


def test_it_works_with_the_server_gone(open_tablet: Callable[..., BrowserContext], server: Server) -> None:
    page = open_tablet(offline_parts=True).new_page()
    page.goto(server.url(RING_PAGE))
    expect(page.locator("[data-offline-status]").first).to_have_text("Ready offline")
    server.stop()
    page.reload()
    ask_in_sheet(page, "post fell off")
    expect(page.locator(FINDS).get_by_role("link").first).to_have_text("Earring post")
    page.locator(FIELD).press("Enter")
    expect(page).to_have_url(re.compile(r"/jobs/earring-post/$"))

    page.go_back()
    expect(page).to_have_url(re.compile(r"/jobs/ring-up/#q=post\+fell\+off$"))
    expect(page.locator(FIELD)).to_have_value("post fell off")
    expect(page.locator(FINDS).get_by_role("link").first).to_have_text("Earring post")

    page.goto(server.url())
    page.locator(FIELD).press_sequentially("claw worn")
    page.locator(FIELD).press("Enter")  # before the finds are there
    expect(page).to_have_url(re.compile(r"/jobs/prong/"))


def test_the_field_of_the_start_page_comes_to_the_top_with_its_finds(tablet: Page, server: Server) -> None:
    tablet.goto(server.url())
    tablet.get_by_role("button", name="Search", exact=True).click()
    expect(tablet.locator(FIELD)).to_be_focused()
    tablet.locator(FIELD).press_sequentially("black around weld")
    expect(tablet.locator(FINDS).get_by_role("link").first).to_have_text(re.compile("Black soot"))
    expect(tablet.locator(f"{FINDS} li").first).to_be_in_viewport()
    expect(tablet.locator("dialog")).to_have_count(1)
    expect(tablet.locator("dialog")).to_be_hidden()


def test_finds_are_reached_and_left_by_keyboard(tablet: Page, server: Server) -> None:
    tablet.goto(server.url(f"{RING_PAGE}#calculator=ring-resize&width=4.4"))
    expect(tablet.locator(f"{RING}[name=width]")).to_have_value("4.4")
    opener = tablet.get_by_role("button", name="Search", exact=True)
    opener.focus()
    tablet.keyboard.press("Enter")
    tablet.keyboard.type("stretch ring")
    expect(tablet.locator(STATUS)).to_have_text(re.compile(r"^\d pages\. Enter opens the first\.$"))
    tablet.keyboard.press("Tab")
    expect(tablet.locator(FINDS).get_by_role("link").first).to_be_focused()
    tablet.keyboard.press("Escape")
    expect(tablet.locator("dialog")).to_be_hidden()
    expect(opener).to_be_focused()
    # The address is what it was.
    expect(tablet).to_have_url(re.compile(r"#calculator=ring-resize&width=4\.4$"))


def test_a_find_on_the_same_page_closes_the_sheet(tablet: Page, server: Server) -> None:
    tablet.goto(server.url("reference/glossary/"))
    ask_in_sheet(tablet, "plumb gold")
    tablet.get_by_role("link", name="Glossary: Plumb gold").click()
    expect(tablet.locator("dialog")).to_be_hidden()
    expect(tablet).to_have_url(re.compile(r"/reference/glossary/#plumb-gold$"))
    expect(tablet.locator("#plumb-gold")).to_be_in_viewport()


def test_nothing_found_shows_the_ways_in(tablet: Page, server: Server) -> None:
    tablet.goto(server.url(RING_PAGE))
    ask_in_sheet(tablet, "qqxjz")
    expect(tablet.locator(STATUS)).to_contain_text("Try one plain word")
    expect(tablet.locator(FINDS).get_by_role("link")).to_have_text(
        ["By job", "By joint", "By what went wrong", "By number"]
    )
    tablet.get_by_role("link", name="By what went wrong").click()
    expect(tablet).to_have_url(re.compile(r"/faults/$"))


def test_an_index_that_does_not_come_is_told(tablet: Page, server: Server) -> None:
    tablet.route("**/assets/search-index.json", lambda route: route.abort())
    tablet.goto(server.url(RING_PAGE))
    ask_in_sheet(tablet, "ring")
    expect(tablet.locator(STATUS)).to_contain_text("could not be loaded")
    tablet.unroute("**/assets/search-index.json")
    tablet.locator(FIELD).press_sequentially(" size")
    expect(tablet.locator(STATUS)).to_contain_text("Enter opens the first")


@pytest.mark.parametrize("dark", [False, True], ids=["light", "dark"])
@pytest.mark.parametrize(("path", "upright"), [(RING_PAGE, True), (RING_PAGE, False), ("", True)])
def test_nothing_serious_while_finds_are_shown(
    open_tablet: Callable[..., BrowserContext], server: Server, path: str, upright: bool, dark: bool
) -> None:
    page = open_tablet(upright=upright, dark=dark).new_page()
    page.goto(server.url(path))
    ask_in_sheet(page, "pearl near seam")
    assert serious_findings(page) == []


@pytest.mark.parametrize("path", ["", RING_PAGE])
def test_targets_are_large_and_a_narrow_screen_does_not_scroll_sideways(
    tablet: Page, server: Server, path: str
) -> None:
    tablet.set_viewport_size({"width": 320, "height": 640})
    tablet.goto(server.url(path))
    for glove, least in ((False, 48), (True, 76)):
        if glove:
            tablet.locator("[data-switch=glove]").click()
        opener = tablet.get_by_role("button", name="Search", exact=True)
        box = opener.bounding_box()
        assert box
        assert min(box["width"], box["height"]) >= least
        opener.click()
        tablet.locator(FIELD).fill("ring")
        expect(tablet.locator(f"{FINDS} li")).to_have_count(8)
        heights = tablet.locator(f"{FINDS} li").evaluate_all(
            "all => all.map(one => one.getBoundingClientRect().height)"
        )
        assert min(heights) >= least
        assert tablet.evaluate("document.scrollingElement.scrollWidth <= innerWidth")
        if path:
            tablet.get_by_role("button", name="Close search").click()
