"""The command line as a person uses it: answers, exit status, refusals in one line."""

from __future__ import annotations

import csv
import io
import json
import os
import subprocess
import sys
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import pytest
from judge_cases import making
from small_book import small_book

from app.command_line import main
from app.command_line.run import COMMANDS
from app.service import demos
from app.service.books import open_book
from app.service.csv_export import disarmed
from storage.exchange import Exchange, dump

NOW = "2031-03-06T19:30"


@dataclass(frozen=True)
class Said:
    status: int
    out: str
    err: str

    @property
    def document(self) -> Any:
        return json.loads(self.out)


@pytest.fixture
def tackfree(capsys: pytest.CaptureFixture[str]) -> Callable[..., Said]:
    def run(*argv: object) -> Said:
        status = main([str(word) for word in argv])
        captured = capsys.readouterr()
        return Said(status, captured.out, captured.err)

    return run


@pytest.fixture
def file(tmp_path: Path) -> Path:
    path = tmp_path / "yard.json"
    path.write_bytes(dump(Exchange(small_book())))
    return path


Run = Callable[..., Said]


def refused(said: Said, *pieces: str) -> None:
    """Assert the contract of bad input: status 2, one line, nothing on stdout."""
    assert said.status == 2
    assert said.out == ""
    assert said.err.count("\n") == 1
    assert "Traceback" not in said.err
    for piece in pieces:
        assert piece in said.err


# --- plan, verify, tonight --------------------------------------------------------------------


def test_plan_prints_evenings_and_finish(tackfree: Run, file: Path) -> None:
    said = tackfree("plan", file, "--now", NOW)
    assert said.status == 0
    assert "Thu 6 Mar 2031 19:30–21:30" in said.out
    assert "yard: done" in said.out
    assert said.err == ""


def test_plan_as_json_is_one_document_of_the_contract(tackfree: Run, file: Path) -> None:
    plan = tackfree("plan", file, "--now", NOW, "--json").document
    assert plan["now"].startswith("2031-03-06T19:30")
    assert plan["now"].endswith("+01:00")
    assert plan["status"] == "feasible"
    assert plan["evenings"] >= 2
    promised = {"placements", "bench", "finish", "evenings", "setup_minutes", "late", "bound"}
    assert promised | {"status", "now", "input"} <= set(plan)
    assert len(plan["input"]) >= 16
    steps = [one["step"] for one in plan["placements"]]
    assert sorted(steps) == ["gloss", "prime", "sand", "wash", "wipe"]
    promised = {"step", "model", "parts", "stage", "start", "end", "evening", "pieces", "reason"}
    assert promised <= set(plan["placements"][0])


@pytest.mark.parametrize("name", demos.names())
def test_every_demo_has_a_plan_that_verify_accepts(
    tackfree: Run, tmp_path: Path, name: str
) -> None:
    path = tmp_path / "demo.json"
    path.write_bytes(demos.data(name))
    begins = demos.first_evening(demos.read(name).book)
    now = f"{_iso(begins)}"
    said = tackfree("plan", path, "--now", now, "--json")
    assert said.status == 0
    assert said.document["unplaced"] == []
    plan = tmp_path / "plan.json"
    plan.write_text(said.out, encoding="utf-8")
    verdict = tackfree("verify", path, plan)
    assert (verdict.status, verdict.out.splitlines()[0]) == (0, "accepted")


def _iso(minute: int) -> str:
    from datetime import UTC, datetime

    return datetime.fromtimestamp(minute * 60, UTC).isoformat()


def test_verify_names_the_definition_that_a_plan_violates(
    tackfree: Run, file: Path, tmp_path: Path
) -> None:
    plan = tackfree("plan", file, "--now", NOW, "--json").document
    prime = next(one for one in plan["placements"] if one["step"] == "prime")
    for times in (prime, *prime["pieces"]):
        times["start"], times["end"] = "2031-03-07T03:00:00+01:00", "2031-03-07T03:10:00+01:00"
    path = tmp_path / "plan.json"
    path.write_text(json.dumps(plan), encoding="utf-8")
    said = tackfree("verify", file, path)
    assert said.status == 1
    assert "definition 12" in said.out  # three in the morning is no bench time
    verdict = tackfree("verify", file, path, "--json")
    assert verdict.status == 1
    assert not verdict.document["accepted"]
    assert 12 in {line["definition"] for line in verdict.document["violations"]}


