"""Models that are begun already: what counts as laid, and when."""

from __future__ import annotations

import pytest
from sequence_books import NOW, ZONE, bare_book, bare_model, given_book

from app.service.planning import plan
from planner.evening.laid_before import done_by_then, laid_before
from planner.evening.missed_closings import missed
from planner.layers.findings import find
from planner.sequences.built_in import ALL
from planner.sequences.chosen_options import complete
from planner.values.book import Book
from planner.values.moment import minute_of
from planner.values.project import StageReached
from planner.values.refusal import Refused
from planner.values.step import Stage

WEEK_AGO = NOW - 7 * 1440
HAS = {
    StageReached.PRIMED: {Stage.PRIME},
    StageReached.BASE: {Stage.BASE},
    StageReached.COLOURS: {Stage.BASE, Stage.DETAIL},
    StageReached.DECALS: {Stage.DECAL},
}


def given(name: str, *more: str) -> Book:
    sequence = next(one for one in ALL if one.name == name)
    return given_book(sequence, complete(sequence, more or None), bare_model())


def stages(book: Book, reached: StageReached) -> list[Stage]:
    return [step.stage for step in done_by_then(book.projects[0].models[0], reached)]


def test_what_lies_behind_a_model_by_how_far_it_is() -> None:
    book = given("full weathered vehicle")
    assert stages(book, StageReached.NOTHING) == []
    assert stages(book, StageReached.PRIMED) == [Stage.PRIME]
    assert stages(book, StageReached.BASE) == [Stage.PRIME, Stage.BASE]
    assert stages(book, StageReached.COLOURS) == [Stage.PRIME, Stage.BASE, Stage.DETAIL]
    decals = stages(book, StageReached.DECALS)
    assert decals[-2:] == [Stage.DECAL, Stage.PRESS]
    assert Stage.VARNISH in decals
    assert Stage.OIL_WASH not in decals


def test_a_coat_over_chipping_fluid_counts_with_its_rubbing() -> None:
    book = given("full weathered vehicle", "chips by fluid", "one colour")
    assert stages(book, StageReached.BASE)[-2:] == [Stage.BASE, Stage.CHIP_RUB]


@pytest.mark.parametrize("sequence", ALL, ids=lambda one: one.name)
@pytest.mark.parametrize(
    "reached", [one for one in StageReached if one is not StageReached.NOTHING]
)
def test_the_plan_begins_in_the_middle_and_nothing_is_missed(sequence, reached) -> None:
    book = given_book(sequence, complete(sequence), bare_model(), bare_model("other"))
    model = book.projects[0].models[0]
    if not any(step.stage in HAS[reached] for step in model.steps):
        with pytest.raises(Refused, match=reached.value):
            done_by_then(model, reached)
        return
    behind = done_by_then(model, reached)
    book = laid_before(book, "table", "truck", reached, WEEK_AGO)
    log = book.projects[0].log
    assert {(fact.step, fact.coat) for fact in log} == {
        (step.id, coat) for step in behind for coat in range(1, step.coats + 1)
    }
    assert max(minute_of(fact.end) for fact in log if fact.end) == WEEK_AGO
    assert missed(book, NOW) == ()
    assert not find(book)
    planned = plan(book, NOW, quick=True)
    assert planned.verdict.accepted
    assert not planned.plan.unplaced
    ahead = {p.key.step for p in planned.plan.placements if p.key.model == "truck" and not p.logged}
    assert ahead == {step.id for step in model.steps} - {step.id for step in behind}


def test_films_count_as_laid_then() -> None:
    """By hand: the coat before the last is laid a day before, by its own minutes earlier."""
    book = laid_before(given("quick table-top"), "table", "truck", StageReached.BASE, WEEK_AGO)
    prime, base = book.projects[0].log
    steps = {step.id: step for step in book.projects[0].models[0].steps}
    assert base.end is not None
    assert prime.end is not None
    took = steps[base.step].minutes.of(3)
    assert minute_of(base.end) == WEEK_AGO
    assert minute_of(base.start) == WEEK_AGO - took
    assert minute_of(prime.end) == WEEK_AGO - took - 1440
    assert prime.minutes is None, "nobody knows how long it took; the pace learns nothing"
    assert base.start.utcoffset() == base.start.astimezone(ZONE).utcoffset()


def test_what_is_logged_stays() -> None:
    book = laid_before(given("quick table-top"), "table", "truck", StageReached.PRIMED, WEEK_AGO)
    known = book.projects[0].log[0]
    book = laid_before(book, "table", "truck", StageReached.BASE, NOW - 1440)
    assert book.projects[0].log[0] is known
    assert len(book.projects[0].log) == 2


def test_an_order_without_such_a_stage_is_refused_by_name() -> None:
    with pytest.raises(Refused, match="decals on"):
        laid_before(given("quick table-top"), "table", "truck", StageReached.DECALS, WEEK_AGO)
    book = bare_book()
    with pytest.raises(Refused, match="truck"):
        laid_before(book, "table", "truck", StageReached.PRIMED, WEEK_AGO)
