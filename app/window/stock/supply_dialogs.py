"""Mixes, consumables, leftovers and sample cards, and what was counted or bought."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from datetime import datetime

from PySide6.QtCore import QDateTime
from PySide6.QtWidgets import QCheckBox, QWidget

from app.service import stock
from app.service.edits import Edit
from app.window import words
from app.window.flow_layout import FlowLayout
from app.window.forms.controls import Maybe
from app.window.forms.form import FormDialog, keep
from app.window.forms.mix_portions import PortionsEditor
from app.window.forms.moment_fields import MomentField
from app.window.forms.value_form import ValueDialog, text_line, text_lines
from app.window.glossary import stage_meaning
from app.window.labels import text
from app.window.session import Session
from app.window.stock.coating_dialog import SwatchField
from app.window.stock.photo_field import PhotoField
from planner.quantity import consumables_now
from planner.values.book import Book
from planner.values.mix import Mix, Portion
from planner.values.moment import moment_of
from planner.values.refusal import Refused
from planner.values.step import Stage
from planner.values.supplies import Card, Consumable, Drops, Leftover

GREY = "#808080"
SOME = (Portion(coating="–", parts=1),)  # what a new mix begins as is asked for at once


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


class MixDialog(ValueDialog[Mix]):
    """Asks for all of a mix."""

    def __init__(self, session: Session, old: Mix | None, parent: QWidget) -> None:
        super().__init__(
            session,
            words.tr("Mix") if old else words.tr("Another mix"),
            old or Mix(name=self.tr("new mix"), portions=SOME),
            lambda book, new: stock.put_mix(book, old.name if old else "", new),
            parent,
        )
        self.portions = PortionsEditor(_names(session), _amounts(old))
        swatch = SwatchField(old.swatch if old and old.swatch else GREY)
        coloured = Maybe(swatch, bool(old and old.swatch), self.tr("its own"))
        form = self.page("")
        self.ask(form, "name")
        self.own(form, "portions", self.portions, lambda: _portions(self.portions))
        self.ask(form, "life_minutes")
        self.own(form, "swatch", coloured, lambda: swatch.swatch() if coloured.on else None)
        self.fit(460)


class ConsumableDialog(ValueDialog[Consumable]):
    """Asks for all of a consumable."""

    def __init__(self, session: Session, old: Consumable | None, parent: QWidget) -> None:
        consumable = old or Consumable(name=self.tr("new consumable"), unit=self.tr("pieces"))
        super().__init__(
            session,
            words.tr("Consumable") if old else words.tr("Another consumable"),
            consumable,
            lambda book, new: stock.put_consumable(book, old.name if old else "", new),
            parent,
        )
        self._old, self._left = old, _left(session, consumable)
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
        unit, read_unit = text_line(consumable.unit, 110)
        self.ask(form, "name")
        self.own(form, "unit", unit, read_unit)
        self.ask(form, "in_stock", about=replace(consumable, in_stock=self._left))
        self.ask(form, "per_pass", step=0.5)
        self.own(form, "stages", holder, self._chosen)
        self.fit(460, 600)

    def _chosen(self) -> tuple[Stage, ...]:
        return tuple(stage for stage, box in self.stages.items() if box.isChecked())

    def value(self) -> Consumable:
        """Return what was filled in; what is left counts from now on if it is another figure."""
        made = super().value()
        if self._old is not None and made.in_stock == self._left:
            return replace(made, in_stock=self._old.in_stock)
        return replace(made, counted=_now(self._session))


class LeftoverDialog(ValueDialog[Leftover]):
    """Asks for all of a leftover mix; a new one may be ``of`` a mix of the book."""

    def __init__(
        self, session: Session, old: Leftover | None, parent: QWidget, of: Mix | None = None
    ) -> None:
        name = of.name if of else self.tr("jar 1")
        now = _now(session)
        super().__init__(
            session,
            words.tr("Leftover mix") if old else words.tr("Another leftover mix"),
            old or Leftover(name=name, ml=5, made=now, keeps_days=30, portions=SOME),
            lambda book, new: stock.put_leftover(book, old.name if old else "", new),
            parent,
        )
        made = self._first.made.astimezone(session.zone)
        self.made = MomentField()
        self.made.setDateTime(QDateTime.fromString(f"{made:%Y-%m-%dT%H:%M}", "yyyy-MM-ddTHH:mm"))
        self._shown = self.made.dateTime()
        self.portions = PortionsEditor(_names(session), _amounts(old or of))
        form = self.page("")
        self.ask(form, "name")
        self.ask(form, "ml")
        self.own(form, "made", self.made, self._made)
        self.ask(form, "keeps_days")
        self.own(form, "portions", self.portions, lambda: _portions(self.portions))
        self.fit(460)

    def _made(self) -> datetime:
        if self.made.dateTime() == self._shown:
            return self._first.made
        read: datetime = self.made.dateTime().toPython()  # type: ignore[assignment]
        return read.replace(tzinfo=self._session.zone, second=0, microsecond=0)


class CardDialog(ValueDialog[Card]):
    """Asks for all of a sample card."""

    def __init__(self, session: Session, old: Card | None, parent: QWidget) -> None:
        blank = (Drops(coating="–", drops=1),)  # asked for at once
        super().__init__(
            session,
            words.tr("Sample card") if old else words.tr("Another sample card"),
            old or Card(name=self.tr("card 1"), on=_now(session).date(), drops=blank),
            lambda book, new: stock.put_card(book, old.name if old else "", new),
            parent,
        )
        amounts = [(drop.coating, float(drop.drops)) for drop in old.drops] if old else []
        self.drops = PortionsEditor(_names(session), amounts, whole=True)
        note, read_note = text_lines(self._first.note)
        self.photo = PhotoField(session.path, self._first.photo)
        form = self.page("")
        self.ask(form, "name")
        self.ask(form, "on")
        self.own(form, "drops", self.drops, self._drops)
        self.own(form, "note", note, read_note)
        self.own(form, "photo", self.photo, lambda: self.photo.photo)
        self.fit(460, 600)

    def _drops(self) -> tuple[Drops, ...]:
        return tuple(
            Drops(coating=name, drops=round(count)) for name, count in self.drops.amounts()
        )


def _amounts(mixed: Mix | Leftover | None) -> list[tuple[str, float]]:
    return [(portion.coating, portion.parts) for portion in mixed.portions] if mixed else []


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
