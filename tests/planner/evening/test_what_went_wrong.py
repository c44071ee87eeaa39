"""Closings that went by, work before its turn, and what to do instead."""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime, timedelta

import pytest
from logged_books import demo_plan, done_as_planned
from small_book import CART, PROJECT, ZONE, at, key, small_book

from app.service import edits, planning
from planner.evening import log_entries
from planner.evening.advice import one_first, rest, silvering
from planner.evening.alternatives import instead, leaves_time, takers
from planner.evening.missed_closings import Remedy, missed, remedied
from planner.evening.out_of_order import out_of_order
from planner.layers.overcoat_table import LayerVerdict
from planner.values.book import Book
from planner.values.coating import Family, Mark, Preparation, Window
from planner.values.model import Model
from planner.values.moment import minute_of
from planner.values.plan import PassKey
from planner.values.project import Event, Happened, Logged
from planner.values.refusal import Refused
from planner.values.room import AirPoint
from planner.values.step import Gate, Minutes, Stage, Step, Tool

START = datetime(2031, 3, 6, 19, 30, tzinfo=ZONE)
DAY = 1440


def cart(book: Book) -> Model:
    return book.project(PROJECT).model(CART)


def done(book: Book, step: str, start: datetime, minutes: int = 12) -> Book:
    fact = Logged(model=CART, step=step, start=start, end=start + timedelta(minutes=minutes))
    return log_entries.written(book, PROJECT, fact)


def washed(minutes: int = 15) -> tuple[Book, int]:
    """Return the small book as the wash has just been laid, and the minute of that."""
    book = small_book()
    for week, step in enumerate(("prime", "sand", "gloss")):
        book = done(book, step, START + timedelta(weeks=week))
    start = START + timedelta(weeks=3)
    book = done(book, "wash", start, minutes)
    return book, minute_of(start) + minutes


# --- a closing missed -------------------------------------------------------------------------


def test_wiping_that_cannot_end_within_the_hour_is_missed() -> None:
    """The gate closes 60 min after the start of the wash, and wiping takes 10."""
    book, end = washed()
    start = end - 15
    assert missed(book, start + 49) == ()
    (one,) = missed(book, start + 50)
    assert (one.key, one.after, one.closed) == (key("wipe"), key("wash"), start + 60)
    assert one.reopens is None
    assert one.remedies == (Remedy.LATE, Remedy.SKIP)


def test_a_wash_that_outlasts_its_own_wiping_is_wiped_late() -> None:
    """Wiping opens 5 min after the wash has ended and closes 60 min after it began."""
    book, end = washed(minutes=70)
    (one,) = missed(book, end)
    assert (one.key, one.closed, one.reopens) == (key("wipe"), end - 70 + 60, None)
    (why,) = [lost.why for lost in planning.plan(book, end).plan.unplaced if lost.key == one.key]
    assert "closes before it can be done" in why
    assert planning.plan(remedied(book, one, Remedy.LATE), end).plan.unplaced == ()


def test_what_was_missed_can_be_done_late_or_left_out() -> None:
    book, end = washed()
    (one,) = missed(book, end + 90)
    with pytest.raises(Refused, match="must be one of"):
        remedied(book, one, Remedy.WAIT)
    late = remedied(book, one, Remedy.LATE)
    wipe = cart(late).steps[-1]
    assert wipe.minutes.fixed == 20
    assert missed(late, end + 90) == ()
    assert planning.plan(late, end + 90).plan.unplaced == ()
    without = remedied(book, one, Remedy.SKIP)
    assert [step.id for step in cart(without).steps] == ["prime", "sand", "gloss", "wash"]


def test_a_recoat_window_that_closed_reopens_by_the_label_or_by_scuffing() -> None:
    book = small_book()
    shut = Window(opens=Mark(minutes=60), closes=Mark(minutes=DAY))
    again = Window(
        opens=Mark(minutes=5 * DAY), preparation=Preparation.SCUFF, preparation_minutes=5
    )
    for windows, remedies in (((shut,), Remedy.SCUFF), ((shut, again), Remedy.WAIT)):
        coatings = tuple(
            replace(coating, recoat=windows) if coating.name == "grey primer" else coating
            for coating in book.coatings
        )
        labelled = done(replace(book, coatings=coatings), "prime", START)
        (one,) = missed(labelled, minute_of(START) + 2 * DAY)
        assert (one.key, one.closed) == (key("sand"), minute_of(START) + DAY)
        assert one.remedies[0] is remedies
        after = remedied(labelled, one, remedies)
        assert planning.plan(after, minute_of(START) + 2 * DAY).plan.unplaced == ()
        primer = next(coating for coating in after.coatings if coating.name == "grey primer")
        assert primer.recoat[-1].preparation is Preparation.SCUFF


