"""Advice before laying a coat: each rule with its source."""

from __future__ import annotations

import pytest

from planner.air import Air, Fitness, fitness, laying_advice
from planner.values.coating import Coating, Family, Finish
from planner.values.refusal import Refused
from planner.values.step import Tool

ACRYLIC = Coating(name="a", family=Family.WATERBORNE_ACRYLIC)
LACQUER = Coating(name="l", family=Family.SOLVENT_LACQUER)
ENAMEL = Coating(name="e", family=Family.ALKYD_ENAMEL)


def about(advice, word):
    return [advisory.fitness for advisory in advice if word in advisory.reason]


@pytest.mark.parametrize(
    ("air", "surface_c", "expected"),
    [  # dew points by PsychroLib 2.5.0; 3 K by ISO 8502-4, 5 °F by UFC 3-190-06
        (Air(20, 60), 15, [Fitness.CARE]),  # 2.99 K: fails the one, passes the other
        (Air(20, 60), 14, [Fitness.NO_GO]),  # 1.99 K
        (Air(22, 70), 19, [Fitness.NO_GO]),  # 2.72 K
        (Air(18, 80), 18, []),  # 3.50 K
        (Air(25, 50), 18, []),  # 4.14 K
    ],
)
def test_surface_margin(air, surface_c, expected):
    advice = laying_advice(ENAMEL, Tool.BRUSH, air, surface_c=surface_c)
    assert about(advice, "dew point") == expected


def test_blush_warns_fast_solvents_only():
    # UFC 3-190-06 par. 7.4.2; 60 % the usual "no", 70 % always poor: common practice, no source
    assert about(laying_advice(LACQUER, Tool.AIRBRUSH, Air(21, 55)), "blushes") == []
    assert about(laying_advice(LACQUER, Tool.AIRBRUSH, Air(21, 65)), "blushes") == [Fitness.CARE]
    assert about(laying_advice(LACQUER, Tool.AIRBRUSH, Air(21, 72)), "blushes") == [Fitness.NO_GO]
    assert about(laying_advice(LACQUER, Tool.BRUSH, Air(21, 72)), "blushes") == []
    assert about(laying_advice(ENAMEL, Tool.AIRBRUSH, Air(21, 72)), "blushes") == []


def test_blush_goes_by_temperature_and_humidity_together():
    """Warm air of the same humidity holds more moisture, and a warm film cools itself further.

    Dew points by PsychroLib 2.5.0: 4.8 °C at 10 °C and 70 %, 22.0 °C at 28 °C and 70 %.
    """
    assert about(laying_advice(LACQUER, Tool.AIRBRUSH, Air(12, 68)), "blushes") != [Fitness.NO_GO]
    assert about(laying_advice(LACQUER, Tool.AIRBRUSH, Air(28, 66)), "blushes") == [Fitness.NO_GO]
    for warmth in (10, 16, 22, 28, 34):
        worst = [
            fitness(laying_advice(LACQUER, Tool.AIRBRUSH, Air(warmth, damp)))
            for damp in (40, 55, 65, 75, 90)
        ]
        ranks = [list(Fitness).index(one) for one in worst]
        assert ranks == sorted(ranks)


def test_clears_fog_in_damp_air_and_colours_do_not():
    # 60 % is the usual "no" of painters for clears, 70 % always poor: common practice, no source
    for name in ("gloss clear", "Satin varnish", "Klarlack, matt", "Firnis"):
        clear = Coating(name=name, family=Family.WATERBORNE_ACRYLIC, finish=Finish.GLOSS)
        for damp, expected in ((60, []), (65, [Fitness.CARE]), (80, [Fitness.NO_GO])):
            advice = laying_advice(clear, Tool.AIRBRUSH, Air(21, damp))
            assert about(advice, "fogs") == expected, (name, damp)
        assert about(laying_advice(clear, Tool.BRUSH, Air(21, 80)), "fogs") == []
    assert fitness(laying_advice(ACRYLIC, Tool.AIRBRUSH, Air(21, 80))) is Fitness.GO
    as_clear = laying_advice(ACRYLIC, Tool.AIRBRUSH, Air(21, 80), clear=True)
    assert fitness(as_clear) is Fitness.NO_GO
    # a fast solvent is told once, by its own reason
    lacquer = Coating(name="clear", family=Family.SOLVENT_LACQUER)
    assert len(laying_advice(lacquer, Tool.AIRBRUSH, Air(21, 80))) == 1


