"""What the logbook teaches, against sums by hand and against simulated people."""

from __future__ import annotations

import math
from dataclasses import replace
from datetime import datetime, timedelta
from random import Random
from statistics import fmean, stdev

import pytest
from logged_books import demo_plan
from small_book import CART, PROJECT, ZONE, key, small_book

from app.service import logbook, pace
from planner.cure import Band, Cure, Film
from planner.evening import log_entries
from planner.pace.drying import learned_drying
from planner.pace.minutes import (
    PASS_SD,
    PERSON_SD,
    STAGE_SD,
    Estimate,
    Work,
    clipped,
    learned_minutes,
    person,
    posterior,
    scaled,
    stage_pace,
)
from planner.values.book import Book
from planner.values.coating import State
from planner.values.moment import minute_of, moment_of
from planner.values.plan import PassKey
from planner.values.project import Logged, Observed
from planner.values.refusal import Refused
from planner.values.step import Minutes, Stage, Tool

START = datetime(2031, 3, 6, 19, 30, tzinfo=ZONE)


# --- by hand ----------------------------------------------------------------------------------


def test_a_normal_prior_and_normal_values_by_hand() -> None:
    """Gelman et al., Bayesian Data Analysis (3rd ed.), section 2.5, eq. 2.12.

    Prior mean 0, variance 0.04; four values of mean 0.3 with variance 0.16:
    precisions 25 and 4 / 0.16 = 25 add to 50, the mean is half of 0.3.
    """
    found = posterior(Estimate(0.0, 0.04), [0.1, 0.2, 0.4, 0.5], 0.4)
    assert found.mean == pytest.approx(0.15)
    assert found.variance == pytest.approx(1 / 50)
    assert posterior(Estimate(0.1, 0.04), [], 0.4) == Estimate(0.1, 0.04)


def test_the_person_is_the_pooled_mean_of_the_stages_by_hand() -> None:
    """The same book, section 5.4: each group's mean counts by its own precision.

    With the deviations 0.3 (person), 0.15 (stage) and 0.25 (pass): a stage of
    one pass has variance 0.0225 + 0.0625 = 0.085, of five 0.0225 + 0.0125 =
    0.035.  Precisions: 11.1111, 11.7647, 28.5714, together 51.4472.  Means
    0.5 and 0.2 give (5.88235 + 5.71429) / 51.4472 = 0.225408.
    """
    assert (PERSON_SD, STAGE_SD, PASS_SD) == (0.3, 0.15, 0.25)
    groups = {Work(Stage.BASE, Tool.AIRBRUSH): [0.5], Work(Stage.WASH, Tool.BRUSH): [0.2] * 5}
    found = person(groups)
    assert found.mean == pytest.approx(0.225408, abs=1e-6)
    assert found.variance == pytest.approx(1 / 51.4472, rel=1e-5)


def test_a_stage_is_drawn_towards_the_person_by_hand() -> None:
    """Prior 0.2 with precision 1 / 0.0225 = 44.4444; five passes of 0.4: 5 / 0.0625 = 80.

    Mean (8.88889 + 32) / 124.4444 = 0.328571.  The variance is 1 / 124.4444
    and what is left of the person's: (0.00803571 / 0.0225)² × 0.01.
    """
    found = stage_pace(Estimate(0.2, 0.01), [0.4] * 5)
    assert found.mean == pytest.approx(0.328571, abs=1e-6)
    assert found.variance == pytest.approx(0.00803571 + 0.357143**2 * 0.01, rel=1e-5)


def test_one_slip_teaches_little() -> None:
    """Forgot to stop the clock: 10 hours for 10 minutes pull no harder than 1.5 deviations."""
    wild = clipped([0.0, 0.0, 0.1, math.log(60)])
    assert wild[:3] == [0.0, 0.0, 0.1]
    assert wild[3] == pytest.approx(0.05 + 1.5 * PASS_SD)


def test_minutes_are_scaled_as_a_whole() -> None:
    """8 + 3 × 3 = 17 min, × 1.4 = 23.8: 3 × 4 and 12 more make 24."""
    assert scaled(Minutes(fixed=8, per_part=3), 1.4, 3, 1) == Minutes(fixed=12, per_part=4)
    assert scaled(Minutes(fixed=1), 0.2, 1, 1) == Minutes(fixed=1)


