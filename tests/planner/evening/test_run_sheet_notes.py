"""Looks, brakes, the closing check, and work that goes on alone."""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime, timedelta

from small_book import BRUSH, CART, NOW, PROJECT, ZONE, at, key, small_book, small_plan

from app.service import bench_events, planning
from app.service.run_sheet_text import run_sheet_text
from planner.evening import log_entries
from planner.evening.alternatives import instead
from planner.evening.closing_check import Check, CheckKind, checks, tidy_from
from planner.evening.last_coat_brake import braked
from planner.evening.looks import LAPSES, LookFor, looks, looks_to_come
from planner.evening.run_sheet_notes import beside
from planner.schedule.judge import judge
from planner.tonight import run_sheet, run_sheets
from planner.values.bench_time import Recurring
from planner.values.book import Book
from planner.values.coating import Coating, Family, Finish, State
from planner.values.moment import Interval, minute_of
from planner.values.project import Logged
from planner.values.step import Application, Minutes, Role, Stage, Step, Tool, Trait

START = datetime(2031, 3, 6, 19, 30, tzinfo=ZONE)


def done(book: Book, step: str, start: datetime, minutes: int = 12) -> Book:
    fact = Logged(model=CART, step=step, start=start, end=start + timedelta(minutes=minutes))
    return log_entries.written(book, PROJECT, fact)


def with_step(book: Book, name: str, **changes) -> Book:
    project = book.project(PROJECT)
    model = project.model(CART)
    steps = tuple(replace(step, **changes) if step.id == name else step for step in model.steps)
    project = replace(project, models=(replace(model, steps=steps),))
    return replace(book, projects=(project,))


def with_more(book: Book, *steps: Step) -> Book:
    project = book.project(PROJECT)
    model = project.model(CART)
    project = replace(project, models=(replace(model, steps=(*model.steps, *steps)),))
    return replace(book, projects=(project,))


# --- looks ------------------------------------------------------------------------------------


def wiped() -> tuple[Book, int]:
    """Return the small book with a look half an hour after the wiping, and the end of that."""
    book = with_step(small_book(), "wipe", look_in=30)
    for week, step in enumerate(("prime", "sand", "gloss", "wash")):
        book = done(book, step, START + timedelta(weeks=week))
    start = START + timedelta(weeks=3, minutes=30)
    return done(book, "wipe", start, 10), minute_of(start) + 10


def test_a_look_is_due_so_many_minutes_after_the_end_and_lapses_after_a_day() -> None:
    book, end = wiped()
    for now in (end, end + 30, end + 30 + LAPSES - 1):
        (look,) = looks(book, now)
        assert (look.key, look.at, look.since) == (key("wipe"), end + 30, end)
        assert (look.places, look.what, look.logged) == (("tub/bed",), LookFor.TIDE_MARKS, True)
    assert looks(book, end + 30 + LAPSES) == ()


def test_a_look_is_taken_by_a_note_at_its_time_but_not_by_one_before() -> None:
    book, end = wiped()
    early = bench_events.seen(book, key("wipe"), end + 29).book
    assert len(looks(early, end + 40)) == 1
    seen = bench_events.seen(book, key("wipe"), end + 30).book
    assert looks(seen, end + 40) == ()
    assert seen.project(PROJECT).diary[-1].step == "wipe"


def test_a_look_is_over_once_the_place_is_worked_on_again() -> None:
    book, end = wiped()
    matte = Step(
        id="matte",
        stage=Stage.MATTE,
        applications=(Application(places=("tub",), coating="gloss clear"),),
        minutes=Minutes(fixed=10),
    )
    book = with_more(book, matte)
    assert len(looks(book, end + 40)) == 1
    begun = Logged(model=CART, step="matte", start=START + timedelta(weeks=3, minutes=45))
    assert looks(log_entries.written(book, PROJECT, begun), end + 40) == ()


def test_only_the_last_of_several_coats_asks_for_a_look() -> None:
    two = Application(places=("tub",), coating="grey primer", coats=2)
    book = with_step(small_book(), "prime", applications=(two,), look_in=20)
    book = done(book, "prime", START)
    assert looks(book, minute_of(START) + 15) == ()
    sheet = run_sheet(book, planning.plan(book, NOW + 15, quick=True).plan, NOW + 15)
    row = next(row for row in sheet.work if row.key == key("prime", 2))
    assert [(look.key, look.at) for look in looks_to_come(sheet.rows)] == [(row.key, row.end + 20)]


