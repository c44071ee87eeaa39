"""What is said of films that work meets outside their windows.  No Qt."""

from __future__ import annotations

from zoneinfo import ZoneInfo

from app.service.film_brake import HeldUp, Miss, Unready
from app.window import reasons, words
from app.window.message_translation import translated


def title_words(held: HeldUp, *, done: bool) -> str:
    """Return the question itself."""
    if not held.early:
        return words.tr("It is too late for this: go on all the same?")
    if done:
        return words.tr("Was it done over a film that was not ready?")
    return words.tr("The film below is not ready: begin all the same?")


def film_lines(one: Unready, zone: ZoneInfo, now: int) -> list[str]:
    """Return how a film stands, with the minute at which it is ready, and the risk."""
    film = _film(one)
    risk = words.tr("The risk: {risk}.").format(risk=translated(one.risk))
    if one.side is Miss.LATE:
        told = words.tr("{film}: its window closed {time}.").format(
            film=film, time=words.today_or_when(one.closed or now, zone, now)
        )
        if one.ready is not None:
            again = words.tr("It opens again {time}.")
            told = f"{told} {again.format(time=words.today_or_when(one.ready, zone, now))}"
        return [told, risk]
    if one.under_way:
        return [words.tr("{film} is still under way.").format(film=film), risk]
    state = words.tr("ready") if one.state is None else words.state_word(one.state.value)
    if one.ready is None:
        told = words.tr("{film} never gets {state} in this air.").format(film=film, state=state)
    elif one.ready <= now:
        told = words.tr("{film} was {state} only {time}.").format(
            film=film, state=state, time=words.today_or_when(one.ready, zone, now)
        )
    else:
        told = words.tr("{film} will be {state} {time}, {length} from now.").format(
            film=film,
            state=state,
            time=words.today_or_when(one.ready, zone, now),
            length=words.span(one.ready - now),
        )
    return [told, risk]


def wait_words(held: HeldUp, zone: ZoneInfo, now: int) -> str:
    """Return until when to wait, "" where waiting does not help."""
    ready = held.ready
    if ready is None or ready <= now:
        return ""
    return words.tr("until {time}").format(time=words.today_or_when(ready, zone, now))


def all_the_same_words(*, done: bool) -> str:
    """Return the way that leaves a mark."""
    return words.tr("Note it all the same") if done else words.tr("Begin all the same")


def looked_words() -> str:
    """Return the way on of whoever has looked."""
    return words.tr("I waited and it is dry")


def _film(one: Unready) -> str:
    name = words.capital(reasons.key_name(one.film))
    if not one.coating:
        return name
    parts = tuple(dict.fromkeys(place.partition("/")[0] for place in one.places))
    return words.tr("{coating} on {parts} ({work})").format(
        coating=words.capital(one.coating), parts=words.listed(parts), work=name
    )
