"""Colours, light and dark, and how they reach Qt.

Blue stands for what dries and opens, orange for what closes or is late: a pair
that people with any common kind of colour vision can tell apart.  Colours
mark; they never speak alone: every state also has a shape and a word.
"""

from __future__ import annotations

from dataclasses import dataclass, fields
from enum import StrEnum
from functools import lru_cache

from PySide6.QtCore import Qt
from PySide6.QtGui import QColor, QPalette
from PySide6.QtWidgets import QApplication

TICKED = ("QCheckBox", "QRadioButton", "CheckList", "CoatPlacesTable")
"""Classes with boxes to tick, which need a frame that is seen."""
FRAMED = ("QLineEdit", "QComboBox", "QAbstractSpinBox", "QPushButton", "QPlainTextEdit")
"""Classes of fields and buttons, which need one as well."""
DARKER = 1.4
"""How much darker than the window's colour the style paints the frame of a field."""


class Appearance(StrEnum):
    """Which colours a person wants."""

    SYSTEM = "system"
    LIGHT = "light"
    DARK = "dark"


@dataclass(frozen=True)
class Colours:
    """One set of colours by what they are for.

    Attributes
    ----------
    paper, sheet, rail, gutter
        Grounds: the window, what lies on it, its edges, and the hours between.
    ink, soft
        Text, and text of less weight; both at least 4.5 : 1 on all grounds, chosen ones too.
    frame
        Edges of fields, of buttons and of whatever has to be told from its ground, 3 : 1.
    rule
        Hairlines, which mean nothing.
    shade
        Laid over what is past.
    drying, drying_word
        The wedge's fill, and text about it; its outline is ``focus``.
    closing, closing_word
        What closes, is late, or needs care: the mark, and text about it.
    ready, pinned
        Marks: an opened film, a wish.
    focus, stroke
        The frame of what has the keys, and the ground of what is chosen; a bar of the one
        stands at the edge of the other.
    finding, bare
        The ground of a finding, and plastic without a coat.
    """

    dark: bool
    paper: str
    sheet: str
    rail: str
    gutter: str
    ink: str
    soft: str
    frame: str
    rule: str
    shade: str
    drying: str
    drying_word: str
    closing: str
    closing_word: str
    ready: str
    caution: str
    pinned: str
    focus: str
    stroke: str
    finding: str
    bare: str

    def colour(self, name: str, alpha: float = 1.0) -> QColor:
        """Return a colour by its field's name, with an opacity."""
        return QColor(_made(getattr(self, name), alpha))


LIGHT = Colours(
    dark=False,
    paper="#F5F1E8",
    sheet="#FEFCF7",
    rail="#EFE9DC",
    gutter="#EAE3D4",
    ink="#25211C",
    soft="#5C554A",
    frame="#857B6B",
    rule="#DDD5C4",
    shade="#6B5F4C",
    drying="#A9D6F0",
    drying_word="#005E94",
    closing="#B84A00",
    closing_word="#9C3E00",
    ready="#00714F",
    caution="#B84A00",
    pinned="#A3457C",
    focus="#0072B2",
    stroke="#BFE0F4",
    finding="#FBE9DA",
    bare="#D9D2C3",
)

DARK = Colours(
    dark=True,
    paper="#17191B",
    sheet="#23272A",
    rail="#1C1F21",
    gutter="#1D2022",
    ink="#EDE8DD",
    soft="#B8B1A4",
    frame="#8A8479",
    rule="#383D41",
    shade="#000000",
    drying="#24556F",
    drying_word="#7CC7F2",
    closing="#FF9A57",
    closing_word="#FF9A57",
    ready="#1FBF90",
    caution="#FF9A57",
    pinned="#CC79A7",
    focus="#56B4E9",
    stroke="#20465E",
    finding="#3A2A1E",
    bare="#5A564E",
)


@lru_cache(maxsize=1024)
def _made(colour: str, alpha: float) -> QColor:
    """Return a colour that was read from its name once; drawings ask for it again and again."""
    made = QColor(colour)
    made.setAlphaF(alpha)
    return made


def luminance(colour: str) -> float:
    """Return the relative luminance of WCAG 2.2, definition "relative luminance"."""
    channels = (int(colour[at : at + 2], 16) / 255 for at in (1, 3, 5))
    red, green, blue = (
        value / 12.92 if value <= 0.04045 else ((value + 0.055) / 1.055) ** 2.4
        for value in channels
    )
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue


@lru_cache(maxsize=1024)
def contrast(name: str, other: str) -> float:
    """Return the contrast ratio of WCAG 2.2, definition "contrast ratio"."""
    lighter, darker = sorted((luminance(name), luminance(other)), reverse=True)
    return (lighter + 0.05) / (darker + 0.05)


def wanted(look: Appearance, app: QApplication) -> Colours:
    """Return the colours of a look; the system's wish where it says so."""
    if look is Appearance.SYSTEM:
        dark = app.styleHints().colorScheme() is Qt.ColorScheme.Dark
        return DARK if dark else LIGHT
    return DARK if look is Appearance.DARK else LIGHT