def test_a_window_written_on_the_step_is_reopened_there() -> None:
    book = small_book()
    gate = Gate(after="prime", windows=(Window(opens=Mark(minutes=60), closes=Mark(minutes=DAY)),))
    steps = tuple(
        replace(step, gates=(gate,)) if step.id == "sand" else step for step in cart(book).steps
    )
    project = replace(book.project(PROJECT), models=(replace(cart(book), steps=steps),))
    book = done(replace(book, projects=(project,)), "prime", START)
    (one,) = missed(book, minute_of(START) + 2 * DAY)
    after = remedied(book, one, Remedy.SCUFF)
    assert after.coatings == book.coatings
    windows = cart(after).steps[1].gates[0].windows
    assert windows[1].opens == Mark(minutes=DAY)
    assert windows[1].preparation is Preparation.SCUFF
    assert planning.plan(after, minute_of(START) + 2 * DAY).plan.unplaced == ()


# --- out of order -----------------------------------------------------------------------------


def test_a_wash_before_the_gloss_is_told_at_once_with_its_mend() -> None:
    """An oil wash over a bare waterborne coat rubs it off: UFC 3-190-06, and common practice."""
    book = done(done(small_book(), "prime", START), "sand", START + timedelta(weeks=1))
    book = done(book, "wash", START + timedelta(weeks=2))
    found = out_of_order(book, key("wash"))
    assert found is not None
    assert found.before == ("gloss",)
    names = [step.id for step in cart(found.book).steps]
    assert names == ["prime", "sand", "wash", "gloss", "wipe"]
    (rubbed,) = [finding for finding in found.findings if finding.step == "wash"]
    assert rubbed.verdict is LayerVerdict.BARRIER
    assert any(finding.mend for finding in found.findings)  # what comes later can still be mended


def test_work_in_its_turn_is_no_news() -> None:
    book = done(small_book(), "prime", START)
    assert out_of_order(book, key("prime")) is None
    assert out_of_order(book, key("sand")) is None


def test_joining_before_its_turn_counts_for_the_whole_unit() -> None:
    """The side panels are glued on before their faces are based: the join names faces alone."""
    book, _ = demo_plan("harbour_tenders")
    project = book.projects[0]
    for model in project.models:
        join = next(step for step in model.steps if step.stage is Stage.JOIN)
        found = out_of_order(book, PassKey(project.name, model.name, join.id))
        assert found is not None
        after = found.book.projects[0].model(model.name)
        assert after.steps[0].id == join.id


# --- instead ----------------------------------------------------------------------------------


def test_a_wash_is_offered_only_with_its_wiping_time() -> None:
    """Wash 15 min, workable after 10 more, wiped in 10: it takes 35 min and no less."""
    book = small_book()
    for week, step in enumerate(("prime", "sand", "gloss")):
        book = done(book, step, START + timedelta(weeks=week))
    end = at("2031-03-27 21:30")
    for left, offered in ((35, True), (34, False), (20, False)):
        names = [one.key.step for one in instead(book, end - left)]
        assert ("wash" in names) is offered
        assert leaves_time(book, key("wash"), end - left) is offered
    assert leaves_time(book, key("gloss"), end - 5)
    weekly = (
        *book.bench_time.stretches,
        replace(book.bench_time.stretches[0], start="21:40", end="22:10"),
    )
    later = edits.set_stretches(book, weekly).book
    assert "wash" in [one.key.step for one in instead(later, end - 20)]  # wiped after a pause


def test_work_that_keeps_hands_from_a_closing_is_not_offered() -> None:
    book, end = washed()
    model = replace(cart(book), name="second")
    steps = (replace(cart(book).steps[0], minutes=replace(cart(book).steps[0].minutes, fixed=40)),)
    project = book.project(PROJECT)
    models = (*project.models, replace(model, steps=steps))
    book = replace(book, projects=(replace(project, models=models),))
    assert [one.key.step for one in instead(book, end + 10)] == ["wipe"]
    wiped = done(book, "wipe", START + timedelta(weeks=3, minutes=30), 10)
    assert [one.key.model for one in instead(wiped, end + 30)] == ["second"]


