"""One line that tells what was really painted: "steel on Gannet hull, Heron; by brush, 15 min"."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass, replace

from planner.evening.other_work import OtherWork, PaintedModel
from planner.values.book import Book
from planner.values.message import message
from planner.values.refusal import Refused, demand, number_in
from planner.values.step import LAYS_NO_FILM, Stage, Tool

EXAMPLE = '"steel on Gannet hull, Heron, brush, 15 min"'
BETWEEN = ("on", "auf")
LONGEST = 600  # letters of a line
MOST_MINUTES = 1440
NOT_TOLD = frozenset({Stage.JOIN})
WORDS: dict[str, Stage | Tool] = {
    **{stage.value: stage for stage in Stage if stage not in LAYS_NO_FILM | NOT_TOLD},
    **{tool.value: tool for tool in Tool},
    "can": Tool.CAN,
}


@dataclass(frozen=True)
class _Spot:
    """A model, or a part or place of it, with the words that name it."""

    project: str
    model: str
    reference: str  # "" for all of it
    words: tuple[str, ...]


def read_line(book: Book, line: str, words: Mapping[str, Stage | Tool] | None = None) -> OtherWork:
    """Return what a line tells.

    A coating, "on", then models with their parts and places, each told by
    as many words of its name as tell it from others, or the beginnings of
    those; between commas also a tool, a kind of work, minutes, or millilitres.

    Parameters
    ----------
    words
        What else tools and kinds of work are called, in small letters.

    Raises
    ------
    Refused
        If something in it is not known, or could be several things.
    """
    demand(len(line) <= LONGEST, "line", "is too long for one line")
    found = re.split(rf"\s+(?:{'|'.join(BETWEEN)})\s+", line.strip(), maxsplit=1, flags=re.I)
    if len(found) != 2:
        raise Refused(
            "line", message("tells no coating and model; write it as {example}", example=EXAMPLE)
        )
    known = {**WORDS, **(words or {})}
    work = OtherWork(_coating(book, found[0]), ())
    spots = list(_spots(book))
    on: dict[tuple[str, str], dict[str, None]] = {}
    for told in filter(None, (part.strip() for part in re.split(r"(?<!\d),|,(?!\d)|;", found[1]))):
        more = _measure(work, told, known)
        if more is not None:
            work = more
            continue
        spot = _spot(spots, told)
        on.setdefault((spot.project, spot.model), {})[spot.reference] = None
    painted = tuple(
        PaintedModel(project, model, _places(book, project, model, references))
        for (project, model), references in on.items()
    )
    demand(bool(painted), "line", message("tells no model; write it as {example}", example=EXAMPLE))
    return replace(work, on=painted)


def _measure(work: OtherWork, told: str, known: Mapping[str, Stage | Tool]) -> OtherWork | None:
    """Return the work with a tool, kind, time or amount told, None where it tells none."""
    number = re.fullmatch(r"(\d+(?:[.,]\d+)?)\s*(min|ml)\.?", told, flags=re.I)
    if number:
        amount = float(number[1].replace(",", "."))
        if number[2].lower() == "ml":
            number_in(amount, 0, 1000, "line", "ml")
            return replace(work, ml=amount)
        demand(amount.is_integer(), "line", "minutes are whole; write 15 min")
        number_in(int(amount), 1, MOST_MINUTES, "line", "min")
        return replace(work, minutes=int(amount))
    plain = told.casefold().removeprefix("by ").removeprefix("mit ").strip()
    meant = known.get(plain)
    if isinstance(meant, Tool):
        return replace(work, tool=meant)
    return replace(work, stage=meant) if meant is not None else None


def _coating(book: Book, told: str) -> str:
    names = [*(coating.name for coating in book.coatings), *(mix.name for mix in book.mixes)]
    same = [name for name in names if name.casefold() == told.strip().casefold()]
    if same:
        return same[0]
    wanted = _words(told)
    found = [name for name in names if _fits(wanted, _words(name))]
    demand(
        bool(wanted and found),
        "line",
        message('no coating or mix is called "{name}"', name=told.strip()[:80]),
    )
    demand(
        len(found) == 1,
        "line",
        message('"{name}" may be {several}; write more of it', name=told.strip()[:80],
                several=_several(found)),
    )  # fmt: skip
    return found[0]


def _spots(book: Book) -> Iterator[_Spot]:
    for project in book.projects:
        for model in project.models:
            whole = _words(model.name)
            yield _Spot(project.name, model.name, "", whole)
            for part in model.parts:
                named = (*whole, *_words(part.name))
                yield _Spot(project.name, model.name, part.name, named)
                for place in part.places:
                    reference = f"{part.name}/{place.name}"
                    spot = (*named, *_words(place.name))
                    yield _Spot(project.name, model.name, reference, spot)


def _spot(spots: list[_Spot], told: str) -> _Spot:
    wanted = _words(told)
    found = [spot for spot in spots if _fits(wanted, spot.words)]
    demand(
        bool(wanted and found),
        "line",
        message('"{name}" is no model, part, tool, kind of work, time or amount', name=told[:80]),
    )
    exact = [spot for spot in found if spot.words == wanted]
    # The plainest that fits is meant: the model before its parts, a part before its places.
    plain = exact or [spot for spot in found if not _inside(spot, found)]
    demand(
        len(plain) == 1,
        "line",
        message(
            '"{name}" may be {several}; write more of it',
            name=told[:80],
            several=_several(" ".join((spot.model, *spot.reference.split("/"))) for spot in plain),
        ),
    )
    return plain[0]


def _inside(spot: _Spot, found: list[_Spot]) -> bool:
    """Tell whether a spot lies in another one that was found."""
    return any(
        (other.project, other.model) == (spot.project, spot.model)
        and other != spot
        and (not other.reference or spot.reference.startswith(f"{other.reference}/"))
        for other in found
    )


def _fits(wanted: tuple[str, ...], words: tuple[str, ...]) -> bool:
    """Tell whether each word wanted begins another of some words."""
    left = list(words)
    for word in wanted:
        match = next((one for one in left if one == word), None)
        match = match or next((one for one in left if one.startswith(word)), None)
        if match is None:
            return False
        left.remove(match)
    return True


def _words(text: str) -> tuple[str, ...]:
    return tuple(re.findall(r"\w+", text.casefold()))


def _several(names: Iterable[str]) -> str:
    return ", ".join(f'"{name.strip()}"' for name in list(names)[:4])


def _places(book: Book, project: str, model: str, references: Iterable[str]) -> tuple[str, ...]:
    one = book.project(project).model(model)
    found: dict[str, None] = {}
    for reference in references:
        names = [reference] if reference else [part.name for part in one.parts]
        for name in names:
            found.update(dict.fromkeys(one.places(name)))
    return tuple(found)
