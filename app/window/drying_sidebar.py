"""Beside the run sheet: what dries, what closes, what opens next."""

from __future__ import annotations

from zoneinfo import ZoneInfo

from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from app.window import reasons, words
from app.window.labels import text
from app.window.mark_widgets import BracketMark
from app.window.message_translation import translated
from app.window.palette import Colours
from app.window.plan_snapshot import PlanSnapshot
from app.window.run_sheet_notes_words import below_words, other_words
from app.window.time_scale import ScaledWedge, ScaleLine, TimeScale
from planner.tonight import Closing, DryingFilm, RunSheet
from planner.values.plan import Plan
from planner.values.step import Bound

BRAKES_TOLD = 3
OTHERS_TOLD = 4


def panel(picture: PlanSnapshot, colours: Colours) -> QWidget:
    """Return the panel of a picture."""
    holder = QWidget()
    column = QVBoxLayout(holder)
    column.setContentsMargins(12, 8, 18, 20)
    column.setSpacing(6)
    sheet, zone = picture.sheet, picture.zone
    close = max(sheet.interval.end, sheet.now + 1)
    soon = [film for film in sheet.drying if film.opens is not None and film.opens <= close]
    later = [film for film in sheet.drying if film not in soon]
    if soon:
        _title(column, words.tr("Opens before {time}").format(time=words.clock(close, zone)))
        scale = TimeScale(sheet.now, close)
        column.addWidget(ScaleLine(scale, colours, zone))
        for film in sorted(soon, key=lambda film: film.opens or 0):
            column.addWidget(_film(film, scale, zone, colours))
    _closing(column, sheet, zone, colours)
    if later:
        _overnight(column, picture, later, colours)
    _brakes(column, picture, colours)
    _others(column, picture, colours)
    _next(column, sheet, zone, colours)
    _finish(column, picture, zone, colours)
    column.addStretch(1)
    return holder


def _title(column: QVBoxLayout, words_: str) -> None:
    label = text(words_, size=1.1, bold=True)
    label.setContentsMargins(0, 8 if column.count() else 0, 0, 0)
    column.addWidget(label)


def _film(film: DryingFilm, scale: TimeScale, zone: ZoneInfo, colours: Colours) -> QWidget:
    """Return a film: the model first, when it opens, and the wedge on the common scale."""
    assert film.opens is not None
    parts = tuple(dict.fromkeys(place.partition("/")[0] for place in film.places))
    work = film.coating or words.capital(reasons.step_name(film.key))
    told = words.tr("{work} ({parts})").format(work=work, parts=words.listed(parts))
    return _line(
        film.key.model,
        told,
        words.opening(film.opens, zone, scale.start),
        _waits(film),
        ScaledWedge(scale, colours, film.since, film.opens),
        colours,
    )


def _waits(film: DryingFilm) -> str:
    """Return what state is awaited, and what for."""
    state = words.state_word(film.state.value) if film.state else words.tr("waited out")
    if film.waiting is None:
        return state
    return words.tr("{state}, for “{work}”").format(
        state=state, work=reasons.step_name(film.waiting)
    )


def _line(name: str, told: str, at: str, why: str, wedge: QWidget, colours: Colours) -> QWidget:
    holder = QWidget()
    box = QVBoxLayout(holder)
    box.setContentsMargins(0, 2, 0, 4)
    box.setSpacing(0)
    line = QHBoxLayout()
    line.setSpacing(10)
    line.addWidget(text(name, bold=True), 1)
    line.addWidget(text(at, colour=colours.drying_word, bold=True, wrap=False))
    box.addLayout(line)
    box.addWidget(text(told, colour=colours.soft, size=0.95))
    box.addWidget(wedge)
    holder.setToolTip(why)
    holder.setAccessibleName(f"{name}, {at}. {told}. {why}")
    return holder


def _overnight(
    column: QVBoxLayout, picture: PlanSnapshot, films: list[DryingFilm], colours: Colours
) -> None:
    """Add what is still wet at the end, alike films of several models as one line."""
    sheet, zone = picture.sheet, picture.zone
    close = words.clock(sheet.interval.end, zone)
    kinds: dict[tuple[object, ...], list[DryingFilm]] = {}
    for film in films:
        kind = (film.coating, film.state, film.waiting and reasons.step_name(film.waiting))
        kinds.setdefault(kind, []).append(film)
    _title(column, words.tr("Still wet at {time}").format(time=close))
    ends = [film.opens for film in films if film.opens is not None]
    scale = TimeScale(sheet.now, max([*ends, sheet.interval.end]))
    column.addWidget(ScaleLine(scale, colours, zone))
    for alike in kinds.values():
        last = max((film.opens for film in alike if film.opens is not None), default=None)
        names = list(dict.fromkeys(film.key.model for film in alike))
        name = names[0]
        if len(names) > 1:
            more = words.tr("{model} and {n} more")
            name = more.format(model=names[0], n=len(names) - 1)
        at = (
            words.tr("never")
            if any(film.opens is None for film in alike) or last is None
            else (words.opening(last, zone, sheet.now))
        )
        since = min(film.since for film in alike)
        wedge = ScaledWedge(scale, colours, since, None if at == words.tr("never") else last)
        work = alike[0].coating or words.capital(reasons.step_name(alike[0].key))
        line = _line(name, f"{work}: {_waits(alike[0])}", at, words.listed(names), wedge, colours)
        column.addWidget(line)


