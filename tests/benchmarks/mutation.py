"""Would the tests notice?  Single faults in the planner, each run against the tests that judge it.

    python tests/benchmarks/mutation.py [--seed 1] [--from 0] [--count 320] [--only WORD]
                                        [--out FILE] [--again FILE]
    python tests/benchmarks/mutation.py --table FILE...

COUNT mutants (`mutants.py` says what they are) are drawn from the modules of `JUDGED_BY`, each
module beside the tests that judge it, the quickest first.  All libraries are imported once; for
each mutant a child is forked that imports the module with the fault in it and runs its tests to
the first failure.  A child that takes four times as long as the tests do without a fault, and
twenty seconds more, is ended and counted: the fault made something endless.  A property that
fails is not made smaller.

`equal_mutants.txt` lists mutants that change nothing that anyone could see, each with the reason.
They are run like all others, so that the list cannot hide one that a test does notice; entries
that name no mutant any more are told.  ``--out`` writes each result as soon as it is there, so
that a run can be done in pieces (``--from``, ``--count``, ``--within SECONDS``) and goes on where
it ended; ``--again FILE`` runs only what survived there; ``--table`` adds results up.  The exit
status is 1 if fewer than nine of ten of those not listed are noticed, or the list is stale.
"""

from __future__ import annotations

import argparse
import contextlib
import importlib.machinery
import json
import os
import signal
import sys
import time
import traceback
from collections import defaultdict
from collections.abc import Iterator
from pathlib import Path
from typing import Any

HERE = Path(__file__).resolve().parent
ROOT = HERE.parents[1]
sys.path[:0] = [str(HERE)]

from mutants import Mutant, drawn_order, mutants_of

EQUAL = HERE / "equal_mutants.txt"
ENOUGH = 0.9
EDGES = (
    "schedule/test_exact_minutes.py",
    "schedule/test_costs_to_the_minute.py",
    "schedule/test_cups_at_start.py",
    "schedule/test_model_dates.py",
    "schedule/test_gates_meet.py",
)
PLANS = (
    *EDGES,
    "schedule/test_shared_parts.py",
    "schedule/test_window_lookahead.py",
    "schedule/test_serial_schedule.py",
    "schedule/test_greedy.py",
)
CURE = (
    "test_rounding.py",
    "test_cure_looks.py",
    "test_cure_figures.py",
    "test_cure_windows.py",
    "test_cure_stack.py",
    "test_cure_bottle.py",
    "test_cure_drying_path.py",
    "test_cure_reference.py",
    "test_published_drying.py",
    "test_cure_kinetics.py",
    "test_cure_properties.py",
)
# What judges what: paths under planner/, and the tests of them under tests/planner/.
JUDGED_BY: dict[str, tuple[str, ...]] = {
    "schedule/judge": (
        "schedule/test_judge.py",
        "schedule/test_judge_edges.py",
        "schedule/test_judge_premises.py",
        *EDGES,
    ),
    "schedule/fit.py": PLANS,
    "schedule/partial_schedule.py": PLANS,
    "schedule/window_lookahead.py": PLANS,
    "graph": (
        "graph",
        "schedule/test_gates_meet.py",
        "schedule/test_shared_parts.py",
        "schedule/test_judge.py",
    ),
    "logged_order.py": ("test_logged_order.py", "schedule/test_shared_parts.py"),
    "cure": CURE,
    "layers": ("layers", "graph/test_likely.py", "schedule/test_gates_meet.py"),
    "evening": ("evening",),
    "quantity": ("quantity",),
}


def judges_of(path: str) -> tuple[str, ...]:
    """Return the tests that judge a module."""
    for under, tests in JUDGED_BY.items():
        if path == f"planner/{under}" or path.startswith(f"planner/{under}/"):
            return tests
    raise LookupError(path)


def all_mutants() -> list[Mutant]:
    """Return every mutant of every module that is judged."""
    found = []
    for under in JUDGED_BY:
        at = ROOT / "planner" / under
        for path in sorted(at.rglob("*.py")) if at.is_dir() else [at]:
            found += mutants_of(ROOT, str(path.relative_to(ROOT)))
    return found


