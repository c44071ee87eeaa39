"""What can be done with the chosen lines of the Build view, by menu, button and key."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
from typing import Protocol

from PySide6.QtCore import QObject, Qt
from PySide6.QtGui import QAction, QKeySequence
from PySide6.QtWidgets import QMenu, QWidget

from app.service import edits as usual
from app.service.build_edits import models, names, order, parts, steps
from app.service.build_edits.locate import model_of, step_of
from app.service.build_edits.names import fresh_name
from app.service.edits import Edit
from app.window import words
from app.window.model_editor.duplicate_dialog import AgainDialog
from app.window.model_editor.forms import new_part, new_place
from app.window.model_editor.nodes import Key, NodeKind
from app.window.model_editor.split_dialog import SplitDialog
from app.window.model_editor.tree_view import BuildTree
from planner.values.book import Book
from planner.values.keys import ModelKey
from planner.values.lookup import part_of, project_of
from planner.values.refusal import Refused
from planner.values.step import Stage, Step

Make = Callable[[Book], Edit]


class Editor(Protocol):
    """What the actions ask of the view that they are in."""

    ready: bool
    tree: BuildTree

    @property
    def book(self) -> Book | None:
        """The book that is edited."""

    def say(self, message: str) -> None:
        """Tell something above the tree."""

    def do(self, make: Make, *chosen: Key, edit_name: bool = False) -> Refused | None:
        """Make an edit, then choose lines."""


class Acts(QObject):
    """Actions of the Build view; each becomes one edit of the book."""

    def __init__(self, parent: QWidget, view: Editor) -> None:
        super().__init__(parent)
        self._parent, self._view = parent, view
        self._copied: steps.Copied | None = None
        tr = self.tr
        self.step = self._act(tr("Add &step"), self._add_step, "Ins")
        self.model = self._act(tr("Add &model"), self._add_model, "Shift+Ins")
        self.part = self._act(tr("Add &part"), self._add_part)
        self.place = self._act(tr("Add p&lace"), self._add_place)
        self.project = self._act(tr("Begin a pro&ject"), self._add_project)
        self.up = self._act(tr("Move &up"), partial(self._shift, False), "Alt+Up")
        self.down = self._act(tr("Move &down"), partial(self._shift, True), "Alt+Down")
        self.again = self._act(tr("Same &again, other markings…"), self._again, "Ctrl+D")
        self.copy = self._act(tr("&Copy steps"), self._copy, QKeySequence.StandardKey.Copy)
        self.paste = self._act(tr("Put steps &here"), self._paste, QKeySequence.StandardKey.Paste)
        self.split = self._act(tr("Split &by places…"), self._split)
        self.remove = self._act(tr("R&emove"), self._remove, "Del")
        self.rename = self._act(tr("&Rename"), self._rename)
        self.again.setToolTip(tr("Adds a model with the same parts and steps, nothing done yet"))
        self.targets = QMenu(tr("Copy &to"))
        self.targets.aboutToShow.connect(self._list_targets)
        self.show_chosen()

    def every(self) -> list[QAction]:
        """Return the actions in the order of the menu."""
        return [
            self.step,
            self.model,
            self.part,
            self.place,
            self.project,
            self.up,
            self.down,
            self.again,
            self.copy,
            self.paste,
            self.targets.menuAction(),
            self.split,
            self.rename,
            self.remove,
        ]

    def show_chosen(self) -> None:
        """Switch on what can be done with the chosen lines."""
        keys = self._view.tree.chosen_keys() if self._view.ready else []
        kinds = {key.kind for key in keys}
        some_steps = kinds == {NodeKind.STEP}
        one_home = len({(key.project, key.model) for key in keys}) == 1
        self.step.setEnabled(one_home and NodeKind.PROJECT not in kinds)
        self.part.setEnabled(one_home and NodeKind.PROJECT not in kinds)
        self.place.setEnabled(bool(kinds & {NodeKind.PART, NodeKind.PLACE}))
        self.model.setEnabled(bool(keys))
        movable = (some_steps and one_home) or kinds == {NodeKind.MODEL}
        self.up.setEnabled(movable)
        self.down.setEnabled(movable)
        self.again.setEnabled(one_home and NodeKind.PROJECT not in kinds)
        for act in (self.copy, self.targets.menuAction()):
            act.setEnabled(some_steps and one_home)
        self.paste.setEnabled(bool(keys) and self._copied is not None)
        self.split.setEnabled(some_steps and len(keys) == 1 and self._has_places(keys[0]))
        self.remove.setEnabled(bool(keys) and NodeKind.PARTS not in kinds)
        self.rename.setEnabled(len(keys) == 1 and NodeKind.PARTS not in kinds)

    def _has_places(self, key: Key) -> bool:
        """Tell whether a step works on more than one place."""
        book = self._view.book
        try:
            model = model_of(book, key.home) if book is not None else None
            step = step_of(model, key.step) if model is not None else None
        except Refused:  # it has just gone from the book
            return False
        if model is None or step is None:
            return False
        return len({place for name in step.references() for place in model.places(name)}) > 1

    # -- adding -----------------------------------------------------------------------------

    def _add_step(self) -> None:
        key = self._view.tree.current()
        book = self._view.book
        if key is None or book is None or not key.model:
            return
        model = model_of(book, key.home)
        step = steps.fresh_step(book, model, Stage.BASE)
        ids = [step.id for step in model.steps]
        to = ids.index(key.step) + 1 if key.step in ids else None
        new = Key(NodeKind.STEP, key.project, key.model, step=step.id)
        self._do(lambda b: steps.add_step(b, key.home, step, to), new, edit_name=True)

    def _add_model(self) -> None:
        key, book = self._view.tree.current(), self._view.book
        if key is None or book is None:
            return
        taken = [model.name for model in project_of(book, key.project).models]
        model = models.bare_model(fresh_name(self.tr("model"), taken), translate=words.given_name)
        new = Key(NodeKind.MODEL, key.project, model.name)
        self._do(lambda b: models.add_model(b, key.project, model), new, edit_name=True)

    def _add_part(self) -> None:
        key, book = self._view.tree.current(), self._view.book
        if key is None or book is None or not key.model:
            return
        part = new_part(model_of(book, key.home))
        new = Key(NodeKind.PART, key.project, key.model, part=part.name)
        self._do(lambda b: parts.add_part(b, key.home, part), new, edit_name=True)

    def _add_place(self) -> None:
        key, book = self._view.tree.current(), self._view.book
        if key is None or book is None or not key.part:
            return
        place = new_place(part_of(model_of(book, key.home), key.part))
        new = Key(NodeKind.PLACE, key.project, key.model, part=key.part, place=place.name)
        self._do(lambda b: parts.add_place(b, key.home, key.part, place), new, edit_name=True)

    def _add_project(self) -> None:
        book = self._view.book
        if book is None:
            return
        name = fresh_name(self.tr("On the table"), [project.name for project in book.projects])
        model = models.bare_model(self.tr("model"), translate=words.given_name)
        new = Key(NodeKind.PROJECT, name)
        self._do(lambda b: models.add_project(b, name, [model]), new, edit_name=True)

    # -- moving and copying -----------------------------------------------------------------

    def _shift(self, down: bool) -> None:
        keys = self._view.tree.chosen_keys()
        if not keys or keys[0].kind not in (NodeKind.STEP, NodeKind.MODEL):
            return
        first = keys[0]
        if first.kind is NodeKind.STEP:
            ids = [key.step for key in keys]
            self._do(lambda b: order.shift_steps(b, first.home, ids, down), *keys)
            return
        wanted = [key.model for key in keys]

        def make(book: Book) -> Edit:
            there = [model.name for model in project_of(book, first.project).models]
            places = [there.index(name) for name in wanted]
            to = min(places[-1] + 2, len(there)) if down else max(places[0] - 1, 0)
            return order.move_models(book, first.project, wanted, to)

        self._do(make, *keys)

    def drop(self, keys: list[Key], target: Key, row: int) -> None:
        """Move what was dropped, or copy steps that came from another model."""
        first = keys[0]
        if first.kind is NodeKind.MODEL:
            wanted = [key.model for key in keys if key.project == target.project]
            to = row if row >= 0 else len(wanted)
            self._do(lambda b: order.move_models(b, target.project, wanted, to), *keys)
        elif first.home == target.home:
            ids = [key.step for key in keys]

            def make(book: Book) -> Edit:
                count = len(model_of(book, target.home).steps)
                to = max(row - 1, 0) if row >= 0 else count  # the parts' line stands first
                return order.move_steps(book, target.home, ids, to)

            self._do(make, *keys)
        else:
            self._put(steps.Copied(first.home, tuple(key.step for key in keys)), [target.home])

    def _copy(self) -> None:
        keys = self._view.tree.steps()
        if keys:
            self._copied = steps.Copied(keys[0].home, tuple(key.step for key in keys))
            self.show_chosen()

    def _paste(self) -> None:
        homes = [key.home for key in self._view.tree.chosen_keys() if key.model]
        if self._copied is not None and homes:
            self._put(self._copied, list(dict.fromkeys(homes)))

    def _put(self, copied: steps.Copied, targets: list[ModelKey]) -> None:
        self._do(lambda b: steps.copy_steps(b, copied, targets))

    def _list_targets(self) -> None:
        self.targets.clear()
        keys, book = self._view.tree.steps(), self._view.book
        if not keys or book is None:
            return
        copied = steps.Copied(keys[0].home, tuple(key.step for key in keys))
        every = [
            ModelKey(project.name, model.name)
            for project in book.projects
            for model in project.models
            if (project.name, model.name) != (keys[0].project, keys[0].model)
        ]
        beside = [at for at in every if at.project == keys[0].project]
        if len(beside) > 1:
            whole = self.targets.addAction(self.tr("All others of the project"))
            whole.triggered.connect(partial(self._put, copied, beside))
            self.targets.addSeparator()
        for at in every:
            action = self.targets.addAction(at.model.replace("&", "&&"))
            action.triggered.connect(partial(self._put, copied, [at]))

    def _again(self) -> None:
        key, book = self._view.tree.current(), self._view.book
        if key is None or book is None or not key.model:
            return
        taken = [model.name for model in project_of(book, key.project).models]
        dialog = AgainDialog(key.model, taken, self._parent)

        def take() -> None:
            names_ = dialog.names()
            new = [Key(NodeKind.MODEL, key.project, name) for name in names_]
            alone = len(names_) == 1
            self._do(lambda b: models.same_again(b, key.home, names_), *new, edit_name=alone)

        dialog.accepted.connect(take)
        dialog.open()

    # -- changing and taking away -----------------------------------------------------------

    def _split(self) -> None:
        keys, book = self._view.tree.steps(), self._view.book
        if len(keys) != 1 or book is None:
            return
        spot = keys[0].spot
        dialog = SplitDialog(book, spot, self._parent)
        dialog.accepted.connect(
            lambda: self._do(lambda b: steps.split_places(b, spot, dialog.places()), keys[0])
        )
        dialog.open()

    def _rename(self) -> None:
        self._view.tree.edit(self._view.tree.currentIndex())

    def rename_to(self, key: Key, name: str) -> None:
        """Give a line another name."""
        project, model = key.project, key.model
        if key.kind is NodeKind.PROJECT:
            self._do(lambda b: names.rename_project(b, project, name), Key(NodeKind.PROJECT, name))
        elif key.kind is NodeKind.MODEL:
            new = Key(NodeKind.MODEL, project, name)
            self._do(lambda b: names.rename_model(b, key.home, name), new)
        elif key.kind is NodeKind.PART:
            new = Key(NodeKind.PART, project, model, part=name)
            self._do(lambda b: names.rename_part(b, key.home, key.part, name), new)
        elif key.kind is NodeKind.PLACE:
            new = Key(NodeKind.PLACE, project, model, part=key.part, place=name)
            self._do(lambda b: names.rename_place(b, key.home, key.part, key.place, name), new)
        elif key.kind is NodeKind.STEP:
            self._do(lambda b: steps.set_title(b, key.spot, name), key)

    def _remove(self) -> None:
        keys = self._view.tree.chosen_keys()
        kinds = {key.kind for key in keys}
        if len(kinds) != 1:
            self._view.say(self.tr("Choose lines of one kind to remove."))
            return
        first = keys[0]
        if kinds == {NodeKind.STEP}:
            spots = [key.spot for key in keys]
            self._do(lambda b: steps.remove_steps(b, spots), self._beside(keys))
        elif kinds == {NodeKind.MODEL}:
            gone = [key.model for key in keys if key.project == first.project]
            self._do(lambda b: models.remove_models(b, first.project, gone))
        elif kinds == {NodeKind.PROJECT}:
            self._do(lambda b: usual.remove_project(b, first.project))
        elif kinds <= {NodeKind.PART, NodeKind.PLACE}:
            places = [
                f"{key.part}/{key.place}" if key.place else key.part
                for key in keys
                if key.home == first.home
            ]
            self._do(lambda b: parts.remove_places(b, first.home, places))

    def _beside(self, keys: list[Key]) -> Key:
        """Return the step that has the keys once the chosen ones are gone."""
        book, last = self._view.book, keys[-1]
        assert book is not None
        gone = {key.step for key in keys}
        every = list(model_of(book, last.home).steps)
        at = [step.id for step in every].index(last.step)
        near: list[Step] = [*every[at:], *reversed(every[:at])]
        left = next((step.id for step in near if step.id not in gone), None)
        if left is None:
            return Key(NodeKind.MODEL, last.project, last.model)
        return Key(NodeKind.STEP, last.project, last.model, step=left)

    def _do(self, make: Make, *chosen: Key, edit_name: bool = False) -> None:
        self._view.do(make, *chosen, edit_name=edit_name)

    def _act(
        self,
        name: str,
        act: Callable[[], object],
        keys: str | QKeySequence.StandardKey | None = None,
    ) -> QAction:
        action = QAction(name, self)
        if keys is not None:
            action.setShortcut(QKeySequence(keys))
            action.setShortcutContext(Qt.ShortcutContext.WidgetShortcut)
            plain = action.shortcut().toString(QKeySequence.SequenceFormat.NativeText)
            action.setToolTip(f"{name} ({plain})")
        action.triggered.connect(lambda _on=False: act())
        return action
