"""Amounts and shopping in words and as data, for the command line and for files."""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator
from typing import Any
from zoneinfo import ZoneInfo

from app.service import wording
from planner.quantity import (
    ConsumableLine,
    Enough,
    Kept,
    Load,
    MixMeasure,
    RunsOut,
    Shopping,
    ShoppingLine,
    Stirring,
)
from planner.values.book import Book
from planner.values.message import message, row
from planner.values.moment import moment_of, zone_named

ORDINALS = (
    *("first", "second", "third", "fourth", "fifth", "sixth"),
    *("seventh", "eighth", "ninth", "tenth", "eleventh", "twelfth"),
)
REPLACE = (
    "less than half a bottle is left: have the next one before you begin, for bottles differ "
    "(common practice, no source)"
)


def millilitres(amount: float) -> str:
    """Return an amount, rounded up to a tenth: "2.5 ml"."""
    return message("{ml:.1f} ml", ml=math.ceil(amount * 10 - 1e-6) / 10)


def measures_text(measures: Iterable[MixMeasure]) -> str:
    """Return "51 drops sand, 77 drops thinner"."""
    return row(
        message("1 drop {coating}", coating=measure.coating)
        if measure.drops == 1
        else message("{n} drops {coating}", n=measure.drops, coating=measure.coating)
        for measure in measures
    )


def load_text(load: Load) -> str:
    """Return "mix 6.4 ml: 51 drops sand, 77 drops thinner", with a word where it falls short."""
    if not load.ml:
        return message("how much is not known, for its places have no area")
    amount: str = millilitres(load.ml)
    if not load.complete:
        amount = message("at least {amount}", amount=amount)
    parts = measures_text(load.measures)
    if load.mixed:
        text = message("mix {amount}: {parts}", amount=amount, parts=parts)
    elif load.airbrush:
        text = message("fill in {amount}: {parts}", amount=amount, parts=parts)
    else:
        text = message("put out {amount}: {parts}", amount=amount, parts=parts)
    if load.fills > 1:
        text = message(
            "{amount}, in {n} fills of {each}: {parts} each",
            amount=amount,
            n=load.fills,
            each=millilitres(load.each_ml),
            parts=parts,
        )
    if load.least_fill:
        text = message("{load} (least that the cup must hold)", load=text)
    if not load.complete:
        text = message("{load}; a place without an area takes more", load=text)
    if not load.suffices:
        text = message(
            "{load}; can be used for {life} min, but is needed for {needed}: mix less, twice",
            load=text,
            life=load.life_minutes,
            needed=load.end - load.start,
        )
    return text


def runs_out_text(runs_out: RunsOut, zone: ZoneInfo) -> str:
    """Return "runs out on Thursday 6 March, at the second of 3 models (tender 2/base)"."""
    name = wording.pass_name(runs_out.key)
    if runs_out.models > 1:
        where = f"at the {_ordinal(runs_out.model_number)} of {runs_out.models} models ({name})"
    else:
        where = f"at {name}"
    if runs_out.at is None:
        return f"runs out {where}, which has no place in the plan yet"
    local = moment_of(runs_out.at, zone)
    return f"runs out on {local:%A} {local.day} {local:%B}, {where}"


def shopping_text(found: Shopping, book: Book) -> str:
    """Return all of it as text for a terminal or a slip of paper."""
    zone = zone_named(book.bench_time.zone)
    if not (found.lines or found.at_hand or found.consumables):
        return "Nothing is needed: no active project has a coat left to lay."
    lines = [*_coatings(found.lines, zone), *_consumables(found.consumables, zone)]
    if found.at_hand:
        lines += ["", "have at hand: " + ", ".join(found.at_hand)]
    lines += _section("enough for all?", (_enough(colour) for colour in found.colours))
    lines += _section(
        "stir once for all of these:", (_stirring(stirring, zone) for stirring in found.stirrings)
    )
    lines += _section(
        "leftovers for touch-ups:", (_kept(leftover, zone) for leftover in found.leftovers)
    )
    lines += _section(
        "not reckoned with:",
        (f"{no_area.model}, {no_area.place}: {no_area.mend}" for no_area in found.no_area),
    )
    lines += ["", f"Estimates; bottles cover a spare margin of {book.supplies.margin_pct:g} %."]
    return "\n".join(lines)


