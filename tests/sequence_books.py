"""Books of bare models that sequences are given to; everything is invented."""

from __future__ import annotations

from datetime import date

from small_book import ZONE, at

from app.service.starter_stock import with_coatings
from planner.sequences.apply_to_book import give
from planner.values.bench_time import BenchTime, Recurring
from planner.values.book import Book
from planner.values.gear import Airbrush, Gear
from planner.values.model import Model, Part, Place, Side
from planner.values.moment import minute_of
from planner.values.project import Project
from planner.values.room import AirPoint, Location, Room
from planner.values.sequence import Sequence

__all__ = ["NOW", "ZONE", "bare_book", "bare_model", "given_book", "minute_of"]

NOW = at("2031-03-06 19:30")


def bare_model(name: str = "truck", *, area_cm2: float = 40.0) -> Model:
    """Return a model with a body, wheels and a side panel, all on holders, without steps."""

    def part(part_name: str, area: float) -> Part:
        places = (
            Place(name="outside", area_cm2=area),
            Place(name="below", side=Side.UNDER, area_cm2=area / 2),
            Place(name="glue faces", side=Side.UNDER, area_cm2=0.5),
        )
        return Part(name=part_name, places=places, holder="handle")

    parts = (
        part("body", area_cm2),
        part("wheels", area_cm2 / 4),
        part("side panels", area_cm2 / 5),
    )
    return Model(name=name, parts=parts)


def bare_book(*models: Model, airbrushes: int = 1) -> Book:
    """Return a book of bare models in a room of 21 °C and 50 % RH, six evenings a week."""
    air = (AirPoint(at="00:00", temperature_c=21, humidity_pct=50),)
    evenings = Recurring(rule="FREQ=DAILY", since=date(2031, 3, 1), start="18:00", end="22:00")
    return Book(
        room=Room(locations=(Location(name="shelf", drying_places=200, workdays=air),)),
        bench_time=BenchTime(zone="Europe/Warsaw", stretches=(evenings,)),
        gear=Gear(airbrushes=tuple(Airbrush(name=f"brush {n}") for n in range(airbrushes))),
        projects=(Project(name="table", models=models or (bare_model(),)),),
    )


def given_book(sequence: Sequence, options: tuple[str, ...], *models: Model) -> Book:
    """Return a bare book whose models were given a sequence with its usual colours."""
    book = with_coatings(bare_book(*models), (colour.usual for colour in sequence.colours))
    names = [model.name for model in book.projects[0].models]
    return give(book, "table", names, sequence, options)
