"""What a plan comes to, in one line below its answer."""

from __future__ import annotations

from app.window import words
from app.window.drying_sidebar import finish_line
from app.window.plan_snapshot import PlanSnapshot


def summary_words(picture: PlanSnapshot) -> str:
    """Return when each project is done, how many sessions it takes, and what has no place."""
    zone, plan = picture.zone, picture.plan
    told = [
        words.tr("{project}: {line}").format(
            project=name, line=finish_line(plan, picture, name, minute, zone)
        )
        for name, minute in plan.finishes
    ]
    cost = plan.cost
    told.append(
        words.tr("{stretches}, {minutes} min of loading and cleaning").format(
            stretches=words.count(
                cost.stretches,
                words.tr("{n} session"),
                words.tr("{n} sessions"),
            ),
            minutes=cost.setup_minutes,
        )
    )
    if plan.unplaced:
        told.append(
            words.count(
                len(plan.unplaced),
                words.tr("{n} piece of work has no place yet"),
                words.tr("{n} pieces of work have no place yet"),
            )
        )
    return " · ".join(told)
