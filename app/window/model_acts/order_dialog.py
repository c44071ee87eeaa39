"""Changing the order of some models by name."""

from __future__ import annotations

from collections.abc import Iterable

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QDialogButtonBox, QListWidget, QListWidgetItem, QVBoxLayout, QWidget

from app.service.order_changes import Possible, change_orders, possible
from app.window import words
from app.window.chosen_rows import mark_chosen_rows
from app.window.forms.form import FormDialog, keep
from app.window.model_acts.effect_label import EffectLabel
from app.window.model_acts.model_list import chosen_keys, every_key, model_checks
from app.window.session import Session
from planner.values.keys import ModelKey
from planner.values.refusal import Refused

VALUE = Qt.ItemDataRole.UserRole


class ChangeList(QListWidget):
    """A list in which a letter goes to the next line that begins with it."""

    def __init__(self) -> None:
        super().__init__()
        mark_chosen_rows(self)

    def keyboardSearch(self, search: str) -> None:
        """Go on from the line that has the keys, after the last one to the first."""
        count, letter = self.count(), search[-1:].casefold()
        for ahead in range(1, count + 1):
            row = (self.currentRow() + ahead) % count
            if letter and self.item(row).text().casefold().startswith(letter):
                self.setCurrentRow(row)
                return


class OrderDialog(FormDialog):
    """A list of changes, the models that they go to, and what comes of them.

    Ticked are the models that were chosen before.  Where none was, none is, and the
    button says that the change would go to all of them.
    """

    def __init__(self, session: Session, parent: QWidget, chosen: Iterable[ModelKey] = ()) -> None:
        super().__init__(words.tr("Change the order"), parent, self._try)
        self._session = session
        self.changes = ChangeList()
        self.models = model_checks(session.book, chosen)
        self.effect = EffectLabel(session)
        form = self.page(self.tr("Change"))
        form.add("change", self.tr("&Change"), self.changes)
        form.add("models", self.tr("&Models"), self.models)
        column = self.layout()
        assert isinstance(column, QVBoxLayout)
        column.insertWidget(1, self.effect)
        self.apply = self.buttons.button(QDialogButtonBox.StandardButton.Save)
        self.apply.setDefault(True)
        self._fill()
        self.models.ticked.connect(self._fill)
        self.changes.currentRowChanged.connect(lambda _row: self._tell())
        self.changes.itemActivated.connect(lambda _item: self._keep())
        self.finished.connect(lambda _result: self.effect.stop())
        self.fit(480, 640)
        self.changes.setFocus()
        self._tell()

    def chosen(self) -> Possible | None:
        """Return the change on which the keys are."""
        item = self.changes.currentItem()
        found = item.data(VALUE) if item is not None else None
        return found if isinstance(found, Possible) else None

    def _fill(self) -> None:
        """List what the ticked models can be given; the keys stay where they are."""
        book = self._session.book
        before = self.chosen()
        ticked = chosen_keys(self.models)
        keys = ticked or every_key(self.models)
        found = possible(book, keys) if book is not None and keys else ()
        self.changes.clear()
        for one in found:
            item = QListWidgetItem(self._named(one, len(keys)))
            item.setData(VALUE, one)
            self.changes.addItem(item)
            if before is not None and (one.change, one.out) == (before.change, before.out):
                self.changes.setCurrentItem(item)
        if self.changes.count() and self.changes.currentRow() < 0:
            self.changes.setCurrentRow(0)
        form = self.tr("&Apply to {n}") if ticked else self.tr("&Apply to all {n}")
        self.apply.setText(form.format(n=len(keys)))
        line = self.changes.fontMetrics().height() + 6
        self.changes.setMinimumHeight(line * 9)

    def _named(self, one: Possible, models: int) -> str:
        word = words.change_word(one.change.value)
        if one.out:
            word = self.tr("take out again: {change}").format(change=word)
        if len(one.models) == models:
            return word
        return self.tr("{change} ({n} of {all})").format(change=word, n=len(one.models), all=models)

    def _tell(self) -> None:
        one = self.chosen()
        if one is None:
            self.effect.ask(None, self.tr("No model is chosen whose order could be changed."))
            return
        self.effect.ask(
            lambda book: change_orders(
                book, one.models, one.change, out=one.out, translate=words.given_name
            )
        )

    def _try(self) -> Refused | None:
        one = self.chosen()
        if one is None:
            return Refused("models", self.tr("choose at least one model"))
        return keep(
            self._session,
            lambda book: change_orders(
                book, one.models, one.change, out=one.out, translate=words.given_name
            ),
        )
