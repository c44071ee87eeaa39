"""Trying changes beside the plan: compared in the background, kept as one edit or dropped."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QAbstractItemModel, Qt
from PySide6.QtTest import QAbstractItemModelTester
from small_book import CART, NOW, PROJECT, ZONE, small_book

from app.service import what_if
from app.service.what_if import AirAllDay, First, LeaveOut, OneMoreEvening, PlanFigures, Scenario
from app.window.session import Session
from app.window.what_if import scenario_wording
from app.window.what_if.air_forms import AirForm
from app.window.what_if.change_forms import FORMS
from app.window.what_if.hours_forms import EveningForm
from app.window.what_if.view import WhatIfView
from app.window.what_if.work_forms import LeaveOutForm
from planner.values.step import Stage
from storage.bench_book import BenchBook

FATAL = QAbstractItemModelTester.FailureReportingMode.Fatal


@pytest.fixture
def view(qtbot, tmp_path: Path) -> Iterator[WhatIfView]:
    """A view on its own, that follows every plan as in the window."""
    path = tmp_path / "bench.tackfree"
    BenchBook.create(path, small_book()).close()
    session = Session(lambda: NOW)
    made = WhatIfView(session)
    session.pictured.connect(lambda change: made.show_picture(change.new))
    made.resize(1000, 700)
    made.show()
    with qtbot.waitSignal(session.planning, timeout=20_000, check_params_cb=lambda busy: not busy):
        session.open(path)
    qtbot.waitUntil(lambda: made.runner.present is not None, timeout=20_000)
    yield made
    made.runner.stop()
    made.runner.wait()
    session.close()
    made.close()
    made.deleteLater()


def kind(view: WhatIfView, form: type):
    number = next(at for at, other in enumerate(view.forms) if isinstance(other, form))
    view.kind.setCurrentIndex(number)
    return view.forms[number]


def rest(qtbot, view: WhatIfView) -> None:
    qtbot.waitUntil(lambda: not view.runner.busy, timeout=20_000)


def row(view: WhatIfView, number: int) -> list[str]:
    model = view.model
    return [model.data(model.index(number, column)) for column in range(model.columnCount())]


def test_the_present_plan_is_told_though_it_was_there_before_the_page(qtbot, make_window) -> None:
    window = make_window(small_book(), NOW)
    window.show_page("what if")
    page = window.view("what if")
    qtbot.waitUntil(lambda: page.runner.present is not None, timeout=5_000)
    assert "planning" not in row(page, 0)[1]
    page.runner.wait()


def test_changes_are_compared_with_the_plan_and_change_nothing(qtbot, view) -> None:
    QAbstractItemModelTester(view.model, FATAL, view.model)
    assert view.model.rowCount() == 1
    kind(view, EveningForm).day.setCurrentIndex(0)
    qtbot.keyClick(view.kind, "T", Qt.KeyboardModifier.ControlModifier)
    kind(view, LeaveOutForm).stages.setCurrentIndex(3)
    view.try_it.click()
    rest(qtbot, view)
    plan, monday, bare = (row(view, number) for number in range(3))
    assert plan[0] == "Present plan"
    assert monday[0] == "Bench time every Monday 19:30–21:30"
    assert "−" in monday[1]  # finished sooner than with Thursdays alone
    assert bare[0] == "Without oil wash: all of yard"
    assert view.model.rowCount(view.model.index(0, 0)) == 0
    assert view._session.book == small_book()
    assert view._session.undo_name() == ""


def test_what_is_kept_is_one_edit_and_the_rest_is_tried_on_top_of_it(qtbot, view) -> None:
    monday = Scenario(
        "Mondays", (OneMoreEvening(0, "19:30", "21:30", small_book().projects[0].target),)
    )
    warm = Scenario("warm", (AirAllDay("", 28, 40), First(PROJECT, CART)))
    view.runner.add(monday)
    view.runner.add(warm)
    rest(qtbot, view)
    view.table.setCurrentIndex(view.model.index(2, 0))
    with qtbot.waitSignal(
        view._session.planning, timeout=20_000, check_params_cb=lambda busy: not busy
    ):
        qtbot.keyClick(view.table, Qt.Key.Key_Return, Qt.KeyboardModifier.ControlModifier)
    assert view._session.undo_name() == "warm"
    assert view._session.book == warm.apply(small_book()).book
    rest(qtbot, view)
    assert [one.scenario for one in view.runner.tried] == [monday]
    expected = what_if.outcome_of(view._session.book, view._session.picture.plan)
    assert view.runner.present == expected
    with qtbot.waitSignal(
        view._session.planning, timeout=20_000, check_params_cb=lambda busy: not busy
    ):
        view._session.undo()
    assert view._session.book == small_book()


def test_what_is_dropped_is_forgotten_while_it_is_planned(qtbot, view) -> None:
    scenario = Scenario("warm", (AirAllDay("", 28, 40),))
    view.runner.add(scenario)
    qtbot.waitUntil(lambda: view.model.rowCount() == 2)
    view.table.setFocus()
    qtbot.keyClick(view.table, Qt.Key.Key_Delete)
    view.runner.wait()
    rest(qtbot, view)
    assert view.model.rowCount() == 1
    assert view._session.book == small_book()


def test_what_cannot_be_tried_is_said_by_the_form(qtbot, view) -> None:
    view.kind.setCurrentIndex(0)
    view.try_it.click()
    view.try_it.click()
    assert view.message.text() == "this is being tried already"
    assert view.model.rowCount() == 2


def test_two_changes_together(qtbot, view) -> None:
    kind(view, EveningForm)
    view.try_it.click()
    kind(view, LeaveOutForm)
    view.with_it.click()
    rest(qtbot, view)
    both = view.runner.tried[1].scenario
    assert [type(change) for change in both.changes] == [OneMoreEvening, LeaveOut]
    assert " and " in both.name


@pytest.mark.parametrize("kind", FORMS)
def test_every_form_says_a_change_of_this_book(qtbot, kind: type) -> None:
    form = kind()
    qtbot.addWidget(form)
    form.show_book(small_book(), NOW)
    if isinstance(form, AirForm):
        form.warm.setValue(27.5)  # 23 °C is what this book has
    scenario = Scenario(form.name(), (form.change(),))
    assert scenario.apply(small_book()).book != small_book()
    assert form.name()
    assert form.title


def test_gaps_are_told_with_their_sign() -> None:
    present = PlanFigures(NOW + 1440, (), 5, 60, 0, 0, 0)
    other = PlanFigures(NOW + 1440 - 90, (), 7, 45, 30, 1, 2)
    told = scenario_wording.cells(other, present, ZONE, NOW)
    assert told == (
        "Fri 18:00 (−1 h 30)",
        "7 (+2)",
        "45 min (−15)",
        "30 min (+30 min)",
        "1 (+1)",
        "2 (+2)",
    )
    assert "Finished 1 h 30 min sooner." in scenario_wording.remark(other, present)
    assert scenario_wording.cells(present, present, ZONE, NOW)[1] == "5"
    assert isinstance(scenario_wording.heads(), tuple)
    assert len(scenario_wording.heads()) == len(told) + 1


def test_a_stage_that_serves_another_is_not_offered_alone(view) -> None:
    form = kind(view, LeaveOutForm)
    offered = {form.stages.itemData(at) for at in range(form.stages.count())}
    assert Stage.OIL_WASH in offered
    assert Stage.WIPE not in offered
    assert isinstance(view.model, QAbstractItemModel)
