"""What leaves by `tackfree export` and comes back by `tackfree import`, as a person does it."""

from __future__ import annotations

import csv
import io
from collections.abc import Callable
from dataclasses import dataclass, replace
from pathlib import Path

import pytest
from logged_book import logged_book, photos_in
from small_book import PROJECT, small_book

from app.command_line import main
from app.command_line.export import OUTPUTS
from app.service.books import open_book
from planner.values.book import Book
from planner.values.sequence import EVERY, Colour, Sequence, SequenceStep
from planner.values.step import Application, Minutes, Stage, Step
from storage.bench_book import BenchBook
from storage.exchange import Exchange, dump, load
from storage.photos import folder_of

NOW = "2031-03-06T19:30"


@dataclass(frozen=True)
class Said:
    status: int
    out: str
    err: str


Run = Callable[..., Said]


@pytest.fixture
def tackfree(capsys: pytest.CaptureFixture[str]) -> Run:
    def run(*argv: object) -> Said:
        status = main([str(word) for word in argv])
        captured = capsys.readouterr()
        return Said(status, captured.out, captured.err)

    return run


@pytest.fixture
def file(tmp_path: Path) -> Path:
    path = tmp_path / "yard.json"
    path.write_bytes(dump(Exchange(logged_book())))
    return path


def test_several_files_go_out_at_once(tackfree: Run, file: Path, tmp_path: Path) -> None:
    photos_in(folder_of(file))
    names = {
        "calendar": "a.ics", "record": "b.html", "table": "c.csv", "log": "d.csv",
        "shopping": "e.csv",
    }  # fmt: skip
    words = [word for option, name in names.items() for word in (f"--{option}", tmp_path / name)]
    said = tackfree("export", file, "--now", NOW, *words)
    assert (said.status, said.err) == (0, "")
    assert said.out.splitlines()[1:] == [
        f"{tmp_path / name} written" for name in list(names.values())[1:]
    ]
    page = (tmp_path / "b.html").read_text("utf-8")
    assert "cart, prime, Thu 6 Mar 2031<" in page  # the caption of its photo
    assert "data:image/png;base64," in page
    log = list(csv.DictReader(io.StringIO((tmp_path / "d.csv").read_text("utf-8"))))
    assert [row["start"] for row in log] == [
        "2031-03-06T19:33:00+01:00",
        "2031-03-13T19:33:00+01:00",
        "2031-03-20T19:30:00+01:00",
    ]
    assert log[0]["used"] == "2.25 ml grey primer; 0.5 ml water thinner"
    shopping = list(csv.DictReader(io.StringIO((tmp_path / "e.csv").read_text("utf-8"))))
    assert {row["name"] for row in shopping} >= {"gloss clear"}  # all that is left to lay


def test_a_calendar_written_again_tells_what_changed(
    tackfree: Run, file: Path, tmp_path: Path
) -> None:
    path = tmp_path / "a.ics"
    first = tackfree("export", file, "--now", NOW, "--calendar", path)
    assert "new" in first.out
    data = path.read_bytes()
    again = tackfree("export", file, "--now", NOW, "--calendar", path)
    assert "as before" in again.out
    assert "new" not in again.out
    assert path.read_bytes() == data


def test_a_markdown_record_by_its_suffix(tackfree: Run, file: Path, tmp_path: Path) -> None:
    path = tmp_path / "r.md"
    assert tackfree("export", file, "--record", path, "--only", PROJECT).status == 0
    assert path.read_text("utf-8").startswith(f"# {PROJECT}\n")


@pytest.mark.parametrize(
    ("words", "told"),
    [
        (["--record", "r.html", "--only", "yrad"], 'did you mean "yard"'),
        (["--project", "yrad", "p.json"], 'did you mean "yard"'),
        (["--sequence", "none", "s.json"], "no sequence"),
        ([], "--calendar"),
        (["--sheet", "s.pdf", "--paper", "A3"], "A3"),
        (["--calendar", "missing/a.ics"], "cannot be written"),
    ],
)
def test_what_cannot_be_is_refused_in_one_line(
    tackfree: Run,
    file: Path,
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
    words: list[str],
    told: str,
) -> None:
    monkeypatch.chdir(tmp_path)
    before = sorted(tmp_path.iterdir())
    said = tackfree("export", file, "--now", NOW, *words)
    assert said.status == 2
    assert said.out == ""
    assert said.err.count("\n") == 1
    assert told in said.err
    assert sorted(tmp_path.iterdir()) == before


@pytest.mark.parametrize("option", [name for name, *_ in OUTPUTS])
def test_no_export_replaces_what_is_read(tackfree: Run, file: Path, option: str) -> None:
    before = file.read_bytes()
    said = tackfree("export", file, f"--{option}", file)
    assert (said.status, said.err.count("\n")) == (2, 1)
    assert file.read_bytes() == before


