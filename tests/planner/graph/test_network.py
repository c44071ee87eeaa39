"""The graph of passes and gates; its cycles explained; earliest times and slack."""

from __future__ import annotations

import re
from dataclasses import replace
from datetime import UTC, datetime, timedelta

import networkx as nx
import pytest
from drawn_examples import drawn
from hypothesis import given

from app.service import demos
from planner.cure import Cure
from planner.graph.network import check_acyclic, network, order_of
from planner.graph.slack import slack
from planner.passes import expand
from planner.values.bench_time import BenchTime
from planner.values.book import Book
from planner.values.coating import (
    Clock,
    Coating,
    Family,
    Mark,
    Preparation,
    State,
    StateTime,
    Window,
)
from planner.values.model import Model, Part, Place
from planner.values.moment import minute_of, zone_named
from planner.values.plan import PassKey
from planner.values.project import Logged, Project
from planner.values.refusal import Refused
from planner.values.room import AirPoint, Location, Room
from planner.values.step import Application, Bound, Gate, Minutes, Stage, Step
from tests.strategies import NOW_MINUTE, books

HOUR = 60
NOW = datetime(2031, 3, 3, 17, 0, tzinfo=UTC)
AT_ONCE = tuple(StateTime(state=state, minutes=0) for state in State)  # only written gates count
SAND = Coating(name="sand", family=Family.WATERBORNE_ACRYLIC, times=AT_ONCE)


def step(name, minutes=10, places=("hull",), coats=1, **rest):
    coat = Application(places=places, coating="sand", coats=coats)
    return Step(
        id=name, stage=Stage.BASE, applications=(coat,), minutes=Minutes(fixed=minutes), **rest
    )


def wait(after, opens, closes=None, closing=Bound.START, **rest):
    window = Window(
        opens=Mark(minutes=opens), closes=Mark(minutes=closes) if closes else None, **rest
    )
    return Gate(after=after, windows=(window,), closing=closing)


def model(*steps, name="cart"):
    hull = Part(name="hull", places=(Place(name="deck"), Place(name="sides")))
    hood = Part(name="hood", places=(Place(name="top"),))
    return Model(name=name, parts=(hull, hood), steps=steps)


def book(*models, coating=SAND, temperature=23.0, log=(), before=()):
    air = (AirPoint(at="00:00", temperature_c=temperature, humidity_pct=50),)
    return Book(
        coatings=(coating,),
        room=Room(locations=(Location(name="bench", drying_places=9, workdays=air),)),
        bench_time=BenchTime(zone="UTC"),
        projects=(*before, Project(name="yard", models=models, log=log)),
    )


def outlook(book: Book):
    cure = Cure(book.room, zone_named(book.bench_time.zone))
    return slack(book, book.projects[-1], minute_of(NOW), cure)


def starts(found):
    """Minutes from now to the earliest start of each step's first coat."""
    return {key.step: times.early_start - minute_of(NOW) for key, times in found.path.times.items()}


# --- the graph -------------------------------------------------------------


def test_nodes_carry_passes_and_edges_every_gate():
    one = book(model(step("base", coats=2), step("camo", gates=(wait("base", 90),))))
    graph = network(one, one.projects[0], one.projects[0].models[0])
    keys = [PassKey("yard", "cart", "base", coat) for coat in (1, 2)]
    camo = PassKey("yard", "cart", "camo")
    assert list(graph) == [*keys, camo]
    assert graph.nodes[camo]["work"].step.id == "camo"
    gates = graph.edges[keys[1], camo]["gates"]
    assert [gate.windows[0].opens for gate in gates if gate.source == "written by the person"] == [
        Mark(minutes=90)
    ]
    assert any(gate.is_order for gate in gates)  # the same places, besides
    assert all((gate.before, gate.after) == (keys[1], camo) for gate in gates)


@drawn(25)
@given(books())
def test_working_orders_make_acyclic_graphs_of_every_gate(one):
    check_acyclic(one)
    for project in one.projects:
        for each in project.models:
            graph = network(one, project, each)
            assert nx.is_directed_acyclic_graph(graph)
            for before, after, gates in graph.edges(data="gates"):
                assert gates
                assert {(gate.before, gate.after) for gate in gates} == {(before, after)}


# --- cycles ----------------------------------------------------------------


