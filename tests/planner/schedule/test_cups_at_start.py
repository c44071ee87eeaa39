"""What the logbook leaves in the cups, for plans and for the judge; definition 15."""

from __future__ import annotations

from dataclasses import replace

import pytest
from drawn_examples import drawn
from hypothesis import HealthCheck, given
from hypothesis import strategies as st
from judge_cases.cups import sprayed_book, with_fine
from judge_cases.making import GEAR, at, book, paint, span, spray, when
from sprayed_books import sprayed_evenings

from planner.bench import calendar_of
from planner.schedule.cups_at_start import HeldCoating, left_in_cups
from planner.schedule.greedy import plan_book
from planner.schedule.judge import Premises, judge
from planner.schedule.judge.cups_at_start import left_by_the_log
from planner.schedule.judge.premises import Case
from planner.schedule.judge.ruling import Ruling
from planner.values.book import Book
from planner.values.gear import Airbrush, Cleaned, Gear
from planner.values.plan import BenchKind, Cost, Plan, Status
from planner.values.project import Logged
from planner.values.step import Step


def kinds(plan: Plan) -> list[BenchKind]:
    return [work.kind for work in plan.bench]


def test_what_was_just_sprayed_is_not_loaded_again():
    """Sand until 19:50, now 19:52: the next sand pass begins at once, and a cleaning ends it."""
    plan = plan_book(sprayed_book(), at("19:52"))
    (placed,) = [placement for placement in plan.placements if not placement.logged]
    assert (placed.start, placed.airbrush) == (at("19:52"), "fine")
    assert kinds(plan) == [BenchKind.CLEAN]
    assert plan.cost.setup_minutes == 6


def test_after_a_cleaning_it_is_loaded_again():
    plan = plan_book(sprayed_book(cleaned="19:51"), at("19:52"))
    assert kinds(plan) == [BenchKind.LOAD, BenchKind.CLEAN]
    assert plan.bench[0].interval == span("19:52-19:55")


def test_a_cup_is_cleaned_though_nothing_more_is_sprayed():
    """Hand work of 15 min goes first, since the cup may stand for 20; then it is cleaned."""
    links = paint("links", "tracks", minutes=15)
    plan = plan_book(
        book(spray("base", "hull/deck"), links, log=(with_fine("19:40", "19:50"),)), at("19:50")
    )
    (placed,) = [placement for placement in plan.placements if not placement.logged]
    assert placed.start == at("19:50")
    (work,) = plan.bench
    assert (work.kind, work.interval.start) == (BenchKind.CLEAN, at("20:05"))
    assert (plan.cost.stretches, plan.cost.setup_minutes) == (1, 6)


def test_hand_work_that_outlasts_the_idle_limit_waits_for_the_cleaning():
    links = paint("links", "tracks", minutes=40)
    plan = plan_book(
        book(spray("base", "hull/deck"), links, log=(with_fine("19:40", "19:50"),)), at("19:50")
    )
    (placed,) = [placement for placement in plan.placements if not placement.logged]
    assert placed.start == at("19:56")


def held(of: Book, now: str) -> dict[str, HeldCoating]:
    return left_in_cups(of, calendar_of(of.bench_time), at(now))


def test_since_when_a_cup_holds_its_load():
    """Two passes ten minutes apart are one load; one of another colour before is not."""
    steps = (
        spray("base", "hull/deck", coat="green"),
        spray("rims", "wheels/rim"),
        spray("links", "tracks"),
    )
    of = book(
        *steps,
        log=(
            with_fine("19:00", "19:10"),
            with_fine("19:15", "19:25", step="rims"),
            with_fine("19:35", "19:45", step="links"),
        ),
    )
    assert held(of, "19:50") == {"fine": HeldCoating("sand", at("19:15"), at("19:45"))}
    assert held(of, "20:05") == {"fine": HeldCoating("sand", at("19:15"), at("19:45"))}
    assert held(of, "20:06") == {}  # it stood for 21 min
    assert held(of, "22:00") == {}  # bench time is over


def test_what_cannot_be_cleaned_before_the_quiet_hours_is_taken_to_be_clean():
    """A cleaning takes 6 min and must end by 21:00."""
    of = sprayed_book(fact=with_fine("20:40", "20:50"))
    assert held(of, "20:54")
    assert held(of, "20:55") == {}


