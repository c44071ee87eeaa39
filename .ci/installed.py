"""Whether an installed Tackfree has all that it needs: a window on a demonstration, in German.

Run it with the interpreter of the installation, from any folder but the sources'.
"""

from __future__ import annotations

import os
import tempfile
from pathlib import Path

import app
from app.service import demos, desktop
from storage.bench_book import BenchBook

SOURCES = Path(__file__).parents[1]


def main() -> None:
    """Fail with what is missing."""
    assert SOURCES not in Path(app.__file__).parents, "this is the source tree, not an installation"
    assert len(demos.names()) >= 4, "demonstrations are missing"
    for name in desktop.PLACES:
        assert Path(desktop.__file__).with_name(name).is_file(), f"{name} is missing"
    os.environ |= {"QT_QPA_PLATFORM": "offscreen", "LC_ALL": "de_DE.UTF-8"}
    from PySide6.QtCore import QTimer  # noqa: PLC0415
    from PySide6.QtWidgets import QApplication  # noqa: PLC0415

    from app.window import run  # noqa: PLC0415
    from app.window.main_window import MainWindow  # noqa: PLC0415

    qt = QApplication([])
    book = demos.read(demos.FIRST).book
    path = Path(tempfile.mkdtemp()) / "bench.tackfree"
    BenchBook.create(path, book).close()
    seen: list[str] = []

    def look() -> None:
        window = next(widget for widget in qt.topLevelWidgets() if isinstance(widget, MainWindow))
        if window.session.picture is None:
            return  # not planned yet
        seen.append(window.commands.views[0].text())
        assert not window.windowIcon().isNull(), "the icon is missing"
        window.close()

    clock = QTimer()
    clock.timeout.connect(look)
    clock.start(100)
    QTimer.singleShot(60_000, lambda: os._exit(3))
    status = run(path, demos.first_evening(book))
    assert status == 0
    assert seen == ["&Heute Abend"], f"the translation is missing: {seen}"
    print(f"installed in {Path(app.__file__).parent}: a window in German, with its icon")


if __name__ == "__main__":
    main()
