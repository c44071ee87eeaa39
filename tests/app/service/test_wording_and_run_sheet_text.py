"""What people read: rounded times, reasons, the run sheet and the timeline as text."""

from __future__ import annotations

from dataclasses import replace
from datetime import date
from zoneinfo import ZoneInfo

import pytest
from small_book import NOW, ZONE, at, key, small_book, small_plan

from app.service import run_sheet_text, wording
from app.service.plan_changes import PlanMove, moved
from app.service.timeline_text import timeline_text
from planner.bench import BenchCalendar
from planner.tonight import run_sheet
from planner.values.moment import Interval
from planner.values.plan import Cause, Placement, Reason, Unplaced

SECOND = at("2031-03-13 19:30")


@pytest.mark.parametrize(
    ("ahead", "shown"),
    [
        (1, "19:35"),  # up to the next five minutes
        (5, "19:35"),
        (61, "20:35"),
        (119, "21:30"),
        (121, "21:45"),  # beyond two hours, up to the next quarter
        (240, "23:30"),
        (271, "Fri 7 Mar 00:15"),
    ],
)
def test_openings_are_rounded_up(ahead: int, shown: str) -> None:
    assert wording.opening(NOW + ahead, NOW, ZONE) == shown


@pytest.mark.parametrize(
    ("ahead", "shown"),
    [(4, "19:30"), (64, "20:30"), (119, "21:25"), (134, "21:30"), (1440, "Fri 7 Mar 19:30")],
)
def test_closings_are_rounded_down(ahead: int, shown: str) -> None:
    assert wording.closing(NOW + ahead, NOW, ZONE) == shown


def test_what_never_opens_is_said_to_never_open() -> None:
    assert wording.opening(None, NOW, ZONE) == "never in this air"


@pytest.mark.parametrize(
    ("minutes", "shown"),
    [
        (0, "0 min"),
        (33, "35 min"),
        (119, "2 h"),
        (121, "2 h 15 min"),
        (24 * 60, "1 d"),
        (50 * 60 + 1, "2 d 2 h"),
    ],
)
def test_spans(minutes: int, shown: str) -> None:
    assert wording.span(minutes) == shown


def test_quarters_are_those_of_utc_and_of_the_clock_alike() -> None:
    """Where the offset is no whole quarter-hour multiple, five minutes still fit: +05:45."""
    zone = ZoneInfo("Asia/Kathmandu")
    shown = wording.opening(NOW + 121, NOW, zone)
    assert int(shown[-2:]) % 15 == 0


@pytest.mark.parametrize("cause", Cause)
def test_every_cause_has_its_words(cause: Cause) -> None:
    full = wording.reasons_text(Reason(cause, SECOND, "yard/cart/base#1", "dry-to-recoat"), ZONE)
    bare = wording.reasons_text(Reason(cause), ZONE)
    assert full
    assert bare
    assert "yard" not in full  # the project goes without saying
    assert "  " not in full + bare


def test_a_drying_reason_says_what_state_and_when() -> None:
    reason = Reason(Cause.DRYING, SECOND, "yard/cart/gloss#2", "solvent-safe")
    text = wording.reasons_text(reason, ZONE)
    assert "cart/gloss, coat 2" in text
    assert "solvent-safe" in text
    assert "Thu 19:30" in text


def test_the_run_sheet_reads_from_top_to_bottom() -> None:
    text = run_sheet_text.run_sheet_text(
        run_sheet(small_book(), small_plan(), SECOND), small_book()
    )
    order = [
        "Thu 13 Mar 2031 19:30–21:30  (120 min)",
        "19:30    3 min  (load fine brush with thin sand)",
        "mix 2 : 3 of sand : water thinner",
        "19:33   12 min  cart, base",
        "tub: [ ] bed  [ ] sides",
        "19:45    6 min  (clean fine brush)",
        "20:00   15 min  cart, oil wash: dark wash into the corners",
        "20:30   10 min  cart, wipe back",
        "Left to dry",
        "Closing",
        "21:00             end cart/wipe before",
        "Take care",
        "label",
    ]
    places = [text.find(piece) for piece in order]
    assert -1 not in places, order[places.index(-1)]
    assert places == sorted(places)


