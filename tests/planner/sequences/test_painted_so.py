"""What was really done on a model becomes an order, without what was redone."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

import pytest
from sequence_books import NOW, ZONE, bare_book, bare_model

from app.service.painted_again import another_like
from app.service.planning import plan
from app.service.sequences import give_sequence
from planner.evening.repairs import Repair, repaired
from planner.evening.split_steps import parted
from planner.layers.findings import find
from planner.sequences.painted_so import painted_so, photos_of
from planner.values.book import Book
from planner.values.keys import ModelKey
from planner.values.model import Model
from planner.values.moment import moment_of
from planner.values.plan import PassKey
from planner.values.project import Logged
from planner.values.refusal import Refused
from planner.values.step import Stage

AT = ModelKey("table", "truck")
PHOTO = "0" * 64 + ".jpg"


def given() -> Book:
    return give_sequence(bare_book(bare_model()), "table", ["truck"], "quick table-top").book


def model_of(book: Book, name: str = "truck") -> Model:
    return book.project("table").model(name)


def done(book: Book, step: str, day: int, minutes: int = 10, **more: object) -> Book:
    """Return the book with every coat of a step done on an evening, an hour apart."""
    steps = {one.id: one for one in model_of(book).steps}
    start = moment_of(NOW - 40 * 1440, ZONE) + timedelta(days=day)
    facts = tuple(
        Logged(
            model="truck",
            step=step,
            coat=coat,
            start=start + timedelta(hours=coat),
            end=start + timedelta(hours=coat, minutes=minutes),
            minutes=minutes,
            **more,  # type: ignore[arg-type]
        )
        for coat in range(1, steps[step].coats + 1)
    )
    project = book.project("table")
    return replace(book, projects=(replace(project, log=(*project.log, *facts)),))


def all_done(book: Book, minutes: int = 10) -> Book:
    known = {fact.step for fact in book.project("table").log}
    for day, step in enumerate(model_of(book).steps):
        if step.id not in known:
            book = done(book, step.id, day, minutes)
    return book


def test_a_model_painted_as_planned_gives_the_same_order_with_the_minutes_it_took() -> None:
    book = all_done(given(), minutes=31)
    steps = another_like(book, AT, ["second"]).book.project("table").model("second").steps
    assert [step.id for step in steps] == [step.id for step in model_of(book).steps]
    for step in steps:
        parts = len({name.partition("/")[0] for name in step.references()})
        assert step.minutes.of(parts) == 31, step.id


def test_what_was_redone_is_left_out() -> None:
    book = done(given(), "prime-airbrush", 0)
    book = done(book, "base-airbrush", 1)
    for kind in (Repair.AGAIN, Repair.SAND, Repair.STRIP):
        mended = repaired(book, PassKey("table", "truck", "base-airbrush", 1), kind)
        assert len(model_of(mended).steps) > len(model_of(book).steps), kind
        made = another_like(all_done(mended), AT, ["second"]).book
        steps = made.project("table").model("second").steps
        bases = [step for step in steps if step.stage is Stage.BASE]
        assert len(bases) == 1, kind
        assert not [step for step in steps if step.stage is Stage.CLEAN], kind
        assert not find(made), kind


def test_what_was_done_in_two_goes_is_one_step() -> None:
    book = done(given(), "prime-airbrush", 0)
    two = parted(book, PassKey("table", "truck", "base-airbrush", 1), ["body"]).book
    assert "base-airbrush-rest" in {step.id for step in model_of(two).steps}
    steps = another_like(all_done(two), AT, ["second"]).book.project("table").model("second").steps
    (base,) = [step for step in steps if step.stage is Stage.BASE]
    parts = {name.partition("/")[0] for name in base.references()}
    assert parts == {"body", "wheels", "side panels"}
    assert base.minutes.of(3) == 20  # ten minutes in each go


def test_what_was_left_out_stays_out_and_another_order_of_work_is_kept() -> None:
    book = given()
    ids = [step.id for step in model_of(book).steps]
    order = ["prime-airbrush", "base-airbrush", "running-gear", "edges", "wash"]
    for day, step in enumerate(order):
        book = done(book, step, day)
    sequence = painted_so(book.project("table"), model_of(book), "so")
    assert [step.step.id for step in sequence.steps] == order
    assert ids.index("wash") < ids.index("edges")


def test_the_new_one_is_planned_and_nothing_of_it_is_done() -> None:
    book = all_done(given())
    book = another_like(book, AT, ["second", "third"], note="as the first").book
    assert [model.name for model in book.project("table").models] == ["truck", "second", "third"]
    assert book.sequences[-1].note == "as the first"
    assert {fact.model for fact in book.project("table").log} == {"truck"}
    planned = plan(book, NOW, quick=True)
    assert planned.verdict.accepted
    assert not planned.plan.unplaced


def test_photos_come_in_the_order_of_the_work() -> None:
    book = done(given(), "prime-airbrush", 3, photos=(PHOTO,))
    assert photos_of(book.project("table"), "truck") == (PHOTO,)


def test_a_model_of_which_nothing_is_done_is_no_example() -> None:
    with pytest.raises(Refused, match="logbook yet"):
        another_like(given(), AT, ["second"])
    with pytest.raises(Refused, match="at least one"):
        another_like(all_done(given()), AT, [])
