"""The shop's own values: test spots typed on a tablet narrow the settings table of the joint guide, offline too."""

from __future__ import annotations

import json
import re
from collections.abc import Callable

from playwright.sync_api import BrowserContext, Locator, Page, expect

from calculators.run import answer

from .conftest import Server

SPOTS = {
    "shot_1": "3 J, 3 ms, 0.5 mm, mark",
    "shot_2": "4 J, 3 ms, 0.5 mm, 0.40 mm",
    "shot_3": "5 J, 3 ms, 0.5 mm, 0.47 mm",
    "shot_4": "",
}
FORM = "form[data-calculator=test-spots] "
OWN = "table.settings tr.own"


def type_spots(page: Page) -> None:
    for name, text in SPOTS.items():
        page.fill(f"{FORM}[name={name}]", text)
    page.locator(f"{FORM}[data-keep]").tap()


def ends(row: Locator, name: str) -> tuple[float, float]:
    text = row.locator(f"[data-result={name}]").inner_text().replace("\u00a0", " ")
    found = re.fullmatch(r"([\d.]+) to ([\d.]+)\sJ", text)
    assert found, text
    return float(found[1]), float(found[2])


def test_three_test_spots_narrow_the_table_of_the_butt_guide_offline(
    open_tablet: Callable[..., BrowserContext], server: Server
) -> None:
    context = open_tablet(offline_parts=True)
    page = context.new_page()
    page.goto(server.url("joints/butt/"))
    expect(page.locator("[data-offline-status]").first).to_have_text("Ready offline")
    server.stop()
    page.reload()
    expect(page.locator(OWN)).to_have_count(0)
    expect(page.locator(f"{FORM}[data-keep]")).to_be_hidden()  # the example's spots are nobody's to keep
    type_spots(page)
    expect(page.locator(OWN)).to_have_count(2)

    told = answer("test-spots", {**dict.fromkeys(("shot_5", "shot_6", "shot_7", "shot_8"), ""), **SPOTS})
    absorptivity = told["results"]["to_settings"]["absorptivity"]
    for row in page.locator(OWN).all():
        before = row.locator("xpath=preceding-sibling::tr[1]")
        fields = json.loads(before.get_attribute("data-fields") or "")
        expected = answer("start-settings", {**fields, "absorptivity": absorptivity})["results"]
        for name in ("tack_energy", "weld_energy", "leveling_energy"):
            shown = row.locator(f"[data-result={name}]").inner_text().replace("\u00a0", " ")
            assert shown == expected[name]["range"]
        was, now = ends(before, "weld_energy"), ends(row, "weld_energy")
        assert now[1] / now[0] < 0.7 * was[1] / was[0]

    # Another joint's guide knows them too, still without a server, and one press forgets them everywhere.
    page.goto(server.url("joints/plug/"))
    expect(page.locator(OWN)).to_have_count(2)
    page.locator("[data-own-values] button").first.tap()
    expect(page.locator(OWN)).to_have_count(0)
    page.goto(server.url("joints/butt/"))
    expect(page.locator("[data-own-values]").first).to_be_hidden()
    expect(page.locator(OWN)).to_have_count(0)


def test_the_machine_s_limits_are_kept_for_every_metal(tablet: Page, server: Server) -> None:
    tablet.goto(server.url("joints/edge/"))
    form = tablet.locator("form[data-calculator=start-settings]")
    form.locator("summary", has_text="What your machine can do").tap()
    form.locator("[name=max_peak_power]").fill("4 kW")
    form.locator("[data-keep]").tap()
    laser = tablet.locator("table.settings").first
    expect(laser.locator("tr.own")).to_have_count(laser.locator("tr[data-fields]").count())
    expect(tablet.locator("table.settings").last.locator("tr.own")).to_have_count(0)  # the arc is another machine
