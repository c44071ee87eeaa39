"""Coatings: bottles on a shelf or a list, their filter, and how the chosen one dries."""

from __future__ import annotations

from functools import partial

from PySide6.QtCore import (
    QCoreApplication,
    QItemSelectionModel,
    QSize,
    Qt,
)
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import (
    QHBoxLayout,
    QLineEdit,
    QPushButton,
    QSplitter,
    QStackedWidget,
    QToolButton,
    QTreeView,
    QVBoxLayout,
    QWidget,
)

from app.service import stock
from app.window import words
from app.window.flow_layout import FlowLayout
from app.window.forms.controls import number, whole
from app.window.forms.editable_list import Roomy, plain_table
from app.window.forms.rows import Column, RowsModel
from app.window.glossary import state_meaning
from app.window.labels import MessageLabel, field_label, text
from app.window.message_translation import translated
from app.window.palette import Colours
from app.window.session import Session
from app.window.stock.bottles import PICTURE
from app.window.stock.coating_dialog import CoatingDialog
from app.window.stock.coating_rows import CureLine, FamilyRows, StockRow, cure_lines, told_place
from app.window.stock.drying_card_dialog import DryingCardDialog
from app.window.stock.shelf import Shelf, heading
from app.window.stock.supply_dialogs import AmountDialog
from app.window.stock.tree import (
    BUY,
    LEFT,
    NAME,
    NEEDED,
    OPENED,
    StockFilter,
    StockModel,
    cell,
    ml,
    to_buy,
)
from planner.values.coating import THINNERS, Coating
from planner.values.moment import moment_of

WIDEST_NAME = 320  # longer names are cut, and told in full by the tip [px]
ICON_ROOM = 62  # a bottle with its swatch, and the arrow before it [px]