def equal_mutants() -> dict[str, str]:
    """Return the listed mutants, each with the reason why nobody could see it.

    A line that begins with two spaces gives the reason for the lines above it.
    """
    found: dict[str, str] = {}
    waiting: list[str] = []
    for line in EQUAL.read_text(encoding="utf-8").splitlines():
        if line.startswith("  "):
            found.update(dict.fromkeys(waiting, line.strip()))
            waiting = []
        elif line and not line.startswith("#"):
            waiting.append(line)
    assert not waiting, f"no reason is given for {waiting}"
    return found


# -- one mutant, in a process of its own ------------------------------------------------------


def preload() -> None:
    """Import what every child needs, and nothing of the program."""
    import _pytest.pytester  # noqa: F401
    import alembic  # noqa: F401
    import hypothesis.strategies  # noqa: F401
    import networkx  # noqa: F401
    import pytest  # noqa: F401
    import scipy.optimize  # noqa: F401
    import sqlalchemy.orm  # noqa: F401
    from hypothesis import Phase, settings

    phases = (Phase.explicit, Phase.generate)
    settings.register_profile("unshrunk", phases=phases, database=None)
    settings.load_profile("unshrunk")
    sys.path[:0] = [str(ROOT), str(ROOT / "tests")]
    assert not any(name.partition(".")[0] == "planner" for name in sys.modules)


def put_in(mutant: Mutant) -> None:
    """Let the module be imported with the fault in it."""
    code, loader = mutant.compiled(ROOT), importlib.machinery.SourceFileLoader
    usual = loader.get_code

    def get_code(self: Any, fullname: str) -> Any:
        return code if fullname == mutant.module else usual(self, fullname)

    loader.get_code = get_code  # type: ignore[method-assign]


def run_child(mutant: Mutant | None, tests: tuple[str, ...]) -> None:
    """Run the tests to the first failure and end with their status; 70 is a fault of the run."""
    status = 70
    try:
        import pytest

        null = os.open(os.devnull, os.O_RDWR)
        for stream in (0, 1):
            os.dup2(null, stream)
        os.chdir(ROOT)
        if mutant:
            put_in(mutant)
        paths = [f"tests/planner/{test}" for test in tests]
        options = ["-x", "-q", "-n", "0", "-p", "no:cacheprovider", "--tb=short", "--no-header"]
        options += [
            "-W",
            "ignore::pytest.PytestAssertRewriteWarning",
        ]  # Hypothesis is there already
        status = int(pytest.main([*options, *paths]))
    except BaseException:
        traceback.print_exc()
    finally:
        sys.stdout.flush()
        sys.stderr.flush()
        os._exit(status)


def ended(mutant: Mutant | None, tests: tuple[str, ...], within: float) -> tuple[str, float]:
    """Return what became of a mutant, and after how many seconds."""
    began = time.monotonic()
    pid = os.fork()
    if not pid:
        os.setpgid(0, 0)
        run_child(mutant, tests)
    while time.monotonic() - began < within:
        done, status = os.waitpid(pid, os.WNOHANG)
        if done:
            code = os.waitstatus_to_exitcode(status)
            if code == 70:
                raise RuntimeError(f"the run itself failed at {mutant}")
            return ("survived" if code == 0 else "killed"), time.monotonic() - began
        time.sleep(0.02)
    with contextlib.suppress(ProcessLookupError):
        os.killpg(pid, signal.SIGKILL)
    os.waitpid(pid, 0)
    return "endless", time.monotonic() - began


def run(mutants: list[Mutant], until: float) -> Iterator[dict[str, Any]]:
    """Run mutants one after the other, until a moment; yield a row for each."""
    usual: dict[tuple[str, ...], float] = {}
    for mutant in mutants:
        tests = judges_of(mutant.path)
        if tests not in usual:
            what, seconds = ended(None, tests, 600)
            if what != "survived":
                raise SystemExit(f"the tests fail without any fault: {' '.join(tests)}")
            usual[tests] = seconds
        if time.monotonic() > until:
            return
        what, seconds = ended(mutant, tests, 4 * usual[tests] + 20)
        yield {"key": mutant.key, "line": mutant.line, "end": what, "seconds": round(seconds, 1)}


# -- what is told -----------------------------------------------------------------------------


