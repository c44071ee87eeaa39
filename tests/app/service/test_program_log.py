"""The log and the reports say where the program failed, and nothing of a person's own."""

import logging
import sys

import pytest

from app import entry
from app.service import program_log
from app.service.program_log import Impersonal, StartMark, told

SECRET = "Aunt Mathilda's tank"


@pytest.fixture(autouse=True)
def log_folder(tmp_path, monkeypatch):
    monkeypatch.setattr(program_log, "folder", lambda: tmp_path / "log")
    return tmp_path / "log"


def fault() -> BaseException:
    try:
        try:
            {}[SECRET]
        except KeyError as problem:
            raise ValueError(f"no model {SECRET}") from problem
    except ValueError as problem:
        return problem


def test_a_fault_is_told_by_kind_and_place_alone():
    text = told(fault())
    assert "builtins.KeyError" in text
    assert "builtins.ValueError" in text
    assert "tests/app/service/test_program_log.py" in text
    assert SECRET not in text


def test_a_line_of_the_log_holds_the_literal_alone():
    problem = fault()
    record = logging.LogRecord(
        "app", logging.ERROR, __file__, 1, "cannot open %s", (SECRET,),
        (type(problem), problem, problem.__traceback__),
    )  # fmt: skip
    line = Impersonal().format(record)
    assert "cannot open %s" in line
    assert SECRET not in line


def test_a_report_names_versions_and_places(log_folder):
    path = program_log.report(fault())
    text = path.read_text("utf-8")
    assert "Python" in text
    assert "ValueError" in text
    assert SECRET not in text
    assert path.parent == log_folder


def test_only_the_last_reports_are_kept(log_folder):
    log_folder.mkdir()
    for number in range(20):
        (log_folder / f"report-2031-01-{number + 1:02}T00-00-00.txt").write_text("old")
    program_log.report(fault())
    assert len(list(log_folder.glob("report-*"))) == program_log.REPORTS


def test_the_log_turns_over(log_folder, monkeypatch):
    monkeypatch.setattr(program_log, "MOST_BYTES", 2_000)
    root = logging.getLogger()
    before = list(root.handlers)
    program_log.begin()
    (handler,) = [handler for handler in root.handlers if handler not in before]
    try:
        for _ in range(200):
            logging.getLogger("app").warning("something happened to %s", SECRET)
    finally:
        root.removeHandler(handler)
        handler.close()
    files = sorted(log_folder.glob("tackfree.log*"))
    assert len(files) == 1 + program_log.KEPT
    assert all(file.stat().st_size <= 2_000 for file in files)
    assert SECRET not in "".join(file.read_text("utf-8") for file in files)


def test_what_nobody_expected_is_told_once(log_folder, monkeypatch):
    monkeypatch.setattr(sys, "excepthook", sys.__excepthook__)
    heard = []
    program_log.catch_all(lambda problem, path: heard.append((problem, path)))
    problem = fault()
    for _ in range(3):
        sys.excepthook(type(problem), problem, problem.__traceback__)
    assert [one for one, _ in heard] == [problem]
    assert heard[0][1].exists()


def test_a_start_that_did_not_come_to_an_end_is_known():
    first = StartMark()
    assert not first.died
    second = StartMark()  # the first never stood
    assert second.died
    second.stands()
    assert not StartMark().died


def test_the_command_line_ends_with_one_line_and_a_report(monkeypatch, capsys, log_folder):
    def broken(*_given, **_named):
        raise RuntimeError(SECRET)

    monkeypatch.setattr(entry, "command_line", broken)
    assert entry.main(["plan"]) == 70
    said = capsys.readouterr()
    assert said.err.count("\n") == 1
    assert "unforeseen" in said.err
    assert SECRET not in said.err
    assert len(list(log_folder.glob("report-*"))) == 1
