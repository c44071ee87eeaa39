"""Whatever is edited on the table: the book stays a book, and the rest of it stays the same."""

from __future__ import annotations

import tempfile
from collections.abc import Callable
from contextlib import closing
from dataclasses import replace
from pathlib import Path

from drawn_examples import drawn
from hypothesis import given
from hypothesis import strategies as st
from small_book import small_book
from strategies import books

from app.service.build_edits import bulk_change, models, names, order, parts, steps
from app.service.build_edits.advice import add_dry_fit, late_joined
from app.service.edits import Edit
from planner.graph.network import check_acyclic
from planner.values.book import Book
from planner.values.keys import ModelKey, StepKey
from planner.values.model import Model, Part, Place
from planner.values.project import Project
from planner.values.refusal import Refused
from planner.values.step import Minutes, Stage, Tool, Trait
from storage.bench_book import BenchBook

Make = Callable[[st.DrawFn, Book, Project, Model], Edit]


def _at(project: Project, model: Model) -> ModelKey:
    return ModelKey(project.name, model.name)


def _some_steps(draw: st.DrawFn, model: Model) -> list[str]:
    ids = [step.id for step in model.steps]
    return draw(st.lists(st.sampled_from(ids), min_size=1, max_size=3, unique=True))


def _spot(draw: st.DrawFn, project: Project, model: Model) -> StepKey:
    return StepKey(project.name, model.name, draw(st.sampled_from(model.steps)).id)


def _places(model: Model) -> list[str]:
    return [f"{part.name}/{place.name}" for part in model.parts for place in part.places]


def move(draw: st.DrawFn, book: Book, project: Project, model: Model) -> Edit:
    to = draw(st.integers(0, len(model.steps)))
    return order.move_steps(book, _at(project, model), _some_steps(draw, model), to)


def remove(draw: st.DrawFn, book: Book, project: Project, model: Model) -> Edit:
    chosen = _some_steps(draw, model)
    return steps.remove_steps(
        book, [StepKey(project.name, model.name, choice) for choice in chosen]
    )


def add(draw: st.DrawFn, book: Book, project: Project, model: Model) -> Edit:
    step = steps.fresh_step(book, model, draw(st.sampled_from(Stage)))
    return steps.add_step(book, _at(project, model), step, draw(st.integers(0, len(model.steps))))


def split(draw: st.DrawFn, book: Book, project: Project, model: Model) -> Edit:
    chosen = draw(st.sets(st.sampled_from(_places(model)), min_size=1))
    return steps.split_places(book, _spot(draw, project, model), chosen)


def rename_step(draw: st.DrawFn, book: Book, project: Project, model: Model) -> Edit:
    new = draw(st.sampled_from(["another", *(step.id for step in model.steps)]))
    return names.rename_step(book, _spot(draw, project, model), new)


def rename_model(draw: st.DrawFn, book: Book, project: Project, model: Model) -> Edit:
    return names.rename_model(
        book, _at(project, model), draw(st.sampled_from(["barrow", "cart 1"]))
    )


def rename_part(draw: st.DrawFn, book: Book, project: Project, model: Model) -> Edit:
    old = draw(st.sampled_from(model.parts)).name
    return names.rename_part(
        book, _at(project, model), old, draw(st.sampled_from(["keel", "hull"]))
    )


def rename_place(draw: st.DrawFn, book: Book, project: Project, model: Model) -> Edit:
    part, _, place = draw(st.sampled_from(_places(model))).partition("/")
    new = draw(st.sampled_from(["deck", "area 1"]))
    return names.rename_place(book, _at(project, model), part, place, new)


def copy(draw: st.DrawFn, book: Book, project: Project, model: Model) -> Edit:
    copied = steps.Copied(_at(project, model), tuple(_some_steps(draw, model)))
    target = draw(st.sampled_from(project.models))
    return steps.copy_steps(book, copied, [_at(project, target)])


