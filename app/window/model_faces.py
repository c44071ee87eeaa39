"""Models with faces: an outline by kind in its present coats, and a ribbon of its stages.

Outlines are of our own drawing, in a box of 96 by 48.  ``paint_face`` is all
that a drawing needs; `FaceMark` is the widget, `face_icon` the picture for lists.
"""

from __future__ import annotations

from collections.abc import Iterable
from functools import lru_cache

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QIcon, QImage, QPainter, QPaintEvent, QPen, QPixmap, QPolygonF
from PySide6.QtWidgets import QSizePolicy, QWidget

from app.service.model_faces import Face, StageMark, StageProgress
from app.window import words
from app.window.mark_drawing import edge_pen, pen_of, ratio_on_screen
from app.window.palette import Colours, contrast
from planner.values.model import ModelKind

BOX = (96.0, 48.0)
GLASS = "glass"
LINE = "line"
Area = tuple[str, str, tuple[float, ...]]
"""Which colour it takes, its shape ("poly", "rect", "oval", "line"), and its numbers."""


def _wheel(x: float, y: float, radius: float) -> tuple[Area, ...]:
    return (
        ("tyres", "oval", (x, y, radius, radius)),
        ("running", "oval", (x, y, radius * 0.5, radius * 0.5)),
    )


OUTLINES: dict[ModelKind, tuple[Area, ...]] = {
    ModelKind.WHEELED: (
        ("lower", "rect", (8, 31, 82, 5, 1)),
        ("1", "rect", (36, 15, 54, 16, 1)),
        (LINE, "line", (36, 20, 90, 20)),
        (LINE, "line", (36, 25.5, 90, 25.5)),
        ("0", "poly", (5, 33, 5, 24, 11, 12, 32, 12, 32, 33)),
        (GLASS, "poly", (10, 22, 14, 15, 22, 15, 22, 22)),
        *_wheel(18, 37, 7.5),
        *_wheel(62, 37, 7.5),
        *_wheel(80, 37, 7.5),
    ),
    ModelKind.TRACKED: (
        ("0", "rect", (36, 7, 26, 17, 2)),
        (GLASS, "rect", (40, 10, 12, 8, 1)),
        ("0", "poly", (14, 24, 84, 24, 88, 31, 12, 31)),
        ("tyres", "rect", (12, 29, 76, 15, 7.5)),
        *(("running", "oval", (x, 36.5, 4.6, 4.6)) for x in (21.0, 35.5, 50.0, 64.5, 79.0)),
        ("1", "poly", (2, 20, 7, 20, 10, 41, 1, 43)),
        (LINE, "line", (8, 32, 14, 30)),
    ),
    ModelKind.CAR: (
        ("0", "poly", (4, 36, 5, 27, 22, 23, 34, 12, 62, 12, 74, 23, 91, 27, 92, 36)),
        (GLASS, "poly", (28, 23, 37, 15, 46, 15, 46, 23)),
        (GLASS, "poly", (50, 23, 50, 15, 60, 15, 68, 23)),
        ("lower", "rect", (4, 33, 88, 4, 1.5)),
        *_wheel(24, 37, 7),
        *_wheel(74, 37, 7),
    ),
    ModelKind.RAIL: (
        (LINE, "line", (40, 9, 48, 1, 56, 9)),
        ("0", "rect", (6, 12, 84, 15, 3)),
        *((GLASS, "rect", (x, 15, 9, 8, 1)) for x in (12.0, 24.5, 37.0, 49.5, 62.0, 74.5)),
        ("1", "rect", (6, 25, 84, 9, 1)),
        ("roof", "rect", (10, 8, 76, 5, 2.5)),
        ("lower", "rect", (10, 34, 76, 3, 1)),
        *(("running", "oval", (x, 39.5, 4.6, 4.6)) for x in (20.0, 32.0, 64.0, 76.0)),
    ),
    ModelKind.BOAT: (
        (LINE, "line", (34, 24, 34, 4)),
        (LINE, "line", (34, 6, 56, 24)),
        ("2", "rect", (60, 5, 8, 10, 1)),
        ("1", "rect", (48, 13, 26, 13, 1)),
        *((GLASS, "rect", (x, 16, 5, 4, 1)) for x in (51.0, 58.5, 66.0)),
        ("0", "poly", (3, 24, 93, 26, 86, 42, 14, 42)),
        ("lower", "poly", (10.5, 36, 88.5, 36, 86, 42, 14, 42)),
    ),
    ModelKind.AIRCRAFT: (
        (LINE, "line", (5, 10, 5, 38)),
        ("1", "poly", (76, 19, 84, 4, 92, 4, 90, 20)),
        ("0", "poly", (6, 24, 12, 17, 40, 15, 70, 18, 93, 20, 93, 24, 60, 31, 14, 31)),
        (GLASS, "poly", (32, 16, 38, 9, 50, 9, 58, 17)),
        ("lower", "poly", (28, 25, 58, 25, 66, 30, 24, 30)),
        ("tyres", "oval", (30, 38, 4.5, 4.5)),
        (LINE, "line", (30, 34, 33, 30)),
    ),
    ModelKind.FIGURE: (
        ("lower", "rect", (30, 43, 36, 4, 1)),
        ("2", "poly", (42, 27, 54, 27, 54, 43, 49, 43, 48, 31, 47, 43, 42, 43)),
        (
            "1",
            "poly",
            (41, 14, 55, 14, 60, 28, 56, 29, 54, 22, 54, 29, 42, 29, 42, 22, 40, 29, 36, 28),
        ),
        ("0", "oval", (48, 8, 5, 6)),
        ("3", "poly", (42, 5, 45, 1, 51, 1, 54, 5)),
    ),
    ModelKind.BUILDING: (
        ("2", "rect", (60, 3, 7, 12, 0)),
        ("0", "rect", (18, 21, 60, 23, 0)),
        ("roof", "poly", (11, 22, 27, 6, 69, 6, 85, 22)),
        ("1", "rect", (43, 29, 10, 15, 0)),
        (GLASS, "rect", (25, 27, 10, 8, 0)),
        (GLASS, "rect", (61, 27, 10, 8, 0)),
    ),
    ModelKind.OTHER: (
        ("lower", "rect", (22, 40, 52, 4, 2)),
        ("0", "poly", (32, 16, 48, 8, 64, 16, 64, 34, 48, 40, 32, 34)),
        (LINE, "line", (32, 16, 48, 23, 64, 16)),
        (LINE, "line", (48, 23, 48, 40)),
    ),
}


