"""A coating: what is in the bottle, how it dries, what its label asks."""

from __future__ import annotations

from dataclasses import replace

from PySide6.QtGui import QColor
from PySide6.QtWidgets import QColorDialog, QHBoxLayout, QPushButton, QWidget

from app.service import stock
from app.window import words
from app.window.forms.controls import line
from app.window.forms.value_form import ValueDialog
from app.window.labels import swatch_icon, text
from app.window.session import Session
from app.window.stock.editors import TimesEditor, WindowsEditor
from planner.quantity import drops_of, stock_now
from planner.values.coating import Coating, Family
from planner.values.moment import moment_of

USUAL_LIFE, USUAL_LEAST, USUAL_MOST, USUAL_RH = 240, 10.0, 30.0, 75.0  # shown greyed
USUAL_DOUBT = 1.25  # shown greyed, too


class SwatchField(QWidget):
    """A colour as "#c8b482", with a dab of it that opens a chooser."""

    def __init__(self, swatch: str) -> None:
        super().__init__()
        self.typed = line(swatch, 110)
        self.dab = QPushButton(swatch_icon(swatch), self.tr("Choose…"))
        self.dab.setAutoDefault(False)
        self.dab.clicked.connect(self._choose)
        self.typed.textChanged.connect(self._show)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.addWidget(self.typed)
        row.addWidget(self.dab)
        row.addStretch(1)
        self.setFocusProxy(self.typed)

    def setAccessibleName(self, name: str) -> None:
        """Name the field."""
        super().setAccessibleName(name)
        self.typed.setAccessibleName(name)

    def swatch(self) -> str:
        """Return what is typed."""
        return self.typed.text().strip()

    def _show(self, typed: str) -> None:
        if QColor.isValidColorName(typed.strip()):
            self.dab.setIcon(swatch_icon(typed.strip()))

    def _choose(self) -> None:
        asked = QColorDialog(QColor(self.swatch()), self)
        asked.setOption(QColorDialog.ColorDialogOption.DontUseNativeDialog)
        asked.colorSelected.connect(lambda colour: self.typed.setText(colour.name()))
        asked.open()


class CoatingDialog(ValueDialog[Coating]):
    """Asks for all of a coating; ``old`` is changed, or one is added."""

    def __init__(self, session: Session, old: Coating | None, parent: QWidget) -> None:
        super().__init__(
            session,
            words.tr("Coating") if old else words.tr("Another coating"),
            old or Coating(name=self.tr("new coating"), family=Family.WATERBORNE_ACRYLIC),
            lambda book, new: stock.put_coating(book, old.name if old else "", new),
            parent,
        )
        coating = self._first
        self._left = self._left_now(old)
        self._bottle_page(coating)
        self._film_page()
        limited = self.tr("limited")
        form = self.page(self.tr("Label"))
        self.ask(form, "least_c", says=limited, usual=USUAL_LEAST)
        self.ask(form, "most_c", says=limited, usual=USUAL_MOST)
        self.ask(form, "most_humidity_pct", says=limited, usual=USUAL_RH)
        form = self.page(self.tr("Drying times"))
        self.times = TimesEditor(coating)
        form.put(
            text(
                self.tr(
                    "At 23 °C and 50 % RH, for the dry film of one coat. "
                    "What is not ticked goes by the family."
                )
            )
        )
        self.own(form, "times", self.times, self.times.times)
        form = self.page(self.tr("Recoat"))
        self.recoat = WindowsEditor(coating.recoat)
        self.own(form, "recoat", self.recoat, self.recoat.windows)
        self.fit(500, 560)

    def _bottle_page(self, coating: Coating) -> None:
        form = self.page(self.tr("Bottle"))
        for name in ("name", "family", "finish"):
            self.ask(form, name)
        swatch = SwatchField(coating.swatch)
        self.own(form, "swatch", swatch, swatch.swatch)
        self.ask(form, "in_stock_ml", about=replace(coating, in_stock_ml=self._left))
        self.ask(form, "bottle_ml")
        today = moment_of(self._session.now, self._session.zone).date()
        self.ask(form, "opened", says=self.tr("opened on"), usual=today)
        self.ask(form, "drops_per_ml", says=self.tr("counted"), usual=drops_of(coating))

    def _film_page(self) -> None:
        tr = self.tr
        form = self.page(tr("Film"))
        self.ask(form, "effect")
        self.ask(form, "hiding", says=tr("as its hue usually does"))
        self.ask(form, "solids")
        self.ask(form, "dry_film_um")
        self.ask(form, "pot_life_minutes", says=tr("limited"), usual=USUAL_LIFE)
        self.ask(form, "slowness", step=0.05)
        self.ask(form, "doubt", says=tr("its own"), usual=USUAL_DOUBT, step=0.05)
        self.ask(form, "steeper_kj_mol")
        self.ask(form, "retarder")

    def _left_now(self, old: Coating | None) -> float:
        book = self._session.book
        if old is None or book is None:
            return 0.0
        left = {row.coating.name: row.left_ml for row in stock_now(book)}
        return round(left.get(old.name, 0.0), 1)

    def value(self) -> Coating:
        """Return what was filled in; what is left counts from now on if it is another figure."""
        made = super().value()
        if made.in_stock_ml == self._left:
            return replace(made, in_stock_ml=self._first.in_stock_ml)
        return replace(made, counted=moment_of(self._session.now, self._session.zone))
