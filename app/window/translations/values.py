"""Words that are values elsewhere and are shown to people: the contexts that they have.

A text in the source of the window is found there; what is shown by
``QCoreApplication.translate(context, value)`` can only be listed.
"""

from __future__ import annotations

from collections.abc import Iterable
from itertools import product

from app.service.begun_models import BEFORE
from app.service.books import AIRBRUSH, BENCH
from app.service.first_run import HANDLE
from app.service.merging import word_and_unit
from app.service.order_changes import OWN_ORDER
from app.service.painted_again import AS_PAINTED
from app.service.starter_stock import NAMES
from app.service.warm_box import WARM_BOX
from app.window.translations.enumerations import ENUMERATIONS
from app.window.translations.planner_texts import texts_said
from planner.cautions import LAST_WORD, WRITTEN
from planner.cure.family_times import family_figure
from planner.evening.looks import LookFor
from planner.layers.overcoat_table import TABLE, Below, Next
from planner.quantity.usual_models import usual_names
from planner.sequences.built_in import ALL
from planner.sequences.references import ALSO_CALLED
from planner.values.coating import Coating, Family, Finish, State
from planner.values.field import fields_of, values_within
from planner.values.mix import Mix
from planner.values.plan import BenchKind
from planner.values.project import Event, Project
from planner.values.sequence import Sequence
from planner.values.wishes import Level


def values_shown() -> dict[str, list[str]]:
    """Return all values that are shown as words, by context."""
    found = {
        context: [str_enum.value for kind in kinds for str_enum in kind]
        for context, kinds in ENUMERATIONS.items()
    }
    found["sequence"] = [text for sequence in ALL for text in (sequence.name, sequence.note)]
    found["option"] = [
        text
        for sequence in ALL
        for each in sequence.options
        for text in (each.name, each.choice, each.note)
    ]
    found["colour"] = [
        text for sequence in ALL for each in sequence.colours for text in (each.name, each.note)
    ]
    found["given name"] = [
        *NAMES,
        BENCH,
        AIRBRUSH,
        WARM_BOX.name,
        HANDLE,
        *usual_names(),
        OWN_ORDER,
        BEFORE,
        AS_PAINTED,
    ]
    found["part"] = list(ALSO_CALLED)
    found["step"] = [each.step.title for sequence in ALL for each in sequence.steps]
    found["said"] = [*texts_said(), *_tables()]
    # The last word on cautions stands in two views.
    found["TonightView"] = found["words"] = [LAST_WORD]
    return {context: _once(texts) for context, texts in found.items()}


def _tables() -> Iterable[str]:
    """Yield what stands in tables of the planner, written there as plain text."""
    for line in TABLE:
        yield from (line.reason, line.source)
    for compared in (Coating, Mix, Project, Sequence):
        for kind in values_within(compared):
            for name in fields_of(kind):
                yield word_and_unit(kind, name)[0]
    yield from (
        bench_kind.value
        for kind in (Next, Below, Event, Level, LookFor, BenchKind)
        for bench_kind in kind
    )
    for caution in WRITTEN:
        yield from (caution.text, caution.source, caution.name)
    for family, finish, state in product(Family, Finish, State):
        yield family_figure(family, finish, state).source


def _once(texts: Iterable[str]) -> list[str]:
    return list(dict.fromkeys(text for text in texts if text))
