"""Wishes for one stretch, without a date, that no stretch there will ever be can hold.

Bench time of the tenders is 150 minutes on weekdays and 180 on Saturdays.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from datetime import date, datetime
from functools import cache
from zoneinfo import ZoneInfo

import pytest
from told_plans import explained

from app.service import demos, planning
from planner.bench import calendar_of
from planner.cure import Cure
from planner.schedule.greedy import plan_book
from planner.schedule.judge import judge
from planner.schedule.optimise.conflict import least_conflict
from planner.schedule.optimise.demands import Demand, only
from planner.schedule.optimise.infeasibility_proof import contradicts
from planner.schedule.optimise.same_stretch_proof import comes_round
from planner.values.bench_time import BenchTime, Extra, Recurring
from planner.values.book import Book
from planner.values.coating import Mark, State, StateTime, Window
from planner.values.moment import minute_of, zone_named
from planner.values.plan import Status
from planner.values.project import Pin
from planner.values.room import AirPoint, Location
from planner.values.step import Gate, Minutes, Step, Trait

TRACTOR, FIGURE, BARGE, TRUCK = (
    "Quay Tractor Heron",
    "Lamplighter with a pole",
    "Salt Barge Willow",
    "Orchard Truck Quince",
)
BENCH = "the bench time there is"


@cache
def demo(name: str, last: str = "") -> tuple[Book, int]:
    """Return the first model of a demo up to the step ``last``, and its first evening."""
    book = demos.read(name).book
    first = book.projects[0]
    model = first.models[0]
    ids = [step.id for step in model.steps]
    model = replace(model, steps=model.steps[: ids.index(last) + 1 if last else len(ids)])
    book = replace(book, projects=(replace(first, models=(model,)),))
    return book, demos.first_evening(book)


def beside(book: Book, *pairs: tuple[str, str]) -> Book:
    """Return a book in which the first of each pair is wished in one session with the second."""
    project = book.projects[0]
    model = project.models[0].name
    pins = [Pin(model=model, step=pair, beside=f"{model}/{other}") for pair, other in pairs]
    return replace(book, projects=(replace(project, pins=tuple(pins)),))


def steps(book: Book, **changes: dict[str, object]) -> Book:
    """Return a book with some fields of steps changed; ``_`` in a name stands for ``-``."""
    named = {name.replace("_", "-"): fields for name, fields in changes.items()}

    def changed(step: Step) -> Step:
        return replace(step, **named.get(step.id, {}))  # type: ignore[arg-type]

    project = book.projects[0]
    (model,) = project.models
    model = replace(model, steps=tuple(changed(step) for step in model.steps))
    return replace(book, projects=(replace(project, models=(model,)),))


def cure_of(book: Book) -> Cure:
    return Cure(book.room, zone_named(book.bench_time.zone))


def longer(first: int, second: int, **rest: object) -> tuple[Book, int]:
    """Running gear and tools of the tractor, side by side, wished in one session."""
    book, now = demo("harbour_tenders", "grey-tools")
    fields = {"split_least": None, **rest}
    book = steps(
        book,
        grey_running_gear={"minutes": Minutes(fixed=first), **fields},
        grey_tools={"minutes": Minutes(fixed=second), **fields},
    )
    return beside(book, ("grey-running-gear", "grey-tools")), now


def too_long_for_any_evening() -> tuple[Book, int]:
    """91 + 90 minutes; a Saturday has 180."""
    return longer(91, 90)


def too_long_with_what_stands_between() -> tuple[Book, int]:
    """The mask's 100 and the unmasking's 90 minutes have the spraying of the bands between."""
    book, now = demo("harbour_tenders", "unmask")
    book = steps(
        book, mask_bands={"minutes": Minutes(fixed=100)}, unmask={"minutes": Minutes(fixed=90)}
    )
    return beside(book, ("unmask", "mask-bands")), now


def a_written_wait_longer_than_any_evening() -> tuple[Book, int]:
    """200 minutes are written between two that are wished in one session."""
    book, now = demo("harbour_tenders", "grey-tools")
    wait = Gate(after="grey-running-gear", windows=(Window(opens=Mark(minutes=200)),))
    book = steps(book, grey_tools={"gates": (wait,)})
    return beside(book, ("grey-tools", "grey-running-gear")), now


def films_between_dry_for_days() -> tuple[Book, int]:
    """Decals lie between the gloss under them and the seal over them."""
    book, now = demo("harbour_tenders", "seal")
    return beside(book, ("seal", "gloss-bed")), now


def two_coats_longer_than_a_saturday() -> tuple[Book, int]:
    """2 × 121 minutes; the figure's Saturdays have 240."""
    book, now = demo("lone_lamplighter", "skin")
    fields = {"minutes": Minutes(fixed=121), "traits": (Trait.ONE_STRETCH,)}
    return steps(book, skin=fields), now


