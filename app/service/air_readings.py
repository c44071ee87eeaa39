"""What the gauge was last seen to show, for the logbook."""

from __future__ import annotations

from app.service import edits
from app.service.csv_reading import shown
from app.service.edits import Edit
from planner.values.book import Book
from planner.values.message import message
from planner.values.moment import minute_of, moment_of, zone_named
from planner.values.refusal import Refused
from planner.values.room import Reading


def last_read(book: Book, now: int) -> tuple[float, float] | None:
    """Return temperature and humidity as last read today in the usual location [°C], [% RH]."""
    zone = zone_named(book.bench_time.zone)
    usual, today = book.room.locations[0].name, moment_of(now, zone).date()
    seen = [
        reading
        for reading in book.room.readings
        if book.room.location(reading.location).name == usual
        and reading.at.astimezone(zone).date() == today
        and minute_of(reading.at, up=False) <= now
    ]
    if not seen:
        return None
    last = max(seen, key=lambda reading: reading.at)
    return last.temperature_c, last.humidity_pct


def read_typed(text: str) -> tuple[float, float]:
    """Return what was typed of a gauge, as "21.5 48" or "21,5 °C 48 %".

    Raises
    ------
    Refused
        If it is not two numbers; `Reading` checks their range.
    """
    plain = text.replace("°C", " ").replace("%", " ").replace("RH", " ").replace(",", ".")
    try:
        temperature, humidity = (float(word) for word in plain.split())
    except ValueError:
        mend = message(
            '"{text}" is not two numbers; type temperature and humidity, as 21.5 48',
            text=shown(text),
        )
        raise Refused("gauge", mend) from None
    return temperature, humidity


def noted(book: Book, text: str, now: int) -> Edit:
    """Note what was typed of a gauge as a reading of now; it corrects that day's air.

    Raises
    ------
    Refused
        If it is not two numbers, or no air that there is.
    """
    temperature, humidity = read_typed(text)
    at = moment_of(now, zone_named(book.bench_time.zone))
    reading = Reading(at=at, temperature_c=temperature, humidity_pct=humidity)
    return edits.add_reading(book, reading)
