"""What is known of each family: minutes to every state at 23 °C and 50 % RH.

The figures hold for coats of 10 to 30 µm.  Practice is told in hours of
ordinary rooms, not of a test room: a wait that practice gives ("24 h before
tape") is taken as the *late* end of our band at 18 °C and 55 % RH, and the
figure here is what that makes at 23 °C and 50 % RH.  The conversion is
assumed; a label always wins over all of this.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from enum import StrEnum

from planner.values.coating import Family, Finish, State
from planner.values.message import told


class Status(StrEnum):
    """How much a number is worth."""

    LABEL = "label"
    PUBLISHED = "published"
    PRACTICE = "common practice, no source"
    ASSUMED = "assumed"


@dataclass(frozen=True)
class StateFigure:
    """Minutes to a state at 23 °C and 50 % RH, what they are worth and whence they come."""

    minutes: float
    status: Status
    source: str

    def __post_init__(self) -> None:
        object.__setattr__(self, "source", told(self.source))


S = State
_Group = tuple[Status, str, Mapping[State, int]]
_ORDER_ONLY = "fits between its neighbours in order"


def _row(*groups: _Group) -> dict[State, StateFigure]:
    row = {
        state: StateFigure(minutes, status, source)
        for status, source, times in groups
        for state, minutes in times.items()
    }
    assert set(row) == set(State), "a family has a figure for every state"
    return {state: row[state] for state in State}


def _all(minutes: int, status: Status, source: str) -> dict[State, StateFigure]:
    return _row((status, source, dict.fromkeys(State, minutes)))


def _assumed(*minutes: int, source: str = _ORDER_ONLY) -> _Group:
    """Group set-to-touch, dust-free, tack-free and so on, as many as given."""
    return Status.ASSUMED, source, dict(zip(State, minutes, strict=False))


_THIN_COAT = "thin airbrushed coats are handled after about an hour, recoated within it"
_OVERNIGHT = "one night or 24 h lies between unlike layers"

WATERBORNE_MATTE = _row(
    _assumed(8, 12, 20),
    (Status.PRACTICE, _THIN_COAT, {S.DRY_TO_HANDLE: 40, S.DRY_TO_RECOAT: 30}),
    (Status.PRACTICE, "tape on matte paint: at 2 h faint marks, usual 24 h", {S.PRINT_FREE: 780}),
    (Status.PRACTICE, _OVERNIGHT, {S.SOLVENT_SAFE: 780, S.DRY_THROUGH: 720}),
)
WATERBORNE_SATIN = _row(
    _assumed(10, 16, 28),
    (Status.PRACTICE, _THIN_COAT, {S.DRY_TO_HANDLE: 60, S.DRY_TO_RECOAT: 40}),
    (Status.ASSUMED, "between matte and gloss", {S.PRINT_FREE: 1140}),
    (Status.PRACTICE, _OVERNIGHT, {S.SOLVENT_SAFE: 780, S.DRY_THROUGH: 750}),
)
WATERBORNE_GLOSS = _row(
    _assumed(12, 20, 35),
    (Status.PRACTICE, "gloss stays soft longer", {S.DRY_TO_HANDLE: 75, S.DRY_TO_RECOAT: 45}),
    (Status.PRACTICE, "tape on gloss paint: marks at 24 h, so over 48 h", {S.PRINT_FREE: 1680}),
    (
        Status.PRACTICE,
        "gloss clear to decals or white-spirit wash: 24 h, in recesses longer",
        {S.SOLVENT_SAFE: 780, S.DRY_THROUGH: 780},
    ),
)
_WATERBORNE = {
    Finish.MATTE: WATERBORNE_MATTE,
    Finish.SATIN: WATERBORNE_SATIN,
    Finish.GLOSS: WATERBORNE_GLOSS,
}

_ROWS: dict[Family, dict[State, StateFigure]] = {
    Family.SOLVENT_LACQUER: _row(
        _assumed(3, 6, 10),
        (
            Status.PRACTICE,
            "airbrushed lacquer: next coat or tape in 1 to 2 h",
            {S.DRY_TO_HANDLE: 20, S.DRY_TO_RECOAT: 20, S.PRINT_FREE: 70},
        ),
        (
            Status.PRACTICE,
            "lacquer clear is touch-dry in 30 min, yet hardens for up to 24 h",
            {S.SOLVENT_SAFE: 720, S.DRY_THROUGH: 720},
        ),
    ),
    Family.ALCOHOL_INK: _row(
        _assumed(2, 4, 8),
        (
            Status.PRACTICE,
            "alcohol-borne colour: next coat or tape in 1 to 2 h",
            {S.DRY_TO_HANDLE: 20, S.DRY_TO_RECOAT: 20, S.PRINT_FREE: 60},
        ),
        (Status.ASSUMED, "as lacquer", {S.SOLVENT_SAFE: 720, S.DRY_THROUGH: 600}),
    ),
    Family.ALKYD_ENAMEL: _row(
        (
            Status.PUBLISHED,
            "TT-P-645C Table III: touch-dry in 2 h at most (alkyd primer)",
            {S.SET_TO_TOUCH: 120},
        ),
        (Status.ASSUMED, _ORDER_ONLY, {S.DUST_FREE: 160, S.TACK_FREE: 240}),
        (
            Status.PRACTICE,
            "enamel overnight to handle, 24 to 48 h to the next coat",
            {S.DRY_TO_HANDLE: 480, S.DRY_TO_RECOAT: 780, S.PRINT_FREE: 1440},
        ),
        (
            Status.PRACTICE,
            "enamel to thinner washes or varnish: 7 to 14 days",
            {S.SOLVENT_SAFE: 5760, S.DRY_THROUGH: 7200},
        ),
    ),
    Family.ARTISTS_OIL: _row(
        (
            Status.PRACTICE,
            "thin oil colour is touch-dry in 1 to 7 days, by pigment",
            {S.SET_TO_TOUCH: 1440, S.DUST_FREE: 2160, S.TACK_FREE: 3000},
        ),
        (
            Status.PRACTICE,
            "chosen so that a wash of 3 µm takes its usual 24 to 48 h, several days under solvent",
            {
                S.DRY_TO_HANDLE: 7200,
                S.DRY_TO_RECOAT: 4000,
                S.PRINT_FREE: 10080,
                S.SOLVENT_SAFE: 14400,
                S.DRY_THROUGH: 17280,
            },
        ),
    ),
    Family.TWO_PACK: _row(
        _assumed(60, 120, 240, 480),
        (
            Status.PUBLISHED,
            "USAF TO 1-1-8 par. 5.6.2: epoxy primer to topcoat 5 h at 24 °C",
            {S.DRY_TO_RECOAT: 300},
        ),
        (
            Status.PUBLISHED,
            "marine urethane data: tape after 12 to 24 h, limited service after 72 h, at 25 °C",
            {S.PRINT_FREE: 1440, S.SOLVENT_SAFE: 4320},
        ),
        (Status.ASSUMED, "as print-free", {S.DRY_THROUGH: 1440}),
    ),
    Family.PIGMENT: _row(
        _assumed(5, 10, 15, 30, 30, 30, 60, 60, source="its carrier leaves; laid dry, sooner")
    ),
    Family.FIXER: _row(
        _assumed(20, 30, 45, 120, 120, 240, 600, 600, source="no figure known; its solvent leaves")
    ),
    Family.DECAL: _row(
        _assumed(20, 30, 60, 60),
        (
            Status.PRACTICE,
            "decals to seal coat: overnight, 12 to 24 h until the water is gone",
            {S.DRY_TO_RECOAT: 400, S.DRY_THROUGH: 400},
        ),
        (Status.ASSUMED, "a little more", {S.PRINT_FREE: 480, S.SOLVENT_SAFE: 480}),
    ),
    Family.CHIPPING_FLUID: _row(
        _assumed(5, 8, 10, 20),
        (Status.PRACTICE, "10 to 15 min between its coats", {S.DRY_TO_RECOAT: 12}),
        (
            Status.ASSUMED,
            "thin and water-soluble",
            {S.PRINT_FREE: 60, S.SOLVENT_SAFE: 120, S.DRY_THROUGH: 60},
        ),
    ),
    Family.SOLVENT_CEMENT: _row(
        _assumed(3, 5, 10, 60),
        (
            Status.PRACTICE,
            "cement joints to paint: a few hours, usually overnight",
            {S.DRY_TO_RECOAT: 300, S.PRINT_FREE: 300, S.SOLVENT_SAFE: 300, S.DRY_THROUGH: 480},
        ),
    ),
    Family.CYANOACRYLATE: _row(
        (
            Status.PRACTICE,
            "holds in 5 to 60 s at 40 to 60 % RH",
            {S.SET_TO_TOUCH: 1, S.DUST_FREE: 1, S.TACK_FREE: 2, S.DRY_TO_HANDLE: 5},
        ),
        (
            Status.ASSUMED,
            "the white bloom of its vapour is over",
            {S.DRY_TO_RECOAT: 60, S.PRINT_FREE: 60, S.SOLVENT_SAFE: 60},
        ),
        (Status.PRACTICE, "full strength in 24 h", {S.DRY_THROUGH: 780}),
    ),
    Family.WHITE_GLUE: _row(
        (
            Status.PRACTICE,
            "sets in 20 to 60 min clamped",
            {S.SET_TO_TOUCH: 20, S.DUST_FREE: 20, S.TACK_FREE: 30, S.DRY_TO_HANDLE: 35},
        ),
        (Status.ASSUMED, "half of full strength", {S.DRY_TO_RECOAT: 360, S.PRINT_FREE: 360}),
        (Status.PRACTICE, "full strength in 24 h", {S.SOLVENT_SAFE: 720, S.DRY_THROUGH: 720}),
    ),
    Family.MASKING_FLUID: _row(
        _assumed(10, 15, 20, 30, 30, 60, 60, 60, source="turns clear in about half an hour")
    ),
    Family.SALT: _row(
        _assumed(20, 25, 30, 30, 30, 60, 60, 60, source="until the water that it lies in is gone")
    ),
    Family.GRAPHITE: _all(0, Status.PRACTICE, "rubbed on dry; nothing has to dry"),
    Family.WATER_THINNER: _all(20, Status.ASSUMED, "leaves no film; until the water is gone"),
    Family.ALCOHOL_THINNER: _all(5, Status.ASSUMED, "leaves no film; until it is gone"),
    Family.WHITE_SPIRIT: _all(60, Status.ASSUMED, "leaves no film; until it is gone"),
    Family.LACQUER_THINNER: _all(10, Status.ASSUMED, "leaves no film; until it is gone"),
}


def family_figure(family: Family, finish: Finish, state: State) -> StateFigure:
    """Return the family's own figure for a coat of 10 to 30 µm."""
    row = _WATERBORNE[finish] if family is Family.WATERBORNE_ACRYLIC else _ROWS[family]
    return row[state]
