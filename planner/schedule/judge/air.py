"""Definition 10a: nothing is laid in air that forbids it, but on the person's word."""

from __future__ import annotations

from collections.abc import Iterator

from planner.air import QUARTER, Air, Fitness, laid_in, on_any_terms, step_advice
from planner.schedule.judge.ruling import Ruling
from planner.schedule.judge.verdict import Violation
from planner.values.coating import Coating
from planner.values.step import Stage, Step, Tool


def fit_air(ruling: Ruling) -> Iterator[Violation]:
    """Yield passes laid at minutes whose quarter of an hour has no air for their coatings."""
    case, premises = ruling.case, ruling.premises
    known: dict[tuple[Tool, Stage, str, Air], str] = {}  # one day's air is another's

    def against(step: Step, coating: Coating, air: Air) -> str:
        key = (step.tool, step.stage, coating.name, air)
        found = known.get(key)
        if found is None:
            advice = step_advice(step, coating, air)
            reasons = [advisory.reason for advisory in advice if advisory.fitness is Fitness.NO_GO]
            found = known[key] = reasons[0] if reasons else ""
        return found

    for placed, span in case.planned():
        if not placed.films or on_any_terms(placed.step):
            continue
        course = premises.cure.air(laid_in(case.book.room, placed.step.tool).name)
        coatings = [premises.coatings[name] for name in dict.fromkeys(n for _, n in placed.films)]
        quarters = {
            minute - minute % QUARTER
            for piece in case.attended(placed, span)
            for minute in range(piece.start - piece.start % QUARTER, piece.end, QUARTER)
        }
        for quarter in sorted(quarters):
            air = course.begins_with(quarter // QUARTER, QUARTER)
            reasons = [why for coating in coatings if (why := against(placed.step, coating, air))]
            if reasons:
                when = case.at(max(quarter, span.start))
                text = f"is laid at {when} in air that forbids it: {reasons[0]}"
                yield Violation(10, str(placed.key), text)
                break