def test_verify_notices_that_the_file_has_changed(
    tackfree: Run, file: Path, tmp_path: Path
) -> None:
    path = tmp_path / "plan.json"
    path.write_text(tackfree("plan", file, "--now", NOW, "--json").out, encoding="utf-8")
    file.write_bytes(dump(Exchange(small_book(target=None))))
    said = tackfree("verify", file, path)
    assert said.status == 1
    assert "definition 28" in said.out


def test_a_longer_search_is_never_dearer(tackfree: Run, tmp_path: Path) -> None:
    path = tmp_path / "demo.json"
    path.write_bytes(demos.data("lone_lamplighter"))
    now = _iso(demos.first_evening(demos.read("lone_lamplighter").book))
    at_once = tackfree("plan", path, "--now", now, "--json").document["cost"]
    longer = tackfree("plan", path, "--now", now, "--seconds", 0.3, "--json")
    assert longer.status == 0
    assert list(longer.document["cost"].values()) <= list(at_once.values())


@pytest.mark.parametrize("seconds", ["-1", "nan", "1e9"])
def test_seconds_out_of_reason_are_refused(tackfree: Run, file: Path, seconds: str) -> None:
    refused(tackfree("plan", file, "--seconds", seconds), "--seconds")


def test_a_step_without_a_place_is_status_1(tackfree: Run, file: Path) -> None:
    raw = json.loads(file.read_text(encoding="utf-8"))
    raw["projects"][0]["models"][0]["steps"][0]["minutes"]["fixed"] = 600  # longer than an evening
    file.write_text(json.dumps(raw), encoding="utf-8")
    said = tackfree("plan", file, "--now", NOW)
    assert said.status == 1
    assert "no place found for cart/prime" in said.out


def test_nothing_to_plan_is_no_fault(tackfree: Run, file: Path) -> None:
    raw = json.loads(file.read_text(encoding="utf-8"))
    raw["projects"] = []
    file.write_text(json.dumps(raw), encoding="utf-8")
    said = tackfree("plan", file)
    assert (said.status, "Nothing to plan" in said.out) == (0, True)


def test_tonight_prints_the_run_sheet(tackfree: Run, file: Path) -> None:
    said = tackfree("tonight", file, "--now", NOW)
    assert said.status == 0
    assert "(load fine brush with grey primer)" in said.out
    assert "tub: [ ] bed  [ ] sides" in said.out


def test_tonight_as_json(tackfree: Run, file: Path) -> None:
    sheet = tackfree("tonight", file, "--now", NOW, "--json").document
    assert sheet["evening"] == "2031-03-06"
    assert sheet["start"] == "2031-03-06T19:30:00+01:00"
    assert [row["kind"] for row in sheet["rows"]][:2] == ["load", "work"]
    assert sheet["rows"][1]["places"] == ["tub/bed", "tub/sides"]
    assert {"drying", "closing", "next"} <= set(sheet)


def test_tonight_says_what_is_beside_the_run_sheet(tackfree: Run, file: Path) -> None:
    """The stretch ends at 21:30; ten minutes to put away are common practice."""
    said = tackfree("tonight", file, "--now", NOW).out
    assert "Before you go, from 21:20\n" in said
    assert "[ ] fine brush is clean; it held " in said
    assert "19:30  grey primer: nothing beside this sheet, in any project" in said
    sheet = tackfree("tonight", file, "--now", NOW, "--json").document
    assert sheet["before_you_go"]["from"] == "2031-03-06T21:20:00+01:00"
    assert {"check": "loose", "of": "", "things": []} in sheet["before_you_go"]["checks"]
    assert sheet["same_colour"][0]["others"] == []
    assert (sheet["rows"][1]["marks"], sheet["rows"][1]["look_in"]) == ([], None)


def test_tonight_says_why_a_colour_is_filled_again(tackfree: Run, tmp_path: Path) -> None:
    """The cup stands for 20 minutes at most; the second coat takes longer to open."""
    of = making.book(making.spray("first", "hull/deck"), making.spray("second", "hull/deck"))
    path = tmp_path / "carts.json"
    path.write_bytes(dump(Exchange(of)))
    now = _iso(making.NOW)
    once, again = tackfree("tonight", path, "--now", now, "--json").document["same_colour"]
    assert once["filled_again"] is None
    assert "may stand 20 min only, and second of cart opens at" in again["filled_again"]
    assert again["filled_again"] in tackfree("tonight", path, "--now", now).out


