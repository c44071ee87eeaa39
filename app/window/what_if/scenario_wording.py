"""What scenarios come to, in words, against the plan as it is."""

from __future__ import annotations

from zoneinfo import ZoneInfo

from PySide6.QtCore import QCoreApplication

from app.service.what_if import PlanFigures
from app.window import words


def tr(text: str) -> str:
    """Return the translation of a sentence of this module."""
    return QCoreApplication.translate("what_if", text)


def heads() -> tuple[str, ...]:
    """Return the names of the columns."""
    return (
        tr("What if"),
        tr("Finished"),
        tr("Evenings"),
        tr("Set-up"),
        tr("Late"),
        tr("No place"),
        tr("Unsound"),
    )


def cells(
    outcome: PlanFigures, present: PlanFigures | None, zone: ZoneInfo, now: int
) -> tuple[str, ...]:
    """Return a cell for each column but the first, with the gap to the present plan."""
    late = words.short_span(outcome.late) if outcome.late else tr("nothing")
    return (
        _told(words.when(outcome.finish, zone, now), _sooner(outcome, present)),
        _told(str(outcome.evenings), _gap(outcome.evenings, present.evenings if present else None)),
        _told(
            tr("{minutes} min").format(minutes=outcome.setup_minutes),
            _gap(outcome.setup_minutes, present.setup_minutes if present else None),
        ),
        _told(late, _late_gap(outcome, present)),
        _told(str(outcome.unplaced), _gap(outcome.unplaced, present.unplaced if present else None)),
        _told(str(outcome.unsound), _gap(outcome.unsound, present.unsound if present else None)),
    )


def remark(outcome: PlanFigures, present: PlanFigures | None) -> str:
    """Return what the numbers of a scenario do not say by themselves, "" for nothing."""
    if present is None:
        return ""
    told = []
    if outcome.finish != present.finish:
        length = words.span(abs(outcome.finish - present.finish))
        later = outcome.finish > present.finish
        sentence = tr("Finished {length} later.") if later else tr("Finished {length} sooner.")
        told.append(sentence.format(length=length))
    if outcome.unplaced > present.unplaced:
        told.append(tr("Not everything would have a place."))
    if outcome.unsound > present.unsound:
        told.append(tr("The order of coats would not be sound."))
    if outcome.rough:
        told.append(tr("First result; it may still get better."))
    return " ".join(told)


def _told(value: str, gap: str) -> str:
    return tr("{value} ({gap})").format(value=value, gap=gap) if gap else value


def _gap(value: int, other: int | None) -> str:
    if other is None or value == other:
        return ""
    return f"{value - other:+d}".replace("-", "−")


def _sooner(outcome: PlanFigures, present: PlanFigures | None) -> str:
    if present is None or outcome.finish == present.finish:
        return ""
    length = words.short_span(abs(outcome.finish - present.finish))
    return f"+{length}" if outcome.finish > present.finish else f"−{length}"


def _late_gap(outcome: PlanFigures, present: PlanFigures | None) -> str:
    if present is None or outcome.late == present.late:
        return ""
    length = words.short_span(abs(outcome.late - present.late))
    return f"+{length}" if outcome.late > present.late else f"−{length}"
