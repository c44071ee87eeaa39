"""Plans that break definitions 3 to 11: order, gates that open and close, films."""

from __future__ import annotations

from dataclasses import replace

from judge_cases.making import (
    Case,
    at,
    book,
    breaks,
    clean,
    coating,
    do,
    key,
    load,
    on_bench,
    paint,
    piece,
    plan,
    prepare,
    ready,
    spray,
    sprayed,
    work,
)

from planner.values.coating import Clock, Family, Finish, Mark, Preparation, State, Window
from planner.values.plan import Plan
from planner.values.room import AirPoint, Location, Room
from planner.values.step import Bound, Gate, Stage, Tool

TWICE = book(paint("base", "hull/deck", coat="hourly"), paint("top", "hull/deck", coat="hourly"))
FIRST = do("base", "18:00-18:10")


@breaks(3)
def the_later_coat_first() -> Case:
    of = book(paint("base", "tracks"), paint("top", "hull/deck", after=("base",)))
    sound = plan(of, FIRST, do("top", "18:10-18:20"))
    return Case(of, sound, plan(of, do("base", "18:10-18:20"), do("top", "18:00-18:10")))


@breaks(3)
def the_same_place_at_the_wrong_time() -> Case:
    of = book(paint("base", "hull/deck"), work("press", Stage.PRESS, "hull/deck"))
    sound = plan(of, FIRST, do("press", "18:10-18:20"))
    return Case(of, sound, plan(of, do("base", "18:10-18:20"), do("press", "18:00-18:10")))


@breaks(3)
def what_it_waits_for_is_missing() -> Case:
    of = book(paint("base", "hull/deck"), work("press", Stage.PRESS, "hull/deck"))
    sound = plan(of, unplaced=["base", "press"])
    return Case(of, sound, plan(of, do("press", "18:00-18:10"), unplaced=["base"]))


@breaks(4)
def an_opening_counted_from_the_start() -> Case:
    """Opens 60 min after 18:10; at 19:00 only 60 min after 18:00 have passed."""
    sound = plan(TWICE, FIRST, do("top", "19:10-19:20"))
    return Case(TWICE, sound, plan(TWICE, FIRST, do("top", "19:00-19:10")))


WIPED = book(
    paint("base", "hull/deck"),
    work(
        "wipe",
        Stage.WIPE,
        "hull/deck",
        gates=(Gate(after="base", windows=(Window(closes=Mark(minutes=60)),), closing=Bound.END),),
    ),
)


def wiped(spans: str) -> Plan:
    return plan(WIPED, FIRST, do("wipe", spans))


@breaks(4)
def a_closing_counted_from_the_end() -> Case:
    """Closes 60 min after 18:00; work to 19:10 ends 60 min after 18:10."""
    return Case(WIPED, wiped("18:50-19:00"), wiped("19:00-19:10"))


@breaks(7)
def wiped_back_too_late() -> Case:
    return Case(WIPED, wiped("18:50-19:00"), wiped("19:01-19:11"))


@breaks(7)
def a_written_gate_that_would_widen_custom() -> Case:
    """Definition 6a: three hours are written, and the chips are hard after 90 min all the same."""
    gate = Gate(after="top", windows=(Window(closes=Mark(minutes=180)),))
    of = book(
        paint("fluid", "hull/deck", coat="fluid", stage=Stage.CHIP_FLUID),
        paint("top", "hull/deck"),
        work("rub", Stage.CHIP_RUB, "hull/deck", gates=(gate,)),
        coatings=(coating("fluid", Family.CHIPPING_FLUID, dry_to_recoat=5),),
    )
    laid = do("fluid", "18:00-18:10"), do("top", "18:30-18:40")
    sound = plan(of, *laid, do("rub", "19:50-20:00"))
    return Case(of, sound, plan(of, *laid, do("rub", "20:01-20:11")))


@breaks(4)
def wiped_at_once() -> Case:
    """Definition 6a: an oil wash is wiped 5 min after its end at the earliest."""
    of = book(
        paint("wash", "hull/deck", coat="oil", stage=Stage.OIL_WASH),
        work("wipe", Stage.WIPE, "hull/deck"),
    )
    laid = do("wash", "18:00-18:10")
    sound = plan(of, laid, do("wipe", "18:15-18:25"))
    return Case(of, sound, plan(of, laid, do("wipe", "18:14-18:24")))


@breaks(8)
def a_second_coat_from_the_can_in_the_forbidden_middle() -> Case:
    """Definition 6a: within 20 min of the first, or after a day."""
    can = {"coat": "lacquer", "minutes": 5, "tool": Tool.CAN}
    of = book(paint("one", "hull/deck", **can), paint("two", "hull/deck", **can))
    first = do("one", "18:00-18:05")
    sound = plan(of, first, do("two", "18:19-18:24"))
    return Case(of, sound, plan(of, first, do("two", "18:20-18:25")))


