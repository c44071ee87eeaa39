"""From the shelf to the plan, and in at the middle: what it takes in keys, typed and counted.

The figures are our own promises.  Names that a person types are not counted,
everything else is: "before" is what the same took by the tree of steps.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest
from pressed_keys import Keys
from PySide6.QtCore import QSettings, Qt
from PySide6.QtWidgets import QApplication, QDialog
from sequence_books import bare_book, bare_model
from window_steps import MakeWindow, replan

from app.service.books import starter_book
from app.service.first_run import Answers, FirstHours, Vehicle, begin
from app.service.sequences import give_sequence
from app.window.main_window import MainWindow
from app.window.model_editor.nodes import Key as KeyOf
from app.window.model_editor.nodes import NodeKind
from app.window.palette import Appearance
from app.window.session import Session
from planner.layers.findings import find
from planner.quantity import shopping
from planner.schedule.judge import judge
from planner.values.book import Book
from planner.values.model import Model, ModelKind, NamedChange
from planner.values.moment import minute_of, moment_of
from planner.values.project import Logged
from planner.values.step import Stage
from storage.bench_book import BenchBook

NOW_AT = datetime(2031, 3, 3, 17, 0, tzinfo=UTC)
NOW = minute_of(NOW_AT)
CTRL = Qt.KeyboardModifier.ControlModifier
BOTH = CTRL | Qt.KeyboardModifier.ShiftModifier
FIVE = ("Auk", "Coot", "Dunlin", "Egret", "Fulmar")


@pytest.fixture
def window(qtbot, tmp_path: Path) -> Iterator[MainWindow]:
    """Return the window on a new book with nothing on the table."""
    path = tmp_path / "bench.tackfree"
    BenchBook.create(path, starter_book("Europe/Warsaw", NOW_AT.date())).close()
    settings = QSettings(str(tmp_path / "settings.ini"), QSettings.Format.IniFormat)
    window = MainWindow(Session(lambda: NOW), settings)
    window.set_look(Appearance.LIGHT)
    window.show()
    window.session.open(path)
    qtbot.waitUntil(window.empty.first_run.vehicles.lines[0].name.hasFocus)
    yield window
    window.close()
    window.deleteLater()


def five(sequence: str, options: tuple[str, ...] | None = None) -> Book:
    """Return a book of five lorries that are finished alike."""
    book = starter_book("Europe/Warsaw", NOW_AT.date())
    answers = Answers(
        project="On the table",
        vehicles=tuple(
            Vehicle(
                name=name, scale="1:72", sequence=sequence, options=options, kind=ModelKind.WHEELED
            )
            for name in FIVE
        ),
        hours=(FirstHours(days=frozenset({1, 3}), start="19:30", end="21:30"),),
    )
    return begin(book, answers, NOW_AT.date(), now=NOW).book


def opened(window: MainWindow) -> Book:
    book = window.session.book
    assert book is not None
    return book


def models(window: MainWindow) -> tuple[Model, ...]:
    return opened(window).projects[0].models


def dialog(qtbot, window: MainWindow) -> QDialog:
    """Return the dialog that a key has opened, once it has the keys."""
    acts = window.commands.models
    qtbot.waitUntil(lambda: acts.shown is not None and acts.shown.isVisible())
    assert acts.shown is not None
    qtbot.waitUntil(lambda: QApplication.focusWidget() is not None)
    return acts.shown


def planned(
    qtbot, window: MainWindow, keys: Keys, key: Qt.Key, held=Qt.KeyboardModifier.NoModifier
):
    replan(qtbot, window, lambda: keys.press(key, held))
    picture = window.session.picture
    assert picture is not None
    assert judge(picture.book, picture.plan).accepted
    assert picture.plan.cost.unplaced == 0


def stages(model: Model) -> list[Stage]:
    return [step.stage for step in model.steps]


def test_five_vehicles_of_three_kinds_with_own_paints_in_45_keys(qtbot, window: MainWindow) -> None:
    keys = Keys()
    keys.name("Crane lorry x2")
    keys.tab()
    keys.type("1:72")
    keys.enter()
    keys.name("Marsh tank x2")
    keys.enter()
    keys.name("Harbour figure")
    keys.tab()
    keys.tab()
    keys.type("fi")
    keys.press(Qt.Key.Key_4, Qt.KeyboardModifier.AltModifier)
    keys.space()  # the grey primer
    keys.tab()
    keys.type("acrylic, sand, 17 ml")
    planned(qtbot, window, keys, Qt.Key.Key_Return, CTRL)
    assert keys.count <= 45
    kinds = [model.kind for model in models(window)]
    assert kinds == [ModelKind.WHEELED] * 2 + [ModelKind.TRACKED] * 2 + [ModelKind.FIGURE]
    assert [part.name for part in models(window)[0].parts] == ["body", "wheels", "tools"]
    stock = {coating.name: coating.in_stock_ml for coating in opened(window).coatings}
    assert stock["waterborne acrylic, sand"] == 17
    assert stock["waterborne acrylic, grey primer"] > 0
    picture = window.session.picture
    assert picture is not None
    assert shopping(opened(window), picture.plan, NOW).no_area == ()  # amounts are known at once


def test_five_of_one_kind_in_12_keys(qtbot, window: MainWindow) -> None:
    keys = Keys()
    keys.name("Yard lorry x5")
    keys.tab()
    keys.type("1:72")
    planned(qtbot, window, keys, Qt.Key.Key_Return, CTRL)
    assert keys.count <= 12
    assert [model.name for model in models(window)] == [f"Yard lorry {n}" for n in range(1, 6)]


def test_the_sixth_vehicle_in_6_keys_and_its_end_is_told_while_one_types(
    qtbot, make_window: MakeWindow
) -> None:
    window = make_window(five("quick table-top", ("decals",)), NOW)
    keys = Keys()
    keys.press(Qt.Key.Key_N, BOTH)
    asked = dialog(qtbot, window)
    keys.name("Gannet")
    asked.effect.wait()
    QApplication.processEvents()
    assert "All done" in asked.effect.text()
    assert len(models(window)) == 5  # nothing is made yet
    keys.enter()
    planned(qtbot, window, keys, Qt.Key.Key_Return)
    assert keys.count <= 6
    fifth, sixth = models(window)[-2:]
    assert (sixth.name, sixth.scale, sixth.kind) == ("Gannet", "1:72", ModelKind.WHEELED)
    assert sixth.steps == fifth.steps
    assert sixth.made == fifth.made
    assert sixth.parts == fifth.parts


def test_chipping_layers_on_all_in_6_keys_with_the_effect_before(
    qtbot, make_window: MakeWindow
) -> None:
    window = make_window(five("quick table-top"), NOW)
    before = models(window)
    keys = Keys()
    keys.press(Qt.Key.Key_R, BOTH)
    asked = dialog(qtbot, window)
    keys.type("c")
    asked.effect.wait()
    QApplication.processEvents()
    assert "later than planned now" in asked.effect.text()
    assert "stays sound" in asked.effect.text()
    planned(qtbot, window, keys, Qt.Key.Key_Return)
    assert keys.count <= 6
    assert all({Stage.CHIP_FLUID, Stage.CHIP_RUB} <= set(stages(model)) for model in models(window))
    assert find(opened(window)) == ()
    window.session.undo()
    assert models(window) == before


def test_decals_off_all_in_4_keys(qtbot, make_window: MakeWindow) -> None:
    window = make_window(five("full weathered vehicle"), NOW)
    keys = Keys()
    keys.press(Qt.Key.Key_R, BOTH)
    dialog(qtbot, window)
    keys.type("nn")  # past "no chipping"
    planned(qtbot, window, keys, Qt.Key.Key_Return)
    assert keys.count <= 4
    assert not any(Stage.DECAL in stages(model) for model in models(window))
    assert all(
        model.made and model.made.changes == (NamedChange.NO_DECALS,) for model in models(window)
    )


def test_a_change_goes_to_the_models_that_were_chosen_and_says_to_how_many(
    qtbot, make_window: MakeWindow
) -> None:
    window = make_window(five("full weathered vehicle"), NOW)
    keys = Keys()
    keys.press(Qt.Key.Key_R, BOTH)
    asked = dialog(qtbot, window)
    assert asked.models.chosen() == ()
    assert asked.apply.text() == "&Apply to all 5"
    asked.models.item(3).setCheckState(Qt.CheckState.Checked)
    assert asked.apply.text() == "&Apply to 1"
    asked.close()
    window.show_page("build")
    window.view("build").tree.choose(
        *(KeyOf(NodeKind.MODEL, "On the table", name) for name in ("Coot", "Egret"))
    )
    window.commands.models.order.trigger()
    asked = dialog(qtbot, window)
    assert [key.model for key in asked.models.chosen()] == ["Coot", "Egret"]
    assert asked.apply.text() == "&Apply to 2"
    asked.close()


def test_three_of_five_already_primed_in_8_keys(qtbot, make_window: MakeWindow) -> None:
    window = make_window(five("quick table-top"), NOW)
    keys = Keys()
    keys.press(Qt.Key.Key_F, BOTH)
    dialog(qtbot, window)
    for number in range(3):
        if number:
            keys.press(Qt.Key.Key_Down)
        keys.space()
    planned(qtbot, window, keys, Qt.Key.Key_Return)
    assert keys.count <= 8
    log = opened(window).projects[0].log
    assert [fact.model for fact in log] == list(FIVE[:3])
    assert {fact.step for fact in log} == {"prime-airbrush"}
    picture = window.session.picture
    assert picture is not None
    ahead = [
        p.key for p in picture.plan.placements if not p.logged and p.key.step == "prime-airbrush"
    ]
    assert {key.model for key in ahead} == set(FIVE[3:])


def unsound() -> Book:
    """Return a book of two lorries whose chips are rubbed with no fluid below."""
    book = give_sequence(
        bare_book(bare_model("a"), bare_model("b")), "table", ["a", "b"], "full weathered vehicle",
        ("airbrush", "chips by fluid", "one colour"),
    ).book  # fmt: skip
    project = book.projects[0]
    spoiled = tuple(
        replace(
            model,
            steps=tuple(step for step in model.steps if step.stage is not Stage.CHIP_FLUID),
        )
        for model in project.models
    )
    return replace(book, projects=(replace(project, models=spoiled),))


def test_the_next_mend_in_2_keys_and_all_of_a_kind_in_one(qtbot, make_window: MakeWindow) -> None:
    window = make_window(unsound(), NOW)
    found = len(find(opened(window)))
    assert found >= 2
    keys = Keys()
    keys.press(Qt.Key.Key_F8)
    prompt = dialog(qtbot, window)
    replan(qtbot, window, keys.enter)
    assert keys.count <= 2
    assert len(find(opened(window))) < found
    assert prompt.isVisible()  # the next one is shown
    window.session.undo()
    assert len(find(opened(window))) == found
    first = prompt.current
    keys.press(Qt.Key.Key_F8)
    assert prompt.current is not first
    replan(qtbot, window, prompt.mend_alike)
    assert not [one for one in find(opened(window)) if one.rule == first.rule]
    prompt.close()


def test_another_is_painted_as_one_was(qtbot, make_window: MakeWindow) -> None:
    book = five("quick table-top")
    project = book.projects[0]
    zone = NOW_AT.tzinfo
    facts = tuple(
        Logged(
            model="Auk",
            step=step.id,
            start=moment_of(NOW - 20 * 1440, zone) + timedelta(days=day),  # type: ignore[arg-type]
            end=moment_of(NOW - 20 * 1440, zone) + timedelta(days=day, minutes=9),  # type: ignore[arg-type]
            minutes=9,
        )
        for day, step in enumerate(project.models[0].steps)
    )
    book = replace(book, projects=(replace(project, log=facts),))
    window = make_window(book, NOW)
    keys = Keys()
    keys.press(Qt.Key.Key_A, BOTH)
    asked = dialog(qtbot, window)
    keys.name("Gannet")
    asked.effect.wait()
    planned(qtbot, window, keys, Qt.Key.Key_Return)
    assert keys.count == 2
    new = models(window)[-1]
    assert new.name == "Gannet"
    assert [step.id for step in new.steps] == [step.id for step in models(window)[0].steps]


def test_dates_and_priorities_are_set_where_the_models_are_listed(
    qtbot, make_window: MakeWindow
) -> None:
    window = make_window(five("quick table-top"), NOW)
    keys = Keys()
    keys.press(Qt.Key.Key_P, BOTH)
    asked = dialog(qtbot, window)
    assert [line.key.model for line in asked.lines] == list(FIVE)
    assert all(line.done.text() for line in asked.lines)
    keys.type("24.3.2031")
    keys.tab()
    assert models(window)[0].target is not None
    assert str(models(window)[0].target) == "2031-03-24"
    asked.lines[1].early.setChecked(True)
    assert models(window)[1].early
    asked.lines[2].weight.setValue(7)
    assert models(window)[2].weight == 7
    asked.lines[3].target.setText("someday")
    asked.lines[3].target.editingFinished.emit()
    assert "someday" in asked.message.text()
    assert models(window)[3].target is None
    asked.close()


def test_what_was_typed_is_not_lost_by_a_change_elsewhere(qtbot, window: MainWindow) -> None:
    from app.service.edits import set_air

    asked = window.empty.first_run
    keys = Keys()
    keys.name("Ferry Pike")
    asked.hours.lines[0].hours.setText("18-20")
    asked.humidity.setValue(70)
    window.session.attempt(lambda book: set_air(book, "bench", 25, 40))
    QApplication.processEvents()
    assert [vehicle.name for vehicle in asked.vehicles.vehicles()] == ["Ferry Pike"]
    assert asked.hours.lines[0].hours.text() == "18-20"
    assert asked.humidity.value() == 70