def test_tonight_with_few_minutes_asks_for_no_more(tackfree: Run, file: Path) -> None:
    sheet = tackfree("tonight", file, "--now", NOW, "--minutes", 19, "--json").document
    assert sheet["end"] == "2031-03-06T19:49:00+01:00"
    assert [row["end"] for row in sheet["rows"]][-1] == "2031-03-06T19:49:00+01:00"
    short = tackfree("tonight", file, "--now", NOW, "--minutes", 18, "--json").document
    assert short["rows"] == []  # load 3, prime 10 and clean 6 do not fit into 18


@pytest.mark.parametrize("minutes", ["0", "-5", "3000"])
def test_minutes_out_of_reason_are_refused(tackfree: Run, file: Path, minutes: str) -> None:
    refused(tackfree("tonight", file, "--minutes", minutes), "minutes", "1 to 1440")


# --- check, cure, shop, export ------------------------------------------------------------------


def test_check_finds_a_demo_sound(tackfree: Run, tmp_path: Path) -> None:
    path = tmp_path / "demo.json"
    path.write_bytes(demos.data(demos.FIRST))
    said = tackfree("check", path)
    assert said.status == 0
    assert said.out.splitlines()[-1].startswith("sound")


def test_check_tells_where_practice_is_divided_when_asked(tackfree: Run, tmp_path: Path) -> None:
    """Wash before or after decals: practitioners do both."""
    path = tmp_path / "demo.json"
    path.write_bytes(demos.data(demos.FIRST))
    question = "practice is divided: wash before or after the decals?"
    asked, plain = tackfree("check", path, "--choices"), tackfree("check", path)
    assert question in asked.out
    assert "yours: wash after the decals" in asked.out
    assert asked.out.splitlines()[-1] == plain.out.strip() == "sound: 0 findings"
    assert question not in plain.out
    assert "--choices" in plain.err
    told = tackfree("check", path, "--json").document
    assert told["sound"]
    assert question.endswith(told["practice_divided"][0]["question"])


def test_check_tells_an_unsound_order_with_source_and_place(tackfree: Run, file: Path) -> None:
    raw = json.loads(file.read_text(encoding="utf-8"))
    steps = raw["projects"][0]["models"][0]["steps"]
    gloss = next(step for step in steps if step["id"] == "gloss")
    steps.remove(gloss)  # white spirit over bare acrylic: common practice, no source
    steps.append({**gloss, "id": "primer-late", "applications": steps[0]["applications"]})
    steps[-1].pop("role")
    steps[-1]["stage"] = "prime"
    file.write_text(json.dumps(raw), encoding="utf-8")
    said = tackfree("check", file, "--json")
    assert said.status == 1
    assert said.document["sound"] is False
    grave = [line for line in said.document["findings"] if line["grave"]]
    assert grave
    assert all(one["where"].startswith("projects[0].models[0].steps[") for one in grave)
    assert all(one["source"] for one in grave)
    text = tackfree("check", file)
    assert text.status == 1
    assert "not sound" in text.out


def test_cure_tells_every_state_with_its_band(tackfree: Run) -> None:
    said = tackfree("cure", "--family", "waterborne acrylic", "--json", "--now", NOW)
    states = said.document["states"]
    assert states[0]["state"] == "set-to-touch"
    assert len(states) == 8
    for state in states:
        assert state["early_minutes"] <= state["nominal_minutes"] <= state["late_minutes"]
        assert state["source"]
    # 23 °C, 50 % RH: dew point 12.03 °C by PsychroLib
    assert said.document["dew_point_c"] == pytest.approx(12.03, abs=0.03)
    assert said.document["surface_margin_k"] == pytest.approx(23 - 12.03, abs=0.03)


def test_cure_takes_longer_in_cold_and_damp_air(tackfree: Run) -> None:
    def late(*air: str) -> list[int]:
        said = tackfree("cure", "--family", "waterborne acrylic", *air, "--json")
        return [line["late_minutes"] for line in said.document["states"]]

    usual, damp = late(), late("--temperature", "16", "--humidity", "70")
    assert all(later > sooner for later, sooner in zip(damp, usual, strict=True))