@breaks(7)
def started_too_late() -> Case:
    """A closing at 19:00 is over at 19:00; from the end of the coat it would be 19:10."""
    gate = Gate(after="base", windows=(Window(closes=Mark(minutes=60)),))
    of = book(paint("base", "hull/deck"), work("press", Stage.PRESS, "hull/deck", gates=(gate,)))
    sound = plan(of, FIRST, do("press", "18:59-19:09"))
    return Case(of, sound, plan(of, FIRST, do("press", "19:10-19:20")))


@breaks(7)
def later_than_the_early_band() -> Case:
    """120 film minutes may be over in fewer minutes; a minute before 20:00 is too late."""
    window = Window(closes=Mark(minutes=120, clock=Clock.FILM))
    gate = Gate(after="base", windows=(window,))
    of = book(
        paint("base", "hull/deck", minutes=1),
        work("press", Stage.PRESS, "hull/deck", gates=(gate,)),
    )
    first = do("base", "18:00-18:01")
    sound = plan(of, first, do("press", "18:30-18:40"))
    return Case(of, sound, plan(of, first, do("press", "19:58-20:08")))


@breaks(6)
def not_yet_dry_to_recoat() -> Case:
    of = book(paint("base", "hull/deck"), paint("top", "hull/deck"))
    opens = ready(of, "sand", State.DRY_TO_RECOAT, at("18:10"))
    sound = plan(of, FIRST, do("top", piece(opens, 10)))
    return Case(of, sound, plan(of, FIRST, do("top", "18:10-18:20")))


GLOSS = replace(coating("gloss"), finish=Finish.GLOSS)


@breaks(6)
def a_wash_over_gloss_that_has_pooled() -> Case:
    """Half as thick again (definition 5), exponent 1.5: 100 min become 184, before the band."""
    of = book(
        paint("shine", "hull/deck", coat="gloss", stage=Stage.VARNISH),
        paint("grime", "hull/deck", coat="oil", stage=Stage.OIL_WASH),
        coatings=(GLOSS,),
    )
    first = do("shine", "18:00-18:10")
    flat = ready(of, "gloss", State.SOLVENT_SAFE, at("18:10"))
    pooled = ready(of, "gloss", State.SOLVENT_SAFE, at("18:10"), um=30)
    assert flat + 75 < pooled
    sound = plan(of, first, do("grime", on_bench(of, pooled)))
    return Case(of, sound, plan(of, first, do("grime", piece(flat, 10))))


@breaks(6)
def ready_in_the_nominal_band_only() -> Case:
    """The label says 150 min and the air is that of the label; the late band waits longer."""
    of = book(
        paint("base", "hull/deck"),
        paint("top", "hull/deck"),
        coatings=(coating("sand", dry_to_recoat=150),),
    )
    opens = ready(of, "sand", State.DRY_TO_RECOAT, at("18:10"))
    sound = plan(of, FIRST, do("top", on_bench(of, opens)))
    return Case(of, sound, plan(of, FIRST, do("top", piece(at("18:10") + 150, 10))))


@breaks(6)
def a_minute_before_it_opens() -> Case:
    """The coat takes a minute, so that 60 min from its start would not do either."""
    of = book(
        paint("base", "hull/deck", coat="hourly", minutes=1),
        paint("top", "hull/deck", coat="hourly"),
    )
    first = do("base", "18:00-18:01")
    sound = plan(of, first, do("top", "19:01-19:11"))
    return Case(of, sound, plan(of, first, do("top", "18:59-19:09")))


@breaks(5)
def a_buried_film_is_reached() -> Case:
    """White spirit reaches the slow film below; the one on top is safe long before."""
    slow = coating("lacquer", Family.SOLVENT_LACQUER, solvent_safe=2000)
    of = book(
        paint("base", "hull/deck", coat="lacquer"),
        paint("top", "hull/deck", coat="green"),
        paint("grime", "hull/deck", coat="oil", stage=Stage.OIL_WASH),
        coatings=(slow,),
    )
    second = on_bench(of, ready(of, "lacquer", State.DRY_TO_RECOAT, at("18:10")))
    alone = ready(of, "lacquer", State.SOLVENT_SAFE, at("18:10"))
    safe = on_bench(of, alone + (alone - second.end))  # under another coat it takes longer
    early = on_bench(of, ready(of, "green", State.SOLVENT_SAFE, second.end))
    assert early.end < safe.start
    coats = FIRST, do("top", second)
    sound = plan(of, *coats, do("grime", safe))
    return Case(of, sound, plan(of, *coats, do("grime", early)))


