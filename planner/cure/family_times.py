"""What is known of each family: likely minutes to every state at 23 °C and 50 % RH.

Each figure stands for the *likely* film of the family's reference thickness,
never for the careful end of what is told; how far the truth may lie from it
is its spread.  Practice is told in hours of ordinary rooms: a wait that is
usual there is taken as that of 20 °C and 50 % RH, and of the stack of two
thin coats on which it is told.  The conversion is assumed; a label always
wins over all of this.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from enum import StrEnum
from typing import NamedTuple

from planner.values.coating import Family, Finish, State
from planner.values.message import told


class Evidence(StrEnum):
    """How much a number is worth."""

    LABEL = "label"
    PUBLISHED = "published"
    PRACTICE = "common practice, no source"
    ASSUMED = "assumed"


class Spread(NamedTuple):
    """How far the truth may lie from a likely time: factors of the early and late end."""

    early: float
    late: float


LABEL_SPREAD = Spread(0.90, 1.10)
"""A label's time holds for its own product, and is rounded: assumed."""
USUAL = Spread(0.80, 1.25)
"""Told alike by most: assumed."""
WIDE = Spread(0.70, 1.30)
"""Told with a range of about two to one."""
FAR = Spread(0.60, 1.50)
"""Told with a range of three to one and more."""


@dataclass(frozen=True)
class StateFigure:
    """Likely minutes to a state at 23 °C and 50 % RH, their worth, source and spread."""

    minutes: float
    status: Evidence
    source: str
    spread: Spread = USUAL

    def __post_init__(self) -> None:
        object.__setattr__(self, "source", told(self.source))


S = State
_Group = tuple[Evidence, str, Mapping[State, int], Spread]
_ORDER_ONLY = "fits between its neighbours in order"


def _row(*groups: _Group) -> dict[State, StateFigure]:
    row = {
        state: StateFigure(minutes, status, source, spread)
        for status, source, times, spread in groups
        for state, minutes in times.items()
    }
    assert set(row) == set(State), "a family has a figure for every state"
    return {state: row[state] for state in State}


def _practice(source: str, times: Mapping[State, int], spread: Spread = WIDE) -> _Group:
    return Evidence.PRACTICE, source, times, spread


def _published(source: str, times: Mapping[State, int], spread: Spread = USUAL) -> _Group:
    return Evidence.PUBLISHED, source, times, spread


def _guess(source: str, times: Mapping[State, int], spread: Spread = WIDE) -> _Group:
    return Evidence.ASSUMED, source, times, spread


def _assumed(*minutes: int, source: str = _ORDER_ONLY) -> _Group:
    """Group set-to-touch, dust-free, tack-free and so on, as many as given."""
    return Evidence.ASSUMED, source, dict(zip(State, minutes, strict=False)), WIDE


def _all(
    minutes: int, group: Callable[[str, Mapping[State, int]], _Group], source: str
) -> dict[State, StateFigure]:
    return _row(group(source, dict.fromkeys(State, minutes)))


_BRUSHED = "thin acrylic, brushed in layers, takes another coat after 10 to 20 min"
_OVERNIGHT = "one night or 24 h lies between unlike layers; told from 4 h to 48 h"

WATERBORNE_MATTE = _row(
    _assumed(4, 6, 9),
    _practice(_BRUSHED, {S.DRY_TO_RECOAT: 12}),
    _practice("thin airbrushed coats are handled within the hour", {S.DRY_TO_HANDLE: 30}),
    _practice("tape on matte paint: at 2 h faint marks, usual 24 h", {S.PRINT_FREE: 540}, FAR),
    _practice(_OVERNIGHT, {S.SOLVENT_SAFE: 420, S.DRY_THROUGH: 480}),
)
WATERBORNE_SATIN = _row(
    _assumed(5, 7, 11),
    _practice(_BRUSHED, {S.DRY_TO_RECOAT: 15}),
    _practice("thin airbrushed coats are handled within the hour", {S.DRY_TO_HANDLE: 38}),
    _guess("between matte and gloss", {S.PRINT_FREE: 840}, FAR),
    _practice(_OVERNIGHT, {S.SOLVENT_SAFE: 420, S.DRY_THROUGH: 480}),
)
WATERBORNE_GLOSS = _row(
    _assumed(6, 9, 13),
    _practice(_BRUSHED, {S.DRY_TO_RECOAT: 18}),
    _practice("gloss stays soft longer", {S.DRY_TO_HANDLE: 45}),
    _practice("tape on gloss paint: marks at 24 h, still some at 48 h", {S.PRINT_FREE: 1500}, FAR),
    _practice(
        "gloss clear to white-spirit wash: the next evening, along recesses up to two",
        {S.SOLVENT_SAFE: 420, S.DRY_THROUGH: 540},
    ),
)
_WATERBORNE = {
    Finish.MATTE: WATERBORNE_MATTE,
    Finish.SATIN: WATERBORNE_SATIN,
    Finish.GLOSS: WATERBORNE_GLOSS,
}

