"""The published rules and the matrix of layer pairs, each cell run through `find`.

Cells marked "common practice, no source" come from the trade; the rules
with a source stand in `test_published_rules.py`.
"""

from __future__ import annotations

import pytest
from coat_books import book_of, coat, steps_of

from planner.layers.findings import LayerVerdict, find
from planner.layers.overcoat_table import TABLE, Below, Next
from planner.values.coating import Mark, Window
from planner.values.step import Gate, Role, Stage, Step

NEXT: dict[str, Step] = {
    "water-borne acrylic": coat(Stage.DETAIL, "acrylic", name="next"),
    "acrylic lacquer": coat(Stage.CAMO, "lacquer", name="next"),
    "enamel": coat(Stage.DETAIL, "enamel", name="next"),
    "white-spirit wash": coat(Stage.OIL_WASH, "oil", name="next"),
    "two-pack clear": coat(Stage.VARNISH, "two-pack clear", name="next"),
    "chipping layer": coat(Stage.CHIP_FLUID, "fluid", name="next"),
    "decal": coat(Stage.DECAL, "decal sheet", name="next"),
}
MATTE_OF = {"acrylic": "matte clear", "lacquer": "matte lacquer", "gloss enamel": "enamel"}

OK, W, B, X, SCUFF = "fine", "wait", "barrier", "avoid", "scuff"
MEANS = {
    OK: {None},
    W: {None, LayerVerdict.ADVICE},
    B: {LayerVerdict.BARRIER},
    X: {LayerVerdict.NEVER},
    SCUFF: {LayerVerdict.PREPARE},
}

# Layer pairs at through-dry and normal thickness.  Common practice, no source,
# but for: water-borne over smooth enamel, UFC 3-190-06 par. 2.4.4; strong
# solvent over fresh enamel, par. 2.4.2.  Two-pack over lacquer is "wait" in
# practice and "avoid" here: TB 43-0242 (1991) par. 5-2 says that it blisters.
MATRIX = {
    "bare": (W, W, W, X, W, X, X, X),
    "acrylic": (OK, W, OK, B, W, OK, B, OK),
    "gloss lacquer": (OK, OK, OK, W, X, OK, OK, OK),
    "fresh gloss enamel": (SCUFF, X, W, X, X, B, B, W),
    "aged gloss enamel": (SCUFF, W, OK, W, W, B, OK, OK),
    "oil wash": (W, X, W, W, X, X, X, W),
    "cured two-pack": (SCUFF, SCUFF, SCUFF, OK, W, OK, OK, SCUFF),
}
BELOW: dict[str, Step | None] = {
    "bare": None,
    "acrylic": coat(Stage.BASE, "acrylic", name="below"),
    "gloss lacquer": coat(Stage.BASE, "gloss lacquer", name="below"),
    "fresh gloss enamel": coat(Stage.BASE, "gloss enamel", name="below"),
    "aged gloss enamel": coat(Stage.BASE, "gloss enamel", name="below"),
    "oil wash": coat(Stage.OIL_WASH, "oil", name="below"),
    "cured two-pack": coat(Stage.BASE, "two-pack clear", name="below"),
}
FORTNIGHT = Gate(after="below", windows=(Window(opens=Mark(minutes=14 * 1440)),))
CELLS = [
    (below, next_, cell)
    for below, row in MATRIX.items()
    for next_, cell in zip((*NEXT, "matte clear"), row, strict=True)
]


def _verdict(below: str, next_: str) -> LayerVerdict | None:
    under = BELOW[below]
    coating = under.applications[0].coating if under else "acrylic"
    over = NEXT.get(next_) or coat(
        Stage.MATTE, MATTE_OF.get(coating, "matte clear"), name="next", role=Role.FINAL
    )
    if below == "aged gloss enamel":
        application = over.applications[0]
        over = coat(
            over.stage, application.coating, name="next", role=over.role, gates=(FORTNIGHT,)
        )
    book = book_of(*([under] if under else []), over)
    ours = [
        one
        for one in find(book)
        if one.step == "next" and " over " in one.rule and one.rule != "pale over dark"
    ]
    return max((one.verdict for one in ours), key=lambda one: one.rank, default=None)


@pytest.mark.parametrize(("below", "next_", "cell"), CELLS)
def test_a_cell_of_the_matrix(below: str, next_: str, cell: str) -> None:
    assert _verdict(below, next_) in MEANS[cell]


def test_every_pair_has_one_line() -> None:
    pairs = [(line.next, line.below) for line in TABLE]
    assert len(pairs) == len(set(pairs)) == len(Next) * len(Below)


def test_every_line_can_be_read_by_a_painter() -> None:
    for line in TABLE:
        assert line.reason
        assert line.source
        assert (line.state is None) is (line.below is Below.BARE)


def test_a_matte_top_silvers_and_a_gloss_one_does_not() -> None:
    """Air below the film on a rough top: common practice, no source."""
    decal = coat(Stage.DECAL, "decal sheet", name="next")
    rough = book_of(coat(Stage.PRIME, "grey primer"), coat(Stage.BASE, "lacquer"), decal)
    smooth = book_of(coat(Stage.PRIME, "grey primer"), coat(Stage.BASE, "gloss lacquer"), decal)
    rules = {one.rule for one in find(rough)} - {one.rule for one in find(smooth)}
    assert rules == {"decals and their softening fluid over a lacquer coat"}
    assert len(steps_of(rough)) == len(steps_of(smooth))
