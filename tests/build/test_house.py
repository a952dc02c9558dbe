"""The shop's own folder: its pages, notes and values; what a slip in it says; nothing changes where it is not there."""

from __future__ import annotations

import json
import re
import shutil
import subprocess
import sys
from pathlib import Path

import markdown
import pytest

from build_scripts import form, house_check, house_values
from build_scripts.bootstrap import node
from build_scripts.errors import PageError
from build_scripts.house_start import law_page
from build_scripts.settings_table import settings_table_html
from build_scripts.site import SITE
from calculators.house import House
from calculators.run import run_json, work_out
from calculators.show import answer_html
from tests.conftest import EXAMPLE, ROOT

FORM = re.compile(r'<form[^>]*class="calculator".*?</form>', re.DOTALL)


def page(project: Path, path: str) -> str:
    return (project / "site" / path / "index.html").read_text(encoding="utf-8")


def the_form(html: str, slug: str) -> str:
    return next(str(one) for one in FORM.findall(html) if f'data-calculator="{slug}"' in one)


def test_the_shop_s_pages_are_a_tab_and_its_notes_are_none(house_project: Path) -> None:
    start = page(house_project, "")
    tabs = [" ".join(words.split()) for words in re.findall(r'class="md-tabs__link">(.*?)</a>', start, re.DOTALL)]
    assert "House notes" in tabs
    built = {
        file.relative_to(house_project / "site/house").as_posix() for file in house_project.glob("site/house/**/*")
    }
    assert built == {"index.html", "settings-book", "settings-book/index.html"}
    assert "Marks and law: United States" in start
    own = page(house_project, "house/settings-book")
    assert "House page: written by this shop" in own
    assert "45 J" in the_form(own, "start-settings")


def test_a_note_stands_below_the_danger_box_and_leaves_the_page_s_anchors_alone(house_project: Path) -> None:
    butt = page(house_project, "joints/butt")
    note = butt.index('class="house-note"')
    assert butt.index('class="danger"') < note < butt.index("<h2")
    assert 'href="../../house/settings-book/"' in butt
    ring_up = page(house_project, "jobs/ring-up")
    forms = re.findall(r'<form[^>]* id="([\w-]+)"', ring_up)
    # The note comes first, and yet the page's own form keeps the anchor that other pages lead to.
    assert forms[0] == "ring-resize-2"
    assert "ring-resize" in forms
    assert '<h2 id="house-note-1">Our stick</h2>' in ring_up
    sizes = page(house_project, "reference/ring-sizes")
    before, after = sizes.split('class="house-note"')
    assert before.count("<p>A ring size is a name") == 1
    assert 'data-calculator="ring-size"' in after


def test_house_values_are_in_the_form_its_worked_example_and_its_words(house_project: Path) -> None:
    proving = the_form(page(house_project, "reference/proving-settings"), "start-settings")
    assert "<b>House values:</b> metal 14k yellow gold; most energy in a pulse 45" in proving
    calculator = form.find("start-settings")
    given = {"metal": "14k-yellow", "max_energy": "45", "max_peak_power": "5"}
    _, working = work_out(calculator, given)
    words = re.compile(r"<[^>]*>")
    assert words.sub("", answer_html(working)) in words.sub("", proving)
    # What the page itself presets stays the page's.
    ring_up = FORM.findall(page(house_project, "jobs/ring-up"))
    own = next(one for one in ring_up if 'id="ring-resize"' in one)
    assert "House values" not in own
    assert '<option value="18k-yellow" selected>' in own


