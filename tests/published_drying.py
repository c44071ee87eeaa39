"""Published drying figures, and what the model says of the same: ratios within one series.

A ratio within one series tests the model's slope, whatever the product's own
level.  Sheets of products are kept without their makers.  Where a series has
two stages of one product, the product's own times are its label.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import dataclass

from cure_rooms import points, room

from planner.air import (
    GAS_J_MOL_K,
    VAPOUR_PA,
    saturation_pressure_pa,
    solvent_drop_k,
    vapour_activation_kj_mol,
)
from planner.cure import Band, Cure, Film
from planner.cure.evaporation import movement_factor
from planner.values.coating import Clock, Coating, Family, Finish, Mark, State, StateTime
from planner.values.moment import zone_named
from planner.values.room import Movement

HOUR, DAY = 60, 1440
UTC = zone_named("UTC")
POT, VAPOUR = "life in the pot", "vapour pressure"


@dataclass(frozen=True)
class Series:
    """Times of one product over temperature; the first pair is the reference.

    ``told`` are (°C, value) in any unit.  ``state`` is what the value says
    of the film; `POT` is its life in the pot, or on the film's own clock.
    """

    name: str
    family: str
    coating: Coating
    state: State | str
    source: str
    told: tuple[tuple[float, float], ...]

    def published(self) -> list[float]:
        """Return each value over the reference."""
        return [value / self.told[0][1] for _, value in self.told]

    def modelled(self) -> list[float]:
        """Return what the model says of the same ratios, nominally."""
        found = [self._model(warmth) for warmth, _ in self.told]
        return [item / found[0] for item in found]

    def errors(self) -> list[float]:
        """Return ln(model/published) of every pair but the reference."""
        both = zip(self.modelled()[1:], self.published()[1:], strict=True)
        return [math.log(model / told) for model, told in both]

    def _model(self, warmth: float) -> float:
        if self.state == VAPOUR:
            return _vapour_pa(self.coating.name, warmth)
        cure = Cure(room(*points(("00:00", warmth, 50.0))), UTC)
        film = Film(self.coating, self.coating.dry_film_um, "bench", 0)
        if isinstance(self.state, State):
            ready = cure.ready_at(film, self.state, Band.NOMINAL)
        else:
            ready = cure.opens_at(film, Mark(minutes=30_000, clock=Clock.FILM), Band.NOMINAL)
        return math.inf if ready is None else float(ready)


def _vapour_pa(name: str, warmth: float) -> float:
    if name == "water":
        return saturation_pressure_pa(warmth)
    steep = vapour_activation_kj_mol(name) * 1000 / GAS_J_MOL_K
    return VAPOUR_PA[name][0] * math.exp(steep * (1 / 283.15 - 1 / (warmth + 273.15)))


def _label(state: State, hours: float) -> StateTime:
    return StateTime(state=state, minutes=round(100 * hours * HOUR))  # finer than a minute


S, F = State, Family
_THIN = Coating(name="solvent-borne", family=F.TWO_PACK, dry_film_um=22)
_FREE = Coating(name="solvent-free", family=F.TWO_PACK, solids=1.0)
_CLEAR = Coating(name="clear", family=F.TWO_PACK, solids=0.5, dry_film_um=55)
_CHART = "cure chart of one two-component solvent-free epoxy coating"
_PRIMER = "data sheet of one two-component solvent-borne epoxy primer"
_PS = "PS, The Preventive Maintenance Monthly, US Army, issue 396"
_PERRY = "Perry's Chemical Engineers' Handbook, Table 2-8"
_CASTING = "answers page on one casting epoxy"

TEMPERATURE = (
    Series("pot life, polyurethane", "two-pack", _THIN, POT, _PS, ((21, 8), (37.8, 2))),
    Series("pot life, epoxy", "two-pack", _THIN, POT, _PS, ((21, 15), (37.8, 6))),
    Series(
        "pot life, rule", "two-pack", _THIN, POT, "UFGS-09971, paragraph 3.7.1.3 Pot Life",
        ((21, 1), (31, 0.5), (11, 2)),
    ),
    Series("pot life, primer", "two-pack", _THIN, POT, _PRIMER, ((20, 24), (7, 48), (30, 8))),
    Series("pot life, casting", "two-pack", _FREE, POT, _CASTING, ((25, 1), (15, 2))),
    Series(
        "gel", "two-pack", _FREE, POT, _CHART,
        ((21, 52), (4, 180), (10, 110), (16, 62), (27, 30), (32, 25), (38, 18), (43, 16)),
    ),
    Series(
        "most recoat", "two-pack", _FREE, POT, _CHART,
        ((21, 116), (4, 360), (10, 235), (16, 150), (27, 75), (32, 58), (38, 37), (43, 31)),
    ),
    Series(
        "dry, solvent-free", "two-pack", _FREE, S.DRY_TO_HANDLE, _CHART,
        ((21, 3), (4, 9), (10, 6), (16, 4), (27, 2), (32, 1.5), (38, 55 / 60), (43, 0.75)),
    ),
    Series(
        "Shore D 65", "two-pack",
        Coating(
            name="hardens", family=F.TWO_PACK, solids=1.0,
            times=(_label(S.DRY_TO_HANDLE, 3), _label(S.SOLVENT_SAFE, 8), _label(S.DRY_THROUGH, 8)),
        ),
        S.DRY_THROUGH, _CHART,
        ((21, 8), (4, 96), (10, 75), (16, 20), (27, 4.75), (32, 17 / 6), (38, 2), (43, 5 / 3)),
    ),
    Series("dry, primer", "two-pack", _THIN, S.TACK_FREE, _PRIMER, ((20, 2), (7, 3), (30, 1))),
    Series(
        "recoat, primer", "two-pack", _THIN, S.DRY_TO_RECOAT, _PRIMER, ((20, 4), (7, 6), (30, 3))
    ),
    Series("thin film sets", "two-pack", _THIN, S.TACK_FREE, _CASTING, ((25, 1), (15, 1.3))),
    Series(
        "assembly", "two-pack", _CLEAR, S.DRY_TO_HANDLE,
        "data sheet of one two-component refinish clear coat", ((20, 5), (60, 0.5)),
    ),
    Series(
        "sheets of alkyds", "alkyd", Coating(name="alkyd", family=F.ALKYD_ENAMEL),
        S.DRY_TO_RECOAT,
        "data sheets of alkyd enamels: 2.0 at 10 °C, 0.67 and 0.60 at 35 and 40 °C",
        ((23, 1), (10, 2.0), (35, 0.67), (40, 0.60)),
    ),
    Series(
        "rule of thumb", "cyanoacrylate", Coating(name="fast", family=F.CYANOACRYLATE),
        S.DRY_THROUGH, "note on cyanoacrylate by one supplier: half for 10 °C more",
        ((23, 1), (33, 0.5)),
    ),
    Series(
        "water", "vapour pressure", Coating(name="water", family=F.WATER_THINNER), VAPOUR,
        _PERRY, ((20, 2339), (10, 1227), (30, 4248)),
    ),
    Series(
        "2-propanol", "vapour pressure", Coating(name="2-propanol", family=F.ALCOHOL_THINNER),
        VAPOUR, _PERRY, ((20, 4387), (10, 2227), (30, 8172)),
    ),
)  # fmt: skip


@dataclass(frozen=True)
class LeastWait:
    """A wait below which nobody may come, whatever the product."""

    what: str
    coating: Coating
    state: State
    temperature_c: float
    hours: float
    source: str

    def surely(self) -> float:
        """Return our late wait [h]."""
        cure = Cure(room(*points(("00:00", self.temperature_c, 50.0))), UTC)
        film = Film(self.coating, self.coating.dry_film_um, "bench", 0)
        ready = cure.ready_at(film, self.state, Band.LATE)
        assert ready is not None
        return ready / HOUR


_TO = "TO 1-1-8, US Air Force, Application and Removal of Organic Coatings"
LEAST = (
    LeastWait(
        "epoxy primer to topcoat",
        Coating(name="primer", family=F.TWO_PACK, dry_film_um=19),
        S.DRY_TO_RECOAT, 23.9, 5.0, f"{_TO}, par. 5.6.2",
    ),
    LeastWait(
        "epoxy tie coat to topcoat", _THIN, S.DRY_TO_RECOAT, 23.9, 2.0, f"{_TO}, par. 5.6.2"
    ),
    LeastWait(
        "polyurethane cross coat", _THIN, S.DRY_TO_RECOAT, 23.9, 4.0, f"{_TO}, par. 6.12.7.7"
    ),
    LeastWait("epoxy primer to topcoat", _THIN, S.DRY_TO_RECOAT, 20.0, 4.0, _PRIMER),
    LeastWait("epoxy primer in the cold", _THIN, S.DRY_TO_RECOAT, 7.0, 6.0, _PRIMER),
    LeastWait("epoxy primer in warmth", _THIN, S.DRY_TO_RECOAT, 30.0, 3.0, _PRIMER),
)  # fmt: skip


@dataclass(frozen=True)
class Ratio:
    """A published ratio at one temperature; ``least`` where the text says "at least"."""

    name: str
    family: str
    source: str
    told: float
    ours: Callable[[], float]
    least: bool = False

    def error(self) -> float:
        """Return ln(model/published); 0 where the model is no less than the least."""
        off = math.log(self.ours() / self.told)
        return max(0.0, -off) if self.least else off


_SECONDARY = "relative evaporation rates, list {list} of a solvent property file"
_ASHRAE = "ASHRAE Handbook HVAC Applications, evaporation from water: 0.089 + 0.0782 V"
_G_CM3 = {"n-butyl acetate": 0.882, "2-propanol": 0.785, "butanone": 0.805}
_KJ_KG = {"n-butyl acetate": 378.0, "2-propanol": 755.0, "butanone": 482.0}
"""Densities and latent heats from memory; a rate by volume is that of ASTM D3539."""


def _by_volume(solvent: str) -> float:
    """Return the rate of a film that cools itself: the heat the air brings over L ρ [K kg/kJ]."""
    return solvent_drop_k(solvent, 23.0) / (_KJ_KG[solvent] * _G_CM3[solvent])


def _solvent(name: str) -> Callable[[], float]:
    return lambda: _by_volume(name) / _by_volume("n-butyl acetate")


def _moved(upper: Movement, lower: Movement) -> Callable[[], float]:
    return lambda: movement_factor(upper) / movement_factor(lower)


def _thicker(family: Family, state: State) -> Callable[[], float]:
    """Return how many times as long a film of twice the thickness takes."""

    def ratio() -> float:
        cure = Cure(room(*points(("00:00", 25.0, 50.0))), UTC)
        coating = Coating(name="film", family=family)
        times = [
            cure.ready_at(Film(coating, thick, "bench", 0), state, Band.NOMINAL)
            for thick in (60.0, 30.0)
        ]
        assert times[0] is not None
        assert times[1] is not None
        return times[0] / times[1]

    return ratio


_VARNISH = (
    "text of one supplier of oil and urethane varnishes: twice the film, at least twice as long"
)
RATIOS = (
    Ratio("2-propanol", "solvents", _SECONDARY.format(list="A"), 1.7, _solvent("2-propanol")),
    Ratio("2-propanol", "solvents", _SECONDARY.format(list="B"), 1.5, _solvent("2-propanol")),
    Ratio("butanone", "solvents", _SECONDARY.format(list="A"), 4.78, _solvent("butanone")),
    Ratio("butanone", "solvents", _SECONDARY.format(list="B"), 3.8, _solvent("butanone")),
    Ratio(
        "1 m/s against still air", "air speed", _ASHRAE, 1.879,
        _moved(Movement.FAN, Movement.STILL),
    ),
    Ratio(
        "0.1 m/s against still air", "air speed", _ASHRAE, 1.088,
        _moved(Movement.ROOM, Movement.STILL),
    ),
    *(
        Ratio(
            f"twice the film, {state}", "thickness", _VARNISH, 2.0,
            _thicker(F.ALKYD_ENAMEL, state), least=True,
        )
        for state in (S.SET_TO_TOUCH, S.TACK_FREE, S.DRY_TO_RECOAT, S.DRY_THROUGH)
    ),
)  # fmt: skip
"""Where the model has a handle on what is told beside temperature.

