"""An answer that names a page leads there from whatever page it stands on, and no choice is a dead end."""

from __future__ import annotations

from playwright.sync_api import Page, expect

from .conftest import Server


def test_the_chosen_joint_leads_to_its_guide(tablet: Page, server: Server) -> None:
    tablet.goto(server.url("choose-joint/"))
    link = tablet.locator(".number a")
    expect(link).to_have_attribute("href", "../joints/plug/")  # the build's own, before any script answers
    tablet.select_option("[name=part]", "shank")
    tablet.select_option("[name=load]", "flex")
    expect(link).to_have_text("Butt joint", timeout=60_000)
    link.click()
    expect(tablet.locator("h1")).to_have_text("Butt joint")


def test_nothing_chosen_is_told_and_a_picture_leads_on(tablet: Page, server: Server) -> None:
    tablet.goto(server.url("find-fault/"))
    for name in ("sign", "place", "when", "metal", "tool"):
        tablet.select_option(f"[name={name}]", "")
    expect(tablet.locator(".cautions")).to_contain_text("Nothing is chosen", timeout=60_000)
    tablet.goto(server.url("faults/"))
    tablet.locator(".pictures a", has_text="Hollow core").click()
    expect(tablet.locator("h1")).to_have_text("Hollow core")
