"""Runs do not hang together: what happens in one is the same with others beside it and alone."""

from __future__ import annotations

import gc
import weakref
from dataclasses import dataclass

import numpy as np
import pytest

from app.service import demos, planning
from planner.chance.bench_runs import BenchRuns
from planner.chance.draws import Draws, Floats
from planner.chance.odds import odds_of
from planner.chance.script import script_of
from planner.chance.spreads import Spreads

RUNS = 40
ALONE = (0, 7, 21, 33)


class OneOf(Draws):
    """One run of many draws."""

    def __init__(self, many: Draws, run: int) -> None:
        super().__init__(1, many.seed)
        self.many, self.run = many, run

    def normal(self, *name: object) -> Floats:
        return self.many.normal(*name)[self.run : self.run + 1]

    def uniform(self, *name: object) -> Floats:
        return self.many.uniform(*name)[self.run : self.run + 1]


@dataclass(frozen=True)
class Drawn(Spreads):
    """The assumed law; the share of sessions lost is drawn evenly up to a third."""

    def lost_share(self, draws: Draws) -> Floats:
        return draws.uniform("share") / 3


@pytest.mark.parametrize("name", ["winter_garage", "harbour_tenders"])
def test_a_run_alone_goes_as_it_does_beside_others(name: str) -> None:
    book = demos.read(name).book
    plan = planning.plan(book, demos.first_evening(book), quick=True).plan
    many = Draws(RUNS, 3)
    together = BenchRuns(script_of(book, plan), many, Drawn())
    together.run()
    assert (np.ptp(together.end, axis=1) > 0).any()
    for run in ALONE:
        alone = BenchRuns(script_of(book, plan), OneOf(many, run), Drawn())
        alone.run()
        assert (alone.start[:, 0] == together.start[:, run]).all()
        assert (alone.end[:, 0] == together.end[:, run]).all()


def test_runs_are_gone_at_once_and_wait_for_no_search(monkeypatch) -> None:
    # Without it a window, which searches seldom, held some seventy megabytes more at each edit.
    book = demos.read("lone_lamplighter").book
    plan = planning.plan(book, demos.first_evening(book)).plan
    made = []
    begin = BenchRuns.run

    def run(self: BenchRuns, *told: object) -> bool:
        made.append(weakref.ref(self.draws))
        made.append(weakref.ref(self))
        return begin(self, *told)

    monkeypatch.setattr(BenchRuns, "run", run)
    gc.disable()
    try:
        assert odds_of(book, plan, draws=Draws(60)) is not None
        assert odds_of(book, plan, draws=Draws(60), stop=lambda: True) is None
        assert [one() for one in made] == [None] * 4
    finally:
        gc.enable()
