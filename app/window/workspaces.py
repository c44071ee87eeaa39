"""The five rooms of the window, and which pages each holds.

A room shows one of its pages at a time; what goes ``beside`` it lies in the inspector.
The pages themselves keep their names, which the settings remember.
"""

from __future__ import annotations

from dataclasses import dataclass

from app.window.words import tr


@dataclass(frozen=True)
class Workspace:
    """One room: its name in the settings, its title with "&" before its key, its pages.

    ``beside`` names the pages that are shown in the inspector, next to the first of ``pages``.
    """

    name: str
    title: str
    pages: tuple[str, ...]
    beside: tuple[str, ...] = ()

    @property
    def plain(self) -> str:
        """The title without the mark of its key."""
        return self.title.replace("&", "")

    @property
    def behind(self) -> tuple[str, ...]:
        """Every page of it but the first, to which the room's own key leads."""
        return self.every[1:]

    @property
    def every(self) -> tuple[str, ...]:
        """Every page of it, those of the inspector last."""
        return (*self.pages, *self.beside)


def make_workspaces() -> tuple[Workspace, ...]:
    """Return the rooms in the order of their keys, Ctrl+1 to Ctrl+5."""
    return (
        Workspace("tonight", tr("&Tonight"), ("tonight", "drying")),
        Workspace("plan", tr("&Plan"), ("timeline",), ("what if", "wishes")),
        Workspace("models", tr("&Models"), ("build", "stack", "sequences", "logbook")),
        Workspace("paints", tr("Pai&nts"), ("stock", "shopping", "room")),
        Workspace("bench", tr("&Bench"), ("bench time", "gear")),
    )


def keys_of_pages(workspaces: tuple[Workspace, ...]) -> dict[str, str]:
    """Return the key of every page from wherever one is: its room's, or Ctrl+Shift and a digit."""
    keys = {room.pages[0]: f"Ctrl+{at}" for at, room in enumerate(workspaces, start=1)}
    behind = [name for room in workspaces for name in room.behind]
    keys |= {name: f"Ctrl+Shift+{at}" for at, name in enumerate(behind, start=1) if at < 10}
    return keys
