"""Dates that were said of projects are kept beside the book, one a day."""

from __future__ import annotations

from pathlib import Path

from small_book import NOW, PROJECT, small_book

from planner.values.forecast import Forecast
from storage.bench_book import BenchBook
from storage.forecasts import MOST


def said(made: int, project: str = PROJECT) -> Forecast:
    return Forecast(project, made, made + 10, made + 20, made + 30, 1.25)


def test_what_was_said_comes_back_and_is_no_edit(tmp_path: Path) -> None:
    with BenchBook.create(tmp_path / "bench", small_book()) as bench:
        revision = bench.revision
        bench.forecasts.keep([said(NOW), said(NOW, "other")])
        assert bench.revision == revision
        assert len(bench.journal()) == 1
    with BenchBook.open(tmp_path / "bench") as bench:
        assert bench.forecasts.all() == (said(NOW), said(NOW, "other"))


def test_of_one_project_one_a_day_is_kept(tmp_path: Path) -> None:
    with BenchBook.create(tmp_path / "bench", small_book()) as bench:
        for made in (NOW, NOW + 1439, NOW + 1440):
            bench.forecasts.keep([said(made)])
        assert [one.made for one in bench.forecasts.all()] == [NOW, NOW + 1440]


def test_the_newest_are_kept_where_there_are_many(tmp_path: Path) -> None:
    with BenchBook.create(tmp_path / "bench", small_book()) as bench:
        bench.forecasts.keep([said(NOW, f"project {number}") for number in range(MOST + 5)])
        kept = bench.forecasts.all()
    assert len(kept) == MOST
    assert kept[0].project == "project 5"
