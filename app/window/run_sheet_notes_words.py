"""What is beside a run sheet in words: looks, brakes, marks, offers, the closing check."""

from __future__ import annotations

from collections.abc import Iterable
from zoneinfo import ZoneInfo

from app.window import reasons, words
from app.window.message_translation import translated
from planner.evening.advice import OneFirst, RestAdvice
from planner.evening.alternatives import ColourTaker, Other
from planner.evening.closing_check import Check, CheckKind
from planner.evening.last_coat_brake import TopFilm
from planner.evening.looks import DueLook, LookFor, look_for
from planner.evening.run_sheet_notes import Beside, Filling
from planner.tonight import WorkRow
from planner.values.step import Trait

TAKERS_TOLD = 3


def parts_of(places: Iterable[str]) -> tuple[str, ...]:
    """Return the parts of "part/place" names, each once."""
    return tuple(dict.fromkeys(place.partition("/")[0] for place in places))


def sign_words(what: LookFor) -> str:
    """Return what a look is for."""
    told = {
        LookFor.WORK: words.tr("how it has come out"),
        LookFor.DULL: words.tr("dull enough to be wiped back?"),
        LookFor.TIDE_MARKS: words.tr("tide marks"),
        LookFor.FROSTING: words.tr("frosting, dust, runs"),
        LookFor.LIFTING: words.tr("bubbles and lifted edges"),
        LookFor.SILVERING: words.tr("silvery shine under the decals"),
    }
    return told[what]


def look_at_words(look: DueLook) -> str:
    """Return what to look at: "gloss, Cart (hull): frosting, dust, runs"."""
    return words.tr("{work} ({parts}): {sign}").format(
        work=reasons.key_name(look.key),
        parts=words.listed(parts_of(look.places)),
        sign=sign_words(look.what),
    )


def look_sentence(look: DueLook, zone: ZoneInfo, now: int) -> str:
    """Return when to look at what, and for what."""
    if look.at <= now:
        return words.tr("Have a look now: {what}").format(what=look_at_words(look))
    return words.tr("Have a look {time}: {what}").format(
        time=words.when(look.at, zone, now), what=look_at_words(look)
    )


def look_line(look: DueLook, zone: ZoneInfo, now: int) -> str:
    """Return the same in one short line for the bench."""
    form = words.tr("Look now (L): {work}: {sign}")
    if look.at > now:
        form = words.tr("Look {time}: {work}: {sign}")
    return form.format(
        time=words.when(look.at, zone, now),
        work=reasons.key_name(look.key),
        sign=sign_words(look.what),
    )


def trait_words(traits: Iterable[Trait], quiet_from: int | None, zone: ZoneInfo) -> list[str]:
    """Return what the marks of a step mean for who works on it, in short sentences."""
    told = []
    for trait in traits:
        if trait is Trait.SMELLS:
            told.append(words.tr("It smells: air the room, well before others go to bed."))
        elif trait is Trait.NOISY and quiet_from is not None:
            told.append(
                words.tr("It is noisy: quiet hours begin at {time}.").format(
                    time=words.clock(quiet_from, zone)
                )
            )
        elif trait is Trait.NOISY:
            told.append(words.tr("It is noisy: think of who sleeps."))
        elif trait is Trait.DAYLIGHT:
            told.append(words.tr("It needs daylight."))
        elif trait is Trait.ANY_AIR:
            told.append(words.tr("It is laid in any air, on your word."))
        elif trait is Trait.ONE_STRETCH:
            told.append(words.tr("All its coats belong into this evening."))
    return told


def marks_of(row: WorkRow, beside: Beside, zone: ZoneInfo, now: int) -> list[str]:
    """Return what the marks of a row mean, how long it goes on alone, and its look."""
    told = trait_words(row.traits, beside.quiet_from, zone)
    if row.goes_alone:
        told.append(reasons.alone_sentence(row.start, row.free, row.end, zone, now))
    if row.look_in is not None and row.piece == row.pieces:
        form = words.tr("Have a look {length} later: {sign}")
        sign = sign_words(look_for(row.stage))
        told.append(form.format(length=words.span(row.look_in), sign=sign))
    return told


