"""The checker of the text itself: for each of its checks, what must fail and what must pass."""

from __future__ import annotations

from pathlib import Path

import pytest

from . import figures, pages, sentences, spelling, test_pages, wording
from .pages import article

HEAVY = (
    "Metallurgical investigation of solidification phenomena necessitates consideration of compositional variation."
    " Subsequently, interdependent characteristics determine microstructural development during irradiation."
)
PLAIN = "Hold the ring to a lamp. You see no light. If you see a line, file again and look once more."


def words(count: int) -> str:
    """A page of one sentence with so many words, none of them hard."""
    return f"<p>{' '.join(['File'] + ['on'] * (count - 1))}.</p>"


# Spelling


@pytest.mark.parametrize(
    "wrong", ["colour", "jeweller", "levelling", "grey", "centre", "goldd", "Jeweller’s", "18 ct gold", "carat mark"]
)
def test_misspelled(wrong: str) -> None:
    assert spelling.misspelled(f"Look at the {wrong} first.") == [wrong]
    with pytest.raises(AssertionError, match=wrong):
        test_pages.test_spelling(article(f"<p>Look at the {wrong} first.</p>"))


@pytest.mark.parametrize(
    "right",
    ["color", "jeweler", "leveling", "jeweler’s", "loupe", "Kerf", "milgrain", "14k", "M2.5", "0.5 ct diamond", "µm"],
)
def test_spelled_right(right: str) -> None:
    assert spelling.misspelled(f"Look at the {right} first.") == []


def test_names_are_good_in_a_list_of_sources_only() -> None:
    name = next(one for one in spelling.read_list(spelling.CITED_WORDS) if not spelling.is_known(one))
    assert spelling.misspelled(name) == [name]
    assert spelling.misspelled(name, in_sources=True) == []


@pytest.mark.parametrize("file", [spelling.TRADE_WORDS, spelling.CITED_WORDS], ids=lambda file: file.name)
def test_a_list_is_in_order_and_holds_no_word_twice(file: Path) -> None:
    listed = spelling.read_list(file)
    assert listed == sorted(set(listed), key=lambda one: (one.lower(), one))


@pytest.mark.parametrize(
    "picture", ["<title>Colour</title><desc>A ring</desc>", "<title>A</title><desc>A grey ring</desc>"]
)
def test_descriptions_of_drawings_are_spelled_too(picture: str) -> None:
    with pytest.raises(AssertionError, match="description of the drawing"):
        test_pages.test_spelling(article(f"<svg>{picture}</svg>"))


# Reading grade and length of sentences


def test_the_grade_is_the_published_formula() -> None:
    """By hand: 7 words, 2 sentences, 12 syllables: 0.39 × 7/2 + 11.8 × 12/7 − 15.59 = 6.0036."""
    told = sentences.sentences("The metal is molten. Open the cabinet.")
    assert [[sentences.syllables(word) for word in one.split()] for one in told] == [[1, 2, 1, 2], [2, 1, 3]]
    assert sentences.grade(told) == pytest.approx(6.0036, abs=0.0001)


def test_heavy_text_is_over_the_grade_and_plain_text_is_under() -> None:
    assert sentences.grade(sentences.sentences(HEAVY)) > test_pages.REFERENCE_GRADE
    assert sentences.grade(sentences.sentences(PLAIN)) < test_pages.GUIDE_GRADE
    with pytest.raises(AssertionError, match="Shorten these first"):
        test_pages.test_reading_grade(article(f"<p>{HEAVY}</p>"))
    test_pages.test_reading_grade(article(f"<p>{PLAIN}</p>"))


@pytest.mark.parametrize(
    ("word", "count"),
    [("fused", 1), ("table", 2), ("touches", 2), ("melted", 2), ("holes", 1), ("any", 2), ("argon", 2), ("0.5", 1)],
)
def test_syllables(word: str, count: int) -> None:
    assert sentences.syllables(word) == count


def test_where_a_sentence_ends() -> None:
    assert sentences.sentences("Use a No. 4 file, e.g. a flat one. Stop at 0.5 mm. “Dull?” Go on.") == [
        "Use a No. 4 file, e.g. a flat one.", "Stop at 0.5 mm.", "“Dull?”", "Go on.",
    ]  # fmt: skip


@pytest.mark.parametrize(("name", "longest"), [("jobs/bail.md", 30), ("reference/glossary.md", 35)])
def test_a_sentence_has_a_longest(name: str, longest: int) -> None:
    test_pages.test_no_long_sentence(article(words(longest), name))
    with pytest.raises(AssertionError, match=f"{longest + 1} words, at most {longest}"):
        test_pages.test_no_long_sentence(article(words(longest + 1), name))


def test_sentences_have_a_highest_mean() -> None:
    assert sentences.mean_length(["File it.", "Hold it to a lamp."]) == 3.5
    test_pages.test_sentences_are_short_on_the_whole(article(words(20) + words(8)))
    with pytest.raises(AssertionError, match=r"15\.0 words a sentence"):
        test_pages.test_sentences_are_short_on_the_whole(article(words(20) + words(10)))