def test_what_dries_now_is_told_with_its_purpose() -> None:
    text = run_sheet_text.run_sheet_text(
        run_sheet(small_book(), small_plan(), NOW + 13), small_book()
    )
    (line,) = [line for line in text.splitlines() if "dry-to-recoat" in line]
    assert "grey primer on cart (tub), for sand" in line


def test_an_evening_without_work_says_so() -> None:
    plan = replace(small_plan(), placements=(), bench=())
    text = run_sheet_text.run_sheet_text(run_sheet(small_book(), plan, NOW), small_book())
    assert "Nothing to do" in text


def test_the_timeline_has_a_character_for_five_minutes() -> None:
    lines = timeline_text(small_plan(), small_book()).splitlines()
    # load 19:30–33, prime 19:33–43, clean 19:43–49, then nothing until 21:30
    assert "Thu 6 Mar 2031 19:30–21:30" in lines[0]
    brush, cart = lines[1].split(), lines[2].split()
    assert brush[-1] == "=.==" + 20 * "."
    assert cart[1] == "###" + 21 * "."
    assert cart[2] == "prime"
    assert "6 d 22 h away from the bench" in lines[3]


def test_a_long_stretch_still_fits_the_page() -> None:
    book = small_book()
    always = replace(book.bench_time.stretches[0], start="00:00", end="00:00")
    book = replace(book, bench_time=replace(book.bench_time, stretches=(always,)))
    lines = timeline_text(small_plan(), book).splitlines()
    # 24 h at 15 minutes a character are 96; 19:30 is the 79th of them
    assert lines[0].endswith("(15 min a character)")
    bar = lines[2].split()[1]
    assert (len(bar), bar.index("#")) == (96, 78)
    assert max(map(len, lines)) < 140


def test_the_finish_is_told_against_the_date() -> None:
    text = run_sheet_text.finish_text(small_plan(), small_book())
    assert text == "yard: done Thu 13 Mar 20:40, in time for Wed 30 Apr 2031"
    early = small_book(target=date(2031, 3, 12))
    # 20:40 on the 13th is 20 h 40 min after the end of the 12th
    assert "20 h 45 min after Wed 12 Mar 2031" in run_sheet_text.finish_text(small_plan(), early)


def test_what_has_no_place_is_named() -> None:
    plan = replace(small_plan(), unplaced=(Unplaced(key("gloss"), "no window is left"),))
    text = run_sheet_text.finish_text(plan, small_book())
    assert "no place found for cart/gloss: no window is left" in text


# --- what moved -------------------------------------------------------------------------------


def test_what_moved_is_named_with_how_far() -> None:
    old = small_plan()
    shifted = tuple(
        replace(placement, pieces=(Interval(placement.start + 10080, placement.end + 10080),))
        if placement.key.step == "wipe"
        else replace(placement, pieces=(Interval(placement.start + 5, placement.end + 5),))
        if placement.key.step == "wash"
        else placement
        for placement in old.placements
    )
    moves = moved(old, replace(old, placements=shifted))
    assert [(move.key.step, move.minutes) for move in moves] == [("wash", 5), ("wipe", 10080)]
    calendar = BenchCalendar(small_book().bench_time)
    assert [move.to_other_stretch(calendar) for move in moves] == [False, True]


def test_nothing_moves_between_equal_plans() -> None:
    assert moved(small_plan(), small_plan()) == ()


def test_facts_and_news_are_no_moves() -> None:
    old = small_plan()
    sooner = old.placements[0]
    fact = replace(sooner, pieces=(Interval(NOW - 60, NOW - 50),), logged=True)
    news = Placement(key("gloss"), (Interval(NOW + 50, NOW + 58),))
    new = replace(old, placements=(fact, news, *old.placements[1:]))
    assert moved(old, new) == ()


def test_what_lost_its_place_is_told() -> None:
    old = small_plan()
    new = replace(
        old, placements=old.placements[:-1], unplaced=(Unplaced(key("wipe"), "too late"),)
    )
    assert moved(old, new) == (PlanMove(key("wipe"), old.placements[-1].start, None),)
    assert moved(new, old) == (PlanMove(key("wipe"), None, old.placements[-1].start),)
