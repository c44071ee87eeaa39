"""How a line about other work is written and told.  No Qt."""

from __future__ import annotations

from functools import cache

from app.service.other_work import OtherWork
from app.window import words
from planner.evening.other_work_line import NOT_TOLD
from planner.values.step import LAYS_NO_FILM, Stage, Tool


def example() -> str:
    """Return a line as it may be typed."""
    return words.tr("steel on Gannet hull, Heron, brush, 15 min")


@cache
def _words(_language: str) -> dict[str, Stage | Tool]:
    stages = [stage for stage in Stage if stage not in LAYS_NO_FILM | NOT_TOLD]
    found: dict[str, Stage | Tool] = {words.stage_word(each).casefold(): each for each in stages}
    found.update((words.tool_word(tool).casefold(), tool) for tool in Tool)
    return found


def words_of_the_line() -> dict[str, Stage | Tool]:
    """Return what tools and kinds of work are called in the language of the window."""
    return _words(words.language_code())


def told_words(work: OtherWork) -> str:
    """Return how a line is understood."""
    on = words.listed(
        [
            words.tr("{model} ({parts})").format(
                model=one.model,
                parts=words.listed(
                    tuple(dict.fromkeys(place.partition("/")[0] for place in one.places))
                ),
            )
            for one in work.on
        ]
    )
    more = []
    if work.stage is not None:
        more.append(words.stage_word(work.stage))
    if work.tool is not None:
        more.append(words.tool_word(work.tool))
    if work.minutes is not None:
        more.append(words.span(work.minutes))
    if work.ml is not None:
        more.append(words.fill(words.tr("{ml:g} ml"), ml=work.ml))
    told = words.tr("{coating} on {on}").format(coating=words.capital(work.coating), on=on)
    return words.tr("Understood: {told}").format(told=" · ".join([told, *more]))
