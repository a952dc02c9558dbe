"""Writes the list of every file of the built site, with its hash, into the service worker ``sw.js``.

Reads the built site only. The browser checks each file against its hash while storing it, so an offline copy
is whole and of one edition, or it is not there.
"""

from __future__ import annotations

import base64
import hashlib
import json
from pathlib import Path
from typing import TypedDict
from urllib.parse import quote

SERVICE_WORKER = "sw.js"
PLACE = "worker.__PRECACHE_LIST"
LARGEST_FILE = 32 * 2**20  # bytes; a browser may refuse to keep more, and a shop's tablet has to fetch it


class Entry(TypedDict):
    """One file in the form Workbox reads."""

    url: str
    revision: str
    integrity: str


class PrecacheError(Exception):
    """The site cannot be kept offline whole; the text names the file."""


def write_service_worker(site: Path) -> tuple[int, int]:
    """Fill the list in; return the number of files and their size in bytes. Raises PrecacheError."""
    script = site / SERVICE_WORKER
    text = script.read_text(encoding="utf-8") if script.is_file() else ""
    if text.count(PLACE) != 1:
        raise PrecacheError(f"{SERVICE_WORKER} must name {PLACE} once, where the list of files goes.")
    files = _files(site)
    entries = [_entry(site, file) for file in files]
    script.write_text(text.replace(PLACE, json.dumps(entries, separators=(",", ":"))), encoding="utf-8")
    check_complete(site)
    return len(files), sum(file.stat().st_size for file in files)


def check_complete(site: Path) -> None:
    """Hold the written list against the files on disk. Raises PrecacheError."""
    text = (site / SERVICE_WORKER).read_text(encoding="utf-8")
    listed, _ = json.JSONDecoder().raw_decode(text, text.index('[{"url"'))
    wanted = [_entry(site, file) for file in _files(site)]
    missing = [entry["url"] for entry in wanted if entry not in listed]
    if missing or len(listed) != len(wanted):
        raise PrecacheError(f"The offline list and the site differ: {', '.join(missing) or 'a file too many'}.")


def _files(site: Path) -> list[Path]:
    return sorted(file for file in site.rglob("*") if file.is_file() and file != site / SERVICE_WORKER)


def _entry(site: Path, file: Path) -> Entry:
    name = file.relative_to(site).as_posix()
    data = file.read_bytes()
    if len(data) > LARGEST_FILE:
        raise PrecacheError(f"{name} is too large to keep offline: {len(data)} bytes, at most {LARGEST_FILE}.")
    digest = hashlib.sha256(data).digest()
    integrity = f"sha256-{base64.b64encode(digest).decode()}"
    return {"url": quote(name), "revision": digest.hex()[:16], "integrity": integrity}
