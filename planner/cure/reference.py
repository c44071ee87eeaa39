"""Reference times of a coating, and how thickness stretches them."""

from __future__ import annotations

from dataclasses import replace
from functools import lru_cache

from planner.cure.assumptions import assumed
from planner.cure.family_times import (
    LABEL_SPREAD,
    Evidence,
    StateFigure,
    family_figure,
    reference_um,
)
from planner.cure.kinetics import SOLVENT_FREE
from planner.values.coating import THINNERS, Coating, Family, State
from planner.values.identity_key import Same
from planner.values.message import message

THINNEST_UM = 1.0
"""Thinner films dry no sooner: assumed [µm]."""

PRESUPPOSES: dict[State, tuple[State, ...]] = {
    State.DUST_FREE: (State.SET_TO_TOUCH,),
    State.TACK_FREE: (State.DUST_FREE,),
    State.DRY_TO_HANDLE: (State.TACK_FREE,),
    State.DRY_TO_RECOAT: (State.TACK_FREE,),
    State.PRINT_FREE: (State.DRY_TO_HANDLE, State.DRY_TO_RECOAT),
    State.SOLVENT_SAFE: (State.DRY_TO_HANDLE, State.DRY_TO_RECOAT),
    State.DRY_THROUGH: (State.DRY_TO_HANDLE, State.DRY_TO_RECOAT),
}
"""The states that a film must have passed before (order of ASTM D1640).

A thin film takes another coat before fingers may press it, an oil film not;
tape asks less than a solvent of most films, of a waterborne gloss more; what is
dry through need not stand a solvent.
"""

SURFACE = (
    State.SET_TO_TOUCH,
    State.DUST_FREE,
    State.TACK_FREE,
    State.DRY_TO_HANDLE,
    State.DRY_TO_RECOAT,
)
"""The states that a film reaches in its first stage."""
DEEP = (State.PRINT_FREE, State.SOLVENT_SAFE, State.DRY_THROUGH)
"""The states that ask what has left the film, and so what lies below and above it."""

_OXIDISING = frozenset({Family.ALKYD_ENAMEL, Family.ARTISTS_OIL})
_BY_DIFFUSION = _OXIDISING | {Family.SOLVENT_LACQUER, Family.ALCOHOL_INK}
_NOT_BY_THICKNESS = THINNERS | {
    Family.DECAL,
    Family.GRAPHITE,
    Family.PIGMENT,
    Family.CYANOACRYLATE,
    Family.CHIPPING_FLUID,
    Family.MASKING_FLUID,
    Family.SALT,
}


def thickness_exponent(coating: Coating, state: State) -> float:
    """Return n of time ~ thickness^n [-].

    1 while evaporation limits it (published: Kiil 2006), 2 where diffusion
    does (published: Fick, t ~ L²/D), 1.5 between (assumed).  An oxidising
    film twice as thick takes at least twice as long (a supplier's text): 1.2
    beside its reaction, assumed.  A two-pack
    hardens by its reaction, however thick: 0; until recoat one with solvent
    has 0.5 (assumed).  What is under a decal, and what leaves no film, does
    not go by thickness.
    """
    family = coating.family
    if family in _NOT_BY_THICKNESS:
        return 0.0
    if family is Family.TWO_PACK:
        solvent_free = coating.solids >= SOLVENT_FREE
        return 0.0 if solvent_free or state in DEEP else assumed("two-pack thickness")
    if state in SURFACE:
        return assumed("oxidation, thickness") if family in _OXIDISING else 1.0
    return 2.0 if state is State.DRY_THROUGH and family in _BY_DIFFUSION else 1.5


def stretch(coating: Coating, state: State, thickness_um: float, reference: float) -> float:
    """Return how many times as long a film takes as one of ``reference`` µm [-].

    In an oxidising film a share of the time is the reaction itself, which
    the thinnest film needs too.
    """
    ratio = max(thickness_um, THINNEST_UM) / max(reference, THINNEST_UM)
    factor = float(ratio ** thickness_exponent(coating, state))
    if coating.family in _OXIDISING:
        share = assumed("oxidation, reaction share")
        return share + (1 - share) * factor
    return factor


def reference_minutes(coating: Coating, state: State) -> StateFigure:
    """Return when a coat of ``coating`` reaches ``state`` at 23 °C and 50 % RH [min].

    It belongs to ``coating.dry_film_um``; see `minutes_at`.
    """
    return minutes_at(coating, state, coating.dry_film_um)


def minutes_at(
    coating: Coating, state: State, thickness_um: float, wet_um: float = 0.0
) -> StateFigure:
    """Return when a film of ``coating`` reaches ``state`` at 23 °C and 50 % RH [min].

    The label's time wins, and belongs to the coating's own film; else the
    family's stands, and belongs to the family's.  Either is stretched to
    ``thickness_um``, for the deep states with ``wet_um`` of what lies below
    and was wetted again.  No state comes before one that it presupposes, and
    none after a label's time of a later one.
    """
    return _figure(Same(coating), state, thickness_um, wet_um)


@lru_cache(maxsize=8192)
def _figure(same: Same[Coating], state: State, thickness_um: float, wet_um: float) -> StateFigure:
    coating = same.value
    label = {time.state: time for time in coating.times}
    figure = _plain(coating, state, thickness_um, wet_um)
    if state not in label:
        for above in _after(state):
            if above not in label:
                continue
            later = _plain(coating, above, thickness_um, wet_um)
            if later.minutes < figure.minutes:
                source = message("not after {above}: {source}", above=above, source=later.source)
                figure = replace(later, source=source)
    for below in PRESUPPOSES.get(state, ()):
        least = minutes_at(coating, below, thickness_um, wet_um)
        if least.minutes > figure.minutes:
            source = message("not before {below}: {source}", below=below, source=least.source)
            figure = replace(least, source=source)
    return figure


def _plain(coating: Coating, state: State, thickness_um: float, wet_um: float) -> StateFigure:
    """Return the label's or the family's own figure at a thickness."""
    film = thickness_um + (wet_um if state in DEEP else 0.0)
    for time in coating.times:
        if time.state is state:
            figure = StateFigure(time.minutes, Evidence.LABEL, time.source, LABEL_SPREAD)
            return _stretched(coating, state, figure, film, coating.dry_film_um)
    figure = family_figure(coating.family, coating.finish, state)
    return _stretched(coating, state, figure, film, reference_um(coating.family))


def _stretched(
    coating: Coating, state: State, figure: StateFigure, film_um: float, reference: float
) -> StateFigure:
    factor = stretch(coating, state, film_um, reference)
    if factor == 1.0:
        return figure
    return replace(
        figure,
        minutes=figure.minutes * factor,
        source=message(
            "{source}; × {factor:.2g} for a film of {dry_film_um:g} µm",
            source=figure.source,
            factor=factor,
            dry_film_um=film_um,
        ),
    )


@lru_cache(maxsize=16)
def _after(state: State) -> tuple[State, ...]:
    """Return every state that presupposes ``state``, near or far."""
    near = [above for above, below in PRESUPPOSES.items() if state in below]
    return tuple(dict.fromkeys([*near, *(far for above in near for far in _after(above))]))
