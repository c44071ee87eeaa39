"""Definitions 15 and 16: what an airbrush holds, from load to cleaning."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator
from dataclasses import dataclass, field

from planner.cure import pot_life, warmest_c
from planner.schedule.judge.cups_at_start import CLEAN, JudgedCup, left_by_the_log
from planner.schedule.judge.hands import AIRBRUSH_WORK
from planner.schedule.judge.premises import named
from planner.schedule.judge.ruling import Ruling
from planner.schedule.judge.verdict import Violation
from planner.values.coating import Family
from planner.values.gear import Airbrush
from planner.values.moment import Interval
from planner.values.plan import BenchKind, BenchWork
from planner.values.step import Tool


@dataclass(frozen=True, order=True)
class AirbrushEvent:
    """One thing that happens to an airbrush: a pass with its load, or bench work."""

    interval: Interval
    about: str
    load: str
    work: BenchWork | None = field(default=None, compare=False)


def airbrushes(ruling: Ruling) -> Iterator[Violation]:
    """Walk each airbrush through each stretch; loads are definition 15, idling 16."""
    here, left = left_by_the_log(ruling)
    for airbrush in ruling.case.book.gear.airbrushes:
        groups: dict[int, list[AirbrushEvent]] = defaultdict(list)
        if airbrush.name in left:
            groups[here] = []  # it is to be cleaned, whatever the plan has
        for event in sorted(_events(ruling, airbrush.name)):
            stretch = ruling.premises.calendar.stretch_at(event.interval.start)
            groups[stretch.interval.start if stretch else event.interval.start].append(event)
        for start, events in groups.items():
            cup = left.get(airbrush.name) if start == here else None
            yield from _stretch(ruling, airbrush, events, cup or JudgedCup())


def _events(ruling: Ruling, airbrush: str) -> Iterator[AirbrushEvent]:
    for pass_, span in ruling.case.planned():
        if pass_.step.tool is Tool.AIRBRUSH and span.airbrush == airbrush:
            for piece in span.pieces:
                yield AirbrushEvent(piece, str(pass_.key), pass_.load)
    for work in ruling.case.bench:
        if work.airbrush == airbrush and work.kind in AIRBRUSH_WORK:
            yield AirbrushEvent(work.interval, named(work), work.coating, work)


def _stretch(
    ruling: Ruling, airbrush: Airbrush, events: list[AirbrushEvent], cup: JudgedCup
) -> Iterator[Violation]:
    for event in events:
        if event.work is None:
            yield from _sprayed(ruling, airbrush, cup, event)
        else:
            yield from _served(ruling, airbrush, cup, event, event.work)
        cup.since = max(cup.since, event.interval.end)
    if cup.holds != CLEAN:
        text = f'is left with "{cup.holds}" in it at {ruling.case.at(cup.since)}'
        yield Violation(15, airbrush.name, f"{text}, and the stretch ends without a cleaning")


def _sprayed(
    ruling: Ruling, airbrush: Airbrush, cup: JudgedCup, event: AirbrushEvent
) -> Iterator[Violation]:
    at = ruling.case.at
    if event.load != cup.holds:
        held = f'"{cup.holds}"' if cup.holds else "nothing"
        text = f'needs "{event.load}" in {airbrush.name} at {at(event.interval.start)}'
        yield Violation(15, event.about, f"{text}, which holds {held}")
        cup.filled = event.interval.start
    else:
        yield from _idle(ruling, airbrush, cup, event)
        life = life_of(ruling, event.load)
        if life is not None and event.interval.end > cup.filled + life:
            text = f'ends {at(event.interval.end)}, but "{event.load}" was poured at'
            yield Violation(
                16, event.about, f"{text} {at(cup.filled)} and can be used for {life} min"
            )
    cup.holds = event.load


def _served(
    ruling: Ruling, airbrush: Airbrush, cup: JudgedCup, event: AirbrushEvent, work: BenchWork
) -> Iterator[Violation]:
    at = ruling.case.at(event.interval.start)
    if work.kind is BenchKind.LOAD and cup.holds != CLEAN:
        yield Violation(15, event.about, f"at {at} fills a cup that was not cleaned")
    if work.kind is not BenchKind.LOAD:
        if cup.holds == CLEAN:
            yield Violation(15, event.about, f"at {at}, but nothing is in it")
        else:
            yield from _idle(ruling, airbrush, cup, event)
    if (work.kind is BenchKind.CLEAN) != (work.coating == CLEAN):
        yield Violation(15, event.about, f'at {at} leaves "{work.coating}" in the cup')
    elif work.coating and work.coating not in ruling.premises.coatings:
        yield Violation(15, event.about, f'at {at}: no coating is called "{work.coating}"')
    else:
        least = _least(ruling, airbrush, cup, work)
        if work.interval.minutes < least:
            text = f"at {at} is given {work.interval.minutes} min, but takes {least}"
            yield Violation(15, event.about, text)
    cup.holds = work.coating
    cup.filled = event.interval.start


def _least(ruling: Ruling, airbrush: Airbrush, cup: JudgedCup, work: BenchWork) -> int:
    if work.kind is BenchKind.LOAD:
        return airbrush.load_minutes
    if work.kind is BenchKind.CLEAN:
        return airbrush.clean_minutes
    coatings = ruling.premises.coatings
    family = coatings[work.coating].family
    same = cup.holds not in coatings or coatings[cup.holds].family is family
    return airbrush.change_same_family if same else airbrush.change_other_family


def _idle(
    ruling: Ruling, airbrush: Airbrush, cup: JudgedCup, event: AirbrushEvent
) -> Iterator[Violation]:
    idle = event.interval.start - cup.since
    if idle > airbrush.idle_limit_minutes:
        text = f"starts {ruling.case.at(event.interval.start)}, after the load stood {idle} min"
        yield Violation(16, event.about, f"{text}; the limit is {airbrush.idle_limit_minutes}")


def life_of(ruling: Ruling, load: str) -> int | None:
    """Return how long a mix or two-pack coating can be used once poured [min], if limited.

    A mix holds no longer than any two-pack coating in it.
    """
    book = ruling.case.book
    mix = book.mix(load)
    names = [portion.coating for portion in mix.portions] if mix else [load]
    lives = [mix.life_minutes] if mix else []
    for coating in (ruling.premises.coatings[name] for name in names):
        life = coating.pot_life_minutes
        if life is not None and coating.family is Family.TWO_PACK:
            life = pot_life(life, warmest_c(book.room))
        if life is not None:
            lives.append(life)
    return min(lives, default=None)


def loads(ruling: Ruling) -> Iterator[Violation]:
    """Definition 15: loads, changes and cleanings stand where they must."""
    yield from ruling.of(airbrushes, 15)


def lives(ruling: Ruling) -> Iterator[Violation]:
    """Definition 16: no load idles too long, no mix is used past its life."""
    yield from ruling.of(airbrushes, 16)
    for pass_, span in ruling.case.planned():
        if pass_.step.tool is Tool.AIRBRUSH:
            continue
        longest = max(ruling.case.attended(pass_, span), key=lambda piece: piece.minutes)
        for coating in sorted({coating for _, coating in pass_.films}):
            life = life_of(ruling, coating)
            if life is not None and longest.minutes > life:
                text = f"works {longest.minutes} min from {ruling.case.at(longest.start)}"
                yield Violation(16, str(pass_.key), f'{text}, but "{coating}" is good for {life}')
