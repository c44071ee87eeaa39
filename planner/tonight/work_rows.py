"""The rows of a run sheet: passes, and loading, changing, cleaning and preparing."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import replace

from planner.cautions import cautions, heated_box
from planner.passes import Pass
from planner.quantity import Load, fill, filled
from planner.tonight.replayed_plan import ReplayedPlan
from planner.tonight.run_sheet_rows import BenchRow, Row, SheetCoat, WorkRow
from planner.values.book import Book
from planner.values.coating import Family
from planner.values.mix import Portion
from planner.values.model import Material
from planner.values.moment import Interval
from planner.values.plan import BenchWork, Placement
from planner.values.step import Stage, Tool

SPRAYED = (Tool.AIRBRUSH, Tool.CAN)


def rows_of(laid: ReplayedPlan, interval: Interval, beside: Iterable[Placement] = ()) -> list[Row]:
    """Return work and set-up in ``interval``, and work ``beside`` it, in order of the clock."""
    kept = [
        _work(laid, placed, number, piece)
        for placed in beside
        for number, piece in enumerate(placed.pieces, start=1)
    ]
    rows: list[Row] = [*kept, *work_of(laid, interval), *_bench(laid, interval)]
    return list(_once_a_load(sorted(rows, key=lambda row: (row.start, row.end))))


def _once_a_load(rows: list[Row]) -> Iterator[Row]:
    """Yield the rows with each caution told once for a load, or for what is worked with by hand."""
    loads: dict[str, int] = {}
    told: dict[tuple[object, ...], set[str]] = {}
    for row in rows:
        if isinstance(row, BenchRow):
            if row.load is not None:
                loads[row.airbrush] = row.start
            yield row
            continue
        names = tuple(coat.coating for coat in row.coats)
        load = (row.tool, row.airbrush, loads.get(row.airbrush, 0), names)
        before = told.setdefault(load, set())
        fresh = tuple(caution for caution in row.cautions if caution.text not in before)
        before.update(one.text for one in fresh)
        yield row if fresh == row.cautions or row.logged else replace(row, cautions=fresh)


def work_of(laid: ReplayedPlan, interval: Interval) -> Iterator[WorkRow]:
    """Yield the pieces of passes whose hands are in ``interval``, and what goes on alone in it."""
    for placed in laid.placed.values():
        for number, piece in enumerate(placed.pieces, start=1):
            shown = piece if placed.logged else laid.of(placed.key).attended(piece)
            if shown.overlaps(interval):
                yield _work(laid, placed, number, piece)


def _work(laid: ReplayedPlan, placed: Placement, number: int, piece: Interval) -> WorkRow:
    pass_ = laid.of(placed.key)
    names = tuple(dict.fromkeys(coating for _, coating in pass_.films))
    return WorkRow(
        key=placed.key,
        stage=pass_.step.stage,
        title=pass_.step.title,
        parts=pass_.parts,
        coats=tuple(
            SheetCoat(
                name,
                swatch_of(laid.book, name),
                _portions(laid.book, name),
                tuple(place for place, coating in pass_.films if coating == name),
                _palette(laid, placed, pass_, name),
            )
            for name in names
        ),
        places=pass_.places,
        tool=pass_.step.tool,
        airbrush=placed.airbrush,
        start=piece.start,
        end=piece.end,
        free=pass_.attended(piece).end,
        piece=number,
        pieces=len(placed.pieces),
        reason=placed.reason,
        cautions=cautions(
            pass_.step,
            _families(laid, pass_),
            laid.book.room.volume_m3,
            boxed=heated_box(laid.book.room, placed.location or pass_.step.dries_in),
            materials=_materials(laid, pass_),
        ),
        logged=placed.logged,
        traits=pass_.step.traits,
        look_in=pass_.step.look_in if pass_.key.coat == pass_.step.coats else None,
    )


def _materials(laid: ReplayedPlan, pass_: Pass) -> frozenset[Material]:
    project = next(each for each in laid.book.projects if each.name == pass_.key.project)
    model = project.model(pass_.key.model)
    return frozenset(model.part(part).material for part in pass_.parts)


def _palette(laid: ReplayedPlan, placed: Placement, pass_: Pass, name: str) -> Load | None:
    """Return what a pass takes of a colour that is put out and not sprayed."""
    if placed.logged or pass_.step.tool in SPRAYED:
        return None
    return fill(laid.book, name, (pass_,), span=(placed.start, placed.end))


def _families(laid: ReplayedPlan, pass_: Pass) -> Iterator[Family]:
    """Yield the families in the cup, and for wiping those of the films wiped."""
    for _, name in pass_.films:
        mix = laid.book.mix(name)
        for portion in mix.portions if mix else ():
            yield laid.book.coating(portion.coating).family
        yield laid.book.coating(name).family
    if pass_.step.stage is Stage.WIPE:
        for place in pass_.places:
            spot = laid.table.top.get((pass_.key.project, pass_.key.model, place))
            if spot is not None:
                yield laid.table.film(*spot).coating.family


def _bench(laid: ReplayedPlan, interval: Interval) -> Iterator[BenchRow]:
    for work in laid.plan.bench:
        if work.interval.overlaps(interval):
            yield _bench_row(laid, work)


def _bench_row(laid: ReplayedPlan, work: BenchWork) -> BenchRow:
    return BenchRow(
        kind=work.kind,
        airbrush=work.airbrush,
        coating=work.coating,
        swatch=swatch_of(laid.book, work.coating) if work.coating else "",
        portions=_portions(laid.book, work.coating),
        serves=work.serves,
        start=work.interval.start,
        end=work.interval.end,
        load=_filled(laid, work),
    )


def _filled(laid: ReplayedPlan, work: BenchWork) -> Load | None:
    """Return what is filled in at a loading or change."""
    if work not in laid.served:
        return None
    sprayed = laid.served[work]
    return filled(
        laid.book,
        {placed.key: laid.of(placed.key) for placed in sprayed if placed.key in laid.placed},
        work,
        sprayed,
    )


def swatch_of(book: Book, name: str) -> str:
    """Return the colour of a coating or mix, as "#rrggbb"."""
    mix = book.mix(name)
    return (mix.swatch if mix else None) or book.coating(name).swatch


def _portions(book: Book, name: str) -> tuple[Portion, ...]:
    mix = book.mix(name)
    return mix.portions if mix else ()
