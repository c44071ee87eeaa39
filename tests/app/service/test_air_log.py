"""What a logger wrote, read in every usual form, and what it makes of the room."""

from __future__ import annotations

import itertools
from dataclasses import replace
from datetime import UTC, datetime, timedelta
from zoneinfo import ZoneInfo

import pytest
from sequence_books import bare_book, bare_model

from app.service.air_from_log import take_air, usual_day
from app.service.air_log import LogFormat, LogGap, read_air_log, winter_time
from app.service.sequences import give_sequence
from planner.air.course import AirCourse, readings_of
from planner.values.book import Book
from planner.values.moment import minute_of, moment_of
from planner.values.project import Logged
from planner.values.refusal import Refused
from planner.values.room import Reading

WARSAW = ZoneInfo("Europe/Warsaw")
ASKED = LogFormat(zone=WARSAW)


def read(text: str | bytes, **asked: object):
    data = text if isinstance(text, bytes) else text.encode()
    return read_air_log(data, replace(ASKED, **asked))  # type: ignore[arg-type]


def told(text: str | bytes, **asked: object) -> tuple[str, str]:
    with pytest.raises(Refused) as refused:
        read(text, **asked)
    return refused.value.place, str(refused.value.mend)


@pytest.mark.parametrize(
    "text",
    [
        "time,temperature,humidity\n2031-03-05 19:30,21.5,48\n",
        "Zeit;Temperatur °C;rel. Feuchte\n05.03.2031 19:30;21,5;48,0\n",
        "Date\tTime of day (clock)\tTemp\tRH %\n2031-03-05\t19:30\t21.5\t48\n",
        "time,temp [°F],humidity\n2031-03-05T19:30,70.7,48\n",
        "timestamp,temperature,humidity\n2031-03-05T18:30Z,21.5 °C,48 %\n",
        "timestamp,temperature,humidity\n2031-03-05T14:30:00-04:00,21.5,48\n",
        "date,temperature,humidity\n03/25/2031 1:30 PM,1,1\n03/05/2031 7:30 PM,21.5,48\n",
        "timestamp,temperature,humidity\n1930501800,21.5,48\n",
        "timestamp,temperature,humidity\n1930501800000,21.5,48\n",
        'no,"Date Time, GMT-04:00","Temp, °F","RH, %"\n1,03/15/31 01:00:00 PM,68,48\n'
        "2,03/05/31 02:30:00 PM,70.7,48\n",
        "serial 123\nprobe in the shed\n\nno;time;temperature;humidity\n1;05.03.31 19:30;21,5;48\n",
    ],
    ids=[
        "plain",
        "German",
        "two columns",
        "Fahrenheit",
        "Z",
        "offset",
        "US",
        "Unix",
        "Unix ms",
        "heading",
        "lines above",
    ],
)
def test_one_moment_in_every_usual_form(text: str) -> None:
    """Half past seven in the evening in Warsaw, in winter, is half past six of UTC."""
    log = read(text)
    minute = minute_of(datetime(2031, 3, 5, 18, 30, tzinfo=UTC))
    (sample,) = [one for one in log.samples if one.minute == minute]
    # 70.7 °F: (70.7 − 32) / 1.8 = 21.5 °C by hand
    assert (sample.temperature_c, sample.humidity_pct) == (21.5, 48)


HEAD = "time;temperature;humidity\n"


