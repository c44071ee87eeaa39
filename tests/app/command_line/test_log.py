"""The logbook by the command line: one line a deed, on a book of one's own."""

from __future__ import annotations

import json
from collections.abc import Callable
from dataclasses import dataclass, replace
from datetime import date, timedelta
from pathlib import Path
from typing import Any

import pytest
from small_book import BRUSH, CART, PROJECT, small_book

from app.command_line import main
from planner.values.book import Book
from planner.values.gear import Airbrush, Gear
from planner.values.project import Event, Logged
from planner.values.step import Role, Step
from storage import photos
from storage.bench_book import BenchBook

PNG = b"\x89PNG\r\n\x1a\n" + b"\0" * 40
EVENING = "2031-03-06T19:40"


@dataclass(frozen=True)
class Said:
    status: int
    out: str
    err: str


class Desk:
    """A bench book, and the command that writes to it."""

    def __init__(self, path: Path, capsys: pytest.CaptureFixture[str]) -> None:
        self.path = path
        self._capsys = capsys

    def log(self, *argv: object) -> Said:
        return self.run("log", *argv)

    def run(self, command: str, *argv: object) -> Said:
        status = main([command, *map(str, argv), "--book", str(self.path)])
        captured = self._capsys.readouterr()
        return Said(status, captured.out, captured.err)

    @property
    def book(self) -> Book:
        with BenchBook.open(self.path) as bench:
            return bench.book()

    def put(self, *steps: Step) -> None:
        """Give the cart other steps."""
        project = self.book.project(PROJECT)
        model = replace(project.model(CART), steps=steps)
        with BenchBook.open(self.path) as bench:
            bench.apply(
                "steps", replace(bench.book(), projects=(replace(project, models=(model,)),))
            )

    @property
    def steps(self) -> tuple[Step, ...]:
        return self.book.project(PROJECT).model(CART).steps

    @property
    def entries(self) -> tuple[Logged, ...]:
        return self.book.project(PROJECT).log

    def refused(self, said: Said, piece: str) -> None:
        assert (said.status, said.out, said.err.count("\n")) == (2, "", 1)
        assert piece in said.err
        assert self.book == small_book()


