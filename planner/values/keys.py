"""What names a model or a step in a book."""

from __future__ import annotations

from typing import NamedTuple


class ModelKey(NamedTuple):
    """Names a model of a project."""

    project: str
    model: str


class StepKey(NamedTuple):
    """Names a step of a model of a project."""

    project: str
    model: str
    step: str

    @property
    def home(self) -> ModelKey:
        """The model that the step belongs to."""
        return ModelKey(self.project, self.model)