def filling_words(filling: Filling, zone: ZoneInfo, now: int) -> list[str]:
    """Return what else takes a colour, whether one vehicle goes first, and why it comes again."""
    told = []
    if filling.takers:
        names = [
            words.tr("{when}: {work} ({parts})").format(
                when=taker_when(taker, zone, max(now, filling.row.start)),
                work=reasons.short_name(taker.key),
                parts=words.listed(parts_of(taker.places)),
            )
            for taker in filling.takers[:TAKERS_TOLD]
        ]
        left = len(filling.takers) - TAKERS_TOLD
        if left > 0:
            names.append(words.tr("and {n} more").format(n=left))
        told.append(words.tr("Also takes this colour: {others}").format(others="; ".join(names)))
    if filling.first is not None:
        told.append(one_first_words(filling.first, zone, now))
    if filling.again:
        told.append(words.capital(translated(filling.again)))
    return told


def one_first_words(first: OneFirst, zone: ZoneInfo, now: int) -> str:
    """Return why one vehicle goes first, and when it is judged."""
    form = words.tr("{why} Spray {model} alone, judge it {time}, then the others.")
    return form.format(
        why=translated(first.reasons[0].reason),
        model=first.first.model,
        time=words.when(first.judge_at, zone, now),
    )


def rest_words(pause: RestAdvice, zone: ZoneInfo, now: int) -> str:
    """Return until when places should be left alone."""
    told = words.tr("{n} tries have failed here; leave it alone until {time}.")
    return told.format(n=pause.tries, time=words.when(pause.until, zone, now))


def taker_when(colour_taker: ColourTaker, zone: ZoneInfo, now: int) -> str:
    """Return when what takes a colour could be done."""
    if colour_taker.ready(now):
        return words.tr("now")
    if colour_taker.opens is not None:
        return words.opening(colour_taker.opens, zone, now)
    if colour_taker.waits_for:
        before = reasons.short_step(colour_taker.key._replace(step=colour_taker.waits_for))
        return words.tr("after “{step}”").format(step=before)
    return words.tr("no place yet")


def other_words(other: Other, zone: ZoneInfo, now: int) -> str:
    """Return when an alternative could begin and how long it takes, with its set-up."""
    return words.tr("{parts} · from {time}, {length}").format(
        parts=words.listed(other.parts),
        time=words.clock(max(now, other.start), zone),
        length=words.span(other.end - other.start),
    )


def below_words(top_film: TopFilm, zone: ZoneInfo, at: int) -> str:
    """Return how far a film below a last coat has come at ``at``: ready, or only touch-dry."""
    state = words.tr("wet") if top_film.state is None else words.state_word(top_film.state.value)
    ready = top_film.hard is not None and top_film.hard <= at
    form = (
        words.tr("✓ {places}: {coating} is {state}")
        if ready
        else words.tr("○ {places}: {coating} is only {state}")
    )
    told = form.format(
        places=words.listed(parts_of(top_film.places)), coating=top_film.coating, state=state
    )
    if top_film.hard is None:
        return words.tr("{told}, dry-through never in this air").format(told=told)
    if not ready:
        hard = words.opening(top_film.hard, zone, at)
        return words.tr("{told}, dry-through {time}").format(told=told, time=hard)
    return told


def check_words(check: Check) -> str:
    """Return what is to be looked at before the table is left."""
    if check.kind is CheckKind.WET:
        return words.tr("Wet, safe under a cover: {model}").format(model=check.of)
    if check.kind is CheckKind.CLEAN:
        told = words.tr("{airbrush} is clean; it held {coating}")
        return told.format(airbrush=words.capital(check.of), coating=words.listed(check.things))
    plain = {
        CheckKind.LOOSE: words.tr("Loose parts are back in their box"),
        CheckKind.LIDS: words.tr("Bottles are closed, brushes rinsed"),
        CheckKind.RAGS: words.tr(
            "Oily rags lie flat outdoors, or under water in a closed metal can"
        ),
    }
    return plain[check.kind]
