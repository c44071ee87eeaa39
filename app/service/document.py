"""A document of headings, paragraphs, tables, lists and photos, before it is written as any format.

All text in it is plain; whoever writes it out escapes it.
"""

from __future__ import annotations

from dataclasses import dataclass, replace

from planner.values.message import Translate


@dataclass(frozen=True)
class Heading:
    """A heading of level 2 to 4; the title of the document is the only one of level 1."""

    level: int
    text: str


@dataclass(frozen=True)
class Paragraph:
    """Some text; line breaks in it are kept."""

    text: str


@dataclass(frozen=True)
class DocumentTable:
    """Rows under a head; ``caption`` says what they are.

    ``swatches`` are the colours of the rows as "#rrggbb", "" for none, where they have any;
    each stands before the cell of the column ``swatched``.
    """

    caption: str
    head: tuple[str, ...]
    rows: tuple[tuple[str, ...], ...]
    swatches: tuple[str, ...] = ()
    swatched: int = 0


@dataclass(frozen=True)
class ListItems:
    """A list of points."""

    texts: tuple[str, ...]


@dataclass(frozen=True)
class Figure:
    """A photo or drawing and what is said under it; ``kind`` is its media type.

    A ``small`` one stands in a grid of small ones.
    """

    data: bytes
    kind: str
    caption: str
    small: bool = False


Block = Heading | Paragraph | DocumentTable | ListItems | Figure


@dataclass(frozen=True)
class Document:
    """The whole of it."""

    title: str
    blocks: tuple[Block, ...]


def translated_document(document: Document, translate: Translate) -> Document:
    """Return a document all of whose texts have been put through ``translate``."""
    blocks = tuple(_translated(block, translate) for block in document.blocks)
    return Document(translate(document.title), blocks)


def _translated(block: Block, translate: Translate) -> Block:
    if isinstance(block, Heading | Paragraph):
        return replace(block, text=translate(block.text))
    if isinstance(block, ListItems):
        return ListItems(tuple(map(translate, block.texts)))
    if isinstance(block, Figure):
        return replace(block, caption=translate(block.caption))
    return DocumentTable(
        caption=translate(block.caption),
        head=tuple(map(translate, block.head)),
        rows=tuple(tuple(map(translate, row)) for row in block.rows),
        swatches=block.swatches,
        swatched=block.swatched,
    )
