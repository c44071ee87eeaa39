"""The judge against the heuristic on hundreds of drawn books, and on plans spoilt since."""

from __future__ import annotations

from dataclasses import replace

import pytest
from drawn_examples import drawn
from hypothesis import HealthCheck, given
from hypothesis import strategies as st
from judge_cases import making
from judge_cases.alone import bath
from strategies import NOW_MINUTE, books

from planner.bench import BenchCalendar
from planner.cure import Cure, Film
from planner.passes import expand_all
from planner.schedule.greedy import plan_book
from planner.schedule.judge import Premises, judge
from planner.values.book import Book
from planner.values.coating import Mark, Preparation, State, Window
from planner.values.moment import Interval, zone_named
from planner.values.plan import Placement, Plan
from planner.values.room import AirPoint, Location
from planner.values.step import Step

SPOILT = frozenset(range(1, 25))  # what a plan does, not what it says of itself

WINDOWS = (
    (Window(closes=Mark(minutes=90), merges=True), Window(opens=Mark(minutes=600))),
    (
        Window(opens=Mark(minutes=20), closes=Mark(minutes=400)),
        Window(opens=Mark(minutes=1500), preparation=Preparation.SCUFF, preparation_minutes=12),
    ),
    (Window(opens=Mark(state=State.TACK_FREE)),),
)


@st.composite
def windowed_books(draw: st.DrawFn) -> Book:
    """Draw books whose coatings have recoat windows, and whose films dry in two places."""
    book = draw(books(most_models=2, most_projects=1))
    recoat = {
        coating.name: draw(st.sampled_from([(), *WINDOWS]))
        for coating in book.coatings
        if coating.name in ("grey primer", "sand", "green", "gloss clear")
    }
    box = Location(
        name="warm box",
        drying_places=20,
        workdays=(AirPoint(at="00:00", temperature_c=35, humidity_pct=30),),
    )
    models = tuple(
        replace(
            model,
            steps=tuple(
                replace(step, dries_in="warm box")
                if step.applications and draw(st.booleans())
                else step
                for step in model.steps
            ),
        )
        for model in book.projects[0].models
    )
    return replace(
        book,
        coatings=tuple(
            replace(coating, recoat=recoat.get(coating.name, ())) for coating in book.coatings
        ),
        room=replace(book.room, locations=(*book.room.locations, box)),
        projects=(replace(book.projects[0], models=models),),
    )


KINDS = {
    "plain": books(),
    "logged": books(logged=True),
    "pinned and logged": books(pinned=True, logged=True),
    "wished": books(pinned=True, wished=True),
    "windowed": windowed_books(),
}


@pytest.mark.hypothesis
@pytest.mark.parametrize("kind", KINDS)
def test_every_plan_of_the_heuristic_is_accepted(kind):
    @drawn(60, HealthCheck.data_too_large)
    @given(book=KINDS[kind])
    def accepted(book: Book) -> None:
        verdict = judge(book, plan_book(book, NOW_MINUTE))
        assert verdict.violations == ()

    accepted()


@drawn(40, HealthCheck.data_too_large)
@given(book=books(logged=True), data=st.data())
def test_what_is_moved_into_the_way_is_refused(book, data):
    """Pass by pass: earlier by up to a day, and the simplest reading of the rules applied."""
    plan = plan_book(book, NOW_MINUTE)
    movable = [placed for placed in plan.placements if not placed.logged]
    if not movable:
        return
    premises = Premises(book)
    for placed in data.draw(st.lists(st.sampled_from(movable), min_size=1, max_size=5)):
        back = data.draw(st.sampled_from([1, 5, 60, 61, 180, 1440]))
        moved = replace(
            placed,
            pieces=tuple(Interval(p.start - back, p.end - back) for p in placed.pieces),
        )
        spoilt = replace(
            plan,
            placements=tuple(
                moved if placement is placed else placement for placement in plan.placements
            ),
        )
        expected = set(_broken(book, spoilt, moved))
        found = judge(book, spoilt, rules=SPOILT, premises=premises).definitions
        assert expected <= found
        if _too_wet(book, spoilt, moved):
            assert found