def two_pours_in_one_go() -> tuple[Book, int]:
    """The two pours of resin cure for a day and more each."""
    book, now = demo("winter_garage", "pour")
    return steps(book, pour={"traits": (Trait.ONE_STRETCH,)}), now


def a_truck_from_gloss_to_seal() -> tuple[Book, int]:
    book, now = demo("club_day_batch", "seal")
    return beside(book, ("seal", "gloss-bed")), now


TWINS: dict[Callable[[], tuple[Book, int]], tuple[str, ...]] = {
    too_long_for_any_evening: ("grey-running-gear is wished in one session", BENCH),
    too_long_with_what_stands_between: ("unmask is wished in one session", BENCH),
    a_written_wait_longer_than_any_evening: ("grey-tools is wished in one session", BENCH),
    films_between_dry_for_days: ("seal is wished in one session", BENCH),
    two_coats_longer_than_a_saturday: ("skin is marked all in one stretch", BENCH),
    two_pours_in_one_go: ("pour is marked all in one stretch", BENCH),
    a_truck_from_gloss_to_seal: ("seal is wished in one session", BENCH),
}


def planned_whole(book: Book, now: int, cure: Cure) -> bool:
    plan = plan_book(book, now, cure=cure)
    return not plan.unplaced and judge(book, plan).accepted


@pytest.mark.parametrize("make", TWINS, ids=lambda make: make.__name__)
def test_the_wish_and_the_bench_time_clash_and_neither_alone(make):
    book, now = make()
    cure = cure_of(book)
    conflict = least_conflict(book, now, cure)
    found = [one.clash.what for one in conflict]
    assert len(found) == len(TWINS[make]), found
    for text, part in zip(found, TWINS[make], strict=True):
        assert part in text
    assert contradicts(only(book, conflict), now, cure)
    for one in conflict:
        rest = only(book, [other for other in conflict if other is not one])
        assert not contradicts(rest, now, cure), one.clash.what
        assert planned_whole(rest, now, cure) or planned_whole(one.without(book), now, cure)


def test_the_plan_of_such_a_twin_is_called_infeasible_with_its_reason():
    book, now = too_long_for_any_evening()
    first = planning.plan(book, now)
    shown = explained(first, book)
    assert first.plan.status is Status.INCOMPLETE
    assert shown.plan.status is Status.INFEASIBLE
    assert len(shown.plan.conflict) == 2
    assert shown.verdict.accepted


# -- what just fits ---------------------------------------------------------------------------


def test_what_just_fills_a_saturday_is_not_called_impossible():
    """90 + 90 minutes are the 180 of a Saturday."""
    book, now = longer(90, 90)
    assert not contradicts(book, now, cure_of(book))
    assert planned_whole(book, now, cure_of(book))


def test_of_what_may_be_divided_only_the_beginning_must_be_there():
    """Of 170 minutes a piece of 10 is begun beside the 150; 320 fit into no stretch."""
    book, now = longer(170, 150, split_least=10)
    assert not contradicts(book, now, cure_of(book))
    whole, now = longer(170, 150)
    assert contradicts(whole, now, cure_of(whole))


def test_what_must_be_ended_before_the_other_counts_whole():
    """As above, but the tools wait for the running gear: 170 + 10 would fit, 170 + 11 not."""
    for piece, impossible in ((10, False), (11, True)):
        book, now = demo("harbour_tenders", "grey-tools")
        book = steps(
            book,
            grey_running_gear={"minutes": Minutes(fixed=170), "split_least": 10},
            grey_tools={
                "minutes": Minutes(fixed=piece),
                "split_least": None,
                "after": ("grey-running-gear",),
            },
        )
        book = beside(book, ("grey-tools", "grey-running-gear"))
        assert contradicts(book, now, cure_of(book)) == impossible


def test_one_long_stretch_to_come_is_enough():
    """An extra stretch of 200 minutes, two years on, holds 91 + 90."""
    book, now = longer(91, 90)
    zone = ZoneInfo(book.bench_time.zone)
    day = datetime(2028, 5, 6, 9, 0, tzinfo=zone)
    extra = Extra(start=day, end=day.replace(hour=12, minute=20))
    book = replace(book, bench_time=replace(book.bench_time, extra=(extra,)))
    assert not contradicts(book, now, cure_of(book))


