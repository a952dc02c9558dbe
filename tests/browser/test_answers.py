"""A person types, the page answers; errors stand at their fields; nothing typed is lost."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from urllib.parse import urlsplit

import pytest
from playwright.sync_api import BrowserContext, Page, expect

from .conftest import RING, RING_PAGE, Server, answer_by_cpython

LENGTH, MASS, PANEL = (
    f"{RING}{part}" for part in ("[data-result=length_change]", "[data-result=metal_mass]", "[data-answer]")
)


def field(name: str) -> str:
    return f"{RING}[name={name}]"


def error(name: str) -> str:
    return f"{RING}[data-field={name}] .field-error"


@pytest.mark.parametrize("upright", [True, False], ids=["upright", "lying"])
def test_answers_as_cpython_does_and_asks_nobody_else(
    open_tablet: Callable[..., BrowserContext], server: Server, upright: bool
) -> None:
    page = open_tablet(upright=upright).new_page()
    requests: list[str] = []
    complaints: list[str] = []
    page.context.on("request", lambda request: requests.append(request.url))
    page.on("console", lambda message: complaints.append(message.text) if message.type == "error" else None)
    page.on("pageerror", lambda error: complaints.append(str(error)))

    page.goto(server.url(RING_PAGE))
    example = page.locator(MASS).text_content()
    page.fill(field("width"), "4.2 mm")
    page.fill(field("thickness"), "1.8")
    expect(page.locator(PANEL)).to_have_text(answer_by_cpython(page, RING))
    assert page.locator(MASS).text_content() != example
    assert any(url.endswith("/vendor/python/pyodide.asm.wasm") for url in requests)
    elsewhere = {urlsplit(url).netloc for url in requests if not url.startswith(("data:", "blob:"))}
    assert elsewhere == {f"127.0.0.1:{server.port}"}
    assert complaints == []


def test_errors_stand_at_their_fields_and_the_old_answer_is_marked(tablet: Page, server: Server) -> None:
    tablet.goto(server.url(RING_PAGE))
    shown = tablet.locator(LENGTH).text_content() or ""
    tablet.fill(field("thickness"), "99")
    tablet.fill(field("width"), "")
    told = tablet.locator(error("thickness"))
    expect(told).to_contain_text("between")
    expect(tablet.locator(error("width"))).to_be_visible()
    for name in ("thickness", "width"):
        expect(tablet.locator(field(name))).to_have_attribute("aria-invalid", "true")
    described = tablet.get_attribute(field("thickness"), "aria-describedby") or ""
    assert told.get_attribute("id") in described.split()
    expect(tablet.locator(f"{PANEL}[data-stale]")).to_contain_text(shown)
    expect(tablet.locator(f"{RING}[data-status]")).to_contain_text("out of date")
    assert tablet.input_value(field("thickness")) == "99"
    assert tablet.evaluate("document.activeElement.name") == "width"

    tablet.fill(field("thickness"), "2")
    tablet.fill(field("width"), "3")
    expect(told).to_be_hidden()
    expect(tablet.locator(f"{PANEL}[data-stale]")).to_have_count(0)
    expect(tablet.locator(f"{RING}[aria-invalid]")).to_have_count(0)


def test_link_reload_and_reset(tablet: Page, server: Server, open_tablet: Callable[..., BrowserContext]) -> None:
    tablet.goto(server.url(RING_PAGE))
    example = tablet.locator(LENGTH).text_content() or ""
    tablet.fill(field("thickness"), "2.5 mm")
    expect(tablet.locator(LENGTH)).not_to_have_text("")
    tablet.wait_for_url("**/*#calculator=ring-resize&thickness=2.5+mm")
    mass = tablet.locator(MASS).text_content() or ""

    other = open_tablet().new_page()
    other.goto(tablet.url)
    expect(other.locator(MASS)).to_have_text(mass)
    assert other.input_value(field("thickness")) == "2.5 mm"

    # A text that gives no answer is in no link, but a reload keeps it all the same.
    tablet.fill(field("thickness"), "banana")
    expect(tablet.locator(error("thickness"))).to_be_visible()
    tablet.goto(server.url(RING_PAGE))
    assert tablet.input_value(field("thickness")) == "banana"
    expect(tablet.locator(error("thickness"))).to_be_visible()

    tablet.locator(f"{RING}[data-reset]").click()
    expect(tablet.locator(error("thickness"))).to_be_hidden()
    expect(tablet.locator(LENGTH)).to_have_text(example)
    expect(tablet.locator(f"{PANEL}[data-stale]")).to_have_count(0)
    assert "#" not in tablet.url


def test_a_closed_working_stays_closed(tablet: Page, server: Server) -> None:
    tablet.goto(server.url(RING_PAGE))
    working = tablet.locator(f"{PANEL} details.working")
    mass = tablet.locator(MASS).text_content() or ""
    assert working.evaluate("e => e.open")
    working.locator("summary").click()
    tablet.fill(field("width"), "5 mm")
    expect(tablet.locator(MASS)).not_to_have_text(mass)
    assert not working.evaluate("e => e.open")


def test_switches_are_remembered(tablet: Page, server: Server) -> None:
    tablet.goto(server.url(RING_PAGE))
    glove = tablet.locator("[data-switch=glove]").first
    expect(glove).to_have_attribute("aria-pressed", "false")
    glove.click()
    expect(glove).to_have_attribute("aria-pressed", "true")
    tablet.goto(server.url())
    expect(tablet.locator("html.glove")).to_have_count(1)
    expect(tablet.locator("[data-switch=glove]").first).to_have_attribute("aria-pressed", "true")


def test_every_page_carries_its_policy(built_site: Path) -> None:
    pages = list(built_site.rglob("*.html"))
    assert len(pages) > 2
    for page in pages:
        head = page.read_text(encoding="utf-8").partition("</head>")[0]
        assert head.count('http-equiv="Content-Security-Policy"') == 1, page
        assert "default-src 'self'; script-src 'self' 'wasm-unsafe-eval' 'sha256-" in head, page
        assert "'unsafe-eval'" not in head, page


def test_a_script_that_is_not_ours_does_not_run(tablet: Page, server: Server) -> None:
    refused: list[str] = []
    tablet.on("console", lambda message: refused.append(message.text) if message.type == "error" else None)
    tablet.goto(server.url(RING_PAGE))
    tablet.evaluate(
        """() => { const script = document.createElement("script"); script.textContent = "window.strange = 1";
                   document.body.append(script); }"""
    )
    assert tablet.evaluate("window.strange") is None
    assert any("Content Security Policy" in text for text in refused)


def test_the_plot_redraws_while_a_finger_moves_the_rest_time(tablet: Page, server: Server) -> None:
    tablet.goto(server.url("reference/stones-heat/"))
    form = tablet.locator("form#stone-heat")
    form.locator("[name=energy]").fill("2")
    expect(form.locator("[data-status]")).to_contain_text("Up to date")
    tablet.evaluate(
        """() => {
             window.plots = new Set();
             const form = document.querySelector("form#stone-heat");
             const note = () => window.plots.add(form.querySelector(".to-scale").innerHTML);
             new MutationObserver(note).observe(form.querySelector("[data-answer]"), { childList: true });
           }"""
    )
    slide = form.locator("[data-slide]")
    slide.scroll_into_view_if_needed()
    box = slide.bounding_box()
    assert box
    assert box["height"] >= 48
    middle = box["y"] + box["height"] / 2
    tablet.mouse.move(box["x"] + 20, middle)
    tablet.mouse.down()
    for step in range(200):  # a slow finger; still down when the plots are counted
        tablet.mouse.move(box["x"] + 20 + (step % 100) * 2, middle)
        if tablet.evaluate("window.plots.size") >= 4:
            break
    assert tablet.evaluate("window.plots.size") >= 4
    tablet.mouse.up()
    rest = form.locator("[name=rest]").input_value()
    expect(form.locator("[data-answer]")).to_have_text(answer_by_cpython(tablet, "form#stone-heat "))

    # The box leads the slide as well, and keys move it like a finger.
    form.locator("[name=rest]").fill("90 s")
    expect(slide).to_have_value("90")
    slide.press("ArrowRight")
    expect(form.locator("[name=rest]")).to_have_value("91")
    assert rest != "91"
