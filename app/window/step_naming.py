"""What the steps of the open book are called.

A plan knows its work by keys, in which a step is a short name for the file; a person knows it
by its title.  Like the language, the titles belong to what is open: the session hands every
book over as soon as it has changed, so that whoever tells of a key need not carry the book.
"""

from __future__ import annotations

from planner.values.book import Book
from planner.values.plan import PassKey
from planner.values.step import Stage, Step

_steps: dict[tuple[str, str, str], Step] = {}


def know(book: Book | None) -> None:
    """Go by the steps of a book from now on; None knows none."""
    _steps.clear()
    for project in book.projects if book else ():
        for model in project.models:
            for step in model.steps:
                _steps[project.name, model.name, step.id] = step


def mentioned(text: str) -> list[tuple[str, PassKey]]:
    """Return where a text names a step as "model/step", and which step that is."""
    found = []
    for project, model, step in _steps if "/" in text else ():
        name = f"{model}/{step}"
        at = text.find(name)
        if at < 0 or text[at - 1 : at] == "/" or text[at + len(name) : at + len(name) + 1] == "#":
            continue
        after = text[at + len(name) : at + len(name) + 1]
        if not (after.isalnum() or after in ("-", "_")) or not after:
            found.append((name, PassKey(project, model, step)))
    return found


def title_of(key: PassKey) -> str:
    """Return the title of a pass's step as it is kept; its short name where there is none."""
    step = _steps.get((key.project, key.model, key.step))
    return (step.title if step else "") or key.step.replace("-", " ")


def stage_of(key: PassKey) -> Stage | None:
    """Return the stage of a pass's step; None where the book does not hold it."""
    step = _steps.get((key.project, key.model, key.step))
    return step.stage if step else None