def test_a_wish_that_holds_if_films_dry_in_the_warm_box_is_not_called_impossible():
    """With the box at 40 °C the second coat goes on in the evening of the first; without, never."""
    book, now = demo("harbour_tenders", "base")
    box = Location(
        name="a warm box",
        drying_places=20,
        workdays=(AirPoint(at="00:00", temperature_c=40, humidity_pct=20),),
    )
    bench = book.room.locations[0]
    cold = replace(
        bench, workdays=(AirPoint(at="00:00", temperature_c=12, humidity_pct=60),), weekends=()
    )
    book = replace(book, room=replace(book.room, locations=(cold, box), readings=()))
    slow = (StateTime(state=State.DRY_TO_RECOAT, minutes=150),)
    book = replace(book, coatings=tuple(replace(coating, times=slow) for coating in book.coatings))
    book = steps(book, base={"traits": (Trait.ONE_STRETCH,), "dries_in": ""})
    assert contradicts(book, now, cure_of(book))
    choice = steps(book, base={"or_in": ("a warm box",)})
    assert planned_whole(choice, now, cure_of(choice))
    assert not contradicts(choice, now, cure_of(choice))


# -- more than one ----------------------------------------------------------------------------


def overlapping() -> tuple[Book, int]:
    """Of three at 100 minutes, two wishes each bind two; every pair is too long."""
    book, now = demo("harbour_tenders", "grey-tools")
    long = {"minutes": Minutes(fixed=100), "split_least": None}
    book = steps(book, mask_bands=long, grey_running_gear=long, grey_tools=long)
    return (
        beside(book, ("grey-running-gear", "grey-tools"), ("mask-bands", "grey-running-gear")),
        now,
    )


def test_two_conflicts_that_share_the_bench_time_are_told_one_after_the_other():
    book, now = overlapping()
    cure = cure_of(book)
    first = least_conflict(book, now, cure)
    wish, bench = _split(first)
    second = least_conflict(wish.without(book), now, cure)
    other, again = _split(second)
    assert other.clash != wish.clash
    assert bench.clash == again.clash
    assert least_conflict(other.without(wish.without(book)), now, cure) == ()
    assert least_conflict(bench.without(book), now, cure) == ()


def _split(conflict: tuple[Demand, ...]) -> tuple[Demand, Demand]:
    wish, bench = conflict
    assert "in one session" in wish.clash.what
    assert bench.clash.what == BENCH
    return wish, bench


# -- what ever means --------------------------------------------------------------------------

SINCE = date(2026, 1, 5)
END = minute_of(datetime(2029, 3, 1, tzinfo=ZoneInfo("UTC")))


def bench(*rules: str, start: str = "19:00", end: str = "21:00", since: date = SINCE) -> BenchTime:
    return BenchTime(
        zone="UTC",
        stretches=tuple(Recurring(rule=rule, since=since, start=start, end=end) for rule in rules),
    )


@pytest.mark.parametrize(
    ("hours", "known"),
    [
        (bench("FREQ=WEEKLY;BYDAY=TU,TH"), True),
        (bench("FREQ=DAILY;INTERVAL=2", "FREQ=WEEKLY;BYDAY=SA"), True),
        (bench("FREQ=WEEKLY;BYDAY=SA", start="22:00", end="02:30"), True),
        # 7 × 11 × 13 = 1001 days until all three fall on one day again
        (bench("FREQ=WEEKLY", "FREQ=DAILY;INTERVAL=11", "FREQ=DAILY;INTERVAL=13"), False),
        # every tenth night meets the night in which clocks change once in decades
        (bench("FREQ=DAILY;INTERVAL=10", start="22:00", end="02:30"), False),
        (bench("FREQ=MONTHLY;BYDAY=1SA"), False),
        (bench("FREQ=WEEKLY;BYDAY=TU;BYMONTH=2"), False),
        (bench("FREQ=WEEKLY;BYDAY=TU", since=date(2028, 6, 6)), False),
    ],
)
def test_stretches_are_known_for_ever_where_they_soon_repeat(hours, known):
    assert comes_round(hours, END) is known


def test_where_stretches_may_yet_grow_nothing_is_proven():
    """By month, stretches of two rules may meet on a day that lies decades ahead."""
    book, now = too_long_for_any_evening()
    monthly = Recurring(
        rule="FREQ=MONTHLY;BYMONTHDAY=13", since=date(2026, 1, 13), start="17:00", end="17:30"
    )
    hours = replace(book.bench_time, stretches=(*book.bench_time.stretches, monthly))
    assert contradicts(book, now, cure_of(book))
    assert not contradicts(replace(book, bench_time=hours), now, cure_of(book))
    assert calendar_of(hours).next_stretch(now) is not None
