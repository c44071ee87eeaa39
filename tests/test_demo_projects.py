"""The demonstration projects read well, load strictly, and hold what they promise."""

from __future__ import annotations

from dataclasses import replace
from functools import cache
from importlib import resources

import pytest

from app.service import demos
from app.service.demos import first_evening
from app.service.findings import find
from planner.passes import expand
from planner.schedule.greedy import plan_book
from planner.schedule.judge import Verdict, judge
from planner.values.coating import Family
from planner.values.model import Model
from planner.values.plan import BenchKind, Plan
from planner.values.room import Location
from planner.values.step import Role, Stage, Step, Tool
from storage.exchange import Exchange, dump, load

FOLDER = resources.files("demo_projects")
NAMES = sorted(entry.name for entry in FOLDER.iterdir() if entry.name.endswith(".json"))
HARBOUR, LAMPLIGHTER, CLUB = "harbour_tenders", "lone_lamplighter", "club_day_batch"
# The nine stages of the bench card, in the trade's words: common practice, no source.
CARD = ["prime", "base", "camo", "wash", "varnish", "decal", "chip", "weather", "matte"]


@cache
def demo(name: str) -> Exchange:
    return load(FOLDER.joinpath(f"{name.removesuffix('.json')}.json").read_bytes())


def models(name: str) -> list[Model]:
    return [model for project in demo(name).book.projects for model in project.models]


def places(model: Model, step: Step) -> set[str]:
    return {place for reference in step.references() for place in model.places(reference)}


def test_there_are_at_least_three() -> None:
    assert len(NAMES) >= 3


@pytest.mark.parametrize("name", NAMES)
def test_it_says_that_it_is_invented_and_survives_a_round_trip(name: str) -> None:
    exchange = demo(name)
    assert exchange.note.startswith("Invented for demonstration")
    assert load(dump(exchange)) == exchange


@pytest.mark.parametrize("name", NAMES)
def test_every_coating_mix_and_part_is_used(name: str) -> None:
    book = demo(name).book
    laid = {a.coating for m in models(name) for s in m.steps for a in s.applications}
    assert laid >= {mix.name for mix in book.mixes}
    poured = {p.coating for mix in book.mixes for p in mix.portions}
    assert laid | poured >= {coating.name for coating in book.coatings}
    for model in models(name):
        worked = {place.partition("/")[0] for step in model.steps for place in places(model, step)}
        assert worked == {part.name for part in model.parts}


@pytest.mark.parametrize("name", NAMES)
def test_nothing_is_left_unpainted_but_the_faces_to_glue(name: str) -> None:
    for model in models(name):
        coated = {
            place
            for step in model.steps
            for application in step.applications
            for reference in application.places
            for place in model.places(reference)
        }
        every = {f"{part.name}/{place.name}" for part in model.parts for place in part.places}
        assert coated == every
        for step in model.steps:
            if step.stage is Stage.JOIN and not step.scraped:
                others = [s for s in model.steps if s is not step]
                glued = places(model, step)
                assert not any(glued & places(model, s) for s in others if s.applications)


@pytest.mark.parametrize("name", NAMES)
def test_the_order_of_coats_is_sound(name: str) -> None:
    """Gloss below decals, a seal over them, sealed before oil, matte last.

    Source: TRADE order "gloss before decals, gloss again over them, gloss
    before an oil wash, matte last" - common practice, no source.
    """
    for model in models(name):
        for part in model.parts:
            for place in part.places:
                spot = f"{part.name}/{place.name}"
                stack = [s for s in model.steps if s.applications and spot in places(model, s)]
                above_each = [*stack[1:], None]
                for below, step, above in zip([None, *stack[:-1]], stack, above_each, strict=True):
                    if step.stage is Stage.DECAL:
                        assert below is not None
                        assert below.role is Role.DECAL_BED
                        assert above is not None
                        assert above.role is Role.SEAL
                    if step.stage is Stage.OIL_WASH:
                        assert below is not None
                        assert below.role in (Role.SEAL, Role.BARRIER)
                    if step.stage is Stage.MATTE:
                        assert above is None or above.stage in (Stage.WEATHER, Stage.VARNISH)


@pytest.mark.parametrize("name", NAMES)
def test_every_wash_of_oil_is_wiped_in_the_hour_and_every_decal_pressed(name: str) -> None:
    for model in models(name):
        by_id = {step.id: step for step in model.steps}
        for follows, on, most in ((Stage.WIPE, Stage.OIL_WASH, 60), (Stage.PRESS, Stage.DECAL, 60)):
            held = set()
            for step in model.steps:
                for gate in step.gates if step.stage is follows else ():
                    closes = gate.windows[-1].closes
                    assert closes is not None
                    assert closes.minutes is not None
                    assert closes.minutes <= most
                    assert places(model, step) == places(model, by_id[gate.after])
                    held.add(gate.after)
            assert held == {step.id for step in model.steps if step.stage is on}


@pytest.mark.parametrize("name", NAMES)
def test_what_has_no_holder_is_turned_to_reach_its_underside(name: str) -> None:
    for model in models(name):
        for part in model.parts:
            turned = False
            for step in model.steps:
                mine = {p for p in places(model, step) if p.partition("/")[0] == part.name}
                if step.stage is Stage.TURN and mine:
                    turned = not turned
                elif mine and step.stage is not Stage.JOIN and not part.holder:
                    sides = {model.place(place).side for place in mine}
                    assert sides == ({"under"} if turned else {"top"}), (model.name, step.id)
                if step.stage is Stage.JOIN and mine:
                    break


