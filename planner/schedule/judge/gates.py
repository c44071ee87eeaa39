"""Definitions 4 to 11: gates that open and close, held against the plan."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from planner.cure import Band
from planner.graph.gates import PassGate
from planner.schedule.judge.films import GateStart, WindowCheck, gate_band
from planner.schedule.judge.ruling import Ruling
from planner.schedule.judge.verdict import Violation
from planner.values.coating import State
from planner.values.step import Bound, Stage

STACKED = "it dries with what lies below it, and slower under the next coat"

# A state that a kind of work asks by a definition of its own.
OF_ITS_OWN = {
    (Stage.JOIN, State.DRY_TO_HANDLE): 19,
    (Stage.TURN, State.DRY_TO_HANDLE): 20,
    (Stage.MASK, State.PRINT_FREE): 21,
    (Stage.UNMASK, State.SET_TO_TOUCH): 21,
}


def held_gates(ruling: Ruling) -> Iterator[Violation]:
    """Yield each gate that does not hold, under the definition that names the mistake best.

    Gates on facts are not asked; gates whose passes are missing or out of
    order are definition 3's.
    """
    spans = ruling.case.spans
    for gate in ruling.premises.gates:
        after, before = spans.get(gate.after), spans.get(gate.before)
        if after is None or before is None or after.fact or gate.is_order:
            continue
        if after.start >= before.end:
            yield from _judge(ruling, gate)


def stays(ruling: Ruling) -> Iterator[Violation]:
    """Definition 10: no coat carries a film off to another location while a gate waits on it."""
    case, passes = ruling.case, ruling.premises.passes
    for placed in case.plan.placements:
        other = passes.get(placed.key)
        if other and placed.location not in ("", other.step.dries_in):
            text = f"dries in {placed.location}, which its step does not allow"
            yield Violation(10, str(placed.key), text)
    dries_in = {
        key: case.book.room.location(pass_.step.dries_in).name for key, pass_ in passes.items()
    }
    watched = [
        gate
        for gate in ruling.premises.gates
        if gate.watches_film and gate.before in case.spans and gate.after in case.spans
    ]
    if len(set(dries_in.values())) < 2:
        return
    for other, span in case.planned():
        parts = {part for unit in other.units for part in unit.parts} if other.films else set()
        for gate in watched:
            if (
                gate.place.partition("/")[0] in parts
                and (gate.before.project, gate.before.model) == (other.key.project, other.key.model)
                and dries_in[gate.before] != dries_in[other.key]
                and gate.after != other.key
                and case.spans[gate.before].end <= span.start < case.spans[gate.after].start
            ):
                laid = ruling.films.laid(gate)
                if laid.film and laid.film.location == dries_in[other.key]:
                    continue  # it melted into a coat that dries there
                opens = ruling.films.opens(laid, gate.windows[0].opens, gate_band(gate))
                if opens is None or opens > span.start:
                    yield Violation(
                        10,
                        str(other.key),
                        f"takes {gate.place} to {dries_in[other.key]} at {case.at(span.start)}, "
                        f"but {gate.after} waits for its film to dry in {dries_in[gate.before]}",
                    )


def _judge(ruling: Ruling, gate: PassGate) -> Iterator[Violation]:
    films = ruling.films
    laid = films.laid(gate)
    looks = films.looks(gate, laid)
    chosen = next((look for look in looks if look.holds), None)
    if chosen:
        if chosen.uncertain:
            ruling.flag(_uncertain(ruling, gate, chosen))
        return
    unmerged = films.unmerged(gate)
    if unmerged != laid and any(look.holds for look in films.looks(gate, unmerged)):
        merged = unmerged.end != laid.end
        text = "the two coats melted into one film" if merged else STACKED
        yield _violation(ruling, 11, gate, looks[0], text)
    elif all(look.opens is None for look in looks):
        yield _violation(ruling, 10, gate, looks[0], "never in this air")
    elif len(looks) > 1:
        yield _violation(ruling, 8, gate, looks[-1], f"in none of its {len(looks)} windows")
    else:
        yield from _single(ruling, gate, laid, looks[0])


def _single(
    ruling: Ruling, gate: PassGate, laid: GateStart, look: WindowCheck
) -> Iterator[Violation]:
    own = _own_definition(ruling, gate)
    if look.opened and look.in_time:
        need = look.window.preparation_minutes
        text = f"needs {need} min of {look.window.preparation} in that window first"
        yield _violation(ruling, 8, gate, look, text)
    elif look.uncertain:
        yield _violation(ruling, 9, gate, look, "outside it even at nominal values")
    elif own:
        yield _violation(ruling, own, gate, look, gate.why)
    elif not look.opened:
        if _opens_from_start(ruling, gate, laid):
            text = "an opening counts from the end of the pass that laid the film"
            yield _violation(ruling, 4, gate, look, text)
        elif _buried(ruling, gate):
            yield _violation(ruling, 5, gate, look, "a film below the top one is reached too")
        else:
            yield _violation(ruling, 6, gate, look, "too early")
    elif _closes_from_end(ruling, gate, laid):
        text = "a closing counts from the start of the pass that laid the film"
        yield _violation(ruling, 4, gate, look, text)
    else:
        yield _violation(ruling, 7, gate, look, "too late")


def _own_definition(ruling: Ruling, gate: PassGate) -> int | None:
    stage = ruling.premises.passes[gate.after].step.stage
    (window,) = gate.windows
    if stage is Stage.UNMASK and ruling.premises.passes[gate.before].step.stage is Stage.MASK:
        return 21
    if window.closes is not None or window.opens is None or window.opens.state is None:
        return None
    return OF_ITS_OWN.get((stage, window.opens.state))


def _opens_from_start(ruling: Ruling, gate: PassGate, laid: GateStart) -> bool:
    film = replace(laid.film, laid=laid.start) if laid.film else None
    shifted = laid._replace(film=film, end=laid.start)
    opens = ruling.films.opens(shifted, gate.windows[0].opens, gate_band(gate))
    return opens is not None and opens <= ruling.case.spans[gate.after].start


def _closes_from_end(ruling: Ruling, gate: PassGate, laid: GateStart) -> bool:
    span = ruling.case.spans[gate.after]
    closes = ruling.films.closes(laid._replace(start=laid.end), gate.windows[0].closes, Band.EARLY)
    if closes is None:
        return True
    return span.start < closes if gate.closing is Bound.START else span.end <= closes


def _buried(ruling: Ruling, gate: PassGate) -> bool:
    """Tell whether another film lies over the one watched, and that one is ready."""
    if not gate.place:
        return False
    rank = ruling.premises.passes[gate.after].rank
    stack = ruling.films.stack(gate.before, gate.place)
    top = [one for one in stack if one.rank < rank and one.key in ruling.case.spans][-1]
    if top.key == gate.before:
        return False
    return all(
        any(look.holds for look in ruling.films.looks(other, ruling.films.laid(other)))
        for other in ruling.premises.gates_between.get((top.key, gate.after), ())
    )


def _what(gate: PassGate) -> str:
    return f"{gate.place} from {gate.before}" if gate.place else str(gate.before)


def _violation(
    ruling: Ruling, definition: int, gate: PassGate, look: WindowCheck, text: str
) -> Violation:
    at = ruling.case.at
    span = ruling.case.spans[gate.after]
    opens = "never opens" if look.opens is None else f"opens {at(look.opens)}"
    closes = "" if look.closes is None else f", closes {at(look.closes)}"
    bound = "start" if gate.closing is Bound.START or not look.opened else "end"
    stands = f"starts {at(span.start)}" + (f", ends {at(span.end)}" if bound == "end" else "")
    state = look.window.opens.state if look.window.opens else None
    named = f"{_what(gate)}" + (f" ({state})" if state else "")
    return Violation(
        definition, str(gate.after), f"{stands}, but {named} {opens}{closes}: {text} ({gate.why})"
    )


def _uncertain(ruling: Ruling, gate: PassGate, look: WindowCheck) -> str:
    at = ruling.case.at
    opens = "" if look.opens is None else f" from {at(look.opens)}"
    closes = "" if look.closes is None else f" to {at(look.closes)}"
    return (
        f"uncertain: {gate.after} has no sure window over {_what(gate)}; "
        f"at nominal values it runs{opens}{closes}"
    )
