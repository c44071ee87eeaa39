"""What an evening tells, at its exact minute and one to either side."""

from __future__ import annotations

from dataclasses import replace

import pytest
from judge_cases.making import (
    MONDAY,
    NOW,
    at,
    book,
    coating,
    do,
    key,
    paint,
    ready,
    spray,
    sprayed,
    when,
    work,
)

from planner.evening import advice, alternatives, closing_check, missed_closings, repairs, stripping
from planner.evening.advice import rest, silvering
from planner.evening.alternatives import instead, leaves_time, takers
from planner.evening.closing_evening import summary
from planner.evening.film_brake import Miss, unready
from planner.evening.laid_before import StageReached, laid_before
from planner.evening.last_coat_brake import braked
from planner.evening.logged_films import laid
from planner.evening.looks import LookFor, look_for, looks
from planner.evening.missed_closings import Remedy
from planner.evening.other_work import OtherWork, PaintedModel, noted
from planner.evening.skipped_steps import skipped
from planner.evening.split_steps import fresh, must_follow
from planner.schedule.greedy import plan_book
from planner.tonight import run_sheet
from planner.values.bench_time import BenchTime
from planner.values.book import Book
from planner.values.coating import Coating, Family, Mark, State, Window
from planner.values.gear import Airbrush, Cleaned, Gear
from planner.values.moment import Interval, minute_of
from planner.values.plan import Placement
from planner.values.project import Event, Happened, Logged, Pin
from planner.values.step import Bound, Gate, Minutes, Role, Stage, Step, Trait

BASE = paint("base", "hull/deck")
LAST = paint("last", "hull/deck", stage=Stage.VARNISH, role=Role.FINAL, coat="green")
LAID = do("base", "18:00-18:10")


def logged() -> Book:
    """Return a book whose base was laid from 18:00 to 18:10."""
    log = (Logged(model="cart", step="base", start=when("18:00"), end=when("18:10")),)
    return book(BASE, LAST, log=log)


@pytest.mark.parametrize("state", list(State))
def test_the_brake_tells_a_state_from_its_late_minute_on(state):
    """Label times rise from state to state, so each is the farthest from its own minute on."""
    of = logged()
    reached = ready(of, "sand", state, at("18:10"))
    (film,) = braked(of, key("last"), reached)
    assert film.state is state
    (before,) = braked(of, key("last"), reached - 1)
    states = list(State)
    earlier = states[states.index(state) - 1] if state is not states[0] else None
    assert before.state is earlier
    assert film.hard == before.hard == ready(of, "sand", State.DRY_THROUGH, at("18:10"))


def planned(at_minute: int, *placed: Placement) -> list[str]:
    return [film.step for film in braked(book(BASE, LAST), key("last"), at_minute, planned=placed)]


def test_the_brake_counts_what_is_begun_before_the_last_coat():
    assert planned(at("18:00"), LAID) == []
    assert planned(at("18:01"), LAID) == ["base"]
    assert planned(at("18:30"), LAID) == ["base"]


def test_the_least_dry_film_comes_first():
    """On the deck sand, which is dry through long before the slow coat on the side is tack-free."""
    slow = coating("slow", tack_free=900, dry_to_handle=1000, dry_to_recoat=1000, print_free=1200)
    both = paint("last", "hull/deck", "hull/side", stage=Stage.MATTE, coat="green")
    other = paint("side", "hull/side", coat="slow")
    of = book(BASE, other, both, coatings=(replace(slow, times=slow.times[:6]),))
    laid = LAID, do("side", "18:10-18:20")
    films = braked(of, key("last"), at("18:10") + 400, planned=laid)
    assert [film.step for film in films] == ["side", "base"]
    assert braked(of, key("base"), NOW + 400, planned=laid) == ()


# -- what else may be done ------------------------------------------------------------------------


def closing(bound: Bound) -> Book:
    """Return a book whose base was laid from 18:00 on; what follows it closes at 19:00."""
    gate = Gate(after="base", windows=(Window(closes=Mark(minutes=60)),), closing=bound)
    log = (Logged(model="cart", step="base", start=when("18:00"), end=when("18:10")),)
    press = work("press", Stage.PRESS, "hull/deck", gates=(gate,))
    return book(BASE, press, paint("links", "tracks"), log=log)


