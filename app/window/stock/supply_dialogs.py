"""Mixes, consumables, leftovers and sample cards, and what was counted or bought."""

from __future__ import annotations

from collections.abc import Callable
from datetime import datetime

from PySide6.QtCore import QDateTime
from PySide6.QtWidgets import QCheckBox, QPlainTextEdit, QWidget

from app.service import stock
from app.service.edits import Edit
from app.window import words
from app.window.flow_layout import FlowLayout
from app.window.forms.controls import (
    Maybe,
    date_edit,
    day_of,
    line,
    number,
    set_day,
    whole,
)
from app.window.forms.form import FormDialog, keep
from app.window.forms.mix_portions import PortionsEditor
from app.window.forms.moment_fields import MomentField
from app.window.glossary import stage_meaning
from app.window.labels import text
from app.window.session import Session
from app.window.stock.coating_dialog import SwatchField
from app.window.stock.photo_field import PhotoField
from planner.quantity import consumables_now
from planner.values.book import Book
from planner.values.coating import Mix, Portion
from planner.values.moment import moment_of
from planner.values.refusal import Refused
from planner.values.step import Stage
from planner.values.supplies import Card, Consumable, Drops, Leftover

GREY = "#808080"


def _names(session: Session) -> tuple[str, ...]:
    book = session.book
    return tuple(coating.name for coating in book.coatings) if book else ()


class AmountDialog(FormDialog):
    """Asks for one number: what was counted, or how much was bought."""

    def __init__(
        self,
        session: Session,
        title: str,
        label: str,
        about: str,
        box: QWidget,
        make: Callable[[Book], Edit],
        parent: QWidget,
    ) -> None:
        super().__init__(title, parent, lambda: keep(session, make))
        form = self.page("")
        form.put(text(about))
        form.add("amount", label, box)
        box.setFocus()
        self.fit(340)

    def say(self, refused: Refused) -> None:
        """Show any refusal beside the one field."""
        super().say(Refused("amount", refused.mend))


class MixDialog(FormDialog):
    """Asks for all of a mix."""

    def __init__(self, session: Session, old: Mix | None, parent: QWidget) -> None:
        super().__init__(words.tr("Mix") if old else words.tr("Another mix"), parent, self._try)
        self._session, self._old = session, old
        self.name = line(old.name if old else self.tr("new mix"))
        amounts = [(portion.coating, portion.parts) for portion in old.portions] if old else []
        self.portions = PortionsEditor(_names(session), amounts)
        self.life = whole(old.life_minutes if old else 240, 0, 99_999, self.tr(" min"))
        self.swatch = SwatchField(old.swatch if old and old.swatch else GREY)
        self.coloured = Maybe(self.swatch, bool(old and old.swatch), self.tr("its own"))
        form = self.page("")
        form.add("name", self.tr("&Name"), self.name)
        form.add(
            "portions",
            self.tr("&Parts by volume"),
            self.portions,
            self.tr("What forms the film first; thinners and the rest after it"),
        )
        form.add("life_minutes", self.tr("&Can be used for"), self.life)
        form.add("swatch", self.tr("Co&lour"), self.coloured, self.tr("Else that of the first"))
        self.fit(460)

    def mix(self) -> Mix:
        """Return what was filled in; `Refused` if it is not sound."""
        return Mix(
            name=self.name.text().strip(),
            portions=_portions(self.portions),
            life_minutes=self.life.value(),
            swatch=self.swatch.swatch() if self.coloured.on else None,
        )

    def _try(self) -> Refused | None:
        was = self._old.name if self._old else ""
        return keep(self._session, lambda book: stock.put_mix(book, was, self.mix()))


class ConsumableDialog(FormDialog):
    """Asks for all of a consumable."""

    def __init__(self, session: Session, old: Consumable | None, parent: QWidget) -> None:
        title = words.tr("Consumable") if old else words.tr("Another consumable")
        super().__init__(title, parent, self._try)
        self._session, self._old = session, old
        tr = self.tr
        consumable = old or Consumable(name=tr("new consumable"), unit=tr("pieces"))
        self._left = _left(session, consumable)
        self.name, self.unit = line(consumable.name), line(consumable.unit, 110)
        self.left = number(self._left, 0, 1e7, decimals=1)
        self.per_pass = number(consumable.per_pass, 0, 1e5, decimals=2, step=0.5)
        self.stages: dict[Stage, QCheckBox] = {}
        holder = QWidget()
        flow = FlowLayout(holder, across=10, down=2)
        for stage in Stage:
            box = QCheckBox(words.stage_word(stage))
            box.setToolTip(stage_meaning(stage))
            box.setChecked(stage in consumable.stages)
            self.stages[stage] = box
            flow.addWidget(box)
        form = self.page("")
        form.add("name", tr("&Name"), self.name)
        form.add("unit", tr("Counted &in"), self.unit)
        form.add("in_stock", tr("&Left now"), self.left)
        form.add("per_pass", tr("Used &up by one coat or piece of work"), self.per_pass)
        form.add("stages", tr("&At these stages"), holder)
        self.fit(460, 600)

    def consumable(self) -> Consumable:
        """Return what was filled in; `Refused` if it is not sound."""
        left = round(self.left.value(), 1)
        same = self._old is not None and left == self._left
        return Consumable(
            name=self.name.text().strip(),
            unit=self.unit.text().strip(),
            in_stock=self._old.in_stock if same and self._old else left,
            per_pass=round(self.per_pass.value(), 2),
            stages=tuple(stage for stage, box in self.stages.items() if box.isChecked()),
            counted=self._old.counted if same and self._old else _now(self._session),
        )

    def _try(self) -> Refused | None:
        was = self._old.name if self._old else ""
        return keep(self._session, lambda book: stock.put_consumable(book, was, self.consumable()))


