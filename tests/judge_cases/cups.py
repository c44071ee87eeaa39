"""What the logbook leaves in a cup (definitions 15 and 16), worked out by hand.

A load takes 3 min, a change 6 or 10, a cleaning 6; a load stands for 20 min
at most.  Everything is sprayed for 10 min.
"""

from __future__ import annotations

from dataclasses import replace

from judge_cases.facts import fact, logged
from judge_cases.making import (
    GEAR,
    Case,
    at,
    book,
    breaks,
    change,
    clean,
    do,
    load,
    piece,
    plan,
    spray,
    sprayed,
    when,
)

from planner.values.book import Book
from planner.values.gear import Airbrush, Cleaned, Gear
from planner.values.plan import BenchWork, Placement, Plan
from planner.values.project import Logged
from planner.values.step import Step

BASE, LINKS = spray("base", "hull/deck"), spray("links", "tracks")


def with_fine(start: str, end: str | None = None, step: str = "base") -> Logged:
    return replace(logged(start, end, step), airbrush="fine")


def sprayed_book(
    *more: Step, fact: Logged | None = None, cleaned: str = "", gear: Gear = GEAR
) -> Book:
    """Return a book whose base was sprayed from 19:40 to 19:50, or as the fact says."""
    of = book(BASE, *(more or (LINKS,)), log=(fact or with_fine("19:40", "19:50"),))
    facts = (Cleaned(airbrush="fine", at=when(cleaned)),) if cleaned else ()
    return replace(of, gear=gear, cleaned=facts)


DONE = fact(sprayed("base", "19:40-19:50"))


def going_on(of: Book, links: str, *bench: BenchWork, now: str, done: Placement = DONE) -> Plan:
    return plan(of, done, sprayed("links", links), bench=bench, now=at(now))


@breaks(15)
def loaded_again_though_it_is_full() -> Case:
    """Two minutes later the cup is full still: the next pass needs no load, and gets none."""
    of = sprayed_book()
    return Case(
        of,
        going_on(of, "19:52-20:02", clean("20:02-20:08"), now="19:52"),
        going_on(of, "19:55-20:05", load("19:52-19:55"), clean("20:05-20:11"), now="19:52"),
    )


@breaks(15)
def not_loaded_though_it_was_cleaned() -> Case:
    of = sprayed_book(cleaned="19:51")
    return Case(
        of,
        going_on(of, "19:55-20:05", load("19:52-19:55"), clean("20:05-20:11"), now="19:52"),
        going_on(of, "19:52-20:02", clean("20:02-20:08"), now="19:52"),
    )


@breaks(15)
def cleaned_before_it_was_sprayed() -> Case:
    """A cleaning of 19:38 empties nothing that was sprayed from 19:40 on."""
    of = sprayed_book(cleaned="19:38")
    return Case(
        of,
        going_on(of, "19:52-20:02", clean("20:02-20:08"), now="19:52"),
        going_on(of, "19:55-20:05", load("19:52-19:55"), clean("20:05-20:11"), now="19:52"),
    )


@breaks(15)
def not_loaded_though_it_stood_too_long() -> Case:
    """At 20:11 it has stood for 21 min: whoever left it has cleaned it, logged or not."""
    of = sprayed_book()
    return Case(
        of,
        going_on(of, "20:14-20:24", load("20:11-20:14"), clean("20:24-20:30"), now="20:11"),
        going_on(of, "20:11-20:21", clean("20:21-20:27"), now="20:11"),
    )


@breaks(15)
def another_airbrush_is_not_full() -> Case:
    """The fine one holds sand and is cleaned; the wide one is clean and must be loaded."""
    of = sprayed_book(gear=Gear(airbrushes=(*GEAR.airbrushes, Airbrush(name="wide"))))

    def wide(links: str, *bench: BenchWork) -> Plan:
        own = tuple(replace(one, airbrush="wide") for one in bench)
        placed = do("links", links, airbrush="wide")
        return plan(of, DONE, placed, bench=[clean("19:52-19:58"), *own], now=at("19:52"))

    return Case(
        of,
        wide("20:01-20:11", load("19:58-20:01"), clean("20:11-20:17")),
        wide("19:58-20:08", clean("20:08-20:14")),
    )


