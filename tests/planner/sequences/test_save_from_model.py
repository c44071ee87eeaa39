"""Steps saved as a sequence and given back are the same steps."""

from __future__ import annotations

from dataclasses import replace

import pytest
from drawn_examples import drawn
from hypothesis import given
from sequence_books import bare_model
from strategies import books

from planner.passes import expand_model
from planner.sequences.apply_to_model import steps_for
from planner.sequences.references import normal
from planner.sequences.save_from_model import painted_cm2, sequence_from
from planner.values.book import Book
from planner.values.model import Model, Part, Place
from planner.values.refusal import Refused
from planner.values.sequence import EVERY
from planner.values.step import Application, Minutes, Stage, Step


@drawn(15)
@given(books(wished=True))
def test_saved_and_given_back_it_is_the_same(book: Book) -> None:
    for project in book.projects:
        for model in project.models:
            if not model.steps:
                continue
            saved = sequence_from(model, "ours")
            area = painted_cm2(model) or None
            back = steps_for(saved, model, None, {}, area_cm2=area)
            assert back == tuple(normal(model, step) for step in model.steps)
            again = replace(model, steps=back)
            for was, now in zip(expand_model("p", model), expand_model("p", again), strict=True):
                assert sorted(was.films) == sorted(now.films)
                assert set(was.places) == set(now.places)
                assert was.minutes == now.minutes


def test_what_covers_every_part_says_so_for_any_model() -> None:
    coat = Application(
        places=(
            "body/outside",
            "body/below",
            "wheels/outside",
            "wheels/below",
            "side panels/outside",
            "side panels/below",
        ),
        coating="sand",
    )
    one = Step(id="a", stage=Stage.BASE, applications=(coat,), minutes=Minutes(fixed=3))
    two = replace(one, id="b", applications=(replace(coat, places=("wheels/outside",)),))
    saved = sequence_from(replace(bare_model(), steps=(one, two)), "ours")
    assert [each.step.applications[0].places for each in saved.steps] == [
        (EVERY,),
        ("wheels/outside",),
    ]
    tub = Model(name="cart", parts=(Part(name="tub", places=(Place(name="all"),)),))
    (step,) = steps_for(saved, tub, None, {"sand": "green"})
    assert step.applications[0] == Application(places=("tub",), coating="green")


def test_a_model_without_steps_makes_no_sequence() -> None:
    with pytest.raises(Refused, match="no steps yet"):
        sequence_from(bare_model(), "ours")
