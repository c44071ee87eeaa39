"""Plans that break definitions 1, 2 and 12 to 17: minutes, bench time, hands, airbrushes."""

from __future__ import annotations

from dataclasses import replace

from judge_cases.making import (
    Case,
    book,
    breaks,
    change,
    clean,
    do,
    key,
    load,
    paint,
    plan,
    spray,
    sprayed,
    work,
)

from planner.values.coating import Mark, Window
from planner.values.plan import BenchWork, Plan
from planner.values.step import Gate, Stage, Tool

ONE = book(paint("base", "hull/deck"))
TWO = book(paint("base", "hull/deck"), paint("links", "tracks"))


@breaks(1)
def a_minute_short() -> Case:
    return Case(ONE, plan(ONE, do("base", "18:00-18:10")), plan(ONE, do("base", "18:00-18:09")))


@breaks(1)
def a_minute_long() -> Case:
    return Case(ONE, plan(ONE, do("base", "18:00-18:10")), plan(ONE, do("base", "18:00-18:11")))


@breaks(2)
def twice() -> Case:
    once = do("base", "18:00-18:10")
    return Case(ONE, plan(ONE, once), plan(ONE, once, replace(once, pieces=once.pieces)))


@breaks(2)
def of_no_project() -> Case:
    stray = replace(do("base", "19:00-19:10"), key=key("polish"))
    sound = plan(ONE, do("base", "18:00-18:10"))
    return Case(ONE, sound, plan(ONE, *sound.placements, stray))


@breaks(12)
def past_the_end_of_the_evening() -> Case:
    return Case(ONE, plan(ONE, do("base", "21:50-22:00")), plan(ONE, do("base", "21:51-22:01")))


@breaks(12)
def nobody_there() -> Case:
    return Case(ONE, plan(ONE, do("base", "18:00-18:10")), plan(ONE, do("base", "17:30-17:40")))


@breaks(12)
def cleaning_after_bench_time() -> Case:
    of = book(spray("base", "hull/deck"))
    of = replace(of, bench_time=replace(of.bench_time, quiet=()))
    made = [load("21:41-21:44")], sprayed("base", "21:44-21:54")
    sound = plan(of, made[1], bench=[*made[0], clean("21:54-22:00")])
    return Case(of, sound, plan(of, made[1], bench=[*made[0], clean("21:55-22:01")]))


@breaks(13)
def two_hands_full() -> Case:
    first = do("base", "18:00-18:10")
    return Case(
        TWO,
        plan(TWO, first, do("links", "18:10-18:20")),
        plan(TWO, first, do("links", "18:09-18:19")),
    )


@breaks(13)
def no_helper() -> Case:
    of = book(paint("base", "hull/deck", helper=True))
    return Case(
        of, plan(of, do("base", "5/18:00-5/18:10")), plan(of, do("base", "4/18:00-4/18:10"))
    )


@breaks(13)
def an_airbrush_for_brushwork() -> Case:
    return Case(
        ONE, plan(ONE, do("base", "18:00-18:10")), plan(ONE, sprayed("base", "18:00-18:10"))
    )


@breaks(13)
def an_airbrush_that_nobody_owns() -> Case:
    of = book(spray("base", "hull/deck"))
    bench = [load("18:00-18:03"), clean("18:13-18:19")]
    sound = plan(of, sprayed("base", "18:03-18:13"), bench=bench)
    return Case(of, sound, plan(of, do("base", "18:03-18:13", airbrush="wide")))


@breaks(14)
def spraying_into_the_quiet_hours() -> Case:
    of = book(spray("base", "hull/deck"))
    sound = plan(
        of,
        sprayed("base", "20:44-20:54"),
        bench=[load("20:41-20:44"), clean("20:54-21:00")],
    )
    broken = plan(
        of,
        sprayed("base", "20:45-20:55"),
        bench=[load("20:42-20:45"), clean("20:55-21:01")],
    )
    return Case(of, sound, broken)


@breaks(14)
def a_can_in_the_dark() -> Case:
    of = book(paint("base", "hull/deck", tool=Tool.CAN))
    return Case(of, plan(of, do("base", "18:50-19:00")), plan(of, do("base", "18:51-19:01")))


SPRAYED = book(spray("base", "hull/deck"), spray("links", "tracks", coat="lacquer"))


def sprayed_plan(*bench: BenchWork) -> Plan:
    passes = sprayed("base", "18:03-18:13"), sprayed("links", "18:23-18:33")
    return plan(SPRAYED, *passes, bench=[load("18:00-18:03"), *bench])


CHANGE, CLEAN = change("18:13-18:23", "lacquer"), clean("18:33-18:39")


@breaks(15)
def put_away_dirty() -> Case:
    return Case(SPRAYED, sprayed_plan(CHANGE, CLEAN), sprayed_plan(CHANGE))


@breaks(15)
def cleaned_too_fast() -> Case:
    return Case(SPRAYED, sprayed_plan(CHANGE, CLEAN), sprayed_plan(CHANGE, clean("18:33-18:38")))


