"""Changes of the work and its order: what is left out, what goes first, what weighs more."""

from __future__ import annotations

from app.service import what_if
from app.service.what_if import TriedChange
from app.window import words
from app.window.what_if.change_form import ChangeForm, models_of, refill
from planner.values.book import Book
from planner.values.step import Stage

FRAME = frozenset({Stage.TURN, Stage.JOIN, Stage.UNMASK, Stage.WIPE, Stage.PRESS})


class StageForm(ChangeForm):
    """A stage of one model or of all of a project."""

    def __init__(self) -> None:
        super().__init__()
        self.models = self.box(self.tr("On"))
        self.stages = self.box(self.tr("Stage"))
        self.models.currentIndexChanged.connect(self._offer)
        self._book: Book | None = None

    def show_book(self, book: Book, now: int) -> None:
        """Offer the models that are planned."""
        self._book = book
        refill(self.models, models_of(book, self.tr("all of {project}")))
        self._offer()

    def _offer(self) -> None:
        chosen = self.models.currentData()
        if self._book is None or chosen is None:
            return
        stages = what_if.stages_left(self._book, *chosen)
        offered = [stage for stage in stages if self.may_be(stage)]
        refill(self.stages, [(words.capital(words.stage_word(stage)), stage) for stage in offered])

    def may_be(self, stage: Stage) -> bool:
        """Tell whether a stage is offered."""
        raise NotImplementedError

    def chosen(self) -> tuple[str, str, Stage]:
        """Return project, model ("" for all) and stage."""
        project, model = self.models.currentData() or ("", "")
        return project, model, Stage(self.stages.currentData() or Stage.BASE)


class LeaveOutForm(StageForm):
    """A stage is left out."""

    @property
    def title(self) -> str:
        """What the kind of change is called."""
        return self.tr("Leave something out")

    def may_be(self, stage: Stage) -> bool:
        """Offer what is done for its own sake."""
        return stage not in FRAME

    def change(self) -> TriedChange:
        """Return the change that the fields say."""
        return what_if.LeaveOut(*self.chosen())

    def name(self) -> str:
        """Return what the journal will call it."""
        return self.tr("without {stage}: {models}").format(
            stage=words.stage_word(self.chosen()[2]), models=self.models.currentText()
        )


class FirstForm(ChangeForm):
    """One vehicle first."""

    def __init__(self) -> None:
        super().__init__()
        self.models = self.box(self.tr("First"))

    @property
    def title(self) -> str:
        """What the kind of change is called."""
        return self.tr("One vehicle first")

    def show_book(self, book: Book, now: int) -> None:
        """Offer every model, and none."""
        offered = models_of(book, self.tr("none of {project}"))
        refill(self.models, sorted(offered, key=lambda other: not other[1][1]))

    def change(self) -> TriedChange:
        """Return the change that the fields say."""
        project, model = self.models.currentData() or ("", "")
        return what_if.First(project, model)

    def name(self) -> str:
        """Return what the journal will call it."""
        return self.tr("{model} first").format(model=self.models.currentText())


class WeightForm(ChangeForm):
    """A project's lateness counts more, or less."""

    def __init__(self) -> None:
        super().__init__()
        self.projects = self.box(self.tr("Project"))
        self.weight = self.number(self.tr("Weight"), 1, 1000, 5)

    @property
    def title(self) -> str:
        """What the kind of change is called."""
        return self.tr("Another weight of a project")

    def show_book(self, book: Book, now: int) -> None:
        """Offer the projects that are planned."""
        refill(
            self.projects,
            [(project.name, project.name) for project in book.projects if project.active],
        )

    def change(self) -> TriedChange:
        """Return the change that the fields say."""
        return what_if.Weight(str(self.projects.currentData() or ""), self.weight.value())

    def name(self) -> str:
        """Return what the journal will call it."""
        return self.tr("{project}: weight {weight}").format(
            project=self.projects.currentText(), weight=self.weight.value()
        )
