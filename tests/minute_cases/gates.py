"""Edges of definitions 3 to 11: order, openings, closings, windows, films, air."""

from __future__ import annotations

from dataclasses import replace

from judge_cases.making import (
    at,
    book,
    coating,
    do,
    key,
    paint,
    piece,
    ready,
    spray,
    work,
)
from minute_cases.making import Edge, edge

from planner.cure import Band, Cure, Film
from planner.values.coating import Clock, Family, Finish, Mark, Preparation, State, Window
from planner.values.moment import zone_named
from planner.values.plan import BenchKind, BenchWork
from planner.values.room import AirPoint, Location, Room
from planner.values.step import Bound, Gate, Stage, Tool, Trait
from planner.values.wishes import Care, Preferences

FIRST = do("base", "18:00-18:10")
COUNTED = frozenset({4})  # off by less than the coat is long


def closes(minutes: int, bound: Bound = Bound.START, **mark: object) -> Gate:
    """Return a written gate after the base that closes."""
    window = Window(closes=Mark(minutes=minutes, **mark))  # type: ignore[arg-type]
    return Gate(after="base", windows=(window,), closing=bound)


def pressed(*gates: Gate, base: object = None) -> object:
    """Return a book whose base is pressed under some gates."""
    return book(
        base or paint("base", "hull/deck"), work("press", Stage.PRESS, "hull/deck", gates=gates)
    )


@edge(3)
def the_next_on_the_place_waits_for_the_end() -> Edge:
    """What goes on alone for an hour ends at 19:00, though hands are free at 18:05."""
    bath = work("base", Stage.CLEAN, "hull/deck", minutes=60, traits=(Trait.HANDS_FREE,))
    of = book(bath, work("press", Stage.PRESS, "hull/deck"))
    return Edge(
        of,
        "press",
        at("19:00"),
        at("18:59"),
        done=(do("base", "18:00-19:00"),),
        named=frozenset({3, 13}),
    )


@edge(4)
def an_opening_an_hour_from_the_end() -> Edge:
    """The hour begins at 18:10, with the end of the first coat."""
    of = book(paint("base", "hull/deck", coat="hourly"), paint("top", "hull/deck", coat="hourly"))
    return Edge(of, "top", at("19:10"), at("19:09"), done=(FIRST,))


@edge(5)
def fingers_on_a_part_without_a_holder() -> Edge:
    of = book(paint("base", "wheels/tread"), paint("rims", "wheels/rim"))
    dry = ready(of, "sand", State.DRY_TO_HANDLE, at("18:10"))
    return Edge(of, "rims", dry, dry - 1, done=(FIRST,))


@edge(6)
def the_late_end_of_the_band() -> Edge:
    of = book(paint("base", "hull/deck"), paint("top", "hull/deck"))
    opens = ready(of, "sand", State.DRY_TO_RECOAT, at("18:10"))
    return Edge(of, "top", opens, opens - 1, done=(FIRST,), named=COUNTED)


@edge(6)
def the_likely_moment_where_a_person_plans_at_likely() -> Edge:
    """The label says 40 minutes in the air of the label, so from 18:10 on it is 18:50."""
    of = book(paint("base", "hull/deck"), paint("top", "hull/deck"))
    of = replace(of, preferences=Preferences(likely=(Care.COAT,)))
    return Edge(of, "top", at("18:50"), at("18:49"), done=(FIRST,), named=COUNTED)


@edge(6)
def a_gloss_below_a_wash_counts_a_quarter_thicker() -> Edge:
    """Definition 5: the film of 20 µm counts as one of 25."""
    gloss = replace(coating("gloss"), finish=Finish.GLOSS)
    of = book(
        paint("base", "hull/deck", coat="gloss", stage=Stage.VARNISH),
        paint("grime", "hull/deck", coat="oil", stage=Stage.OIL_WASH),
        coatings=(gloss,),
    )
    opens = ready(of, "gloss", State.SOLVENT_SAFE, at("18:10"), um=25)
    return Edge(of, "grime", opens, opens - 1, done=(FIRST,), named=COUNTED)


WASHED = book(
    paint("base", "hull/deck", coat="oil", stage=Stage.OIL_WASH),
    work("wipe", Stage.WIPE, "hull/deck", minutes=9),
)