def test_short_evenings_begin_with_what_needs_no_set_up() -> None:
    book = small_book()
    project = book.project(PROJECT)
    brush = replace(cart(book).steps[3], id="brush", stage=Stage.BASE, minutes=Minutes(fixed=5))
    mask = Step(
        id="mask", stage=Stage.MASK, touches=("tub/bed",), tool=Tool.HAND, minutes=Minutes(fixed=5)
    )
    models = tuple(
        replace(cart(book), name=name, steps=(step,)) for name, step in (("a", brush), ("b", mask))
    )
    book = replace(book, projects=(replace(project, models=models),))
    now = at("2031-03-06 19:30")
    for minutes, first in ((120, "brush"), (16, "brush"), (15, "mask"), (10, "mask")):
        cut = edits.only_minutes(book, now, minutes).book
        assert next(one.key.step for one in instead(cut, now)) == first


def test_what_else_takes_the_colour_over_all_models() -> None:
    book, _ = demo_plan("harbour_tenders")
    project = book.projects[0]
    first = project.models[0].steps[0]
    name = first.applications[0].coating
    found = takers(book, name, at("2026-03-03 19:30"))
    expected = {
        (model.name, step.id)
        for model in project.models
        for step in model.steps
        if any(application.coating == name for application in step.applications)
    }
    assert {(item.key.model, item.key.step) for item in found} == expected
    ready = [item for item in found if item.ready(at("2026-03-03 19:30"))]
    assert {one.key.step for one in ready} == {first.id}
    assert all(item.waits_for for item in found if item.opens is None)


# --- advice -----------------------------------------------------------------------------------


def damp(book: Book, humidity: float) -> Book:
    air = (AirPoint(at="00:00", temperature_c=21, humidity_pct=humidity),)
    bench = replace(book.room.locations[0], workdays=air)
    return replace(book, room=replace(book.room, locations=(bench,)))


def test_one_is_sprayed_first_when_the_air_is_doubtful() -> None:
    """A fast solvent may frost above 60 % RH: UFC 3-190-06 par. 7.4.2; 60 % common practice."""
    book = small_book()
    coatings = tuple(
        replace(coating, family=Family.SOLVENT_LACQUER)
        if coating.name == "grey primer"
        else coating
        for coating in book.coatings
    )
    project = book.project(PROJECT)
    twin = replace(project.models[0], name="twin")
    project = replace(project, models=(*project.models, twin))
    book = replace(book, coatings=coatings, projects=(project,))
    keys = (key("prime"), key("prime")._replace(model="twin"))
    now = at("2031-03-06 19:30")
    assert one_first(damp(book, 50), keys, now) is None
    found = one_first(damp(book, 65), keys, now)
    assert found is not None
    assert (found.first, found.others, found.judge_at) == (keys[0], keys[1:], now + 60)
    assert one_first(damp(book, 65), keys[:1], now) is None


def test_after_two_failed_tries_a_part_rests_for_a_day() -> None:
    """ "After two failed tries pause 24 h": common practice, no source."""
    book = small_book()
    lines = [
        Happened(at=START + timedelta(hours=hour), event=Event.DISLIKED, model=CART, step="sand")
        for hour in (0, 3)
    ]
    tried = replace(book.project(PROJECT), diary=tuple(lines[:1]))
    now = minute_of(START) + 200
    assert rest(replace(book, projects=(tried,)), key("sand"), now) is None
    tried = replace(book.project(PROJECT), diary=tuple(lines))
    twice = replace(book, projects=(tried,))
    found = rest(twice, key("sand"), now)
    assert found is not None
    assert (found.tries, found.until) == (2, minute_of(START) + 180 + DAY)
    assert rest(twice, key("sand"), found.until) is None
    assert rest(twice, key("gloss"), now) is not None  # the same places


def test_decals_are_looked_at_again_after_days() -> None:
    book, plan = demo_plan("harbour_tenders")
    book, keys, _ = done_as_planned(book, plan, len(plan.placements))
    decals = [key for key in keys if log_entries.step_of(book, key).stage is Stage.DECAL]
    entry = log_entries.entry_of(book, decals[0])
    assert entry is not None
    assert entry.end is not None
    laid = minute_of(entry.end)
    assert decals[0] not in [one.key for one in silvering(book, laid + 2 * DAY - 1)]
    assert decals[0] in [one.key for one in silvering(book, laid + 2 * DAY)]
    assert decals[0] not in [one.key for one in silvering(book, laid + 14 * DAY + 1)]
