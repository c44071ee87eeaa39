"""The bench mode by its keys, each of them taken back."""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import replace

import pytest
from bench_steps import AtTheBench
from PySide6.QtCore import Qt
from PySide6.QtGui import QFont, QFontMetricsF
from PySide6.QtWidgets import QLabel, QWidget
from small_book import BRUSH, CART, NOW, PROJECT, ZONE, at, key, slow_primer, small_book
from window_steps import MakeWindow, replan

from app.service import bench_events, logbook
from app.window.bench_mode.jobs import jobs_of
from app.window.bench_mode.keys import BINDINGS, Deed
from app.window.bench_mode.large_text import CLOCK, HEADING, LARGE, PLAIN, font_of
from app.window.bench_mode.view import BenchMode
from app.window.palette import DARK, LIGHT, contrast
from app.window.plan_changes_panel import cause_words
from planner.values.book import Book
from planner.values.moment import minute_of, moment_of
from planner.values.plan import BenchKind
from planner.values.project import Event, Happened
from planner.values.step import Application, Minutes, Role, Stage, Step, Tool, Trait

Key = Qt.Key


Bench = Callable[[], AtTheBench]


@pytest.fixture
def bench(qtbot, make_window: MakeWindow) -> Bench:
    """Return how to go to the bench with the small book, its primer a slow one."""
    return lambda: AtTheBench(qtbot, make_window(slow_primer(small_book()), NOW), NOW)


def test_b_goes_to_the_bench_and_escape_leaves_it(bench: Bench) -> None:
    here = bench()
    assert here.bench.isVisible()
    here.press(Key.Key_Escape)
    assert not here.bench.isVisible()


def test_the_clock_on_screen_goes_on_by_itself(qtbot, bench: Bench) -> None:
    here = bench()
    here.settle()

    def shown() -> set[str]:
        return {one.text() for one in here.bench.findChildren(QLabel)}

    here.now += 7
    clock = moment_of(here.now, ZONE).strftime("%H:%M")
    assert clock not in shown()
    here.bench._clock.setInterval(1)
    qtbot.waitUntil(lambda: clock in shown())


def test_one_job_after_the_other(bench: Bench) -> None:
    here = bench()
    assert here.doing == f"load {BRUSH}"
    here.press(Key.Key_Space)
    assert here.doing == str(key("prime"))
    here.now += 3
    here.press(Key.Key_S)
    (entry,) = here.project.log
    assert entry.end is None
    here.now += 9
    here.press(Key.Key_Space)
    (entry,) = here.project.log
    assert entry.end is not None
    assert (entry.end - entry.start).seconds == 9 * 60
    assert here.doing == f"clean {BRUSH}"
    here.press(Key.Key_Space)
    assert not here.doing.startswith("clean")


def test_the_airbrush_of_the_plan_and_its_cleaning_are_logged_by_the_same_keys(
    bench: Bench,
) -> None:
    here = bench()
    here.press(Key.Key_Space, Key.Key_S)
    here.now += 10
    here.press(Key.Key_Space)
    (entry,) = here.project.log
    assert entry.airbrush == BRUSH
    assert here.doing == f"clean {BRUSH}"
    assert here.bench.evening.cups == {BRUSH: "grey primer"}
    said = [label.text() for label in here.window.tonight.findChildren(QLabel)]
    assert "Fine brush holds grey primer since 19:30" in said
    here.now += 7
    here.press(Key.Key_Space)
    assert [(cleaning.airbrush, minute_of(cleaning.at)) for cleaning in here.book.cleaned] == [
        (BRUSH, here.now)
    ]
    assert here.bench.evening.cups == {}
    here.window.session.undo()  # facts are no edits
    assert here.book.cleaned
    here.press(Key.Key_Backspace)
    assert here.book.cleaned == ()
    assert here.bench.evening.cups == {BRUSH: "grey primer"}
    assert here.doing == f"clean {BRUSH}"


def test_places_are_ticked_in_the_logbook_and_stay(bench: Bench) -> None:
    here = bench()
    here.press(Key.Key_Space)
    here.press(Key.Key_2)
    (entry,) = here.project.log
    assert entry.ticked == ("tub/sides",)
    assert entry.end is None  # the first tick begins the work
    here.press(Key.Key_1)
    here.press(Key.Key_2)
    (entry,) = here.project.log
    assert entry.ticked == ("tub/bed",)


def test_every_deed_is_taken_back_to_the_last(bench: Bench) -> None:
    here = bench()
    book = here.window.session.book
    for pressed in (Key.Key_Space, Key.Key_S, Key.Key_1, Key.Key_H, Key.Key_Space, Key.Key_E):
        here.press(pressed)
        here.now += 1
    here.press(Key.Key_1)  # a line of the closing check
    here.press(Key.Key_Escape)
    assert here.window.session.book != book
    for _ in range(7):
        here.press(Key.Key_Backspace)
    assert here.window.session.book == book
    assert here.doing == f"load {BRUSH}"
    assert Deed.BACK not in here.bench.evening.deeds()