@edge(4)
def wiping_back_five_minutes_after_the_wash() -> Edge:
    """Definition 6a: from 21:50 on; for the best moment, 22:00, the evening has no room."""
    return Edge(
        WASHED, "wipe", at("21:50"), at("21:49"), minutes=9, done=(do("base", "21:35-21:45"),)
    )


@edge(7)
def wiping_back_begun_within_the_hour() -> Edge:
    """Definition 6a: 60 min from the start of the wash, 18:00, are over at 19:00."""
    return Edge(WASHED, "wipe", at("18:59"), at("19:00"), minutes=9, done=(FIRST,), named=COUNTED)


@edge(7)
def chips_rubbed_within_ninety_minutes() -> Edge:
    """Definition 6a: the coat over the fluid was begun at 18:30, so rubbing ends by 20:00."""
    of = book(
        paint("fluid", "hull/deck", coat="fluid", stage=Stage.CHIP_FLUID),
        paint("top", "hull/deck"),
        work("rub", Stage.CHIP_RUB, "hull/deck"),
        coatings=(coating("fluid", Family.CHIPPING_FLUID, dry_to_recoat=5),),
    )
    laid = do("fluid", "18:00-18:10"), do("top", "18:30-18:40")
    return Edge(of, "rub", at("19:50"), at("19:51"), done=laid, named=COUNTED)


CAN = {"coat": "lacquer", "minutes": 5, "tool": Tool.CAN}
CANS = replace(
    book(paint("base", "hull/deck", **CAN), paint("top", "hull/deck", **CAN)),  # type: ignore[arg-type]
)


@edge(8)
def a_second_coat_from_the_can_within_twenty_minutes() -> Edge:
    """Definition 6a: begun at 18:00, it is too late from 18:20 on."""
    return Edge(CANS, "top", at("18:19"), at("18:20"), minutes=5, done=(do("base", "18:00-18:05"),))


@edge(8)
def a_second_coat_from_the_can_after_a_day() -> Edge:
    """Definition 6a: 24 hours from the end of the first, 18:05."""
    first = (do("base", "18:00-18:05"),)
    return Edge(CANS, "top", at("1/18:05"), at("1/18:04"), minutes=5, done=first)


@edge(7)
def begun_before_a_closing() -> Edge:
    """A closing an hour from 18:00 is over at 19:00: half-open, as every interval is."""
    return Edge(
        pressed(closes(60)), "press", at("18:59"), at("19:00"), done=(FIRST,), named=COUNTED
    )


@edge(7)
def ended_by_a_closing() -> Edge:
    """Work of 10 min that ends at 19:00 has ended by 19:00."""
    of = pressed(closes(60, Bound.END))
    return Edge(of, "press", at("18:50"), at("18:51"), done=(FIRST,), named=COUNTED)


@edge(7)
def a_closing_by_the_early_band() -> Edge:
    """Film minutes from the start of the coat, at the early end of the band."""
    of = pressed(closes(120, clock=Clock.FILM), base=paint("base", "hull/deck", minutes=1))
    film = Film(of.coating("sand"), 20, "bench", at("18:01"))
    mark = Mark(minutes=120, clock=Clock.FILM)
    shut = Cure(of.room, zone_named("UTC")).closes_at(film, mark, at("18:00"), Band.EARLY)
    assert shut is not None
    return Edge(of, "press", shut - 1, shut, done=(do("base", "18:00-18:01"),), named=COUNTED)


SCUFFED = (Window(opens=Mark(minutes=60), preparation=Preparation.SCUFF, preparation_minutes=15),)


def _scuffed(start: int) -> tuple[BenchWork, ...]:
    return (BenchWork(BenchKind.PREPARE, piece(start - 15, 15), serves=key("top")),)


@edge(8)
def prepared_once_the_window_is_open() -> Edge:
    """Open from 19:10 on, 15 min of scuffing, so the coat begins at 19:25."""
    of = book(
        paint("base", "hull/deck", coat="rough"),
        paint("top", "hull/deck", coat="rough"),
        coatings=(coating("rough", recoat=SCUFFED),),
    )
    done = (FIRST,)
    return Edge(of, "top", at("19:25"), at("19:24"), done=done, bench=_scuffed, lead=15)


