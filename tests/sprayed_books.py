"""Books in the middle of an evening, with what was sprayed and cleaned in the log."""

from __future__ import annotations

from dataclasses import replace

from hypothesis import assume
from hypothesis import strategies as st
from strategies import NOW_MINUTE, books

from planner.evening import log_entries
from planner.passes import expand_all
from planner.schedule.greedy import plan_book
from planner.values.book import Book
from planner.values.gear import Cleaned
from planner.values.moment import moment_of, zone_named
from planner.values.plan import PassKey, Placement
from planner.values.project import Logged


def done(
    book: Book, placed: Placement, airbrush: str, *, by: int = 0, under_way: bool = False
) -> Book:
    """Return the book with a pass logged as it was placed, ``by`` minutes later, or begun so."""
    zone = zone_named(book.bench_time.zone)
    key = placed.key
    fact = Logged(
        model=key.model,
        step=key.step,
        coat=key.coat,
        start=moment_of(placed.start + by, zone),
        end=None if under_way else moment_of(placed.end + by, zone),
        airbrush=airbrush,
    )
    return log_entries.written(book, key.project, fact)


def cleaned(book: Book, airbrush: str, minute: int) -> Book:
    """Return the book with a cleaning logged."""
    at = moment_of(minute, zone_named(book.bench_time.zone))
    return replace(book, cleaned=(*book.cleaned, Cleaned(airbrush=airbrush, at=at)))


@st.composite
def sprayed_evenings(draw: st.DrawFn, most_models: int = 2) -> tuple[tuple[Book, int], ...]:
    """Draw a book, and the moments after some events: passes done or begun, airbrushes cleaned.

    All up to some sprayed pass of the first plan is done as planned; then
    passes follow as each new plan has them, a little late.
    """
    book = draw(books(most_models=most_models, most_projects=1))
    names = [airbrush.name for airbrush in book.gear.airbrushes]
    ahead = sorted(
        plan_book(book, NOW_MINUTE).placements,
        key=lambda placement: (placement.start, placement.key),
    )
    sprayed = [at for at, one in enumerate(ahead) if one.airbrush]
    assume(sprayed)
    for placed in ahead[: draw(st.sampled_from(sprayed[:5]))]:
        book = done(book, placed, placed.airbrush)
    now = ahead[len(logged_keys(book))].start
    moments: list[tuple[Book, int]] = []
    for _ in range(draw(st.integers(1, 3))):
        plan = plan_book(book, now)
        following = next((one for one in by_start(plan.placements) if not one.logged), None)
        if following is None:
            break
        airbrush = following.airbrush
        if airbrush and not draw(st.integers(0, 3)):
            airbrush = draw(st.sampled_from([*names, "", "since sold"]))
        under_way = draw(st.integers(0, 4)) == 0
        book = done(book, following, airbrush, under_way=under_way)
        now = following.start if under_way else following.end
        now += draw(st.sampled_from([0, 1, 2, 8, 19, 21, 45]))
        if draw(st.integers(0, 3)) == 0:
            book = cleaned(book, draw(st.sampled_from(names)), now - draw(st.integers(0, 12)))
        moments.append((book, now))
        if under_way:
            break
    assume(moments)
    return tuple(moments)


def by_start(placements: tuple[Placement, ...]) -> list[Placement]:
    """Return placements in order of time."""
    return sorted(placements, key=lambda placement: (placement.start, placement.key))


def logged_keys(book: Book) -> set[PassKey]:
    """Return the passes that stand in the log."""
    return {
        log_entries.key_of(project.name, entry)
        for project in book.projects
        for entry in project.log
    } & {pass_.key for pass_ in expand_all(book)}
