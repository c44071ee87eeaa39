"""When a film reaches each drying state in this air, and the dew-point margin."""

from __future__ import annotations

import argparse
from dataclasses import replace
from typing import Any
from zoneinfo import ZoneInfo

from app.command_line.book_source import add_json, add_now, add_source, book_of, now_of
from app.command_line.output import FINE, NOT_SOUND, answer, document, iso
from app.service import wording
from app.service.clock import current_minute, local_zone, read_moment
from app.service.drying import DryingTimes, Reached, drying, still_room
from planner.air import fitness
from planner.cautions import LAST_WORD
from planner.values.book import Book
from planner.values.coating import THINNERS, Coating, Family, Finish
from planner.values.moment import zone_named
from planner.values.refusal import Refused, demand, number_in, unknown
from planner.values.room import COLDEST_C, HOTTEST_C, Room
from planner.values.step import Tool

REFERENCE_C, REFERENCE_PCT = 23.0, 50.0
EXAMPLES = """\
  tackfree cure --family "waterborne acrylic" --temperature 16 --humidity 70
  tackfree cure --family "alkyd enamel" --finish gloss --film-um 30 --temperature 18
  tackfree cure harbour.json --coating "gloss varnish" --now 2031-03-05T20:00
"""


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Say what the command takes."""
    add_source(parser)
    what = parser.add_mutually_exclusive_group(required=True)
    what.add_argument("--family", metavar="NAME", help="a chemistry, with its usual times")
    what.add_argument("--coating", metavar="NAME", help="a coating or mix of the file or book")
    parser.add_argument("--finish", metavar="NAME", help="gloss, satin or matte (with --family)")
    parser.add_argument("--film-um", type=float, metavar="D", help="dry thickness [µm]")
    parser.add_argument("--temperature", type=float, metavar="T", help="air [°C], all the time")
    parser.add_argument("--humidity", type=float, metavar="H", help="air [%% RH], all the time")
    parser.add_argument("--surface", type=float, metavar="T", help="surface of the model [°C]")
    parser.add_argument("--tool", default="airbrush", metavar="NAME", help="what lays it")
    parser.add_argument("--location", default="", metavar="NAME", help="where it dries")
    add_now(parser)
    add_json(parser)


def run(args: argparse.Namespace) -> int:
    """Print the table; status 1 if the film never dries."""
    if args.film_um is not None:
        number_in(args.film_um, 0.1, 2000, "--film-um", "µm")
    if args.surface is not None:
        number_in(args.surface, COLDEST_C, HOTTEST_C, "--surface", "°C")
    tools = [tool.value for tool in Tool]
    demand(args.tool in tools, "--tool", unknown("tool", args.tool, tools))
    found, zone = _of_family(args) if args.family is not None else _of_book(args)
    if args.json:
        document(_document(found, zone))
    else:
        answer(_text(found, zone))
    return FINE if found.ever else NOT_SOUND


def _of_family(args: argparse.Namespace) -> tuple[DryingTimes, ZoneInfo]:
    demand(args.file is None, "FILE", "goes with --coating, not with --family")
    families = [family.value for family in Family if family not in THINNERS]
    if args.family not in families:
        known = unknown("family", args.family, families)
        raise Refused("--family", f"{known}; there are {', '.join(families)}")
    finish = args.finish or Finish.MATTE.value
    if finish not in list(Finish):
        raise Refused("--finish", unknown("finish", finish, [finish.value for finish in Finish]))
    coating = Coating(name=args.family, family=Family(args.family), finish=Finish(finish))
    zone = zone_named(local_zone())
    laid = current_minute() if args.now is None else read_moment(args.now, zone)
    room = _still(args, REFERENCE_C, REFERENCE_PCT)
    return _drying(args, coating, room, zone, laid), zone


def _of_book(args: argparse.Namespace) -> tuple[DryingTimes, ZoneInfo]:
    demand(args.finish is None, "--finish", "goes with --family; a coating has its own")
    book = book_of(args)
    coating = _coating(book, args.coating)
    known = [location.name for location in book.room.locations]
    demand(
        not args.location or args.location in known,
        "--location",
        unknown("location", args.location, known),
    )
    laid = now_of(args, book)
    zone = zone_named(book.bench_time.zone)
    room = book.room
    if args.temperature is not None or args.humidity is not None:
        there = drying(coating, room, zone.key, laid, location=args.location)
        room = _still(args, there.temperature_c, there.humidity_pct)
        args.location = ""
    return _drying(args, coating, room, zone, laid), zone


def _drying(
    args: argparse.Namespace, coating: Coating, room: Room, zone: ZoneInfo, laid: int
) -> DryingTimes:
    return drying(
        coating,
        room,
        zone.key,
        laid,
        location=args.location,
        film_um=args.film_um,
        surface_c=args.surface,
        tool=Tool(args.tool),
    )


def _coating(book: Book, name: str) -> Coating:
    try:
        coating = book.coating(name)
    except KeyError:
        known = [coating.name for coating in book.coatings] + [mix.name for mix in book.mixes]
        raise Refused("--coating", unknown("coating", name, known)) from None
    demand(coating.family not in THINNERS, "--coating", "is a thinner and forms no film")
    return replace(coating, name=name)


def _still(args: argparse.Namespace, temperature_c: float, humidity_pct: float) -> Room:
    warm = temperature_c if args.temperature is None else args.temperature
    damp = humidity_pct if args.humidity is None else args.humidity
    number_in(warm, COLDEST_C, HOTTEST_C, "--temperature", "°C")
    number_in(damp, 0, 100, "--humidity", "% RH")
    demand(not args.location, "--location", "goes without --temperature, --humidity and --family")
    return still_room(warm, damp)


def _text(found: DryingTimes, zone: ZoneInfo) -> str:
    coating = found.coating
    lines = [
        f"{coating.name} ({coating.family}, {coating.finish}), {found.film_um:g} µm dry, "
        f"laid {wording.moment(found.laid, zone)}",
        f"air {found.temperature_c:.1f} °C, {found.humidity_pct:.0f} % RH; {_dew(found)}",
        "",
        f"{'state':<15}{'at the earliest':<18}{'likely':<18}{'surely':<18}figure",
    ]
    for state in found.states:
        ends = "".join(f"{_span(end):<18}" for end in (state.early, state.nominal, state.late))
        lines.append(f"{state.state:<15}{ends}{state.status}: {state.source}")
    lines += ["", f"laying it now: {fitness(found.advice)}"]
    lines += [
        f"  {advisory.fitness}: {advisory.reason} ({advisory.source})" for advisory in found.advice
    ]
    return "\n".join([*lines, "", LAST_WORD])


def _dew(found: DryingTimes) -> str:
    if found.dew_point_c is None or found.margin_k is None:
        return "no dew point in air so dry"
    return f"dew point {found.dew_point_c:.1f} °C, surface {found.margin_k:.1f} K above it"


def _span(minutes: int | None) -> str:
    return "never" if minutes is None else wording.span(minutes)


def _document(found: DryingTimes, zone: ZoneInfo) -> dict[str, Any]:
    return {
        "coating": found.coating.name,
        "family": found.coating.family.value,
        "finish": found.coating.finish.value,
        "film_um": found.film_um,
        "location": found.location,
        "laid": iso(found.laid, zone),
        "temperature_c": found.temperature_c,
        "humidity_pct": found.humidity_pct,
        "surface_c": found.surface_c,
        "dew_point_c": found.dew_point_c,
        "surface_margin_k": found.margin_k,
        "states": [_state(state, found.laid, zone) for state in found.states],
        "fitness": fitness(found.advice).value,
        "advice": [
            {
                "fitness": advisory.fitness.value,
                "reason": advisory.reason,
                "source": advisory.source,
            }
            for advisory in found.advice
        ],
    }


def _state(reached: Reached, laid: int, zone: ZoneInfo) -> dict[str, Any]:
    ends = {"early": reached.early, "nominal": reached.nominal, "late": reached.late}
    return {
        "state": reached.state.value,
        "reference_minutes": reached.reference,
        "status": reached.status,
        "source": reached.source,
        **{f"{name}_minutes": minutes for name, minutes in ends.items()},
        **{
            name: None if minutes is None else iso(laid + minutes, zone)
            for name, minutes in ends.items()
        },
    }
