"""The first run sheet comes in several goes, with keys answered between; the newest is shown."""

from __future__ import annotations

from PySide6.QtWidgets import QApplication
from small_book import NOW, small_book
from window_steps import MakeWindow, settle

from app.window.tonight_view import TonightView


def lines(view: TonightView) -> int:
    return len(view._sheet.lines)


def test_the_first_run_sheet_lets_others_have_their_turn(
    qapp: QApplication, make_window: MakeWindow
) -> None:
    picture = make_window(small_book(), NOW).session.picture
    view = TonightView()
    view.show()
    view.show_picture(picture)
    assert lines(view) == 0
    assert view._aside_area.widget() is None
    settle(qapp)
    assert lines(view) > len(view.cards) > 0
    assert all(card.isVisible() for card in view.cards)
    assert view._aside_area.widget() is not None
    view.close()


def test_a_plan_that_comes_between_is_the_one_shown(
    qapp: QApplication, make_window: MakeWindow
) -> None:
    picture = make_window(small_book(), NOW).session.picture
    view = TonightView()
    view.show()
    view.show_picture(picture)
    view.show_picture(picture)
    settle(qapp)
    assert all(card.parentWidget() is view._sheet for card in view.cards)
    assert lines(view) == len(set(view._sheet.lines)) > len(view.cards)
    view.close()


def test_out_of_sight_it_is_whole_at_once(make_window: MakeWindow) -> None:
    picture = make_window(small_book(), NOW).session.picture
    view = TonightView()
    view.show_picture(picture)
    assert lines(view) > len(view.cards) > 0
    assert view._aside_area.widget() is not None