# --- simulated people -------------------------------------------------------------------------


def worked(book: Book, factor: float, noise: float, seed: int) -> tuple[Book, int]:
    """Return the book after nine evenings of somebody whose minutes are ``factor`` times as long.

    Of every evening of the plan each pass is logged with minutes drawn
    around the planned ones times ``factor``.  The next project, of the same
    models, is still to do.
    """
    following = replace(book.projects[0], name="next", active=False)
    book = replace(book, projects=(*book.projects, following))
    random = Random(seed)
    _, plan = demo_plan("harbour_tenders")
    zone = ZONE
    days: dict[object, None] = {}
    now = plan.now
    for placed in sorted(plan.placements, key=lambda placement: (placement.start, placement.key)):
        day = moment_of(placed.start, zone).date()
        days.setdefault(day)
        if len(days) > 9:
            break
        planned = sum(piece.minutes for piece in placed.pieces)
        real = max(1, round(planned * factor * math.exp(random.gauss(0, noise))))
        fact = Logged(
            model=placed.key.model,
            step=placed.key.step,
            coat=placed.key.coat,
            start=moment_of(placed.start, zone),
            end=moment_of(placed.end, zone),
            minutes=real,
            planned=planned,
        )
        book = log_entries.written(book, placed.key.project, fact)
        now = max(now, placed.end)
    assert len(days) > 9
    return book, now


def errors(before: Book, after: Book, factor: float, noise: float = 0) -> tuple[float, float]:
    """Return the mean error of planned minutes in work to come, before and after [min]."""
    random = Random(99)
    found = []
    for project in before.projects:
        begun = {(entry.model, entry.step) for entry in project.log}
        for model in project.models:
            for step in model.steps:
                if (model.name, step.id) in begun:
                    continue
                this = PassKey(project.name, model.name, step.id)
                was = logbook.planned_minutes(before, None, this)
                now = logbook.planned_minutes(after, None, this)
                real = was * factor * math.exp(random.gauss(0, noise))
                found.append((abs(was - real), abs(now - real)))
    assert len(found) > 50
    return fmean(item for item, _ in found), fmean(item for _, item in found)


def taught(book: Book, now: int) -> Book:
    """Return the book with every lesson applied that is certain enough."""
    try:
        return pace.apply_all(book, now).book
    except Refused:
        return book


def left_over(noise: float, seed: int) -> float:
    """Return which share of the error is left for one who is 40 % slower.

    It is the error of what can be known: how long the work takes on the average.
    """
    book, now = worked(demo_plan("harbour_tenders")[0], 1.4, noise, seed)
    was, left = errors(book, taught(book, now), 1.4)
    return left / was


def test_for_one_who_is_40_percent_slower_the_error_falls_by_half_or_more() -> None:
    assert left_over(0.0, 0) <= 0.5


def test_so_it_does_where_each_pass_takes_now_more_and_now_less() -> None:
    """Of people drawn at random: on the average for certain, and for nine of ten of them.

    For certain: half is more than three standard errors above the mean of these 24.
    """
    shares = [left_over(0.2, seed) for seed in range(24)]
    assert fmean(shares) + 3 * stdev(shares) / math.sqrt(len(shares)) <= 0.5
    assert sum(share <= 0.5 for share in shares) >= 0.9 * len(shares)


@pytest.mark.parametrize("noise", [0.0, 0.2])
def test_for_one_who_is_as_estimated_the_error_does_not_rise(noise: float) -> None:
    """The error against minutes as they come; a rise below a hundredth of it is none."""
    before, after = 0.0, 0.0
    for seed in range(6 if noise else 1):
        book, now = worked(demo_plan("harbour_tenders")[0], 1.0, noise, seed)
        was, left = errors(book, taught(book, now), 1.0, noise)
        before, after = before + was, after + left
    assert after <= 1.01 * before


def test_what_was_agreed_to_teaches_no_second_time() -> None:
    book, now = worked(demo_plan("harbour_tenders")[0], 1.4, 0.0, 0)
    line = learned_minutes(book)[0]
    edit = pace.apply_minutes(book, line.work.stage, line.work.tool, now)
    (agreed,) = edit.book.pace.learned
    assert (agreed.stage, agreed.tool) == line.work
    assert agreed.factor == pytest.approx(line.estimate.factor, abs=0.01)
    assert line.work not in [minute.work for minute in learned_minutes(edit.book)]
    with pytest.raises(Refused, match="no minutes"):
        pace.apply_minutes(edit.book, line.work.stage, line.work.tool, now)


