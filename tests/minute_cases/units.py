"""Edges of definitions 18 to 21: drying places, joins, turns, masks."""

from __future__ import annotations

from dataclasses import replace

from judge_cases.making import at, book, coating, do, paint, piece, ready, work
from minute_cases.making import Edge, edge

from planner.values.coating import Family, State
from planner.values.model import Model, Part, Place
from planner.values.step import Application, Minutes, Stage, Step

FIRST = do("base", "18:00-18:10")


@edge(18)
def a_place_is_free_when_the_film_is_dry_to_handle() -> Edge:
    """The box has one drying place."""
    of = book(paint("base", "hull/deck", dries_in="box"), paint("links", "tracks", dries_in="box"))
    free = ready(of, "sand", State.DRY_TO_HANDLE, at("18:10"), "box")
    return Edge(of, "links", free, free - 1, done=(FIRST,))


@edge(18)
def a_place_of_two_is_free_when_the_first_film_is_dry_to_handle() -> Edge:
    """Two places and three units: just full again, not empty, is room enough."""
    slow = coating("green", dry_to_handle=90, dry_to_recoat=90, print_free=95)
    of = book(
        paint("base", "hull/deck", dries_in="box"),
        paint("rims", "wheels/rim", coat="green", dries_in="box"),
        paint("links", "tracks", dries_in="box"),
        coatings=(slow,),
    )
    locations = [replace(each, drying_places=2) for each in of.room.locations]
    of = replace(of, room=replace(of.room, locations=tuple(locations)))
    free = ready(of, "sand", State.DRY_TO_HANDLE, at("18:10"), "box")
    return Edge(of, "links", free, free - 1, done=(FIRST, do("rims", "18:10-18:20")))


def glued(*faces: str) -> Step:
    """Return a join of the units of some faces."""
    laid = (Application(places=faces, coating="cement"),)
    return Step(id="join", stage=Stage.JOIN, applications=laid, minutes=Minutes(fixed=10))


@edge(18)
def an_assembly_keeps_its_place_until_its_glue_can_be_handled() -> Edge:
    """One place in the box, where the hull stands from its gluing on."""
    glue = replace(glued("hull/side", "tracks/links"), dries_in="box")
    of = book(glue, paint("rims", "wheels/rim", dries_in="box"))
    free = ready(of, "cement", State.DRY_TO_HANDLE, at("18:10"), "box")
    return Edge(of, "rims", free, free - 1, done=(do("join", "18:00-18:10"),))


@edge(18)
def a_crowd_keeps_its_places() -> Edge:
    """Thirteen places and fourteen parts, one minute each: the last waits for the first."""
    names = [f"p{n}" for n in range(14)]
    parts = tuple(Part(name=name, places=(Place(name="all"),), holder="stick") for name in names)
    of = book()
    (project,) = of.projects
    steps = tuple(paint(name, f"{name}/all", minutes=1) for name in names)
    cart = Model(name="cart", parts=parts, steps=steps)
    bench = replace(of.room.locations[0], drying_places=13)
    room = replace(of.room, locations=(bench, *of.room.locations[1:]))
    of = replace(of, room=room, projects=(replace(project, models=(cart,)),))
    done = tuple(do(name, piece(at("18:00") + n, 1)) for n, name in enumerate(names[:-1]))
    free = ready(of, "sand", State.DRY_TO_HANDLE, at("18:01"))
    return Edge(of, "p13", free, free - 1, minutes=1, done=done)


@edge(19)
def joined_when_dry_to_handle() -> Edge:
    of = book(paint("base", "hull/deck"), glued("hull/side", "tracks/links"))
    dry = ready(of, "sand", State.DRY_TO_HANDLE, at("18:10"))
    return Edge(of, "join", dry, dry - 1, done=(FIRST,))


@edge(20)
def turned_when_dry_to_handle() -> Edge:
    of = book(paint("base", "wheels/tread"), work("turn", Stage.TURN, "wheels"))
    dry = ready(of, "sand", State.DRY_TO_HANDLE, at("18:10"))
    return Edge(of, "turn", dry, dry - 1, done=(FIRST,))


MASKED = book(
    paint("base", "hull/deck"),
    work("mask", Stage.MASK, "hull/deck"),
    paint("camo", "hull/side"),
    work("unmask", Stage.UNMASK, "hull/deck"),
)
TAPE = ready(MASKED, "sand", State.PRINT_FREE, at("18:10"))


@edge(21)
def tape_on_a_print_free_film() -> Edge:
    return Edge(MASKED, "mask", TAPE, TAPE - 1, done=(FIRST,), unplaced=("camo", "unmask"))


@edge(21)
def tape_off_when_the_edge_is_set_to_touch() -> Edge:
    done = FIRST, do("mask", piece(TAPE, 10)), do("camo", piece(TAPE + 10, 10))
    off = ready(MASKED, "sand", State.SET_TO_TOUCH, TAPE + 20)
    return Edge(MASKED, "unmask", off, off - 1, done=done)


@edge(21)
def tape_off_within_a_week() -> Edge:
    """On at 18:00 on day 1: unmasking begins before 18:00 on day 8."""
    done = FIRST, do("mask", "1/18:30-1/18:40"), do("camo", "1/18:40-1/18:50")
    return Edge(MASKED, "unmask", at("8/18:29"), at("8/18:30"), done=done)


@edge(7)
def masking_fluid_off_within_a_week() -> Edge:
    """Definition 21: dabbed on from 18:30 on day 1, drawn off before 18:30 on day 8."""
    of = book(
        paint("fluid", "hull/deck", coat="fluid", stage=Stage.DETAIL),
        paint("camo", "hull/deck"),
        work("off", Stage.UNMASK, "hull/deck"),
        coatings=(coating("fluid", Family.MASKING_FLUID),),
    )
    done = do("fluid", "1/18:30-1/18:40"), do("camo", "1/20:00-1/20:10")
    return Edge(of, "off", at("8/18:29"), at("8/18:30"), done=done, named=frozenset({4}))


@edge(21)
def masking_fluid_off_when_the_coat_above_is_set_to_touch() -> Edge:
    """What lies over the fluid is asked, and its own film is not."""
    of = masking_fluid_off_within_a_week().book
    off = ready(of, "sand", State.SET_TO_TOUCH, at("1/20:10"))
    done = do("fluid", "1/18:30-1/18:40"), do("camo", "1/20:00-1/20:10")
    return Edge(of, "off", off, off - 1, done=done)
