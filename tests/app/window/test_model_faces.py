"""Outlines of models: every kind has one, filled with its coats and seen on its ground."""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime
from pathlib import Path

import pytest
from PySide6.QtCore import QObject, QRectF, Qt
from PySide6.QtGui import QColor, QImage, QPainter, QPixmap
from small_book import CART, NOW, PROJECT, ZONE, small_book

from app.service.model_faces import Face, StageMark, StageProgress, face_of
from app.window.model_editor.face_photos import FacePhotos, cut
from app.window.model_editor.nodes import Key, NodeKind
from app.window.model_editor.tree_model import FACE, WAITS
from app.window.model_faces import FaceMark, face_icon, paint_face, paint_ribbon
from app.window.palette import DARK, LIGHT, Colours, contrast
from app.window.tonight_cards.places_table import FACE_ROOM
from planner.values.model import ModelKind
from planner.values.project import Logged
from storage import photos

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
    cell = view.model.index(0, WAITS, project)
    face = cell.data(FACE)
    assert len(face.ribbon) == len(lamplighter[0].projects[0].models[0].steps)
    assert cell.data(Qt.ItemDataRole.AccessibleTextRole).startswith(f"{face.done} of ")
    painted_now = view.tree.viewport().grab(view.tree.visualRect(cell)).toImage()
    view.model.face = lambda key: None
    assert view.tree.viewport().grab(view.tree.visualRect(cell)).toImage() != painted_now


def test_the_rows_of_tonight_begin_with_the_face_of_their_model(make_window, lamplighter) -> None:
    window = make_window(*lamplighter)
    table = window.tonight.cards[0].tables[0]
    head = table.verticalHeader()
    key = table.places.block.rows[0].key
    assert table.places.face_at(0) == face_of(lamplighter[0], key.project, key.model)
    before = head.grab(head.rect()).toImage()
    table.places.face_at = lambda section: None
    bare = head.grab(head.rect()).toImage()
    left = head.rect().adjusted(0, 0, FACE_ROOM - head.width(), 0)
    assert bare.copy(left) != before.copy(left)
    right = head.rect().adjusted(FACE_ROOM, 0, 0, 0)
    assert bare.copy(right) == before.copy(right)


def test_a_photo_of_the_logbook_stands_for_its_model(qtbot, make_window, tmp_path: Path) -> None:
    source = tmp_path / "bench.png"
    image = QImage(160, 160, QImage.Format.Format_RGB32)
    image.fill(QColor(RED))
    assert image.save(str(source))
    start = datetime(2031, 3, 5, 19, 30, tzinfo=ZONE)
    name = photos.name_of(source.read_bytes())
    log = Logged(model=CART, step="prime", start=start, end=start.replace(hour=20), photos=(name,))
    book = small_book()
    book = replace(book, projects=(replace(book.project(PROJECT), log=(log,)),))
    window = make_window(book, NOW)
    photos.keep(window.session.path, source)
    window.show_page("build")
    view = next(page for page in window.pages if page.name == "build").view
    cell = view.model.index_of(Key(NodeKind.MODEL, PROJECT, CART), 1)

    def shown() -> set[str]:
        picture = cell.data(Qt.ItemDataRole.DecorationRole).pixmap(32, 16).toImage()
        return {picture.pixelColor(x, y).name() for x in (0, 31) for y in (0, 15)}

    qtbot.waitUntil(lambda: shown() == {RED})  # from edge to edge


def test_a_photo_that_is_gone_leaves_the_outline(qtbot, tmp_path: Path) -> None:
    parent = QObject()
    kept = FacePhotos(parent)
    name = f"{'0' * 64}.png"
    with qtbot.waitSignal(kept.came):
        assert kept.photo(tmp_path / "bench.tackfree", name) is None
    assert kept.photo(tmp_path / "bench.tackfree", name) is None


@pytest.mark.parametrize(("size", "left"), [((90, 90), (90, 45)), ((90, 20), (40, 20))])
def test_a_photo_is_cut_to_twice_as_wide_as_tall(
    qapp, size: tuple[int, int], left: tuple[int, int]
) -> None:
    whole = cut(QPixmap(*size)).size()
    assert (whole.width(), whole.height()) == left
