"""Random edits, facts, undo, redo and restarts, against a model in memory."""

import shutil
import tempfile
from dataclasses import replace
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest
from drawn_examples import drawn
from hypothesis import strategies as st
from hypothesis.stateful import RuleBasedStateMachine, invariant, rule, run_state_machine_as_test
from log_facts import log_fact, unlog

from planner.values.book import Book
from planner.values.project import Logged
from planner.values.refusal import Refused
from storage import database
from storage.bench_book import BenchBook

START = datetime(2031, 3, 4, 19, 0, tzinfo=UTC)


def with_logs(book: Book, logs: dict) -> Book:
    """Return the book with these facts and no others."""
    projects = tuple(replace(project, log=logs.get(project.name, ())) for project in book.projects)
    return replace(book, projects=projects)


@pytest.fixture(autouse=True)
def _no_power_fails(monkeypatch):
    monkeypatch.setattr(database, "SYNCHRONOUS", "OFF")


def opened(path: Path) -> BenchBook:
    return BenchBook.open(path)


class Desk(RuleBasedStateMachine):
    """The memory keeps books without facts on two stacks, and the facts beside them."""

    template: Path

    def __init__(self) -> None:
        super().__init__()
        self.folder = tempfile.TemporaryDirectory()
        self.path = Path(shutil.copy(self.template, Path(self.folder.name) / "bench"))
        self.bench = opened(self.path)
        self.now = self.bench.book()
        self.undone: list[Book] = []
        self.done: list[Book] = []
        self.logs = {project.name: project.log for project in self.now.projects}
        self.typing = ""  # what the next edit may go on with
        self.now = with_logs(self.now, {})
        self.count = 0

    def teardown(self) -> None:
        self.bench.close()
        self.folder.cleanup()

    def expected(self) -> Book:
        return with_logs(self.now, self.logs)

    def edit(self, new: Book) -> None:
        self.count += 1
        self.bench.apply(f"edit {self.count}", with_logs(new, self.logs))
        self.done.append(self.now)
        self.undone.clear()
        self.now, self.typing = new, ""

    @rule(data=st.data())
    def edit_project(self, data) -> None:
        self.count += 1
        projects = list(self.now.projects)
        at = data.draw(st.integers(0, len(projects) - 1))
        model = projects[at].models[0]
        kind = data.draw(st.sampled_from(["note", "title", "twin", "turn"]))
        if kind == "note":
            projects[at] = replace(projects[at], note=f"note {self.count}")
        elif kind == "title":
            steps = (replace(model.steps[0], title=f"title {self.count}"), *model.steps[1:])
            models = (replace(model, steps=steps), *projects[at].models[1:])
            projects[at] = replace(projects[at], models=models)
        elif kind == "twin":
            twin = replace(model, name=f"twin {self.count}")
            projects[at] = replace(projects[at], models=(*projects[at].models, twin))
        elif len(projects[at].models) > 1:
            projects[at] = replace(projects[at], models=projects[at].models[::-1])
        else:
            return
        self.edit(replace(self.now, projects=tuple(projects)))

    @rule(value=st.integers(1, 3), merge=st.sampled_from(["stock", "gauge"]))
    def count_up(self, value: int, merge: str) -> None:
        """Type an amount; what follows at once on the same amount is one edit."""
        amount = replace(self.now.coatings[1], in_stock_ml=float(value))
        new = replace(self.now, coatings=(self.now.coatings[0], amount, *self.now.coatings[2:]))
        if new == self.now:
            return
        self.count += 1
        name = f"edit {self.count}"
        self.bench.apply(name, with_logs(new, self.logs), merge=merge)
        if self.typing != merge:
            self.done.append(self.now)
            self.undone.clear()
        elif new == self.done[-1]:
            self.undone[:] = [self.now]
            self.done.pop()
            merge = ""
        else:
            self.undone.clear()
        self.now, self.typing = new, merge

    @rule()
    def edit_stock(self) -> None:
        self.count += 1
        first = replace(self.now.coatings[0], in_stock_ml=float(self.count))
        self.edit(replace(self.now, coatings=(*self.now.coatings[1:], first)))

    @rule()
    def add_project(self) -> None:
        self.count += 1
        fresh = replace(self.now.projects[0], name=f"project {self.count}")
        self.edit(replace(self.now, projects=(fresh, *self.now.projects)))

    @rule(data=st.data())
    def remove_project(self, data) -> None:
        bare = [project for project in self.now.projects if not self.logs.get(project.name)]
        if bare and len(self.now.projects) > 1:
            gone = data.draw(st.sampled_from(bare))
            left = tuple(project for project in self.now.projects if project is not gone)
            self.edit(replace(self.now, projects=left))

    @rule(data=st.data())
    def log(self, data) -> None:
        project = data.draw(st.sampled_from(self.now.projects))
        model = data.draw(st.sampled_from(project.models))
        self.count += 1
        fact = Logged(
            model=model.name, step=model.steps[0].id, start=START + timedelta(hours=self.count)
        )
        known = self.logs.get(project.name, ())
        log_fact(self.bench, "fact", project.name, fact)
        self.typing = ""
        if any(one.model == fact.model for one in known):  # a correction keeps its place
            known = tuple(fact if one.model == fact.model else one for one in known)
            self.logs[project.name] = known
        else:
            self.logs[project.name] = (*known, fact)

    @rule(data=st.data())
    def unlog(self, data) -> None:
        facts = [(name, fact) for name, log in self.logs.items() for fact in log]
        if facts:
            name, fact = data.draw(st.sampled_from(facts))
            unlog(self.bench, "no", name, fact.model, fact.step)
            self.typing = ""
            self.logs[name] = tuple(log for log in self.logs[name] if log != fact)

    @rule()
    def undo(self) -> None:
        self.turn(self.bench.undo, self.done, self.undone)

    @rule()
    def redo(self) -> None:
        self.turn(self.bench.redo, self.undone, self.done)

    def turn(self, act, source: list[Book], target: list[Book]) -> None:
        if not source:
            assert act() is None
            return
        there = {project.name for project in source[-1].projects}
        lost = any(log and name not in there for name, log in self.logs.items())
        try:
            with_logs(source[-1], self.logs)
        except Refused:
            lost = True
        if lost:  # a fact would go with its project or model
            with pytest.raises(Refused):
                act()
            return
        assert act() is not None
        target.append(self.now)
        self.now, self.typing = source.pop(), ""

    @rule(data=st.data())
    def jump(self, data) -> None:
        """Go to any edit at once; it is as good as undo after undo, or redo after redo."""
        stacks = self.bench.stacks()
        assert (len(stacks.undo), len(stacks.redo)) == (len(self.done), len(self.undone))
        back = data.draw(st.integers(-len(self.undone), len(self.done)))
        ids = [0, *(one.id for one in stacks.undo), *(one.id for one in stacks.redo[::-1])]
        before = self.bench.journal()
        source, target = (self.done, self.undone) if back > 0 else (self.undone, self.done)
        now, source, target = self.now, list(source), list(target)
        for _ in range(abs(back)):
            target.append(now)
            now = source.pop()
        there = {project.name for project in now.projects}
        lost = any(log and name not in there for name, log in self.logs.items())
        try:
            with_logs(now, self.logs)
        except Refused:
            lost = True
        try:
            self.bench.turn_to(ids[len(self.done) - back])
        except Refused:  # a fact would go, here or on the way
            assert back
            assert self.bench.journal() == before
            return
        assert not lost
        self.now = now
        self.done, self.undone = (source, target) if back > 0 else (target, source)
        self.typing = self.typing if not back else ""

    @rule()
    def restart(self) -> None:
        self.typing = ""
        self.bench.close()
        self.bench = opened(self.path)

    @invariant()
    def same(self) -> None:
        assert self.bench.book() == self.expected()


@pytest.fixture
def short(demo_book: Book, tmp_path: Path) -> Path:
    """A closed book with two steps and three bottles: it is written and read over and over."""
    path = tmp_path / "short"
    project = demo_book.projects[0]
    models = tuple(replace(model, steps=model.steps[:2]) for model in project.models)
    laid = {part.coating for model in models for step in model.steps for part in step.applications}
    bottles = sorted(demo_book.coatings, key=lambda coating: coating.name not in laid)[:3]
    book = replace(
        demo_book,
        projects=(replace(project, models=models),),
        coatings=tuple(bottles),
        mixes=(),
    )
    BenchBook.create(path, book).close()
    return path


@pytest.mark.hypothesis
def test_any_course_of_edits_facts_and_restarts(short):
    Desk.template = short
    run_state_machine_as_test(Desk, settings=drawn(13, stateful_step_count=48))
