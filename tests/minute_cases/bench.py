"""Edges of definitions 12 to 17 and 23 to 24: bench time, hands, hours, airbrush, pieces, pins."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

from judge_cases.making import (
    GEAR,
    MONDAY,
    at,
    book,
    do,
    load,
    paint,
    piece,
    spray,
    sprayed,
    when,
    work,
)
from minute_cases.making import Edge, edge, fact

from planner.schedule.partial_schedule import Cup
from planner.values.book import Book
from planner.values.gear import Airbrush, Gear
from planner.values.model import Model
from planner.values.plan import BenchKind, BenchWork, PassKey
from planner.values.project import Logged, Pin
from planner.values.step import Stage, Tool, Trait

ONE = book(paint("base", "hull/deck"))
LOAD, CLEAN, LIMIT, LIFE = 3, 6, 20, 60  # of the airbrush and the mix in `judge_cases.making` [min]


@edge(12)
def no_sooner_than_the_bench_time() -> Edge:
    """From 18:00 on; hands before that are at no bench."""
    return Edge(ONE, "base", at("18:00"), at("17:59"))


@edge(12)
def over_when_the_bench_time_is() -> Edge:
    """Ten minutes that end at 22:00."""
    return Edge(ONE, "base", at("21:50"), at("21:51"))


@edge(13)
def the_units_of_what_goes_on_alone() -> Edge:
    """The bath holds the hull until 19:00: its side can wait no less."""
    bath = work("bath", Stage.CLEAN, "hull/deck", minutes=60, traits=(Trait.HANDS_FREE,))
    of = book(bath, paint("side", "hull/side"))
    return Edge(of, "side", at("19:00"), at("18:59"), done=(do("bath", "18:00-19:00"),))


@edge(13)
def a_helper_from_saturday_on() -> Edge:
    """The second person comes with the stretch of day 5."""
    of = book(paint("base", "hull/deck", helper=True))
    return Edge(of, "base", at("5/18:00"), at("5/17:59"), named=frozenset({12}))


def _around(start: int, minutes: int = 10) -> tuple[BenchWork, ...]:
    filled = BenchWork(BenchKind.LOAD, piece(start - LOAD, LOAD), "fine", "sand")
    return filled, BenchWork(BenchKind.CLEAN, piece(start + minutes, CLEAN), "fine")


@edge(14)
def cleaned_when_the_quiet_hours_begin() -> Edge:
    """20:44 and ten minutes of spraying, six of cleaning: 21:00."""
    of = book(spray("base", "hull/deck"))
    return Edge(of, "base", at("20:44"), at("20:45"), bench=_around, lead=LOAD, airbrush="fine")


@edge(12)
def cleaned_when_the_bench_time_ends() -> Edge:
    """The same without quiet hours: 21:44, ten minutes and six are 22:00."""
    of = book(spray("base", "hull/deck"))
    of = replace(of, bench_time=replace(of.bench_time, quiet=()))
    return Edge(of, "base", at("21:44"), at("21:45"), bench=_around, lead=LOAD, airbrush="fine")


@edge(14)
def noise_over_when_the_quiet_hours_begin() -> Edge:
    of = book(work("sand", Stage.CLEAN, "hull/deck", traits=(Trait.NOISY,)))
    return Edge(of, "sand", at("20:50"), at("20:51"))


@edge(14)
def a_smell_gone_for_an_hour_when_the_quiet_hours_begin() -> Edge:
    """21:00 less an hour is 20:00 (the hour is assumed)."""
    of = book(paint("base", "hull/deck", traits=(Trait.SMELLS,)))
    return Edge(of, "base", at("19:50"), at("19:51"))


@edge(14)
def a_can_before_dark() -> Edge:
    """Daylight ends at 19:00."""
    of = book(paint("base", "hull/deck", tool=Tool.CAN))
    return Edge(of, "base", at("18:50"), at("18:51"))


@edge(14)
def fine_work_before_dark() -> Edge:
    of = book(paint("eyes", "hull/deck", traits=(Trait.DAYLIGHT,)))
    return Edge(of, "eyes", at("18:50"), at("18:51"))


@edge(14)
def hands_free_work_in_daylight_only_while_hands_are_at_it() -> Edge:
    """An hour that keeps hands for five minutes (assumed): they end at 19:00."""
    marks = (Trait.DAYLIGHT, Trait.HANDS_FREE)
    of = book(work("bath", Stage.CLEAN, "hull/deck", minutes=60, traits=marks))
    return Edge(of, "bath", at("18:55"), at("18:56"), minutes=60)


SPRAYS = book(spray("base", "hull/deck"), spray("links", "tracks"))


@edge(16)
def a_load_that_stands_for_its_limit() -> Edge:
    """Sprayed until 18:13 it may stand until 18:33."""

    def served(start: int) -> tuple[BenchWork, ...]:
        return load("18:00-18:03"), BenchWork(BenchKind.CLEAN, piece(start + 10, CLEAN), "fine")

    return Edge(
        SPRAYS,
        "links",
        at("18:13") + LIMIT,
        at("18:13") + LIMIT + 1,
        done=(sprayed("base", "18:03-18:13"),),
        bench=served,
        cups={"fine": Cup("sand", at("18:00"), at("18:13"))},
        airbrush="fine",
    )


@edge(16)
def a_load_that_stands_while_a_brush_is_used() -> Edge:
    """Sprayed until 18:13; brushwork to 18:33 and the cleaning begins within the limit."""

    def served(start: int) -> tuple[BenchWork, ...]:
        return load("18:00-18:03"), BenchWork(BenchKind.CLEAN, piece(start + 10, CLEAN), "fine")

    return Edge(
        book(spray("base", "hull/deck"), paint("links", "tracks")),
        "links",
        at("18:23"),
        at("18:24"),
        done=(sprayed("base", "18:03-18:13"),),
        bench=served,
        cups={"fine": Cup("sand", at("18:00"), at("18:13"))},
    )


@edge(16)
def a_change_that_begins_within_the_limit() -> Edge:
    """Six minutes of changing to green begin at 18:33, so spraying does at 18:39."""
    of = book(spray("base", "hull/deck"), spray("links", "tracks", coat="green"))

    def served(start: int) -> tuple[BenchWork, ...]:
        changed = BenchWork(BenchKind.CHANGE, piece(start - 6, 6), "fine", "green")
        cleaned = BenchWork(BenchKind.CLEAN, piece(start + 10, CLEAN), "fine")
        return load("18:00-18:03"), changed, cleaned

    return Edge(
        of,
        "links",
        at("18:39"),
        at("18:40"),
        done=(sprayed("base", "18:03-18:13"),),
        bench=served,
        cups={"fine": Cup("sand", at("18:00"), at("18:13"))},
        lead=6,
        airbrush="fine",
    )


TWO_AIRBRUSHES = replace(
    book(spray("base", "hull/deck"), spray("links", "tracks", coat="green")),
    gear=Gear(airbrushes=(*GEAR.airbrushes, Airbrush(name="wide"))),
)


def _of_both(start: int) -> list[BenchWork]:
    """Load the wide one before, and clean it and then the fine one after it."""
    wide = BenchWork(BenchKind.LOAD, piece(start - LOAD, LOAD), "wide", "green")
    cleaned = BenchWork(BenchKind.CLEAN, piece(start + 10, CLEAN), "wide")
    return [wide, cleaned, BenchWork(BenchKind.CLEAN, piece(start + 10 + CLEAN, CLEAN), "fine")]


def _both(filled: str, done: str, at_: str, out: str) -> Edge:
    until = at(done.partition("-")[2])
    return Edge(
        TWO_AIRBRUSHES,
        "links",
        at(at_),
        at(out),
        done=(sprayed("base", done),),
        bench=lambda start: [load(filled), *_of_both(start)],
        cups={"fine": Cup("sand", until - 13, until)},
        lead=LOAD,
        airbrush="wide",
    )


@edge(14)
def both_airbrushes_are_clean_when_the_quiet_hours_begin() -> Edge:
    """Ten minutes of spraying and twice six of cleaning from 20:38 on: 21:00."""
    both = _both("20:21-20:24", "20:24-20:34", "20:38", "20:39")
    return replace(both, named=frozenset({14, 16}))  # the other stood for its 20 min by then


@edge(16)
def the_other_airbrush_is_cleaned_within_its_limit() -> Edge:
    """Used until 19:00; from 19:04 on ten minutes and six of cleaning: its own begins at 19:20."""
    return _both("18:47-18:50", "18:50-19:00", "19:04", "19:05")


@edge(16)
def a_mix_to_the_end_of_its_life() -> Edge:
    """Poured at 18:00 and good for an hour: the last pass ends at 19:00."""
    steps = [
        spray(name, place, coat="faded", minutes=minutes)
        for name, place, minutes in (
            ("base", "hull/deck", 19),
            ("side", "hull/side", 18),
            ("links", "tracks", 19),
        )
    ]

    def served(start: int) -> tuple[BenchWork, ...]:
        filled = load("18:00-18:03", "faded")
        return filled, BenchWork(BenchKind.CLEAN, piece(start + 19, CLEAN), "fine")

    return Edge(
        book(*steps),
        "links",
        at("18:41"),
        at("18:42"),
        minutes=19,
        done=(sprayed("base", "18:03-18:22"), sprayed("side", "18:22-18:40")),
        bench=served,
        cups={"fine": Cup("faded", at("18:00"), at("18:40"))},
        airbrush="fine",
    )


def _brushed(minutes: int) -> Edge:
    of = book(paint("base", "hull/deck", coat="faded", minutes=minutes))
    return Edge(of, "base", at("18:00"), at("17:59"), minutes=minutes, named=frozenset({12}))


@edge(12)
def a_brushed_mix_for_all_of_its_life() -> Edge:
    """Definition 16: sixty minutes of brushwork with a mix good for sixty."""
    return _brushed(LIFE)


@edge(23)
def nothing_before_now() -> Edge:
    return Edge(ONE, "base", at("19:00"), at("18:59"), now=at("19:00"))


@edge(23)
def what_is_under_way_comes_first() -> Edge:
    """Begun at 18:00, ten minutes long, now 18:04: until 18:10."""
    log = (Logged(model="cart", step="base", start=when("18:00")),)
    of = book(paint("base", "hull/deck"), paint("links", "tracks"), log=log)
    done = (fact(do("base", "18:00-18:10")),)
    return Edge(of, "links", at("18:10"), at("18:09"), done=done, now=at("18:04"))


def pinned(pin: Pin, **more: object) -> Book:
    """Return a book of one pinned step."""
    return book(paint("base", "hull/deck"), pins=(pin,), **more)


@edge(24)
def no_earlier_than_the_wished_moment() -> Edge:
    of = pinned(Pin(model="cart", step="base", not_before=when("19:00")))
    return Edge(of, "base", at("19:00"), at("18:59"))


@edge(24)
def from_the_beginning_of_the_pinned_interval() -> Edge:
    of = pinned(Pin(model="cart", step="base", start=when("19:00"), end=when("19:30")))
    return Edge(of, "base", at("19:00"), at("18:59"))


@edge(24)
def to_the_end_of_the_pinned_interval() -> Edge:
    of = pinned(Pin(model="cart", step="base", start=when("19:00"), end=when("19:30")))
    return Edge(of, "base", at("19:20"), at("19:21"))


@edge(24)
def from_the_day_on_which_it_may_begin() -> Edge:
    """Bench time all night: day 1 begins at its midnight."""
    rule = replace(ONE.bench_time.stretches[0], start="20:00", end="04:00")
    of = book(paint("base", "hull/deck"), begins=MONDAY + timedelta(days=1))
    of = replace(of, bench_time=replace(of.bench_time, stretches=(rule,), quiet=()))
    return Edge(of, "base", at("1/00:00"), at("23:59"))


@edge(24)
def after_the_last_of_the_pilot() -> Edge:
    """The tracks of the cart go on alone until 19:00; hands are free for the sled at 18:05."""
    bath = work("bath", Stage.CLEAN, "tracks", minutes=60, traits=(Trait.HANDS_FREE,))
    of = book(bath)
    (project,) = of.projects
    (cart,) = project.models
    sled = Model(name="sled", parts=cart.parts, steps=(paint("links", "tracks"),))
    of = replace(of, projects=(replace(project, models=(cart, sled), pilot="cart"),))
    links = PassKey("batch", "sled", "links", 1)
    return Edge(of, links, at("19:00"), at("18:59"), done=(do("bath", "18:00-19:00"),))
