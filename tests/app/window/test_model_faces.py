"""Outlines of models: every kind has one, filled with its coats and seen on its ground."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QColor, QImage, QPainter

from app.service.model_faces import Face, StageMark, StageProgress
from app.window.model_faces import FaceMark, face_icon, paint_face, paint_ribbon
from app.window.palette import DARK, LIGHT, Colours, contrast
from planner.values.model import ModelKind

LOOKS = pytest.mark.parametrize("colours", [LIGHT, DARK], ids=["light", "dark"])
RED = "#b02418"


def painted(colours: Colours, draw) -> dict[str, int]:
    """Return how many pixels have which colour."""
    image = QImage(96, 48, QImage.Format.Format_RGB32)
    image.fill(QColor(colours.sheet))
    painter = QPainter(image)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    draw(painter, QRectF(0, 0, 96, 48))
    painter.end()
    found: dict[str, int] = {}
    for x in range(96):
        for y in range(48):
            name = image.pixelColor(x, y).name()
            found[name] = found.get(name, 0) + 1
    return found


@LOOKS
@pytest.mark.parametrize("kind", ModelKind)
def test_every_kind_has_an_outline_in_its_coat(colours: Colours, kind: ModelKind) -> None:
    coat = Face(kind, (RED,), RED, RED)
    seen = painted(colours, lambda painter, rect: paint_face(painter, rect, coat, colours))
    assert seen[RED] > 120
    bare = painted(colours, lambda painter, rect: paint_face(painter, rect, Face(kind), colours))
    assert RED not in bare
    # WCAG 2.2, 1.4.11: an outline of bare plastic stands out from its ground, too.
    assert max(contrast(name, colours.sheet) for name in bare) >= 3


@LOOKS
def test_a_ribbon_tells_done_begun_and_to_come(colours: Colours) -> None:
    marks = [StageMark("prime", RED, each) for each in StageProgress]
    seen = [
        painted(
            colours,
            lambda painter, rect, mark=mark: paint_ribbon(painter, rect, [mark], colours),
        ).get(RED, 0)
        for mark in marks
    ]
    done, begun, ahead = seen
    assert ahead == 0
    assert done * 0.4 < begun < done * 0.6


def test_the_picture_of_a_chosen_model_is_not_tinted(qtbot) -> None:
    mark = FaceMark(Face(ModelKind.BOAT, (RED,)), LIGHT, ribbon=True)
    qtbot.addWidget(mark)
    icon = face_icon(Face(ModelKind.BOAT, (RED,)), LIGHT)
    plain = icon.pixmap(96, 48).toImage()
    chosen = icon.pixmap(96, 48, icon.Mode.Selected).toImage()
    assert plain == chosen
    assert not mark.grab().isNull()


def test_the_list_of_models_has_their_faces(make_window, lamplighter) -> None:
    window = make_window(*lamplighter)
    window.show_page("build")
    view = next(page for page in window.pages if page.name == "build").view
    project = view.model.index(0, 0)
    role = Qt.ItemDataRole.DecorationRole
    icon = view.model.index(0, 1, project).data(role)
    assert not icon.pixmap(32, 16).isNull()
    assert view.model.index(0, 1).data(role) is None  # a project has none
