"""Draws a bench sheet: ``python -m app.window.sheet FOLDER PAPER LANGUAGE [tonight]``.

The folder holds the book and its plan; see `app.service.bench_sheet_file`.
"""

from __future__ import annotations

import sys
from pathlib import Path

from app.service.bench_sheet_file import BOOK, DRAWN, PLAN, SHEET, Paper


def main(folder: Path, paper: Paper, spoken: str, *, tonight: bool) -> None:
    """Draw the sheet beside the book."""
    from PySide6.QtCore import QLocale  # noqa: PLC0415
    from PySide6.QtGui import QFontDatabase, QGuiApplication  # noqa: PLC0415

    from app.window import language  # noqa: PLC0415
    from app.window.sheet.pdf_pages import draw_sheet  # noqa: PLC0415
    from storage.exchange import load, load_plan  # noqa: PLC0415

    app = QGuiApplication([])
    if not QFontDatabase.families():
        sys.exit("there is no font to write with")
    language.speak(app, QLocale(spoken))
    book = load((folder / BOOK).read_bytes()).book
    plan = load_plan((folder / PLAN).read_bytes())
    draw_sheet(folder / SHEET, book, plan, plan.now, paper, tonight=tonight)
    del app
    sys.stdout.write(f"{DRAWN}\n")


if __name__ == "__main__":
    main(Path(sys.argv[1]), Paper(sys.argv[2]), sys.argv[3], tonight="tonight" in sys.argv[4:])
