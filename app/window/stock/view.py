"""The Stock view: coatings, and what else is in the drawer."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QHBoxLayout, QTabWidget, QVBoxLayout, QWidget

from app.service import stock
from app.service.edits import Edit
from app.window import words
from app.window.forms.controls import number
from app.window.forms.editable_list import Listing
from app.window.forms.rows import Column
from app.window.labels import text
from app.window.message_translation import translated
from app.window.palette import Colours
from app.window.plan_snapshot import PlanSnapshot
from app.window.session import Session
from app.window.stock.buy_panel import BuyPanel
from app.window.stock.coating_rows import families, told_place
from app.window.stock.coatings import CoatingsPage
from app.window.stock.supply_dialogs import (
    AmountDialog,
    CardDialog,
    ConsumableDialog,
    LeftoverDialog,
    MixDialog,
)
from app.window.stock.tree import ml
from planner.quantity import ConsumableNow, consumables_now, parts_text
from planner.values.book import Book
from planner.values.mix import Mix, Portion
from planner.values.moment import minute_of, moment_of
from planner.values.supplies import Card, Leftover

DAY = 1440


class StockView(QWidget):
    """Coatings, mixes, consumables, leftovers and sample cards of the open book."""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self._told: tuple[object, ...] = ()
        self.summary = text("")
        self.coatings = CoatingsPage(session)
        self.buy = BuyPanel(session)
        self.mixes = self._make_mixes()
        self.consumables = self._make_consumables()
        self.leftovers = self._make_leftovers()
        self.cards = self._make_cards()
        self.tabs = QTabWidget()
        self.tabs.setDocumentMode(True)
        self.tabs.setUsesScrollButtons(True)
        self.tabs.addTab(self.coatings, self.tr("Coatings"))
        self.tabs.addTab(self.mixes, self.tr("Mixes"))
        self.tabs.addTab(self.consumables, self.tr("Consumables"))
        self.tabs.addTab(self.leftovers, self.tr("Leftovers"))
        self.tabs.addTab(self.cards, self.tr("Sample cards"))
        column = QVBoxLayout(self)
        column.setContentsMargins(24, 14, 18, 8)
        column.setSpacing(6)
        head = QHBoxLayout()
        head.setSpacing(16)
        head.addWidget(text(self.tr("Stock"), size=1.9, bold=True, wrap=False))
        head.addWidget(self.summary, 1, Qt.AlignmentFlag.AlignBottom)
        column.addLayout(head)
        column.addWidget(self.tabs, 1)
        self.setFocusProxy(self.coatings)

    def _make_mixes(self) -> Listing[Mix]:
        tr = self.tr
        listing: Listing[Mix] = Listing(
            tr("Mixes"),
            tr("No mix yet. A mix is parts of several coatings, or a coating with its thinner."),
            (
                Column(tr("Mix"), lambda mix: mix.name, swatch=self._mix_swatch),
                Column(tr("Parts"), lambda mix: _parts(mix.portions), True),
                Column(tr("Of"), lambda mix: contents(mix.portions)),
                Column(tr("Can be used for"), lambda mix: words.span(mix.life_minutes)),
            ),
        )
        self._fill(listing, MixDialog, stock.remove_mix, tr("Add mix…"))
        listing.row_button(tr("Keep a leftover…"), self._keep_leftover)
        return listing

    def _make_consumables(self) -> Listing[ConsumableNow]:
        tr = self.tr
        listing: Listing[ConsumableNow] = Listing(
            tr("Consumables"),
            tr("Nothing yet: tape, decal fluid, foam, swabs and the like."),
            (
                Column(tr("Consumable"), lambda consumable_now: consumable_now.consumable.name),
                Column(
                    tr("Left"),
                    lambda consumable_now: amount(
                        consumable_now.left, consumable_now.consumable.unit
                    ),
                    True,
                ),
                Column(
                    tr("A coat takes"),
                    lambda consumable_now: amount(
                        consumable_now.consumable.per_pass, consumable_now.consumable.unit
                    ),
                    True,
                ),
                Column(
                    tr("At"),
                    lambda consumable_now: ", ".join(
                        words.stage_word(each) for each in consumable_now.consumable.stages
                    ),
                ),
            ),
        )
        self._fill_consumables(listing)
        return listing

    def _fill_consumables(self, listing: Listing[ConsumableNow]) -> None:
        tr = self.tr
        listing.add_button(
            tr("Add consumable…"), lambda: ConsumableDialog(self._session, None, self).open()
        )
        listing.row_button(
            tr("Change…"),
            lambda consumable_now: ConsumableDialog(
                self._session, consumable_now.consumable, self
            ).open(),
            enter=True,
        )
        listing.row_button(tr("Count…"), self._count)
        listing.row_button(tr("Bought…"), self._buy)
        listing.row_button(
            tr("Remove"),
            lambda consumable_now: self._remove(
                listing, stock.remove_consumable, consumable_now.consumable.name
            ),
            delete=True,
        )

    def _make_leftovers(self) -> Listing[Leftover]:
        tr = self.tr
        listing: Listing[Leftover] = Listing(
            tr("Leftover mixes"),
            tr("No leftover mix is kept for touch-ups."),
            (
                Column(tr("Jar"), lambda leftover: leftover.name),
                Column(tr("How much"), lambda leftover: ml(leftover.ml), True),
                Column(tr("Parts"), lambda leftover: _parts(leftover.portions), True),
                Column(tr("Of"), lambda leftover: contents(leftover.portions)),
                Column(
                    tr("Mixed"),
                    lambda leftover: words.day(leftover.made.astimezone(self._session.zone)),
                ),
                Column(tr("Keeps"), self._keeps),
            ),
        )
        self._fill(listing, LeftoverDialog, stock.remove_leftover, tr("Add leftover…"))
        return listing

    def _make_cards(self) -> Listing[Card]:
        tr = self.tr
        listing: Listing[Card] = Listing(
            tr("Sample cards"),
            tr("No sample card yet: a painted card, with what was mixed drop by drop."),
            (
                Column(tr("Card"), lambda card: card.name),
                Column(tr("Painted"), lambda card: words.day(card.on) + f" {card.on.year}"),
                Column(
                    tr("Drops"),
                    lambda card: ", ".join(f"{each.drops} {each.coating}" for each in card.drops),
                ),
                Column(tr("Photo"), lambda card: tr("yes") if card.photo else ""),
                Column(
                    tr("Note"), lambda card: " ".join(card.note.split()), tip=lambda card: card.note
                ),
            ),
        )
        self._fill(listing, CardDialog, stock.remove_card, tr("Add sample card…"))
        return listing

    def _fill(
        self,
        listing: Listing,  # type: ignore[type-arg]  # of anything with a name
        dialog: Callable[..., QWidget],
        remove: Callable[[Book, str], Edit],
        add: str,
    ) -> None:
        def ask(other: object) -> None:
            listing.say(None)
            dialog(self._session, other, self).open()  # type: ignore[attr-defined]

        listing.add_button(add, lambda: ask(None))
        listing.row_button(self.tr("Change…"), ask, enter=True)
        listing.row_button(
            self.tr("Remove"), lambda other: self._remove(listing, remove, other.name), delete=True
        )

    def _remove(
        self,
        listing: Listing,  # type: ignore[type-arg]
        remove: Callable[[Book, str], Edit],
        name: str,
    ) -> None:
        book = self._session.book
        refused = self._session.attempt(lambda book: remove(book, name))
        if refused is None or book is None:
            listing.say(None)
            return
        listing.message.say(f"{told_place(book, refused.place)}: {translated(refused.mend)}")

    def set_colours(self, colours: Colours) -> None:
        """Paint the bottles in other colours; the controls follow their palette."""
        self.coatings.set_colours(colours)
        self.buy.set_colours(colours)

    def show_picture(self, picture: PlanSnapshot) -> None:
        """Show what a plan needs, against the stock."""
        self._show(self._session.book or picture.book, picture)

    def show_book(self) -> None:
        """Show the stock of the open book, against what was planned last."""
        if self._session.book is not None:
            self._show(self._session.book, self._session.picture)

    def _show(self, book: Book, picture: PlanSnapshot | None) -> None:
        today = moment_of(self._session.now, self._session.zone).date()
        told = (book, id(picture), today)
        if self._told and self._told[0] is book and told[1:] == self._told[1:]:
            return
        self._told = told
        found = picture.shopping if picture else None
        every = families(book, found, today)
        self.coatings.show_families(every)
        self.buy.show_book(book, picture)
        self.mixes.show_rows(book.mixes)
        self.consumables.show_rows(consumables_now(book))
        self.leftovers.show_rows(book.supplies.leftovers)
        self.cards.show_rows(book.supplies.cards)
        rows = [row for family in every for row in family.rows]
        short = sum(row.short for row in rows)
        counted = words.count(len(rows), self.tr("1 coating"), self.tr("{n} coatings"))
        self.summary.setText(
            self.tr("{coatings}; {short} short for what is planned").format(
                coatings=counted, short=words.count(short, self.tr("1 is"), self.tr("{n} are"))
            )
            if short
            else self.tr("{coatings}").format(coatings=counted)
        )

    def _mix_swatch(self, mix: Mix) -> str:
        book = self._session.book
        return mix.swatch or (book.coating(mix.name).swatch if book and book.mix(mix.name) else "")

    def _keep_leftover(self, mix: Mix) -> None:
        LeftoverDialog(self._session, None, self, of=mix).open()

    def _keeps(self, leftover: Leftover) -> str:
        until = minute_of(leftover.made) + leftover.keeps_days * DAY
        day: date = moment_of(until, self._session.zone).date()
        if until <= self._session.now:
            return self.tr("△ expired {day}").format(day=words.day(day))
        return self.tr("until {day}").format(day=words.day(day))

    def _count(self, consumable_now: ConsumableNow) -> None:
        name, unit = consumable_now.consumable.name, consumable_now.consumable.unit
        box = number(consumable_now.left, 0, 1e7, decimals=1, suffix=f" {unit}")
        at = moment_of(self._session.now, self._session.zone)
        about = self.tr("By the book, {amount} of {name} is left.")
        self._amount(
            self.tr("Count a consumable"),
            self.tr("&There are"),
            about.format(amount=amount(consumable_now.left, unit), name=name),
            box,
            lambda book: stock.count_consumable(book, name, round(box.value(), 1), at),
        )

    def _buy(self, consumable_now: ConsumableNow) -> None:
        name, unit = consumable_now.consumable.name, consumable_now.consumable.unit
        box = number(1, 0, 1e7, decimals=1, suffix=f" {unit}")
        self._amount(
            self.tr("Bought"),
            self.tr("&So much"),
            name,
            box,
            lambda book: stock.buy_consumable(book, name, round(box.value(), 1)),
        )

    def _amount(
        self, title: str, label: str, about: str, box: QWidget, make: Callable[[Book], Edit]
    ) -> None:
        AmountDialog(self._session, title, label, about, box, make, self).open()


def amount(number_: float, unit: str) -> str:
    """Return an amount of a consumable, "12 pieces"."""
    return words.tr("{amount} {unit}").format(
        amount=words.decimal(f"{round(number_, 2):g}"), unit=unit
    )


def contents(portions: tuple[Portion, ...]) -> str:
    """Return what is in a mix, by name."""
    return " : ".join(portion.coating for portion in portions)


def _parts(portions: tuple[Portion, ...]) -> str:
    return parts_text(portion.parts for portion in portions)
