"""Words that are values elsewhere and are shown to people: the contexts that they have.

A text in the source of the window is found there; what is shown by
``QCoreApplication.translate(context, value)`` can only be listed.
"""

from __future__ import annotations

from collections.abc import Iterable
from enum import StrEnum

from planner.cautions import LAST_WORD, WRITTEN
from planner.cure.family_times import Status
from planner.layers.table import Verdict
from planner.sequences.built_in import ALL
from planner.values.coating import Family, Finish, Preparation, State
from planner.values.model import Material, Shape, Side
from planner.values.step import Role, Stage, Tool, Trait

ENUMERATIONS: dict[str, tuple[type[StrEnum], ...]] = {
    "stage": (Stage, Role),  # a varnish is told by its role
    "role": (Role,),
    "tool": (Tool,),
    "trait": (Trait,),
    "family": (Family,),
    "finish": (Finish,),
    "state": (State,),
    "preparation": (Preparation,),
    "status": (Status,),
    "verdict": (Verdict,),
    "side": (Side,),
    "material": (Material,),
    "shape": (Shape,),
}


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
    found["caution"] = [one.text for one in WRITTEN]
    # The last word on cautions stands in two views.
    found["TonightView"] = found["words"] = [LAST_WORD]
    return {context: _once(texts) for context, texts in found.items()}


def _once(texts: Iterable[str]) -> list[str]:
    return list(dict.fromkeys(text for text in texts if text))