def test_the_page_s_python_reads_a_number_alone_in_the_house_scale(house_project: Path) -> None:
    ring_up = page(house_project, "jobs/ring-up")
    carried = re.search(r'<form[^>]*data-house="([^"]*)"', ring_up)
    assert carried
    house = json.loads(carried[1].replace("&quot;", '"'))
    fields = {"from_size": "6", "to_size": "7½"}
    asked = [
        json.dumps({"calculator": "ring-resize", "fields": fields, "house": house}),
        json.dumps({"calculator": "ring-resize", "fields": {"from_size": "US 6", "to_size": "US 7½"}}),
        json.dumps({"calculator": "ring-resize", "fields": fields}),
    ]
    asker, folder = ROOT / "tests/answer_in_page_python.mjs", house_project / "site/vendor/python"
    run = subprocess.run(
        node(str(asker), str(folder)), input=json.dumps(asked), capture_output=True, text=True, check=False
    )
    assert run.returncode == 0, run.stderr
    answers = json.loads(run.stdout)["answers"]
    assert answers == [run_json(question) for question in asked]
    in_house, spelt_out, without = (json.loads(one) for one in answers)
    assert in_house == spelt_out
    assert in_house["inputs"]["from_size"] == "US 6"
    assert without["errors"]["from_size"].startswith("Name the scale as well")


def test_a_ring_scale_that_there_is_not_is_a_sentence() -> None:
    told = json.loads(run_json(json.dumps({"calculator": "ring-size", "fields": {}, "house": {"ring_scale": "XX"}})))
    assert "can't be read" in told["errors"][""]


def test_the_command_line_takes_the_scale_as_an_option() -> None:
    def run(*words: str) -> subprocess.CompletedProcess[str]:
        command = [sys.executable, "-m", "calculators", "ring-size", "size=7", *words]
        return subprocess.run(command, cwd=ROOT, capture_output=True, text=True, check=False)

    assert run().returncode == 2
    assert "17.32" in run("--ring-scale=US").stdout
    assert "15.0" in run("--ring-scale=jp").stdout  # (38 + 7) / 3
    assert "enter one of US, UK, ISO, JP, CH" in run("--ring-scale=XX").stderr


def test_without_the_folder_no_form_knows_of_a_shop(house_project: Path) -> None:
    if (ROOT / "docs/house").exists():
        pytest.skip("this handbook has a shop of its own")
    same = 0
    for built in sorted(SITE.rglob("*.html")):
        html = built.read_text(encoding="utf-8")
        assert not re.search(r"data-house|class=\"house-|^\s*House\s*$", html, re.MULTILINE), built
        with_house = FORM.findall((house_project / "site" / built.relative_to(SITE)).read_text(encoding="utf-8"))
        untouched = [one for one in with_house if "data-house" not in one and "house-values" not in one]
        plain = FORM.findall(html)
        assert all(one in plain for one in untouched if 'id="ring-resize-2"' not in one), built
        same += len(untouched)
    assert same > 10
    assert "House notes" not in re.findall(r'md-tabs__link">\s*(.*?)\s*<', (SITE / "index.html").read_text("utf-8"))


def test_git_leaves_the_folder_alone(house_project: Path) -> None:
    def git(*words: str) -> str:
        done = subprocess.run(["git", *words], cwd=house_project, capture_output=True, text=True, check=False)  # noqa: S607
        assert done.returncode == 0, done.stderr
        return done.stdout

    git("init", "-q")
    status = git("status", "--porcelain", "--untracked-files=all")
    assert "mkdocs.yml" in status
    assert "docs/house" not in status


@pytest.fixture
def docs(tmp_path: Path) -> Path:
    """A small handbook with the example house."""
    reference = ("ring-sizes", "proving-settings", "sources")
    for name in ("index", "joints/butt", "jobs/ring-up", *(f"reference/{one}" for one in reference)):
        target = tmp_path / f"docs/{name}.md"
        target.parent.mkdir(parents=True, exist_ok=True)
        shutil.copyfile(ROOT / f"docs/{name}.md", target)
    shutil.copytree(ROOT / "docs/reference/marks-and-law", tmp_path / "docs/reference/marks-and-law")
    shutil.copytree(EXAMPLE, tmp_path / "docs/house")
    return tmp_path / "docs"


