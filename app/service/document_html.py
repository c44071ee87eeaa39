"""A document as one HTML page that needs nothing but itself: no script, no link, no network."""

from __future__ import annotations

from base64 import b64encode
from collections.abc import Iterable, Iterator
from html import escape
from itertools import groupby, zip_longest

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

# Nothing may be loaded or run, whatever stands in the text.
POLICY = "default-src 'none'; img-src data:; style-src 'unsafe-inline'"
STYLE = """\
:root { color-scheme: light dark; --ink: #25211c; --paper: #fefcf7; --rule: #d6cdbc; }
@media (prefers-color-scheme: dark) {
  :root { --ink: #ede8dd; --paper: #222527; --rule: #3c4043; }
}
body { margin: 2rem auto; padding: 0 1rem; max-width: 62rem; color: var(--ink);
  background: var(--paper); font: 1rem/1.5 system-ui, sans-serif; overflow-wrap: anywhere; }
h1, h2, h3 { line-height: 1.2; } h2 { border-bottom: 1px solid var(--rule); margin-top: 2.5rem; }
table { border-collapse: collapse; width: 100%; margin: .5rem 0 1rem; }
caption { text-align: left; font-style: italic; }
th, td { overflow-wrap: break-word; max-width: 22rem; }
th, td { border-bottom: 1px solid var(--rule); padding: .3rem .6rem .3rem 0;
  text-align: left; vertical-align: top; }
p, td { white-space: pre-line; }
.photos { display: grid; gap: 1rem; grid-template-columns: repeat(auto-fill, minmax(14rem, 1fr)); }
figure { margin: 0; } img { max-width: 100%; height: auto; }
.swatch { display: inline-block; width: 1.4em; height: 1.4em; border-radius: 50%;
  border: 1px solid #857b6b; margin-right: .5em; vertical-align: -.3em; }
.faces { display: grid; gap: .5rem 1rem;
  grid-template-columns: repeat(auto-fill, minmax(11rem, 1fr)); }
figcaption { font-size: .9rem; }
h1 + p, h2 + p { margin-top: .25rem; }
@media print {
  :root { color-scheme: light; --ink: #000; --paper: #fff; --rule: #999; }
  body { max-width: none; margin: 0; font-size: 10pt; }
  .swatch { print-color-adjust: exact; -webkit-print-color-adjust: exact; }
  tr, figure { break-inside: avoid; } h2, h3, caption { break-after: avoid; }
  thead { display: table-header-group; }
}
"""


def html_of(document: Document, language: str = "en") -> bytes:
    """Return the page, in UTF-8; ``language`` is that of the document's text (BCP 47)."""
    title = _text(document.title)
    body = "\n".join(_blocks(document.blocks))
    page = (
        f'<!DOCTYPE html>\n<html lang="{escape(language)}">\n<head>\n<meta charset="utf-8">\n'
        f'<meta http-equiv="Content-Security-Policy" content="{escape(POLICY)}">\n'
        '<meta name="viewport" content="width=device-width, initial-scale=1">\n'
        '<meta name="generator" content="Tackfree">\n'
        f"<title>{escape(tame(document.title, lines=False))}</title>\n"
        f"<style>\n{STYLE}{_rules(document)}</style>\n</head>\n<body>\n<h1>{title}</h1>\n{body}\n</body>\n</html>\n"
    )
    return page.encode()


def _blocks(blocks: Iterable[Block]) -> Iterator[str]:
    """Yield every block; photos that follow each other are laid out side by side."""
    for grid, group in groupby(blocks, _grid):
        told = [_block(block) for block in group]
        yield "\n".join([f'<div class="{grid}">', *told, "</div>"] if grid else told)


def _grid(block: Block) -> str:
    if not isinstance(block, Figure):
        return ""
    return "faces" if block.small else "photos"


def _block(block: Block) -> str:
    if isinstance(block, Heading):
        return f"<h{block.level}>{_text(block.text)}</h{block.level}>"
    if isinstance(block, Paragraph):
        return f"<p>{_text(block.text)}</p>"
    if isinstance(block, ListItems):
        points = "\n".join(f"<li>{_text(text)}</li>" for text in block.texts)
        return f"<ul>\n{points}\n</ul>"
    if isinstance(block, DocumentTable):
        return _table(block)
    return _figure(block)


def _table(table: DocumentTable) -> str:
    head = "".join(f'<th scope="col">{_text(cell)}</th>' for cell in table.head)
    dabs = map(_dab, table.swatches)
    rows = "\n".join(
        "<tr>" + "".join(_cells(cells, dab, table.swatched)) + "</tr>"
        for dab, cells in zip_longest(dabs, table.rows, fillvalue="")
    )
    return (
        f"<table>\n<caption>{_text(table.caption)}</caption>\n"
        f"<thead><tr>{head}</tr></thead>\n<tbody>\n{rows}\n</tbody>\n</table>"
    )


def _cells(cells: Iterable[str], dab: str, swatched: int) -> Iterator[str]:
    for at, cell in enumerate(cells):
        yield f"<td>{dab if at == swatched else ''}{_text(cell)}</td>"


def _dab(swatch: str) -> str:
    return f'<span class="swatch c{escape(swatch[1:])}"></span>' if swatch else ""


def _rules(document: Document) -> str:
    """Return a rule for each colour of the document: no element has a style of its own."""
    tables = [block for block in document.blocks if isinstance(block, DocumentTable)]
    swatches = dict.fromkeys(swatch for table in tables for swatch in table.swatches if swatch)
    return "".join(
        f".c{escape(swatch[1:])} {{ background: {escape(swatch)}; }}\n" for swatch in swatches
    )


def _figure(figure: Figure) -> str:
    data = b64encode(figure.data).decode()
    caption = escape(tame(figure.caption, lines=False))
    return (
        f'<figure>\n<img src="data:{figure.kind};base64,{data}" alt="{caption}">\n'
        f"<figcaption>{_text(figure.caption)}</figcaption>\n</figure>"
    )


def _text(text: str) -> str:
    """Return text escaped, and kept from turning the writing around it about."""
    return f"<bdi>{escape(tame(text))}</bdi>" if text else ""
