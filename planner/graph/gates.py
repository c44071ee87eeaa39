"""The gates between the passes of one model.

Four sources make them: the coat stack of each place (definition 5), the
label's recoat windows, masks (definition 21), and what a person wrote on
the step.  They follow from the values alone; no schedule is looked at.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Callable, Iterable
from dataclasses import dataclass, field
from functools import lru_cache
from typing import TypeGuard

from planner.layers.care import care_of
from planner.layers.coat_stack import RESISTS, TAKES_OFF
from planner.layers.customary import Custom, after_film, can_again, released
from planner.layers.operation_kinds import bars, seals
from planner.layers.overcoat_table import COMMON_PRACTICE
from planner.layers.requirement import Requirement, requirement
from planner.logged_order import Coat
from planner.passes import Pass, expand, expand_model, noted_of
from planner.values.book import Book
from planner.values.coating import Coating, Family, Mark, State, Window
from planner.values.identity_key import Same
from planner.values.message import message
from planner.values.mix import Mix, film_of_mix
from planner.values.model import Model
from planner.values.plan import PassKey
from planner.values.project import Project
from planner.values.step import Bound, Stage, Step
from planner.values.wishes import Care

ANY_TIME = (Window(),)
SAME_PLACES = message("the same places come first")
MASK_FIRST = message("the mask goes on first")
EDGE = message("the edge must not run")
CREEPS = message("tape creeps and lifts when left for long")
LABEL = message("label")
BY_HAND = message("written by the person")
LONGEST_MASK_MINUTES = 7 * 1440  # tape survived a week: common practice, no source


@dataclass(frozen=True)
class PassGate:
    """What must hold between two passes.

    Attributes
    ----------
    before, after
        The pass that the gate counts from, and the pass that it holds.
    place
        "part/place" whose film (laid by ``before``) is watched; "" when the
        gate watches time alone.
    windows
        One of them must hold.  ``(Window(),)`` is mere order.
    closing
        Which end of ``after`` a closing binds.
    why, source
        Reason in plain words, and where it comes from.
    pooled
        How many times its thickness the film watched counts (definition 5).
    likely
        It opens once the film is likely ready, not surely (definition 6).
    """

    before: PassKey
    after: PassKey
    place: str
    windows: tuple[Window, ...]
    closing: Bound = Bound.START
    why: str = ""
    source: str = COMMON_PRACTICE
    pooled: float = 1.0
    likely: bool = False

    @property
    def is_order(self) -> bool:
        """Tell whether it asks no more than the end of ``before``."""
        return self.windows == ANY_TIME

    @property
    def watches_film(self) -> bool:
        """Tell whether its first opening lies in the life of a film, not on the clock."""
        opens = self.windows[0].opens
        return bool(self.place) and opens is not None and opens.of_film

    @property
    def closes(self) -> bool:
        """Tell whether some window of it closes."""
        return any(window.closes is not None for window in self.windows)


@dataclass(frozen=True)
class _Film:
    """A film on a place: who laid it, of what, and the number of the stack below it."""

    key: PassKey
    place: str
    coating: str
    below: int

    @property
    def alike(self) -> tuple[object, ...]:
        """Equal for films that dry alike: same pass, coating and stack."""
        return (self.key, self.coating, self.below)


@dataclass
class _Bench:
    """What lies where while the working order is walked."""

    coatings: dict[str, Coating]
    likely: tuple[Care, ...]
    noted: frozenset[Coat]
    films: dict[str, list[_Film]] = field(default_factory=lambda: defaultdict(list))
    last: dict[str, PassKey] = field(default_factory=dict)
    demanded: dict[tuple[object, ...], float] = field(default_factory=dict)  # -> pooled
    masks: dict[str, PassKey] = field(default_factory=dict)  # covered place -> mask
    scope: dict[PassKey, list[_Film]] = field(default_factory=lambda: defaultdict(list))
    numbers: dict[tuple[int, PassKey, str], int] = field(default_factory=dict)  # of stacks
    first_of: dict[str, Pass] = field(default_factory=dict)
    last_of: dict[str, Pass] = field(default_factory=dict)


def gates_of(book: Book, project: Project, model: Model) -> tuple[PassGate, ...]:
    """Return every gate between passes of ``model``, in working order of ``after``."""
    return _gates_of(Same(expand(project, model)), noted_of(project, model), *_terms(book))


def written_gates(book: Book, project: Project, model: Model) -> tuple[PassGate, ...]:
    """Return the gates that would hold if nothing were noted."""
    return _gates_of(Same(expand_model(project.name, model)), frozenset(), *_terms(book))


_Terms = tuple[Same[tuple[Coating, ...]], Same[tuple[Mix, ...]], tuple[Care, ...]]


def _terms(book: Book) -> _Terms:
    return Same(book.coatings), Same(book.mixes), book.preferences.likely


@lru_cache(maxsize=1024)
def _gates_of(
    passes: Same[tuple[Pass, ...]],
    noted: frozenset[Coat],
    coatings: Same[tuple[Coating, ...]],
    mixes: Same[tuple[Mix, ...]],
    likely: tuple[Care, ...],
) -> tuple[PassGate, ...]:
    known = {coating.name: coating for coating in coatings.value}
    known.update([(mix.name, film_of_mix(mix, known)) for mix in mixes.value])
    bench = _Bench(known, likely, noted)
    for pass_ in passes.value:
        first = bench.first_of.setdefault(pass_.step.id, pass_)
        if pass_.key.coat < first.key.coat:
            bench.first_of[pass_.step.id] = pass_
        bench.last_of[pass_.step.id] = pass_
    gates: dict[PassGate, None] = {}
    for pass_ in passes.value:
        for gate in _gates_on(bench, pass_):
            gates.setdefault(gate)
        _advance(bench, pass_)
    return tuple(gates)


def _gates_on(bench: _Bench, pass_: Pass) -> Iterable[PassGate]:
    yield from _written(bench, pass_)
    yield from _stack(bench, pass_)
    yield from _masks(bench, pass_)
    yield from _customary(bench, pass_)
    held = {bench.last[place] for place in pass_.places if place in bench.last}
    for key in sorted(held):
        yield PassGate(key, pass_.key, "", ANY_TIME, why=SAME_PLACES)


def _written(bench: _Bench, pass_: Pass) -> Iterable[PassGate]:
    """Yield what the person wrote; it holds the step's first pass."""
    if pass_.key != bench.first_of[pass_.step.id].key:
        return
    for name in pass_.step.after:
        before = bench.last_of.get(name)
        if ties(before, pass_):
            why = message("after {step}", step=name)
            yield PassGate(before.key, pass_.key, "", ANY_TIME, why=why)
    for gate in pass_.step.gates:
        before = bench.last_of.get(gate.after)
        if not ties(before, pass_):
            continue
        for place in _watched(before, pass_) or ("",):
            yield PassGate(
                before.key,
                pass_.key,
                place,
                gate.windows,
                gate.closing,
                why=message("written on the step, after {step}", step=gate.after),
                source=BY_HAND,
            )


