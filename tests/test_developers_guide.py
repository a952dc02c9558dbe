"""The contributor's guide shows a fourth calculator in three files: take them from the page and run them."""

from __future__ import annotations

import re
import shutil
import subprocess
import sys
from pathlib import Path

ROOT = Path(__file__).parent.parent


def files_of_the_example() -> dict[str, str]:
    section = (ROOT / "DEVELOPERS.md").read_text(encoding="utf-8").split("## Add a calculator")[1].split("\n## ")[0]
    return dict(re.findall(r"^`([\w/.-]+)`\n\n```\w+\n(.*?)^```", section, re.M | re.S))


def test_a_fourth_calculator_touches_three_files(tmp_path: Path) -> None:
    files = files_of_the_example()
    assert [name.split("/")[0] for name in files] == ["calculators", "tests", "docs"]
    for folder in ("calculators", "tests", "build_scripts"):
        shutil.copytree(ROOT / folder, tmp_path / folder, ignore=shutil.ignore_patterns("__pycache__"))
    for name, text in files.items():
        assert not (ROOT / name).exists(), "the example must not be in the project already"
        (tmp_path / name).parent.mkdir(parents=True, exist_ok=True)
        (tmp_path / name).write_text(text, encoding="utf-8")

    def run(*words: str) -> str:
        done = subprocess.run([sys.executable, *words], cwd=tmp_path, capture_output=True, text=True, check=False)
        assert done.returncode == 0, done.stdout + done.stderr
        return done.stdout

    assert "bezel-strip" in run("-m", "calculators")
    assert "26.40" in run("-m", "calculators", "bezel-strip")
    found = run(
        "-m", "pytest", "-q", "-p", "no:cacheprovider", "tests/test_cases.py", "tests/test_any_text.py", "-k", "bezel"
    )
    assert re.search(r"\b[1-9]\d* passed", found)
    page = files["docs/jobs/bezel-strip.md"].split("---\n")[2]
    render = "import sys, markdown; print(markdown.markdown(sys.argv[1], extensions=['build_scripts.markdown_blocks']))"
    html = run("-c", render, page)
    assert "32.65" in html  # the page's preset: pi × 10.4 mm = 32.67 mm, cut to 0.05 mm
    assert 'data-calculator="bezel-strip"' in html