def _coatings(every: tuple[ShoppingLine, ...], zone: ZoneInfo) -> Iterator[str]:
    width = max((len(line.coating.name) for line in every), default=0)
    width = max(width, len("coating"))
    if every:
        yield f"{'coating':<{width}}  {'takes':>12}  {'in stock':>9}  buy"
    for line in sorted(every, key=lambda line: (-line.bottles, -line.buy_ml, line.coating.name)):
        takes = f"{'' if line.complete else 'over '}{millilitres(line.needed_ml)}"
        stock = f"{math.floor(line.stock_ml * 10 + 1e-6) / 10:.1f} ml"
        yield f"{line.coating.name:<{width}}  {takes:>12}  {stock:>9}  {_buy(line)}"
        for word in _words(line, zone):
            yield f"  {word}"


def _buy(line: ShoppingLine) -> str:
    if line.bottles:
        return f"{wording.count(line.bottles, 'bottle')} of {line.coating.bottle_ml:g} ml"
    return "enough" if line.complete else "?"


def _words(line: ShoppingLine, zone: ZoneInfo) -> Iterator[str]:
    if line.runs_out and line.stock_ml > 0:
        yield runs_out_text(line.runs_out, zone)
    elif line.runs_out and line.runs_out.at is not None:
        local = moment_of(line.runs_out.at, zone)
        first = wording.pass_name(line.runs_out.key)
        yield f"none is there; wanted from {local:%A} {local.day} {local:%B} on, for {first}"
    if line.replace:
        yield REPLACE
    if line.old:
        yield f"{line.old} (common practice, no source)"


def _consumables(every: tuple[ConsumableLine, ...], zone: ZoneInfo) -> list[str]:
    lines = []
    for consumable_line in every:
        buy = (
            f"buy {consumable_line.buy:.4g} {consumable_line.unit}"
            if consumable_line.buy > 0
            else "enough"
        )
        lines.append(
            f"{consumable_line.name}: takes {consumable_line.needed:.4g} {consumable_line.unit}, "
            f"in stock {consumable_line.stock:.4g} {consumable_line.unit}, {buy}"
        )
        if consumable_line.runs_out:
            lines.append(f"  {runs_out_text(consumable_line.runs_out, zone)}")
    return _section("used up with the work:", lines)


def _enough(enough: Enough) -> str:
    count = len(enough.takers)
    if enough.enough:
        return f"{enough.colour}: yes, for all {count} models"
    if not enough.short:
        return f"{enough.colour}: not known, for some places have no area"
    lacking = ", ".join(
        f"{millilitres(short.lacks_ml)} of {short.coating}" for short in enough.short
    )
    return f"{enough.colour}: no, for {enough.covered} of {count} models; lacking {lacking}"


def _stirring(stirring: Stirring, zone: ZoneInfo) -> str:
    models = len({(key.project, key.model) for key in stirring.passes})
    return (
        f"{stirring.colour}, {wording.moment(stirring.start, zone)}: "
        f"{millilitres(stirring.ml)} for "
        f"{wording.count(stirring.fillings, 'filling')} on {wording.count(models, 'model')}: "
        f"{measures_text(stirring.measures)}{_life(stirring, zone)}"
    )


def _life(stirring: Stirring, zone: ZoneInfo) -> str:
    if stirring.keeps_until is None:
        return ""
    return f"; keep it covered, it can be used until {wording.moment(stirring.keeps_until, zone)}"


def _kept(kept: Kept, zone: ZoneInfo) -> str:
    amount = f"{kept.leftover.name}, {kept.leftover.ml:.3g} ml"
    if not kept.usable:
        return f"{amount}: no longer keeps; throw it away as its label says"
    what = f", {kept.colour}" if kept.colour and kept.colour != kept.leftover.name else ""
    models = ", ".join(name.partition("/")[2] for name in kept.models)
    where = f" for {models}" if models else ""
    return f"{amount}{what}: until {wording.moment(kept.until, zone)}{where}"


def _section(title: str, lines: Iterable[str]) -> list[str]:
    body = [f"  {line}" for line in lines]
    return ["", title, *body] if body else []


