"""Definition 10a: nothing is laid in air that forbids it, but on the person's word."""

from __future__ import annotations

from collections.abc import Iterator

from planner.air import QUARTER, Fitness, laid_in, on_any_terms, step_advice
from planner.schedule.judge.ruling import Ruling
from planner.schedule.judge.verdict import Violation


def fit_air(ruling: Ruling) -> Iterator[Violation]:
    """Yield passes laid at minutes whose quarter of an hour has no air for their coatings."""
    case, premises = ruling.case, ruling.premises
    for one, span in case.planned():
        if not one.films or on_any_terms(one.step):
            continue
        course = premises.cure.air(laid_in(case.book.room, one.step.tool).name)
        coatings = [premises.coatings[name] for name in dict.fromkeys(n for _, n in one.films)]
        quarters = {
            minute - minute % QUARTER
            for piece in case.attended(one, span)
            for minute in range(piece.start - piece.start % QUARTER, piece.end, QUARTER)
        }
        for quarter in sorted(quarters):
            against = [
                advice
                for coating in coatings
                for advice in step_advice(one.step, coating, course.at(quarter))
                if advice.fitness is Fitness.NO_GO
            ]
            if against:
                when = case.at(max(quarter, span.start))
                text = f"is laid at {when} in air that forbids it: {against[0].reason}"
                yield Violation(10, str(one.key), text)
                break