def test_what_is_in_the_cup_outlasts_the_program(qtbot, bench: Bench) -> None:
    here = bench()
    here.press(Key.Key_Space)
    here.press(Key.Key_S)
    again = BenchMode(here.window.session, here.window.settings, None)
    again.enter(full_screen=False)
    job = again.job
    assert job is not None
    assert job.begun == NOW
    assert again.evening.cups == {BRUSH: "grey primer"}
    again.close()
    again.deleteLater()


def test_an_hour_more_and_an_early_end(bench: Bench) -> None:
    here = bench()
    here.press(Key.Key_H)
    picture = here.window.session.picture
    assert picture is not None
    assert picture.sheet.interval.end == at("2031-03-06 22:30")
    here.now += 30
    here.press(Key.Key_E)
    assert here.bench.asked is not None  # the closing check
    picture = here.window.session.picture
    assert picture is not None
    assert all(
        row.start < here.now + 1 or row.start >= at("2031-03-13 19:30")
        for row in picture.sheet.rows
    )


def test_a_load_already_in_the_cup_is_no_job(bench: Bench) -> None:
    here = bench()
    picture = here.window.session.picture
    assert picture is not None

    def first(cups: dict[str, str]) -> tuple[BenchKind, str] | None:
        row = jobs_of(picture, cups)[0].set_up
        return (row.kind, row.coating) if row else None

    assert first({}) == (BenchKind.LOAD, "grey primer")
    assert first({BRUSH: "grey primer"}) is None
    assert first({BRUSH: "thin sand"}) == (BenchKind.CHANGE, "grey primer")


def test_work_done_before_its_turn_is_asked_about(bench: Bench) -> None:
    here = bench()
    while here.doing != str(key("sand")):
        here.press(Key.Key_Right)  # sand comes after prime
    here.press(Key.Key_Space)
    asked = here.bench.asked
    assert asked is not None
    assert "prime" in asked.about[0]
    steps = [step.id for step in here.project.models[0].steps]
    assert steps.index("sand") < steps.index("prime")


def test_places_not_ticked_may_be_left_for_later(bench: Bench) -> None:
    here = bench()
    here.press(Key.Key_Space, Key.Key_1)
    here.now += 6
    here.press(Key.Key_Space)
    here.choose("only what is ticked")
    (entry,) = here.project.log
    assert (entry.step, entry.ticked) == ("prime", ("tub/bed",))
    rest = [step for step in here.project.models[0].steps if step.id.startswith("prime-")]
    assert [step.references() for step in rest] == [("tub/sides",)]


def test_the_closing_check_names_wet_parts_and_the_airbrush(bench: Bench) -> None:
    here = bench()
    here.press(Key.Key_Space, Key.Key_S)
    here.now += 10
    here.press(Key.Key_Space, Key.Key_C)
    asked = here.bench.asked
    assert asked is not None
    told = [f"{line.told} {line.below}" for line in asked.lines]
    assert any("Wet" in line and "tub" in line and "cart" in line for line in told)
    assert any("grey primer" in line for line in told)
    here.choose("grey primer")  # it is clean now
    assert [cleaning.airbrush for cleaning in here.book.cleaned] == [BRUSH]
    assert here.bench.evening.cups == {}


# --- looks, marks, the time to put away -------------------------------------------------------


def marked(*traits: Trait, look_in: int | None = None) -> Book:
    """Return the small book with marks on its primer."""
    book = small_book()
    project = book.project(PROJECT)
    model = project.model(CART)
    prime, *rest = model.steps
    model = replace(model, steps=(replace(prime, traits=traits, look_in=look_in), *rest))
    return replace(book, projects=(replace(project, models=(model,)),))


def told_by(widget: QWidget) -> str:
    """Return all that is written in labels."""
    return "\n".join(label.text() for label in widget.findChildren(QLabel))


def test_a_look_is_shown_with_its_time_and_taken_by_l(qtbot, make_window: MakeWindow) -> None:
    here = AtTheBench(qtbot, make_window(marked(look_in=20), NOW), NOW)
    here.press(Key.Key_Space)
    here.now += 3
    here.press(Key.Key_S)
    here.now += 10
    here.press(Key.Key_Space)
    assert Deed.SEEN not in here.bench.evening.deeds()
    assert "Look 20:03: prime · cart: how it has come out" in told_by(here.bench)
    here.now = NOW + 33
    here.bench.clock_moved()
    assert "Look now (L): prime · cart: how it has come out" in told_by(here.bench)
    here.press(Key.Key_L)
    here.choose("type what")
    here.type("a hair on the bed")
    assert here.project.diary[-1].text == "a hair on the bed"
    assert "Look now" not in told_by(here.bench)
    here.press(Key.Key_Backspace)
    assert "Look now" in told_by(here.bench)
    here.press(Key.Key_L)
    here.choose("something is wrong")
    here.choose("dropped")
    assert here.bench.asked is not None  # the usual list of repairs


