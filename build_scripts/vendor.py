"""Gathers what the pages carry: the Python runtime, the offline parts, the search engine and the typeface.

The runtime's standard library and our own Python are compiled to ``.pyc`` by the very runtime that will read them
and kept in ``.cache/`` under the hash of everything that went in, so a rebuild of the pages is quick.
"""

from __future__ import annotations

import ast
import hashlib
import importlib.metadata
import io
import json
import shutil
import subprocess
import zipfile
from collections.abc import Iterable, Mapping
from pathlib import Path

from build_scripts.bootstrap import NODE_MODULES, REPO, node

CACHE = REPO / ".cache"
PYODIDE = NODE_MODULES / "pyodide"
BUNDLER = Path(__file__).with_name("bundle_runtime.mjs")
COMPILER = Path(__file__).with_name("compile_for_page.py")

# What a calculator may use on the page, beside the standard library.
PAGE_PACKAGES = ("pint", "flexcache", "flexparser", "platformdirs", "typing-extensions")
NOT_ON_THE_PAGE = ("pint/testsuite/", "pint/testing.py", "pint/matplotlib.py", "pint/pint_convert.py")

# Parts of the standard library that neither pint, a calculator nor the runtime's own start can reach
# (prefixes of paths; found by following every import statement from what is loaded).
STDLIB_LEFT_OUT = (
    "_pyrepl/", "antigravity.py", "bdb.py", "cProfile.py", "cmd.py", "code.py", "compileall.py",
    "concurrent/futures/process.py", "concurrent/interpreters/", "asyncio/proactor_events.py", "asyncio/windows_",
    "asyncio/tools.py", "ctypes/macholib/", "ctypes/wintypes.py", "doctest.py", "email/mime/",
    "fileinput.py", "filecmp.py", "ftplib.py", "getpass.py", "http/cookies.py", "http/server.py", "imaplib.py",
    "logging/config.py", "logging/handlers.py", "mailbox.py", "modulefinder.py", "multiprocessing/", "netrc.py",
    "optparse.py", "pdb.py", "pickletools.py", "poplib.py", "profile.py", "pstats.py", "pty.py", "pyclbr.py",
    "pydoc.py", "pydoc_data/", "rlcompleter.py", "shelve.py", "smtplib.py", "socketserver.py", "sqlite3/",
    "symtable.py", "tabnanny.py", "this.py", "timeit.py", "trace.py", "unittest/", "wave.py", "webbrowser.py",
    "wsgiref/", "xmlrpc/", "zipapp.py",
)  # fmt: skip
ENCODINGS_KEPT = {
    "__init__", "aliases", "ascii", "cp1252", "cp437", "idna", "latin_1", "punycode", "raw_unicode_escape",
    "unicode_escape", "utf_16", "utf_8", "utf_8_sig",
}  # fmt: skip

FONT_FILES = [
    f"atkinson-hyperlegible-next-{subset}-{weight}-{style}.woff2"
    for subset in ("latin", "latin-ext")
    for weight in (400, 700)
    for style in ("normal", "italic")
]
WORKBOX_PARTS = ("core", "routing", "strategies", "precaching")


class VendorError(Exception):
    """Something the pages carry could not be made; the text says what."""


def copy_into(site: Path) -> None:
    """Put runtime, offline parts and typeface into ``site/vendor``. Raises VendorError."""
    runtime = site / "vendor/python"
    runtime.mkdir(parents=True)
    for name in ("pyodide.mjs", "pyodide.asm.mjs", "pyodide.asm.wasm"):
        shutil.copyfile(PYODIDE / name, runtime / name)
    # The runtime asks its lock for packages to download; here there are none.
    lock = json.loads((PYODIDE / "pyodide-lock.json").read_text(encoding="utf-8"))
    (runtime / "pyodide-lock.json").write_text(json.dumps({"info": lock["info"], "packages": {}}), encoding="utf-8")
    for name, archive in python_bundle().items():
        shutil.copyfile(archive, runtime / name)
    (runtime / "LICENSES.txt").write_text(_runtime_licenses(), encoding="utf-8")

    workbox = site / "vendor/workbox"
    workbox.mkdir()
    for part in WORKBOX_PARTS:
        name = f"workbox-{part}.prod.js"
        # Source maps stay behind, so the line naming them goes too.
        text = (NODE_MODULES / f"workbox-{part}/build/{name}").read_text(encoding="utf-8")
        (workbox / name).write_text(text.partition("//# sourceMappingURL")[0], encoding="utf-8")

    fonts = site / "vendor/fonts"
    fonts.mkdir()
    for name in FONT_FILES:
        shutil.copyfile(NODE_MODULES / "@fontsource/atkinson-hyperlegible-next/files" / name, fonts / name)

    engine = site / "vendor/minisearch"
    engine.mkdir()
    text = (NODE_MODULES / "minisearch/dist/es/index.js").read_text(encoding="utf-8")
    (engine / "minisearch.js").write_text(text.partition("//# sourceMappingURL")[0], encoding="utf-8")

    licensed = ((fonts, "@fontsource/atkinson-hyperlegible-next"), (workbox, "workbox-core"), (engine, "minisearch"))
    for folder, package in licensed:
        (found,) = (NODE_MODULES / package).glob("LICENSE*")
        shutil.copyfile(found, folder / "LICENSE.txt")