# --- the brake --------------------------------------------------------------------------------


def last_coat(role: Role | None = Role.FINAL) -> Step:
    return Step(
        id="matte",
        stage=Stage.VARNISH,
        applications=(Application(places=("tub",), coating="matte clear"),),
        tool=Tool.AIRBRUSH,
        minutes=Minutes(fixed=10),
        role=role,
    )


def braking_book(role: Role | None) -> Book:
    book = small_book()
    clear = Coating(name="matte clear", family=Family.WATERBORNE_ACRYLIC, finish=Finish.MATTE)
    book = replace(book, coatings=(*book.coatings, clear))
    book = with_more(book, last_coat(role))
    for week, step in enumerate(("prime", "sand", "gloss", "wash")):
        book = done(book, step, START + timedelta(weeks=week))
    return book


def test_a_last_coat_brakes_and_says_what_is_not_dry_through() -> None:
    """Artists' oil laid an hour ago is nowhere near dry; the gloss of a week ago is."""
    laid = minute_of(START + timedelta(weeks=3, minutes=12))
    oil, gloss = braked(braking_book(Role.FINAL), key("matte"), laid + 60)
    assert (oil.step, oil.places, oil.state) == ("wash", ("tub/bed",), None)
    assert oil.hard is None or oil.hard > laid + 1440
    assert (gloss.step, gloss.places) == ("gloss", ("tub/sides",))
    assert gloss.state is State.DRY_THROUGH  # a waterborne clear after a week: common practice


def test_no_other_work_brakes() -> None:
    book = braking_book(Role.SEAL)
    assert braked(book, key("matte"), NOW) == ()
    assert braked(book, key("prime"), NOW) == ()


def test_films_that_the_plan_lays_before_it_count() -> None:
    book = with_more(
        replace(
            small_book(),
            coatings=(
                *small_book().coatings,
                Coating(name="matte clear", family=Family.WATERBORNE_ACRYLIC, finish=Finish.MATTE),
            ),
        ),
        last_coat(),
    )
    plan = planning.plan(book, NOW, quick=True).plan
    placed = plan.placement(key("matte"))
    assert placed is not None
    assert braked(book, key("matte"), placed.start) == ()  # nothing is logged
    below = braked(book, key("matte"), placed.start, planned=plan.placements)
    assert {one.step for one in below} == {"wash", "gloss"}


# --- the closing check ------------------------------------------------------------------------


def test_the_closing_check_names_wet_parts_cups_and_oily_rags() -> None:
    """A waterborne primer is not dry to handle a minute after it was laid."""
    book = done(small_book(), "prime", START)
    span = Interval(NOW, NOW + 13)
    found = checks(book, span, {BRUSH: "grey primer"})
    assert found == (
        Check(CheckKind.WET, CART, ("tub",)),
        Check(CheckKind.LOOSE),
        Check(CheckKind.CLEAN, BRUSH, ("grey primer",)),
        Check(CheckKind.LIDS),
    )
    week = checks(book, Interval(NOW + 10_080, NOW + 10_180), {})
    assert [one.kind for one in week] == [CheckKind.LOOSE, CheckKind.LIDS]


def test_rags_go_by_the_family_of_what_was_wiped_and_by_no_word() -> None:
    book, end = wiped()
    evening = Interval(end - 60, end)
    assert CheckKind.RAGS in [check.kind for check in checks(book, evening, {})]
    acrylic = tuple(
        replace(coating, family=Family.WATERBORNE_ACRYLIC)
        if coating.name == "dark oil"
        else coating
        for coating in book.coatings
    )
    named_oil = replace(book, coatings=acrylic)  # it is still called "dark oil"
    assert CheckKind.RAGS not in [check.kind for check in checks(named_oil, evening, {})]


def test_putting_away_ends_with_the_stretch() -> None:
    book = small_book()
    sheet = run_sheet(book, small_plan(), NOW)
    assert tidy_from(sheet) == at("2031-03-06 21:20")


# --- hands free -------------------------------------------------------------------------------


def soaking(minutes: int) -> tuple[Book, int]:
    """Return a book with a bath for the wheels that goes on alone, and one more thing to do."""
    book = small_book()
    project = book.project(PROJECT)
    bath = Step(
        id="bath",
        stage=Stage.CLEAN,
        touches=("tub",),
        tool=Tool.HAND,
        minutes=Minutes(fixed=minutes),
        traits=(Trait.HANDS_FREE,),
    )
    stain = Step(
        id="stain",
        stage=Stage.WASH,
        applications=(Application(places=("tub",), coating="sand"),),
        minutes=Minutes(fixed=15),
    )
    cart = project.model(CART)
    first = replace(cart, steps=(bath,))
    second = replace(cart, name="second", steps=(stain,))
    return replace(book, projects=(replace(project, models=(first, second)),)), NOW


