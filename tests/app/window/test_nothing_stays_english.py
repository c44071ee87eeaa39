"""In the made-up language nothing stays English: dialogs, first questions, bench mode, tables."""

from __future__ import annotations

import csv
import io
import re

import pytest
from bench_steps import AtTheBench
from every_dialog import every_dialog
from logged_book import logged_book
from pseudo_language import Ear
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QWidget
from small_book import NOW, small_book
from window_steps import MakeWindow, settle
from window_texts import own_words, texts_in

from app.service import demos
from app.service.books import starter_book
from app.service.csv_export import csv_bytes, log_bytes, shopping_bytes
from app.service.first_run import Answers, FirstHours, Vehicle, begin
from app.service.planning import plan
from app.window import words
from app.window.bench_mode.keys import BINDINGS, Deed
from app.window.message_translation import translated
from app.window.sequences.give_dialog import GiveDialog
from planner.sequences.built_in import ALL
from planner.values.moment import moment_of, zone_named

# Names that stay: of languages, of paper, of invented projects, and what `every_dialog` says.
NAMES = {"English", "Deutsch", "Letter", "L&etter", "Europe/Vienna"}
DEMOS = {name.replace("_", " ").capitalize() for name in demos.names()}
ISO_TIME = re.compile(r"\d{4}-\d{2}-\d{2}T[\d:+]+")
UNITS = {"[µm]", "[ml]", "µm", "ml"}
SAID_BY_TESTS = {
    *("Together with", "Which one?", "Count a bottle", "There are", "&There are"),
    *("By the book, 5 ml are left.", "Rename a sequence", "another note"),
    "An invented project.",
    *("The fine airbrush", "a mix with a long name of its own"),
}

PAGES = {"tonight", "timeline", "stack", "build", "drying"}  # that name pieces of work

pytestmark = pytest.mark.usefixtures("marker")


def left(name: str, top: QWidget, ear: Ear) -> list[str]:
    """Return what is neither marked nor a person's own."""
    return sorted(
        {f"{name}: {where}: {text}" for where, text in texts_in(top) if ear.unmarked(text)}
    )


def test_no_dialog(qapp: QApplication, make_window: MakeWindow) -> None:
    book = demos.read("winter_garage").book
    window = make_window(book, demos.first_evening(book))
    there = own_words([demos.read(name).book for name in demos.names()])
    ear = Ear(there | DEMOS | SAID_BY_TESTS | UNITS)
    found = []
    for name, make in every_dialog(window).items():
        dialog = make()
        dialog.show()
        settle(qapp)
        found += left(name, dialog, ear)
        dialog.close()
        dialog.deleteLater()
        settle(qapp)
    assert "\n".join(found) == ""


def test_no_first_question(qtbot, qapp: QApplication, make_window: MakeWindow) -> None:
    today = moment_of(NOW, zone_named("UTC")).date()
    book = starter_book("Europe/Vienna", today, words.given_name)
    window = make_window(book, NOW)
    asked = window.empty.first_run
    qtbot.waitUntil(lambda: bool(asked.vehicles.lines) and asked.isVisible())
    settle(qapp)
    assert "\n".join(left("first", window, Ear(NAMES | DEMOS))) == ""


def test_no_sequence(qapp: QApplication, make_window: MakeWindow) -> None:
    book = small_book()
    window = make_window(book, NOW)
    window.show_page("sequences")
    page = next(page for page in window.pages if page.name == "sequences").widget
    ear = Ear(own_words(book))
    found = []
    for sequence in ALL:
        page.choose(sequence.name)
        settle(qapp)
        found += left(sequence.name, page, ear)
        dialog = GiveDialog(window.session, sequence, window)
        dialog.show()
        settle(qapp)
        found += left(f"give {sequence.name}", dialog, ear)
        dialog.close()
        dialog.deleteLater()
    assert "\n".join(found) == ""


def test_no_title_that_the_program_wrote(qapp: QApplication, make_window: MakeWindow) -> None:
    told = Answers(
        project="P",
        vehicles=(
            Vehicle(name="v1", sequence="full weathered vehicle"),
            Vehicle(name="v2", sequence="figure"),
        ),
        hours=(FirstHours(days=frozenset({1, 3, 5}), start="19:30", end="22:00"),),
    )
    today = moment_of(NOW, zone_named("UTC")).date()
    empty = starter_book("Europe/Vienna", today, words.given_name)
    book = begin(empty, told, today, words.given_name).book
    window = make_window(book, NOW)
    steps = [step.step for sequence in ALL for step in sequence.steps]
    of_the_program = own_words(ALL) | {step.id for step in steps}
    assert {step.title for step in steps} <= of_the_program
    ear = Ear({word for word in own_words(book) if word not in of_the_program and "/" not in word})
    found = []
    for page in (page for page in window.pages if page.name in PAGES):
        window.show_page(page.name)
        settle(qapp)
        found += left(page.name, page.widget, ear)
    assert "\n".join(found) == ""


def test_no_deed_at_the_bench(qtbot, qapp: QApplication, make_window: MakeWindow) -> None:
    book = small_book()
    here = AtTheBench(qtbot, make_window(book, NOW), NOW)
    ear = Ear(own_words(book))
    found = left("", here.bench, ear)
    for binding in BINDINGS:
        if binding.deed is Deed.LEAVE:
            continue
        here.press(binding.keys[0])
        found += left(binding.deed, here.bench, ear)
        if here.bench.asked is not None:
            here.press(Qt.Key.Key_1)
            found += left(f"{binding.deed} 1", here.bench, ear)
        while here.bench.asked is not None:
            here.press(Qt.Key.Key_Escape)
    assert "\n".join(sorted(set(found))) == ""


def test_no_table() -> None:
    book, now = logged_book(), NOW + 30 * 1440
    made = plan(book, now).plan
    ear = Ear(own_words(book) | {"ml", "m"})
    for data in (
        csv_bytes(made, book, translate=translated),
        log_bytes(book, translate=translated),
        shopping_bytes(book, made, now, translate=translated),
    ):
        rows = list(csv.reader(io.StringIO(data.decode(), newline="")))
        assert len(rows) > 2
        assert {cell for cell in rows[0] if not cell.startswith("⟦")} == set()
        told = [part for cells in rows for cell in cells for part in re.split("; |/", cell)]
        assert [one for one in told if ear.unmarked(one) and not ISO_TIME.fullmatch(one)] == []
