"""The Gear view: airbrushes, the places where films dry, and holders."""

from __future__ import annotations

from PySide6.QtCore import QSignalBlocker, Qt, Signal
from PySide6.QtWidgets import (
    QFrame,
    QHBoxLayout,
    QScrollArea,
    QSplitter,
    QVBoxLayout,
    QWidget,
)

from app.service import gear_edits, room_edits, warm_box
from app.window import words
from app.window.forms.controls import number
from app.window.forms.editable_list import Listing
from app.window.forms.rows import Column
from app.window.gear.airbrush_dialog import AirbrushDialog
from app.window.gear.holders import HoldersPanel
from app.window.gear.location_dialog import LocationDialog
from app.window.labels import MessageLabel, field_label, text
from app.window.palette import LIGHT, Colours
from app.window.plan_snapshot import PlanSnapshot
from app.window.session import Session
from planner.values.book import Book
from planner.values.gear import Airbrush
from planner.values.plan import Plan
from planner.values.room import AirPoint, Location


class GearView(QWidget):
    """Airbrushes, places where films dry, and holders; each told in a line.

    Signals
    -------
    part_wanted(Held)
        A part that stands on a holder shall be shown.
    """

    part_wanted = Signal(object)

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self._colours = LIGHT
        self._plan: Plan | None = None
        self.airbrushes = self._make_airbrushes()
        self.locations = self._make_locations()
        self.holders = HoldersPanel(session)
        self.holders.part_wanted.connect(self.part_wanted)
        self.volume = number(30, 0, 999_999, decimals=1, suffix=self.tr(" m³"))
        self.volume.setKeyboardTracking(False)
        self.volume.valueChanged.connect(self._set_volume)
        self.message = MessageLabel()
        self.splitter = QSplitter(Qt.Orientation.Vertical)
        self.splitter.addWidget(_titled(self.tr("Airbrushes"), self.airbrushes))
        lower = _titled(self.tr("Where films dry"), self.locations)
        self._add_volume(lower)
        self.splitter.addWidget(lower)
        self.splitter.addWidget(_titled(self.tr("Holders"), self.holders))
        self.splitter.setSizes([130, 240, 290])
        self.splitter.setChildrenCollapsible(False)
        column = QVBoxLayout(self)
        column.setContentsMargins(24, 14, 18, 8)
        column.setSpacing(8)
        column.addWidget(text(self.tr("Gear"), size=1.9, bold=True))
        column.addWidget(_scrolling(self.splitter), 1)
        self.setFocusProxy(self.airbrushes)

    def _add_volume(self, holder: QWidget) -> None:
        row = QHBoxLayout()
        row.addWidget(field_label(self.tr("Room vol&ume"), self.volume))
        row.addWidget(self.volume)
        row.addWidget(text(self.tr("for the estimate of solvent vapour"), size=0.92), 1)
        layout = holder.layout()
        assert isinstance(layout, QVBoxLayout)
        layout.addLayout(row)
        layout.addWidget(self.message)

    def _make_airbrushes(self) -> Listing[Airbrush]:
        tr = self.tr
        listing: Listing[Airbrush] = Listing(
            tr("Airbrushes"),
            tr("No airbrush. Steps are then done by brush, can, sponge, cloth or hand."),
            (
                Column(tr("Name"), lambda airbrush: airbrush.name),
                Column(tr("Load"), lambda airbrush: words.span(airbrush.load_minutes), True),
                Column(
                    tr("Change"),
                    lambda airbrush: tr("{same} / {other} min").format(
                        same=airbrush.change_same_family, other=airbrush.change_other_family
                    ),
                    True,
                    lambda airbrush: tr(
                        "{same} min within a family, {other} min to another"
                    ).format(same=airbrush.change_same_family, other=airbrush.change_other_family),
                ),
                Column(tr("Clean"), lambda airbrush: words.span(airbrush.clean_minutes), True),
                Column(
                    tr("Idle up to"), lambda airbrush: words.span(airbrush.idle_limit_minutes), True
                ),
                Column(tr("Least fill"), lambda airbrush: _ml(airbrush.least_fill_ml), True),
                Column(tr("Cup"), lambda airbrush: _ml(airbrush.cup_ml), True),
                Column(tr("Lost"), lambda airbrush: _ml(airbrush.lost_ml), True),
                Column(tr("Stays on the model"), self._stays),
            ),
        )
        listing.add_button(tr("Add airbrush…"), lambda: self._ask_airbrush(None))
        listing.row_button(tr("Change…"), self._ask_airbrush, enter=True)
        listing.row_button(
            tr("Remove"),
            lambda airbrush: listing.say(
                self._session.attempt(lambda book: gear_edits.remove_airbrush(book, airbrush.name))
            ),
            delete=True,
        )
        return listing

    def _make_locations(self) -> Listing[Location]:
        tr = self.tr
        listing: Listing[Location] = Listing(
            tr("Places where films dry"),
            tr("No place to dry."),
            (
                Column(tr("Name"), self._location_name),
                Column(tr("Drying places"), lambda location: str(location.drying_places), True),
                Column(tr("Air on workdays"), lambda location: air_line(location.workdays)),
                Column(
                    tr("Air on weekends"),
                    lambda location: (
                        air_line(location.weekends) if location.weekends else tr("as on workdays")
                    ),
                ),
            ),
        )
        listing.add_button(tr("Add place…"), lambda: self._ask_location(None))
        listing.row_button(tr("Change…"), self._ask_location, enter=True)
        usual = listing.row_button(
            tr("Make it the usual"),
            lambda location: listing.say(
                self._session.attempt(lambda book: room_edits.make_usual(book, location.name))
            ),
        )
        usual.setToolTip(tr("Where films dry unless a step says otherwise"))
        listing.row_button(
            tr("Remove"),
            lambda location: listing.say(
                self._session.attempt(lambda book: room_edits.remove_location(book, location.name))
            ),
            delete=True,
        )
        slow = listing.row_button(
            tr("Slow coats may dry here"),
            lambda location: listing.say(
                self._session.attempt(lambda book: warm_box.offer(book, location.name))
            ),
        )
        slow.setToolTip(
            tr("Oil, enamel and clear coats of every project get it as another place; see Models")
        )
        return listing

    def set_colours(self, colours: Colours) -> None:
        """Paint in other colours."""
        self._colours = colours

    def show_picture(self, picture: PlanSnapshot) -> None:
        """Show the gear of a plan's book, and when holders are in use."""
        self._plan = picture.plan
        self._show(self._session.book or picture.book)

    def show_book(self) -> None:
        """Show the gear of the open book."""
        book = self._session.book
        if book is not None:
            self._show(book)

    def _show(self, book: Book) -> None:
        self.airbrushes.show_rows(book.gear.airbrushes)
        self.locations.show_rows(book.room.locations)
        self.holders.show_holders(book, self._plan)
        blocked = QSignalBlocker(self.volume)
        self.volume.setValue(book.room.volume_m3)
        blocked.unblock()

    def _set_volume(self, volume: float) -> None:
        refused = self._session.attempt(lambda book: room_edits.set_volume(book, round(volume, 1)))
        self.message.say(refused.mend if refused else "")

    def _location_name(self, location: Location) -> str:
        book = self._session.book
        usual = book is not None and location.name == book.room.locations[0].name
        return self.tr("{name} (the usual)").format(name=location.name) if usual else location.name

    def _stays(self, airbrush: Airbrush) -> str:
        if airbrush.transfer is None:
            return self.tr("usual")
        return self.tr("{share:.0f} %").format(share=airbrush.transfer * 100)

    def _ask_airbrush(self, airbrush: Airbrush | None) -> None:
        self.airbrushes.say(None)
        AirbrushDialog(self._session, airbrush, self).open()

    def _ask_location(self, location: Location | None) -> None:
        self.locations.say(None)
        LocationDialog(self._session, location, self._colours, self).open()


