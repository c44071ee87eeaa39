"""The bench book: edits, facts, undo and redo, two programs at once."""

import os
import sqlite3
import subprocess
import sys
from contextlib import closing
from dataclasses import replace
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest
from drawn_examples import drawn
from hypothesis import HealthCheck, given
from log_facts import log_fact, unlog
from rich_books import rich_books

from planner.evening import log_entries
from planner.values.coating import Coating, Family
from planner.values.gear import Cleaned
from planner.values.project import Logged, Project
from planner.values.refusal import Refused
from storage import database
from storage.bench_book import BenchBook, BookChanged, BookTrouble, Kind
from storage.exchange import digest
from storage.presence import in_use
from storage.restoring import restore

START = datetime(2031, 3, 4, 19, 0, tzinfo=UTC)


def noted(book, note):
    """Return the book with another note on its first project: a small edit."""
    first, *others = book.projects
    return replace(book, projects=(replace(first, note=note), *others))


def fact_of(book, *, number=0, minutes=0):
    model = book.projects[0].models[0]
    start = START + timedelta(minutes=minutes)
    return Logged(
        model=model.name, step=model.steps[number].id, start=start, end=start + timedelta(minutes=9)
    )


def log_of(bench):
    return bench.book().projects[0].log


@pytest.fixture
def born_at_once(monkeypatch):
    """Make new books as copies of an empty one; that migrations make it is tested elsewhere."""
    really = database.migrate
    empty = sqlite3.connect(":memory:", check_same_thread=False)

    def migrate(engine, target, *, upgrade=None):
        with engine.connect() as connection:
            raw = connection.connection.driver_connection
            if empty.execute("SELECT name FROM sqlite_master").fetchone() is None:
                really(engine, target, upgrade=upgrade)
                raw.backup(empty)
            else:
                empty.backup(raw)

    monkeypatch.setattr(database, "migrate", migrate)
    yield
    empty.close()


@drawn(12, HealthCheck.function_scoped_fixture)
@given(rich_books(), rich_books())
def test_every_field_is_kept(tmp_path_factory, born_at_once, first, second):
    second = noted(second, "surely another note")  # or there might be no edit to undo
    path = tmp_path_factory.mktemp("books") / "book"
    with BenchBook.create(path, first) as bench:
        assert bench.book() == first
    with BenchBook.open(path) as bench:
        assert bench.book() == first
        assert digest(bench.book()) == digest(first)
        bench.apply("everything else", second)
    with BenchBook.open(path) as bench:
        assert bench.book() == second
        assert bench.undo() == "everything else"
    with BenchBook.open(path) as bench:
        assert bench.book() == first


def test_an_edit_is_there_after_opening_again(opened, demo_book):
    bench = opened()
    before = bench.revision
    assert bench.apply("note", noted(demo_book, "wash it first")) == before + 1
    assert opened().book().projects[0].note == "wash it first"
    last = bench.journal()[-1]
    assert (last.name, last.kind, last.id) == ("note", Kind.EDIT, before + 1)
    assert abs(last.at - datetime.now(UTC)) < timedelta(minutes=5)


def test_an_edit_that_changes_nothing_leaves_no_line(opened, demo_book):
    bench = opened()
    lines = bench.journal()
    bench.apply("nothing", replace(demo_book))
    assert bench.journal() == lines


def test_only_the_pieces_that_change_are_written(opened, demo_book, book_path):
    bench = opened()

    def ids(table):
        with closing(sqlite3.connect(book_path)) as raw:
            return raw.execute(f"SELECT id FROM {table} ORDER BY id").fetchall()

    before = {table: ids(table) for table in ("coating", "step", "place", "location", "project")}
    bench.apply("note", noted(demo_book, "new"))
    assert {table: ids(table) for table in before} == before
    dearer = replace(demo_book.coatings[0], in_stock_ml=7.5)
    bench.apply("stock", replace(bench.book(), coatings=(dearer, *demo_book.coatings[1:])))
    assert ids("coating") != before.pop("coating")
    assert {table: ids(table) for table in before} == before


