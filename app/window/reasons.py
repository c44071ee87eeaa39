"""Sentences about pieces of work: their names, why they stand where they do, their gates."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING
from zoneinfo import ZoneInfo

from PySide6.QtCore import QCoreApplication

from app.window import step_naming, words
from app.window.message_translation import title, translated
from app.window.strip_content import Piece
from planner.values.moment import FOREVER
from planner.values.plan import Cause, PassKey, Reason
from planner.values.step import Bound

if TYPE_CHECKING:
    from planner.tonight.replayed_plan import ReplayedPlan


def tr(text: str) -> str:
    """Return the translation of a sentence of this module."""
    return QCoreApplication.translate("reasons", text)


def key_name(key: PassKey) -> str:
    """Return the name of a pass by its key: "Sand all over · Quay Tractor Heron"."""
    return tr("{name} · {model}").format(name=title(step_naming.title_of(key)), model=key.model)


def short_name(key: PassKey) -> str:
    """Return the name of a pass by its stage, where parts tell the rest: "Base · Tractor"."""
    return tr("{name} · {model}").format(name=short_step(key), model=key.model)


def short_step(key: PassKey) -> str:
    """Return the stage of a pass: "Base"."""
    stage = step_naming.stage_of(key)
    return words.capital(words.stage_word(stage)) if stage else step_name(key)


def step_name(key: PassKey) -> str:
    """Return what is done in a pass, where the model is told beside it: "Sand all over"."""
    return title(step_naming.title_of(key))


def step_names(key: PassKey, steps: Sequence[str]) -> str:
    """Return what other steps of a pass's model are called, in a row."""
    return words.listed([step_name(key._replace(step=step)) for step in steps])


def piece_name(piece: Piece) -> str:
    """Return the short name of a piece of work: "base 2/2"."""
    name = words.stage_word(piece.stage)
    if piece.coats > 1:
        name = tr("{stage} {coat}/{coats}").format(
            stage=name, coat=piece.key.coat, coats=piece.coats
        )
    if piece.of > 1:
        name = tr("{stage}, part {number}").format(stage=name, number=piece.number)
    return name


def piece_lines(piece: Piece, zone: ZoneInfo, now: int) -> list[str]:
    """Return what a piece of work is, when it is, and why then."""
    lines = [
        tr("{name} · {model}").format(name=words.capital(piece_name(piece)), model=piece.key.model),
        words.listed(piece.parts),
        tr("{day} {start}–{end} · {length}").format(
            day=words.day_of(piece.interval.start, zone),
            start=words.clock(piece.interval.start, zone),
            end=words.clock(piece.interval.end, zone),
            length=words.span(piece.interval.minutes),
        ),
    ]
    if piece.free < piece.interval.end:
        lines.append(
            alone_sentence(piece.interval.start, piece.free, piece.interval.end, zone, now)
        )
    if piece.title and not words.says_stage(piece.title, piece.stage):
        lines.insert(1, title(piece.title))
    if piece.coating:
        lines.append(
            tr("{coating}, {tool}").format(coating=piece.coating, tool=words.tool_word(piece.tool))
        )
    lines.append(reason_sentence(piece.reason, zone, now))
    return lines


def alone_sentence(start: int, free: int, end: int, zone: ZoneInfo, now: int) -> str:
    """Return how long hands are kept, and until when work goes on without them."""
    return tr("Hands for {length}, then it goes on alone until {time}.").format(
        length=words.span(free - start), time=words.when(end, zone, now)
    )


