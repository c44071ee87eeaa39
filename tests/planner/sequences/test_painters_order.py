"""What painters do in a finishing order, and in which place: common practice, no source."""

from __future__ import annotations

from dataclasses import replace

import pytest
from sequence_books import NOW, ZONE, bare_model, given_book

from app.service.starter_stock import COATINGS, MIXES, THINNED
from planner.bench import calendar_of
from planner.cure import Cure
from planner.layers.findings import find
from planner.layers.finishing import is_last_coat
from planner.passes import expand
from planner.schedule.greedy import plan_book
from planner.schedule.judge import judge
from planner.sequences.apply_to_model import steps_for
from planner.sequences.built_in import ALL
from planner.sequences.built_in.single_colour import SINGLE_COLOUR
from planner.sequences.built_in.weathered import WEATHERED
from planner.sequences.built_in.whitewash import WHITEWASH
from planner.sequences.chosen_options import complete
from planner.values.coating import THINNED_BY, Coating, Family, Finish
from planner.values.mix import Mix
from planner.values.model import Model, Place
from planner.values.sequence import Sequence
from planner.values.step import CLEAR_STAGES, Stage, Step, Tool

F = Family
BOTTLES = {coating.name: coating for coating in COATINGS}
BOTTLES |= {mix.name: BOTTLES[mix.portions[0].coating] for mix in MIXES}


def given(sequence: Sequence, *options: str) -> tuple[Step, ...]:
    """Return the steps of a sequence on one lorry, with some options beside the usual ones."""
    colours = {colour.name: colour.usual for colour in sequence.colours}
    return steps_for(sequence, bare_model("lorry"), _with(sequence, options), colours)


def _with(sequence: Sequence, options: tuple[str, ...]) -> tuple[str, ...]:
    """Return the usual options and some more; an option out of a choice takes the usual's place."""
    asked = [option for option in sequence.options if option.name in options]
    choices = {one.choice for one in asked if one.choice}
    kept = [
        option.name
        for option in sequence.options
        if option.usual and option.choice not in choices and option.name not in options
    ]
    return complete(sequence, [*kept, *options])


def at(steps: tuple[Step, ...], *stages: Stage) -> list[int]:
    """Return where steps of these stages stand."""
    return [number for number, step in enumerate(steps) if step.stage in stages]


def laid(step: Step) -> Coating:
    """Return the coating of a step."""
    return BOTTLES[step.applications[0].coating]


@pytest.mark.parametrize("sequence", ALL, ids=lambda one: one.name)
def test_parts_are_washed_before_anything_is_laid(sequence: Sequence) -> None:
    steps = given(sequence, "wash first")
    assert steps[0].stage in (Stage.CLEAN, Stage.MASK)
    washed = at(steps, Stage.CLEAN)[0]
    primed = steps[at(steps, Stage.PRIME)[0]]
    assert washed < at(steps, Stage.PRIME)[0]
    assert any(gate.after == steps[washed].id for gate in primed.gates)


def test_seams_are_looked_over_touched_up_and_looked_over_again() -> None:
    steps = given(WEATHERED, "look over the primer")
    first = [step.stage for step in steps[:4]]
    assert first == [Stage.PRIME, Stage.CLEAN, Stage.PRIME, Stage.CLEAN]


def test_metal_edges_come_after_the_matte() -> None:
    steps = given(WEATHERED, "metal edges")
    (shine,) = (n for n, s in enumerate(steps) if s.applications and laid(s).family is F.GRAPHITE)
    matte = [n for n, s in enumerate(steps) if s.applications and is_last_coat(s, laid(s))]
    assert max(matte) < shine


@pytest.mark.parametrize("colours", ["two colours", "three colours"])
def test_no_colour_is_laid_over_finished_chips(colours: str) -> None:
    steps = given(WEATHERED, colours, "chips by fluid")
    (rub,) = at(steps, Stage.CHIP_RUB)
    assert max(at(steps, Stage.BASE, Stage.CAMO)) < rub < min(at(steps, *CLEAR_STAGES))
    assert "rinse" in steps[rub].title


