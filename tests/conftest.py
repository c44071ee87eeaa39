"""What every test runs under: no display, an empty home, repeatable examples.

Window tests need Qt's system libraries.  Where one is missing Qt aborts the
whole process, so a child process tries first; then the window tests are
skipped with what it said.  With ``--need-window`` that is an error instead.
"""

from __future__ import annotations

import os
import shutil
import subprocess
import sys
import tempfile
from functools import cache
from pathlib import Path

import pytest
from drawn_examples import load_profile
from shared_statements import share

WINDOW_TESTS = Path(__file__).parent / "app" / "window"
OPEN_A_WINDOW = "from PySide6.QtWidgets import QApplication; QApplication([])"

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

share()


def pytest_addoption(parser: pytest.Parser) -> None:
    """Add what a longer search and CI ask for."""
    ours = parser.getgroup("tackfree")
    ours.addoption(
        "--drawn",
        type=int,
        default=0,
        metavar="N",
        help="run the drawn properties alone, with N random examples of each",
    )
    ours.addoption(
        "--need-window",
        action="store_true",
        help="fail where no window can be opened, instead of skipping its tests",
    )


@pytest.hookimpl(tryfirst=True)
def pytest_configure(config: pytest.Config) -> None:
    """Give the run a home of its own, so that no test meets the user's book."""
    asked = config.getoption("--drawn")
    load_profile(asked)
    if asked:
        config.option.timeout = 0  # so many examples take their time
    home = Path(tempfile.mkdtemp(prefix="tackfree-tests-"))
    config.add_cleanup(lambda: shutil.rmtree(home, ignore_errors=True))
    places = {"HOME": "", "USERPROFILE": "", "APPDATA": "Roaming", "LOCALAPPDATA": "Local"}
    places |= {f"XDG_{kind}_HOME": kind.lower() for kind in ("DATA", "CONFIG", "CACHE", "STATE")}
    places["XDG_RUNTIME_DIR"] = "runtime"
    for name, folder in places.items():
        (home / folder).mkdir(exist_ok=True)
        os.environ[name] = str(home / folder)


@pytest.hookimpl(trylast=True)
def pytest_collection_modifyitems(config: pytest.Config, items: list[pytest.Item]) -> None:
    """With ``--drawn`` leave only what draws; Hypothesis has marked it by now."""
    if config.getoption("--drawn"):
        other = [item for item in items if item.get_closest_marker("hypothesis") is None]
        config.hook.pytest_deselected(items=other)
        items[:] = [item for item in items if item not in other]


class WithoutQt(pytest.File):
    """Stands for the window tests where no window can be opened."""

    def collect(self) -> list[pytest.Item]:
        fault = f"no window can be opened: {qt_fault()}"
        if self.config.getoption("--need-window"):
            raise self.CollectError(fault)
        pytest.skip(fault, allow_module_level=True)


@pytest.hookimpl(tryfirst=True)
def pytest_collect_directory(path: Path, parent: pytest.Collector) -> pytest.Collector | None:
    """Collect window tests only after a child process has opened a window.

    pytest-qt imports Qt when it is loaded, so it waits for that as well.
    """
    if path != WINDOW_TESTS:
        return None
    if qt_fault():
        return WithoutQt.from_parent(parent, path=path)
    from PySide6.QtCore import QStandardPaths

    QStandardPaths.setTestModeEnabled(True)
    parent.config.pluginmanager.import_plugin("pytestqt.plugin")
    return None


@cache
def qt_fault() -> str:
    """Return why no window can be opened, or "" if one can."""
    try:
        tried = subprocess.run(
            [sys.executable, "-c", OPEN_A_WINDOW],
            env={**os.environ, "QT_QPA_PLATFORM": "offscreen"},
            capture_output=True,
            text=True,
            timeout=120,
            check=False,
        )
    except subprocess.TimeoutExpired:
        return "Qt did not start within two minutes"
    if tried.returncode == 0:
        return ""
    said = tried.stderr.strip().splitlines()
    return said[-1] if said else f"Qt ended with status {tried.returncode}"