@breaks(15)
def changed_too_fast() -> Case:
    """Between families a change takes 10 min, not the 6 within one."""
    hurried = sprayed_plan(change("18:13-18:22", "lacquer"), CLEAN)
    return Case(SPRAYED, sprayed_plan(CHANGE, CLEAN), hurried)


@breaks(15)
def the_wrong_coating_in_the_cup() -> Case:
    return Case(SPRAYED, sprayed_plan(CHANGE, CLEAN), sprayed_plan(CLEAN))


@breaks(15)
def never_loaded() -> Case:
    of = book(spray("base", "hull/deck"))
    one = sprayed("base", "18:03-18:13")
    sound = plan(of, one, bench=[load("18:00-18:03"), clean("18:13-18:19")])
    return Case(of, sound, plan(of, one, bench=[clean("18:13-18:19")]))


@breaks(15)
def loaded_in_another_stretch() -> Case:
    of = book(spray("base", "hull/deck"), spray("links", "tracks"))
    passes = sprayed("base", "18:03-18:13"), sprayed("links", "1/18:03-1/18:13")
    first = [load("18:00-18:03"), clean("18:13-18:19")]
    second = [load("1/18:00-1/18:03"), clean("1/18:13-1/18:19")]
    sound = plan(of, *passes, bench=[*first, *second])
    return Case(of, sound, plan(of, *passes, bench=[*first, second[1]]))


@breaks(16)
def a_load_left_standing() -> Case:
    """The limit is 20 min."""
    of = book(spray("base", "hull/deck"), spray("links", "tracks"))
    ends = [load("18:00-18:03"), clean("18:44-18:50")]
    first = sprayed("base", "18:03-18:13")
    sound = plan(of, first, sprayed("links", "18:33-18:43"), bench=ends)
    return Case(of, sound, plan(of, first, sprayed("links", "18:34-18:44"), bench=ends))


@breaks(16)
def a_mix_used_past_its_life() -> Case:
    """Poured at 18:00 with a life of 60 min, it is good until 19:00."""
    of = book(
        *(
            spray(f"base-{n}", place, coat="faded", minutes=19)
            for n, place in enumerate(("hull/deck", "tracks", "hull/side"))
        )
    )
    bench = [load("18:00-18:03", "faded"), clean("19:01-19:07")]
    first = sprayed("base-0", "18:03-18:22"), sprayed("base-1", "18:22-18:41")
    sound = plan(of, *first, sprayed("base-2", "18:41-19:00"), bench=bench)
    return Case(of, sound, plan(of, *first, sprayed("base-2", "18:42-19:01"), bench=bench))


@breaks(16)
def brushwork_longer_than_the_mix_lives() -> Case:
    """61 min of work in one sitting with a mix good for 60; in two sittings it can be done."""
    of = book(paint("base", "hull/deck", coat="faded", minutes=61, split_least=30))
    sound = plan(of, do("base", "18:00-18:31", "19:00-19:30"))
    return Case(of, sound, plan(of, do("base", "18:00-19:01")))


MARKED = book(
    paint("base", "hull/deck", minutes=40, split_least=15),
    work("press", Stage.PRESS, "hull/deck"),
)


def marked_plan(*pieces: str, press: str = "1/18:30-1/18:40") -> Plan:
    return plan(MARKED, do("base", *pieces), do("press", press))


@breaks(17)
def split_without_a_mark() -> Case:
    return Case(
        ONE,
        plan(ONE, do("base", "18:00-18:10")),
        plan(ONE, do("base", "18:00-18:05", "18:30-18:35")),
    )


@breaks(17)
def a_piece_too_short() -> Case:
    return Case(
        MARKED,
        marked_plan("18:00-18:25", "1/18:00-1/18:15"),
        marked_plan("18:00-18:26", "1/18:00-1/18:14"),
    )


@breaks(17)
def work_between_the_pieces() -> Case:
    pieces = ("18:00-18:20", "1/18:00-1/18:20")
    return Case(MARKED, marked_plan(*pieces), marked_plan(*pieces, press="19:00-19:10"))


@breaks(17)
def split_where_a_closing_touches() -> Case:
    gate = Gate(after="base", windows=(Window(closes=Mark(minutes=300)),))
    of = book(
        paint("base", "hull/deck", minutes=40, split_least=15),
        work("press", Stage.PRESS, "hull/deck", gates=(gate,)),
    )
    sound = plan(of, do("base", "18:00-18:40"), do("press", "19:30-19:40"))
    broken = plan(of, do("base", "18:00-18:20", "18:30-18:50"), do("press", "19:30-19:40"))
    return Case(of, sound, broken)


@breaks(1)
def pieces_that_run_backwards() -> Case:
    return Case(
        MARKED,
        marked_plan("18:00-18:20", "18:30-18:50"),
        marked_plan("18:30-18:50", "18:00-18:20"),
    )
