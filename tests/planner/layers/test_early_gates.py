"""Gates that a person wrote against the state of a film: common practice, no source."""

from __future__ import annotations

from dataclasses import replace

import pytest
from coat_books import book_of, coat, work

from planner.layers.findings import find
from planner.layers.overcoat_table import LayerVerdict
from planner.values.coating import Mark, Window
from planner.values.step import Bound, Gate, Stage

RULE = "written gate against the film"


def gate(after, opens=None, closes=None, closing=Bound.START):
    window = Window(
        opens=None if opens is None else Mark(minutes=opens),
        closes=None if closes is None else Mark(minutes=closes),
    )
    return Gate(after=after, windows=(window,), closing=closing)


def work_on(stage, name, *gates):
    return replace(work(stage, name=name), gates=gates)


def told(*steps):
    return [one for one in find(book_of(*steps)) if one.rule == RULE]


@pytest.mark.parametrize(
    ("below", "stage", "laid", "minutes", "wrong"),
    [
        # enamel to the next coat: 6 to 12 h where matte, 24 h usual
        ("enamel", Stage.CAMO, "acrylic", 10, True),
        ("enamel", Stage.CAMO, "acrylic", 1440, False),
        # tape on matte acrylic: at 2 h faint marks, usual 24 h
        ("acrylic", Stage.MASK, "", 10, True),
        ("acrylic", Stage.MASK, "", 1440, False),
        # thin acrylic on acrylic takes 10 to 20 min
        ("acrylic", Stage.CAMO, "acrylic", 10, False),
        ("acrylic", Stage.CAMO, "acrylic", 60, False),
        # gloss clear to an oil wash: the next evening
        ("gloss clear", Stage.OIL_WASH, "oil", 15, True),
        ("gloss clear", Stage.OIL_WASH, "oil", 1380, False),
    ],
)
def test_a_gate_of_minutes_where_the_film_needs_a_day(below, stage, laid, minutes, wrong):
    clear = below == "gloss clear"
    first = coat(Stage.VARNISH if clear else Stage.BASE, below, name="first")
    written = (gate("first", opens=minutes),)
    if laid:
        second = coat(stage, laid, name="second", gates=written)
    else:
        second = work_on(stage, "second", *written)
    found = told(coat(Stage.PRIME, "grey primer"), first, second)
    assert bool(found) is wrong
    for one in found:
        assert one.verdict is LayerVerdict.ADVICE
        assert one.mend is not None
        mended = one.mend.apply(book_of(coat(Stage.PRIME, "grey primer"), first, second))
        assert [each for each in find(mended) if each.rule == RULE] == []


def test_a_gate_that_closes_before_the_film_is_ready_leaves_no_moment():
    first = coat(Stage.BASE, "enamel", name="first")
    second = coat(Stage.CAMO, "acrylic", name="second", gates=(gate("first", 5, 60),))
    (one,) = told(coat(Stage.PRIME, "grey primer"), first, second)
    assert one.verdict is LayerVerdict.NEVER
    assert "no moment is left" in one.message


def test_what_works_on_a_soft_film_is_let_be():
    wash = coat(Stage.OIL_WASH, "oil", name="wash")
    wipe = work_on(Stage.WIPE, "wipe", gate("wash", 10, 30))
    gloss = coat(Stage.VARNISH, "gloss clear", name="gloss")
    assert told(coat(Stage.PRIME, "grey primer"), gloss, wash, wipe) == []
