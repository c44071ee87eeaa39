"""An airbrush: the minutes that its loads cost, and what stays in the cup."""

from __future__ import annotations

from PySide6.QtWidgets import QWidget

from app.service import gear_edits
from app.window import words
from app.window.forms.controls import Maybe, line, number, whole
from app.window.forms.form import FormDialog, keep
from app.window.session import Session
from planner.quantity import transfer_efficiency
from planner.values.gear import USUAL_CUP_ML, Airbrush
from planner.values.refusal import Refused
from planner.values.step import Application, Minutes, Stage, Step, Tool

SPRAYED = Step(
    id="any",
    stage=Stage.BASE,
    applications=(Application(places=("any",), coating="any"),),
    tool=Tool.AIRBRUSH,
    minutes=Minutes(fixed=1),
)


class AirbrushDialog(FormDialog):
    """Asks for all of an airbrush; ``old`` is changed, or one is added."""

    def __init__(self, session: Session, old: Airbrush | None, parent: QWidget) -> None:
        title = words.tr("Airbrush") if old else words.tr("Another airbrush")
        super().__init__(title, parent, self._try)
        self._session, self._old = session, old
        airbrush = old or Airbrush(name=self.tr("new airbrush"))
        minutes = self.tr(" min")
        self.name = line(airbrush.name)
        self.load = whole(airbrush.load_minutes, 0, 999, minutes)
        self.same = whole(airbrush.change_same_family, 0, 999, minutes)
        self.other = whole(airbrush.change_other_family, 0, 999, minutes)
        self.clean = whole(airbrush.clean_minutes, 0, 999, minutes)
        self.idle = whole(airbrush.idle_limit_minutes, 0, 9999, minutes)
        self.fill = number(
            airbrush.least_fill_ml, 0, 999, decimals=1, suffix=self.tr(" ml"), step=0.1
        )
        self.most = number(airbrush.cup_ml, 0, 9999, decimals=1, suffix=self.tr(" ml"), step=0.5)
        self.known_cup = Maybe(self.most, airbrush.most_fill_ml is not None, self.tr("known"))
        self.lost = number(airbrush.lost_ml, 0, 999, decimals=1, suffix=self.tr(" ml"), step=0.1)
        usual = transfer_efficiency(SPRAYED).fraction
        share = airbrush.transfer if airbrush.transfer is not None else usual
        self.stays = number(share * 100, 0, 100, decimals=0, suffix=self.tr(" %"))
        self.measured = Maybe(
            self.stays, airbrush.transfer is not None, self.tr("known, not the usual")
        )
        self._fill_pages(usual)
        self.fit(420)

    def _fill_pages(self, usual: float) -> None:
        tr = self.tr
        form = self.page(tr("Minutes"))
        form.add("name", tr("&Name"), self.name)
        form.add("load_minutes", tr("&Load a clean cup"), self.load)
        form.add("change_same_family", tr("Change to the &same family"), self.same)
        form.add("change_other_family", tr("Change to &another family"), self.other)
        form.add("clean_minutes", tr("&Clean before it is put away"), self.clean)
        form.add(
            "idle_limit_minutes",
            tr("A load may stand &idle"),
            self.idle,
            tr("Longest time between two strokes before the paint dries in the nozzle"),
        )
        form = self.page(tr("Millilitres"))
        form.add("least_fill_ml", tr("Least &fill of the cup"), self.fill)
        form.add(
            "most_fill_ml",
            tr("&Most that the cup takes"),
            self.known_cup,
            tr("What asks for more is told as so many fills; usual are {usual:g} ml").format(
                usual=USUAL_CUP_ML
            ),
        )
        form.add("lost_ml", tr("Lost at each change and &cleaning"), self.lost)
        form.add(
            "transfer",
            tr("&Stays on the model"),
            self.measured,
            tr("The rest is overspray; usual are {usual:.0f} %, assumed").format(usual=usual * 100),
        )

    def airbrush(self) -> Airbrush:
        """Return what was filled in; `Refused` if it is not sound."""
        return Airbrush(
            name=self.name.text().strip(),
            load_minutes=self.load.value(),
            change_same_family=self.same.value(),
            change_other_family=self.other.value(),
            clean_minutes=self.clean.value(),
            idle_limit_minutes=self.idle.value(),
            least_fill_ml=round(self.fill.value(), 1),
            most_fill_ml=round(self.most.value(), 1) if self.known_cup.on else None,
            lost_ml=round(self.lost.value(), 1),
            transfer=round(self.stays.value() / 100, 4) if self.measured.on else None,
        )

    def _try(self) -> Refused | None:
        was = self._old.name if self._old else ""
        return keep(self._session, lambda book: gear_edits.put_airbrush(book, was, self.airbrush()))
