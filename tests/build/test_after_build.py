"""The steps after the pages: policy, offline list, what the page carries. Each on a small site of its own."""

from __future__ import annotations

import base64
import hashlib
import json
from pathlib import Path

import pytest

from build_scripts import policy, precache, vendor

INLINE = "start(1 < 2 && '&amp;')"
PAGE = f"""<!doctype html><html><head>
<meta charset="utf-8"><link rel="canonical" href="https://shop.example/"><script src="a.js"></script>
<script>{INLINE}</script><script type="application/json">{{"not": "run"}}</script></head>
<body><a href="https://elsewhere.example/">a link loads nothing</a></body></html>"""


@pytest.fixture
def site(tmp_path: Path) -> Path:
    (tmp_path / "jobs").mkdir()
    (tmp_path / "jobs/index.html").write_text(PAGE, encoding="utf-8")
    (tmp_path / "ring size.txt").write_text("5.55 mm", encoding="utf-8")
    (tmp_path / "sw.js").write_text(f"const files = {precache.PLACE};", encoding="utf-8")
    return tmp_path


def test_a_page_allows_its_own_inline_scripts_only(site: Path) -> None:
    policy.write_into_pages(site)
    text = (site / "jobs/index.html").read_text(encoding="utf-8")
    digest = base64.b64encode(hashlib.sha256(INLINE.encode()).digest()).decode()
    assert f"script-src 'self' 'wasm-unsafe-eval' 'sha256-{digest}';" in text
    assert text.count("'sha256-") == 1


@pytest.mark.parametrize(
    "tag",
    [
        '<script src="https://elsewhere.example/a.js"></script>',
        '<img src="//elsewhere.example/a.png">',
        '<link rel="stylesheet" href="http://elsewhere.example/a.css">',
        '<link rel="preconnect" href="https://elsewhere.example">',
        '<iframe src="https://elsewhere.example/"></iframe>',
    ],
)
def test_a_page_that_would_load_from_elsewhere_stops_the_build(site: Path, tag: str) -> None:
    page = site / "jobs/index.html"
    page.write_text(PAGE.replace("</body>", f"{tag}</body>"), encoding="utf-8")
    with pytest.raises(policy.PolicyError, match=r"jobs/index\.html .*elsewhere\.example"):
        policy.write_into_pages(site)


def test_the_offline_list_names_every_file_with_its_hash(site: Path) -> None:
    files, size = precache.write_service_worker(site)
    text = (site / "sw.js").read_text(encoding="utf-8")
    listed = json.loads(text.removeprefix("const files = ").removesuffix(";"))
    assert [entry["url"] for entry in listed] == ["jobs/index.html", "ring%20size.txt"]
    digest = base64.b64encode(hashlib.sha256(b"5.55 mm").digest()).decode()
    assert listed[1]["integrity"] == f"sha256-{digest}"
    assert (files, size) == (2, len(PAGE.encode()) + len("5.55 mm"))


def test_a_file_missing_from_the_offline_list_is_found(site: Path) -> None:
    precache.write_service_worker(site)
    (site / "late.txt").write_text("too late", encoding="utf-8")
    with pytest.raises(precache.PrecacheError, match=r"late\.txt"):
        precache.check_complete(site)
    (site / "late.txt").unlink()
    (site / "ring size.txt").write_text("5.56 mm", encoding="utf-8")
    with pytest.raises(precache.PrecacheError, match="ring%20size"):
        precache.check_complete(site)


def test_a_file_too_large_to_keep_stops_the_build(site: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(precache, "LARGEST_FILE", 100)
    with pytest.raises(precache.PrecacheError, match=r"jobs/index\.html is too large"):
        precache.write_service_worker(site)


def test_a_service_worker_without_a_place_for_the_list_stops_the_build(site: Path) -> None:
    (site / "sw.js").write_text("const files = [];", encoding="utf-8")
    with pytest.raises(precache.PrecacheError, match="must name"):
        precache.write_service_worker(site)


@pytest.mark.parametrize("statement", ["import unittest", "def late():\n    from multiprocessing.pool import Pool"])
def test_an_import_that_the_page_does_not_carry_stops_the_build(statement: str) -> None:
    with pytest.raises(vendor.VendorError, match=r"calculators/a\.py imports (unittest|multiprocessing)"):
        vendor.check_imports({"calculators/a.py": statement.encode()})
    vendor.check_imports({"calculators/a.py": b"import json, importlib.resources\nfrom . import units"})
