"""Tonight by loads on the real window: what is said, ticked, drawn along, folded, asked."""

from __future__ import annotations

from collections.abc import Callable
from itertools import pairwise

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QAccessible
from PySide6.QtWidgets import QApplication, QLabel, QMenu
from small_book import NOW, at, key, small_book
from tonight_steps import Tonight, row_of
from window_steps import MakeWindow, settle

from app.service import demos
from app.window.tonight_cards.card import CardFrame
from app.window.tonight_cards.places_model import Cell
from app.window.tonight_pauses import pause_words, pauses
from app.window.tonight_rows import NoteLine
from planner.tonight import cards_of
from planner.values.book import Book
from planner.values.moment import minute_of

Key = Qt.Key
Come = Callable[[Book, int], Tonight]


@pytest.fixture
def tonight(qtbot, qapp: QApplication, make_window: MakeWindow) -> Come:
    """Return how to come to Tonight with a book at a time."""
    return lambda book, now: Tonight(qtbot, qapp, make_window(book, now), now)


def test_the_answer_says_jobs_length_and_end(tonight: Come) -> None:
    here = tonight(small_book(), NOW)
    view = here.window.tonight
    told = view._headline.answer.text()
    picture = here.window.session.picture
    assert picture is not None
    jobs = len({row.key for row in picture.sheet.work})
    assert told.startswith(f"{jobs} jobs in ") or told.startswith(f"{jobs} job in ")
    assert "Done " in told
    assert view._headline.strip.accessibleDescription().count(" to ") == len(view.cards)


def test_a_pause_says_whether_places_or_films_are_waited_for(tonight: Come) -> None:
    # Eight models of three parts fill the club's 24 drying places; the trucks must wait.
    book = demos.read("club_day_batch").book
    assert sum(one.drying_places for one in book.room.locations) == 8 * 3
    picture = tonight(book, demos.first_evening(book)).window.session.picture
    assert picture is not None
    told = {
        next(row.key.model for row in picture.sheet.work if row.start >= end): pause_words(
            picture, start, end
        )
        for start, end in pauses(picture, picture.sheet.rows)
    }
    assert "every drying place is taken" in told["Orchard Truck Quince"]
    assert "nothing is ready sooner" in told["Milk Tram Clover"]


def test_cards_are_those_of_the_sheet_and_their_tables_hold_every_place(tonight: Come) -> None:
    here = tonight(small_book(), NOW)
    picture, view = here.window.session.picture, here.window.tonight
    assert picture is not None
    assert [frame.card for frame in view.cards] == list(cards_of(picture.sheet.rows))
    for row in picture.sheet.work:
        shown = row_of(here.window, row.key)
        assert shown.model.block.columns == row.places
        assert shown.table.accessibleName()


def test_a_table_of_places_is_one_for_those_who_listen(tonight: Come) -> None:
    here = tonight(small_book(), NOW)
    table = row_of(here.window, key("prime")).table
    told = QAccessible.queryAccessibleInterface(table)
    assert told.role() is QAccessible.Role.Table
    rows, columns = table.places.rowCount() + 1, table.places.columnCount() + 1  # with headings
    assert told.childCount() >= rows * columns - 1
    said = table.places.data(table.places.index(0, 0), Qt.ItemDataRole.AccessibleTextRole)
    assert said == "bed of tub, cart: next" or said.endswith(": next")


def test_space_ticks_and_once_more_takes_back_and_enter_notes_the_row(tonight: Come) -> None:
    here = tonight(small_book(), NOW)
    prime = key("prime")
    here.tick(prime)
    assert row_of(here.window, prime).checked(0)  # at once, before the plan has followed
    here.settle()
    assert row_of(here.window, prime).checked(0)
    assert row_of(here.window, prime).state(len(row_of(here.window, prime).work.places)) is (
        Cell.BEGUN
    )
    here.tick(prime)
    here.settle()
    assert here.log[0].ticked == ()
    here.now += 5
    here.done(prime)
    here.settle()
    assert here.log[0].end is not None
    assert row_of(here.window, prime).over
    here.window.tonight.cards[0].fold.click()  # what is done has folded
    here.back(prime)
    here.settle()
    assert here.log == ()


def test_a_drag_along_a_row_ticks_what_it_passes_as_one_edit(
    qtbot, tonight: Come, qapp: QApplication
) -> None:
    here = tonight(small_book(), NOW)
    row = row_of(here.window, key("prime"))
    places = row.work.places
    assert len(places) > 1
    port, model = row.table.viewport(), row.model
    rects = [
        row.table.visualRect(model.index(row.at, number)).center() for number in range(len(places))
    ]
    qtbot.mousePress(port, Qt.MouseButton.LeftButton, pos=rects[0])
    for spot in rects[1:]:
        qtbot.mouseMove(port, spot)
    qtbot.mouseRelease(port, Qt.MouseButton.LeftButton, pos=rects[-1])
    here.settle()
    assert set(here.log[0].ticked) == set(places)
    assert here.window.session.latest_name() == f"ticked: {len(places)} places"


def test_a_heading_ticks_its_column_on_every_model(qtbot, tonight: Come) -> None:
    book = demos.read("club_day_batch").book
    here = tonight(book, demos.first_evening(book))
    table = here.window.tonight.cards[0].tables[0]
    rows = table.places.block.rows
    assert len(rows) > 1
    header = table.horizontalHeader()
    x = header.sectionViewportPosition(0) + header.sectionSize(0) // 2
    qtbot.mouseClick(header.viewport(), Qt.MouseButton.LeftButton, pos=QPoint(x, 4))
    here.settle()
    log = here.window.session.book.projects[0].log
    place = table.places.block.columns[0]
    assert {fact.model for fact in log} == {row.key.model for row in rows}
    assert all(fact.ticked == (place,) for fact in log)


