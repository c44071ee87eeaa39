"""What goes out of a book as an exchange file: everything, some projects, or a sequence."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace

from planner.values.book import Book
from planner.values.project import Project
from planner.values.refusal import demand_known
from planner.values.sequence import Sequence
from planner.values.supplies import Supplies
from planner.values.wishes import Pace, Preferences
from storage.exchange import Exchange, dump


def export(book: Book, names: tuple[str, ...] = (), note: str = "") -> bytes:
    """Return an exchange file of some projects, or of everything.

    With names, only those projects go out, with the coatings, mixes and
    sequences that they name; bench time, room and gear always do.

    Raises
    ------
    Refused
        If no project is called so.
    """
    if not names:
        return dump(Exchange(book, note))
    for name in names:
        demand_known(name, [project.name for project in book.projects], "project", "project")
    projects = tuple(project for project in book.projects if project.name in names)
    made = {model.made.sequence for project in projects for model in project.models if model.made}
    sequences = tuple(sequence for sequence in book.sequences if sequence.name in made)
    named = {name for project in projects for name in _in_project(project)}
    named |= {name for sequence in sequences for name in _in_sequence(sequence)}
    return dump(Exchange(_part(book, projects, sequences, named), note))


def export_sequence(book: Book, name: str, note: str = "") -> bytes:
    """Return an exchange file of one sequence, with the coatings that it usually takes.

    Raises
    ------
    Refused
        If no sequence is called so.
    """
    demand_known(name, [sequence.name for sequence in book.sequences], "sequence", "sequence")
    sequence = next(sequence for sequence in book.sequences if sequence.name == name)
    named = set(_in_sequence(sequence))
    return dump(Exchange(_part(book, (), (sequence,), named), note))


def _part(
    book: Book, projects: tuple[Project, ...], sequences: tuple[Sequence, ...], named: set[str]
) -> Book:
    """Return the part of a book that these need; what is the person's own stays at home."""
    mixes = tuple(mix for mix in book.mixes if mix.name in named)
    brushes = {entry.airbrush for project in projects for entry in project.log}
    named = named | {portion.coating for mix in mixes for portion in mix.portions}
    return replace(
        book,
        projects=projects,
        sequences=sequences,
        mixes=mixes,
        coatings=tuple(coating for coating in book.coatings if coating.name in named),
        supplies=Supplies(),
        preferences=Preferences(),
        pace=Pace(),
        cleaned=tuple(cleaning for cleaning in book.cleaned if cleaning.airbrush in brushes),
        drying_cards=(),
    )


def _in_project(project: Project) -> Iterable[str]:
    for model in project.models:
        for step in model.steps:
            for application in step.applications:
                yield application.coating
        if model.made:
            yield from (chosen.coating for chosen in model.made.colours)
    for fact in project.log:
        yield from (used.coating for used in fact.used)


def _in_sequence(sequence: Sequence) -> Iterable[str]:
    return (colour.usual for colour in sequence.colours if colour.usual)
