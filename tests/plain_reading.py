"""A plan read against a book by rules of its own: no expansion, no gates, no locations of ours.

For what judge and heuristic share (`planner.passes`, `planner.graph.gates`,
`planner.schedule.drying_locations`), so that neither would notice a fault in it.  Steps are read
as they are written in the book, and each is held against every earlier one, place by place, by
the text of the definitions.  Knows brush work, washes, wiping back, masks, recoat windows of a
label, parts with and without holder, films that may dry in one of several places, and what is
noted (definition 22); no airbrush, joins, turns, pieces or pins.  It shares `planner.cure` alone,
which has published checks of its own.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace

from planner.cure import Cure, Film
from planner.values.book import Book
from planner.values.coating import State, Window
from planner.values.model import Model
from planner.values.moment import zone_named
from planner.values.plan import PassKey, Plan
from planner.values.step import Stage, Step

WASH_UM = 3.0  # a wash is mostly thinner: assumed, as in the planner
WIPE_FROM, WIPE_UNTIL = 5, 60  # definition 6a [min]
WEEK = 7 * 1440  # definition 21 [min]


@dataclass(frozen=True, eq=False)
class Coat:
    """One coat of a step, where the plan has it."""

    model: str
    step: Step
    number: int
    rank: int
    films: dict[str, str]
    places: tuple[str, ...]
    start: int
    end: int
    location: str
    noted: bool = False

    @property
    def parts(self) -> set[str]:
        """The parts that it works on."""
        return {place.partition("/")[0] for place in self.places}

    def __str__(self) -> str:
        return f"{self.model}/{self.step.id}#{self.number}"


def objections(book: Book, plan: Plan) -> list[str]:
    """Return what a plan breaks; empty if it holds."""
    cure = Cure(book.room, zone_named(book.bench_time.zone))
    found: list[str] = []
    coats: list[Coat] = []
    for project in book.projects:
        for model in project.models:
            noted = {(fact.step, fact.coat) for fact in project.log if fact.model == model.name}
            mine = list(_coats(project.name, model, plan, noted, found))
            left = [replace(coat, rank=rank) for rank, coat in enumerate(as_left(mine))]
            coats += left
            for coat in left:
                found += [] if coat.noted else _reading(book, cure, left, coat)
    known = {str(coat) for coat in coats}
    for placed in plan.placements:
        if f"{placed.key.model}/{placed.key.step}#{placed.key.coat}" not in known:
            found.append(f"{placed.key} is no coat of the book")
    found += _full(book, cure, coats)
    return found


def _places(model: Model, name: str) -> tuple[str, ...]:
    """Return the places of "part" or "part/place"."""
    part, _, place = name.partition("/")
    if place:
        return (name,)
    return tuple(f"{part}/{each.name}" for each in model.part(part).places)


def _coats(
    project: str, model: Model, plan: Plan, noted: set[tuple[str, int]], found: list[str]
) -> Iterator[Coat]:
    spans = {placed.key: placed for placed in plan.placements}
    rank = 0
    for step in model.steps:
        most = max([1, *(laid.coats for laid in step.applications)])
        for number in range(1, most + 1):
            rank += 1
            films = {
                place: laid.coating
                for laid in step.applications
                if laid.coats >= number
                for ref in laid.places
                for place in _places(model, ref)
            }
            touched = [place for ref in step.touches for place in _places(model, ref)]
            places = tuple(dict.fromkeys([*films, *touched]))
            key = PassKey(project, model.name, step.id, number)
            if key not in spans and _passed_over(model, step, number, noted):
                continue
            if key not in spans:
                found.append(f"{model.name}/{step.id}#{number} is left out")
                continue
            placed = spans[key]
            took = sum(piece.minutes for piece in placed.pieces)
            parts = {place.partition("/")[0] for place in places}
            fact = (step.id, number) in noted
            if not fact and took != step.minutes.fixed + step.minutes.per_part * len(parts):
                found.append(f"{key} takes {took} min")
            where = placed.location or step.dries_in
            if placed.location and placed.location not in (step.dries_in, *step.or_in):
                found.append(f"{key} dries in {placed.location}")
            yield Coat(
                model.name,
                step,
                number,
                rank,
                films,
                places,
                placed.start,
                placed.pieces[-1].end,
                where,
                fact,
            )


TAKEN_OFF = {Stage.MASK: Stage.UNMASK, Stage.OIL_WASH: Stage.WIPE}


def _passed_over(model: Model, step: Step, number: int, noted: set[tuple[str, int]]) -> bool:
    """Definition 22: tape that is noted as off was on, and a wash that is wiped was laid."""

    def touched(one: Step) -> set[str]:
        return {place for ref in one.references() for place in _places(model, ref)}

    ends, left = TAKEN_OFF.get(step.stage), touched(step)
    for other in model.steps[model.steps.index(step) + 1 :]:
        if other.stage is ends and left & touched(other) and (other.id, 1) in noted:
            return (step.id, number) not in noted
        left -= touched(other) if other.stage is step.stage else set()
    return False


def as_left(coats: list[Coat]) -> list[Coat]:
    """Definition 22: put what is not noted behind what was done over it, until nothing moves."""
    order = list(coats)
    moved = True
    rounds = 0
    while moved:
        moved = False
        rounds += 1
        assert rounds <= len(coats), "the order as done goes round in a circle"
        for coat in coats:
            at = order.index(coat)
            behind = [
                spot
                for spot, other in enumerate(order)
                if spot > at and not coat.noted and _comes_behind(coat, other, order)
            ]
            if behind:
                order.insert(behind[-1], order.pop(at))
                moved = True
    return order


def _comes_behind(coat: Coat, other: Coat, order: list[Coat]) -> bool:
    if other.noted:
        return coat.rank < other.rank and bool({*coat.places} & {*other.places})
    out = _kept_out(order)
    for over in out.get(coat, ()):
        ends = other.step.stage is TAKEN_OFF[over.step.stage] and other.rank > over.rank
        if ends and {*other.places} & {*over.places} & {*coat.films}:
            return True
    if other in out and _is_for(coat, [over for over in order if over.noted], order):
        return False
    return other.rank < coat.rank and _bound(other, coat, order)


def _bound(first: Coat, then: Coat, order: list[Coat]) -> bool:
    """Tell whether a coat must not come before one that is written ahead of it."""
    same = first.step is then.step or bool({*first.places} & {*then.places})
    on_one = bool(first.parts & then.parts)
    taped = first.step.stage is Stage.MASK and bool(then.films) and on_one
    edge = then.step.stage is Stage.UNMASK and bool(first.films) and on_one
    masks = [one for one in order if one.step.stage is Stage.MASK and one.rank < first.rank]
    edge = edge and any({*mask.places} & {*then.places} for mask in masks)
    return same or taped or edge


def _kept_out(order: list[Coat]) -> dict[Coat, list[Coat]]:
    """Return what was covered, or washed, before its turn, and what waits for that."""
    out: dict[Coat, list[Coat]] = {}
    noted = [other for other in order if other.noted and other.step.stage in TAKEN_OFF]
    for coat in sorted(order, key=lambda one: one.rank):
        own = [] if coat.noted else [over for over in noted if over.rank > coat.rank]
        own = [over for over in own if {*over.places} & {*coat.films}]
        waits = [one for one in out if one.rank < coat.rank and _bound(one, coat, order)]
        if own or (waits and not coat.noted and not _is_for(coat, noted, order)):
            out[coat] = own
    return out


def _is_for(coat: Coat, every: list[Coat], order: list[Coat]) -> bool:
    """Tell whether a coat is what one of ``every`` was put on for, or takes it off."""
    for over in every:
        ends = TAKEN_OFF.get(over.step.stage)
        off = [one for one in order if one.step.stage is ends and one.rank > over.rank]
        off = [one for one in off if {*one.places} & {*over.places}][:1]
        under = coat.parts & over.parts if ends is Stage.UNMASK else {*coat.films} & {*over.films}
        if coat in off or (off and coat.films and under and over.rank < coat.rank < off[0].rank):
            return True
    return False


def _stack(coats: list[Coat], place: str, before: int) -> list[Coat]:
    """Return the coats that laid a film on a place ahead of a rank, in working order."""
    return [coat for coat in coats if place in coat.films and coat.rank < before]


def _film(book: Book, cure: Cure, coats: list[Coat], coat: Coat, place: str) -> Film:
    coating = book.coating(coat.films[place])
    um = WASH_UM if coat.step.stage is Stage.OIL_WASH else coating.dry_film_um
    film = Film(coating, min(um, coating.dry_film_um), coat.location, coat.end)
    below = _stack(coats, place, coat.rank)
    return cure.over(film, _film(book, cure, coats, below[-1], place)) if below else film


def _ready(
    book: Book, cure: Cure, coats: list[Coat], coat: Coat, place: str, state: State, before: int
) -> float:
    """Return when a film is ready for the coat of a rank, with what was laid over it until then."""
    film = _film(book, cure, coats, coat, place)
    above = [other for other in _stack(coats, place, before) if other.rank > coat.rank]
    minute = cure.ready_at(replace(film, buried=above[0].end) if above else film, state)
    return float("inf") if minute is None else minute


def _asked(step: Step) -> State | None:
    """Return what a step asks of the films below it (common practice, no source)."""
    return {
        Stage.WIPE: None,
        Stage.PRESS: None,
        Stage.UNMASK: None,
        Stage.MASK: State.PRINT_FREE,
        Stage.OIL_WASH: State.SOLVENT_SAFE,
    }.get(step.stage, State.DRY_TO_RECOAT)


def _reading(book: Book, cure: Cure, coats: list[Coat], coat: Coat) -> Iterator[str]:
    """Hold one coat against all that stand before it in the written order."""
    model = next(m for p in book.projects for m in p.models if m.name == coat.model)
    for place in coat.places:
        for other in coats:
            if other.rank < coat.rank and place in other.places and other.end > coat.start:
                yield f"{coat} begins before {other} has ended"
        below = _stack(coats, place, coat.rank)
        state = _asked(coat.step)
        every = coat.step.stage in (Stage.MASK, Stage.OIL_WASH)  # the others feel the top alone
        for other in below if every else below[-1:]:
            label = book.coating(other.films[place]).recoat if place in coat.films else ()
            if label and state is State.DRY_TO_RECOAT:
                if not any(_within(window, coat, other) for window in label):
                    yield f"{coat} is in no window of {other}"
            elif state and coat.start < _ready(book, cure, coats, other, place, state, coat.rank):
                yield f"{coat} is too early for {place} of {other}"
        if coat.step.stage is Stage.WIPE and below:
            wash = below[-1]
            if not wash.end + WIPE_FROM <= coat.start < wash.start + WIPE_UNTIL:
                yield f"{coat} is not in the time of {wash}"
    yield from _handled(book, cure, coats, coat, model)
    if coat.step.stage is Stage.UNMASK:
        yield from _uncovered(book, cure, coats, coat)


def _within(window: Window, coat: Coat, below: Coat) -> bool:
    """Tell whether a coat begins in a label's window of plain minutes."""
    opens = below.end + (window.opens.minutes or 0) if window.opens else below.end
    closes = below.start + (window.closes.minutes or 0) if window.closes else float("inf")
    return opens <= coat.start < closes


