"""One card of Tonight: a cup of colour, or a kind of work by hand, and the places it goes on."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from PySide6.QtCore import QRectF, Qt, Signal
from PySide6.QtGui import QKeySequence, QPainter, QPaintEvent, QPen, QShortcut
from PySide6.QtWidgets import (
    QFrame,
    QHBoxLayout,
    QMenu,
    QPushButton,
    QSizePolicy,
    QToolButton,
    QVBoxLayout,
    QWidget,
)

from app.window import reasons, words
from app.window.elided_label import ElidedLabel
from app.window.emptying import empty
from app.window.flow_layout import FlowLayout
from app.window.labels import text
from app.window.mark_widgets import WarningMark
from app.window.message_translation import translated
from app.window.palette import Colours
from app.window.tonight_cards import card_words
from app.window.tonight_cards.card_parts import STROKE, CardNotes, CardStroke
from app.window.tonight_cards.places_model import PlacesModel, Progress
from app.window.tonight_cards.places_table import PlacesTable
from planner.cautions import Caution
from planner.tonight import LoadCard, PlacesBlock, WorkRow
from planner.values.plan import PassKey

PADDING = 16  # pixels within a card
BLOCKS_APART = 28
LEAST = 320  # a narrower card is not easily read


class CardFrame(QFrame):
    """A card on screen; shown again it keeps its tables, and so the keys.

    Signals
    -------
    ticked(list[tuple[PassKey, str]], bool), done(PassKey), taken_back(PassKey)
        As of its tables.
    put_off(list[PassKey], int)
        What is not begun of it is wanted no earlier than at a minute.
    load_done(list[PassKey])
        All of its work that was not done yet was done.
    beyond(PlacesTable, int)
        As of its tables.
    """

    ticked = Signal(list, bool)
    done = Signal(object)
    load_done = Signal(list)
    beyond = Signal(object, int)
    taken_back = Signal(object)
    put_off = Signal(list, object)

    def __init__(self, colours: Colours) -> None:
        super().__init__()
        self.colours = colours
        self.card: LoadCard | None = None
        self._progress: Progress | None = None
        self._structure: object = None
        self._unfolded = False
        self._current = False
        self.tables: list[PlacesTable] = []
        self.heading = ElidedLabel(bold=True)
        font = self.heading.font()
        font.setPointSizeF(font.pointSizeF() * 1.15)
        self.heading.setFont(font)
        self.amount = text("", size=1.15, bold=True, wrap=False)
        self.times = text("", bold=True, wrap=False)
        self.about = text("", colour=colours.soft, size=0.95)
        self.count = text("", colour=colours.soft, size=0.95, wrap=False)
        self.whole = self._whole_button()
        self.fold = self._quiet_button()
        self.fold.clicked.connect(self._turn_fold)
        self.later = self._quiet_button()
        self.later.setText(self.tr("Not tonight…"))
        self.later.setToolTip(self.tr("Put this off to a later session (N)"))
        self.later.clicked.connect(self._ask_when)
        key = QShortcut(QKeySequence("N"), self)
        key.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
        key.activated.connect(self._ask_when)
        self._sessions: tuple[tuple[str, int], ...] = ()
        self.why = self._quiet_button()
        self.why.setText(self.tr("Why here?"))
        self.why.setCheckable(True)
        self.why.toggled.connect(self._show_why)
        self.reason = text("", colour=colours.soft, size=0.95)
        self.reason.hide()
        self._stroke = QVBoxLayout()
        self.body = QWidget()
        self._blocks_holder = QWidget()
        self._blocks = FlowLayout(self._blocks_holder, across=BLOCKS_APART, down=10)
        self._notes = QVBoxLayout()
        self._lay_out()

    def _whole_button(self) -> QPushButton:
        """Return what notes the whole card as done, by its key from any of its places as well."""
        button = QPushButton(self.tr("All done"))
        button.setToolTip(self.tr("Note all of this card as done now (Ctrl+Enter)"))
        button.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)
        button.clicked.connect(self._note_all)
        for keys in ("Ctrl+Return", "Ctrl+Enter"):
            key = QShortcut(QKeySequence(keys), self)
            key.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
            key.activated.connect(self._note_all)
        return button

    def _note_all(self) -> None:
        if self.card is not None and not self.over:
            self._note(list(self.card.rows))

    def _note(self, rows: list[WorkRow]) -> None:
        """Note rows as done; before their evening runs, every place of them is ticked."""
        if self._progress is None:
            return
        ready = self._progress.ready(rows)
        spots = [] if ready else self._progress.open_spots(rows)
        if ready:
            self.load_done.emit(ready)
        elif spots:
            self.ticked.emit(spots, True)

    def _quiet_button(self) -> QToolButton:
        button = QToolButton()
        button.setAutoRaise(True)
        button.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        button.setMinimumSize(26, 26)
        palette = button.palette()
        palette.setColor(button.foregroundRole(), self.colours.drying_word)
        button.setPalette(palette)
        return button

    def _lay_out(self) -> None:
        column = QVBoxLayout(self)
        column.setContentsMargins(PADDING, 10, PADDING, 10)
        column.setSpacing(6)
        head = QHBoxLayout()
        head.setSpacing(10)
        head.addLayout(self._stroke)
        names = QVBoxLayout()
        names.setSpacing(1)
        first = QHBoxLayout()
        first.setSpacing(10)
        first.addWidget(self.heading)
        first.addWidget(self.amount)  # is never cut; the name before it may be
        first.addStretch(1)
        first.addWidget(self.times)
        first.addWidget(self.whole)
        first.addWidget(self.fold)
        names.addLayout(first)
        second = QHBoxLayout()
        second.addWidget(self.about, 1)
        second.addWidget(self.count, 0, Qt.AlignmentFlag.AlignTop)
        names.addLayout(second)
        head.addLayout(names, 1)
        column.addLayout(head)
        inner = QVBoxLayout(self.body)
        inner.setContentsMargins(0, 0, 0, 0)
        inner.setSpacing(4)
        inner.addWidget(self._blocks_holder)
        foot = QHBoxLayout()
        foot.addLayout(self._notes, 1)
        right = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignBottom
        foot.addWidget(self.later, 0, right)
        foot.addWidget(self.why, 0, right)
        inner.addStretch(1)
        inner.addLayout(foot)
        inner.addWidget(self.reason)
        column.addWidget(self.body, 1)

    def natural_width(self) -> int:
        """Return how wide it is where its places lie side by side and no word is cut [px]."""
        tables = [table.sizeHint().width() for table in self.tables]
        inner = sum(tables) + BLOCKS_APART * (len(tables) - 1)
        line = (self.heading, self.amount, self.times, self.whole)
        head = STROKE + 20 + sum(each.sizeHint().width() + 10 for each in line)
        if self.body.isHidden():  # folded
            inner = 0
        return max(inner, head, LEAST) + 2 * PADDING + 2

    def open_keys(self) -> list[PassKey]:
        """Return what of it is neither begun nor done."""
        card, progress = self.card, self._progress
        if card is None or progress is None:
            return []
        left = [row.key for row in card.rows if not progress.over(row) and not progress.begun(row)]
        return list(dict.fromkeys(left))

    def _ask_when(self) -> None:
        """Offer the sessions to which what is left of it can be put off."""
        keys = self.open_keys()
        if not keys or not self._sessions:
            return
        menu = QMenu(self)
        menu.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        for told, minute in self._sessions:
            choice = menu.addAction(told)
            choice.triggered.connect(
                lambda _on=False, minute=minute: self.put_off.emit(keys, minute)
            )
        menu.setActiveAction(menu.actions()[0])
        menu.popup(self.later.mapToGlobal(self.later.rect().bottomLeft()))

    @property
    def over(self) -> bool:
        """Tell whether all of it is done."""
        progress = self._progress
        return (
            self.card is not None
            and progress is not None
            and all(progress.over(row) for row in self.card.rows)
        )

    def show_card(self, card: LoadCard, progress: Progress, notes: CardNotes) -> None:
        """Show how a card stands now."""
        self.card, self._progress = card, progress
        self._current = any(row.key == progress.next_key for row in card.rows)
        structure = (
            card.swatches,
            card.tool,
            tuple((block.columns, [(r.key, r.piece) for r in block.rows]) for block in card.blocks),
        )
        if structure != self._structure:
            self._structure = structure
            self._build(card, progress)
        else:
            for block, table in zip(card.blocks, self.tables, strict=True):
                table.places.show_block(block, progress)
        for table in self.tables:
            table.fit()
        amount = card_words.amount(card)
        self.heading.say(card_words.name(card))
        self.heading.setToolTip("\n".join(card.coatings) or self.heading.text())
        self.amount.setText(amount)
        self.amount.setVisible(bool(amount))
        self.times.setText(
            self.tr("{start} – {end}").format(
                start=words.clock(card.start, progress.zone),
                end=words.clock(card.end, progress.zone),
            )
        )
        self.about.setText(card_words.about(card))
        done = sum(progress.over(row) for row in card.rows)
        self.count.setText(
            self.tr("{done} of {all} done").format(done=done, all=len(card.rows)) if done else ""
        )
        self._tell(card, notes)
        self._say_why()
        self._fold()
        self.setAccessibleName(f"{self._named()}. {self.about.text()}")
        self.update()

    def _named(self) -> str:
        return card_words.heading(self.card) if self.card is not None else ""

    def _build(self, card: LoadCard, progress: Progress) -> None:
        empty(self._stroke)
        mark = CardStroke(
            self.colours,
            swatch=card.swatches[0] if card.swatches else "",
            tool=card.tool,
            stage=card.stage,
            name=str(card.rows[0].key),
        )
        self._stroke.addWidget(mark)
        empty(self._blocks)
        self.tables = []
        for block in card.blocks:
            self._blocks.addWidget(self._block(block, progress))

    def _block(self, block: PlacesBlock, progress: Progress) -> QWidget:
        model = PlacesModel(block, progress, self)
        model.ticked.connect(self.ticked)
        model.done.connect(self.done)
        model.load_done.connect(self._note)
        model.taken_back.connect(self.taken_back)
        table = PlacesTable(model, self.colours, self)
        models = words.listed(list(dict.fromkeys(row.key.model for row in block.rows)))
        table.setAccessibleName(
            self.tr("{work}: places of {models}").format(
                work=card_words.work_of(block.rows), models=models
            )
        )
        table.beyond.connect(self.beyond)
        self.tables.append(table)
        holder = QWidget()
        column = QVBoxLayout(holder)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        titles = card_words.titles_of(block.rows)
        if titles:
            label = ElidedLabel()
            label.say(titles, self.colours.soft)
            column.addWidget(label)
        column.addWidget(table)
        return holder

    def _tell(self, card: LoadCard, notes: CardNotes) -> None:
        """Say what its steps and its filling ask for, and each caution once."""
        empty(self._notes)
        for told in notes.more:
            self._notes.addWidget(text(told, size=0.95))
        for told in notes.marks:
            self._notes.addWidget(text(told, colour=self.colours.drying_word, size=0.95))
        for told in notes.pauses:
            self._notes.addWidget(text(told, colour=self.colours.soft, size=0.95))
        known = [one for one in card.cautions if one.text in card.told_before]
        for caution in card.cautions:
            if caution not in known:
                self._warn(translated(caution.text), (caution,))
        if known:
            names = words.listed([translated(one.name) for one in known])
            self._warn(self.tr("As above: {cautions}").format(cautions=names), known)
        self._sessions = notes.later
        self.later.setVisible(bool(notes.later and self.open_keys()))

    def _warn(self, told: str, cautions: Sequence[Caution]) -> None:
        """Show one line with the mark of a caution; its whole sentences are its tooltip."""
        holder = QWidget()
        line = QHBoxLayout(holder)
        line.setContentsMargins(0, 2, 0, 0)
        line.setSpacing(6)
        line.addWidget(WarningMark(self.colours), 0, Qt.AlignmentFlag.AlignTop)
        label = text(told, size=0.95)
        label.setToolTip(
            "\n".join(
                self.tr("{caution}\nSource: {source}").format(
                    caution=translated(one.text), source=translated(one.source)
                )
                for one in cautions
            )
        )
        label.setAccessibleName(" ".join(translated(one.text) for one in cautions))
        line.addWidget(label, 1)
        self._notes.addWidget(holder)

    def _turn_fold(self) -> None:
        self._unfolded = not self._unfolded
        self._fold()

    def _fold(self) -> None:
        """Fold what is done to its first line, until somebody asks for it."""
        over = self.over
        shown = not over or self._unfolded
        self.fold.setVisible(over)
        self.whole.setVisible(not over)
        self.whole.setAccessibleName(self.tr("All done: {work}").format(work=self._named()))
        self.fold.setText("▾" if shown else "▸")
        told = self.tr("Fold this card") if shown else self.tr("Show this card")
        self.fold.setToolTip(told)
        self.fold.setAccessibleName(f"{told}: {self._named()}")
        self.body.setVisible(shown)
        self.about.setVisible(shown)

    def _show_why(self) -> None:
        self.reason.setVisible(self.why.isChecked())
        self._say_why()

    def _say_why(self) -> None:
        if self.card is None or self._progress is None:
            return
        name = self._named()
        self.why.setAccessibleName(self.tr("Why here? {work}").format(work=name))
        self.later.setAccessibleName(self.tr("Not tonight: {work}").format(work=name))
        if self.why.isChecked():
            self.reason.setText("\n".join(self._reasons(self.card.rows, self._progress)))

    def _reasons(self, rows: Iterable[WorkRow], progress: Progress) -> Iterable[str]:
        for row in rows:
            if not progress.over(row):
                yield self.tr("{time} {model}: {why}").format(
                    time=words.clock(row.start, progress.zone),
                    model=row.key.model,
                    why=reasons.reason_sentence(row.reason, progress.zone, progress.now),
                )

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint a sheet with a frame, in the colour of what comes next where that is on it."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        wide = 2.0 if self._current else 1.0
        colour = self.colours.colour("focus" if self._current else "rule")
        painter.setPen(QPen(colour, wide))
        painter.setBrush(self.colours.colour("sheet"))
        painter.drawRoundedRect(QRectF(self.rect()).adjusted(1, 1, -1, -1), 6, 6)
        painter.end()
        event.accept()
