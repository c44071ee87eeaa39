"""What a dialog made goes with it."""

from __future__ import annotations

import gc

from PySide6.QtCore import QEvent
from PySide6.QtWidgets import QApplication
from window_steps import MakeWindow, settle

from app.service import demos
from app.window.model_acts.vehicles_dialog import VehiclesDialog


def test_a_dialog_leaves_no_widget_without_a_parent(
    qapp: QApplication, make_window: MakeWindow
) -> None:
    """A field that is not shown, as there is one project only, belongs to the dialog as well."""
    book = demos.read("harbour_tenders").book
    window = make_window(book, demos.first_evening(book))
    before = set(qapp.topLevelWidgets())
    dialog = VehiclesDialog(window.session, window)
    dialog.open()
    settle(qapp)
    dialog.close()
    dialog.deleteLater()
    del dialog
    qapp.sendPostedEvents(None, QEvent.Type.DeferredDelete)
    gc.collect()
    assert set(qapp.topLevelWidgets()) == before
