"""All that is worth knowing beside a run sheet, read off together, for screen and paper alike."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from planner.bench import calendar_of
from planner.cure import Cure
from planner.evening.advice import OneFirst, one_first
from planner.evening.alternatives import ColourTaker, Other, instead, takers
from planner.evening.closing_check import Check, checks, cups_used, tidy_from
from planner.evening.filled_again import filled_again
from planner.evening.last_coat_brake import Brake, braked
from planner.evening.looks import DueLook, looks, looks_to_come
from planner.quantity import served
from planner.tonight import BenchRow, RunSheet
from planner.values.book import Book
from planner.values.moment import Interval
from planner.values.plan import Plan


@dataclass(frozen=True)
class Filling:
    """A load or change of the sheet: what else takes its colour, and whether one goes first.

    ``again`` says why a colour is filled once more, "" where it is not or need not be.
    """

    row: BenchRow
    takers: tuple[ColourTaker, ...]
    first: OneFirst | None
    again: str = ""


@dataclass(frozen=True)
class Beside:
    """What is beside a run sheet.

    Attributes
    ----------
    looks
        Looks that are due or come by the end of the stretch, and those that
        its rows will ask for.
    brakes
        Last coats of the sheet, and what lies below them when they come.
    fillings
        Each load and change.
    others
        What could be done instead.
    checks, tidy_from
        What to look at before the table is left, and when to begin with it.
    quiet_from
        When the next quiet hours begin, None for never; by then a smell is
        aired and what is noisy has ended.
    """

    looks: tuple[DueLook, ...]
    brakes: tuple[Brake, ...]
    fillings: tuple[Filling, ...]
    others: tuple[Other, ...]
    checks: tuple[Check, ...]
    tidy_from: int
    quiet_from: int | None


def beside(book: Book, plan: Plan, sheet: RunSheet, cure: Cure | None = None) -> Beside:
    """Return what is beside a run sheet of ``plan``."""
    now, end = sheet.now, sheet.interval.end
    ahead = [row for row in sheet.work if not row.logged]
    last = {row.key: row.start for row in reversed(ahead)}
    brakes = [
        Brake(key, at, below)
        for key, at in sorted(last.items(), key=lambda item: item[1])
        if (below := braked(book, key, at, cure, plan.placements))
    ]
    span = Interval(min(sheet.interval.start, end - 1), end)
    placed = [placement for placement in plan.placements if placement.start < end]
    quiet = calendar_of(book.bench_time).quiet(max(now, sheet.interval.start), end + 1440)
    return Beside(
        looks=(
            *(look for look in looks(book, now) if look.at < end),
            *looks_to_come(sheet.rows),
        ),
        brakes=tuple(brakes),
        fillings=tuple(_fillings(book, plan, sheet, cure)),
        others=instead(book, now, cure=cure, without=[row.key for row in ahead]),
        checks=checks(book, span, cups_used(placed, book, span), cure=cure, planned=placed),
        tidy_from=tidy_from(sheet),
        quiet_from=min((interval.start for interval in quiet), default=None),
    )


def _fillings(book: Book, plan: Plan, sheet: RunSheet, cure: Cure | None) -> list[Filling]:
    serving = {
        (work.airbrush, work.interval.start): tuple(dict.fromkeys(placed.key for placed in placed))
        for work, placed in served(plan).items()
    }
    found = []
    again = filled_again(book, plan)
    here = {row.key[:3] for row in sheet.work}  # what stands on the sheet needs no offer
    for row in sheet.rows:
        if isinstance(row, BenchRow) and row.coating:
            keys = serving.get((row.airbrush, row.start), ())
            others = takers(book, row.coating, row.start, cure=cure)
            found.append(
                Filling(
                    row,
                    tuple(
                        _first_coats(
                            colour_taker
                            for colour_taker in others
                            if colour_taker.key[:3] not in here
                        )
                    ),
                    one_first(book, keys, row.start, cure=cure),
                    again.get((row.airbrush, row.start), ""),
                )
            )
    return found


def _first_coats(found: Iterable[ColourTaker]) -> Iterable[ColourTaker]:
    """Return of each step the first coat that is left: the next ones follow it."""
    first: dict[tuple[str, ...], ColourTaker] = {}
    for colour_taker in found:
        step = colour_taker.key[:3]  # without the coat
        if step not in first or colour_taker.key.coat < first[step].key.coat:
            first[step] = colour_taker
    return first.values()