def test_marks_are_told_in_tonight_and_at_the_bench(qtbot, make_window: MakeWindow) -> None:
    book = marked(Trait.SMELLS, Trait.DAYLIGHT, look_in=20)
    here = AtTheBench(qtbot, make_window(book, NOW), NOW)
    here.press(Key.Key_Space)
    for told in (told_by(here.bench), told_by(here.window.tonight)):
        assert "It smells: air the room" in told
        assert "It needs daylight." in told
        assert "Have a look 20 min later: how it has come out" in told
    assert "Have a look 20:03: prime · cart (tub)" in told_by(here.window.tonight)


def test_the_next_work_is_shown_while_a_bath_goes_on_alone(qtbot, make_window: MakeWindow) -> None:
    book = small_book()
    project = book.project(PROJECT)
    cart = project.model(CART)
    bath = Step(
        id="bath",
        stage=Stage.CLEAN,
        touches=("tub",),
        tool=Tool.HAND,
        minutes=Minutes(fixed=40),
        traits=(Trait.HANDS_FREE,),
    )
    stain = Step(
        id="stain",
        stage=Stage.WASH,
        applications=(Application(places=("tub",), coating="sand"),),
        minutes=Minutes(fixed=15),
    )
    models = (replace(cart, steps=(bath,)), replace(cart, name="second", steps=(stain,)))
    book = replace(book, projects=(replace(project, models=models),))
    here = AtTheBench(qtbot, make_window(book, NOW), NOW)
    assert "Hands for 5 min, then it goes on alone until 20:10" in told_by(here.bench)
    here.press(Key.Key_S)
    assert here.doing == str(key("bath"))
    here.now = NOW + 5
    here.bench.clock_moved()
    assert "stain" in here.doing
    here.press(Key.Key_S)
    assert {entry.step: entry.end for entry in here.project.log} == {"bath": None, "stain": None}
    here.now = NOW + 20
    here.press(Key.Key_Space)
    assert here.doing == str(key("bath"))  # nothing else is left, and it can be seen
    assert "goes on alone until 20:10" in told_by(here.bench)


def test_tonight_shows_beside_it_what_will_brake(make_window) -> None:
    book = marked()
    project = book.project(PROJECT)
    cart = project.model(CART)
    final = replace(cart.steps[2], role=Role.FINAL)
    cart = replace(cart, steps=(*cart.steps[:2], final))
    book = replace(book, projects=(replace(project, models=(cart,)),))
    evening = at("2031-03-13 19:30")
    book = logbook.finish(book, key("prime"), NOW + 30, 12).book
    book = logbook.finish(book, key("sand"), evening - 1440, 12).book
    told = told_by(make_window(book, evening).tonight.aside)
    assert "Before the last coat" in told
    assert "✓ tub: thin sand is dry-through" in told  # a last coat asks for that


def test_tonight_says_when_to_put_away_and_the_bench_reminds(bench: Bench) -> None:
    """Ten minutes before the end at 21:30: common practice."""
    here = bench()
    assert "Time to put away: " in told_by(here.window.tonight)
    here.now = at("2031-03-06 21:19")
    here.bench.clock_moved()
    assert "left to put away" not in told_by(here.bench)
    here.now += 1
    here.bench.clock_moved()
    assert "10 min left to put away: the closing check is C" in told_by(here.bench)


def test_a_wash_without_its_wiping_time_brakes(qtbot, make_window: MakeWindow) -> None:
    """Wash 15 min, workable 10 min after it, wiped in 10: 20 min before the end are too few."""
    book = small_book()
    for week, step in enumerate(("prime", "sand", "gloss")):
        book = logbook.finish(book, key(step), NOW + week * 7 * 1440 + 30, 12).book
    begin = at("2031-03-27 19:30")
    here = AtTheBench(qtbot, make_window(book, begin), begin)
    assert here.doing == str(key("wash"))
    here.now = at("2031-03-27 21:10")  # nobody planned anew meanwhile
    here.press(Key.Key_S)
    assert here.bench.asked is not None
    assert here.bench.asked.title == "Begin all the same?"
    assert here.project.log[-1].step == "gloss"
    here.press(Key.Key_Escape)
    here.now = at("2031-03-27 20:50")
    here.press(Key.Key_Right, Key.Key_Left)
    here.press(Key.Key_S)
    assert here.bench.asked is None
    assert here.project.log[-1].step == "wash"


