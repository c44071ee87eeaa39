"""Faults in what judge and heuristic share: neither notices, a reading apart from both does.

Shared are the expansion of steps to passes, the gates between them, and where films dry.  Each
fault is planted in both at once; so the heuristic plans by it and the judge accepts the plan.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from datetime import UTC

import pytest
from drawn_examples import drawn
from hypothesis import given
from hypothesis import strategies as st
from judge_cases.making import NOW, book, coating, location, paint, work
from plain_reading import objections

from planner.graph.gates import PassGate
from planner.passes import Pass
from planner.schedule import compiled_book, greedy, problem
from planner.schedule import judge as judging
from planner.schedule.drying_locations import choices, settled
from planner.schedule.greedy import plan_book
from planner.schedule.judge import judge, premises
from planner.values.book import Book
from planner.values.coating import Family, Mark, State, Window
from planner.values.model import Model
from planner.values.moment import moment_of
from planner.values.project import Logged
from planner.values.step import Application, Minutes, Stage, Step, Trait

SLOW = coating("slow", Family.SOLVENT_LACQUER, solvent_safe=2000)
WINDOWS = (Window(closes=Mark(minutes=60)), Window(opens=Mark(minutes=1440)))
WASH = (
    paint("wash", "hull/deck", coat="oil", stage=Stage.OIL_WASH),
    work("wipe", Stage.WIPE, "hull/deck"),
)
TWICE = book(paint("base", "hull", coats=2), paint("links", "tracks"))
DEEP = book(
    paint("base", "hull/deck", coat="slow"),
    paint("top", "hull/deck", coat="green"),
    *WASH,
    coatings=(SLOW,),
)
MASKED = book(
    paint("base", "hull/deck", "hull/side"),
    work("mask", Stage.MASK, "hull/deck"),
    paint("camo", "hull/side"),
    work("unmask", Stage.UNMASK, "hull/deck"),
)
HELD = book(paint("tread", "wheels/tread"), paint("rim", "wheels/rim"))
LONG = book(
    paint("base", "hull/deck", coat="aerosol"),
    paint("between", "tracks", minutes=60, after=("base",)),
    paint("top", "hull/deck", coat="aerosol", after=("between",)),
    coatings=(coating("aerosol", Family.SOLVENT_LACQUER, WINDOWS),),
)
BOTH = Step(
    id="both",
    stage=Stage.BASE,
    applications=(
        Application(places=("wheels/tread",), coating="sand"),
        Application(places=("wheels/rim",), coating="late"),
    ),
    minutes=Minutes(fixed=10),
)
PRESSED = book(
    BOTH,
    work("press", Stage.PRESS, "wheels/tread"),
    coatings=(coating("late", dry_to_handle=90, dry_to_recoat=90, print_free=95),),
)


def elsewhere() -> Book:
    """Return a book whose first coat may dry in a warm box, sooner than at the cold bench."""
    of = book(
        paint("base", "hull/deck", dries_in="bench", or_in=("box",)),
        paint("top", "hull/deck", dries_in="box"),
    )
    room = replace(of.room, locations=(location("bench", 10, 12), location("box", 2, 30)))
    return replace(of, room=room)


Fault = Callable[[tuple], tuple]


def first_coats(passes: tuple[Pass, ...]) -> tuple[Pass, ...]:
    return tuple(each for each in passes if each.key.coat == 1)


def first_places(passes: tuple[Pass, ...]) -> tuple[Pass, ...]:
    return tuple(replace(e, films=e.films[:1], places=e.places[:1]) for e in passes)


def half_as_long(passes: tuple[Pass, ...]) -> tuple[Pass, ...]:
    return tuple(replace(e, minutes=e.minutes // 2, hands=e.hands // 2) for e in passes)


def all_held(passes: tuple[Pass, ...]) -> tuple[Pass, ...]:
    units = [tuple(replace(unit, holder=True) for unit in each.units) for each in passes]
    return tuple(replace(e, units=own) for e, own in zip(passes, units, strict=True))


def of_the_film_before(gates: tuple[PassGate, ...]) -> tuple[PassGate, ...]:
    """Keep of the gates on a film those of the pass that comes next, as if only the top counted."""
    nearest: dict[object, PassGate] = {}
    for gate in gates:
        nearest[gate.after, gate.place] = gate
    return tuple(nearest.values())


def opened_at_once(gates: tuple[PassGate, ...]) -> tuple[PassGate, ...]:
    return tuple(
        replace(gate, windows=tuple(replace(window, opens=None) for window in gate.windows))
        for gate in gates
    )


def never_closed(gates: tuple[PassGate, ...]) -> tuple[PassGate, ...]:
    return tuple(replace(gate, windows=(replace(gate.windows[0], closes=None),)) for gate in gates)


def merely_dry_to_recoat(gates: tuple[PassGate, ...]) -> tuple[PassGate, ...]:
    return tuple(
        replace(gate, windows=(Window(opens=Mark(state=State.DRY_TO_RECOAT)),))
        if gate.watches_film
        else gate
        for gate in gates
    )


def without_masks(gates: tuple[PassGate, ...]) -> tuple[PassGate, ...]:
    kept = [gate for gate in gates if "mask" not in (gate.before.step, gate.after.step)]
    return tuple(gate for gate in kept if gate.after.step != "unmask")


FAULTS: dict[str, tuple[str, Fault, Book]] = {
    "coats after the first are lost": ("expand", first_coats, TWICE),
    "only the first place is painted": ("expand", first_places, PRESSED),
    "everything takes half as long": ("expand", half_as_long, TWICE),
    "every part has a holder": ("expand", all_held, HELD),
    "only the top film is felt": ("gates_of", of_the_film_before, DEEP),
    "nothing is waited for": ("gates_of", opened_at_once, DEEP),
    "windows never close": ("gates_of", never_closed, LONG),
}


# The judge reads masks from the steps as well (definition 21), so it notices these by itself.
NOTICED: dict[str, tuple[str, Fault, Book]] = {
    "tape asks no more than a coat": ("gates_of", merely_dry_to_recoat, MASKED),
    "masks bind nothing": ("gates_of", without_masks, MASKED),
}


def plant(monkeypatch: pytest.MonkeyPatch, where: str, fault: Fault) -> None:
    """Put a fault into what both import, and let nothing that is kept hide it."""
    for module in (premises, compiled_book):
        right = getattr(module, where)
        monkeypatch.setattr(module, where, lambda *told, right=right: fault(right(*told)))
        if where == "expand":  # no gate on a pass that is gone
            gates = module.gates_of
            known = module.expand

            def kept(of, project, model, gates=gates, known=known):
                keys = {each.key for each in known(project, model)}
                return tuple(
                    gate for gate in gates(of, project, model) if {gate.before, gate.after} <= keys
                )

            monkeypatch.setattr(module, "gates_of", kept)
    monkeypatch.setattr(problem, "frame_of", compiled_book.CompiledBook)


def plan_without_notice(of: Book):
    """Return the plan of a book, which the judge accepts."""
    plan = plan_book(of, NOW)
    verdict = judge(of, plan)
    assert verdict.violations == ()
    assert not plan.unplaced
    return plan


@pytest.mark.parametrize("name", FAULTS)
def test_a_fault_in_passes_or_gates_is_caught_apart(name, monkeypatch):
    where, fault, of = FAULTS[name]
    assert objections(of, plan_without_notice(of)) == []
    plant(monkeypatch, where, fault)
    assert objections(of, plan_without_notice(of))


@pytest.mark.parametrize("name", NOTICED)
def test_a_fault_about_masks_is_noticed_by_the_judge_too(name, monkeypatch):
    where, fault, of = NOTICED[name]
    assert objections(of, plan_without_notice(of)) == []
    plant(monkeypatch, where, fault)
    plan = plan_book(of, NOW)
    assert objections(of, plan)
    assert judge(of, plan).definitions == {21}


def test_a_fault_in_where_films_dry_is_caught_apart(monkeypatch):
    """Both take the film to dry in the warm box, while the plan has it at the cold bench."""
    of = elsewhere()
    plan = plan_without_notice(of)
    assert {placed.location for placed in plan.placements} == {"box", ""}
    assert objections(of, plan) == []
    warm, right = dict.fromkeys(choices(of), "box"), settled
    monkeypatch.setattr(greedy, "settled", lambda given, chosen: right(given, warm))
    monkeypatch.setattr(greedy, "told", lambda plan, chosen: plan)
    monkeypatch.setattr(judging, "settled", lambda given, chosen: right(given, warm))
    monkeypatch.setattr(judging, "chosen_in", lambda given, plan: warm)
    told = plan_without_notice(of)
    assert {placed.location for placed in told.placements} == {""}
    assert objections(of, told)


PLACES = ["hull/deck", "hull/side", "hull", "wheels/tread", "wheels/rim", "tracks"]


@st.composite
def books(draw: st.DrawFn) -> Book:
    """Draw one or two carts with a few coats, washes and masks."""
    models = []
    for number in range(draw(st.integers(1, 2))):
        steps = [
            paint(
                f"s{at}",
                draw(st.sampled_from(PLACES)),
                coat=draw(st.sampled_from(["sand", "green", "hourly"])),
                minutes=draw(st.sampled_from([5, 20])),
                coats=draw(st.sampled_from([1, 1, 2])),
                traits=draw(st.sampled_from([(), (Trait.SMELLS,)])),
            )
            for at in range(draw(st.integers(1, 3)))
        ]
        if draw(st.booleans()):
            steps += WASH
        if draw(st.booleans()):
            steps += [
                work("mask", Stage.MASK, "hull/deck"),
                paint("camo", "hull/side"),
                work("unmask", Stage.UNMASK, "hull/deck"),
            ]
        parts = TWICE.projects[0].models[0].parts
        models.append(Model(name=f"cart {number}", parts=parts, steps=tuple(steps)))
    return replace(TWICE, projects=(replace(TWICE.projects[0], models=tuple(models)),))


@drawn(40)
@given(of=books())
def test_the_reading_apart_has_nothing_against_our_plans(of):
    plan = plan_book(of, NOW)
    assert judge(of, plan).accepted
    assert not plan.unplaced
    assert objections(of, plan) == []


@st.composite
def noted_at_random(draw: st.DrawFn) -> Book:
    """Draw a book with some of its coats noted, whatever their turn."""
    of = draw(books())
    project = of.projects[0]
    every = [
        (model.name, step.id, coat + 1)
        for model in project.models
        for step in model.steps
        for coat in range(step.coats)
    ]
    noted = draw(st.lists(st.sampled_from(every), min_size=1, max_size=len(every), unique=True))
    log = tuple(
        Logged(
            model=model,
            step=step,
            coat=coat,
            start=moment_of(NOW - 600 * (len(noted) - at), UTC),
            end=moment_of(NOW - 600 * (len(noted) - at) + 10, UTC),
        )
        for at, (model, step, coat) in enumerate(noted)
    )
    return replace(of, projects=(replace(project, log=log),))


@drawn(40)
@given(of=noted_at_random())
def test_whatever_is_noted_in_whatever_order_there_is_a_sound_plan(of):
    """Definition 22, by judge and by the reading apart; a missed window alone leaves work out."""
    plan = plan_book(of, NOW)
    assert judge(of, plan).violations == ()
    lost = {f"{u.key.model}/{u.key.step}#{u.key.coat} is left out" for u in plan.unplaced}
    assert {*objections(of, plan)} == lost
    assert not lost or any("window" in u.why for u in plan.unplaced)
