"""The run sheet as plain text, for a terminal or a sheet of paper."""

from __future__ import annotations

from collections import Counter, defaultdict
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import replace
from datetime import date
from zoneinfo import ZoneInfo

from app.service import wording
from app.service.logbook import cups_now
from app.service.shopping import load_text, measures_text, millilitres
from planner.bench import BenchCalendar, calendar_of
from planner.cautions import LAST_WORD
from planner.schedule.cups_at_start import HeldCoating
from planner.schedule.missed_dates import missed_dates
from planner.schedule.serial_schedule import WAITS
from planner.tonight import (
    BenchRow,
    Closing,
    DryingFilm,
    LoadCard,
    Row,
    RunSheet,
    SheetCoat,
    WorkRow,
    cards_of,
    loose_set_up,
)
from planner.values.book import Book
from planner.values.coating import State
from planner.values.message import Message, Translate, message, told
from planner.values.message import row as row_of
from planner.values.mix import Portion
from planner.values.moment import Interval, moment_of, zone_named
from planner.values.plan import BenchKind, Plan, Status
from planner.values.step import Bound

INDENT = " " * 16
WHEN = 18  # letters of the column that says when
NOTHING = message("Nothing to do at the bench here.")


def run_sheet_text(sheet: RunSheet, book: Book, translate: Translate = str) -> str:
    """Return the run sheet as text, one line per thing to do, in the language given."""
    return "\n".join(translate(line) for line in _run_sheet_lines(sheet, book))


def _run_sheet_lines(sheet: RunSheet, book: Book) -> list[str]:
    zone = zone_named(book.bench_time.zone)
    if not sheet.rows and calendar_of(book.bench_time).next_stretch(sheet.now) is None:
        return [message("No bench time ahead; add an evening.")]
    lines: list[str] = [stretch_title(sheet.interval, zone)]
    lines += cup_lines(cups_now(book, sheet.now), zone)
    if not sheet.rows:
        lines += ["", NOTHING]
    cards = cards_of(sheet.rows)
    blocks = [(card.start, ["", *_card(card, zone)]) for card in cards]
    blocks += [(row.start, [*_set_up(row, zone)]) for row in loose_set_up(sheet.rows, cards)]
    for _, block in sorted(blocks, key=lambda timed: timed[0]):
        lines += block
    lines += _section(message("Drying now"), drying_lines(sheet.drying_now, sheet.now, zone))
    lines += _section(
        message("Left to dry"), drying_lines(sheet.drying_after, sheet.interval.end, zone)
    )
    lines += _section(message("Closing"), closing_lines(sheet.closing, sheet.now, zone))
    if sheet.next_interval:
        then = wording.stretch(sheet.next_interval, zone)
        title = message("If all goes well, next: {stretch}", stretch=then)
        lines += _section(title, next_lines(sheet.next_opens))
    lines += _section(message("Take care"), caution_lines(sheet))
    return lines


def cup_lines(cups: Mapping[str, HeldCoating], zone: ZoneInfo) -> list[str]:
    """Return what airbrushes hold from before, and since when."""
    return [
        message(
            "{airbrush} holds {coating} since {when}",
            airbrush=name,
            coating=held.coating,
            when=wording.clock_time(held.since, zone),
        )
        for name, held in cups.items()
    ]


def stretch_title(interval: Interval, zone: ZoneInfo) -> Message:
    """Return when a stretch is and how long it lasts."""
    return message(
        "{stretch}  ({minutes} min)",
        stretch=wording.stretch(interval, zone),
        minutes=interval.minutes,
    )


def finish_text(plan: Plan, book: Book) -> str:
    """Return when each project is done, against its date."""
    return "\n".join(finish_lines(plan, book))


def finish_lines(plan: Plan, book: Book) -> Iterator[Message]:
    """Yield when each project is done, against its date, and what has no place."""
    zone = zone_named(book.bench_time.zone)
    calendar = BenchCalendar(book.bench_time)
    stuck = Counter(unplaced.key.project for unplaced in plan.unplaced)
    for name, end in plan.finishes:
        if stuck[name]:
            yield message("{project}: not done; without a place: {n}", project=name, n=stuck[name])
            continue
        target = book.project(name).target
        done = message("{project}: done {time}", project=name, time=wording.moment(end, zone))
        if target is None:
            yield done
        elif (over := end - calendar.day_end(target)) <= 0:
            yield message("{done}, in time for {target}", done=done, target=wording.date_of(target))
        else:
            span = wording.span(over)
            on = wording.date_of(target)
            yield message("{done}, {span} after {target}", done=done, span=span, target=on)
    for missed in missed_dates(book, calendar, plan):
        if missed.model:
            yield message(
                "{project}, {model}: {span} after {target}",
                project=missed.project,
                model=missed.model,
                span=wording.span(missed.minutes),
                target=wording.date_of(missed.target),
            )
    yield from unplaced_lines(plan)