def paint_face(painter: QPainter, rect: QRectF, face: Face, colours: Colours) -> None:
    """Paint the outline of a model into a rectangle, in its present coats."""
    scale = min(rect.width() / BOX[0], rect.height() / BOX[1])
    left = rect.center().x() - BOX[0] * scale / 2
    top = rect.center().y() - BOX[1] * scale / 2
    ratio = ratio_on_screen(painter)
    if ratio:  # on a whole pixel, as a picture: a screen full of them is laid at once
        image = _picture(face.kind, _filled(face, colours), colours, round(scale * 64), ratio)
        painter.drawImage(QPointF(round(left), round(top)), image)
        return
    painter.save()
    painter.translate(left, top)
    painter.scale(scale, scale)
    _draw(painter, face.kind, _filled(face, colours), colours, 1 / scale)
    painter.restore()


def _filled(face: Face, colours: Colours) -> tuple[str, ...]:
    """Return the colour of every area of an outline, in its order."""
    return tuple(
        colours.sheet
        if slot == GLASS
        else colours.soft
        if slot == LINE
        else face.colour(slot) or colours.bare
        for slot, _, _ in OUTLINES[face.kind]
    )


@lru_cache(maxsize=512)
def _picture(
    kind: ModelKind, fills: tuple[str, ...], colours: Colours, sixty_fourths: int, ratio: float
) -> QImage:
    scale = sixty_fourths / 64
    size = QSize(round(BOX[0] * scale * ratio) + 2, round(BOX[1] * scale * ratio) + 2)
    image = QImage(size, QImage.Format.Format_ARGB32_Premultiplied)
    image.setDevicePixelRatio(ratio)
    image.fill(Qt.GlobalColor.transparent)
    painter = QPainter(image)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.scale(scale, scale)
    _draw(painter, kind, fills, colours, 1 / scale)
    painter.end()
    return image


