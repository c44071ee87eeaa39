"""Effect, hiding power, cup, place out of doors, best moment: each goes through its form."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

import pytest
from small_book import NOW, small_book
from view_steps import shown

from app.window.forms.window_field import WindowField
from app.window.gear.airbrush_dialog import AirbrushDialog
from app.window.gear.location_dialog import LocationDialog
from app.window.gear.view import GearView
from app.window.palette import LIGHT
from app.window.session import Session
from app.window.stock.coating_dialog import CoatingDialog
from app.window.stock.editors import WindowsEditor
from planner.values.coating import Effect, Hiding, Mark, Window

Opened = tuple[GearView, Session]
WIPED = Window(opens=Mark(minutes=5), best=Mark(minutes=15), closes=Mark(minutes=60))


@pytest.fixture
def opened(tmp_path: Path) -> Iterator[Opened]:
    with shown(GearView, small_book(), NOW, tmp_path) as both:
        yield both


def test_effect_and_hiding_of_a_coating(opened: Opened) -> None:
    view, session = opened
    assert session.book is not None
    old = session.book.coatings[0]
    dialog = CoatingDialog(session, old, view)
    assert dialog.value() == old
    dialog.controls["effect"].setCurrentIndex(
        dialog.controls["effect"].findData(Effect.METALLIC.value)
    )
    dialog.controls["hiding"].setCurrentIndex(dialog.controls["hiding"].findData(Hiding.POOR.value))
    told = dialog.value()
    assert (told.effect, told.hiding) == (Effect.METALLIC, Hiding.POOR)
    again = CoatingDialog(session, told, view)
    assert again.value() == told


def test_the_cup_of_an_airbrush(opened: Opened) -> None:
    view, session = opened
    assert session.book is not None
    old = session.book.gear.airbrushes[0]
    assert AirbrushDialog(session, old, view).value() == old
    small = replace(old, most_fill_ml=2.5)
    assert AirbrushDialog(session, small, view).value() == small


def test_a_place_out_of_doors(opened: Opened) -> None:
    view, session = opened
    assert session.book is not None
    yard = replace(session.book.room.locations[0], outdoors=True)
    dialog = LocationDialog(session, yard, LIGHT, view)
    assert dialog.value() == yard
    dialog.controls["outdoors"].setChecked(False)
    assert not dialog.value().outdoors
    booth = replace(yard, outdoors=False, spraying=True)
    assert LocationDialog(session, booth, LIGHT, view).value() == booth


def test_a_best_moment_of_a_gate_and_of_a_recoat_window(opened: Opened) -> None:
    view, _ = opened
    field = WindowField()
    field.setParent(view)
    field.show_window(WIPED)
    assert field.window_() == WIPED
    editor = WindowsEditor((WIPED,))
    editor.setParent(view)
    assert editor.windows() == (WIPED,)
    plain = replace(WIPED, best=None)
    field.show_window(plain)
    assert field.window_() == plain