@pytest.mark.parametrize(
    ("bound", "now", "offered"),
    [
        (Bound.START, "18:49", True),  # the other ten minutes are over at 18:59, in time to begin
        (Bound.START, "18:50", False),
        (Bound.START, "18:59", False),  # the last minute to begin is now
        (Bound.START, "19:00", True),  # it is missed, whatever is done
        (Bound.END, "18:40", True),  # over at 18:50, with ten minutes left
        (Bound.END, "18:41", False),
        (Bound.END, "18:50", False),  # just in time, if it is done now
        (Bound.END, "18:51", True),
    ],
)
def test_other_work_leaves_what_closes_its_minutes(bound, now, offered):
    """Definition 7: to have started before 19:00, or to have ended by then."""
    steps = [other.key.step for other in instead(closing(bound), at(now))]
    assert ("links" in steps) is offered


@pytest.mark.parametrize(("now", "enough"), [("21:40", True), ("21:41", False)])
def test_what_opens_a_window_is_begun_in_time_for_it(now, enough):
    """Ten minutes of laying and ten of pressing end at 22:00; the next evening is too late."""
    of = replace(
        closing(Bound.START), projects=(replace(closing(Bound.START).projects[0], log=()),)
    )
    assert leaves_time(of, key("base"), at(now)) is enough
    assert ("base" in [other.key.step for other in instead(of, at(now))]) is enough
    assert leaves_time(of, key("links"), at(now))  # it opens nothing
    assert leaves_time(of, key("press"), at(now))  # out of order, which is told by itself


def test_what_waits_for_more_is_no_reason_to_let_it_be():
    """Pressing waits for the tracks as well, so that nobody knows yet when it will be."""
    gate = Gate(after="base", windows=(Window(closes=Mark(minutes=60)),))
    press = work("press", Stage.PRESS, "hull/deck", gates=(gate,), after=("links",))
    of = book(BASE, paint("links", "tracks"), press)
    assert leaves_time(of, key("base"), at("21:45"))
    assert not leaves_time(replace(of, bench_time=BenchTime(zone="UTC")), key("base"), at("21:45"))


def test_a_sprayed_cup_is_full_until_it_is_cleaned():
    """Logged until 18:13; a cleaning in its last minute or later empties it (definition 15)."""
    of = book(spray("base", "hull/deck"), spray("links", "tracks", coat="green"))
    done = replace(sprayed("base", "18:03-18:13"), logged=True)
    span = Interval(at("18:00"), at("22:00"))

    def used(*cleaned: str, placed=(done,)) -> dict[str, str]:
        facts = tuple(Cleaned(airbrush="fine", at=when(moment)) for moment in cleaned)
        return closing_check.cups_used(placed, replace(of, cleaned=facts), span)

    assert used() == {"fine": "sand"}
    assert used("18:11") == {"fine": "sand"}
    assert used("18:12") == {}
    assert used("18:30") == {}
    later = sprayed("links", "18:40-18:50")
    assert used("18:30", placed=(done, later)) == {"fine": "green"}
    assert used("18:55", placed=(later,)) == {"fine": "green"}  # planned, so not yet cleaned away
    assert used(placed=(sprayed("links", "22:00-22:10"),)) == {}
    assert used(placed=(sprayed("links", "17:59-18:09"),)) == {}
    assert used(placed=(sprayed("links", "18:00-18:10"),)) == {"fine": "green"}


def test_what_else_takes_a_colour_waits_for_the_first_thing_that_is_missing():
    steps = (
        paint("one", "hull/deck", coat="green"),
        paint("two", "hull/side", coat="green"),
        paint("three", "hull/deck", "hull/side"),
        paint("links", "tracks"),
    )
    three, links = sorted(takers(book(*steps), "sand", at("18:00")), key=lambda t: t.key.step)[::-1]
    assert (three.key.step, three.opens, three.waits_for) == ("three", None, "one")
    assert (links.key.step, links.opens, links.waits_for) == ("links", at("18:00"), "")
    assert [taker.key.step for taker in takers(book(*steps), "sand", NOW)] == ["links", "three"]
    assert links.ready(at("18:00"))
    assert not links.ready(at("17:59"))


# -- tries, rests and looks -----------------------------------------------------------------------


def dropped(*times: str, model: str = "cart", step: str = "base") -> Book:
    lines = [Happened(at=when(t), event=Event.DROPPED, model=model, step=step) for t in times]
    of = book(BASE, LAST)
    return replace(of, projects=(replace(of.projects[0], diary=tuple(lines)),))