def test_the_harbour_tenders_take_every_stage_of_the_card() -> None:
    assert len(models(HARBOUR)) == 3
    for model in models(HARBOUR):
        stages = {step.stage.value for step in model.steps}
        assert stages >= {*CARD, "mask", "unmask", "turn", "join", "oil wash", "wipe back"}
        roles = [step.role for step in model.steps if step.role]
        assert roles == [Role.DECAL_BED, Role.SEAL, Role.BARRIER, Role.FINAL]
    assert demo(HARBOUR).book.projects[0].target is not None


def test_one_dark_grey_serves_tyres_tracks_and_tools() -> None:
    grey = {
        place
        for model in models(HARBOUR)
        for step in model.steps
        if any(a.coating == "waterborne acrylic, dark grey" for a in step.applications)
        for place in places(model, step)
    }
    assert grey == {"wheels/tyres", "tracks/links", "hull/tools"}


def test_mixes_are_in_the_usual_parts() -> None:
    """Shares of the first portion; common practice, no source."""
    shares = {}
    for mix in demo(HARBOUR).book.mixes:
        shares[mix.name.partition(",")[0]] = mix.portions[0].parts / sum(
            portion.parts for portion in mix.portions
        )
    assert shares["shading wash"] == pytest.approx(0.40)
    assert shares["pale sand"] == pytest.approx(0.40)
    assert shares["chipping tone"] == pytest.approx(0.30)


def test_the_lamplighter_keeps_to_quick_families() -> None:
    book = demo(LAMPLIGHTER).book
    quick = {Family.WATERBORNE_ACRYLIC, Family.SOLVENT_LACQUER, Family.CYANOACRYLATE}
    assert {coating.family for coating in book.coatings} <= quick | {Family.WATER_THINNER}
    assert len(models(LAMPLIGHTER)) == 1


def test_the_club_day_is_twelve_vehicles_and_some_two_hundred_steps() -> None:
    batch = models(CLUB)
    assert len(batch) == 12
    assert 190 <= sum(len(model.steps) for model in batch) <= 210
    loads = [
        pass_.load
        for project in demo(CLUB).book.projects
        for model in project.models
        for pass_ in expand(project, model)
        if pass_.load
    ]
    assert max(map(loads.count, set(loads))) >= len(batch)  # one load can serve them all


def test_the_other_demonstration_shares_its_evenings_between_projects() -> None:
    shared = [name for name in NAMES if len(demo(name).book.projects) > 1]
    assert shared
    for name in shared:
        stages = {step.stage for model in models(name) for step in model.steps}
        tools = {step.tool for model in models(name) for step in model.steps}
        assert {Stage.CHIP_FLUID, Stage.CHIP_RUB, Stage.PIGMENT} <= stages
        assert Tool.CAN in tools
        assert len(demo(name).book.room.locations) > 1


@cache
def planned(name: str) -> tuple[Plan, Verdict]:
    book = demo(name).book
    plan = plan_book(book, first_evening(book))
    return plan, judge(book, plan)


@pytest.mark.parametrize("name", NAMES)
def test_there_is_nothing_to_find_in_its_order_of_coats(name: str) -> None:
    assert find(demo(name).book) == ()


@pytest.mark.parametrize("name", NAMES)
def test_its_plan_is_whole_accepted_and_in_time(name: str) -> None:
    plan, verdict = planned(name)
    assert verdict.violations == ()
    assert verdict.flags == ()
    assert plan.unplaced == ()
    assert verdict.cost.late == 0


def test_the_lamplighter_takes_two_evenings() -> None:
    assert planned(LAMPLIGHTER)[1].cost.stretches == 2


def test_a_load_on_club_day_serves_several_vehicles() -> None:
    plan, _ = planned(CLUB)
    poured = [work for work in plan.bench if work.kind in (BenchKind.LOAD, BenchKind.CHANGE)]
    sprayed = [placed for placed in plan.placements if placed.airbrush]
    assert len(sprayed) >= 2 * len(poured)


def test_a_cold_room_costs_the_harbour_its_date() -> None:
    """At 14 °C every film dries more slowly than at 21 °C, so the end comes later."""
    book = demo(HARBOUR).book
    (shelf,) = book.room.locations
    cold = replace(shelf, workdays=(replace(shelf.workdays[0], temperature_c=14.0),))
    colder = replace(book, room=replace(book.room, locations=(cold,)))
    plan = plan_book(colder, first_evening(colder))
    assert dict(plan.finishes)["Three harbour tenders"] > planned(HARBOUR)[0].finishes[0][1]


def test_a_cold_night_moves_what_a_warm_one_lets_stand() -> None:
    # The garage cools at night; kept at its warmest all day, films open sooner.
    book = load(demos.data("winter_garage")).book
    now = first_evening(book)
    warm = replace(
        book,
        room=replace(
            book.room,
            locations=tuple(_at_its_warmest(location) for location in book.room.locations),
        ),
    )
    # Tried longer, for one rule more or less may take the wrong turn in better air.
    nightly, steady = plan_book(book, now, tries=24), plan_book(warm, now, tries=24)
    assert judge(book, nightly).accepted
    assert judge(warm, steady).accepted
    assert steady.cost.finish < nightly.cost.finish


def _at_its_warmest(location: Location) -> Location:
    points = (*location.workdays, *location.weekends)
    best = max(points, key=lambda point: point.temperature_c)
    return replace(location, workdays=(replace(best, at="00:00"),), weekends=())
