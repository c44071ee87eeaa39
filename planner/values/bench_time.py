"""When a person can be at the bench: recurring stretches and their exceptions."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date, datetime, time
from typing import Annotated

from dateutil.rrule import rrulestr

from planner.values.field import Field, Value
from planner.values.message import message
from planner.values.moment import Interval, clock, in_years, minute_of, zone_named
from planner.values.refusal import Refused, demand, number_in

People = Annotated[int, Field("&People at the bench", least=1, most=2)]


@dataclass(frozen=True, kw_only=True)
class Recurring(Value):
    """Some hours of the day, on the days of an RFC 5545 recurrence rule.

    ``rule`` is an RRULE value ("FREQ=WEEKLY;BYDAY=TU,TH") counted from the
    local date ``since``.  ``start`` and ``end`` are local wall-clock times;
    an end at or before the start lies on the next day.  ``people`` is how
    many are at the bench.
    """

    rule: Annotated[str, Field("&On")]
    since: Annotated[date, Field("&Beginning on")]
    start: Annotated[str, Field("&From", check=clock)]
    end: Annotated[str, Field("&Until", check=clock, help="Until the next day if not later")]
    people: People = 1

    def __post_init__(self) -> None:
        super().__post_init__()
        if not (
            self.rule.startswith("FREQ=") and len(self.rule.split()) == 1 and len(self.rule) <= 300
        ):
            raise Refused(
                "rule",
                message(
                    '"{rule}" is not a recurrence rule; write it as FREQ=WEEKLY;BYDAY=TU,TH',
                    rule=self.rule[:60],
                ),
            )
        fields = dict(field.partition("=")[::2] for field in self.rule.upper().split(";"))
        demand(
            fields.get("FREQ") in ("DAILY", "WEEKLY", "MONTHLY", "YEARLY"),
            "rule",
            "must repeat by DAILY, WEEKLY, MONTHLY or YEARLY",
        )
        for field in ("BYHOUR", "BYMINUTE", "BYSECOND"):
            if field in fields:
                raise Refused(
                    "rule",
                    message("must not hold {field}; start and end say the hours", field=field),
                )
        _counts_sensibly(fields)
        try:
            rrulestr(self.rule, dtstart=datetime.combine(self.since, time()))
            named = _names_a_day(fields, self.since)
        except (ValueError, KeyError, TypeError, AttributeError) as problem:
            raise Refused(
                "rule",
                message(
                    '"{rule}" is not a recurrence rule ({problem})', rule=self.rule, problem=problem
                ),
            ) from problem
        if not named:
            raise Refused("rule", message('"{rule}" never names a day', rule=self.rule))

    def dates(self) -> Iterator[date]:
        """Yield the local dates of the rule in order, from ``since`` on."""
        for moment in rrulestr(self.rule, dtstart=datetime.combine(self.since, time())):
            yield moment.date()


def _names_a_day(fields: dict[str, str], since: date) -> bool:
    """Tell whether the rule has any date.

    dateutil looks for one as far as the year 9999, which can take many
    seconds.  The calendar repeats every 400 years, so the search may as well
    begin in one of the last such periods.
    """
    endless = [f"{name}={fields[name]}" for name in fields if name not in ("COUNT", "UNTIL")]
    late = since.replace(year=since.year + (9599 - since.year) // 400 * 400)
    rule = rrulestr(";".join(endless), dtstart=datetime.combine(late, time()))
    return next(iter(rule), None) is not None


def _counts_sensibly(fields: dict[str, str]) -> None:
    """Demand numbers that RFC 5545 allows; dateutil would loop or stumble over others later."""
    for field in ("INTERVAL", "COUNT"):
        value = fields.get(field, "1")
        if re.fullmatch("[1-9][0-9]{0,3}", value) is None:
            raise Refused(
                "rule",
                message(
                    '{field} is "{value}", but must be a number from 1 to 9999',
                    field=field,
                    value=value,
                ),
            )
    demand(not {"COUNT", "UNTIL"} <= fields.keys(), "rule", "must not hold both COUNT and UNTIL")
    most = {"MONTHLY": 5, "YEARLY": 53}.get(fields["FREQ"], 0)
    for day in fields.get("BYDAY", "").split(","):
        which = day.lstrip("+-")[:-2]
        if not (not which or (which.isdecimal() and 1 <= int(which[:4]) <= most)):
            raise Refused("rule", message('BYDAY "{day}" names a day that does not come', day=day))


@dataclass(frozen=True, kw_only=True)
class Extra(Value):
    """One stretch beside the rules."""

    start: Annotated[datetime, Field("&From")]
    end: Annotated[datetime, Field("&Until", help="Until the next day if not later")]
    people: People = 1

    def __post_init__(self) -> None:
        super().__post_init__()
        demand(self.start < self.end, "end", "must lie after start")
        number_in(self.interval.minutes, 1, 10_080, "end", "min of bench time")

    @property
    def interval(self) -> Interval:
        """The stretch in UTC minutes."""
        return Interval(minute_of(self.start), minute_of(self.end, up=False))


@dataclass(frozen=True, kw_only=True)
class BenchTime(Value):
    """All hours that matter to the plan, in local wall time of ``zone``.

    Attributes
    ----------
    stretches
        When the person is at the bench.
    skipped
        Local dates on which no recurring stretch begins.
    extra
        Stretches beside the rules.
    quiet
        Hours without a compressor: no airbrush work, loading or cleaning.
    daylight
        Hours for a spray can outdoors; empty means a can is never limited.
    """

    zone: Annotated[str, Field(check=zone_named)]
    stretches: tuple[Recurring, ...] = ()
    skipped: Annotated[tuple[date, ...], Field(unique="")] = ()
    extra: tuple[Extra, ...] = ()
    quiet: tuple[Recurring, ...] = ()
    daylight: tuple[Recurring, ...] = ()

    def __post_init__(self) -> None:
        super().__post_init__()
        for index, day in enumerate(self.skipped):
            in_years(day, f"skipped[{index}]")