def test_after_two_tries_a_place_rests_for_a_day_from_the_last():
    """Common practice, no source: two tries, 24 hours."""
    twice = dropped("18:00", "19:00")
    told = rest(twice, key("base"), at("20:00"))
    assert told is not None
    assert (told.until, told.tries, told.places) == (at("1/19:00"), 2, ("hull/deck",))
    assert rest(twice, key("base"), at("1/18:59")) is not None
    assert rest(twice, key("base"), at("1/19:00")) is None
    assert rest(dropped("18:00"), key("base"), at("20:00")) is None
    assert rest(dropped("18:00", "19:00", "18:30"), key("last"), at("20:00")).tries == 3
    of = book(BASE, LAST, paint("links", "tracks"))
    lines = twice.projects[0].diary
    elsewhere = replace(of, projects=(replace(of.projects[0], diary=lines),))
    assert rest(elsewhere, key("links"), at("20:00")) is None


def test_decals_are_looked_at_from_two_days_to_two_weeks():
    """Common practice, no source: silvering shows days, sometimes weeks later."""
    sheet = Coating(name="sheet", family=Family.DECAL)
    decals = paint("decals", "hull/deck", coat="sheet", stage=Stage.DECAL)
    log = (Logged(model="cart", step="decals", start=when("18:00"), end=when("18:10")),)
    of = book(decals, coatings=(sheet,), log=log)
    first, last = at("18:10") + 2 * 1440, at("18:10") + 14 * 1440
    asked = [first - 1, first, first + 1, last - 1, last, last + 1]
    assert [len(silvering(of, now)) for now in asked] == [0, 1, 1, 1, 1, 0]
    assert silvering(of, first)[0].shows == first


@pytest.mark.parametrize(
    ("stage", "what"),
    [
        (Stage.OIL_WASH, LookFor.DULL),
        (Stage.WASH, LookFor.TIDE_MARKS),
        (Stage.WIPE, LookFor.TIDE_MARKS),
        (Stage.FILTER, LookFor.TIDE_MARKS),
        (Stage.VARNISH, LookFor.FROSTING),
        (Stage.MATTE, LookFor.FROSTING),
        (Stage.DECAL, LookFor.LIFTING),
        (Stage.PRESS, LookFor.LIFTING),
        (Stage.BASE, LookFor.WORK),
    ],
)
def test_what_a_look_is_for(stage, what):
    assert look_for(stage) is what


def test_a_look_is_due_at_its_minute_and_lapses_after_a_day():
    looked = replace(BASE, look_in=20)
    log = (Logged(model="cart", step="base", start=when("18:00"), end=when("18:10")),)
    of = book(looked, log=log)
    (look,) = looks(of, at("18:10"))
    assert (look.at, look.since) == (at("18:30"), at("18:10"))
    assert looks(of, at("18:30") + 1439) == (look,)
    assert looks(of, at("18:30") + 1440) == ()


def test_the_figures_of_an_evening():
    """Common practice or assumed, as it stands beside them [min]; a tenth of a place [-]."""
    assert (stripping.SOAK, stripping.DRY) == (120, 720)
    assert (repairs.SPOT_SHARE, repairs.JUDGED_AFTER) == (0.1, 60)
    assert (repairs.DECALS_SETTLE, repairs.WASH_RESEAL) == (1440, 1440)
    assert (alternatives.SHORT, closing_check.TIDY) == (15, 10)
    assert (advice.JUDGED_AFTER, advice.REST, advice.FAILED_TRIES) == (60, 1440, 2)
    assert (missed_closings.SCUFF_MINUTES, missed_closings.LATE_TIMES) == (10, 2)


# -- parting and shortening -----------------------------------------------------------------------


def test_what_must_follow_soon():
    """Wiping follows its wash while that lies on top, and whatever closes after what it closes."""
    wash = paint("wash", "hull/deck", "hull/side", coat="oil", stage=Stage.OIL_WASH)
    wipe = work("wipe", Stage.WIPE, "hull/deck")
    over = paint("over", "hull/deck")
    closes = Gate(after="wash", windows=(Window(closes=Mark(minutes=60)),))

    def follows(*steps: Step) -> bool:
        model = book(*steps).projects[0].models[0]
        return must_follow(model, steps[-1], steps[0])

    assert follows(wash, wipe)
    assert follows(wash, work("dust", Stage.CLEAN, "hull/deck"), wipe)
    assert not follows(wash, over, wipe)
    assert follows(wash, over, replace(wipe, gates=(closes,)))
    assert not follows(wash, work("dust", Stage.CLEAN, "hull/deck"))
    assert not follows(wash, work("wipe", Stage.WIPE, "tracks"))


