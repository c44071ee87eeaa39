"""Passes that no schedule can place, because the working order itself forbids them."""

from __future__ import annotations

from collections.abc import Iterator

from planner.cure import life_in_room, warmest_c
from planner.passes import Pass
from planner.values.book import Book
from planner.values.message import message
from planner.values.model import Model, Side
from planner.values.plan import PassKey
from planner.values.step import Stage


def blocked(book: Book, model: Model, passes: tuple[Pass, ...]) -> dict[PassKey, str]:
    """Return why each impossible pass of one model is impossible.

    Checked are sides without a turn (definition 20), films on masked places
    (definition 21), painted faces to glue (definition 19) and parts that
    take more drying places than there are (definition 18), and work that
    takes longer than its two-pack lasts in this warmth (definition 16).
    """
    reasons: dict[PassKey, str] = {}
    for key, reason in (
        *_sides(passes),
        *_masked(passes),
        *_faces(passes),
        *_room(book, passes),
        *_lives(book, passes),
    ):
        reasons.setdefault(key, reason)
    return reasons


def _sides(passes: tuple[Pass, ...]) -> Iterator[tuple[PassKey, str]]:
    under_up: dict[str, bool] = {}
    for pass_ in passes:
        for unit in pass_.units:
            if unit.holder:
                continue
            if pass_.step.stage is Stage.TURN:
                for part in unit.parts:
                    under_up[part] = not under_up.get(part, False)
                continue
            wanted = pass_.side is Side.UNDER
            if pass_.side and any(under_up.get(part, False) is not wanted for part in unit.parts):
                name = " + ".join(unit.parts)
                yield (
                    pass_.key,
                    message("{name} lies with the other side up; turn it first", name=name),
                )


def _masked(passes: tuple[Pass, ...]) -> Iterator[tuple[PassKey, str]]:
    covered: set[str] = set()
    for pass_ in passes:
        if pass_.step.stage is Stage.MASK:
            covered.update(pass_.places)
        elif pass_.step.stage is Stage.UNMASK:
            covered.difference_update(pass_.places)
        else:
            hidden = sorted(place for place, _ in pass_.films if place in covered)
            if hidden:
                yield (
                    pass_.key,
                    message("{place} is still masked; unmask it first", place=hidden[0]),
                )


def _faces(passes: tuple[Pass, ...]) -> Iterator[tuple[PassKey, str]]:
    painted: set[str] = set()
    for pass_ in passes:
        if pass_.step.stage is Stage.JOIN and not pass_.step.scraped:
            hidden = sorted(place for place, _ in pass_.films if place in painted)
            if hidden:
                yield (
                    pass_.key,
                    message(
                        "{place} is painted; scrape it, for glue needs a bare face",
                        place=hidden[0],
                    ),
                )
        painted.update(place for place, _ in pass_.films)


def _lives(book: Book, passes: tuple[Pass, ...]) -> Iterator[tuple[PassKey, str]]:
    for pass_ in passes:
        takes = pass_.step.least_piece or pass_.step.attended(pass_.minutes)
        for name in dict.fromkeys(coating for _, coating in pass_.films):
            life = life_in_room(book, name)
            if life is not None and takes > life:
                yield (
                    pass_.key,
                    message(
                        'takes {takes} min, but at up to {warm:g} °C "{coating}" can be used for '
                        "{life} min; make two steps of it, or lay it where it is cooler",
                        takes=takes,
                        warm=warmest_c(book.room),
                        coating=name,
                        life=life,
                    ),
                )


def _room(book: Book, passes: tuple[Pass, ...]) -> Iterator[tuple[PassKey, str]]:
    for pass_ in passes:
        if not pass_.films:
            continue
        location = book.room.location(pass_.step.dries_in)
        needed = sum(unit.stands for unit in pass_.units)
        if pass_.unit_after:
            needed = pass_.unit_after.stands
        if needed > location.drying_places:
            yield (
                pass_.key,
                message(
                    "needs {needed} drying places, but {location} has {drying_places}",
                    needed=needed,
                    location=location.name,
                    drying_places=location.drying_places,
                ),
            )