def test_what_is_done_folds_to_one_line_and_unfolds(qapp: QApplication, tonight: Come) -> None:
    here = tonight(small_book(), NOW)
    here.now += 20
    here.done(key("prime"))
    here.settle()
    card = next(one for one in here.window.tonight.cards if one.card.rows[0].key == key("prime"))
    assert card.over
    assert not card.body.isVisible()
    folded = card.height()
    card.fold.click()
    settle(qapp)
    assert card.body.isVisible()
    assert card.height() > folded
    assert not here.window.tonight.cards[1].fold.isVisible()  # what is to do stays open


def test_why_here_is_told_when_asked(qapp: QApplication, tonight: Come) -> None:
    here = tonight(small_book(), NOW)
    card = here.window.tonight.cards[0]
    assert not card.reason.isVisible()
    card.why.click()
    settle(qapp)
    assert card.reason.isVisible()
    assert "19:33 cart: No bench time before" in card.reason.text()


def test_a_caution_is_told_in_full_once_and_then_as_above(tonight: Come) -> None:
    book = demos.read("club_day_batch").book
    here = tonight(book, demos.first_evening(book))
    told = [
        label.text()
        for label in here.window.tonight.findChildren(QLabel)
        if "pray mist" in label.text()
    ]
    assert len(told) > 1
    assert told[0].startswith("Spray mist:")
    assert set(told[1:]) == {"As above: spray mist"}


def test_the_keys_stay_where_they_were_when_the_plan_is_made_anew(tonight: Come) -> None:
    here = tonight(small_book(), NOW)
    row = row_of(here.window, key("prime"))
    row.go(1)
    here.window.session.replan()
    here.settle()
    table = QApplication.focusWidget()
    assert table is row_of(here.window, key("prime")).table
    assert table.currentIndex().column() == 1


def test_between_sessions_a_tick_is_noted_but_the_whole_row_only_by_its_places(
    tonight: Come,
) -> None:
    here = tonight(small_book(), at("2031-03-06 17:00"))
    row = row_of(here.window, key("prime"))
    assert not row.model.can_be_done(row.work)
    here.tick(key("prime"), len(row.work.places))
    here.settle()
    assert set(here.log[0].ticked) == set(row.work.places)
    assert here.log[0].end is None


def test_a_card_is_put_off_to_a_later_session_as_one_edit(
    qapp: QApplication, qtbot, tonight: Come
) -> None:
    book = demos.read("club_day_batch").book
    here = tonight(book, demos.first_evening(book))
    view = here.window.tonight
    card = view.cards[0]
    keys = card.open_keys()
    assert len(keys) > 1
    card.tables[0].setFocus()
    qtbot.keyClick(card.tables[0], Key.Key_N)
    (menu,) = [menu for menu in card.findChildren(QMenu) if menu.isVisible()]
    first = here.window.session.picture.calendar.next_stretch(
        here.window.session.picture.sheet.interval.end
    )
    assert first is not None
    menu.actions()[0].trigger()
    menu.close()
    here.settle()
    pins = here.window.session.book.projects[0].pins
    assert {(pin.model, pin.step) for pin in pins} == {(each.model, each.step) for each in keys}
    assert {minute_of(pin.not_before) for pin in pins} == {first.interval.start}
    plan = here.window.session.picture.plan
    assert all(plan.placement(each).start >= first.interval.start for each in keys)
    here.window.session.undo()
    here.settle()
    assert here.window.session.book.projects[0].pins == ()


def test_small_cards_lie_side_by_side_where_there_is_room(
    qapp: QApplication, tonight: Come
) -> None:
    book = demos.read("club_day_batch").book
    here = tonight(book, demos.first_evening(book))
    cards = here.window.tonight.cards
    here.window.resize(2600, 1200)
    settle(qapp)
    lines: dict[int, list[CardFrame]] = {}
    for card in cards:
        lines.setdefault(card.y(), []).append(card)
    assert any(len(line) > 1 for line in lines.values())
    for line in lines.values():
        assert len({card.height() for card in line}) == 1
        assert all(one.geometry().right() < two.x() for one, two in pairwise(line))
    here.window.resize(here.window.minimumSizeHint())
    settle(qapp)
    tops = [card.y() for card in cards]
    assert tops == sorted(set(tops))


def test_a_pause_within_the_hours_of_a_card_is_told_on_it(tonight: Come) -> None:
    book = demos.read("club_day_batch").book
    here = tonight(book, demos.first_evening(book))
    view = here.window.tonight
    notes = [line for line in view._sheet.lines if isinstance(line, NoteLine)]
    pauses = [note for note in notes if " free: " in note.accessibleName()]
    told = [label.text() for label in view.findChildren(QLabel) if " free: " in label.text()]
    assert len(told) > len(pauses) > 0  # some stand on cards
    for note in pauses:
        for frame in view.cards:
            assert not frame.card.start < note.start < frame.card.end


@pytest.mark.parametrize("name", ["club_day_batch", "lone_lamplighter"])
def test_the_room_bears_the_number_of_the_headline(tonight: Come, name: str) -> None:
    book = demos.read(name).book
    here = tonight(book, demos.first_evening(book))
    badge = here.window.navigation.buttons[0].badge
    assert here.window.tonight._headline.answer.text().startswith(f"{badge} job")