def _draw(
    painter: QPainter, kind: ModelKind, fills: tuple[str, ...], colours: Colours, pixel: float
) -> None:
    for (slot, shape, numbers), fill in zip(OUTLINES[kind], fills, strict=True):
        pen = QPen(QColor(fill)) if slot == LINE else QPen(_edge(fill, colours))
        pen.setWidthF(pixel)
        painter.setPen(pen)
        painter.setBrush(QColor(fill) if slot != LINE else Qt.BrushStyle.NoBrush)
        if shape == "rect":
            x, y, wide, tall, radius = numbers
            painter.drawRoundedRect(QRectF(x, y, wide, tall), radius, radius)
        elif shape == "oval":
            x, y, across, down = numbers
            painter.drawEllipse(QPointF(x, y), across, down)
        else:
            points = [QPointF(x, y) for x, y in zip(numbers[::2], numbers[1::2], strict=True)]
            if shape == "poly":
                painter.drawPolygon(QPolygonF(points))
            else:
                painter.drawPolyline(QPolygonF(points))


def _edge(fill: str, colours: Colours) -> QPen:
    """Return the pen between areas; on a dark ground pale areas are parted darkly."""
    if colours.dark and contrast(fill, colours.soft) < 2 and contrast(fill, colours.sheet) >= 3:
        return pen_of(colours.paper, 1.0, 1.0)
    return edge_pen(fill, colours)


def paint_ribbon(
    painter: QPainter, rect: QRectF, marks: Iterable[StageMark], colours: Colours
) -> None:
    """Paint the stages of a model: filled where done, half where begun, open where to come."""
    marks = tuple(marks)
    if not marks:
        return
    gap = 2.0 if rect.width() / len(marks) >= 6 else 0.5
    wide = (rect.width() - gap * (len(marks) - 1)) / len(marks)
    radius = min(1.5, wide / 4)
    for at, mark in enumerate(marks):
        box = QRectF(rect.left() + at * (wide + gap), rect.top(), wide, rect.height())
        fill = mark.swatch or colours.soft
        painter.setPen(edge_pen(colours.sheet, colours))
        painter.setBrush(QColor(colours.sheet))
        painter.drawRoundedRect(box, radius, radius)
        if mark.progress is StageProgress.AHEAD:
            continue
        part = QRectF(box)
        if mark.progress is StageProgress.BEGUN:
            part.setWidth(box.width() / 2)
        painter.setPen(edge_pen(fill, colours))
        painter.setBrush(QColor(fill))
        painter.drawRoundedRect(part, radius, radius)


def stages_words(face: Face) -> str:
    """Return how far a model is: "2 of 7 steps done"."""
    told = words.tr("{done} of 1 step done")
    if len(face.ribbon) != 1:
        told = words.tr("{done} of {count} steps done")
    return told.format(done=face.done, count=len(face.ribbon))


def face_icon(face: Face, colours: Colours, photo: QPixmap | None = None) -> QIcon:
    """Return the picture of a model for a list: its photo, or else its outline; never tinted."""
    if photo is not None and not photo.isNull():
        pixmap = photo
    else:
        pixmap = QPixmap(2 * round(BOX[0]), 2 * round(BOX[1]))
        pixmap.fill(Qt.GlobalColor.transparent)
        painter = QPainter(pixmap)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        paint_face(painter, QRectF(pixmap.rect()), face, colours)
        painter.end()
    icon = QIcon(pixmap)
    icon.addPixmap(pixmap, QIcon.Mode.Selected)
    return icon


class FaceMark(QWidget):
    """A model's outline, and below it the ribbon of its stages where ``ribbon`` asks for it.

    What it shows stands in its accessible name, which whoever puts it up gives.
    """

    def __init__(
        self,
        face: Face,
        colours: Colours,
        *,
        wide: int = 64,
        ribbon: bool = False,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._face, self._colours, self._ribbon = face, colours, ribbon
        self.setFixedSize(wide, wide // 2 + (10 if ribbon else 0))
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)

    def show_face(self, face: Face, colours: Colours) -> None:
        """Show another face, or other colours."""
        self._face, self._colours = face, colours
        self.update()

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint outline and ribbon."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        tall = self.width() / 2
        paint_face(painter, QRectF(0, 0, self.width(), tall), self._face, self._colours)
        if self._ribbon:
            below = QRectF(1, tall + 3, self.width() - 2, 5)
            paint_ribbon(painter, below, self._face.ribbon, self._colours)
        painter.end()
        event.accept()
