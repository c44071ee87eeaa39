"""Reference times of a coating, and how thickness stretches them."""

from __future__ import annotations

from dataclasses import replace
from functools import lru_cache

from planner.cure.family_times import StateFigure, Status, family_figure
from planner.cure.kinetics import Band
from planner.values.coating import Coating, Family, State
from planner.values.identity_key import Same
from planner.values.message import message

USUAL_COAT_UM = (10.0, 30.0)
THINNEST_UM = 2.0

PRESUPPOSES: dict[State, State] = {
    State.DUST_FREE: State.SET_TO_TOUCH,
    State.TACK_FREE: State.DUST_FREE,
    State.DRY_TO_HANDLE: State.TACK_FREE,
    State.DRY_TO_RECOAT: State.SET_TO_TOUCH,
    State.PRINT_FREE: State.TACK_FREE,
    State.SOLVENT_SAFE: State.TACK_FREE,
    State.DRY_THROUGH: State.DRY_TO_HANDLE,
}
"""The state that a film must have passed before (order of ASTM D1640)."""

_SURFACE = (State.SET_TO_TOUCH, State.DUST_FREE, State.TACK_FREE, State.DRY_TO_RECOAT)
_DIFFUSION_LIMITED = (Family.SOLVENT_LACQUER, Family.ALKYD_ENAMEL, Family.ARTISTS_OIL)

SPREAD = {Band.EARLY: 0.85, Band.NOMINAL: 1.0, Band.LATE: 1.15}
LABEL_SPREAD = {Band.EARLY: 0.90, Band.NOMINAL: 1.0, Band.LATE: 1.10}
"""Factors of the bands on a family's and on a label's reference time: assumed."""


def thickness_exponent(family: Family, state: State) -> float:
    """Return n of time ~ thickness^n [-].

    1 while evaporation limits it (published: Kiil 2006), 2 where diffusion
    does (published: Fick, t ~ L²/D), 1.5 between (assumed).
    """
    if state in _SURFACE:
        return 1.0
    return 2.0 if state is State.DRY_THROUGH and family in _DIFFUSION_LIMITED else 1.5


def reference_minutes(coating: Coating, state: State) -> StateFigure:
    """Return when a film of ``coating`` reaches ``state`` at 23 °C and 50 % RH [min].

    It belongs to ``coating.dry_film_um``.  The label's time wins; else the
    family's stands, stretched to that thickness where it is no usual coat,
    and kept between the label's times of the states before and after.
    """
    return _figure(Same(coating), state)


@lru_cache(maxsize=4096)
def _figure(same: Same[Coating], state: State) -> StateFigure:
    coating = same.value
    label = {time.state: time for time in coating.times}
    if state in label:
        return StateFigure(label[state].minutes, Status.LABEL, label[state].source)
    figure = _at_own_thickness(coating, state)
    below = PRESUPPOSES.get(state)
    if below:
        least = reference_minutes(coating, below)
        if least.minutes > figure.minutes:
            figure = replace(
                least,
                source=message("not before {below}: {source}", below=below, source=least.source),
            )
    for above in _after(state):
        if above in label and label[above].minutes < figure.minutes:
            source = message("not after {above}: {source}", above=above, source=label[above].source)
            figure = StateFigure(label[above].minutes, Status.LABEL, source)
    return figure


def _at_own_thickness(coating: Coating, state: State) -> StateFigure:
    figure = family_figure(coating.family, coating.finish, state)
    thin, thick = USUAL_COAT_UM
    film = max(coating.dry_film_um, THINNEST_UM)
    usual = min(max(film, thin), thick)
    if film == usual:
        return figure
    factor = (film / usual) ** thickness_exponent(coating.family, state)
    return replace(
        figure,
        minutes=figure.minutes * factor,
        source=message(
            "{source}; × {factor:.2g} for a film of {dry_film_um:g} µm",
            source=figure.source,
            factor=factor,
            dry_film_um=coating.dry_film_um,
        ),
    )


def _after(state: State) -> list[State]:
    """Return every state that presupposes ``state``, near or far."""
    near = [above for above, below in PRESUPPOSES.items() if below is state]
    return near + [far for above in near for far in _after(above)]