class CoatingsPage(QWidget):
    """What bottles there are, and what can be done about one."""

    def __init__(self, session: Session) -> None:
        super().__init__()
        self._session = session
        self._wanted = ""
        self.model = StockModel(self)
        self.filter = StockFilter(self.model, self)
        self.look = QLineEdit()
        self.look.setClearButtonEnabled(True)
        self.look.setPlaceholderText(self.tr("name, family, finish, what it is for"))
        self.look.setAccessibleName(self.tr("Show only"))
        self.tree = self._make_tree()
        self.shelf = Shelf()
        self.shelf.setAccessibleName(self.tr("Coatings as bottles"))
        self.as_list = QToolButton()
        self.as_list.setText(self.tr("As a list"))
        self.as_list.setCheckable(True)
        self.as_list.setMinimumHeight(26)
        self.as_list.setToolTip(self.tr("Every figure in columns, or bottles as tiles"))
        self.as_list.toggled.connect(self._turn)
        self.none = text("")
        self.message = MessageLabel()
        self.title = text("", bold=True)
        self.learned = text("", size=0.92)
        self.times: RowsModel[CureLine] = RowsModel(self._columns(), self)
        self.table = plain_table(self.tr("How the chosen coating dries"))
        self.table.setModel(self.times)
        self.buttons: dict[str, QPushButton] = {}
        self._lay_out()
        find = QShortcut(QKeySequence(QKeySequence.StandardKey.Find), self)
        find.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
        find.activated.connect(self.look.setFocus)
        self.look.textChanged.connect(self._look_for)
        self.tree.selectionModel().currentChanged.connect(lambda _new, _old: self._show_chosen())
        self.shelf.chosen.connect(self._choose)
        self.shelf.activated.connect(lambda _index: self._change())
        gone = QShortcut(QKeySequence(QKeySequence.StandardKey.Delete), self.shelf)
        gone.setContext(Qt.ShortcutContext.WidgetShortcut)
        gone.activated.connect(self._remove)
        self._show_chosen()

    def _make_tree(self) -> QTreeView:
        tree = QTreeView()
        tree.setModel(self.filter)
        tree.setAccessibleName(self.tr("Coatings by family"))
        tree.setUniformRowHeights(True)
        tree.setIconSize(QSize(PICTURE[0] // 2, PICTURE[1] // 2))
        tree.setIndentation(14)
        tree.setItemDelegate(Roomy(tree))
        tree.setAlternatingRowColors(True)
        tree.setAllColumnsShowFocus(True)
        tree.setFrameShape(QTreeView.Shape.NoFrame)
        header = tree.header()
        header.setStretchLastSection(True)
        for at, column in enumerate((LEFT, NEEDED), start=1):  # in sight in a small window, too
            header.moveSection(header.visualIndex(column), at)
        tree.activated.connect(lambda _index: self._change())
        shortcut = QShortcut(QKeySequence(QKeySequence.StandardKey.Delete), tree)
        shortcut.setContext(Qt.ShortcutContext.WidgetShortcut)
        shortcut.activated.connect(self._remove)
        return tree

    def _columns(self) -> tuple[Column[CureLine], ...]:
        tr = self.tr
        return (
            Column(
                tr("State"),
                lambda cure_line: words.state_word(cure_line.state.value),
                tip=lambda cure_line: state_meaning(cure_line.state),
            ),
            Column(tr("As stated"), lambda cure_line: words.span(round(cure_line.minutes)), True),
            Column(
                tr("As learned"),
                lambda cure_line: (
                    "" if cure_line.learned is None else words.span(round(cure_line.learned))
                ),
                True,
            ),
            Column(tr("Source"), cure_source, tip=cure_source),
        )

    def _lay_out(self) -> None:
        upper = QWidget()
        above = QVBoxLayout(upper)
        above.setContentsMargins(0, 6, 0, 4)
        above.setSpacing(6)
        head = QHBoxLayout()
        head.addWidget(field_label(self.tr("Show on&ly"), self.look))
        head.addWidget(self.look, 1)
        head.addWidget(self.as_list)
        above.addLayout(head)
        above.addWidget(self.none)
        self.both = QStackedWidget()
        self.both.addWidget(self.shelf)
        self.both.addWidget(self.tree)
        above.addWidget(self.both, 1)
        above.addWidget(self.message)
        line = FlowLayout(across=6, down=4)
        for key, name, act in (
            ("add", self.tr("Add coating…"), partial(self._ask, None)),
            ("change", self.tr("Change…"), self._change),
            ("count", self.tr("Count…"), self._count),
            ("buy", self.tr("Bought…"), self._buy),
            ("card", self.tr("Drying card…"), self._card),
            ("remove", self.tr("Remove"), self._remove),
        ):
            button = QPushButton(name)
            button.clicked.connect(lambda _on=False, act=act: act())
            self.buttons[key] = button
            line.addWidget(button)
        above.addLayout(line)
        above.addStretch(0)
        self.drying = QWidget()
        below = QVBoxLayout(self.drying)
        below.setContentsMargins(0, 6, 0, 2)
        below.setSpacing(3)
        below.addWidget(self.title)
        below.addWidget(self.learned)
        below.addWidget(self.table, 1)
        self.splitter = QSplitter(Qt.Orientation.Vertical)
        self.splitter.addWidget(upper)
        self.splitter.addWidget(self.drying)
        self.splitter.setSizes([460, 190])
        self.splitter.setStretchFactor(0, 3)
        self.splitter.setStretchFactor(1, 1)
        self.splitter.setChildrenCollapsible(False)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self.splitter)

    def show_families(self, families: tuple[FamilyRows, ...]) -> None:
        """Show other coatings; the chosen one stays chosen if it is still there."""
        chosen = self.chosen()
        name = self._wanted or (chosen.name if chosen else "")
        count = self.model.rowCount()
        self.model.zone = self._session.zone
        self.model.show_families(families)
        if self.chosen() is None or self._wanted or self.model.rowCount() != count:
            self.tree.expandAll()
            self._choose(name)
        self._wanted = ""
        self._fill_shelf()
        self._fit(families)
        self._say_none()
        self._show_chosen()

    def set_colours(self, colours: Colours) -> None:
        """Paint the bottles in other colours; the controls follow their palette."""
        self.model.colours = self.shelf.tiles.colours = colours
        self.tree.viewport().update()
        self.shelf.viewport().update()

    def _fill_shelf(self) -> None:
        """Put on the shelf what the filter lets through."""
        rows: list[str | StockRow] = []
        for at in range(self.filter.rowCount()):
            family = self.filter.index(at, NAME)
            found = [
                self.model.row_at(self.filter.mapToSource(self.filter.index(number, NAME, family)))
                for number in range(self.filter.rowCount(family))
            ]
            bottles = [row for row in found if row is not None]
            if bottles:
                rows += [heading(bottles[0].coating.family.value, len(bottles)), *bottles]
        self.shelf.show_rows(tuple(rows), self._session.zone)

    def _turn(self, on: bool) -> None:
        self.both.setCurrentWidget(self.tree if on else self.shelf)
        self._say_none()

    def _fit(self, families: tuple[FamilyRows, ...]) -> None:
        """Make each column as wide as its words; Qt would ask for every cell many times."""
        letters = self.tree.fontMetrics()
        for column in range(OPENED):
            head = self.model.headerData(column, Qt.Orientation.Horizontal)
            every = [row for family in families for row in family.rows]
            told = {head, *(cell(row, column) for row in every)}
            if column == BUY:
                told |= {to_buy(row, self._session.zone) for row in every}
            wide = max(letters.horizontalAdvance(words_) for words_ in told)
            if column == NAME:
                wide = min(wide, WIDEST_NAME) + ICON_ROOM
            self.tree.setColumnWidth(column, wide + 14)

    def row(self) -> StockRow | None:
        """Return all that is told of the chosen coating."""
        return self.model.row_at(self.filter.mapToSource(self.tree.currentIndex()))

    def chosen(self) -> Coating | None:
        """Return the chosen coating."""
        row = self.row()
        return row.coating if row else None

    def _choose(self, name: str) -> None:
        found = self.filter.mapFromSource(self.model.index_of(name))
        if not found.isValid():
            found = self.filter.index(0, NAME, self.filter.index(0, NAME))
        flags = QItemSelectionModel.SelectionFlag
        self.tree.selectionModel().setCurrentIndex(found, flags.ClearAndSelect | flags.Rows)

    def _look_for(self, asked: str) -> None:
        chosen = self.chosen()
        self.filter.look_for(asked)
        self.tree.expandAll()
        self._fill_shelf()
        self._choose(chosen.name if chosen else "")
        self._say_none()
        self._show_chosen()

    def _say_none(self) -> None:
        if not self.model.rowCount():
            self.none.setText(self.tr("No coating in the book yet. Add the bottles that you own."))
        else:
            self.none.setText(self.tr("No coating has these words."))
        some = bool(self.filter.rowCount())
        self.none.setVisible(not some)
        self.both.setVisible(some)
        shown = self.tree if self.as_list.isChecked() else self.shelf
        self.setFocusProxy(shown if some else self.look)

    def _show_chosen(self) -> None:
        row = self.row()
        if row is not None:
            self.shelf.choose(row.coating.name)
        for key, button in self.buttons.items():
            button.setEnabled(key == "add" or row is not None)
        films = row is not None and row.coating.family not in THINNERS
        self.buttons["card"].setEnabled(films)
        lines = cure_lines(row.coating) if row else ()
        self.times.show_rows(lines)
        self.table.setVisible(bool(lines))
        self.drying.setVisible(row is not None)
        self.title.setText(words.capital(row.coating.name) if row else "")
        told = []
        if row is not None and not lines:
            told.append(self.tr("A thinner leaves no film."))
        if row is not None and lines:
            told.append(
                words.fill(
                    self.tr("To each state at 23 °C and 50 % RH, {film:g} µm dry."),
                    film=row.coating.dry_film_um,
                )
            )
        if row is not None and row.coating.slowness != 1:
            told.append(
                words.fill(
                    self.tr("Learned: takes {factor:.2f} times as long as stated."),
                    factor=row.coating.slowness,
                )
            )
        if row is not None and row.old:
            told.append(translated(row.old))
        self.learned.setText(" ".join(told))

    def _ask(self, old: Coating | None) -> None:
        self.message.say("")
        dialog = CoatingDialog(self._session, old, self)
        dialog.accepted.connect(lambda: self._go_to(dialog.filled("name").strip()))
        dialog.open()

    def _go_to(self, name: str) -> None:
        self._choose(name)
        self._show_chosen()

    def _change(self) -> None:
        chosen = self.chosen()
        if chosen is not None:
            self._ask(chosen)

    def _count(self) -> None:
        row = self.row()
        if row is None:
            return
        name = row.coating.name
        box = number(row.stock.left_ml, 0, 1e7, decimals=1, suffix=self.tr(" ml"))
        at = moment_of(self._session.now, self._session.zone)
        about = self.tr("By the book, {amount} of {name} is left.")
        AmountDialog(
            self._session,
            self.tr("Count a bottle"),
            self.tr("&There are"),
            about.format(amount=ml(row.stock.left_ml), name=name),
            box,
            lambda book: stock.count_bottle(book, name, round(box.value(), 1), at),
            self,
        ).open()

    def _buy(self) -> None:
        row = self.row()
        if row is None:
            return
        name = row.coating.name
        box = whole(max(1, row.line.bottles if row.line else 1), 0, 9999)
        about = self.tr("{name}, in bottles of {amount:g} ml.")
        AmountDialog(
            self._session,
            self.tr("Bought"),
            self.tr("&Bottles"),
            words.fill(about, name=name, amount=row.coating.bottle_ml),
            box,
            lambda book: stock.buy_bottles(book, name, box.value()),
            self,
        ).open()

    def _card(self) -> None:
        chosen = self.chosen()
        if chosen is not None:
            DryingCardDialog(self._session, chosen.name, self).open()

    def _remove(self) -> None:
        chosen, book = self.chosen(), self._session.book
        if chosen is None or book is None:
            return
        refused = self._session.attempt(lambda book: stock.remove_coating(book, chosen.name))
        if refused is None:
            self.message.say("")
            return
        self.message.say(f"{told_place(book, refused.place)}: {translated(refused.mend)}")


def cure_source(cure_line: CureLine) -> str:
    """Return where a time is from: the label, or how much the family's figure is worth."""
    status = QCoreApplication.translate("status", cure_line.status.value)
    if cure_line.source.startswith((cure_line.status.value, status)):
        return cure_line.source
    return words.tr("{status}: {source}").format(status=status, source=cure_line.source)