It has none on the dose of drier, the kind of oil and the ground: a bottle's own level stands
for the first two, and every figure is for a ground that draws nothing.  Of humidity no clean
series was found.
"""

STAGES_TOLD = (
    (
        "oil enamel at 21 °C", Coating(name="enamel", family=F.ALKYD_ENAMEL), 21.0,
        ((S.TACK_FREE, 3.0), (S.DRY_TO_HANDLE, 7.0), (S.DRY_TO_RECOAT, 24.0)),
    ),
    (
        "shellac in alcohol", Coating(name="shellac", family=F.ALCOHOL_INK), 23.0,
        ((S.DRY_TO_HANDLE, 1.0), (S.DRY_TO_RECOAT, 2.5), (S.DRY_THROUGH, 24.0)),
    ),
    (
        "solvent-free epoxy floor at 20 °C", _FREE, 20.0,
        ((S.TACK_FREE, 3.0), (S.DRY_TO_HANDLE, 6.0), (S.DRY_THROUGH, 168.0)),
    ),
    (
        "waterborne wood satin, no air stated",
        Coating(name="satin", family=F.WATERBORNE_ACRYLIC, finish=Finish.SATIN, dry_film_um=28),
        23.0, ((S.SET_TO_TOUCH, 1.5), (S.DRY_TO_RECOAT, 4.0)),
    ),
)  # fmt: skip
"""Stages of one coating at one condition [h]: levels, which differ from product to product."""