def test_after_two_failed_tries_beginning_brakes(qtbot, make_window: MakeWindow) -> None:
    book = small_book()
    for minutes in (20, 40):
        book = bench_events.note(book, NOW, "x", key("sand")).book
        project = book.project(PROJECT)
        line = Happened(
            at=moment_of(NOW - minutes, ZONE), event=Event.DISLIKED, model=CART, step="sand"
        )
        project = replace(project, diary=(*project.diary[:-1], line))
        book = replace(book, projects=(project,))
    here = AtTheBench(qtbot, make_window(book, NOW), NOW)
    here.press(Key.Key_Space, Key.Key_S)
    assert here.bench.asked is not None
    assert "2 tries have failed here" in here.bench.asked.about[0]
    here.press(Key.Key_Space)
    assert here.project.log[-1].step == "prime"


def test_letters_are_read_from_a_metre_and_a_half() -> None:
    """A small letter as high as 1/214 of the distance is 16 minutes of arc (ISO 9241-303).

    On a screen of 24 inches (16:9) a window of 720 pixels is 298.9 mm high.
    """
    pixel_mm = 298.9 / 720
    for size in (PLAIN, LARGE, HEADING, CLOCK):
        x_height = QFontMetricsF(font_of(QFont(), size)).xHeight() * pixel_mm
        assert x_height >= 1500 * math.tan(math.radians(16 / 60)) - 0.05


def test_what_is_dropped_or_disliked_has_its_repairs_by_number(bench: Bench) -> None:
    here = bench()
    here.press(Key.Key_Space, Key.Key_S)
    here.now += 10
    here.press(Key.Key_Space, Key.Key_R)
    here.choose("prime")
    here.choose("I do not like it")
    before = {step.id for step in here.project.models[0].steps}
    here.choose("sand and respray")
    assert {step.id for step in here.project.models[0].steps} > before
    assert here.project.diary[-1].event is Event.DISLIKED
    here.press(Key.Key_Backspace)
    assert {step.id for step in here.project.models[0].steps} == before


def test_the_gauge_is_read_and_goes_into_the_logbook_with_what_was_used(bench: Bench) -> None:
    here = bench()
    here.press(Key.Key_G)
    here.type("warm")
    assert "not two numbers" in here.bench.said
    here.press(Key.Key_G)
    here.type("21,5 °C 48 %")
    assert here.book.room.readings[-1].temperature_c == 21.5
    here.press(Key.Key_Space, Key.Key_S)
    here.now += 10
    here.press(Key.Key_Space)
    (entry,) = here.project.log
    assert (entry.temperature_c, entry.humidity_pct) == (21.5, 48)
    # 100 cm² × 20 µm / (10 000 × 0.35 solids × 0.30 on the model) = 1.90 ml of primer
    assert {use.coating: use.ml for use in entry.used} == {
        "grey primer": pytest.approx(1.90, abs=0.01)
    }


def test_the_evening_by_the_menu(qtbot, make_window: MakeWindow) -> None:
    window = make_window(small_book(), NOW)
    book = small_book()
    commands = window.commands
    for action, seen in (
        (commands.hour, "60 min more"),
        (commands.stop, "Stopped for tonight"),
        (commands.lost, "Evening lost"),
    ):
        replan(qtbot, window, action.trigger)
        assert seen in window.moved.summary.text()
        replan(qtbot, window, commands.back.trigger)
        assert window.session.book == book
    replan(qtbot, window, commands.lost.trigger)
    assert window.moved.list.count() > 0
    assert "→" in window.moved.list.item(0).text()
    assert "No bench time before" in window.moved.list.item(0).text()  # and why


def test_a_cause_names_the_pass_not_its_key() -> None:
    assert cause_words("done: yard/cart/base-coat#1") == "Done: base coat · cart"
    assert cause_words("begun: yard/cart/base#2") == "Begun: base · cart, coat 2"
    assert cause_words("air of bench: 14 °C, 50 %") == "Air of bench: 14 °C, 50 %"
    moved = cause_words("prime, cart not before Thu 2031-03-06 19:30")  # its weekday once
    assert moved == "Prime, cart not before Thu 6 Mar 19:30"


def test_every_key_is_shown_and_every_deed_has_one(bench: Bench) -> None:
    assert {binding.deed for binding in BINDINGS} == set(Deed)
    keys = [key for binding in BINDINGS for key in binding.keys]
    assert len(keys) == len(set(keys))


@pytest.mark.parametrize("colours", [LIGHT, DARK])
def test_letters_stand_out(colours) -> None:
    # WCAG 2.1, success criterion 1.4.6: 7 : 1 for text, here also for the lesser words
    # that are large (4.5 : 1).
    assert contrast(colours.ink, colours.sheet) >= 7
    assert contrast(colours.soft, colours.sheet) >= 4.5
