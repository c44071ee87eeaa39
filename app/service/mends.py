"""Mends of several findings as one edit."""

from __future__ import annotations

from collections.abc import Iterable

from app.service.edits import Edit
from planner.layers.finding import Finding
from planner.values.book import Book
from planner.values.message import called


def mended(book: Book, findings: Iterable[Finding]) -> Edit:
    """Return the book with the mends of some findings, one after the other."""
    mends = [finding.mend for finding in findings if finding.mend is not None]
    new = book
    for mend in mends:
        new = mend.apply(new)
    return Edit(called("mend {n} findings", n=len(mends)), new)
