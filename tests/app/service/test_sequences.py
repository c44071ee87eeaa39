"""Edits of sequences: given, saved, changed, taken over; nothing is lost on the way."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime

import pytest
from sequence_books import bare_book, bare_model

from app.service import sequence_steps, sequences
from app.service.starter_stock import COATINGS, MIXES, with_coatings
from planner.layers.findings import find
from planner.sequences.apply_to_book import every_sequence, sequence_named
from planner.sequences.built_in import ALL
from planner.sequences.difference import difference
from planner.values.book import Book
from planner.values.coating import THINNERS
from planner.values.model import Model
from planner.values.project import Logged
from planner.values.refusal import Refused
from planner.values.sequence import Option, Sequence
from planner.values.step import Minutes, Stage, Tool
from planner.values.wishes import Learned, Pace

QUICK, OURS = "quick table-top", "table-top of ours"


def model_of(book: Book, name: str = "truck") -> Model:
    return book.projects[0].model(name)


def with_quick(*models: Model) -> Book:
    book = bare_book(*models)
    names = [model.name for model in book.projects[0].models]
    return sequences.give_sequence(book, "table", names, QUICK).book


def own(book: Book, name: str = OURS) -> Book:
    """Return a book with a copy of the quick sequence that the truck follows."""
    copied = sequences.duplicate(book, QUICK, name).book
    return sequences.give_sequence(copied, "table", ["truck"], name).book


def longer(sequence: Sequence, id_: str = "wash", fixed: int = 30) -> Sequence:
    one = next(each for each in sequence.steps if each.step.id == id_)
    step = replace(one.step, minutes=Minutes(fixed=fixed))
    return sequence_steps.set_step(sequence, id_, replace(one, step=step))


def test_giving_brings_the_coatings_that_are_laid_and_no_others() -> None:
    book = with_quick()
    laid = {a.coating for step in model_of(book).steps for a in step.applications}
    mixed = {p.coating for mix in book.mixes for p in mix.portions}
    there = {coating.name for coating in (*book.coatings, *book.mixes)} - mixed
    assert there == laid
    assert mixed == {"waterborne wash, umber", "water"}


def test_a_coating_that_is_there_already_is_taken_as_it_is() -> None:
    sand = replace(
        next(coating for coating in COATINGS if coating.name.endswith("sand")), in_stock_ml=3
    )
    edit = sequences.give_sequence(
        replace(bare_book(), coatings=(sand,)), "table", ["truck"], QUICK
    )
    assert edit.book.coating(sand.name).in_stock_ml == 3
    assert edit.name == "give quick table-top to truck"


def test_the_model_remembers_what_was_chosen() -> None:
    made = model_of(with_quick()).made
    assert made is not None
    assert made.sequence == QUICK
    assert made.options == ("airbrush", "dry-brushed edges")
    assert {colour.colour: colour.coating for colour in made.colours}["base colour"] == (
        "waterborne acrylic, sand"
    )


def test_a_colour_of_ones_own_is_laid_and_a_missing_one_named() -> None:
    book = with_coatings(bare_book(), ["waterborne acrylic, olive green"])
    colours = {"base colour": "waterborne acrylic, olive green"}
    given = sequences.give_sequence(book, "table", ["truck"], QUICK, None, colours).book
    laid = {a.coating for step in model_of(given).steps for a in step.applications}
    assert "waterborne acrylic, olive green" in laid
    assert "waterborne acrylic, sand" not in laid
    with pytest.raises(Refused, match='the stock has no "mud" for "base colour"'):
        sequences.give_sequence(book, "table", ["truck"], QUICK, None, {"base colour": "mud"})
    with pytest.raises(Refused, match="at least one model"):
        sequences.give_sequence(book, "table", [], QUICK)


def test_the_starter_stock_is_sound_and_claims_no_times_of_its_own() -> None:
    book = with_coatings(bare_book(), [coating.name for coating in (*COATINGS, *MIXES)])
    assert {coating.name for coating in book.coatings} == {coating.name for coating in COATINGS}
    assert not any(coating.times or coating.in_stock_ml for coating in COATINGS)
    assert not find(book)
    assert with_coatings(book, [coating.name for coating in COATINGS]) is book
    paints = [coating for coating in COATINGS if coating.family not in THINNERS]
    assert all(
        str(paint.family) in paint.name
        for paint in paints
        if "acrylic" in paint.family.value and "wash" not in paint.name
    )


def test_a_change_is_offered_as_a_difference_and_taken_over() -> None:
    book = own(with_quick())
    assert sequences.offers(book) == {}
    old = sequence_named(book, OURS)
    changed = longer(sequence_steps.remove_step(old, "edges"))
    book = sequences.change(book, OURS, changed).book
    (offer,) = difference(book, changed)
    assert [step.id for step in offer.removed] == ["edges"]
    assert [(one.was.id, one.fields) for one in offer.changed] == [("wash", ("minutes",))]
    assert not offer.added
    assert not offer.lost
    assert not offer.refused
    assert sequences.offers(book) == {OURS: 1}
    taken = sequences.take_over(book, OURS, [("table", "truck")]).book
    assert difference(taken, changed) == ()
    wash = next(step for step in model_of(taken).steps if step.id == "wash")
    assert wash.minutes.fixed == 30


def test_a_step_added_or_moved_is_told() -> None:
    book = own(with_quick())
    longer_list, name = sequence_steps.copy_step(sequence_named(book, OURS), "wash")
    changed = sequence_steps.move_step(longer_list, "running-gear", 4)
    (offer,) = difference(sequences.change(book, OURS, changed).book, changed)
    assert [step.id for step in offer.added] == [name]
    assert "running-gear" in offer.moved


def test_a_model_may_go_its_own_way() -> None:
    book = own(with_quick())
    book = sequences.change(book, OURS, longer(sequence_named(book, OURS))).book
    left = sequences.leave(book, [("table", "truck")])
    assert left.name == "truck goes its own way"
    assert sequences.offers(left.book) == {}
    assert model_of(left.book).steps == model_of(book).steps
    assert model_of(left.book).made is None


def test_what_is_in_the_logbook_is_neither_changed_nor_lost() -> None:
    book = own(with_quick())
    (project,) = book.projects
    entry = Logged(model="truck", step="wash", start=datetime(2031, 3, 5, 18, 0, tzinfo=UTC))
    book = replace(book, projects=(replace(project, log=(entry,)),))
    old = sequence_named(book, OURS)
    assert difference(sequences.change(book, OURS, longer(old)).book, longer(old)) == ()
    without = sequence_steps.remove_step(old, "wash")
    book = sequences.change(book, OURS, without).book
    (offer,) = difference(book, without)
    assert offer.lost == ("wash",)
    with pytest.raises(Refused, match='wash of "truck" is in the logbook'):
        sequences.take_over(book, OURS, [("table", "truck")])


def test_a_changed_built_in_is_ones_own_and_its_removal_brings_it_back() -> None:
    book = with_quick()
    changed = sequences.change(book, QUICK, longer(sequence_named(book, QUICK))).book
    assert [sequence.name for sequence in changed.sequences] == [QUICK]
    assert sequences.offers(changed) == {QUICK: 1}
    assert len(every_sequence(changed)) == len(ALL)
    back = sequences.remove(changed, QUICK).book
    assert back == book


def test_duplicates_renaming_and_removing_keep_names_unique_and_models_following() -> None:
    book = own(with_quick())
    with pytest.raises(Refused, match="is taken"):
        sequences.duplicate(book, QUICK, OURS)
    with pytest.raises(Refused, match="comes with the program"):
        sequences.rename(book, QUICK, "other")
    with pytest.raises(Refused, match="is taken"):
        sequences.rename(book, OURS, "figure")
    renamed = sequences.rename(book, OURS, "other").book
    made = model_of(renamed).made
    assert made is not None
    assert made.sequence == "other"
    gone = sequences.remove(renamed, "other").book
    assert model_of(gone).made is None
    assert model_of(gone).steps == model_of(book).steps


def test_steps_saved_from_a_model_are_followed_by_it_and_fit_others() -> None:
    book = with_quick(bare_model("truck"), bare_model("van", area_cm2=160))
    saved = sequences.save_sequence(book, "table", "truck", "mine", "as painted").book
    assert sequences.offers(saved) == {}
    (mine,) = saved.sequences
    assert mine.note == "as painted"
    given = sequences.give_sequence(saved, "table", ["van"], "mine").book
    assert [step.id for step in model_of(given, "van").steps] == [
        step.id for step in model_of(given, "truck").steps
    ]
    with pytest.raises(Refused, match="is taken"):
        sequences.save_sequence(saved, "table", "van", "mine")


def test_a_project_is_saved_by_its_fullest_model() -> None:
    book = sequences.give_sequence(
        bare_book(bare_model("a"), bare_model("b")), "table", ["b"], QUICK
    ).book
    saved = sequences.save_project(book, "table", "mine").book
    assert [step.step.id for step in saved.sequences[0].steps] == [
        step.id for step in model_of(saved, "b").steps
    ]
    with pytest.raises(Refused, match="no project is called"):
        sequences.save_project(book, "tabel", "mine")


def test_the_learned_pace_is_no_difference_and_is_taken_back_when_saving() -> None:
    book = own(with_quick())
    learned = Learned(
        stage=Stage.WASH, tool=Tool.BRUSH, factor=1.5, since=datetime(2031, 3, 1, tzinfo=UTC)
    )
    faster = sequences.take_over(
        replace(book, pace=Pace(learned=(learned,))), OURS, [("table", "truck")]
    ).book
    before, after = (next(s for s in model_of(b).steps if s.id == "wash") for b in (book, faster))
    assert after.minutes.of(3) == round(before.minutes.of(3) * 1.5)
    assert sequences.offers(faster) == {}
    saved = sequences.save_sequence(faster, "table", "truck", "mine").book
    assert sequences.offers(saved) == {}


def test_options_and_colours_are_renamed_with_their_steps() -> None:
    quick = ALL[0]
    renamed = sequence_steps.put_option(quick, "decals", Option(name="markings"))
    assert any("markings" in step.needs for step in renamed.steps)
    without = sequence_steps.remove_option(quick, "decals")
    assert not any("decals" in step.needs for step in without.steps)
    assert len(without.steps) == len(quick.steps)
    colour = replace(quick.colours[2], name="hull colour")
    other = sequence_steps.put_colour(quick, "base colour", colour)
    laid = {a.coating for step in other.steps for a in step.step.applications}
    assert "hull colour" in laid
    assert "base colour" not in laid
    with pytest.raises(Refused, match="no option is called"):
        sequence_steps.remove_option(quick, "decls")


def test_a_step_cannot_stand_before_what_it_waits_for() -> None:
    with pytest.raises(Refused, match="cannot stand there"):
        sequence_steps.move_step(ALL[0], "press", -3)
    again = sequence_steps.remove_step(ALL[0], "decals")
    (press,) = [step.step for step in again.steps if step.step.id == "press"]
    assert (press.gates, press.after) == ((), ())
