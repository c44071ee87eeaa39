"""Facts kept by one rule, and steps half done: coats, order and gates stay what they were."""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime, timedelta

import pytest
from drawn_examples import drawn
from hypothesis import given
from hypothesis import strategies as st
from small_book import CART, PROJECT, ZONE, key, small_book
from strategies import books

from planner.evening import log_entries
from planner.evening.split_steps import parted, places_of
from planner.graph.network import check_acyclic
from planner.layers.findings import find
from planner.passes import WHOLE_UNIT, expand
from planner.values.book import Book
from planner.values.plan import PassKey
from planner.values.project import Logged, Pin
from planner.values.refusal import Refused
from planner.values.step import Bound

START = datetime(2031, 3, 6, 19, 30, tzinfo=ZONE)


def fact(step: str, coat: int = 1, minutes: int | None = 10) -> Logged:
    end = None if minutes is None else START + timedelta(minutes=minutes)
    return Logged(model=CART, step=step, coat=coat, start=START, end=end)


def films(book: Book, wanted: PassKey) -> dict[str, list[str]]:
    """Return what is laid on each place of a model, in working order."""
    project = book.project(wanted.project)
    found: dict[str, list[str]] = {}
    for pass_ in expand(project, project.model(wanted.model)):
        for place, coating in pass_.films:
            found.setdefault(place, []).append(coating)
    return found


# --- facts ------------------------------------------------------------------------------------


def test_what_is_under_way_may_be_ended_but_what_is_done_stays() -> None:
    begun = log_entries.written(small_book(), PROJECT, fact("prime", minutes=None))
    done = log_entries.written(begun, PROJECT, fact("prime"))
    assert done.project(PROJECT).log == (fact("prime"),)
    with pytest.raises(Refused, match="done already"):
        log_entries.written(done, PROJECT, fact("prime", minutes=20))
    corrected = log_entries.corrected(done, PROJECT, fact("prime", minutes=20))
    assert corrected.project(PROJECT).log == (fact("prime", minutes=20),)
    assert log_entries.without(corrected, key("prime")) == small_book()


def test_a_correction_needs_something_to_correct() -> None:
    with pytest.raises(Refused, match="nothing is logged"):
        log_entries.corrected(small_book(), PROJECT, fact("prime"))
    with pytest.raises(Refused, match="nothing is logged"):
        log_entries.without(small_book(), key("prime"))
    with pytest.raises(Refused, match='did you mean "prime"'):
        log_entries.step_of(small_book(), key("prme"))
    with pytest.raises(Refused, match="has 1"):
        log_entries.step_of(small_book(), key("prime", 2))


# --- parting ----------------------------------------------------------------------------------


def test_three_places_of_five_are_a_step_and_the_rest_is_another() -> None:
    made = parted(small_book(), key("sand"), ("tub/bed",))
    steps = {step.id: step for step in made.book.project(PROJECT).model(CART).steps}
    assert list(steps) == ["prime", "sand", "sand-rest", "gloss", "wash", "wipe"]
    assert steps["sand"].applications[0].places == ("tub/bed",)
    assert steps["sand-rest"].applications[0].places == ("tub/sides",)
    # Twelve minutes for two places are six for each.
    assert (steps["sand"].minutes.fixed, steps["sand-rest"].minutes.fixed) == (6, 6)


def wide_wash() -> Book:
    """Return the small book with the wash and its wiping on the whole tub."""
    book = small_book()
    model = book.project(PROJECT).model(CART)
    *others, wash, wipe = model.steps
    wash = replace(wash, applications=(replace(wash.applications[0], places=("tub",)),))
    wipe = replace(wipe, touches=("tub",))
    model = replace(model, steps=(*others, wash, wipe))
    return replace(book, projects=(replace(book.project(PROJECT), models=(model,)),))


