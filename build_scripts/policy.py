"""Writes each page's content policy into its head: our own files only, and just that page's inline scripts.

Reads the built pages only. A page that would load anything from elsewhere stops the build.
A policy in the page does not reach workers: ``hosting/_headers`` has what a host should send for those.
"""

from __future__ import annotations

import base64
import hashlib
from html.parser import HTMLParser
from pathlib import Path

LOADING = {
    "script": "src",
    "img": "src",
    "iframe": "src",
    "source": "src",
    "audio": "src",
    "video": "src",
    "embed": "src",
}
LINKS_THAT_LOAD_NOTHING = {"canonical", "next", "prev", "alternate", "license", "author"}
DATA_BLOCKS = {"application/json", "application/ld+json"}
PLACE = '<meta charset="utf-8">'


class PolicyError(Exception):
    """A page cannot carry the policy; the text names the page and the reason."""


def write_into_pages(site: Path) -> None:
    """Give every built page its policy. Raises PolicyError."""
    for page in sorted(site.rglob("*.html")):
        # newline="" keeps the inline scripts byte for byte: their hashes depend on it.
        text = page.read_bytes().decode("utf-8")
        name = page.relative_to(site).as_posix()
        found = _Loads()
        found.feed(text)
        if found.off_site:
            raise PolicyError(f"{name} would load something from another site: {', '.join(sorted(found.off_site))}")
        head, place, rest = text.partition(PLACE)
        if not place:
            raise PolicyError(f"{name} has no {PLACE} to put the policy after.")
        meta = f'<meta http-equiv="Content-Security-Policy" content="{page_policy(found.inline_scripts)}">'
        page.write_bytes(f"{head}{place}{meta}{rest}".encode())


def page_policy(inline_scripts: list[str]) -> str:
    """The policy of a page with these inline scripts."""
    hashes = sorted(
        {f"'sha256-{base64.b64encode(hashlib.sha256(text.encode()).digest()).decode()}'" for text in inline_scripts}
    )
    return "; ".join(
        [
            "default-src 'self'",
            " ".join(["script-src 'self' 'wasm-unsafe-eval'", *hashes]),
            "style-src 'self' 'unsafe-inline'",
            "img-src 'self' data:",
            "connect-src 'self'",
            "worker-src 'self'",
            "object-src 'none'",
            "base-uri 'self'",
            "form-action 'self'",
        ]
    )


class _Loads(HTMLParser):
    """What a page runs inline and what it would fetch from another site."""

    def __init__(self) -> None:
        super().__init__(convert_charrefs=False)
        self.inline_scripts: list[str] = []
        self.off_site: set[str] = set()
        self._script: list[str] | None = None

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        values = {name: value or "" for name, value in attrs}
        address = values.get(LOADING.get(tag, ""), "")
        if tag == "link" and not set(values.get("rel", "").split()) <= LINKS_THAT_LOAD_NOTHING:
            address = values.get("href", "")
        if address.startswith(("http:", "https:", "//")):
            self.off_site.add(address)
        if tag == "script" and "src" not in values and values.get("type", "") not in DATA_BLOCKS:
            self._script = []

    def handle_data(self, data: str) -> None:
        if self._script is not None:
            self._script.append(data)

    def handle_endtag(self, tag: str) -> None:
        if tag == "script" and self._script is not None:
            self.inline_scripts.append("".join(self._script))
            self._script = None