def test_cure_warns_of_a_surface_near_the_dew_point(tackfree: Run) -> None:
    # 22 °C, 70 % RH, surface 19 °C: margin 2.72 K fails the 3 K rule (ISO 8502-4)
    said = tackfree(
        "cure", "--family", "waterborne acrylic",
        "--temperature", 22, "--humidity", 70, "--surface", 19,
    )  # fmt: skip
    assert said.status == 0
    assert "dew point" in said.out
    assert "not now" in said.out


def test_cure_of_a_coating_in_its_room(tackfree: Run, file: Path) -> None:
    said = tackfree("cure", file, "--coating", "thin sand", "--now", NOW, "--json")
    assert said.document["coating"] == "thin sand"
    assert said.document["location"] == "bench"
    assert said.document["temperature_c"] == 23
    colder = tackfree("cure", file, "--coating", "sand", "--temperature", 12, "--json").document
    assert (colder["temperature_c"], colder["humidity_pct"]) == (12, 50)


def test_cure_in_saturated_air_says_never(tackfree: Run) -> None:
    said = tackfree("cure", "--family", "waterborne acrylic", "--humidity", 100)
    assert said.status == 1
    assert "never" in said.out


def test_cure_in_bone_dry_air_has_no_dew_point(tackfree: Run) -> None:
    said = tackfree("cure", "--family", "waterborne acrylic", "--humidity", 0)
    assert said.status == 0
    assert "no dew point" in said.out


@pytest.mark.parametrize(
    ("words", "pieces"),
    [
        (["--family", "waterborn acrylic"], ["--family", 'did you mean "waterborne acrylic"']),
        (["--family", "white spirit"], ["--family"]),
        (["--family", "decal", "--humidity", "140"], ["--humidity", "140"]),
        (["--family", "decal", "--temperature", "-300"], ["--temperature", "-300"]),
        (["--family", "decal", "--temperature", "nan"], ["--temperature", "nan"]),
        (["--family", "decal", "--film-um", "0"], ["--film-um"]),
        (["--family", "decal", "--finish", "shiny"], ["--finish"]),
        (["--family", "decal", "--surface", "900"], ["--surface"]),
        (["--family", "decal", "--tool", "broom"], ["--tool"]),
        ([], ["--family", "--coating"]),
    ],
)
def test_cure_refuses_what_cannot_be(tackfree: Run, words: list[str], pieces: list[str]) -> None:
    refused(tackfree("cure", *words), *pieces)


def test_cure_refuses_unknown_coatings_and_thinners(tackfree: Run, file: Path) -> None:
    refused(tackfree("cure", file, "--coating", "snad"), "--coating", 'did you mean "sand"')
    refused(tackfree("cure", file, "--coating", "water thinner"), "thinner")
    refused(tackfree("cure", file, "--coating", "sand", "--location", "attic"), "--location")


def test_shop_tells_amounts_against_the_stock(tackfree: Run, file: Path) -> None:
    document = tackfree("shop", file, "--json", "--now", NOW).document
    needed = {line["coating"]: line for line in document["coatings"]}
    assert needed.keys() == {"grey primer", "sand", "water thinner", "gloss clear", "dark oil"}
    # 100 cm² × 20 µm at 35 % solids, 30 % of the spray caught: by identity of volumes
    # 100 × 0.002 cm / (0.35 × 0.30) = 1.905 cm³; 0.5 ml stay in the cup, and a load is
    # rounded up to a tenth: 2.5 ml
    assert needed["grey primer"]["needed_ml"] == pytest.approx(2.5, abs=1e-6)
    assert needed["grey primer"]["buy_ml"] == needed["grey primer"]["needed_ml"]  # none in stock
    assert needed["grey primer"]["bottles"] == 1
    assert needed["grey primer"]["runs_out"]["at"].startswith("2031-03-06")  # the first evening
    said = tackfree("shop", file, "--now", NOW)
    assert said.status == 0
    (line,) = [line for line in said.out.splitlines() if line.startswith("grey primer")]
    assert line.split()[2:] == ["2.5", "ml", "0.0", "ml", "1", "bottle", "of", "17", "ml"]