@pytest.mark.parametrize(
    ("steps", "place", "sentence"),
    [
        (
            (step("base", after=("camo",)), step("camo")),
            "steps[0].after[0]",
            "base waits for camo, camo waits for base",
        ),
        (
            (step("prime"), step("base", gates=(wait("camo", 60),)), step("camo")),
            "steps[1].gates[0].after",
            "base waits for camo, camo waits for base",
        ),
        (
            (step("base", after=("base",)),),
            "steps[0].after[0]",
            "base waits for itself",
        ),
        (
            (step("base", coats=3, after=("base",)),),
            "steps[0].after[0]",
            "base waits for itself",
        ),
        (  # no shared place anywhere: what was written alone closes the cycle
            (
                step("deck", places=("hull/deck",), after=("top",)),
                step("sides", places=("hull/sides",), after=("deck",)),
                step("top", places=("hood",), after=("sides",)),
            ),
            "steps[0].after[0]",
            "deck waits for top, top waits for sides, sides waits for deck",
        ),
    ],
)
def test_a_cycle_is_explained_by_its_steps_and_its_place(steps, place, sentence):
    bystander = Project(name="fleet", models=(model(step("base")),))
    one = book(model(step("base"), name="van"), model(*steps), before=(bystander,))
    with pytest.raises(Refused) as refusal:
        check_acyclic(one)
    assert refusal.value.place == f"projects[1].models[1].{place}"
    said = refusal.value.mend.partition(";")[0]
    assert _turns(said) == _turns(sentence)


def _turns(sentence: str) -> set[tuple[str, ...]]:
    """Return "a waits for b" pairs: a cycle may be told from any of its steps."""
    return set(re.findall(r"([\w-]+) waits for ([\w-]+)", sentence))


def test_waiting_for_a_later_step_that_shares_nothing_is_no_cycle():
    deck = step("deck", places=("hull/deck",), after=("top",))
    one = book(model(deck, step("top", places=("hood",))))
    check_acyclic(one)
    assert starts(outlook(one)) == {"top": 0, "deck": 10}


# --- earliest times and slack ----------------------------------------------

CHAIN = (
    step("prime", 1 * HOUR),
    step("base", 2 * HOUR, gates=(wait("prime", 4 * HOUR, 25 * HOUR),)),
    step("clear", 1 * HOUR, gates=(wait("base", 6 * HOUR),)),
    step("decal", 2 * HOUR, gates=(wait("clear", 12 * HOUR),)),
    step("matte", 1 * HOUR, gates=(wait("decal", 24 * HOUR),)),
)


def test_the_finishing_chain_as_a_project():
    """Starts of the chain of test_critical, solved apart: 0, 5, 13, 26, 52 h, end 53 h."""
    found = outlook(book(model(*CHAIN), model(step("tarp", 90), name="trailer")))
    assert starts(found) == {
        "prime": 0,
        "base": 5 * HOUR,
        "clear": 13 * HOUR,
        "decal": 26 * HOUR,
        "matte": 52 * HOUR,
        "tarp": 0,
    }
    assert found.path.finish == minute_of(NOW) + 53 * HOUR
    assert [key.step for key in found.path.critical] == [s.id for s in CHAIN]
    tarp = found.path.times[PassKey("yard", "trailer", "tarp")]
    assert tarp.total_float == 53 * HOUR - 90
    assert (found.never, found.wet, found.missed) == ((), (), ())


def slow_to_handle():
    """Sand whose label gives 100 min to handle: 110 at the late end (assumed factor 1.1)."""
    times = tuple(
        StateTime(state=state, minutes=100 if state is State.DRY_TO_HANDLE else 0)
        for state in State
        if state is not State.DRY_THROUGH
    )
    return replace(SAND, times=times)


def test_the_last_film_counts_until_it_can_be_handled():
    found = outlook(book(model(step("base")), coating=slow_to_handle()))
    assert found.path.finish == minute_of(NOW) + 10 + 110
    assert [key.step for key in found.path.critical] == ["base"]


def test_films_already_laid_count_until_they_can_be_handled():
    done = Logged(model="cart", step="base", start=NOW - timedelta(minutes=10), end=NOW)
    found = outlook(book(model(step("base")), log=(done,), coating=slow_to_handle()))
    assert found.path.finish == minute_of(NOW) + 110
    assert found.path.times == {}


