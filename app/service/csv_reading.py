"""Tables that a person brings as comma-separated values: any separator, any usual encoding.

Whatever is refused is refused by its line, and by its column where that is
known.  A line is that of the file, as an editor counts it.
"""

from __future__ import annotations

import codecs
import csv
import io
import re
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass

from planner.values.message import Message, message
from planner.values.refusal import Refused, demand

MOST_BYTES = 20_000_000
MOST_ROWS = 200_000
MOST_COLUMNS = 200
MOST_CELL = 2_000
SEPARATORS = (";", "\t", ",", "|")
SAMPLE = 20  # lines by which the separator is told
_MARKS = (
    (codecs.BOM_UTF8, "utf-8-sig"),
    (codecs.BOM_UTF32_LE, "utf-32"),
    (codecs.BOM_UTF32_BE, "utf-32"),
    (codecs.BOM_UTF16_LE, "utf-16"),
    (codecs.BOM_UTF16_BE, "utf-16"),
)
_NUMBER = re.compile(r"[+-]?(?:\d+(?:[.,]\d*)?|[.,]\d+)")


@dataclass(frozen=True)
class TableRow:
    """The cells of one line."""

    line: int
    cells: tuple[str, ...]

    def cell(self, column: int | None) -> str:
        """Return a cell without blanks around it; "" where the line is too short for it."""
        if column is None or column >= len(self.cells):
            return ""
        return self.cells[column].strip()


@dataclass(frozen=True)
class Table:
    """Lines of a file, and what stood between their cells."""

    rows: tuple[TableRow, ...]
    separator: str


def spot(line: int, column: str = "") -> Message:
    """Return where in a file something is, in words."""
    if not column:
        return message("line {line}", line=line)
    return message('line {line}, column "{column}"', line=line, column=column)


def read_table(data: bytes) -> Table:
    """Read bytes as a table.

    Raises
    ------
    Refused
        If they are no text, no table, or far larger than one that a person keeps.
    """
    demand(len(data) <= MOST_BYTES, "", message("is larger than 20 MB; give a part of it"))
    text = _text(data)
    nul = text.find("\0")
    if nul >= 0:
        line = text.count("\n", 0, nul) + 1
        raise Refused(spot(line), message("holds a zero byte; this is no text"))
    separator = _separator(text)
    rows = tuple(_rows(text, separator))
    demand(bool(rows), "", message("is empty; give a table with a line for each entry"))
    return Table(rows, separator)


def is_table(data: bytes) -> bool:
    """Tell whether bytes are a table and no exchange file, archive or book, by how they begin."""
    head = data[:200].lstrip(b"\xef\xbb\xbf \t\r\n")
    return bool(data) and not head.startswith((b"{", b"[", b"PK\x03\x04", b"SQLite"))


def column_of(
    header: TableRow, names: Mapping[str, Sequence[str]], line: int = 0
) -> dict[str, int]:
    """Return at which column each thing stands, by what people call it.

    Parameters
    ----------
    names
        What is sought, each with what a heading may begin with, in small letters.

    Raises
    ------
    Refused
        If two columns are called alike.
    """
    found: dict[str, int] = {}
    for number, cell in enumerate(header.cells):
        told = cell.strip().casefold()
        for name, words in names.items():
            if told and any(told.startswith(word) for word in words):
                if name in found:
                    mend = message(
                        "is there twice, as “{first}” and “{second}”; rename one",
                        first=header.cells[found[name]].strip()[:60],
                        second=cell.strip()[:60],
                    )
                    raise Refused(spot(line or header.line, name), mend)
                found[name] = number
                break
    return found


def number(text: str, line: int, column: str) -> float:
    """Return a number that is written with a point or a comma before its fraction.

    Raises
    ------
    Refused
        If it is none.
    """
    plain = text.strip().replace("\u2212", "-").replace("\u00a0", "")
    if not _NUMBER.fullmatch(plain) or len(plain) > 30:
        raise Refused(spot(line, column), no_number(text))
    return float(plain.replace(",", "."))


def no_number(text: str) -> Message:
    """Return the sentence about something that is no number."""
    if not text.strip():
        return message("is empty; write a number")
    return message("“{text}” is no number; write it as 12.5 or 12,5", text=shown(text))


def shown(text: str) -> str:
    """Return text of a file that is short enough to be told, without control characters."""
    plain = "".join(sign if sign.isprintable() else " " for sign in text.strip())
    return plain if len(plain) <= 40 else f"{plain[:39]}…"


def _text(data: bytes) -> str:
    """Return bytes as text: by their mark, else as UTF-8, else as Windows writes it."""
    for mark, encoding in _MARKS:
        if data.startswith(mark):
            try:
                return data.decode(encoding)
            except UnicodeDecodeError as problem:
                raise Refused("", _no_text(problem)) from problem
    try:
        return data.decode("utf-8")
    except UnicodeDecodeError as problem:
        line = data.count(b"\n", 0, problem.start) + 1
        try:
            return data.decode("cp1252")
        except UnicodeDecodeError:
            raise Refused(spot(line), _no_text(problem)) from problem


def _no_text(_problem: UnicodeDecodeError) -> Message:
    return message("is no text; save the table as CSV in UTF-8")


def _separator(text: str) -> str:
    """Return what parts the first lines into the most cells, the same number in each."""
    lines = [line[:MOST_CELL] for line in text.splitlines()[:SAMPLE] if line.strip()]
    best, most = ",", 0
    for separator in SEPARATORS:
        counts = [len(cells) for cells in csv.reader(lines, delimiter=separator)]
        usual = max(counts, key=lambda count: (counts.count(count), count)) if counts else 0
        alike = counts.count(usual) * 2 >= len(counts)
        if alike and usual > max(most, 1):
            best, most = separator, usual
    return best


def _rows(text: str, separator: str) -> Iterator[TableRow]:
    reader = csv.reader(io.StringIO(text, newline=""), delimiter=separator, strict=True)
    begun, count = 1, 0
    while True:
        try:
            cells = next(reader)
        except StopIteration:
            return
        except csv.Error as problem:
            mend = message("cannot be read as a table: a quotation mark stands wrong, or is open")
            raise Refused(spot(reader.line_num), mend) from problem
        if any(cell.strip() for cell in cells):
            count += 1
            _bounded(cells, begun, count)
            yield TableRow(begun, tuple(cells))
        begun = reader.line_num + 1


def _bounded(cells: Sequence[str], line: int, count: int) -> None:
    demand(
        count <= MOST_ROWS,
        spot(line),
        message("is one of more than {most} lines; give a part of them", most=MOST_ROWS),
    )
    demand(len(cells) <= MOST_COLUMNS, spot(line), message("has far more cells than a table has"))
    demand(
        all(len(cell) <= MOST_CELL for cell in cells),
        spot(line),
        message("has a cell that is far too long; is a quotation mark open?"),
    )