@breaks(15)
def left_full() -> Case:
    """Nothing more is sprayed: the cup is cleaned all the same."""
    of = book(BASE, log=(with_fine("19:40", "19:50"),))
    return Case(
        of,
        plan(of, DONE, bench=[clean("20:10-20:16")], now=at("19:52")),
        plan(of, DONE, now=at("19:52")),
    )


@breaks(16)
def left_standing_for_long() -> Case:
    """Sprayed until 19:50, it may stand until 20:10."""
    of = sprayed_book()
    return Case(
        of,
        going_on(of, "20:10-20:20", clean("20:20-20:26"), now="19:52"),
        going_on(of, "20:11-20:21", clean("20:21-20:27"), now="19:52"),
    )


@breaks(15)
def another_coating_follows() -> Case:
    """From sand to a lacquer is a change between families: 10 min."""
    of = sprayed_book(spray("links", "tracks", coat="lacquer"))
    return Case(
        of,
        going_on(
            of, "20:02-20:12", change("19:52-20:02", "lacquer"), clean("20:12-20:18"), now="19:52"
        ),
        going_on(
            of, "20:01-20:11", change("19:52-20:01", "lacquer"), clean("20:11-20:17"), now="19:52"
        ),
    )


@breaks(15)
def full_the_evening_before() -> Case:
    """Every stretch begins clean: what was sprayed last Sunday at 20:40 is long cleaned."""
    of = sprayed_book(fact=with_fine("-1/20:40", "-1/20:50"))
    done = fact(sprayed("base", piece(at("-1/20:40"), 10)))
    return Case(
        of,
        going_on(
            of, "18:03-18:13", load("18:00-18:03"), clean("18:13-18:19"), now="17:00", done=done
        ),
        going_on(of, "18:00-18:10", clean("18:10-18:16"), now="17:00", done=done),
    )


@breaks(15)
def nobody_said_with_which_airbrush() -> Case:
    """A fact without an airbrush leaves nothing in any cup."""
    of = sprayed_book(fact=logged("19:40", "19:50"))
    done = fact(do("base", "19:40-19:50"))
    return Case(
        of,
        going_on(
            of, "19:55-20:05", load("19:52-19:55"), clean("20:05-20:11"), now="19:52", done=done
        ),
        going_on(of, "19:52-20:02", clean("20:02-20:08"), now="19:52", done=done),
    )


@breaks(16)
def past_the_life_of_what_was_poured() -> Case:
    """A mix good for 60 min was poured at 18:00, when the first of two passes began."""
    first, second = (
        spray("base", "hull/deck", coat="faded"),
        spray("rims", "wheels/rim", coat="faded"),
    )
    links = spray("links", "tracks", coat="faded")
    log = (with_fine("18:00", "18:20"), with_fine("18:35", "18:49", step="rims"))
    of = book(first, second, links, log=log)
    facts = fact(sprayed("base", "18:00-18:20")), fact(sprayed("rims", "18:35-18:49"))

    def sprayed_on(links: str, cleaning: str) -> Plan:
        return plan(of, *facts, sprayed("links", links), bench=[clean(cleaning)], now=at("18:50"))

    return Case(
        of, sprayed_on("18:50-19:00", "19:00-19:06"), sprayed_on("18:51-19:01", "19:01-19:07")
    )


@breaks(22)
def logged_with_another_airbrush() -> Case:
    of = sprayed_book()
    sound = going_on(of, "19:52-20:02", clean("20:02-20:08"), now="19:52")
    other = replace(DONE, airbrush="wide")
    return Case(of, sound, replace(sound, placements=(other, *sound.placements[1:])))
