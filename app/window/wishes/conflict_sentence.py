"""Why a wish cannot be kept, in one sentence that names what stands in its way."""

from __future__ import annotations

from dataclasses import replace

from PySide6.QtCore import QCoreApplication

from app.window import reasons, words
from app.window.message_translation import translated
from app.window.plan_snapshot import PlanSnapshot
from planner.graph.slack import Slack, slack
from planner.schedule.partial_schedule import FOREVER
from planner.values.moment import Interval
from planner.values.plan import PassKey, Unplaced


def tr(text: str) -> str:
    """Return the translation of a sentence of this module."""
    return QCoreApplication.translate("forbidding", text)


def slack_of(picture: PlanSnapshot, project: str, model: str) -> Slack:
    """Return earliest times and slack of one model by itself, its films drying in this air."""
    whole = picture.book.project(project)
    alone = replace(
        whole,
        models=(whole.model(model),),
        pins=(),
        pilot="",
        log=tuple(entry for entry in whole.log if entry.model == model),
        observed=tuple(seen for seen in whole.observed if seen.model == model),
        diary=(),
    )
    return slack(picture.book, alone, picture.now, picture.cure)


def floor_of(picture: PlanSnapshot, key: PassKey) -> int | None:
    """Return the minute before which a pass can surely not begin; None where that is open."""
    times = slack_of(picture, key.project, key.model).path.times.get(key)
    return times.early_start if times else None


def at_once(picture: PlanSnapshot, key: PassKey, where: Interval, now: int) -> str:
    """Return why a pass cannot stand in a stretch, as far as no planning is needed to know."""
    placed = picture.plan.placement(key)
    name = words.capital(reasons.key_name(key))
    if placed is not None and placed.logged:
        return tr("{work} is already logged and does not move.").format(work=name)
    if where.end <= now:
        return tr("{stretch} is past.").format(stretch=stretch_name(picture, where))
    floor = floor_of(picture, key)
    if floor is None or floor < where.end:
        return ""
    gate = _gate(picture, key, where)
    if gate is not None:
        return _forbids(picture, key, where, gate)
    at = words.opening(floor, picture.zone, now)
    return tr("{work} cannot be ready before {at}.").format(work=name, at=at)


def after_trial(
    before: PlanSnapshot, trial: PlanSnapshot, key: PassKey | None, where: Interval | None
) -> str:
    """Return why a wish cannot be kept, "" where the trial found a place for everything."""
    had_none = {unplaced.key for unplaced in before.plan.unplaced}
    lost = [unplaced for unplaced in trial.plan.unplaced if unplaced.key not in had_none]
    if not lost:
        return ""
    mine = next((unplaced for unplaced in lost if unplaced.key == key), None)
    if mine is None or key is None:
        return _others(lost)
    gate = _gate(before, key, where) if where else None
    if gate is not None and where is not None:
        return _forbids(before, key, where, gate)
    name = words.capital(reasons.key_name(key))
    return tr("No plan keeps this wish: {work} {why}.").format(work=name, why=_why(mine))


def stretch_name(picture: PlanSnapshot, where: Interval) -> str:
    """Return the date and hours of a stretch."""
    return tr("{day} {start}–{end}").format(
        day=words.day_of(where.start, picture.zone),
        start=words.clock(where.start, picture.zone),
        end=words.clock(where.end, picture.zone),
    )


def _others(lost: list[Unplaced]) -> str:
    first = lost[0]
    return tr("No plan keeps this wish: then {work} {why}.").format(
        work=reasons.key_name(first.key), why=_why(first)
    )


def _why(unplaced: Unplaced) -> str:
    return tr("has no place ({why})").format(why=translated(unplaced.why))


def _gate(picture: PlanSnapshot, key: PassKey, where: Interval) -> reasons.GateLine | None:
    """Return the gate that opens after a stretch, or closes before it."""
    for at, line in reasons.gate_times(picture.laid, key):
        if line.kind == "opens" and where.end <= at < FOREVER:
            return line
        if line.kind == "closes" and at <= where.start:
            return line
    return None


def _forbids(picture: PlanSnapshot, key: PassKey, where: Interval, gate: reasons.GateLine) -> str:
    return tr("{work} cannot be done on {stretch}. {gate}: {why} ({source}).").format(
        work=words.capital(reasons.key_name(key)),
        stretch=stretch_name(picture, where),
        gate=words.capital(gate.text),
        why=gate.why,
        source=gate.source,
    )
