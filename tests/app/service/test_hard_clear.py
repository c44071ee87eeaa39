"""From when on a model may get a hard clear."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime

import pytest
from coat_books import book_of, coat, part

from app.command_line.run import main
from app.service.hard_clear import HardClear, hard_clears, laid_out, line
from app.service.planning import plan
from planner.cure import Band, Film
from planner.values.book import Book
from planner.values.coating import State, StateTime
from planner.values.moment import minute_of, zone_named
from planner.values.step import Stage
from storage.exchange import Exchange, dump

NOW = minute_of(datetime(2031, 3, 4, 17, tzinfo=UTC))
PRIME = coat(Stage.PRIME, "grey primer", name="prime")
TWO = (part("hull", "deck", "side"),)


def _dry(book: Book, coating: str, minutes: int) -> Book:
    """Return the book with a label: dry through after so many minutes at 23 °C, 50 % RH."""
    label = tuple(StateTime(state=state, minutes=minutes, source="label") for state in State)
    return replace(
        book,
        coatings=tuple(
            replace(other, times=label) if other.name == coating else other
            for other in book.coatings
        ),
    )


def _found(book: Book) -> tuple[HardClear, ...]:
    planned = plan(book, NOW)
    return hard_clears(laid_out(planned.book, planned.plan, NOW, planned.cure, planned.calendar))


def test_a_model_without_slow_films_has_none() -> None:
    assert _found(book_of(PRIME, coat(Stage.VARNISH, "gloss clear", name="gloss"))) == ()


def test_the_film_that_dries_last_holds_it_although_another_was_laid_later() -> None:
    red = coat(Stage.BASE, "enamel", "hull/deck", name="red")
    dots = coat(Stage.DETAIL, "gloss enamel", "hull/side", name="dots")
    book = _dry(_dry(book_of(PRIME, red, dots, parts=TWO), "enamel", 9000), "gloss enamel", 300)
    (item,) = _found(book)
    assert (item.model, item.coating, item.place) == ("tender", "enamel", "hull/deck")
    planned = plan(book, NOW)
    placed = next(each for each in planned.plan.placements if each.key.step == "red")
    enamel = book.coating("enamel")
    late = planned.cure.ready_at(
        Film(enamel, enamel.dry_film_um, "bench", placed.end), State.DRY_THROUGH, Band.LATE
    )
    assert item.opens == late
    assert item.opens is not None
    # At 21 °C it takes longer than the label says of 23 °C.
    assert item.opens - placed.end > 9000


def test_a_film_that_never_dries_leaves_no_date() -> None:
    book = book_of(PRIME, coat(Stage.BASE, "enamel", name="red"))
    (air,) = book.room.locations[0].workdays
    cold = replace(book.room.locations[0], workdays=(replace(air, temperature_c=-5.0),))
    (item,) = _found(replace(book, room=replace(book.room, locations=(cold,))))
    assert item.opens is None
    assert "no date for a hard clear" in line(item, zone_named("UTC"))


def test_a_plan_says_it(capsys: pytest.CaptureFixture[str], tmp_path) -> None:
    file = tmp_path / "yard.json"
    file.write_bytes(dump(Exchange(book_of(PRIME, coat(Stage.BASE, "enamel", name="red")))))
    assert main(["plan", str(file), "--now", "2031-03-04T18:00"]) == 0
    told = [text for text in capsys.readouterr().out.splitlines() if "hard clear" in text]
    assert len(told) == 1
    assert told[0].startswith("tender: a hard clear at the earliest ")
    assert told[0].endswith("because of enamel on hull/deck")
