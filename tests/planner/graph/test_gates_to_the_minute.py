"""Gates that the network draws, at the minutes and places that they turn on."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

import pytest
from judge_cases.making import book, coating, paint, work

from planner.graph.gates import PassGate, gates_of
from planner.graph.network import check_acyclic
from planner.values.book import Book
from planner.values.coating import Family, Finish, Mark, State, Window
from planner.values.refusal import Refused
from planner.values.step import Stage

WEEK = 7 * 1440  # tape survived a week: common practice, no source [min]
FLUID = coating("fluid", Family.MASKING_FLUID)


def between(
    of: Book, before: str, after: str, test: Callable[[PassGate], bool] = bool
) -> list[PassGate]:
    """Return the gates between two steps that pass a test."""
    project = of.projects[0]
    return [
        gate
        for gate in gates_of(of, project, project.models[0])
        if (gate.before.step, gate.after.step) == (before, after) and test(gate)
    ]


def test_a_mask_stays_for_a_week():
    of = book(
        work("mask", Stage.MASK, "hull/deck"),
        paint("camo", "hull/side"),
        work("unmask", Stage.UNMASK, "hull/deck"),
    )
    (gate,) = between(of, "mask", "unmask", lambda gate: gate.closes)
    assert gate.windows == (Window(closes=Mark(minutes=WEEK)),)
    (edge,) = between(of, "camo", "unmask")
    assert edge.windows == (Window(opens=Mark(state=State.SET_TO_TOUCH)),)


def test_masking_fluid_is_drawn_off_within_a_week_and_once_all_above_it_is_set():
    """One gate of the fluid for all its places, and one for each coat above it."""
    of = book(
        paint("base", "hull"),
        paint("dots", "hull/deck", "hull/side", coat="fluid", stage=Stage.DETAIL),
        paint("camo", "hull/deck", "hull/side", coat="green"),
        work("off", Stage.UNMASK, "hull/deck", "hull/side"),
        coatings=(FLUID,),
    )
    (gate,) = between(of, "dots", "off", lambda gate: gate.closes)
    assert gate.windows == (Window(closes=Mark(minutes=WEEK)),)
    assert gate.place == ""
    (edge,) = between(of, "camo", "off", lambda gate: gate.watches_film)
    assert edge.windows == (Window(opens=Mark(state=State.SET_TO_TOUCH)),)


def test_the_gloss_below_a_wash_counts_a_quarter_thicker_and_nothing_else_does():
    """Definition 5: common practice, no source."""
    for finish, pooled in ((Finish.GLOSS, 1.25), (Finish.SATIN, 1.0), (Finish.MATTE, 1.0)):
        shine = coating("shine")
        of = book(
            paint("base", "hull/deck", coat="shine", stage=Stage.VARNISH),
            paint("grime", "hull/deck", coat="oil", stage=Stage.OIL_WASH),
            coatings=(replace(shine, finish=finish),),
        )
        (gate,) = between(of, "base", "grime", lambda gate: gate.watches_film)
        assert gate.pooled == pooled


@pytest.mark.parametrize("steps", [2, 7, 8, 9, 10, 12])
def test_of_a_long_cycle_eight_waits_are_told(steps):
    """Up to eight are told all; of more seven, how many are left out, and the last."""
    ring = [paint(f"s{n}", "hull/deck", after=(f"s{(n - 1) % steps}",)) for n in range(steps)]
    with pytest.raises(Refused) as refused:
        check_acyclic(book(*ring))
    told = refused.value.mend.partition(";")[0]
    assert told.count("waits for") == min(steps, 8)
    assert (f"({steps - 8} more)" in told) is (steps > 8)
