"""A person's own edits of a model are told from what its sequence has changed since."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest
from sequence_books import bare_book, bare_model
from sqlalchemy import create_engine, update

from app.service import sequence_steps, sequences
from app.service.build_edits import steps as step_edits
from app.service.edits import Edit
from planner.sequences.apply_to_book import sequence_named
from planner.sequences.difference import Offer, difference
from planner.values.book import Book
from planner.values.keys import StepKey
from planner.values.step import Minutes
from storage import journal
from storage.bench_book import BenchBook
from storage.tables import JOURNAL

QUICK, OURS, SPOT = "quick table-top", "table-top of ours", ("table", "truck")


@pytest.fixture
def store(tmp_path: Path):
    """A book whose truck was given a copy of the quick sequence."""
    book = bare_book()
    with BenchBook.create(tmp_path / "b.tackfree", book) as made:
        apply(made, lambda book: sequences.duplicate(book, QUICK, OURS))
        apply(made, lambda book: sequences.give_sequence(book, "table", ["truck"], OURS))
        yield made


def apply(store: BenchBook, make) -> None:
    edit: Edit = make(store.book())
    store.apply(edit.name, edit.book, edit.merge, edit.verb)


def forget_verbs(path: Path) -> None:
    """Make the journal one of before verbs and templates were kept: bare sentences."""
    with BenchBook.open(path) as store:
        names = [(str(entry.name), entry.id) for entry in store.journal()]
    engine = create_engine(f"sqlite:///{path}")
    with engine.begin() as connection:
        connection.execute(update(JOURNAL).values(verb="", arguments=None))
        for name, own in names:
            connection.execute(update(JOURNAL).where(JOURNAL.c.id == own).values(name=name))
        journal.seal(connection)
    engine.dispose()


def minutes_of_a_step(book: Book, step: str, fixed: int) -> Edit:
    """Change the minutes of a step of the truck, as Build does."""
    project = book.project("table")
    model = project.model("truck")
    old = tuple(
        replace(other, minutes=Minutes(fixed=fixed)) if other.id == step else other
        for other in model.steps
    )
    models = tuple(
        replace(model, steps=old) if other is model else other for other in project.models
    )
    return Edit("other minutes", replace(book, projects=(replace(project, models=models),)))


def offer(store: BenchBook) -> Offer:
    book = store.book()
    (found,) = difference(book, sequence_named(book, OURS), sequences.given_steps(store))
    return found


def change_sequence(book: Book, step: str, fixed: int) -> Edit:
    order = sequence_named(book, OURS)
    one = next(each for each in order.steps if each.step.id == step)
    new = replace(one, step=replace(one.step, minutes=Minutes(fixed=fixed)))
    return sequences.change(book, OURS, sequence_steps.set_step(order, step, new))


def test_an_edit_of_ones_own_is_no_offer(store: BenchBook) -> None:
    apply(store, lambda book: minutes_of_a_step(book, "wash", 55))
    apply(store, lambda book: step_edits.remove_steps(book, [StepKey(*SPOT, "edges")]))
    found = offer(store)
    assert found.own == {"wash", "edges"}
    assert not found.news
    assert sequences.offers(store.book(), sequences.given_steps(store)) == {}


def test_what_the_sequence_changed_since_is_news_beside_it(store: BenchBook) -> None:
    apply(store, lambda book: minutes_of_a_step(book, "wash", 55))
    apply(store, lambda book: change_sequence(book, "edges", 41))
    found = offer(store)
    assert {one.was.id for one in found.changed} == {"wash", "edges"}
    assert found.own == {"wash"}
    assert found.news
    assert sequences.offers(store.book(), sequences.given_steps(store)) == {OURS: 1}


def test_where_both_changed_a_step_it_is_news(store: BenchBook) -> None:
    apply(store, lambda book: minutes_of_a_step(book, "wash", 55))
    apply(store, lambda book: change_sequence(book, "wash", 41))
    assert offer(store).own == frozenset()


def test_taking_over_is_what_is_given_from_then_on_and_undo_takes_that_back(
    store: BenchBook,
) -> None:
    apply(store, lambda book: change_sequence(book, "wash", 41))
    apply(store, lambda book: sequences.take_over(book, OURS, [SPOT]))
    apply(store, lambda book: minutes_of_a_step(book, "wash", 55))
    assert offer(store).own == {"wash"}
    store.undo()
    store.undo()  # of taking over: the sequence has something new again
    assert offer(store).news


def test_of_a_model_nobody_knows_about_every_difference_is_told_as_news(store: BenchBook) -> None:
    apply(store, lambda book: minutes_of_a_step(book, "wash", 55))
    book = store.book()
    (found,) = difference(book, sequence_named(book, OURS))
    assert found.news
    assert found.own == frozenset()


@pytest.mark.parametrize("old", [False, True], ids=["new journal", "old journal"])
@pytest.mark.parametrize("name", ["give way", "save our souls", "begin to", "truck"])
def test_a_step_of_a_model_that_is_called_like_an_edit_is_ones_own(
    tmp_path: Path, name: str, old: bool
) -> None:
    path = tmp_path / "b.tackfree"
    spot = ("table", name)
    with BenchBook.create(path, bare_book(bare_model(name))) as store:
        apply(store, lambda book: sequences.give_sequence(book, "table", [name], QUICK))
        given = store.book().project("table").model(name).steps
        apply(store, lambda book: step_edits.set_title(book, StepKey(*spot, "wash"), "to mine"))
        assert str(store.undoable()).startswith(name)
    if old:
        forget_verbs(path)
    with BenchBook.open(path) as store:
        assert sequences.given_steps(store) == {spot: given}
