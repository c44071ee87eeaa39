"""Simple bodies that a place is measured by."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout

from app.window.forms.live_controls import decimal, enum_choice, number, pick, put
from app.window.forms.row_list import FormRow, RowList
from planner.values.model import Measure, Shape

SIDES = {
    Shape.BOX: 3,
    Shape.CYLINDER: 2,
    Shape.TUBE: 2,
    Shape.SHELL: 2,
    Shape.BALL: 1,
}


class MeasureLine(FormRow):
    """So many bodies of one shape and size."""

    def __init__(self) -> None:
        super().__init__()
        tr = self.tr
        self.count = number(Measure, "count", self.changed.emit)
        self.count.setSuffix(" ×")
        self.count.setAccessibleName(tr("How many such bodies"))
        self.shape = enum_choice(Shape, self._shaped)
        self.shape.setAccessibleName(tr("Shape"))
        names = (tr("Length, or a ball's diameter"), tr("Width or diameter"), tr("Height"))
        self.sizes = [decimal(Measure, "length_mm", self.changed.emit) for _ in names]
        for field, name in zip(self.sizes, names, strict=True):
            field.setAccessibleName(name)
            field.setToolTip(name)
        self.setFocusProxy(self.count)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(2)
        top, below = QHBoxLayout(), QHBoxLayout()
        top.addWidget(self.count)
        top.addWidget(self.shape, 1)
        top.addWidget(self.cross(tr("Remove this body")))
        for field in self.sizes:
            below.addWidget(field, 1)
        column.addLayout(top)
        column.addLayout(below)

    def show_measure(self, measure: Measure) -> None:
        """Show a body."""
        put(self.count, measure.count)
        pick(self.shape, measure.shape.value)
        sizes = (measure.length_mm, measure.width_mm, measure.height_mm)
        for field, size in zip(self.sizes, sizes, strict=True):
            put(field, size or 10.0)
        self._fit(measure.shape)

    def measure(self) -> Measure:
        """Return the body as it stands; `Refused` if it cannot be so."""
        shape = Shape(self.shape.currentData())
        used = SIDES[shape]
        length, width, height = (
            field.value() if at < used else 0.0 for at, field in enumerate(self.sizes)
        )
        return Measure(
            shape=shape,
            length_mm=length,
            width_mm=width,
            height_mm=height,
            count=self.count.value(),
        )

    def _fit(self, shape: Shape) -> None:
        for at, field in enumerate(self.sizes):
            field.setVisible(at < SIDES[shape])

    def _shaped(self) -> None:
        self._fit(Shape(self.shape.currentData()))
        self.changed.emit()


class MeasuresField(RowList[MeasureLine]):
    """Every body of a place."""

    def __init__(self) -> None:
        cube = Measure(shape=Shape.BOX, length_mm=10, width_mm=10, height_mm=10)
        super().__init__(MeasureLine, self.tr("Add a body"), lambda line: line.show_measure(cube))

    def show_measures(self, measures: Sequence[Measure]) -> None:
        """Show other bodies."""
        for line, measure in zip(self.put(len(measures)), measures, strict=True):
            line.show_measure(measure)

    def value(self) -> tuple[Measure, ...]:
        """Return the bodies as they stand; `Refused` if one cannot be so."""
        return tuple(line.measure() for line in self.rows)
