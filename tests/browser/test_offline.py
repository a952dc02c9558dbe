"""The whole handbook on the device: said only when true, working with the server gone, never two editions mixed."""

from __future__ import annotations

import re
import shutil
from collections.abc import Callable
from pathlib import Path

from playwright.sync_api import BrowserContext, Page, expect

from build_scripts import precache
from build_scripts.bootstrap import REPO

from .conftest import BLANK, BLANK_PAGE, RING, RING_PAGE, Server, answer_by_cpython

STATUS = "[data-offline-status]"


def held_and_listed(page: Page) -> tuple[int, int]:
    """How many files the browser holds, and how many the service worker lists."""
    held = page.evaluate(
        """async () => {
             let held = 0;
             for (const name of await caches.keys()) held += (await (await caches.open(name)).keys()).length;
             return held;
           }"""
    )
    listed = page.evaluate(
        """async (root) => (await (await fetch(root)).text()).split('"integrity"').length - 1""", "/sw.js"
    )
    return held, listed


def test_ready_offline_is_true(open_tablet: Callable[..., BrowserContext], server: Server, built_site: Path) -> None:
    page = open_tablet(offline_parts=True).new_page()
    page.goto(server.url(RING_PAGE))
    expect(page.locator(STATUS).first).to_have_text("Ready offline")
    held, listed = held_and_listed(page)
    assert held == listed == sum(file.is_file() for file in built_site.rglob("*")) - 1

    server.stop()
    page.reload()
    expect(page.locator(STATUS).first).to_have_text("Ready offline")
    page.goto(server.url(BLANK_PAGE))
    example = page.locator(f"{BLANK}.number").text_content() or ""
    page.fill(f"{BLANK}[name=size]", "US 10½")
    expect(page.locator(f"{BLANK}.number")).not_to_have_text(example)
    expect(page.locator(f"{BLANK}[data-answer]")).to_have_text(answer_by_cpython(page, BLANK))


def test_a_file_that_the_browser_dropped_is_fetched_again(
    open_tablet: Callable[..., BrowserContext], server: Server
) -> None:
    page = open_tablet(offline_parts=True).new_page()
    page.goto(server.url(RING_PAGE))
    expect(page.locator(STATUS).first).to_have_text("Ready offline")
    dropped = page.evaluate(
        """async () => {
             const store = await caches.open((await caches.keys()).find((name) => name.includes("precache")));
             const file = (await store.keys()).find((request) => request.url.includes("app.zip"));
             return store.delete(file);
           }"""
    )
    assert dropped
    held, listed = held_and_listed(page)
    assert held == listed - 1
    page.reload()
    expect(page.locator(STATUS).first).to_have_text("Ready offline")
    held, listed = held_and_listed(page)
    assert held == listed


def test_a_newer_edition_is_offered_and_not_forced(
    open_tablet: Callable[..., BrowserContext], built_site: Path, tmp_path: Path
) -> None:
    edition = tmp_path / "site"
    shutil.copytree(built_site, edition)
    server = Server(edition)
    try:
        page = open_tablet(offline_parts=True).new_page()
        page.goto(server.url(RING_PAGE))
        expect(page.locator(STATUS).first).to_have_text("Ready offline")
        old_title = page.title()
        page.reload()

        ring_page = edition / RING_PAGE / "index.html"
        ring_page.write_text(
            re.sub("<title>.*?</title>", "<title>Newer edition</title>", ring_page.read_text(encoding="utf-8")),
            encoding="utf-8",
        )
        shutil.copyfile(REPO / "docs/sw.js", edition / "sw.js")
        precache.write_service_worker(edition)

        page.reload()
        expect(page.locator(STATUS).first).to_contain_text("A newer edition is ready")
        assert page.title() == old_title
        page.reload()
        assert page.title() == old_title

        page.locator(f"{RING}[name=width]").fill("4.4 mm")
        page.locator(STATUS).first.get_by_role("button", name="Load it").click()
        expect(page).to_have_title("Newer edition")
        expect(page.locator(f"{RING}[name=width]")).to_have_value("4.4 mm")
        expect(page.locator(STATUS).first).to_have_text("Ready offline")
        held, listed = held_and_listed(page)
        assert held == listed
    finally:
        server.stop()


def test_an_address_without_https_says_that_it_works_online_only(tablet: Page, server: Server) -> None:
    tablet.goto(server.url(RING_PAGE, host="shop.test"))
    expect(tablet.locator(STATUS).first).to_contain_text("works online only")
