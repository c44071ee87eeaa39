"""Models with faces: an outline by kind in its present coats, and a ribbon of its stages.

``paint_face`` is all
that a drawing needs; `FaceMark` is the widget, `face_icon` the picture for lists.
"""

from __future__ import annotations

from collections.abc import Iterable
from functools import lru_cache

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QIcon, QImage, QPainter, QPaintEvent, QPen, QPixmap, QPolygonF
from PySide6.QtWidgets import QSizePolicy, QWidget

from app.service.model_faces import Face, StageMark, StageProgress
from app.service.model_outlines import BOX, GLASS, LINE, OUTLINES
from app.window import words
from app.window.mark_drawing import edge_pen, pen_of, ratio_on_screen
from app.window.palette import Colours, contrast
from planner.values.model import ModelKind


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
