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


def _drops(count: int) -> str:
    return words.count(count, words.tr("{n} drop"), words.tr("{n} drops"))
