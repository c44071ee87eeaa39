"""Drying now: what opens and closes after facts, told once, also after a restart and a sleep."""

from __future__ import annotations

from dataclasses import replace

import pytest
from PySide6.QtCore import QSettings
from PySide6.QtTest import QAbstractItemModelTester
from small_book import CART, NOW, PROJECT, ZONE, at, key, small_book
from window_steps import replan

from app.window.drying.event_wording import told
from app.window.drying.notices import due, due_of, told_at
from app.window.drying.notifier import Notifier
from app.window.drying.table import COURSE, WHAT, WHEN
from app.window.film_events import FilmEvent, FilmEventKind, grouped, moments
from app.window.plan_snapshot import PlanSnapshot, picture_of
from planner.values.book import Book
from planner.values.coating import State
from planner.values.moment import moment_of
from planner.values.project import Logged, Observed
from planner.values.step import Bound


def fact(step: str, start: int, end: int | None) -> Logged:
    return Logged(
        model=CART,
        step=step,
        start=moment_of(start, ZONE),
        end=None if end is None else moment_of(end, ZONE),
    )


def after(*log: Logged, observed: tuple[Observed, ...] = ()) -> Book:
    book = small_book()
    project = replace(book.project(PROJECT), log=log, observed=observed)
    return replace(book, projects=(project,))


PRIMED = fact("prime", NOW + 3, NOW + 13)


@pytest.fixture(scope="module")
def primed() -> PlanSnapshot:
    return picture_of(after(PRIMED), NOW + 13)


def test_a_film_opens_for_what_waits(primed: PlanSnapshot) -> None:
    found = moments(primed.laid)
    (item,) = [item for item in found if item.waiting == key("sand")]
    assert item.kind is FilmEventKind.OPENS
    assert item.since == NOW + 13
    assert item.at is not None
    placed = primed.plan.placement(key("sand"))
    assert placed is not None
    assert NOW + 13 < item.at <= placed.start  # the judge accepts no start before the opening


def test_what_waits_for_other_work_is_no_moment(primed: PlanSnapshot) -> None:
    waiting = {moment.waiting for moment in moments(primed.laid)}
    assert key("gloss") not in waiting  # sand must come first
    assert key("wipe") not in waiting


def test_a_window_is_told_while_there_is_time_for_the_work() -> None:
    begun, ended = at("2031-03-13 20:00"), at("2031-03-13 20:15")
    log = [
        PRIMED,
        fact("sand", NOW + 90, NOW + 102),
        fact("gloss", at("2031-03-07 19:30"), at("2031-03-07 19:38")),
        fact("wash", begun, ended),
    ]
    picture = picture_of(after(*log), ended)
    (moment,) = [moment for moment in moments(picture.laid) if moment.kind is FilmEventKind.CLOSES]
    assert moment.bound is Bound.END
    assert moment.at == begun + 60  # the gate: to end within 60 min of the start of the wash
    assert moment.last_begin == begun + 50  # wiping takes 10 min
    assert told_at(moment) == begun + 40  # and 10 min before that one is told


def test_each_moment_is_told_once(primed: PlanSnapshot) -> None:
    (moment,) = [moment for moment in moments(primed.laid) if moment.waiting == key("sand")]
    assert moment.at is not None
    before = due(primed, (), moment.at - 1)
    assert (before.fresh, before.meanwhile) == ((), ())
    now = due(primed, before.told, moment.at)
    assert now.fresh == (moment,)
    again = due(primed, now.told, moment.at + 3)
    assert (again.fresh, again.meanwhile) == ((), ())
    assert again.told == now.told


def test_after_a_sleep_what_opened_is_told_once_as_meanwhile(primed: PlanSnapshot) -> None:
    (moment,) = [moment for moment in moments(primed.laid) if moment.waiting == key("sand")]
    assert moment.at is not None
    woken = due(primed, (), moment.at + 600)
    assert woken.fresh == ()
    assert woken.meanwhile == (moment,)
    assert "Meanwhile" in told(woken, ZONE, moment.at + 600)
    assert due(primed, woken.told, moment.at + 601).meanwhile == ()


