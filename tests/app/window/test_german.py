"""The window in German: every view speaks it, and nothing that has a translation stays English."""

from __future__ import annotations

import dataclasses
import re
from collections.abc import Iterator
from datetime import date

import pytest
from PySide6.QtCore import QLocale, QSettings
from PySide6.QtWidgets import QApplication, QLabel, QMenu
from small_book import NOW, small_book
from window_steps import MakeWindow
from window_texts import own_words, texts_in

from app.service import demos
from app.window import language, words
from app.window.language import Language
from app.window.main_window import MainWindow
from app.window.translations import catalogue
from planner.values.book import Book

# Pages, and words that must stand on each; the German ones are the trade's (Grundierung,
# Klarlack, griffest from memory) or plain words of the hobby.
PAGES = {
    "tonight": ["Heute Abend", "Fertig", "Sprühnebel: Absaugen"],
    "timeline": ["Zeitstrahl", "Alle Modelle"],
    "room": ["Raum", "griffest"],
    "stack": ["Schichtaufbau", "Befunde"],
    "build": ["Bauplan", "Schritt hinzufügen"],
    "sequences": ["Abläufe", "Modellen geben …"],
    "what if": ["Was wäre, wenn", "Eine Änderung ausprobieren"],
    "wishes": ["Wünsche", "Was am meisten zählt"],
    "drying": ["Trocknet jetzt"],
    "logbook": ["Logbuch"],
    "stock": ["Vorrat", "Glanzgrad", "wasserverdünnbares Acryl"],
    "shopping": ["Einkauf", "Zu kaufen"],
    "bench time": ["Bastelzeit", "Ruhezeiten"],
    "gear": ["Ausrüstung", "Trockenplätze"],
}
EMPTY = dataclasses.replace(small_book(), projects=())
FIELD = re.compile(r"\{[^}]*\}")


@pytest.fixture
def german(qapp: QApplication, tmp_path) -> Iterator[None]:
    """Let the window speak German for one test."""
    before = QLocale()
    settings = QSettings(str(tmp_path / "language.ini"), QSettings.Format.IniFormat)
    settings.setValue(language.KEY, Language.GERMAN.value)
    words.when.cache_clear()
    translators = language.install(qapp, settings)
    yield
    for translator in translators:
        qapp.removeTranslator(translator)
    QLocale.setDefault(before)
    words.when.cache_clear()


def whole(text: str) -> re.Pattern[str]:
    """Return what a text looks like once its placeholders are filled."""
    return re.compile(".+?".join(map(re.escape, FIELD.split(text))), re.DOTALL)


def left_in_english(said: set[str], book: Book) -> set[str]:
    """Return what is said in the words of a source text though there is a translation."""
    known = catalogue.read(catalogue.HERE / "tackfree_de.ts")
    german = set(known.values())
    # Short ones, as "{a} and {b}", fit whatever the engine says in English.
    told = [
        whole(source)
        for (_, source), text in known.items()
        if text != source
        and source not in german
        and (not FIELD.search(source) or len(re.findall("[A-Za-z]{3}", source)) > 9)
    ]
    mine = own_words(book)
    return {text for text in said - mine - german if any(one.fullmatch(text) for one in told)}


def all_pages(window: MainWindow) -> dict[str, set[str]]:
    """Return what each page says, together with the frame around it."""
    found = {}
    for page in window.pages:
        window.show_page(page.name)
        QApplication.processEvents()
        found[page.name] = {text for _, text in texts_in(window) if text.strip()}
    return found


@pytest.mark.usefixtures("german")
def test_every_view_speaks_german(make_window: MakeWindow) -> None:
    book = demos.read("lone_lamplighter").book
    window = make_window(book, demos.first_evening(book))
    said = all_pages(window)
    assert list(said) == list(PAGES)
    for name, wanted in PAGES.items():
        for word in wanted:
            assert any(word in text for text in said[name]), (name, word)
    everything = set().union(*said.values())
    assert left_in_english({*everything, "Add &step"}, book) == {"Add &step"}  # it would be seen
    assert not [text for text in everything if "{" in text]


@pytest.mark.usefixtures("german")
def test_an_empty_book_and_the_menus_speak_german(make_window: MakeWindow) -> None:
    window = make_window(EMPTY, NOW)
    said = all_pages(window)["tonight"]
    assert {"Noch nichts auf dem Basteltisch", "&Datei", "Spra&che"} <= said
    assert left_in_english(said, EMPTY) == set()
    bar = window.menuBar()
    menus = [bar, *bar.findChildren(QMenu)]
    assert len(menus) > 5
    for menu in menus:
        # The same two for each paper: A4 stands for both.
        titles = [action.text() for action in menu.actions() if ", Letter" not in action.text()]
        keys = re.findall(r"&(\w)", " ".join(titles).lower())
        assert len(keys) == len(set(keys)), titles


@pytest.mark.usefixtures("german")
def test_dates_are_written_as_in_german() -> None:
    # DIN 5008: the day as an ordinal with a full stop, the month by its name.
    assert words.day(date(2026, 3, 5), long=True) == "Donnerstag, 5. März"


def test_the_choice_is_kept_for_the_next_start(make_window: MakeWindow) -> None:
    window = make_window(EMPTY, NOW)
    names = [action.text() for action in window.commands.languages]
    assert names == ["&Follow the system", "&English", "&Deutsch"]
    assert window.commands.languages[0].isChecked()
    window.commands.languages[2].trigger()
    assert language.chosen(window.settings) is Language.GERMAN
    assert any("next start" in label.text() for label in window.statusBar().findChildren(QLabel))
    window.commands.languages[0].trigger()
    assert language.chosen(window.settings) is Language.SYSTEM


def test_what_the_settings_do_not_know_is_the_systems(tmp_path) -> None:
    settings = QSettings(str(tmp_path / "language.ini"), QSettings.Format.IniFormat)
    assert language.chosen(settings) is Language.SYSTEM
    settings.setValue(language.KEY, "tlh")
    assert language.chosen(settings) is Language.SYSTEM


def test_english_installs_nothing(qapp: QApplication, tmp_path) -> None:
    before = QLocale()
    settings = QSettings(str(tmp_path / "language.ini"), QSettings.Format.IniFormat)
    settings.setValue(language.KEY, Language.ENGLISH.value)
    try:
        assert language.install(qapp, settings) == []
        assert QLocale().language() == QLocale.Language.English
    finally:
        QLocale.setDefault(before)
    assert words.tr("&Stock") == "&Stock"


@pytest.mark.parametrize(("system", "said"), [("de_AT", "&Vorrat"), ("fr_FR", "&Stock")])
def test_the_systems_language_is_taken_where_it_is_written(
    qapp: QApplication, tmp_path, monkeypatch: pytest.MonkeyPatch, system: str, said: str
) -> None:
    before = QLocale()
    monkeypatch.setattr(language, "locale_of", lambda _language: QLocale(system))
    settings = QSettings(str(tmp_path / "language.ini"), QSettings.Format.IniFormat)
    translators = language.install(qapp, settings)
    try:
        assert words.tr("&Stock") == said
    finally:
        for translator in translators:
            qapp.removeTranslator(translator)
        QLocale.setDefault(before)
