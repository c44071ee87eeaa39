"""The table of the engine's benchmark: medians over the seeds, from lines of CSV."""

from __future__ import annotations

import csv
import math
import statistics
from collections import defaultdict
from collections.abc import Iterable
from pathlib import Path

FIELDS = (
    *("batch", "steps", "seed", "contender", "seconds"),
    *("cold_ms", "first_ms", "replan_ms"),
    *("last", "at_0", "at_1", "at_3", "at_10", "at_20", "at_30", "at_60", "bound"),
    *(
        "finish_days",
        "late_days",
        "evenings",
        "setup",
        "refills",
        "first_s",
        "close_s",
        "proof_s",
        "optimal_s",
        "note",
    ),
)
HEAD = (
    *("batch (seeds)", "what", "cold", "first plan", "re-plan", "finish", "last evening (gap)"),
    *(
        "at 0 s",
        "at 3 s",
        "at 10 s",
        "at 20 s",
        "at 60 s",
        "days late",
        "evenings",
        "set-up (of plain)",
    ),
    "filled again",
    *("to first", "to 1 %", "to proof of evening", "of finish"),
)
ORDER = ("plain", "instant", "engine", "edited", "direct", "library")
NEAR = (1, 2)  # evenings after the bound
SOON = 10  # seconds within which the evening is wanted proven
Line = dict[str, str]


def read(paths: Iterable[str]) -> list[Line]:
    """Return the lines of some files; of two for the same run the later counts."""
    found: dict[tuple[str, str, str], Line] = {}
    for path in paths:
        with Path(path).open(encoding="utf-8", newline="") as file:
            for line in csv.DictReader(file):
                key = line["batch"], line["seed"], line["contender"]
                found[key] = {**dict.fromkeys(FIELDS, ""), **line}
    return list(found.values())


def table(lines: list[Line]) -> str:
    """Return the table as Markdown, and below it how some figures grow with size."""
    groups: dict[tuple[bool, int, str], dict[str, list[Line]]]
    groups = defaultdict(lambda: defaultdict(list))
    for line in lines:
        groups[not line["seed"], int(line["steps"]), line["batch"]][line["contender"]].append(line)
    rows = [HEAD, ("---",) * len(HEAD)]
    for (_, _, batch), named in sorted(groups.items()):
        base = {line["seed"]: line for line in named.get("plain", [])}
        proven = {one["seed"]: one["bound"] for one in named.get("engine", [])}
        rows += [
            _row(batch, contender, named[contender], base, proven)
            for contender in ORDER
            if contender in named
        ]
    text = "\n".join("| " + " | ".join(row) + " |" for row in rows)
    return text + "\n" + "".join(f"\n{note}" for note in (*_growth(lines), *_notes(lines)))


def _row(
    batch: str, contender: str, lines: list[Line], base: dict[str, Line], proven: dict[str, str]
) -> tuple[str, ...]:
    count, known = len(lines), [line for line in lines if line["last"]]
    missing = f" ({count - len(known)} of {count} none)" if len(known) < count else ""
    own = {line["seed"]: line["bound"] for line in known if contender == "edited"}
    bounds = own or proven  # an edited book has a bound of its own
    gaps = [
        float(line["last"]) - float(bounds[line["seed"]])
        for line in known
        if bounds.get(line["seed"])
    ]
    met = ""
    if gaps:
        on = sum(gap <= 0 for gap in gaps)
        near = ", ".join(
            f"{sum(gap <= most for gap in gaps)} within {most}" for most in NEAR if max(gaps) > 0
        )
        met = f" ({statistics.median(gaps):+g}; {on} of {len(gaps)} on it{near and ', ' + near})"
    shares = [
        100 * float(line["setup"]) / float(base[line["seed"]]["setup"])
        for line in known
        if line["setup"] and line["seed"] in base
    ]
    return (
        f"{batch} ({count})",
        contender,
        _middle(known, "cold_ms", " ms"),
        _middle(known, "first_ms", " ms"),
        _middle(known, "replan_ms", " ms"),
        _middle(known, "finish_days", " d", 1),
        _middle(known, "last") + met + missing,
        *(_at(lines, mark) for mark in (0, 3, 10, 20, 60)),
        _middle(known, "late_days", " d", 1),
        _middle(known, "evenings"),
        _middle(known, "setup", " min") + (f" ({_number(shares)} %)" if shares else ""),
        _middle(known, "refills"),
        _middle(known, "first_s", " s", 2),
        _middle(known, "close_s", " s", 1),
        _reached(known, "proof_s"),
        _reached(known, "optimal_s"),
    )


def _at(lines: list[Line], mark: int) -> str:
    """Return the median last evening at a mark, of the seeds that had a plan by then."""
    reached = [line for line in lines if float(line["seconds"]) >= mark]
    had = [line for line in reached if line[f"at_{mark}"]]
    if not had:
        return "none" if reached and lines[0]["contender"] == "direct" else ""
    few = f" ({len(had)} of {len(reached)})" if len(had) < len(reached) else ""
    return _middle(had, f"at_{mark}") + few


def _reached(lines: list[Line], field: str) -> str:
    times = [float(line[field]) for line in lines if line[field]]
    soon = sum(one <= SOON for one in times)
    told = f"{len(times)} of {len(lines)}, {soon} within {SOON} s"
    return f"{_number(times, 1)} s ({told})" if times else ""


def _middle(lines: list[Line], field: str, unit: str = "", places: int = 0) -> str:
    values = [float(line[field]) for line in lines if line[field]]
    return _number(values, places) + unit if values else ""


def _number(values: list[float], places: int = 0) -> str:
    """Return a median; half an evening stays half."""
    middle = statistics.median(values)
    return f"{middle:.{max(places, 1 if middle % 1 == 0.5 else 0)}f}"


def _growth(lines: list[Line]) -> Iterable[str]:
    """Yield with which power of the number of steps some seconds grow."""
    whats = {"first_ms": "first plan [ms]", "replan_ms": "re-plan [ms]", "close_s": "to 1 % [s]"}
    for field, what in whats.items():
        sizes: dict[int, list[float]] = defaultdict(list)
        for line in lines:
            of_family = not line["batch"].startswith("hard")
            if line["contender"] == "engine" and line[field] and line["seed"] and of_family:
                sizes[int(line["steps"])].append(float(line[field]))
        if len(sizes) < 2:
            continue
        (small, few), *_, (large, many) = sorted(sizes.items())
        low, high = statistics.median(few), statistics.median(many)
        if not low or not high:
            continue
        power = math.log(high / low) / math.log(large / small)
        yield (
            f"{what}: {low:.3g} to {high:.3g} from {small} to {large} steps,"
            f" as their number to the power {power:.1f}"
        )


def _notes(lines: list[Line]) -> Iterable[str]:
    for contender in ORDER:
        said: dict[str, int] = defaultdict(int)
        for line in lines:
            if line["contender"] == contender and line["note"]:
                said[line["note"]] += 1
        yield from (f"{contender}: {note} (in {times} runs)" for note, times in said.items())