def test_a_closing_gate_keeps_the_earlier_pass_from_waiting_alone():
    """Two branches meet: the wash may not be laid earlier than an hour before it is wiped."""
    wipe = Step(
        id="wipe",
        stage=Stage.WIPE,
        touches=("hull/deck",),
        minutes=Minutes(fixed=10),
        gates=(wait("wash", 5, HOUR, Bound.END),),
    )
    found = outlook(
        book(
            model(
                step("wash", 10, places=("hull/deck",)),
                wipe,
                step("top", 600, places=("hood",)),
            )
        )
    )
    times = {key.step: of for key, of in found.path.times.items()}
    assert starts(found) == {"wash": 0, "wipe": 15, "top": 0}
    # 600 in all: wiping may start at 590, and the wash then 45 before it at most.
    assert times["wipe"].total_float == 575
    assert times["wash"].total_float == 575


def test_a_later_window_is_taken_with_its_preparation():
    gate = Gate(
        after="prime",
        windows=(
            Window(closes=Mark(minutes=30)),
            Window(opens=Mark(minutes=200), preparation=Preparation.SCUFF, preparation_minutes=15),
        ),
    )
    busy = step("top", 60, places=("hood",))
    found = outlook(
        book(
            model(
                step("prime", 10, places=("hull/deck",)),
                busy,
                step("base", 5, places=("hull/deck",), gates=(gate,), after=("top",)),
            )
        )
    )
    # The first window is shut at 30; "top" ends at 60; the second opens at 10 + 200.
    assert starts(found)["base"] == 10 + 200 + 15
    assert found.missed == ()


def test_a_closing_that_cannot_be_kept_is_told():
    gate = wait("prime", 0, 30)
    found = outlook(
        book(
            model(
                step("prime", 10, places=("hull/deck",)),
                step("top", 60, places=("hood",)),
                step("base", 5, places=("hull/deck",), gates=(gate,), after=("top",)),
            )
        )
    )
    assert [(gate.before.step, gate.after.step) for gate in found.missed] == [("prime", "base")]
    assert starts(found)["base"] == 60


def test_melting_coats_start_their_drying_anew():
    """Two coats of 100 min to recoat, the second laid wet: twice as thick, twice as long."""
    label = tuple(
        StateTime(state=state, minutes=100 if state is State.DRY_TO_RECOAT else 0)
        for state in State
        if state not in (State.DRY_TO_HANDLE, State.DRY_THROUGH)
    )
    wet = Window(closes=Mark(minutes=30), merges=True)
    dry = Window(opens=Mark(state=State.DRY_TO_RECOAT))
    lacquer = replace(
        SAND, family=Family.SOLVENT_LACQUER, times=(*label, *_handle_at_once()), recoat=(wet, dry)
    )
    found = outlook(book(model(step("gloss", 10, coats=2)), coating=lacquer))
    first, second = found.path.times.values()
    assert (first.early_start, second.early_start) == (minute_of(NOW), minute_of(NOW) + 10)
    late = Gate(after="gloss", windows=(dry,))
    third = step("camo", 10, gates=(late,))
    found = outlook(book(model(step("gloss", 10, coats=2), third), coating=lacquer))
    # 100 min × 2 (film) × 1.1 (late end of a label's band, assumed) after the second coat.
    assert starts(found)["camo"] == 20 + 220


def _handle_at_once():
    return tuple(
        StateTime(state=state, minutes=0) for state in (State.DRY_TO_HANDLE, State.DRY_THROUGH)
    )


def test_in_the_cold_nothing_follows_and_that_is_said():
    tacky = Coating(name="sand", family=Family.WATERBORNE_ACRYLIC)
    found = outlook(book(model(step("base"), step("camo")), coating=tacky, temperature=-10))
    assert [key.step for key in found.wet] == ["base"]
    assert [key.step for key in found.never] == ["camo"]
    assert starts(found) == {"base": 0}


def test_logged_passes_stand_and_later_ones_count_from_them():
    began = NOW - timedelta(hours=3)
    done = Logged(model="cart", step="prime", start=began, end=began + timedelta(hours=1))
    found = outlook(book(model(*CHAIN), log=(done,)))
    assert starts(found)["base"] == 2 * HOUR  # 4 h after the end, two of them gone by
    assert "prime" not in starts(found)
    assert found.path.critical[0].step == "base"


