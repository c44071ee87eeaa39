"""Every built-in sequence is sound on 1, 4 and 20 models, whatever options are chosen."""

from __future__ import annotations

from itertools import combinations, product

import pytest
from option_cover import axes_of, every_choice, pairwise
from sequence_books import NOW, bare_book, bare_model, given_book

from app.service.planning import plan
from app.service.sequences import give_sequence
from app.service.starter_stock import COATINGS, MIXES
from planner.layers.findings import find
from planner.sequences.apply_to_model import steps_for
from planner.sequences.built_in import ALL
from planner.sequences.built_in.weathered import WEATHERED
from planner.sequences.chosen_options import complete
from planner.sequences.difference import difference, taken_over
from planner.values.model import Model, Part, Place
from planner.values.sequence import Sequence
from planner.values.step import Stage

NAMES = [one.name for one in ALL]
MOST_AT_ONCE = 30  # more combinations than these are covered by pairs


def by_name(name: str) -> Sequence:
    return ALL[NAMES.index(name)]


def models(count: int, area_cm2: float = 40.0) -> list[Model]:
    return [bare_model(f"truck {number}", area_cm2=area_cm2) for number in range(1, count + 1)]


def usual(sequence: Sequence) -> dict[str, str]:
    return {colour.name: colour.usual for colour in sequence.colours}


def one_piece() -> Model:
    return Model(name="lump", parts=(Part(name="all", places=(Place(name="all over"),)),))


def test_at_least_six_sequences_with_names_of_their_own() -> None:
    assert len(set(NAMES)) >= 6


def test_every_usual_colour_is_in_the_starter_stock() -> None:
    known = {coating.name for coating in COATINGS} | {mix.name for mix in MIXES}
    assert {colour.usual for sequence in ALL for colour in sequence.colours} <= known


@pytest.mark.parametrize("sequence", ALL, ids=NAMES)
def test_the_cover_holds_every_pair_of_options(sequence: Sequence) -> None:
    rows = [set(row) for row in pairwise(sequence)]
    for combination, other in combinations(axes_of(sequence), 2):
        for a, b in product(combination, other):
            absent = {x for x, name in ((1, a), (2, b)) if not name}
            fits = [
                row
                for row in rows
                if ((1 in absent and not row & set(combination)) or a in row)
                and ((2 in absent and not row & set(other)) or b in row)
            ]
            assert fits, (a, b)


@pytest.mark.parametrize("sequence", ALL, ids=NAMES)
def test_no_finding_with_any_combination_of_options(sequence: Sequence) -> None:
    every = every_choice(sequence)
    rows = every if len(every) <= MOST_AT_ONCE else [*pairwise(sequence), *every[::307]]
    for row in rows:
        found = find(given_book(sequence, row, bare_model(), one_piece()))
        assert not found, (row, found[0].message)


@pytest.mark.parametrize("count", [1, 4])
@pytest.mark.parametrize("sequence", ALL, ids=NAMES)
def test_a_verified_plan_with_every_pair_of_options(sequence: Sequence, count: int) -> None:
    for row in pairwise(sequence):
        book = given_book(sequence, row, *models(count))
        assert not find(book)
        planned = plan(book, NOW, quick=True)
        assert planned.verdict.accepted
        assert not planned.plan.unplaced, row


@pytest.mark.parametrize("sequence", ALL, ids=NAMES)
def test_a_verified_plan_for_twenty_models(sequence: Sequence) -> None:
    book = given_book(sequence, complete(sequence), *models(20))
    assert not find(book)
    planned = plan(book, NOW, quick=True)
    assert planned.verdict.accepted
    assert not planned.plan.unplaced


@pytest.mark.parametrize("sequence", ALL, ids=NAMES)
def test_nothing_is_offered_right_after_giving_and_giving_again_changes_nothing(
    sequence: Sequence,
) -> None:
    for row in pairwise(sequence):
        book = given_book(
            sequence, row, bare_model(), bare_model("large", area_cm2=900), one_piece()
        )
        assert difference(book, sequence) == ()
        names = [
            (project.name, model.name) for project in book.projects for model in project.models
        ]
        assert taken_over(book, sequence, names) == book


def test_a_large_model_is_washed_and_chipped_in_sections_that_can_be_done_in_time() -> None:
    row = ("brush", "chips by fluid", "oil wash")
    book = given_book(WEATHERED, row, *models(2, area_cm2=900))
    assert "oil-wash-2" in [step.id for step in book.projects[0].models[0].steps]
    planned = plan(book, NOW)
    assert planned.verdict.accepted
    assert not planned.plan.unplaced


@pytest.mark.parametrize("sequence", ALL, ids=NAMES)
def test_nobody_without_an_airbrush_is_asked_for_one(sequence: Sequence) -> None:
    book = give_sequence(bare_book(airbrushes=0), "table", ["truck"], sequence.name).book
    assert book.projects[0].models[0].steps


def order(*options: str) -> list[str]:
    """Return what comes after what, sprayed, as ids without the tool."""
    steps = steps_for(WEATHERED, bare_model(), options, usual(WEATHERED))
    return [step.id.removesuffix("-airbrush") for step in steps]


def test_wash_before_or_after_the_decals_is_a_choice() -> None:
    # common practice, no source: practitioners are divided, so both orders must be there
    later = order("decals", "oil wash", "wash after decals")
    first = order("decals", "oil wash", "wash before decals")
    assert later.index("seal") < later.index("oil-wash")
    assert first.index("early-wash") < first.index("bed") < first.index("decals")


def test_chips_before_or_after_the_wash_is_a_choice() -> None:
    first = order("oil wash", "chips by sponge", "chips before wash")
    later = order("oil wash", "chips by sponge", "chips after wash")
    assert first.index("chips") < first.index("oil-wash")
    assert later.index("oil-wash-wipe") < later.index("late-chips")


def test_gloss_or_flat_below_the_wash_and_pigments_fixed_or_not_are_choices() -> None:
    assert "grip" in order("oil wash", "flat under the wash")
    assert "grip" not in order("oil wash", "gloss under the wash")
    assert "fix-pigments" in order("pigments", "pigments fixed")
    assert "fix-pigments" not in order("pigments", "pigments left loose")


def test_camouflage_lays_as_many_colours_as_it_says() -> None:
    def camouflage(option: str) -> int:
        steps = steps_for(WEATHERED, bare_model(), (option,), usual(WEATHERED))
        return 1 + sum(step.stage is Stage.CAMO for step in steps)

    counts = [camouflage(name) for name in ("one colour", "two colours", "three colours")]
    assert counts == [1, 2, 3]


def test_whitewash_is_worn_while_it_is_soft_and_lies_over_guarded_decals() -> None:
    sequence = by_name("winter whitewash")
    ids = [s.id for s in steps_for(sequence, bare_model(), None, usual(sequence))]
    guarded = ["decals", "seal-airbrush", "chipping-fluid", "white-airbrush", "wear"]
    assert [name for name in ids if name in guarded] == guarded
