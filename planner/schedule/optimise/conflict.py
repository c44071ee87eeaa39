"""Why no plan can place everything: a least set of things that cannot hold together.

`contradicts` proves that a book has no full plan, or does not know.  What a
person could give way on are `Demand`s; of those a least set is sought that
still contradicts: with any one of them given up, nothing is proven any more.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Callable, Iterator
from dataclasses import dataclass, replace
from datetime import date, timedelta

from planner.bench import BenchCalendar, calendar_of
from planner.cure import Cure
from planner.schedule.greedy import Search
from planner.schedule.optimise.board import NEVER, Board
from planner.schedule.optimise.master import Work
from planner.schedule.optimise.reach import Reach, reaches
from planner.schedule.optimise.stretch_check import possible
from planner.schedule.problem import Problem
from planner.schedule.rules import RULES
from planner.values.bench_time import Recurring
from planner.values.book import Book
from planner.values.model import Model
from planner.values.moment import moment_of
from planner.values.plan import Bound, Clash, Plan, Status
from planner.values.project import Pin, Project
from planner.values.step import Gate, Step

BEYOND = 45 * 1440  # how far past every head and wish the stretches are looked at [min]
LONG = 3 * 366 * 1440
ALWAYS_FROM = date(2020, 1, 1)  # at the latest; whoever is always at the bench is there by now
FIRST_DAY = date(1971, 1, 1)


@dataclass(frozen=True)
class Demand:
    """Something that a person may give up; ``without`` is the book without it.

    ``number`` tells it from others of its book that read the same.
    """

    clash: Clash
    without: Callable[[Book], Book]
    number: int = -1


def explain(book: Book, now: int, cure: Cure) -> tuple[Clash, ...]:
    """Return a least set of demands that cannot hold together; empty if nothing is proven."""
    return tuple(one.clash for one in least_conflict(book, now, cure))


def infeasible(plan: Plan, clashes: tuple[Clash, ...]) -> Plan:
    """Return a plan with passes left over that says why no plan can do without."""
    if not clashes or not plan.unplaced:
        return plan
    proof = "cannot hold together: " + "; ".join(one.what for one in clashes)
    bounds = (Bound("unplaced", 1, proof),)
    return replace(plan, status=Status.INFEASIBLE, bounds=bounds, conflict=clashes)


def least_conflict(book: Book, now: int, cure: Cure) -> tuple[Demand, ...]:
    """Return the demands of a least conflict, in the order of the book.

    What contradicts even with every demand given up (an order of steps that
    cannot be) comes as demands of its own, which only an edit can mend.
    """
    if not contradicts(book, now, cure):
        return ()
    fixed = tuple(_structural(book))
    if fixed:
        return fixed[:1]
    kept = list(demands(book))
    for one in list(kept):
        fewer = [other for other in kept if other is not one]
        if contradicts(_only(book, fewer), now, cure):
            kept = fewer
    return tuple(kept)


def _only(book: Book, kept: list[Demand]) -> Book:
    """Return the book in which only these of its demands hold."""
    numbers = {one.number for one in kept}
    for one in demands(book):
        if one.number not in numbers:
            book = one.without(book)
    return book


def only(book: Book, kept: tuple[Demand, ...]) -> Book:
    """Return the book in which only these of its demands hold; for trying subsets."""
    return _only(book, list(kept))


# -- what may be given up ---------------------------------------------------------------------


def demands(book: Book) -> Iterator[Demand]:
    """Yield everything in a book that a person could give up."""
    for number, one in enumerate(_demands(book)):
        yield replace(one, number=number)


def _demands(book: Book) -> Iterator[Demand]:
    for project in book.projects:
        if not project.active:
            continue
        for pin in project.pins:
            yield _of_pin(project, pin)
        if project.pilot:
            text = f"{project.pilot} goes first in {project.name}"
            yield Demand(
                Clash(text, "let the other models begin before it is finished"),
                _changed(project.name, lambda old: replace(old, pilot="")),
            )
        if project.begins is not None:
            text = f"{project.name} does not begin before {project.begins}"
            yield Demand(
                Clash(text, "let it begin earlier"),
                _changed(project.name, lambda old: replace(old, begins=None)),
            )
        for model in project.models:
            for step in model.steps:
                yield from _of_step(project, model, step)
    yield from _of_bench_time(book)


def _of_pin(project: Project, pin: Pin) -> Demand:
    what = f"{pin.model}: {pin.step}" + (f" (coat {pin.coat})" if pin.coat else "")
    if pin.on is not None:
        text = f"{what} is wished for {pin.on}"
    elif pin.not_before is not None:
        text = f"{what} is wished no earlier than {pin.not_before:%Y-%m-%d %H:%M}"
    elif pin.beside is not None:
        text = f"{what} is wished in one stretch with {pin.beside.replace('/', ': ')}"
    else:
        text = f"{what} is wished for {pin.start:%Y-%m-%d %H:%M} to {pin.end:%H:%M}"

    def without(old: Project) -> Project:
        return replace(old, pins=tuple(one for one in old.pins if one != pin))

    return Demand(Clash(text, "move or drop this wish"), _changed(project.name, without))


def _of_step(project: Project, model: Model, step: Step) -> Iterator[Demand]:
    for at, gate in enumerate(step.gates):
        if gate.windows[-1].closes is not None:
            text = f"{model.name}: {step.id} within the window after {gate.after}"
            yield Demand(
                Clash(text, "widen the window, or do less before it"),
                _with_step(project.name, model.name, step.id, _Open(at)),
            )
    if step.traits:
        words = ", ".join(step.traits)
        yield Demand(
            Clash(f"{model.name}: {step.id} is marked {words}", "take the mark off"),
            _with_step(project.name, model.name, step.id, lambda old: replace(old, traits=())),
        )
    if step.helper:
        yield Demand(
            Clash(f"{model.name}: {step.id} needs two people", "do it alone, or ask a helper in"),
            _with_step(project.name, model.name, step.id, lambda old: replace(old, helper=False)),
        )


@dataclass(frozen=True)
class _Open:
    """Leaves the last window of a step's gate open for ever."""

    at: int

    def __call__(self, step: Step) -> Step:
        gates = list(step.gates)
        old: Gate = gates[self.at]
        *first, last = old.windows
        gates[self.at] = replace(old, windows=(*first, replace(last, closes=None)))
        return replace(step, gates=tuple(gates))


