"""Definitions 6a and 10a in plans: gates meet, the best moment is aimed at, air is a rule."""

from __future__ import annotations

from dataclasses import replace
from itertools import pairwise

import pytest
from judge_cases.making import NOW, at, book, coating, key, paint, spray, work

from planner.bench import calendar_of
from planner.cure import Cure, life_in_room, pot_life
from planner.graph.gates import gates_of
from planner.schedule.greedy import plan_book
from planner.schedule.judge import judge
from planner.values.book import Book
from planner.values.coating import Family, Mark, Window
from planner.values.mix import Mix, Portion
from planner.values.moment import zone_named
from planner.values.plan import Cause, Plan
from planner.values.refusal import Refused
from planner.values.room import AirPoint, Location, Room
from planner.values.step import Bound, Gate, Stage, Step, Tool, Trait


def planned(of: Book) -> Plan:
    """Return the instant plan, accepted by the judge."""
    cure = Cure(of.room, zone_named("UTC"))
    made = plan_book(of, NOW, cure=cure, calendar=calendar_of(of.bench_time))
    assert judge(of, made).accepted, judge(of, made).violations
    return made


def begin(plan: Plan, step: str, coat: int = 1) -> int:
    """Return when a pass begins."""
    placed = plan.placement(key(step, coat))
    assert placed is not None, plan.unplaced
    return placed.start


def gate(after: str, closing: Bound = Bound.START, **marks: int) -> Gate:
    """Return a gate of minutes."""
    window = Window(**{name: Mark(minutes=minutes) for name, minutes in marks.items()})
    return Gate(after=after, windows=(window,), closing=closing)


def chips(*written: Gate) -> Book:
    """Return a book of chipping fluid, a colour over it and its rubbing."""
    return book(
        paint("fluid", "hull/deck", coat="fluid", stage=Stage.CHIP_FLUID),
        paint("top", "hull/deck"),
        work("rub", Stage.CHIP_RUB, "hull/deck", gates=written),
        coatings=(coating("fluid", Family.CHIPPING_FLUID, dry_to_recoat=5),),
    )


def test_chips_are_not_rubbed_two_days_late_though_it_is_written() -> None:
    """Soft for 20 min to 1.5 h: common practice, no source."""
    plan = planned(chips(gate("top", opens=2880)))
    assert [lost.key for lost in plan.unplaced] == [key("rub")]


def test_a_written_gate_narrows_what_custom_allows() -> None:
    plan = planned(chips(gate("top", opens=45)))
    wait = begin(plan, "rub") - begin(plan, "top")
    assert 10 + 45 <= wait <= 90 - 10


def test_a_gate_without_any_time_takes_custom_off() -> None:
    """What was missed is done late, in another way: a pin two days on can be kept."""
    of = chips(Gate(after="top", windows=(Window(),)))
    assert planned(of).unplaced == ()
    held = gates_of(of, of.projects[0], of.projects[0].models[0])
    assert not any(one.closes for one in held if one.after == key("rub"))


def washed(*more: Step) -> Book:
    """Return a book of an oil wash and its wiping, with other work beside it."""
    return book(
        paint("wash", "hull/deck", coat="oil", stage=Stage.OIL_WASH),
        work("wipe", Stage.WIPE, "hull/deck", minutes=10),
        *more,
    )


def test_an_oil_wash_is_wiped_after_a_quarter_of_an_hour() -> None:
    """After 10 to 30 min, not at once: common practice, no source."""
    plan = planned(washed())
    assert begin(plan, "wipe") - (begin(plan, "wash") + 10) == 15
    wipe = plan.placement(key("wipe"))
    assert wipe is not None
    assert (wipe.reason.cause, wipe.reason.detail) == (Cause.WINDOW, "best")


def test_other_work_fills_the_wait_for_the_best_moment() -> None:
    plan = planned(washed(paint("links", "tracks/links", minutes=12)))
    assert begin(plan, "wash") + 10 <= begin(plan, "links") < begin(plan, "wipe")


