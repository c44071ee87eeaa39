"""Books in which every field of the values may be set, for the tests of storage."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime, timedelta
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
from planner.values.project import Pin, Project
from planner.values.room import AirPoint, Location, Reading
from planner.values.step import Bound, Gate

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
    )


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
    stressed = replace(model.parts[0], stressed=draw(st.booleans()))
    model = replace(model, steps=tuple(steps), scale="1:72", parts=(stressed, *model.parts[1:]))
    return replace(
        project,
        models=(model, *project.models[1:]),
        active=draw(st.booleans()),
        pins=(*project.pins, pin),
        note=draw(_notes),
    )