def test_a_window_that_the_bands_leave_empty_is_judged_at_nominal_values():
    """Opens 100, closes 120 on the film's clock: late 10 + 110, early 108; nominal 110, 120.

    The factors 1.1 and 0.9 of the bands are assumed.
    """
    window = Window(
        opens=Mark(minutes=100, clock=Clock.FILM), closes=Mark(minutes=120, clock=Clock.FILM)
    )
    gate = Gate(after="prime", windows=(window,))
    found = outlook(book(model(step("prime", 10), step("base", 5, gates=(gate,)))))
    assert starts(found) == {"prime": 0, "base": 110}
    assert (found.never, found.missed) == ((), ())


def test_a_closing_after_what_is_done_leaves_only_the_time_it_leaves():
    """Washed from 20 to 10 minutes ago; wiped by 60 min after it began, which takes 10."""
    began = NOW - timedelta(minutes=20)
    done = Logged(model="cart", step="wash", start=began, end=began + timedelta(minutes=10))
    wipe = Step(
        id="wipe",
        stage=Stage.WIPE,
        touches=("hull/deck",),
        minutes=Minutes(fixed=10),
        gates=(wait("wash", 5, HOUR, Bound.END),),
    )
    top = step("top", 600, places=("hood",))
    found = outlook(book(model(step("wash", places=("hull/deck",)), wipe, top), log=(done,)))
    assert starts(found) == {"wipe": 0, "top": 0}
    assert found.path.times[PassKey("yard", "cart", "wipe")].total_float == 60 - 20 - 10


@pytest.mark.parametrize(("gone", "left"), [(20, 40), (58, 5), (300, 5)])
def test_work_under_way_has_at_least_five_minutes_left(gone, left):
    begun = Logged(model="cart", step="prime", start=NOW - timedelta(minutes=gone))
    found = outlook(book(model(*CHAIN[:2]), log=(begun,)))
    assert starts(found)["base"] == left + 4 * HOUR


@drawn(25)
@given(books())
def test_early_and_late_times_both_keep_the_order_of_every_gate(one):
    cure = Cure(one.room, zone_named(one.bench_time.zone))
    for project in one.projects:
        found = slack(one, project, NOW_MINUTE, cure)
        times = found.path.times
        begun = {(entry.model, entry.step, entry.coat) for entry in project.log}
        lasting = {  # what is under way has five minutes left at least
            work.key: 5 if work.key[1:] in begun else work.minutes
            for each in project.models
            for work in expand(project, each)
        }
        for each in project.models:
            for before, after in network(one, project, each).edges:
                if before in times and after in times:
                    own, next_ = times[before], times[after]
                    minutes = lasting[before]
                    assert own.early_start + minutes <= next_.early_start
                    late = own.early_start + own.total_float + minutes
                    assert late <= next_.early_start + next_.total_float
        for key, of in times.items():
            assert of.early_start >= NOW_MINUTE
            assert of.total_float >= 0, key
            assert of.early_start + of.total_float + lasting[key] <= found.path.finish
        if times and not project.log:
            assert found.path.critical


@pytest.mark.parametrize("name", demos.names())
def test_what_looks_for_cycles_leads_where_the_whole_network_does(name):
    """The graph that grows with the length of a model has the same paths as all gates have."""
    book = demos.read(name).book
    for project in book.projects:
        for model in project.models:
            short = nx.transitive_closure(order_of(project, model))
            whole = nx.transitive_closure(network(book, project, model))
            assert set(short.edges) == set(whole.edges)


def test_a_long_cycle_is_told_in_a_few_words():
    book = demos.read("lone_lamplighter").book
    project = book.projects[0]
    model = project.models[0]
    first = model.steps[0]
    names = [f"s{number}" for number in range(300)]
    steps = tuple(
        replace(first, id=name, gates=(), after=(names[at - 1],)) for at, name in enumerate(names)
    )
    model = replace(model, steps=steps)
    project = replace(project, models=(model,), log=(), pins=())
    with pytest.raises(Refused, match=r"292 more") as caught:
        check_acyclic(replace(book, projects=(project,)))
    assert caught.value.place == "projects[0].models[0].steps[0].after[0]"
    assert len(str(caught.value)) < 400
