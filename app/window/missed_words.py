"""Dates that are missed, and when a model is finished, in the language of the window."""

from __future__ import annotations

from app.window import words
from app.window.plan_snapshot import PlanSnapshot
from planner.schedule.missed_dates import MissedDate, ends_of_models, missed_dates


def missed_of(picture: PlanSnapshot) -> tuple[MissedDate, ...]:
    """Return the dates that a plan misses, the worst first."""
    return missed_dates(picture.book, picture.calendar, picture.plan)


def missed_line(missed: MissedDate, picture: PlanSnapshot) -> str:
    """Return which date is missed, by how much: "Gannet: Thu 2 Apr, 5 days after Sat 28 Mar"."""
    return words.tr("{name}: done {time}, {length} too late for {date}").format(
        name=missed.model or missed.project,
        time=words.when(missed.end, picture.zone, picture.plan.now),
        length=words.span(missed.minutes),
        date=words.day(missed.target),
    )


def model_line(picture: PlanSnapshot, project: str, model: str) -> tuple[str, bool]:
    """Return when a model is finished, against its date or its project's, and if that is missed.

    Nothing is said of a model of a project that is set aside.
    """
    end = ends_of_models(picture.book, picture.plan).get((project, model))
    if end is None:
        return "", False
    plan, zone = picture.plan, picture.zone
    stuck = sum(one.key[:2] == (project, model) for one in plan.unplaced)
    if stuck:
        return words.tr("not done; without a place: {n}").format(n=stuck), True
    done = words.when(end, zone, plan.now)
    home = picture.book.project(project)
    target = home.model(model).target or home.target
    if target is None:
        return words.tr("done {time}, no date set").format(time=done), False
    over = end - picture.calendar.day_end(target)
    sentence = (
        words.tr("done {time}, {length} too late for {date}")
        if over > 0
        else words.tr("done {time}, {length} in hand before {date} ends")
    )
    told = sentence.format(time=done, length=words.span(abs(over)), date=words.day(target))
    return told, over > 0
