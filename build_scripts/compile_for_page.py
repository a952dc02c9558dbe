"""Compiles an archive of Python sources. Runs inside the page's Python, started by ``bundle_runtime.mjs``.

The result is a stored (uncompressed) zip in name order with fixed dates. Its ``.pyc`` files are never checked
against a source: there is none on the page.
"""

import importlib.util
import io
import marshal
import zipfile

UNCHECKED_HASH_BASED = (1).to_bytes(4, "little")


def compiled(source: bytes) -> bytes:
    """The archive with every ``.py`` replaced by its ``.pyc``; other files stay as they are."""
    made = io.BytesIO()
    with zipfile.ZipFile(io.BytesIO(source)) as sources, zipfile.ZipFile(made, "w") as archive:
        for name in sorted(sources.namelist()):
            data = sources.read(name)
            if name.endswith(".py"):
                code = marshal.dumps(compile(data, name, "exec", dont_inherit=True))
                header = importlib.util.MAGIC_NUMBER + UNCHECKED_HASH_BASED + importlib.util.source_hash(data)
                archive.writestr(zipfile.ZipInfo(name + "c"), header + code)
            else:
                archive.writestr(zipfile.ZipInfo(name), data)
    return made.getvalue()