def test_the_example_is_read_without_a_complaint(docs: Path) -> None:
    house_check.check(docs)
    shutil.rmtree(docs / "house")
    house_check.check(docs)
    assert house_values.shop(docs / "nowhere") == house_values.NO_SHOP


@pytest.mark.parametrize(
    ("values", "told"),
    [
        ("[start-setings]\nmetal = '14k yellow'", "no calculator start-setings. The nearest is start-settings."),
        ("[start-settings]\nmax_enrgy = '45 J'", "there is no field max_enrgy. The nearest is max_energy."),
        ("[start-settings]\nmax_energy = '45 mm'", "[start-settings], max_energy = '45 mm': Most energy in a pulse"),
        ("[start-settings]\nmax_energy = ['45 J']", "max_energy: write one value in quotes"),
        ("[start-settings]\nduration_min = '9 ms'\nduration_max = '2 ms'", "have no answer together"),
        ("[every]\nmax_enrgy = '45 J'", "[every]: no calculator has a field max_enrgy. The nearest is max_energy."),
        ("[every]\nmetal = 'mithril'", "[every], metal = 'mithril': Choose"),
        ("[every]\nring_scale = 'US'", "ring_scale is a setting. Write it above the first heading"),
        ("metal = '14k yellow'", "metal = '14k yellow' stands above every heading. Put it below [every]"),
        ("ring_scal = 'US'", "there is no setting ring_scal. The nearest is ring_scale."),
        ("ring_scale = 'XX'", "ring_scale: There is no ring-size scale XX: enter one of US, UK, ISO, JP, CH."),
        ("jurisdiction = 'Untied States'", "there is no place Untied States. The nearest is United States."),
        ("[every]\nmetal = 14k yellow", "line 2: this can't be read. Write every line as name ="),
        ("[every]\nmetal = '14k yellow'\nmetal = 'sterling'", "line 3: this stands there a second time."),
    ],
)  # fmt: skip
def test_a_slip_in_the_values_names_the_file_and_what_to_write(docs: Path, values: str, told: str) -> None:
    (docs / "house/values.toml").write_text(values, encoding="utf-8")
    with pytest.raises(PageError) as caught:
        house_check.check(docs)
    sentence = str(caught.value)
    assert sentence.startswith("docs/house/values.toml")
    assert told in sentence
    assert sentence.endswith(".")


@pytest.mark.parametrize(
    ("name", "text", "told"),
    [
        ("notes/joints/but.md", "A note.", "the handbook has no page joints/but.md. The nearest is joints/"),
        ("notes/joints/butt.md", "[Laser](/joints/but.md)", "there is no such file. The nearest is /joints/"),
        ("notes/joints/butt.md", "![Stick](/house/notes/a.jpg)", "keep pictures and pages outside the notes folder"),
        ("notes/joints/butt.md", "/// calculator | ring-resise\n///", "butt.md: There is no calculator ring-resise."),
        ("notes/joints/butt.md", "/// danger\nNo end.", "is never closed"),
        ("notes/joints/butt.md", "A claim [@inch].\n\n/// cited\n///", "butt.md: A page lists what it cites once"),
        ("prices.md", "/// calculator | stock-weight\nmetl = sterling\n///", "stock-weight has no field metl."),
        ("prices.md", "---\ntitle: Prices: ours\n---\nText.", 'in quotes, such as title: "Rings: ours".'),
        ("values.toml.txt", "", "values.toml.txt is not read: rename it to values.toml."),
    ],
)  # fmt: skip
def test_a_slip_in_a_note_or_page_names_its_file(docs: Path, name: str, text: str, told: str) -> None:
    (docs / "house" / name).write_text(text, encoding="utf-8")
    with pytest.raises(PageError) as caught:
        house_check.check(docs)
    assert str(caught.value).startswith(f"docs/house/{name}")
    assert told in str(caught.value)