def test_a_sheet_without_qt_is_refused_in_one_line(
    tackfree: Run, file: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    stub = tmp_path / "stub" / "PySide6"
    stub.mkdir(parents=True)
    (stub / "__init__.py").write_text("raise ImportError('libEGL.so.1: not there')")
    monkeypatch.setenv("PYTHONPATH", str(stub.parent))
    said = tackfree("export", file, "--now", NOW, "--sheet", tmp_path / "s.pdf")
    assert said.status == 2
    told = [line for line in said.err.splitlines() if not line.startswith("drawing ...")]
    assert len(told) == 1
    assert "libEGL.so.1" in told[0]
    assert not (tmp_path / "s.pdf").exists()


def sequence() -> Sequence:
    step = Step(
        id="prime",
        stage=Stage.PRIME,
        applications=(Application(places=(EVERY,), coating="ground"),),
        minutes=Minutes(fixed=10),
    )
    ground = Colour(name="ground", usual="grey primer")
    return Sequence(name="quick", colours=(ground,), steps=(SequenceStep(step=step),))


def with_book(path: Path, book: Book) -> Path:
    BenchBook.create(path, book).close()
    return path


def test_a_project_goes_into_another_book_and_comes_back_the_same(
    tackfree: Run, tmp_path: Path
) -> None:
    mine = with_book(tmp_path / "mine.tackfree", logged_book())
    yours = with_book(tmp_path / "yours.tackfree", replace(small_book(), projects=()))
    out = tmp_path / "p.json"
    assert tackfree("--book", mine, "export", "--project", PROJECT, out).status == 0
    said = tackfree("--book", yours, "import", out)
    assert said.status == 0
    assert f"taken in: {PROJECT}" in said.out
    with open_book(yours) as book:
        assert book.book().projects == logged_book().projects
        assert book.undoable() == "import p.json"
    again = tackfree("import", out, "--book", yours)
    assert "there already: yard" in again.out


def test_what_differs_is_told_and_chosen(tackfree: Run, tmp_path: Path) -> None:
    mine = with_book(tmp_path / "mine.tackfree", small_book())
    theirs = small_book(target=None)
    sand = replace(theirs.coating("sand"), swatch="#d0a060")
    kept = tuple(sand if coating.name == "sand" else coating for coating in theirs.coatings)
    out = tmp_path / "theirs.json"
    out.write_bytes(dump(Exchange(replace(theirs, coatings=kept))))
    told = tackfree("import", out, "--book", mine, "--dry-run")
    assert told.status == 0
    assert "≠ swatch: yours #c8b482 | the file's #d0a060" in told.out
    assert "≠ target: yours 2031-04-30 | the file's –" in told.out
    with open_book(mine) as book:
        assert book.book() == small_book()  # nothing was changed
    done = tackfree(
        "import", out, "--book", mine, "--take", "coating sand=beside",
        "--take", "project yard=theirs",
    )  # fmt: skip
    assert done.status == 0
    with open_book(mine) as book:
        now = book.book()
    assert now.coating("sand").swatch == "#c8b482"
    assert now.coating("sand (2)").swatch == "#d0a060"
    assert [project.target for project in now.projects] == [None]


def test_a_choice_of_nothing_is_refused(tackfree: Run, tmp_path: Path) -> None:
    mine = with_book(tmp_path / "mine.tackfree", small_book())
    out = tmp_path / "theirs.json"
    first, *others = small_book().coatings
    theirs = replace(small_book(), coatings=(replace(first, swatch="#123456"), *others))
    out.write_bytes(dump(Exchange(theirs)))
    for word, told in (
        ("coating grey primr=theirs", 'did you mean "coating grey primer"'),
        ("nonsense", "makes no choice"),
        ("coating grey primer=none", "makes no choice"),
    ):
        said = tackfree("import", out, "--book", mine, "--take", word)
        assert (said.status, said.err.count("\n")) == (2, 1)
        assert "--take" in said.err
        assert told in said.err
    with open_book(mine) as book:
        assert book.book() == small_book()


def test_an_import_into_nothing_begins_a_book(tackfree: Run, tmp_path: Path) -> None:
    out, path = tmp_path / "p.json", tmp_path / "new" / "bench.tackfree"
    out.write_bytes(dump(Exchange(small_book())))
    assert tackfree("import", out, "--book", path).status == 0
    with open_book(path) as book:
        assert book.book().projects == small_book().projects
        assert book.book().room == small_book().room  # there was none of its own yet


def test_bad_files_are_refused_by_name(tackfree: Run, tmp_path: Path) -> None:
    path, book = tmp_path / "bad.json", with_book(tmp_path / "b.tackfree", small_book())
    for data in (b"", b"{}", b"\x00\xff", b'{"tackfree": 9}', b"[1]"):
        path.write_bytes(data)
        said = tackfree("import", path, "--book", book)
        assert (said.status, said.err.count("\n")) == (2, 1)
        assert "bad.json" in said.err


def test_a_sequence_goes_round(tackfree: Run, tmp_path: Path) -> None:
    mine = with_book(tmp_path / "mine.tackfree", replace(small_book(), sequences=(sequence(),)))
    yours = with_book(tmp_path / "yours.tackfree", small_book())
    out = tmp_path / "s.json"
    assert tackfree("export", "--book", mine, "--sequence", "quick", out).status == 0
    assert load(out.read_bytes()).book.sequences == (sequence(),)
    assert "taken in: quick" in tackfree("import", out, "--book", yours).out
    with open_book(yours) as book:
        assert book.book().sequences == (sequence(),)