def test_another_plan_of_the_same_films_tells_nothing_again(primed: PlanSnapshot) -> None:
    (moment,) = [moment for moment in moments(primed.laid) if moment.waiting == key("sand")]
    assert moment.at is not None
    known = due(primed, (), moment.at).told
    later = picture_of(primed.book, moment.at + 30)
    found = due(later, known, moment.at + 30)
    assert (found.fresh, found.meanwhile) == ((), ())


def test_a_film_found_tacky_is_told_again(primed: PlanSnapshot) -> None:
    (moment,) = [moment for moment in moments(primed.laid) if moment.waiting == key("sand")]
    assert moment.at is not None
    known = due(primed, (), moment.at).told
    look = Observed(
        model=CART,
        step="prime",
        at=moment_of(moment.at + 1, ZONE),
        state=State.DRY_TO_RECOAT,
        reached=False,
    )
    later = picture_of(after(PRIMED, observed=(look,)), moment.at + 1)
    (other,) = [moment for moment in moments(later.laid) if moment.waiting == key("sand")]
    assert other.at is not None
    assert other.at > moment.at
    assert other in due(later, known, other.at).fresh


def test_names_of_moments_that_are_no_more_are_forgotten() -> None:
    assert due_of((), {"opens a>b@1~0"}, 10).told == frozenset()


# --- looks ------------------------------------------------------------------------------------


def looked_after(book: Book, minutes: int = 20) -> Book:
    """Return a book in which the primer asks for a look."""
    project = book.project(PROJECT)
    model = project.model(CART)
    prime, *rest = model.steps
    model = replace(model, steps=(replace(prime, look_in=minutes), *rest))
    return replace(book, projects=(replace(project, models=(model,)),))


def test_a_look_is_told_once_when_it_is_due_and_after_a_sleep() -> None:
    picture = picture_of(looked_after(after(PRIMED)), NOW + 13)
    (moment,) = [moment for moment in moments(picture.laid) if moment.kind is FilmEventKind.LOOK]
    assert (moment.film, moment.at, moment.places) == (
        key("prime"),
        NOW + 33,
        ("tub/bed", "tub/sides"),
    )
    assert moment not in due(picture, (), NOW + 32).fresh
    found = due(picture, (), NOW + 33)
    assert moment in found.fresh
    assert "Have a look: prime · cart (tub): how it has come out." in told(found, ZONE, NOW + 33)
    assert moment not in due(picture, found.told, NOW + 34).fresh
    woken = due(picture, (), NOW + 600)
    assert moment in woken.meanwhile
    assert moment not in due(picture, woken.told, NOW + 601).meanwhile


def test_the_desktop_tells_a_look_once_even_after_a_restart(qtbot, make_window, tmp_path) -> None:
    window = make_window(looked_after(after(PRIMED)), NOW + 13)
    settings = QSettings(str(tmp_path / "looks.ini"), QSettings.Format.IniFormat)
    heard: list[str] = []

    def look(minute: int) -> None:
        window.session.set_clock(lambda: minute)
        notifier = Notifier(window.session, settings)  # a new one each time, as after a restart
        notifier.desktop = notifier.sound = False
        notifier.said.connect(heard.append)
        notifier.look()
        notifier.stop()
        notifier.deleteLater()

    for minute in (NOW + 13, NOW + 33, NOW + 34, NOW + 40):
        look(minute)
    assert [line for line in heard if line.startswith("Have a look")] == heard
    assert len(heard) == 1


def test_a_look_is_taken_in_drying_now(qtbot, make_window) -> None:
    window = make_window(looked_after(after(PRIMED)), NOW + 40)
    window.show_page("drying")
    view = window.view("drying")
    rows = [view.model.moment_at(view.model.index(at, 0)) for at in range(view.model.rowCount())]
    line = next(at for at, row in enumerate(rows) if row.kind is FilmEventKind.LOOK)
    assert str(view.model.data(view.model.index(line, WHEN))).startswith("due since 20:03")
    view.table.selectRow(line)
    assert (view.seen.isEnabled(), view.tacky.isEnabled()) == (True, False)
    replan(qtbot, window, view.seen.click)
    assert [line.step for line in window.session.book.project(PROJECT).diary] == ["prime"]
    assert FilmEventKind.LOOK not in [
        moment.kind for moment in moments(window.session.picture.laid)
    ]