def change(draw: st.DrawFn, book: Book, project: Project, model: Model) -> Edit:
    chosen = [StepKey(project.name, model.name, step) for step in _some_steps(draw, model)]
    wanted = bulk_change.StepChange(
        fixed=draw(st.none() | st.integers(0, 40)),
        coats=draw(st.none() | st.integers(1, 3)),
        tool=draw(st.none() | st.sampled_from(Tool)),
        coating=draw(st.none() | st.sampled_from(["sand", "faded sand", "gloss clear"])),
        split_least=draw(st.none() | st.sampled_from([0, 15])),
        look_in=draw(st.none() | st.sampled_from([0, 20])),
        gain=frozenset(draw(st.sets(st.sampled_from(Trait)))),
    )
    return bulk_change.change_steps(book, chosen, wanted)


def again(draw: st.DrawFn, book: Book, project: Project, model: Model) -> Edit:
    return models.same_again(
        book, _at(project, model), draw(st.sampled_from([["twin"], ["a", "b"]]))
    )


def remove_model(draw: st.DrawFn, book: Book, project: Project, model: Model) -> Edit:
    return models.remove_models(book, project.name, [model.name])


def remove_place(draw: st.DrawFn, book: Book, project: Project, model: Model) -> Edit:
    every = [*_places(model), *(part.name for part in model.parts)]
    return parts.remove_places(book, _at(project, model), [draw(st.sampled_from(every))])


def apart(draw: st.DrawFn, book: Book, project: Project, model: Model) -> Edit:
    part, _, place = draw(st.sampled_from(_places(model))).partition("/")
    return parts.paint_apart(book, _at(project, model), part, place)


def glue(draw: st.DrawFn, book: Book, project: Project, model: Model) -> Edit:
    first, second = draw(st.permutations([part.name for part in model.parts]))[:2]
    return parts.glue_first(book, _at(project, model), first, second)


def add_part(draw: st.DrawFn, book: Book, project: Project, model: Model) -> Edit:
    part = Part(name="ladder", places=(Place(name="rungs"),))
    return parts.add_part(book, _at(project, model), part)


def dry_fit(draw: st.DrawFn, book: Book, project: Project, model: Model) -> Edit:
    return add_dry_fit(book, _at(project, model))


KINDS: tuple[Make, ...] = (
    move,
    move,
    remove,
    add,
    split,
    rename_step,
    rename_model,
    rename_part,
    rename_place,
    copy,
    change,
    again,
    remove_model,
    remove_place,
    apart,
    glue,
    add_part,
    dry_fit,
)


def drawn_edit(data: st.DataObject, book: Book) -> tuple[ModelKey, Edit | Refused]:
    """Draw an edit of a drawn model; what is refused is an answer, too."""
    project = data.draw(st.sampled_from(book.projects))
    model = data.draw(st.sampled_from(project.models))
    kind = data.draw(st.sampled_from(KINDS))
    needs_two = kind is glue and len(model.parts) < 2
    if (not model.steps and kind not in (add, again, remove_model, apart)) or needs_two:
        kind = again
    if kind is dry_fit and not late_joined(model):
        kind = again
    at = ModelKey(project.name, model.name)
    try:
        return at, data.draw(st.composite(lambda draw: kind(draw, book, project, model))())
    except Refused as refused:
        return at, refused


@given(data=st.data(), book=books(logged=True, pinned=True, wished=True))
@drawn(60)
def test_every_edit_leaves_a_sound_book_and_touches_nothing_else(
    data: st.DataObject, book: Book
) -> None:
    at, edit = drawn_edit(data, book)
    if isinstance(edit, Refused):
        assert edit.mend
        return
    check_acyclic(edit.book)
    assert edit.name
    for project in book.projects:
        others = [
            model
            for model in project.models
            if (project.name, model.name) != (at.project, at.model)
        ]
        there = next(other for other in edit.book.projects if other.name == project.name)
        kept = {id(model) for model in there.models}
        copied_to = edit.name.startswith("copy")
        assert copied_to or all(id(other) in kept for other in others)
        assert len(there.log) == len(project.log)
        assert len(there.diary) == len(project.diary)
        assert [(fact.coat, fact.start, fact.end) for fact in there.log] == [
            (fact.coat, fact.start, fact.end) for fact in project.log
        ]
    rest = replace(edit.book, projects=book.projects)
    assert rest == book


