"""What people are shown of a film's path."""

from __future__ import annotations

import doctest
import math
from itertools import pairwise

import pytest
from cure_rooms import WARSAW, at, film, labelled, points, room, steady

import planner.air.moisture
import planner.cure.kinetics
import planner.cure.rounding
from planner.cure import Cure, Evidence, film_path, shown_minutes, state_times
from planner.cure.drying_path import progress
from planner.values.coating import Coating, Family, State
from planner.values.refusal import Refused

NIGHT = room(*points(("06:00", 15, 60), ("20:00", 21, 48), ("23:00", 19, 52)))
LAID = at("2025-01-15 21:00")


def test_state_times_cover_every_state_in_order():
    cure = Cure(NIGHT, WARSAW)
    rows = state_times(cure, Coating(name="x", family=Family.WATERBORNE_ACRYLIC), LAID)
    assert {row.state for row in rows} == set(State)
    assert [row.nominal for row in rows] == sorted(row.nominal for row in rows)
    assert all(LAID <= row.early <= row.nominal <= row.late for row in rows)
    assert rows[0].state is State.SET_TO_TOUCH


def test_state_times_name_the_label():
    rows = state_times(Cure(NIGHT, WARSAW), labelled(Family.DECAL, 200), LAID, "bench")
    told = {row.state: row.figure.status for row in rows}
    assert told[State.DRY_TO_RECOAT] is Evidence.LABEL
    assert told[State.DRY_THROUGH] is not Evidence.LABEL


def test_never_is_shown_as_never():
    rows = state_times(steady(20, 100), Coating(name="x", family=Family.DECAL), LAID)
    assert all(row.early is row.nominal is row.late is None for row in rows)


def test_unknown_location_is_a_key_error():
    with pytest.raises(KeyError):
        state_times(steady(20), Coating(name="x", family=Family.DECAL), LAID, "attic")


@pytest.mark.parametrize("family", Family)
def test_path_rises_from_nothing_to_dry_through(family):
    cure = Cure(NIGHT, WARSAW)
    one = film(Coating(name="x", family=family), LAID)
    through = cure.ready_at(one, State.DRY_THROUGH, "nominal")
    path = film_path(cure, one, LAID - 60, through + 60, points=120)
    values = [point.progress for point in path]
    assert values == sorted(values)
    assert path[0].minute == LAID - 60
    assert values[0] == 0
    assert values[-1] == pytest.approx(1)
    assert len(path) <= 120


def test_path_stands_still_while_nothing_happens():
    cold = Cure(room(*points(("00:00", -3, 50), ("11:00", -3, 50), ("12:00", 20, 50))), WARSAW)
    one = film(Coating(name="x", family=Family.ALKYD_ENAMEL), at("2025-01-15 00:00"))
    path = film_path(cold, one, one.laid, one.laid + 600, points=20)
    assert {point.progress for point in path[1:]} <= {path[1].progress}


def test_oil_goes_in_an_s():
    """A → B → C with equal rate constants (FT-IR work on linseed oil with cobalt driers).

    For equal constants k the share of C has its steepest point at t = 1/k,
    where it is 1 - 2/e; the curve is thus convex before and concave after.
    """
    steps = [progress(Family.ARTISTS_OIL, share / 1000) for share in range(1001)]
    slopes = [b - a for a, b in pairwise(steps)]
    steepest = slopes.index(max(slopes))
    assert 0 < steepest < 500
    assert steps[steepest] * 0.95 == pytest.approx(1 - 2 / math.e, abs=0.003)
    assert slopes[0] < slopes[steepest] / 20
    assert slopes[-1] < slopes[steepest] / 5


def test_two_pack_is_first_order():
    # 95 % at dry-through is assumed; of first order, half the time leaves the root of the rest
    half = progress(Family.TWO_PACK, 0.5) * 0.95
    assert 1 - half == pytest.approx(math.sqrt(0.05))


def test_empty_range_is_refused():
    cure, one = steady(20), film(Coating(name="x", family=Family.DECAL), LAID)
    with pytest.raises(Refused, match="after start"):
        film_path(cure, one, LAID, LAID)
    with pytest.raises(Refused, match="points"):
        film_path(cure, one, LAID, LAID + 60, points=1)


@pytest.mark.parametrize(
    ("minutes", "up", "down"),
    [  # 5 minutes under two hours, 15 above
        (0, 0, 0),
        (1, 5, 0),
        (60, 60, 60),
        (118, 120, 115),
        (120, 120, 120),
        (121, 135, 120),
        (1430, 1440, 1425),
    ],
)
def test_shown_minutes(minutes, up, down):
    assert shown_minutes(minutes) == up
    assert shown_minutes(minutes, up=False) == down


@pytest.mark.parametrize(
    "module", [planner.air.moisture, planner.cure.kinetics, planner.cure.rounding]
)
def test_examples_in_the_docstrings(module):
    outcome = doctest.testmod(module)
    assert outcome.attempted > 0
    assert outcome.failed == 0
