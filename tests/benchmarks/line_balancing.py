"""The planner on published assembly lines: plans and bounds beside the known optima.

    python tests/benchmarks/line_balancing.py [SECONDS [NAMES]]

Evenings are stations (``tests/line_balancing.py`` says how, and whose the
lines are).  Of each line and cycle time: the published optimum, the plan of
the rules, the best plan and bound of a search of so many seconds (10), which
is not begun, or ends, where the evening is proven, and what is short.  With 0
seconds only the rules and the quick bounds are run.  No plan may be below an
optimum, no bound above: that ends the run.
"""

from __future__ import annotations

import sys
import time
from pathlib import Path

TESTS = Path(__file__).resolve().parents[1]
# The folder of this script holds a module of the same name as the one that is wanted.
sys.path[:] = [
    str(TESTS.parent),
    str(TESTS),
    *(one for one in sys.path if Path(one) != TESTS / "benchmarks"),
]

from line_balancing import NOW, as_book, bound, published, used

from app.service.improving import Task, improvements
from planner.bench import calendar_of
from planner.cure import Cure
from planner.schedule.greedy import plan_book
from planner.schedule.judge import judge
from planner.schedule.optimise.board import Board
from planner.schedule.optimise.lower_bounds import least_finish
from planner.schedule.priority_rules import RULES
from planner.schedule.problem import Problem
from planner.schedule.serial_schedule import SerialSchedule
from planner.values.book import Book
from planner.values.moment import zone_named
from planner.values.plan import Plan


def main(seconds: float, names: list[str]) -> None:
    """Print a line for each instance, and how many are short at the end."""
    count = at_once = reached = bounded = both = 0
    print("line  tasks  cycle  optimum  rules  best  bound  seconds")
    for name in names or published():
        line = published()[name]
        for cycle, optimum in line.optima:
            book, began = as_book(line, cycle), time.monotonic()
            first = best = plan_book(book, NOW)
            wanted = seconds and used(book, first) > quick_bound(book, first)
            for better in improvements(Task(book, first), seconds) if wanted else ():
                best = better.plan
                if used(book, best) <= bound(book, best):
                    break  # the evening is proven; the minute within it is not asked for
            assert judge(book, best).accepted
            rules, last = used(book, first), used(book, best)
            least = max(bound(book, best), quick_bound(book, best))
            assert least <= optimum <= last <= rules, (name, cycle)
            count, at_once = count + 1, at_once + (rules == optimum)
            reached, bounded = reached + (last == optimum), bounded + (least == optimum)
            both += last == least
            short = "" if last == least else "  short"
            spent = time.monotonic() - began
            print(
                f"{name}  {len(line.minutes)}  {cycle}  {optimum}  {rules}  {last}  {least}  "
                f"{spent:.1f}{short}",
                flush=True,
            )
    print(
        f"{count} instances; on the optimum: rules {at_once}, best {reached}; "
        f"bound on it {bounded}; evening proven {both}"
    )


def quick_bound(book: Book, plan: Plan) -> int:
    """Return the evenings that are needed by the bounds which take no search."""
    cure, calendar = Cure(book.room, zone_named("UTC")), calendar_of(book.bench_time)
    problem = Problem(book, NOW, cure=cure, calendar=calendar)
    facts = SerialSchedule(problem, RULES[0], 0, frozenset())
    facts.take_facts()
    board = Board(problem, facts.table, max(placed.end for placed in plan.placements))
    return least_finish(board).stretch + 1


if __name__ == "__main__":
    wanted = sys.argv[2].split(",") if len(sys.argv) > 2 else []
    main(float(sys.argv[1]) if len(sys.argv) > 1 else 10.0, wanted)
