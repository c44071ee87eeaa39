"""A place where films dry: its name, how much fits there, its air."""

from __future__ import annotations

from dataclasses import replace

from PySide6.QtCore import QCoreApplication
from PySide6.QtWidgets import QCheckBox, QWidget

from app.service import room_edits
from app.service.warm_box import HOTTEST_C, WARM_BOX
from app.window import words
from app.window.forms.controls import choice, line, whole
from app.window.forms.form import FormDialog, keep
from app.window.gear.points import PointsEditor
from app.window.labels import text
from app.window.palette import Colours
from app.window.session import Session
from planner.values.refusal import Refused
from planner.values.room import Location, Movement


class LocationDialog(FormDialog):
    """Asks for all of a location; ``old`` is changed, or one is added."""

    def __init__(
        self, session: Session, old: Location | None, colours: Colours, parent: QWidget
    ) -> None:
        title = words.tr("Where films dry") if old else words.tr("Another place where films dry")
        super().__init__(title, parent, self._try)
        self._session, self._old = session, old
        one = old or replace(WARM_BOX, name=self.tr("warm box"))
        self.name = line(one.name)
        self.places = whole(one.drying_places, 0, 99_999)
        self.movement = choice(
            [(QCoreApplication.translate("movement", each.value), each.value) for each in Movement],
            one.movement.value,
        )
        self.workdays = PointsEditor(one.workdays, colours)
        self.weekends = PointsEditor(one.weekends or one.workdays, colours)
        self.same = QCheckBox(self.tr("Weekends as &workdays"))
        self.same.setChecked(not one.weekends)
        form = self.page(self.tr("Place"))
        form.add("name", self.tr("&Name"), self.name)
        self.outside = QCheckBox(self.tr("&Out of doors: spray cans are used in this air"))
        self.outside.setChecked(one.outdoors)
        form.add(
            "drying_places",
            self.tr("&Drying places"),
            self.places,
            self.tr("How many parts may dry there at once; a part says how many it takes"),
        )
        form.put(self.outside)
        form.add(
            "movement",
            self.tr("&Moving air"),
            self.movement,
            self.tr("A fan carries water and fast solvents off; it hardens nothing"),
        )
        form = self.page(self.tr("Air on workdays"))
        form.add("workdays", self.tr("&Points of the day"), self.workdays)
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
        form.add("weekends", self.tr("&Points of the day"), self.weekends)
        self.same.toggled.connect(self._same)
        self._same(self.same.isChecked())
        self.fit(440, 520)

    def _same(self, same: bool) -> None:
        if same:
            self.weekends.show_points(self.workdays.points())
        self.weekends.setEnabled(not same)

    def location(self) -> Location:
        """Return what was filled in; `Refused` if it is not sound."""
        return Location(
            name=self.name.text().strip(),
            drying_places=self.places.value(),
            workdays=self.workdays.points(),
            outdoors=self.outside.isChecked(),
            weekends=() if self.same.isChecked() else self.weekends.points(),
            movement=Movement(self.movement.currentData()),
        )

    def _try(self) -> Refused | None:
        was = self._old.name if self._old else ""
        return keep(self._session, lambda book: room_edits.put_location(book, was, self.location()))
