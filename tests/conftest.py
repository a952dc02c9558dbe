"""What tests of several folders share."""

from __future__ import annotations

import shutil
import subprocess
import sys
from pathlib import Path

import pytest

ROOT = Path(__file__).parent.parent
EXAMPLE = ROOT / "tests/house_example"
PARTS = (
    "build_scripts", "calculators", "docs", "hosting", "theme", "mkdocs.yml", ".gitignore",
    "requirements.txt", "package.json", "package-lock.json",
)  # fmt: skip


def copy_project(folder: Path) -> Path:
    """What a build needs of the project, without a shop's own folder; the locked tools are linked."""
    folder.mkdir(parents=True, exist_ok=True)
    unwanted = shutil.ignore_patterns("__pycache__", "house")
    for name in PARTS:
        source = ROOT / name
        if source.is_dir():
            shutil.copytree(source, folder / name, ignore=unwanted)
        else:
            shutil.copyfile(source, folder / name)
    for name in (".venv", "node_modules"):
        (folder / name).symlink_to((ROOT / name).resolve())
    (folder / ".cache").mkdir()
    if (ROOT / ".cache/bundle").is_dir():  # the same content, compiled once
        shutil.copytree(ROOT / ".cache/bundle", folder / ".cache/bundle")
    return folder


@pytest.fixture(scope="session")
def house_project(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A copy of the project with the example as its docs/house, strictly built."""
    project = copy_project(tmp_path_factory.mktemp("house") / "project")
    shutil.copytree(EXAMPLE, project / "docs/house")
    build = "from build_scripts import site; site.build()"
    run = subprocess.run([sys.executable, "-c", build], cwd=project, capture_output=True, text=True, check=False)
    assert run.returncode == 0, run.stdout + run.stderr
    return project
