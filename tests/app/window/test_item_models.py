"""Every model under Qt's own tester, and what the tester misses: children of children."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

import pytest
from PySide6.QtCore import QAbstractItemModel, QModelIndex, Qt
from PySide6.QtTest import QAbstractItemModelTester
from small_book import CART, NOW, PROJECT, key, small_book

from app.service.merging import MergeChoice, differences
from app.window.merge_view import DifferencesModel, SidesModel
from app.window.plan_snapshot import PlanSnapshot, picture_of
from app.window.projects import ProjectsModel
from app.window.room.drying_times import coating_times
from app.window.room.table import TimesModel
from app.window.stack.coat_rows import stacks
from app.window.stack.model import CoatsModel
from app.window.timeline.outline import outline
from app.window.timeline.tree import OutlineModel

FATAL = QAbstractItemModelTester.FailureReportingMode.Fatal


@pytest.fixture(scope="module")
def picture() -> PlanSnapshot:
    return picture_of(small_book(), NOW)


def _outline(picture: PlanSnapshot) -> OutlineModel:
    model = OutlineModel()
    model.show_nodes(outline(picture.strip))
    return model


def _projects(picture: PlanSnapshot) -> ProjectsModel:
    model = ProjectsModel()
    model.show_projects(picture.book.projects, {PROJECT: "done soon"})
    return model


def _times(picture: PlanSnapshot) -> TimesModel:
    model = TimesModel()
    rows = coating_times(picture.book, picture.cure, "bench", NOW)
    model.show_times(rows, NOW, picture.zone)
    return model


def _coats(picture: PlanSnapshot) -> CoatsModel:
    model = CoatsModel()
    project = picture.book.project(PROJECT)
    model.show_stack(stacks(picture, project, project.model(CART))[0], picture.zone, NOW)
    return model


def _differences(picture: PlanSnapshot) -> DifferencesModel:
    other = replace(picture.book.coatings[0], swatch="#123456")
    theirs = replace(picture.book, coatings=(other, *picture.book.coatings[1:]), projects=())
    return DifferencesModel(differences(picture.book, theirs))


def _sides(picture: PlanSnapshot) -> SidesModel:
    model = SidesModel()
    model.show_sides(_differences(picture).rows[0].sides)
    return model


MAKERS = [_outline, _projects, _times, _coats, _differences, _sides]


@pytest.mark.parametrize("make", MAKERS)
def test_models_are_sound(
    make: Callable[[PlanSnapshot], QAbstractItemModel], picture: PlanSnapshot
) -> None:
    model = make(picture)
    tester = QAbstractItemModelTester(model, FATAL)
    assert model.rowCount() > 0
    assert tester.model() is model


@pytest.mark.parametrize("make", MAKERS[1:])
def test_cells_of_lists_and_tables_have_no_children(
    make: Callable[[PlanSnapshot], QAbstractItemModel], picture: PlanSnapshot
) -> None:
    model = make(picture)
    cell = model.index(0, 0)
    assert model.rowCount(cell) == 0
    assert not model.index(0, 0, cell).isValid() or model.rowCount(cell) == 0


@pytest.mark.parametrize("make", [_outline, _projects, _times, _coats])
def test_models_stay_sound_when_shown_anew(
    make: Callable[[PlanSnapshot], QAbstractItemModel], picture: PlanSnapshot
) -> None:
    model = make(picture)
    QAbstractItemModelTester(model, FATAL)
    if isinstance(model, OutlineModel):
        model.show_nodes(())
    elif isinstance(model, ProjectsModel):
        model.show_projects((), {})
    elif isinstance(model, TimesModel):
        model.show_times((), NOW, picture.zone)
    elif isinstance(model, CoatsModel):
        model.show_stack(None, picture.zone, NOW)
    assert model.rowCount() == 0


def test_the_tree_finds_the_line_of_a_pass(picture: PlanSnapshot) -> None:
    model = _outline(picture)
    index = model.index_of(key("wipe"))
    assert model.key_at(index) == key("wipe")
    assert "Wipe back" in model.data(model.index(index.row(), 1, model.parent(index)))
    assert not model.index_of(key("no-such-step")).isValid()


def test_a_check_mark_asks_and_does_not_change_by_itself(picture: PlanSnapshot) -> None:
    model = _projects(picture)
    asked: list[tuple[str, bool]] = []
    model.switched.connect(lambda name, on: asked.append((name, on)))
    index = model.index(0)
    assert model.setData(index, Qt.CheckState.Unchecked.value, Qt.ItemDataRole.CheckStateRole)
    assert asked == [(PROJECT, False)]
    assert model.data(index, Qt.ItemDataRole.CheckStateRole) == Qt.CheckState.Checked
    assert not model.setData(QModelIndex(), 0, Qt.ItemDataRole.CheckStateRole)


def test_a_choice_is_told_in_words(picture: PlanSnapshot) -> None:
    model = _differences(picture)
    (item,) = model.choices
    assert model.data(model.index(0, 2)) == "keep yours"
    model.choose(0, MergeChoice.BESIDE, "another grey")
    assert model.choices == {item: MergeChoice.BESIDE}
    assert "another grey" in model.data(model.index(0, 2))


def test_coats_lie_topmost_first(picture: PlanSnapshot) -> None:
    model = _coats(picture)
    assert [model.data(model.index(row, 0)) for row in range(model.rowCount())] == [
        "dark oil",
        "gloss clear",
        "thin sand",
        "grey primer",
    ]