def test_a_free_id_leaves_room_for_its_number():
    """Ids have at most sixty letters; the last four are kept for "-2" and further ones."""
    model = book(replace(BASE, id="b" * 56)).projects[0].models[0]
    assert fresh(model, "b" * 60) == "b" * 56 + "-2"
    assert fresh(model, "c" * 60) == "c" * 56


def test_wishes_about_coats_that_are_left_out_go():
    """Of three coats the first is done: the pins of the second and third go, and of none other."""
    log = (Logged(model="cart", step="base", start=when("18:00"), end=when("18:10")),)
    pins = tuple(
        Pin(model="cart", step=step, coat=coat, on=MONDAY)
        for step, coat in (("base", 1), ("base", 2), ("base", 3), ("base", None), ("last", 1))
    )
    of = book(replace(paint("base", "hull/deck", coats=3)), LAST, log=log, pins=pins)
    short = skipped(of, key("base", 2)).book
    left = [(pin.step, pin.coat) for pin in short.projects[0].pins]
    assert left == [("base", 1), ("base", None), ("last", 1)]
    assert short.projects[0].models[0].steps[0].coats == 1


def test_late_work_takes_twice_as_long_and_no_more_than_a_day():
    """10 + 2 × 700 each part: 20 and 1400; 1000 becomes 1440, not 2000."""
    gate = Gate(after="base", windows=(Window(closes=Mark(minutes=60)),), closing=Bound.END)
    log = (Logged(model="cart", step="base", start=when("18:00"), end=when("18:10")),)
    for fixed, per_part, late in ((10, 700, (20, 1400)), (1000, 1000, (1440, 1440))):
        press = work("press", Stage.PRESS, "hull/deck", gates=(gate,))
        press = replace(press, minutes=Minutes(fixed=fixed, per_part=per_part))
        of = book(BASE, press, log=log)
        (missed,) = missed_closings.missed(of, at("1/18:00"))
        minutes = (
            missed_closings.remedied(of, missed, Remedy.LATE).projects[0].models[0].steps[1].minutes
        )
        assert (minutes.fixed, minutes.per_part) == late


def test_what_is_under_way_ends_now_and_takes_at_least_a_minute():
    log = (Logged(model="cart", step="base", start=when("18:00")),)
    for now, end in (("18:00", "18:01"), ("18:01", "18:01"), ("18:05", "18:05")):
        table = laid(book(BASE, log=log), at(now))
        assert (table.start[0], table.end[0]) == (at("18:00"), at(end))


def test_what_goes_on_alone_ends_when_it_has_taken_its_minutes():
    bath = work("bath", Stage.CLEAN, "hull/deck", minutes=60, traits=(Trait.HANDS_FREE,))
    log = (Logged(model="cart", step="bath", start=when("18:00")),)
    for now, end in (("18:10", "19:00"), ("19:00", "19:00"), ("19:10", "19:10")):
        assert laid(book(bath, log=log), at(now)).end[0] == at(end)


# -- what was done before, and what an evening leaves ----------------------------------------------


def test_what_was_done_before_is_laid_backwards_from_its_last_minute():
    """Pressing ends at the minute told, 20 min after the decals; all else is a day apart."""
    steps = (
        paint("prime", "hull/deck", stage=Stage.PRIME),
        paint("base", "hull/deck", minutes=20, coats=2),
        paint("decals", "hull/deck", coat="sheet", minutes=15, stage=Stage.DECAL),
        work("press", Stage.PRESS, "hull/deck"),
        paint("matte", "hull/deck", stage=Stage.MATTE),
    )
    sheet = Coating(name="sheet", family=Family.DECAL)
    of = book(*steps, coatings=(sheet,))
    of = laid_before(of, "batch", "cart", StageReached.DECALS, at("20:00"))
    ends = [
        (fact.step, fact.coat, minute_of(fact.start), minute_of(fact.end))
        for fact in of.projects[0].log
    ]
    decals = at("20:00") - 10 - 20
    second = decals - 15 - 1440
    first = second - 20 - 1440
    prime = first - 20 - 1440
    assert ends == [
        ("prime", 1, prime - 10, prime),
        ("base", 1, first - 20, first),
        ("base", 2, second - 20, second),
        ("decals", 1, decals - 15, decals),
        ("press", 1, at("19:50"), at("20:00")),
    ]