def dress(app: QApplication, colours: Colours) -> None:
    """Give Qt's own controls these colours."""
    # Once only, and so before any rules, which hide its name: done again while a dialog is open
    # whose buttons have something lying on them, as the ring of the keys, it ends the process.
    if not app.styleSheet() and app.style().name() != "fusion":
        app.setStyle("fusion")
    rules = _sheet(colours)
    if app.styleSheet() != rules:  # restyling every control is slow
        app.setPalette(qt_palette(colours))
        # The stubs want bytes, which the call itself refuses.
        for ticked in TICKED:
            app.setPalette(box_palette(colours, ticked), ticked)  # type: ignore[arg-type]
        for framed in FRAMED:
            app.setPalette(field_palette(colours), framed)  # type: ignore[arg-type]
        app.setStyleSheet(rules)


def qt_palette(colours: Colours) -> QPalette:
    """Return the palette for controls that we do not paint ourselves."""
    palette = QPalette()
    role = QPalette.ColorRole
    grounds = {
        role.Window: colours.paper,
        role.Base: colours.sheet,
        role.AlternateBase: colours.gutter,
        role.Button: colours.sheet,
        role.ToolTipBase: colours.sheet,
        role.Highlight: colours.stroke,
        role.Light: colours.sheet,
        role.Midlight: colours.rule,
        role.Mid: colours.rule,
        role.Dark: colours.soft,
        role.Shadow: colours.shade,
        role.Accent: colours.focus,
    }
    inks = (role.WindowText, role.Text, role.ButtonText, role.ToolTipText, role.BrightText)
    for each, colour in grounds.items():
        palette.setColor(each, QColor(colour))
    for each in inks:
        palette.setColor(each, QColor(colours.ink))
    palette.setColor(role.HighlightedText, QColor(colours.ink))
    palette.setColor(role.PlaceholderText, QColor(colours.soft))
    palette.setColor(role.Link, QColor(colours.drying_word))
    for each in (role.WindowText, role.Text, role.ButtonText):
        palette.setColor(QPalette.ColorGroup.Disabled, each, QColor(colours.soft))
    return palette


def box_palette(colours: Colours, ticked: str = "") -> QPalette:
    """Return the palette for tick boxes, and for lists of them, by their class.

    The style frames them in a darker shade of the window's colour, which
    nobody sees on a dark ground; a light one stands in for it there.  A box
    that has the keys it frames in the ground of what is chosen, seen as little.
    """
    palette = qt_palette(colours)
    palette.setColor(QPalette.ColorRole.Window, QColor(colours.soft))
    if ticked in ("QCheckBox", "QRadioButton"):
        palette.setColor(QPalette.ColorRole.Highlight, QColor(colours.focus))
    return palette


def field_palette(colours: Colours) -> QPalette:
    """Return the palette for fields and buttons: their frame stands out from what is around.

    The style paints it in the window's colour, made darker; on a dark ground nobody sees that.
    """
    palette = qt_palette(colours)
    frame = QColor(colours.frame)
    parts = (frame.red(), frame.green(), frame.blue())
    lighter = [min(255, round(part * DARKER)) for part in parts]
    palette.setColor(QPalette.ColorRole.Window, QColor(*lighter))
    return palette


def _sheet(colours: Colours) -> str:
    names = {field.name: getattr(colours, field.name) for field in fields(colours)}
    return _RULES.format(**names)


_RULES = """
QDialogButtonBox {{ dialogbuttonbox-buttons-have-icons: 0; }}
QToolTip {{ color: {ink}; background: {sheet}; border: 1px solid {frame}; padding: 4px; }}
QCheckBox, QRadioButton {{ padding: 4px 0; }}
QAbstractSpinBox {{ min-height: 21px; }}
QStatusBar {{ color: {soft}; }}
QStatusBar::item {{ border: none; }}
QMenuBar {{ background: {paper}; }}
QMenuBar::item {{ padding: 4px 10px; background: transparent; }}
QMenuBar::item:selected {{ background: {gutter}; }}
QToolButton:checked {{
    background: {stroke}; border: 2px solid {focus}; border-radius: 3px; font-weight: 600;
}}
QToolButton:focus {{ border: 2px solid {ink}; border-radius: 3px; }}
QToolButton:focus:!checked {{ background: {sheet}; }}
QTabBar#leaves::tab {{
    padding: 5px 11px; border: none; border-bottom: 3px solid transparent; color: {ink};
}}
QTabBar#leaves::tab:selected {{ border-bottom: 3px solid {focus}; font-weight: 600; }}
QTabBar#leaves::tab:hover:!selected {{ background: {gutter}; }}
QTabBar::scroller {{ width: 48px; }}
QSplitter::handle {{ background: {rule}; }}
QScrollBar {{ background: transparent; border: none; margin: 0; }}
QScrollBar:vertical {{ width: 12px; }}
QScrollBar:horizontal {{ height: 12px; }}
QScrollBar::handle {{ background: {frame}; border-radius: 4px; margin: 2px; }}
QScrollBar::handle:hover {{ background: {soft}; }}
QScrollBar::handle:vertical {{ min-height: 36px; }}
QScrollBar::handle:horizontal {{ min-width: 36px; }}
QScrollBar::add-line, QScrollBar::sub-line {{ width: 0; height: 0; }}
QScrollBar::add-page, QScrollBar::sub-page {{ background: transparent; }}
"""