def _handled(book: Book, cure: Cure, coats: list[Coat], coat: Coat, model: Model) -> Iterator[str]:
    """Definition 5: fingers on a part without a holder, elsewhere than on the coat's places."""
    for part in coat.parts:
        if model.part(part).holder:
            continue
        for other in coats:
            for place in other.films if other.start < coat.start else ():
                if place.partition("/")[0] != part or place in coat.places:
                    continue
                dry = _ready(book, cure, coats, other, place, State.DRY_TO_HANDLE, 10**6)
                if dry > coat.start:
                    yield f"{coat} holds {place}, which {other} left wet"


def _uncovered(book: Book, cure: Cure, coats: list[Coat], coat: Coat) -> Iterator[str]:
    """Definition 21: what was laid since the mask is set to touch; all within a week."""
    masks = [other for other in coats if other.step.stage is Stage.MASK and other.rank < coat.rank]
    for mask in masks[-1:]:
        if coat.start >= mask.start + WEEK:
            yield f"{coat} comes more than a week after {mask}"
        for other in coats:
            if not mask.rank < other.rank < coat.rank or not other.parts & mask.parts:
                continue
            if other.films and not other.noted and other.start < mask.end:
                yield f"{other} lies under no mask yet"
            for place in other.films:
                if set(mask.places) & {place}:
                    yield f"{other} paints what {mask} covers"
                if coat.start < _ready(book, cure, coats, other, place, State.SET_TO_TOUCH, 10**6):
                    yield f"{coat} pulls at {place} of {other}"


def _full(book: Book, cure: Cure, coats: list[Coat]) -> Iterator[str]:
    """Definition 18: no more units stand wet in a location than it has places."""
    stays: list[tuple[str, tuple[str, str], int, float]] = []
    for coat in coats:
        own = [other for other in coats if other.model == coat.model]
        for place in coat.films:
            dry = _ready(book, cure, own, coat, place, State.DRY_TO_HANDLE, 10**6)
            part = place.partition("/")[0]
            stays.append((coat.location, (coat.model, part), coat.start, dry))
    for location in book.room.locations:
        first = location is book.room.locations[0]
        here = [stay for stay in stays if stay[0] == location.name or (first and not stay[0])]
        for _, _, begin, _ in here:
            units = {unit for _, unit, start, end in here if start <= begin < end}
            if len(units) > location.drying_places:
                yield f"{len(units)} units stand wet in {location.name} at {begin}"
