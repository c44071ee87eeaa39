"""What the bench mode keeps over a restart that no logbook holds: what each cup was filled with.

The logbook says what was sprayed, and when a cup was cleaned; that it was
filled meanwhile stands here.  Kept in the settings, for each book on its own.
"""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

from PySide6.QtCore import QSettings


class Memory:
    """Small facts about the table, written down at once.

    ``book`` tells one book's facts from another's.
    """

    def __init__(self, settings: QSettings, book: Path | None) -> None:
        self._settings = settings
        self._name = f"bench/{book}"
        self._facts = _read(settings.value(self._name))

    def fills(self, evening: int) -> dict[str, tuple[str, int]]:
        """Return what fills each airbrush in the stretch that began at ``evening``, and since when.

        A cup was cleaned when its stretch was over (definition 15).
        """
        mine = self._facts.get("cups", {})
        return {
            name: (held, at[0] if at else since)
            for name, (held, since, *at) in mine.items()
            if since == evening
        }

    def fill(self, airbrush: str, coating: str, evening: int, at: int) -> None:
        """Remember that an airbrush holds a coating since a minute; "" once it is clean."""
        cups = dict(self._facts.get("cups", {}))
        cups[airbrush] = (coating, evening, at)
        if not coating:
            del cups[airbrush]
        self._write("cups", cups)

    def prepared(self, evening: int) -> frozenset[str]:
        """Return the passes for which a film was prepared in this stretch."""
        names, since = self._facts.get("prepared", ((), evening))
        return frozenset(names) if since == evening else frozenset()

    def prepare(self, name: str, evening: int, *, on: bool = True) -> None:
        """Remember that a film was prepared for a pass, or not after all."""
        known = self.prepared(evening)
        known = known | {name} if on else known - {name}
        self._write("prepared", (sorted(known), evening))

    def checked(self, evening: int) -> frozenset[str]:
        """Return what was ticked off when the table was left."""
        names, since = self._facts.get("checked", ((), evening))
        return frozenset(names) if since == evening else frozenset()

    def check(self, names: frozenset[str], evening: int) -> None:
        """Remember what is ticked off of the closing check."""
        self._write("checked", (sorted(names), evening))

    @property
    def text(self) -> str:
        """All of it as one text, to be set again when a deed is taken back."""
        return json.dumps(self._facts)

    @text.setter
    def text(self, text: str) -> None:
        self._facts = _read(text)
        self._keep()

    def _write(self, name: str, value: object) -> None:
        self._facts[name] = value
        self._keep()

    def _keep(self) -> None:
        self._settings.setValue(self._name, self.text)
        self._settings.sync()


def _read(saved: object) -> dict[str, Any]:
    try:
        facts = json.loads(str(saved or "{}"))
    except ValueError:
        return {}  # nothing worth a word is lost: the cups are looked at
    return facts if isinstance(facts, dict) else {}
