"""The working order as what is noted leaves it (definition 22); each order is told by hand.

What a painter does with a coat that was forgotten, or that work went on without, is common
practice, no source.
"""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, timedelta
from functools import cache

import pytest
from drawn_examples import drawn
from hypothesis import given
from hypothesis import strategies as st
from judge_cases.making import NOW, at, book, coating, paint, when, work

from app.service import demos, logbook, planning
from app.service.overtaken_work import overtaken_lines
from planner.graph.gates import gates_of
from planner.passes import expand, expand_model, order_left
from planner.schedule.greedy import plan_book
from planner.schedule.judge import judge
from planner.values.book import Book
from planner.values.moment import moment_of, zone_named
from planner.values.plan import PassKey
from planner.values.project import Logged
from planner.values.step import Stage, Step

BASE = paint("base", "hull", coats=2)
MASK = work("mask", Stage.MASK, "hull/deck")
BAND = paint("band", "hull/side")
UNMASK = work("unmask", Stage.UNMASK, "hull/deck")
CLEAR = paint("clear", "hull", coat="sand")
WASH = paint("wash", "hull/deck", coat="oil", stage=Stage.OIL_WASH)
WIPE = work("wipe", Stage.WIPE, "hull/deck")


def noted(of: Book, *names: str) -> Book:
    """Note coats such as "base#1", one each day up to yesterday."""
    project = of.projects[0]
    log = []
    for number, name in enumerate(names):
        step, _, coat = name.partition("#")
        start = NOW - 1440 * (len(names) - number)
        log.append(
            Logged(
                model=project.models[0].name,
                step=step,
                coat=int(coat or 1),
                start=moment_of(start, UTC),
                end=moment_of(start + 5, UTC),
            )
        )
    return replace(of, projects=(replace(project, log=tuple(log)),))


def order(of: Book) -> list[str]:
    (project,) = of.projects
    passes = expand(project, project.models[0])
    assert [one.rank for one in passes] == list(range(len(passes)))
    return [f"{one.key.step}#{one.key.coat}" for one in passes]


def planned(of: Book) -> list[str]:
    """Return what a sound plan of everything still does, in turn."""
    return planned_keys(of, NOW)


def planned_keys(of: Book, now: int) -> list[str]:
    plan = plan_book(of, now)
    assert judge(of, plan).violations == ()
    assert not plan.unplaced
    ahead = sorted((one.start, one.key) for one in plan.placements if not one.logged)
    return [f"{key.step}#{key.coat}" for _, key in ahead]


def of_steps(*steps: Step) -> Book:
    return book(*steps)


def test_what_is_noted_in_its_turn_leaves_the_order_as_written() -> None:
    of = of_steps(BASE, MASK, BAND, UNMASK, CLEAR)
    steps = ["base#1", "base#2", "mask", "band", "unmask", "clear"]
    for done in range(len(steps) + 1):
        logged = noted(of, *steps[:done])
        (project,) = logged.projects
        assert order_left(project, project.models[0]) is None
        assert expand(project, project.models[0]) is expand_model(project.name, project.models[0])
        assert overtaken_lines(logged) == []


def test_a_coat_that_the_mask_keeps_out_comes_once_the_tape_is_off() -> None:
    """The base's second coat was left out, tape and band are on: it comes before the clear."""
    logged = noted(of_steps(BASE, MASK, BAND, UNMASK, CLEAR), "base#1", "mask", "band")
    assert order(logged) == ["base#1", "mask#1", "band#1", "unmask#1", "base#2", "clear#1"]
    assert planned(logged) == ["unmask#1", "base#2", "clear#1"]
    (line,) = overtaken_lines(logged)
    assert "base coat 2 is not noted, but “band” was done over it" in line


def test_what_the_mask_is_on_for_does_not_wait_for_what_it_keeps_out() -> None:
    """With the tape on the band comes first, though the base lies under it as written."""
    logged = noted(of_steps(BASE, MASK, BAND, UNMASK, CLEAR), "base#1", "mask")
    assert planned(logged) == ["band#1", "unmask#1", "base#2", "clear#1"]


def test_what_was_to_follow_follows_the_overtaken_coat() -> None:
    """The second coat of the sides was overtaken, so a third step on them comes behind it."""
    sides = paint("sides", "hull/side")
    logged = noted(
        of_steps(BASE, sides, work("clean", Stage.CLEAN, "hull/deck")), "base#1", "clean"
    )
    assert order(logged) == ["base#1", "clean#1", "base#2", "sides#1"]
    assert planned(logged) == ["base#2", "sides#1"]


@pytest.mark.parametrize(
    ("steps", "done", "left", "lost"),
    [
        ((BASE, MASK, BAND, UNMASK, CLEAR), ("base#1", "base#2", "band", "unmask"), 1, "mask"),
        ((BASE, WASH, WIPE, CLEAR), ("base#1", "base#2", "wipe"), 1, "wash"),
    ],
)
def test_what_was_taken_off_was_on(steps, done, left, lost) -> None:
    """Tape is not stuck on again because nobody noted it, nor is a wash laid that was wiped."""
    logged = noted(of_steps(*steps), *done)
    assert f"{lost}#1" not in order(logged)
    assert planned(logged) == ["clear#1"]
    (line,) = overtaken_lines(logged)
    assert "it is taken as done" in line


