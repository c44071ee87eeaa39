"""The brake on wet films, by keys: in Tonight, in the bench mode, and what stays marked of it."""

from __future__ import annotations

from dataclasses import replace

import pytest
from bench_steps import AtTheBench
from logged_book import moment
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QWidget
from small_book import CART, NOW, PROJECT, at, key, slow_primer, small_book
from tonight_steps import Tonight, asked, row_of
from window_steps import MakeWindow, settle

from app.service.build_record import build_record
from app.service.document import DocumentTable
from app.window.logbook.table import NOTE, WORK
from planner.values.book import Book
from planner.values.coating import Mark, State, Window
from planner.values.project import Event, Logged

Key = Qt.Key


def primed_book() -> Book:
    """Return the cart primed from 19:33 to 19:43, by a label that asks for forty minutes of film.

    Of the film, not of the clock; in 23 °C and 50 % RH both are the same.
    """
    book = slow_primer(small_book())
    prime = Logged(
        model=CART, step="prime", start=moment("2031-03-06 19:33"), end=moment("2031-03-06 19:43")
    )
    return replace(book, projects=(replace(book.projects[0], log=(prime,)),))


@pytest.fixture
def tonight(qtbot, qapp: QApplication, make_window: MakeWindow):
    """Return how to come to Tonight with a book at a time."""

    def come(book: Book, now: int) -> Tonight:
        return Tonight(qtbot, qapp, make_window(book, now), now)

    return come


def text_of(widget: QWidget) -> str:
    return " ".join(label.text() for label in widget.findChildren(type(widget), "")) + " ".join(
        str(child.text()) for child in widget.children() if hasattr(child, "text")
    )


def test_a_tick_over_a_wet_film_asks_with_minute_and_risk_and_waiting_notes_nothing(
    tonight, qapp: QApplication
) -> None:
    here = tonight(primed_book(), at("2031-03-06 19:53"))
    here.tick(key("sand"))
    said = text_of(asked(qapp))
    assert "not ready" in said
    assert "Grey primer on tub" in said
    assert "The risk: solvent is shut in" in said
    assert "from now" in said
    assert asked(qapp).wait.hasFocus()  # Enter and Escape are the careful way
    here.press(Key.Key_Escape)
    assert [fact.step for fact in here.log] == ["prime"]
    assert not row_of(here.window, key("sand")).checked(0)


def test_begun_all_the_same_it_is_asked_once_and_stands_marked(
    tonight, qapp: QApplication, tmp_path
) -> None:
    here = tonight(primed_book(), at("2031-03-06 19:53"))
    here.tick(key("sand"))
    here.answer(asked(qapp).begin)
    assert [fact.step for fact in here.log] == ["prime", "sand"]
    here.now += 2
    here.tick(key("sand"), 1)
    assert qapp.activeModalWidget() is None
    here.settle()
    here.now += 9
    here.done(key("sand"))
    assert qapp.activeModalWidget() is None
    here.settle()
    book = here.window.session.book
    (mark,) = book.project(PROJECT).diary
    assert mark.event is Event.TOO_SOON
    assert mark.text.endswith("before grey primer was ready")
    # the timeline
    here.window.show_page("timeline")
    here.settle()
    pieces = [p for p in here.window.session.picture.strip.pieces if p.key == key("sand")]
    assert [piece.marks for piece in pieces] == [(mark.text,)]
    here.window.timeline.details.show_key(key("sand"))
    assert any("Done all the same" in line for line in here.window.timeline.details.sentences())
    # the logbook
    here.window.show_page("logbook")
    settle(qapp)
    model = here.window.view("logbook").model
    lines = [
        (model.index(row, WORK).data(), model.index(row, NOTE).data())
        for row in range(model.rowCount())
    ]
    assert any(what.startswith("Over a film not ready") for what, _ in lines)
    assert any("before grey primer was ready" in note for _, note in lines)
    # the record
    record = build_record(book, here.now, tmp_path)
    cells = [
        cell
        for block in record.blocks
        if isinstance(block, DocumentTable)
        for row in block.rows
        for cell in row
    ]
    assert any("over a film not ready" in cell and "grey primer" in cell for cell in cells)
    # and taking the work back takes the mark along
    here.window.take_back(key("sand"))
    here.settle()
    assert here.window.session.book.project(PROJECT).diary == ()