_ROWS: dict[Family, dict[State, StateFigure]] = {
    Family.SOLVENT_LACQUER: _row(
        _assumed(3, 5, 8),
        _practice(
            "airbrushed lacquer: next coat in 20 min to 1 h, tape in 1 to 2 h",
            {S.DRY_TO_HANDLE: 20, S.DRY_TO_RECOAT: 20, S.PRINT_FREE: 60},
        ),
        _practice(
            "lacquer clear is touch-dry in 30 min, yet a heavy coat hardens for 24 h",
            {S.SOLVENT_SAFE: 360, S.DRY_THROUGH: 400},
        ),
    ),
    Family.ALCOHOL_INK: _row(
        _assumed(2, 4, 6),
        _practice(
            "alcohol-borne colour: next coat or tape in 1 to 2 h",
            {S.DRY_TO_HANDLE: 20, S.DRY_TO_RECOAT: 20, S.PRINT_FREE: 60},
        ),
        _guess("as lacquer", {S.SOLVENT_SAFE: 360, S.DRY_THROUGH: 400}),
    ),
    Family.ALKYD_ENAMEL: _row(
        _published(
            "TT-P-645C Table III: touch-dry in 2 h at most (alkyd primer)", {S.SET_TO_TOUCH: 75}
        ),
        _guess(_ORDER_ONLY, {S.DUST_FREE: 120}),
        _published(
            "label times of an oil enamel: tack-free in 2 to 4 h, to handle in 5 to 9 h",
            {S.TACK_FREE: 180, S.DRY_TO_HANDLE: 420},
            WIDE,
        ),
        _practice(
            "enamel to the next coat: 6 to 12 h where matte, 24 h usual, 48 h careful",
            {S.DRY_TO_RECOAT: 720, S.PRINT_FREE: 1440},
        ),
        _practice(
            "enamel to thinner washes or varnish: 7 to 14 days",
            {S.SOLVENT_SAFE: 5760, S.DRY_THROUGH: 7200},
            FAR,
        ),
    ),
    Family.ARTISTS_OIL: _row(
        _practice(
            "thin oil colour is touch-dry in 1 to 7 days, by pigment; a wash by the evening",
            {S.SET_TO_TOUCH: 360, S.DUST_FREE: 540, S.TACK_FREE: 720, S.DRY_TO_HANDLE: 960},
            FAR,
        ),
        _practice(
            "oil wash to the next layer: 24 to 48 h, several days under solvent",
            {
                S.DRY_TO_RECOAT: 1200,
                S.PRINT_FREE: 1440,
                S.SOLVENT_SAFE: 1800,
                S.DRY_THROUGH: 2000,
            },
        ),
    ),
    Family.TWO_PACK: _row(
        _assumed(60, 90, 150),
        _published(
            "USAF TO 1-1-8 par. 5.6.2: epoxy primer to topcoat 5 h at 24 °C",
            {S.DRY_TO_RECOAT: 310},
        ),
        _published("clear of a refinish: fit for assembly in 5 h at 20 °C", {S.DRY_TO_HANDLE: 420}),
        _published(
            "marine urethane data: tape after 12 to 24 h, limited service after 72 to 96 h, "
            "at 25 °C",
            {S.PRINT_FREE: 1200, S.SOLVENT_SAFE: 4320},
        ),
        _published("clear of a refinish: total hardness after 24 h", {S.DRY_THROUGH: 1440}),
    ),
    Family.PIGMENT: _row(
        _assumed(5, 10, 15, 30, 30, 30, 60, 60, source="its carrier leaves; laid dry, sooner")
    ),
    Family.FIXER: _row(
        _assumed(20, 30, 45, 120, 120, 240, 600, 600, source="no figure known; its solvent leaves")
    ),
    Family.DECAL: _row(
        _assumed(20, 30, 60, 60),
        _practice(
            "decals to seal coat: overnight, 12 to 24 h until the water is gone",
            {S.DRY_TO_RECOAT: 400, S.PRINT_FREE: 480, S.SOLVENT_SAFE: 480, S.DRY_THROUGH: 480},
        ),
    ),
    Family.CHIPPING_FLUID: _row(
        _assumed(5, 8, 10, 12),
        _practice("10 to 15 min between its coats", {S.DRY_TO_RECOAT: 12}),
        _guess("thin and water-soluble", {S.PRINT_FREE: 60, S.SOLVENT_SAFE: 60, S.DRY_THROUGH: 60}),
    ),
    Family.SOLVENT_CEMENT: _row(
        _assumed(3, 5, 10, 60),
        _practice(
            "cement joints to paint: a few hours, usually overnight",
            {S.DRY_TO_RECOAT: 300, S.PRINT_FREE: 300, S.SOLVENT_SAFE: 300, S.DRY_THROUGH: 480},
        ),
    ),
    Family.CYANOACRYLATE: _row(
        _practice(
            "holds in 5 to 60 s at 40 to 60 % RH",
            {S.SET_TO_TOUCH: 1, S.DUST_FREE: 1, S.TACK_FREE: 2, S.DRY_TO_HANDLE: 5},
        ),
        _guess(
            "the white bloom of its vapour is over",
            {S.DRY_TO_RECOAT: 60, S.PRINT_FREE: 60, S.SOLVENT_SAFE: 60},
        ),
        _practice("full strength in 24 h", {S.DRY_THROUGH: 720}, USUAL),
    ),
    Family.WHITE_GLUE: _row(
        _practice(
            "sets in 20 to 60 min clamped",
            {S.SET_TO_TOUCH: 20, S.DUST_FREE: 20, S.TACK_FREE: 30, S.DRY_TO_HANDLE: 35},
        ),
        _guess("half of full strength", {S.DRY_TO_RECOAT: 360, S.PRINT_FREE: 360}),
        _practice("full strength in 24 h", {S.SOLVENT_SAFE: 780, S.DRY_THROUGH: 780}),
    ),
    Family.MASKING_FLUID: _row(
        _assumed(10, 15, 20, 30, 30, 60, 60, 60, source="turns clear in about half an hour")
    ),
    Family.SALT: _row(
        _assumed(20, 25, 30, 30, 30, 60, 60, 60, source="until the water that it lies in is gone")
    ),
    Family.GRAPHITE: _all(0, _practice, "rubbed on dry; nothing has to dry"),
    Family.RETARDER: _all(240, _guess, "leaves no film; until it is gone"),
    Family.WATER_THINNER: _all(20, _guess, "leaves no film; until the water is gone"),
    Family.ALCOHOL_THINNER: _all(5, _guess, "leaves no film; until it is gone"),
    Family.WHITE_SPIRIT: _all(60, _guess, "leaves no film; until it is gone"),
    Family.LACQUER_THINNER: _all(10, _guess, "leaves no film; until it is gone"),
}


_USUAL_UM = 20.0
_REFERENCE_UM = {
    Family.ARTISTS_OIL: 3.0,
    Family.SOLVENT_CEMENT: 50.0,
    Family.WHITE_GLUE: 50.0,
}
"""The film that a family's figures belong to: a wash of oil, a joint of glue [µm]."""


def reference_um(family: Family) -> float:
    """Return the dry film that the family's own figures belong to [µm]."""
    return _REFERENCE_UM.get(family, _USUAL_UM)


def family_figure(family: Family, finish: Finish, state: State) -> StateFigure:
    """Return the family's own figure, for a film of `reference_um`."""
    row = _WATERBORNE[finish] if family is Family.WATERBORNE_ACRYLIC else _ROWS[family]
    return row[state]