@breaks(5)
def fingers_on_a_wet_part() -> Case:
    of = book(paint("base", "wheels/tread"), paint("rims", "wheels/rim"))
    dry = ready(of, "sand", State.DRY_TO_HANDLE, at("18:10"))
    sound = plan(of, FIRST, do("rims", piece(dry, 10)))
    return Case(of, sound, plan(of, FIRST, do("rims", piece(dry - 1, 10))))


@breaks(5)
def fingers_on_a_wet_part_while_preparing() -> Case:
    """The rims may be painted by then, but scuffing them begins too early."""
    scuff = Window(opens=Mark(minutes=0), preparation=Preparation.SCUFF, preparation_minutes=20)
    of = book(
        paint("rims", "wheels/rim", coat="scuffed"),
        paint("base", "wheels/tread"),
        paint("again", "wheels/rim", coat="scuffed"),
        coatings=(coating("scuffed", recoat=(scuff,)),),
    )
    second = piece(ready(of, "scuffed", State.DRY_TO_HANDLE, at("18:10")), 10)
    dry = ready(of, "sand", State.DRY_TO_HANDLE, second.end)
    coats = do("rims", "18:00-18:10"), do("base", second)

    def made(begin: int) -> Plan:
        work = replace(prepare("18:00-18:20", "again"), interval=piece(begin, 20))
        return plan(of, *coats, do("again", piece(begin + 20, 10)), bench=[work])

    return Case(of, made(dry), made(dry - 5))


TWO_WINDOWS = (
    Window(closes=Mark(minutes=60)),
    Window(opens=Mark(minutes=1440), preparation=Preparation.SCUFF, preparation_minutes=15),
)
AEROSOL = book(
    paint("base", "hull/deck", coat="aerosol"),
    paint("top", "hull/deck", coat="aerosol"),
    coatings=(coating("aerosol", Family.SOLVENT_LACQUER, TWO_WINDOWS),),
)
SCUFFED = plan(
    AEROSOL,
    FIRST,
    do("top", "1/18:25-1/18:35"),
    bench=[prepare("1/18:10-1/18:25", "top")],
)


@breaks(8)
def in_the_forbidden_middle() -> Case:
    """Within the hour or after a day, and not between."""
    sound = plan(AEROSOL, FIRST, do("top", "18:59-19:09"))
    return Case(AEROSOL, sound, plan(AEROSOL, FIRST, do("top", "19:30-19:40")))


@breaks(8)
def without_its_preparation() -> Case:
    return Case(AEROSOL, SCUFFED, plan(AEROSOL, FIRST, do("top", "1/18:25-1/18:35")))


@breaks(8)
def prepared_before_the_window_opened() -> Case:
    bench = [prepare("1/18:09-1/18:24", "top")]
    broken = plan(AEROSOL, FIRST, do("top", "1/18:25-1/18:35"), bench=bench)
    return Case(AEROSOL, SCUFFED, broken)


@breaks(8)
def prepared_too_briefly() -> Case:
    bench = [prepare("1/18:10-1/18:24", "top")]
    broken = plan(AEROSOL, FIRST, do("top", "1/18:25-1/18:35"), bench=bench)
    return Case(AEROSOL, SCUFFED, broken)


@breaks(8)
def prepared_for_nothing() -> Case:
    of = book(paint("base", "hull/deck"))
    stray = replace(prepare("19:00-19:10", "base"), serves=key("polish"))
    return Case(of, plan(of, FIRST), plan(of, FIRST, bench=[stray]))


@breaks(9)
def outside_an_uncertain_window() -> Case:
    """Recoat opens 19:45 at nominal values and closes 19:50; no band leaves it open."""
    window = Window(opens=Mark(state=State.DRY_TO_RECOAT), closes=Mark(minutes=110))
    of = book(
        paint("base", "hull/deck", coat="brief", minutes=5),
        paint("top", "hull/deck", coat="brief"),
        coatings=(coating("brief", recoat=(window,), dry_to_recoat=100),),
    )
    first = do("base", "18:00-18:05")
    sound = plan(of, first, do("top", "19:45-19:55"))
    return Case(of, sound, plan(of, first, do("top", "19:50-20:00")))


@breaks(10)
def a_film_that_never_dries() -> Case:
    """In saturated air no water leaves the film."""
    of = book(paint("base", "hull/deck", dries_in="fog"), paint("top", "hull/deck"))
    sound = plan(of, FIRST, unplaced=["top"])
    return Case(of, sound, plan(of, FIRST, do("top", "3/18:00-3/18:10")))


