"""The verdict on spraying in the words of the window: the same wherever it stands."""

from __future__ import annotations

from app.service.spray_verdict import SprayVerdict
from app.window import words
from app.window.message_translation import translated
from planner.air import Fitness


def spray_words(verdict: SprayVerdict) -> str:
    """Return whether it is safe to spray, or why not."""
    if verdict.fitness is Fitness.GO:
        if verdict.margin_k is None:
            return words.tr("Safe to spray: bone-dry air has no dew point")
        return words.fill(
            words.tr("Safe to spray: {margin:.1f} °C above the dew point"),
            margin=verdict.margin_k,
        )
    reason = translated(verdict.reason)
    if verdict.fitness is Fitness.CARE:
        return words.tr("Spray {coating} with care: {reason}").format(
            coating=verdict.coating, reason=reason
        )
    if verdict.others:
        return words.tr("Do not spray {coating} now: {reason}").format(
            coating=verdict.coating, reason=reason
        )
    return words.tr("Do not spray now: {reason}").format(reason=reason)
