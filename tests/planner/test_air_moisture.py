"""Moist air against tables that independent libraries print."""

from __future__ import annotations

import psychrolib
import pytest

from planner.air import dew_point_c, saturation_pressure_pa, surface_margin_k
from planner.values.refusal import Refused

psychrolib.SetUnitSystem(psychrolib.SI)


@pytest.mark.parametrize(
    ("temperature_c", "pressure_pa"),
    [  # CoolProp 8.0.0 (IAPWS-95)
        (0.01, 611.7),
        (5, 872.6),
        (10, 1228.2),
        (15, 1705.8),
        (20, 2339.3),
        (23, 2811.1),
        (25, 3169.9),
        (30, 4247.0),
        (40, 7384.9),
    ],
)
def test_saturation_pressure_agrees_with_steam_tables(temperature_c, pressure_pa):
    # the Magnus form departs by 0.31 % at most from 5 to 40 °C
    assert saturation_pressure_pa(temperature_c) == pytest.approx(pressure_pa, rel=0.005)


@pytest.mark.parametrize(
    ("temperature_c", "printed_pa"),
    [  # the WMO form itself, WMO-No. 8 Annex 4.B
        (5, 871.7),
        (10, 1226.0),
        (15, 1701.7),
        (20, 2332.6),
        (23, 2802.5),
        (25, 3160.1),
        (30, 4233.7),
        (40, 7367.5),
    ],
)
def test_saturation_pressure_is_the_wmo_form(temperature_c, printed_pa):
    assert saturation_pressure_pa(temperature_c) == pytest.approx(printed_pa, abs=0.06)


HUMIDITIES = (30, 40, 50, 60, 70, 80, 85, 90)
DEW_POINTS = {  # PsychroLib 2.5.0, rows in °C
    10: (None, None, 0.06, 2.60, 4.79, 6.71, 7.60, 8.44),
    15: (None, 1.52, 4.67, 7.31, 9.58, 11.58, 12.50, 13.37),
    18: (0.18, 4.21, 7.43, 10.13, 12.45, 14.50, 15.44, 16.34),
    20: (1.91, 6.00, 9.27, 12.01, 14.37, 16.45, 17.40, 18.31),
    23: (4.51, 8.69, 12.03, 14.82, 17.24, 19.36, 20.34, 21.27),
    25: (6.24, 10.48, 13.86, 16.70, 19.15, 21.31, 22.30, 23.24),
    28: (8.83, 13.15, 16.61, 19.51, 22.02, 24.23, 25.24, 26.20),
    30: (10.55, 14.94, 18.45, 21.39, 23.93, 26.17, 27.20, 28.18),
}


@pytest.mark.parametrize(
    ("temperature_c", "humidity_pct", "dew_c"),
    [
        (temperature, humidity, dew)
        for temperature, row in DEW_POINTS.items()
        for humidity, dew in zip(HUMIDITIES, row, strict=True)
        if dew is not None
    ],
)
def test_dew_point_agrees_with_psychrolib_table(temperature_c, humidity_pct, dew_c):
    assert dew_point_c(temperature_c, humidity_pct) == pytest.approx(dew_c, abs=0.05)
    live = psychrolib.GetTDewPointFromRelHum(float(temperature_c), humidity_pct / 100)
    assert dew_point_c(temperature_c, humidity_pct) == pytest.approx(live, abs=0.05)


@pytest.mark.parametrize(
    ("temperature_c", "humidity_pct", "three_libraries"),
    [  # PsychroLib 2.5.0, MetPy 1.7.1, CoolProp 8.0.0
        (20, 50, (9.272, 9.256, 9.274)),
        (23, 50, (12.028, 12.010, 12.031)),
        (25, 60, (16.701, 16.680, 16.704)),
        (30, 80, (26.169, 26.131, 26.170)),
        (15, 70, (9.579, 9.569, 9.580)),
        (28, 40, (13.153, 13.127, 13.157)),
    ],
)
def test_dew_point_agrees_with_three_libraries(temperature_c, humidity_pct, three_libraries):
    for printed in three_libraries:
        assert dew_point_c(temperature_c, humidity_pct) == pytest.approx(printed, abs=0.05)


def test_below_zero_the_dew_point_stays_over_water():
    # MetPy 1.7.1 also stays over water: -2.13; PsychroLib's frost point is -1.87
    assert dew_point_c(5, 60) == pytest.approx(-2.13, abs=0.02)
    # WMO form, 10 °C: -6.81 and -3.00
    assert dew_point_c(10, 30) == pytest.approx(-6.81, abs=0.02)
    assert dew_point_c(10, 40) == pytest.approx(-3.00, abs=0.02)


@pytest.mark.parametrize(
    ("temperature_c", "most_humidity_pct"),
    [(10, 81.6), (15, 82.2), (20, 82.9), (23, 83.2), (25, 83.5), (30, 84.0)],  # PsychroLib
)
def test_three_kelvin_explain_the_usual_85_percent(temperature_c, most_humidity_pct):
    margin = surface_margin_k(temperature_c, temperature_c, most_humidity_pct)
    assert margin == pytest.approx(3.0, abs=0.05)


@pytest.mark.parametrize(
    "air", [(20, 140), (20, -1), (-300, 50), (61, 50), (float("nan"), 50), (20, float("inf"))]
)
def test_air_that_no_room_has_is_refused(air):
    with pytest.raises(Refused):
        dew_point_c(*air)


def test_bone_dry_air_has_no_dew_point():
    with pytest.raises(Refused, match="no dew point"):
        dew_point_c(20, 0)
    with pytest.raises(Refused, match="surface_c"):
        surface_margin_k(-300, 20, 50)
