"""A place where films dry: its name, how much fits there, its air."""

from __future__ import annotations

from dataclasses import replace

from PySide6.QtWidgets import QCheckBox, QWidget

from app.service import room_edits
from app.service.warm_box import HOTTEST_C, WARM_BOX
from app.window import words
from app.window.forms.value_form import ValueDialog
from app.window.gear.points import PointsEditor
from app.window.labels import text
from app.window.palette import Colours
from app.window.session import Session
from planner.values.room import Location


class LocationDialog(ValueDialog[Location]):
    """Asks for all of a location; ``old`` is changed, or one is added."""

    def __init__(
        self, session: Session, old: Location | None, colours: Colours, parent: QWidget
    ) -> None:
        super().__init__(
            session,
            words.tr("Where films dry") if old else words.tr("Another place where films dry"),
            old or replace(WARM_BOX, name=self.tr("warm box")),
            lambda book, new: room_edits.put_location(book, old.name if old else "", new),
            parent,
        )
        location = self._first
        self.workdays = PointsEditor(location.workdays, colours)
        self.weekends = PointsEditor(location.weekends or location.workdays, colours)
        self.same = QCheckBox(self.tr("Weekends as &workdays"))
        self.same.setChecked(not location.weekends)
        form = self.page(self.tr("Place"))
        for name in ("name", "drying_places", "outdoors", "spraying", "movement"):
            self.ask(form, name)
        form = self.page(self.tr("Air on workdays"))
        self.own(form, "workdays", self.workdays, self.workdays.points)
        form.put(
            text(
                self.tr(
                    "Warm air bends thin plastic: no more than {most:g} °C for hard styrene, and "
                    "none for soft polymer (common practice, no source)."
                ).format(most=HOTTEST_C),
                size=0.92,
            )
        )
        form = self.page(self.tr("Air on weekends"))
        form.put(self.same)
        self.own(
            form,
            "weekends",
            self.weekends,
            lambda: () if self.same.isChecked() else self.weekends.points(),
        )
        self.same.toggled.connect(self._same)
        self._same(self.same.isChecked())
        self.fit(440, 520)

    def _same(self, same: bool) -> None:
        if same:
            self.weekends.show_points(self.workdays.points())
        self.weekends.setEnabled(not same)
