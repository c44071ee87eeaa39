"""Times, spans and reasons in plain words.

Attended work is told to the minute.  What a film does is told rounded, for
it is known no better: to 5 minutes under two hours ahead, to 15 beyond;
openings up and closings down.
"""

from __future__ import annotations

from datetime import date
from zoneinfo import ZoneInfo

from planner.schedule.reason_wording import sentence
from planner.values.coating import State
from planner.values.message import message, row
from planner.values.moment import Interval, moment_of
from planner.values.plan import PassKey, Reason

NEAR_MINUTES = 120
FINE, COARSE = 5, 15
NEVER = message("never in this air")


def reasons_text(reason: Reason, zone: ZoneInfo) -> str:
    """Return why a pass stands where it does."""
    return sentence(reason, zone)


def clock_time(minute: int, zone: ZoneInfo) -> str:
    """Return "19:30"."""
    return moment_of(minute, zone).strftime("%H:%M")


def day(minute: int, zone: ZoneInfo) -> str:
    """Return "Thu 5 Mar 2026"."""
    local = moment_of(minute, zone)
    return message("{at:%a} {at.day} {at:%b %Y}", at=local)


def date_of(on: date) -> str:
    """Return "Thu 5 Mar 2026"."""
    return message("{at:%a} {at.day} {at:%b %Y}", at=on)


def moment(minute: int, zone: ZoneInfo) -> str:
    """Return "Thu 5 Mar 19:30"."""
    local = moment_of(minute, zone)
    return message("{at:%a} {at.day} {at:%b} {at:%H:%M}", at=local)


def stretch(interval: Interval, zone: ZoneInfo) -> str:
    """Return "Thu 5 Mar 2026 19:30–21:30"."""
    hours = f"{clock_time(interval.start, zone)}–{clock_time(interval.end, zone)}"
    return row((day(interval.start, zone), hours), " ")


def opening(minute: int | None, now: int, zone: ZoneInfo) -> str:
    """Return when a film is ready, rounded up; with its day if it is another one."""
    if minute is None:
        return NEVER
    return _near(-(-minute // _grain(minute, now)) * _grain(minute, now), now, zone)


def openings(first: int | None, last: int | None, now: int, zone: ZoneInfo) -> str:
    """Return from when to when films of one day become ready, one after the other."""
    begin = opening(first, now, zone)
    if first is None or last is None:
        return begin
    end = clock_time(-(-last // _grain(last, now)) * _grain(last, now), zone)
    return begin if begin.endswith(end) else message("{first}–{last}", first=begin, last=end)


def closing(minute: int, now: int, zone: ZoneInfo) -> str:
    """Return when a window closes, rounded down; with its day if it is another one."""
    return _near(minute // _grain(minute, now) * _grain(minute, now), now, zone)


def span(minutes: int) -> str:
    """Return a waiting time, rounded: "35 min", "5 h 15 min", "3 d 4 h"."""
    grain = FINE if minutes < NEAR_MINUTES else COARSE
    whole = -(-minutes // grain) * grain
    days, rest = divmod(whole, 1440)
    hours, left = divmod(rest, 60)
    if days:
        return (
            message("{days} d {hours} h", days=days, hours=hours)
            if hours
            else message("{days} d", days=days)
        )
    if hours:
        return (
            message("{hours} h {minutes} min", hours=hours, minutes=left)
            if left
            else message("{hours} h", hours=hours)
        )
    return message("{minutes} min", minutes=left)


def state(awaited: State | None) -> str:
    """Return what a film is ready for once it has come so far."""
    return awaited if awaited else message("its time")


def pass_name(key: PassKey) -> str:
    """Return "tender 1/base-coat", with the coat where it is not the first."""
    if key.coat > 1:
        return message("{model}/{step} coat {coat}", model=key.model, step=key.step, coat=key.coat)
    return f"{key.model}/{key.step}"


def count(number: int, name: str, many: str = "") -> str:
    """Return "1 pass", "3 passes"."""
    return f"{number} {name if number == 1 else many or name + 's'}"


def _grain(minute: int, now: int) -> int:
    return FINE if abs(minute - now) < NEAR_MINUTES else COARSE


def _near(minute: int, now: int, zone: ZoneInfo) -> str:
    same_day = moment_of(minute, zone).date() == moment_of(now, zone).date()
    return clock_time(minute, zone) if same_day else moment(minute, zone)
