"""Edits of what is in the drawer: bottles, mixes, consumables, leftovers, sample cards."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace
from datetime import datetime
from typing import Protocol, TypeVar

from app.service.edits import Edit
from app.service.renaming import renamed, uses_of
from planner.quantity import consumables_now, stock_now
from planner.values.book import Book
from planner.values.coating import Coating
from planner.values.message import called, message
from planner.values.mix import Mix
from planner.values.refusal import Refused, number_in, unknown
from planner.values.supplies import Card, Consumable, Leftover, Supplies

MOST_BOTTLES = 1000


def count_bottle(book: Book, name: str, ml: float, at: datetime) -> Edit:
    """Note what is left of a coating [ml]; only what is used from ``at`` on comes off it."""
    old = book.coatings[_at(book.coatings, name, "coating", "coatings")]
    counted = replace(old, in_stock_ml=ml, counted=at)
    return Edit(
        called("count {name}: {ml:g} ml", name=name, ml=ml),
        _with_coating(book, name, counted),
        f"count/{name}",
    )


def buy_bottles(book: Book, name: str, bottles: int) -> Edit:
    """Put so many new bottles of a coating beside what is left of it."""
    number_in(bottles, 1, MOST_BOTTLES, "bottles")
    at = _at(book.coatings, name, "coating", "coatings")
    stock = stock_now(book)[at]
    old = book.coatings[at]
    # Whoever has used more than was counted had more: what was used is made up first.
    there = max(old.in_stock_ml, stock.used_ml)
    more = replace(old, in_stock_ml=there + bottles * old.bottle_ml)
    return Edit(
        called("buy 1 bottle of {name}", name=name)
        if bottles == 1
        else called("buy {bottles} bottles of {name}", bottles=bottles, name=name),
        _with_coating(book, name, more),
    )


def set_margin(book: Book, percent: float) -> Edit:
    """Set what is bought on top of what is needed [%]."""
    supplies = replace(book.supplies, margin_pct=percent)
    return Edit(
        called("spare margin {percent:g} %", percent=percent),
        replace(book, supplies=supplies),
        "margin",
    )


def put_coating(book: Book, was: str, coating: Coating) -> Edit:
    """Put a coating in place of the one called ``was``, or beside the others if "".

    A new name is carried to every mix, step, leftover and entry that names it.

    Raises
    ------
    Refused
        If there is none called ``was``, another has the new name, or a step
        that lays it would no longer be sound.
    """
    if not was:
        changed = replace(book, coatings=(*book.coatings, coating))
        return Edit(called("add {coating}", coating=coating.name), changed)
    at = _at(book.coatings, was, "coating", "coatings")
    _demand_free(book, was, coating.name, f"coatings[{at}].name")
    changed = renamed(book, was, coating.name, coatings=_put(book.coatings, at, coating))
    return Edit(called("coating {coating}", coating=coating.name), changed)


def remove_coating(book: Book, name: str) -> Edit:
    """Take a coating out of the book.

    Raises
    ------
    Refused
        If there is none of that name, or something names it: the path is
        that of the first.  What the logbook says of it stays; its drying
        cards go with it.
    """
    at = _at(book.coatings, name, "coating", "coatings")
    _demand_unused(book, name)
    changed = replace(_without_cards(book, name), coatings=_without(book.coatings, at))
    return Edit(called("remove {name}", name=name), changed)


def put_mix(book: Book, was: str, mix: Mix) -> Edit:
    """Put a mix in place of the one called ``was``, or beside the others if "".

    Raises
    ------
    Refused
        As for `put_coating`.
    """
    if not was:
        return Edit(called("add mix {mix}", mix=mix.name), replace(book, mixes=(*book.mixes, mix)))
    at = _at(book.mixes, was, "mix", "mixes")
    _demand_free(book, was, mix.name, f"mixes[{at}].name")
    changed = renamed(book, was, mix.name, mixes=_put(book.mixes, at, mix))
    return Edit(called("mix {mix}", mix=mix.name), changed)


def remove_mix(book: Book, name: str) -> Edit:
    """Take a mix out of the book; refused as in `remove_coating`."""
    at = _at(book.mixes, name, "mix", "mixes")
    _demand_unused(book, name)
    changed = replace(_without_cards(book, name), mixes=_without(book.mixes, at))
    return Edit(called("remove mix {name}", name=name), changed)


def _without_cards(book: Book, name: str) -> Book:
    if all(card.coating != name for card in book.drying_cards):
        return book
    kept = tuple(card for card in book.drying_cards if card.coating != name)
    return replace(book, drying_cards=kept)


def put_consumable(book: Book, was: str, consumable: Consumable) -> Edit:
    """Put a consumable in place of the one called ``was``, or beside the others if ""."""
    kept = _put_named(book.supplies.consumables, was, consumable, "consumable", "consumables")
    return _supplies(
        book, _put_word(was, consumable.name), lambda old: replace(old, consumables=kept)
    )


def remove_consumable(book: Book, name: str) -> Edit:
    """Take a consumable out of the book."""
    kept = _remove_named(book.supplies.consumables, name, "consumable", "consumables")
    return _supplies(
        book, called("remove {name}", name=name), lambda old: replace(old, consumables=kept)
    )


def count_consumable(book: Book, name: str, amount: float, at: datetime) -> Edit:
    """Note what is left of a consumable; only passes from ``at`` on come off it."""
    every = book.supplies.consumables
    number = _at(every, name, "consumable", "supplies.consumables")
    counted = replace(every[number], in_stock=amount, counted=at)
    kept = _put(every, number, counted)
    title = called("count {name}: {amount:g} {unit}", name=name, amount=amount, unit=counted.unit)
    return _supplies(book, title, lambda old: replace(old, consumables=kept), f"count/{name}")


def buy_consumable(book: Book, name: str, amount: float) -> Edit:
    """Put so much more of a consumable beside what is left, in its unit."""
    every = book.supplies.consumables
    number = _at(every, name, "consumable", "supplies.consumables")
    number_in(amount, 0.001, 1e6, "amount", every[number].unit)
    used = next(
        consumable.used
        for consumable in consumables_now(book)
        if consumable.consumable.name == name
    )
    there = max(every[number].in_stock, used)
    kept = _put(every, number, replace(every[number], in_stock=there + amount))
    title = called(
        "buy {amount:g} {unit} of {name}", amount=amount, unit=every[number].unit, name=name
    )
    return _supplies(book, title, lambda old: replace(old, consumables=kept))


def put_leftover(book: Book, was: str, leftover: Leftover) -> Edit:
    """Put a leftover in place of the one called ``was``, or beside the others if "".

    Raises
    ------
    Refused
        If it holds a coating that the book does not have.
    """
    _demand_coatings(book, [portion.coating for portion in leftover.portions], "portions")
    kept = _put_named(book.supplies.leftovers, was, leftover, "leftover", "leftovers")
    return _supplies(book, _put_word(was, leftover.name), lambda old: replace(old, leftovers=kept))


def remove_leftover(book: Book, name: str) -> Edit:
    """Throw a leftover away."""
    kept = _remove_named(book.supplies.leftovers, name, "leftover", "leftovers")
    return _supplies(
        book, called("throw away {name}", name=name), lambda old: replace(old, leftovers=kept)
    )


def put_card(book: Book, was: str, card: Card) -> Edit:
    """Put a sample card in place of the one called ``was``, or beside the others if "".

    Raises
    ------
    Refused
        If it names a coating that the book does not have.
    """
    _demand_coatings(book, [drop.coating for drop in card.drops], "drops")
    kept = _put_named(book.supplies.cards, was, card, "sample card", "cards")
    return _supplies(book, _put_word(was, card.name), lambda old: replace(old, cards=kept))


def remove_card(book: Book, name: str) -> Edit:
    """Take a sample card out of the book."""
    kept = _remove_named(book.supplies.cards, name, "sample card", "cards")
    return _supplies(book, called("remove {name}", name=name), lambda old: replace(old, cards=kept))


class _Named(Protocol):
    @property
    def name(self) -> str: ...


T = TypeVar("T", bound=_Named)


def _at(every: Sequence[_Named], name: str, kind: str, place: str) -> int:
    known = [other.name for other in every]
    if name not in known:
        raise Refused(place, unknown(kind, name, known))
    return known.index(name)


def _put(every: tuple[T, ...], at: int, other: T) -> tuple[T, ...]:
    return (*every[:at], other, *every[at + 1 :])


def _without(every: tuple[T, ...], at: int) -> tuple[T, ...]:
    return (*every[:at], *every[at + 1 :])


def _put_named(every: tuple[T, ...], was: str, other: T, kind: str, field: str) -> tuple[T, ...]:
    if not was:
        return (*every, other)
    return _put(every, _at(every, was, kind, f"supplies.{field}"), other)


def _remove_named(every: tuple[T, ...], name: str, kind: str, field: str) -> tuple[T, ...]:
    return _without(every, _at(every, name, kind, f"supplies.{field}"))


def _put_word(was: str, name: str) -> str:
    return name if was else called("add {name}", name=name)


def _with_coating(book: Book, name: str, coating: Coating) -> Book:
    at = _at(book.coatings, name, "coating", "coatings")
    return replace(book, coatings=_put(book.coatings, at, coating))


def _demand_free(book: Book, was: str, name: str, place: str) -> None:
    """Refuse a new name that another coating or mix bears, before anything is renamed."""
    names = [coating.name for coating in book.coatings] + [mix.name for mix in book.mixes]
    if name != was and name in names:
        raise Refused(place, message('"{name}" is taken; choose another name', name=name))


def _demand_unused(book: Book, name: str) -> None:
    uses = uses_of(book, name)
    if uses:
        if len(uses) == 1:
            raise Refused(
                uses[0], message('"{name}" is used here; replace it there first', name=name)
            )
        mend = message(
            '"{name}" is used here and in {n} more places; replace it there first',
            name=name,
            n=len(uses) - 1,
        )
        raise Refused(uses[0], mend)


def _demand_coatings(book: Book, names: Sequence[str], field: str) -> None:
    known = [coating.name for coating in book.coatings]
    for index, name in enumerate(names):
        if name not in known:
            raise Refused(f"{field}[{index}].coating", unknown("coating", name, known))


def _supplies(
    book: Book, name: str, change: Callable[[Supplies], Supplies], merge: str = ""
) -> Edit:
    return Edit(name, replace(book, supplies=change(book.supplies)), merge)