def test_wiping_back_is_parted_with_the_wash_that_it_must_follow() -> None:
    book = wide_wash()
    made = parted(book, key("wash"), ("tub/bed",))
    steps = {step.id: step for step in made.book.project(PROJECT).model(CART).steps}
    assert list(steps)[-4:] == ["wash", "wash-rest", "wipe", "wipe-rest"]
    for wiping, washing in (("wipe", "wash"), ("wipe-rest", "wash-rest")):
        (gate,) = steps[wiping].gates
        assert gate.after == washing
        assert gate.closing is Bound.END
        assert gate.windows == book.project(PROJECT).model(CART).steps[-1].gates[0].windows
        (washed,) = steps[washing].applications[0].places
        assert steps[wiping].touches == (washed,)


def test_what_waits_for_a_parted_step_waits_for_both_halves() -> None:
    book = wide_wash()
    model = book.project(PROJECT).model(CART)
    late = replace(model.steps[2], id="late", after=("sand",))
    model = replace(model, steps=(*model.steps, late))
    book = replace(book, projects=(replace(book.project(PROJECT), models=(model,)),))
    made = parted(book, key("sand"), ("tub/bed",))
    assert made.book.project(PROJECT).model(CART).steps[-1].after == ("sand", "sand-rest")


def test_the_second_coat_half_done_leaves_the_other_half_and_the_third() -> None:
    book = small_book()
    model = book.project(PROJECT).model(CART)
    thrice = replace(model.steps[1].applications[0], coats=3)
    steps = (model.steps[0], replace(model.steps[1], applications=(thrice,)), *model.steps[2:])
    model = replace(model, steps=steps)
    pins = (
        Pin(model=CART, step="sand", coat=1, on=START.date()),
        Pin(model=CART, step="sand", coat=3, on=START.date()),
    )
    book = replace(book, projects=(replace(book.project(PROJECT), models=(model,), pins=pins),))
    made = parted(book, key("sand", 2), ("tub/bed",))
    by_id = {step.id: step for step in made.book.project(PROJECT).model(CART).steps}
    assert {
        application.places: application.coats for application in by_id["sand"].applications
    } == {
        ("tub/bed",): 2,
        ("tub/sides",): 1,
    }
    assert {
        application.places: application.coats for application in by_id["sand-rest"].applications
    } == {
        ("tub/sides",): 2,
        ("tub/bed",): 1,
    }
    kept, moved = made.book.project(PROJECT).pins
    assert (kept.step, kept.coat, moved.step, moved.coat) == ("sand", 1, "sand-rest", 2)


@pytest.mark.parametrize(
    ("step", "done", "why"),
    [
        ("sand", (), "none of it is done"),
        ("sand", ("tub",), "all of it is done"),
        ("wash", ("tub/sides",), "gets nothing"),
        ("sand", ("roof",), "no place"),
    ],
)
def test_what_is_no_part_of_it_is_refused(step: str, done: tuple[str, ...], why: str) -> None:
    with pytest.raises(Refused, match=why):
        parted(small_book(), key(step), done)


@drawn(40)
@given(book=books(most_models=2, most_blocks=6), data=st.data())
def test_parting_keeps_coats_order_and_soundness(book: Book, data: st.DataObject) -> None:
    project = data.draw(st.sampled_from(book.projects))
    model = data.draw(st.sampled_from(project.models))
    choices = [
        (step, coat)
        for step in model.steps
        if step.stage not in WHOLE_UNIT
        for coat in range(1, step.coats + 1)
        if len(places_of(model, step, coat)) > 1
    ]
    if not choices:
        return
    step, coat = data.draw(st.sampled_from(choices))
    every = places_of(model, step, coat)
    done = data.draw(st.lists(st.sampled_from(every), min_size=1, unique=True))
    if coat == step.coats and set(done) == set(every):
        return
    this = PassKey(project.name, model.name, step.id, coat)
    made = parted(book, this, done)
    check_acyclic(made.book)
    assert films(made.book, this) == films(book, this)
    after = made.book.project(project.name).model(model.name)
    again = {step.id: step for step in after.steps}
    here = set(places_of(after, again[step.id], coat))
    assert here == set(done)
    assert step.id in again
    assert set(again) >= {step.id for step in model.steps}
    before = {one.rule for one in find(book)}
    assert {one.rule for one in find(made.book)} <= before
