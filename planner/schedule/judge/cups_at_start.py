"""What the logbook leaves in the cups when a plan begins (definition 15), as the judge reads it."""

from __future__ import annotations

from collections import defaultdict
from dataclasses import dataclass

from planner.bench import Stretch
from planner.schedule.judge.ruling import Ruling
from planner.values.gear import Airbrush
from planner.values.moment import minute_of
from planner.values.plan import PassKey
from planner.values.step import Step, Tool

CLEAN = ""


@dataclass
class JudgedCup:
    """What an airbrush holds at one moment of a walk."""

    holds: str = CLEAN
    since: int = 0  # end of the last event
    filled: int = 0  # start of the load or change that filled it


def left_by_the_log(ruling: Ruling) -> tuple[int, dict[str, JudgedCup]]:
    """Return the cups that are not clean when hands are free, and when their stretch began."""
    case, calendar = ruling.case, ruling.premises.calendar
    begun = [
        (ruling.premises.passes[key], span) for key, span in case.spans.items() if span.under_way
    ]
    busy = [hands.end for pass_, span in begun for hands in case.attended(pass_, span)]
    free = max([case.plan.now, *busy])
    stretch = calendar.stretch_at(free) if case.sound_now else None
    if stretch is None:
        return 0, {}
    found: dict[str, JudgedCup] = {}
    sprays = _sprays(ruling, stretch, free)
    washed = free  # when hands would have cleaned all cups found so far
    for airbrush in sorted(case.book.gear.airbrushes, key=lambda airbrush: airbrush.name):
        cup = _after(airbrush, sorted(sprays[airbrush.name]))
        until = washed + airbrush.clean_minutes
        if cup is None or washed - cup.since > airbrush.idle_limit_minutes:
            continue
        if until > stretch.interval.end or calendar.quiet(washed, until):
            continue
        found[airbrush.name] = cup
        washed = until
    return stretch.interval.start, found


def _after(airbrush: Airbrush, sprays: list[tuple[int, int, str]]) -> JudgedCup | None:
    """Return the cup after the last spraying, filled when the first of that load began."""
    if not sprays:
        return None
    filled, end, load = sprays.pop()
    since = end
    while sprays:
        start, end, other = sprays.pop()
        if other != load or filled - end > airbrush.idle_limit_minutes:
            break
        filled = start
    return JudgedCup(load, since, filled)


def _sprays(
    ruling: Ruling, stretch: Stretch, free: int
) -> defaultdict[str, list[tuple[int, int, str]]]:
    """Return (start, end, load) by airbrush, of what ended in a stretch and was not cleaned away.

    Projects set aside count as well: the airbrush is the same.
    """
    found: defaultdict[str, list[tuple[int, int, str]]] = defaultdict(list)
    cleaned: defaultdict[str, int] = defaultdict(int)
    for fact in ruling.case.book.cleaned:
        cleaned[fact.airbrush] = max(cleaned[fact.airbrush], minute_of(fact.at))
    for project in ruling.case.book.projects:
        for entry in project.log:
            steps = {step.id: step for step in project.model(entry.model).steps}
            load = _load(steps[entry.step], entry.coat)
            if not entry.airbrush or not load:
                continue
            start = minute_of(entry.start)
            span = ruling.case.spans.get(PassKey(project.name, entry.model, entry.step, entry.coat))
            if span is not None:
                end = span.end
            else:
                end = max(start + 1, free if entry.end is None else minute_of(entry.end))
            ended_in = ruling.premises.calendar.stretch_at(end - 1)
            if ended_in == stretch and cleaned[entry.airbrush] < end - 1:
                found[entry.airbrush].append((start, end, load))
    return found


def _load(step: Step, coat: int) -> str:
    """Return what a coat of a step is sprayed with; "" for none."""
    if step.tool is not Tool.AIRBRUSH:
        return CLEAN
    return next(
        (application.coating for application in step.applications if application.coats >= coat),
        CLEAN,
    )
