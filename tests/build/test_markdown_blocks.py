"""The blocks of the pages, through plain Python-Markdown: no MkDocs is needed to use or test them."""

from __future__ import annotations

import re
from collections import Counter
from html.parser import HTMLParser
from pathlib import Path

import markdown
import pytest

from build_scripts import drawings, form, metal_tables
from build_scripts.errors import PageError
from build_scripts.ring_size_table import ring_size_table_html
from calculators.data import MARKS, sources
from calculators.declare import Result, Working, calculator
from calculators.drawing import Drawing
from calculators.fields import Choice, Length, MetalField
from calculators.metals import metals
from calculators.run import work_out
from calculators.show import answer_html
from calculators.units import Quantity


def render(text: str, docs: Path | None = None) -> str:
    options = {"build_scripts.markdown_blocks": {"docs": str(docs)}} if docs else {}
    names = ["tables", "toc", "build_scripts.markdown_blocks"]
    return str(markdown.markdown(text, extensions=names, extension_configs=options))


class Elements(HTMLParser):
    """Every start tag of a page with its attributes."""

    def __init__(self, html: str) -> None:
        super().__init__()
        self.found: list[tuple[str, dict[str, str | None]]] = []
        self.feed(html)

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.found.append((tag, dict(attrs)))

    def named(self, tag: str) -> list[dict[str, str | None]]:
        return [attributes for name, attributes in self.found if name == tag]

    def ids(self) -> list[str]:
        return [str(attributes["id"]) for _, attributes in self.found if "id" in attributes]


RESIZE = "/// calculator | ring-resize\nfrom_size = US 5\nthickness = 2 mm\n///"


def test_a_form_asks_every_field_and_ties_label_box_hint_and_error_together() -> None:
    page = Elements(render(RESIZE))
    boxes = [one for tag in ("input", "select") for one in page.named(tag) if one.get("name")]
    assert {one["name"] for one in boxes} == {one.name for one in form.find("ring-resize").fields}
    labelled = {one["for"] for one in page.named("label")}
    ids = set(page.ids())
    for box in boxes:
        assert box["id"] in labelled
        described = str(box["aria-describedby"]).split()
        assert set(described) <= ids
        assert f"{box['id']}-error" in described
    assert "ring-resize" in ids


def test_the_presets_of_the_page_are_in_the_boxes_and_in_the_worked_example(docs: Path) -> None:
    html = render(RESIZE, docs)
    by_name = {one["name"]: one for one in Elements(html).named("input") if one.get("name")}
    # The unit stands behind the box, so the box holds the bare number.
    assert (by_name["thickness"]["value"], by_name["from_size"]["value"]) == ("2", "US 5")
    assert all(one["data-example"] == one["value"] for one in by_name.values())
    _, working = work_out(form.find("ring-resize"), {"from_size": "US 5", "thickness": "2 mm"})
    # A drawing's ids may be counted up; everything else is the very answer the page's Python gives.
    assert answer_html(working) in html
    _, example = work_out(form.find("ring-resize"), {})
    assert answer_html(example) not in html


def test_no_id_stands_twice_however_often_a_form_or_drawing_is_shown() -> None:
    slug = next(iter(drawings.all_drawings()))
    page = Elements(render(f"{RESIZE}\n\n{RESIZE}\n\n" + f"/// drawing | {slug}\n///\n\n" * 2))
    twice = [name for name, times in Counter(page.ids()).items() if times > 1]
    assert twice == []
    forms = page.named("form")
    assert [one["id"] for one in forms] == ["ring-resize", "ring-resize-2"]
    ids = set(page.ids())
    for picture in page.named("svg"):
        assert set(str(picture["aria-labelledby"]).split()) <= ids


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("/// calculator | ring-resise\n///", "There is no calculator ring-resise. The nearest is ring-resize."),
        ("/// calculator | ring-resize\nfrom_sise = US 6\n///", "has no field from_sise. The nearest is from_size."),
        ("/// calculator | ring-resize\nwidth = 900\n///", "refuses width = '900': Band width must be between"),
        ("/// calculator | ring-resize\nprofile = oblong\n///", "refuses profile = 'oblong'"),
        ("/// calculator | ring-resize\nwidth\n///", "written as field = text"),
        ("/// calculator | ring-resize\nwidth = 3\nwidth = 4\n///", "width is given twice"),
        ("/// calculator\n///", "lacks its name"),
        ("/// calcualtor | ring-resize\n///", "is not known"),
        ("Text\n\n/// danger\n- never closed", "/// danger is never closed"),
        ("/// strip\nno-such-drawing | Before\n///", "There is no drawing no-such-drawing."),
        ("/// strip\nbutt-before\n///", "one drawing | caption a line"),
        ("/// strip\n///", "one drawing | caption a line"),
        ("/// drawing | no-such-drawing\n///", "There is no drawing no-such-drawing."),
        ("A claim [@no-such-source].", "There is no source no-such-source in sources.toml."),
        ("/// cited\n///", "cite a source"),
        ("/// metal-table | mithril\n///", "There is no metal family mithril."),
    ],
)
def test_a_slip_in_a_page_stops_the_build_with_a_sentence(text: str, told: str) -> None:
    with pytest.raises(PageError) as caught:
        render(text)
    assert told in str(caught.value)
    assert str(caught.value).endswith(".")


