"""Films that work meets outside their windows: what is asked, and what is marked."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

import pytest
from logged_book import moment
from small_book import CART, PROJECT, at, key, slow_primer, small_book

from planner.cure import Band, Cure, Film, film_um
from planner.evening import log_entries
from planner.evening.film_brake import Miss, marked, marks, met, open_from, unready
from planner.values.book import Book
from planner.values.coating import Coating, Mark, State, Window
from planner.values.moment import minute_of
from planner.values.project import Event, Logged, Observed

DAY = "2031-03-06"


def fact(step: str, start: str, end: str | None = None, coat: int = 1) -> Logged:
    return Logged(
        model=CART,
        step=step,
        coat=coat,
        start=moment(f"{DAY} {start}"),
        end=None if end is None else moment(f"{DAY} {end}"),
    )


def logged(book: Book, *facts: Logged) -> Book:
    for one in facts:
        book = log_entries.written(book, PROJECT, one)
    return book


def seen(book: Book, step: str, when: str, state: State) -> Book:
    look = Observed(model=CART, step=step, at=moment(f"{DAY} {when}"), state=state, reached=True)
    return replace(book, projects=(replace(book.projects[0], observed=(look,)),))


def up_to_the_wash() -> Book:
    """Return the book washed from 19:30 to 19:45, all below it long dry."""
    early = [
        replace(
            fact(step, "10:00", "10:10"), start=moment(f"{on} 10:00"), end=moment(f"{on} 10:10")
        )
        for step, on in (("prime", "2031-01-06"), ("sand", "2031-01-16"), ("gloss", "2031-01-26"))
    ]
    return logged(small_book(), *early, fact("wash", "19:30", "19:45"))


def with_label(book: Book, **changes: object) -> Book:
    """Return the book whose primer has another label."""

    def labelled(coating: Coating) -> Coating:
        return replace(coating, **changes) if coating.name == "grey primer" else coating  # type: ignore[arg-type]

    return replace(book, coatings=tuple(map(labelled, book.coatings)))


def test_work_over_a_film_not_ready_is_told_with_the_minute_that_the_film_gives() -> None:
    book = logged(slow_primer(small_book()), fact("prime", "19:33", "19:43"))
    primer = book.coating("grey primer")
    cure = Cure(book.room, moment(f"{DAY} 19:33").tzinfo)  # type: ignore[arg-type]
    step = book.projects[0].models[0].steps[0]
    film = Film(primer, film_um(step, primer), "bench", at(f"{DAY} 19:43"))
    ready = cure.ready_at(film, State.DRY_TO_RECOAT, Band.NOMINAL)  # likely dry is enough here
    assert ready is not None
    (one,) = unready(book, key("sand"), ready - 7)
    assert (one.film, one.side, one.state) == (key("prime"), Miss.EARLY, State.DRY_TO_RECOAT)
    assert (one.ready, one.off, one.coating) == (ready, 7, "grey primer")
    assert one.places == ("tub/bed", "tub/sides")
    assert "solvent is shut in" in one.risk
    assert one.by_looking
    assert unready(book, key("sand"), ready) == ()
    assert open_from(book, key("sand"), ready + 20) == ready


def test_a_window_is_told_on_both_sides() -> None:
    """The wash 19:30–19:45 opens ten minutes after its end and closes an hour after its start."""
    book = up_to_the_wash()
    (early,) = unready(book, key("wipe"), at(f"{DAY} 19:50"))
    assert (early.side, early.ready, early.off) == (Miss.EARLY, at(f"{DAY} 19:55"), 5)
    assert not early.by_looking  # minutes were asked for, and no look makes them pass
    assert unready(book, key("wipe"), at(f"{DAY} 19:55")) == ()
    done = at(f"{DAY} 20:00"), at(f"{DAY} 20:30")
    assert unready(book, key("wipe"), *done) == ()
    (late,) = unready(book, key("wipe"), at(f"{DAY} 20:30"), at(f"{DAY} 20:42"))
    assert (late.side, late.closed, late.off, late.ready) == (
        Miss.LATE,
        at(f"{DAY} 20:30"),
        12,
        None,
    )
    assert "it has set" in late.risk


def test_the_end_of_work_that_was_begun_in_time_is_looked_at_by_itself() -> None:
    book = logged(up_to_the_wash(), fact("wipe", "20:20"))
    start = at(f"{DAY} 20:20")
    assert unready(book, key("wipe"), start, at(f"{DAY} 20:30"), begun=True) == ()
    (late,) = unready(book, key("wipe"), start, at(f"{DAY} 20:31"), begun=True)
    assert (late.side, late.off) == (Miss.LATE, 1)
    assert met(book, key("wipe"), fact("wipe", "20:20", "20:31")) == (late,)
    assert met(book, key("wipe"), replace(fact("wipe", "20:20"), ticked=("tub/bed",))) == ()


def test_a_window_that_opens_again_is_told_with_its_next_opening() -> None:
    """A label: within an hour, or again from a day on; the coat was begun at 19:33."""
    windows = (Window(closes=Mark(minutes=60)), Window(opens=Mark(minutes=1440)))
    book = logged(with_label(small_book(), recoat=windows), fact("prime", "19:33", "19:43"))
    assert unready(book, key("sand"), at(f"{DAY} 20:32")) == ()
    (one,) = unready(book, key("sand"), at(f"{DAY} 20:40"))
    assert (one.side, one.closed, one.off) == (Miss.LATE, at(f"{DAY} 20:33"), 7)
    assert one.ready == at("2031-03-07 19:43")
    assert unready(book, key("sand"), at("2031-03-07 19:43")) == ()


def test_whoever_has_looked_is_believed() -> None:
    book = logged(slow_primer(small_book()), fact("prime", "19:33", "19:43"))
    assert unready(book, key("sand"), at(f"{DAY} 20:00"))
    dry = seen(book, "prime", "20:00", State.DRY_TO_RECOAT)
    assert unready(dry, key("sand"), at(f"{DAY} 20:00")) == ()
    assert unready(dry, key("sand"), at(f"{DAY} 19:44"))  # nobody had looked by then
    tacky_only = seen(book, "prime", "20:00", State.DUST_FREE)
    assert unready(tacky_only, key("sand"), at(f"{DAY} 20:00"))


def test_a_film_under_way_is_not_ready_whoever_looks() -> None:
    book = logged(slow_primer(small_book()), fact("prime", "19:33"))
    (one,) = unready(book, key("sand"), at(f"{DAY} 19:50"))
    assert one.under_way
    assert not one.by_looking


def test_what_comes_later_in_the_logbook_does_not_count_for_what_was_before() -> None:
    book = logged(small_book(), fact("prime", "20:50", "21:00"))
    assert unready(book, key("sand"), at(f"{DAY} 19:30")) == ()


@pytest.mark.parametrize(
    ("minutes", "told"),
    [(5, "5 min before grey primer was ready"), (150, "2 h 30 min before grey primer was ready")],
)
def test_what_was_done_all_the_same_stands_in_the_diary_and_goes_with_its_entry(
    minutes: int, told: str
) -> None:
    book = with_label(small_book(), recoat=(Window(opens=Mark(minutes=minutes + 7)),))
    book = logged(book, fact("prime", "19:33", "19:43"))
    early = fact("sand", "19:50")
    found = met(book, key("sand"), early)
    book = marked(logged(book, early), key("sand"), early.start, found)
    project = book.project(PROJECT)
    (line,) = project.diary
    assert (line.event, line.text, line.at) == (Event.TOO_SOON, told, early.start)
    assert marks(project, early) == (line,)
    assert marks(project, project.log[0]) == ()
    moved = replace(early, start=early.start + timedelta(minutes=2))
    there = log_entries.corrected(book, PROJECT, moved).project(PROJECT)
    assert [one.at for one in there.diary] == [moved.start]
    assert log_entries.without(book, key("sand")).project(PROJECT).diary == ()


def test_later_work_counts_from_what_was_done_too_early() -> None:
    """Half an hour after each coat by its label; sand was laid ten minutes too soon."""
    book = with_label(small_book(), recoat=(Window(opens=Mark(minutes=30)),))
    book = logged(book, fact("prime", "19:30", "19:40"), fact("sand", "20:00", "20:12"))
    table_free = unready(book, key("gloss"), at(f"{DAY} 20:12"))
    (one,) = [each for each in table_free if each.film == key("sand")]
    assert one.ready is not None
    assert one.ready > minute_of(moment(f"{DAY} 20:12"))