def reason_sentence(reason: Reason, zone: ZoneInfo, now: int) -> str:
    """Return why a piece of work stands where it does, as one sentence."""
    at = words.when(reason.until, zone, now) if reason.until is not None else ""
    about = _about(reason.about)
    sentences = {
        Cause.AT_ONCE: tr("Can be done at once."),
        Cause.DRYING: _drying(reason, about),
        Cause.WINDOW: tr("It is best done {at}, after {about}.")
        if reason.detail
        else tr("Its window after {about} opens {at}."),
        Cause.BENCH_TIME: tr("No bench time before {at}, set-up included."),
        Cause.HANDS: tr("Hands are busy until {at}."),
        Cause.AIRBRUSH: tr("The airbrush is busy with another colour until {at}."),
        Cause.QUIET: tr("Quiet hours until {at}, and it smells.")
        if reason.detail
        else tr("Quiet hours until {at}: no compressor."),
        Cause.DAYLIGHT: tr("A spray can needs daylight: from {at}."),
        Cause.AIR: tr("The air is unfit for it until {at}."),
        Cause.DRYING_PLACE: tr("No drying place is free before {at}."),
        Cause.PIN: tr("You pinned it here."),
        Cause.ORDER: tr("{about} comes first, until {at}."),
        Cause.LOGGED: tr("Already logged."),
        Cause.CLOSING: tr("Waits until {at}, so that {about} can follow in time.")
        if about
        else tr("Waits so that the next step can follow in time."),
        Cause.HELPER: tr("Needs two people; they are there from {at}."),
    }
    sentence = sentences[reason.cause].format(
        about=about, at=at, state=words.state_word(reason.detail)
    )
    return words.capital(sentence)


def _drying(reason: Reason, about: str) -> str:
    if not about:
        return tr("Its films are {state} {at}.")
    if not reason.detail:
        return tr("The film of {about} opens {at}.")
    return tr("The film of {about} is {state} {at}.")


def _about(text: str) -> str:
    """Return a readable name for what a reason is about: keys come as "project/model/step#1"."""
    if "#" not in text:
        return text
    project, model, step = text.partition("#")[0].rsplit("/", 2)
    return short_name(PassKey(project, model, step))


@dataclass(frozen=True)
class GateLine:
    """One gate of a piece of work in words.

    ``kind`` is "opens", "best" or "closes".
    """

    kind: str
    text: str
    why: str
    source: str


def gate_lines(laid: ReplayedPlan, key: PassKey) -> list[GateLine]:
    """Return every gate that holds a pass, the latest opening first, closings after."""
    return [line for _, line in gate_times(laid, key)]


def gate_times(laid: ReplayedPlan, key: PassKey) -> list[tuple[int, GateLine]]:
    """Return the gates of `gate_lines`, each with the minute at which it opens or closes.

    A gate after a pass without a place opens never.
    """
    if key not in laid.problem.index:
        return []
    zone, now = laid.calendar.zone, laid.now
    found: dict[tuple[str, str], tuple[int, GateLine]] = {}
    for number in laid.problem.activities[laid.problem.index[key]].gates:
        gate = laid.problem.gates[number]
        window = laid.window(number)
        name = key_name(gate.before)
        if window is None:
            line = GateLine(
                "opens",
                tr("{before} must come first").format(before=name),
                translated(gate.why),
                translated(gate.source),
            )
            found.setdefault((line.kind, line.text), (FOREVER, line))
            continue
        if window.window.opens is not None:
            opens = window.opens
            at = tr("never in this air") if opens >= FOREVER else words.when(opens, zone, now)
            state = window.window.opens.state
            text = (
                tr("{at}: the film of {before} is {state}")
                if state
                else tr("{at}: the waiting time after {before} is over")
            ).format(at=at, before=name, state=words.state_word(state.value) if state else "")
            line = GateLine("opens", text, translated(gate.why), translated(gate.source))
            found.setdefault((line.kind, line.text), (-opens, line))
        if window.best > window.opens:
            text = tr("{at}: best done from then on, counted from {before}").format(
                at=words.when(window.best, zone, now), before=name
            )
            line = GateLine("best", text, translated(gate.why), translated(gate.source))
            found.setdefault((line.kind, line.text), (window.best, line))
        if window.closes < FOREVER:
            at = words.when(window.closes, zone, now)
            text = (
                tr("{at}: must have ended by then, counted from {before}")
                if gate.closing is Bound.END
                else tr("{at}: must have begun by then, counted from {before}")
            ).format(at=at, before=name)
            line = GateLine("closes", text, translated(gate.why), translated(gate.source))
            found.setdefault((line.kind, line.text), (window.closes, line))
    ordered = sorted(found.values(), key=lambda pair: (pair[1].kind != "opens", pair[0]))
    return [(abs(at), line) for at, line in ordered]