@pytest.fixture
def desk(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> Desk:
    path = tmp_path / "bench.tackfree"
    BenchBook.create(path, small_book()).close()
    return Desk(path, capsys)


@pytest.mark.parametrize("when", ["2199-01-01T19:30", "1975-01-01T19:30"])
def test_a_mistyped_year_is_refused_and_nothing_written(desk: Desk, when: str) -> None:
    """No plan reaches so far: the fact would make the book one that cannot be planned."""
    desk.refused(desk.log("done", "cart/prime", "--at", when), "more than 20 years from today")


@pytest.mark.parametrize("minutes", ["0", "-5", "99999999"])
def test_minutes_out_of_reason_are_refused_as_minutes(desk: Desk, minutes: str) -> None:
    desk.refused(desk.log("done", "cart/prime", "--minutes", minutes), "--minutes")


def test_start_and_done_tell_what_is_next(desk: Desk) -> None:
    said = desk.log("start", "cart/prime", "--at", EVENING)
    assert said.status == 0
    assert said.out.startswith("begun: yard/cart/prime#1\n")
    said = desk.log(
        *("done", "CART/Prime", "--at", "2031-03-06T19:55", "--used", "grey primer=3.5"),
        *("--temperature", "20", "--humidity", "55", "--note", "smooth"),
    )
    assert said.status == 0
    (entry,) = desk.entries
    assert (entry.minutes, entry.planned, entry.note) == (15, 10, "smooth")
    assert (entry.temperature_c, entry.humidity_pct) == (20, 55)
    assert [(use.coating, use.ml) for use in entry.used] == [("grey primer", 3.5)]
    assert "used: 3.5 ml grey primer" in said.out
    assert said.out.splitlines()[-1].startswith("next: ")


def test_what_is_reckoned_stands_in_where_nothing_is_said(desk: Desk) -> None:
    said = desk.log("done", "cart/prime", "--minutes", "12", "--at", EVENING)
    (entry,) = desk.entries
    assert entry.minutes == 12
    assert entry.used
    assert "reckoned: " in said.out


def test_half_done_leaves_a_step_for_the_rest(desk: Desk) -> None:
    desk.log("done", "cart/prime", "--at", EVENING)
    said = desk.log("done", "cart/sand", "--only", "tub/bed", "--at", "2031-03-13T19:50")
    assert said.status == 0
    assert "partly done: cart/sand" in said.out
    steps = [step.id for step in desk.book.project(PROJECT).model(CART).steps]
    assert steps == ["prime", "sand", "sand-rest", "gloss", "wash", "wipe"]


def test_before_its_turn_is_told_with_the_mend(desk: Desk) -> None:
    desk.log("done", "cart/prime", "--at", EVENING)
    desk.log("done", "cart/sand", "--at", "2031-03-13T19:50")
    said = desk.log("done", "cart/wash", "--at", "2031-03-20T19:50")
    assert said.status == 1
    assert "before its turn" in said.out
    assert "rubbing" in said.err or "lifts pigment" in said.err


def test_tacky_skip_redo_stop_note_and_back(desk: Desk) -> None:
    desk.log("done", "cart/prime", "--at", EVENING)
    before = desk.book
    assert desk.log("tacky", "cart/prime", "--at", "2031-03-06T21:20").status == 0
    assert desk.log("skip", "cart/wash", "--note", "dark enough", "--at", EVENING).status == 0
    redo = desk.log("redo", "cart/prime", "--by", "sand", "--at", "2031-03-06T21:25")
    assert redo.status == 0
    assert "new step: sand-prime: " in redo.out
    assert desk.log("stop", "--at", "2031-03-06T21:26").status == 0
    assert desk.log("longer", "--at", "2031-03-13T21:20").status == 0
    assert desk.log("note", "--note", "lamp flickers", "--at", EVENING).status == 0
    events = [line.event for line in desk.book.project(PROJECT).diary]
    assert events == [Event.TACKY, Event.SKIPPED, Event.DISLIKED, Event.STOPPED, Event.NOTE]
    for _ in range(6):
        assert desk.log("back", "--at", EVENING).status == 0
    assert desk.book == before
    assert desk.log("back", "--at", EVENING).status == 0
    desk.refused(desk.log("back", "--at", EVENING), "nothing to take back")


def test_an_empty_bottle_leaves_the_rest_and_says_what_may_help(desk: Desk) -> None:
    desk.log("done", "cart/prime", "--at", EVENING)
    said = desk.log("empty", "cart/sand", "--only", "tub/bed", "--at", "2031-03-13T19:50")
    assert said.status == 0
    assert "ran out: sand" in said.out
    assert "what may help: buy sand (17 ml a bottle)" in said.out
    (sand,) = [coating for coating in desk.book.coatings if coating.name == "sand"]
    assert sand.in_stock_ml == 0
    steps = [step.id for step in desk.book.project(PROJECT).model(CART).steps]
    assert "sand-rest" in steps


def test_the_evening_ends_with_the_closing_check(desk: Desk) -> None:
    desk.log("done", "cart/prime", "--at", "2031-03-06T19:45", "--minutes", "10")
    said = desk.log("stop", "--at", "2031-03-06T19:46")
    lines = said.out.splitlines()
    at = lines.index("before you go:")
    assert lines[at + 1] == "  [ ] wet, safe under a cover: cart (tub)"
    assert any("loose parts" in line for line in lines[at:])
    assert "before you go:" not in desk.log("note", "--note", "lamp", "--at", EVENING).out


def test_a_look_is_asked_for_until_it_was_taken(desk: Desk) -> None:
    prime, *rest = desk.steps
    desk.put(replace(prime, look_in=20), *rest)
    said = desk.log("done", "cart/prime", "--at", "2031-03-06T19:45")
    assert "look 20:05: cart/prime: how it has come out" in said.out
    said = desk.log("seen", "cart/prime", "--at", "2031-03-06T20:06", "--note", "a hair on the bed")
    assert "look " not in said.out
    assert desk.book.project(PROJECT).diary[-1].text == "a hair on the bed"


def test_a_last_coat_brakes_on_the_command_line(desk: Desk) -> None:
    prime, sand, gloss, *_ = desk.steps
    desk.put(prime, sand, replace(gloss, role=Role.FINAL))
    for step, day in (("prime", "06"), ("sand", "13")):
        desk.log("done", f"cart/{step}", "--at", f"2031-03-{day}T19:50")
    said = desk.log("start", "cart/gloss", "--at", "2031-03-13T19:55", "--all-the-same")
    assert "not ready  tub: thin sand (sand) is wet, dry-through " in said.out
    later = desk.log("back", "--at", "2031-03-13T19:56")
    assert later.status == 0
    said = desk.log("start", "cart/gloss", "--at", "2031-03-27T19:55")
    assert "ready      tub: thin sand (sand) is dry-through" in said.out


def test_an_evening_lost_moves_what_was_planned_for_it(desk: Desk) -> None:
    said = desk.log("lost", "--at", EVENING)
    assert said.out.startswith("evening lost: 2031-03-06")
    assert "next: Thu 13 Mar" in said.out  # evenings are on Thursdays


def test_a_missed_window_is_mended_as_it_was_told(desk: Desk) -> None:
    """Wiping must end within the hour; at 20:50 it is too late for a wash begun at 19:30."""
    for week, step in enumerate(("prime", "sand", "gloss")):
        day = date(2031, 3, 6) + timedelta(weeks=week)
        desk.log("done", f"cart/{step}", "--at", f"{day}T19:50")
    said = desk.log("missed", "cart/wash", "--at", "2031-03-27T19:30")
    assert (said.status, "has missed no window" in said.err) == (2, True)
    desk.log("start", "cart/wash", "--at", "2031-03-27T19:30")
    desk.log("done", "cart/wash", "--at", "2031-03-27T19:45")
    said = desk.log("note", "--note", "a call", "--at", "2031-03-27T20:50")
    assert "cart/wipe: window closed" in said.out
    assert "do it late or leave it out" in said.out
    said = desk.log("missed", "cart/wipe", "--remedy", "late", "--at", "2031-03-27T20:51")
    assert said.status == 0
    assert desk.book.project(PROJECT).diary[-1].event is Event.MISSED
    assert "window closed" not in said.out


def test_a_film_found_dry_is_noted(desk: Desk) -> None:
    desk.log("done", "cart/prime", "--at", EVENING)
    assert desk.log("dry", "cart/prime", "--at", "2031-03-06T20:10").status == 0
    (seen,) = desk.book.project(PROJECT).observed
    assert (seen.step, seen.reached) == ("prime", True)


def test_what_moved_is_told(desk: Desk) -> None:
    """Nothing is done this Thursday any more, so all of it is done a week later."""
    said = desk.log("stop", "--at", "2031-03-06T19:31")
    assert said.status == 0
    assert "Thu 6 Mar: " in said.out
    assert ", now Thu 13 Mar." in said.out
    assert "The end is Fri 21 Mar; it was Fri 14 Mar." in said.out


def test_photos_are_kept_with_the_book(desk: Desk, tmp_path: Path) -> None:
    photo = tmp_path / "hull.jpeg"
    photo.write_bytes(PNG)
    assert desk.log("done", "cart/prime", "--photo", photo, "--at", EVENING).status == 0
    photo.unlink()
    (name,) = desk.entries[0].photos
    assert name.endswith(".png")
    assert photos.path_of(desk.path, name).read_bytes() == PNG
    other = tmp_path / "other.png"
    other.write_bytes(PNG + b"1")
    desk.log("note", "cart/prime", "--note", "runs", "--photo", other, "--at", EVENING)
    assert len(desk.entries[0].photos) == 2
    assert desk.entries[0].note == "runs"


def test_check_names_photos_that_were_lost(
    desk: Desk, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    (tmp_path / "p.png").write_bytes(PNG)
    desk.log("done", "cart/prime", "--at", EVENING, "--photo", tmp_path / "p.png")
    assert main(["check", "--book", str(desk.path)]) == 0
    assert "missing" not in capsys.readouterr().err
    (name,) = desk.entries[0].photos
    photos.path_of(desk.path, name).unlink()
    assert main(["check", "--book", str(desk.path)]) == 0
    assert f"1 photo missing from {photos.folder_of(desk.path)}: {name}" in capsys.readouterr().err


def test_one_document_with_json(desk: Desk) -> None:
    said = desk.log("done", "cart/prime", "--at", EVENING, "--json")
    told: Any = json.loads(said.out)
    assert told["logged"] == ["done: yard/cart/prime#1"]
    assert told["missed"] == told["findings"] == []
    assert told["next"] == [] or told["next"][0]["step"] == "sand"


@pytest.mark.parametrize(
    ("argv", "piece"),
    [
        (("done", "cart/prme"), 'did you mean "cart/prime"'),
        (("done", "prime"), "write it as model/step"),
        (("done", "cart/prime#2"), "has 1"),
        (("done", "cart/prime#x"), "is no coat"),
        (("done",), "say which step"),
        (("stop", "cart/prime"), "names no step"),
        (("stop", "--at", "2031-03-07T09:00"), "nothing to stop"),
        (("start", "cart/prime", "--minutes", "5"), "goes with done"),
        (("done", "cart/prime", "--used", "primer"), "is no amount"),
        (("done", "cart/prime", "--used", "grey primr=2"), 'did you mean "grey primer"'),
        (("done", "cart/prime", "--used", "grey primer=nan"), "is outside"),
        (("done", "cart/prime", "--temperature", "20"), "goes with --temperature"),
        (("done", "cart/prime", "--only", "roof"), "no place"),
        (("done", "cart/prime", "--photo", "nowhere.jpg"), "cannot be read"),
        (("done", "cart/prime", "--at", "yesterday"), "is not a time"),
        (("redo", "cart/prime"), "nothing was done there yet"),
        (("tacky", "cart/prime"), "laid no film yet"),
        (("note",), "say what to note"),
        (("empty", "cart/wipe"), "which bottle"),
        (("empty", "cart/sand", "--coating", "snad"), 'did you mean "sand"'),
    ],
)
def test_what_makes_no_sense_is_refused_in_one_line(
    desk: Desk, argv: tuple[str, ...], piece: str
) -> None:
    when = () if "--at" in argv else ("--at", EVENING)
    desk.refused(desk.log(*argv, *when), piece)


def test_the_same_name_in_two_projects_asks_for_the_project(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    book = small_book()
    twin = replace(book.projects[0], name="barn")
    path = tmp_path / "two.tackfree"
    BenchBook.create(path, replace(book, projects=(*book.projects, twin))).close()
    two = Desk(path, capsys)
    said = two.log("start", "cart/prime", "--at", EVENING)
    assert (said.status, '"yard/cart/prime" or "barn/cart/prime"' in said.err) == (2, True)
    assert two.log("start", "barn/cart/prime", "--at", EVENING).status == 0
    assert two.book.project("barn").log


def test_pace_is_shown_and_applied(desk: Desk, capsys: pytest.CaptureFixture[str]) -> None:
    run: Callable[..., int] = lambda *argv: main(["pace", *argv, "--book", str(desk.path)])  # noqa: E731
    assert run("--now", EVENING) == 0
    assert "nothing learned yet" in capsys.readouterr().out
    desk.log("done", "cart/prime", "--minutes", "30", "--at", EVENING)
    assert run("--now", EVENING, "--json") == 0
    (line,) = json.loads(capsys.readouterr().out)["minutes"]
    assert (line["stage"], line["passes"], line["worked"], line["planned"]) == ("prime", 1, 30, 10)
    assert 1 < line["factor"] < 3  # drawn towards the estimate
    assert run("--now", EVENING, "--apply") == (0 if line["sure"] else 2)


def two_airbrushes(desk: Desk) -> None:
    """Put a second airbrush beside the first."""
    with BenchBook.open(desk.path) as bench:
        owned = (*bench.book().gear.airbrushes, Airbrush(name="wide brush"))
        bench.apply("gear", replace(bench.book(), gear=Gear(airbrushes=owned)))


def test_the_only_airbrush_is_noted_without_being_named(desk: Desk) -> None:
    desk.log("start", "cart/prime", "--at", EVENING)
    assert desk.entries[0].airbrush == BRUSH
    desk.log("done", "cart/prime", "--at", "2031-03-06T19:50")
    assert desk.entries[0].airbrush == BRUSH


def test_of_several_airbrushes_one_is_named_or_the_plan_s_is_taken(desk: Desk) -> None:
    two_airbrushes(desk)
    assert desk.log("start", "cart/prime", "--at", EVENING, "--airbrush", "wide brush").status == 0
    assert desk.entries[0].airbrush == "wide brush"
    desk.log("done", "cart/prime", "--at", "2031-03-06T19:50")
    assert desk.entries[0].airbrush == "wide brush"
    desk.log("back")
    desk.log("back")
    assert desk.entries == ()
    desk.log("done", "cart/prime", "--at", "2031-03-06T19:50")
    assert desk.entries[0].airbrush in (BRUSH, "wide brush")


def test_an_airbrush_that_is_not_there_or_not_used_is_refused(desk: Desk) -> None:
    desk.refused(desk.log("start", "cart/prime", "--airbrush", "wide brush"), "wide brush")
    desk.refused(desk.log("start", "cart/wash", "--airbrush", BRUSH), "is not sprayed")
    desk.refused(desk.log("tacky", "cart/prime", "--airbrush", BRUSH), "--airbrush")
    desk.refused(desk.log("cleaned", "wide brush"), "wide brush")


def test_a_cleaning_is_noted_and_taken_back(desk: Desk) -> None:
    desk.log("start", "cart/prime", "--at", EVENING)
    desk.log("done", "cart/prime", "--at", "2031-03-06T19:50")
    said = desk.log("cleaned", "--at", "2031-03-06T19:57")
    assert said.out.startswith(f"cleaned: {BRUSH}\n")
    (fact,) = desk.book.cleaned
    assert fact.airbrush == BRUSH
    assert fact.at.isoformat() == "2031-03-06T19:57:00+01:00"
    with BenchBook.open(desk.path) as bench:
        assert bench.undo() is None  # it is a fact
    assert f"taken back: cleaned: {BRUSH}" in desk.log("back").out
    assert desk.book.cleaned == ()


def test_tonight_says_what_a_cup_holds_and_since_when(desk: Desk) -> None:
    desk.log("start", "cart/prime", "--at", EVENING)
    desk.log("done", "cart/prime", "--at", "2031-03-06T19:50")
    tonight = ("tonight", "--now", "2031-03-06T19:52")
    line = f"{BRUSH} holds grey primer since 19:40"
    assert line in desk.run(*tonight).out
    cups = json.loads(desk.run(*tonight, "--json").out)["cups"]
    assert cups == {BRUSH: {"coating": "grey primer", "since": "2031-03-06T19:40:00+01:00"}}
    desk.log("cleaned", "--at", "2031-03-06T19:57")
    assert line not in desk.run("tonight", "--now", "2031-03-06T19:58").out


def test_which_of_two_full_cups_was_cleaned_must_be_said(desk: Desk) -> None:
    two_airbrushes(desk)
    said = desk.log("cleaned", "--at", "2031-03-06T19:57")
    assert said.status == 2
    assert "say which airbrush" in said.err
    desk.log("start", "cart/prime", "--at", EVENING, "--airbrush", "wide brush")
    desk.log("done", "cart/prime", "--at", "2031-03-06T19:50")
    assert desk.log("cleaned", "--at", "2031-03-06T19:57").out.startswith("cleaned: wide brush\n")


def test_the_last_look_names_what_is_still_in_a_cup(desk: Desk) -> None:
    desk.log("start", "cart/prime", "--at", EVENING)
    desk.log("done", "cart/prime", "--at", "2031-03-06T19:50")
    full = desk.log("stop", "--at", "2031-03-06T19:58").out
    assert "grey primer" in full.partition("before you go:")[2]
    desk.log("back")
    desk.log("cleaned", "--at", "2031-03-06T19:57")
    clean = desk.log("stop", "--at", "2031-03-06T19:58").out
    assert "grey primer" not in clean.partition("before you go:")[2]