@edge(8)
def prepared_and_loaded_once_the_window_is_open() -> Edge:
    """Open from 19:10 on, 15 min of scuffing and 3 of loading, so it is sprayed from 19:28 on."""
    of = book(
        paint("base", "hull/deck", coat="rough"),
        spray("top", "hull/deck", coat="rough"),
        coatings=(coating("rough", recoat=SCUFFED),),
    )

    def served(start: int) -> tuple[BenchWork, ...]:
        return (
            BenchWork(BenchKind.PREPARE, piece(start - 18, 15), serves=key("top")),
            BenchWork(BenchKind.LOAD, piece(start - 3, 3), "fine", "rough"),
            BenchWork(BenchKind.CLEAN, piece(start + 10, 6), "fine"),
        )

    return Edge(
        of,
        "top",
        at("19:28"),
        at("19:27"),
        done=(FIRST,),
        bench=served,
        lead=18,
        airbrush="fine",
    )


@edge(9)
def an_uncertain_window_opens_at_its_nominal_minute() -> Edge:
    """100 min from 18:05 are 19:45; the closing, 110 min from 18:00, is 19:50."""
    window = Window(opens=Mark(state=State.DRY_TO_RECOAT), closes=Mark(minutes=110))
    of = book(
        paint("base", "hull/deck", coat="brief", minutes=5),
        paint("top", "hull/deck", coat="brief"),
        coatings=(coating("brief", recoat=(window,), dry_to_recoat=100),),
    )
    return Edge(of, "top", at("19:45"), at("19:44"), done=(do("base", "18:00-18:05"),))


@edge(9)
def an_uncertain_window_closes_at_its_nominal_minute() -> Edge:
    one = an_uncertain_window_opens_at_its_nominal_minute()
    return replace(one, at=at("19:49"), out=at("19:50"))


@edge(10)
def a_part_leaves_for_another_location_once_its_film_has_been_waited_for() -> Edge:
    """The wash waits for the base to be solvent-safe in the box."""
    of = book(
        paint("base", "hull/deck", dries_in="box"),
        paint("side", "hull/side"),
        paint("grime", "hull/deck", coat="oil", stage=Stage.OIL_WASH),
        coatings=(coating("sand", solvent_safe=60),),
    )
    safe = ready(of, "sand", State.SOLVENT_SAFE, at("18:10"), "box")
    grime = do("grime", "1/18:00-1/18:10")
    return Edge(of, "side", safe, safe - 1, done=(FIRST,), later=(grime,))


@edge(10)
def laid_from_the_quarter_on_whose_air_allows_it() -> Edge:
    """Definition 10a: 72 % until 19:29 frosts a lacquer, from 19:30 on 50 % does not."""
    damp = [AirPoint(at=clock, temperature_c=23, humidity_pct=72) for clock in ("00:00", "19:29")]
    dry = [AirPoint(at=clock, temperature_c=23, humidity_pct=50) for clock in ("19:30", "23:00")]
    bench = Location(name="bench", drying_places=10, workdays=(*damp, *dry))
    of = replace(book(spray("base", "hull/deck", coat="lacquer")), room=Room(locations=(bench,)))

    def served(start: int) -> tuple[BenchWork, ...]:
        filled = BenchWork(BenchKind.LOAD, piece(start - 3, 3), "fine", "lacquer")
        return filled, BenchWork(BenchKind.CLEAN, piece(start + 10, 6), "fine")

    return Edge(of, "base", at("19:30"), at("19:29"), bench=served, lead=3, airbrush="fine")


MELTING = (Window(closes=Mark(minutes=60), merges=True), Window(opens=Mark(minutes=180)))


def melted(second: str, end: str, um: float) -> Edge:
    """Return the edge of a mask on a lacquer whose second coat was laid ``second``."""
    quick = coating("lacquer", Family.SOLVENT_LACQUER, MELTING, print_free=30)
    of = book(
        paint("base", "hull/deck", coat="lacquer", minutes=5),
        paint("top", "hull/deck", coat="lacquer", minutes=5),
        work("mask", Stage.MASK, "hull/deck"),
        coatings=(quick,),
    )
    done = do("base", "18:00-18:05"), do("top", second)
    opens = ready(of, "lacquer", State.PRINT_FREE, at(end), um=um)
    return Edge(of, "mask", opens, opens - 1, done=done)


@edge(21)
def tape_on_two_coats_that_melted() -> Edge:
    """Begun at 18:59, a minute before the window closes: one film of 40 µm from 19:04 on."""
    return replace(melted("18:59-19:04", "19:04", 40), named=frozenset({11, 21}))
