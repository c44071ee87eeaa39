"""What is beside a run sheet as JSON data: looks, brakes, offers, the closing check."""

from __future__ import annotations

from typing import Any
from zoneinfo import ZoneInfo

from app.command_line.output import iso
from planner.evening.alternatives import Other
from planner.evening.run_sheet_notes import Beside
from planner.values.plan import PassKey


def beside_document(found: Beside, zone: ZoneInfo) -> dict[str, Any]:
    """Return what is beside a run sheet as JSON data."""
    return {
        "looks": [
            {
                **key_fields(one.key),
                "at": iso(one.at, zone),
                "for": one.what.value,
                "places": list(one.places),
                "done": one.logged,
            }
            for one in found.looks
        ],
        "last_coats": [
            {
                **key_fields(brake.key),
                "at": iso(brake.at, zone),
                "below": [
                    {
                        "coating": one.coating,
                        "step": one.step,
                        "places": list(one.places),
                        "state": one.state.value if one.state else None,
                        "dry_through": iso(one.hard, zone),
                    }
                    for one in brake.below
                ],
            }
            for brake in found.brakes
        ],
        "same_colour": [
            {
                "at": iso(one.row.start, zone),
                "coating": one.row.coating,
                "others": [
                    {
                        **key_fields(taker.key),
                        "places": list(taker.places),
                        "opens": iso(taker.opens, zone),
                        "waits_for": taker.waits_for,
                    }
                    for taker in one.takers
                ],
                "one_first": one.first.first.model if one.first else None,
            }
            for one in found.fillings
        ],
        "instead": [_other(one, zone) for one in found.others],
        "before_you_go": {
            "from": iso(found.tidy_from, zone),
            "checks": [
                {"check": one.kind.value, "of": one.of, "things": list(one.things)}
                for one in found.checks
            ],
        },
    }


def _other(one: Other, zone: ZoneInfo) -> dict[str, Any]:
    return {
        **key_fields(one.key),
        "start": iso(one.start, zone),
        "end": iso(one.end, zone),
        "parts": list(one.parts),
    }


def key_fields(key: PassKey) -> dict[str, Any]:
    """Return a pass by its names."""
    return {"project": key.project, "model": key.model, "step": key.step, "coat": key.coat}
