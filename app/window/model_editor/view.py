"""Build: the table as a tree, a form for what is chosen, findings, and what waits for what."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Qt, QTimer
from PySide6.QtGui import QAction, QIcon, QKeySequence, QShortcut
from PySide6.QtWidgets import (
    QHBoxLayout,
    QLineEdit,
    QMenu,
    QSplitter,
    QToolButton,
    QVBoxLayout,
    QWidget,
)

from app.service.build_edits.locate import model_of
from app.service.edits import Edit
from app.service.model_faces import Face, face_of
from app.window import words
from app.window.flow_layout import FlowLayout
from app.window.labels import MessageLabel, field_label, text
from app.window.missed_words import model_line
from app.window.model_editor.actions import Acts
from app.window.model_editor.face_photos import FacePhotos
from app.window.model_editor.fields import EditorForm
from app.window.model_editor.form_stack import ASIDE, FormStack
from app.window.model_editor.layers import Layouts
from app.window.model_editor.network_panel import NetworkPanel
from app.window.model_editor.nodes import Key, Known, NodeKind, nodes_of, step_name
from app.window.model_editor.tree_model import BuildModel
from app.window.model_editor.tree_view import BuildTree
from app.window.model_faces import face_icon
from app.window.palette import LIGHT, Colours
from app.window.plan_snapshot import PlanSnapshot
from app.window.session import Session
from app.window.stack.findings import FindingsPanel
from app.window.target_size import roomy
from planner.layers.finding import Finding
from planner.values.book import Book
from planner.values.keys import ModelKey
from planner.values.lookup import project_of
from planner.values.refusal import Refused

FEW = 6  # models that need no words to narrow them


class BuildView(QWidget):
    """What stands on the table and how it is worked on, to be changed."""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.ready = False
        self._colours = LIGHT
        self._session = session
        self._known = Known()
        self._layouts = Layouts()
        self.model = BuildModel(self)
        self.model.face = self._face
        self.model.picture = self._picture
        self._photos = FacePhotos(self)
        self.tree = BuildTree(self.model)
        self.forms = FormStack()
        self.findings = FindingsPanel()
        self.network = NetworkPanel(self._layouts)
        self.message = MessageLabel()
        self.invitation, self.tools = QWidget(), QWidget()
        self.only = QLineEdit()
        self.acts = Acts(self, self)
        self._later = QTimer(self)
        self._later.setSingleShot(True)
        self._later.timeout.connect(self._show_chosen)
        self.setFocusProxy(self.tree)  # once it lies within, Qt would tear the order of Tab apart
        self._lay_out()
        self._connect()
        self.ready = True

    @property
    def book(self) -> Book | None:
        """The open book."""
        return self._session.book

    def _connect(self) -> None:
        self.forms.wanted.connect(self._edit)
        self.tree.chosen.connect(self.acts.show_chosen)
        self.tree.chosen.connect(lambda: self._later.start(0))
        # An editor closes and a drop ends before the book is another: Qt still holds the lines.
        queued = Qt.ConnectionType.QueuedConnection
        self._photos.came.connect(self.tree.viewport().update)
        self.model.renamed.connect(self.acts.rename_to, queued)
        self.model.dropped.connect(self.acts.drop, queued)
        self.network.chosen.connect(self._chosen_in_drawing)
        self.findings.mend_wanted.connect(self._mend)

    # -- laying out -------------------------------------------------------------------------

    def _lay_out(self) -> None:
        head = QVBoxLayout()
        head.setContentsMargins(24, 0, 18, 0)
        head.addWidget(text(self.tr("Build"), size=1.9, bold=True))
        self.tools.setLayout(self._tools())
        self._invite()
        head.addWidget(self.tools)
        head.addWidget(self.message)
        head.addWidget(self.invitation)
        aside = QSplitter(Qt.Orientation.Vertical)
        aside.addWidget(self.forms)
        aside.addWidget(self.findings)
        aside.setSizes([460, 180])
        aside.setChildrenCollapsible(False)
        self.aside = aside
        self.across = QSplitter(Qt.Orientation.Horizontal)
        self.across.addWidget(self._left())
        self.across.addWidget(aside)
        self.across.setStretchFactor(0, 1)
        self.across.setSizes([700, ASIDE])
        self.across.setChildrenCollapsible(False)
        self.down = QSplitter(Qt.Orientation.Vertical)
        self.down.addWidget(self.across)
        self.down.addWidget(self.network)
        self.down.setSizes([480, 190])
        self.down.setStretchFactor(0, 1)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 14, 0, 0)
        column.setSpacing(8)
        column.addLayout(head)
        column.addWidget(self.down, 100)
        column.addStretch(1)  # holds what is above at the top while nothing stands on the table

    def _invite(self) -> None:
        """Say how to begin, where nothing stands on the table."""
        column = QVBoxLayout(self.invitation)
        column.setContentsMargins(0, 0, 0, 0)
        told = self.tr(
            "Nothing is on the table yet. Begin a project here, or answer four short "
            "questions in “Tonight” (Ctrl+1)."
        )
        column.addWidget(text(told))
        column.addWidget(_button(self.acts.project), 0, Qt.AlignmentFlag.AlignLeft)

    def _left(self) -> QWidget:
        """Return the tree, and above it the words that narrow it."""
        self.only.setClearButtonEnabled(True)
        self.only.setPlaceholderText(self.tr("models with these words, also of a step"))
        self.only.setToolTip(self.only.placeholderText())
        self.only.setAccessibleName(self.tr("Show only"))
        self.only.textChanged.connect(self.tree.show_only)
        find = QShortcut(QKeySequence(QKeySequence.StandardKey.Find), self)
        find.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
        find.activated.connect(self.only.setFocus)
        line = QHBoxLayout()
        line.setContentsMargins(24, 0, 6, 0)
        line.addWidget(field_label(self.tr("Show on&ly"), self.only))
        line.addWidget(self.only, 1)
        self.narrow = QWidget()
        self.narrow.setLayout(line)
        holder = QWidget()
        column = QVBoxLayout(holder)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(4)
        column.addWidget(self.narrow)
        column.addWidget(self.tree, 1)
        return holder

    def _tools(self) -> FlowLayout:
        row = FlowLayout(across=4, down=4)
        row.setContentsMargins(0, 0, 0, 0)
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
            row.addWidget(_button(action))
        row.addWidget(_menu_button(acts.targets.title(), acts.targets))
        more = QMenu(self)
        more.addActions(acts.every())
        row.addWidget(_menu_button(self.tr("More"), more))
        return row

    # -- what the window asks ---------------------------------------------------------------

    def _face(self, key: Key) -> Face | None:
        """Return what a model looks like now."""
        book = self._session.book
        if book is None or all(project.name != key.project for project in book.projects):
            return None
        return face_of(book, key.project, key.model)

    def _picture(self, face: Face) -> QIcon:
        """Return the newest photo of a model, or else its outline."""
        path = self._session.path
        photo = self._photos.photo(path, face.photo) if face.photo and path else None
        return face_icon(face, self._colours, photo)

    def set_colours(self, colours: Colours) -> None:
        """Paint in other colours."""
        self._colours = colours
        self.tree.set_colours(colours)
        self.network.set_colours(colours)
        self.findings.set_colours(colours)
        self._show_findings()

    def show_book(self) -> None:
        """Show the open book; what is open and chosen stays so."""
        book = self.book
        if book is None:
            return
        self.invitation.setVisible(not book.projects)
        self.down.setVisible(bool(book.projects))
        self.tools.setVisible(bool(book.projects))
        self.narrow.setVisible(
            bool(self.only.text()) or sum(len(project.models) for project in book.projects) > FEW
        )
        kept = self.tree.keep()
        if self.model.show_nodes(nodes_of(book), self._waits):
            self.tree.restore(kept)
            self.tree.show_only(self.only.text())
        self._show_chosen()

    def show_picture(self, picture: PlanSnapshot) -> None:
        """Show what a plan knows: findings, and what can wait."""
        findings, slacks = picture.build
        self._known = Known(findings, slacks)
        self.model.show_known(self._known)
        self.tree.viewport().update()
        self._show_drawing()
        self._show_findings()
        self._show_chosen()

    def _show_done(self, at: ModelKey) -> None:
        """Say when a model is finished by the plan on screen."""
        picture = self._session.picture
        there = picture is not None and any(
            model.name == at.model
            for project in picture.book.projects
            if project.name == at.project
            for model in project.models
        )
        told, late = model_line(picture, at.project, at.model) if picture and there else ("", False)
        self.forms.model.show_done(told, late, self._colours)

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

    def _edit(self, form: EditorForm, make: Callable[[Book], Edit]) -> None:
        before = self.tree.current()
        follow = self.forms.following(before)
        refused = self._session.attempt(make)
        if refused is not None:
            form.refuse(refused)
        elif follow is not None and before is not None:
            new = follow()
            if not self.model.index_of(before).isValid() and self.model.index_of(new).isValid():
                self.tree.choose(new)

    def _mend(self, finding: Finding) -> None:
        mend = finding.mend
        if mend is not None:
            self.do(lambda book: Edit(mend.title, mend.apply(book)))

    # -- showing ----------------------------------------------------------------------------

    def _show_chosen(self) -> None:
        self._later.stop()
        self.acts.show_chosen()
        try:
            self._show_form()
        except Refused:  # it has just gone from the book; the tree follows
            self.forms.show_none()
        self._show_drawing()
        self._show_findings()

    def _show_form(self) -> None:
        key = self.tree.current()
        self.forms.show_line(self.book, key, self.tree.steps())
        if key is not None and key.kind is NodeKind.MODEL and self.book is not None:
            self._show_done(key.home)

    def _show_drawing(self) -> None:
        key = self.tree.current()
        home = Key(NodeKind.MODEL, key.project, key.model) if key is not None else None
        node = self.model.node_at(self.model.index_of(home)) if home is not None else None
        self.network.show_model(self.book, key, self._known, node)

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
        return words.listed([step_name(model, name) for name in before])

    def _chosen_in_drawing(self, step: str) -> None:
        key = self.tree.current()
        if key is not None:
            self.tree.choose(Key(NodeKind.STEP, key.project, key.model, step=step))


def _button(action: QAction) -> QToolButton:
    button = QToolButton()
    button.setDefaultAction(action)
    button.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
    roomy(button)
    return button


def _menu_button(name: str, menu: QMenu) -> QToolButton:
    button = QToolButton()
    button.setText(name)
    button.setMenu(menu)
    button.setPopupMode(QToolButton.ToolButtonPopupMode.InstantPopup)
    button.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
    roomy(button)
    return button
