"""``plan --keep`` stays near to an earlier plan and says what moved."""

from __future__ import annotations

import json
from dataclasses import replace
from datetime import date
from pathlib import Path
from typing import Any

import pytest

from app.command_line.run import main
from app.service import demos
from app.service.books import open_book
from planner.values.wishes import Staying
from storage.bench_book import BenchBook
from storage.exchange import Exchange, dump, load_plan

NOW = "2031-03-05T19:30"


@pytest.fixture
def tenders(tmp_path: Path) -> tuple[Path, Path]:
    """Return a file, and the same without one of its evenings."""
    book = demos.read("harbour_tenders").book
    paths = tmp_path / "all.json", tmp_path / "fewer.json"
    skipped = (*book.bench_time.skipped, date(2031, 3, 11))
    fewer = replace(book, bench_time=replace(book.bench_time, skipped=skipped))
    for path, one in zip(paths, (book, fewer), strict=True):
        path.write_bytes(dump(Exchange(one)))
    return paths


def run(capsys: pytest.CaptureFixture[str], *words: object) -> str:
    assert main([str(word) for word in words]) == 0
    return capsys.readouterr().out


def starts(document: dict[str, Any]) -> dict[tuple[str, str, int], str]:
    return {(p["model"], p["step"], p["coat"]): p["start"] for p in document["placements"]}


def test_the_same_file_keeps_the_same_plan(capsys, tmp_path, tenders) -> None:
    first = run(capsys, "plan", tenders[0], "--now", NOW, "--json")
    kept = tmp_path / "plan.json"
    kept.write_text(first, encoding="utf-8")
    again = json.loads(run(capsys, "plan", tenders[0], "--now", NOW, "--keep", kept, "--json"))
    assert starts(again) == starts(json.loads(first))
    assert again["moved"] == []
    assert set(again["gained"].values()) == {0}


def test_what_moved_is_what_stands_in_another_stretch(capsys, tmp_path, tenders) -> None:
    first = run(capsys, "plan", tenders[0], "--now", NOW, "--json")
    kept = tmp_path / "plan.json"
    kept.write_text(first, encoding="utf-8")
    text = run(capsys, "plan", tenders[1], "--now", NOW, "--keep", kept, "--json")
    after = json.loads(text)
    was, now = starts(json.loads(first)), starts(after)
    days = {key for key in was if was[key][:10] != now[key][:10]}
    told = {(one["model"], one["step"], one["coat"]): one for one in after["moved"]}
    assert days
    assert set(told) == days
    assert all((one["from"], one["to"]) == (was[key], now[key]) for key, one in told.items())
    assert load_plan(text.encode()).placements  # it is a plan like any other


def test_steps_that_are_gone_are_ignored_and_new_ones_planned(capsys, tmp_path, tenders) -> None:
    document = json.loads(run(capsys, "plan", tenders[0], "--now", NOW, "--json"))
    gone = document["placements"].pop()
    document["placements"].append({**gone, "step": "no-such-step"})
    kept = tmp_path / "plan.json"
    kept.write_text(json.dumps(document), encoding="utf-8")
    after = json.loads(run(capsys, "plan", tenders[0], "--now", NOW, "--keep", kept, "--json"))
    assert (gone["model"], gone["step"], gone["coat"]) in starts(after)
    assert after["unplaced"] == []


def test_a_file_that_is_no_plan_is_refused_by_name(capsys, tmp_path, tenders) -> None:
    kept = tmp_path / "plan.json"
    kept.write_text("[]", encoding="utf-8")
    assert main(["plan", str(tenders[0]), "--now", NOW, "--keep", str(kept)]) == 2
    assert str(kept) in capsys.readouterr().err


def test_a_calendar_promises_its_evenings_and_is_the_same_when_written_again(
    capsys, tmp_path
) -> None:
    path = tmp_path / "bench.tackfree"
    BenchBook.create(path, demos.read("harbour_tenders").book).close()
    made = []
    for name in ("one", "two"):
        table = tmp_path / f"{name}.csv"
        calendar = tmp_path / f"{name}.ics"
        run(capsys, "--book", path, "export", "--calendar", calendar, "--table", table)
        made.append(table.read_bytes())
    assert made[0] == made[1]
    with open_book(path) as bench:
        (plan,) = bench.plans.all()
        begun = {placement.start for placement in plan.placements}
        assert all(
            any(time.start <= at < time.end for at in begun) for time in bench.plans.promised()
        )
        assert bench.plans.promised()


def test_what_may_move_is_told_by_an_option_as_by_the_book(capsys, tmp_path, tenders) -> None:
    kept = tmp_path / "plan.json"
    kept.write_text(run(capsys, "plan", tenders[1], "--now", NOW, "--json"), encoding="utf-8")
    book = demos.read("harbour_tenders").book
    wished = tmp_path / "wished.json"
    earliest = replace(book.preferences, staying=Staying.EARLIEST)
    wished.write_bytes(dump(Exchange(replace(book, preferences=earliest))))
    told = ("--now", NOW, "--keep", kept, "--json")
    by_book = json.loads(run(capsys, "plan", wished, *told))
    by_option = json.loads(run(capsys, "plan", tenders[0], *told, "--staying", "earliest"))
    assert starts(by_option) == starts(by_book)
    assert by_option["input"] == by_book["input"]
    back = json.loads(run(capsys, "plan", wished, *told, "--staying", "close"))
    assert starts(back) == starts(json.loads(run(capsys, "plan", tenders[0], *told)))
    assert by_book["finish"] <= back["finish"]


def test_an_unknown_way_of_staying_is_refused(capsys, tenders) -> None:
    assert main(["plan", str(tenders[0]), "--staying", "put"]) == 2
    assert "close" in capsys.readouterr().err