def test_presets_that_are_refused_together_stop_the_build() -> None:
    @calculator(
        title="Wall",
        purpose="What is left.",
        fields=[
            Length(name="outside", label="Outside", example="3", low=0, high=9),
            Length(name="inside", label="Inside", example="2", low=0, high=9),
        ],
        results=[Result("wall", "Wall", "mm")],
    )
    def wall(working: Working, outside: Quantity, inside: Quantity) -> None:
        if inside >= outside:
            working.complain("inside", "The inside must be smaller than the outside")
        working.result("wall", working.step("Wall", "(a - b) / 2", "mm", a=outside, b=inside))

    assert "0.5" in form.calculator_form(wall, {}, "wall").html
    with pytest.raises(PageError, match="inside: The inside must be smaller than the outside"):
        form.calculator_form(wall, {"inside": "4"}, "wall")


@calculator(
    title="Sheet",
    purpose="One length, asked only for one choice.",
    fields=[
        Choice(name="kind", label="Kind", example="plain", options=(("plain", "Plain"), ("domed", "Domed <top>"))),
        Length(name="rise", label="Rise", example="1 mm", low=0, high=5, when=("kind", ("domed",)), group="Seldom"),
        MetalField(required=False, example=""),
    ],
    results=[Result("rise", "Rise", "mm")],
)
def sheet(working: Working, kind: str, rise: Quantity | None, metal: object) -> None:
    working.result("rise", rise if rise is not None else working.step("Flat", "0 * one", "mm", one=MILLIMETER))


MILLIMETER = Length(name="one", label="One", low=0, high=2).read("1 mm")


def fields_of(presets: dict[str, str]) -> dict[str, dict[str, str | None]]:
    page = Elements(form.calculator_form(sheet, presets, "sheet").html)
    return {str(one["data-field"]): one for one in page.named("div") if "data-field" in one}


def test_a_field_that_does_not_apply_is_hidden() -> None:
    assert "hidden" in fields_of({})["rise"]
    assert "hidden" not in fields_of({"kind": "domed"})["rise"]


def test_choices_are_escaped_and_spelt_as_the_list_spells_them() -> None:
    html = form.calculator_form(sheet, {"kind": "DOMED"}, "sheet").html
    assert '<option value="domed" selected>Domed &lt;top&gt;</option>' in html
    assert "<top>" not in html


def test_a_typed_density_stands_in_the_box_of_its_own() -> None:
    def boxes(metal: str) -> tuple[dict[str, str | None], dict[str, str | None], str]:
        html = form.calculator_form(sheet, {"metal": metal}, "sheet").html
        page = Elements(html)
        select = next(one for one in page.named("select") if one["name"] == "metal")
        other = next(one for one in page.named("input") if one["id"] == select["data-other"])
        chosen = re.search(r'<option value="([^"]*)" selected>', html[html.index('name="metal"') :])
        return select, other, chosen.group(1) if chosen else ""

    select, other, chosen = boxes("15.4 g/cm3")
    assert (chosen, other["value"], select["data-example"]) == ("other", "15.4", "15.4")
    select, other, chosen = boxes("18k yellow")
    assert (chosen, other["value"], select["data-example"]) == ("18k-yellow", "", "18k-yellow")
    assert boxes("")[2] == ""


