"""The drawing of what waits for what, with its heading and what the heavy frames mean."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QFrame, QVBoxLayout, QWidget

from app.service.build_edits.locate import model_of
from app.window import words
from app.window.drawing_scroll_area import StillArea
from app.window.labels import text
from app.window.message_translation import translated
from app.window.model_editor.drawing import EMPTY, NetworkDrawing, Shown
from app.window.model_editor.layers import Layouts
from app.window.model_editor.nodes import EditorNode, Key, Known, NodeKind, step_name
from app.window.palette import Colours
from planner.values.book import Book
from planner.values.lookup import project_of
from planner.values.model import Model
from planner.values.refusal import Refused


class NetworkPanel(QWidget):
    """The steps of the model that is chosen, in layers.

    Signals
    -------
    chosen(str)
        The id of a step that was chosen in the drawing.
    """

    chosen = Signal(str)

    def __init__(self, layouts: Layouts) -> None:
        super().__init__()
        self._layouts = layouts
        self.drawing = NetworkDrawing()
        self.drawing.chosen.connect(self.chosen)
        self.heading = text("", bold=True)
        self.legend = text("", size=0.92)
        area = StillArea()
        area.setWidget(self.drawing)
        area.setFrameShape(QFrame.Shape.NoFrame)
        area.setFocusPolicy(Qt.FocusPolicy.NoFocus)  # the drawing takes the keys
        area.setAccessibleName(self.tr("What waits for what"))
        column = QVBoxLayout(self)
        column.setContentsMargins(24, 4, 0, 0)
        column.setSpacing(2)
        column.addWidget(self.heading)
        column.addWidget(self.legend)
        column.addWidget(area, 1)

    def set_colours(self, colours: Colours) -> None:
        """Paint in other colours."""
        self.drawing.set_colours(colours)

    def show_model(
        self, book: Book | None, key: Key | None, known: Known, home: EditorNode | None
    ) -> None:
        """Draw the model that a line belongs to; ``home`` is that model's own line."""
        if key is None or book is None or home is None or not key.model:
            self.heading.setText(self.tr("What waits for what"))
            self._tell(self.tr("Choose a model to see its steps here."))
            self.drawing.show_layout(EMPTY, {})
            return
        try:
            model = model_of(book, key.home)
            layout = self._layouts.of(book, project_of(book, key.project), model)
        except Refused as refused:
            self._tell(translated(refused.mend))
            self.drawing.show_layout(EMPTY, {})
            return
        shown = _shown(model, known, home)
        self.drawing.show_layout(layout, shown)
        self.heading.setText(self.tr("What waits for what: {model}").format(model=model.name))
        self._say_legend(known, any(shown.critical for shown in shown.values()))
        if key.step in shown:
            self.drawing.choose(key.step)

    def _say_legend(self, known: Known, critical: bool) -> None:
        if critical:
            said = self.tr(
                "Heavy frames set the end: a minute later there is a minute later for the "
                "whole project."
            )
        elif known.slacks:
            said = self.tr("This model has time to spare.")
        else:
            said = ""
        self._tell(said)

    def _tell(self, told: str) -> None:
        self.legend.setText(told)
        self.legend.setVisible(bool(told))


def _shown(model: Model, known: Known, home: EditorNode) -> dict[str, Shown]:
    lines = {node.key.step: node for node in home.below if node.key.kind is NodeKind.STEP}
    shown = {}
    for step in model.steps:
        key = Key(NodeKind.STEP, home.key.project, home.key.model, step=step.id)
        wait = known.float_of(key)
        node = lines.get(step.id)
        shown[step.id] = Shown(
            name=step_name(model, step.id),
            tool=step.tool,
            stage=step.stage,
            swatch=node.swatches[0] if node and node.swatches else "",
            wait=words.span(wait) if wait is not None and wait > 0 else "",
            critical=known.critical(key),
        )
    return shown
