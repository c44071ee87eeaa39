"""What a sequence makes of a model, worked out by hand."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime

import pytest
from sequence_books import bare_book, bare_model

from planner.sequences.apply_to_book import give
from planner.sequences.apply_to_model import colours_needed, steps_for
from planner.sequences.chosen_options import choices_of, complete, without_airbrush
from planner.sequences.step_minutes import grown, growth
from planner.values.coating import Coating, Family, Mark, Window
from planner.values.model import Model, Part, Place
from planner.values.project import Logged, Pin
from planner.values.refusal import Refused
from planner.values.sequence import EVERY, Colour, Option, Sequence, SequenceStep
from planner.values.step import Application, Gate, Minutes, Stage, Step, Tool
from planner.values.wishes import Learned, Pace

FIVE = Minutes(fixed=1, per_part=4)
AT = datetime(2031, 3, 5, 18, 0, tzinfo=UTC)


def lay(
    id_: str, *places: str, colour: str = "main", stage: Stage = Stage.BASE, **rest: object
) -> Step:
    coat = Application(places=places or (EVERY,), coating=colour)
    return Step(id=id_, stage=stage, applications=(coat,), minutes=FIVE, **rest)  # type: ignore[arg-type]


def sequence(*steps: Step | SequenceStep, options: tuple[Option, ...] = ()) -> Sequence:
    written = tuple(
        step if isinstance(step, SequenceStep) else SequenceStep(step=step) for step in steps
    )
    colours = (Colour(name="main", usual="sand"), Colour(name="other"))
    return Sequence(name="ours", colours=colours, options=options, steps=written)


def made(
    sequence: Sequence, model: Model | None = None, *options: str, **rest: object
) -> tuple[Step, ...]:
    return steps_for(sequence, model or bare_model(), options, {"other": "green"}, **rest)  # type: ignore[arg-type]


def cart() -> Model:
    """A cart of one part with a deck and sides."""
    return Model(
        name="cart", parts=(Part(name="tub", places=(Place(name="deck"), Place(name="sides"))),)
    )


def coated(step: Step) -> tuple[str, ...]:
    return step.applications[0].places


def test_every_part_gets_the_coat_but_no_glue_faces() -> None:
    (step,) = made(sequence(lay("a")))
    assert coated(step) == (
        "body/outside",
        "body/below",
        "wheels/outside",
        "wheels/below",
        "side panels/outside",
        "side panels/below",
    )
    (step,) = made(sequence(lay("a")), cart())
    assert coated(step) == ("tub",)


def test_parts_by_name_by_place_and_all_but_some() -> None:
    steps = made(
        sequence(
            lay("a", "WHEELS/outside"),
            lay("b", "*/below"),
            lay("c", "* but wheels; body; */below"),
        )
    )
    assert [coated(step) for step in steps] == [
        ("wheels/outside",),
        ("body/below", "wheels/below", "side panels/below"),
        ("side panels/outside",),
    ]


def test_what_the_model_lacks_is_dropped_and_what_waited_waits_for_what_that_waited_for() -> None:
    steps = made(
        sequence(
            lay("a"),
            lay("b", "tracks", after=("a",)),
            lay("c", "tracks", after=("b",)),
            lay("d", "wheels", after=("c",)),
        )
    )
    assert [(step.id, step.after) for step in steps] == [("a", ()), ("d", ("a",))]


def test_a_gate_on_what_is_not_there_becomes_mere_order() -> None:
    soon = (Window(opens=Mark(minutes=10), closes=Mark(minutes=60)),)
    steps = made(
        sequence(
            lay("a"),
            lay("b", "tracks", gates=(Gate(after="a", windows=soon),)),
            lay("c", gates=(Gate(after="b", windows=soon),)),
        )
    )
    assert [(step.id, step.after, step.gates) for step in steps] == [
        ("a", (), ()),
        ("c", ("a",), ()),
    ]


def test_a_place_named_for_one_colour_is_left_out_of_every_for_another() -> None:
    two = Step(
        id="two",
        stage=Stage.BASE,
        applications=(
            Application(places=(EVERY,), coating="main"),
            Application(places=("tub/deck",), coating="other"),
        ),
        minutes=FIVE,
    )
    (step,) = made(sequence(two), cart())
    assert [(application.coating, application.places) for application in step.applications] == [
        ("sand", ("tub/sides",)),
        ("green", ("tub/deck",)),
    ]


def test_a_join_needs_two_parts_and_glues_faces_where_there_are_some() -> None:
    glue = Application(places=("*/glue faces",), coating="other")
    join = Step(id="join", stage=Stage.JOIN, applications=(glue,), touches=(EVERY,), minutes=FIVE)
    _, second = made(sequence(lay("a"), join))
    assert second.touches == ("body", "wheels", "side panels")
    assert coated(second) == ("body/glue faces", "wheels/glue faces", "side panels/glue faces")
    assert [step.id for step in made(sequence(lay("a"), join), cart())] == ["a"]


def test_parts_are_known_by_their_names_in_german() -> None:
    # Räder, Klebefläche: plain words of the hobby, from memory.
    places = (Place(name="außen"), Place(name="Klebeflächen"))
    wagon = Model(name="wagon", parts=(Part(name="Räder", places=places),))
    (step,) = made(sequence(lay("a", "wheels")), wagon)
    assert coated(step) == ("Räder/außen",)
    step = made(sequence(lay("a"), lay("b", "*/glue faces")), wagon)[1]
    assert coated(step) == ("Räder/Klebeflächen",)
    with pytest.raises(Refused, match="nothing of"):
        made(sequence(lay("a", "tracks")), wagon)


def test_options_bring_steps_in_and_take_them_out() -> None:
    both = (Option(name="chips"), Option(name="dust", usual=True))
    one = sequence(
        lay("a"),
        SequenceStep(step=lay("b"), needs=("chips", "dust")),
        SequenceStep(step=lay("c"), unless=("chips",)),
        options=both,
    )
    assert [step.id for step in made(one, None, "chips", "dust")] == ["a", "b"]
    assert [step.id for step in made(one, None, "chips")] == ["a"]
    assert complete(one) == ("dust",)


def test_a_choice_takes_one_of_its_options() -> None:
    options = (
        Option(name="one", choice="how many"),
        Option(name="two", choice="how many", usual=True),
        Option(name="oil", choice="wash"),
    )
    one = sequence(lay("a"), options=options)
    assert list(choices_of(one)) == ["how many", "wash"]
    assert complete(one) == ("two", "oil")
    assert complete(one, ["one"]) == ("one", "oil")
    with pytest.raises(Refused, match="exclude each other"):
        complete(one, ["one", "two"])
    with pytest.raises(Refused, match="no option is called"):
        complete(one, ["three"])


def test_without_an_airbrush_the_next_tool_is_taken() -> None:
    options = (
        Option(name="spray", choice="tool", usual=True),
        Option(name="hand", choice="tool"),
    )
    one = sequence(
        SequenceStep(step=lay("a", tool=Tool.AIRBRUSH), needs=("spray",)),
        SequenceStep(step=lay("b"), needs=("hand",)),
        options=options,
    )
    assert without_airbrush(one) == ("hand",)


def test_colours_are_asked_for_only_where_they_are_laid() -> None:
    one = sequence(lay("a"), lay("b", "tracks", colour="other"))
    assert [colour.name for colour in colours_needed(one, bare_model(), None)] == ["main"]
    assert steps_for(one, bare_model(), None, {})[0].applications[0].coating == "sand"
    with pytest.raises(Refused, match='"other" has no coating yet'):
        steps_for(sequence(lay("a", colour="other")), bare_model(), None, {})
    with pytest.raises(Refused, match="no colour is called"):
        steps_for(one, bare_model(), None, {"mane": "sand"})


def test_four_times_the_area_doubles_the_minutes_for_each_part() -> None:
    # by hand: the square root of 400 / 100 is 2; 1 + 4 min becomes 1 + 8 min
    assert growth(400, 100) == 2
    (step,) = made(sequence(lay("a")), None, area_cm2=400.0)
    assert step.minutes == Minutes(fixed=1, per_part=8)
    assert made(sequence(lay("a")))[0].minutes == FIVE


def test_the_learned_pace_scales_all_of_a_stage_and_tool() -> None:
    learned = Learned(stage=Stage.BASE, tool=Tool.BRUSH, factor=1.5, since=AT)
    base, wash = made(sequence(lay("a"), lay("b", stage=Stage.WASH)), pace=Pace(learned=(learned,)))
    assert base.minutes.of(3) == 20  # by hand: 1.5 · (1 + 3 · 4) min are 19.5, whole minutes
    assert wash.minutes == FIVE
    assert grown(Minutes(per_part=1), 0.25) == Minutes(per_part=1)


def test_more_than_an_hour_of_washing_and_wiping_goes_part_by_part() -> None:
    wash = lay("wash", stage=Stage.OIL_WASH)
    wipe = Step(id="wipe", stage=Stage.WIPE, touches=(EVERY,), minutes=FIVE)
    one = sequence(wash, wipe, lay("end", after=("wipe",)))
    # by hand: 1 + 3·4 min and 1 + 3·4 min are 26 min; four times as long each part, 98 min
    assert [step.id for step in made(one)] == ["wash", "wipe", "end"]
    steps = made(one, None, area_cm2=1600.0)
    assert [step.id for step in steps] == [
        *("wash", "wipe", "wash-2", "wipe-2", "wash-3", "wipe-3", "end")
    ]
    assert {place.partition("/")[0] for place in coated(steps[2])} == {"wheels"}
    assert steps[-1].after == ("wipe", "wipe-2", "wipe-3")


def test_nothing_that_fits_is_refused() -> None:
    with pytest.raises(Refused, match="nothing of"):
        made(sequence(lay("a", "tracks")))


SAND = Coating(name="sand", family=Family.WATERBORNE_ACRYLIC)


def test_giving_anew_keeps_what_is_in_the_logbook_as_it_was_begun() -> None:
    before = give(
        replace(bare_book(), coatings=(SAND,)), "table", ["truck"], sequence(lay("a"), lay("b"))
    )
    (project,) = before.projects
    done = Logged(model="truck", step="a", start=AT)
    pins = (Pin(model="truck", step="b", on=AT.date()), Pin(model="truck", step="a", on=AT.date()))
    logged = replace(before, projects=(replace(project, log=(done,), pins=pins),))
    longer = replace(lay("a"), minutes=Minutes(fixed=50), title="other")
    again = give(logged, "table", ["truck"], sequence(longer, lay("c")))
    (project,) = again.projects
    assert [step.id for step in project.models[0].steps] == ["a", "c"]
    assert project.models[0].steps[0] == before.projects[0].models[0].steps[0]
    assert project.log == (done,)
    assert [pin.step for pin in project.pins] == ["a"]


def test_giving_is_refused_by_name_where_a_logged_step_would_vanish() -> None:
    before = give(
        replace(bare_book(), coatings=(SAND,)), "table", ["truck"], sequence(lay("a"), lay("b"))
    )
    (project,) = before.projects
    done = Logged(model="truck", step="b", start=AT)
    logged = replace(before, projects=(replace(project, log=(done,)),))
    with pytest.raises(Refused, match='b of "truck" is in the logbook'):
        give(logged, "table", ["truck"], sequence(lay("a")))
