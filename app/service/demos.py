"""The demonstration projects that come with the program."""

from __future__ import annotations

import json
from datetime import datetime, time
from importlib import resources
from importlib.resources.abc import Traversable

from app.service.demo_texts import ENGLISH, FOLDER, spoken, texts
from planner.bench import BenchCalendar
from planner.values.book import Book
from planner.values.message import message
from planner.values.moment import minute_of
from planner.values.refusal import Refused, unknown
from storage.exchange import Exchange, load

FIRST = "harbour_tenders"  # what `tackfree demo` shows when no name is given


def names() -> tuple[str, ...]:
    """Return the names of the demonstration projects, in order."""
    return tuple(sorted(_files()))


def title(name: str, language: str = ENGLISH) -> str:
    """Return what a demonstration is called in a language."""
    plain = name.replace("_", " ").capitalize()
    return texts(language).get("demo", {}).get(name, plain)


def data(name: str, language: str = ENGLISH) -> bytes:
    """Return the exchange file of a demonstration project, its texts in a language (BCP 47).

    Where a language is not written, the texts are English.

    Raises
    ------
    Refused
        If there is none of that name.
    """
    files = _files()
    key = name.removesuffix(".json").replace("-", "_").replace(" ", "_")
    if key not in files:
        known = ", ".join(sorted(files))
        raise Refused(
            "demo",
            message(
                "{what}; there are {known}",
                what=unknown("demo", name[:60], files),
                known=known,
            ),
        )
    found = files[key].read_bytes()
    words = texts(language)
    if not words:
        return found
    return json.dumps(spoken(json.loads(found), words), ensure_ascii=False).encode()


def read(name: str, language: str = ENGLISH) -> Exchange:
    """Return a demonstration project; raise `Refused` if there is none of that name."""
    return load(data(name, language))


def first_evening(book: Book) -> int:
    """Return the minute at which a book's own story goes on.

    That is the start of its first stretch of bench time after the last
    fact of its logbook, or after the date from which its evenings count.
    """
    calendar = BenchCalendar(book.bench_time)
    begun = [
        datetime.combine(rule.since, time(), calendar.zone) for rule in book.bench_time.stretches
    ]
    begun += [extra.start for extra in book.bench_time.extra]
    logged = [entry.end or entry.start for project in book.projects for entry in project.log]
    after = minute_of(max(logged) if logged else min(begun))
    stretch = calendar.next_stretch(after)
    return max(after, stretch.interval.start) if stretch else after


def _files() -> dict[str, Traversable]:
    try:
        folder = resources.files(FOLDER)
    except ModuleNotFoundError:
        raise Refused(
            "demo", message("the folder {folder} is missing; install Tackfree again", folder=FOLDER)
        ) from None
    return {
        entry.name.removesuffix(".json"): entry
        for entry in folder.iterdir()
        if entry.name.endswith(".json")
    }
