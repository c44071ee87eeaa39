"""Books in which every field of the values may be set, for the tests of storage."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, date, datetime, timedelta
from zoneinfo import ZoneInfo

from hypothesis import strategies as st
from strategies import DEMO_COATINGS, NOW, SINCE, books

from planner.values.bench_time import Extra, Recurring
from planner.values.book import Book
from planner.values.coating import (
    Clock,
    Coating,
    Family,
    Finish,
    Mark,
    Preparation,
    State,
    StateTime,
    Window,
)
from planner.values.drying_card import CardTrial, DryingCard, TrialResult
from planner.values.gear import Cleaned
from planner.values.mix import Portion
from planner.values.model import Chosen, Made, Measure, ModelKind, NamedChange, RealSize, Shape
from planner.values.project import Event, Happened, Logged, Observed, Pin, Project, Used
from planner.values.room import AirPoint, Location, Reading
from planner.values.sequence import EVERY, Colour, Option, Sequence, SequenceStep
from planner.values.step import Application, Bound, Gate, Minutes, Stage, Step, Tool, Trait
from planner.values.supplies import Card, Consumable, Drops, Leftover, Supplies
from planner.values.wishes import USUAL_ORDER, Learned, Pace, Preferences

_words = st.text(
    st.characters(codec="utf-8", categories=["L", "N", "P", "S"], exclude_characters="/"),
    min_size=1,
    max_size=12,
)
_notes = st.text(st.characters(codec="utf-8", exclude_characters="\0"), max_size=30)
_swatches = st.from_regex(r"#[0-9a-f]{6}", fullmatch=True)


def _aware(zone: str) -> st.SearchStrategy[datetime]:
    """Draw whole minutes with the offset that the zone had then, in none of its odd hours."""
    first = datetime(1999, 1, 1)  # noqa: DTZ001 - hypothesis adds the zone
    last = datetime(2150, 1, 1)  # noqa: DTZ001
    whole = st.datetimes(first, last, timezones=st.just(UTC))
    return whole.map(
        lambda at: datetime.fromisoformat(
            at.replace(second=0, microsecond=0).astimezone(ZoneInfo(zone)).isoformat()
        )
    )


@st.composite
def marks(draw: st.DrawFn, least: int, most: int) -> Mark:
    """Draw a mark in minutes on either clock, within bounds."""
    clock = draw(st.sampled_from(Clock))
    return Mark(minutes=draw(st.integers(least, most)), clock=clock)


@st.composite
def windows(draw: st.DrawFn) -> tuple[Window, ...]:
    """Draw one or two windows, the second after a scuffing."""
    first = Window(
        opens=draw(st.none() | st.just(Mark(state=State.SET_TO_TOUCH)) | marks(0, 60)),
        closes=draw(marks(100, 900)),
        merges=draw(st.booleans()),
    )
    second = Window(
        opens=Mark(minutes=1440, clock=draw(st.sampled_from(Clock))),
        preparation=draw(st.sampled_from([Preparation.SCUFF, Preparation.WIPE])),
        preparation_minutes=draw(st.integers(1, 30)),
    )
    return draw(st.sampled_from([(), (first,), (first, second)]))


@st.composite
def coatings(draw: st.DrawFn, name: str) -> Coating:
    """Draw a coating with every field in use."""
    states = draw(st.lists(st.sampled_from(State), max_size=3, unique=True))
    return Coating(
        name=name,
        family=draw(st.sampled_from([Family.WATERBORNE_ACRYLIC, Family.TWO_PACK])),
        finish=draw(st.sampled_from(Finish)),
        swatch=draw(_swatches),
        solids=draw(st.floats(0.01, 1)),
        dry_film_um=draw(st.floats(0.1, 2000)),
        times=tuple(
            StateTime(state=state, minutes=draw(st.integers(0, 9000)), source=f"label {number}")
            for number, state in enumerate(states)
        ),
        recoat=draw(windows()),
        pot_life_minutes=draw(st.none() | st.integers(1, 600)),
        least_c=draw(st.none() | st.floats(-20, 60)),
        most_c=draw(st.none() | st.floats(-20, 60)),
        most_humidity_pct=draw(st.none() | st.floats(1, 100)),
        in_stock_ml=draw(st.floats(0, 1e6)),
        counted=draw(st.none() | st.just(NOW)),
        bottle_ml=draw(st.floats(0.1, 100)),
        drops_per_ml=draw(st.none() | st.floats(1, 200)),
        opened=draw(st.none() | st.dates(date(1999, 1, 1), date(2150, 1, 1))),
        slowness=draw(st.floats(0.25, 4)),
    )


@st.composite
def sequences(draw: st.DrawFn) -> Sequence:
    """Draw a sequence of two steps with every field in use."""
    step = Step(
        id="base",
        stage=Stage.BASE,
        applications=(
            Application(places=(EVERY,), coating="colour", share=draw(st.floats(0.1, 1))),
        ),
        minutes=Minutes(fixed=2, per_change=draw(st.integers(0, 5))),
        traits=tuple(draw(st.lists(st.sampled_from(Trait), unique=True))),
        or_in=draw(st.sampled_from([(), ("warm box",)])),
        look_in=draw(st.none() | st.integers(1, 90)),
    )
    gate = Gate(after="base", windows=draw(windows()) or (Window(opens=Mark(minutes=9)),))
    last = Step(id="last", stage=Stage.WEATHER, touches=("hull",), minutes=Minutes(fixed=1))
    option = draw(_words)
    return Sequence(
        name=draw(_words),
        note=draw(_notes),
        colours=(Colour(name="colour", usual="sand", note=draw(_notes)),),
        options=(Option(name=option, usual=draw(st.booleans()), choice="a", note=draw(_notes)),),
        steps=(
            SequenceStep(step=step),
            SequenceStep(
                step=replace(last, gates=(gate,), after=("base",)),
                needs=draw(st.sampled_from([(), (option,)])),
                unless=draw(st.sampled_from([(), (option,)])),
            ),
        ),
        made_for_cm2=draw(st.floats(1, 500)),
    )


@st.composite
def supplies(draw: st.DrawFn) -> Supplies:
    """Draw supplies with every field in use."""
    tape = Consumable(
        name=draw(_words),
        unit="m",
        in_stock=draw(st.floats(0, 99)),
        per_pass=draw(st.floats(0, 9)),
        stages=tuple(draw(st.lists(st.sampled_from(Stage), unique=True, max_size=3))),
        counted=draw(st.none() | st.just(NOW)),
    )
    kept = Leftover(
        name=draw(_words),
        ml=draw(st.floats(0, 50)),
        made=NOW,
        keeps_days=draw(st.integers(1, 90)),
        portions=(Portion(coating="sand", parts=draw(st.floats(0.01, 9))),),
    )
    card = Card(
        name=draw(_words),
        on=SINCE,
        drops=(Drops(coating="sand", drops=draw(st.integers(1, 99))),),
        note=draw(_notes),
        photo=draw(st.sampled_from(["", "ab.jpg"])),
    )
    return Supplies(
        margin_pct=draw(st.floats(0, 100)),
        consumables=draw(st.sampled_from([(), (tape,)])),
        leftovers=draw(st.sampled_from([(), (kept,)])),
        cards=draw(st.sampled_from([(), (card,)])),
    )


@st.composite
def paces(draw: st.DrawFn) -> Pace:
    """Draw what was learned, for up to three stages by brush."""
    stages = draw(st.lists(st.sampled_from(Stage), unique=True, max_size=3))
    return Pace(
        learned=tuple(
            Learned(stage=stage, tool=Tool.BRUSH, factor=draw(st.floats(0.1, 10)), since=NOW)
            for stage in stages
        )
    )


@st.composite
def rich_books(draw: st.DrawFn) -> Book:
    """Draw a book in which every field of the values may be set."""
    book = draw(books(most_models=2, most_blocks=3, logged=True, pinned=True))
    at = _aware(book.bench_time.zone)
    known = {coating.name for coating in DEMO_COATINGS}
    fresh = draw(st.lists(_words.filter(lambda word: word not in known), max_size=2, unique=True))
    extra_coatings = tuple(draw(coatings(name)) for name in fresh if name != "faded sand")
    start = draw(at)
    reading = Reading(at=start, temperature_c=19.25, humidity_pct=draw(st.floats(0, 100)))
    warm = Location(
        name="warm box",
        drying_places=2,
        workdays=(AirPoint(at="00:00", temperature_c=35, humidity_pct=20),),
        weekends=(AirPoint(at="06:30", temperature_c=draw(st.floats(-30, 60)), humidity_pct=1),),
    )
    bench_time = replace(
        book.bench_time,
        extra=(Extra(start=start, end=start + timedelta(minutes=50), people=2),),
        daylight=draw(
            st.sampled_from(
                [(), (Recurring(rule="FREQ=DAILY", since=SINCE, start="08:00", end="17:00"),)]
            )
        ),
    )
    room = replace(
        book.room,
        locations=(*book.room.locations, warm),
        readings=draw(st.sampled_from([(), (reading,)])),
        volume_m3=draw(st.floats(1, 100_000)),
    )
    projects = tuple(draw(_enriched(project)) for project in book.projects)
    return replace(
        book,
        coatings=(*book.coatings, *extra_coatings),
        bench_time=bench_time,
        room=room,
        projects=projects,
        sequences=draw(st.sampled_from([(), (draw(sequences()),)])),
        supplies=draw(supplies()),
        preferences=Preferences(order=tuple(draw(st.permutations(USUAL_ORDER)))),
        pace=draw(paces()),
        cleaned=tuple(
            Cleaned(airbrush=draw(_words), at=draw(at)) for _ in range(draw(st.integers(0, 2)))
        ),
        drying_cards=draw(drying_cards(book.coatings[0].name)),
    )


@st.composite
def drying_cards(draw: st.DrawFn, coating: str) -> tuple[DryingCard, ...]:
    """Draw no card, or one with some trials."""
    if draw(st.booleans()):
        return ()
    tried = [
        TrialResult(
            trial=draw(st.sampled_from(CardTrial)),
            at=NOW + timedelta(minutes=draw(st.integers(1, 9999))),
            held=draw(st.booleans()),
        )
        for _ in range(draw(st.integers(0, 2)))
    ]
    film = draw(st.sampled_from([None, 12.5]))
    where = draw(st.sampled_from(["", "warm box"]))
    card = DryingCard(
        coating=coating, laid=NOW, location=where, dry_film_um=film, tried=tuple(tried)
    )
    return (card,)


@st.composite
def _enriched(draw: st.DrawFn, project: Project) -> Project:
    model = project.models[0]
    steps = list(model.steps)
    steps[0] = replace(
        steps[0], title=draw(_notes), dries_in="warm box", helper=draw(st.booleans())
    )
    drawn = draw(windows())
    last = steps[-1]
    if last is not steps[0] and drawn and last.split_least is None:
        closing = draw(st.sampled_from(Bound)) if last.coats == 1 else Bound.START
        gate = Gate(after=steps[0].id, windows=drawn, closing=closing)
        steps[-1] = replace(steps[-1], gates=(*steps[-1].gates, gate))
    pin = Pin(
        model=model.name,
        step=steps[0].id,
        coat=1,
        start=NOW,
        end=NOW + timedelta(minutes=draw(st.integers(1, 500))),
    )
    waits = Pin(model=model.name, step=steps[-1].id, not_before=draw(st.just(NOW)))
    beside = (
        Pin(model=model.name, step=steps[-1].id, beside=f"{model.name}/{steps[0].id}")
        if len(steps) > 1
        else pin
    )
    body = Measure(shape=Shape.CYLINDER, length_mm=draw(st.floats(0.1, 99)), width_mm=4, count=2)
    spot = replace(
        model.parts[0].places[0],
        measures=(body,),
        detail=draw(st.floats(0.1, 5)),
        share=draw(st.floats(0, 5)),
    )
    stressed = replace(
        model.parts[0],
        stressed=draw(st.booleans()),
        places=(spot, *model.parts[0].places[1:]),
    )
    made = Made(
        sequence="any",
        options=draw(st.sampled_from([(), ("dust", "rust")])),
        colours=draw(st.sampled_from([(), (Chosen(colour="base", coating="sand"),)])),
        changes=draw(st.sampled_from([(), (NamedChange.NO_DECALS, NamedChange.BRUSH)])),
    )
    model = replace(
        model,
        steps=tuple(steps),
        scale="1:72",
        kind=draw(st.sampled_from(ModelKind)),
        parts=(stressed, *model.parts[1:]),
        real_size=draw(st.none() | st.just(RealSize(length_m=4, width_m=2, height_m=1.5))),
        made=draw(st.none() | st.just(made)),
    )
    seen = Observed(
        model=model.name,
        step=steps[0].id,
        at=NOW,
        state=draw(st.sampled_from(State)),
        reached=False,
    )
    told = Happened(at=NOW, event=draw(st.sampled_from(Event)), step="gone", text=draw(_notes))
    return replace(
        project,
        models=(model, *project.models[1:]),
        active=draw(st.booleans()),
        pins=draw(st.sampled_from([(*project.pins, pin), (pin, waits), (pin, beside)])),
        note=draw(_notes),
        pilot=draw(st.sampled_from(["", model.name])),
        observed=draw(st.sampled_from([(), (seen,)])),
        diary=draw(st.sampled_from([(), (told,)])),
        begins=draw(st.none() | st.just(SINCE)),
        log=tuple(draw(_told(entry)) for entry in project.log),
    )


@st.composite
def _told(draw: st.DrawFn, entry: Logged) -> Logged:
    """Draw an entry of the log with all that can be said of it."""
    return replace(
        entry,
        minutes=draw(st.none() | st.integers(1, 500)),
        planned=draw(st.none() | st.integers(1, 500)),
        temperature_c=draw(st.none() | st.floats(-30, 60)),
        humidity_pct=draw(st.none() | st.floats(0, 100)),
        used=draw(st.sampled_from([(), (Used(coating="sand", ml=draw(st.floats(0, 9))),)])),
        ticked=draw(st.sampled_from([(), ("hull/area 1", "hull/area 2")])),
        note=draw(_notes),
        photos=draw(st.sampled_from([(), ("ab12.jpg",)])),
        airbrush=draw(st.just("") | _words),
    )
