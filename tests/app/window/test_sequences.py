"""The Sequences view: given, saved, changed and taken over, by keys and in words."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QAbstractItemModelTester, QTest
from PySide6.QtWidgets import QApplication, QWidget
from sequence_books import NOW, bare_book, bare_model
from view_steps import dialog_of, shown

from app.service import sequences
from app.window.palette import DARK
from app.window.sequences.dialogs import (
    ColourDialog,
    NameDialog,
    NoteDialog,
    OptionDialog,
    SaveDialog,
)
from app.window.sequences.give_dialog import GiveDialog
from app.window.sequences.sequence_wording import gate_text, minutes_text, places_text, step_in_full
from app.window.sequences.step_dialog import SequenceStepDialog
from app.window.sequences.view import SequencesView
from app.window.session import Session
from planner.sequences.apply_to_book import sequence_named
from planner.sequences.built_in import ALL
from planner.values.book import Book
from planner.values.coating import Mark, Preparation, State, Window
from planner.values.model import Model
from planner.values.sequence import Option
from planner.values.step import Bound, Gate, Minutes, Tool, Trait

Opened = tuple[SequencesView, Session]
QUICK, OURS = "quick table-top", "ours"


def book_of(*given: str) -> Book:
    """Return a book of three trucks, some of which follow a sequence of our own."""
    book = bare_book(*(bare_model(name) for name in ("a", "b", "c")))
    book = sequences.duplicate(book, QUICK, OURS).book
    return sequences.give_sequence(book, "table", given, OURS).book if given else book


@pytest.fixture
def opened(tmp_path: Path) -> Iterator[Opened]:
    with shown(SequencesView, book_of("a", "b"), NOW, tmp_path) as both:
        yield both


@pytest.fixture
def bare(tmp_path: Path) -> Iterator[Opened]:
    with shown(SequencesView, book_of(), NOW, tmp_path) as both:
        yield both


def model_of(session: Session, name: str) -> Model:
    assert session.book is not None
    return session.book.projects[0].model(name)


def press(widget: QWidget, name: str) -> None:
    (button,) = [button for button in widget.buttons if button.text().startswith(name)]  # type: ignore[attr-defined]
    button.click()


def title_of(view: SequencesView, id_: str) -> str:
    """Return the title of a step of the sequence on screen."""
    return next(each.step.title for each in view.sequence().steps if each.step.id == id_)


def texts(listing: QWidget) -> list[list[str]]:
    model = listing.model  # type: ignore[attr-defined]
    columns = range(model.columnCount())
    rows = range(model.rowCount())
    return [[str(model.index(row, column).data()) for column in columns] for row in rows]


def test_every_sequence_is_listed_own_ones_first(bare: Opened) -> None:
    view, _session = bare
    rows = texts(view.list)
    assert [row[0] for row in rows] == [OURS, *(one.name for one in ALL)]
    assert [row[1] for row in rows[:2]] == ["your own", "built in"]
    for listing in (view.list, view.steps, view.options, view.colours, view.offers):
        QAbstractItemModelTester(listing.model)
        assert listing.table.accessibleName()
    view.set_colours(DARK)


def test_steps_are_shown_with_the_usual_options_or_all(bare: Opened) -> None:
    view, _session = bare
    view.choose(QUICK)
    usual = [row[0] for row in texts(view.steps)]
    assert usual.count("Prime") == 1
    assert "Decals" not in usual
    view.usual.setChecked(False)
    every = [row[0] for row in texts(view.steps)]
    assert every.count("Prime") == 3
    view.steps.choose(every.index(title_of(view, "press")))
    assert "done within 1 h 30 min after “Decals”" in view.steps.detail.text()
    assert "Only with decals" in view.steps.detail.text()


def test_with_which_options_a_step_is_there_is_seen_without_scrolling(bare: Opened) -> None:
    view, _session = bare
    view.resize(700, 600)  # beside bar and dock of the usual window
    view.show()
    view.usual.setChecked(False)
    for name in (one.name for one in ALL):
        view.choose(name)
        QApplication.processEvents()
        header, model = view.steps.table.horizontalHeader(), view.steps.model
        titles = [model.headerData(at, Qt.Orientation.Horizontal) for at in range(header.count())]
        at = titles.index("Only")
        right = header.sectionViewportPosition(at) + header.sectionSize(at)
        assert right <= view.steps.table.viewport().width()
    view.close()


def test_given_by_keys_alone(bare: Opened) -> None:
    view, session = bare
    view.choose("full weathered vehicle")
    view.list.table.setFocus()
    QTest.keyClick(view.list.table, Qt.Key.Key_Return)
    form = dialog_of(view, GiveDialog)
    assert [spot[1] for spot in form.spots()] == ["a", "b", "c"]
    form.models.setCurrentRow(1)
    QTest.keyClick(form.models, Qt.Key.Key_Space)
    form.options.choices["camouflage"].setFocus()
    QTest.keyClick(form.options.choices["camouflage"], Qt.Key.Key_Down)
    QTest.keyClick(form.options.boxes["pigments"], Qt.Key.Key_Space)
    assert "min of work in all" in form.outcome.text()
    form.buttons.accepted.emit()
    assert not model_of(session, "b").steps
    for name in ("a", "c"):
        made = model_of(session, name).made
        assert made is not None
        assert "two colours" in made.options
        assert "pigments" not in made.options
    session.undo()
    assert not model_of(session, "a").steps


def test_colours_follow_the_options_and_are_given_as_chosen(bare: Opened) -> None:
    view, session = bare
    view.choose(QUICK)
    view._give(view.list.chosen())
    form = dialog_of(view, GiveDialog)
    shown_first = {name for name, box in form.colours.boxes.items() if not box.isHidden()}
    assert "decals" not in shown_first
    form.options.boxes["decals"].setChecked(True)
    form.tabs.setCurrentIndex(2)
    assert form.colours.boxes["decals"].isVisible()
    box = form.colours.boxes["base colour"]
    box.setCurrentIndex(box.findData("waterborne acrylic, olive green"))
    form.buttons.accepted.emit()
    laid = {
        application.coating
        for step in model_of(session, "a").steps
        for application in step.applications
    }
    assert "waterborne acrylic, olive green" in laid
    assert "water-slide decals" in laid


def test_no_model_chosen_is_refused_beside_the_models(bare: Opened) -> None:
    view, session = bare
    view._give(view.list.chosen())
    form = dialog_of(view, GiveDialog)
    for spot in form.spots():
        form.models.tick(spot, on=False)
    assert form.outcome.text() == "No model is chosen yet."
    form.buttons.accepted.emit()
    assert form.isVisible()
    assert "at least one" in form.forms[0].messages["models"].text()
    form.reject()
    assert session.book == book_of()


def test_many_at_once_get_a_gentle_word(tmp_path: Path) -> None:
    book = bare_book(*(bare_model(f"truck {n}") for n in range(6)))
    with shown(SequencesView, book, NOW, tmp_path) as (view, _session):
        view._give(view.list.chosen())
        form = dialog_of(view, GiveDialog)
        assert "More than five at once" in form.outcome.text()
        form.models.tick(("table", "truck 0"), on=False)
        assert "More than five at once" not in form.outcome.text()
        form.reject()


def test_a_step_is_changed_through_its_form_and_offered_to_its_models(opened: Opened) -> None:
    view, session = opened
    view.choose(OURS)
    view.steps.choose([row[0] for row in texts(view.steps)].index("Shading wash all over"))
    press(view.steps, "Change")
    form = dialog_of(view, SequenceStepDialog)
    form.controls["title"].setText("Dark wash")
    form.controls["fixed"].setValue(6)
    form.controls["places"].setText("* but wheels; tracks")
    form.controls["coats"].setValue(2)
    form.given["look_in"].box.setChecked(True)
    form.controls["look_in"].setValue(15)
    form.traits.tick(Trait.ONE_STRETCH)
    form.needs.tick("dry-brushed edges")
    form.buttons.accepted.emit()
    one = next(each for each in sequence_named(session.book, OURS).steps if each.step.id == "wash")
    assert (one.step.title, one.step.minutes.fixed, one.step.coats) == ("Dark wash", 6, 2)
    assert one.step.applications[0].places == ("* but wheels; tracks",)
    assert (one.step.look_in, one.step.traits) == (15, (Trait.ONE_STRETCH,))
    assert one.needs == ("dry-brushed edges",)
    assert texts(view.list)[0][4] == "△ to 2 models"
    assert view.tabs.tabText(3) == "Changes offered (2)"
    (first, second) = texts(view.offers)
    assert first[:3] == ["a", "≠ changes", "Dark wash"]
    assert "name: Shading wash all over → Dark wash" in first[3]
    assert "look after: – → 15 min" in first[3]
    assert second[0] == "b"


def test_offers_are_taken_over_or_left(opened: Opened) -> None:
    view, session = opened
    view.choose(OURS)
    view.steps.choose([row[0] for row in texts(view.steps)].index("Dry-brush the edges"))
    view.steps.table.setFocus()
    QTest.keyClick(view.steps.table, Qt.Key.Key_Delete)
    assert [row[:3] for row in texts(view.offers)] == [
        [name, "− goes", "Dry-brush the edges"] for name in ("a", "b")
    ]
    view.offers.choose(0)
    press(view.offers, "Take over for this model")
    assert "edges" not in [step.id for step in model_of(session, "a").steps]
    assert "edges" in [step.id for step in model_of(session, "b").steps]
    press(view.offers, "Leave this model")
    assert texts(view.offers) == []
    assert model_of(session, "b").made is None
    assert texts(view.list)[0][3] == "1"


def test_a_refused_step_stays_in_its_form(opened: Opened) -> None:
    view, session = opened
    before = session.book
    view.choose(OURS)
    press(view.steps, "Change")
    form = dialog_of(view, SequenceStepDialog)
    form.controls["coats"].setValue(0)
    form.buttons.accepted.emit()
    assert form.isVisible()
    assert "outside 1 to 20" in form.forms[0].messages["coats"].text()
    form.controls["coats"].setValue(1)
    form.controls["tool"].setCurrentIndex(form.controls["tool"].findData(Tool.BRUSH.value))
    form.controls["places"].setText("")
    form.buttons.accepted.emit()
    assert "name what gets the coat" in form.forms[0].messages["places"].text()
    form.reject()
    assert session.book is before


def test_steps_move_and_say_why_they_may_not(bare: Opened) -> None:
    view, session = bare
    view.choose(OURS)
    view.usual.setChecked(False)
    names = [row[0] for row in texts(view.steps)]
    at = names.index(title_of(view, "press"))
    view.steps.choose(at)
    press(view.steps, "Earlier")
    assert "cannot stand there" in view.steps.message.text()
    press(view.steps, "Later")
    ids = [step.step.id for step in sequence_named(session.book, OURS).steps]
    assert ids.index("press") == at + 1
    assert view.steps.chosen().step.id == "press"
    press(view.steps, "Copy")
    assert "press-2" in [step.step.id for step in sequence_named(session.book, OURS).steps]


def test_options_and_colours_go_through_their_forms(bare: Opened) -> None:
    view, session = bare
    view.choose(OURS)
    press(view.options, "Add option")
    form = dialog_of(view, OptionDialog)
    form.controls["name"].setText("mud")
    form.controls["usual"].setChecked(True)
    form.controls["choice"].setText("dirt")
    form.controls["note"].setText("low down")
    form.buttons.accepted.emit()
    sequence = sequence_named(session.book, OURS)
    assert sequence.options[-1] == Option(name="mud", usual=True, choice="dirt", note="low down")
    view.options.choose(len(sequence.options) - 1)
    press(view.options, "Remove")
    assert "mud" not in [option.name for option in sequence_named(session.book, OURS).options]
    view.colours.choose(2)
    press(view.colours, "Change")
    form = dialog_of(view, ColourDialog)
    form.controls["name"].setText("hull colour")
    form.controls["usual"].setCurrentIndex(0)
    form.buttons.accepted.emit()
    colour = sequence_named(session.book, OURS).colours[2]
    assert (colour.name, colour.usual) == ("hull colour", "")


def test_saved_duplicated_renamed_noted_and_removed(opened: Opened) -> None:
    view, session = opened
    press(view.list, "Save from a model")
    form = dialog_of(view, SaveDialog)
    form.buttons.accepted.emit()
    assert "is empty" in form.forms[0].messages["name"].text()
    form.name.setText("as painted")
    form.note.setPlainText("on a Sunday")
    form.buttons.accepted.emit()
    assert view.sequence().name == "as painted"
    press(view.list, "Rename")
    form = dialog_of(view, NameDialog)
    form.name.setText("figure")
    form.buttons.accepted.emit()
    assert "is taken" in form.forms[0].messages["name"].text()
    form.name.setText("Sunday")
    form.buttons.accepted.emit()
    assert view.sequence().name == "Sunday"
    press(view.list, "Note and size")
    form = dialog_of(view, NoteDialog)
    form.controls["made_for_cm2"].setValue(0)
    form.buttons.accepted.emit()
    assert "more than 0" in form.forms[0].messages["made_for_cm2"].text()
    form.controls["made_for_cm2"].setValue(250)
    form.buttons.accepted.emit()
    assert sequence_named(session.book, "Sunday").made_for_cm2 == 250
    view.choose(QUICK)
    press(view.list, "Remove")
    assert "comes with the program" in view.list.message.text()
    press(view.list, "Duplicate")
    form = dialog_of(view, NameDialog)
    assert form.name.text() == "quick table-top, mine"
    form.buttons.accepted.emit()
    assert view.sequence().name == "quick table-top, mine"
    press(view.list, "Remove")
    assert "quick table-top, mine" not in [sequence.name for sequence in session.book.sequences]


def test_nothing_on_the_table_says_so(tmp_path: Path) -> None:
    empty = replace(bare_book(), projects=())
    with shown(SequencesView, empty, NOW, tmp_path) as (view, _session):
        press(view.list, "Give")
        assert "Nothing is on the table yet" in view.list.message.text()
        press(view.list, "Save")
        form = dialog_of(view, SaveDialog)
        form.buttons.accepted.emit()
        assert "no model has steps yet" in form.forms[0].messages["model"].text()
        form.reject()


def test_places_minutes_and_gates_in_words() -> None:
    told = places_text(("* but wheels; tracks", "*/roof", "hull/deck", "doors"))
    assert told == (
        "every part but wheels and tracks, roof wherever there is one, deck of hull and doors"
    )
    minutes = Minutes(fixed=2, per_part=3, per_change=1)
    assert minutes_text(minutes) == "2 min + 3 min a part + 1 min a change of colour"
    scuffed = Window(
        opens=Mark(state=State.DRY_THROUGH),
        preparation=Preparation.SCUFF,
        preparation_minutes=10,
    )
    soon = Window(closes=Mark(minutes=30))
    gate = Gate(after="a", windows=(soon, scuffed), closing=Bound.START)
    assert gate_text(gate, {"a": "Base"}) == (
        "begun within 30 min or from dry-through on with 10 min of preparation after “Base”"
    )


@pytest.mark.parametrize("sequence", ALL, ids=[one.name for one in ALL])
def test_every_step_of_the_built_in_ones_can_be_told(sequence) -> None:
    for step in sequence.steps:
        assert step_in_full(step, sequence).count("\n") <= 2
