"""Read the case files: reference cases with their citation, and regression cases kept apart from them."""

from __future__ import annotations

import tomllib
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

HERE = Path(__file__).parent
MARKS = ("published", "computed", "second-hand", "common practice", "from memory")


@dataclass(frozen=True)
class Case:
    """A question to a calculator with the answer somebody outside this project gives, and how near we must come."""

    slug: str
    name: str
    fields: dict[str, str]
    source: str = ""
    mark: str = ""
    expect: dict[str, Any] = field(default_factory=dict)
    within: dict[str, float] = field(default_factory=dict)
    says: dict[str, str] = field(default_factory=dict)

    def __str__(self) -> str:
        return f"{self.slug}: {self.name}"


def read(folder: str, kind: str) -> list[Case]:
    """All cases of a kind (``case`` or ``refusal``) in ``tests/<folder>/*.toml``; the file's name is the slug."""
    found = []
    for path in sorted((HERE / folder).glob("*.toml")):
        for row in tomllib.loads(path.read_text(encoding="utf-8")).get(kind, []):
            found.append(Case(slug=path.stem, **row))
    return found
