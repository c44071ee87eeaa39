"""Gear of any kind is planned, improved, judged and told of; nobody has to own an airbrush."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from pathlib import Path

import pytest
from gear_kinds import KINDS, NOW, Kind
from told_plans import explained

from app.command_line import main
from app.service.planning import plan
from planner.schedule.judge import judge
from planner.schedule.optimise.effort import Effort
from planner.schedule.optimise.search import improve
from planner.values.gear import Gear
from planner.values.plan import BenchKind, Status
from planner.values.refusal import Refused
from storage.exchange import Exchange, dump

AT = "2031-03-06T19:30+01:00"

kinds = pytest.mark.parametrize("kind", KINDS.values(), ids=KINDS)


def can_be_done(kind: Kind) -> bool:
    """Tell whether anything is in the way of all that is to be done, by the kind's own words."""
    return kind.content != "steps" or (kind.bench_time and kind.stands <= 4)


# What clashes is looked for in a process of its own, which takes a second: once for each reason.
ASKED = {name: kind for name, kind in KINDS.items() if can_be_done(kind) or kind.airbrushes}


@kinds
def test_it_is_planned_improved_and_judged(kind: Kind) -> None:
    book = kind.book
    planned = plan(book, NOW)
    shown = explained(planned, book)
    assert shown.verdict.accepted
    assert bool(shown.plan.unplaced) is not can_be_done(kind)
    if shown.plan.unplaced:
        assert shown.plan.status is Status.INFEASIBLE
    sprayed = kind.tools in ("both", "no brush") and shown.plan.placements
    assert bool(shown.plan.bench) is bool(sprayed)
    found = [
        one.plan
        for one in improve(
            book,
            planned.plan,
            cure=planned.cure,
            calendar=planned.calendar,
            effort=Effort(rolls=2, proofs=1),
        )
    ]
    assert found
    for item in found:
        assert judge(book, item).accepted
        assert item.cost.in_order() <= planned.plan.cost.in_order()
        if not sprayed:
            assert item.cost.setup_minutes == 0
            assert not [bench for bench in item.bench if bench.kind is not BenchKind.PREPARE]


@pytest.mark.parametrize("kind", ASKED.values(), ids=ASKED)
def test_every_command_answers(
    kind: Kind, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    file, made = tmp_path / "kind.json", tmp_path / "plan.json"
    file.write_bytes(dump(Exchange(kind.book)))

    def status(*words: object) -> int:
        return main([str(word) for word in words])

    expected = 0 if can_be_done(kind) else 1
    assert status("plan", file, "--now", AT, "--json") == expected
    made.write_text(capsys.readouterr().out, encoding="utf-8")
    assert status("verify", file, made) == 0
    assert status("tonight", file, "--now", AT) == 0
    assert status("check", file) in (0, 1)
    assert status("shop", file, "--now", AT) == 0
    for what in ("calendar", "record", "table"):
        out = tmp_path / f"out.{what}"
        assert status("export", file, f"--{what}", out, "--now", AT) in (0, 1)
    heard = capsys.readouterr()
    assert "Traceback" not in heard.out + heard.err


def test_what_cannot_be_owned_is_refused_where_it_stands() -> None:
    """A sprayed step without an airbrush, a room where nothing may dry, a project of nothing."""
    book = KINDS["one airbrush"].book
    bench = book.room.locations[0]
    cases: tuple[tuple[Callable[[], object], str], ...] = (
        (lambda: replace(book, gear=Gear()), "tool"),
        (lambda: replace(bench, drying_places=0), "drying_places"),
        (lambda: replace(book.room, locations=()), "locations"),
        (lambda: replace(book.projects[0], models=()), "models"),
    )
    for make, place in cases:
        with pytest.raises(Refused) as refused:
            make()
        assert refused.value.place.endswith(place)