def test_an_evening_leaves_what_was_ended_in_it_in_the_order_of_time():
    """From 18:00 on: what ended at the very beginning and at this minute is in it, no more."""
    steps = [
        paint(name, place)
        for name, place in (
            ("a", "hull/deck"),
            ("b", "hull/side"),
            ("c", "tracks"),
            ("d", "wheels/rim"),
        )
    ]
    spans = ("18:40", "18:50"), ("17:50", "18:00"), ("18:20", "18:30"), ("17:49", "17:59")
    log = [
        Logged(model="cart", step=step.id, start=when(start), end=when(end))
        for step, (start, end) in zip(steps, spans, strict=True)
    ]
    of = book(*steps, log=tuple(log))
    plan = plan_book(of, at("18:50"))
    sheet = run_sheet(of, plan, at("18:50"))

    def ended(now: str) -> list[str]:
        told = summary(of, plan, sheet, at(now), {}, since=at("18:00"))
        assert [film.key.step for film in told.films] == sorted(key.step for key in told.done)
        return [key.step for key in told.done]

    assert ended("18:50") == ["b", "c", "a"]
    assert ended("18:49") == ["b", "c"]


# -- the brake on wet films ------------------------------------------------------------------------


def begun(**base: object) -> Book:
    """Return a book whose base was laid from 18:00 to 18:10, and a coat to come."""
    log = (Logged(model="cart", step="base", start=when("18:00"), end=when("18:10")),)
    steps = paint("base", "hull/deck", **base), paint("top", "hull/deck", coat="green")  # type: ignore[arg-type]
    return book(*steps, log=log)


def test_the_brake_tells_how_many_minutes_too_early_a_coat_is():
    """Ready at its late minute: then nothing is told, and a minute before one minute is."""
    of = begun()
    opens = ready(of, "sand", State.DRY_TO_RECOAT, at("18:10"))
    assert unready(of, key("top"), opens) == ()
    for early in (1, 10):
        (film,) = unready(of, key("top"), opens - early)
        assert (film.side, film.off, film.ready, film.state) == (
            Miss.EARLY,
            early,
            opens,
            State.DRY_TO_RECOAT,
        )


def test_the_brake_tells_of_what_is_never_ready():
    """In the fog, at 100 % RH, no water leaves a film."""
    (film,) = unready(begun(dries_in="fog"), key("top"), at("3/18:00"))
    assert (film.side, film.off, film.ready) == (Miss.EARLY, None, None)


@pytest.mark.parametrize(
    ("bound", "start", "end", "late"),
    [
        (Bound.START, "18:59", None, None),
        (Bound.START, "19:00", None, 0),
        (Bound.START, "19:05", None, 5),
        (Bound.END, "18:50", "19:00", None),
        (Bound.END, "18:50", "19:01", 1),
    ],
)
def test_the_brake_tells_of_a_window_that_has_closed(bound, start, end, late):
    """Definition 7: from 19:00 on it is too late to begin, and after 19:00 to end."""
    of = closing(bound)
    found = unready(of, key("press"), at(start), None if end is None else at(end))
    assert [film.side for film in found] == ([] if late is None else [Miss.LATE])
    assert [film.closed for film in found] == ([] if late is None else [at("19:00")])


@pytest.mark.parametrize(("names", "airbrush"), [(("fine",), "fine"), (("fine", "wide"), "")])
def test_what_else_was_sprayed_was_sprayed_with_the_only_airbrush_there_is(names, airbrush):
    of = book(spray("base", "hull/deck"))
    of = replace(of, gear=Gear(airbrushes=tuple(Airbrush(name=name) for name in names)))
    work_done = OtherWork("sand", (PaintedModel("batch", "cart", ("hull/deck",)),))
    done, keys = noted(of, work_done, at("18:30"))
    assert keys == (key("base"),)
    (fact,) = done.projects[0].log
    assert fact.airbrush == airbrush
    assert fact.end == when("18:30")
