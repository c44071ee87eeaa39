"""What later work has overtaken, or shows to be done without a note: said, for a person knows."""

from __future__ import annotations

from collections.abc import Iterator

from app.service.wording import pass_name
from planner.logged_order import overtaken, passed_over
from planner.passes import expand_model, noted_of, order_left, work_of
from planner.values.book import Book
from planner.values.message import Message, message

MOST_SAID = 3


def overtaken_lines(book: Book) -> list[Message]:
    """Return a line on each coat that is not noted though later work is (definition 22)."""
    found = list(_lines(book))
    if len(found) <= MOST_SAID:
        return found
    more = message(
        "and {count} more coats are not noted, though later work is", count=len(found) - MOST_SAID
    )
    return [*found[:MOST_SAID], more]


def _lines(book: Book) -> Iterator[Message]:
    for project in book.projects:
        for model in project.models if project.active else ():
            if order_left(project, model) is None:
                continue
            written = expand_model(project.name, model)
            works, noted = work_of(written), noted_of(project, model)
            gone = passed_over(works, noted)
            for at, by in sorted({**overtaken(works, noted), **gone}.items()):
                work, later = pass_name(written[at].key), written[by].step.id
                if at in gone:
                    yield message(
                        "{work} is not noted, but “{later}” is: it is taken as done, and not "
                        "planned; note it, or leave it out",
                        work=work,
                        later=later,
                    )
                else:
                    yield message(
                        "{work} is not noted, but “{later}” was done over it: it is planned "
                        "behind that; note it if it was done, or leave it out",
                        work=work,
                        later=later,
                    )
