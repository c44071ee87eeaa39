"""Colours: contrast as WCAG 2.2 asks, of the tokens and of what is painted."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QColor, QImage, QPainter, QPalette, QStandardItemModel
from PySide6.QtWidgets import (
    QApplication,
    QComboBox,
    QDateEdit,
    QDialogButtonBox,
    QLineEdit,
    QPlainTextEdit,
    QPushButton,
    QSpinBox,
)

from app.window import mark_drawing, palette
from app.window.forms.tables import lines_table
from app.window.labels import swatch_icon
from app.window.palette import (
    DARK,
    LIGHT,
    box_palette,
    contrast,
    luminance,
    qt_palette,
)
from app.window.wedge_geometry import wedge_outline
from planner.values.step import Stage, Tool

ICON = Qt.ItemDataRole.DecorationRole


def test_contrast_is_that_of_wcag() -> None:
    # WCAG 2.2, definition "contrast ratio": from 1 to 21.
    assert contrast("#000000", "#ffffff") == pytest.approx(21)
    assert contrast("#808080", "#808080") == 1
    # Luminance of the primaries are the weights of the definition itself.
    assert luminance("#00ff00") == pytest.approx(0.7152)
    # The darkest grey that fails 4.5 : 1 on white, from memory: #777777 has 4.48.
    assert contrast("#777777", "#ffffff") == pytest.approx(4.48, abs=0.005)


LOOKS = pytest.mark.parametrize("colours", [LIGHT, DARK], ids=["light", "dark"])
GROUNDS = ("paper", "sheet", "rail", "gutter", "stroke", "finding")


@LOOKS
@pytest.mark.parametrize("ink", ["ink", "soft", "drying_word", "closing_word"])
@pytest.mark.parametrize("ground", GROUNDS)
def test_text_can_be_read_on_every_ground(colours: palette.Colours, ink: str, ground: str) -> None:
    # WCAG 2.2, 1.4.3: text 4.5 : 1.  What is chosen lies on "stroke".
    assert contrast(getattr(colours, ink), getattr(colours, ground)) >= 4.5


@LOOKS
@pytest.mark.parametrize(
    "mark", ["frame", "focus", "drying_word", "closing", "caution", "ready", "pinned"]
)
@pytest.mark.parametrize("ground", GROUNDS)
def test_marks_are_seen_on_every_ground(colours: palette.Colours, mark: str, ground: str) -> None:
    # WCAG 2.2, 1.4.11: what carries meaning 3 : 1.
    if (mark, ground, colours.dark) == ("frame", "stroke", True):
        return  # what has a frame there keeps a ground of its own
    assert contrast(getattr(colours, mark), getattr(colours, ground)) >= 3


def seen_against(image: QImage, ground: str) -> float:
    """Return the greatest contrast of any pixel of a picture against its ground."""
    names = {
        image.pixelColor(x, y).name() for x in range(image.width()) for y in range(image.height())
    }
    return max(contrast(name, ground) for name in names)


def picture(ground: str) -> QImage:
    image = QImage(80, 40, QImage.Format.Format_RGB32)
    image.fill(QColor(ground))
    return image


@LOOKS
@pytest.mark.parametrize("ground", ["paper", "sheet", "gutter"])
@pytest.mark.parametrize("strong", [True, False], ids=["strong", "weak"])
@pytest.mark.parametrize("wide", [40, 70], ids=["short", "long"])
def test_a_wedge_is_seen_along_its_edge(
    colours: palette.Colours, ground: str, strong: bool, wide: float
) -> None:
    """Of its outline every column has a pixel of 3 : 1 (WCAG 2.2, 1.4.11), not its ends alone."""
    under = getattr(colours, ground)
    image = picture(under)
    painter = QPainter(image)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    corners = wedge_outline(5, 5 + wide, 20, 14, 5 + wide)
    mark_drawing.paint_wedge(painter, corners, colours, strong=strong)
    painter.end()
    for x in range(8, 5 + int(wide * 0.9)):
        assert seen_against(image.copy(x, 0, 1, 40), under) >= 3, x


WHITE, NEAR_BLACK, MIDDLE = "#fbfaf6", "#1d1c1b", "#8c8c8c"


@LOOKS
@pytest.mark.parametrize("ground", ["paper", "sheet", "gutter"])
@pytest.mark.parametrize(
    "swatch", [WHITE, NEAR_BLACK, MIDDLE, ""], ids=["white", "black", "grey", "none"]
)
@pytest.mark.parametrize("stage", [Stage.BASE, Stage.DECAL])
@pytest.mark.parametrize("faded", [True, False], ids=["faded", "plain"])
@pytest.mark.parametrize("wide", [5, 40], ids=["narrow", "wide"])
def test_work_in_any_colour_is_seen(
    colours: palette.Colours, ground: str, swatch: str, stage: Stage, faded: bool, wide: float
) -> None:
    """A white decal on a white page, too, has an edge of 3 : 1 (WCAG 2.2, 1.4.11)."""
    under = getattr(colours, ground)
    for tool in (Tool.AIRBRUSH, Tool.BRUSH):
        image = picture(under)
        painter = QPainter(image)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        mark_drawing.paint_work(
            painter,
            QRectF(10, 8, wide, 20),
            colours,
            swatch=swatch,
            tool=tool,
            stage=stage,
            name="decals",
            faded=faded,
        )
        painter.end()
        assert seen_against(image, under) >= 3


@LOOKS
def test_fields_and_buttons_have_a_frame_that_is_seen(
    qtbot, qapp: QApplication, colours: palette.Colours
) -> None:
    palette.dress(qapp, colours)
    fields = [QLineEdit(), QComboBox(), QSpinBox(), QDateEdit(), QPushButton("x"), QPlainTextEdit()]
    for field in fields:
        qtbot.addWidget(field)
        field.resize(120, 40)
        row = field.grab().toImage()
        edge = {row.pixelColor(row.width() // 2, y).name() for y in range(4)}
        assert max(contrast(name, colours.paper) for name in edge) >= 3, type(field)


@LOOKS
def test_a_chosen_row_has_a_bar_and_an_untinted_picture(
    qtbot, qapp: QApplication, colours: palette.Colours
) -> None:
    palette.dress(qapp, colours)
    table = lines_table("lines", QStandardItemModel(2, 2))
    qtbot.addWidget(table)
    table.model().setData(table.model().index(1, 0), swatch_icon("#c02020"), ICON)
    table.resize(240, 120)
    table.show()
    table.selectRow(1)
    seen = table.viewport().grab().toImage()
    row = table.visualRect(table.model().index(1, 0))
    middle = row.center().y()
    assert seen.pixelColor(row.left() + 1, middle).name() == colours.focus.lower()
    other = table.visualRect(table.model().index(0, 0)).center().y()
    assert seen.pixelColor(row.left() + 1, other).name() != colours.focus.lower()
    dab = {seen.pixelColor(x, middle).name() for x in range(row.left(), row.left() + 24)}
    assert "#c02020" in dab


def test_no_pictures_on_the_buttons_of_dialogs(qtbot, qapp: QApplication) -> None:
    palette.dress(qapp, LIGHT)
    kind = QDialogButtonBox.StandardButton
    box = QDialogButtonBox(kind.Save | kind.Cancel)
    qtbot.addWidget(box)
    box.show()
    assert all(button.icon().isNull() for button in box.buttons())


@LOOKS
def test_controls_of_qt_can_be_read(colours: palette.Colours) -> None:
    made = qt_palette(colours)
    role, group_ = QPalette.ColorRole, QPalette.ColorGroup
    for ink, ground in (
        (role.WindowText, role.Window),
        (role.Text, role.Base),
        (role.Text, role.AlternateBase),
        (role.ButtonText, role.Button),
        (role.HighlightedText, role.Highlight),
        (role.PlaceholderText, role.Base),
        (role.ToolTipText, role.ToolTipBase),
        (role.Link, role.Window),
        (role.Link, role.Base),
    ):
        # Disabled text need not be readable by WCAG; ours is, for it tells what is missing.
        for group in (group_.Active, group_.Inactive, group_.Disabled):
            names = (made.color(group, ink).name(), made.color(group, ground).name())
            assert contrast(*names) >= 4.5, (group, ink, ground)


def test_tick_boxes_are_seen_in_both_looks() -> None:
    # WCAG 2.2, 1.4.11: parts of a control stand out at 3 : 1.  Qt's Fusion style frames
    # a box in the window's colour, darker by 140 and then lighter by 110.
    for colours in (LIGHT, DARK):
        frame = box_palette(colours).window().color().darker(140).lighter(110)
        assert contrast(frame.name(), colours.paper) >= 3