def test_undo_and_redo_outlast_a_restart(opened, demo_book):
    bench = opened()
    bench.apply("one", noted(demo_book, "1"))
    bench.apply("two", noted(demo_book, "2"))
    assert bench.undo() == "two"
    again = opened()
    assert again.book().projects[0].note == "1"
    assert (again.undoable(), again.redoable()) == ("one", "two")
    assert again.undo() == "one"
    assert again.book() == demo_book
    assert again.undo() is None
    third = opened()
    assert (third.redo(), third.redo(), third.redo()) == ("one", "two", None)
    assert third.book().projects[0].note == "2"
    kinds = [entry.kind.value for entry in third.journal()]
    assert kinds == ["created", "edit", "edit", "undo", "undo", "redo", "redo"]


def test_a_new_edit_ends_redo(opened, demo_book):
    bench = opened()
    bench.apply("one", noted(demo_book, "1"))
    bench.undo()
    bench.apply("other", noted(demo_book, "x"))
    assert bench.redo() is None
    assert bench.undo() == "other"
    assert bench.undo() is None


def test_undo_passes_over_facts(opened, demo_book):
    bench = opened()
    bench.apply("one", noted(demo_book, "1"))
    log_fact(bench, "primed", demo_book.projects[0].name, fact_of(demo_book))
    assert bench.undoable() == "one"
    assert bench.undo() == "one"
    assert bench.book().projects[0].note == demo_book.projects[0].note
    assert log_of(bench) == (*demo_book.projects[0].log, fact_of(demo_book))
    assert log_of(opened()) == log_of(bench)
    assert bench.undo() is None


def test_logs_changed_by_an_edit_of_the_whole_book_are_facts_too(opened, demo_book):
    bench = opened()
    first, *others = demo_book.projects
    logged = replace(first, log=(fact_of(demo_book),))
    bench.apply("primed", replace(demo_book, projects=(logged, *others)))
    assert bench.journal()[-1].kind is Kind.FACT
    assert bench.undo() is None
    assert log_of(bench) == (fact_of(demo_book),)


def test_a_fact_replaces_the_one_of_its_coat_and_can_be_taken_back(opened, demo_book):
    bench = opened()
    project = demo_book.projects[0].name
    begun = replace(fact_of(demo_book), end=None)
    log_fact(bench, "begun", project, begun)
    log_fact(bench, "ended", project, fact_of(demo_book))
    log_fact(bench, "next", project, fact_of(demo_book, number=1, minutes=60))
    assert len(log_of(bench)) == 2
    unlog(bench, "mistake", project, begun.model, begun.step)
    assert log_of(opened()) == (fact_of(demo_book, number=1, minutes=60),)
    with pytest.raises(Refused, match="nothing is logged"):
        unlog(bench, "mistake", project, begun.model, begun.step)
    with pytest.raises(Refused, match='no project is called "nowhere"'):
        unlog(bench, "mistake", "nowhere", begun.model, begun.step)


def test_undo_is_refused_where_it_would_take_a_fact_along(opened, demo_book):
    bench = opened()
    first = demo_book.projects[0]
    twin = replace(first.models[0], name="another")
    grown = replace(first, models=(*first.models, twin))
    bench.apply("copy", replace(demo_book, projects=(grown,)))
    log_fact(bench, "primed", first.name, replace(fact_of(demo_book), model="another"))
    with pytest.raises(Refused, match=r'cannot undo "copy".*take back what was logged since'):
        bench.undo()
    assert len(log_of(bench)) == 1
    unlog(bench, "mistake", first.name, "another", fact_of(demo_book).step)
    assert bench.undo() == "copy"
    assert bench.book() == demo_book


def test_a_new_project_with_facts_is_not_undone_either(opened, demo_book):
    bench = opened()
    other = replace(demo_book.projects[0], name="other")
    bench.apply("import", replace(demo_book, projects=(*demo_book.projects, other)))
    log_fact(bench, "primed", "other", fact_of(demo_book))
    with pytest.raises(Refused, match=r'cannot undo "import".*logged since'):
        bench.undo()


