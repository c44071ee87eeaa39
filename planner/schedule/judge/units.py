"""Fingers, drying places, joins, turns and masks (definitions 5 and 18 to 21)."""

from __future__ import annotations

from collections import Counter, defaultdict
from collections.abc import Iterator
from dataclasses import dataclass
from itertools import takewhile

from planner.passes import Pass, Unit
from planner.schedule.judge.films import JudgedCoat
from planner.schedule.judge.gates import held_gates
from planner.schedule.judge.ruling import Ruling
from planner.schedule.judge.verdict import Violation
from planner.values.coating import State, Window
from planner.values.model import Side
from planner.values.plan import PassKey
from planner.values.step import Stage

LONGEST_MASK = 7 * 1440  # minutes that tape may stay on a film: common practice, no source


@dataclass(frozen=True)
class Wet:
    """A film that is not dry to handle when hands begin."""

    coat: JudgedCoat
    begins: int


def _wet(ruling: Ruling, pass_: Pass, unit: Unit, *, elsewhere: bool) -> Wet | None:
    """Return a film on a unit that is not dry to handle when ``one`` takes the unit up.

    It takes it up for each preparation and each piece.  With ``elsewhere``
    films on the places of ``one`` itself are left to their gates.
    """
    case = ruling.case
    taken_up = [*case.preparations.get(pass_.key, ()), *case.spans[pass_.key].pieces]
    for begins in sorted({interval.start for interval in taken_up}):
        for part in unit.parts:
            for coat in ruling.films.coats[pass_.key.project, pass_.key.model, part]:
                if coat.key == pass_.key or not coat.lies(begins):
                    continue
                if elsewhere and coat.place in pass_.places:
                    continue
                if coat.handled is None or coat.handled > begins:
                    return Wet(coat, begins)
    return None


def _wet_text(ruling: Ruling, found: Wet) -> str:
    at = ruling.case.at
    coat = found.coat
    when = "never" if coat.handled is None else f"only at {at(coat.handled)}"
    return f"begins {at(found.begins)}, but {coat.place} from {coat.key} is dry to handle {when}"


def fingers(ruling: Ruling) -> Iterator[Violation]:
    """Definition 5: what has no holder is touched only where its films are dry to handle."""
    yield from ruling.of(held_gates, 5)
    for placed, _ in ruling.case.planned():
        for unit in placed.units:
            if not unit.holder and (found := _wet(ruling, placed, unit, elsewhere=True)):
                yield Violation(5, str(placed.key), f"{_wet_text(ruling, found)}: fingers hold it")


# -- definition 18 ----------------------------------------------------------


@dataclass(frozen=True)
class Stay:
    """A unit on its drying places; ``end`` None is for ever."""

    start: int
    end: int | None
    unit: Unit
    key: PassKey
    project: str


def _stays(ruling: Ruling) -> dict[str, list[Stay]]:
    found: dict[str, list[Stay]] = defaultdict(list)
    for key, span in ruling.case.spans.items():
        pass_ = ruling.premises.passes[key]
        location = ruling.case.book.room.location(pass_.step.dries_in).name
        for unit in (pass_.unit_after,) if pass_.unit_after else pass_.units:
            ready = [
                ruling.films.handled[key, place]
                for place, _ in pass_.films
                if place.partition("/")[0] in unit.parts
            ]
            if ready:
                known = [minute for minute in ready if minute is not None]
                end = max(known) if len(known) == len(ready) else None
                found[location].append(Stay(span.start, end, unit, key, key.project))
    return found


def drying_places(ruling: Ruling) -> Iterator[Violation]:
    """Definition 18: at no minute do wet units take more drying places than there are."""
    for location, stays in _stays(ruling).items():
        places = ruling.case.book.room.location(location).drying_places
        events = [(stay.start, 1, stay) for stay in stays]
        events += [(stay.end, -1, stay) for stay in stays if stay.end is not None]
        events.sort(key=lambda event: (event[0], event[1], str(event[2].key)))
        standing: Counter[tuple[str, Unit]] = Counter()
        taken = 0
        for minute, sign, stay in events:
            unit = (stay.project, stay.unit)
            standing[unit] += sign
            if standing[unit] == (1 if sign > 0 else 0):
                taken += sign * stay.unit.stands
            if sign > 0 and taken > places and not ruling.case.spans[stay.key].fact:
                text = f"at {ruling.case.at(minute)} {taken} drying places of {location} are taken"
                yield Violation(18, str(stay.key), f"{text}, but there are {places}")


