"""The Shopping view: what to buy, until when, and whether there is enough for all."""

from __future__ import annotations

from PySide6.QtCore import QSignalBlocker, QTimer
from PySide6.QtWidgets import QCheckBox, QHBoxLayout, QTabWidget, QVBoxLayout, QWidget

from app.service import shopping_edits, stock
from app.service.edits import Edit
from app.service.shopping_edits import Bought
from app.window import reasons, words
from app.window.forms.controls import number, whole
from app.window.forms.editable_list import Listing
from app.window.forms.rows import Column
from app.window.labels import MessageLabel, field_label, text
from app.window.message_translation import translated
from app.window.palette import Colours
from app.window.plan_snapshot import PlanSnapshot
from app.window.session import Session
from app.window.shopping.shopping_rows import ShopRow, current, rows_of
from app.window.stock.supply_dialogs import AmountDialog
from app.window.stock.tree import ml
from app.window.stock.view import contents
from planner.quantity import ConsumableLine, Enough, Kept, NoArea, RunsOut, Shopping, ShoppingLine
from planner.values.book import Book

SETTLE_MS = 250  # several steps of the margin within this time are one edit


class ShoppingView(QWidget):
    """What the plan takes against the stock."""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self._found: Shopping | None = None
        self.summary = text("")
        self.margin = number(10, 0, 999, suffix=self.tr(" %"), step=5)
        self.margin.setAccessibleName(self.tr("Spare margin"))
        self.margin.setToolTip(self.tr("Bought on top of what is needed; then whole bottles"))
        self.margin.setKeyboardTracking(False)
        self.everything = QCheckBox(self.tr("&All that the plan takes"))
        self.message = MessageLabel()
        self.list = self._make_list()
        self.enough = self._make_enough()
        self.touch_ups = self._make_touch_ups()
        self.missing = self._make_missing()
        self.at_hand = text("")
        self.tabs = QTabWidget()
        self.tabs.setDocumentMode(True)
        self.tabs.setUsesScrollButtons(True)
        self._lay_out()
        self.setFocusProxy(self.list)
        self._settle = QTimer(self)
        self._settle.setSingleShot(True)
        self._settle.setInterval(SETTLE_MS)
        self._settle.timeout.connect(self._set_margin)
        self.margin.valueChanged.connect(self._settle.start)
        self.everything.toggled.connect(lambda _on: self._fill())

    def _lay_out(self) -> None:
        head = QHBoxLayout()
        head.addWidget(field_label(self.tr("Spare &margin"), self.margin))
        head.addWidget(self.margin)
        head.addSpacing(12)
        head.addWidget(self.everything)
        head.addStretch(1)
        self.tabs.addTab(self.list, self.tr("To buy"))
        self.tabs.addTab(self.enough, self.tr("Enough for all?"))
        self.tabs.addTab(self.touch_ups, self.tr("Touch-ups"))
        self.tabs.addTab(self.missing, self.tr("No area"))
        column = QVBoxLayout(self)
        column.setContentsMargins(24, 14, 18, 8)
        column.setSpacing(6)
        column.addWidget(text(self.tr("Shopping"), size=1.9, bold=True))
        column.addWidget(self.summary)
        column.addLayout(head)
        column.addWidget(self.message)
        column.addWidget(self.tabs, 1)
        column.addWidget(self.at_hand)

    def _make_list(self) -> Listing[ShopRow]:
        tr = self.tr
        listing: Listing[ShopRow] = Listing(
            tr("What to buy"),
            tr("Nothing to buy."),
            (
                Column(tr("What"), lambda row: row.name, swatch=lambda row: row.swatch),
                Column(tr("Buy"), ShopRow.buy),
                Column(tr("Runs out"), self._when, tip=self._runs_out),
                Column(tr("Takes"), ShopRow.takes, True),
                Column(tr("There is"), ShopRow.there, True),
                Column(tr("Note"), ShopRow.notes),
            ),
            self._detail,
        )
        self.bought_all = listing.add_button(tr("Bought all of it"), self._buy_all)
        listing.row_button(tr("Bought"), self._buy)
        listing.row_button(tr("Bought another amount…"), self._ask, enter=True)
        return listing

    def _make_enough(self) -> Listing[Enough]:
        tr = self.tr
        return Listing(
            tr("Enough for all?"),
            tr("No colour is planned for more than one model."),
            (
                Column(tr("Colour"), lambda enough: enough.colour, swatch=self._swatch),
                Column(tr("Enough for all?"), _answer),
                Column(tr("First laid"), self._first),
                Column(tr("Lacking"), _lacking),
            ),
            lambda enough: tr("{colour}, in this order: {models}.").format(
                colour=words.capital(enough.colour),
                models=words.listed([taker.model for taker in enough.takers]),
            ),
        )

    def _make_touch_ups(self) -> Listing[Kept]:
        tr = self.tr
        return Listing(
            tr("Leftover mixes for touch-ups"),
            tr("No leftover mix is kept; Stock has a place for them."),
            (
                Column(tr("Jar"), lambda kept: kept.leftover.name),
                Column(tr("How much"), lambda kept: ml(kept.leftover.ml), True),
                Column(tr("Can be used"), self._usable),
                Column(tr("Of"), lambda kept: contents(kept.leftover.portions)),
                Column(tr("Same as"), lambda kept: kept.colour),
            ),
            lambda kept: (
                tr("To touch up {models}.").format(
                    models=words.listed([name.split("/")[-1] for name in kept.models])
                )
                if kept.models
                else tr("Nothing that is planned has this colour.")
            ),
        )

    def _make_missing(self) -> Listing[NoArea]:
        tr = self.tr
        return Listing(
            tr("Places without an area"),
            tr("Every place that gets a coat has an area."),
            (
                Column(tr("Model"), lambda no_area: no_area.model),
                Column(tr("Place"), lambda no_area: no_area.place),
                Column(tr("What to do"), lambda no_area: translated(no_area.mend)),
            ),
        )

    def set_colours(self, colours: Colours) -> None:
        """Paint in other colours; the controls follow their palette."""

    def show_picture(self, picture: PlanSnapshot) -> None:
        """Show what a plan takes."""
        self._found = current(picture, self._session.book or picture.book)
        self._fill()

    def show_book(self) -> None:
        """Show the open book, against what was planned last."""
        book, picture = self._session.book, self._session.picture
        if book is None:
            return
        if not self._settle.isActive():
            blocked = QSignalBlocker(self.margin)
            self.margin.setValue(book.supplies.margin_pct)
            blocked.unblock()
        self._found = current(picture, book) if picture else None
        self._fill()

    def _fill(self) -> None:
        found = self._found
        if found is None:
            self.summary.setText(self.tr("Nothing is planned yet."))
            self.list.show_rows(())
            self.enough.show_rows(())
            self.touch_ups.show_rows(())
            self.missing.show_rows(())
            self.at_hand.hide()
            self.bought_all.setEnabled(False)
            return
        self.list.show_rows(rows_of(found, all_of_it=self.everything.isChecked()))
        self.enough.show_rows(found.colours)
        self.touch_ups.show_rows(found.leftovers)
        self.missing.show_rows(found.no_area)
        self.bought_all.setEnabled(bool(shopping_edits.all_wanted(found)))
        self.summary.setText(self._sum(found))
        self.at_hand.setText(
            self.tr("Have at hand, not measured: {names}.").format(
                names=words.listed(found.at_hand)
            )
            if found.at_hand
            else ""
        )
        self.at_hand.setVisible(bool(found.at_hand))
        self._mark_tabs(found)

    def _mark_tabs(self, found: Shopping) -> None:
        """Say on the tabs where there is something to mind."""
        short = sum(not colour.enough for colour in found.colours)
        names = (
            (self.enough, self.tr("Enough for all?"), short),
            (self.missing, self.tr("No area"), len(found.no_area)),
        )
        for page, name, count in names:
            told = f"⚠ {name} ({count})" if count else name
            self.tabs.setTabText(self.tabs.indexOf(page), told)

    def _sum(self, found: Shopping) -> str:
        bought = shopping_edits.all_wanted(found)
        if not found.lines and not found.consumables:
            return self.tr("The plan takes nothing from the stock.")
        if not bought:
            return self.tr("The stock is enough.")
        told = words.count(len(bought), self.tr("1 thing to buy"), self.tr("{n} things to buy"))
        every = [line.runs_out for line in shopping_edits.lines_of(found)]
        moments = [out.at for out in every if out is not None and out.at is not None]
        if not moments:
            return told
        return self.tr("{things}; the first runs out {when}").format(
            things=told, when=self._time(min(moments))
        )

    def _time(self, minute: int) -> str:
        return words.today_or_when(minute, self._session.zone, self._session.now)

    def _when(self, row: ShopRow) -> str:
        out = row.runs_out
        if out is None:
            return ""
        return self.tr("not planned yet") if out.at is None else self._time(out.at)

    def _runs_out(self, row: ShopRow) -> str:
        out = row.runs_out
        return "" if out is None else runs_out_line(out, self._when(row))

    def _detail(self, row: ShopRow) -> str:
        """Return all of a line in sentences."""
        out = self._runs_out(row) or self.tr("is enough")
        told = [self.tr("{name}: {what}.").format(name=words.capital(row.name), what=out)]
        if isinstance(row.line, ShoppingLine) and row.line.replace:
            told.append(self.tr("Less than half a bottle is left; get the next in time."))
        if isinstance(row.line, ShoppingLine) and row.line.old:
            told.append(words.capital(translated(row.line.old)) + ".")
        if not row.complete:
            told.append(self.tr("Some places have no area, so it takes more."))
        return " ".join(told)

    def _first(self, enough: Enough) -> str:
        at = enough.takers[0].at
        return self.tr("not planned yet") if at is None else self._time(at)

    def _swatch(self, enough: Enough) -> str:
        book = self._session.book
        if book is None:
            return ""
        mix = book.mix(enough.colour)
        if mix is not None and mix.swatch:
            return mix.swatch
        try:
            return book.coating(enough.colour).swatch
        except KeyError:  # renamed since the plan was made
            return ""

    def _usable(self, kept: Kept) -> str:
        until = words.day_of(kept.until, self._session.zone)
        if kept.usable:
            return self.tr("until {day}").format(day=until)
        return self.tr("△ expired {day}").format(day=until)

    def _set_margin(self) -> None:
        margin = self.margin.value()
        refused = self._session.attempt(lambda book: stock.set_margin(book, margin))
        self.message.say(refused.mend if refused else "")

    def _buy(self, row: ShopRow) -> None:
        if row.bought is None:
            self._ask(row)
            return
        self._book((row.bought,))

    def _buy_all(self) -> None:
        if self._found is not None:
            self._book(shopping_edits.all_wanted(self._found))

    def _book(self, bought: tuple[Bought, ...]) -> None:
        self.list.say(self._session.attempt(lambda book: shopping_edits.buy(book, bought)))

    def _ask(self, row: ShopRow) -> None:
        self.list.say(None)
        amount = row.bought.amount if row.bought else 1
        consumable = isinstance(row.line, ConsumableLine)
        box = number(amount, 0, 1e7, decimals=1) if consumable else whole(round(amount), 0, 9999)

        def make(book: Book) -> Edit:
            bought = Bought(row.name, round(box.value(), 1), consumable)
            return shopping_edits.buy(book, (bought,))

        AmountDialog(
            self._session,
            self.tr("Bought"),
            self.tr("&So much") if consumable else self.tr("&Bottles"),
            self.tr("{name}: the list says {amount}.").format(name=row.name, amount=row.buy()),
            box,
            make,
            self,
        ).open()


def runs_out_line(out: RunsOut, when: str) -> str:
    """Return when something runs out and where, in one sentence."""
    if out.models < 2:
        return words.tr("runs out {when}, at {work}").format(
            when=when, work=reasons.key_name(out.key)
        )
    return words.tr("runs out {when}, at {work}: model {number} of {models} that take it").format(
        when=when, work=reasons.key_name(out.key), number=out.model_number, models=out.models
    )


def _answer(enough: Enough) -> str:
    if enough.enough:
        return words.tr("✓ for all {models}").format(models=len(enough.takers))
    if not enough.short:
        return words.tr("? some places have no area")
    return words.tr("⚠ for {covered} of {models}").format(
        covered=enough.covered, models=len(enough.takers)
    )


def _lacking(enough: Enough) -> str:
    return ", ".join(
        words.tr("{amount} {coating}").format(amount=ml(short.lacks_ml), coating=short.coating)
        for short in enough.short
    )