def test_projects_and_models_come_go_and_change_places(opened, demo_book):
    bench = opened()
    first = demo_book.projects[0]
    twin = replace(first.models[0], name="twin")
    other = Project(name="other", models=(twin, first.models[0]), log=(fact_of(demo_book),))
    steps = [
        replace(demo_book, projects=(first, other)),
        replace(demo_book, projects=(other, first)),
        replace(demo_book, projects=(replace(other, models=other.models[::-1]), first)),
        replace(demo_book, projects=(replace(other, name="renamed"),)),
        replace(demo_book, projects=()),
        replace(demo_book, projects=(other, replace(first, models=(twin, *first.models)))),
    ]
    for number, book in enumerate(steps):
        bench.apply(str(number), book)
        assert opened().book() == book
    for book in reversed([demo_book, *steps[:-1]]):
        bench.undo()
        assert opened().book() == book


def test_a_stale_session_is_told_and_changes_nothing(opened, demo_book):
    first, second = opened(), opened()
    told = log_entries.written(second.book(), demo_book.projects[0].name, fact_of(demo_book))
    first.apply("mine", noted(demo_book, "mine"))
    for attempt in (
        lambda: second.apply("theirs", noted(demo_book, "theirs")),
        lambda: second.apply("fact", told),
        second.undo,
    ):
        with pytest.raises(BookChanged, match="was changed by another program"):
            attempt()
    assert opened().book() == first.book()
    assert second.book().projects[0].note == "mine"
    second.apply("theirs", noted(second.book(), "theirs"))
    assert first.book().projects[0].note == "theirs"


def test_the_second_program_is_told_who_was_there_first(opened, book_path):
    first = opened()
    assert first.other_user == ""
    asked = "import sys; from pathlib import Path; from storage.bench_book import BenchBook\n"
    asked += "with BenchBook.open(Path(sys.argv[1])) as bench: print(bench.other_user)"
    root = Path(__file__).parents[2]
    told = subprocess.run(
        [sys.executable, "-c", asked, str(book_path)],
        cwd=root,
        capture_output=True,
        text=True,
        check=True,
    )
    assert f"process {os.getpid()} on " in told.stdout
    first.close()
    assert opened().other_user == ""


def test_whether_a_book_is_open_is_told_without_leaving_a_note(opened, book_path, tmp_path):
    link = tmp_path / "link.tackfree"
    link.symlink_to(book_path)
    first = opened()
    assert in_use(book_path)
    assert in_use(link)
    first.close()
    assert not in_use(book_path)
    before = sorted(tmp_path.iterdir())
    for path in (tmp_path / "none.tackfree", tmp_path / "no" / "folder", Path("a\0b"), Path()):
        assert not in_use(path)
    assert sorted(tmp_path.iterdir()) == before


def test_a_cycle_is_not_written(opened, demo_book):
    project = demo_book.projects[0]
    model = project.models[0]
    looped = replace(model.steps[0], after=(model.steps[-1].id,))
    steps = (looped, *model.steps[1:])
    models = (replace(model, steps=steps), *project.models[1:])
    bench = opened()
    with pytest.raises(Refused):
        bench.apply("loop", replace(demo_book, projects=(replace(project, models=models),)))
    assert opened().book() == demo_book


def test_a_backup_is_whole_and_restores_as_an_edit(opened, demo_book, tmp_path):
    bench = opened()
    copy = tmp_path / "copy.tackfree"
    bench.backup(copy)
    with pytest.raises(BookTrouble, match="is there already"):
        bench.backup(copy)
    changed = noted(demo_book, "spoilt")
    bench.apply("spoil", changed)
    content = copy.read_bytes()
    restore(bench, copy)
    assert bench.book() == demo_book
    assert copy.read_bytes() == content
    assert bench.undo() == "restore copy.tackfree"
    assert bench.book() == changed


def test_names_that_sql_could_stumble_over(opened, demo_book):
    bench = opened()
    odd = Coating(name="'; DROP TABLE step; -- \"% é 塗", family=Family.WATERBORNE_ACRYLIC)
    bench.apply("odd", replace(demo_book, coatings=(*demo_book.coatings, odd)))
    assert opened().book().coatings[-1] == odd


def amount(book, ml):
    """Return the book with another amount of its first coating."""
    first, *others = book.coatings
    return replace(book, coatings=(replace(first, in_stock_ml=float(ml)), *others))