def ties(before: Pass | None, pass_: Pass) -> TypeGuard[Pass]:
    """Tell whether what is written on a step ties it to an earlier pass (definition 22)."""
    return before is not None and (not pass_.reordered or before.rank < pass_.rank)


def _watched(before: Pass, pass_: Pass) -> tuple[str, ...]:
    """Return one place for each coating that ``before`` laid, shared places first."""
    shared = [film for film in before.films if film[0] in pass_.places]
    chosen: dict[str, str] = {}
    for place, coating in shared or before.films:
        chosen.setdefault(coating, place)
    return tuple(chosen.values())


def _stack(bench: _Bench, pass_: Pass) -> Iterable[PassGate]:
    """Yield what each film reached must have become (definition 5)."""
    laid = dict(pass_.films)
    turned = pass_.step.stage is Stage.TURN and all(unit.holder for unit in pass_.units)
    seen: set[tuple[object, ...]] = set()
    for place in pass_.places:
        coating = bench.coatings[laid[place]] if place in laid else None
        stack = bench.films[place]
        again = [_again(bench, pass_, coating, film) for film in stack]
        all_again = _all_from(again)
        sheltered, barred = (_any_above(bench, stack, holds) for holds in (seals, bars))
        for at, film in enumerate(stack):
            below = bench.coatings[film.coating]
            asked = (
                None if turned else _asked(bench, pass_, coating, film, sheltered[at], barred[at])
            )
            top = film is stack[-1]
            windows = below.recoat if coating and top else ()
            if windows and (mark := (*film.alike, "recoat")) not in seen:
                seen.add(mark)
                why = message("recoat window of {coating}", coating=film.coating)
                yield PassGate(film.key, pass_.key, place, windows, why=why, source=LABEL)
            custom = again[at]
            if custom and top and (mark := (*film.alike, "again")) not in seen:
                seen.add(mark)
                yield _by_custom(film, pass_, custom)
            if asked is None or (windows and asked.state is State.DRY_TO_RECOAT):
                continue  # the label's own windows say when a coat may follow
            if all_again[at] and asked.state is State.DRY_TO_RECOAT:
                continue  # coats of one can follow each other by the windows of cans
            soon = asked.state is not State.DRY_TO_HANDLE
            likely = soon and care_of(pass_.step, coating, below) in bench.likely
            spot = (film.place, film.key, asked.state)
            waited = [(*spot, False), (*spot, True)] if likely else [(*spot, False)]
            if any(bench.demanded.get(each, 0.0) >= asked.pooled for each in waited):
                continue  # an earlier pass waited for it already
            if (pass_.key.step, pass_.key.coat) not in bench.noted:  # a fact may have come too soon
                bench.demanded[*spot, likely] = asked.pooled
            if (mark := (*film.alike, asked.state, asked.pooled)) not in seen:
                seen.add(mark)
                yield _waits(film, pass_, asked, likely)


