"""What the timeline says is what the plan and the film say."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

import pytest
from small_book import BRUSH, NOW, at, key, small_book, small_plan

from app.service import demos
from app.service.planning import plan
from app.window.content_from_plan import strip_of
from app.window.timeline.outline import outline
from planner.bench import BenchCalendar
from planner.cure import Band, Cure, Film
from planner.tonight.replayed_plan import ReplayedPlan
from planner.values.book import Book
from planner.values.coating import State
from planner.values.moment import Interval, moment_of
from planner.values.plan import BenchKind, Plan
from planner.values.project import Logged
from planner.values.wishes import Care


def lay(book: Book, made: Plan, now: int) -> ReplayedPlan:
    calendar = BenchCalendar(book.bench_time)
    return ReplayedPlan(book, made, now, calendar, Cure(book.room, calendar.zone))


@pytest.fixture(scope="module")
def small() -> ReplayedPlan:
    return lay(small_book(), small_plan(), NOW)


def test_columns_are_the_evenings_with_work(small: ReplayedPlan) -> None:
    strip = strip_of(small)
    assert [column.interval for column in strip.columns] == [
        Interval(at("2031-03-06 19:30"), at("2031-03-06 21:30")),
        Interval(at("2031-03-13 19:30"), at("2031-03-13 21:30")),
    ]


def test_evenings_before_the_date_are_free(small: ReplayedPlan) -> None:
    # Thursdays after 13 March up to 24 April; the date is 30 April.
    assert len(strip_of(small).free) == 6


@pytest.mark.parametrize(
    ("likely", "band"), [((Care.COAT,), Band.NOMINAL), ((), Band.LATE)], ids=["likely", "surely"]
)
def test_a_wedge_ends_when_the_film_is_ready_for_what_waits(
    likely: tuple[Care, ...], band: Band
) -> None:
    # Definition 6: sand over primer is another coat, and opens at the likely
    # minute where a person plans those so, or else at the late one.
    book = small_book()
    book = replace(book, preferences=replace(book.preferences, likely=likely))
    small = lay(book, small_plan(), NOW)
    strip = strip_of(small)
    wedge = next(wedge for wedge in strip.wedges if wedge.key == key("prime"))
    cure = Cure(small.book.room, small.calendar.zone)
    primer = small.book.coating("grey primer")
    film = Film(primer, primer.dry_film_um, "bench", at("2031-03-06 19:43"))
    assert wedge.start == at("2031-03-06 19:43")
    assert wedge.state is State.DRY_TO_RECOAT
    assert wedge.opens == cure.ready_at(film, State.DRY_TO_RECOAT, band)
    assert (wedge.waiting, wedge.until) == (key("sand"), at("2031-03-13 19:33"))


def test_a_last_film_dries_until_it_can_be_handled(small: ReplayedPlan) -> None:
    wedge = next(wedge for wedge in strip_of(small).wedges if wedge.key == key("sand"))
    assert (wedge.state, wedge.waiting) == (State.DRY_TO_HANDLE, None)


def test_the_wash_closes_an_hour_after_it_was_begun(small: ReplayedPlan) -> None:
    # The step's own gate: to end within 60 min of the wash's start at 20:00.
    (bracket,) = [bracket for bracket in strip_of(small).brackets if bracket.waiting == key("wipe")]
    assert bracket.at == at("2031-03-13 21:00")


def test_an_airbrush_holds_its_coating_from_load_to_cleaning(small: ReplayedPlan) -> None:
    strip = strip_of(small)
    assert strip.airbrushes == (BRUSH,)
    assert [(held.coating, held.interval) for held in strip.held] == [
        ("grey primer", Interval(at("2031-03-06 19:33"), at("2031-03-06 19:43"))),
        ("thin sand", Interval(at("2031-03-13 19:33"), at("2031-03-13 19:45"))),
    ]
    assert [work.kind for work in strip.set_ups].count(BenchKind.CLEAN) == 2


def test_logged_work_outside_bench_time_has_a_column_of_its_own() -> None:
    book = small_book()
    start = moment_of(at("2031-03-05 12:00"), BenchCalendar(book.bench_time).zone)
    fact = Logged(model="cart", step="prime", start=start, end=start + timedelta(minutes=10))
    book = replace(book, projects=(replace(book.projects[0], log=(fact,)),))
    made = plan(book, NOW).plan
    columns = strip_of(lay(book, made, NOW)).columns
    assert columns[0].interval == Interval(at("2031-03-05 12:00"), at("2031-03-05 12:10"))


def test_parts_always_worked_on_together_share_a_lane() -> None:
    book = demos.read("harbour_tenders").book
    now = demos.first_evening(book)
    made = plan(book, now, quick=True).plan
    strip = strip_of(lay(book, made, now))
    parts = [part for lane in strip.lanes for part in lane.parts]
    assert len(parts) == sum(len(m.parts) for p in book.projects for m in p.models)
    assert {piece.key for piece in strip.pieces} == {placed.key for placed in made.placements}
    for piece in strip.pieces:
        assert any(
            column.interval.start <= piece.interval.start
            and piece.interval.end <= column.interval.end
            for column in strip.columns
        )


def test_the_list_says_all_that_the_strip_draws(small: ReplayedPlan) -> None:
    strip = strip_of(small)
    nodes = outline(strip)
    lines = [line for node in nodes for line in node.below]
    assert [line.key for line in lines if line.key] == [
        key("prime"),
        key("sand"),
        key("wash"),
        key("wipe"),
    ]
    assert len(lines) == len(strip.pieces) + len(strip.set_ups)
    wipe = lines[-1]
    assert wipe.below[0].time.endswith("21:00")  # the bracket
    prime = next(line for line in lines if line.key == key("prime"))
    assert "dry-to-recoat" in prime.below[0].what