@pytest.mark.parametrize(
    ("text", "place", "why"),
    [
        ("", "", "empty"),
        ("a;b;c\n1;2;3\n", "line 1", "time;temperature;humidity"),
        (HEAD, "line 1", "all there is"),
        (HEAD + "tomorrow;20;50\n", 'line 2, column "time"', "tomorrow"),
        (HEAD + ";20;50\n", 'line 2, column "time"', "empty"),
        (HEAD + "2031-02-30 10:00;20;50\n", 'line 2, column "time"', "no calendar"),
        (HEAD + "2031-03-05 24:30;20;50\n", 'line 2, column "time"', "no such hour"),
        (HEAD + "2031-03-05 10:00+19:00;20;50\n", 'line 2, column "time"', "no such offset"),
        (HEAD + "9999-03-05 10:00;20;50\n", 'line 2, column "time"', "year 9999"),
        (HEAD + "2031-03-05 10:00;warm;50\n", 'line 2, column "temperature"', "no number"),
        (HEAD + "2031-03-05 10:00;nan;50\n", 'line 2, column "temperature"', "no number"),
        (HEAD + "2031-03-05 10:00;70;50\n", 'line 2, column "temperature"', "°F"),
        (HEAD + "2031-03-05 10:00;20;\n", 'line 2, column "humidity"', "empty"),
        (HEAD + "2031-03-05 10:00;20;101\n", 'line 2, column "humidity"', "0 and 100"),
        (HEAD + "03/05/2031 10:00;20;50\n", 'line 2, column "time"', "say which"),
        (
            HEAD + "13/05/2031 10:00;20;50\n05/13/2031 10:00;20;50\n",
            'line 2, column "time"',
            "line 3",
        ),
        (HEAD + "2031-03-30 02:30;20;50\n", 'line 2, column "time"', "leave out"),
        (
            HEAD + "1999-03-05 10:00;20;50\n2031-03-05 10:00;20;50\n",
            'line 3, column "time"',
            "20 years",
        ),
        (HEAD + '"2031-03-05 10:00;20;50\n', "line 2", "quotation"),
        ((HEAD + "2031-03-05 10:00;2\x000;50\n").encode(), "line 2", "zero byte"),
    ],
)
def test_a_refusal_names_line_and_column(text: str | bytes, place: str, why: str) -> None:
    where, sentence = told(text)
    assert where == place
    assert why in sentence


def test_day_or_month_first_can_be_said() -> None:
    text = HEAD + "03/05/2031 10:00;20;50\n"
    days = [
        moment_of(read(text, day_first=first).samples[0].minute, WARSAW).date().isoformat()
        for first in (True, False)
    ]
    assert days == ["2031-05-03", "2031-03-05"]


def test_the_hour_that_comes_twice_goes_on() -> None:
    """On 2031-10-26 clocks in Warsaw go back from 3:00 to 2:00: 2:30 comes twice."""
    text = HEAD + "".join(
        f"2031-10-26 {clock};20;50\n" for clock in ("02:00", "02:30", "02:00", "02:30", "03:00")
    )
    minutes = [sample.minute for sample in read(text).samples]
    assert [after - one for one, after in itertools.pairwise(minutes)] == [30] * 4


def test_a_logger_that_keeps_winter_time_all_year() -> None:
    """On 2031-03-30 clocks in Warsaw leave out 2:30; UTC+1 all year has it."""
    assert winter_time(WARSAW, NOW) == "Etc/GMT-1"
    assert winter_time(ZoneInfo("America/New_York"), NOW) == "Etc/GMT+5"
    assert winter_time(ZoneInfo("Australia/Sydney"), NOW) == "Etc/GMT-10"
    assert winter_time(ZoneInfo("UTC"), NOW) is None
    text = HEAD + "2031-03-30 02:30;20;50\n"
    (sample,) = read(text, zone=ZoneInfo("Etc/GMT-1")).samples
    assert sample.minute == minute_of(datetime(2031, 3, 30, 1, 30, tzinfo=UTC))


def test_gaps_are_told_lines_out_of_order_are_sorted_and_twins_counted() -> None:
    text = HEAD + (
        "2031-03-05 12:00;20;50\n"
        "2031-03-05 10:00;20;50\n"
        "2031-03-05 10:30;20;50\n"
        "2031-03-05 10:30;21;50\n"
        "2031-03-05 11:00;20;50\n"
        "2031-03-05 11:30;20;50\n"
        "2031-03-05 18:00;20;50\n"
    )
    log = read(text)
    assert log.every == 30
    assert log.twice == 1
    noon, evening = (minute_of(datetime(2031, 3, 5, h, tzinfo=UTC)) for h in (11, 17))
    assert log.gaps == (LogGap(noon, evening),)


