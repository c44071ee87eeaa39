"""The language of the window: that of the system, English, or another that is written.

English stands in the source; every other language is a compiled file in
``translations``.  A text without a translation stays English.
"""

from __future__ import annotations

from enum import StrEnum
from pathlib import Path

from PySide6.QtCore import QCoreApplication, QLibraryInfo, QLocale, QSettings, QTranslator

FILES = Path(__file__).with_name("translations")
KEY = "language"  # of the settings


class Language(StrEnum):
    """What the person has chosen."""

    SYSTEM = "system"
    ENGLISH = "en"
    GERMAN = "de"


OWN_NAMES = {Language.ENGLISH: "&English", Language.GERMAN: "&Deutsch"}  # never translated


def chosen(settings: QSettings) -> Language:
    """Return the language in the settings; what is unknown there counts as the system's."""
    wanted = str(settings.value(KEY, Language.SYSTEM.value))
    return Language(wanted) if wanted in list(Language) else Language.SYSTEM


def locale_of(language: Language) -> QLocale:
    """Return the locale of a language, in the person's own territory where that is known."""
    system = QLocale.system()
    if language is Language.SYSTEM:
        return system
    kind = {Language.ENGLISH: QLocale.Language.English, Language.GERMAN: QLocale.Language.German}
    return QLocale(kind[language], system.territory())


def install(app: QCoreApplication, settings: QSettings) -> list[QTranslator]:
    """Let all that is made from now on speak the chosen language; return what translates.

    Where there is no file of ours for a language, Qt's own texts, as on the buttons of its
    dialogs, stay English as well.
    """
    return speak(app, locale_of(chosen(settings)))


def speak(app: QCoreApplication, locale: QLocale) -> list[QTranslator]:
    """Let all that is made from now on speak the language of a locale."""
    QLocale.setDefault(locale)
    if locale.language() == QLocale.Language.English:
        return []
    ours, of_qt = QTranslator(app), QTranslator(app)
    if not ours.load(locale, "tackfree", "_", str(FILES)):
        return []
    of_qt.load(locale, "qtbase", "_", QLibraryInfo.path(QLibraryInfo.LibraryPath.TranslationsPath))
    for each in (of_qt, ours):  # the last one is asked first
        app.installTranslator(each)
    return [of_qt, ours]
