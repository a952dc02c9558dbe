"""The server: right kinds of file, the headers of hosting/_headers, a page for a wrong address."""

from __future__ import annotations

import threading
import urllib.error
import urllib.request
from collections.abc import Iterator
from email.message import Message
from pathlib import Path

import pytest

from build_scripts import serve

FILES = {
    "index.html": ("text/html; charset=utf-8", "<p>Bench</p>"),
    "404.html": ("text/html; charset=utf-8", "<p>No such page</p>"),
    "assets/js/a.js": ("text/javascript; charset=utf-8", "1"),
    "vendor/python/a.mjs": ("text/javascript; charset=utf-8", "1"),
    "vendor/python/a.wasm": ("application/wasm", "1"),
    "vendor/fonts/a.woff2": ("font/woff2", "1"),
}


@pytest.fixture
def address(tmp_path: Path) -> Iterator[str]:
    for name, (_, text) in FILES.items():
        (tmp_path / name).parent.mkdir(parents=True, exist_ok=True)
        (tmp_path / name).write_text(text, encoding="utf-8")
    server = serve.make_server(tmp_path, 0, "127.0.0.1")
    threading.Thread(target=server.serve_forever, kwargs={"poll_interval": 0.05}, daemon=True).start()
    yield f"http://127.0.0.1:{server.server_port}/"
    server.shutdown()
    server.server_close()


def headers(url: str, **asked: str) -> Message:
    with urllib.request.urlopen(urllib.request.Request(url, headers=asked)) as response:  # noqa: S310 - our own server
        found: Message = response.headers
        return found


@pytest.mark.parametrize("name", [name for name in FILES if name != "404.html"])
def test_kind_of_file_and_no_stale_copy(address: str, name: str) -> None:
    found = headers(address + name)
    assert found["Content-Type"] == FILES[name][0]
    assert found["Cache-Control"] == "no-cache"
    assert found["X-Content-Type-Options"] == "nosniff"


def test_workers_get_a_policy_from_the_headers(address: str) -> None:
    assert "'wasm-unsafe-eval'" in headers(address + "assets/js/a.js")["Content-Security-Policy"]
    assert "'wasm-unsafe-eval'" in headers(address + "vendor/python/a.mjs")["Content-Security-Policy"]
    assert headers(address)["Content-Security-Policy"] is None  # a page brings its own


def test_an_unchanged_file_is_not_sent_again(address: str) -> None:
    changed = headers(address + "index.html")["Last-Modified"]
    with pytest.raises(urllib.error.HTTPError) as told:
        headers(address + "index.html", **{"If-Modified-Since": changed})
    assert told.value.code == 304


def test_a_wrong_address_gets_the_sites_own_page(address: str) -> None:
    with pytest.raises(urllib.error.HTTPError) as told:
        headers(address + "jobs/no-such-job/")
    assert told.value.code == 404
    assert told.value.read() == b"<p>No such page</p>"