def test_seldom_changed_fields_are_folded_away() -> None:
    html = form.calculator_form(sheet, {}, "sheet").html
    group = html[html.index('<details class="field-group">') : html.index("</details>")]
    assert "<summary>Seldom</summary>" in group
    assert 'data-field="rise"' in group
    assert 'data-field="kind"' not in group


def test_boxes_hold_markdown() -> None:
    html = render("/// danger\n- **Stop** here.\n///\n\n/// question | Why *two*?\nSo it stays `square`.\n///\n")
    assert '<section aria-label="Stop rules and dangers" class="danger">' in html
    assert "<li><strong>Stop</strong> here.</li>" in html
    assert "<summary>Why <em>two</em>?</summary>" in html
    assert "<p>So it stays <code>square</code>.</p>" in html
    assert "<td>1</td>" in render("/// glance\n| a |\n|---|\n| 1 |\n///")


def test_a_block_stands_inside_a_step() -> None:
    html = render("1. Saw.\n\n    /// drawing | butt-saw\n    The blade *stands*.\n    ///\n\n2. File.\n")
    assert html.count("<ol>") == 1
    assert html.count("<li>") == 2
    assert html.index("<svg") < html.index("<em>stands</em>") < html.index("File.")


def test_a_strip_shows_its_drawings_in_order_with_captions() -> None:
    names = ["butt-before", "butt-fused", "butt-finished"]
    html = render("/// strip\n" + "\n".join(f"{name} | Caption *{name}*" for name in names) + "\n///")
    places = [html.index(f"<em>{name}</em>") for name in names]
    assert html.count("<svg") == 3
    assert places == sorted(places)


def test_citations_are_numbered_in_the_order_of_the_page_and_listed() -> None:
    html = render("B [@inch], a [@rowlett], b again [@inch]. `[@code]`\n\n/// cited\n///\n")
    numbers = re.findall(r'href="#cited-([\w-]+)">\[(\d+)\]</a>', html)
    assert numbers == [("inch", "1"), ("rowlett", "2"), ("inch", "1")]
    assert re.findall(r'<li id="cited-([\w-]+)">', html) == ["inch", "rowlett"]
    assert '<a href="/reference/sources.md#source-rowlett">' in html
    assert f"({sources()['rowlett'].extent})" in html
    assert "<code>[@code]</code>" in html


def test_without_a_list_a_citation_leads_to_the_page_of_sources() -> None:
    assert 'href="/reference/sources.md#source-inch">[1]</a>' in render("A [@inch].")


def test_the_list_names_what_the_calculators_of_the_page_cite() -> None:
    _, working = work_out(form.find("ring-resize"), {})
    html = render("A [@inch].\n\n/// calculator | ring-resize\n///\n\n/// cited\n///\n")
    listed = re.findall(r'<li id="cited-([\w-]+)">', html)
    assert listed == list(dict.fromkeys(["inch", *working.cited]))
    assert len(listed) > 1


def test_the_list_of_sources_has_an_anchor_for_each() -> None:
    ids = Elements(render("/// sources-list\n///")).ids()
    assert Counter(ids) == Counter(f"source-{key}" for key in sources())


def test_the_table_of_metals_shows_every_figure_with_mark_and_source() -> None:
    family = metals()[0].family
    html = render(f"/// metal-table | {family}\n///")
    shown = [metal for metal in metals() if metal.family == family]
    known = [(one.mark, one.source) for one in metal_tables.light_of(family).values()]
    for metal in shown:
        known.append((metal.composition_mark, metal.composition_source))
        known += [(one.mark, one.source) for one in metal_tables.all_figures(metal).values()]
    rows = re.findall(r'<th scope="row">(.*?)</th>\s*<td>(.*?)</td>\s*<td>(.*?)</td>', html, re.DOTALL)
    assert len(rows) == len(known)
    for (_, value, origin), (mark, source) in zip(rows, known, strict=True):
        assert value
        assert origin.startswith(MARKS[mark])
        assert (f"#source-{source}" in origin) == bool(source)