def _runtime_licenses() -> str:
    """The license texts of the packages on the page, and where the runtime and its license are found."""
    about = json.loads((PYODIDE / "package.json").read_text(encoding="utf-8"))
    parts = [
        f"Runtime: {about['name']} {about['version']}, {about['license']}, {about['repository']['url']}",
        "It holds CPython with its standard library, Python Software Foundation License Version 2.",
    ]
    for package in PAGE_PACKAGES:
        parts.append(f"\n{'=' * 72}\n{package} {importlib.metadata.version(package)}\n")
        files = importlib.metadata.files(package) or ()
        texts = [Path(str(file.locate())) for file in files if file.name.upper().startswith(("LICENSE", "COPYING"))]
        if not texts:
            raise VendorError(f"{package} brings no license text.")
        parts += [text.read_text(encoding="utf-8") for text in texts]
    return "\n".join(parts)


def python_bundle() -> dict[str, Path]:
    """The two archives of compiled Python the page loads, by the name they have there. Raises VendorError."""
    app = {**_package_sources(PAGE_PACKAGES), **_calculator_sources()}
    check_imports(app)
    return {"stdlib.zip": _compiled(_stdlib_sources()), "app.zip": _compiled(app)}


def check_imports(app: Mapping[str, bytes]) -> None:
    """Refuse an app that imports, anywhere in it, a part of the standard library that stays behind."""
    for name, source in app.items():
        if not name.endswith(".py"):
            continue
        for statement in ast.walk(ast.parse(source, name)):
            wanted = [alias.name for alias in statement.names] if isinstance(statement, ast.Import) else []
            if isinstance(statement, ast.ImportFrom) and statement.module and not statement.level:
                wanted = [statement.module]
            for module in wanted:
                path = module.replace(".", "/")
                if f"{path}.py".startswith(STDLIB_LEFT_OUT) or f"{path}/".startswith(STDLIB_LEFT_OUT):
                    raise VendorError(f"{name} imports {module}, which STDLIB_LEFT_OUT in vendor.py leaves out.")


def _stdlib_sources() -> dict[str, bytes]:
    kept = {}
    with zipfile.ZipFile(PYODIDE / "python_stdlib.zip") as archive:
        for name in archive.namelist():
            folder, _, file = name.partition("/")
            if name.endswith("/") or name.startswith(STDLIB_LEFT_OUT):
                continue
            if folder == "encodings" and file.removesuffix(".py") not in ENCODINGS_KEPT:
                continue
            kept[name] = archive.read(name)
    return kept


def _package_sources(packages: Iterable[str]) -> dict[str, bytes]:
    """The files of installed pure Python packages: the same release that builds and tests."""
    kept = {}
    for package in packages:
        for file in importlib.metadata.files(package) or ():
            name = file.as_posix()
            if file.suffix == ".py" and not name.startswith(NOT_ON_THE_PAGE):
                kept[name] = Path(str(file.locate())).read_bytes()
    return kept


def _calculator_sources() -> dict[str, bytes]:
    files = (file for file in (REPO / "calculators").rglob("*") if file.is_file() and "__pycache__" not in file.parts)
    return {file.relative_to(REPO).as_posix(): file.read_bytes() for file in files}


def _compiled(sources: Mapping[str, bytes]) -> Path:
    """A stored zip of the sources with each ``.py`` compiled by the page's Python, made once per content."""
    packed = _pack(sources)
    runtime = (PYODIDE / "package.json").read_bytes()
    parts = (packed, runtime, BUNDLER.read_bytes(), COMPILER.read_bytes())
    key = hashlib.sha256(b"".join(hashlib.sha256(part).digest() for part in parts)).hexdigest()[:32]
    made = CACHE / f"bundle/{key}.zip"
    if not made.is_file():
        made.parent.mkdir(parents=True, exist_ok=True)
        source, unfinished = made.with_suffix(".source"), made.with_suffix(".unfinished")
        source.write_bytes(packed)
        run = subprocess.run(
            node(str(BUNDLER), str(PYODIDE), str(COMPILER), str(source), str(unfinished)),
            capture_output=True,
            text=True,
            check=False,
        )
        source.unlink()
        if run.returncode != 0:
            raise VendorError(f"The page's Python could not compile its archive:\n{run.stdout}{run.stderr}")
        unfinished.replace(made)
    return made


def _pack(sources: Mapping[str, bytes]) -> bytes:
    """A zip that depends on names and contents only."""
    packed = io.BytesIO()
    with zipfile.ZipFile(packed, "w") as archive:
        for name in sorted(sources):
            archive.writestr(zipfile.ZipInfo(name), sources[name])
    return packed.getvalue()