def day_log(days: int, *, first: datetime = datetime(2031, 3, 3, tzinfo=WARSAW)) -> str:
    """Return a log that goes from 16 °C at midnight to 22 °C at noon, 60 to 40 %, hourly."""
    lines = [HEAD]
    for hour in range(days * 24):
        at = first + timedelta(hours=hour)
        share = 1 - abs(at.hour - 12) / 12
        lines.append(f"{at:%Y-%m-%d %H:%M};{16 + 6 * share:.2f};{60 - 20 * share:.2f}\n")
    return "".join(lines)


def test_the_usual_day_is_the_mean_of_what_is_near_each_point() -> None:
    """By hand: at noon of (21.5, 22, 21.5) 21.67 °C; at midnight of (16.5, 16, 16.5) 16.33 °C."""
    workdays, weekends = usual_day(read(day_log(5)), WARSAW)
    points = {point.at: point for point in workdays}
    assert list(points) == [f"{hour:02d}:00" for hour in range(0, 24, 3)]
    assert points["12:00"].temperature_c == pytest.approx(21.67, abs=0.06)
    assert points["00:00"].temperature_c == pytest.approx(16.33, abs=0.06)
    assert points["12:00"].humidity_pct == pytest.approx(41.1, abs=0.06)
    assert weekends == ()  # Monday to Friday


def test_weekends_have_a_day_of_their_own_once_there_are_two_of_their_days() -> None:
    _, weekends = usual_day(read(day_log(7)), WARSAW)
    assert len(weekends) == 8


def primed() -> Book:
    book = give_sequence(bare_book(bare_model()), "table", ["truck"], "quick table-top").book
    fact = Logged(
        model="truck",
        step="prime-airbrush",
        start=datetime(2031, 3, 4, 19, 0, tzinfo=WARSAW),
        end=datetime(2031, 3, 4, 19, 20, tzinfo=WARSAW),
    )
    typed = Reading(
        at=datetime(2031, 3, 4, 19, 0, tzinfo=WARSAW), temperature_c=25, humidity_pct=30
    )
    project = replace(book.projects[0], log=(fact,))
    return replace(book, projects=(project,), room=replace(book.room, readings=(typed,)))


NOW = minute_of(datetime(2031, 3, 4, 20, 0, tzinfo=WARSAW))


def test_what_it_was_while_films_dried_is_kept_and_what_it_changed_is_told() -> None:
    cold = day_log(5).replace(";22.00;", ";12.00;")
    taken = take_air(primed(), read(cold), day=False, now=NOW)
    book = taken.edit.book
    assert taken.replaced == 1  # the reading by hand of that evening
    assert taken.readings == len(book.room.readings) > 50
    assert book.room.locations == primed().room.locations
    course = AirCourse(
        book.room.locations[0], readings_of(book.room, book.room.locations[0]), WARSAW
    )
    evening = minute_of(datetime(2031, 3, 4, 21, 0, tzinfo=WARSAW))
    assert course.at(evening).temperature_c == pytest.approx(17.5, abs=0.1)  # 16 + 6 · 3/12
    assert taken.moved, "19 °C and 47 % at seven in place of 25 °C and 30 %: it dries otherwise"
    assert {moved.key.step for moved in taken.moved} == {"prime-airbrush"}
    assert all(
        m.before is not None and m.after is not None and m.after > m.before for m in taken.moved
    )


def test_a_log_of_another_time_only_makes_the_usual_day() -> None:
    old = day_log(5, first=datetime(2030, 3, 4, tzinfo=WARSAW))
    taken = take_air(primed(), read(old), now=NOW)
    assert taken.readings == 0
    assert taken.was == (21, 50)
    assert taken.becomes == pytest.approx((19, 50), abs=0.2)  # by hand: the mean of 16 and 22
    with pytest.raises(Refused, match="no film dried there"):
        take_air(primed(), read(old), day=False, now=NOW)


def test_where_the_logger_lay_must_be_there() -> None:
    with pytest.raises(Refused, match="shelf"):
        take_air(primed(), read(day_log(3)), "shelv", now=NOW)
