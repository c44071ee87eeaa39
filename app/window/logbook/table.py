"""The logbook as a table, the newest line first."""

from __future__ import annotations

from collections.abc import Callable
from zoneinfo import ZoneInfo

from PySide6.QtCore import QObject

from app.window import reasons, words
from app.window.forms.rows import Column, RowsModel
from app.window.logbook.lines import LogbookLine, Sort
from app.window.message_translation import edit_name
from planner.values.moment import minute_of
from planner.values.plan import PassKey

DAY, TIME, WORK, MINUTES, PHOTOS, NOTE, AIR, USED = range(8)


class LinesModel(RowsModel[LogbookLine]):
    """A line of the logbook in each line."""

    def __init__(self, parent: QObject | None = None) -> None:
        self._zone = ZoneInfo("UTC")
        tr = self.tr
        told: tuple[tuple[str, Callable[[LogbookLine], str]], ...] = (
            (tr("Day"), lambda line: words.day_of(line.at, self._zone)),
            (tr("Time"), self._time),
            (tr("What"), what),
            (tr("Minutes"), minutes_words),
            (tr("Photos"), _photos),
            (tr("Note"), _note),
            (tr("Air"), air_words),
            (tr("Used"), used_words),
        )
        super().__init__([Column(name, text) for name, text in told], parent)

    def show_lines(self, rows: tuple[LogbookLine, ...], zone: ZoneInfo) -> None:
        """Show other lines."""
        self._zone = zone
        self.show_rows(rows, same=False)

    def _time(self, line: LogbookLine) -> str:
        start = words.clock(line.at, self._zone)
        if line.fact is None:
            return start
        if line.fact.end is None:
            return self.tr("{start}, under way").format(start=start)
        end = words.clock(minute_of(line.fact.end), self._zone)
        return self.tr("{start}–{end}").format(start=start, end=end)


def _photos(line: LogbookLine) -> str:
    return str(len(line.fact.photos)) if line.fact and line.fact.photos else ""


def what(line: LogbookLine) -> str:
    """Return what a line is about."""
    if line.cleaned is not None:
        return words.tr("{airbrush} cleaned").format(airbrush=words.capital(line.cleaned.airbrush))
    key = PassKey(line.project, line.model, line.step_id)
    step = reasons.step_name(key) if line.step_id else ""
    if line.sort is Sort.EVENT and line.event is not None:
        about = " · ".join(one for one in (step, line.model) if one)
        event = words.capital(event_word(line.event.event.value))
        return words.tr("{event}: {about}").format(event=event, about=about) if about else event
    name = words.capital(reasons.key_name(key))
    if line.look is not None:
        state = words.state_word(line.look.state.value)
        form = (
            words.tr("{work}: looked at, {state}")
            if line.look.reached
            else words.tr("{work}: looked at, not yet {state}")
        )
        return form.format(work=name, state=state)
    if line.fact is not None and line.fact.coat > 1:
        return words.tr("{work}, coat {n}").format(work=name, n=line.fact.coat)
    return name


def event_word(event: str) -> str:
    """Return what happened."""
    told = {
        "skipped": words.tr("skipped"),
        "dropped": words.tr("dropped"),
        "disliked": words.tr("disliked"),
        "still tacky": words.tr("still tacky"),
        "window missed": words.tr("window missed"),
        "ran out": words.tr("ran out"),
        "stopped early": words.tr("stopped early"),
        "note": words.tr("note"),
        "over a film not ready": words.tr("over a film not ready"),
        "after its window": words.tr("after its window"),
    }
    return told[event]


def minutes_words(line: LogbookLine) -> str:
    """Return minutes as they were, and as planned where that differs."""
    if line.fact is None or line.minutes is None:
        return ""
    if line.fact.planned is None or line.fact.planned == line.minutes:
        return str(line.minutes)
    return words.tr("{minutes} ({planned} planned)").format(
        minutes=line.minutes, planned=line.fact.planned
    )


def air_words(line: LogbookLine) -> str:
    """Return what the gauge showed."""
    fact = line.fact
    if fact is None:
        return ""
    told = []
    if fact.temperature_c is not None:
        told.append(words.degrees(fact.temperature_c))
    if fact.humidity_pct is not None:
        told.append(words.tr("{humidity:.0f} % RH").format(humidity=fact.humidity_pct))
    return ", ".join(told)


def used_words(line: LogbookLine) -> str:
    """Return what was taken from which bottle."""
    used = line.fact.used if line.fact else ()
    return ", ".join(
        words.fill(words.tr("{coating} {ml:.1f} ml"), coating=used.coating, ml=used.ml)
        for used in used
    )


def _note(line: LogbookLine) -> str:
    note = line.fact.note if line.fact else edit_name(line.event.text) if line.event else ""
    return " · ".join(part for part in note.splitlines() if part.strip())