def test_where_the_evening_ends_before_the_best_moment_it_is_done_before() -> None:
    """From 18:00 to 22:00: what may follow after 60 min is aimed at after 230, in vain."""
    late = gate("one", opens=60, best=230)
    of = book(paint("one", "hull/deck"), paint("two", "hull/deck", gates=(late,)))
    plan = planned(of)
    assert begin(plan, "two") == at("19:10")
    soon = replace(late, windows=(Window(opens=Mark(minutes=60), best=Mark(minutes=100)),))
    of = book(paint("one", "hull/deck"), paint("two", "hull/deck", gates=(soon,)))
    assert begin(planned(of), "two") == at("18:10") + 100


@pytest.mark.parametrize("coats", [2, 3])
def test_coats_from_a_can_follow_within_twenty_minutes(coats: int) -> None:
    """Mist coats follow each other within about 20 min: common practice, no source."""
    of = book(paint("can", "hull/deck", coat="lacquer", minutes=5, tool=Tool.CAN, coats=coats))
    plan = planned(of)
    starts = [begin(plan, "can", coat) for coat in range(1, coats + 1)]
    assert all(5 < later - sooner < 20 for sooner, later in pairwise(starts))


def test_a_best_moment_lies_within_its_window() -> None:
    with pytest.raises(Refused, match="before opens"):
        gate("one", opens=60, best=30)
    with pytest.raises(Refused, match="before closes"):
        gate("one", best=90, closes=90)


# --- the air ------------------------------------------------------------------------------------


def air(at_: str, celsius: float, humidity: float) -> AirPoint:
    """Return the air of an hour."""
    return AirPoint(at=at_, temperature_c=celsius, humidity_pct=humidity)


def in_air(of: Book, *points: AirPoint, outdoors: tuple[AirPoint, ...] = ()) -> Book:
    """Return the book in other air, perhaps with a place out of doors."""
    bench = Location(name="bench", drying_places=9, workdays=points)
    places = [bench]
    if outdoors:
        places.append(Location(name="yard", drying_places=9, workdays=outdoors, outdoors=True))
    return replace(of, room=Room(locations=tuple(places)))


LACQUER = book(spray("base", "hull/deck", coat="lacquer"))
DRIES_OUT = (air("00:00", 23, 82), air("19:00", 23, 82), air("20:00", 23, 42), air("23:00", 23, 42))


def test_lacquer_waits_until_the_room_has_dried() -> None:
    """82 % at 19:00 falls to 42 % at 20:00, below 70 % from 19:18 on: the quarter of 19:30."""
    plan = planned(in_air(LACQUER, *DRIES_OUT))
    assert begin(plan, "base") == at("19:30")
    placed = plan.placement(key("base"))
    assert placed is not None
    assert placed.reason.cause is Cause.AIR


def test_the_persons_word_lets_it_be_laid_all_the_same() -> None:
    of = book(spray("base", "hull/deck", coat="lacquer", traits=(Trait.ANY_AIR,)))
    assert begin(planned(in_air(of, *DRIES_OUT)), "base") == at("18:03")


def test_a_brush_minds_no_damp_and_a_label_binds_every_tool() -> None:
    brushed = book(paint("base", "hull/deck", coat="lacquer"))
    assert begin(planned(in_air(brushed, *DRIES_OUT)), "base") == at("18:00")
    strict = replace(coating("lacquer", Family.SOLVENT_LACQUER), most_humidity_pct=60)
    bound = book(paint("base", "hull/deck", coat="lacquer"), coatings=(strict,))
    assert begin(planned(in_air(bound, *DRIES_OUT)), "base") == at("19:45")


def test_what_no_evening_allows_has_no_place_and_says_why() -> None:
    plan = planned(in_air(LACQUER, air("00:00", 23, 82)))
    (lost,) = plan.unplaced
    assert "82 % RH" in lost.why
    assert "in any air" in lost.why