def test_the_plan_works_on_while_a_bath_goes_on_alone() -> None:
    """Hands for five minutes, so the stain is begun at 19:35 and the bath ends at 20:10."""
    book, now = soaking(40)
    plan = planning.plan(book, now, quick=True).plan
    assert judge(book, plan).accepted
    rows = {row.key.step: row for row in run_sheet(book, plan, now).work}
    bath, stain = rows["bath"], rows["stain"]
    assert (bath.start, bath.free, bath.end) == (now, now + 5, now + 40)
    assert (stain.start, stain.free, stain.end) == (now + 5, now + 20, now + 20)
    assert bath.goes_alone
    assert not stain.goes_alone
    told = run_sheet_text(run_sheet(book, plan, now), book)
    assert "hands for 5 min, then it goes on alone until 20:10" in told
    assert told.count("goes on alone") == 1


def test_what_is_under_way_alone_keeps_nobody_from_other_work() -> None:
    """Begun at 19:30 and looked at 19:50: the stain is begun at once, the bath ends at 20:10."""
    book, now = soaking(40)
    book = log_entries.written(book, PROJECT, Logged(model=CART, step="bath", start=START))
    plan = planning.plan(book, now + 20, quick=True).plan
    assert judge(book, plan).accepted
    rows = {row.key.step: row for row in run_sheet(book, plan, now + 20).work}
    assert (rows["bath"].end, rows["stain"].start) == (now + 40, now + 20)
    assert [one.key.model for one in instead(book, now + 20)] == ["second"]


def test_a_bath_left_overnight_is_no_work_of_the_next_evening() -> None:
    """Ten hours from 21:20 on: its row is that of the evening on which it was set going."""
    book, now = soaking(600)
    late = now + 110
    plan = planning.plan(book, late, quick=True).plan
    first, *later = run_sheets(book, plan, late)
    assert ("bath", late + 600) in [(row.key.step, row.end) for row in first.work]
    assert all(row.key.step != "bath" for sheet in later for row in sheet.work)


# --- smell ------------------------------------------------------------------------------------


def test_what_smells_is_not_offered_where_quiet_hours_begin_within_the_hour() -> None:
    book, now = soaking(40)
    project = book.project(PROJECT)
    first, second = project.models
    smelly = replace(second.steps[0], traits=(Trait.SMELLS,))
    plain = replace(first, name="third", steps=(replace(second.steps[0], id="plain"),))
    models = (replace(second, steps=(smelly,)), plain)
    book = replace(book, projects=(replace(project, models=models),))
    assert [one.key.model for one in instead(book, now)] == ["second", "third"]
    quiet = Recurring(
        rule="FREQ=DAILY", since=START.date() - timedelta(days=9), start="20:30", end="06:00"
    )
    book = replace(book, bench_time=replace(book.bench_time, quiet=(quiet,)))
    found = instead(book, now)  # done at 19:45, which leaves 45 min to air the room
    assert [item.key.model for item in found] == ["third"]


# --- all together -----------------------------------------------------------------------------


def test_beside_a_run_sheet_stands_what_else_takes_each_colour() -> None:
    book = small_book()
    project = book.project(PROJECT)
    cart = project.model(CART)
    twin = replace(cart, name="twin")
    off = replace(cart, name="third", steps=cart.steps[:1])
    other = replace(project, name="other yard", models=(off,))
    book = replace(book, projects=(replace(project, models=(cart, twin)), other))
    plan = planning.plan(book, NOW, quick=True).plan
    sheet = run_sheet(book, plan, NOW)
    found = beside(book, plan, sheet)
    loads = [row for row in sheet.rows if getattr(row, "coating", "")]
    assert [filling.row for filling in found.fillings] == loads
    sprayed = {row.key for row in sheet.work if row.key.step == "prime"}
    left = {taker.key for taker in found.fillings[0].takers}
    assert left.isdisjoint(sprayed)
    assert {one.model for one in left | sprayed} == {CART, "twin", "third"}
    assert found.tidy_from == at("2031-03-06 21:20")
    assert found.quiet_from is None
    assert Check(CheckKind.CLEAN, BRUSH, (loads[-1].coating,)) in found.checks