def unplaced_lines(plan: Plan) -> Iterator[Message]:
    """Yield what has no place and why; what only waits for such work is counted."""
    waiting = 0
    for unplaced in plan.unplaced:
        if getattr(unplaced.why, "template", "") == WAITS:
            waiting += 1
            continue
        work = wording.pass_name(unplaced.key)
        yield message("no place found for {work}: {why}", work=work, why=unplaced.why)
    if waiting:
        yield message("no place found for what waits for such work: {n}", n=waiting)


def bounds_text(plan: Plan, zone: ZoneInfo) -> list[str]:
    """Return what is proven of a plan's finish, in lines; none where nothing is."""
    if plan.conflict:
        lines = [f"  {clash.what}: {clash.relax}" for clash in plan.conflict]
        return ["No plan can place everything; give up one of these:", *lines]
    for bound in plan.bounds:
        if bound.level == "finish":
            earliest = wording.moment(plan.now + bound.value, zone)
            if plan.status is Status.OPTIMAL:
                return [f"No plan can finish earlier: {bound.proof}"]
            return [f"No plan can finish before {earliest}: {bound.proof}"]
    return []


def mix_text(portions: Iterable[Portion]) -> str:
    """Return "2 : 3" with the names of what is stirred; "" for a single coating."""
    every = tuple(portions)
    if not every:
        return ""
    parts = " : ".join(f"{portion.parts:g}" for portion in every)
    coatings = " : ".join(portion.coating for portion in every)
    return message("{parts} of {coatings}", parts=parts, coatings=coatings)


def _head(row: Row, zone: ZoneInfo) -> str:
    return f"{wording.clock_time(row.start, zone)}  {row.minutes:3} min  "


def _set_up(row: BenchRow, zone: ZoneInfo) -> Iterator[str]:
    yield _whole(_head(row, zone), "(", bench_text(row), ")")
    if row.portions:
        yield _whole(INDENT, message("mix {mix}", mix=mix_text(row.portions)))
    if row.load:
        yield _whole(INDENT, load_text(row.load))


def _card(card: LoadCard, zone: ZoneInfo) -> Iterator[str]:
    """Yield the lines of a card; what is laid on all of it is told once."""
    told = ""
    for row in card.in_order:
        if isinstance(row, BenchRow):
            yield from _set_up(row, zone)
            continue
        yield _whole(_head(row, zone), work_title(row))
        if row.goes_alone:
            yield _whole(INDENT, alone_text(row, zone))
        for coat in row.coats:
            laid = coat_text(coat, row)
            if len(row.coats) > 1 or laid != told:
                yield _whole(INDENT, laid)
            told = laid
            if coat.load and row.piece == 1:
                yield _whole(INDENT, load_text(coat.load))
            yield from _ticks(coat.places)
        coated = {place for coat in row.coats for place in coat.places}
        yield from _ticks(place for place in row.places if place not in coated)
        why = wording.reasons_text(row.reason, zone)
        yield _whole(INDENT, message("why: {reason}", reason=why))


def card_work(card: LoadCard) -> str:
    """Return what is done on a card: its stage, and the title that its steps share."""
    first = card.rows[0]
    stage: str = row_of((first.stage,))
    if differ(card) or not first.title:
        return stage
    if first.title.casefold().startswith(first.stage.value):  # it says its stage itself
        return first.title
    return row_of((first.stage, first.title), ": ")


def differ(card: LoadCard) -> bool:
    """Tell whether the steps of a card have several titles."""
    return len({row.title for row in card.rows}) > 1


def put_out(card: LoadCard, coating: str) -> list[str]:
    """Return how much of a coating is put out by hand for a whole card, [] where unknown."""
    loads = [load for load in card.put_out if load.colour == coating]
    if len(loads) < 2:
        return [load_text(load) for load in loads]
    amount = millilitres(sum(load.ml for load in loads))
    if not all(load.complete for load in loads):
        amount = message("at least {amount}", amount=amount)
    drops: Counter[str] = Counter()
    for load in loads:
        drops.update({measure.coating: measure.drops for measure in load.measures})
    parts = measures_text(
        replace(measure, drops=drops[measure.coating]) for measure in loads[0].measures
    )
    return [message("put out {amount} in all: {parts}", amount=amount, parts=parts)]


def _whole(*pieces: str) -> Message:
    """Return pieces as one line, each still to be translated by itself."""
    return row_of(pieces, "")


def alone_text(row: WorkRow, zone: ZoneInfo) -> str:
    """Return until when a row goes on without hands."""
    return message(
        "hands for {minutes} min, then it goes on alone until {time}",
        minutes=row.free - row.start,
        time=when_ends(row, zone),
    )


def when_ends(row: WorkRow, zone: ZoneInfo) -> str:
    """Return when a row ends, with its date where that is a day or more after its start."""
    form = wording.clock_time if row.end - row.start < 1440 else wording.moment
    return form(row.end, zone)


def work_title(row: WorkRow) -> str:
    """Return what is worked on, the kind of work, its title, coat and piece."""
    work = message("{model}, {stage}", model=row.key.model, stage=row.stage)
    if row.title:
        work = message("{work}: {title}", work=work, title=row.title)
    if row.key.coat > 1:
        work = message("{work}, coat {coat}", work=work, coat=row.key.coat)
    if row.pieces > 1:
        work = message(
            "{work} (piece {piece} of {pieces})", work=work, piece=row.piece, pieces=row.pieces
        )
    return message("{work} (logged)", work=work) if row.logged else work


