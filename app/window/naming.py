"""What the steps of the open book are called.

A plan knows its work by keys, in which a step is a short name for the file; a person knows it
by its title.  Like the language, the titles belong to what is open: the session hands every
book over as soon as it has changed, so that whoever tells of a key need not carry the book.
"""

from __future__ import annotations

from planner.values.book import Book
from planner.values.plan import PassKey

_titles: dict[tuple[str, str, str], str] = {}


def know(book: Book | None) -> None:
    """Go by the titles of a book from now on; None knows none."""
    _titles.clear()
    for project in book.projects if book else ():
        for model in project.models:
            for step in model.steps:
                _titles[project.name, model.name, step.id] = step.title


def title_of(key: PassKey) -> str:
    """Return the title of a pass's step as it is kept; its short name where there is none."""
    return step_title(key.project, key.model, key.step)


def step_title(project: str, model: str, step: str) -> str:
    """Return the title of a step as it is kept; its short name where there is none."""
    return _titles.get((project, model, step), "") or step.replace("-", " ")