class LeftoverDialog(FormDialog):
    """Asks for all of a leftover mix; a new one may be ``of`` a mix of the book."""

    def __init__(
        self, session: Session, old: Leftover | None, parent: QWidget, of: Mix | None = None
    ) -> None:
        title = words.tr("Leftover mix") if old else words.tr("Another leftover mix")
        super().__init__(title, parent, self._try)
        self._session, self._old = session, old
        tr = self.tr
        mixed = old or of
        amounts = [(portion.coating, portion.parts) for portion in mixed.portions] if mixed else []
        made = old.made.astimezone(session.zone) if old else _now(session)
        self.name = line(mixed.name if mixed else tr("jar 1"))
        self.amount = number(old.ml if old else 5, 0, 99_999, decimals=1, suffix=tr(" ml"))
        self.made = MomentField()
        self.made.setDateTime(QDateTime.fromString(f"{made:%Y-%m-%dT%H:%M}", "yyyy-MM-ddTHH:mm"))
        self._shown = self.made.dateTime()
        self.keeps = whole(old.keeps_days if old else 30, 0, 99_999, tr(" days"))
        self.portions = PortionsEditor(_names(session), amounts)
        form = self.page("")
        form.add("name", tr("&Name"), self.name)
        form.add("ml", tr("&How much"), self.amount)
        form.add("made", tr("&Mixed on"), self.made)
        form.add("keeps_days", tr("Keeps &for"), self.keeps)
        form.add("portions", tr("&Parts by volume"), self.portions)
        self.fit(460)

    def leftover(self) -> Leftover:
        """Return what was filled in; `Refused` if it is not sound."""
        read: datetime = self.made.dateTime().toPython()  # type: ignore[assignment]
        made = read.replace(tzinfo=self._session.zone, second=0, microsecond=0)
        if self._old is not None and self.made.dateTime() == self._shown:
            made = self._old.made
        return Leftover(
            name=self.name.text().strip(),
            ml=round(self.amount.value(), 1),
            made=made,
            keeps_days=self.keeps.value(),
            portions=_portions(self.portions),
        )

    def _try(self) -> Refused | None:
        was = self._old.name if self._old else ""
        return keep(self._session, lambda book: stock.put_leftover(book, was, self.leftover()))


class CardDialog(FormDialog):
    """Asks for all of a sample card."""

    def __init__(self, session: Session, old: Card | None, parent: QWidget) -> None:
        title = words.tr("Sample card") if old else words.tr("Another sample card")
        super().__init__(title, parent, self._try)
        self._session, self._old = session, old
        tr = self.tr
        self.name = line(old.name if old else tr("card 1"))
        self.on = date_edit()
        set_day(self.on, old.on if old else _now(session).date())
        drops = [(drop.coating, float(drop.drops)) for drop in old.drops] if old else []
        self.drops = PortionsEditor(_names(session), drops, whole=True)
        self.note = QPlainTextEdit(old.note if old else "")
        self.note.setTabChangesFocus(True)
        self.note.setFixedHeight(70)
        self.photo = PhotoField(session.path, old.photo if old else "")
        form = self.page("")
        form.add("name", tr("&Name"), self.name)
        form.add("on", tr("&Painted on"), self.on)
        form.add("drops", tr("&Drop by drop"), self.drops)
        form.add("note", tr("N&ote"), self.note)
        form.add("photo", tr("P&hoto"), self.photo)
        self.fit(460, 600)

    def card(self) -> Card:
        """Return what was filled in; `Refused` if it is not sound."""
        return Card(
            name=self.name.text().strip(),
            on=day_of(self.on),
            drops=tuple(
                Drops(coating=name, drops=round(count)) for name, count in self.drops.amounts()
            ),
            note=self.note.toPlainText().strip(),
            photo=self.photo.photo,
        )

    def _try(self) -> Refused | None:
        was = self._old.name if self._old else ""
        return keep(self._session, lambda book: stock.put_card(book, was, self.card()))


def _portions(editor: PortionsEditor) -> tuple[Portion, ...]:
    try:
        return tuple(Portion(coating=name, parts=parts) for name, parts in editor.amounts())
    except Refused as problem:
        raise problem.under("portions") from None


def _left(session: Session, consumable: Consumable) -> float:
    book = session.book
    found = {each.consumable.name: each.left for each in consumables_now(book)} if book else {}
    return round(found.get(consumable.name, 0.0), 1)


def _now(session: Session) -> datetime:
    return moment_of(session.now, session.zone)