@pytest.mark.parametrize(("length", "before"), [(60, 10), (180, 10), (1440, 120), (10_080, 1440)])
def test_longer_windows_are_told_sooner(length: int, before: int) -> None:
    one = FilmEvent(FilmEventKind.CLOSES, key("wash"), key("wipe"), (), "", at=length, since=0)
    assert told_at(one) == length - before


def test_the_notifier_remembers_over_a_restart(qtbot, make_window, tmp_path) -> None:
    (moment,) = [
        moment
        for moment in moments(picture_of(after(PRIMED), NOW + 13).laid)
        if moment.waiting == key("sand")
    ]
    assert moment.at is not None
    window = make_window(after(PRIMED), NOW + 13)
    settings = QSettings(str(tmp_path / "other.ini"), QSettings.Format.IniFormat)
    said: list[str] = []
    for minute in (NOW + 13, moment.at + 300, moment.at + 301):  # at once; woken late; once more
        window.session.set_clock(lambda minute=minute: minute)
        notifier = Notifier(window.session, settings)  # a new one each time: a restart
        notifier.sound = False
        notifier.said.connect(said.append)
        notifier.look()
        notifier.stop()
        notifier.deleteLater()
    assert len(said) == 1
    assert "sand" in said[0].lower()


class FakeTray:
    """Stands in for the system tray, which no test has."""

    told: list[str] = []  # noqa: RUF012 - shared on purpose, emptied by the test

    def __init__(self, *_about: object) -> None:
        self.shown = False

    @staticmethod
    def isSystemTrayAvailable() -> bool:
        return True

    def setToolTip(self, _text: str) -> None:
        pass

    def show(self) -> None:
        self.shown = True

    def hide(self) -> None:
        self.shown = False

    def showMessage(self, _title: str, text: str, _icon: object) -> None:
        assert self.shown
        self.told.append(text)


def test_the_desktop_and_the_sound_can_be_turned_off(
    qtbot, make_window, tmp_path, monkeypatch
) -> None:
    monkeypatch.setattr("app.window.drying.notifier.QSystemTrayIcon", FakeTray)
    beeps: list[int] = []
    monkeypatch.setattr(
        "app.window.drying.notifier.QApplication.beep", lambda: beeps.append(1), raising=True
    )
    FakeTray.told.clear()
    window = make_window(after(PRIMED), NOW + 13)
    (moment,) = [
        moment for moment in moments(window.session.picture.laid) if moment.waiting == key("sand")
    ]
    assert moment.at is not None
    assert moment.at < at("2031-03-06 21:30")  # in bench time, where a sound is heard
    for number, (desktop, sound) in enumerate(((True, True), (False, False))):
        settings = QSettings(str(tmp_path / f"{number}.ini"), QSettings.Format.IniFormat)
        for minute in (NOW + 13, moment.at):
            window.session.set_clock(lambda minute=minute: minute)
            notifier = Notifier(window.session, settings)
            notifier.desktop, notifier.sound = desktop, sound
            notifier.look()
            notifier.stop()
            notifier.deleteLater()
        assert len(FakeTray.told) == 1  # the second time nothing is added
        assert len(beeps) == 1


def test_the_table_names_each_film_once_and_takes_what_was_seen(qtbot, make_window) -> None:
    window = make_window(after(PRIMED), NOW + 13)
    window.show_page("drying")
    view = window.view("drying")
    tester = QAbstractItemModelTester(
        view.model, QAbstractItemModelTester.FailureReportingMode.Fatal
    )
    assert tester.model() is view.model
    assert view.model.rowCount() == len(grouped(moments(window.session.picture.laid)))
    shown = [str(view.model.data(view.model.index(0, column))) for column in range(COURSE)]
    assert shown[WHEN].startswith("opens ")
    assert "Sand · cart may begin" in shown[WHAT]
    assert "prime (tub)" in shown[WHAT]
    replan(qtbot, window, view.tacky.click)
    (look,) = window.session.book.project(PROJECT).observed  # type: ignore[union-attr]
    assert (look.step, look.reached) == ("prime", False)
