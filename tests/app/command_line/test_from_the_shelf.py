"""Changes by name, models begun before, another like one painted, tables and project files."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from pathlib import Path

import pytest
from logged_book import logged_book, png
from small_book import PROJECT

from app.command_line import main
from storage.bench_book import BenchBook
from storage.photos import folder_of, keep_data

GONE = "0" * 64 + ".jpg"
Run = Callable[..., tuple[int, str, str]]


@pytest.fixture
def book(tmp_path: Path) -> Path:
    path = tmp_path / "bench.tackfree"
    kept = keep_data(path, png())
    whole = logged_book()
    project = whole.project(PROJECT)
    log = tuple(replace(fact, photos=(kept, GONE) if fact.photos else ()) for fact in project.log)
    BenchBook.create(path, replace(whole, projects=(replace(project, log=log),))).close()
    return path


@pytest.fixture
def tackfree(capsys: pytest.CaptureFixture[str], book: Path) -> Run:
    def run(*argv: object, into: Path = book) -> tuple[int, str, str]:
        status = main(["--book", str(into), *(str(word) for word in argv)])
        told = capsys.readouterr()
        return status, told.out, told.err

    return run


def models(path: Path) -> dict[str, list[str]]:
    with BenchBook.open(path) as bench:
        (project,) = bench.book().projects
        return {model.name: [step.id for step in model.steps] for model in project.models}


def test_what_can_be_changed_is_listed_tried_made_and_taken_out(tackfree: Run, book: Path) -> None:
    before = models(book)
    status, out, _ = tackfree("change")
    assert status == 0
    assert "one colour more: cart" in out
    status, out, _ = tackfree("change", "one colour more", "--try")
    assert (status, models(book)) == (0, before)
    assert "all done:" in out
    assert tackfree("change", "one colour more", "--model", "cart")[0] == 0
    assert "further-colour" in models(book)["cart"]
    assert tackfree("change", "one colour more", "--out")[0] == 0
    assert models(book) == before


@pytest.mark.parametrize(
    ("argv", "why"),
    [
        (("change", "chiping layers"), 'did you mean "chipping layers"?'),
        (("change", "decals", "--model", "crat"), 'did you mean "cart"?'),
        (("change", "no decals"), "cart"),
        (("reached", "decals on"), "decals on"),
        (("reached", "primed", "--at", "2099-01-01T10:00"), "20 years"),
        (("another", "wagon", "x"), "wagon"),
    ],
)
def test_what_does_not_fit_is_refused_in_one_line(
    tackfree: Run, argv: tuple[str, ...], why: str
) -> None:
    status, out, err = tackfree(*argv)
    assert (status, out, err.count("\n")) == (2, "", 1)
    assert why in err


def test_another_is_painted_as_the_first_was(tackfree: Run, book: Path) -> None:
    status, out, _ = tackfree("another", "cart", "second")
    assert status == 0
    assert "second, painted as cart was" in out
    assert models(book)["second"] == ["prime", "sand"]  # the wash is under way, and not done


def test_own_paints_come_onto_the_shelf(tackfree: Run, book: Path, tmp_path: Path) -> None:
    table = tmp_path / "paints.csv"
    table.write_text("kind;colour;ml\nacrylic;moss;12,5\n", "utf-8")
    status, out, _ = tackfree("import", table, "--dry-run")
    assert (status, out) == (0, "waterborne acrylic, moss: 12.5 ml\n")
    assert tackfree("import", table)[0] == 0
    with BenchBook.open(book) as bench:
        assert bench.book().coatings[-1].in_stock_ml == 12.5
    table.write_text("kind;colour;ml\nacrylic;moss;much\n", "utf-8")
    status, _, err = tackfree("import", table)
    assert status == 2
    assert 'paints.csv: line 2, column "ml": “much” is no number' in err


def test_a_loggers_air_becomes_the_usual_day(tackfree: Run, book: Path, tmp_path: Path) -> None:
    table = tmp_path / "logger.csv"
    lines = [f"2031-03-{day:02d} {hour:02d}:00;18;62" for day in (6, 7) for hour in range(24)]
    table.write_text("\n".join(["time;temperature;humidity", *lines]), "utf-8")
    status, out, _ = tackfree("import", table)
    assert status == 0
    assert "48 moments" in out
    assert "the usual day: 18 °C, 62 % RH" in out
    with BenchBook.open(book) as bench:
        assert {p.temperature_c for p in bench.book().room.locations[0].workdays} == {18}
    table.write_text("time;temperature;humidity\n03/05/2031 10:00;18;62\n", "utf-8")
    status, _, err = tackfree("import", table)
    assert status == 2
    assert 'line 2, column "time"' in err
    assert tackfree("import", table, "--zone", "Nowhere")[0] == 2
    assert tackfree("import", table, "--month-first", "--dry-run")[0] == 0


def test_a_project_goes_with_its_photos_into_another_book(
    tackfree: Run, book: Path, tmp_path: Path
) -> None:
    file, other = tmp_path / "one.zip", tmp_path / "other.tackfree"
    status, out, err = tackfree("export", "--project", PROJECT, file)
    assert status == 0
    assert "with 1 photos" in out
    assert "left out" in err  # the other of the two is missing beside the book
    assert tackfree("import", file, into=other)[0] == 0
    assert len(list(folder_of(other).iterdir())) == 1
    with BenchBook.open(other) as there, BenchBook.open(book) as here:
        assert there.book().projects == here.book().projects
    file.write_bytes(file.read_bytes()[:-30])
    status, _, err = tackfree("import", file, into=other)
    assert (status, err.count("\n")) == (2, 1)
    assert "one.zip" in err