@breaks(10)
def a_film_carried_off_while_it_is_waited_for() -> Case:
    """The wash waits for the base to be solvent-safe in the box; the part leaves it before."""
    of = book(
        paint("base", "hull/deck", dries_in="box"),
        paint("side", "hull/side"),
        paint("grime", "hull/deck", coat="oil", stage=Stage.OIL_WASH),
        coatings=(coating("sand", solvent_safe=100),),
    )
    safe = ready(of, "sand", State.SOLVENT_SAFE, at("18:10"), "box")
    late = on_bench(of, safe, 10)
    sound = plan(of, FIRST, do("side", late), do("grime", piece(late.end, 10)))
    broken = plan(of, FIRST, do("side", "18:10-18:20"), do("grime", piece(late.end, 10)))
    return Case(of, sound, broken)


@breaks(10)
def sprayed_in_air_that_forbids_it() -> Case:
    """Definition 10a: 72 % until 19:00 frosts a lacquer, 50 % from 19:30 does not.

    From 70 % on all call it too damp: common practice, no source.
    """
    damp = [AirPoint(at=clock, temperature_c=23, humidity_pct=72) for clock in ("00:00", "19:00")]
    dry = [AirPoint(at=clock, temperature_c=23, humidity_pct=50) for clock in ("19:30", "23:00")]
    bench = Location(name="bench", drying_places=10, workdays=(*damp, *dry))
    of = book(spray("base", "hull/deck", coat="lacquer"))
    of = replace(of, room=Room(locations=(bench,)))
    late = load("19:27-19:30", "lacquer"), clean("19:40-19:46")
    sound = plan(of, sprayed("base", "19:30-19:40"), bench=late)
    soon = load("18:50-18:53", "lacquer"), clean("19:03-19:09")
    return Case(of, sound, plan(of, sprayed("base", "18:53-19:03"), bench=soon))


MELTING = (
    Window(closes=Mark(minutes=60), merges=True),
    Window(opens=Mark(minutes=180)),
)


@breaks(11)
def two_coats_that_melted_into_one() -> Case:
    """The second coat goes on at once; the double film is solvent-safe later than either."""
    of = book(
        paint("base", "hull/deck", coat="lacquer"),
        paint("top", "hull/deck", coat="clear"),
        paint("grime", "hull/deck", coat="oil", stage=Stage.OIL_WASH),
        coatings=(
            coating("lacquer", Family.SOLVENT_LACQUER, MELTING, solvent_safe=40),
            coating("clear", Family.SOLVENT_LACQUER, solvent_safe=40),
        ),
    )
    coats = FIRST, do("top", "18:10-18:20")
    thin = ready(of, "clear", State.SOLVENT_SAFE, at("18:20"))
    thick = ready(of, "clear", State.SOLVENT_SAFE, at("18:20"), um=40)
    sound = plan(of, *coats, do("grime", on_bench(of, thick)))
    return Case(of, sound, plan(of, *coats, do("grime", piece(thin, 10))))


@breaks(11)
def a_coat_dries_with_what_lies_below_it() -> Case:
    """Half an hour after the first coat the second hardens later than if it lay alone."""
    slow = coating("lacquer", Family.SOLVENT_LACQUER, solvent_safe=600)
    of = book(
        paint("base", "hull/deck", coat="lacquer"),
        paint("top", "hull/deck", coat="lacquer"),
        paint("grime", "hull/deck", coat="oil", stage=Stage.OIL_WASH),
        coatings=(slow,),
    )
    second = on_bench(of, ready(of, "lacquer", State.DRY_TO_RECOAT, at("18:10")))
    coats = FIRST, do("top", second)
    alone = ready(of, "lacquer", State.SOLVENT_SAFE, second.end)
    late = on_bench(of, alone + 2 * 1440)
    sound = plan(of, *coats, do("grime", late))
    return Case(of, sound, plan(of, *coats, do("grime", on_bench(of, alone))))


@breaks(11)
def the_clock_of_a_melted_film_starts_anew() -> Case:
    """Gates on the lower coat count from the second coat too."""
    gate = Gate(after="base", windows=(Window(opens=Mark(minutes=90)),))
    of = book(
        paint("base", "hull/deck", coat="lacquer"),
        paint("top", "hull/deck", coat="lacquer"),
        work("press", Stage.PRESS, "hull/deck", gates=(gate,)),
        coatings=(coating("lacquer", Family.SOLVENT_LACQUER, MELTING),),
    )
    coats = FIRST, do("top", "18:50-19:00")
    sound = plan(of, *coats, do("press", "20:30-20:40"))
    return Case(of, sound, plan(of, *coats, do("press", "19:40-19:50")))
