"""How many ready_at a second, and what the tables of a room with a daily profile cost.

Run from the repository: ``python tests/benchmarks/cure.py``.
"""

from __future__ import annotations

import random
import time
from zoneinfo import ZoneInfo

from planner.cure import Band, Cure, Film
from planner.values.coating import Coating, Family, State
from planner.values.room import AirPoint, Location, Room

QUESTIONS = 200_000
START = 29_000_000


def main() -> None:
    """Time cold tables and warm questions."""
    workdays = tuple(
        AirPoint(at=at, temperature_c=warmth, humidity_pct=damp)
        for at, warmth, damp in (("06:00", 16, 60), ("18:00", 19, 52), ("20:00", 21, 48))
    )
    weekends = (AirPoint(at="09:00", temperature_c=20, humidity_pct=50),)
    bench = Location(name="bench", drying_places=4, workdays=workdays, weekends=weekends)
    cure = Cure(Room(locations=(bench,)), ZoneInfo("Europe/Warsaw"))
    coatings = [
        Coating(name=str(family), family=family)
        for family in (Family.WATERBORNE_ACRYLIC, Family.SOLVENT_LACQUER, Family.ALKYD_ENAMEL)
    ]
    began = time.perf_counter()
    for coating in coatings:
        for state in State:
            cure.ready_at(Film(coating, 20, "bench", START), state, Band.LATE)
    print(f"first questions of three families: {(time.perf_counter() - began) * 1000:.0f} ms")
    chance = random.Random(1)
    films = [
        Film(chance.choice(coatings), 20, "bench", START + chance.randrange(60 * 1440))
        for _ in range(QUESTIONS)
    ]
    states = [chance.choice(list(State)) for _ in films]
    began = time.perf_counter()
    for film, state in zip(films, states, strict=True):
        cure.ready_at(film, state, Band.LATE)
    print(f"{QUESTIONS / (time.perf_counter() - began):,.0f} questions a second")


if __name__ == "__main__":
    main()