def test_whoever_waited_says_so_and_the_film_gets_its_pace(tonight, qapp: QApplication) -> None:
    here = tonight(primed_book(), at("2031-03-06 19:58"))
    here.tick(key("sand"))
    here.answer(asked(qapp).dry)
    project = here.window.session.book.project(PROJECT)
    assert [fact.step for fact in project.log] == ["prime", "sand"]
    (look,) = project.observed
    assert (look.step, look.state, look.reached) == ("prime", State.DRY_TO_RECOAT, True)
    assert look.at == moment("2031-03-06 19:58")
    assert project.diary == ()


def test_told_done_over_a_wet_film_is_asked_too(tonight, qapp: QApplication) -> None:
    here = tonight(primed_book(), at("2031-03-06 19:56"))
    here.done(key("sand"))
    assert "Was it done" in text_of(asked(qapp))
    here.answer(asked(qapp).wait)
    assert [fact.step for fact in here.log] == ["prime"]
    here.done(key("sand"))
    here.answer(asked(qapp).begin)
    assert [fact.step for fact in here.log] == ["prime", "sand"]
    assert here.window.session.book.project(PROJECT).diary[0].event is Event.TOO_SOON


def test_a_film_past_its_window_is_asked_for_by_the_bench_mode(
    qtbot, make_window: MakeWindow
) -> None:
    """By its label within half an hour or after a day; at 20:30 the first window is shut."""
    book = primed_book()
    label = (Window(closes=Mark(minutes=30)), Window(opens=Mark(minutes=1440)))
    book = replace(
        book,
        coatings=tuple(
            replace(coating, recoat=label, times=()) if coating.name == "grey primer" else coating
            for coating in book.coatings
        ),
    )
    now = at("2031-03-06 20:30")
    here = AtTheBench(qtbot, make_window(book, now), now)
    here.bench.evening._take_instead(key("sand"))
    question = here.bench.asked
    assert question is not None
    assert "too late" in question.title
    assert any("its window closed 20:03" in line.replace("today ", "") for line in question.about)
    here.choose("all the same")
    project = here.project
    assert [fact.step for fact in project.log] == ["prime", "sand"]
    assert project.diary[0].event is Event.TOO_LATE
    assert project.diary[0].text == "27 min after the window of grey primer had closed"


def test_keys_of_the_bench_mode_ask_before_beginning_ticking_and_done(
    qtbot, make_window: MakeWindow
) -> None:
    now = at("2031-03-06 19:53")
    here = AtTheBench(qtbot, make_window(primed_book(), now), now)
    for _ in range(6):
        if here.doing == str(key("sand")):
            break
        here.press(Key.Key_Right)
    assert here.doing == str(key("sand"))
    for pressed in (Key.Key_S, Key.Key_1, Key.Key_Space):
        here.press(pressed)
        assert here.bench.asked is not None
        assert "not ready" in here.bench.asked.title
        here.choose("wait")
        assert [fact.step for fact in here.project.log] == ["prime"]
    here.press(Key.Key_S)
    here.choose("it is dry")
    assert [fact.step for fact in here.project.log] == ["prime", "sand"]
    assert len(here.project.observed) == 1
    here.press(Key.Key_1)
    assert here.bench.asked is None
    for _ in range(2):
        here.press(Key.Key_Backspace)
    assert [fact.step for fact in here.project.log] == ["prime"]
    assert here.project.observed == ()


def test_where_all_is_ready_nothing_is_asked(tonight, qapp: QApplication) -> None:
    here = tonight(primed_book(), at("2031-03-06 21:00"))
    here.tick(key("sand"))
    assert qapp.activeModalWidget() is None
    here.settle()
    assert [fact.step for fact in here.log] == ["prime", "sand"]


def test_work_that_ended_soon_after_its_film_was_ready_is_believed(tonight, qapp) -> None:
    """Twelve minutes were planned; the film has been ready for less than that."""
    here = tonight(primed_book(), NOW)
    ready = next(
        film.opens
        for film in here.window.session.picture.sheet.drying
        if film.waiting == key("sand")
    )
    here.now = ready + 5
    here.window.session.replan()
    here.settle()
    here.done(key("sand"))
    assert qapp.activeModalWidget() is None
    here.settle()
    fact = here.log[-1]
    assert fact.step == "sand"
    assert fact.start.timestamp() / 60 >= ready