def _ordinal(number: int) -> str:
    if number <= len(ORDINALS):
        return ORDINALS[number - 1]
    ending = (
        "th" if number % 100 in (11, 12, 13) else {1: "st", 2: "nd", 3: "rd"}.get(number % 10, "th")
    )
    return f"{number}{ending}"


def shopping_document(found: Shopping, zone: ZoneInfo) -> dict[str, Any]:
    """Return all of it as JSON data, times in ISO 8601 with their offset."""
    return {
        "coatings": [_line_data(line, zone) for line in found.lines],
        "consumables": [
            {
                "name": consumable.name,
                "unit": consumable.unit,
                "needed": consumable.needed,
                "in_stock": consumable.stock,
                "buy": consumable.buy,
                "runs_out": _runs_out_data(consumable.runs_out, zone),
            }
            for consumable in found.consumables
        ],
        "at_hand": list(found.at_hand),
        "enough_for_all": [_enough_data(colour, zone) for colour in found.colours],
        "stir_once": [
            {
                "colour": stirring.colour,
                "start": moment_of(stirring.start, zone).isoformat(),
                "end": moment_of(stirring.end, zone).isoformat(),
                "fillings": stirring.fillings,
                "ml": stirring.ml,
                "measures": _measures_data(stirring.measures),
                "keeps_until": None
                if stirring.keeps_until is None
                else moment_of(stirring.keeps_until, zone).isoformat(),
            }
            for stirring in found.stirrings
        ],
        "leftovers": [
            {
                "name": leftover.leftover.name,
                "ml": leftover.leftover.ml,
                "until": moment_of(leftover.until, zone).isoformat(),
                "usable": leftover.usable,
                "colour": leftover.colour,
                "models": list(leftover.models),
            }
            for leftover in found.leftovers
        ],
        "no_area": [
            {
                "project": no_area.project,
                "model": no_area.model,
                "place": no_area.place,
                "mend": no_area.mend,
            }
            for no_area in found.no_area
        ],
    }


def load_document(load: Load) -> dict[str, Any]:
    """Return what goes into an airbrush or onto a palette as JSON data."""
    return {
        "ml": load.ml,
        "fills": load.fills,
        "laid_ml": load.laid_ml,
        "lost_ml": load.lost_ml,
        "least_fill": load.least_fill,
        "complete": load.complete,
        "life_minutes": load.life_minutes,
        "life_suffices": load.suffices,
        "measures": _measures_data(load.measures),
    }


def _measures_data(measures: Iterable[MixMeasure]) -> list[dict[str, Any]]:
    return [
        {
            "coating": measure.coating,
            "parts": measure.parts,
            "ml": measure.ml,
            "drops": measure.drops,
        }
        for measure in measures
    ]


def _line_data(line: ShoppingLine, zone: ZoneInfo) -> dict[str, Any]:
    return {
        "coating": line.coating.name,
        "needed_ml": line.needed_ml,
        "in_stock_ml": line.stock_ml,
        "buy_ml": line.buy_ml,
        "bottle_ml": line.coating.bottle_ml,
        "margin_pct": line.margin_pct,
        "bottles": line.bottles,
        "complete": line.complete,
        "runs_out": _runs_out_data(line.runs_out, zone),
        "under_half_a_bottle": line.replace,
        "old": line.old,
    }


def _runs_out_data(runs_out: RunsOut | None, zone: ZoneInfo) -> dict[str, Any] | None:
    if runs_out is None:
        return None
    key = runs_out.key
    return {
        "at": None if runs_out.at is None else moment_of(runs_out.at, zone).isoformat(),
        "project": key.project,
        "model": key.model,
        "step": key.step,
        "coat": key.coat,
        "model_number": runs_out.model_number,
        "models": runs_out.models,
    }


def _enough_data(enough: Enough, zone: ZoneInfo) -> dict[str, Any]:
    return {
        "colour": enough.colour,
        "enough": enough.enough if enough.complete or enough.short else None,
        "covered": enough.covered,
        "models": [
            {
                "project": taker.project,
                "model": taker.model,
                "ml": taker.ml,
                "at": None if taker.at is None else moment_of(taker.at, zone).isoformat(),
            }
            for taker in enough.takers
        ],
        "lacking": [{"coating": short.coating, "ml": short.lacks_ml} for short in enough.short],
    }