# -- definitions 19 and 20 --------------------------------------------------


def joins(ruling: Ruling) -> Iterator[Violation]:
    """Definition 19: joined units are dry to handle, and the faces to glue bare or scraped."""
    yield from ruling.of(held_gates, 19)
    for placed, span in ruling.case.planned():
        if placed.step.stage is not Stage.JOIN:
            continue
        for unit in placed.units:
            if found := _wet(ruling, placed, unit, elsewhere=False):
                yield Violation(19, str(placed.key), _wet_text(ruling, found))
        if placed.step.scraped:
            continue
        for place, _ in placed.films:
            below = [
                other.key
                for other in ruling.films.stack(placed.key, place)
                if other.rank < placed.rank and other.key in ruling.case.spans
            ]
            if below:
                text = f"at {ruling.case.at(span.start)} glues {place}, which bears {below[-1]}"
                yield Violation(19, str(placed.key), f"{text}; leave it bare or scrape it")


def turns(ruling: Ruling) -> Iterator[Violation]:
    """Definition 20: without a holder, the side worked on is up, and only dry units are turned."""
    yield from ruling.of(held_gates, 20)
    for placed, _ in ruling.case.planned():
        for unit in placed.units:
            if unit.holder:
                continue
            if placed.step.stage is Stage.TURN:
                if found := _wet(ruling, placed, unit, elsewhere=False):
                    yield Violation(20, str(placed.key), _wet_text(ruling, found))
            elif placed.side is not None:
                yield from _side_up(ruling, placed, unit)


def _side_up(ruling: Ruling, pass_: Pass, unit: Unit) -> Iterator[Violation]:
    """Count the turns of each part on its own; parts of an assembly may lie differently."""
    begin = ruling.case.begin(pass_.key)
    for part in unit.parts:
        turned = sum(
            other.step.stage is Stage.TURN
            and other.key != pass_.key
            and any(part in turned.parts for turned in other.units)
            and ruling.case.spans[other.key].end <= begin
            for other in ruling.premises.models[pass_.key.project, pass_.key.model]
            if other.key in ruling.case.spans
        )
        if (turned % 2 == 1) is not (pass_.side is Side.UNDER):
            up = Side.UNDER if turned % 2 else Side.TOP
            text = f"works on the {pass_.side} side at {ruling.case.at(begin)}"
            yield Violation(20, str(pass_.key), f"{text}, but {part} lies with the {up} side up")
            return


# -- definition 21 ----------------------------------------------------------


@dataclass(frozen=True)
class Cover:
    """Places under a mask, and the pass that uncovers them (None: nothing does)."""

    mask: Pass
    unmask: Pass | None
    places: tuple[str, ...]


def _covers(ruling: Ruling) -> Iterator[Cover]:
    """Yield what each mask covers, by the next unmask step that touches it."""
    for passes in ruling.premises.models.values():
        for index, mask in enumerate(passes):
            if mask.step.stage is not Stage.MASK:
                continue
            groups: dict[PassKey | None, list[str]] = defaultdict(list)
            unmasks = [pass_ for pass_ in passes[index:] if pass_.step.stage is Stage.UNMASK]
            for place in mask.places:
                found = next((unmask.key for unmask in unmasks if place in unmask.places), None)
                groups[found].append(place)
            for key, places in groups.items():
                unmask = ruling.premises.passes[key] if key else None
                yield Cover(mask, unmask, tuple(places))


def masks(ruling: Ruling) -> Iterator[Violation]:
    """Definition 21: tape on print-free films, nothing under it, off neither early nor late."""
    yield from ruling.of(held_gates, 21)
    for cover in _covers(ruling):
        yield from _tape_on(ruling, cover)
        yield from _covered(ruling, cover)
        if cover.unmask:
            yield from _scope(ruling, cover, cover.unmask)
            yield from _tape_off(ruling, cover, cover.unmask)