def _again(bench: _Bench, pass_: Pass, coating: Coating | None, film: _Film) -> Custom | None:
    """Return the windows of cans where this is another coat of the can that laid a film."""
    laid_by = bench.first_of[film.key.step].step
    return can_again(pass_.step, coating, bench.coatings[film.coating], laid_by)


def _waits(film: _Film, pass_: Pass, asked: Requirement, likely: bool) -> PassGate:
    """Return the gate of a pass that waits for what is asked of a film."""
    return PassGate(
        film.key,
        pass_.key,
        film.place,
        (Window(opens=Mark(state=asked.state)),),
        why=asked.why,
        source=asked.source,
        pooled=asked.pooled,
        likely=likely,
    )


def _asked(
    bench: _Bench, pass_: Pass, coating: Coating | None, film: _Film, sheltered: bool, barred: bool
) -> Requirement | None:
    """Return what a pass asks of one film; ``sheltered`` and ``barred`` by those above it."""
    return requirement(
        pass_.step,
        coating,
        bench.coatings[film.coating],
        bench.first_of[film.key.step].step,
        sheltered=sheltered,
        barred=barred,
    )


def _any_above(
    bench: _Bench, stack: list[_Film], holds: Callable[[Step, Coating], bool]
) -> list[bool]:
    """Tell of each film of a stack whether something holds for one above it."""
    found, above = [], False
    for film in reversed(stack):
        found.append(above)
        above = above or holds(bench.first_of[film.key.step].step, bench.coatings[film.coating])
    return found[::-1]


def _all_from(again: list[Custom | None]) -> list[bool]:
    """Tell of each film whether it and all above it are of the same can."""
    found, whole = [], True
    for custom in reversed(again):
        whole = whole and bool(custom)
        found.append(whole)
    return found[::-1]


