"""Plans that break definitions 18 to 21: drying places, joins, turns and masks."""

from __future__ import annotations

from judge_cases.making import (
    Case,
    at,
    book,
    breaks,
    do,
    paint,
    piece,
    plan,
    ready,
    work,
)

from planner.values.coating import State
from planner.values.plan import Plan
from planner.values.step import Application, Minutes, Stage, Step

FIRST = do("base", "18:00-18:10")


@breaks(18)
def no_drying_place_left() -> Case:
    """The box has one drying place; the hull keeps it until it is dry to handle."""
    of = book(paint("base", "hull/deck", dries_in="box"), paint("links", "tracks", dries_in="box"))
    free = ready(of, "sand", State.DRY_TO_HANDLE, at("18:10"), "box")
    sound = plan(of, FIRST, do("links", piece(free, 10)))
    return Case(of, sound, plan(of, FIRST, do("links", piece(free - 1, 10))))


@breaks(18)
def taken_from_the_start_of_the_pass() -> Case:
    """The tracks are put down wet at 18:30, while the hull is painted since 18:20."""
    of = book(
        paint("base", "hull/deck", dries_in="box", minutes=40, split_least=10),
        paint("links", "tracks", dries_in="box"),
    )
    base = do("base", "18:00-18:20", "19:00-19:20")
    free = ready(of, "sand", State.DRY_TO_HANDLE, at("19:20"), "box")
    sound = plan(of, base, do("links", piece(free, 10)))
    return Case(of, sound, plan(of, base, do("links", "18:30-18:40")))


def glued(*faces: str, scraped: bool = False) -> Step:
    return Step(
        id="join",
        stage=Stage.JOIN,
        applications=(Application(places=faces, coating="cement"),),
        minutes=Minutes(fixed=10),
        scraped=scraped,
    )


@breaks(19)
def joined_while_wet() -> Case:
    of = book(paint("base", "hull/deck"), glued("hull/side", "tracks/links"))
    dry = ready(of, "sand", State.DRY_TO_HANDLE, at("18:10"))
    sound = plan(of, FIRST, do("join", piece(dry, 10)))
    return Case(of, sound, plan(of, FIRST, do("join", piece(dry - 1, 10))))


@breaks(19)
def glued_onto_paint() -> Case:
    of = book(paint("base", "hull/side"), glued("hull/side", "tracks/links"))
    sound = plan(of, FIRST, unplaced=["join"])
    return Case(of, sound, plan(of, FIRST, do("join", "1/18:00-1/18:10")))


@breaks(20)
def the_underside_without_a_turn() -> Case:
    of = book(paint("base", "wheels/hub"))
    return Case(of, plan(of, unplaced=["base"]), plan(of, FIRST))


@breaks(20)
def the_top_after_a_turn() -> Case:
    of = book(work("turn", Stage.TURN, "wheels"), paint("base", "wheels/tread"))
    turn = do("turn", "18:00-18:10")
    sound = plan(of, turn, unplaced=["base"])
    return Case(of, sound, plan(of, turn, do("base", "18:10-18:20")))


@breaks(20)
def turned_while_wet() -> Case:
    of = book(paint("base", "wheels/tread"), work("turn", Stage.TURN, "wheels"))
    dry = ready(of, "sand", State.DRY_TO_HANDLE, at("18:10"))
    sound = plan(of, FIRST, do("turn", piece(dry, 10)))
    return Case(of, sound, plan(of, FIRST, do("turn", piece(dry - 1, 10))))


MASKED = book(
    paint("base", "hull/deck"),
    work("mask", Stage.MASK, "hull/deck"),
    paint("camo", "hull/side"),
    work("unmask", Stage.UNMASK, "hull/deck"),
)


def masked(mask: int, camo: int, unmask: int) -> Plan:
    return plan(
        MASKED,
        FIRST,
        do("mask", piece(mask, 10)),
        do("camo", piece(camo, 10)),
        do("unmask", piece(unmask, 10)),
    )


TAPE = ready(MASKED, "sand", State.PRINT_FREE, at("18:10"))
SET = ready(MASKED, "sand", State.SET_TO_TOUCH, TAPE + 20)


@breaks(21)
def tape_on_a_soft_film() -> Case:
    return Case(MASKED, masked(TAPE, TAPE + 10, SET), masked(TAPE - 1, TAPE + 10, SET))


@breaks(21)
def sprayed_before_the_mask() -> Case:
    early = plan(
        MASKED,
        FIRST,
        do("camo", piece(TAPE - 10, 10)),
        do("mask", piece(TAPE, 10)),
        do("unmask", piece(SET, 10)),
    )
    return Case(MASKED, masked(TAPE, TAPE + 10, SET), early)


@breaks(21)
def unmasked_while_the_edge_can_run() -> Case:
    return Case(MASKED, masked(TAPE, TAPE + 10, SET), masked(TAPE, TAPE + 10, SET - 1))


@breaks(21)
def tape_left_for_more_than_a_week() -> Case:
    on = at("1/18:00")
    sound = masked(on, on + 10, on + 7 * 1440 - 1440)
    return Case(MASKED, sound, masked(on, on + 10, on + 7 * 1440))


@breaks(21)
def a_coat_under_the_mask() -> Case:
    of = book(
        work("mask", Stage.MASK, "hull/deck"),
        paint("base", "hull/deck"),
        work("unmask", Stage.UNMASK, "hull/deck"),
    )
    mask = do("mask", "18:00-18:10")
    sound = plan(of, mask, unplaced=["base", "unmask"])
    return Case(of, sound, plan(of, mask, do("base", "18:10-18:20"), unplaced=["unmask"]))
