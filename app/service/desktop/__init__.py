"""Tackfree among the programs of a desktop: menu entry, icon, file types, by the XDG folders.

Files and folders follow the XDG Base Directory, Desktop Entry, Icon Theme and
Shared MIME-info specifications.  All of it lies in the person's own data
folder, and `remove` takes away what `install` put there.
"""

from __future__ import annotations

import os
import shutil
import subprocess
import sys
from collections.abc import Iterator
from dataclasses import dataclass
from importlib import resources
from pathlib import Path
from typing import Final

from app.service.books import write_whole
from planner.values.message import message
from planner.values.refusal import Refused

ENTRY: Final = "tackfree.desktop"
ICON: Final = Path(__file__).with_name("tackfree.svg")
PLACES: Final = {  # each file of this folder, and where it goes below the data folder
    ENTRY: f"applications/{ENTRY}",
    "tackfree.svg": "icons/hicolor/scalable/apps/tackfree.svg",
    "tackfree.xml": "mime/packages/tackfree.xml",
    "tackfree.metainfo.xml": "metainfo/tackfree.metainfo.xml",
}
CACHES: Final = (  # programs that make the desktop read the folders anew, and which folder
    ("update-mime-database", "mime", "shared-mime-info"),
    ("update-desktop-database", "applications", "desktop-file-utils"),
)
_QUOTED: Final = '"`$\\'  # what a quoted argument of Exec escapes


@dataclass(frozen=True)
class DesktopChange:
    """Files written or taken away, and what else is to be done, each a line."""

    files: tuple[Path, ...]
    left: tuple[str, ...] = ()


def data_folder() -> Path:
    """Return the person's own data folder: ``$XDG_DATA_HOME`` where it is an absolute path."""
    named = Path(os.environ.get("XDG_DATA_HOME", ""))
    return named if named.is_absolute() else Path.home() / ".local" / "share"


def install() -> DesktopChange:
    """Put menu entry, icon, file types and description where the desktop looks for them.

    Raises
    ------
    Refused
        If this system has no such folders, or a file cannot be written.
    """
    _demand_xdg()
    made = []
    for name, target in targets():
        data = resources.files(__name__).joinpath(name).read_bytes()
        try:
            target.parent.mkdir(parents=True, exist_ok=True)
        except OSError as problem:
            why = problem.strerror or type(problem).__name__
            raise Refused(
                str(target.parent), message("cannot be made ({why}); look at it", why=why)
            ) from problem
        write_whole(target, started_here(data) if name == ENTRY else data)
        made.append(target)
    return DesktopChange(tuple(made), tuple(_told_the_desktop()))


def remove() -> DesktopChange:
    """Take away what `install` put there, and the folders that are empty then.

    Raises
    ------
    Refused
        If a file cannot be taken away.
    """
    _demand_xdg()
    gone = []
    for _, target in targets():
        try:
            target.unlink()
        except FileNotFoundError:
            continue
        except OSError as problem:
            why = problem.strerror or type(problem).__name__
            raise Refused(
                str(target), message("cannot be removed ({why}); look at it", why=why)
            ) from problem
        gone.append(target)
    left = tuple(_told_the_desktop()) if gone else ()
    for target in gone:
        _drop_empty(target.parent)
    return DesktopChange(tuple(gone), left)


def targets() -> Iterator[tuple[str, Path]]:
    """Yield the name of each file and where it goes."""
    for name, place in PLACES.items():
        yield name, data_folder() / place


def started_here(entry: bytes) -> bytes:
    """Return the menu entry with the command of this very installation in it."""
    command = _command()
    lines = entry.decode().splitlines()
    for at, line in enumerate(lines):
        if line.startswith("Exec="):
            rest = line.partition(" ")[2]
            lines[at] = f"Exec={' '.join(map(_quoted, command))} {rest}"
        elif line.startswith("TryExec="):
            lines[at] = f"TryExec={_string(command[0])}"
    return ("\n".join(lines) + "\n").encode()


def _command() -> list[str]:
    """Return what starts this installation: its script, or its interpreter with the package."""
    script = Path(sys.executable).with_name("tackfree")
    return [str(script)] if script.is_file() else [sys.executable, "-m", "app"]


def _string(text: str) -> str:
    """Write a value of type string, in which a backslash stands for itself only when doubled."""
    return text.replace("\\", "\\\\")


def _quoted(argument: str) -> str:
    """Write one argument of Exec: quoted, its own escapes, then those of a string."""
    inner = "".join(f"\\{sign}" if sign in _QUOTED else sign for sign in argument)
    return _string(f'"{inner}"'.replace("%", "%%"))


def _told_the_desktop() -> Iterator[str]:
    """Let the desktop read its folders anew; yield what cannot be done here."""
    for program, folder, package in CACHES:
        target = data_folder() / folder
        if not target.is_dir():
            continue
        found = shutil.which(program)
        if found is None:
            yield f"{program} is not there (Debian: {package}): it takes effect at the next login"
        elif subprocess.run([found, str(target)], capture_output=True, check=False).returncode:  # noqa: S603
            yield f"{program} {target} failed; run it by hand to see why"


def _drop_empty(folder: Path) -> None:
    """Remove a folder and those above it, up to the data folder, as far as they are empty."""
    top = data_folder()
    while folder != top and top in folder.parents:
        try:
            folder.rmdir()
        except OSError:
            return
        folder = folder.parent


def _demand_xdg() -> None:
    if sys.platform in ("win32", "darwin"):
        raise Refused(
            "", "desktop entries are for Linux and its like; here, link to the command yourself"
        )
