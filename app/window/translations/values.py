"""Words that are values elsewhere and are shown to people: the contexts that they have.

A text in the source of the window is found there; what is shown by
``QCoreApplication.translate(context, value)`` can only be listed.
"""

from __future__ import annotations

from collections.abc import Iterable
from itertools import product

from app.window.translations.enumerations import ENUMERATIONS
from app.window.translations.spoken import texts_said
from planner.cautions import LAST_WORD, WRITTEN
from planner.cure.family_times import family_figure
from planner.evening.looks import LookFor
from planner.layers.table import TABLE, Below, Next
from planner.sequences.built_in import ALL
from planner.values.coating import Family, Finish, State
from planner.values.project import Event
from planner.values.wishes import Level


def values_shown() -> dict[str, list[str]]:
    """Return all values that are shown as words, by context."""
    found = {
        context: [one.value for kind in kinds for one in kind]
        for context, kinds in ENUMERATIONS.items()
    }
    found["sequence"] = [text for one in ALL for text in (one.name, one.note)]
    found["option"] = [
        text for one in ALL for each in one.options for text in (each.name, each.choice, each.note)
    ]
    found["colour"] = [
        text for one in ALL for each in one.colours for text in (each.name, each.note)
    ]
    found["step"] = [each.step.title for one in ALL for each in one.steps]
    found["said"] = [*texts_said(), *_tables()]
    # The last word on cautions stands in two views.
    found["TonightView"] = found["words"] = [LAST_WORD]
    return {context: _once(texts) for context, texts in found.items()}


def _tables() -> Iterable[str]:
    """Yield what stands in tables of the planner, written there as plain text."""
    for line in TABLE:
        yield from (line.reason, line.source)
    yield from (one.value for kind in (Next, Below, Event, Level, LookFor) for one in kind)
    for caution in WRITTEN:
        yield from (caution.text, caution.source)
    for family, finish, state in product(Family, Finish, State):
        yield family_figure(family, finish, state).source


def _once(texts: Iterable[str]) -> list[str]:
    return list(dict.fromkeys(text for text in texts if text))
