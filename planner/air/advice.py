"""Is this air good for laying that coating?  Reasons, each with its source."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from enum import StrEnum

from planner.air.moisture import Air, dew_point_c, surface_margin_k
from planner.air.wet_film import solvent_drop_k
from planner.values.coating import GLUES, Coating, Family
from planner.values.coating_names import CLEAR_WORDS, named_so
from planner.values.message import message
from planner.values.refusal import number_in
from planner.values.room import COLDEST_C, HOTTEST_C, sane_air
from planner.values.step import Tool

LEAST_MARGIN_K = 3.0
"""Surface above dew point while coating: ISO 8502-4:2017, ISO 12944-7:2017 [K]."""
LEAST_MARGIN_US_K = 5 / 1.8
"""The 5 °F form of the rule: UFC 3-190-06 par. 9.6.6 [K]."""
MARGIN_DOUBT_K = 0.05
"""Formulas for the dew point differ by as much [K]."""

FILM_FORMS_C = 5.0
"""Assumed least film-forming temperature of waterborne films (ISO 2115 tells how
it is measured; the data sheet has the product's own) [°C]."""

DAMP_PCT, POOR_PCT = 60, 70
"""Where most stop spraying lacquers and clears, and where all do: common practice,
no source [% RH]."""

FAST = "n-butyl acetate"
BLUSH_MARGIN_K = 2.0
"""Doubt of how far a film of fast solvent cools itself: assumed [K]."""

PRACTICE = message("common practice, no source")
SPRAYED = frozenset({Tool.AIRBRUSH, Tool.CAN})
WATERBORNE = frozenset({Family.WATERBORNE_ACRYLIC, Family.CHIPPING_FLUID, Family.MASKING_FLUID})
FAST_SOLVENT = frozenset({Family.SOLVENT_LACQUER, Family.ALCOHOL_INK})


NOT_PAINT = GLUES | {Family.DECAL, Family.PIGMENT, Family.GRAPHITE, Family.SALT}
"""What is laid dry, from a sheet or to glue: of it only the label speaks."""


class Fitness(StrEnum):
    """Whether to lay a coat now."""

    GO = "go"
    CARE = "with care"
    NO_GO = "not now"


@dataclass(frozen=True)
class Advisory:
    """One thing to know before laying a coat."""

    fitness: Fitness
    reason: str
    source: str


def laying_advice(
    coating: Coating,
    tool: Tool,
    air: Air,
    *,
    surface_c: float | None = None,
    can_c: float | None = None,
    clear: bool | None = None,
) -> tuple[Advisory, ...]:
    """Return what speaks against laying ``coating`` in ``air``, worst first.

    Parameters
    ----------
    surface_c
        Temperature of the model; absent, that of the air [°C].
    can_c
        Temperature of the spray can; absent, that of the air [°C].
    clear
        Whether it is laid as a clear coat; absent, by its name.

    Raises
    ------
    Refused
        If a temperature is outside -30 to 60 °C or the humidity outside 0 to 100 %.
    """
    sane_air(*air)
    if coating.family in NOT_PAINT:
        return tuple(_label(coating, air, air.temperature_c))
    surface = air.temperature_c if surface_c is None else surface_c
    can = air.temperature_c if can_c is None else can_c
    clear = named_so(coating, CLEAR_WORDS) if clear is None else clear
    number_in(surface, COLDEST_C, HOTTEST_C, "surface_c", "°C")
    number_in(can, COLDEST_C, HOTTEST_C, "can_c", "°C")
    found = [
        *_label(coating, air, surface),
        *_condensation(air, surface),
        *_warmth(coating, air, surface),
        *(_humidity(coating, air, clear=clear) if tool in SPRAYED else ()),
        *(_can(can) if tool is Tool.CAN else ()),
    ]
    worst_first = list(Fitness)[::-1]
    return tuple(sorted(found, key=lambda item: worst_first.index(item.fitness)))


def fitness(advice: Iterable[Advisory]) -> Fitness:
    """Return the worst of some advisories; go if there is none."""
    return max(
        (advisory.fitness for advisory in advice), key=list(Fitness).index, default=Fitness.GO
    )


def _label(coating: Coating, air: Air, surface: float) -> Iterator[Advisory]:
    coldest, hottest = min(air.temperature_c, surface), max(air.temperature_c, surface)
    if coating.least_c is not None and coldest < coating.least_c:
        yield _no(
            message(
                "{coldest:g} °C is below the {least_c:g} °C of the label",
                coldest=coldest,
                least_c=coating.least_c,
            ),
            message("label"),
        )
    if coating.most_c is not None and hottest > coating.most_c:
        yield _no(
            message(
                "{hottest:g} °C is above the {most_c:g} °C of the label",
                hottest=hottest,
                most_c=coating.most_c,
            ),
            message("label"),
        )
    most = coating.most_humidity_pct
    if most is not None and air.humidity_pct > most:
        yield _no(
            message(
                "{humidity_pct:g} % RH is above the {most:g} % of the label",
                humidity_pct=air.humidity_pct,
                most=most,
            ),
            message("label"),
        )


def _condensation(air: Air, surface: float) -> Iterator[Advisory]:
    if air.humidity_pct <= 0:
        return
    margin = surface_margin_k(surface, air.temperature_c, air.humidity_pct) + 0.0
    if abs(margin) < MARGIN_DOUBT_K:
        margin = 0.0  # never "-0.0 K"
    if margin < LEAST_MARGIN_US_K:
        yield _no(
            message(
                "only {margin:.1f} °C above the dew point; 3 °C is needed, or moisture "
                "settles under the coat",
                margin=margin,
            ),
            message("ISO 8502-4:2017; 5 °F in UFC 3-190-06 par. 9.6.6"),
        )
    elif margin < LEAST_MARGIN_K + MARGIN_DOUBT_K:
        yield _care(
            message(
                "marginal: {margin:.2f} °C above the dew point; 3 °C is needed, 5 °F (2.8 "
                "°C) in US texts",
                margin=margin,
            ),
            message("ISO 8502-4:2017; UFC 3-190-06 par. 9.6.6"),
        )


def _warmth(coating: Coating, air: Air, surface: float) -> Iterator[Advisory]:
    coldest = min(air.temperature_c, surface)
    if coating.family in WATERBORNE and coldest < FILM_FORMS_C:
        yield _no(
            message(
                "at {coldest:g} °C a waterborne film does not flow together (taken as"
                " below {least:g} °C; the data sheet has its own)",
                coldest=coldest,
                least=FILM_FORMS_C,
            ),
            message("ISO 2115 (least film-forming temperature); the figure is assumed"),
        )
    elif coldest < 10:
        yield _no(
            message("below 10 °C films stay tacky for hours and catch dust"),
            message("TM 43-0139 par. 5-31"),
        )
    elif coldest < 15:
        yield _care(
            message("below 15 °C paint sprays and flows badly; warm the room first"), PRACTICE
        )
    if air.temperature_c > 32:
        yield _care(
            message("above 32 °C the coat dries before it has flowed"),
            message("TM 55-1500-345-23 (10 to 32 °C)"),
        )


def _humidity(coating: Coating, air: Air, *, clear: bool) -> Iterator[Advisory]:
    damp = air.humidity_pct
    judged = _no if damp >= POOR_PCT else _care
    if coating.family in FAST_SOLVENT and damp > 0:
        film = air.temperature_c - solvent_drop_k(FAST, air.temperature_c)
        dew = dew_point_c(*air)
        if film - dew < BLUSH_MARGIN_K:
            blushes = _no if film < dew else _care
            yield blushes(
                message(
                    "{damp:g} % RH at {warm:g} °C: the wet film cools itself to about "
                    "{film:.0f} °C and the dew point is {dew:.0f} °C; moisture condenses in it, "
                    "it blushes or frosts",
                    damp=damp,
                    warm=air.temperature_c,
                    film=film,
                    dew=dew,
                ),
                message(
                    "UFC 3-190-06 par. 7.4.2 (mechanism); n-butyl acetate stands for the fast "
                    "solvent, and 2 K of doubt: assumed; near 20 °C it agrees with the 60 and "
                    "70 % of common practice"
                ),
            )
    elif clear and damp > DAMP_PCT:
        yield judged(
            message(
                "{damp:g} % RH: a clear coat sprayed now fogs, or misses its sheen",
                damp=damp,
            ),
            message("60 % is the usual limit, 70 % always poor: common practice, no source"),
        )
    elif coating.family in WATERBORNE and damp > 85:
        yield _care(
            message(
                "{damp:g} % RH: what makes the film flow together may leave before the water",
                damp=damp,
            ),
            message("UFC 3-190-06 par. 7.4.2; 85 % is common practice, no source"),
        )


def _can(can: float) -> Iterator[Advisory]:
    if can > 50:
        yield _no(
            message(
                "no spray can may ever be warmer than 50 °C: it can burst; the can's own text rules"
            ),
            message("75/324/EEC (aerosol dispensers), from memory"),
        )
    elif can < 16:
        yield _no(
            message("a can below 16 °C spits and leaves a grainy coat; keep it indoors"), PRACTICE
        )
    elif can < 21:
        yield _care(
            message("a can below 21 °C sprays coarsely; stand it in hand-warm tap water"), PRACTICE
        )


def _no(reason: str, source: str) -> Advisory:
    return Advisory(Fitness.NO_GO, reason, source)


def _care(reason: str, source: str) -> Advisory:
    return Advisory(Fitness.CARE, reason, source)
