"""Reasons in plain words."""

from __future__ import annotations

from zoneinfo import ZoneInfo

from planner.values.moment import moment_of
from planner.values.plan import BenchKind, Cause, Reason
from planner.values.said import Said, say, told

SET_UP = {
    BenchKind.LOAD.value: say("filling the airbrush"),
    BenchKind.CHANGE.value: say("changing the colour"),
    BenchKind.CLEAN.value: say("cleaning the airbrush"),
    BenchKind.PREPARE.value: say("preparing a film"),
}


def sentence(reason: Reason, zone: ZoneInfo) -> Said:
    """Return in one clause why a piece of work does not stand earlier."""
    when = _when(reason.until, zone)
    if reason.about or reason.detail:
        named = _named(reason, when)
        if named is not None:
            return named
    words = {
        Cause.AT_ONCE: say("nothing holds it back"),
        Cause.DRYING: say("drying: the model is {state}{when}", state=_state(reason), when=when),
        Cause.WINDOW: say("its window after what goes before opens{when}", when=when),
        Cause.BENCH_TIME: say("no bench time before{when}, set-up included", when=when),
        Cause.HANDS: say("hands are busy until{when}", when=when),
        Cause.AIRBRUSH: say("the airbrush is ready not before{when}", when=when),
        Cause.QUIET: say("quiet hours until{when}", when=when),
        Cause.DAYLIGHT: say("daylight for the spray can begins{when}", when=when),
        Cause.DRYING_PLACE: say("no drying place is free on the bench until{when}", when=when),
        Cause.PIN: say("pinned, not before{when}", when=when),
        Cause.ORDER: say("follows what goes before, done{when}", when=when),
        Cause.LOGGED: say("done, as logged"),
        Cause.CLOSING: say(
            "waits{when}, so that what must follow soon can follow in time", when=when
        ),
        Cause.HELPER: say("needs two people, who are there{when}", when=when),
    }
    return words[reason.cause]


def _named(reason: Reason, when: str) -> Said | None:
    """Return the clause of a cause that names what it is about, None for any other."""
    about, coating = _short(reason.about), reason.detail
    if reason.cause is Cause.AIRBRUSH:
        return _airbrush(about, coating, when)
    if reason.cause is Cause.QUIET and reason.detail:
        return say("quiet hours until{when}, and it smells", when=when)
    if not about:
        return None
    words = {
        Cause.DRYING: say(
            "drying: {about} is {state}{when}", about=about, state=_state(reason), when=when
        ),
        Cause.WINDOW: say("its window after {about} opens{when}", about=about, when=when),
        Cause.HANDS: say(
            "hands are busy with {about} until{when}", about=SET_UP.get(about, about), when=when
        ),
        Cause.DRYING_PLACE: say(
            "no drying place is free on {about} until{when}", about=about, when=when
        ),
        Cause.ORDER: say("follows {about}, done{when}", about=about, when=when),
    }
    return words.get(reason.cause)


def _airbrush(airbrush: str, coating: str, when: str) -> Said:
    named = airbrush or told("the airbrush")
    if coating:
        return say(
            "{airbrush} is ready with {coating} not before{when}",
            airbrush=named,
            coating=coating,
            when=when,
        )
    return say("{airbrush} is ready not before{when}", airbrush=named, when=when)


def _state(reason: Reason) -> str:
    return reason.detail or told("ready")


def _short(about: str) -> str:
    """Return "cart/base" for the pass "yard/cart/base#1", and other names as they are."""
    project, _, rest = about.partition("/")
    if not project or "#" not in rest:
        return about
    step, _, coat = rest.rpartition("#")
    return step if coat == "1" else say("{step}, coat {coat},", step=step, coat=coat)


def _when(minute: int | None, zone: ZoneInfo) -> str:
    if minute is None:
        return ""
    return say(" {at:%a %H:%M}", at=moment_of(minute, zone))
