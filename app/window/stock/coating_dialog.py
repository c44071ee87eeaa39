"""A coating: what is in the bottle, how it dries, what its label asks."""

from __future__ import annotations

from dataclasses import replace

from PySide6.QtCore import QCoreApplication
from PySide6.QtGui import QColor
from PySide6.QtWidgets import QColorDialog, QHBoxLayout, QPushButton, QWidget

from app.service import stock
from app.window import words
from app.window.forms.controls import (
    Maybe,
    choice,
    date_edit,
    day_of,
    line,
    number,
    set_day,
    whole,
)
from app.window.forms.form import FormDialog, keep
from app.window.labels import swatch_icon, text
from app.window.session import Session
from app.window.stock.editors import TimesEditor, WindowsEditor
from app.window.stock.tree import family_word
from planner.quantity import drops_of, stock_now
from planner.values.coating import Coating, Effect, Family, Finish, Hiding
from planner.values.moment import moment_of
from planner.values.refusal import Refused

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


class CoatingDialog(FormDialog):
    """Asks for all of a coating; ``old`` is changed, or one is added."""

    def __init__(self, session: Session, old: Coating | None, parent: QWidget) -> None:
        title = words.tr("Coating") if old else words.tr("Another coating")
        super().__init__(title, parent, self._try)
        self._session, self._old = session, old
        one = old or Coating(name=self.tr("new coating"), family=Family.WATERBORNE_ACRYLIC)
        self._one = one
        self._bottle_page(one)
        self._film_page(one)
        self._label_page(one)
        form = self.page(self.tr("Drying times"))
        self.times = TimesEditor(one)
        form.put(
            text(
                self.tr(
                    "At 23 °C and 50 % RH, for the dry film of one coat. "
                    "What is not ticked goes by the family."
                )
            )
        )
        form.add("times", self.tr("From the &label"), self.times)
        form = self.page(self.tr("Recoat"))
        self.recoat = WindowsEditor(one.recoat)
        form.add("recoat", self.tr("&Windows for the next coat"), self.recoat)
        self.fit(500, 560)

    def _bottle_page(self, one: Coating) -> None:
        tr = self.tr
        form = self.page(tr("Bottle"))
        self.name = line(one.name)
        self.family = choice(
            [(family_word(each.value), each.value) for each in Family], one.family.value
        )
        self.finish = choice(
            [(QCoreApplication.translate("finish", each.value), each.value) for each in Finish],
            one.finish.value,
        )
        self.swatch = SwatchField(one.swatch)
        self._left = self._left_now(one)
        self.left = number(self._left, 0, 1e7, decimals=1, suffix=tr(" ml"))
        self.bottle = number(one.bottle_ml, 0, 1e6, decimals=1, suffix=tr(" ml"))
        today = moment_of(self._session.now, self._session.zone).date()
        self.opened = date_edit()
        set_day(self.opened, one.opened or today)
        self.is_open = Maybe(self.opened, one.opened is not None, tr("opened on"))
        self.drops = number(one.drops_per_ml or drops_of(one), 0, 999, decimals=1)
        self.counted_drops = Maybe(self.drops, one.drops_per_ml is not None, tr("counted"))
        form.add("name", tr("&Name"), self.name, tr("By its kind, as “waterborne acrylic, sand”"))
        form.add("family", tr("&Family"), self.family)
        form.add("finish", tr("F&inish"), self.finish)
        form.add("swatch", tr("&Colour"), self.swatch)
        form.add("in_stock_ml", tr("&Left now"), self.left)
        form.add("bottle_ml", tr("One &bottle holds"), self.bottle)
        form.add("opened", tr("&Opened"), self.is_open)
        form.add(
            "drops_per_ml",
            tr("&Drops to a millilitre"),
            self.counted_drops,
            tr("Count the drops that fill 1 ml once; otherwise the family's usual figure holds"),
        )

    def _film_page(self, one: Coating) -> None:
        tr = self.tr
        form = self.page(tr("Film"))
        self.solids = number(one.solids * 100, 0, 100, decimals=1, suffix=tr(" %"))
        self.film = number(one.dry_film_um, 0, 9999, decimals=1, suffix=tr(" µm"))
        self.life = whole(one.pot_life_minutes or USUAL_LIFE, 0, 99_999, tr(" min"))
        self.has_life = Maybe(self.life, one.pot_life_minutes is not None, tr("limited"))
        self.slowness = number(one.slowness, 0, 9, decimals=2, suffix=tr(" ×"), step=0.05)
        self.effect = choice(
            [(QCoreApplication.translate("effect", each.value), each.value) for each in Effect],
            one.effect.value,
        )
        hides: list[tuple[str, object]] = [(tr("as its hue usually does"), "")]
        hides += [(QCoreApplication.translate("hiding", each.value), each.value) for each in Hiding]
        self.hiding = choice(hides, one.hiding.value if one.hiding else "")
        form.add(
            "effect",
            tr("&Effect"),
            self.effect,
            tr("A metallic loses its shine under matte clear, a fluorescent wants white below"),
        )
        form.add("hiding", tr("&Hides what lies below"), self.hiding)
        self.doubt = number(one.doubt or USUAL_DOUBT, 0, 9, decimals=2, suffix=tr(" ×"), step=0.05)
        self.has_doubt = Maybe(self.doubt, one.doubt is not None, tr("its own"))
        self.steeper = number(
            one.steeper_kj_mol, -99, 99, decimals=1, suffix=tr(" kJ/mol"), step=1.0
        )
        self.retarder = number(one.retarder * 100, 0, 50, decimals=1, suffix=tr(" %"))
        form.add("solids", tr("&Solids by volume"), self.solids)
        form.add("dry_film_um", tr("&Dry film of one coat"), self.film)
        form.add("pot_life_minutes", tr("&Life once mixed"), self.has_life)
        form.add(
            "slowness",
            tr("Drying &time, times as stated"),
            self.slowness,
            tr("Learned from looks at films, or set by hand; 1 is as stated"),
        )
        form.add(
            "doubt",
            tr("S&urely, times likely"),
            self.has_doubt,
            tr("How far its times may lie from the likely ones; else as its label or family"),
        )
        form.add(
            "steeper_kj_mol",
            tr("Steeper by te&mperature"),
            self.steeper,
            tr("Added to its family's slope; about 10 for a fifth more at 10 °C"),
        )
        form.add(
            "retarder",
            tr("&Retarder stirred in"),
            self.retarder,
            tr("Slow solvent that keeps it open; a tenth doubles every time (assumed)"),
        )

    def _label_page(self, one: Coating) -> None:
        tr = self.tr
        form = self.page(tr("Label"))
        least = USUAL_LEAST if one.least_c is None else one.least_c
        most = USUAL_MOST if one.most_c is None else one.most_c
        damp = USUAL_RH if one.most_humidity_pct is None else one.most_humidity_pct
        self.least = number(least, -99, 99, decimals=1, suffix=tr(" °C"))
        self.most = number(most, -99, 99, decimals=1, suffix=tr(" °C"))
        self.damp = number(damp, 0, 101, suffix=tr(" % RH"))
        limited = tr("limited")
        self.has_least = Maybe(self.least, one.least_c is not None, limited)
        self.has_most = Maybe(self.most, one.most_c is not None, limited)
        self.has_damp = Maybe(self.damp, one.most_humidity_pct is not None, limited)
        form.add("least_c", tr("Not laid &below"), self.has_least)
        form.add("most_c", tr("Not laid &above"), self.has_most)
        form.add("most_humidity_pct", tr("Not laid in air &damper than"), self.has_damp)

    def _left_now(self, one: Coating) -> float:
        book = self._session.book
        found = {each.coating.name: each.left_ml for each in stock_now(book)} if book else {}
        return round(found.get(one.name, 0.0), 1) if self._old else 0.0

    def coating(self) -> Coating:
        """Return what was filled in; `Refused` if it is not sound."""
        made = replace(
            self._one,
            name=self.name.text().strip(),
            family=Family(self.family.currentData()),
            finish=Finish(self.finish.currentData()),
            swatch=self.swatch.swatch(),
            effect=Effect(self.effect.currentData()),
            hiding=Hiding(self.hiding.currentData()) if self.hiding.currentData() else None,
            bottle_ml=_kept(self.bottle.value(), self._one.bottle_ml, 1),
            opened=day_of(self.opened) if self.is_open.on else None,
            drops_per_ml=round(self.drops.value(), 1) if self.counted_drops.on else None,
            solids=_kept(self.solids.value() / 100, self._one.solids, 3),
            dry_film_um=_kept(self.film.value(), self._one.dry_film_um, 1),
            pot_life_minutes=self.life.value() if self.has_life.on else None,
            slowness=_kept(self.slowness.value(), self._one.slowness, 2),
            doubt=round(self.doubt.value(), 2) if self.has_doubt.on else None,
            steeper_kj_mol=_kept(self.steeper.value(), self._one.steeper_kj_mol, 1),
            retarder=_kept(self.retarder.value() / 100, self._one.retarder, 3),
            least_c=round(self.least.value(), 1) if self.has_least.on else None,
            most_c=round(self.most.value(), 1) if self.has_most.on else None,
            most_humidity_pct=round(self.damp.value(), 1) if self.has_damp.on else None,
            times=self.times.times(),
            recoat=self.recoat.windows(),
        )
        left = round(self.left.value(), 1)
        if left == self._left:
            return made
        at = moment_of(self._session.now, self._session.zone)
        return replace(made, in_stock_ml=left, counted=at)

    def _try(self) -> Refused | None:
        was = self._old.name if self._old else ""
        return keep(self._session, lambda book: stock.put_coating(book, was, self.coating()))


def _kept(shown: float, old: float, decimals: int) -> float:
    """Return what a control shows; the old number where it shows only that one, rounded."""
    value = round(shown, decimals)
    return old if value == round(old, decimals) else value
