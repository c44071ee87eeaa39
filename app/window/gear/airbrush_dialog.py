"""An airbrush: the minutes that its loads cost, and what stays in the cup."""

from __future__ import annotations

from PySide6.QtWidgets import QWidget

from app.service import gear_edits
from app.window import words
from app.window.forms.value_form import ValueDialog
from app.window.session import Session
from planner.quantity import transfer_efficiency
from planner.values.gear import USUAL_CUP_ML, Airbrush
from planner.values.step import Application, Minutes, Stage, Step, Tool

SPRAYED = Step(
    id="any",
    stage=Stage.BASE,
    applications=(Application(places=("any",), coating="any"),),
    tool=Tool.AIRBRUSH,
    minutes=Minutes(fixed=1),
)


class AirbrushDialog(ValueDialog[Airbrush]):
    """Asks for all of an airbrush; ``old`` is changed, or one is added."""

    def __init__(self, session: Session, old: Airbrush | None, parent: QWidget) -> None:
        tr = self.tr
        super().__init__(
            session,
            words.tr("Airbrush") if old else words.tr("Another airbrush"),
            old or Airbrush(name=tr("new airbrush")),
            lambda book, new: gear_edits.put_airbrush(book, old.name if old else "", new),
            parent,
        )
        form = self.page(tr("Minutes"))
        for name in (
            "name",
            "load_minutes",
            "change_same_family",
            "change_other_family",
            "clean_minutes",
            "idle_limit_minutes",
        ):
            self.ask(form, name)
        form = self.page(tr("Millilitres"))
        self.ask(form, "least_fill_ml", step=0.1)
        cup = tr("What asks for more is told as so many fills; usual are {usual:g} ml")
        self.ask(
            form,
            "most_fill_ml",
            says=tr("known"),
            usual=self._first.cup_ml,
            step=0.5,
            hint=cup.format(usual=USUAL_CUP_ML),
        )
        self.ask(form, "lost_ml", step=0.1)
        usual = transfer_efficiency(SPRAYED).fraction
        spray = tr("The rest is overspray; usual are {usual:.0f} %, assumed")
        self.ask(
            form,
            "transfer",
            says=tr("known, not the usual"),
            usual=usual,
            hint=spray.format(usual=usual * 100),
        )
        self.fit(420)
