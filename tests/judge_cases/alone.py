"""Plans that break what is asked of work that goes on alone, and of what smells.

A bath of 40 minutes keeps hands for its first five.  Quiet hours begin at
21:00, so what smells has ended by 20:00.
"""

from __future__ import annotations

from dataclasses import replace

from judge_cases.making import (
    Case,
    at,
    book,
    breaks,
    do,
    paint,
    plan,
    prepare,
    span,
    when,
    work,
)

from planner.values.coating import Mark, Preparation, Window
from planner.values.project import Logged, Pin
from planner.values.step import Bound, Gate, Stage, Step, Trait

SMELLS, ALONE, NOISY = (Trait.SMELLS,), (Trait.HANDS_FREE,), (Trait.NOISY, Trait.HANDS_FREE)


def bath(**more: object) -> Step:
    """Return a bath of the hull that goes on alone."""
    given = {"minutes": 40, "traits": ALONE, **more}
    return work("bath", Stage.CLEAN, "hull/deck", **given)  # type: ignore[arg-type]


@breaks(3)
def before_what_goes_on_alone_has_ended() -> Case:
    of = book(bath(), paint("links", "tracks", after=("bath",)))
    first = do("bath", "18:00-18:40")
    return Case(
        of,
        plan(of, first, do("links", "18:40-18:50")),
        plan(of, first, do("links", "18:39-18:49")),
    )


@breaks(7)
def alone_past_a_closing() -> Case:
    """The bath must have ended 60 min after the start of the links; its hands are there at 55."""
    by_then = Gate(after="links", windows=(Window(closes=Mark(minutes=60)),), closing=Bound.END)
    of = book(paint("links", "tracks"), bath(gates=(by_then,)))
    first = do("links", "18:00-18:10")
    return Case(
        of,
        plan(of, first, do("bath", "18:20-19:00")),
        plan(of, first, do("bath", "18:31-19:11")),
    )


@breaks(12)
def no_hands_to_set_it_going() -> Case:
    of = book(bath())
    return Case(of, plan(of, do("bath", "21:55-22:35")), plan(of, do("bath", "21:56-22:36")))


@breaks(13)
def hands_elsewhere_while_it_is_set_going() -> Case:
    of = book(bath(), paint("links", "tracks"))
    first = do("bath", "18:00-18:40")
    return Case(
        of,
        plan(of, first, do("links", "18:05-18:15")),
        plan(of, first, do("links", "18:04-18:14")),
    )


@breaks(13)
def taken_out_of_the_bath() -> Case:
    of = book(bath(), paint("side", "hull/side"))
    first = do("bath", "18:00-18:40")
    return Case(
        of,
        plan(of, first, do("side", "18:40-18:50")),
        plan(of, first, do("side", "18:39-18:49")),
    )


@breaks(13)
def prepared_while_it_bathes() -> Case:
    """Preparing the side handles the hull, too."""
    scuff = Window(opens=Mark(minutes=0), preparation=Preparation.SCUFF, preparation_minutes=5)
    asks = Gate(after="links", windows=(scuff,))
    of = book(paint("links", "tracks"), bath(), paint("side", "hull/side", gates=(asks,)))
    passes = do("links", "18:00-18:10"), do("bath", "18:10-18:50"), do("side", "18:55-19:05")
    return Case(
        of,
        plan(of, *passes, bench=[prepare("18:50-18:55", "side")]),
        plan(of, *passes, bench=[prepare("18:49-18:54", "side")]),
    )


@breaks(14)
def a_smell_an_hour_before_others_sleep() -> Case:
    of = book(paint("clear", "hull/deck", traits=SMELLS))
    return Case(of, plan(of, do("clear", "19:50-20:00")), plan(of, do("clear", "19:51-20:01")))


@breaks(14)
def a_smell_while_others_sleep() -> Case:
    of = book(paint("clear", "hull/deck", traits=SMELLS))
    return Case(of, plan(of, do("clear", "18:00-18:10")), plan(of, do("clear", "21:30-21:40")))


@breaks(14)
def a_piece_that_smells_too_late() -> Case:
    of = book(paint("clear", "hull/deck", minutes=40, split_least=10, traits=SMELLS))
    first, rest = "19:30-19:50", "1/18:00-1/18:20"
    return Case(
        of,
        plan(of, do("clear", first, rest)),
        plan(of, do("clear", "19:41-20:01", rest)),
    )


@breaks(14)
def it_smells_while_it_goes_on_alone() -> Case:
    of = book(bath(traits=(*SMELLS, *ALONE)))
    return Case(of, plan(of, do("bath", "19:20-20:00")), plan(of, do("bath", "19:21-20:01")))


@breaks(14)
def it_is_heard_while_it_goes_on_alone() -> Case:
    of = book(bath(traits=NOISY))
    return Case(of, plan(of, do("bath", "20:20-21:00")), plan(of, do("bath", "20:21-21:01")))


@breaks(14)
def no_light_to_set_it_going() -> Case:
    """Daylight lasts to 19:00; the bath goes on in the dark."""
    of = book(bath(traits=(Trait.DAYLIGHT, *ALONE)))
    return Case(of, plan(of, do("bath", "18:55-19:35")), plan(of, do("bath", "18:56-19:36")))


@breaks(17)
def split_though_it_goes_on_alone() -> Case:
    of = book(bath(split_least=10))
    broken = plan(of, do("bath", "18:00-18:20", "18:30-18:50"))
    return Case(of, plan(of, do("bath", "18:00-18:40")), broken)


@breaks(23)
def hands_before_what_is_under_way_is_set_going() -> Case:
    """Begun at 18:00, it keeps hands to 18:05, and goes on alone to 18:40."""
    begun = Logged(model="cart", step="bath", start=when("18:00"))
    of = book(bath(), paint("links", "tracks"), log=(begun,))
    fact = replace(do("bath", "18:00-18:40"), logged=True)
    now = at("18:02")
    return Case(
        of,
        plan(of, fact, do("links", "18:05-18:15"), now=now),
        plan(of, fact, do("links", "18:04-18:14"), now=now),
    )


@breaks(24)
def its_hands_outside_a_wish() -> Case:
    pin = Pin(model="cart", step="bath", start=when("18:00"), end=when("18:10"))
    of = book(bath(), pins=(pin,))
    assert pin.interval == span("18:00-18:10")
    return Case(of, plan(of, do("bath", "18:05-18:45")), plan(of, do("bath", "18:06-18:46")))
