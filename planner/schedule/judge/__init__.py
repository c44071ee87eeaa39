"""The one independent judge of what a plan does and costs.

It never sees what the heuristic compiles from a book, nor how it searches:
it looks up gates, hands, airbrushes and drying places in its own way and
computes drying anew.  Of a plan it believes where the passes and the bench
work stand, and nothing else.

What it shares with the heuristic, and so could be wrong about together with
it: which passes the steps expand to (`planner.passes`), which gates lie
between them (`planner.graph.gates`, and `planner.layers` behind that), where
films dry that have a choice (`planner.schedule.drying_locations`), bench time
as intervals, the laws of drying, and the advice on the air.  The last three
have checks of their own against something outside; a reading of small books
apart from all the first (`tests/plain_reading.py`) finds faults planted there.
"""

from __future__ import annotations

from collections.abc import Iterator

from planner.schedule.drying_locations import chosen_in, settled
from planner.schedule.judge import air, airbrush, facts, gates, hands, order, plan_claims, units
from planner.schedule.judge.premises import Case, Premises
from planner.schedule.judge.ruling import Rule, Ruling
from planner.schedule.judge.verdict import Verdict, Violation
from planner.values.book import Book
from planner.values.plan import Plan

__all__ = ["RULES", "Premises", "Verdict", "Violation", "judge"]


def _windows(ruling: Ruling) -> Iterator[Violation]:
    """Definition 8: in one of the windows, after its preparation."""
    yield from ruling.of(gates.held_gates, 8)
    yield from order.preparations(ruling)


def _never(ruling: Ruling) -> Iterator[Violation]:
    """Definition 10: what never dries, what is carried off while it dries, air that forbids."""
    yield from ruling.of(gates.held_gates, 10)
    yield from gates.stays(ruling)
    yield from air.fit_air(ruling)


def _gates(definition: int) -> Rule:
    return lambda ruling: ruling.of(gates.held_gates, definition)


RULES: dict[int, Rule] = {
    1: order.minutes,
    2: order.once,
    3: order.order,
    4: _gates(4),
    5: units.fingers,
    6: _gates(6),
    7: _gates(7),
    8: _windows,
    9: _gates(9),
    10: _never,
    11: _gates(11),
    12: hands.bench_time,
    13: hands.hands,
    14: hands.tool_hours,
    15: airbrush.loads,
    16: airbrush.lives,
    17: order.pieces,
    18: units.drying_places,
    19: units.joins,
    20: units.turns,
    21: units.masks,
    22: facts.logged,
    23: facts.from_now_on,
    24: facts.pins,
    25: plan_claims.status,
    26: plan_claims.finishes,
    27: plan_claims.cost,
    28: plan_claims.digest,
}


def judge(
    book: Book,
    plan: Plan,
    *,
    rules: frozenset[int] | None = None,
    expected_digest: str | None = None,
    premises: Premises | None = None,
) -> Verdict:
    """Say whether ``plan`` is feasible for ``book``, and what it costs.

    Parameters
    ----------
    rules
        Definitions that are held against the plan; by default all.
    expected_digest
        Digest of the book; None leaves definition 28 unasked.
    premises
        What follows from the book alone, to judge several plans of one book
        faster; it must have been made from ``book``.
    """
    known = premises or Premises(book)
    chosen = chosen_in(book, plan)
    if chosen:
        known = Premises(settled(book, chosen), known.cure, known.calendar)
    ruling = Ruling(Case(known, plan, expected_digest))
    found = [
        violation
        for definition, rule in RULES.items()
        if rules is None or definition in rules
        for violation in rule(ruling)
    ]
    return Verdict(
        tuple(dict.fromkeys(found)),
        tuple(ruling.flags),
        plan_claims.cost_of(ruling),
        plan_claims.finishes_of(ruling),
    )