def test_shop_counts_neither_what_is_in_stock_nor_what_is_done(tackfree: Run, file: Path) -> None:
    def stocked(raw: Any) -> None:
        raw["coatings"][0]["in_stock_ml"] = 500
        raw["projects"][0]["log"] = [
            {
                "model": "cart",
                "step": step,
                "start": f"{NOW}:00+01:00",
                "end": f"{NOW[:-2]}45:00+01:00",
            }
            for step in ("gloss",)
        ]

    said = tackfree("shop", spoiled(file, stocked), "--json", "--now", "2031-03-06T19:45").document[
        "coatings"
    ]
    assert {one["coating"]: one["buy_ml"] for one in said}["grey primer"] == 0
    assert "gloss clear" not in {one["coating"] for one in said}


def test_shop_says_where_an_area_is_missing(tackfree: Run, file: Path) -> None:
    def unmeasured(raw: Any) -> None:
        for place in raw["projects"][0]["models"][0]["parts"][0]["places"]:
            del place["area_cm2"]

    said = tackfree("shop", spoiled(file, unmeasured))
    assert said.status == 0
    assert "cart, tub/bed: no area given" in said.out
    assert "over 0.0 ml" in said.out


def test_shop_with_nothing_left_says_so(tackfree: Run, file: Path) -> None:
    said = tackfree("shop", spoiled(file, lambda raw: raw["projects"][0].update(active=False)))
    assert (said.status, "Nothing is needed" in said.out) == (0, True)


def test_the_table_has_a_row_for_each_piece_of_work(tackfree: Run, file: Path) -> None:
    table = file.with_name("evenings.csv")
    said = tackfree("export", file, "--table", table, "--now", NOW)
    assert said.status == 0
    rows = list(csv.DictReader(io.StringIO(table.read_text(encoding="utf-8"))))
    assert {row["step"] for row in rows} >= {"prime", "sand", "gloss", "wash", "wipe"}
    assert rows[0]["start"] == "2031-03-06T19:30:00+01:00"
    assert rows[0]["kind"] == "load"
    assert rows == sorted(rows, key=lambda row: row["start"])


@pytest.mark.parametrize("cell", ["=1+1", "+1", "-1", "@SUM(A1)", "\t=1", "\r=1", "＝1", "\x00=1"])
def test_no_cell_of_the_table_is_a_formula(cell: str) -> None:
    """The signs that start a formula in a spreadsheet: OWASP, CSV Injection."""
    assert disarmed(cell).startswith("'")
    assert disarmed(cell).endswith(cell[1:])
    assert disarmed("grey primer") == "grey primer"


def test_a_title_that_is_a_formula_is_disarmed_in_the_file(tackfree: Run, file: Path) -> None:
    raw = json.loads(file.read_text(encoding="utf-8"))
    raw["projects"][0]["models"][0]["steps"][0]["title"] = "=HYPERLINK(A1)"
    file.write_text(json.dumps(raw), encoding="utf-8")
    table = file.with_name("evenings.csv")
    tackfree("export", file, "--table", table, "--now", NOW)
    cells = [c for row in csv.reader(io.StringIO(table.read_text("utf-8"))) for c in row]
    assert "'=HYPERLINK(A1)" in cells
    assert not [cell for cell in cells if cell.startswith("=")]


def test_the_table_never_replaces_its_source(tackfree: Run, file: Path) -> None:
    before = file.read_bytes()
    refused(tackfree("export", file, "--table", file), "--table")
    assert file.read_bytes() == before


def test_a_table_that_cannot_be_written_is_refused(tackfree: Run, file: Path) -> None:
    nowhere = file.parent / "no such folder" / "x.csv"
    said = tackfree("export", file, "--table", nowhere, "--now", NOW)
    refused(said, "x.csv", "cannot be written")


# --- demo -----------------------------------------------------------------------------------