def test_what_is_begun_keeps_its_minutes() -> None:
    book = small_book()
    begun = Logged(
        model=CART,
        step="prime",
        start=START,
        end=START + timedelta(minutes=20),
        minutes=20,
        planned=10,
    )
    book = log_entries.written(book, PROJECT, begun)
    after = pace.apply_minutes(book, Stage.PRIME, Tool.AIRBRUSH, minute_of(START) + 20).book
    assert after.projects == book.projects


def test_a_step_never_outlasts_its_mix() -> None:
    """The sand mix lives 13 minutes; 12 planned minutes cannot become 14."""
    book = small_book()
    mixes = (replace(book.mixes[0], life_minutes=13),)
    prime = book.project(PROJECT).models[0].steps[0]
    based = replace(prime, stage=Stage.BASE)
    steps = (based, *book.project(PROJECT).models[0].steps[1:])
    model = replace(book.project(PROJECT).models[0], steps=steps)
    book = replace(book, mixes=mixes, projects=(replace(book.project(PROJECT), models=(model,)),))
    slow = Logged(
        model=CART,
        step="prime",
        start=START,
        end=START + timedelta(minutes=20),
        minutes=20,
        planned=10,
    )
    book = log_entries.written(book, PROJECT, slow)
    after = pace.apply_minutes(book, Stage.BASE, Tool.AIRBRUSH, minute_of(START) + 20).book
    assert after.project(PROJECT).models[0].steps[1].minutes == Minutes(fixed=12)


# --- drying -----------------------------------------------------------------------------------


def test_a_room_that_dries_half_again_as_slowly_is_learned_from_looks() -> None:
    """Films really take 1.5 times as long; somebody looks at each a few times."""
    book = small_book()
    cure = Cure(book.room, ZONE)
    coating = book.coating("grey primer")
    fact = Logged(model=CART, step="prime", start=START, end=START + timedelta(minutes=10))
    book = log_entries.written(book, PROJECT, fact)
    laid = minute_of(START) + 10
    looks = []
    for state in (State.SET_TO_TOUCH, State.TACK_FREE, State.DRY_TO_RECOAT, State.DRY_THROUGH):
        film = Film(coating, coating.dry_film_um, "", laid, slowness=1.5)
        ready = cure.ready_at(film, state, Band.NOMINAL)
        assert ready is not None
        for share in (0.8, 0.95, 1.1, 1.3):
            at = laid + round((ready - laid) * share)
            looks.append(
                Observed(
                    model=CART,
                    step="prime",
                    at=moment_of(at, ZONE),
                    state=state,
                    reached=at >= ready,
                )
            )
    book = replace(book, projects=(replace(book.project(PROJECT), observed=tuple(looks)),))
    now = laid + 20_000
    (line,) = learned_drying(book, now)
    assert (line.coating, line.looks, line.now) == ("grey primer", 16, 1.0)
    assert 1.3 < line.estimate.factor < 1.6
    edit = pace.apply_drying(book, "grey primer", now)
    assert edit.book.coating("grey primer").slowness == round(line.estimate.factor, 2)
    again = learned_drying(edit.book, now)[0]
    assert again.estimate.factor == pytest.approx(line.estimate.factor)
    assert pace.learned(book, now).sure_drying == (line,)
    few = replace(book.project(PROJECT), observed=tuple(looks[:2]))
    assert pace.learned(replace(book, projects=(few,)), now).sure_drying == ()
    with pytest.raises(Refused, match="was looked at"):
        pace.apply_drying(book, "sand", now)


def test_a_lesson_is_one_edit_that_is_undone_as_one() -> None:
    book, now = worked(demo_plan("harbour_tenders")[0], 1.4, 0.0, 0)
    lesson = pace.learned(book, now)
    assert lesson.sure_minutes
    edit = pace.apply_all(book, now)
    assert edit.name == f"pace: {len(lesson.sure_minutes)} lessons applied"
    assert len(edit.book.pace.learned) == len(lesson.sure_minutes)
    with pytest.raises(Refused, match="nothing is certain enough"):
        pace.apply_all(small_book(), now)
    assert log_entries.entry_of(small_book(), key("prime")) is None
