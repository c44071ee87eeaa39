"""Every command of the menus, with its keys."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial

from PySide6.QtCore import QObject
from PySide6.QtGui import QAction, QActionGroup, QKeySequence
from PySide6.QtWidgets import QMenuBar, QWidget

from app.window import language
from app.window.language import Language
from app.window.model_acts.acts import ModelActs
from app.window.pages import lately
from app.window.palette import Appearance
from app.window.plan_changes_panel import deed_words
from app.window.shell import Shell
from app.window.workspaces import keys_of_pages

Keys = QKeySequence.StandardKey


class Commands(QObject):
    """Actions of the main window, ``parent``, whose pages and files are those of ``window``."""

    def __init__(self, parent: QWidget, window: Shell) -> None:
        super().__init__(parent)
        self._parent, self._window = parent, window
        files, session = window.files, window.session
        self.new = self._action(self.tr("&New book…"), files.new_book, Keys.New)
        self.open = self._action(self.tr("&Open book…"), files.open_book, Keys.Open)
        self.import_ = self._action(
            self.tr("&Import project file…"), files.import_project, "Ctrl+I"
        )
        self.export = self._action(self.tr("&Export project file…"), files.export, "Ctrl+E")
        self.paper = self._action(
            self.tr("&Print tonight…"), files.exports.print_tonight, Keys.Print
        )
        self.quit = self._action(self.tr("&Quit"), window.close, Keys.Quit)
        self.undo = self._action(self.tr("&Undo"), session.undo, Keys.Undo)
        self.redo = self._action(self.tr("&Redo"), session.redo, Keys.Redo)
        self.edits = self._action(
            self.tr("&Last edits…"),
            partial(lately("last_edits:show_edits"), session, parent),
            "Ctrl+L",
        )
        self.copies = self._action(
            self.tr("&Copies of the book…"),
            partial(lately("book_copies:show_copies"), session, parent),
        )
        self.everything = self._action(
            self.tr("&Everything, in one archive…"), window.files.archives.pack
        )
        self.about = self._action(
            self.tr("&About Tackfree"), partial(lately("help_pages:about"), parent)
        )
        self.keys = self._action(
            self.tr("&Keys"), partial(lately("help_pages:keys"), parent), "Shift+F1"
        )
        self.page = self._action(self.tr("This &page"), self._help, Keys.HelpContents)
        self.words = self._action(
            self.tr("&Words"), partial(lately("help_pages:trade_words"), parent)
        )
        self.better = self._action(self.tr("Take the &better plan"), self._take, "F6")
        self.better.setEnabled(False)
        acts = window.acts
        self.bench = self._action(self.tr("&Bench mode"), window.go_to_bench, "F11")
        self.other = self._action(self.tr("I &did something else…"), acts.other, "Ctrl+Shift+D")
        self.hour = self._action(self.tr("An &hour more"), acts.hour, "Ctrl+H")
        self.stop = self._action(self.tr("&Stop for tonight"), acts.stop, "Ctrl+Shift+E")
        self.gaps = self._action(self.tr("&Free time…"), acts.gaps, "Ctrl+Shift+G")
        self.close_evening = self._action(
            self.tr("&Close the evening…"), acts.close_evening, "Ctrl+Shift+C"
        )
        self.lost = self._action(self.tr("This evening is &lost"), acts.lost, "Ctrl+Shift+L")
        self.back = self._action(self.tr("&Take back the last"), acts.take_back, "Ctrl+Backspace")
        self.air = self._action(self.tr("Change the a&ir"), window.change_air, "F3")
        self.skip = self._action(self.tr("Days &off…"), acts.days_off, "Ctrl+Shift+O")
        self.more = self._action(self.tr("&More bench time…"), acts.more_time, "Ctrl+Shift+H")
        self.inspector = self._action(self.tr("Inspecto&r"), window.toggle_inspector, "F4")
        self.next = self._action(
            self.tr("&Next page of the room"), partial(window.turn_page, 1), "Ctrl+PgDown"
        )
        self.before = self._action(
            self.tr("&Page before it"), partial(window.turn_page, -1), "Ctrl+PgUp"
        )
        self.last = self._action(self.tr("B&ack to the page before"), window.go_back, "Alt+Left")
        self.rooms = self._rooms()
        self.models = ModelActs(session, parent, window.chosen_models)
        self.views = self._views()
        self.looks = self._looks()
        self.languages = self._languages()

    def _help(self) -> None:
        """Say what the page on screen is for."""
        at = next(at for at, view in enumerate(self.views) if view.isChecked())
        page = self._window.pages[at]
        lately("help_pages:page")(self._parent, page.name, page.plain)

    def _take(self) -> None:
        self._window.improving.take()

    def _action(
        self, name: str, act: Callable[[], object], keys: Keys | str | None = None
    ) -> QAction:
        action = QAction(name, self)
        if keys is not None:
            action.setShortcut(QKeySequence(keys))
        action.triggered.connect(lambda _on=False: act())
        return action

    def _rooms(self) -> list[QAction]:
        group = QActionGroup(self)
        of_pages = keys_of_pages(self._window.workspaces)
        for number, workspace in enumerate(self._window.workspaces):
            keys = f"Ctrl+{number + 1}"
            action = self._action(workspace.title, partial(self._window.show_room, number), keys)
            held = [
                f"{self._window.page(name).plain} ({of_pages[name]})" for name in workspace.every
            ]
            told = f"{workspace.plain} ({keys})"
            action.setToolTip("\n".join([told, *held[1:]]))
            action.setCheckable(True)
            group.addAction(action)
        return group.actions()

    def _views(self) -> list[QAction]:
        group = QActionGroup(self)
        keys = keys_of_pages(self._window.workspaces)
        first = {workspace.pages[0] for workspace in self._window.workspaces}
        for number, page in enumerate(self._window.pages):
            key = None if page.name in first else keys[page.name]  # the room's action has it
            action = self._action(page.title, partial(self._window.show_view, number), key)
            action.setToolTip(f"{page.plain} ({keys[page.name]})")
            action.setCheckable(True)
            group.addAction(action)
        return group.actions()

    def _looks(self) -> dict[Appearance, QAction]:
        names = {
            Appearance.SYSTEM: self.tr("&Follow the system"),
            Appearance.LIGHT: self.tr("L&ight"),
            Appearance.DARK: self.tr("Dar&k"),
        }
        group = QActionGroup(self)
        looks = {}
        for look, name in names.items():
            action = self._action(name, partial(self._window.set_look, look))
            action.setCheckable(True)
            group.addAction(action)
            looks[look] = action
        return looks

    def _languages(self) -> list[QAction]:
        names = {Language.SYSTEM: self.tr("&Follow the system"), **language.OWN_NAMES}
        group = QActionGroup(self)
        for each, name in names.items():
            action = self._action(name, partial(self._speak, each))
            action.setCheckable(True)
            action.setChecked(each is language.chosen(self._window.settings))
            group.addAction(action)
        return group.actions()

    def _speak(self, wanted: Language) -> None:
        self._window.settings.setValue(language.KEY, wanted.value)
        self._window.say(self.tr("Changes at the next start."))

    def fill(self, bar: QMenuBar) -> None:
        """Put the actions into menus."""
        file = bar.addMenu(self.tr("&File"))
        file.addActions([self.new, self.open])
        file.addSeparator()
        file.addActions([self.import_, self.export])
        export = file.addMenu(self.tr("E&xport"))
        self._window.files.exports.fill(export)
        export.addSeparator()
        export.addAction(self.everything)
        file.addAction(self.paper)
        file.addSeparator()
        file.addAction(self.copies)
        file.addSeparator()
        file.addAction(self.quit)
        edit = bar.addMenu(self.tr("&Edit"))
        edit.addActions([self.undo, self.redo])
        edit.addAction(self.better)
        edit.addSeparator()
        edit.addAction(self.edits)
        self.models.fill(bar.addMenu(self.tr("M&odels")))
        view = bar.addMenu(self.tr("&View"))
        view.addActions(self.rooms)
        view.addSeparator()
        pages = view.addMenu(self.tr("Pa&ges"))
        pages.addActions(self.views)
        pages.addSeparator()
        pages.addActions([self.next, self.before, self.last])
        view.addAction(self.inspector)
        view.addSeparator()
        view.addActions(list(self.looks.values()))
        view.addSeparator()
        view.addMenu(self.tr("L&anguage")).addActions(self.languages)
        evening = bar.addMenu(self.tr("Eve&ning"))
        evening.addActions([self.bench, self.other, self.gaps])
        evening.addSeparator()
        evening.addActions([self.hour, self.close_evening, self.stop, self.lost])
        evening.addSeparator()
        evening.addActions([self.skip, self.more, self.air])
        evening.addSeparator()
        evening.addAction(self.back)
        help_ = bar.addMenu(self.tr("&Help"))
        help_.addActions([self.page, self.keys, self.words, self.about])

    def name_edits(self, undo: str, redo: str) -> None:
        """Name what undo and redo would do, and disable them where there is nothing."""
        self.undo.setEnabled(bool(undo))
        self.redo.setEnabled(bool(redo))
        self.undo.setText(
            self.tr("&Undo {edit}").format(edit=deed_words(undo)) if undo else self.tr("&Undo")
        )
        self.redo.setText(
            self.tr("&Redo {edit}").format(edit=deed_words(redo)) if redo else self.tr("&Redo")
        )
