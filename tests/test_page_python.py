"""The Python of the page gives the very text that CPython gives, for every example, case, refusal and regression."""

from __future__ import annotations

import json
import subprocess
import sys
from pathlib import Path

import pytest

from build_scripts.bootstrap import node
from build_scripts.site import SITE
from calculators.declare import all_calculators
from calculators.run import run_json
from tests.case_files import read

ASKER = Path(__file__).with_name("answer_in_page_python.mjs")


@pytest.fixture(scope="module")
def questions() -> list[str]:
    asked: list[tuple[str, dict[str, str]]] = [(slug, {}) for slug in sorted(all_calculators())]
    for folder, kind in (("cases", "case"), ("cases", "refusal"), ("regressions", "case")):
        asked += [(case.slug, case.fields) for case in read(folder, kind)]
    return [json.dumps({"calculator": slug, "fields": fields}) for slug, fields in asked]


def test_the_page_answers_as_cpython_does(questions: list[str]) -> None:
    folder = SITE / "vendor/python"
    assert (folder / "app.zip").is_file(), "Build the site first: python3 -m build_scripts build"
    run = subprocess.run(
        node(str(ASKER), str(folder)), input=json.dumps(questions), capture_output=True, text=True, check=False
    )
    assert run.returncode == 0, run.stderr
    page = json.loads(run.stdout)
    assert page["about"][0].startswith("3.14."), f"the page's Python is {page['about'][0]}; this one {sys.version}"
    different = [
        {"asked": question, "page": there, "cpython": here}
        for question, there in zip(questions, page["answers"], strict=True)
        if there != (here := run_json(question))
    ]
    assert different == []
    assert len(questions) > len(all_calculators())
