"""A real Chromium on the built site. The site is the one ``python3 -m build_scripts build`` made."""

from __future__ import annotations

import json
import threading
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from playwright.sync_api import Browser, BrowserContext, Page, expect, sync_playwright

from build_scripts import checks, serve
from build_scripts.site import SITE
from calculators.run import run_json

FLAGS = [
    "--headless=new", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run",
    "--disable-background-networking", "--disable-component-update", "--disable-sync",
    # A name that is not localhost, to see what a tablet on the shop's network sees.
    "--host-resolver-rules=MAP shop.test 127.0.0.1",
]  # fmt: skip
# A shared machine can be slow; a thing that never comes still fails.
PATIENCE = 60_000
expect.set_options(timeout=PATIENCE)
UPRIGHT, LYING = {"width": 800, "height": 1280}, {"width": 1280, "height": 800}

# Two pages, each with a calculator that the tests ask.
RING_PAGE, RING = "jobs/ring-up/", "form[data-calculator=ring-resize] "
BLANK_PAGE, BLANK = "jobs/half-shank/", "form[data-calculator=ring-blank] "


class Server:
    """The site over HTTP, from a thread, until stopped."""

    def __init__(self, folder: Path) -> None:
        self._server = serve.make_server(folder, 0, "127.0.0.1")
        self.port = self._server.server_port
        threading.Thread(target=self._server.serve_forever, kwargs={"poll_interval": 0.05}, daemon=True).start()

    def url(self, path: str = "", host: str = "127.0.0.1") -> str:
        return f"http://{host}:{self.port}/{path}"

    def stop(self) -> None:
        self._server.shutdown()
        self._server.server_close()


def answer_by_cpython(page: Page, form: str) -> str:
    """The words of the answer that this Python gives to what stands in a form now."""
    fields = page.locator(f"{form}[data-field]").evaluate_all(
        """boxes => Object.fromEntries(boxes.map(box => [box.dataset.field, box.querySelector("[name]").value]))"""
    )
    slug = page.locator(form).get_attribute("data-calculator")
    answer = json.loads(run_json(json.dumps({"calculator": slug, "fields": fields})))
    assert "errors" not in answer, answer
    words = page.evaluate(
        """html => { const box = document.createElement("div"); box.innerHTML = html; return box.textContent; }""",
        answer["html"],
    )
    return str(words)


@pytest.fixture(scope="session")
def built_site() -> Path:
    assert (SITE / "sw.js").is_file(), "Build the site first: python3 -m build_scripts build"
    return SITE


@pytest.fixture
def server(built_site: Path) -> Iterator[Server]:
    running = Server(built_site)
    yield running
    running.stop()


@pytest.fixture(scope="session")
def browser() -> Iterator[Browser]:
    with sync_playwright() as playwright:
        running = playwright.chromium.launch(executable_path=checks.chromium(), args=FLAGS)
        yield running
        running.close()


@pytest.fixture
def open_tablet(browser: Browser) -> Iterator[Callable[..., BrowserContext]]:
    """Makes fresh touch tablets: nothing stored, nothing remembered."""
    opened = []

    def open_one(upright: bool = True, offline_parts: bool = False, dark: bool = False) -> BrowserContext:
        context = browser.new_context(
            viewport=UPRIGHT if upright else LYING,  # type: ignore[arg-type]
            has_touch=True,
            color_scheme="dark" if dark else "light",
            service_workers="allow" if offline_parts else "block",
        )
        context.set_default_timeout(PATIENCE)
        opened.append(context)
        return context

    yield open_one
    for context in opened:
        context.close()


@pytest.fixture
def tablet(open_tablet: Callable[..., BrowserContext]) -> Page:
    """One page on an upright tablet that keeps no offline copy."""
    return open_tablet().new_page()