def test_what_is_read_as_a_sentence() -> None:
    told = article(
        "<h2>Finish</h2><p>File <b>flat</b>.</p><ul><li>Look</li></ul><table><tr><td>A label</td><td>It ends.</td></tr>"
        "</table><pre>code</pre><svg><text>lettering</text><title>A file</title></svg>"
    )
    assert [one.text for one in told.running()] == ["File flat.", "Look", "It ends."]
    assert {one.section for one in told.running()} == {"Finish"}


# Figures


@pytest.mark.parametrize(
    ("sentence", "count"),
    [
        ("File 0.2 off the edge.", 1),
        ("Set the pulse to 3.5 and fire.", 1),
        ("Use a wire of 0.3, then 0.5.", 2),
        ("Move on by 2 and look.", 1),
        ("It holds 12 at the seam.", 1),
        ("The wall is 1.5 thick.", 1),
        ("File 0.2 metal off.", 1),
        ("Set them 0.5 apart.", 1),
        ("Set the spots 0.5 apart.", 1),
        ("Hold 20 with pauses.", 1),
        ("It is 0.92 of nothing, or 0.92.", 1),
    ],
)
def test_unmeasured(sentence: str, count: int) -> None:
    assert len(figures.unmeasured(sentence)) == count


@pytest.mark.parametrize(
    "sentence",
    [
        "File 0.2 mm off the edge.",
        "Cut 3.0 × 1.5 × 20 mm.",
        "Between 0.1 and 0.2 mm proud.",
        "Heat to 650–700 °C, at 80 % of it.",
        "Bevel each end to 30°.",
        "Fire 3 spots, then 20 light pulses.",
        "Go back to step 3, as in sitting 4.",
        "Pair 1: saw across.",
        "Spot 5 is dark.",
        "Spot 0.5 mm, pulse 3 ms.",
        "Saw pieces A and B, pairs 2 and 3.",
        "Use a No. 4 file on grit 400, 600, 1200.",
        "From size 7 to 6, or US 6 1/2.",
        "Melt 14k with 18k gold.",
        "Stamp it 585, or mark 750.",
        "Alloy by 3 to 1.",
        "A ratio of 1:4 is enough.",
        "Look at 10×.",
        "Aim 9 of 10, spots named 10 of 10.",
        "In 1975 the standard was ISO 5817.",
        "A class 4 laser.",
    ],
)
def test_measured(sentence: str) -> None:
    assert figures.unmeasured(sentence) == []


def test_a_page_with_a_bare_figure_fails() -> None:
    test_pages.test_figures_have_units(article("<p>File 0.2 mm off the edge.</p>"))
    with pytest.raises(AssertionError, match="has no unit"):
        test_pages.test_figures_have_units(article("<p>File 0.2 off the edge.</p>"))


# Words


@pytest.mark.parametrize(
    "said",
    [
        "Stop — look.",
        "Stop – look.",
        "Stop -- look.",
        "Stop now!",
        "Simply file it.",
        "It goes easily.",
        "Ensure a fit.",
        "Please wait.",
        "Sorry.",
        "An invalid size.",
        "It is important to look.",
        "Do this in order to fit.",
        "The optimal pulse.",
        "Utilize a file.",
        "A proper fit.",
        "A state-of-the-art seam.",
        "TODO",
        "Coming soon.",
        "Go towards it.",
        "Whilst it cools.",
        "It is burnt.",
        "Grey metal.",
        "Turn it anticlockwise.",
    ],
)
def test_banned(said: str) -> None:
    assert len(wording.banned(said)) == 1
    with pytest.raises(AssertionError, match="in “"):
        test_pages.test_wording(article(f"<p>{said}</p>"))


@pytest.mark.parametrize(
    "said",
    [
        "Stop, look.",
        "From 0.2–0.5 mm.",
        "A water-cooled head.",
        "File it simplest first.",
        "The ease of a file.",
        "It was not measured.",
        "Toward the seam.",
        "It is burned.",
    ],
)
def test_not_banned(said: str) -> None:
    assert wording.banned(said) == []


def test_a_title_of_somebody_else_keeps_its_words() -> None:
    test_pages.test_wording(article('<ul class="cited"><li>Optimal welding — a study.</li></ul>'))


# An empty page


@pytest.mark.parametrize("html", ["<p>No article.</p>", "<article></article>"])
def test_an_empty_page_fails(html: str) -> None:
    with pytest.raises(AssertionError, match=r"shows no article|has no text"):
        test_pages.test_has_text(pages.read(html, "jobs/bail.md"))


@pytest.mark.parametrize(
    "sentence",
    [
        "The magnet pulls faintly at a bent 18/8 link.",
        "A wire for 316L and for steel 304.",
        "Nickel silver 65-18-17 and brass 70/30 melt low.",
        "A share of 0.03 is left.",
        "A β of 1.1 to 4.5.",
    ],
)
def test_grades_and_alloys_named_by_their_shares_need_no_unit(sentence: str) -> None:
    assert figures.unmeasured(sentence) == []


@pytest.mark.parametrize(
    "sentence", ["Karat gold starts at 10.6 and silver has more.", "It melts at 304.", "The pulse was 12/24 long."]
)
def test_a_bare_figure_is_still_found_beside_them(sentence: str) -> None:
    assert figures.unmeasured(sentence)


def test_the_links_of_a_row_are_no_sentence() -> None:
    assert sentences.sentences("9k white · 10k white · 14k white") == ["9k white", "10k white", "14k white"]
