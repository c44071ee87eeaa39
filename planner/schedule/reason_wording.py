"""Reasons in plain words."""

from __future__ import annotations

from zoneinfo import ZoneInfo

from planner.values.message import Message, message, told
from planner.values.moment import moment_of
from planner.values.plan import BenchKind, Cause, Reason

SET_UP = {
    BenchKind.LOAD.value: message("filling the airbrush"),
    BenchKind.CHANGE.value: message("changing the colour"),
    BenchKind.CLEAN.value: message("cleaning the airbrush"),
    BenchKind.PREPARE.value: message("preparing a film"),
}


def sentence(reason: Reason, zone: ZoneInfo) -> Message:
    """Return in one clause why a piece of work does not stand earlier."""
    when = _when(reason.until, zone)
    if reason.about or reason.detail:
        named = _named(reason, when)
        if named is not None:
            return named
    words = {
        Cause.AT_ONCE: message("nothing holds it back"),
        Cause.DRYING: message(
            "drying: the model is {state}{when}", state=_state(reason), when=when
        ),
        Cause.WINDOW: message("its window after what goes before opens{when}", when=when),
        Cause.BENCH_TIME: message("no bench time before{when}, set-up included", when=when),
        Cause.HANDS: message("hands are busy until{when}", when=when),
        Cause.AIRBRUSH: message("the airbrush is ready not before{when}", when=when),
        Cause.QUIET: message("quiet hours until{when}", when=when),
        Cause.DAYLIGHT: message("daylight for the spray can begins{when}", when=when),
        Cause.AIR: message("the air is unfit for it until{when}", when=when),
        Cause.DRYING_PLACE: message("no drying place is free on the bench until{when}", when=when),
        Cause.PIN: message("pinned, not before{when}", when=when),
        Cause.ORDER: message("follows what goes before, done{when}", when=when),
        Cause.LOGGED: message("done, as logged"),
        Cause.CLOSING: message("waits{when} so that the next step can follow in time", when=when),
        Cause.HELPER: message("needs two people, who are there{when}", when=when),
    }
    return words[reason.cause]


def _named(reason: Reason, when: str) -> Message | None:
    """Return the clause of a cause that names what it is about, None for any other."""
    about, coating = _short(reason.about), reason.detail
    if reason.cause is Cause.AIRBRUSH:
        return _airbrush(about, coating, when)
    if reason.cause is Cause.QUIET and reason.detail:
        return message("quiet hours until{when}, and it smells", when=when)
    if not about:
        return None
    if reason.cause is Cause.WINDOW and reason.detail:
        return message("it is done best{when}, after {about}", when=when, about=about)
    words = {
        Cause.DRYING: message(
            "drying: {about} is {state}{when}", about=about, state=_state(reason), when=when
        ),
        Cause.WINDOW: message("its window after {about} opens{when}", about=about, when=when),
        Cause.HANDS: message(
            "hands are busy with {about} until{when}", about=SET_UP.get(about, about), when=when
        ),
        Cause.DRYING_PLACE: message(
            "no drying place is free on {about} until{when}", about=about, when=when
        ),
        Cause.ORDER: message("follows {about}, done{when}", about=about, when=when),
        Cause.CLOSING: message(
            "waits until{when} so that {about} can follow in time", when=when, about=about
        ),
    }
    return words.get(reason.cause)


def _airbrush(airbrush: str, coating: str, when: str) -> Message:
    named = airbrush or told("the airbrush")
    if coating:
        return message(
            "{airbrush} is ready with {coating} not before{when}",
            airbrush=named,
            coating=coating,
            when=when,
        )
    return message("{airbrush} is ready not before{when}", airbrush=named, when=when)


def _state(reason: Reason) -> str:
    return reason.detail or told("ready")


def _short(about: str) -> str:
    """Return "cart/base" for the pass "yard/cart/base#1", and other names as they are."""
    project, _, rest = about.partition("/")
    if not project or "#" not in rest:
        return about
    step, _, coat = rest.rpartition("#")
    return step if coat == "1" else message("{step}, coat {coat},", step=step, coat=coat)


def _when(minute: int | None, zone: ZoneInfo) -> str:
    if minute is None:
        return ""
    return message(" {at:%a %H:%M}", at=moment_of(minute, zone))
