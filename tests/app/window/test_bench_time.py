"""The Bench time view: weeks worked out by hand, and its forms through the real widgets."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from datetime import date, datetime
from pathlib import Path

import pytest
from PySide6.QtCore import QDate, Qt, QTime
from PySide6.QtTest import QAbstractItemModelTester, QTest
from PySide6.QtWidgets import QApplication
from small_book import ZONE, at, small_book
from view_steps import dialog_of, shown

from app.window.bench_time.dialogs import AwayDialog, ExtraDialog, RuleDialog
from app.window.bench_time.view import BenchTimeView
from app.window.bench_time.weeks_ahead import busy, weeks_of
from app.window.palette import DARK, LIGHT
from app.window.session import Session
from planner.values.bench_time import BenchTime, Extra, Recurring
from planner.values.moment import Interval
from planner.values.plan import (
    BenchKind,
    BenchWork,
    Cost,
    PassKey,
    Placement,
    Plan,
    Status,
)

MONDAY = date(2031, 3, 3)
NOW = at("2031-03-06 18:00")


def rule(days: str, start: str, end: str, people: int = 1) -> Recurring:
    return Recurring(
        rule=f"FREQ=WEEKLY;BYDAY={days}", since=MONDAY, start=start, end=end, people=people
    )


def plan_of(*work: tuple[str, str], bench: tuple[str, str] | None = None) -> Plan:
    placed = tuple(
        Placement(PassKey("yard", "cart", f"s{number}"), (Interval(at(start), at(end)),))
        for number, (start, end) in enumerate(work)
    )
    serving = (BenchWork(BenchKind.LOAD, Interval(*map(at, bench))),) if bench else ()
    cost = Cost(unplaced=0, late=0, finish=0, stretches=0, setup_minutes=0)
    return Plan(NOW, placed, serving, (), Status.FEASIBLE, cost, ())


def test_planned_minutes_are_counted_once_and_within_their_stretch() -> None:
    bench_time = BenchTime(
        zone="Europe/Warsaw",
        stretches=(rule("TH", "19:30", "21:30"),),
        quiet=(rule("TH", "21:00", "07:00"),),
    )
    plan = plan_of(
        ("2031-03-06 19:33", "2031-03-06 19:53"),
        ("2031-03-06 20:00", "2031-03-06 20:10"),
        bench=("2031-03-06 19:30", "2031-03-06 19:33"),
    )
    weeks = weeks_of(bench_time, plan, MONDAY, 1)
    (bar,) = weeks.days[3].bars
    # 3 min of loading, 20 and 10 of work; quiet from 21:00 to 21:30.
    assert (bar.planned, bar.free, bar.quiet) == (33, 87, 30)
    assert sum(len(day.bars) for day in weeks.days) == 1
    first, last = weeks.scale
    assert first <= 19 * 60 + 30
    assert last >= 21 * 60 + 30


def test_work_that_overlaps_is_one() -> None:
    plan = plan_of(
        ("2031-03-06 19:30", "2031-03-06 20:00"), ("2031-03-06 19:50", "2031-03-06 20:20")
    )
    assert busy(plan) == (Interval(at("2031-03-06 19:30"), at("2031-03-06 20:20")),)
    assert busy(None) == ()


def test_hours_are_those_of_the_wall_clock_when_the_clocks_change() -> None:
    # Warsaw goes from 02:00 to 03:00 on Sunday 30 March 2031 (last Sunday of March).
    bench_time = BenchTime(zone="Europe/Warsaw", stretches=(rule("SU", "19:30", "21:30"),))
    day = weeks_of(bench_time, None, date(2031, 3, 24), 1).days[6]
    (bar,) = day.bars
    assert day.wall(bar.interval.start) == 19 * 60 + 30
    assert bar.interval.minutes == 120


def test_a_night_belongs_to_the_day_it_begins_and_a_whole_week_to_every_day() -> None:
    night = BenchTime(zone="Europe/Warsaw", stretches=(rule("FR", "22:00", "02:00"),))
    days = weeks_of(night, None, MONDAY, 1).days
    assert [len(day.bars) for day in days] == [0, 0, 0, 0, 1, 0, 0]
    assert days[4].wall(days[4].bars[0].interval.end) == 26 * 60
    always = BenchTime(
        zone="Europe/Warsaw", stretches=(rule("MO,TU,WE,TH,FR,SA,SU", "00:00", "00:00"),)
    )
    assert [day.minutes for day in weeks_of(always, None, MONDAY, 1).days] == [1440] * 7


def test_a_day_away_and_an_extra_stretch_are_told() -> None:
    extra = Extra(
        start=datetime(2031, 3, 8, 10, tzinfo=ZONE),
        end=datetime(2031, 3, 8, 12, tzinfo=ZONE),
        people=2,
    )
    bench_time = BenchTime(
        zone="Europe/Warsaw",
        stretches=(rule("TH", "19:30", "21:30"),),
        skipped=(date(2031, 3, 6),),
        extra=(extra,),
    )
    days = weeks_of(bench_time, None, MONDAY, 1).days
    assert days[3].away
    assert not days[3].bars
    assert days[5].bars[0].extra
    assert days[5].bars[0].people == 2


@pytest.fixture
def opened(tmp_path: Path) -> Iterator[tuple[BenchTimeView, Session]]:
    with shown(BenchTimeView, replace(small_book(), projects=()), NOW, tmp_path) as both:
        yield both


def test_drawing_and_table_say_the_same(opened: tuple[BenchTimeView, Session]) -> None:
    view, _ = opened
    QAbstractItemModelTester(view.stretches.model)
    # Four weeks from Monday 3 March: Thursdays 6, 13, 20 and 27.
    assert view.stretches.model.rowCount() == 4
    view.drawing.setFocus()
    view.drawing.choose(2)
    QTest.keyClick(view.drawing, Qt.Key.Key_Right)
    assert view.drawing.chosen == 3
    assert view.stretches.chosen().day.on == date(2031, 3, 6)
    assert "19:30–21:30" in view.drawing.accessibleDescription()
    QTest.keyClick(view.drawing, Qt.Key.Key_PageDown)
    assert view.stretches.chosen().day.on == date(2031, 4, 3)
    for _ in range(5):
        QTest.keyClick(view.drawing, Qt.Key.Key_Up)
    view.go_home()
    assert view.stretches.model.rows[0].day.on == date(2031, 3, 6)


def test_a_day_is_skipped_and_taken_back_by_its_button(
    opened: tuple[BenchTimeView, Session],
) -> None:
    view, session = opened
    view.drawing.choose(3)
    view.skip.click()
    assert session.book.bench_time.skipped == (date(2031, 3, 6),)
    assert "back" in view.skip.text()
    view.skip.click()
    assert session.book.bench_time.skipped == ()


def test_recurring_hours_through_the_form(opened: tuple[BenchTimeView, Session]) -> None:
    view, session = opened
    listing = next(iter(view.rules.values()))
    view.tabs.setCurrentWidget(listing)
    listing.buttons[0].click()
    dialog = dialog_of(view, RuleDialog)
    for button in dialog.days.days:
        button.setChecked(False)
    dialog.buttons.accepted.emit()
    assert dialog.isVisible()
    assert "choose at least one" in dialog.forms[0].messages["rule"].text()
    dialog.days.days[5].setChecked(True)
    dialog.controls["start"].setTime(QTime(10, 0))
    dialog.controls["end"].setTime(QTime(13, 0))
    dialog.controls["people"].setValue(2)
    dialog.buttons.accepted.emit()
    added = session.book.bench_time.stretches[-1]
    assert (added.rule, added.start, added.end, added.people) == (
        "FREQ=WEEKLY;BYDAY=SA",
        "10:00",
        "13:00",
        2,
    )
    listing.choose(1)
    listing.buttons[2].click()
    assert session.book.bench_time == small_book().bench_time


def test_holidays_through_the_form(opened: tuple[BenchTimeView, Session]) -> None:
    view, session = opened
    view._ask_away()
    dialog = dialog_of(view, AwayDialog)
    dialog.first.setDate(QDate(2031, 3, 10))
    dialog.last.setDate(QDate(2031, 3, 9))
    dialog.buttons.accepted.emit()
    assert dialog.isVisible()
    assert dialog.forms[0].messages["last"].isVisible()
    dialog.last.setDate(QDate(2031, 3, 16))
    dialog.buttons.accepted.emit()
    assert len(session.book.bench_time.skipped) == 7
    assert view.away.model.rows == ((date(2031, 3, 10), date(2031, 3, 16)),)
    view.away.buttons[1].click()
    assert session.book.bench_time.skipped == ()


def test_one_more_stretch_may_run_past_midnight(opened: tuple[BenchTimeView, Session]) -> None:
    view, session = opened
    view.more.click()
    dialog = dialog_of(view, ExtraDialog)
    dialog.day.setDate(QDate(2031, 3, 7))
    dialog.start.setTime(QTime(22, 0))
    dialog.end.setTime(QTime(0, 30))
    dialog.buttons.accepted.emit()
    (extra,) = session.book.bench_time.extra
    assert extra.interval.minutes == 150
    assert view.extra.model.rowCount() == 1


@pytest.mark.parametrize("colours", [LIGHT, DARK], ids=["light", "dark"])
def test_the_drawing_paints_in_every_state(
    opened: tuple[BenchTimeView, Session], colours: object
) -> None:
    view, _ = opened
    view.set_colours(colours)
    full = view.drawing.grab().toImage()
    view.drawing.show_weeks(weeks_of(BenchTime(zone="UTC"), None, MONDAY, 4), NOW)
    assert view.drawing.grab().toImage() != full
    QApplication.processEvents()
