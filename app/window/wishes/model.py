"""The wishes as a table: whose, what, and whether the plan keeps it."""

from __future__ import annotations

from zoneinfo import ZoneInfo

from PySide6.QtCore import QObject

from app.service.pins import Wish
from app.window import words
from app.window.forms.rows import Column, RowsModel
from app.window.wishes.wish_wording import kept_word, whose, wish_line


class WishModel(RowsModel[Wish]):
    """Whose wish, what, and whether the plan keeps it."""

    def __init__(self, parent: QObject | None = None) -> None:
        self._zone = ZoneInfo("UTC")
        columns = (
            Column[Wish](self.tr("Piece of work"), lambda wish: words.capital(whose(wish))),
            Column[Wish](
                self.tr("Wish"), lambda wish: wish_line(wish.pin, self._zone, wish.project)
            ),
            Column[Wish](self.tr("In the plan"), kept_word),
        )
        super().__init__(columns, parent)

    def show_wishes(self, wishes: tuple[Wish, ...], zone: ZoneInfo) -> None:
        """Show other wishes."""
        self._zone = zone
        self.show_rows(wishes, same=False)
