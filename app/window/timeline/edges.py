"""The fixed edges of the strip: dates and hours, airbrushes, names of the lanes."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QFontMetricsF, QPainter, QPen

from app.window import mark_drawing, words
from app.window.strip_content import HeldColour, Piece, SetUp
from app.window.timeline import text_cache
from planner.values.plan import BenchKind
from planner.values.step import Stage

if TYPE_CHECKING:
    from app.window.timeline.geometry import PixelSpan
    from app.window.timeline.paint import StripScene
    from app.window.timeline.spatial_index import SquareItems

LEFT = Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter
LEAST_NAME = 30.0  # less room than this shows nothing but dots [px]
CENTRE = Qt.AlignmentFlag.AlignCenter


def paint_head(painter: QPainter, scene: StripScene) -> None:
    """Paint dates, hours, and the lengths of the waits between."""
    colours, sizes = scene.colours, scene.at.sizes
    head = QRectF(scene.left, 0, scene.area.right() - scene.left, sizes.head)
    painter.save()
    painter.setClipRect(head)
    painter.fillRect(head, colours.colour("gutter"))
    for span, left, right in scene.spans():
        if span.column is None:
            _wait(painter, scene, span, left, right)
        else:
            _date(painter, scene, span, left, right)
    _now(painter, scene, head)
    for _, at in scene.at.strip.targets:
        _target(painter, scene, at)
    painter.setPen(QPen(colours.colour("rule"), 1))
    painter.drawLine(QPointF(head.left(), head.bottom()), QPointF(head.right(), head.bottom()))
    painter.restore()


def _date(painter: QPainter, scene: StripScene, span: PixelSpan, left: float, right: float) -> None:
    colours, text = scene.colours, scene.at.sizes.text
    painter.fillRect(QRectF(left, 0, right - left, scene.at.sizes.head), colours.colour("sheet"))
    assert span.column is not None
    column = scene.at.strip.columns[span.column]
    painter.setPen(colours.colour("ink"))
    painter.setFont(scene.bold)
    name = words.day(column.on)
    if column.people > 1:
        name = words.tr("{date} · two people").format(date=name)
    shown_left = min(max(left, scene.left) + 8, max(left + 8, right - 90))
    room = right - shown_left
    shown = QFontMetricsF(painter.font()).elidedText(name, Qt.TextElideMode.ElideRight, room)
    painter.drawText(QRectF(shown_left, text * 0.25, room, text * 1.5), LEFT, shown)
    painter.setFont(scene.small)
    painter.setPen(colours.colour("soft"))
    for minute in scene.at.scale.ticks(span):
        x = scene.x(minute)
        if x + 37 <= right:
            clock = words.clock(minute, scene.zone)
            text_cache.write(painter, x + 3, text * 2.55, clock, 99)
        painter.drawLine(QPointF(x, scene.at.sizes.head - 4), QPointF(x, scene.at.sizes.head))


def _wait(painter: QPainter, scene: StripScene, span: PixelSpan, left: float, right: float) -> None:
    text = scene.at.sizes.text
    painter.setFont(scene.small)
    painter.setPen(scene.colours.colour("soft"))
    hours, minutes = divmod(span.end - span.start, 60)
    if hours >= 72:
        length = words.tr("{days} d {hours} h").format(days=hours // 24, hours=hours % 24)
    elif hours:
        length = words.tr("{hours} h {minutes:02d}").format(hours=hours, minutes=minutes)
    else:
        length = words.tr("{minutes} min").format(minutes=minutes)
    painter.drawText(QRectF(left, text * 0.3, right - left, text * 1.4), CENTRE, length)
    free = sum(
        span.start <= interval.start and interval.end <= span.end
        for interval in scene.at.strip.free
    )
    if free:
        name = words.tr("{n} free").format(n=free)
        painter.drawText(QRectF(left, text * 1.8, right - left, text * 1.4), CENTRE, name)


def _now(painter: QPainter, scene: StripScene, head: QRectF) -> None:
    end = scene.x(scene.now)
    if end <= head.left():
        return
    mark_drawing.paint_past(
        painter,
        QRectF(head.left(), 0, min(end, head.right()) - head.left(), head.height()),
        scene.colours,
    )


def _target(painter: QPainter, scene: StripScene, at: int) -> None:
    """Paint a date as a small flag at the end of its day."""
    x = scene.x(at)
    if not scene.sees(x - 4, x + 30):
        return
    bottom = scene.at.sizes.head
    painter.setPen(QPen(scene.colours.colour("ink"), 1.4))
    painter.drawLine(QPointF(x, bottom - 22), QPointF(x, bottom))
    painter.setBrush(scene.colours.colour("pinned"))
    painter.drawPolygon(
        [QPointF(x, bottom - 22), QPointF(x + 11, bottom - 17.5), QPointF(x, bottom - 13)]
    )


def paint_band(painter: QPainter, scene: StripScene, items: SquareItems) -> None:
    """Paint what each airbrush holds, and its loads, changes and cleanings."""
    strip, sizes, colours = scene.at.strip, scene.at.sizes, scene.colours
    area = QRectF(scene.left, sizes.head, scene.area.right() - scene.left, scene.top - sizes.head)
    for span, left, right in scene.spans():
        if span.column is not None:
            low, high = max(round(left), round(area.left())), min(round(right), round(area.right()))
            top, tall = round(area.top()), round(area.height())
            painter.fillRect(low, top, high - low, tall, colours.colour("sheet"))
    end = min(scene.x(scene.now), area.right())
    if end > area.left():
        mark_drawing.paint_past(
            painter, QRectF(area.left(), area.top(), end - area.left(), area.height()), colours
        )
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    for number in items.held:
        _held(painter, scene, strip.held[number])
    for number in items.sprayed:
        piece = strip.pieces[number]
        _sprayed(painter, scene, strip.airbrushes.index(piece.airbrush), piece)
    for number in items.set_ups:
        work = strip.set_ups[number]
        if work.airbrush is not None:
            _set_up(painter, scene, work, work.airbrush)
    painter.setPen(QPen(colours.colour("soft", 0.8), 1))
    y = round(area.bottom()) - 0.5
    painter.drawLine(QPointF(area.left(), y), QPointF(area.right(), y))


def _brush_middle(scene: StripScene, airbrush: int) -> float:
    sizes = scene.at.sizes
    return sizes.head + sizes.airbrush * (airbrush + 0.5)


def _held(painter: QPainter, scene: StripScene, held: HeldColour) -> None:
    left, right = scene.x(held.interval.start), scene.x(held.interval.end)
    if not scene.sees(left, right):
        return
    middle = _brush_middle(scene, held.airbrush)
    painter.setPen(QPen(mark_drawing.edge_on(held.swatch, scene.colours), 1))
    painter.setBrush(mark_drawing.brush_of(held.swatch, 1.0))
    painter.drawRect(QRectF(left, middle - 3, right - left, 6))


def _sprayed(painter: QPainter, scene: StripScene, airbrush: int, piece: Piece) -> None:
    left, right = scene.x(piece.interval.start), scene.x(piece.interval.end)
    if not scene.sees(left, right):
        return
    height = scene.at.sizes.text * 1.15
    middle = _brush_middle(scene, airbrush)
    mark_drawing.paint_work(
        painter,
        QRectF(left + 0.5, middle - height / 2, max(4.0, right - left - 1), height),
        scene.colours,
        swatch=piece.swatch,
        tool=piece.tool,
        stage=Stage.BASE,
        name=piece.key,
        faded=piece.logged,
    )


def _set_up(painter: QPainter, scene: StripScene, work: SetUp, airbrush: int) -> None:
    """Paint a load as a drop going in, a change as two, a cleaning as an empty cup."""
    left, right = scene.x(work.interval.start), scene.x(work.interval.end)
    if not scene.sees(left, right):
        return
    text = scene.at.sizes.text
    middle = _brush_middle(scene, airbrush)
    rect = QRectF(left, middle - text * 0.5, max(3.0, right - left), text)
    pen = QPen(scene.colours.colour("soft"), 1)
    painter.setPen(pen)
    painter.setBrush(scene.colours.colour("gutter"))
    painter.drawRoundedRect(rect, 2, 2)
    if work.kind in (BenchKind.LOAD, BenchKind.CHANGE):
        painter.setBrush(QColor(work.swatch))
        size = min(rect.width() * 0.42, text * 0.3)
        painter.drawEllipse(rect.center(), size, size)
    else:
        painter.drawLine(rect.bottomLeft(), rect.topRight())
    painter.setPen(scene.colours.colour("soft"))
    minutes = f"{work.interval.minutes}′"
    painter.setFont(scene.small)
    if QFontMetricsF(scene.small).horizontalAdvance(minutes) <= rect.width() + 8:
        below = QRectF(rect.center().x() - 20, rect.bottom() + 1, 40, text * 1.1)
        painter.drawText(below, CENTRE, minutes)


def paint_loads(painter: QPainter, scene: StripScene, items: SquareItems) -> None:
    """Write over each load what it is, up to the next one; it stays in sight as long as that."""
    text = scene.at.sizes.text
    painter.setFont(scene.small)
    painter.setPen(scene.colours.colour("ink"))
    for number in items.held:
        held = scene.at.strip.held[number]
        left, right = scene.x(scene.at.loaded[number]), scene.x(held.interval.end)
        if not scene.sees(left, right):
            continue
        left = max(left, min(scene.left + 4, right - 60))
        middle = _brush_middle(scene, held.airbrush)
        width = right - left - 2
        if width < LEAST_NAME:
            continue
        text_cache.write(painter, left, middle - text * 1.15, held.coating, width)


def paint_names(painter: QPainter, scene: StripScene) -> None:
    """Paint the names of models, part groups and airbrushes at the left edge."""
    colours = scene.colours
    edge = QRectF(0, 0, scene.left, scene.area.bottom())
    painter.fillRect(edge, colours.colour("paper"))
    painter.save()
    painter.setClipRect(QRectF(0, scene.top, scene.area.right(), scene.area.bottom() - scene.top))
    strong = QFontMetricsF(scene.bold)
    for row in scene.at.rows:
        top = scene.top + row.top - scene.down
        height = row.bottom - row.top
        if top + height < scene.top or top > scene.area.bottom():
            continue
        if row.lane is None:
            painter.setFont(scene.bold)
            painter.setPen(colours.colour("ink"))
            wide = scene.area.right() - 16  # a heading's band is free of work
            text_cache.write(painter, 10, top + height / 2, row.model, wide)
            continue
        painter.setFont(scene.small)
        painter.setPen(colours.colour("soft"))
        lane = scene.at.strip.lanes[row.lane]
        told = words.listed(lane.parts)
        text_cache.write(painter, 20, top + height / 2, told, scene.left - 26)
    painter.restore()
    painter.setFont(scene.bold)
    painter.setPen(colours.colour("ink"))
    for index, name in enumerate(scene.at.strip.airbrushes):
        middle = _brush_middle(scene, index)
        shown = strong.elidedText(words.capital(name), Qt.TextElideMode.ElideRight, scene.left - 16)
        painter.drawText(QRectF(10, middle - 10, scene.left - 12, 20), LEFT, shown)
    _corner(painter, scene)


def _corner(painter: QPainter, scene: StripScene) -> None:
    """Say in the corner which minute the shade has reached."""
    text = scene.at.sizes.text
    painter.setFont(scene.small)
    painter.setPen(scene.colours.colour("soft"))
    name = words.tr("now {date} {time}").format(
        date=words.day_of(scene.now, scene.zone), time=words.clock(scene.now, scene.zone)
    )
    painter.drawText(QRectF(10, text * 0.2, scene.left - 12, text * 1.5), LEFT, name)
    swatch = QRectF(10, text * 1.9, text * 1.6, text * 1.1)
    mark_drawing.paint_past(painter, swatch, scene.colours)
    painter.drawText(
        QRectF(swatch.right() + 6, text * 1.8, scene.left, text * 1.3), LEFT, words.tr("is past")
    )
