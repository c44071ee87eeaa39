"""Changes of where films dry, and in which air."""

from __future__ import annotations

from app.service import what_if
from app.service.what_if import TriedChange
from app.window import words
from app.window.what_if.change_form import ChangeForm, refill
from app.window.what_if.work_forms import StageForm
from planner.values.book import Book
from planner.values.step import LAYS_NO_FILM, Stage


class ElsewhereForm(StageForm):
    """Films of a stage dry in another location, which may be a new warm box."""

    def __init__(self) -> None:
        super().__init__()
        self.where = self.box(self.tr("Dries in"))
        self.warm, self.damp = self.air()
        self.warm.setValue(35)
        self.damp.setValue(25)
        self.room = self.number(self.tr("Room for parts"), 1, 200, 6)
        self.where.currentIndexChanged.connect(self._ask_air)

    @property
    def title(self) -> str:
        """What the kind of change is called."""
        return self.tr("Let films dry elsewhere, as in a warm box")

    def show_book(self, book: Book, now: int) -> None:
        """Offer the locations, and a new one."""
        super().show_book(book, now)
        known = [(location.name, location.name) for location in book.room.locations]
        refill(self.where, [(self.tr("a new warm box"), ""), *known])
        self._ask_air()

    def _ask_air(self) -> None:
        for field in (self.warm, self.damp, self.room):
            self.fields.setRowVisible(field, not self.where.currentData())

    def may_be(self, stage: Stage) -> bool:
        """Offer what lays a film."""
        return stage not in LAYS_NO_FILM

    def change(self) -> TriedChange:
        """Return the change that the fields say."""
        known = self.where.currentData()
        if known:
            return what_if.Elsewhere(*self.chosen(), location=str(known))
        return what_if.Elsewhere(
            *self.chosen(),
            location=self._fresh(),
            temperature_c=self.warm.value(),
            humidity_pct=self.damp.value(),
            drying_places=self.room.value(),
        )

    def _fresh(self) -> str:
        taken = [location.name for location in self._book.room.locations] if self._book else []
        name, number = self.tr("warm box"), 1
        while name in taken:
            number += 1
            name = self.tr("warm box {number}").format(number=number)
        return name

    def name(self) -> str:
        """Return what the journal will call it."""
        where = self.where.currentText()
        if not self.where.currentData():
            where = self.tr("a warm box at {degrees}").format(
                degrees=words.degrees(self.warm.value())
            )
        return self.tr("{stage} dries in {where}: {models}").format(
            stage=words.stage_word(self.chosen()[2]),
            where=where,
            models=self.models.currentText(),
        )


class AirForm(ChangeForm):
    """Another air, the same all day."""

    def __init__(self) -> None:
        super().__init__()
        self.where = self.box(self.tr("Where"))
        self.warm, self.damp = self.air()
        self.warm.setValue(23)

    @property
    def title(self) -> str:
        """What the kind of change is called."""
        return self.tr("Another temperature")

    def show_book(self, book: Book, now: int) -> None:
        """Offer the locations."""
        refill(self.where, [(location.name, location.name) for location in book.room.locations])

    def change(self) -> TriedChange:
        """Return the change that the fields say."""
        return what_if.AirAllDay(
            str(self.where.currentData() or ""), self.warm.value(), self.damp.value()
        )

    def name(self) -> str:
        """Return what the journal will call it."""
        return self.tr("{where}: {degrees}, {humidity} % all day").format(
            where=self.where.currentText(),
            degrees=words.degrees(self.warm.value()),
            humidity=self.damp.value(),
        )
