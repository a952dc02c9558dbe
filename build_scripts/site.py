"""The build: pages by MkDocs, then steps that read only the built site. ``site/`` changes in one move at the end."""

from __future__ import annotations

import os
import shutil
import subprocess
import sys
import time
from pathlib import Path

from build_scripts import house_check, policy, precache, search_index, vendor
from build_scripts.bootstrap import REPO
from build_scripts.errors import PageError

SITE = REPO / "site"
FAILURES = (PageError, vendor.VendorError, policy.PolicyError, precache.PrecacheError, search_index.SearchError)


class BuildError(Exception):
    """The site could not be built; the text says why."""


def build() -> Path:
    """Build the whole site strictly and return its folder. Raises BuildError with a sentence."""
    start = time.monotonic()
    unfinished = vendor.CACHE / f"site-{os.getpid()}"
    shutil.rmtree(unfinished, ignore_errors=True)
    try:
        house_check.check(REPO / "docs")
        _render_pages(unfinished)
        vendor.copy_into(unfinished)
        policy.write_into_pages(unfinished)
        search_index.write_index(unfinished)
        files, size = precache.write_service_worker(unfinished)
        _replace(SITE, unfinished)
    except FAILURES as reason:
        raise BuildError(str(reason)) from reason
    finally:
        shutil.rmtree(unfinished, ignore_errors=True)
    seconds = time.monotonic() - start
    print(f"Built site/: {files} files, {size / 1e6:.1f} MB kept offline, {seconds:.1f} s.", flush=True)
    return SITE


def _render_pages(folder: Path) -> None:
    command = [sys.executable, "-m", "mkdocs", "--quiet", "build", "--strict", "--site-dir", str(folder)]
    environment = {
        **os.environ,
        "PYTHONPATH": str(REPO),
        "NO_MKDOCS_2_WARNING": "1",
        "DISABLE_MKDOCS_2_WARNING": "true",
    }
    if subprocess.run(command, cwd=REPO, env=environment, check=False).returncode != 0:
        raise BuildError("The pages could not be built; the lines above say where.")
    _remove_unread(folder)


def _remove_unread(folder: Path) -> None:
    """Take out what no page loads, so that a tablet need not keep it."""
    # Holds the minute of the build; search engines take the plain one.
    (folder / "sitemap.xml.gz").unlink(missing_ok=True)
    # The theme's own search; ours is search_index.py and docs/assets/js/handbook-search.js.
    for part in ("lunr", "workers"):
        shutil.rmtree(folder / "assets/javascripts" / part, ignore_errors=True)
    for source_map in folder.glob("assets/**/*.map"):
        source_map.unlink()


def _replace(old: Path, new: Path) -> None:
    """Put the new folder where the old one stood, so that a running server never sees half a site."""
    aside = vendor.CACHE / f"old-{os.getpid()}"
    if old.exists():
        old.rename(aside)
    new.rename(old)
    shutil.rmtree(aside, ignore_errors=True)
