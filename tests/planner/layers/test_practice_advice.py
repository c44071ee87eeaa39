"""Powder on gloss, and water that cannot reach chipping fluid: common practice, no source."""

from __future__ import annotations

from collections.abc import Iterable

import pytest
from coat_books import book_of, coat, steps_of, work

from planner.layers.findings import Finding, LayerVerdict, find
from planner.values.step import Role, Stage, Step

PRIME = coat(Stage.PRIME, "grey primer", name="prime")
GLOSS = coat(Stage.VARNISH, "gloss clear", name="gloss", role=Role.SEAL)
POWDER = coat(Stage.PIGMENT, "powder", name="dust")


def _found(steps: Iterable[Step], rule: str) -> list[Finding]:
    return [one for one in find(book_of(*steps)) if one.rule == rule]


@pytest.mark.parametrize(
    ("below", "flagged"),
    [
        ((GLOSS,), True),
        ((coat(Stage.BASE, "gloss enamel", name="body"),), True),
        # a wash is too thin to change the sheen that powder meets
        ((GLOSS, coat(Stage.OIL_WASH, "oil", name="wash")), True),
        ((GLOSS, coat(Stage.MATTE, "matte clear", name="matte")), False),
        ((coat(Stage.BASE, "acrylic", name="body"),), False),
        ((), False),
    ],
)
def test_powder_finds_no_hold_on_gloss(below: tuple[Step, ...], flagged: bool) -> None:
    found = _found((PRIME, *below, POWDER), "pigment on gloss")
    assert bool(found) is flagged
    for one in found:
        assert one.verdict is LayerVerdict.ADVICE


def test_graphite_and_fixer_are_no_powder_that_needs_tooth() -> None:
    assert not _found((PRIME, GLOSS, coat(Stage.DETAIL, "pencil", name="rub")), "pigment on gloss")


def test_the_mend_lays_a_matte_clear_below_the_powder() -> None:
    book = book_of(PRIME, GLOSS, POWDER)
    (one,) = find(book)
    assert one.mend is not None
    mended = one.mend.apply(book)
    assert [step.stage for step in steps_of(mended)][-2:] == [Stage.VARNISH, Stage.PIGMENT]
    assert find(mended) == ()


def _chipped(over: str) -> tuple[Step, ...]:
    return (
        PRIME,
        coat(Stage.BASE, "acrylic", name="rust"),
        coat(Stage.CHIP_FLUID, "fluid", name="fluid"),
        coat(Stage.CAMO, over, name="green"),
        work(Stage.CHIP_RUB, name="rub"),
    )


@pytest.mark.parametrize(
    ("over", "flagged"), [("lacquer", True), ("enamel", True), ("acrylic", False), ("ink", False)]
)
def test_water_does_not_lift_solvent_paint(over: str, flagged: bool) -> None:
    found = _found(_chipped(over), "chip rub through solvent paint")
    assert [one.verdict for one in found] == [LayerVerdict.ADVICE] * flagged


def test_the_mend_takes_the_same_colour_in_water() -> None:
    book = book_of(*_chipped("enamel"))
    (one,) = [one for one in find(book) if one.rule == "chip rub through solvent paint"]
    assert one.mend is not None
    assert find(one.mend.apply(book)) == ()


def test_a_clear_coat_over_the_fluid_is_told_alone() -> None:
    *steps, rub = _chipped("lacquer")
    rules = {one.rule for one in find(book_of(*steps, GLOSS, rub))}
    assert "chip rub through a clear coat" in rules
    assert "chip rub through solvent paint" not in rules
