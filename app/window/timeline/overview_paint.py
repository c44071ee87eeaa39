"""The overview on a painter: dates, cups, lanes with faces, work, wedges, flags."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Callable
from datetime import date
from functools import lru_cache
from zoneinfo import ZoneInfo

from PySide6.QtCore import QCoreApplication, QPointF, QRectF, Qt
from PySide6.QtGui import QFontMetricsF, QPainter, QPen, QPolygonF

from app.window import mark_drawing, reasons, words
from app.window.model_faces import paint_face
from app.window.strip_content import HeldColour, Wedge
from app.window.timeline.geometry import PixelSpan
from app.window.timeline.overview_layout import OverviewLane
from app.window.timeline.overview_scene import FACE, OverviewScene
from app.window.timeline.strip_boxes import Box
from app.window.timeline.sure_bands import paint_bands, pressed_x
from app.window.wedge_geometry import wedge_outline
from planner.values.coating import Family

CENTRE = Qt.AlignmentFlag.AlignCenter
LEFT = Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter
RIGHT = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter
CUT = Qt.TextElideMode.ElideRight


def paint_overview(painter: QPainter, scene: OverviewScene) -> None:
    """Paint everything but frames."""
    painter.fillRect(QRectF(QPointF(0, 0), scene.size.toSizeF()), scene.colours.colour("gutter"))
    _grounds(painter, scene)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    _heads(painter, scene)
    _cups(painter, scene)
    _names(painter, scene)
    lanes = {number: lane for lane in scene.at.lanes for number in lane.lanes[:1]}
    painter.setClipRect(QRectF(scene.edges.left, 0, scene.size.width(), scene.size.height()))
    for wedge in scene.at.strip.wedges:
        if wedge.lane in lanes:
            _wedge(painter, scene, wedge, lanes[wedge.lane])
    for box in scene.at.boxes:
        _work(painter, scene, box)
    for bracket in scene.at.strip.brackets:
        if bracket.lane in lanes:
            x, middle = scene.x(bracket.at), scene.edges.top + lanes[bracket.lane].middle
            half = scene.stroke * 0.66
            mark_drawing.paint_bracket(painter, x, middle - half, middle + half, scene.colours)
    _flags(painter, scene)
    _targets(painter, scene)
    paint_bands(painter, scene)
    _now(painter, scene)
    painter.setClipping(False)


def _grounds(painter: QPainter, scene: OverviewScene) -> None:
    colours, bottom = scene.colours, scene.edges.top + scene.at.height
    for span in scene.at.scale.spans:
        if span.column is not None:
            left = round(scene.edges.left + span.left)
            wide = round(scene.edges.left + span.right) - left
            painter.fillRect(left, 0, wide, round(bottom), colours.colour("sheet"))
    painter.fillRect(QRectF(0, 0, scene.edges.left, scene.size.height()), colours.colour("paper"))
    wide = scene.size.width()
    for y in (
        scene.edges.head,
        scene.edges.top,
        *(scene.edges.top + lane.bottom for lane in scene.at.lanes),
    ):
        painter.fillRect(0, round(y), wide, 1, colours.colour("rule"))
    end = scene.x(scene.now)
    if end > scene.edges.left:
        past = QRectF(scene.edges.left, 0, end - scene.edges.left, bottom)
        mark_drawing.paint_past(painter, past, colours)


def _heads(painter: QPainter, scene: OverviewScene) -> None:
    """Paint dates with their hours, and how many hours lie between."""
    text, colours = QFontMetricsF(scene.font).height(), scene.colours
    day = _day_form(scene)
    for span in scene.at.scale.spans:
        left, wide = scene.edges.left + span.left, span.width
        if span.column is None:
            painter.setFont(scene.small)
            painter.setPen(colours.colour("soft"))
            hours = str(round((span.end - span.start) / 60))
            if QFontMetricsF(scene.small).horizontalAdvance(hours) <= wide:
                painter.drawText(QRectF(left, text * 1.3, wide, text), CENTRE, hours)
            continue
        column = scene.at.strip.columns[span.column]
        start, end = (words.clock(minute, scene.zone) for minute in (span.start, span.end))
        hours = words.tr("{start}–{end}").format(start=start, end=end)
        if QFontMetricsF(scene.small).horizontalAdvance(hours) > wide - 4:
            hours = start  # whole, where there is no room for both
        for font, ink, y, told in (
            (scene.bold, "ink", 0.15, day(column.on)),
            (scene.small, "soft", 1.3, hours),
        ):
            painter.setFont(font)
            painter.setPen(colours.colour(ink))
            shown = QFontMetricsF(font).elidedText(told, CUT, wide - 4)
            painter.drawText(QRectF(left + 4, text * y, wide - 4, text), LEFT, shown)


def _day_form(scene: OverviewScene) -> Callable[[date], str]:
    """Return how dates are said here: alike, and shorter where one would be cut."""
    metrics, columns = QFontMetricsF(scene.bold), scene.at.strip.columns
    heads = [
        (columns[span.column].on, span.width - 4)
        for span in scene.at.scale.spans
        if span.column is not None
    ]
    for form in (words.day, words.narrow_day):
        if all(metrics.horizontalAdvance(form(on)) <= wide for on, wide in heads):
            return form
    return lambda on: str(on.day)


def _cups(painter: QPainter, scene: OverviewScene) -> None:
    """Paint each fill as a cup of its colour, and below those of a session their names."""
    strip, edges = scene.at.strip, scene.edges
    for number, name in enumerate(strip.airbrushes):
        painter.setFont(scene.font)
        painter.setPen(scene.colours.colour("ink"))
        top = edges.head + edges.cups * number
        shown = QFontMetricsF(scene.font).elidedText(words.capital(name), CUT, edges.left - 16)
        painter.drawText(QRectF(10, top, edges.left - 12, edges.cups), LEFT, shown)
    for held in strip.held:
        rect = _cup_rect(scene, held)
        painter.setPen(mark_drawing.edge_pen(held.swatch, scene.colours))
        painter.setBrush(mark_drawing.brush_of(held.swatch, 1.0))
        lean = min(3.0, rect.width() / 4)
        painter.drawPolygon(
            QPolygonF(
                [
                    rect.topLeft(),
                    rect.topRight(),
                    QPointF(rect.right() - lean, rect.bottom()),
                    QPointF(rect.left() + lean, rect.bottom()),
                ]
            )
        )
    painter.setFont(scene.small)
    painter.setPen(scene.colours.colour("ink"))
    metrics = QFontMetricsF(scene.small)
    for span in scene.at.scale.spans:
        if span.column is not None:
            for number in range(edges.brushes):
                told = _cup_words(scene, span, number)
                shown = metrics.elidedText(told, CUT, span.width - 4)
                y = edges.head + edges.cups * (number + 1) - metrics.height() - 1
                spot = QRectF(edges.left + span.left + 4, y, span.width - 4, metrics.height())
                painter.drawText(spot, LEFT, shown)


def _cup_rect(scene: OverviewScene, held: HeldColour) -> QRectF:
    left, right = scene.x(held.interval.start), scene.x(held.interval.end)
    tall = QFontMetricsF(scene.font).height() * 1.0
    top = scene.edges.head + scene.edges.cups * held.airbrush + 4
    return QRectF(left, top, max(3.0, right - left), tall)


def _cup_words(scene: OverviewScene, span: PixelSpan, airbrush: int) -> str:
    """Return the colour that is held longest in a session, and how many others are."""
    minutes: dict[str, int] = defaultdict(int)
    for held in scene.at.strip.held:
        if held.airbrush == airbrush and span.start <= held.interval.start < span.end:
            minutes[held.coating] += held.interval.minutes
    if not minutes:
        return ""
    longest = max(minutes, key=lambda name: minutes[name])
    if len(minutes) == 1:
        return short_colour(longest)
    return words.tr("{colour} +{n}").format(colour=short_colour(longest), n=len(minutes) - 1)


def short_colour(name: str) -> str:
    """Return what a coating is called beside its family: of "waterborne acrylic, sand" the sand."""
    own = [part for part in name.split(", ") if not _of_family(part)]
    return own[-1] if own else name


@lru_cache(maxsize=512)
def _of_family(part: str) -> bool:
    """Tell whether a part of a name says nothing but the family."""
    told = [QCoreApplication.translate("family", family.value) for family in Family]
    known = {word for name in (*told, *Family) for word in name.casefold().split()}
    return all(word in known for word in part.casefold().split())


def _names(painter: QPainter, scene: OverviewScene) -> None:
    metrics = QFontMetricsF(scene.font)
    for lane in scene.at.lanes:
        top, tall = scene.edges.top + lane.top, lane.bottom - lane.top
        face = scene.faces.get(lane.at)
        if face is not None:
            box = QRectF(6, top + 2, FACE, tall - 4)
            paint_face(painter, box, face, scene.colours)
        late = scene.ends.get(lane.at, (0, False))[1]
        painter.setFont(scene.bold if late else scene.font)
        painter.setPen(scene.colours.colour("closing_word" if late else "ink"))
        room = scene.edges.left - FACE - 18
        shown = metrics.elidedText(lane.at[1], Qt.TextElideMode.ElideLeft, room)
        painter.drawText(QRectF(FACE + 12, top, room, tall), LEFT, shown)


def _wedge(painter: QPainter, scene: OverviewScene, wedge: Wedge, lane: OverviewLane) -> None:
    left = scene.x(wedge.start)
    right = scene.edges.left + (
        scene.at.scale.width if wedge.opens is None else scene.at.scale.x(wedge.opens)
    )
    if right <= left + 1:
        return
    middle = scene.edges.top + lane.middle
    corners = wedge_outline(left, right, middle, scene.stroke * 0.8, right)
    mark_drawing.paint_wedge(painter, corners, scene.colours, strong=True)
    if wedge.opens is not None and wedge.waiting is not None:
        mark_drawing.paint_ring(painter, right, middle, scene.colours, 2.6)


def _work(painter: QPainter, scene: OverviewScene, box: Box) -> None:
    piece = scene.at.strip.pieces[box.piece]
    rect = scene.rect(box)
    before = scene.before.get(piece.key)
    if before is not None and piece.number == 1:
        ghost = scene.rect(box, before)
        pen = QPen(scene.colours.colour("ink"), 1.2)
        pen.setDashPattern([3.0, 2.5])
        painter.setPen(pen)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawRect(ghost)
        rect.translate((ghost.left() - rect.left()) * (1 - scene.moved), 0)
    mark_drawing.paint_work(
        painter,
        rect,
        scene.colours,
        swatch=piece.swatch,
        tool=piece.tool,
        stage=piece.stage,
        name=piece.key,
        faded=piece.logged,
    )


def _flags(painter: QPainter, scene: OverviewScene) -> None:
    """Paint a flag where each model is done: of the colour of what is late if it is."""
    for lane in scene.at.lanes:
        if lane.at not in scene.ends:
            continue
        end, late = scene.ends[lane.at]
        x, top = scene.x(end) + 3, scene.edges.top + lane.top + 4
        ink = "closing" if late else "focus"
        painter.setPen(QPen(scene.colours.colour(ink), 1.6))
        painter.setBrush(scene.colours.colour(ink if late else "sheet"))
        painter.drawLine(QPointF(x, top), QPointF(x, top + scene.stroke + 5))
        painter.drawPolygon(
            QPolygonF([QPointF(x, top), QPointF(x + 9, top + 3.5), QPointF(x, top + 7)])
        )


def _targets(painter: QPainter, scene: OverviewScene) -> None:
    """Paint each date that is to be kept as a dotted line with its flag on top."""
    late = {at[0] for at, (_, missed) in scene.ends.items() if missed}
    for project, at in scene.at.strip.targets:
        x = min(pressed_x(scene, at), scene.size.width() - 6.0)
        pen = QPen(scene.colours.colour("closing" if project in late else "ink"), 1.4)
        pen.setDashPattern([1.5, 2.5])
        painter.setPen(pen)
        painter.drawLine(QPointF(x, 4), QPointF(x, scene.edges.top + scene.at.height))


def _now(painter: QPainter, scene: OverviewScene) -> None:
    x, bottom = scene.x(scene.now), scene.edges.top + scene.at.height
    painter.setPen(QPen(scene.colours.colour("ink"), 1.6))
    painter.drawLine(QPointF(x, scene.edges.head), QPointF(x, bottom))
    told = words.tr("now {time}").format(time=words.clock(scene.now, scene.zone))
    metrics = QFontMetricsF(scene.small)
    wide = metrics.horizontalAdvance(told) + 10
    left = min(max(scene.edges.left, x - 4), scene.size.width() - wide)
    label = QRectF(left, bottom + 2, wide, metrics.height() + 2)
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(scene.colours.colour("ink"))
    painter.drawRoundedRect(label, 3, 3)
    painter.setFont(scene.small)
    painter.setPen(scene.colours.colour("paper"))
    painter.drawText(label, CENTRE, told)


def paint_frame(painter: QPainter, scene: OverviewScene, box: Box, wide: float) -> None:
    """Paint the frame of what is chosen or pointed at."""
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.setPen(QPen(scene.colours.colour("focus"), wide))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawRoundedRect(scene.rect(box).adjusted(-3, -3, 3, 3), 4, 4)


def paint_focus(painter: QPainter, scene: OverviewScene) -> None:
    """Paint that the drawing has the keys."""
    painter.setPen(QPen(scene.colours.colour("focus"), 2))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawRect(QRectF(1, 1, scene.size.width() - 2, scene.size.height() - 2))


def tip_at(scene: OverviewScene, spot: QPointF) -> str:
    """Return the words for a point where no piece of work lies."""
    for held in scene.at.strip.held:
        if _cup_rect(scene, held).contains(spot):
            return words.tr("{coating}, {start}–{end}").format(
                coating=held.coating,
                start=words.clock(held.interval.start, scene.zone),
                end=words.clock(held.interval.end, scene.zone),
            )
    lane = next(
        (lane for lane in scene.at.lanes if lane.top <= spot.y() - scene.edges.top < lane.bottom),
        None,
    )
    if lane is None:
        return ""
    if spot.x() < scene.edges.left:
        return _model_words(scene, lane)
    for wedge in scene.at.strip.wedges:
        if wedge.lane == lane.lanes[0] and _in_wedge(scene, wedge, spot.x()):
            return wedge_words(wedge, scene.zone, scene.now)
    return ""


def _in_wedge(scene: OverviewScene, wedge: Wedge, x: float) -> bool:
    right = scene.size.width() if wedge.opens is None else scene.x(wedge.opens) + 4
    return scene.x(wedge.start) <= x <= right


def _model_words(scene: OverviewScene, lane: OverviewLane) -> str:
    known = scene.ends.get(lane.at)
    if known is None:
        return lane.at[1]
    form = words.tr("{model}: done {time}, late") if known[1] else words.tr("{model}: done {time}")
    told = form.format(model=lane.at[1], time=words.when(known[0], scene.zone, scene.now))
    sure = scene.sure.get(lane.at)
    if sure is None:
        return told
    day = words.day_of(sure[1] - 1, scene.zone)
    return words.tr("{done}; four in five by {day}").format(done=told, day=day)


def wedge_words(wedge: Wedge, zone: ZoneInfo, now: int) -> str:
    """Return what a wedge says: which coat dries, and when it is ready for what."""
    about = reasons.key_name(wedge.key)
    if wedge.opens is None:
        return words.tr("{film}: never ready in this air").format(film=about)
    state = words.state_word(wedge.state) if wedge.state else words.tr("ready")
    told = words.tr("{film}: {state} {time}").format(
        film=about, state=state, time=words.when(wedge.opens, zone, now)
    )
    return f"{wedge.coating}\n{told}" if wedge.coating else told
