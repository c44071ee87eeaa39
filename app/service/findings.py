"""Everything found unsound in a book's order of coats, in one list."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Any

from planner.layers.disputed_choices import Choice, choices
from planner.layers.findings import find as find_in_layers
from planner.layers.overcoat_table import LayerVerdict
from planner.passes import expand_model
from planner.schedule.impossible_passes import blocked
from planner.values.book import Book

HARMLESS = frozenset({LayerVerdict.SOUND, LayerVerdict.WAIT, LayerVerdict.ADVICE})


@dataclass(frozen=True)
class ListedFinding:
    """One finding as it is told.

    ``where`` is the path to the step, ``about`` names model, step and
    places; ``mend`` is "" where there is none.
    """

    verdict: LayerVerdict
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


def find(book: Book) -> tuple[ListedFinding, ...]:
    """Return every finding on the active projects, the gravest first."""
    found = [
        ListedFinding(
            verdict=layer.verdict,
            where=layer.path,
            about=layer.about,
            message=layer.message,
            source=layer.source,
            mend=layer.mend.title if layer.mend else "",
        )
        for layer in find_in_layers(book)
    ]
    known = {finding.where for finding in found}
    found += [finding for finding in _blocked(book) if finding.where not in known]
    return tuple(sorted(found, key=lambda finding: -finding.verdict.rank))


def _blocked(book: Book) -> Iterator[ListedFinding]:
    """Yield the steps that no schedule could place."""
    for at, project in enumerate(book.projects):
        for number, model in enumerate(project.models if project.active else ()):
            passes = expand_model(project.name, model)
            steps = [step.id for step in model.steps]
            told = set()
            for key, why in blocked(book, model, passes).items():
                if key.step in told:
                    continue
                told.add(key.step)
                yield ListedFinding(
                    verdict=LayerVerdict.NEVER,
                    where=f"projects[{at}].models[{number}].steps[{steps.index(key.step)}]",
                    about=f"{model.name} · {key.step}",
                    message=why,
                    source="it follows from the working order itself",
                    mend="",
                )


@dataclass(frozen=True)
class Divided:
    """A question on which practitioners disagree, and the models that answer it one way."""

    question: str
    chosen: str
    reason: str
    other: str
    other_reason: str
    models: tuple[str, ...]
    where: tuple[str, ...]
    source: str

    def document(self) -> dict[str, Any]:
        """Return it as JSON data."""
        return {
            "question": self.question,
            "chosen": self.chosen,
            "reason": self.reason,
            "other": self.other,
            "other_reason": self.other_reason,
            "models": list(self.models),
            "where": list(self.where),
            "source": self.source,
        }


def divided(book: Book) -> tuple[Divided, ...]:
    """Return what the active projects decide one way or the other, each answer once."""
    told: dict[tuple[str, str], list[Choice]] = {}
    for choice in choices(book):
        told.setdefault((choice.question, choice.chosen), []).append(choice)
    return tuple(
        Divided(
            question=first.question,
            chosen=first.chosen,
            reason=first.sides[0][1],
            other=first.sides[1][0],
            other_reason=first.sides[1][1],
            models=tuple(dict.fromkeys(choice.model for choice in same)),
            where=tuple(choice.path for choice in same),
            source=first.source,
        )
        for same in told.values()
        for first in same[:1]
    )
