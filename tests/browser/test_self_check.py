"""Questions marked as known stay marked on this device, are counted, and can be forgotten."""

from __future__ import annotations

from playwright.sync_api import Locator, Page, expect

from .conftest import Server

SITTING, INDEX, SCORE = "learn/2-seam-on-strip/", "learn/", ".self-score"


def question(page: Page, number: int, opened: bool = True) -> None:
    box = page.locator("details.self-check").nth(number)
    if (box.get_attribute("open") is not None) != opened:
        box.locator("summary").click()


def height(place: Locator) -> float:
    box = place.bounding_box()
    assert box
    return box["height"]


def press(page: Page, number: int, words: str) -> None:
    question(page, number)
    page.locator("details.self-check").nth(number).get_by_role("button", name=words).click()


def test_marks_are_counted_and_still_there_after_a_reload(tablet: Page, server: Server) -> None:
    tablet.goto(server.url(SITTING))
    asked = tablet.locator("details.self-check").count()
    score = tablet.locator(SCORE)
    expect(score).to_have_text(f"0 of {asked} known on this device")
    expect(tablet.get_by_role("button", name="I knew it").first).to_be_hidden()

    press(tablet, 0, "I knew it")
    press(tablet, 1, "Not yet")
    press(tablet, 2, "I knew it")
    expect(score).to_have_text(f"2 of {asked} known on this device")

    tablet.reload()
    expect(score).to_have_text(f"2 of {asked} known on this device")
    # Words, not color alone, and read out with the question while it is closed.
    summaries = tablet.locator("details.self-check > summary")
    for number, state in enumerate(("known", "not yet", "known", "")):
        expect(summaries.nth(number).locator("small")).to_have_text(state)
    question(tablet, 1)
    pressed = tablet.locator("details.self-check").nth(1).locator("[aria-pressed=true]")
    expect(pressed).to_have_text("Not yet")

    # The other button changes the mark, the same one again takes it back.
    press(tablet, 1, "I knew it")
    expect(score).to_have_text(f"3 of {asked} known on this device")
    press(tablet, 1, "I knew it")
    expect(score).to_have_text(f"2 of {asked} known on this device")
    expect(summaries.nth(1).locator("small")).to_have_text("")

    tablet.get_by_role("button", name="Clear these marks").click()
    expect(score).to_have_text(f"0 of {asked} known on this device")
    tablet.reload()
    expect(score).to_have_text(f"0 of {asked} known on this device")


def test_the_list_of_sittings_shows_each_score_and_clears_them_all(tablet: Page, server: Server) -> None:
    tablet.goto(server.url(INDEX))
    clear = tablet.get_by_role("button", name="Clear the marks of all sittings")
    expect(clear).to_be_hidden()
    tablet.goto(server.url(SITTING))
    asked = tablet.locator("details.self-check").count()
    press(tablet, 0, "I knew it")

    tablet.goto(server.url(INDEX))
    row = tablet.locator(".sittings li", has=tablet.locator("a[href*=seam-on-strip]"))
    expect(row.locator(SCORE)).to_have_text(f"1 of {asked} known on this device")
    expect(tablet.locator(".sittings li").first.locator(SCORE)).to_have_text("")
    clear.click()
    expect(row.locator(SCORE)).to_have_text("")
    expect(clear).to_be_hidden()
    tablet.goto(server.url(SITTING))
    expect(tablet.locator(SCORE)).to_have_text(f"0 of {asked} known on this device")


def test_it_works_by_keyboard_and_with_gloves(tablet: Page, server: Server) -> None:
    tablet.goto(server.url(SITTING))
    tablet.locator("details.self-check > summary").first.focus()
    tablet.keyboard.press("Enter")
    tablet.keyboard.press("Tab")
    tablet.keyboard.press("Space")
    knew = tablet.get_by_role("button", name="I knew it").first
    expect(knew).to_have_attribute("aria-pressed", "true")
    assert height(knew) >= 48
    tablet.locator("[data-switch=glove]").first.click()
    expect(tablet.locator("html.glove")).to_have_count(1)
    assert height(knew) >= 76


def test_without_storage_the_marks_hold_until_the_page_is_left(tablet: Page, server: Server) -> None:
    tablet.add_init_script(
        "Object.defineProperty(window, 'localStorage', { get() { throw new DOMException('refused'); } });"
    )
    tablet.goto(server.url(SITTING))
    asked = tablet.locator("details.self-check").count()
    press(tablet, 0, "I knew it")
    expect(tablet.locator(SCORE)).to_have_text(f"1 of {asked} known on this device")
    tablet.reload()
    expect(tablet.locator(SCORE)).to_have_text(f"0 of {asked} known on this device")