@pytest.fixture
def docs(tmp_path: Path) -> Path:
    (tmp_path / "jobs").mkdir()
    pages = {
        "index.md": "# Start\n",
        "jobs/index.md": "---\ntitle: Jobs\n---\n\n/// pages | jobs\n///\n",
        "jobs/up.md": '---\ntitle: "Up: with a piece"\ndescription: Cut & fuse.\n---\n\n' + RESIZE,
        "jobs/down.md": "# Down\n\n    /// calculator | ring-resize\n    ///\n",
    }
    for name, text in pages.items():
        (tmp_path / name).write_text(text, encoding="utf-8")
    return tmp_path


def test_a_list_of_pages_names_the_folder_s_pages_but_not_itself(docs: Path) -> None:
    html = render("/// pages | jobs\n///", docs)
    assert re.findall(r'<a href="([^"]+)">([^<]+)</a>', html) == [
        ("/jobs/down.md", "Down"),
        ("/jobs/up.md", "Up: with a piece"),
    ]
    assert "<p>Cut &amp; fuse.</p>" in html
    with pytest.raises(PageError, match=r"There is no page in the folder job\. The nearest is jobs"):
        render("/// pages | job\n///", docs)


def test_the_list_of_calculators_links_to_a_page_or_carries_the_form_itself(docs: Path) -> None:
    html = render("/// calculators\n///", docs)
    page = Elements(html)
    links = {str(one["href"]) for one in page.named("a") if "data-page" not in one}
    forms = {str(one["id"]) for one in page.named("form")}
    assert "/jobs/down.md#ring-resize" in links
    assert "ring-resize" not in forms
    assert {link.removeprefix("#") for link in links if link.startswith("#")} == forms
    assert len(links) == len({*forms, "ring-resize"})


def test_two_drawings_cannot_share_a_name() -> None:
    name = next(iter(drawings.all_drawings()))
    with pytest.raises(ValueError, match=f"Two drawings are called {name}"):

        @drawings.drawing(name)
        def other() -> Drawing:
            return Drawing(1, 1, "Other", "Another drawing of the same name.")


def test_the_ring_size_table_stands_on_the_page_as_it_is_made() -> None:
    assert ring_size_table_html() in render("/// ring-size-table\n///")


@pytest.mark.parametrize(
    ("before", "level"), [("", 2), ("# A\n", 2), ("# A\n\n## B\n", 3), ("# A\n\n## B\n\n### C\n", 4)]
)
def test_a_form_s_title_stands_one_level_below_the_heading_before_it(before: str, level: int) -> None:
    html = render(f"{before}\n/// calculator | ring-resize\n///\n")
    assert f'<h{level} class="calculator-title" id="ring-resize-title">' in html


def test_an_answer_leads_to_its_page_by_a_link_that_the_build_checks(docs: Path) -> None:
    page = Elements(render("/// calculator | choose-joint\npart = shank\nload = flex\n///", docs))
    links = [(one["data-page"], one["href"]) for one in page.named("a") if "data-page" in one]
    assert links[0] == ("joints/butt", "/joints/butt.md")
    assert len(links) == 2


def test_pictures_of_a_folder_lead_to_their_pages(tmp_path: Path) -> None:
    (tmp_path / "faults").mkdir()
    text = '---\ntitle: "Holes & dots"\npicture: fault-pinholes\n---\n# Holes\n'
    (tmp_path / "faults" / "holes.md").write_text(text, encoding="utf-8")
    html = render("/// pictures | faults\n///", tmp_path)
    assert '<a href="/faults/holes.md"><span aria-hidden="true"><svg' in html
    assert "<b>Holes &amp; dots</b>" in html


def test_a_door_leads_to_its_page_by_picture_and_words() -> None:
    line = "jobs/index.md | butt-fused | By job | Ring sizes."
    html = render(f"/// doors\n{line}\n///")
    assert '<a href="/jobs/index.md">By job</a>' in html
    assert "<p>Ring sizes.</p>" in html
    assert 'aria-hidden="true"><svg' in html
    with pytest.raises(PageError, match="written as page"):
        render("/// doors\njobs/index.md | By job\n///")
    with pytest.raises(PageError, match="no drawing butt-fusd"):
        render(f"/// doors\n{line.replace('fused', 'fusd')}\n///")
