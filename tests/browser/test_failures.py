"""Python in the page dies, falls silent or cannot start: the page recovers, or says so and keeps its example."""

from __future__ import annotations

import pytest
from playwright.sync_api import Page, Route, Worker, expect

from .conftest import RING, RING_PAGE, Server

WIDTH, MASS, STATUS = f"{RING}[name=width]", f"{RING}[data-result=metal_mass]", f"{RING}[data-status]"
STALE = f"{RING}[data-answer][data-stale]"


def short_patience(page: Page, boot: int, answer: int) -> None:
    page.add_init_script(f"globalThis.pythonLimits = {{ boot: {boot}, answer: {answer} }}")


@pytest.mark.parametrize("how", ["self.close()", "self.postMessage = () => {}"], ids=["killed", "silent"])
def test_a_worker_lost_in_mid_answer_is_replaced_and_asked_again(tablet: Page, server: Server, how: str) -> None:
    short_patience(tablet, boot=30_000, answer=6_000)
    workers: list[Worker] = []
    tablet.on("worker", lambda worker: workers.append(worker))
    tablet.goto(server.url(RING_PAGE))
    before = tablet.locator(MASS).text_content() or ""
    tablet.fill(WIDTH, "4 mm")
    expect(tablet.locator(MASS)).not_to_have_text(before)
    between = tablet.locator(MASS).text_content() or ""
    assert len([worker for worker in workers if "python-worker" in worker.url]) == 1

    next(worker for worker in workers if "python-worker" in worker.url).evaluate(how)
    tablet.fill(WIDTH, "5 mm")
    expect(tablet.locator(MASS)).not_to_have_text(between)
    expect(tablet.locator(STALE)).to_have_count(0)
    assert len([worker for worker in workers if "python-worker" in worker.url]) == 2
    assert tablet.input_value(WIDTH) == "5 mm"


@pytest.mark.parametrize("part", ["pyodide.asm.wasm", "app.zip", "python-worker.js"])
def test_a_part_that_cannot_be_loaded_is_told_and_can_be_tried_again(tablet: Page, server: Server, part: str) -> None:
    short_patience(tablet, boot=20_000, answer=10_000)
    tablet.route(f"**/{part}", lambda route: route.abort())
    tablet.goto(server.url(RING_PAGE))
    example = tablet.locator(MASS).text_content() or ""
    tablet.fill(WIDTH, "4 mm")
    status = tablet.locator(STATUS)
    expect(status).to_contain_text("could not start")
    expect(tablet.locator(f"{STALE} [data-result=metal_mass]")).to_have_text(example)
    assert tablet.input_value(WIDTH) == "4 mm"

    tablet.unroute(f"**/{part}")
    status.get_by_role("button", name="Try again").click()
    expect(tablet.locator(MASS)).not_to_have_text(example)
    expect(tablet.locator(STALE)).to_have_count(0)


def test_a_runtime_that_never_settles_is_given_up(tablet: Page, server: Server) -> None:
    short_patience(tablet, boot=1_500, answer=4_000)
    held: list[Route] = []
    tablet.route("**/stdlib.zip", lambda route: held.append(route))  # neither answered nor refused
    tablet.goto(server.url(RING_PAGE))
    tablet.fill(WIDTH, "4 mm")
    expect(tablet.locator(STATUS)).to_contain_text("could not start")
    expect(tablet.locator(MASS)).to_be_attached()
    assert len(held) == 2
    for route in held:
        route.abort()