def _of_bench_time(book: Book) -> Iterator[Demand]:
    bench = book.bench_time
    if bench.quiet:
        yield Demand(
            Clash("quiet hours", "spray earlier, or allow noise for once"),
            lambda old: replace(old, bench_time=replace(old.bench_time, quiet=())),
        )
    if bench.daylight:
        yield Demand(
            Clash("daylight hours", "work by lamp, or on another day"),
            lambda old: replace(old, bench_time=replace(old.bench_time, daylight=())),
        )
    if bench.skipped:
        days = ", ".join(str(day) for day in bench.skipped[:3])
        yield Demand(
            Clash(f"no bench time on {days}", "find an hour on one of these days"),
            lambda old: replace(old, bench_time=replace(old.bench_time, skipped=())),
        )
    yield Demand(
        Clash("the bench time there is", "add a stretch, or make one longer"),
        _always,
    )


def _always(book: Book) -> Book:
    """Return the book with somebody, and a helper, always at the bench.

    Time without end is no stretch that begins on a wished date, so such a
    wish then names the hours of the date, and those of the stretches that
    did begin on it.
    """
    bench = book.bench_time
    calendar = calendar_of(bench)
    first = [rule.since for rule in bench.stretches] + [one.start.date() for one in bench.extra]
    since = max(FIRST_DAY, min([ALWAYS_FROM, *(day - timedelta(days=400) for day in first)]))
    whole = Recurring(rule="FREQ=DAILY", since=since, start="00:00", end="00:00", people=2)
    return replace(
        book,
        bench_time=replace(bench, stretches=(whole,), skipped=(), extra=()),
        projects=tuple(
            replace(one, pins=tuple(_in_hours(pin, calendar) for pin in one.pins))
            for one in book.projects
        ),
    )


def _in_hours(pin: Pin, calendar: BenchCalendar) -> Pin:
    """Return a wish for a date as one for all hours that the date could mean."""
    if pin.on is None:
        return pin
    begin, end = calendar.day_end(pin.on - timedelta(days=1)), calendar.day_end(pin.on)
    own = [one.interval.end for one in calendar.stretches(begin, end) if one.on == pin.on]
    start = moment_of(begin, calendar.zone)
    until = moment_of(max([end, *own]), calendar.zone)
    return replace(pin, on=None, start=start, end=until)


def _changed(project: str, change: Callable[[Project], Project]) -> Callable[[Book], Book]:
    def made(book: Book) -> Book:
        return replace(
            book,
            projects=tuple(change(one) if one.name == project else one for one in book.projects),
        )

    return made


def _with_step(
    project: str, model: str, step: str, change: Callable[[Step], Step]
) -> Callable[[Book], Book]:
    def with_model(old: Model) -> Model:
        if old.name != model:
            return old
        return replace(
            old, steps=tuple(change(one) if one.id == step else one for one in old.steps)
        )

    return _changed(
        project,
        lambda old: replace(old, models=tuple(with_model(one) for one in old.models)),
    )


def _structural(book: Book) -> Iterator[Demand]:
    """Yield what no wish given up would mend: an order of steps that cannot be done."""
    problem = Problem(book, 0, cure=_no_cure(book), calendar=calendar_of(book.bench_time))
    for activity in problem.activities:
        if activity.blocked:
            key = activity.one.key
            text = f"{key.model}: {key.step}: {activity.blocked}"
            yield Demand(Clash(text, "change the order of the steps"), lambda old: old)


