"""``plan --chance`` says how sure the dates are."""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from app.command_line.run import main
from app.service import demos

NOW = "2031-03-05T19:30"


@pytest.fixture(autouse=True)
def _few_orders_are_tried(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("app.service.surer_plans.DRAWN", 0)


@pytest.fixture
def file(tmp_path: Path) -> Path:
    """Return an exchange file of one small figure."""
    path = tmp_path / "figure.json"
    path.write_bytes(demos.data("lone_lamplighter"))
    return path


def run(capsys: pytest.CaptureFixture[str], *words: object) -> str:
    assert main([str(word) for word in words]) == 0
    return capsys.readouterr().out


def test_the_dates_come_in_order_and_the_plan_stays_the_same(capsys, file, tmp_path) -> None:
    sure = json.loads(run(capsys, "plan", file, "--now", NOW, "--chance", "--json"))
    bare = json.loads(run(capsys, "plan", file, "--now", NOW, "--json"))
    chance = sure.pop("chance")
    assert sure == bare
    for one in (chance["together"], *chance["projects"], *chance["models"]):
        assert one["p50"] <= one["p80"] <= one["p95"]
    assert 0 <= chance["tonight"] <= 1
    assert {one["step"] for one in chance["holds_the_end"]} <= {
        one["step"] for one in bare["placements"]
    }


def test_a_plan_with_its_chance_is_still_a_plan(capsys, file, tmp_path) -> None:
    kept = tmp_path / "plan.json"
    kept.write_text(run(capsys, "plan", file, "--now", NOW, "--chance", "--json"), "utf-8")
    assert main(["verify", str(file), str(kept)]) == 0


def test_in_words(capsys, file) -> None:
    text = run(capsys, "plan", file, "--now", NOW, "--chance")
    assert "four in five by" in text
    assert "What moves the date most:" in text


def test_without_a_session_no_date_is_told_and_nothing_moves_it(capsys, tmp_path) -> None:
    book = json.loads(demos.data("lone_lamplighter"))
    book["bench_time"]["stretches"] = []
    bare = tmp_path / "bare.json"
    bare.write_text(json.dumps(book), "utf-8")
    assert main(["plan", str(bare), "--now", NOW, "--chance"]) == 1
    text = capsys.readouterr().out
    assert "not finished in 100 % of all runs" in text
    assert "What moves the date" not in text


def test_advice_names_what_it_buys_and_costs(capsys, file) -> None:
    data = json.loads(run(capsys, "advise", file, "--now", NOW, "--runs", "100", "--json"))
    assert data["chance"]["runs"] == 100
    for one in data["measures"]:
        assert one["measure"]
        assert one["cost"]
    assert {one["project"] for one in data["latest_start"]} == {
        one["project"] for one in data["chance"]["projects"]
    }


@pytest.mark.parametrize("runs", ["0", "99", "1000000000"])
def test_a_number_of_runs_that_cannot_be_is_refused_in_one_line(capsys, file, runs) -> None:
    assert main(["advise", str(file), "--runs", runs]) == 2
    said = capsys.readouterr().err.strip().splitlines()
    assert len(said) == 1
    assert "--runs" in said[0]
