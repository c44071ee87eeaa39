"""What is unsound, one finding at a time: F8 goes to the next, Enter mends it."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Qt
from PySide6.QtGui import QKeyEvent, QKeySequence, QShortcut
from PySide6.QtWidgets import QDialog, QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from app.service.edits import Edit
from app.service.mends import mended
from app.window.labels import MessageLabel, text
from app.window.message_translation import title, translated
from app.window.session import Session
from planner.layers.finding import Finding, shown
from planner.layers.findings import find
from planner.values.book import Book

ENTER = (Qt.Key.Key_Return, Qt.Key.Key_Enter)


class MendPrompt(QDialog):
    """Stays in front while the window is worked on, and follows the book."""

    def __init__(self, session: Session, parent: QWidget) -> None:
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(self.tr("Mends"))
        self._session = session
        self._at = 0
        self.findings: tuple[Finding, ...] = ()
        self.count = text("", size=0.95)
        self.about = text("", bold=True)
        self.why = text("")
        self.mend = text("")
        self.message = MessageLabel()
        self.next = QPushButton(self.tr("&Next (F8)"))
        self.one = QPushButton(self.tr("&Mend it (Enter)"))
        self.all = QPushButton()
        self.one.setDefault(True)
        for button in (self.next, self.all):
            button.setAutoDefault(False)
        self.next.clicked.connect(lambda _on=False: self.go_on())
        self.one.clicked.connect(lambda _on=False: self.mend_one())
        self.all.clicked.connect(lambda _on=False: self.mend_alike())
        self._lay_out()
        key = QShortcut(QKeySequence("F8"), self)
        key.activated.connect(self.go_on)
        session.edited.connect(self._look)
        session.opened.connect(self._look)
        self._look()

    def _lay_out(self) -> None:
        line = QHBoxLayout()
        line.addWidget(self.one)
        line.addWidget(self.next)
        line.addWidget(self.all)
        line.addStretch(1)
        column = QVBoxLayout(self)
        column.setContentsMargins(18, 14, 18, 12)
        column.setSpacing(6)
        for widget in (self.count, self.about, self.why, self.mend):
            column.addWidget(widget)
        column.addStretch(1)
        column.addWidget(self.message)
        column.addLayout(line)
        self.resize(560, 240)

    @property
    def current(self) -> Finding | None:
        """The finding that is shown."""
        return self.findings[self._at] if self._at < len(self.findings) else None

    def alike(self) -> tuple[Finding, ...]:
        """Return every finding of the kind of the one shown that has a mend."""
        current = self.current
        if current is None:
            return ()
        return tuple(
            finding
            for finding in self.findings
            if finding.rule == current.rule and finding.mend is not None
        )

    def go_on(self) -> None:
        """Show the next finding, after the last the first."""
        if self.findings:
            self._at = (self._at + 1) % len(self.findings)
        self._show()

    def mend_one(self) -> None:
        """Apply the mend of the finding shown."""
        current = self.current
        if current is None or current.mend is None:
            self.go_on()
            return
        mend = current.mend
        self._apply(lambda book: Edit(mend.title, mend.apply(book)))

    def mend_alike(self) -> None:
        """Apply the mends of every finding of this kind, as one edit."""
        alike = self.alike()
        if alike:
            self._apply(lambda book: mended(book, alike))

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Mend by Enter, wherever the keys are."""
        if event.key() in ENTER and not self.next.hasFocus() and not self.all.hasFocus():
            self.mend_one()
            return
        super().keyPressEvent(event)

    def _apply(self, make: Callable[[Book], Edit]) -> None:
        refused = self._session.attempt(make)
        self.message.say(refused.line if refused else "")

    def _look(self) -> None:
        """Find anew; the keys stay at the same finding, or at what comes in its place."""
        before = self.current
        book = self._session.book
        found = find(book) if book is not None else ()
        self.findings = tuple(sorted(found, key=lambda one: (-one.verdict.rank, one.path)))
        same = [at for at, one in enumerate(self.findings) if before and one.key == before.key]
        self._at = same[0] if same else min(self._at, max(0, len(self.findings) - 1))
        self._show()

    def _about(self, finding: Finding) -> str:
        """Return model, step and places, the step by its title in the window's language."""
        book, told = self._session.book, finding.step
        for project in book.projects if book else ():
            for model in project.models if project.name == finding.project else ():
                for step in model.steps if model.name == finding.model else ():
                    if step.id == finding.step and step.title:
                        told = title(step.title)
        return " · ".join(filter(None, (finding.model, told, translated(shown(finding.places)))))

    def _show(self) -> None:
        current = self.current
        for widget in (self.about, self.why, self.mend, self.next, self.all):
            widget.setVisible(current is not None)
        self.one.setEnabled(current is not None and current.mend is not None)
        if current is None:
            self.count.setText(self.tr("Nothing is unsound."))
            return
        self.count.setText(
            self.tr("{at} of {n} findings").format(at=self._at + 1, n=len(self.findings))
        )
        self.about.setText(self._about(current))
        self.why.setText(translated(current.message))
        told = translated(current.mend.title) if current.mend else self.tr("no mend is known")
        self.mend.setText(self.tr("Mend: {mend}").format(mend=told))
        alike = len(self.alike())
        self.all.setVisible(alike > 1)
        self.all.setText(self.tr("Mend &all {n} of this kind").format(n=alike))
