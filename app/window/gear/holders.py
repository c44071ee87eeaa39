"""The holders in use, on the Gear page: which part stands on each, and how many at once."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QVBoxLayout, QWidget

from app.service.holders import AtOnce, HolderUse, held, most_at_once
from app.window import words
from app.window.forms.editable_list import Listing
from app.window.forms.rows import Column
from app.window.labels import text
from app.window.session import Session
from planner.values.book import Book
from planner.values.plan import Plan


class HoldersPanel(QWidget):
    """A line for each part on a holder, and above them what the plan needs at once.

    Signals
    -------
    part_wanted(Held)
        A part shall be shown where it can be changed.
    """

    part_wanted = Signal(object)

    def __init__(self, session: Session) -> None:
        super().__init__()
        self._session = session
        tr = self.tr
        self.listing: Listing[HolderUse] = Listing(
            tr("Parts on holders"),
            tr("No part has a holder. Set it on the part, in Models."),
            (
                Column(tr("Holder"), lambda use: use.holder),
                Column(tr("Part"), lambda use: use.part),
                Column(tr("Model"), lambda use: use.model),
                Column(tr("In use"), self._in_use),
            ),
        )
        self.listing.row_button(tr("Show the part"), self.part_wanted.emit, enter=True)
        self.most = text("")
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(2)
        column.addWidget(self.most)
        column.addWidget(self.listing, 1)
        self.setFocusProxy(self.listing)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Keep room for the list where what is said above it takes more lines."""
        super().resizeEvent(event)
        self._fit()

    def _fit(self) -> None:
        inner = self.layout()
        if inner is not None:
            self.setMinimumHeight(inner.totalMinimumHeightForWidth(self.width()))

    def show_holders(self, book: Book, plan: Plan | None) -> None:
        """Show what stands on holders in a book, and when by a plan."""
        every = held(book, plan)
        self.listing.show_rows(every)
        told = [self._most(at_once) for at_once in most_at_once(every) if at_once.count]
        self.most.setText(self.tr("Most needed at once: {holders}").format(holders="; ".join(told)))
        self.most.setVisible(bool(told))
        self._fit()

    def _most(self, at_once: AtOnce) -> str:
        assert at_once.at is not None
        return self.tr("{count} × {holder}, from {time} on").format(
            count=at_once.count,
            holder=at_once.holder,
            time=words.today_or_when(at_once.at, self._session.zone, self._session.now),
        )

    def _in_use(self, use: HolderUse) -> str:
        if use.since is None or use.until is None:
            return self.tr("not planned")
        zone = self._session.zone
        since, until = words.day_of(use.since, zone), words.day_of(use.until, zone)
        if since == until:
            return since
        return self.tr("{since} to {until}").format(since=since, until=until)
