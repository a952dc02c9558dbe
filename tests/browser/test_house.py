"""A person in a shop with a house scale types a number alone; the link carries what the shop had settled."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from playwright.sync_api import Page, expect

from .conftest import Server
from .test_accessibility import serious_findings

OWN = "form#ring-resize-2 "  # the calculator in the note


@pytest.fixture
def shop(house_project: Path) -> Iterator[Server]:
    running = Server(house_project / "site")
    yield running
    running.stop()


def test_a_number_alone_is_answered_and_house_values_go_into_the_link(tablet: Page, shop: Server) -> None:
    tablet.goto(shop.url("jobs/ring-up/"))
    tablet.fill(f"{OWN}[name=to_size]", "8")
    length = tablet.locator(f"{OWN}[data-result=length_change]")
    expect(length).to_contain_text("5.1")  # two US sizes of 2.553 mm
    expect(tablet.locator(f"{OWN}[data-field=to_size] .field-error")).to_be_hidden()
    assert "metal=14k-yellow" in tablet.url
    assert "to_size=8" in tablet.url


@pytest.mark.parametrize("path", ["", "joints/butt/", "house/"])
def test_nothing_serious(tablet: Page, shop: Server, path: str) -> None:
    tablet.goto(shop.url(path))
    assert serious_findings(tablet) == []
