"""Build as a person uses it: the tree and its keys, drops, forms, the drawing."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QAbstractItemModelTester, QTest
from PySide6.QtWidgets import QApplication, QLineEdit
from small_book import CART, NOW, PROJECT, small_book
from view_steps import back_to, dialog_of
from window_steps import MakeWindow, replan

from app.service.build_edits import models
from app.service.build_edits.models import bare_model
from app.service.holders import HolderUse
from app.window.main_window import MainWindow
from app.window.model_editor.coats import CoatPlacesModel
from app.window.model_editor.duplicate_dialog import AgainDialog
from app.window.model_editor.layers import layout_of
from app.window.model_editor.nodes import Key, NodeKind, nodes_of
from app.window.model_editor.tree_model import BuildModel
from app.window.model_editor.view import BuildView
from planner.values.book import Book
from planner.values.keys import ModelKey
from planner.values.model import Model, ModelKind
from planner.values.step import Stage, Step, Tool, Trait

FATAL = QAbstractItemModelTester.FailureReportingMode.Fatal
ORDER = ["prime", "sand", "gloss", "wash", "wipe"]
CTRL, ALT = Qt.KeyboardModifier.ControlModifier, Qt.KeyboardModifier.AltModifier


def line(step: str, model: str = CART) -> Key:
    return Key(NodeKind.STEP, PROJECT, model, step=step)


def two_carts() -> Book:
    return models.same_again(small_book(), ModelKey(PROJECT, CART), ["barrow"]).book


@pytest.fixture
def build(make_window: MakeWindow, qtbot) -> Callable[[Book], tuple[MainWindow, BuildView]]:
    """Return how to open the view on a book."""

    def make(book: Book) -> tuple[MainWindow, BuildView]:
        window = make_window(book, NOW)
        window.show_page("build")
        view = window.view("build")
        view.tree.setFocus()
        QApplication.processEvents()
        return window, view

    return make


def cart(window: MainWindow, name: str = CART) -> Model:
    book = window.session.book
    assert book is not None
    return book.project(PROJECT).model(name)


def ids(window: MainWindow, name: str = CART) -> list[str]:
    return [step.id for step in cart(window, name).steps]


def step(window: MainWindow, name: str) -> Step:
    return next(step for step in cart(window).steps if step.id == name)


def press(view: BuildView, key: Qt.Key, held: Qt.KeyboardModifier) -> None:
    QTest.keyClick(view.tree, key, held)
    QApplication.processEvents()


def test_the_models_hold_what_qt_asks_of_them(qapp: QApplication) -> None:
    tree = BuildModel()
    QAbstractItemModelTester(tree, FATAL)
    tree.show_nodes(nodes_of(two_carts()), lambda _key: "")
    tree.show_nodes(nodes_of(small_book()), lambda _key: "")
    project = tree.index(0, 0)
    assert tree.rowCount(project) == 1
    assert tree.rowCount(tree.index(0, 1)) == 0
    model = tree.index(0, 0, project)
    assert tree.rowCount(model) == 1 + len(ORDER)
    places = CoatPlacesModel()
    QAbstractItemModelTester(places, FATAL)
    (home,) = small_book().project(PROJECT).models
    places.show_places(home, [("tub/bed",), ()])
    assert places.rowCount() == 3
    assert places.rowCount(places.index(0, 0)) == 0
    role = Qt.ItemDataRole.CheckStateRole
    states = [Qt.CheckState(places.index(row, 0).data(role)) for row in range(3)]
    assert states == [
        Qt.CheckState.PartiallyChecked,
        Qt.CheckState.Checked,
        Qt.CheckState.Unchecked,
    ]
    places.setData(places.index(0, 1), Qt.CheckState.Checked.value, role)
    assert places.references(0, (), home) == ()
    assert places.references(1, (), home) == ("tub",)


def test_the_tree_says_what_the_drawing_shows(build) -> None:  # type: ignore[no-untyped-def]
    window, view = build(small_book())
    (project,) = small_book().projects
    layout = layout_of(small_book(), project, project.models[0])
    view.tree.choose(line("wipe"))
    QApplication.processEvents()
    assert set(layout.spots) == set(ORDER)
    assert ("wash", "wipe") in layout.links
    waits = view.model.index_of(line("wipe"), 3).data()
    assert waits == "dark wash into the corners"
    drawing = view.network.drawing
    assert "waits for dark wash into the corners" in drawing.sentence("wipe")
    # The oil wash dries longest of all, so each coat below it holds the end.  By hand: the
    # wash takes 15 min, wiping opens 10 min later, takes 10 and must be done 60 min after the
    # wash began; so it starts at 25 and can as late as 50.
    told = {name: view.model.index_of(line(name), 4).data() for name in ORDER}
    assert told.pop("wipe") == "25 min"
    assert all("sets the end" in one for one in told.values())
    assert "can wait 25 min" in drawing.sentence("wipe")
    assert all("sets the end" in drawing.sentence(name) for name in told)
    assert window.session.picture is not None


def test_the_drawing_stays_where_it_is_when_tab_goes_through_it(qtbot, build) -> None:  # type: ignore[no-untyped-def]
    window, view = build(small_book())
    window.resize(1000, 660)
    view.tree.choose(Key(NodeKind.MODEL, PROJECT, CART))
    QApplication.processEvents()
    drawing = view.network.drawing
    area = drawing.parentWidget().parentWidget()
    assert drawing.width() > area.viewport().width()  # or nothing could scroll
    drawing.setFocus()
    area.horizontalScrollBar().setValue(0)
    qtbot.keyClick(drawing, Qt.Key.Key_Tab)
    QApplication.processEvents()
    assert not drawing.hasFocus()
    assert area.horizontalScrollBar().value() == 0


def test_a_wide_tree_gives_its_room_to_what_would_be_cut(build) -> None:  # type: ignore[no-untyped-def]
    _window, view = build(small_book())
    tree = view.tree
    tree.setMinimumWidth(1300)
    QApplication.processEvents()
    wide = [tree.columnWidth(column) for column in range(4)]
    assert wide[1] > 250
    assert wide[3] > 200
    tree.setColumnWidth(3, 90)  # as a person drags it
    tree.setMinimumWidth(1400)
    QApplication.processEvents()
    assert tree.columnWidth(3) == 90


def test_layers_follow_the_longest_way(build) -> None:  # type: ignore[no-untyped-def]
    (project,) = small_book().projects
    layout = layout_of(small_book(), project, project.models[0])
    assert [layout.spots[name][0] for name in ORDER] == [0, 1, 2, 3, 4]
    for before, after in layout.links:
        assert layout.spots[before][0] < layout.spots[after][0]


def test_a_forbidden_drop_names_the_gate_and_another_moves_or_copies(qtbot, build) -> None:  # type: ignore[no-untyped-def]
    window, view = build(two_carts())
    move, model = Qt.DropAction.MoveAction, view.model
    before = window.session.book
    data = model.mimeData([model.index_of(line("wipe"))])
    model.dropMimeData(data, move, 1, 0, model.index_of(Key(NodeKind.MODEL, PROJECT, CART)))
    QApplication.processEvents()
    assert window.session.book is before
    assert "must stay behind “wash”" in view.message.text()
    assert not view.message.isHidden()

    data = model.mimeData([model.index_of(line("sand"))])
    model.dropMimeData(data, move, -1, -1, model.index_of(line("prime")))
    QApplication.processEvents()
    assert ids(window) == ["sand", "prime", "gloss", "wash", "wipe"]
    assert view.message.isHidden()
    window.session.undo()
    assert ids(window) == ORDER

    data = model.mimeData([model.index_of(line("sand"))])
    there = model.index_of(Key(NodeKind.MODEL, PROJECT, "barrow"))
    model.dropMimeData(data, move, -1, -1, there)
    replan(qtbot, window, QApplication.processEvents)
    assert ids(window) == ORDER
    assert ids(window, "barrow") == ["prime", "sand-2", *ORDER[1:]]


def test_all_of_it_goes_by_keys(qtbot, build) -> None:  # type: ignore[no-untyped-def]
    window, view = build(small_book())
    view.tree.choose(line("sand"))
    press(view, Qt.Key.Key_Up, ALT)
    assert ids(window)[:2] == ["sand", "prime"]
    assert view.tree.current() == line("sand")
    press(view, Qt.Key.Key_Down, ALT)
    assert ids(window) == ORDER
    view.tree.choose(line("wash"))
    press(view, Qt.Key.Key_Down, ALT)
    assert "must stay behind" in view.message.text()
    view.tree.choose(line("gloss"))
    press(view, Qt.Key.Key_Delete, Qt.KeyboardModifier.NoModifier)
    assert ids(window) == ["prime", "sand", "wash", "wipe"]
    assert view.tree.current() == line("wash")
    press(view, Qt.Key.Key_D, CTRL)
    QTest.keyClick(dialog_of(view, AgainDialog), Qt.Key.Key_Return)  # one, as it is offered
    back_to(window)
    editor = view.tree.findChild(QLineEdit)
    assert editor is not None
    QTest.keyClicks(editor, "barrow")
    QTest.keyClick(editor, Qt.Key.Key_Return)
    barrow = Key(NodeKind.MODEL, PROJECT, "barrow")
    qtbot.waitUntil(lambda: view.tree.current() == barrow)
    assert ids(window, "barrow") == ["prime", "sand", "wash", "wipe"]
    view.tree.choose(line("prime"))
    press(view, Qt.Key.Key_C, CTRL)
    view.tree.choose(Key(NodeKind.MODEL, PROJECT, "barrow"))
    replan(qtbot, window, lambda: press(view, Qt.Key.Key_V, CTRL))
    assert ids(window, "barrow")[0] == "prime-2"


def test_a_step_is_changed_field_by_field_and_refused_beside_the_field(qtbot, build) -> None:  # type: ignore[no-untyped-def]
    window, view = build(small_book())
    view.tree.choose(line("wash"))
    QApplication.processEvents()
    form = view.forms.step
    form.fixed.setValue(25)
    form.look.setValue(20)
    form.traits[Trait.SMELLS].setChecked(True)
    form.coats.lines.rows[0].coats.setValue(2)
    changed = step(window, "wash")
    assert (changed.minutes.fixed, changed.look_in) == (25, 20)
    assert changed.traits == (Trait.SMELLS,)
    assert changed.coats == 2
    before = window.session.book
    form.id.setText("Not An Id")
    form.id.editingFinished.emit()
    assert window.session.book is before
    assert "not a step id" in form.messages["id"].text()
    form.id.setText("pin-wash")
    form.id.editingFinished.emit()
    assert step(window, "wipe").gates[0].after == "pin-wash"
    assert view.tree.current() == line("pin-wash")

    QApplication.processEvents()
    # Several colours in one step: a tick where colour and place meet.
    coats = form.coats
    coats.lines.add.click()
    assert len(coats.lines.rows) == 2
    chosen = coats.lines.rows[1].coating.currentData()
    coats.table.setCurrentIndex(coats.places.index(2, 1))
    QTest.keyClick(coats.table, Qt.Key.Key_Space)
    first, second = step(window, "pin-wash").applications
    assert first.places == ("tub/bed",)
    assert (second.places, second.coating) == (("tub/sides",), chosen)

    # Another stage takes its places along.
    view.tree.choose(line("gloss"))
    QApplication.processEvents()
    replan(qtbot, window, lambda: form.stage.setCurrentIndex(form.stage.findData("clean")))
    changed = step(window, "gloss")
    assert (changed.stage, changed.applications, changed.touches) == (Stage.CLEAN, (), ("tub",))
    assert changed.role is None


def test_gates_are_written_in_words(qtbot, build) -> None:  # type: ignore[no-untyped-def]
    window, view = build(small_book())
    view.tree.choose(line("wipe"))
    QApplication.processEvents()
    (gate,) = view.forms.step.gates.rows
    (shown,) = gate.windows.rows
    assert shown.closes.minutes.value() == 60
    shown.closes.minutes.setValue(45)
    closes = step(window, "wipe").gates[0].windows[0].closes
    assert closes is not None
    assert closes.minutes == 45
    before = window.session.book
    shown.closes.minutes.setValue(5)  # it would close before it opens
    assert window.session.book is before
    assert "must lie after opens" in view.forms.step.messages["closes"].text()
    shown.closes.minutes.setValue(50)
    replan(qtbot, window, gate.remove.click)
    assert step(window, "wipe").gates == ()


def test_many_steps_are_changed_at_once(qtbot, build) -> None:  # type: ignore[no-untyped-def]
    window, view = build(small_book())
    view.tree.choose(line("prime"), line("sand"), line("gloss"))
    QApplication.processEvents()
    form = view.forms.many
    assert form.isVisible()
    replan(qtbot, window, lambda: form.tool.setCurrentIndex(form.tool.findData(Tool.BRUSH.value)))
    assert [step(window, name).tool for name in ORDER[:3]] == [Tool.BRUSH] * 3
    assert len(view.tree.steps()) == 3
    before = window.session.book
    form.fixed.setValue(0)  # no work takes no time
    assert window.session.book is before
    assert "0 minutes" in form.messages[""].text()


def test_models_parts_places_and_projects_have_forms(qtbot, build) -> None:  # type: ignore[no-untyped-def]
    window, view = build(two_carts())
    view.tree.choose(Key(NodeKind.MODEL, PROJECT, CART))
    QApplication.processEvents()
    view.forms.model.scale.setText("1:35")
    view.forms.model.scale.editingFinished.emit()
    view.forms.model.first.setChecked(True)
    view.forms.model.sized.setChecked(True)
    view.tree.choose(Key(NodeKind.PART, PROJECT, CART, part="tub"))
    QApplication.processEvents()
    view.forms.part.holder.setText("cork")
    view.forms.part.holder.editingFinished.emit()
    view.tree.choose(Key(NodeKind.PLACE, PROJECT, CART, part="tub", place="bed"))
    QApplication.processEvents()
    view.forms.place.measures.add.click()
    view.forms.place.name.setText("floor")
    view.forms.place.name.editingFinished.emit()
    assert view.tree.current() == Key(NodeKind.PLACE, PROJECT, CART, part="tub", place="floor")
    view.tree.choose(Key(NodeKind.PROJECT, PROJECT))
    QApplication.processEvents()
    view.forms.project.note.setPlainText("for the yard")
    replan(qtbot, window, view.forms.project.note.left.emit)
    book = window.session.book
    assert book is not None
    project, home = book.project(PROJECT), cart(window)
    assert (home.scale, project.pilot, project.note) == ("1:35", CART, "for the yard")
    assert home.real_size is not None
    assert home.part("tub").holder == "cork"
    assert len(home.place("tub/floor").measures) == 1
    assert step(window, "wash").references() == ("tub/floor",)


def test_a_kind_brings_parts_whose_areas_say_that_they_are_assumed(build) -> None:  # type: ignore[no-untyped-def]
    bare = bare_model("new one", "1:72")
    book = models.add_model(small_book(), PROJECT, bare).book
    window, view = build(book)
    view.tree.choose(Key(NodeKind.MODEL, PROJECT, "new one"))
    QApplication.processEvents()
    form = view.forms.model
    form.kind.setCurrentIndex(form.kind.findData(ModelKind.WHEELED.value))
    QApplication.processEvents()
    assert [part.name for part in cart(window, "new one").parts] == ["body", "wheels", "tools"]
    view.tree.choose(Key(NodeKind.PLACE, PROJECT, "new one", part="wheels", place="all over"))
    QApplication.processEvents()
    place = view.forms.place
    # by hand: 19 % of a box of 79.26 m² at 1:72, 152.9 cm²
    assert "29 cm², assumed: 19%" in place.found.text()
    place.share.setValue(0.25)
    QApplication.processEvents()
    assert cart(window, "new one").place("wheels/all over").share == 0.25
    assert "38.2 cm²" in place.found.text()
    place.area.setValue(31)
    QApplication.processEvents()
    assert "typed" in place.found.text()


def test_the_same_lines_keep_what_is_open_and_chosen(qtbot, build) -> None:  # type: ignore[no-untyped-def]
    window, view = build(two_carts())
    view.tree.choose(line("gloss", "barrow"))
    opened = view.tree.keep()[0]
    view.tree.choose(line("sand"))
    replan(qtbot, window, lambda: press(view, Qt.Key.Key_Up, ALT))
    assert view.tree.keep()[0] >= opened
    assert view.tree.current() == line("sand")


def test_an_empty_book_invites(make_window: MakeWindow) -> None:
    window = make_window(replace(small_book(), projects=()), NOW)
    window.show_page("build")
    view = window.view("build")
    assert view.isVisible()
    assert not view.invitation.isHidden()
    view.acts.project.trigger()
    window.session.wait()
    book = window.session.book
    assert book is not None
    assert len(book.projects) == 1
    assert view.invitation.isHidden()


def test_a_number_of_models_alike_is_made_at_once(build) -> None:
    window, view = build(small_book())
    view.tree.choose(Key(NodeKind.MODEL, PROJECT, CART))
    press(view, Qt.Key.Key_D, CTRL)
    dialog = dialog_of(view, AgainDialog)
    QTest.keyClicks(dialog.number, "3")
    assert dialog.told.text() == "They are called cart 2 to cart 4."
    QTest.keyClick(dialog.number, Qt.Key.Key_Return)
    QApplication.processEvents()
    names = [model.name for model in window.session.book.project(PROJECT).models]
    assert names == [CART, "cart 2", "cart 3", "cart 4"]
    assert ids(window, "cart 4") == ORDER
    assert window.session.undo_name() == "cart again as cart 2, cart 3, cart 4"


def test_a_part_on_a_holder_is_shown_where_it_can_be_changed(build) -> None:
    window, view = build(small_book())
    window.show_page("gear")
    gear = window.view("gear")
    gear.part_wanted.emit(HolderUse(PROJECT, CART, "tub", "clip on a stick", None, None))
    assert window.stack.currentWidget() is view
    assert view.tree.current() == Key(NodeKind.PART, PROJECT, CART, part="tub")