def test_a_gloss_finish_takes_no_layer_without_need() -> None:
    """One gloss clear is the finish where neither decals nor a wash lie below it."""
    single = next(one for one in ALL if one.name == "single-colour vehicle")
    colours = {colour.name: colour.usual for colour in single.colours}
    steps = steps_for(single, bare_model("lorry"), ("gloss finish",), colours)
    clears = [s for s in steps if s.stage in CLEAR_STAGES and laid(s).finish is Finish.GLOSS]
    assert len(clears) == 1


def test_the_thinner_is_tried_before_an_oil_wash() -> None:
    (wash,) = (step for step in given(WEATHERED) if step.stage is Stage.OIL_WASH)
    assert "Try the thinner" in wash.title


def test_a_spray_can_holds_less_paint_than_a_bottle() -> None:
    """Most of a can is propellant and thinner; the fraction is assumed."""
    cans = [coating for coating in COATINGS if "in a can" in coating.name]
    assert cans
    assert all(can.solids <= 0.1 for can in cans)
    brushed = [s for s in given(WEATHERED) if s.tool is Tool.BRUSH and s.applications]
    assert all("in a can" not in s.applications[0].coating for s in brushed)


def glazed() -> Model:
    """Return a lorry whose body has panes of clear plastic."""
    model = bare_model("lorry")
    body, *others = model.parts
    glazing = Place(name="glazing", area_cm2=3)
    return replace(model, parts=(replace(body, places=(*body.places, glazing)), *others))


@pytest.mark.parametrize("options", [(), ("three colours", "chips by fluid"), ("brush",)])
@pytest.mark.parametrize("sequence", [WEATHERED, WHITEWASH, SINGLE_COLOUR], ids=lambda s: s.name)
def test_panes_are_masked_while_paint_flies_and_bear_no_film(
    sequence: Sequence, options: tuple[str, ...]
) -> None:
    known = {option.name for option in sequence.options}
    chosen = _with(sequence, tuple(option for option in options if option in known))
    book = given_book(sequence, chosen, glazed())
    # three sessions a week, so that a mask of seven days has to be thought of
    scarce = replace(book.bench_time.stretches[0], rule="FREQ=WEEKLY;BYDAY=TU,TH,SA")
    book = replace(book, bench_time=replace(book.bench_time, stretches=(scarce,)))
    (model,) = book.projects[0].models
    pane = "body/glazing"
    passes = expand(book.projects[0], model)
    assert not [one.key for one in passes if pane in dict(one.films)]
    assert "clear plastic" not in " ".join(one.message for one in find(book))
    plan = plan_book(book, NOW, cure=Cure(book.room, ZONE), calendar=calendar_of(book.bench_time))
    assert plan.unplaced == ()
    assert judge(book, plan).accepted
    steps = model.steps
    covered = False
    for step in steps:
        covered = step.stage is Stage.MASK or (covered and step.stage is not Stage.UNMASK)
        flies = step.stage in (Stage.PRIME, Stage.BASE, Stage.MATTE) and step.applications
        assert covered or not flies, step.id


def test_without_panes_nothing_is_masked() -> None:
    for sequence in (WEATHERED, WHITEWASH, SINGLE_COLOUR):
        assert at(given(sequence), Stage.MASK, Stage.UNMASK) == []


@pytest.mark.parametrize("mix", THINNED, ids=lambda mix: mix.name)
def test_what_is_ready_for_the_airbrush_is_thinned_with_what_thins_it(mix: Mix) -> None:
    paint, thinner = (
        next(each for each in COATINGS if each.name == portion.coating) for portion in mix.portions
    )
    assert THINNED_BY[paint.family] is thinner.family
    assert mix.portions[0].parts > mix.portions[1].parts  # milk, not a wash
    assert mix.name.endswith(f"{mix.portions[0].parts:g} : {mix.portions[1].parts:g}")
