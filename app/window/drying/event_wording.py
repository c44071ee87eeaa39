"""How moments of drying are told."""

from __future__ import annotations

from zoneinfo import ZoneInfo

from app.window import reasons, words
from app.window.drying.notices import DueNotice
from app.window.film_events import FilmEvent, FilmEventKind
from app.window.run_sheet_notes_words import parts_of, sign_words
from planner.values.step import Bound

TOLD_AT_MOST = 3


def at_words(moment: FilmEvent, zone: ZoneInfo, now: int) -> str:
    """Return the time of a moment: openings rounded up, closings down."""
    if moment.at is None:
        return words.tr("never in this air")
    if moment.kind is FilmEventKind.CLOSES:
        return words.closing(moment.at, zone, now)
    if moment.kind is FilmEventKind.LOOK:
        return words.when(moment.at, zone, now)
    return words.opening(moment.at, zone, now)


def what(moment: FilmEvent, *others: FilmEvent) -> str:
    """Return what a moment means for the work that waits; ``others`` wait with it."""
    if moment.sign is not None:
        return words.tr("Have a look: {work}").format(work=reasons.key_name(moment.film))
    if moment.waiting is None:
        return words.tr("{model} may be handled").format(model=moment.film.model)
    work = reasons.key_name(moment.waiting)
    if others:
        steps = [event.waiting.step for event in (moment, *others) if event.waiting]
        work = words.tr("{steps} · {model}").format(
            steps=reasons.step_names(moment.waiting, steps), model=moment.waiting.model
        )
    if moment.kind is FilmEventKind.OPENS:
        return words.tr("{work} may begin").format(work=words.capital(work))
    if moment.bound is Bound.END:
        return words.tr("{work} must have ended").format(work=words.capital(work))
    return words.tr("{work} must have begun").format(work=words.capital(work))


def film_words(moment: FilmEvent) -> str:
    """Return the film and where it lies: "Gloss clear over the decals (hull and wheels)"."""
    parts = parts_of(moment.places)
    return words.tr("{step} ({parts})").format(
        step=reasons.step_name(moment.film), parts=words.listed(parts)
    )


def state_words(moment: FilmEvent) -> str:
    """Return what it must have reached."""
    if moment.sign is not None:
        return sign_words(moment.sign)
    if moment.state is not None:
        return words.state_word(moment.state.value)
    return (
        words.tr("window closes") if moment.kind is FilmEventKind.CLOSES else words.tr("waited out")
    )


def sentence(moment: FilmEvent, zone: ZoneInfo, now: int) -> str:
    """Return a moment as one sentence, as it is told when it has come."""
    if moment.kind is FilmEventKind.CLOSES:
        if moment.at is not None and moment.at <= now:
            return words.tr("{what} by {time}: that window has closed.").format(
                what=what(moment), time=words.when(moment.at, zone, now)
            )
        return words.tr("{what} by {time}.").format(
            what=what(moment), time=at_words(moment, zone, now)
        )
    if moment.sign is not None:
        return words.tr("{what} ({parts}): {sign}.").format(
            what=what(moment),
            parts=words.listed(parts_of(moment.places)),
            sign=sign_words(moment.sign),
        )
    return words.tr("{what}: {film} is {state}.").format(
        what=what(moment), film=film_words(moment), state=state_words(moment)
    )


def told(due: DueNotice, zone: ZoneInfo, now: int) -> str:
    """Return all that is due as one message, "" for nothing."""
    lines = [sentence(event, zone, now) for event in due.fresh[:TOLD_AT_MOST]]
    late = due.meanwhile[: max(1, TOLD_AT_MOST - len(lines))]
    if late:
        lines.append(words.tr("Meanwhile:"))
        lines += [sentence(event, zone, now) for event in late]
    left = len(due.fresh) + len(due.meanwhile) - len(lines) + bool(late)
    if left > 0:
        lines.append(words.tr("and {n} more, see Drying now").format(n=left))
    return "\n".join(lines)
