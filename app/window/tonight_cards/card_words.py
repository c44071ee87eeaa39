"""What stands at the head of a card, in the words of the window."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from app.window import words
from app.window.colour_names import plain_colour
from app.window.fill_amounts import amount_words, measure_words
from app.window.message_translation import title
from planner.quantity import Load
from planner.tonight import LoadCard, WorkRow
from planner.values.mix import Portion
from planner.values.plan import BenchKind


def heading(card: LoadCard) -> str:
    """Return the colour with its amount, or what is done by hand."""
    told = amount(card)
    if not told:
        return name(card)
    return words.tr("{coating}: {amount}").format(coating=name(card), amount=told)


def name(card: LoadCard) -> str:
    """Return the colour; where no amount tells that it is laid, what is done with it, too."""
    stage = words.capital(words.stage_word(card.stage))
    colour = words.listed([plain_colour(each) for each in card.coatings])
    if not colour:
        return stage
    if amount(card):
        return colour
    return words.tr("{stage}: {coating}").format(stage=stage, coating=colour)


def about(card: LoadCard) -> str:
    """Return the rest: stage, tool, mix, and how long its set-up takes."""
    load = _load(card)
    told = measure_words(load) if load is not None else []
    told += [words.stage_word(card.stage), card.airbrush or words.tool_word(card.tool)]
    mixed = portions_words(card.rows[0].coats[0].portions) if card.rows[0].coats else ""
    if mixed and (load is None or not load.ml):
        told.append(mixed)
    for kinds, form in (
        ((BenchKind.PREPARE,), words.tr("prepare {minutes} min")),
        ((BenchKind.LOAD,), words.tr("load {minutes} min")),
        ((BenchKind.CHANGE,), words.tr("change {minutes} min")),
        ((BenchKind.CLEAN,), words.tr("clean {minutes} min")),
    ):
        minutes = sum(row.minutes for row in card.around if row.kind in kinds)
        if minutes:
            told.append(form.format(minutes=minutes))
    return words.capital(" · ".join(told))


def _load(card: LoadCard) -> Load | None:
    """Return the one amount of it, None where there is none or each row has its own."""
    if card.filling is not None:
        return card.filling.load
    return card.put_out[0] if len(card.put_out) == 1 else None


def amount(card: LoadCard) -> str:
    """Return how much is filled in, or put out for all of it."""
    load = _load(card)
    if load is not None:
        return amount_words(load)
    total = sum(load.ml for load in card.put_out)
    if not total:
        return ""
    return words.fill(words.tr("{ml:.1f} ml in all"), ml=total)


def work_of(rows: Sequence[WorkRow]) -> str:
    """Return what is done in rows, by the title of the first."""
    row = rows[0]
    return title(row.title) or words.capital(words.stage_word(row.stage))


def titles_of(rows: Iterable[WorkRow]) -> str:
    """Return what the steps of rows are called, where that says more than their stage."""
    told = dict.fromkeys(
        title(row.title) for row in rows if row.title and not words.says_stage(row.title, row.stage)
    )
    return " · ".join(told)


def portions_words(portions: tuple[Portion, ...]) -> str:
    """Return how a mix is stirred."""
    return " + ".join(
        f"{words.decimal(f'{portion.parts:g}')} {portion.coating}" for portion in portions
    )
