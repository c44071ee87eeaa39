"""What drying cards ask, in words."""

from __future__ import annotations

from zoneinfo import ZoneInfo

from PySide6.QtCore import QCoreApplication

from app.window import words
from planner.pace.card_times import CardAsk


def ask_sentence(ask: CardAsk, zone: ZoneInfo, now: int) -> str:
    """Return when a drying card is to be tried, and how."""
    return words.tr("Try the drying card {time}: {coating}, {trial}").format(
        time=words.when(ask.at, zone, now),
        coating=ask.card.coating,
        trial=QCoreApplication.translate("trial", ask.trial.value),
    )
