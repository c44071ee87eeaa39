"""What happens at the bench: one edit each, undone one by one to where it all began."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from datetime import UTC, date, datetime
from pathlib import Path

import pytest
from drawn_examples import drawn
from hypothesis import Phase, given
from hypothesis import strategies as st
from logged_books import demo_plan
from small_book import CART, NOW, PROJECT, ZONE, at, key, small_book

from app.service import bench_events, logbook, planning
from app.service.edits import Edit
from app.service.plan_changes import moved
from planner.bench import BenchCalendar
from planner.evening import log_entries
from planner.evening.repairs import Repair
from planner.values.bench_time import Extra, Recurring
from planner.values.book import Book
from planner.values.coating import State
from planner.values.mix import Portion
from planner.values.moment import minute_of, moment_of, zone_named
from planner.values.plan import PassKey
from planner.values.project import Event, Logged, Observed, Used
from planner.values.refusal import Refused, demand
from planner.values.supplies import Leftover
from storage.bench_book import BenchBook

# Whole courses of events are slow to shrink, and are told step by step anyway.
DRAWN_ONLY = (Phase.explicit, Phase.reuse, Phase.generate)


def diary(book: Book) -> list[tuple[Event, str, str]]:
    return [(line.event, line.step, line.text) for line in book.project(PROJECT).diary]


def primed() -> Book:
    return logbook.finish(small_book(), key("prime"), NOW + 20, 14).book


def test_a_fact_about_an_unknown_step_is_refused() -> None:
    stray = Logged(model=CART, step="polish", start=moment_of(NOW, ZONE))
    with pytest.raises(Refused, match="no step"):
        logbook.write(small_book(), PROJECT, stray)


def test_the_second_coat_is_not_logged_before_the_first() -> None:
    book = small_book()
    model = book.project(PROJECT).models[0]
    twice = replace(model.steps[0].applications[0], coats=2)
    steps = (replace(model.steps[0], applications=(twice,)), *model.steps[1:])
    project = replace(book.project(PROJECT), models=(replace(model, steps=steps),))
    book = replace(book, projects=(project,))
    with pytest.raises(Refused, match="coat 1 of"):
        logbook.finish(book, key("prime", 2), NOW, 5)
    book = logbook.finish(book, key("prime"), NOW, 5).book
    assert logbook.finish(book, key("prime", 2), NOW + 60, 5)


# --- the logbook ------------------------------------------------------------------------------


def test_a_pass_is_begun_ticked_and_done() -> None:
    book = logbook.begin(small_book(), key("prime"), NOW, 10).book
    with pytest.raises(Refused, match="is already logged"):
        logbook.begin(book, key("prime"), NOW + 1)
    book = logbook.tick(book, key("prime"), "tub/bed", NOW + 4, on=True).book
    used = (Used(coating="grey primer", ml=2.5),)
    book = logbook.finish(
        book, key("prime"), NOW + 17, used=used, air=(19.5, 61), note="thin on the edges"
    ).book
    (entry,) = book.project(PROJECT).log
    assert (entry.minutes, entry.planned) == (17, 10)
    assert (entry.ticked, entry.used) == (("tub/bed",), used)
    assert (entry.temperature_c, entry.humidity_pct) == (19.5, 61)
    assert entry.note == "thin on the edges"
    with pytest.raises(Refused, match="done already"):
        logbook.finish(book, key("prime"), NOW + 30)


def test_an_entry_is_corrected_annotated_and_taken_back() -> None:
    book = primed()
    entry = logbook.entry_of(book, key("prime"))
    assert entry is not None
    right = replace(entry, minutes=16)
    book = logbook.correct(book, key("prime"), right).book
    book = logbook.annotate(book, key("prime"), note="dust").book
    book = logbook.annotate(book, key("prime"), photo="ab.jpg").book
    assert book.project(PROJECT).log == (replace(right, note="dust", photos=("ab.jpg",)),)
    with pytest.raises(Refused, match="stays with its coat"):
        logbook.correct(book, key("sand"), right)
    with pytest.raises(Refused, match="nothing is logged"):
        logbook.annotate(book, key("sand"), note="dust")
    assert logbook.take_back(book, key("prime")).book == small_book()


def test_what_is_half_done_is_logged_and_the_rest_is_left() -> None:
    book = logbook.begin(primed(), key("sand"), NOW + 60).book
    book = logbook.split(book, key("sand"), ("tub/bed",), NOW + 66).book
    entry = logbook.entry_of(book, key("sand"))
    assert entry is not None
    assert (entry.minutes, entry.planned) == (6, 6)
    plan = planning.plan(book, NOW + 66).plan
    assert key("sand-rest") in [placement.key for placement in plan.placements]
    # 60 of 100 cm²: what is reckoned as used is the bed's alone.
    whole = sum(one.ml for one in logbook.usual_use(primed(), key("sand")))
    assert sum(one.ml for one in entry.used) == pytest.approx(0.6 * whole, rel=0.05)


def test_the_logbook_lists_the_newest_first() -> None:
    book = logbook.finish(primed(), key("sand"), NOW + 8 * 1440, 12).book
    assert [line.key.step for line in logbook.entries(book)] == ["sand", "prime"]


# --- what goes wrong --------------------------------------------------------------------------


def test_skipping_is_one_edit_that_the_diary_keeps() -> None:
    edit = bench_events.skip(small_book(), key("wash"), NOW, "dark enough")
    assert edit.name == "skipped: wash, cart"
    assert diary(edit.book) == [(Event.SKIPPED, "wash", "dark enough (with wipe)")]


def test_a_tacky_film_opens_later_and_nothing_else_moves_before_it() -> None:
    """Nobody knows by how much; it opens after what was seen, and after what was planned."""
    book = primed()
    before = planning.plan(book, NOW + 20).plan
    opens = before.placement(key("sand"))
    assert opens is not None
    seen = NOW + 20 + 2 * 1440
    edit = bench_events.tacky(book, key("prime"), seen)
    assert edit.book.project(PROJECT).observed == (
        Observed(
            model=CART,
            step="prime",
            at=datetime.fromtimestamp(seen * 60, UTC).astimezone(ZONE),
            state=State.TACK_FREE,
            reached=False,
        ),
    )
    assert diary(edit.book)[0][0] is Event.TACKY
    after = planning.plan(edit.book, seen).plan.placement(key("sand"))
    assert after is not None
    assert after.start > opens.start
    with pytest.raises(Refused, match="laid no film yet"):
        bench_events.tacky(book, key("sand"), NOW + 100)
    with pytest.raises(Refused, match="before the film"):
        bench_events.looked(book, key("prime"), NOW - 100, State.TACK_FREE, reached=True)


def test_a_repair_of_work_under_way_ends_it() -> None:
    book = logbook.begin(small_book(), key("prime"), NOW).book
    edit = bench_events.repair(
        book, key("prime"), NOW + 5, Repair.AGAIN, Event.DROPPED, ("tub/bed",), "fell off"
    )
    entry = logbook.entry_of(edit.book, key("prime"))
    assert entry is not None
    assert entry.end is not None
    assert diary(edit.book) == [(Event.DROPPED, "prime", "fell off; lay it once more (tub/bed)")]
    with pytest.raises(Refused, match="must be one of"):
        bench_events.repair(book, key("prime"), NOW + 5, Repair.AGAIN, Event.NOTE)


def test_an_empty_bottle_is_counted_and_the_rest_becomes_a_step() -> None:
    book = logbook.begin(primed(), key("sand"), NOW + 60).book
    edit = bench_events.ran_out(book, key("sand"), NOW + 66, "thin sand", ("tub/bed",))
    sand = next(coating for coating in edit.book.coatings if coating.name == "sand")
    assert (sand.in_stock_ml, sand.counted and minute_of(sand.counted)) == (0, NOW + 66)
    assert [step.id for step in edit.book.project(PROJECT).models[0].steps][2] == "sand-rest"
    assert diary(edit.book) == [(Event.RAN_OUT, "sand", "sand")]
    jar = Leftover(
        name="sand jar",
        ml=4,
        made=datetime(2031, 3, 1, tzinfo=ZONE),
        keeps_days=30,
        portions=(Portion(coating="sand", parts=1),),
    )
    stocked = replace(book, supplies=replace(book.supplies, leftovers=(jar,)))
    told = bench_events.ran_out_advice(stocked, "thin sand", NOW)
    assert told == ("leftover mix sand jar: 4 ml, made 2031-03-01", "buy sand (17 ml a bottle)")
    assert bench_events.ran_out_advice(stocked, "sand", NOW + 40 * 1440) == told[1:]
    with pytest.raises(Refused, match='did you mean "sand"'):
        bench_events.ran_out(book, key("sand"), NOW + 66, "snad")


def test_work_before_its_turn_moves_to_where_it_was_done() -> None:
    told = bench_events.out_of_order(primed(), key("gloss"))
    assert told is not None
    assert told.before == ("sand",)
    edit = logbook.finish(primed(), key("gloss"), NOW + 1440, 8)
    names = [step.id for step in edit.book.project(PROJECT).models[0].steps]
    assert names == ["prime", "gloss", "sand", "wash", "wipe"]
    assert bench_events.out_of_order(edit.book, key("gloss")) is None
    planning.plan(edit.book, NOW + 1440)  # the judge accepts what follows


# --- more and less time -----------------------------------------------------------------------


def ends(book: Book, minute: int) -> int | None:
    stretch = BenchCalendar(book.bench_time).stretch_at(minute)
    return stretch.interval.end if stretch else None


def test_stopping_ends_this_stretch_and_no_other() -> None:
    edit = bench_events.stop(small_book(), NOW + 40)
    calendar = BenchCalendar(edit.book.bench_time)
    assert ends(edit.book, NOW + 39) == NOW + 40
    assert ends(edit.book, NOW + 40) is None
    following = calendar.next_stretch(NOW + 40)
    assert following is not None
    assert following.interval.start == at("2031-03-13 19:30")
    assert diary(edit.book) == [(Event.STOPPED, "", "stopped for tonight")]
    with pytest.raises(Refused, match="nothing to stop"):
        bench_events.stop(edit.book, NOW + 41)


def test_an_hour_more_and_an_evening_lost() -> None:
    more = bench_events.longer(small_book(), NOW + 100, 60)
    assert ends(more.book, NOW + 100) == NOW + 180
    begun = bench_events.longer(small_book(), at("2031-03-07 20:00"), 60)
    assert ends(begun.book, at("2031-03-07 20:00")) == at("2031-03-07 21:00")
    lost = bench_events.lost(more.book, date(2031, 3, 6))
    calendar = BenchCalendar(lost.book.bench_time)
    following = calendar.next_stretch(NOW - 600)
    assert following is not None
    assert following.interval.start == at("2031-03-13 19:30")


ALL_DAYS = Recurring(rule="FREQ=DAILY", since=date(2031, 3, 1), start="05:30", end="07:45")
NIGHTS = Recurring(rule="FREQ=DAILY", since=date(2031, 3, 1), start="22:00", end="01:00")
NOONS = Recurring(rule="FREQ=DAILY", since=date(2031, 3, 1), start="12:00", end="13:00", people=2)
HOURS = {
    "mornings": (ALL_DAYS,),
    "nights": (NIGHTS,),
    "two a day": (ALL_DAYS, NOONS),
    "overlapping": (ALL_DAYS, replace(NOONS, start="06:00", end="07:00")),
    "none": (),
}
EXTRAS = {
    "no extra": (),
    "one across": (("2031-03-06 05:45", "2031-03-06 08:30"),),
    "over midnight": (("2031-03-05 23:30", "2031-03-06 02:00"),),
}


def minutes_of(book: Book) -> set[int]:
    """Return the minutes of bench time of three days, from the fifth of March on."""
    found = BenchCalendar(book.bench_time).stretches(at("2031-03-05 00:00"), at("2031-03-08 00:00"))
    return {
        minute
        for stretch in found
        for minute in range(stretch.interval.start, stretch.interval.end)
    }


@pytest.mark.parametrize("extra", EXTRAS)
@pytest.mark.parametrize("hours", HOURS)
@pytest.mark.parametrize("clock", ["05:13", "05:30", "06:10", "07:45", "23:40", "00:30"])
def test_an_hour_more_takes_no_minute_and_stopping_takes_only_what_was_left(
    hours: str, extra: str, clock: str
) -> None:
    added = tuple(
        Extra(start=moment_of(at(start), ZONE), end=moment_of(at(end), ZONE))
        for start, end in EXTRAS[extra]
    )
    book = small_book()
    bench_time = replace(book.bench_time, stretches=HOURS[hours], skipped=(), extra=added)
    book = replace(book, bench_time=bench_time)
    now, before = at(f"2031-03-06 {clock}"), minutes_of(book)

    begin = now
    while begin in before:
        begin += 1
    more = bench_events.longer(book, now, 60).book
    assert minutes_of(more) == before | set(range(begin, begin + 60))
    assert more.bench_time.skipped == ()

    if now in before:
        stopped = bench_events.stop(book, now).book
        assert minutes_of(stopped) == before - set(range(now, begin))
        assert all(kept.interval.minutes > 1 for kept in stopped.bench_time.extra)
    else:
        with pytest.raises(Refused, match="nothing to stop"):
            bench_events.stop(book, now)


def test_hours_more_one_after_the_other_are_one_line_of_extra_hours() -> None:
    book = small_book()
    for _ in range(3):
        book = bench_events.longer(book, NOW + 100, 20).book
    assert len(book.bench_time.extra) == len(small_book().bench_time.extra) + 1
    assert ends(book, NOW + 100) == NOW + 120 + 60


def test_notes_go_into_the_diary() -> None:
    edit = bench_events.note(small_book(), NOW, "lamp flickers")
    edit = bench_events.note(edit.book, NOW, "hairs in the primer", key("prime"))
    assert diary(edit.book) == [
        (Event.NOTE, "", "lamp flickers"),
        (Event.NOTE, "prime", "hairs in the primer"),
    ]
    with pytest.raises(Refused, match="is empty"):
        bench_events.note(edit.book, NOW, "  ")


# --- properties -------------------------------------------------------------------------------


def _events(draw: st.DrawFn, book: Book, now: int) -> Edit | None:
    """Draw one thing that happens; None where it cannot."""
    project = draw(st.sampled_from([project for project in book.projects if project.active]))
    model = draw(st.sampled_from(project.models))
    step = draw(st.sampled_from(model.steps))
    coat = draw(st.integers(1, step.coats))
    this = PassKey(project.name, model.name, step.id, coat)
    places = [place for ref in step.references() for place in model.places(ref)]
    some = draw(st.lists(st.sampled_from(places), min_size=1, unique=True))
    kind = draw(st.sampled_from(Repair))
    coating = draw(st.sampled_from(book.coatings)).name
    zone = zone_named(book.bench_time.zone)
    makers: dict[str, Callable[[], Edit]] = {
        "begin": lambda: logbook.begin(book, this, now),
        "finish": lambda: logbook.finish(book, this, now, 7),
        "tick": lambda: logbook.tick(book, this, places[0], now, on=True),
        "split": lambda: logbook.split(book, this, some, now),
        "take back": lambda: logbook.take_back(book, this),
        "annotate": lambda: logbook.annotate(book, this, note="a note"),
        "skip": lambda: bench_events.skip(book, this, now, "why not"),
        "tacky": lambda: bench_events.tacky(book, this, now),
        "repair": lambda: bench_events.repair(book, this, now, kind, Event.DISLIKED, some),
        "stop": lambda: bench_events.stop(book, now),
        "longer": lambda: bench_events.longer(book, now, 60),
        "note": lambda: bench_events.note(book, now, "so it went", this),
        "seen": lambda: bench_events.seen(book, this, now),
        "looked": lambda: bench_events.looked(book, this, now, State.DRY_TO_RECOAT, reached=True),
        "lost": lambda: bench_events.lost(book, moment_of(now, zone).date()),
        "ran out": lambda: bench_events.ran_out(book, this, now, coating, some),
        "remedy": lambda: _remedy(draw, book, now),
        "correct": lambda: _corrected(draw, book, this),
    }
    try:
        return makers[draw(st.sampled_from(sorted(makers)))]()
    except Refused:
        return None


def _remedy(draw: st.DrawFn, book: Book, now: int) -> Edit:
    """Do what must be done about a window that was missed, if one was."""
    late = bench_events.missed(book, now)
    demand(bool(late), "missed", "is nothing")
    one = draw(st.sampled_from(late))
    return bench_events.remedy(book, one, draw(st.sampled_from(one.remedies)), now)


def _corrected(draw: st.DrawFn, book: Book, this: PassKey) -> Edit:
    """Correct an entry afterwards."""
    entry = logbook.entry_of(book, this)
    if entry is None:
        raise Refused("log", "is empty")
    air = draw(st.floats(min_value=10, max_value=30))
    return logbook.correct(book, this, replace(entry, temperature_c=air, humidity_pct=50.0))


@pytest.fixture(scope="module")
def shelf(tmp_path_factory: pytest.TempPathFactory) -> Path:
    return tmp_path_factory.mktemp("shelf")


@drawn(6, phases=DRAWN_ONLY)
@given(data=st.data())
def test_any_course_of_events_is_taken_back_to_where_it_began(
    shelf: Path, data: st.DataObject
) -> None:
    begun, plan = demo_plan(data.draw(st.sampled_from(["lone_lamplighter", "winter_garage"])))
    path = shelf / "bench.tackfree"
    for old in shelf.glob("bench.tackfree*"):
        old.unlink()
    with BenchBook.create(path, begun) as bench:
        now, states = plan.now, [begun]
        for _ in range(data.draw(st.integers(1, 8))):
            now += data.draw(st.integers(1, 2000))
            edit = _events(data.draw, bench.book(), now)
            if edit is None or edit.book == bench.book():
                continue
            bench.apply(edit.name, edit.book, edit.merge)
            states.append(bench.book())
        for state in reversed(states[:-1]):
            assert bench.take_back() is not None
            assert bench.book() == state
        assert bench.take_back() is None
    with BenchBook.open(path) as bench:
        assert bench.book() == begun


@drawn(12, phases=DRAWN_ONLY)
@given(data=st.data())
def test_logged_work_never_moves_and_the_judge_accepts_what_follows(data: st.DataObject) -> None:
    book, plan = demo_plan(data.draw(st.sampled_from(["lone_lamplighter", "winter_garage"])))
    now = plan.now
    for _ in range(data.draw(st.integers(1, 6))):
        now += data.draw(st.integers(1, 900))
        edit = _events(data.draw, book, now)
        if edit is None:
            continue
        book = edit.book
    made = planning.plan(book, now, quick=True).plan  # raises if the judge does not accept it
    assert planning.plan(book, now, quick=True).plan == made
    facts_now = {
        log_entries.key_of(project.name, one): one
        for project in book.projects
        for one in project.log
    }
    for placed in made.placements:
        entry = facts_now.get(placed.key)
        if entry is not None:
            assert placed.logged
            assert placed.start == minute_of(entry.start, up=False)
            if entry.end is not None:
                assert placed.end == minute_of(entry.end)
        else:
            assert placed.start >= now


def test_nothing_of_tonight_moves_without_an_event() -> None:
    """Minutes go by, work is done as planned: the plan of what is left stays the same."""
    book, plan = demo_plan("lone_lamplighter")
    ahead = sorted(plan.placements, key=lambda placement: placement.start)
    for placed in ahead[:4]:
        fact = logbook.finish(
            book, placed.key, placed.end, sum(piece.minutes for piece in placed.pieces)
        )
        book = fact.book
        again = planning.plan(book, placed.end, quick=True, last=plan).plan
        tonight = BenchCalendar(book.bench_time).stretch_at(placed.start)
        assert tonight is not None
        moves = [
            move
            for move in moved(plan, again)
            if move.before is not None and move.before < tonight.interval.end
        ]
        assert moves == []
