"""What has to hold before a change is taken: lint, format, types, a strict build, every test. Nothing is skipped."""

from __future__ import annotations

import os
import shutil
import subprocess
import sys
from pathlib import Path

from build_scripts import site
from build_scripts.bootstrap import NODE_MODULES, REPO, node

CHROMIUM_NAMES = ("chromium", "chromium-browser", "google-chrome", "google-chrome-stable")


def lint_and_types() -> None:
    """Lint, format and types of our Python and our JavaScript. Raises BuildError at the first that fails."""
    python = [sys.executable, "-m"]
    _check("ruff check", [*python, "ruff", "check"])
    _check("ruff format", [*python, "ruff", "format", "--check"])
    _check("mypy --strict", [*python, "mypy"])
    _check("biome", node(str(NODE_MODULES / "@biomejs/biome/bin/biome"), "ci", "--error-on-warnings"))
    _check("tsc", node(str(NODE_MODULES / "typescript/bin/tsc"), "--project", "tsconfig.json"))


def everything(pytest_arguments: list[str]) -> int:
    """All checks, the strict build, then pytest; returns its exit code. Raises BuildError before that."""
    lint_and_types()
    chromium()
    site.build()
    return subprocess.run([sys.executable, "-m", "pytest", *pytest_arguments], cwd=REPO, check=False).returncode


def chromium() -> str:
    """The path of a Chromium to test with; on Debian as root it is installed. Raises BuildError with a sentence."""
    found = _find_chromium()
    if found is None and shutil.which("apt-get") and hasattr(os, "geteuid") and os.geteuid() == 0:
        print("Installing Chromium from Debian ...", flush=True)
        if _run(["apt-get", "update", "-q"]) == 0:
            _run(["apt-get", "install", "-q", "-y", "--no-install-recommends", "chromium"])
        found = _find_chromium()
    if found is None:
        raise site.BuildError(
            "The tests drive a real browser: install Chromium (on Debian: apt-get install chromium) and run this again."
        )
    return found


def _find_chromium() -> str | None:
    return next((path for name in CHROMIUM_NAMES if (path := shutil.which(name))), None)


def _check(name: str, command: list[str]) -> None:
    print(f"== {name}", flush=True)
    if _run(command) != 0:
        raise site.BuildError(f"{name} found something to mend; the lines above say what.")


def _run(command: list[str], folder: Path = REPO) -> int:
    environment = {**os.environ, "DEBIAN_FRONTEND": "noninteractive"}
    return subprocess.run(command, cwd=folder, env=environment, check=False).returncode
