"""What is beside a run sheet as plain text: looks, brakes, offers, the closing check."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from zoneinfo import ZoneInfo

from app.service import wording
from planner.air import fitness
from planner.evening.advice import InAir
from planner.evening.alternatives import ColourTaker, Other
from planner.evening.closing_check import Check, CheckKind
from planner.evening.gaps import FreeGap, GapOffer, GapUse
from planner.evening.last_coat_brake import HARD, Brake, TopFilm
from planner.evening.looks import DueLook
from planner.evening.run_sheet_notes import Beside, Filling
from planner.pace.card_times import CardAsk
from planner.tonight import RunSheet
from planner.values.message import message, row
from planner.values.step import Trait

MOST = 8  # of one kind


def beside_text(found: Beside, sheet: RunSheet, zone: ZoneInfo) -> str:
    """Return everything beside a run sheet under its headings, "" for nothing."""
    now = sheet.now
    tidy = f"Before you go, from {wording.clock_time(found.tidy_from, zone)}"
    sections = [
        ("Have a look", look_lines(found.looks, now, zone)),
        ("Before the last coats", brake_lines(found.brakes, zone)),
        ("Of this work", trait_lines(sheet, found.quiet_from, zone)),
        ("What else takes the colour", _fillings(found.fillings, now, zone)),
        ("If something is not ready", other_lines(found.others, now, zone)),
        (tidy, check_lines(found.checks) if sheet.rows else ()),
    ]
    lines: list[str] = []
    for title, body in sections:
        told = [f"  {line}" for line in body]
        lines += ["", title, *told] if told else []
    return "\n".join(lines[1:])


def air_text(found: Iterable[InAir], zone: ZoneInfo) -> str:
    """Return what the air speaks against each coating, under a heading; "" for nothing."""
    lines = [
        f"  {wording.clock_time(in_air.at, zone)}  {in_air.coating}: {fitness(in_air.reasons)}: "
        + "; ".join(each.reason for each in in_air.reasons)
        for in_air in found
    ]
    return "\n".join(["The air for it", *lines]) if lines else ""


def card_text(asks: Iterable[CardAsk], zone: ZoneInfo) -> str:
    """Return what drying cards ask, under a heading; "" for nothing."""
    lines = [
        f"  {wording.clock_time(ask.at, zone)}  {ask.card.coating}: {ask.trial}" for ask in asks
    ]
    return "\n".join(["Try a drying card", *lines]) if lines else ""


def gaps_text(found: Iterable[FreeGap], zone: ZoneInfo) -> str:
    """Return what the gaps of the coming days are good for, under a heading; "" for nothing."""
    lines = [
        f"  {wording.moment(gap.start, zone)}  {gap.minutes} min free: "
        + "; ".join(_gap_offer(offer) for offer in gap.offers)
        for gap in found
    ]
    return "\n".join(["Free time", *lines[:MOST]]) if lines else ""


def _gap_offer(offer: GapOffer) -> str:
    name = wording.pass_name(offer.key)
    forms = {
        GapUse.BRUSH: f"{name} ({offer.minutes} min)",
        GapUse.DRY_FIT: f"a dry fit before {name} ({offer.minutes} min)",
        GapUse.CUT_DECALS: f"cut the decals for {name} ({offer.minutes} min)",
        GapUse.SPRAY: f"{name} at the price of one more cleaning ({offer.minutes} min)",
    }
    return forms[offer.use]


def look_lines(looks: Iterable[DueLook], now: int, zone: ZoneInfo) -> Iterator[str]:
    """Yield when to look at what, and for what."""
    for look in looks:
        when = look_when(look, now, zone)
        yield message(
            "{when:<18}{work} ({parts}): {what}",
            when=when,
            work=wording.pass_name(look.key),
            parts=_parts(look.places),
            what=look.what,
        )


def look_when(look: DueLook, now: int, zone: ZoneInfo) -> str:
    """Return when a look is due, to the minute."""
    if look.at <= now:
        return message("now")
    if look.at - now < 1440:
        return wording.clock_time(look.at, zone)
    return wording.moment(look.at, zone)


def brake_lines(brakes: Iterable[Brake], zone: ZoneInfo) -> Iterator[str]:
    """Yield for each last coat what will be ready below it, and what only dry to the touch."""
    for brake in brakes:
        at = wording.clock_time(brake.at, zone)
        yield f"{at}  {wording.pass_name(brake.key)}"
        yield from (f"         {below_text(top_film, brake.at, zone)}" for top_film in brake.below)


def below_text(top_film: TopFilm, at: int, zone: ZoneInfo) -> str:
    """Return how far a film below a last coat has come at ``at``."""
    told = f"{_parts(top_film.places)}: {top_film.coating} ({top_film.step})"
    if top_film.hard is not None and top_film.hard <= at:
        return f"ready      {told} is {HARD}"
    state = f"only {top_film.state}" if top_film.state else "wet"
    return f"not ready  {told} is {state}, {HARD} {wording.opening(top_film.hard, at, zone)}"


def trait_lines(sheet: RunSheet, quiet_from: int | None, zone: ZoneInfo) -> Iterator[str]:
    """Yield what smells, is noisy or needs daylight among the rows ahead."""
    told = {
        Trait.SMELLS: message("smells: air the room, and let it be gone before others go to bed"),
        Trait.NOISY: message("noisy: not in the quiet hours"),
        Trait.DAYLIGHT: message("needs daylight: do it first"),
    }
    if quiet_from is not None:
        by = wording.clock_time(quiet_from, zone)
        told[Trait.SMELLS] = message("{trait} by {time}", trait=told[Trait.SMELLS], time=by)
        told[Trait.NOISY] = message("{trait}, be done by {time}", trait=told[Trait.NOISY], time=by)
    for trait, text in told.items():
        keys = [row.key for row in sheet.work if trait in row.traits and not row.logged]
        if keys:
            names = [wording.pass_name(key) for key in dict.fromkeys(keys)]
            yield message("{trait} ({work})", trait=text, work=row(names))


def _fillings(fillings: Iterable[Filling], now: int, zone: ZoneInfo) -> Iterator[str]:
    for filling in fillings:
        at = wording.clock_time(filling.row.start, zone)
        then = max(now, filling.row.start)
        yield f"{at}  {filling.row.coating}: {'; '.join(taker_words(filling.takers, then, zone))}"
        if filling.first is not None:
            judge = wording.clock_time(filling.first.judge_at, zone)
            yield (
                f"         {filling.first.reasons[0].reason}: "
                f"spray {filling.first.first.model} alone, judge it at {judge}, then the others."
            )
        if filling.again:
            yield f"         {filling.again}"


def taker_words(takers: tuple[ColourTaker, ...], now: int, zone: ZoneInfo) -> list[str]:
    """Return what else takes a colour that is filled in at ``now``, and from when."""
    if not takers:
        return ["nothing beside this sheet, in any project"]
    told = []
    for taker in takers[:MOST]:
        if taker.opens is not None:
            when = (
                "as well" if taker.ready(now) else f"from {wording.opening(taker.opens, now, zone)}"
            )
        else:
            when = f"after {taker.waits_for}" if taker.waits_for else "no place yet"
        told.append(f"{when}: {wording.pass_name(taker.key)} ({_parts(taker.places)})")
    left = len(takers) - MOST
    return [*told, f"{left} more"] if left > 0 else told


def other_lines(others: tuple[Other, ...], now: int, zone: ZoneInfo) -> Iterator[str]:
    """Yield what could be done instead, and how long it takes."""
    for other in others[:MOST]:
        at = wording.clock_time(max(now, other.start), zone)
        minutes = other.end - other.start
        yield f"{at}  {minutes:3} min  {wording.pass_name(other.key)} ({', '.join(other.parts)})"


def check_lines(found: Iterable[Check]) -> Iterator[str]:
    """Yield the closing check, with a box to tick."""
    for check in found:
        yield f"[ ] {check_word(check)}"


def check_word(check: Check) -> str:
    """Return what is to be looked at."""
    things = ", ".join(check.things)
    told = {
        CheckKind.WET: f"wet, safe under a cover: {check.of} ({things})",
        CheckKind.LOOSE: "loose parts are back in their box",
        CheckKind.CLEAN: f"{check.of} is clean; it held {things}",
        CheckKind.LIDS: "bottles are closed, brushes rinsed",
        CheckKind.RAGS: "oily rags lie flat outdoors, or under water in a closed metal can",
    }
    return told[check.kind]


def _parts(places: Iterable[str]) -> str:
    return ", ".join(dict.fromkeys(place.partition("/")[0] for place in places))