@pytest.mark.parametrize(("links", "broken"), [("18:05-18:15", set()), ("18:04-18:14", {13})])
def test_hands_that_are_free_again_are_read_as_the_judge_reads_them(links, broken):
    """Found by a random run: a bath of 40 minutes keeps hands for its first five."""
    of = making.book(bath(), making.paint("links", "tracks"))
    laid = making.plan(of, making.do("bath", "18:00-18:40"), making.do("links", links))
    assert set(judge(of, laid, rules=SPOILT).definitions) == broken
    for placed in laid.placements:
        assert set(_broken(of, laid, placed)) == broken


def _broken(book: Book, plan: Plan, moved: Placement):
    """Yield the definitions that a moved placement breaks for sure, read off the plan."""
    if moved.start < plan.now:
        yield 23
    calendar = BenchCalendar(book.bench_time)
    steps = {pass_.key: pass_.step for pass_ in expand_all(book)}
    for piece in _at_hand(steps[moved.key], moved):
        inside = calendar.stretches(piece.start, piece.end)
        if len(inside) != 1 or not piece.within(inside[0].interval):
            yield 12
        others = [
            piece
            for placement in plan.placements
            if placement is not moved
            for piece in _at_hand(steps[placement.key], placement)
        ]
        planned = [*others, *(work.interval for work in plan.bench)]
        if any(piece.overlaps(other) and other.start >= plan.now for other in planned):
            yield 13
    for other in _below(book, plan, moved):
        if len(other.pieces) == 1 and moved.start < other.end:
            yield 3


def _at_hand(step: Step, placed: Placement) -> tuple[Interval, ...]:
    """Return when a pass keeps hands: definition 13, five minutes of what goes on alone."""
    if not step.goes_alone:
        return placed.pieces
    (whole,) = placed.pieces
    return (Interval(whole.start, min(whole.end, whole.start + 5)),)


def _below(book: Book, plan: Plan, moved: Placement) -> list[Placement]:
    passes = {pass_.key: pass_ for pass_ in expand_all(book)}
    one = passes[moved.key]
    return [
        placed
        for placed in plan.placements
        if (placed.key.project, placed.key.model) == (one.key.project, one.key.model)
        and passes[placed.key].rank < one.rank
        and set(passes[placed.key].places) & set(one.places)
    ]


def _too_wet(book: Book, plan: Plan, moved: Placement) -> bool:
    """Tell whether a coat was moved onto one that is not even set-to-touch."""
    passes = {pass_.key: pass_ for pass_ in expand_all(book)}
    cure = Cure(book.room, zone_named(book.bench_time.zone))
    laid = {place for place, _ in passes[moved.key].films}
    for other in _below(book, plan, moved):
        for place, name in passes[other.key].films:
            film = Film(
                book.coating(name),
                book.coating(name).dry_film_um,
                passes[other.key].step.dries_in,
                other.end,
            )
            ready = cure.ready_at(film, State.SET_TO_TOUCH)
            if place in laid and (ready is None or moved.start < ready):
                return True
    return False


@drawn(20, HealthCheck.data_too_large)
@given(book=books(), data=st.data())
def test_the_order_in_which_a_plan_is_written_does_not_matter(book, data):
    plan = plan_book(book, NOW_MINUTE)
    shuffled = replace(
        plan,
        placements=tuple(data.draw(st.permutations(plan.placements))),
        bench=tuple(data.draw(st.permutations(plan.bench))),
    )
    assert judge(book, shuffled).cost == judge(book, plan).cost
    assert judge(book, shuffled).accepted


@drawn(30, HealthCheck.data_too_large)
@given(book=books(), data=st.data())
def test_leaving_out_any_bench_work_is_refused(book, data):
    """Every load, change, cleaning of the heuristic is needed."""
    plan = plan_book(book, NOW_MINUTE)
    if not plan.bench:
        return
    gone = data.draw(st.sampled_from(plan.bench))
    fewer = replace(plan, bench=tuple(work for work in plan.bench if work is not gone))
    assert judge(book, fewer, rules=SPOILT).definitions & {8, 15, 16}
