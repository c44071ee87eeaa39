"""Colours, light and dark, and how they reach Qt.

Hues are those of Okabe and Ito, "Color Universal Design" (2008), which
people with any common kind of colour vision can tell apart.  They mark;
they never speak alone: every state also has a shape and a word.
"""

from __future__ import annotations

from dataclasses import dataclass, fields
from enum import StrEnum
from functools import lru_cache

from PySide6.QtCore import Qt
from PySide6.QtGui import QColor, QPalette
from PySide6.QtWidgets import QApplication

ORANGE = "#E69F00"
SKY_BLUE = "#56B4E9"
BLUISH_GREEN = "#009E73"
YELLOW = "#F0E442"
BLUE = "#0072B2"
VERMILLION = "#D55E00"
REDDISH_PURPLE = "#CC79A7"


TICKED = ("QCheckBox", "QRadioButton", "CheckList", "PlacesTable")
"""Classes with boxes to tick, which need a frame that is seen."""


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
    paper, sheet, gutter
        Ground of the window, of what lies on it, and of the hours between.
    ink, soft
        Text, and text of less weight; both at least 4.5 : 1 on all grounds, chosen ones too.
    rule
        Hairlines.
    shade
        Laid over what is past.
    drying, drying_word
        The wedge, and text about it.
    closing, ready, caution, pinned
        Marks: the bracket, an opened film, a warning, a wish.
    focus, stroke
        The frame of what has the keys, and the ground of what is chosen.
    """

    dark: bool
    paper: str
    sheet: str
    gutter: str
    ink: str
    soft: str
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

    def colour(self, name: str, alpha: float = 1.0) -> QColor:
        """Return a colour by its field's name, with an opacity."""
        return QColor(_made(getattr(self, name), alpha))


LIGHT = Colours(
    dark=False,
    paper="#F5F1E8",
    sheet="#FEFCF7",
    gutter="#EBE5D8",
    ink="#25211C",
    soft="#5C554A",
    rule="#D6CDBC",
    shade="#6B5F4C",
    drying=SKY_BLUE,
    drying_word="#00598C",
    closing=VERMILLION,
    closing_word="#9C3F00",
    ready=BLUISH_GREEN,
    caution=ORANGE,
    pinned=REDDISH_PURPLE,
    focus=BLUE,
    stroke="#BFE0F4",
)

DARK = Colours(
    dark=True,
    paper="#1A1C1E",
    sheet="#222527",
    gutter="#141618",
    ink="#EDE8DD",
    soft="#B8B1A4",
    rule="#3C4043",
    shade="#000000",
    drying=SKY_BLUE,
    drying_word="#7CC6F0",
    closing=VERMILLION,
    closing_word="#FF9A57",
    ready="#1FBF90",
    caution=ORANGE,
    pinned=REDDISH_PURPLE,
    focus=SKY_BLUE,
    stroke="#20465E",
)


@lru_cache(maxsize=1024)
def _made(colour: str, alpha: float) -> QColor:
    """Return a colour that was read from its name once; drawings ask for it again and again."""
    made = QColor(colour)
    made.setAlphaF(alpha)
    return made


def luminance(colour: str) -> float:
    """Return the relative luminance of WCAG 2.1, definition "relative luminance"."""
    channels = (int(colour[at : at + 2], 16) / 255 for at in (1, 3, 5))
    red, green, blue = (
        value / 12.92 if value <= 0.04045 else ((value + 0.055) / 1.055) ** 2.4
        for value in channels
    )
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue


@lru_cache(maxsize=1024)
def contrast(name: str, other: str) -> float:
    """Return the contrast ratio of WCAG 2.1, definition "contrast ratio"."""
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


def _sheet(colours: Colours) -> str:
    names = {field.name: getattr(colours, field.name) for field in fields(colours)}
    return _RULES.format(**names)


_RULES = """
QToolTip {{ color: {ink}; background: {sheet}; border: 1px solid {rule}; padding: 4px; }}
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
QSplitter::handle {{ background: {rule}; }}
QScrollBar {{ background: transparent; border: none; margin: 0; }}
QScrollBar:vertical {{ width: 12px; }}
QScrollBar:horizontal {{ height: 12px; }}
QScrollBar::handle {{ background: {rule}; border-radius: 4px; margin: 2px; }}
QScrollBar::handle:hover {{ background: {soft}; }}
QScrollBar::handle:vertical {{ min-height: 36px; }}
QScrollBar::handle:horizontal {{ min-width: 36px; }}
QScrollBar::add-line, QScrollBar::sub-line {{ width: 0; height: 0; }}
QScrollBar::add-page, QScrollBar::sub-page {{ background: transparent; }}
"""