def _masks(bench: _Bench, pass_: Pass) -> Iterable[PassGate]:
    """Yield what masks ask: coats follow the mask, unmasking follows the coats."""
    if pass_.step.stage is Stage.UNMASK:
        for mask in sorted({bench.masks[place] for place in pass_.places if place in bench.masks}):
            if not released(pass_.step, mask.step):
                window = Window(closes=Mark(minutes=LONGEST_MASK_MINUTES))
                yield PassGate(mask, pass_.key, "", (window,), why=CREEPS)
            seen: set[tuple[object, ...]] = set()
            for film in bench.scope[mask]:
                if film.alike not in seen:
                    seen.add(film.alike)
                    window = Window(opens=Mark(state=State.SET_TO_TOUCH))
                    yield PassGate(film.key, pass_.key, film.place, (window,), why=EDGE)
    if pass_.step.stage in TAKES_OFF:
        yield from _drawn_off(bench, pass_)
    elif pass_.films:
        for mask in sorted(
            {key for place, key in bench.masks.items() if _part(place) in pass_.parts}
        ):
            yield PassGate(mask, pass_.key, "", ANY_TIME, why=MASK_FIRST)


def _drawn_off(bench: _Bench, pass_: Pass) -> Iterable[PassGate]:
    """Yield what drawing off masking fluid asks: films above that do not run, and soon enough."""
    seen: set[tuple[object, ...]] = set()
    for place in pass_.places:
        stack = bench.films[place]
        laid = [at for at, film in enumerate(stack) if _resists(bench, film)]
        if not laid:
            continue
        below = stack[laid[0]]
        if below.alike not in seen and not released(pass_.step, below.key.step):
            seen.add(below.alike)
            window = Window(closes=Mark(minutes=LONGEST_MASK_MINUTES))
            yield PassGate(below.key, pass_.key, "", (window,), why=CREEPS)
        for film in stack[laid[0] + 1 :]:
            if film.alike not in seen and not _resists(bench, film):
                seen.add(film.alike)
                window = Window(opens=Mark(state=State.SET_TO_TOUCH))
                yield PassGate(film.key, pass_.key, place, (window,), why=EDGE)


def _resists(bench: _Bench, film: _Film) -> bool:
    return bench.coatings[film.coating].family in RESISTS


def _customary(bench: _Bench, pass_: Pass) -> Iterable[PassGate]:
    """Yield the windows that everybody keeps, beside what the person wrote (definition 6a)."""
    seen: set[tuple[object, ...]] = set()
    for place in pass_.places:
        if not bench.films[place]:
            continue
        film = bench.films[place][-1]
        if film.alike in seen:
            continue
        seen.add(film.alike)
        fluid = any(
            bench.coatings[each.coating].family is Family.CHIPPING_FLUID
            for each in bench.films[place]
        )
        laid_by = bench.first_of[film.key.step].step
        custom = after_film(pass_.step, bench.coatings[film.coating], laid_by, fluid)
        if custom is not None:
            yield _by_custom(film, pass_, custom)


def _by_custom(film: _Film, pass_: Pass, custom: Custom) -> PassGate:
    return PassGate(
        film.key,
        pass_.key,
        film.place,
        custom.windows,
        custom.closing,
        why=custom.why,
        source=custom.source,
    )


def _advance(bench: _Bench, pass_: Pass) -> None:
    covering = {key for place, key in bench.masks.items() if _part(place) in pass_.parts}
    for place, coating in pass_.films:
        stack = bench.films[place]
        film = _Film(pass_.key, place, coating, _number(bench, stack))
        stack.append(film)
        for mask in covering:
            bench.scope[mask].append(film)
    for place in pass_.places:
        bench.last[place] = pass_.key
        if pass_.step.stage in TAKES_OFF:
            bench.films[place] = [f for f in bench.films[place] if not _resists(bench, f)]
        if pass_.step.stage is Stage.MASK:
            bench.masks[place] = pass_.key
        elif pass_.step.stage is Stage.UNMASK:
            bench.masks.pop(place, None)


def _number(bench: _Bench, stack: list[_Film]) -> int:
    """Return the number of a stack: the same for stacks of the same coats in the same order."""
    number = 0
    if stack:
        top = stack[-1]
        spot = (top.below, top.key, top.coating)
        number = bench.numbers.setdefault(spot, len(bench.numbers) + 1)
    return number


def _part(place: str) -> str:
    return place.partition("/")[0]
