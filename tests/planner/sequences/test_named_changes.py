"""Named changes over every built-in order: sound, planned, and taken out again without a trace."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import combinations

import pytest
from option_cover import Row, pairwise
from sequence_books import NOW, bare_book, bare_model

from app.service.build_edits.models import bare_model as model_of_kind
from app.service.planning import plan
from app.service.starter_stock import with_coatings
from planner.layers.findings import find
from planner.sequences.apply_to_book import give
from planner.sequences.apply_to_model import resolved
from planner.sequences.built_in import ALL
from planner.sequences.chosen_options import complete
from planner.sequences.named_changes import changed, offered, with_change
from planner.sequences.order_steps import steps_of
from planner.values.book import Book
from planner.values.model import Model, ModelKind, NamedChange
from planner.values.refusal import Refused
from planner.values.sequence import Sequence
from planner.values.step import Role, Stage, Tool

NAMES = [one.name for one in ALL]
every_sequence = pytest.mark.parametrize("sequence", ALL, ids=NAMES)
Changes = tuple[NamedChange, ...]


def tracked() -> Model:
    return model_of_kind("tracked", "1:72", kind=ModelKind.TRACKED, holder="handle")


def given(sequence: Sequence, row: Row, changes: Changes, *models: Model) -> Book:
    """Return a book of models, else of two unlike ones, with a changed sequence."""
    order, _ = changed(sequence, row, changes)
    chosen = models or (bare_model(), tracked())
    book = with_coatings(bare_book(*chosen), (colour.usual for colour in order.colours))
    names = [model.name for model in chosen]
    return give(book, "table", names, sequence, row, {}, changes)


def singly(sequence: Sequence) -> Iterator[tuple[Row, NamedChange]]:
    for row in pairwise(sequence):
        for change in offered(sequence, row, ()):
            yield row, change


@every_sequence
def test_no_finding_with_any_change_of_any_pair_of_options(sequence: Sequence) -> None:
    unlike = (bare_model(), tracked())
    for number, (row, change) in enumerate(singly(sequence)):
        found = find(given(sequence, row, (change,), unlike[number % 2]))
        assert not found, (row, change, found[0].message)


@every_sequence
def test_two_changes_are_sound_together_and_hold_in_either_order(sequence: Sequence) -> None:
    row = complete(sequence)
    for first, second in combinations(NamedChange, 2):
        try:
            both = with_change(sequence, row, with_change(sequence, row, (), first), second)
        except Refused:
            continue
        book = given(sequence, row, both)
        assert not find(book), both
        other = given(sequence, row, both[::-1])
        assert [m.steps for m in other.projects[0].models] == [
            m.steps for m in book.projects[0].models
        ]


@every_sequence
def test_a_verified_plan_with_every_change(sequence: Sequence) -> None:
    row = complete(sequence)
    for change in offered(sequence, row, ()):
        planned = plan(given(sequence, row, (change,)), NOW, quick=True)
        assert planned.verdict.accepted, change
        assert not planned.plan.unplaced, change


def order(sequence: Sequence, row: Row | None, *changes: NamedChange) -> list[tuple[Stage, str]]:

    steps = steps_of(resolved(*changed(sequence, row, changes)))
    return [
        (step.stage, step.applications[0].coating if step.applications else "") for step in steps
    ]


def of(sequence: Sequence, row: Row | None, *changes: NamedChange) -> list[Stage]:
    return [stage for stage, _ in order(sequence, row, *changes)]


# What belongs to each change: common practice, no source.


@every_sequence
def test_without_decals_their_bed_pressing_and_seal_go_too(sequence: Sequence) -> None:
    for row, change in singly(sequence):
        if change is not NamedChange.NO_DECALS:
            continue
        stages = of(sequence, row, change)
        assert not {Stage.DECAL, Stage.PRESS} & set(stages)

        left = steps_of(resolved(*changed(sequence, row, (change,))))
        beds = [step for step in left if step.role in (Role.DECAL_BED, Role.SEAL)]
        if sequence.name != "winter whitewash":  # there the gloss guards the colours as well
            assert beds == []


@every_sequence
def test_chips_need_something_to_show_fluid_a_colour_over_it_and_rubbing(
    sequence: Sequence,
) -> None:
    for row, change in singly(sequence):
        if change is not NamedChange.CHIPPING:
            continue
        stages = of(sequence, row, change)
        fluid, rub = stages.index(Stage.CHIP_FLUID), stages.index(Stage.CHIP_RUB)
        assert Stage.BASE in stages[:fluid], "grey primer would be what shows"
        assert {Stage.BASE, Stage.CAMO} & set(stages[fluid:rub])


def test_with_a_camouflage_the_base_shows_through_and_no_undercoat_is_laid() -> None:
    whitewash = ALL[NAMES.index("winter whitewash")]
    told = order(whitewash, ("brush", "second colour below"), NamedChange.CHIPPING)
    colours = [coating for stage, coating in told if stage in (Stage.BASE, Stage.CAMO)]
    assert colours == ["base colour", "second colour"]
    laid = [(stage, coating) for stage, coating in told if coating]  # tape may come off between
    at = [stage for stage, _ in laid].index(Stage.CHIP_FLUID)
    assert laid[at - 1][1] == "base colour"
    assert laid[at + 1][1] == "second colour"


def test_a_colour_more_comes_before_what_belongs_over_the_colours() -> None:
    quick = ALL[NAMES.index("quick table-top")]
    told = order(quick, None, NamedChange.COLOUR)
    at = told.index((Stage.CAMO, "further colour"))
    assert told[at - 1] == (Stage.BASE, "base colour")


def test_three_colours_become_four() -> None:
    weathered = ALL[NAMES.index("full weathered vehicle")]
    stages = of(weathered, ("three colours",), NamedChange.COLOUR)
    assert stages.count(Stage.CAMO) == 3  # over the base


def test_with_a_brush_nothing_is_sprayed() -> None:
    for sequence in ALL:
        row = tuple(o.name for o in sequence.options if o.name == "airbrush")

        steps = steps_of(resolved(*changed(sequence, row, (NamedChange.BRUSH,))))
        assert Tool.AIRBRUSH not in {step.tool for step in steps}


def test_without_a_wash_no_barrier_is_left_for_it() -> None:
    figure = ALL[NAMES.index("figure")]
    stages = of(figure, ("oil shading",), NamedChange.NO_WASH)
    assert not {Stage.OIL_WASH, Stage.WIPE, Stage.WASH, Stage.VARNISH} & set(stages)


def test_what_speaks_against_a_change_goes_when_it_comes() -> None:
    weathered = ALL[NAMES.index("full weathered vehicle")]
    row = complete(weathered)  # with decals
    without = with_change(weathered, row, (), NamedChange.NO_DECALS)
    assert with_change(weathered, row, without, NamedChange.DECALS) == ()
    figure = ALL[NAMES.index("figure")]
    changes = with_change(figure, None, (), NamedChange.DECALS)
    assert with_change(figure, None, changes, NamedChange.NO_DECALS) == ()


@pytest.mark.parametrize(
    ("name", "change", "why"),
    [
        ("figure", NamedChange.CHIPPING, "no base colour"),
        ("figure", NamedChange.NO_DECALS, "no decals"),
        ("scenery piece", NamedChange.NO_CHIPPING, "nothing of it is chipped"),
        ("full weathered vehicle", NamedChange.DECALS, "has decals already"),
    ],
)
def test_what_does_not_fit_is_refused_by_name(name: str, change: NamedChange, why: str) -> None:
    with pytest.raises(Refused, match=why):
        with_change(ALL[NAMES.index(name)], None, (), change)
