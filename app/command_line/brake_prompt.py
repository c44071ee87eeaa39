"""Asks on a terminal before work over a film that is not ready is logged; elsewhere it refuses."""

from __future__ import annotations

import argparse
import sys
from zoneinfo import ZoneInfo

from app.command_line.output import note
from app.service import wording
from app.service.film_brake import GoOn, HeldUp, Miss, Unready
from planner.values.refusal import Refused, demand

OPTIONS = {GoOn.ALL_THE_SAME: "--all-the-same", GoOn.LOOKED: "--looked-dry"}


def add_ways(parser: argparse.ArgumentParser) -> None:
    """Let a command say beforehand how work goes on over a film that is not ready."""
    ways = parser.add_mutually_exclusive_group()
    ways.add_argument(
        OPTIONS[GoOn.ALL_THE_SAME],
        action="store_true",
        default=None,
        help="log it over a film that is not ready, or too late; it is marked",
    )
    ways.add_argument(
        OPTIONS[GoOn.LOOKED],
        action="store_true",
        default=None,
        help="you waited and the film is dry; it sets the film's pace",
    )


def way_on(args: argparse.Namespace, held: HeldUp | None, now: int, zone: ZoneInfo) -> GoOn | None:
    """Return how work goes on that is held up: as told, or as asked for on a terminal.

    Raises
    ------
    Refused
        If nobody can be asked, or waits.
    """
    if held is None:
        return None
    if args.all_the_same:
        return GoOn.ALL_THE_SAME
    if args.looked_dry:
        demand(held.by_looking, "--looked-dry", f"no look can tell that: {_told(held, now, zone)}")
        return GoOn.LOOKED
    if not _somebody_there():
        raise Refused("STEP", f"{_told(held, now, zone)}; {_ways(held, now, zone)}")
    return _asked(held, now, zone)


def _somebody_there() -> bool:
    return sys.stdin.isatty() and sys.stderr.isatty()


def _asked(held: HeldUp, now: int, zone: ZoneInfo) -> GoOn:
    """Ask, and ask again until an answer is one of those offered."""
    for one in held.found:
        note(film_line(one, now, zone))
    ways = {"w": "wait", "a": "go on all the same"}
    if held.by_looking:
        ways["d"] = "I waited and it is dry"
    question = ", ".join(f"{key}: {told}" for key, told in ways.items())
    while True:
        sys.stderr.write(f"{question}? ")
        sys.stderr.flush()
        answer = sys.stdin.readline()
        chosen = answer.strip().lower()[:1]
        if chosen == "a":
            return GoOn.ALL_THE_SAME
        if chosen == "d" and held.by_looking:
            return GoOn.LOOKED
        if chosen == "w" or not answer:
            raise Refused("STEP", f"nothing is logged; {_until(held, now, zone)}")


def film_line(one: Unready, now: int, zone: ZoneInfo) -> str:
    """Return how a film stands, with the minute at which it is ready, and the risk."""
    what = f"{one.coating} of {wording.pass_name(one.film)}"
    if not one.coating:
        what = wording.pass_name(one.film)
    if one.side is Miss.LATE:
        told = f"the window of {what} closed {_at(one.closed or now, now, zone)}"
        if one.ready is not None:
            told += f" and opens again {_at(one.ready, now, zone)}"
    elif one.under_way:
        told = f"{what} is still under way"
    elif one.ready is None:
        told = f"{what} never gets {one.state or 'ready'} in this air"
    else:
        told = f"{what} is {one.state or 'ready'} {_at(one.ready, now, zone)}, not before"
    return f"{told}; the risk: {one.risk}"


def _told(held: HeldUp, now: int, zone: ZoneInfo) -> str:
    return "; ".join(film_line(one, now, zone) for one in held.found)


def _ways(held: HeldUp, now: int, zone: ZoneInfo) -> str:
    ways = [_until(held, now, zone), f"say {OPTIONS[GoOn.ALL_THE_SAME]}"]
    if held.by_looking:
        ways.append(f"say {OPTIONS[GoOn.LOOKED]} if you have waited and it is dry")
    return ", or ".join(ways)


def _until(held: HeldUp, now: int, zone: ZoneInfo) -> str:
    ready = held.ready
    if ready is None or ready <= now:
        return "leave it today"
    return f"wait until {_at(ready, now, zone)}"


def _at(minute: int, now: int, zone: ZoneInfo) -> str:
    """Return "20:14", with its day if that is another one."""
    if wording.day(minute, zone) == wording.day(now, zone):
        return wording.clock_time(minute, zone)
    return wording.moment(minute, zone)