def test_typing_one_value_is_one_edit(opened, demo_book):
    bench = opened()
    bench.apply("note", noted(demo_book, "before"))
    before = bench.book()
    for ml in (1, 12, 125):
        bench.apply(f"{ml} ml", amount(before, ml), merge="amount")
    assert [one.name for one in bench.stacks().undo] == ["note", "125 ml"]
    after = bench.book()
    again = opened()
    assert again.undo() == "125 ml"
    assert again.book() == before
    assert again.redo() == "125 ml"
    assert again.book() == after


def test_what_leads_back_to_where_it_began_is_no_edit(opened, demo_book):
    bench = opened()
    start = bench.book().coatings[0].in_stock_ml
    bench.apply("7 ml", amount(demo_book, start + 7), merge="amount")
    bench.apply("back", amount(demo_book, start), merge="amount")
    assert bench.book() == demo_book
    assert bench.undoable() is None
    bench.apply("9 ml", amount(demo_book, start + 9), merge="amount")
    assert bench.undo() == "9 ml"
    assert bench.book() == demo_book


@pytest.mark.parametrize("between", ["time", "another edit", "a fact", "undo"])
def test_only_what_follows_at_once_is_the_same_edit(opened, demo_book, monkeypatch, between):
    bench = opened()
    bench.apply("1 ml", amount(demo_book, 1), merge="amount")
    if between == "time":
        monkeypatch.setattr("storage.undo_redo.MERGED_WITHIN", -1.0)
    elif between == "another edit":
        bench.apply("note", noted(bench.book(), "between"), merge="note")
    elif between == "a fact":
        log_fact(bench, "begun", demo_book.projects[0].name, fact_of(demo_book))
    else:
        bench.undo()
        bench.redo()
    done = len(bench.stacks().undo)
    bench.apply("2 ml", amount(bench.book(), 2), merge="amount")
    assert len(bench.stacks().undo) == done + 1
    bench.undo()
    assert bench.book().coatings[0].in_stock_ml == 1


def test_going_back_over_many_edits_is_all_or_nothing(opened, demo_book):
    bench = opened()
    for number in range(4):
        bench.apply(f"note {number}", noted(bench.book(), f"{number}"))
    twin = replace(demo_book.projects[0], name="twin", log=(), pins=(), observed=(), diary=())
    bench.apply("twin", replace(bench.book(), projects=(*bench.book().projects, twin)))
    ids = [one.id for one in bench.stacks().undo]
    bench.turn_to(ids[1])
    assert bench.book().projects[0].note == "1"
    assert [one.name for one in bench.stacks().redo] == ["twin", "note 3", "note 2"]
    bench.turn_to(ids[3])
    assert bench.book().projects[0].note == "3"
    bench.turn_to(ids[4])
    log_fact(bench, "begun", "twin", fact_of(bench.book()))
    lines, book = len(bench.journal()), bench.book()
    with pytest.raises(Refused, match="logged since"):
        bench.turn_to(0)
    assert (len(bench.journal()), bench.book()) == (lines, book)


def test_the_last_thing_of_all_is_taken_back_fact_or_edit(opened, demo_book):
    bench = opened()
    project = demo_book.projects[0].name
    begun = replace(fact_of(demo_book), end=None)
    bench.apply("note", noted(demo_book, "1"))
    log_fact(bench, "begun", project, begun)
    log_fact(bench, "ended", project, fact_of(demo_book))
    bench.apply("other note", noted(bench.book(), "2"))
    names = []
    while (name := bench.latest()) is not None:
        assert bench.take_back() == name
        names.append(name)
        bench = opened()  # it survives a restart
    assert names == ["other note", "ended", "begun", "note"]
    assert bench.book() == demo_book
    assert bench.take_back() is None
    assert bench.redo() == "note"
    assert bench.latest() == "note"


def test_a_cleaning_is_a_fact_that_undo_leaves_alone(opened, demo_book):
    with opened() as bench:
        renamed = replace(demo_book, coatings=demo_book.coatings[::-1])
        bench.apply("edit", renamed)
        at = datetime(2031, 3, 4, 20, 5, tzinfo=UTC)
        fact = Cleaned(airbrush="fine", at=at)
        bench.apply("cleaned: fine", replace(bench.book(), cleaned=(fact,)))
        assert bench.undoable() == "edit"
        assert bench.undo() == "edit"
        assert bench.book() == replace(demo_book, cleaned=(fact,))
        assert bench.take_back() == "cleaned: fine"
        assert bench.book() == demo_book
