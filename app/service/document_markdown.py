"""A document as Markdown (CommonMark, with the tables that most readers know)."""

from __future__ import annotations

import re
from base64 import b64encode

from app.service.document import (
    Block,
    Document,
    DocumentTable,
    Figure,
    Heading,
    ListItems,
    Paragraph,
)
from app.service.sanitize_text import tame

# CommonMark 0.31, section 2.4: any ASCII punctuation may be escaped by a backslash. These
# begin something, or could be read as an address by readers that make links of addresses.
MEANS_SOMETHING = re.compile(r"([\\`*_{}\[\]()<>#|~!&@^$=]|:(?=//)|(?<=www)\.)", re.IGNORECASE)
BEGINS_SOMETHING = re.compile(r"^(\d+(?=\.(\s|$)))?([-+.])")


def markdown_of(document: Document) -> bytes:
    """Return the document, in UTF-8."""
    blocks = [f"# {_line(document.title)}", *(_block(block) for block in document.blocks)]
    return ("\n\n".join(blocks) + "\n").encode()


def _block(block: Block) -> str:
    if isinstance(block, Heading):
        return f"{'#' * block.level} {_line(block.text)}"
    if isinstance(block, Paragraph):
        return "\\\n".join(_line(line) for line in tame(block.text).split("\n") if line.strip())
    if isinstance(block, ListItems):
        return "\n".join(f"- {_line(text)}" for text in block.texts)
    if isinstance(block, DocumentTable):
        return _table(block)
    return _figure(block)


def _table(table: DocumentTable) -> str:
    lines = [_row(table.head), "|" + "---|" * len(table.head), *map(_row, table.rows)]
    return f"*{_line(table.caption)}*\n\n" + "\n".join(lines)


def _row(cells: tuple[str, ...]) -> str:
    return "| " + " | ".join(map(_line, cells)) + " |"


def _figure(figure: Figure) -> str:
    data = b64encode(figure.data).decode()
    return f"![{_line(figure.caption)}](data:{figure.kind};base64,{data})"


def _line(text: str) -> str:
    """Return one line of text that means nothing but itself."""
    plain = " ".join(tame(text, lines=False).split())
    escaped = MEANS_SOMETHING.sub(r"\\\1", plain)
    return BEGINS_SOMETHING.sub(lambda begun: f"{begun[1] or ''}\\{begun[3]}", escaped)
