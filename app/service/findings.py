"""Everything found unsound in a book's order of coats, in one list."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Any

from planner.layers.findings import find as find_in_layers
from planner.layers.table import Verdict
from planner.passes import expand
from planner.schedule.blocked import blocked
from planner.values.book import Book

HARMLESS = frozenset({Verdict.SOUND, Verdict.WAIT, Verdict.ADVICE})


@dataclass(frozen=True)
class Found:
    """One finding as it is told.

    ``where`` is the path to the step, ``about`` names model, step and
    places; ``mend`` is "" where there is none.
    """

    verdict: Verdict
    where: str
    about: str
    message: str
    source: str
    mend: str

    @property
    def grave(self) -> bool:
        """Tell whether the order is not sound until it is mended."""
        return self.verdict not in HARMLESS

    def document(self) -> dict[str, Any]:
        """Return the finding as JSON data."""
        return {
            "verdict": self.verdict.value,
            "grave": self.grave,
            "where": self.where,
            "about": self.about,
            "message": self.message,
            "source": self.source,
            "mend": self.mend or None,
        }


def find(book: Book) -> tuple[Found, ...]:
    """Return every finding on the active projects, the gravest first."""
    found = [
        Found(
            verdict=one.verdict,
            where=one.path,
            about=one.about,
            message=one.message,
            source=one.source,
            mend=one.mend.title if one.mend else "",
        )
        for one in find_in_layers(book)
    ]
    known = {one.where for one in found}
    found += [one for one in _blocked(book) if one.where not in known]
    return tuple(sorted(found, key=lambda one: -one.verdict.rank))


def _blocked(book: Book) -> Iterator[Found]:
    """Yield the steps that no schedule could place."""
    for at, project in enumerate(book.projects):
        for number, model in enumerate(project.models if project.active else ()):
            passes = expand(project, model)
            steps = [step.id for step in model.steps]
            told = set()
            for key, why in blocked(book, model, passes).items():
                if key.step in told:
                    continue
                told.add(key.step)
                yield Found(
                    verdict=Verdict.NEVER,
                    where=f"projects[{at}].models[{number}].steps[{steps.index(key.step)}]",
                    about=f"{model.name} · {key.step}",
                    message=why,
                    source="it follows from the working order itself",
                    mend="",
                )
