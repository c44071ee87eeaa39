"""What a start loads: nothing heavy before it is needed, whatever was typed.

Libraries that take long to load are named here; what each command may load of
them is written beside it, and so is what the window may before it is painted.
"""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path

import pytest

from app.service import demos

HEAVY = {
    *("PySide6", "sqlalchemy", "alembic", "sqlite3", "networkx", "icalendar", "msgspec"),
    *("ortools", "numpy", "pandas", "asyncio", "email", "importlib.metadata", "multiprocessing"),
}
TYPED = """
import contextlib, io, sys
from app.entry import main
with contextlib.redirect_stdout(io.StringIO()):
    main(sys.argv[1:])
print(*sys.modules)
"""
AT = ("--now", "2026-03-02T18:00")


def loaded(*words: str) -> set[str]:
    """Return the modules that a fresh process has loaded in the end."""
    said = subprocess.check_output([sys.executable, "-c", *words], text=True)
    return set(said.split())


@pytest.mark.parametrize(
    ("command", "may"),
    [
        (("cure", "--family", "waterborne acrylic"), set()),
        (("tonight", "FILE", *AT), {"msgspec"}),  # which reads the file
        (("check", "FILE"), {"msgspec"}),
        (("shop", "FILE", *AT), {"msgspec"}),
        (("plan", "FILE", *AT), {"msgspec", "multiprocessing"}),  # for a search, if one is asked
    ],
)
def test_a_command_loads_no_more_than_it_needs(
    tmp_path: Path, command: tuple[str, ...], may: set[str]
) -> None:
    file = tmp_path / "lamplighter.json"
    file.write_bytes(demos.data("lone_lamplighter"))
    words = [str(file) if word == "FILE" else word for word in command]
    assert loaded(TYPED, *words) & HEAVY <= may


def test_the_window_loads_no_more_than_it_is_painted_with() -> None:
    """The database, the planner's rules and judge, help and notices come later, when needed."""
    modules = loaded("import sys, app.entry, app.window.start; print(*sys.modules)")
    assert modules & HEAVY <= {"PySide6", "multiprocessing"}
    later = {
        *("app.window.help_pages", "app.window.last_edits", "app.window.drying.notifier"),
        *(
            "planner.schedule.greedy",
            "planner.schedule.judge",
            "planner.evening",
            "planner.tonight",
        ),
        *("storage.bench_book", "storage.exchange"),
    }
    assert modules & later == set()
