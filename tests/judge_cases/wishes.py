"""Plans that go against wishes, marks of steps, and the places where films may dry."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

from judge_cases.making import (
    MONDAY,
    Case,
    book,
    breaks,
    do,
    location,
    paint,
    plan,
    when,
    work,
)

from planner.values.book import Book
from planner.values.model import Model
from planner.values.plan import PassKey, Placement
from planner.values.project import Pin
from planner.values.step import Stage, Trait

BASE, LINKS = paint("base", "hull/deck"), paint("links", "tracks")


@breaks(24)
def before_the_wished_moment() -> Case:
    of = book(BASE, pins=(Pin(model="cart", step="base", not_before=when("19:00")),))
    return Case(of, plan(of, do("base", "19:00-19:10")), plan(of, do("base", "18:59-19:09")))


@breaks(24)
def in_another_stretch_than_its_neighbour() -> Case:
    of = book(BASE, LINKS, pins=(Pin(model="cart", step="links", beside="cart/base"),))
    first = do("base", "18:00-18:10")
    sound = plan(of, first, do("links", "18:10-18:20"))
    return Case(of, sound, plan(of, first, do("links", "1/18:00-1/18:10")))


@breaks(24)
def coats_in_two_stretches() -> Case:
    of = book(paint("base", "hull/deck", coats=2, traits=(Trait.ONE_STRETCH,)))
    first = do("base", "18:00-18:10")
    sound = plan(of, first, do("base", "19:30-19:40", coat=2))
    return Case(of, sound, plan(of, first, do("base", "1/18:00-1/18:10", coat=2)))


@breaks(24)
def ahead_of_the_day_it_begins() -> Case:
    of = book(BASE, begins=MONDAY + timedelta(days=1))
    return Case(of, plan(of, do("base", "1/18:00-1/18:10")), plan(of, do("base", "18:00-18:10")))


def _two_carts() -> Book:
    of = book(BASE)
    (project,) = of.projects
    (cart,) = project.models
    sled = Model(name="sled", parts=cart.parts, steps=(LINKS,))
    return replace(of, projects=(replace(project, models=(sled, cart), pilot="cart"),))


@breaks(24)
def ahead_of_the_pilot() -> Case:
    of = _two_carts()
    links = PassKey("batch", "sled", "links", 1)

    def made(links_at: str, base_at: str) -> tuple[Placement, ...]:
        return replace(do("links", links_at), key=links), do("base", base_at)

    sound = plan(of, *made("18:10-18:20", "18:00-18:10"))
    return Case(of, sound, plan(of, *made("18:00-18:10", "18:10-18:20")))


@breaks(14)
def noise_in_the_quiet_hours() -> Case:
    of = book(work("sand", Stage.CLEAN, "hull/deck", traits=(Trait.NOISY,)))
    return Case(of, plan(of, do("sand", "20:50-21:00")), plan(of, do("sand", "20:51-21:01")))


@breaks(14)
def fine_work_in_the_dark() -> Case:
    of = book(paint("eyes", "hull/deck", traits=(Trait.DAYLIGHT,)))
    return Case(of, plan(of, do("eyes", "18:50-19:00")), plan(of, do("eyes", "18:51-19:01")))


@breaks(10)
def drying_where_the_step_does_not_allow() -> Case:
    of = book(paint("base", "hull/deck", or_in=("box",)))
    of = replace(of, room=replace(of.room, locations=(*of.room.locations, location("attic", 9))))

    def made(where: str) -> Placement:
        return replace(do("base", "18:00-18:10"), location=where)

    return Case(of, plan(of, made("box")), plan(of, made("attic")))
