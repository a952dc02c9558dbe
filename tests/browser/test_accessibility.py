"""axe-core finds nothing serious or critical, light and dark, with errors shown too."""

from __future__ import annotations

from collections.abc import Callable

import pytest
from playwright.sync_api import BrowserContext, Page, expect

from build_scripts.bootstrap import NODE_MODULES

from .conftest import RING, RING_PAGE, Server

AXE = NODE_MODULES / "axe-core/axe.min.js"


def serious_findings(page: Page) -> list[str]:
    page.evaluate(AXE.read_text(encoding="utf-8"))
    violations = page.evaluate("async () => (await axe.run(document)).violations")
    return [
        f"{one['id']}: {node['target']} {node['failureSummary']}"
        for one in violations
        if one["impact"] in ("serious", "critical")
        for node in one["nodes"]
    ]


@pytest.mark.parametrize("dark", [False, True], ids=["light", "dark"])
@pytest.mark.parametrize("path", ["", RING_PAGE, "faults/", "find-fault/"])
def test_nothing_serious(open_tablet: Callable[..., BrowserContext], server: Server, path: str, dark: bool) -> None:
    page = open_tablet(dark=dark).new_page()
    page.goto(server.url(path))
    assert serious_findings(page) == []


def test_nothing_serious_while_errors_stand(tablet: Page, server: Server) -> None:
    tablet.goto(server.url(RING_PAGE))
    tablet.fill(f"{RING}[name=width]", "")
    expect(tablet.locator(f"{RING}[data-field=width] .field-error")).to_be_visible()
    assert serious_findings(tablet) == []
