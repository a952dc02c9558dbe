"""The parts a guide must have, in their order."""

from __future__ import annotations

from collections.abc import Sequence

from .pages import Page

JOINT = (
    "What it is for", "At a glance", "Check first", "Prepare the faces", "Metal to add", "Settings", "Sequence",
    "With a pulsed arc or a torch", "Finish", "Inspect", "What goes wrong", "Strength", "Safety", "Check yourself",
    "Sources",
)  # fmt: skip
JOB = (
    "When to take this job", "Take-in", "Check first", "Work it out", "Steps", "Inspect", "What goes wrong",
    "Hand it back", "Sources",
)  # fmt: skip
FAULT = ("Is it this?", "Likely causes, in order", "Mend", "Prevent", "When to stop and start over", "Sources")
REQUIRED = {"joints": JOINT, "jobs": JOB, "faults": FAULT}

# Pages among the jobs that are no repair of one piece: nothing is taken in, inspected and handed back.
NO_REPAIR = frozenset({"jobs/scrap-and-filings.md"})


def required(page: Page) -> tuple[str, ...]:
    """The headings that this page must have."""
    return () if page.is_index or page.name in NO_REPAIR else REQUIRED.get(page.folder, ())


def faults_of_order(headings: Sequence[str], wanted: Sequence[str]) -> list[str]:
    """What is missing, double or out of order among the headings; others may stand between."""
    found = [f"the part “{one}” is missing" for one in wanted if one not in headings]
    found += [f"the part “{one}” stands there twice" for one in wanted if headings.count(one) > 1]
    there = [one for one in headings if one in wanted]
    in_order = [one for one in wanted if one in there]
    if not found and there != in_order:
        wrong = next(one for one, right in zip(there, in_order, strict=True) if one != right)
        found.append(f"the part “{wrong}” is out of order: the order is {', '.join(wanted)}")
    return found


def faults_of_opening(page: Page) -> list[str]:
    """What a guide's first screen lacks: drawings, the danger box, for a job the link to its joint."""
    found = []
    if page.folder == "joints":
        found += [f"the {box} is missing" for box in ("strip", "danger", "glance") if box not in page.boxes]
    if page.folder == "jobs":
        found += [f"the {box} is missing" for box in ("strip", "danger") if box not in page.boxes]
        if not any("/joints/" in link.href for link in page.links if not link.section):
            found.append("the line under the title names no joint with a link")
    if page.folder == "faults" and not page.pictures:
        found.append("the drawing is missing")
    return found