def test_a_wash_is_wiped_before_anything_that_it_overtook() -> None:
    """Wiping has its hour; the forgotten base comes after it, over a film that is dry."""
    logged = noted(of_steps(BASE, WASH, WIPE), "base#1", "wash")
    assert order(logged) == ["base#1", "wash#1", "wipe#1", "base#2"]


def test_of_many_that_were_overtaken_the_first_three_are_said() -> None:
    many = [paint(f"coat{at}", "hull") for at in range(1, 6)]
    lines = overtaken_lines(noted(of_steps(*many, CLEAR), "clear"))
    assert [line.partition(" ")[0] for line in lines[:3]] == [
        "cart/coat1", "cart/coat2", "cart/coat3",
    ]  # fmt: skip
    assert lines[3:] == ["and 2 more coats are not noted, though later work is"]


def test_a_tie_that_is_turned_round_is_untied() -> None:
    """The unmasking was to wait for the base's last coat, which now waits for it."""
    tied = replace(UNMASK, after=("base",))
    logged = noted(of_steps(BASE, MASK, BAND, tied), "base#1", "mask", "band")
    (project,) = logged.projects
    pairs = {(g.before.step, g.after.step) for g in gates_of(logged, project, project.models[0])}
    assert ("unmask", "base") in pairs
    assert ("base", "unmask") not in pairs
    assert planned(logged) == ["unmask#1", "base#2"]


def test_a_mask_noted_before_its_turn_moves_what_it_keeps_out_behind_the_tape() -> None:
    """The steps themselves are put in order when it is noted in the logbook of the program."""
    of = noted(of_steps(BASE, MASK, BAND, UNMASK, CLEAR), "base#1")
    (project,) = of.projects
    model = project.models[0].name
    edit = logbook.finish(of, PassKey(project.name, model, "mask", 1), NOW, 5)
    steps = [step.id for step in edit.book.projects[0].models[0].steps]
    assert steps == ["base", "mask", "band", "unmask", "base-rest", "clear"]
    assert overtaken_lines(edit.book) == []
    assert planned_keys(edit.book, NOW) == ["band#1", "unmask#1", "base-rest#1", "clear#1"]


def test_noting_that_the_tape_is_off_puts_no_tape_behind_it() -> None:
    of = noted(of_steps(BASE, MASK, BAND, UNMASK), "base#1", "base#2", "band")
    (project,) = of.projects
    key = PassKey(project.name, project.models[0].name, "unmask", 1)
    edit = logbook.finish(of, key, NOW, 5)
    assert edit.book.projects[0].models == project.models
    assert planned_keys(edit.book, NOW) == []


@cache
def demo_models() -> list[Book]:
    """Return every demonstration's first model, each alone."""
    found = []
    for name in ("club_day_batch", "harbour_tenders", "winter_garage"):
        whole = demos.read(name).book
        for project in whole.projects:
            alone = replace(project, models=project.models[:1], pins=(), pilot="")
            found.append(replace(whole, projects=(alone,)))
    return found


@st.composite
def demos_noted(draw: st.DrawFn) -> tuple[Book, int]:
    """Draw a demonstration of which some coats are noted: holes, any order, one under way."""
    of = draw(st.sampled_from(demo_models()))
    (project,) = of.projects
    every = [one.key for one in expand_model(project.name, project.models[0])]
    reach = draw(st.integers(1, len(every)))
    holes = draw(st.lists(st.sampled_from(every[:reach]), max_size=3))
    keys = draw(st.permutations([key for key in every[:reach] if key not in holes]))
    zone = zone_named(of.bench_time.zone)
    now = at = demos.first_evening(of)
    log = []
    for key in keys:
        at += draw(st.sampled_from([0, 30, 700]))
        begun = moment_of(at, zone)
        end = None if draw(st.integers(0, 20)) == 20 else moment_of(at + 12, zone)
        log.append(Logged(model=key.model, step=key.step, coat=key.coat, start=begun, end=end))
    now = at + draw(st.sampled_from([-600, 0, 1440]))
    return replace(of, projects=(replace(project, log=tuple(log)),)), now


@drawn(12)
@given(told=demos_noted())
def test_whatever_is_noted_of_a_demonstration_it_is_planned(told) -> None:
    """`planning.plan` shows no plan that the judge refuses; it would raise."""
    of, now = told
    plan = planning.plan(of, now, quick=True).plan
    assert all(lost.why for lost in plan.unplaced)


def test_tape_noted_too_early_is_no_leave_for_the_next_tape() -> None:
    # The base is print-free after ten hours; the first tape was on it after a minute, in vain.
    slow = coating("slow", print_free=600, dry_to_recoat=20)
    tape = MASK, BAND, UNMASK
    again = [replace(step, id=f"{step.id}-again") for step in tape]
    steps = [paint("base", "hull/deck", coat="slow"), *tape, *again]
    done = {"base": "18:00", "mask": "18:11", "band": "18:21", "unmask": "19:00"}
    log = [
        Logged(model="cart", step=name, start=when(told), end=when(told) + timedelta(minutes=5))
        for name, told in done.items()
    ]
    of = book(*steps, coatings=(slow,), log=tuple(log))
    plan = plan_book(of, at("19:06"))
    assert judge(of, plan).violations == ()
    second = plan.placement(PassKey("batch", "cart", "mask-again"))
    assert second is not None
    assert second.start >= at("18:05") + 600
