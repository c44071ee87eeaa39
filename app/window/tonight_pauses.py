"""Where hands are free tonight, what that is good for, and to when work can be put off."""

from __future__ import annotations

from app.window import words
from app.window.evening.gap_words import gap_sentence
from app.window.plan_snapshot import PlanSnapshot
from planner.tonight import Row, RunSheet
from planner.values.plan import Cause

GAP_SHOWN = 5  # shorter pauses are not worth a line [min]
SESSIONS_OFFERED = 5  # to which a card can be put off


def pauses(picture: PlanSnapshot, standing: tuple[Row, ...]) -> list[tuple[int, int]]:
    """Return from when to when hands are free between two pieces of work."""
    found = []
    at = max(picture.sheet.interval.start, picture.now)
    for row in standing:
        if row.start - at >= GAP_SHOWN:
            found.append((at, row.start))
        at = max(at, row.free)
    return found


def later_sessions(picture: PlanSnapshot) -> tuple[tuple[str, int], ...]:
    """Return the sessions after the one that is shown, in words, each with its first minute."""
    found: list[tuple[str, int]] = []
    end = picture.sheet.interval.end
    while len(found) < SESSIONS_OFFERED:
        stretch = picture.calendar.next_stretch(end)
        if stretch is None:
            break
        start, end = stretch.interval.start, stretch.interval.end
        if start >= picture.sheet.interval.end:
            told = words.when(start, picture.zone, picture.now)
            found.append((words.capital(told), start))
    return tuple(found)


def pause_words(picture: PlanSnapshot, start: int, end: int) -> str:
    """Return what a pause is good for, if anything."""
    gap = next((gap for gap in picture.gaps if start <= gap.start < end), None)
    if gap is not None:
        return gap_sentence(gap)
    after = next((row for row in picture.sheet.work if row.start >= end), None)
    if after is not None and after.reason.cause is Cause.DRYING_PLACE:
        told = words.tr("{length} free: every drying place is taken")
    else:
        told = words.tr("{length} free: nothing is ready sooner")
    return told.format(length=words.span(end - start))


def last_words(picture: PlanSnapshot, at: int) -> str:
    """Return how the sheet ends, and what the time left is good for."""
    sheet = picture.sheet
    ending = _ending(sheet, at, words.clock(sheet.interval.end, picture.zone))
    rest = next((gap for gap in picture.gaps if at <= gap.start < sheet.interval.end), None)
    if rest is None:
        return ending
    return words.tr("{ending}. {gap}").format(ending=ending, gap=gap_sentence(rest))


def _ending(sheet: RunSheet, at: int, end: str) -> str:
    if not sheet.rows:
        return words.tr("Nothing is ready in this session; the bench is yours until {end}").format(
            end=end
        )
    left = sheet.interval.end - at
    if left >= GAP_SHOWN:
        return words.tr("Done for this session, {length} before it ends at {end}").format(
            length=words.span(left), end=end
        )
    return words.tr("Bench time ends at {end}").format(end=end)
