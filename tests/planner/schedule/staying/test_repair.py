"""The plan before, repaired: what can stay stays, to the minute (definition 27a)."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta
from random import Random

from drawn_examples import drawn
from hypothesis import given
from hypothesis import strategies as st
from judge_cases.making import NOW, at, book, paint, spray, when, work
from relaxing_edits import RELAXING, usual
from strategies import NOW_MINUTE, books

from app.service import demos
from app.service.planning import plan
from planner.bench import calendar_of
from planner.cure import Cure
from planner.schedule.greedy import plan_book
from planner.schedule.judge import Premises, judge
from planner.schedule.optimise.search import Effort, improve
from planner.schedule.staying.policy import moved_passes, worth
from planner.schedule.staying.repair import repaired
from planner.values.book import Book
from planner.values.moment import Interval, moment_of, zone_named
from planner.values.plan import BenchKind, BenchWork, Plan
from planner.values.project import Logged, Pin
from planner.values.refusal import Refused
from planner.values.step import Stage, Step

ONE_ROUND = Effort(rolls=1, proofs=0)
SPOTS = ("hull/deck", "hull/side", "wheels/tread", "wheels/rim", "tracks/links")
LONG = 100  # minutes: two of them fill an evening of four hours


def searched(of: Book, first: Plan) -> Plan:
    """Return the best plan of a short search."""
    cure, calendar = Cure(of.room, zone_named(of.bench_time.zone)), calendar_of(of.bench_time)
    *_, last = improve(of, first, cure=cure, calendar=calendar, effort=ONE_ROUND)
    return last.plan


def again(of: Book, last: Plan, now: int = NOW, promised: frozenset[int] = frozenset()) -> Plan:
    """Return the plan before, repaired for a book, accepted by the judge."""
    calendar = calendar_of(of.bench_time)
    premises = Premises(of, calendar=calendar)
    made = repaired(of, last, now, premises=premises, calendar=calendar, firm=promised)
    assert made is not None
    assert judge(of, made.plan) == made.verdict
    assert made.verdict.accepted
    return made.plan


def starts(made: Plan) -> dict[str, int]:
    return {placement.key.step: placement.start for placement in made.placements}


def long_ones(*names: str) -> Book:
    """Return a book of work that no film holds up; two pieces fill an evening."""
    return book(*(long(name, spot) for name, spot in zip(names, SPOTS, strict=False)))


def long(name: str, spot: str, minutes: int = LONG) -> Step:
    return work(name, Stage.CLEAN, spot, minutes=minutes)


# -- edits that only allow more ---------------------------------------------------------------


@drawn(60)
@given(
    data=st.data(),
    kinds=st.tuples(st.booleans(), st.booleans(), st.booleans()),
    seed=st.integers(0, 10**6),
)
def test_an_edit_that_only_allows_more_loses_nothing_and_moves_nothing_for_nothing(
    data, kinds: tuple[bool, bool, bool], seed: int
) -> None:
    logged, pinned, wished = kinds
    of = usual(
        data.draw(books(most_models=2, most_blocks=3, logged=logged, pinned=pinned, wished=wished))
    )
    random = Random(seed)
    last = plan(of, NOW_MINUTE).plan
    if seed % 4 == 0:
        last = searched(of, last)
    for edit in random.sample(RELAXING, 2):
        try:
            after = edit(of, random)
        except Refused:  # such a book cannot be
            continue
        check_nothing_lost(after, last, plan(after, NOW_MINUTE, last=last).plan)


def check_nothing_lost(after: Book, last: Plan, made: Plan) -> None:
    calendar = calendar_of(after.bench_time)
    first = (last.cost.unplaced, last.cost.late, last.cost.finish)
    assert (made.cost.unplaced, made.cost.late, made.cost.finish) <= first
    if worth(after, calendar, made) >= worth(after, calendar, last):
        there = {placement.key for placement in made.placements}
        was = [
            (placement.key, placement.pieces)
            for placement in last.placements
            if placement.key in there
        ]
        assert [(placement.key, placement.pieces) for placement in made.placements] == was


@drawn(20)
@given(of=books(most_models=2, logged=True, pinned=True, wished=True))
def test_nothing_changed_and_nothing_moves(of: Book) -> None:
    last = plan_book(of, NOW_MINUTE)
    calendar = calendar_of(of.bench_time)
    premises = Premises(of, calendar=calendar)
    made = repaired(of, last, NOW_MINUTE, premises=premises, calendar=calendar)
    assert made is not None
    made = made.plan
    there = {placement.key for placement in last.placements}
    kept = [
        (placement.key, placement.pieces) for placement in made.placements if placement.key in there
    ]
    assert kept == [
        (placement.key, placement.pieces) for placement in last.placements
    ]  # a repair may place more
    assert set(last.bench) <= set(made.bench)


# -- edits that take something away -----------------------------------------------------------


def test_a_lost_evening_moves_what_was_in_it_into_free_room_and_nothing_else() -> None:
    of = long_ones("a", "b", "c", "d", "e")  # Monday a b, Tuesday c d, Wednesday e
    last = plan_book(of, NOW)
    tuesday = replace(of.bench_time, skipped=(date(2031, 3, 4),))
    made = again(replace(of, bench_time=tuesday), last)
    was, now = starts(last), starts(made)
    assert {name for name in was if was[name] != now[name]} == {
        name for name in was if at("1/18:00") <= was[name] < at("1/22:00")
    }
    assert max(now.values()) < at("3/22:00")


def test_a_step_that_is_new_goes_where_hands_are_free() -> None:
    of = long_ones("a", "b", "c")
    last = plan_book(of, NOW)
    more = book(*of.projects[0].models[0].steps, long("extra", "hull/belly", 30))
    made = again(more, last)
    assert {name: start for name, start in starts(made).items() if name != "extra"} == starts(last)
    assert starts(made)["extra"] == at("21:20")  # two times 100 minutes after 18:00


def test_an_hour_late_tonight_keeps_its_order_and_what_no_longer_fits_goes_on() -> None:
    of = long_ones("a", "b", "c", "d")
    last = plan_book(of, NOW)
    tonight = sorted((s, n) for n, s in starts(last).items() if s < at("22:00"))
    made = again(of, last, at("19:00"))
    now = starts(made)
    kept, moved = [n for _, n in tonight if now[n] < at("22:00")], tonight[1][1]
    assert kept == [tonight[0][1]]
    assert now[kept[0]] == at("19:00")
    assert now[moved] >= at("1/18:00")
    others = [name for name in now if name not in (kept[0], moved)]
    assert all(now[name] == starts(last)[name] for name in others)


def test_a_fact_that_took_longer_moves_only_what_it_must() -> None:
    of = book(
        spray("sand", "hull"), spray("green", "hull/deck", coat="green"), paint("dry", "wheels")
    )
    last = plan_book(of, NOW)
    done = Logged(model="cart", step="sand", start=when("18:03"), end=when("18:40"))
    logged = replace(of, projects=(replace(of.projects[0], log=(done,)),))
    made = again(logged, last, at("18:40"))
    assert not made.unplaced
    assert all(
        placement.start >= at("18:40") for placement in made.placements if not placement.logged
    )


def test_work_that_overran_a_cleaning_cleans_first_and_moves_nothing_to_another_evening() -> None:
    """The cup may not stand till the next coat; with it cleaned at once, all still fits."""
    of = demos.read("lone_lamplighter").book
    now = demos.first_evening(of)
    last = plan(of, now).plan
    first = last.placements[0]
    (cleaned,) = [one for one in last.bench if one.kind is BenchKind.CLEAN][:1]
    assert cleaned.interval.start == first.end
    late, zone = first.end + 7, zone_named(of.bench_time.zone)
    minutes = of.gear.airbrushes[0].clean_minutes
    done = Logged(
        model=first.key.model,
        step=first.key.step,
        start=moment_of(first.start, zone),
        end=moment_of(late, zone),
        airbrush=first.airbrush,
    )
    made = again(replace(of, projects=(replace(of.projects[0], log=(done,)),)), last, late)
    assert moved_passes(calendar_of(of.bench_time), last, made) == 0
    assert BenchWork(BenchKind.CLEAN, Interval(late, late + minutes), first.airbrush) in made.bench


def test_what_was_put_off_comes_before_the_work_that_needs_it() -> None:
    """Tuesday: b, then c, which waits for b; what waits for neither comes after."""
    of = book(
        *(long("a", SPOTS[0], 120), long("b", SPOTS[1], 60)),
        replace(long("c", SPOTS[2], 60), after=("b",)),
        long("d", SPOTS[3], 60),
    )
    pins = [Pin(model="cart", step=name, on=date(2031, 3, 4)) for name in "cd"]
    last = plan_book(replace(of, projects=(replace(of.projects[0], pins=tuple(pins)),)), NOW)
    assert starts(last)["b"] < at("22:00")
    assert starts(last)["c"] < starts(last)["d"]
    late = Logged(model="cart", step="a", start=when("18:00"), end=when("21:50"))
    done = replace(of, projects=(replace(of.projects[0], log=(late,)),))
    made = again(done, last, at("21:50"))
    order = sorted((start, name) for name, start in starts(made).items())
    assert [name for _, name in order] == ["a", "b", "c", "d"]
    assert order[1][0] == at("1/18:00")


def test_a_pin_moves_what_is_pinned_and_no_more() -> None:
    of = long_ones("a", "b", "c", "d", "e")
    last = plan_book(of, NOW)
    name = min(starts(last), key=starts(last).__getitem__)
    pin = Pin(model="cart", step=name, on=date(2031, 3, 5))
    made = again(replace(of, projects=(replace(of.projects[0], pins=(pin,)),)), last)
    was, now = starts(last), starts(made)
    assert at("2/18:00") <= now[name] < at("2/22:00")
    assert [other for other in was if other != name and was[other] != now[other]] == []


def test_a_wish_for_one_stretch_brings_the_two_together() -> None:
    of = long_ones("a", "b", "c", "d")
    last = plan_book(of, NOW)
    by_start = sorted(starts(last), key=starts(last).__getitem__)
    pin = Pin(model="cart", step=by_start[0], beside=f"cart/{by_start[3]}")
    made = again(replace(of, projects=(replace(of.projects[0], pins=(pin,)),)), last)
    calendar, now = calendar_of(of.bench_time), starts(made)
    assert calendar.stretch_at(now[by_start[0]]) == calendar.stretch_at(now[by_start[3]])
    assert not made.unplaced


def test_a_promised_evening_is_left_alone_unless_it_must_change() -> None:
    of = long_ones("a", "b", "c")
    last = plan_book(of, NOW)
    wednesday = Interval(at("1/18:00"), at("1/22:00"))
    more = book(*of.projects[0].models[0].steps, long("extra", "hull/belly", 60))
    free, firm = again(more, last), again(more, last, promised=frozenset({wednesday.start}))
    assert starts(free)["extra"] in range(wednesday.start, wednesday.end)
    assert starts(firm)["extra"] >= at("2/18:00")
    away = replace(of.bench_time, skipped=(date(2031, 3, 4),))
    forced = again(replace(of, bench_time=away), last, promised=frozenset({wednesday.start}))
    assert not forced.unplaced


def test_hours_far_ahead_move_nothing() -> None:
    of = demos.read("harbour_tenders").book
    now = demos.first_evening(of)
    last = plan(of, now).plan
    skipped = calendar_of(of.bench_time).next_stretch(now + 400 * 1440)
    assert skipped is not None
    away = replace(of.bench_time, skipped=(*of.bench_time.skipped, skipped.on))
    made = plan(replace(of, bench_time=away), now, last=last).plan
    assert (made.placements, made.bench) == (last.placements, last.bench)
    assert moved_passes(calendar_of(away), last, made) == 0


def test_the_next_day_the_plan_goes_on_where_it_was() -> None:
    """An evening of which nothing is logged is done later; whatever need not wait stays."""
    of = long_ones("a", "b", "c", "d", "e")
    last = plan_book(of, NOW)
    made = again(of, last, at("1/12:00"))
    was, now = starts(last), starts(made)
    lost = {name for name in was if was[name] < at("22:00")}
    assert all(now[name] == was[name] for name in set(was) - lost)
    assert all(at("2/18:00") <= now[name] for name in lost)
    assert timedelta(minutes=max(now.values()) - NOW) < timedelta(days=4)


def test_films_stay_where_the_plan_lets_them_dry() -> None:
    of = demos.read("winter_garage").book
    now = demos.first_evening(of)
    last = plan(of, now).plan
    made = again(of, last, now)
    assert [placement.location for placement in made.placements] == [
        placement.location for placement in last.placements
    ]
