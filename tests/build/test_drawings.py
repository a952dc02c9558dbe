"""Every drawing of the handbook can be drawn and keeps the rules of the house."""

from __future__ import annotations

import re
from xml.etree import ElementTree

import pytest

from build_scripts import drawings
from build_scripts.listings import page_files
from build_scripts.markdown_blocks import REPO

CLASSES = set(re.findall(r"\.drawing \.([\w-]+)", (REPO / "docs/assets/css/drawings.css").read_text(encoding="utf-8")))


@pytest.mark.parametrize("slug", drawings.all_drawings())
def test_a_drawing_is_sound(slug: str) -> None:
    picture = drawings.find(slug)
    root = ElementTree.fromstring(picture.svg())  # noqa: S314 - our own drawing
    names = {name for one in list(root.iter())[1:] for name in one.get("class", "").split()}
    assert names <= CLASSES, f"no style for {names - CLASSES}"
    lettering = [
        word for one in root.iter("{http://www.w3.org/2000/svg}text") for word in "".join(one.itertext()).split()
    ]
    assert len(lettering) <= (70 if drawings.is_chart(slug) else 8), lettering
    assert picture.title
    assert len(picture.description) > len(picture.title), "the description tells what the drawing shows"


STRIPS = [
    (page.path, block)
    for page in page_files(REPO / "docs")
    for block in re.findall(
        r"^ *///+ strip *\n(.*?)^ *///+ *$", (REPO / "docs" / page.path).read_text(encoding="utf-8"), re.M | re.S
    )
]


@pytest.mark.parametrize(("page", "strip"), STRIPS, ids=[page for page, _ in STRIPS])
def test_the_drawings_of_a_strip_are_of_one_size(page: str, strip: str) -> None:
    pictures = [drawings.find(line.partition("|")[0].strip()) for line in strip.splitlines() if line.strip()]
    sizes = {(round(one.width * one.scale), round(one.height * one.scale)) for one in pictures}
    assert len(sizes) == 1, f"{page}: {sizes}"