def test_the_folder_may_be_a_link_to_another_place(docs: Path, tmp_path: Path) -> None:
    (docs / "house").rename(tmp_path / "elsewhere")
    (docs / "house").symlink_to(tmp_path / "elsewhere", target_is_directory=True)
    house_check.check(docs)  # its index lists the pages of the folder
    assert house_values.shop(docs).jurisdiction == "United States"


def test_a_file_in_an_old_encoding_is_told(docs: Path) -> None:
    (docs / "house/prices.md").write_bytes("Prix à façon".encode("cp1252"))
    with pytest.raises(PageError, match=r"docs/house/prices\.md .*UTF-8"):
        house_check.check(docs)


def test_the_build_stops_with_that_sentence_and_no_traceback(house_project: Path, tmp_path: Path) -> None:
    project = tmp_path / "project"
    shutil.copytree(house_project, project, symlinks=True, ignore=shutil.ignore_patterns("site", ".cache"))
    (project / "docs/house/values.toml").write_text("[every]\nmetl = 'sterling'\n", encoding="utf-8")
    command = [sys.executable, "-m", "build_scripts", "build"]
    run = subprocess.run(command, cwd=project, capture_output=True, text=True, check=False)
    assert run.returncode == 1
    expected = "build_scripts: docs/house/values.toml, [every]: no calculator has a field metl. The nearest is metal.\n"
    assert run.stderr == expected


def test_a_value_for_every_calculator_stays_away_from_a_field_that_can_t_take_it() -> None:
    shop = house_values.Shop({"every": {"metal": "14k yellow"}})
    assert shop.values_for(form.find("ring-blank")) == {"metal": "14k yellow"}
    assert shop.values_for(form.find("find-fault")) == {}


def test_a_value_that_has_no_answer_with_the_page_s_numbers_gives_way_and_says_so() -> None:
    shop = house_values.Shop({"every": {"metal": "14k yellow"}})  # its strength is not known
    made = form.calculator_form(form.find("post-strength"), {}, "post", 3, shop)
    assert "<b>House value not used here:</b> metal (14k yellow gold: no strength is known" in made.html
    plain = form.calculator_form(form.find("post-strength"), {}, "post", 3).html
    assert re.sub(r'<p class="house-values".*?</p>', "", made.html) == plain


def test_the_limits_of_the_shop_s_machine_bound_the_settings_tables() -> None:
    shop = house_values.Shop({"start-settings": {"max_energy": "2 J"}})
    table = settings_table_html("butt", "thickness = 1 mm", shop)
    assert "up to 2 J and 6 kW (house values)" in table
    assert table != settings_table_html("butt", "thickness = 1 mm")
    arc = "thickness = 1 mm\nsource = arc"
    assert settings_table_html("butt", arc, shop) == settings_table_html("butt", arc)


def test_a_page_is_known_by_its_words_under_plain_python_markdown(docs: Path) -> None:
    text = (docs / "joints/butt.md").read_text(encoding="utf-8").split("---\n", 2)[2]
    options = {"build_scripts.markdown_blocks": {"docs": str(docs)}}
    names = ["tables", "toc", "pymdownx.superfences", "build_scripts.markdown_blocks"]

    def render(page: str) -> str:
        return str(markdown.markdown(page, extensions=names, extension_configs=options))

    assert "second tack on the" in render(text).lower()
    assert "house-note" not in render(text.replace("Two ends", "Both ends"))


@pytest.mark.parametrize(
    ("place", "page"), [("US", "united-states"), ("uk", "united-kingdom"), ("Japan", "japan"), ("Portugal", "index")]
)
def test_the_law_of_a_place(docs: Path, place: str, page: str) -> None:
    assert law_page(place, docs) == f"/reference/marks-and-law/{page}.md"


def test_a_shop_on_another_scale_reads_the_same_number_otherwise() -> None:
    sizes = {}
    for scale in ("US", "JP"):
        _, working = work_out(form.find("ring-size"), {"size": "7"}, House(scale))
        sizes[scale] = next(iter(working.values.values())).value
    assert sizes["US"] != sizes["JP"]
