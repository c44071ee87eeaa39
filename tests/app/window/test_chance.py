"""How sure the dates are, in the window: told at the head, explained beside the plan, acted on."""

from __future__ import annotations

from dataclasses import replace

import pytest
from PySide6.QtCore import QPointF, Qt
from PySide6.QtGui import QImage, QPainter
from PySide6.QtWidgets import QLabel
from small_book import NOW as SMALL_NOW
from small_book import small_book
from window_steps import MakeWindow

from app.service.planning import Planned
from app.service.surer_plans import SurerPlan
from app.window import words
from app.window.chance_band import paint_band
from app.window.main_window import MainWindow
from app.window.palette import DARK, LIGHT
from app.window.timeline.sure_bands import band_xs
from planner.chance.scoring import ForecastScore
from planner.values.forecast import Forecast
from storage.bench_book import BenchBook

WAIT_MS = 60_000


@pytest.fixture(autouse=True)
def _runs_are_drawn_at_once(monkeypatch: pytest.MonkeyPatch, _no_better_plans: None) -> None:
    monkeypatch.setattr("app.window.chance.runner.REST_MS", 0)
    monkeypatch.setattr("app.service.surer_plans.DRAWN", 0)
    monkeypatch.setattr("planner.chance.odds.assumed", lambda _name: 200)


@pytest.fixture
def window(qtbot, make_window: MakeWindow, lamplighter) -> MainWindow:
    """Return a window that knows the odds, with the leaf in front."""
    made = make_window(*lamplighter)
    qtbot.waitUntil(lambda: made.chance.odds is not None, timeout=WAIT_MS)
    made.show_page("timeline")
    made.frame.desk.open("chance")
    return made


def shown(window: MainWindow, page: str) -> list[str]:
    window.show_page(page)
    view = window.view(page)
    return [one.text() for one in view.findChildren(QLabel) if one.isVisibleTo(view)]


def test_the_date_and_the_one_of_four_runs_in_five_stand_at_the_head(window) -> None:
    odds = window.chance.odds
    zone = window.session.zone
    planned, most = odds.together.planned, odds.together.by(0.8)
    told = (
        f"{words.day_of(planned - 1, zone, long=True)}; "
        f"four in five by {words.day_of(most - 1, zone, long=True)}"
    )
    assert told in shown(window, "tonight")
    assert told in shown(window, "timeline")


def test_the_leaf_tells_odds_drivers_and_the_curve(window) -> None:
    panel = window.chances.made
    assert panel.curve.isVisibleTo(panel)
    assert "%" in panel.curve.accessibleDescription()
    assert "four in five by" in panel.dates.text()
    assert panel.decides.text().count("\n") + 1 == len(window.chance.odds.drivers)


def test_one_key_makes_a_measure_an_edit_that_can_be_undone(qtbot, window) -> None:
    panel = window.chances.made
    before = window.session.book
    qtbot.mouseClick(panel.look, Qt.MouseButton.LeftButton)
    assert "Stop" in panel.look.text()
    qtbot.waitUntil(lambda: window.chance.advice is not None, timeout=WAIT_MS)
    assert panel.list.count() == len(window.chance.advice) > 0
    qtbot.waitUntil(lambda: bool(window.chance.starts), timeout=WAIT_MS)
    ((project, session),) = window.chance.starts
    assert project in panel.starts.text()
    if session is not None:  # else it is said to be too late
        assert "at the latest" in panel.starts.text()
    wanted = window.chance.advice[0].book
    panel.list.setFocus()
    qtbot.keyClick(panel.list, Qt.Key.Key_Return)
    assert window.session.book == wanted
    window.session.undo()
    assert window.session.book == before
    qtbot.waitUntil(lambda: window.chance.odds is not None, timeout=WAIT_MS)


def test_what_is_said_is_kept_to_be_held_against_what_comes(qtbot, window) -> None:
    odds = window.chance.odds

    def kept() -> bool:
        with BenchBook.open(window.session.path) as bench:
            return [one.most for one in bench.forecasts.all()] == [odds.projects[0].by(0.8)]

    qtbot.waitUntil(kept, timeout=WAIT_MS)


def test_a_surer_order_that_moves_tonight_is_offered_and_taken_by_one_key(qtbot, window) -> None:
    """What is offered here is the plan on screen, said to be surer: the way, not the order."""
    qtbot.waitUntil(lambda: not window.chance.busy, timeout=WAIT_MS)
    picture = window.session.picture
    planned = Planned(picture.plan, picture.verdict, picture.cure, picture.calendar, picture.book)
    window.chance.orders = (SurerPlan(planned, 1.0, 0.1, free=True, leaves=False),)
    window.chance.changed.emit()
    panel = window.chances.made
    assert "another order" in panel.list.item(panel.list.count() - 1).text().lower()
    panel.list.setCurrentRow(panel.list.count() - 1)
    with qtbot.waitSignal(window.session.pictured, timeout=WAIT_MS):
        panel.do.click()


def test_how_earlier_dates_did_is_told(window) -> None:
    said = Forecast("past", 0, 10, 20, 30)
    window.chance.scores = (ForecastScore(said, 15, kept=True, loss=0.5),)
    window.chance.changed.emit()
    assert "1 kept the date of four runs in five" in window.chances.made.kept.text()


def test_looking_can_be_stopped(qtbot, window) -> None:
    panel = window.chances.made
    panel.look.click()
    panel.look.click()
    assert window.chance.trying is None
    assert "Look" in panel.look.text()
    qtbot.waitUntil(lambda: not window.chance.busy, timeout=WAIT_MS)
    assert window.chance.advice is None


def test_where_it_is_never_finished_no_date_is_told(qtbot, make_window) -> None:
    book = small_book()
    none = replace(book, bench_time=replace(book.bench_time, stretches=()))
    made = make_window(none, SMALL_NOW)
    qtbot.waitUntil(lambda: made.chance.odds is not None, timeout=WAIT_MS)
    assert made.chance.odds.together.by(0.8) is None
    assert not any("four in five" in line for line in shown(made, "tonight"))
    made.show_page("timeline")
    made.frame.desk.open("chance")
    assert made.chances.made.head.text() == "Not all of it is ever finished."


@pytest.mark.parametrize("colours", [LIGHT, DARK])
def test_the_band_is_full_to_four_in_five_and_bare_after(colours) -> None:
    image = QImage(100, 30, QImage.Format.Format_ARGB32)
    image.fill(Qt.GlobalColor.transparent)
    painter = QPainter(image)
    paint_band(painter, colours, (20, 50, 80), 10, 10)
    painter.end()
    assert image.pixelColor(35, 15).alpha() > 0
    assert image.pixelColor(65, 15).alpha() == 0
    assert image.pixelColor(50, 8).alpha() > 0
    assert image.pixelColor(90, 15).alpha() == 0


def test_each_model_has_its_band_at_the_foot_of_its_lane(window) -> None:
    """Half, four in five and 19 in 20 lie in this order, none before what it is a share of."""
    overview = window.timeline.overview
    scene = overview.scene()
    assert set(scene.sure) == {
        (one.project, one.model)
        for one in (*window.chance.odds.projects, *window.chance.odds.models)
    }
    for minutes in scene.sure.values():
        xs = band_xs(scene, minutes)
        assert list(xs) == sorted(xs)
        assert scene.edges.left <= xs[0]
        assert xs[-1] <= overview.width()
    lane = scene.at.lanes[0]
    tip = overview.tip_at(QPointF(4, scene.edges.top + lane.top + 4))
    assert "four in five by" in tip
