"""The keys of the bench mode and the row of caps that shows them."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QWidget

from app.window import words
from app.window.bench_mode.large_text import KeyCap
from app.window.flow_layout import FlowLayout
from app.window.palette import Colours

Key = Qt.Key


class Deed(StrEnum):
    """What a key does while a job is shown."""

    BEGIN = "begin"
    DONE = "done"
    PLACE = "place"
    TACKY = "tacky"
    WRONG = "wrong"
    NOT_NOW = "not now"
    MISSED = "missed"
    SEEN = "seen"
    INSTEAD = "instead"
    OTHER = "other"
    NOTE = "note"
    GAUGE = "gauge"
    LOOK = "look"
    HOUR = "hour"
    END = "end"
    CHECK = "check"
    CLOSE = "close"
    BACK = "back"
    LEAVE = "leave"


@dataclass(frozen=True)
class Binding:
    """Keys of a deed, and how its cap is inscribed."""

    deed: Deed
    keys: tuple[Qt.Key, ...]
    cap: str


BINDINGS = (
    Binding(Deed.BEGIN, (Key.Key_S,), "S"),
    Binding(Deed.DONE, (Key.Key_Space,), "Space"),
    Binding(Deed.PLACE, tuple(Qt.Key(Key.Key_0.value + n) for n in range(10)), "1–9"),
    Binding(Deed.TACKY, (Key.Key_K,), "K"),
    Binding(Deed.WRONG, (Key.Key_R,), "R"),
    Binding(Deed.NOT_NOW, (Key.Key_N,), "N"),
    Binding(Deed.MISSED, (Key.Key_W,), "W"),
    Binding(Deed.SEEN, (Key.Key_L,), "L"),
    Binding(Deed.INSTEAD, (Key.Key_A,), "A"),
    Binding(Deed.OTHER, (Key.Key_O,), "O"),
    Binding(Deed.NOTE, (Key.Key_M,), "M"),
    Binding(Deed.GAUGE, (Key.Key_G,), "G"),
    Binding(Deed.LOOK, (Key.Key_Left, Key.Key_Right), "← →"),
    Binding(Deed.HOUR, (Key.Key_H,), "H"),
    Binding(Deed.END, (Key.Key_E,), "E"),
    Binding(Deed.CHECK, (Key.Key_C,), "C"),
    Binding(Deed.CLOSE, (Key.Key_F,), "F"),
    Binding(Deed.BACK, (Key.Key_Backspace,), "⌫"),
    Binding(Deed.LEAVE, (Key.Key_Escape, Key.Key_F11), "Esc"),
)
BY_KEY = {key: binding.deed for binding in BINDINGS for key in binding.keys}


def deed_word(deed: Deed) -> str:
    """Return what a key does, as its cap says it."""
    told = {
        Deed.BEGIN: words.tr("begin"),
        Deed.DONE: words.tr("done"),
        Deed.PLACE: words.tr("tick"),
        Deed.TACKY: words.tr("still tacky"),
        Deed.WRONG: words.tr("wrong"),
        Deed.NOT_NOW: words.tr("not this one"),
        Deed.MISSED: words.tr("window missed"),
        Deed.SEEN: words.tr("had a look"),
        Deed.INSTEAD: words.tr("another job"),
        Deed.OTHER: words.tr("did something else"),
        Deed.NOTE: words.tr("note"),
        Deed.GAUGE: words.tr("gauge"),
        Deed.LOOK: words.tr("browse"),
        Deed.HOUR: words.tr("hour more"),
        Deed.END: words.tr("stop"),
        Deed.CHECK: words.tr("check"),
        Deed.CLOSE: words.tr("finish the evening"),
        Deed.BACK: words.tr("take back"),
        Deed.LEAVE: words.tr("leave"),
    }
    return told[deed]


MAIN = (Deed.DONE, Deed.PLACE, Deed.BEGIN, Deed.TACKY, Deed.NOT_NOW, Deed.BACK, Deed.OTHER)
WAITING = (
    Deed.DONE,
    Deed.INSTEAD,
    Deed.OTHER,
    Deed.LOOK,
    Deed.BACK,
)  # while the next job has to wait
NOT_WHILE_WAITING = (Deed.DONE, Deed.PLACE)  # its places are not on screen
MAIN_SHOWN = 4  # and Esc; the rest stands behind the question mark


def main_deeds(deeds: list[Deed], *, waiting: bool = False) -> list[Deed]:
    """Return the few whose keys are shown unasked; there are others."""
    few = WAITING if waiting else MAIN
    found = [deed for deed in few if deed in deeds][:MAIN_SHOWN]
    return [*found, Deed.LEAVE]


def key_lines() -> list[tuple[str, str]]:
    """Return every key of the bench mode with what it does."""
    return [
        *of_deeds(list(Deed)),
        ("?", words.tr("all keys, or the usual five")),
        ("F1", words.tr("what the keys do")),
    ]


def caps(shown: list[tuple[str, str]], colours: Colours, scale: float) -> QWidget:
    """Return a row of key caps, broken where it is full."""
    holder = QWidget()
    flow = FlowLayout(holder, across=round(15 * scale), down=round(5 * scale))
    for key, told in shown:
        flow.addWidget(KeyCap(colours, scale, key, told))
    return holder


def of_deeds(deeds: list[Deed]) -> list[tuple[str, str]]:
    """Return caps and words of deeds, in the order of the keys."""
    space = words.tr("Space")  # the one cap that is a word and not a sign
    return [
        (space if binding.cap == "Space" else binding.cap, deed_word(binding.deed))
        for binding in BINDINGS
        if binding.deed in deeds
    ]
