"""Build: the table as a tree, a form for what is chosen, findings, and what waits for what."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial

from PySide6.QtCore import Qt, QTimer
from PySide6.QtWidgets import (
    QFrame,
    QHBoxLayout,
    QScrollArea,
    QSplitter,
    QStackedWidget,
    QToolButton,
    QVBoxLayout,
    QWidget,
)

from app.service.build_edits.spots import model_of, project_of
from app.service.edits import Edit
from app.window import words
from app.window.build.acts import Acts
from app.window.build.drawing import EMPTY, NetworkDrawing, Shown
from app.window.build.fields import Form
from app.window.build.forms import ModelForm, PartForm, PlaceForm
from app.window.build.layers import Layouts
from app.window.build.many_form import ManyForm
from app.window.build.model import BuildModel
from app.window.build.nodes import Key, Kind, Known, nodes_of, step_name
from app.window.build.project_form import ProjectForm
from app.window.build.step_form import StepForm
from app.window.build.tree_view import BuildTree
from app.window.labels import Message, text
from app.window.palette import Colours
from app.window.picture import Picture
from app.window.session import Session
from app.window.stack.findings import FindingsPanel
from planner.layers.finding import Finding
from planner.values.book import Book
from planner.values.refusal import Refused

ASIDE = 348


class BuildView(QWidget):
    """What stands on the table and how it is worked on, to be changed."""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.ready = False
        self._session = session
        self._known = Known()
        self._layouts = Layouts()
        self.model = BuildModel(self)
        self.tree = BuildTree(self.model)
        self.project_form, self.model_form = ProjectForm(), ModelForm()
        self.part_form, self.place_form = PartForm(), PlaceForm()
        self.step_form, self.many_form = StepForm(), ManyForm()
        self.forms = QStackedWidget()
        self.nothing = QWidget()
        for page in (self.nothing, *self._every_form()):
            self.forms.addWidget(_scrolling(page) if isinstance(page, Form) else page)
        self.findings = FindingsPanel()
        self.drawing = NetworkDrawing()
        self.message = Message()
        self.acts = Acts(self)
        self._later = QTimer(self)
        self._later.setSingleShot(True)
        self._later.timeout.connect(self._show_chosen)
        self._lay_out()
        self._connect()
        self.ready = True

    @property
    def book(self) -> Book | None:
        """The open book."""
        return self._session.book

    def _every_form(self) -> tuple[Form, ...]:
        return (
            self.project_form,
            self.model_form,
            self.part_form,
            self.place_form,
            self.step_form,
            self.many_form,
        )

    def _connect(self) -> None:
        self.tree.chosen.connect(lambda: self._later.start(0))
        self.model.renamed.connect(self.acts.rename_to)
        # A drop ends before the book is another: Qt still holds the lines dragged.
        self.model.dropped.connect(self.acts.drop, Qt.ConnectionType.QueuedConnection)
        self.drawing.chosen.connect(self._chosen_in_drawing)
        self.findings.mend_wanted.connect(self._mend)
        for form in self._every_form():
            form.wanted.connect(partial(self._edit, form))

    # -- laying out -------------------------------------------------------------------------

    def _lay_out(self) -> None:
        head = QVBoxLayout()
        head.setContentsMargins(24, 0, 18, 0)
        head.addWidget(text(self.tr("Build"), size=1.9, bold=True))
        head.addLayout(self._tools())
        head.addWidget(self.message)
        aside = QSplitter(Qt.Orientation.Vertical)
        aside.addWidget(self.forms)
        aside.addWidget(self.findings)
        aside.setSizes([460, 180])
        aside.setChildrenCollapsible(False)
        self.aside = aside
        self.across = QSplitter(Qt.Orientation.Horizontal)
        self.across.addWidget(self.tree)
        self.across.addWidget(aside)
        self.across.setStretchFactor(0, 1)
        self.across.setSizes([700, ASIDE])
        self.across.setChildrenCollapsible(False)
        self.down = QSplitter(Qt.Orientation.Vertical)
        self.down.addWidget(self.across)
        self.down.addWidget(self._below())
        self.down.setSizes([480, 190])
        self.down.setStretchFactor(0, 1)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 14, 0, 0)
        column.setSpacing(8)
        column.addLayout(head)
        column.addWidget(self.down, 1)
        self.setFocusProxy(self.tree)

    def _tools(self) -> QHBoxLayout:
        row = QHBoxLayout()
        row.setSpacing(4)
        acts = self.acts
        self.tree.addActions(acts.every())
        for action in (
            acts.step,
            acts.model,
            acts.up,
            acts.down,
            acts.again,
            acts.split,
            acts.remove,
        ):
            button = QToolButton()
            button.setDefaultAction(action)
            button.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
            row.addWidget(button)
        copy = QToolButton()
        copy.setText(acts.targets.title())
        copy.setMenu(acts.targets)
        copy.setPopupMode(QToolButton.ToolButtonPopupMode.InstantPopup)
        copy.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        row.insertWidget(5, copy)
        row.addStretch(1)
        return row

    def _below(self) -> QWidget:
        holder = QWidget()
        column = QVBoxLayout(holder)
        column.setContentsMargins(24, 4, 0, 0)
        column.setSpacing(2)
        self.heading = text("", bold=True)
        self.legend = text("", size=0.92)
        column.addWidget(self.heading)
        column.addWidget(self.legend)
        area = QScrollArea()
        area.setWidget(self.drawing)
        area.setFrameShape(QFrame.Shape.NoFrame)
        area.setAccessibleName(self.tr("What waits for what"))
        area.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        column.addWidget(area, 1)
        return holder

    # -- what the window asks ---------------------------------------------------------------

    def set_colours(self, colours: Colours) -> None:
        """Paint in other colours."""
        self.drawing.set_colours(colours)
        self.findings.set_colours(colours)
        self._show_findings()

    def show_book(self) -> None:
        """Show the open book; what is open and chosen stays so."""
        book = self.book
        if book is None:
            return
        kept = self.tree.keep()
        if self.model.show_nodes(nodes_of(book), self._waits):
            self.tree.restore(kept)
        self._show_chosen()

    def show_picture(self, picture: Picture) -> None:
        """Show what a plan knows: findings, and what can wait."""
        findings, slacks = picture.build
        self._known = Known(findings, slacks)
        self.model.show_known(self._known)
        self._show_drawing()
        self._show_findings()

    # -- editing ----------------------------------------------------------------------------

    def say(self, message: str) -> None:
        """Tell something above the tree."""
        self.message.say(message)

    def do(
        self, make: Callable[[Book], Edit], *chosen: Key, edit_name: bool = False
    ) -> Refused | None:
        """Make an edit, then choose lines; what is refused is told above the tree."""
        refused = self._session.attempt(make)
        self.say(refused.mend if refused else "")
        if refused is None and chosen:
            self.tree.choose(*chosen)
            if edit_name:
                self.tree.setFocus()
                self.tree.edit(self.tree.currentIndex())
        return refused

    def _edit(self, form: Form, make: Callable[[Book], Edit]) -> None:
        before = self.tree.current()
        follow = self._following(before)
        refused = self._session.attempt(make)
        if refused is not None:
            form.refuse(refused)
        elif follow is not None and before is not None:
            new = follow()
            if not self.model.index_of(before).isValid() and self.model.index_of(new).isValid():
                self.tree.choose(new)

    def _following(self, key: Key | None) -> Callable[[], Key] | None:
        """Return how to find a line again that its form may have given another name."""
        if key is None:
            return None
        if key.kind is Kind.STEP:
            name = self.step_form.id.text().strip()
            return lambda: Key(Kind.STEP, key.project, key.model, step=name)
        if key.kind is Kind.MODEL:
            name = self.model_form.name.text().strip()
            return lambda: Key(Kind.MODEL, key.project, name)
        if key.kind is Kind.PROJECT:
            name = self.project_form.name.text().strip()
            return lambda: Key(Kind.PROJECT, name)
        if key.kind is Kind.PART:
            name = self.part_form.name.text().strip()
            return lambda: Key(Kind.PART, key.project, key.model, part=name)
        if key.kind is Kind.PLACE:
            name = self.place_form.name.text().strip()
            return lambda: Key(Kind.PLACE, key.project, key.model, part=key.part, place=name)
        return None

    def _mend(self, finding: Finding) -> None:
        mend = finding.mend
        if mend is not None:
            self.do(lambda book: Edit(mend.title, mend.apply(book)))

    # -- showing ----------------------------------------------------------------------------

    def _show_chosen(self) -> None:
        self.acts.show_chosen()
        try:
            self._show_form()
        except Refused:  # it has just gone from the book; the tree follows
            self.forms.setCurrentWidget(self.nothing)
        self._show_drawing()
        self._show_findings()

    def _show_form(self) -> None:
        key, book, steps = self.tree.current(), self.book, self.tree.steps()
        if key is None or book is None:
            self.forms.setCurrentIndex(0)
        elif len(steps) > 1:
            self.many_form.show_steps(book, [one.spot for one in steps])
            self._front(self.many_form)
        elif key.kind is Kind.PROJECT:
            self.project_form.show_project(book, key.project)
            self._front(self.project_form)
        elif key.kind is Kind.STEP:
            self.step_form.show_step(book, key.spot)
            self._front(self.step_form)
        elif key.kind is Kind.PART:
            self.part_form.show_part(book, key.home, key.part)
            self._front(self.part_form)
        elif key.kind is Kind.PLACE:
            self.place_form.show_place(book, key.home, key.part, key.place)
            self._front(self.place_form)
        else:
            self.model_form.show_model(book, key.home)
            self._front(self.model_form)

    def _front(self, form: Form) -> None:
        self.forms.setCurrentIndex(1 + self._every_form().index(form))

    def _show_drawing(self) -> None:
        key, book = self.tree.current(), self.book
        if key is None or book is None or not key.model:
            self.heading.setText(self.tr("What waits for what"))
            self.legend.setText(self.tr("Choose a model, and its steps are drawn here."))
            self.drawing.show_layout(EMPTY, {})
            return
        try:
            project = project_of(book, key.project)
            model = model_of(book, key.home)
            layout = self._layouts.of(book, project, model)
        except Refused as refused:
            self.legend.setText(refused.mend)
            self.drawing.show_layout(EMPTY, {})
            return
        shown = {}
        for one in model.steps:
            at = Key(Kind.STEP, key.project, key.model, step=one.id)
            node = self.model.node_at(self.model.index_of(at))
            wait = self._known.float_of(at)
            shown[one.id] = Shown(
                name=step_name(model, one.id),
                tool=one.tool,
                stage=one.stage,
                swatch=node.swatches[0] if node and node.swatches else "",
                wait=words.span(wait) if wait is not None and wait > 0 else "",
                critical=self._known.critical(at),
            )
        self.drawing.show_layout(layout, shown)
        self.heading.setText(self.tr("What waits for what: {model}").format(model=model.name))
        self._say_legend(any(one.critical for one in shown.values()))
        if key.step in shown:
            self.drawing.choose(key.step)

    def _say_legend(self, critical: bool) -> None:
        if critical:
            said = self.tr(
                "Heavy frames hold the end: a minute later there is a minute later for the whole "
                "project, however much bench time there is."
            )
        elif self._known.slacks:
            said = self.tr("Nothing here holds the end: another model takes longer.")
        else:
            said = ""
        self.legend.setText(said)
        self.legend.setVisible(bool(said))

    def _show_findings(self) -> None:
        key = self.tree.current() if self.ready else None
        found = self._known.of(key) if key is not None else ()
        self.findings.setVisible(bool(found))
        if found:
            self.findings.show_findings(found, ())

    def _waits(self, key: Key) -> str:
        """Say what a step waits for; asked for the lines in sight alone."""
        book = self.book
        if book is None:
            return ""
        try:
            project = project_of(book, key.project)
            model = model_of(book, key.home)
            before = self._layouts.of(book, project, model).before(key.step)
        except Refused:
            return ""
        return words.listed([step_name(model, one) for one in before])

    def _chosen_in_drawing(self, step: str) -> None:
        key = self.tree.current()
        if key is not None:
            self.tree.choose(Key(Kind.STEP, key.project, key.model, step=step))


def _scrolling(form: QWidget) -> QScrollArea:
    area = QScrollArea()
    area.setWidget(form)
    area.setWidgetResizable(True)
    area.setFrameShape(QFrame.Shape.NoFrame)
    area.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
    area.setMinimumWidth(ASIDE)
    return area
