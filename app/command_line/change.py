"""Change the order of some models by name, with all that belongs to the change."""

from __future__ import annotations

import argparse
from collections.abc import Sequence

from app.command_line.book_source import add_book
from app.command_line.output import FINE, NOT_SOUND, answer, note, progress
from app.service.books import open_book
from app.service.clock import current_minute
from app.service.edit_effects import EditEffect, effect_of
from app.service.order_changes import Change, Possible, change_orders, possible
from planner.values.book import Book
from planner.values.keys import ModelKey
from planner.values.model import NamedChange, PartsChange
from planner.values.moment import moment_of, zone_named
from planner.values.refusal import Refused, unknown

EXAMPLES = """\
  tackfree change                                what can be changed, and for which models
  tackfree change "chipping layers" --try        what it would do
  tackfree change "no decals" --model "Winch Truck Gannet"
  tackfree change "no decals" --out              take it out again
"""


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Say what the command takes."""
    parser.add_argument("change", nargs="?", metavar="CHANGE", help="without it, all are listed")
    add_models(parser)
    parser.add_argument("--out", action="store_true", help="take it out again")
    parser.add_argument("--try", dest="dry", action="store_true", help="tell, but change nothing")
    add_book(parser)


def add_models(parser: argparse.ArgumentParser) -> None:
    """Let a command name models."""
    parser.add_argument(
        "--model",
        action="append",
        metavar="MODEL",
        help="a model, or project/model; without it, every model that it fits",
    )


def run(args: argparse.Namespace) -> int:
    """Change them, or tell what can be changed."""
    now = current_minute()
    with open_book(getattr(args, "book", None)) as bench:
        book = bench.book()
        keys = chosen_models(book, args.model)
        found = possible(book, keys)
        if args.change is None:
            answer("\n".join(_listed(found)) or "Nothing: no model has an order yet.")
            return FINE
        change = _named(args.change)
        fitting = next((one for one in found if (one.change, one.out) == (change, args.out)), None)
        models = keys if args.model or fitting is None else fitting.models
        edit = change_orders(book, models, change, out=args.out)
        with progress("planning"):
            effect = effect_of(book, edit.book, now)
        if not args.dry:
            bench.apply(edit.name, edit.book, edit.merge, edit.verb)
    answer("\n".join([edit.name, *effect_lines(book, effect)]))
    for finding in effect.fresh:
        note(f"{finding.verdict}: {finding.message}")
    return NOT_SOUND if effect.fresh else FINE


def chosen_models(book: Book, names: Sequence[str] | None) -> tuple[ModelKey, ...]:
    """Return the models that were named, or all of active projects.

    Raises
    ------
    Refused
        If one is not there, or two are called so.
    """
    every = [ModelKey(p.name, m.name) for p in book.projects if p.active for m in p.models]
    if names is None:
        return tuple(every)
    found = []
    for name in names:
        meant = [key for key in every if name in (key.model, f"{key.project}/{key.model}")]
        if not meant:
            raise Refused("--model", unknown("model", name, [key.model for key in every]))
        if len(meant) > 1:
            several = ", ".join(f"{key.project}/{key.model}" for key in meant)
            raise Refused("--model", f'"{name}" may be {several}; say which')
        found.append(meant[0])
    return tuple(dict.fromkeys(found))


def effect_lines(book: Book, effect: EditEffect) -> list[str]:
    """Return what an edit does to the end of the work, told for a person."""
    zone = zone_named(book.bench_time.zone)

    def when(minute: int | None) -> str:
        return (
            "not all of it has a place"
            if minute is None
            else f"{moment_of(minute, zone):%Y-%m-%d %H:%M}"
        )

    lines = [f"all done: {when(effect.after)} (before: {when(effect.before)})"]
    if effect.mended:
        lines.append(f"findings mended: {effect.mended}")
    return lines


def _listed(found: Sequence[Possible]) -> list[str]:
    return [
        f"{one.change}{' (taken out)' if one.out else ''}: "
        + ", ".join(key.model for key in one.models)
        for one in found
    ]


def _named(text: str) -> Change:
    known: dict[str, Change] = {one.value: one for one in (*NamedChange, *PartsChange)}
    if text not in known:
        raise Refused("CHANGE", unknown("change", text, known))
    return known[text]
