"""What is beside a run sheet as JSON data: looks, brakes, offers, the closing check."""

from __future__ import annotations

from typing import Any
from zoneinfo import ZoneInfo

from app.command_line.output import iso
from planner.evening.alternatives import Other
from planner.evening.gaps import FreeGap
from planner.evening.run_sheet_notes import Beside
from planner.values.plan import PassKey


def beside_document(found: Beside, zone: ZoneInfo) -> dict[str, Any]:
    """Return what is beside a run sheet as JSON data."""
    return {
        "looks": [
            {
                **key_fields(look.key),
                "at": iso(look.at, zone),
                "for": look.what.value,
                "places": list(look.places),
                "done": look.logged,
            }
            for look in found.looks
        ],
        "last_coats": [
            {
                **key_fields(brake.key),
                "at": iso(brake.at, zone),
                "below": [
                    {
                        "coating": top_film.coating,
                        "step": top_film.step,
                        "places": list(top_film.places),
                        "state": top_film.state.value if top_film.state else None,
                        "dry_through": iso(top_film.hard, zone),
                    }
                    for top_film in brake.below
                ],
            }
            for brake in found.brakes
        ],
        "same_colour": [
            {
                "at": iso(filling.row.start, zone),
                "coating": filling.row.coating,
                "others": [
                    {
                        **key_fields(taker.key),
                        "places": list(taker.places),
                        "opens": iso(taker.opens, zone),
                        "waits_for": taker.waits_for,
                    }
                    for taker in filling.takers
                ],
                "one_first": filling.first.first.model if filling.first else None,
                "filled_again": filling.again or None,
            }
            for filling in found.fillings
        ],
        "instead": [_other(other, zone) for other in found.others],
        "before_you_go": {
            "from": iso(found.tidy_from, zone),
            "checks": [
                {"check": check.kind.value, "of": check.of, "things": list(check.things)}
                for check in found.checks
            ],
        },
    }


def _other(other: Other, zone: ZoneInfo) -> dict[str, Any]:
    return {
        **key_fields(other.key),
        "start": iso(other.start, zone),
        "end": iso(other.end, zone),
        "parts": list(other.parts),
    }


def key_fields(key: PassKey) -> dict[str, Any]:
    """Return a pass by its names."""
    return {"project": key.project, "model": key.model, "step": key.step, "coat": key.coat}


def gap_document(gap: FreeGap, zone: ZoneInfo) -> dict[str, Any]:
    """Return a gap and what it is good for as JSON data."""
    return {
        "start": iso(gap.start, zone),
        "end": iso(gap.end, zone),
        "evening": gap.on.isoformat(),
        "offers": [
            {
                "use": offer.use.value,
                **key_fields(offer.key),
                "minutes": offer.minutes,
                "planned": iso(offer.planned, zone),
                "price": offer.price,
            }
            for offer in gap.offers
        ],
    }