def _no_cure(book: Book) -> Cure:
    return Cure(book.room, calendar_of(book.bench_time).zone)


# -- the proof --------------------------------------------------------------------------------


def contradicts(book: Book, now: int, cure: Cure) -> bool:
    """Tell whether it is proven that no sound plan places every pass."""
    problem = Problem(book, now, cure=cure, calendar=calendar_of(book.bench_time))
    if any(activity.blocked for activity in problem.activities):
        return True
    search = Search(problem, RULES[0], 0, frozenset())
    search.take_facts()
    table = search.table
    if len(table.end) == len(problem.activities):
        return False
    board = Board(problem, table, _horizon(problem))
    if not board.stretches or any(board.head[index] >= NEVER for index in board.free):
        far = Board(problem, table, now + LONG)
        if any(far.head[index] >= NEVER for index in far.free):
            return True
        board = far
    domains = _domains(board, problem.calendar)
    links = reaches(board)
    if not _consistent(board, links, domains):
        return True
    return not _room(board, domains)


def _horizon(problem: Problem) -> int:
    latest = problem.now
    for activity in problem.activities:
        for interval in activity.allowed or ():
            for end in (interval.start, interval.end):
                if end < problem.now + LONG:
                    latest = max(latest, end)
    for tail in problem.tails:
        if tail < LONG:
            latest = max(latest, problem.now + 2 * tail)
    return latest + BEYOND


def _domains(board: Board, calendar: BenchCalendar) -> dict[int, int]:
    """Return, per pass, the stretches that can hold it, as bits; one bit more means "later"."""
    count = len(board.stretches)
    later = 1 << count if calendar.next_stretch(board.ends[-1]) is not None else 0
    found = {}
    for index in board.free:
        bits = 0
        least, head = board.least(index), board.head[index]
        for number, slots in enumerate(board.slots(index)):
            if any(max(slot.start, head) + least <= slot.end for slot in slots):
                bits |= 1 << number
        allowed = board.problem.activities[index].allowed
        endless = allowed is None or any(one.end > board.ends[-1] for one in allowed)
        closing = board.facts.deadline(index)
        if closing < board.ends[-1]:
            endless = False
            bits &= (1 << (board.number_at(closing - 1) + 1)) - 1
        found[index] = bits | (later if endless else 0)
    return found


def _consistent(board: Board, links: list[Reach], domains: dict[int, int]) -> bool:
    """Take away stretches that no other pass allows, until nothing changes."""
    if not all(domains.values()):
        return False
    masks = [(link, _masks(link, len(board.stretches))) for link in links]
    changed = True
    while changed:
        changed = False
        for link, allowed in masks:
            before, after = domains[link.before], domains[link.after]
            support = kept = 0
            for number, mask in enumerate(allowed):
                if before >> number & 1 and mask & after:
                    kept |= 1 << number
                    support |= mask
            if kept != before or support & after != after:
                domains[link.before] = kept
                domains[link.after] = after & support
                changed = True
                if not kept or not after & support:
                    return False
        for one in board.free:
            for other in board.problem.activities[one].together:
                if other in domains and domains[one] & domains[other] != domains[one]:
                    domains[one] &= domains[other]
                    changed = True
                    if not domains[one]:
                        return False
    return True


def _masks(link: Reach, count: int) -> list[int]:
    """Return, per stretch of the earlier pass, the stretches open to the later one."""
    masks = []
    for runs in link.spans:
        mask = 0
        for begin, end in runs or ():
            last = count if end == count - 1 else end  # what reaches the end may be later, too
            mask |= (1 << (last + 1)) - (1 << begin)
        if runs is not None and link.open_ended:
            mask |= 1 << count
        masks.append(mask)
    masks.append(1 << count)
    return masks


def _room(board: Board, domains: dict[int, int]) -> bool:
    """Tell whether what is tied to the same stretches may fit into them."""
    count = len(board.stretches)
    tied: dict[int, list[int]] = defaultdict(list)
    ranges: dict[tuple[int, int], int] = defaultdict(int)
    for index, bits in domains.items():
        if bits >> count & 1:
            continue
        first, last = (bits & -bits).bit_length() - 1, bits.bit_length() - 1
        ranges[first, last] += board.least(index)
        if first == last:
            tied[first].append(index)
    for number, passes in tied.items():
        if possible(board, number, passes, Work(1.0)) is False:
            return False
    for first, last in ranges:
        load = sum(minutes for (a, b), minutes in ranges.items() if first <= a and b <= last)
        hours = sum(board.ends[n] - board.starts[n] for n in range(first, last + 1))
        if load > hours:
            return False
    return True
