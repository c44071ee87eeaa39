"""How much to fill in, put out or mix, in the window's words."""

from __future__ import annotations

from app.window import words
from planner.quantity import Load


def fill_words(load: Load) -> str:
    """Return "mix 6.4 ml: 51 drops sand, 77 drops thinner", and where that falls short.

    Of a coating from the bottle only the amount is said, for its name stands
    beside it.
    """
    if not load.ml:
        return words.tr("how much is not known, for its places have no area")
    if load.mixed:
        told = words.tr("mix {ml:.1f} ml: {drops}")
        drops = ", ".join(
            words.tr("{drops} {coating}").format(
                drops=_drops(measure.drops), coating=measure.coating
            )
            for measure in load.measures
        )
    else:
        told = words.tr("fill in {ml:.1f} ml, {drops}")
        if not load.airbrush:
            told = words.tr("put out {ml:.1f} ml, {drops}")
        drops = _drops(load.measures[0].drops)
    if load.fills > 1:
        told = words.tr("{ml:.1f} ml in {n} fills of {each:.1f} ml, each {drops}")
    told = words.fill(told, ml=load.ml, n=load.fills, each=load.each_ml, drops=drops)
    if load.least_fill:
        told = words.tr("{told} (less does not spray)").format(told=told)
    if not load.complete:
        told = words.tr("{told}; more, for some places have no area").format(told=told)
    if not load.suffices:
        told = words.tr(
            "{told}; it keeps for {life}, and is needed for {span}: mix less, twice"
        ).format(
            told=told,
            life=words.span(load.life_minutes or 0),
            span=words.span(load.end - load.start),
        )
    return told


def amount_words(load: Load) -> str:
    """Return how much it is, "9.5 ml in 2 fills", for a heading; "" where nothing is known."""
    if not load.ml:
        return ""
    told = words.tr("{ml:.1f} ml") if load.complete else words.tr("over {ml:.1f} ml")
    if load.fills > 1:
        told = words.tr("{ml:.1f} ml in {n} fills")
    return words.fill(told, ml=load.ml, n=load.fills)


def measure_words(load: Load) -> list[str]:
    """Return what stands below such a heading: drops, and where the amount falls short."""
    if not load.ml:
        return [words.tr("amount not known: its places have no area")]
    drops = ", ".join(
        words.tr("{drops} {coating}").format(drops=_drops(each.drops), coating=each.coating)
        if load.mixed
        else _drops(each.drops)
        for each in load.measures
    )
    told = [drops]
    if load.fills > 1:
        each = words.tr("each fill {ml:.1f} ml, {drops}")
        told = [words.fill(each, ml=load.each_ml, drops=drops)]
    if load.least_fill:
        told.append(words.tr("less does not spray"))
    if not load.complete:
        told.append(words.tr("more, for some places have no area"))
    if not load.suffices:
        told.append(
            words.tr("keeps for {life}, needed for {span}: mix less, twice").format(
                life=words.span(load.life_minutes or 0), span=words.span(load.end - load.start)
            )
        )
    return told


def _drops(count: int) -> str:
    return words.count(count, words.tr("{n} drop"), words.tr("{n} drops"))
