"""Serves the built site on this machine and the shop's network, with the headers of ``hosting/_headers``."""

from __future__ import annotations

import functools
import socket
import sys
from fnmatch import fnmatchcase
from http import HTTPStatus
from http.server import SimpleHTTPRequestHandler, ThreadingHTTPServer
from pathlib import Path
from typing import Any

from build_scripts.bootstrap import REPO
from build_scripts.site import SITE, BuildError

HEADERS_FILE = REPO / "hosting/_headers"


def run(port: int) -> None:
    """Serve ``site/`` until Ctrl-C. Raises BuildError when the port is taken."""
    try:
        server = make_server(SITE, port)
    except OSError as reason:
        raise BuildError(f"Port {port} cannot be used ({reason.strerror}). Choose another with --port.") from reason
    print(f"On this machine:      http://localhost:{server.server_port}/")
    if address := _network_address():
        print(f"On the shop network:  http://{address}:{server.server_port}/")
        print(
            "Another device that opens this address without HTTPS works online only; "
            "README.md tells the ways that work offline on a tablet."
        )
    print("Stop with Ctrl-C.", flush=True)
    try:
        server.serve_forever()
    except KeyboardInterrupt:
        print()
    finally:
        server.server_close()


def make_server(site: Path, port: int, host: str = "0.0.0.0") -> ThreadingHTTPServer:  # noqa: S104 - the tablet is to reach it
    """A threaded server of the folder; port 0 takes a free one. Raises OSError when the port is taken."""
    return _Server((host, port), functools.partial(_Handler, directory=str(site)))


def header_rules(text: str) -> list[tuple[str, str, str]]:
    """The rules of a ``_headers`` file as (path pattern, header, value), in order."""
    rules, pattern = [], ""
    for line in text.splitlines():
        if not line.strip() or line.startswith("#"):
            continue
        if line.startswith("/"):
            pattern = line.strip()
        else:
            name, _, value = line.partition(":")
            rules.append((pattern, name.strip(), value.strip()))
    return rules


def _network_address() -> str | None:
    """This machine's address on its network. No packet is sent: a datagram socket only picks its way out."""
    with socket.socket(socket.AF_INET, socket.SOCK_DGRAM) as probe:
        try:
            probe.connect(("192.0.2.1", 9))
        except OSError:
            return None
        address = str(probe.getsockname()[0])
    return None if address.startswith("127.") else address


class _Server(ThreadingHTTPServer):
    def handle_error(self, request: Any, client_address: Any) -> None:
        """Say nothing when a browser goes away in the middle of a file; show everything else."""
        if not isinstance(sys.exception(), ConnectionError):
            super().handle_error(request, client_address)


class _Handler(SimpleHTTPRequestHandler):
    protocol_version = "HTTP/1.1"
    rules = header_rules(HEADERS_FILE.read_text(encoding="utf-8"))
    # Fixed here: some machines' own tables call a script text/plain, and a browser then refuses it.
    extensions_map = {  # noqa: RUF012 - the name and the kind are the base class's
        "": "application/octet-stream",
        ".css": "text/css; charset=utf-8",
        ".html": "text/html; charset=utf-8",
        ".js": "text/javascript; charset=utf-8",
        ".json": "application/json",
        ".mjs": "text/javascript; charset=utf-8",
        ".pdf": "application/pdf",
        ".png": "image/png",
        ".svg": "image/svg+xml",
        ".txt": "text/plain; charset=utf-8",
        ".wasm": "application/wasm",
        ".webmanifest": "application/manifest+json",
        ".woff2": "font/woff2",
        ".xml": "application/xml",
        ".zip": "application/zip",
    }

    def end_headers(self) -> None:
        path = self.path.partition("?")[0]
        for pattern, name, value in self.rules:
            if fnmatchcase(path, pattern):
                self.send_header(name, value)
        super().end_headers()

    def send_error(self, code: int, message: str | None = None, explain: str | None = None) -> None:
        page = Path(self.directory) / "404.html"
        if code != HTTPStatus.NOT_FOUND or not page.is_file():
            super().send_error(code, message, explain)
            return
        body = page.read_bytes()
        self.send_response(code)
        self.send_header("Content-Type", self.extensions_map[".html"])
        self.send_header("Content-Length", str(len(body)))
        self.end_headers()
        if self.command != "HEAD":
            self.wfile.write(body)

    def log_message(self, format: str, *args: object) -> None:  # noqa: A002 - the base class's name
        """Say nothing: the console keeps the addresses in sight."""
