"""Reasons in plain words."""

from __future__ import annotations

from zoneinfo import ZoneInfo

from planner.values.moment import moment_of
from planner.values.plan import Cause, Reason


def sentence(reason: Reason, zone: ZoneInfo) -> str:
    """Return in one clause why a piece of work does not stand earlier."""
    about, detail = _short(reason.about), reason.detail
    when = _when(reason.until, zone)
    words = {
        Cause.AT_ONCE: "nothing holds it back",
        Cause.DRYING: f"drying: {about or 'the model'} is {detail or 'ready'}{when}",
        Cause.WINDOW: f"its window{_after(about)} opens{when}",
        Cause.BENCH_TIME: f"no bench time before{when}, set-up included",
        Cause.HANDS: f"hands are busy{_with(about)} until{when}",
        Cause.AIRBRUSH: f"{about or 'the airbrush'} is ready{_with(detail)} not before{when}",
        Cause.QUIET: f"quiet hours until{when}",
        Cause.DAYLIGHT: f"daylight for the spray can begins{when}",
        Cause.DRYING_PLACE: f"no drying place is free on {about or 'the bench'} until{when}",
        Cause.PIN: f"pinned, not before{when}",
        Cause.ORDER: f"follows {about or 'what goes before'}, done{when}",
        Cause.LOGGED: "done, as logged",
        Cause.CLOSING: f"waits{when}, so that what must follow soon can follow in time",
        Cause.HELPER: f"needs two people, who are there{when}",
    }
    return words[reason.cause]


def _short(about: str) -> str:
    """Return "cart/base" for the pass "yard/cart/base#1", and other names as they are."""
    project, _, rest = about.partition("/")
    if not project or "#" not in rest:
        return about
    step, _, coat = rest.rpartition("#")
    return step if coat == "1" else f"{step}, coat {coat},"


def _with(name: str) -> str:
    return f" with {name}" if name else ""


def _after(name: str) -> str:
    return f" after {name or 'what goes before'}"


def _when(minute: int | None, zone: ZoneInfo) -> str:
    if minute is None:
        return ""
    local = moment_of(minute, zone)
    return f" {local:%a %H:%M}"
