"""What can be done over again waits for the likely film, what cannot for the slowest."""

from __future__ import annotations

from dataclasses import replace

import pytest
from coat_books import book_of, coat, work
from judge_cases.making import NOW, book, paint

from planner.cure import Band, Cure, Film, film_um
from planner.graph.gates import gates_of
from planner.layers.care import care_of
from planner.schedule.greedy import plan_book
from planner.schedule.judge import judge
from planner.values.coating import Coating, Family, Finish, State
from planner.values.moment import zone_named
from planner.values.step import Role, Stage
from planner.values.wishes import Care, Preferences

PRIME = coat(Stage.PRIME, "grey primer", name="prime")
ACRYLIC = Coating(name="below", family=Family.WATERBORNE_ACRYLIC)
LACQUER = Coating(name="strong", family=Family.SOLVENT_LACQUER, finish=Finish.GLOSS)
OIL = Coating(name="oil", family=Family.ARTISTS_OIL)


@pytest.mark.parametrize(
    ("step", "laid", "below", "care"),
    [
        (coat(Stage.BASE, "acrylic"), ACRYLIC, ACRYLIC, Care.COAT),
        (coat(Stage.OIL_WASH, "oil"), OIL, ACRYLIC, Care.WASH),
        (
            coat(Stage.DECAL, "decal sheet"),
            replace(ACRYLIC, family=Family.DECAL),
            ACRYLIC,
            Care.DECAL,
        ),
        (coat(Stage.VARNISH, "gloss clear"), ACRYLIC, ACRYLIC, Care.CLEAR),
        (coat(Stage.VARNISH, "gloss clear", role=Role.FINAL), ACRYLIC, ACRYLIC, Care.LAST),
        (coat(Stage.MATTE, "matte clear"), ACRYLIC, ACRYLIC, Care.LAST),
        (coat(Stage.BASE, "lacquer"), LACQUER, ACRYLIC, Care.HARD),
        (coat(Stage.BASE, "lacquer"), LACQUER, LACQUER, Care.COAT),
        (coat(Stage.VARNISH, "gloss lacquer"), LACQUER, LACQUER, Care.HARD),
        (work(Stage.MASK), None, ACRYLIC, Care.TAPE),
    ],
)
def test_work_counts_by_what_a_mistake_costs(step, laid, below, care):
    """Tape lifts, hard coats crack, the last coat shuts all in: common practice, no source."""
    assert care_of(step, laid, below) is care


def waiting(likely: tuple[Care, ...], *steps):
    of = replace(book_of(PRIME, *steps), preferences=Preferences(likely=likely))
    gates = gates_of(of, of.projects[0], of.projects[0].models[0])
    return {
        (gate.after.step, gate.before.step): gate.likely
        for gate in gates
        if gate.windows[0].opens is not None
    }


def test_a_person_may_set_each():
    steps = (coat(Stage.BASE, "acrylic", name="base"), work(Stage.MASK, name="mask"))
    usual = waiting(Preferences().likely, *steps)
    assert usual["base", PRIME.id]
    assert not usual["mask", "base"]
    assert not any(waiting((), *steps).values())
    assert waiting((Care.TAPE,), *steps)["mask", "base"]


def test_a_sure_wait_is_not_covered_by_a_likely_one_before_it():
    steps = (
        coat(Stage.OIL_WASH, "oil", name="wash"),
        coat(Stage.VARNISH, "gloss clear", name="seal"),
        coat(Stage.MATTE, "matte clear", name="matte"),
    )
    found = waiting((Care.COAT, Care.WASH, Care.CLEAR), *steps)
    assert found["seal", "wash"]
    assert not found["matte", "wash"]


def test_plan_and_judge_take_the_likely_minute():
    of = book(
        paint("base", "hull/deck"), paint("grime", "hull/deck", coat="oil", stage=Stage.OIL_WASH)
    )
    soon = replace(of, preferences=Preferences())
    cure = Cure(of.room, zone_named(of.bench_time.zone))
    starts = {}
    for name, one in (("surely", of), ("likely", soon)):
        plan = plan_book(one, NOW)
        assert judge(one, plan).accepted
        starts[name] = plan.placement(next(p.key for p in plan.placements if p.key.step == "grime"))
    base = next(p for p in plan_book(of, NOW).placements if p.key.step == "base")
    step = of.projects[0].models[0].steps[0]
    film = Film(of.coating("sand"), film_um(step, of.coating("sand")), "", base.end)
    assert starts["likely"].start == cure.ready_at(film, State.SOLVENT_SAFE, Band.NOMINAL)
    assert starts["surely"].start == cure.ready_at(film, State.SOLVENT_SAFE, Band.LATE)
    early = plan_book(soon, NOW)
    found = judge(of, replace(early, digest="")).violations
    assert {item.definition for item in found if "grime" in item.about} <= {4, 6}
    assert found
