"""How much of each coating the work left takes, and what to buy."""

from __future__ import annotations

import argparse
import math
from typing import Any

from app.command_line.output import FINE, answer, document
from app.command_line.source import add_json, add_source, book_of
from planner.quantity import Shopping, amounts

EXAMPLES = """\
  tackfree shop                      your bench book against your stock
  tackfree shop harbour.json --json  a file, for another program
"""


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Say what the command takes."""
    add_source(parser)
    add_json(parser)


def run(args: argparse.Namespace) -> int:
    """Print amounts, stock and what is lacking."""
    found = amounts(book_of(args))
    if args.json:
        document(_document(found))
    else:
        answer(_text(found))
    return FINE


def _text(found: Shopping) -> str:
    if not (found.needs or found.at_hand):
        return "Nothing is needed: no active project has a coat left to lay."
    width = max((len(need.coating) for need in found.needs), default=0)
    lines = [f"{'coating':<{width}}  {'takes':>12}  {'in stock':>9}  {'buy':>9}"]
    for need in sorted(found.needs, key=lambda need: (-need.buy_ml, need.coating)):
        takes = f"{'' if need.complete else 'over '}{_ml(need.needed_ml)}"
        buy = _ml(need.buy_ml) if need.buy_ml > 0 else "enough" if need.complete else "?"
        stock = _ml(need.in_stock_ml)
        lines.append(f"{need.coating:<{width}}  {takes:>12}  {stock:>9}  {buy:>9}")
    if found.at_hand:
        lines += ["", "have at hand: " + ", ".join(found.at_hand)]
    if found.no_area:
        lines += ["", "not reckoned with:"]
        lines += [f"  {one.model}, {one.place}: {one.mend}" for one in found.no_area]
    lines += ["", "Estimates; what stays in cups and bottles is not counted."]
    return "\n".join(lines)


def _ml(amount: float) -> str:
    """Return an amount, rounded up to a tenth."""
    return f"{math.ceil(amount * 10 - 1e-9) / 10:.1f} ml"


def _document(found: Shopping) -> dict[str, Any]:
    return {
        "coatings": [
            {
                "coating": need.coating,
                "needed_ml": need.needed_ml,
                "in_stock_ml": need.in_stock_ml,
                "buy_ml": need.buy_ml,
                "complete": need.complete,
            }
            for need in found.needs
        ],
        "at_hand": list(found.at_hand),
        "no_area": [
            {"project": one.project, "model": one.model, "place": one.place, "mend": one.mend}
            for one in found.no_area
        ],
    }