def coat_text(coat: SheetCoat, row: WorkRow) -> str:
    """Return what is laid and with what, and its mix where no load has told it."""
    laid = row_of((coat.coating, row.airbrush or row.tool))
    mixed = mix_text(coat.portions)
    return (
        message("{laid}; mix {mix}", laid=laid, mix=mixed) if mixed and not row.airbrush else laid
    )


def by_part(places: Iterable[str]) -> dict[str, list[str]]:
    """Return the places of "part/place" names under their parts."""
    parts: dict[str, list[str]] = defaultdict(list)
    for place in places:
        part, _, name = place.partition("/")
        parts[part].append(name)
    return parts


def _ticks(places: Iterable[str]) -> Iterator[str]:
    for part, names in by_part(places).items():
        yield f"{INDENT}{part}: " + "  ".join(f"[ ] {name}" for name in names)


def bench_text(row: BenchRow) -> str:
    """Return what is done to the airbrush, or for which pass a film is prepared."""
    if row.kind is BenchKind.LOAD:
        return message("load {airbrush} with {coating}", airbrush=row.airbrush, coating=row.coating)
    if row.kind is BenchKind.CHANGE:
        return message("change {airbrush} to {coating}", airbrush=row.airbrush, coating=row.coating)
    if row.kind is BenchKind.CLEAN:
        return message("clean {airbrush}", airbrush=row.airbrush)
    return (
        message("prepare {work}", work=wording.pass_name(row.serves))
        if row.serves
        else message("prepare")
    )


def _section(title: str, lines: Iterable[str]) -> list[str]:
    body = [_whole("  ", line) for line in lines]
    return ["", title, *body] if body else []


def drying_lines(films: Iterable[DryingFilm], now: int, zone: ZoneInfo) -> Iterator[str]:
    """Yield when films are ready, for what, and where they lie; one line for like ones of a day."""
    for alike in _alike(films, zone):
        first = alike[0]
        opens = [film.opens for film in alike if film.opens is not None]
        when = wording.openings(min(opens, default=None), max(opens, default=None), now, zone)
        purpose = (
            message("for {step}", step=first.waiting.step)
            if first.waiting
            else message("then it is finished")
        )
        state = wording.state(first.state)
        yield message(
            "{when:<18}{ready:<15}{coating} on {model}, {purpose}",
            when=when if len(when) < WHEN else row_of((when, "  "), ""),
            ready=state,
            coating=first.coating,
            model=", ".join(_on_model(alike)),
            purpose=purpose,
        )


def _alike(films: Iterable[DryingFilm], zone: ZoneInfo) -> list[list[DryingFilm]]:
    """Return films in groups of the same coating, state, step and day."""
    groups: dict[tuple[str, State | None, str, date | None], list[DryingFilm]] = defaultdict(list)
    for film in films:
        day = None if film.opens is None else moment_of(film.opens, zone).date()
        step = film.waiting.step if film.waiting else ""
        groups[film.coating, film.state, step, day].append(film)
    return list(groups.values())


def _on_model(films: Iterable[DryingFilm]) -> list[str]:
    """Return models with the parts that bear such a film, those of the same parts together."""
    parts: dict[str, dict[str, None]] = defaultdict(dict)
    for film in films:
        parts[film.key.model].update((place.partition("/")[0], None) for place in film.places)
    same: dict[tuple[str, ...], list[str]] = defaultdict(list)
    for model, names in parts.items():
        same[tuple(names)].append(model)
    return [f"{', '.join(models)} ({', '.join(names)})" for names, models in same.items()]


def closing_lines(windows: Iterable[Closing], now: int, zone: ZoneInfo) -> Iterator[str]:
    """Yield when each window closes, what must be done before, and why."""
    for window in windows:
        by, work = wording.closing(window.closes, now, zone), wording.pass_name(window.waiting)
        if window.bound is Bound.END:
            yield message("{by:<18}end {work} before: {why}", by=by, work=work, why=window.why)
        else:
            yield message("{by:<18}start {work} before: {why}", by=by, work=work, why=window.why)


def next_lines(rows: Iterable[WorkRow]) -> Iterator[str]:
    """Yield each kind of work with the models that it is done on."""
    models: dict[tuple[str, Message], list[str]] = defaultdict(list)
    for row in sorted(rows, key=lambda row: row.start):
        name = row_of((row.stage, row.title), ": ") if row.title else row_of((row.stage,))
        known = models[row.stage.value, name]
        if row.key.model not in known:
            known.append(row.key.model)
    for (_, name), names in models.items():
        yield _whole(name, f" ({', '.join(names)})")


def caution_lines(sheet: RunSheet) -> list[str]:
    """Return each caution of a run sheet once, and who has the last word."""
    texts = dict.fromkeys(caution.text for row in sheet.work for caution in row.cautions)
    return [*texts, told(LAST_WORD)] if texts else []
