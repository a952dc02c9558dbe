"""The same door from a shell."""

from __future__ import annotations

import json
import subprocess
import sys

import pytest


def run(*words: str) -> subprocess.CompletedProcess[str]:
    done = subprocess.run([sys.executable, "-m", "calculators", *words], capture_output=True, text=True, check=False)
    assert "Traceback" not in done.stderr
    return done


def test_lists_slugs_and_titles() -> None:
    done = run()
    assert done.returncode == 0
    assert "ring-resize" in done.stdout
    assert "Ring up or down" in done.stdout


def test_answers_as_json() -> None:
    done = run("ring-resize", "from_size=US 6", "to_size=US 8", "thickness=1.5 mm", "width=3 mm", "--json")
    assert done.returncode == 0
    data = json.loads(done.stdout)
    assert data["calculator"] == "ring-resize"
    assert data["inputs"]["metal"] == "18k yellow", "fields left out take the worked example's values"
    assert data["results"]["length_change"]["value"] == pytest.approx(5.107, abs=0.0005)
    assert data["results"]["length_change"]["unit"] == "mm"
    assert {"words", "formula", "numbers", "value"} <= set(data["steps"][0])
    assert data["cautions"]
    assert data["sources"]


def test_answers_for_people() -> None:
    done = run("ring-resize")
    assert done.returncode == 0
    assert "+5.107" in done.stdout
    assert "The working" in done.stdout


def test_help_lists_the_fields() -> None:
    done = run("ring-resize", "--help")
    assert done.returncode == 0
    for name in ("from_size", "to_size", "saw_kerf", "piece_joints", "18k-yellow", "half-round"):
        assert name in done.stdout


@pytest.mark.parametrize(
    ("words", "name", "part"),
    [
        (["ring-resize", "width=12 g"], "width", "is a length"),
        (["ring-resize", "widht=3"], "widht", "The nearest is width"),
        (["ring-resiez"], "", "The nearest is ring-resize"),
        (["ring-resize", "3 mm"], "3 mm", "name=value"),
        (["ring-resize", "thickness="], "thickness", "Enter the band thickness"),
    ],
)
def test_bad_input_is_told_in_a_sentence(words: list[str], name: str, part: str) -> None:
    done = run(*words, "--json")
    assert done.returncode == 2
    assert part in json.loads(done.stdout)["errors"][name]
    spoken = run(*words)
    assert spoken.returncode == 2
    assert part in spoken.stderr