def _tape_on(ruling: Ruling, cover: Cover) -> Iterator[Violation]:
    span = ruling.case.spans.get(cover.mask.key)
    if span is None or span.fact:
        return
    for place in cover.places:
        part = place.partition("/")[0]
        for coat in ruling.films.coats[cover.mask.key.project, cover.mask.key.model, part]:
            if coat.place != place or not coat.lies(span.start):
                continue
            ready = ruling.films.ready(coat.film, State.PRINT_FREE)
            if ready is None or ready > span.start:
                when = "never" if ready is None else f"only at {ruling.case.at(ready)}"
                text = f"starts {ruling.case.at(span.start)}, but {place} from {coat.key}"
                yield Violation(21, str(cover.mask.key), f"{text} is print-free {when}")


def _covered(ruling: Ruling, cover: Cover) -> Iterator[Violation]:
    spans = ruling.case.spans
    if cover.mask.key not in spans:
        return
    on = spans[cover.mask.key].start
    off = spans[cover.unmask.key].end if cover.unmask and cover.unmask.key in spans else None
    for place in cover.places:
        for pass_ in ruling.films.stack(cover.mask.key, place):
            span = spans.get(pass_.key)
            if span and not span.fact and span.end > on and (off is None or span.start < off):
                text = f"lays a film at {ruling.case.at(span.start)} on {place}"
                yield Violation(21, str(pass_.key), f"{text}, which {cover.mask.key} covers")


def _scope(ruling: Ruling, cover: Cover, unmask: Pass) -> Iterator[Violation]:
    """Hold what is sprayed over the mask against both ends of its time."""
    spans, at = ruling.case.spans, ruling.case.at
    parts = {place.partition("/")[0] for place in cover.places}
    passes = ruling.premises.models[unmask.key.project, unmask.key.model]
    for pass_ in takewhile(lambda pass_: pass_.rank < unmask.rank, passes):
        if pass_.rank < cover.mask.rank or not pass_.films or not parts & set(pass_.parts):
            continue
        span, mask, off = (spans.get(key) for key in (pass_.key, cover.mask.key, unmask.key))
        if span and not span.fact and (mask is None or span.start < mask.end):
            when = f"ends {at(mask.end)}" if mask else "is not placed"
            text = f"starts {at(span.start)}, but {cover.mask.key} {when}"
            yield Violation(21, str(pass_.key), f"{text}: the mask goes on first")
        if off and not off.fact:
            if span is None:
                text = f"stands at {at(off.start)}, but {pass_.key} is not placed"
                yield Violation(21, str(unmask.key), text)
            else:
                yield from _edge(ruling, unmask, pass_, off.start)


def _edge(ruling: Ruling, unmask: Pass, pass_: Pass, start: int) -> Iterator[Violation]:
    for coat in (
        coat
        for part in pass_.parts
        for coat in ruling.films.coats[pass_.key.project, pass_.key.model, part]
        if coat.key == pass_.key
    ):
        ready = ruling.films.ready(coat.film, State.SET_TO_TOUCH)
        if ready is None or ready > start:
            when = "never" if ready is None else f"only at {ruling.case.at(ready)}"
            text = f"starts {ruling.case.at(start)}, but {coat.place} from {pass_.key}"
            yield Violation(21, str(unmask.key), f"{text} is set-to-touch {when}")
            return


def _tape_off(ruling: Ruling, cover: Cover, unmask: Pass) -> Iterator[Violation]:
    mask, off = ruling.case.spans.get(cover.mask.key), ruling.case.spans.get(unmask.key)
    late = any(
        gate.after == cover.mask.step.id and gate.windows == (Window(),)
        for gate in unmask.step.gates
    )
    if mask and off and not off.fact and not late and off.start >= mask.start + LONGEST_MASK:
        text = f"starts {ruling.case.at(off.start)}, more than 7 days after"
        yield Violation(21, str(unmask.key), f"{text} {cover.mask.key} was put on")