def test_a_project_set_aside_has_filled_the_cup_all_the_same():
    of = sprayed_book()
    other = replace(of.projects[0], name="other", log=())
    of = replace(of, projects=(replace(of.projects[0], active=False), other))
    assert held(of, "19:52") == {"fine": HeldCoating("sand", at("19:40"), at("19:50"))}
    assert judge(of, plan_book(of, at("19:52"))).accepted


def test_a_log_that_says_no_airbrush_leaves_the_plan_as_it_was():
    """Whatever was sprayed then, each load is counted as from a clean cup."""
    said, unsaid = (
        sprayed_book(),
        sprayed_book(fact=replace(with_fine("19:40", "19:50"), airbrush="")),
    )
    assert kinds(plan_book(unsaid, at("19:52"))) == [BenchKind.LOAD, BenchKind.CLEAN]
    assert plan_book(unsaid, at("19:52")).cost != plan_book(said, at("19:52")).cost


@pytest.mark.hypothesis
def test_every_plan_after_an_event_is_accepted_by_the_judge():
    full: list[bool] = []

    @drawn(30, HealthCheck.data_too_large)
    @given(moments=sprayed_evenings())
    def accepted(moments: tuple[tuple[Book, int], ...]) -> None:
        for of, now in moments:
            plan = plan_book(of, now)
            assert judge(of, plan).violations == ()
            full.append(bool(left_in_cups(of, calendar_of(of.bench_time), now)))

    accepted()
    assert sum(full) > len(full) / 4  # else little of this was tried


SPOTS = ("hull/deck", "hull/side", "wheels/rim", "wheels/tread", "tracks/links")
COATS = ("sand", "green", "lacquer")


@st.composite
def messy_logs(draw: st.DrawFn) -> Book:
    """Draw logs that overlap, contradict each other and name airbrushes that are not there."""
    steps: list[Step] = []
    log: list[Logged] = []
    for number, spot in enumerate(SPOTS[: draw(st.integers(1, 5))]):
        steps.append(spray(f"s{number}", spot, coat=draw(st.sampled_from(COATS))))
        begun = at("18:00") + draw(st.integers(-30, 200))
        start = f"{begun % 1440 // 60:02}:{begun % 60:02}"
        minutes = draw(st.integers(1, 40))
        end = f"{(begun + minutes) % 1440 // 60:02}:{(begun + minutes) % 60:02}"
        entry = with_fine(start, end, step=f"s{number}")
        if draw(st.integers(0, 5)) == 0:
            entry = replace(entry, end=None)
        log.append(replace(entry, airbrush=draw(st.sampled_from(["fine", "wide", "", "sold"]))))
    drawn = st.tuples(st.sampled_from(["fine", "wide"]), st.integers(0, 59))
    facts = tuple(
        Cleaned(airbrush=name, at=when(f"19:{minute:02}"))
        for name, minute in draw(st.lists(drawn, max_size=2))
    )
    brushes = (
        replace(GEAR.airbrushes[0], idle_limit_minutes=draw(st.sampled_from([0, 20, 60]))),
        Airbrush(name="wide"),
    )
    whole = replace(book(*steps, log=tuple(log)), cleaned=facts)
    return replace(whole, gear=Gear(airbrushes=brushes))


@drawn(120, HealthCheck.data_too_large)
@given(of=messy_logs(), late=st.integers(0, 240))
def test_heuristic_and_judge_read_the_same_in_the_log(of, late):
    now = at("18:00") + late
    empty = Plan(now, (), (), (), Status.FEASIBLE, Cost(0, 0, 0, 0, 0), ())
    case = Case(Premises(of), empty, None)
    under_way = {key: span.end for key, span in case.spans.items() if span.under_way}
    free = max([now, *under_way.values()])
    mine = left_in_cups(of, calendar_of(of.bench_time), free, under_way)
    _, theirs = left_by_the_log(Ruling(case))
    assert {name: (one.coating, one.since, one.used) for name, one in mine.items()} == {
        name: (one.holds, one.filled, one.since) for name, one in theirs.items()
    }