@given(data=st.data(), book=books(logged=True, pinned=True))
@drawn(4)
def test_undo_restores_and_redo_repeats(data: st.DataObject, book: Book) -> None:
    seen = [book]
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / "bench.tackfree"
        with closing(BenchBook.create(path, book)) as store:
            for _ in range(3):
                _, edit = drawn_edit(data, seen[-1])
                if isinstance(edit, Edit) and edit.book != seen[-1]:
                    store.apply(edit.name, edit.book)
                    seen.append(edit.book)
        with closing(BenchBook.open(path)) as store:
            for before in reversed(seen[:-1]):
                store.undo()
                assert store.book() == before
            for after in seen[1:]:
                store.redo()
                assert store.book() == after


@given(book=books(most_models=1, most_projects=1))
@drawn(30)
def test_gluing_again_what_was_taken_apart_keeps_what_every_step_reaches(book: Book) -> None:
    project = book.projects[0]
    model = project.models[0]
    part = next((part for part in model.parts if len(part.places) > 1), None)
    if part is None:
        return
    at = ModelKey(project.name, model.name)
    place = part.places[-1].name
    split_off = parts.paint_apart(book, at, part.name, place).book
    name = split_off.project(project.name).models[0].parts
    new = next(one.name for one in name if one.name not in [old.name for old in model.parts])
    back = parts.glue_first(split_off, at, part.name, new).book.project(project.name).models[0]
    assert [part.name for part in back.parts] == [part.name for part in model.parts]
    assert len(back.steps) == len(model.steps)
    for was, now in zip(model.steps, back.steps, strict=True):
        reached = {place for ref in was.references() for place in model.places(ref)}
        assert {place for ref in now.references() for place in back.places(ref)} == reached
        assert now.minutes == was.minutes


@given(data=st.data(), book=books(most_models=1, most_projects=1))
@drawn(30)
def test_splitting_shares_places_and_minutes(data: st.DataObject, book: Book) -> None:
    project = book.projects[0]
    model = project.models[0]
    step = data.draw(st.sampled_from(model.steps))
    reached = [place for ref in step.references() for place in model.places(ref)]
    if len(reached) < 2 or step.stage is Stage.JOIN:
        return
    gone = data.draw(st.sets(st.sampled_from(reached), min_size=1, max_size=len(reached) - 1))
    try:
        edit = steps.split_places(book, StepKey(project.name, model.name, step.id), gone)
    except Refused:
        # A half without its glue or its coats is none.
        assert step.applications
        assert step.touches
        return
    after = edit.book.project(project.name).models[0]
    at = [step.id for step in after.steps].index(step.id)
    first, second = after.steps[at : at + 2]
    places = [
        {p for ref in half.references() for p in after.places(ref)} for half in (first, second)
    ]
    assert places[1] == gone
    assert places[0] == set(reached) - gone
    assert len(after.steps) == len(model.steps) + 1
    fixed = first.minutes.fixed + second.minutes.fixed
    assert fixed in (step.minutes.fixed, step.minutes.fixed + 1)
    for each in after.steps:
        if step.id in each.after:
            assert second.id in each.after


def test_minutes_are_shared_by_the_number_of_places() -> None:
    # Three places of one part, 30 minutes: by hand 20 and 10.
    step_minutes = Minutes(fixed=30)
    part = Part(name="hull", places=tuple(Place(name=name) for name in "abc"))
    step = steps.Step(id="dust", stage=Stage.CLEAN, touches=("hull",), minutes=step_minutes)
    model = Model(name="cart", parts=(part,), steps=(step,))
    book = replace(small_book(), projects=(Project(name="yard", models=(model,)),))
    edit = steps.split_places(book, StepKey("yard", "cart", "dust"), {"hull/c"})
    first, second = edit.book.projects[0].models[0].steps
    assert (first.minutes.fixed, second.minutes.fixed) == (20, 10)
    assert (first.touches, second.touches) == (("hull/a", "hull/b"), ("hull/c",))