def test_demo_shows_sheet_timeline_and_finish(
    tackfree: Run, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setenv("QT_QPA_PLATFORM", "offscreen")
    said = tackfree("demo", "lone_lamplighter")
    assert said.status == 0
    for piece in ("As of Fri 6 Mar 2026", "[ ]", "away from the bench", "done"):
        assert piece in said.out
    assert "No window is opened" in said.err


def test_demo_opens_the_window_on_its_scratch_book(monkeypatch: pytest.MonkeyPatch) -> None:
    opened: list[tuple[Path, int | None]] = []

    def window(book_in: Callable[[str], Path], now: int | None) -> int:
        path = book_in("de")  # as the window's language is
        opened.append((path, now))
        with open_book(path) as book:
            assert book.book() == demos.read("lone_lamplighter", "de").book
        return 0

    monkeypatch.setattr("app.command_line.demo.no_display", lambda: "")
    assert main(["demo", "lone_lamplighter"], open_window=window) == 0
    ((path, now),) = opened
    assert not path.parent.exists()  # nothing of it stays behind
    assert now == demos.first_evening(demos.read("lone_lamplighter").book)


def test_demo_lists_what_there_is(tackfree: Run) -> None:
    said = tackfree("demo", "--list")
    assert all(name in said.out for name in demos.names())


def test_demo_refuses_what_there_is_not(tackfree: Run) -> None:
    refused(tackfree("demo", "lighthouse"), "lighthouse", demos.FIRST)


# --- the bench book ---------------------------------------------------------------------------


def test_without_a_file_the_book_is_used(tackfree: Run, tmp_path: Path) -> None:
    path = tmp_path / "mine.tackfree"
    with open_book(path, create=True) as book:
        book.apply("import", small_book())
    for argv in (["--book", path, "plan"], ["plan", "--book", path]):
        said = tackfree(*argv, "--now", NOW)
        assert said.status == 0
        assert "yard: done" in said.out


def test_a_book_that_is_not_there_is_refused(tackfree: Run, tmp_path: Path) -> None:
    refused(tackfree("plan", "--book", tmp_path / "none"), "none", "no bench book")
    refused(tackfree("plan"), "no bench book")


def test_book_and_file_together_are_refused(tackfree: Run, file: Path) -> None:
    refused(tackfree("plan", file, "--book", file), "--book")


def test_a_book_given_as_a_file_is_told_so(tackfree: Run, tmp_path: Path) -> None:
    path = tmp_path / "mine.tackfree"
    open_book(path, create=True).close()
    refused(tackfree("plan", path), "mine.tackfree", "--book")


def test_the_command_alone_opens_the_window(tmp_path: Path) -> None:
    opened: list[object] = []

    def window(path: Path | None, now: int | None) -> int:
        opened.append((path, now))
        return 0

    assert main([], open_window=window) == 0
    assert main(["--book", str(tmp_path / "b")], open_window=window) == 0
    assert opened == [(None, None), (tmp_path / "b", None)]


# --- bad input --------------------------------------------------------------------------------


def spoiled(file: Path, change: Callable[[Any], None]) -> Path:
    raw = json.loads(file.read_text(encoding="utf-8"))
    change(raw)
    file.write_text(json.dumps(raw), encoding="utf-8")
    return file


def step(raw: Any, at: int) -> Any:
    return raw["projects"][0]["models"][0]["steps"][at]


@pytest.mark.parametrize("command", ["plan", "tonight", "check", "shop"])
@pytest.mark.parametrize("data", [b"", b"{", b"[]", b"\xff\xfe\x00", b"null", b"[" * 100_000])
def test_what_is_no_exchange_file_is_refused(
    tackfree: Run, tmp_path: Path, command: str, data: bytes
) -> None:
    path = tmp_path / "broken.json"
    path.write_bytes(data)
    refused(tackfree(command, path), "broken.json")


def test_a_dangling_name_is_refused_by_path_and_with_the_nearest(tackfree: Run, file: Path) -> None:
    spoiled(file, lambda raw: step(raw, 0)["applications"][0].update(coating="grey pirmer"))
    refused(
        tackfree("plan", file),
        "yard.json: projects[0].models[0].steps[0].applications[0].coating",
        'did you mean "grey primer"?',
    )


def test_negative_minutes_are_refused_by_path(tackfree: Run, file: Path) -> None:
    spoiled(file, lambda raw: step(raw, 1)["minutes"].update(fixed=-3))
    refused(tackfree("check", file), "projects[0].models[0].steps[1].minutes.fixed", "-3")


def test_nan_is_refused(tackfree: Run, file: Path) -> None:
    file.write_text(file.read_text("utf-8").replace('"temperature_c": 23', '"temperature_c": NaN'))
    refused(tackfree("plan", file), "temperature_c")


def test_an_unknown_field_is_refused(tackfree: Run, file: Path) -> None:
    spoiled(file, lambda raw: raw["room"].update(hight=2))
    refused(tackfree("plan", file), "room", "hight")


def test_a_cycle_is_refused_by_its_steps(tackfree: Run, file: Path) -> None:
    spoiled(file, lambda raw: step(raw, 0).update(after=["wipe"]))
    refused(tackfree("plan", file), "prime", "wipe")


@pytest.mark.parametrize("now", ["tonight", "2031-02-30T10:00", "", "19:30"])
def test_a_bad_moment_is_refused(tackfree: Run, file: Path, now: str) -> None:
    refused(tackfree("plan", file, "--now", now), "--now")


def test_a_missing_file_and_a_folder_are_refused(tackfree: Run, tmp_path: Path) -> None:
    refused(tackfree("plan", tmp_path / "gone.json"), "gone.json", "cannot be read")
    refused(tackfree("plan", tmp_path), str(tmp_path), "cannot be read")
    refused(tackfree("plan", "zero\0byte"), "zero")


@pytest.mark.skipif(not Path("/dev/zero").exists(), reason="needs a file without end")
def test_a_file_without_end_is_refused(tackfree: Run) -> None:
    refused(tackfree("plan", "/dev/zero"), "/dev/zero", "MB")


def test_a_plan_that_is_none_is_refused_by_its_own_name(tackfree: Run, file: Path) -> None:
    plan = file.with_name("plan.json")
    refused(tackfree("verify", file, plan), "plan.json", "cannot be read")
    plan.write_text('{"now": "2031-03-06T19:30:00+01:00", "placements": 7}')
    refused(tackfree("verify", file, plan), "plan.json: placements")


@pytest.mark.parametrize("argv", [["paint"], ["plan", "--speed"], ["tonight", "--minutes", "ten"]])
def test_unknown_words_are_refused_in_one_line(tackfree: Run, argv: list[str]) -> None:
    refused(tackfree(*argv), "--help")


def test_a_line_break_in_a_name_stays_in_one_line(tackfree: Run, tmp_path: Path) -> None:
    refused(tackfree("plan", tmp_path / "two\nlines"), "cannot be read")


# --- help and the process around it -------------------------------------------------------------


def test_help_teaches_every_command(tackfree: Run) -> None:
    said = tackfree("--help")
    assert said.status == 0
    for name in COMMANDS:
        assert name in said.out
        one = tackfree(name, "--help")
        assert one.status == 0
        assert f"tackfree {name}" in one.out.partition("examples:")[2]


def child(*argv: object, **options: Any) -> subprocess.CompletedProcess[str]:
    return subprocess.run(
        [sys.executable, "-m", "app.entry", *map(str, argv)],
        capture_output=True,
        text=True,
        encoding="utf-8",
        timeout=120,
        check=False,
        env={**os.environ, "PYTHONUTF8": "1", **options.pop("env", {})},
        **options,
    )


def test_the_program_starts_and_tells_its_status(file: Path) -> None:
    ran = child("plan", file, "--now", NOW, "--json")
    assert (ran.returncode, ran.stderr) == (0, "")
    assert json.loads(ran.stdout)["status"] == "feasible"
    assert child("plan", file.parent).returncode == 2


def test_the_command_line_never_loads_qt(file: Path) -> None:
    script = (
        "import sys; from app.entry import main; "
        f"main(['tonight', {str(file)!r}]); "
        "sys.exit(any(name.startswith('PySide6') for name in sys.modules))"
    )
    ran = subprocess.run([sys.executable, "-c", script], capture_output=True, check=False)
    assert ran.returncode == 0


@pytest.mark.skipif(sys.platform == "win32", reason="pipes of a POSIX shell")
def test_a_reader_that_goes_away_ends_it_quietly(file: Path) -> None:
    """POSIX: a command that a signal ends has the status 128 and its number; SIGPIPE is 13."""
    command = f"{sys.executable} -m app.entry plan {file} --now {NOW} --json"
    ran = subprocess.run(
        f"({command}; echo status $? >&2) | true",
        shell=True,
        capture_output=True,
        text=True,
        check=False,
    )
    assert ran.stderr == "status 141\n"


FULL = Path("/dev/full")
needs_full = pytest.mark.skipif(not FULL.is_char_device(), reason="needs a disk that is full")


@needs_full
@pytest.mark.parametrize(
    "words",
    [
        ("plan", "{file}", "--now", NOW),
        ("tonight", "{file}", "--now", NOW, "--json"),
        ("check", "{file}"),
        ("shop", "{file}", "--now", NOW),
        ("demo", "--list"),
        ("cure", "--family", "alkyd enamel"),
        ("export", "{file}", "--now", NOW, "--table", "{folder}/plan.csv"),
    ],
    ids=lambda words: words[0],
)
def test_an_answer_that_does_not_fit_on_the_disk_is_told_in_one_line(
    file: Path, tmp_path: Path, words: tuple[str, ...]
) -> None:
    argv = [word.format(file=file, folder=tmp_path) for word in words]
    with FULL.open("w") as full:
        ran = subprocess.run(
            [sys.executable, "-m", "app.entry", *argv],
            stdout=full,
            stderr=subprocess.PIPE,
            text=True,
            check=False,
        )
    told = "tackfree: the answer: cannot be written: the disk is full; send it elsewhere\n"
    assert (ran.returncode, ran.stderr[-len(told) :]) == (2, told)
    assert "Traceback" not in ran.stderr
    if words[0] == "export":
        assert (tmp_path / "plan.csv").stat().st_size > 0


@needs_full
@pytest.mark.parametrize("option", ["--table", "--log", "--shopping", "--record"])
def test_a_file_that_does_not_fit_on_the_disk_is_told_by_its_name(
    tackfree: Run, file: Path, option: str
) -> None:
    said = tackfree("export", file, "--now", NOW, option, FULL)
    refused(said, "/dev/full: cannot be written: the disk is full; make room")
    assert FULL.is_char_device()  # a device is written to, and not replaced


@pytest.mark.skipif(sys.platform == "win32", reason="signals of POSIX")
def test_each_file_is_written_though_nobody_reads_what_is_told(file: Path, tmp_path: Path) -> None:
    names = ("--table", "--log", "--shopping")
    files = [tmp_path / f"a{name}.csv" for name in names]
    words = " ".join(f"{name} {path}" for name, path in zip(names, files, strict=True))
    command = f"{sys.executable} -u -m app.entry export {file} --now {NOW} {words}"
    ran = subprocess.run(
        f"({command}; echo status $? >&2) | true",
        shell=True,
        capture_output=True,
        text=True,
        check=False,
    )
    assert ran.stderr == "status 141\n"
    assert all(path.stat().st_size > 0 for path in files)


def test_a_place_that_may_not_be_written_is_told_in_one_line(
    tackfree: Run, file: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    (tmp_path / "home").write_text("a file where a folder should be")
    monkeypatch.setattr("app.service.books.usual_path", lambda: tmp_path / "home" / "b.tackfree")
    refused(tackfree("import", file), str(tmp_path / "home"))


def test_an_empty_family_is_refused_like_any_other_that_is_not_there(tackfree: Run) -> None:
    refused(tackfree("cure", "--family", ""), "--family", 'no family is called ""')


def test_a_dry_run_needs_no_book_and_makes_none(
    tackfree: Run, file: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    path = tmp_path / "home" / "bench.tackfree"
    monkeypatch.setattr("app.command_line.import_.usual_path", lambda: path)
    said = tackfree("import", file, "--dry-run")
    assert said.status == 0
    assert "taken in: yard" in said.out
    assert not path.parent.exists()


def test_a_file_that_is_refused_begins_no_book(tackfree: Run, file: Path, tmp_path: Path) -> None:
    """A fact of 2199: no plan reaches it."""
    raw = json.loads(file.read_text(encoding="utf-8"))
    (project,) = raw["projects"]
    start = "2199-01-02T20:00:00+01:00"
    project["log"] = [{"model": "cart", "step": "prime", "start": start}]
    file.write_text(json.dumps(raw), encoding="utf-8")
    path = tmp_path / "home" / "bench.tackfree"
    said = tackfree("--book", path, "import", file)
    refused(said, f"{file}: projects[0].log[0].start", "more than 20 years after now")
    assert not path.parent.exists()


def test_letters_that_a_terminal_lacks_do_not_stop_it(file: Path) -> None:
    ran = child("plan", file, "--now", NOW, env={"PYTHONUTF8": "0", "PYTHONIOENCODING": "ascii"})
    assert ran.returncode == 0
    assert "Thu 6 Mar 2031" in ran.stdout