def air_line(points: tuple[AirPoint, ...]) -> str:
    """Return a day's air in short: "21 °C, 50 % RH" or "8–17 °C, 55–80 % RH"."""
    warm = [point.temperature_c for point in points]
    damp = [point.humidity_pct for point in points]
    return words.tr("{temperatures} °C, {humidities} % RH").format(
        temperatures=_range(warm), humidities=_range(damp)
    )


def _range(values: list[float]) -> str:
    low, high = min(values), max(values)
    return words.decimal(f"{low:g}" if low == high else f"{low:g}–{high:g}")


def _ml(amount: float) -> str:
    return words.fill(words.tr("{amount:.1f} ml"), amount=amount)


def _scrolling(inner: QWidget) -> QScrollArea:
    """Return an area that scrolls up and down where a window is too low for all three lists."""
    area = QScrollArea()
    area.setWidgetResizable(True)
    area.setFrameShape(QFrame.Shape.NoFrame)
    area.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
    area.setFocusPolicy(Qt.FocusPolicy.NoFocus)  # its lists come into sight with the keys
    area.setWidget(inner)
    return area


def _titled(title: str, inner: QWidget) -> QWidget:
    holder = QWidget()
    column = QVBoxLayout(holder)
    column.setContentsMargins(0, 4, 0, 4)
    column.setSpacing(2)
    column.addWidget(text(title, size=1.15, bold=True))
    column.addWidget(inner, 1)
    return holder