def _closing(column: QVBoxLayout, sheet: RunSheet, zone: ZoneInfo, colours: Colours) -> None:
    if not sheet.closing:
        return
    _title(column, words.tr("Closing"))
    for closing in sheet.closing:
        column.addWidget(_window(closing, sheet.now, zone, colours))


def _window(closing: Closing, now: int, zone: ZoneInfo, colours: Colours) -> QWidget:
    holder = QWidget()
    line = QHBoxLayout(holder)
    line.setContentsMargins(0, 2, 0, 4)
    line.setSpacing(8)
    line.addWidget(BracketMark(colours))
    box = QVBoxLayout()
    box.setSpacing(1)
    at = words.closing(closing.closes, zone, now)
    by = words.tr("end by {time}") if closing.bound is Bound.END else words.tr("begin by {time}")
    first = QHBoxLayout()
    name = words.capital(reasons.step_name(closing.waiting))
    first.addWidget(text(name), 1)
    first.addWidget(text(by.format(time=at), colour=colours.closing_word, bold=True, wrap=False))
    box.addLayout(first)
    planned = (
        words.tr("not planned")
        if closing.planned is None
        else words.when(closing.planned, zone, now)
    )
    why = words.tr("{model}: planned {time}; {why}").format(
        model=closing.waiting.model, time=planned, why=translated(closing.why)
    )
    box.addWidget(text(why, colour=colours.soft, size=0.92))
    line.addLayout(box, 1)
    holder.setAccessibleName(f"{name}, {by.format(time=at)}. {why}")
    return holder


def _brakes(column: QVBoxLayout, picture: PlanSnapshot, colours: Colours) -> None:
    """Add what will lie below the last coats of this stretch, ready or only touch-dry."""
    brakes = picture.beside.brakes
    if not brakes:
        return
    _title(column, words.tr("Before the last coat"))
    for brake in brakes[:BRAKES_TOLD]:
        name = words.tr("{time}, {work}").format(
            time=words.clock(brake.at, picture.zone), work=reasons.key_name(brake.key)
        )
        column.addWidget(text(name))
        for top_film in brake.below:
            told = below_words(top_film, picture.zone, brake.at)
            column.addWidget(text(told, colour=colours.soft, size=0.92))


def _others(column: QVBoxLayout, picture: PlanSnapshot, colours: Colours) -> None:
    """Add what could be done tonight instead."""
    others = picture.beside.others
    if not others:
        return
    _title(column, words.tr("If something is not ready"))
    for other in others[:OTHERS_TOLD]:
        column.addWidget(text(words.capital(reasons.key_name(other.key))))
        told = other_words(other, picture.zone, max(picture.now, picture.sheet.interval.start))
        column.addWidget(text(told, colour=colours.soft, size=0.92))


def _next(column: QVBoxLayout, sheet: RunSheet, zone: ZoneInfo, colours: Colours) -> None:
    if sheet.next_interval is None or not sheet.next_opens:
        return
    _title(column, words.tr("If all goes well"))
    day = words.day_of(sheet.next_interval.start, zone, long=True)
    column.addWidget(text(words.tr("{day} these open:").format(day=day)))
    kinds: dict[str, int] = {}
    for row in sheet.next_opens:
        name = words.stage_word(row.stage)
        kinds[name] = kinds.get(name, 0) + 1
    told = [
        words.tr("{stage} × {n}").format(stage=name, n=number) if number > 1 else name
        for name, number in kinds.items()
    ]
    column.addWidget(text(", ".join(told), colour=colours.drying_word))


def _finish(column: QVBoxLayout, picture: PlanSnapshot, zone: ZoneInfo, colours: Colours) -> None:
    if not picture.plan.finishes:
        return
    _title(column, words.tr("Finished"))
    for name, minute in picture.plan.finishes:
        column.addWidget(text(name))
        line = finish_line(picture.plan, picture, name, minute, zone)
        column.addWidget(text(line, colour=colours.soft, size=0.92))
    for unplaced in picture.plan.unplaced[:4]:
        sentence = words.tr("{work} has no place: {why}").format(
            work=reasons.key_name(unplaced.key), why=translated(unplaced.why)
        )
        column.addWidget(text(sentence, colour=colours.closing_word, size=0.92))


def finish_line(plan: Plan, picture: PlanSnapshot, name: str, minute: int, zone: ZoneInfo) -> str:
    """Return when a project is finished, against its date; or that it never is."""
    stuck = sum(unplaced.key.project == name for unplaced in plan.unplaced)
    if stuck:
        return words.tr("not done; without a place: {n}").format(n=stuck)
    done = words.when(minute, zone, plan.now)
    target = picture.book.project(name).target
    if target is None:
        return words.tr("done {time}, no date set").format(time=done)
    end = picture.calendar.day_end(target)
    sentence = (
        words.tr("done {time}, {length} too late for {date}")
        if minute > end
        else words.tr("done {time}, {length} in hand before {date} ends")
    )
    return sentence.format(time=done, length=words.span(abs(end - minute)), date=words.day(target))
