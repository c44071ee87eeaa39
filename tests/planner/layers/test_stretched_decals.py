"""Strong solvents on decals that softening fluid has stretched: common practice, no source."""

from __future__ import annotations

import pytest
from coat_books import book_of, coat, work

from planner.layers.findings import find
from planner.layers.overcoat_table import LayerVerdict
from planner.values.step import Role, Stage

RULE = "strong solvent on stretched decals"
BED = (
    coat(Stage.PRIME, "grey primer"),
    coat(Stage.BASE, "acrylic"),
    coat(Stage.VARNISH, "gloss clear", name="bed", role=Role.DECAL_BED),
)
DECALS = coat(Stage.DECAL, "decal sheet", name="decals")
PRESS = work(Stage.PRESS, name="press")


def found(*steps):
    return [one for one in find(book_of(*BED, *steps)) if one.rule == RULE]


@pytest.mark.parametrize(
    ("clear", "struck"),
    [("gloss lacquer", True), ("two-pack clear", True), ("gloss clear", False)],
)
def test_softened_decals_want_water_over_them_first(clear, struck):
    seal = coat(Stage.VARNISH, clear, name="seal", role=Role.SEAL)
    told = found(DECALS, PRESS, seal)
    assert bool(told) is struck
    for one in told:
        assert one.verdict is LayerVerdict.ADVICE
        assert one.mend is not None
        mended = one.mend.apply(book_of(*BED, DECALS, PRESS, seal))
        assert [each for each in find(mended) if each.rule == RULE] == []


def test_decals_that_were_not_softened_and_those_under_a_clear_are_let_be():
    lacquer = coat(Stage.VARNISH, "gloss lacquer", name="last", role=Role.FINAL)
    seal = coat(Stage.VARNISH, "gloss clear", name="seal", role=Role.SEAL)
    assert found(DECALS, lacquer) == []
    assert found(DECALS, PRESS, seal, lacquer) == []
