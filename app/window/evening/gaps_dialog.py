"""The gaps of the coming days, what each is good for, and work of the plan taken into one."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QDialog,
    QDialogButtonBox,
    QListWidget,
    QListWidgetItem,
    QVBoxLayout,
    QWidget,
)

from app.window import words
from app.window.chosen_rows import mark_chosen_rows
from app.window.evening.gap_words import earlier_words, gap_title, offer_words
from app.window.labels import MessageLabel, text
from app.window.plan_snapshot import PlanSnapshot
from planner.evening.gaps import FreeGap, GapOffer, GapUse
from planner.values.refusal import Refused

TAKEN = (GapUse.BRUSH, GapUse.SPRAY)
SPOT = Qt.ItemDataRole.UserRole
Take = Callable[[FreeGap, GapOffer], Refused | None]


class GapsDialog(QDialog):
    """A list to choose from; ``take`` moves work of the plan into a gap."""

    def __init__(self, picture: PlanSnapshot, now: int, take: Take, parent: QWidget | None) -> None:
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(self.tr("Free time"))
        self.setModal(True)
        self._take = take
        self._spots: list[tuple[FreeGap, GapOffer]] = []
        self.list = QListWidget()
        self.list.setWordWrap(True)
        mark_chosen_rows(self.list)
        self.list.setAccessibleName(self.tr("What gaps are good for"))
        for gap in picture.gaps:
            self._head(gap_title(gap, picture.zone, now))
            for offer in gap.offers:
                self._offer(gap, offer)
        self.message = MessageLabel()
        self.buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Close)
        self.buttons.button(QDialogButtonBox.StandardButton.Close).setText(self.tr("Close"))
        self.taken = self.buttons.addButton(
            self.tr("&Do it then"), QDialogButtonBox.ButtonRole.AcceptRole
        )
        self.taken.setToolTip(self.tr("Wish this work into that session; the plan follows"))
        self.buttons.accepted.connect(self._keep)
        self.buttons.rejected.connect(self.reject)
        self.list.itemActivated.connect(lambda _item: self._keep())
        self.list.currentItemChanged.connect(self._chosen)
        column = QVBoxLayout(self)
        column.setContentsMargins(18, 14, 18, 14)
        column.setSpacing(8)
        about = self.tr("Hands are free then; all other work stays where it is.")
        if not self._spots:
            about = self.tr("No gap of the coming week is long enough for anything.")
        column.addWidget(text(about))
        column.addWidget(self.list, 1)
        column.addWidget(self.message)
        column.addWidget(self.buttons)
        self.resize(560, 440)
        first = next((at for at in range(self.list.count()) if self._at(at) is not None), -1)
        self.list.setCurrentRow(first)
        self._chosen()
        self.list.setFocus()

    def _head(self, told: str) -> None:
        item = QListWidgetItem(told)
        item.setFlags(Qt.ItemFlag.ItemIsEnabled)
        font = item.font()
        font.setBold(True)
        item.setFont(font)
        self.list.addItem(item)

    def _offer(self, gap: FreeGap, offer: GapOffer) -> None:
        more = earlier_words(gap, offer)
        told = words.capital(offer_words(offer))
        item = QListWidgetItem(f"{told} · {more}" if more else told)
        item.setData(SPOT, len(self._spots))
        self._spots.append((gap, offer))
        self.list.addItem(item)

    def _at(self, row: int) -> tuple[FreeGap, GapOffer] | None:
        item = self.list.item(row)
        number = item.data(SPOT) if item is not None else None
        return None if number is None else self._spots[int(number)]

    def _chosen(self) -> None:
        spot = self._at(self.list.currentRow())
        self.taken.setEnabled(spot is not None and spot[1].use in TAKEN)

    def _keep(self) -> None:
        spot = self._at(self.list.currentRow())
        if spot is None or spot[1].use not in TAKEN:
            return
        refused = self._take(*spot)
        if refused is None:
            self.accept()
        else:
            self.message.say(refused.mend)