def test_a_can_meets_the_weather_and_its_film_the_room() -> None:
    can = book(paint("base", "hull/deck", coat="lacquer", minutes=5, tool=Tool.CAN))
    fine, foul = (air("00:00", 22, 50),), (air("00:00", 4, 93),)
    assert planned(in_air(can, *fine, outdoors=foul)).unplaced
    assert not planned(in_air(can, air("00:00", 23, 82), outdoors=fine)).unplaced


def test_a_sprayed_coat_meets_the_air_where_one_sprays_and_a_brushed_one_the_bench() -> None:
    """A dry bench and a damp second room, and the other way round."""
    dry, damp = (air("00:00", 23, 42),), (air("00:00", 23, 82),)

    def rooms(first: tuple[AirPoint, ...], second: tuple[AirPoint, ...]) -> Room:
        bench = Location(name="bench", drying_places=9, workdays=first)
        booth = Location(name="booth", drying_places=9, workdays=second, spraying=True)
        return Room(locations=(bench, booth))

    strict = replace(coating("lacquer", Family.SOLVENT_LACQUER), most_humidity_pct=60)
    sprayed = book(spray("base", "hull/deck", coat="lacquer"), coatings=(strict,))
    brushed = book(paint("base", "hull/deck", coat="lacquer"), coatings=(strict,))
    canned = book(
        paint("base", "hull/deck", coat="lacquer", minutes=5, tool=Tool.CAN), coatings=(strict,)
    )
    for of, where in ((sprayed, "booth"), (canned, "booth"), (brushed, "bench")):
        fit, unfit = (rooms(damp, dry), rooms(dry, damp))[:: 1 if where == "booth" else -1]
        assert not planned(replace(of, room=fit)).unplaced
        assert planned(replace(of, room=unfit)).unplaced
    with pytest.raises(Refused, match="more than one place to spray in"):
        Room(locations=tuple(replace(one, spraying=True) for one in rooms(dry, damp).locations))


# --- the life of a two-pack ---------------------------------------------------------------------


def two_pack(minutes: int, celsius: float) -> Book:
    """Return a book of one brushed two-pack with a label life of two hours."""
    resin = replace(coating("resin", Family.TWO_PACK), pot_life_minutes=120)
    of = book(paint("base", "hull/deck", coat="resin", minutes=minutes), coatings=(resin,))
    return in_air(of, air("00:00", celsius, 50))


def test_a_two_pack_lasts_half_as_long_where_it_is_ten_degrees_warmer() -> None:
    """UFGS-09971 par. 3.7.1.3: 4 h at 11 °C, 2 h at 21 °C, 1 h at 31 °C."""
    assert not planned(two_pack(100, 23)).unplaced
    assert not planned(two_pack(60, 32)).unplaced
    (lost,) = planned(two_pack(70, 34)).unplaced
    assert "can be used for 5" in lost.why
    assert "at up to 34 °C" in lost.why


@pytest.mark.parametrize(("celsius", "told"), [(31, 60), (21, 120), (11, 240)])
def test_pot_lives_as_published(celsius: float, told: int) -> None:
    """The same rule, against its middle; within a fifth, since slopes run from 41 to 63 kJ/mol."""
    ours = pot_life(1000, celsius) / pot_life(1000, 21) * 120
    assert ours == pytest.approx(told, rel=0.2)
    assert pot_life(120, -5) == 240  # twice at most


def test_what_a_mix_says_of_itself_is_not_stretched() -> None:
    """Thinned acrylic keeps by its own count; a two-pack in a mix by warmth."""
    resin = replace(coating("resin", Family.TWO_PACK), pot_life_minutes=120)
    portions = (Portion(coating="resin", parts=1),)
    of = replace(
        book(coatings=(resin,)), mixes=(Mix(name="tint", portions=portions, life_minutes=90),)
    )
    cold, hot = in_air(of, air("00:00", 11, 50)), in_air(of, air("00:00", 36, 50))
    assert life_in_room(cold, "tint") == 90
    warm = life_in_room(hot, "tint")
    assert warm is not None
    assert warm < 60