def module_of(row: dict[str, Any]) -> str:
    """Return the part of the planner that a row tells of."""
    path = row["key"].partition(" ")[0].removeprefix("planner/")
    return next(under for under in JUDGED_BY if path == under or path.startswith(f"{under}/"))


def table(rows: list[dict[str, Any]]) -> bool:
    """Print how many of each module were noticed, and who survived; tell if that is enough."""
    equal = equal_mutants()
    groups: dict[str, list[dict[str, Any]]] = defaultdict(list)
    for row in rows:
        groups[module_of(row)].append(row)
    print("| module | drawn | noticed | of them endless | equal in meaning | survived |")
    print("|---|---|---|---|---|---|")
    for name, group in [
        *((name, groups[name]) for name in JUDGED_BY if name in groups),
        ("all", rows),
    ]:
        ends = [row["end"] for row in group]
        listed = sum(row["end"] == "survived" and row["key"] in equal for row in group)
        alive = ends.count("survived")
        told = (len(ends), len(ends) - alive, ends.count("endless"), listed, alive - listed)
        print(f"| {name} | {' | '.join(map(str, told))} |")
    for row in rows:
        if row["end"] == "survived" and row["key"] not in equal:
            print(f"survived  {row['key']}  (line {row['line']})")
    wrong = [row["key"] for row in rows if row["end"] != "survived" and row["key"] in equal]
    stale = sorted(set(equal) - {mutant.key for mutant in all_mutants()})
    for key in wrong:
        print(f"listed as equal in meaning, but a test notices it: {key}")
    for key in stale:
        print(f"listed as equal in meaning, but there is no such mutant: {key}")
    counted = [row for row in rows if row["end"] != "survived" or row["key"] not in equal]
    noticed = sum(row["end"] != "survived" for row in counted)
    share = noticed / max(1, len(counted))
    print(f"noticed: {noticed} of {len(counted)} that mean something else, {share:.1%}")
    return share >= ENOUGH and not wrong and not stale


def read(paths: list[str]) -> list[dict[str, Any]]:
    """Return the rows of some files; of two of one mutant the later."""
    rows: dict[str, dict[str, Any]] = {}
    for path in paths:
        if Path(path).exists():
            for line in Path(path).read_text(encoding="utf-8").splitlines():
                row = json.loads(line)
                rows[row["key"]] = row
    return list(rows.values())


def main() -> None:
    """Draw, run and tell."""
    reading = argparse.ArgumentParser()
    reading.add_argument("--seed", type=int, default=1)
    reading.add_argument("--from", dest="first", type=int, default=0)
    reading.add_argument("--count", type=int, default=320)
    reading.add_argument("--only", default="", help="mutants whose name holds this alone")
    reading.add_argument(
        "--within", type=float, default=1e9, help="begin no more after so long [s]"
    )
    reading.add_argument("--out", help="add each result to this file, and leave out what is there")
    reading.add_argument("--again", help="only what survived in this file")
    reading.add_argument("--list", action="store_true", help="print the mutants and run none")
    reading.add_argument("--table", nargs="+", metavar="FILE", help="add up what was written")
    asked = reading.parse_args()
    if asked.table:
        raise SystemExit(not table(read(asked.table)))
    chosen = [m for m in drawn_order(all_mutants(), asked.seed) if asked.only in m.key]
    chosen = chosen[asked.first : asked.first + asked.count]
    if asked.again:
        alive = {row["key"] for row in read([asked.again]) if row["end"] == "survived"}
        chosen = [mutant for mutant in chosen if mutant.key in alive]
    if asked.out:
        known = {row["key"] for row in read([asked.out])}
        chosen = [mutant for mutant in chosen if mutant.key not in known]
    if asked.list:
        print(*(mutant.key for mutant in chosen), sep="\n")
        return
    preload()
    rows = []
    for row in run(sorted(chosen, key=lambda mutant: mutant.path), time.monotonic() + asked.within):
        rows.append(row)
        print(f"{row['end']:<9} {row['seconds']:>5} s  {row['key']}", flush=True)
        if asked.out:
            with Path(asked.out).open("a", encoding="utf-8") as out:
                out.write(json.dumps(row) + "\n")
    raise SystemExit(not table(rows))


if __name__ == "__main__":
    main()
