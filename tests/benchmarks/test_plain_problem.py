"""The bare problem that the baselines are given is the engine's, or an easier one."""

from __future__ import annotations

import importlib
import sys
from dataclasses import replace
from pathlib import Path

import pytest

from planner.schedule.greedy import plan_book
from planner.schedule.judge import judge
from planner.values.coating import Mark, Window
from planner.values.step import Stage

HERE = Path(__file__).parent


@pytest.fixture(scope="module")
def bench():
    """Give the benchmark's modules by name, as its script sees them."""
    sys.path.insert(0, str(HERE))
    known = set(sys.modules)
    try:
        yield importlib.import_module
    finally:
        sys.path.remove(str(HERE))
        for name in set(sys.modules) - known:
            if str(HERE) in str(getattr(sys.modules[name], "__file__", "")):
                del sys.modules[name]


def of_one(bench, seed: int = 0):
    """Return (book, bare problem, now) of one vehicle."""
    families, tasks = bench("families"), bench("plain_tasks")
    book = families.batch(1, seed)
    return book, tasks.batch_of(book, families.NOW, 40), families.NOW


@pytest.mark.parametrize(("vehicles", "seed"), [(1, 0), (1, 1), (1, 2), (4, 0), (4, 1)])
def test_what_the_engine_plans_holds_in_the_bare_problem(bench, vehicles, seed):
    families, contenders = bench("families"), bench("contenders")
    book = families.batch(vehicles, seed)
    plan = plan_book(book, families.NOW)
    assert judge(book, plan).accepted
    last = contenders.last_evening(book, plan, families.NOW)
    whole, _ = contenders.bare(book, families.NOW, last)
    assert bench("plain_check").broken(whole, contenders.starts_of(book, plan)) == []


@pytest.mark.parametrize("seed", range(3))
def test_what_the_plain_rule_finds_holds_in_it(bench, seed):
    _, batch, _ = of_one(bench, seed)
    found = bench("frozen_greedy").plain_greedy(batch)
    check = bench("plain_check")
    assert check.broken(batch, found.starts) == []
    assert check.set_up_minutes(batch, found.starts) <= found.setup
    assert check.evening_of(batch, check.finish_of(batch, found.starts) - 1) == found.last


def test_waits_are_those_of_the_gate_or_of_the_film(bench):
    """By hand, from a label's 20 minutes for every film; a wait of 1 is none of the gate's.

    Coats, decals and washes can be done over again, so that they wait for the likely 20
    (definition 6), a wash on a gloss for a film one and a quarter times as thick
    (definition 5): 20 * 1.25 ** 1.5 = 27.95, where time goes with thickness to the power of
    1.5 until solvent-safe (assumed).  The last coat waits for the late end of the band, a
    tenth more: 22.  The second primer has 20 min to 2 h, or 24 h, by its gate.
    """
    families, tasks = bench("families"), bench("plain_tasks")
    book = families.batch(1, 0)
    (project,) = book.projects
    (model,) = project.models
    hasty = (Window(opens=Mark(minutes=1)),)
    steps = tuple(
        replace(step, gates=(replace(step.gates[0], windows=hasty),))
        if step.gates and len(step.gates[0].windows) == 1 and step.stage is not Stage.WIPE
        else step
        for step in model.steps
    )
    project = replace(project, models=(replace(model, steps=steps),))
    chain = tasks.batch_of(replace(book, projects=(project,)), families.NOW, 40).chains[0]
    assert chain[0].windows == ((0, None),)
    assert chain[1].windows == ((20, 120), (1440, None))
    least = {step.stage: task.windows[0][0] for step, task in zip(steps, chain, strict=True)}
    assert least[Stage.CAMO] == least[Stage.DECAL] == 20
    assert least[Stage.OIL_WASH] == 28
    assert least[Stage.MATTE] == 22


def test_what_is_spoilt_is_told(bench):
    _, batch, _ = of_one(bench)
    found = bench("frozen_greedy").plain_greedy(batch).starts
    broken = bench("plain_check").broken
    chain = batch.chains[0]

    def moved(at: int, minute: int) -> str:
        return " ".join(broken(batch, {**found, (0, at): minute}))

    assert "not within an evening" in moved(0, batch.evenings[0][1])
    assert "in none of its windows" in moved(2, found[0, 1] + chain[1].minutes)
    assert "two tasks at" in moved(1, found[0, 0] + 1)
    assert "no time to set up" in moved(0, batch.evenings[0][0])
    wiping = next(at for at, task in enumerate(chain) if task.ends_within is not None)
    assert "ends too late" in moved(wiping, found[0, wiping] + 60)


def test_colours_are_loaded_changed_and_cleaned_away(bench):
    """By hand, with 3 to load, 3 within a family, 10 between families and 3 to clean.

    Primer, then a colour of another family, is 3 + 6 (cleaned and loaded
    anew, for a change would take 10) + 3; the same colour again nothing.
    """
    tasks, check = bench("plain_tasks"), bench("plain_check")

    def spray(colour: str, family: str):
        return tasks.Task(0, 10, colour, family, ((0, None),))

    chain = (spray("grey", "lacquer"), spray("sand", "water"), spray("sand", "water"))
    batch = tasks.Batch((chain,), ((0, 100),), 3, 3, 10, 3)
    assert check.set_up_minutes(batch, {(0, 0): 3, (0, 1): 19, (0, 2): 40}) == 3 + 6 + 3
    assert check.broken(batch, {(0, 0): 3, (0, 1): 19, (0, 2): 40}) == []
    assert "set up" in check.broken(batch, {(0, 0): 3, (0, 1): 18, (0, 2): 40})[0]
    assert "clean" in check.broken(batch, {(0, 0): 3, (0, 1): 19, (0, 2): 88})[0]


def test_the_library_states_all_but_loads_and_cleanings(bench):
    library = bench("library")
    if not library.installed():
        pytest.skip(library.MISSING)
    _, batch, _ = of_one(bench)
    few = replace(batch, evenings=batch.evenings[:16])
    stated = library.Stated(few)
    result = stated.model.solve(time_limit=20, num_workers=1, display=False)
    starts = stated.starts(result)
    check = bench("plain_check")
    assert check.broken(few, starts, set_ups=False) == []


def test_the_table_takes_the_middle_of_the_seeds(bench):
    medians = bench("medians")

    def line(contender: str, seed: int, **fields: str):
        empty = dict.fromkeys(medians.FIELDS, "")
        known = {"batch": "two", "steps": "40", "seed": str(seed), "contender": contender}
        return {**empty, **known, "seconds": "10", **fields}

    lines = [line("plain", seed, last="9", setup="50") for seed in (0, 1, 2)]
    lines += [
        line("engine", seed, last=last, bound="7", setup=setup, at_10=last)
        for seed, last, setup in ((0, "7", "20"), (1, "8", "25"), (2, "8", "40"))
    ]
    lines.append(line("direct", 0))
    (plain,) = [row for row in medians.table(lines).splitlines() if "| plain" in row]
    (engine,) = [row for row in medians.table(lines).splitlines() if "| engine" in row]
    (direct,) = [row for row in medians.table(lines).splitlines() if "| direct" in row]
    assert "9 (+2; 0 of 3 on it, 0 within 1, 3 within 2)" in plain
    assert "8 (+1; 1 of 3 on it, 3 within 1, 3 within 2)" in engine
    assert "25 min (50 %)" in engine
    assert "1 of 1 none" in direct
