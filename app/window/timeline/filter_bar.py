"""The line above the strip that says what of it is shown."""

from __future__ import annotations

from typing import Any

from PySide6.QtCore import QSignalBlocker, Signal
from PySide6.QtWidgets import QCheckBox, QComboBox, QSizePolicy, QToolButton, QWidget

from app.window import words
from app.window.flow_layout import FlowLayout
from app.window.strip_content import Strip
from app.window.target_size import roomy
from app.window.timeline.strip_filter import Choices, Sieve, choices_of


class FilterBar(QWidget):
    """Four choices, each "all" at first; a project narrows the models.

    Signals
    -------
    changed()
        Something else is to be shown.
    """

    changed = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.projects = self._box(self.tr("Show the project"))
        self.models = self._box(self.tr("Show the model"))
        self.coatings = self._box(self.tr("Show the coating"))
        self.tools = self._box(self.tr("Show the tool"))
        self.everything = QToolButton()
        self.everything.setText(self.tr("Show all"))
        roomy(self.everything)
        self.everything.clicked.connect(self.clear)
        self.compared = QCheckBox(self.tr("&Compare with the last plan"))
        self.compared.setToolTip(
            self.tr("A dashed outline shows where a piece of work stood before the last change.")
        )
        self.line = FlowLayout(self, 8, 4)
        for widget in (
            self.projects,
            self.models,
            self.coatings,
            self.tools,
            self.everything,
            self.compared,
        ):
            self.line.addWidget(widget)
        policy = QSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Minimum)
        policy.setHeightForWidth(True)
        self.setSizePolicy(policy)

    def _box(self, name: str) -> QComboBox:
        box = QComboBox()
        box.setAccessibleName(name)
        box.setToolTip(name)
        box.setMinimumContentsLength(9)
        box.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        box.currentIndexChanged.connect(self._choose)
        return box

    @property
    def sieve(self) -> Sieve:
        """What is shown."""
        chosen = self.models.currentData()
        model = chosen if isinstance(chosen, tuple) else ("", "")
        return Sieve(
            project=str(self.projects.currentData() or model[0]),
            model=str(model[1]),
            coating=str(self.coatings.currentData() or ""),
            tool=self.tools.currentData(),
        )

    def show_strip(self, strip: Strip) -> None:
        """Offer what a plan holds; what was chosen stays chosen where it is still there."""
        offered = choices_of(strip)
        for box, name, values in self._lists(offered):
            kept = box.currentData()
            with QSignalBlocker(box):
                box.clear()
                box.addItem(name, None)
                for text, value in values:
                    box.addItem(text, value)
                known = [value for _, value in values]  # Qt does not find pairs again
                box.setCurrentIndex(known.index(kept) + 1 if kept in known else 0)
        self.projects.setVisible(len(offered.projects) > 1)
        self._mark()

    def _lists(self, offered: Choices) -> list[tuple[QComboBox, str, list[tuple[str, Any]]]]:
        several = len(offered.projects) > 1
        named = self.tr("{model} ({project})")
        models: list[tuple[str, Any]] = [
            (named.format(model=model, project=project) if several else model, (project, model))
            for project, model in offered.models
        ]
        tools: list[tuple[str, Any]] = [
            (words.capital(words.tool_word(tool)), tool) for tool in offered.tools
        ]
        return [
            (
                self.projects,
                self.tr("All projects"),
                [(project, project) for project in offered.projects],
            ),
            (self.models, self.tr("All models"), models),
            (
                self.coatings,
                self.tr("All coatings"),
                [(coating, coating) for coating in offered.coatings],
            ),
            (self.tools, self.tr("All tools"), tools),
        ]

    def clear(self) -> None:
        """Show everything."""
        for box in (self.projects, self.models, self.coatings, self.tools):
            with QSignalBlocker(box):
                box.setCurrentIndex(0)
        self._choose()

    def _choose(self) -> None:
        self._mark()
        self.changed.emit()

    def _mark(self) -> None:
        self.everything.setEnabled(not self.sieve.open)