def test_can_temperature_counts_besides_the_air():
    # poor below about 21 °C, grainy at 10 to 16 °C: common practice, no source
    warm_air = Air(21, 50)
    assert fitness(laying_advice(LACQUER, Tool.CAN, warm_air)) is Fitness.GO
    assert fitness(laying_advice(LACQUER, Tool.CAN, warm_air, can_c=18)) is Fitness.CARE
    assert fitness(laying_advice(LACQUER, Tool.CAN, warm_air, can_c=12)) is Fitness.NO_GO
    assert fitness(laying_advice(LACQUER, Tool.CAN, warm_air, can_c=55)) is Fitness.NO_GO
    assert fitness(laying_advice(LACQUER, Tool.AIRBRUSH, warm_air, can_c=12)) is Fitness.GO
    cold_air = Air(12, 50)  # a can kept indoors does not mend cold air
    assert fitness(laying_advice(LACQUER, Tool.CAN, cold_air, can_c=22)) is Fitness.CARE


def test_cold():
    # "do not paint below 10 °C": TM 43-0139 par. 5-31
    assert fitness(laying_advice(ENAMEL, Tool.BRUSH, Air(9, 50))) is Fitness.NO_GO
    assert fitness(laying_advice(ENAMEL, Tool.BRUSH, Air(21, 50), surface_c=9)) is Fitness.NO_GO
    # least film-forming temperature, ISO 2115; 5 °C is our assumption
    assert about(laying_advice(ACRYLIC, Tool.BRUSH, Air(4, 50)), "flow together")
    assert not about(laying_advice(ENAMEL, Tool.BRUSH, Air(4, 50)), "flow together")
    # 10 to 32 °C: TM 55-1500-345-23
    assert fitness(laying_advice(ACRYLIC, Tool.BRUSH, Air(33, 40))) is Fitness.CARE


def test_the_labels_limits_rule():
    picky = Coating(
        name="p",
        family=Family.ALKYD_ENAMEL,
        least_c=16,
        most_c=28,
        most_humidity_pct=55,
    )
    assert fitness(laying_advice(picky, Tool.BRUSH, Air(20, 50))) is Fitness.GO
    for air in (Air(15.5, 50), Air(28.5, 50), Air(20, 56)):
        advice = laying_advice(picky, Tool.BRUSH, air)
        assert advice[0].fitness is Fitness.NO_GO
        assert advice[0].source == "label"
    cold_model = laying_advice(picky, Tool.BRUSH, Air(20, 50), surface_c=15)
    assert about(cold_model, "label") == [Fitness.NO_GO]


def test_worst_first_and_every_reason_sourced():
    advice = laying_advice(LACQUER, Tool.CAN, Air(12, 78), can_c=18)
    order = [list(Fitness).index(advisory.fitness) for advisory in advice]
    assert order == sorted(order, reverse=True)
    assert len(advice) >= 3
    assert all(advisory.reason and advisory.source for advisory in advice)


@pytest.mark.parametrize(
    ("air", "extra"),
    [
        (Air(20, 140), {}),
        (Air(-300, 50), {}),
        (Air(20, 50), {"surface_c": -300}),
        (Air(20, 50), {"can_c": 900}),
    ],
)
def test_impossible_air_is_refused(air, extra):
    with pytest.raises(Refused, match="outside"):
        laying_advice(LACQUER, Tool.CAN, air, **extra)
