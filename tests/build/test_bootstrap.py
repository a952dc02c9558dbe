"""The set-up: what a person reads when it cannot go on, and that a finished set-up fetches nothing."""

from __future__ import annotations

import sys
from pathlib import Path

import pytest

from build_scripts import bootstrap


def test_an_old_python_is_told_what_to_do(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(sys, "version_info", (3, 9, 2))
    with pytest.raises(bootstrap.NotReadyError, match=r"needs Python 3\.11 or newer; .* is 3\.9\.2"):
        bootstrap.make_ready([])


def test_a_finished_set_up_starts_no_installer(monkeypatch: pytest.MonkeyPatch) -> None:
    def refuse(command: list[str], failure: str) -> None:
        raise AssertionError(f"would run {command}: {failure}")

    monkeypatch.setattr(bootstrap, "_step", refuse)
    bootstrap.make_ready([])


def test_without_network_the_sentence_names_it(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> None:
    """A set-up whose stamp is missing tries again, and an installer that fails is told in a sentence."""
    monkeypatch.setattr(bootstrap, "NODE_MODULES", tmp_path)
    monkeypatch.setattr(bootstrap, "node", lambda *_: [sys.executable, "-c", "raise SystemExit(1)"])
    with pytest.raises(bootstrap.NotReadyError, match=r"npm packages could not be installed.*needs the network"):
        bootstrap.make_ready([])
    assert list(tmp_path.iterdir()) == []


def test_no_lock_names_a_host_or_a_path_of_a_machine() -> None:
    for name in ("requirements.txt", "package-lock.json", "package.json", ".npmrc"):
        text = (bootstrap.REPO / name).read_text(encoding="utf-8")
        assert "resolved" not in text.replace("omit-lockfile-registry-resolved", ""), name
        assert "--index-url" not in text, name
        assert "--find-links" not in text, name
        assert "file:" not in text, name
