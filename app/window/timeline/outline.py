"""The timeline in words: stretches, the work in them, and what each piece leads to.

Plain values; `tree` shows them.
"""

from __future__ import annotations

from bisect import bisect_left
from collections import defaultdict
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, replace
from zoneinfo import ZoneInfo

from PySide6.QtCore import QCoreApplication

from app.window import reasons, words
from app.window.message_translation import translated
from app.window.strip_content import Bracket, Piece, SetUp, Strip, StripColumn, Wedge
from app.window.timeline.labels import label_of, mark_lines
from app.window.wishes.wish_wording import wish_line
from planner.values.plan import PassKey
from planner.values.step import Bound


def tr(text: str) -> str:
    """Return the translation of a sentence of this module."""
    return QCoreApplication.translate("outline", text)


@dataclass(frozen=True)
class OutlineNode:
    """One line: when, what, why; the pass it speaks of, and the lines below it."""

    time: str
    what: str
    why: str
    swatch: str = ""
    key: PassKey | None = None
    past: bool = False
    below: tuple[OutlineNode, ...] = ()


def outline(strip: Strip, before: Mapping[PassKey, int] | None = None) -> tuple[OutlineNode, ...]:
    """Return a line for each stretch, with the lines of its work below.

    ``before`` are starts in the plan that it is compared with.
    """
    return tuple(stretch_by_stretch(strip, before))


def stretch_by_stretch(
    strip: Strip, before: Mapping[PassKey, int] | None = None
) -> Iterator[OutlineNode]:
    """Yield what `outline` returns, one stretch after the other, so that one can pause between."""
    zone = ZoneInfo(strip.zone)
    wedges: dict[PassKey, list[Wedge]] = defaultdict(list)
    for wedge in strip.wedges:
        wedges[wedge.key].append(wedge)
    brackets: dict[PassKey, list[Bracket]] = defaultdict(list)
    for bracket in strip.brackets:
        brackets[bracket.waiting].append(bracket)
    pieces = sorted(strip.pieces, key=lambda piece: piece.interval.start)
    starts = [piece.interval.start for piece in pieces]
    for column in strip.columns:
        lines: list[tuple[int, int, OutlineNode]] = []
        first = bisect_left(starts, column.interval.start)
        for piece in pieces[first : bisect_left(starts, column.interval.end)]:
            node = _piece(strip, piece, wedges[piece.key], brackets[piece.key], zone)
            was = (before or {}).get(piece.key)
            if was is not None and piece.number == 1:
                node = replace(node, below=(_was(was, piece.key, zone, strip.now), *node.below))
            lines.append((piece.interval.start, 1, node))
        lines += [
            (work.interval.start, 0, _set_up(strip, work, zone))
            for work in strip.set_ups
            if column.interval.start <= work.interval.start < column.interval.end
        ]
        lines.sort(key=lambda line: line[:2])
        yield _column(strip, column, tuple(node for *_, node in lines), zone)


def _column(
    strip: Strip, column: StripColumn, below: tuple[OutlineNode, ...], zone: ZoneInfo
) -> OutlineNode:
    interval = column.interval
    hours = f"{words.clock(interval.start, zone)}–{words.clock(interval.end, zone)}"
    passes = len({node.key for node in below if node.key is not None})
    return OutlineNode(
        time=words.day(column.on),
        what=hours,
        why=words.count(passes, tr("{n} piece of work"), tr("{n} pieces of work")),
        past=interval.end <= strip.now,
        below=below,
    )


def _piece(
    strip: Strip, piece: Piece, wedges: list[Wedge], brackets: list[Bracket], zone: ZoneInfo
) -> OutlineNode:
    below = [_bracket(bracket, zone, strip.now) for bracket in brackets]
    below += [
        OutlineNode("", wish_line(pin, zone, piece.key.project), "", key=piece.key)
        for pin in piece.wishes
    ]
    below += [OutlineNode("", line, "", key=piece.key) for line in mark_lines(piece)]
    if piece.free < piece.interval.end:
        free = words.when(piece.free, zone, strip.now)
        what = tr("goes on alone until then; hands are free from {time}").format(time=free)
        ends = words.when(piece.interval.end, zone, strip.now)
        below.insert(0, OutlineNode(ends, what, "", key=piece.key))
    told = dict.fromkeys(_wedge(wedge, zone, strip.now) for wedge in wedges)
    return OutlineNode(
        time=words.clock(piece.interval.start, zone),
        what=tr("{work} · {model}: {parts}").format(
            work=words.capital(label_of(piece)),
            model=piece.key.model,
            parts=words.listed(piece.parts),
        ),
        why=reasons.reason_sentence(piece.reason, zone, strip.now),
        swatch=piece.swatch,
        key=piece.key,
        past=piece.interval.end <= strip.now,
        below=(*below, *told),
    )


def _was(start: int, key: PassKey, zone: ZoneInfo, now: int) -> OutlineNode:
    return OutlineNode(
        words.when(start, zone, now), tr("stood here before the last change"), "", key=key
    )


def _wedge(wedge: Wedge, zone: ZoneInfo, now: int) -> OutlineNode:
    if wedge.opens is None:
        return OutlineNode("", tr("never dries in this air"), "", key=wedge.key)
    state = words.state_word(wedge.state.value) if wedge.state else tr("waited out")
    what = tr("dries until it is {state}").format(state=state)
    why = ""
    if wedge.waiting is not None:
        why = tr("for {work}").format(work=reasons.key_name(wedge.waiting))
    return OutlineNode(words.when(wedge.opens, zone, now), what, why, key=wedge.key)


def _bracket(bracket: Bracket, zone: ZoneInfo, now: int) -> OutlineNode:
    what = tr("must have ended") if bracket.bound is Bound.END else tr("must have begun")
    return OutlineNode(
        words.when(bracket.at, zone, now), what, translated(bracket.why), key=bracket.waiting
    )


def _set_up(strip: Strip, work: SetUp, zone: ZoneInfo) -> OutlineNode:
    what = words.capital(words.setup_word(work.kind, work.coating))
    length = words.span(work.interval.minutes)
    return OutlineNode(
        words.clock(work.interval.start, zone),
        what,
        length,
        work.swatch,
        past=work.interval.end <= strip.now,
    )
