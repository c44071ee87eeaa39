"""Work in pieces that comes forward in part keeps the rest, and nothing of no length."""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime

from small_book import CART, NOW, PROJECT, ZONE, at, small_book

from planner.bench import calendar_of
from planner.cure import Cure
from planner.schedule.staying.repair import PlanRepair
from planner.values.bench_time import Extra
from planner.values.book import Book
from planner.values.moment import Interval, zone_named
from planner.values.plan import Cost, PassKey, Placement, Plan, Status
from planner.values.step import Minutes, Stage, Step, Tool

SAND = PassKey(PROJECT, CART, "sand")


def hour_of_sanding() -> Book:
    """Return the cart with nothing to do but an hour that may be split, and twenty minutes free."""
    book = small_book(target=None)
    sand = Step(
        id="sand",
        stage=Stage.CLEAN,
        tool=Tool.HAND,
        touches=("tub",),
        minutes=Minutes(fixed=60),
        split_least=10,
    )
    model = replace(book.projects[0].models[0], steps=(sand,))
    free = Extra(
        start=datetime(2031, 3, 5, 19, tzinfo=ZONE), end=datetime(2031, 3, 5, 19, 20, tzinfo=ZONE)
    )
    hours = replace(book.bench_time, extra=(free,))
    return replace(book, bench_time=hours, projects=(replace(book.projects[0], models=(model,)),))


def test_pieces_that_come_forward_in_part_leave_no_piece_without_length() -> None:
    """Twenty minutes come forward to Wednesday, so two of three Thursdays' twenty are enough."""
    book, now = hour_of_sanding(), at("2031-03-05 12:00")
    begins = [NOW + week * 7 * 1440 for week in range(3)]
    pieces = tuple(Interval(begin, begin + 20) for begin in begins)
    last = Plan(
        now=now,
        placements=(Placement(SAND, pieces),),
        bench=(),
        unplaced=(),
        status=Status.FEASIBLE,
        cost=Cost(0, 0, pieces[-1].end - now, 3, 0),
        finishes=((PROJECT, pieces[-1].end),),
    )
    cure = Cure(book.room, zone_named(book.bench_time.zone))
    calendar = calendar_of(book.bench_time)
    plan = PlanRepair(book, last, now, cure=cure, calendar=calendar).pulled()
    placed = plan.placement(SAND)
    assert placed is not None
    wednesday = at("2031-03-05 19:00")
    assert [piece.start for piece in placed.pieces] == [wednesday, *begins[:2]]
    assert [piece.minutes for piece in placed.pieces] == [20, 20, 20]
