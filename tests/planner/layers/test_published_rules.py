"""Published rules of what may lie on what, the source beside each."""

from __future__ import annotations

import pytest
from coat_books import book_of, coat

from planner.graph.gates import gates_of
from planner.layers.findings import Finding, LayerVerdict, find
from planner.layers.hiding_coats import lightness
from planner.layers.mixing import unmixable
from planner.values.book import Book
from planner.values.coating import Family, Mark, Preparation, State, Window
from planner.values.mix import Mix, Portion
from planner.values.step import Gate, Role, Stage

PRIME = coat(Stage.PRIME, "grey primer", name="prime")


def _rules(book: Book) -> dict[str, Finding]:
    return {one.rule: one for one in find(book)}


def test_urethane_over_lacquer_blisters() -> None:
    """US Army TB 43-0242 (1991) par. 5-2."""
    book = book_of(
        coat(Stage.PRIME, "lacquer", name="prime"), coat(Stage.VARNISH, "two-pack clear", name="c")
    )
    found = _rules(book)["a two-pack coat over a lacquer coat"]
    assert found.verdict is LayerVerdict.NEVER
    assert "TB 43-0242" in found.source


def test_urethane_over_lacquer_blisters_even_with_alkyd_between() -> None:
    """US Army TB 43-0242 (1991) par. 5-2; no barrier helps either."""
    for between in (
        coat(Stage.BASE, "enamel", name="between"),
        coat(Stage.VARNISH, "gloss clear", name="between", role=Role.BARRIER),
    ):
        book = book_of(
            coat(Stage.PRIME, "lacquer", name="prime"),
            between,
            coat(Stage.VARNISH, "two-pack clear", name="c"),
        )
        assert "a two-pack coat over a lacquer coat" in _rules(book)


def test_waterborne_over_smooth_alkyd_needs_a_scuff() -> None:
    """UFC 3-190-06 par. 2.4.4: scuff it, or lay a tie coat."""
    base = coat(Stage.BASE, "gloss enamel", name="base")
    rule = "a waterborne coat over enamel younger than two weeks"
    found = _rules(book_of(PRIME, base, coat(Stage.CAMO, "acrylic", name="camo")))[rule]
    assert found.verdict is LayerVerdict.PREPARE
    assert "2.4.4" in found.source
    for preparation in (Preparation.SCUFF, Preparation.TIE_COAT):
        window = Window(opens=Mark(minutes=1440), preparation=preparation, preparation_minutes=10)
        gate = Gate(after="base", windows=(window,))
        scuffed = coat(Stage.CAMO, "acrylic", name="camo", gates=(gate,))
        assert rule not in _rules(book_of(PRIME, base, scuffed))


def test_waterborne_over_matte_alkyd_needs_none() -> None:
    """UFC 3-190-06 par. 2.4.4 speaks of a smooth film."""
    base = coat(Stage.BASE, "enamel", name="base")
    assert not find(book_of(PRIME, base, coat(Stage.CAMO, "acrylic", name="camo")))


def test_strong_solvent_enters_the_undercoat() -> None:
    """UFC 3-190-06 par. 2.4.2: also through what is no barrier."""
    young = coat(Stage.BASE, "enamel", name="base")
    rule = "a lacquer coat over enamel younger than two weeks"
    lacquer = coat(Stage.CAMO, "lacquer", name="camo")
    thin = coat(Stage.HIGHLIGHT, "acrylic", name="thin")
    barrier = coat(Stage.VARNISH, "gloss clear", name="barrier", role=Role.BARRIER)
    assert rule in _rules(book_of(PRIME, young, lacquer))
    assert rule in _rules(book_of(PRIME, young, thin, lacquer))
    assert rule not in _rules(book_of(PRIME, young, barrier, lacquer))


@pytest.mark.parametrize("soft", [(Stage.BASE, "enamel"), (Stage.OIL_WASH, "oil")])
@pytest.mark.parametrize(
    ("clear", "state"),
    [
        ("gloss lacquer", State.DRY_THROUGH),
        ("two-pack clear", State.DRY_THROUGH),
        ("gloss clear", None),
    ],
)
def test_a_hard_coat_waits_for_what_is_soft_below_a_barrier(
    soft: tuple[Stage, str], clear: str, state: State | None
) -> None:
    """TM 43-0139 par. 5-20: too soft an undercoat, or one not thoroughly dry, splits the coat."""
    barrier = coat(Stage.VARNISH, "gloss clear", name="barrier", role=Role.BARRIER)
    steps = (coat(*soft, name="soft"), barrier, coat(Stage.VARNISH, clear, name="clear"))
    book = book_of(PRIME, *steps)
    project = book.projects[0]
    asked = {
        window.opens.state
        for gate in gates_of(book, project, project.models[0])
        for window in gate.windows
        if (gate.before.step, gate.after.step) == ("soft", "clear") and window.opens
    }
    assert asked == ({state} if state else set())


def test_a_mix_bites_like_its_strongest_thinner() -> None:
    """UFC 3-190-06 par. 2.4.2: the solvent counts, not the name on the bottle."""
    hot = Mix(
        name="hot acrylic",
        portions=(
            Portion(coating="acrylic", parts=1),
            Portion(coating="strong thinner", parts=1),
        ),
    )
    young = coat(Stage.BASE, "enamel", name="base")
    book = book_of(PRIME, young, coat(Stage.CAMO, "hot acrylic", name="camo"), mixes=(hot,))
    assert "a lacquer coat over enamel younger than two weeks" in _rules(book)


@pytest.mark.parametrize("family", ["acrylic", "lacquer", "enamel", "oil"])
def test_like_over_like_is_the_safe_default(family: str) -> None:
    """UFC 3-190-06 par. 4.2.4: the same generic type over itself."""
    first = coat(Stage.BASE, family, name="first")
    assert not find(book_of(PRIME, first, coat(Stage.CAMO, family, name="second")))


@pytest.mark.parametrize(
    ("base", "other"),
    [
        (Family.SOLVENT_LACQUER, Family.WHITE_SPIRIT),
        (Family.ALKYD_ENAMEL, Family.LACQUER_THINNER),
    ],
)
def test_enamel_thinner_and_lacquer_thinner_are_not_exchanged(base: Family, other: Family) -> None:
    """TM 43-0139 par. 2-26."""
    fault = unmixable(base, other)
    assert fault is not None
    assert "TM 43-0139" in fault[1]


@pytest.mark.parametrize(
    ("base", "other", "mixes"),
    [
        (Family.WATERBORNE_ACRYLIC, Family.WHITE_SPIRIT, False),
        (Family.SOLVENT_LACQUER, Family.WATER_THINNER, False),
        (Family.ALKYD_ENAMEL, Family.WATER_THINNER, False),
        (Family.WATERBORNE_ACRYLIC, Family.ALKYD_ENAMEL, False),
        (Family.TWO_PACK, Family.SOLVENT_LACQUER, False),
        (Family.WATERBORNE_ACRYLIC, Family.WATER_THINNER, True),
        (Family.WATERBORNE_ACRYLIC, Family.ALCOHOL_THINNER, True),
        (Family.WATERBORNE_ACRYLIC, Family.WATERBORNE_ACRYLIC, True),
        (Family.ALKYD_ENAMEL, Family.ARTISTS_OIL, True),
        (Family.ALKYD_ENAMEL, Family.WHITE_SPIRIT, True),
        (Family.SOLVENT_LACQUER, Family.LACQUER_THINNER, True),
    ],
)
def test_what_mixes(base: Family, other: Family, mixes: bool) -> None:
    """Common practice, no source."""
    assert (unmixable(base, other) is None) is mixes


@pytest.mark.parametrize(
    ("swatch", "expected"),
    [
        # CIE L* of sRGB primaries under D65, as printed in colour references
        # (IEC 61966-2-1 with CIE 15); tolerance 0.05.  From memory.
        ("#ffffff", 100.0),
        ("#000000", 0.0),
        ("#ff0000", 53.24),
        ("#00ff00", 87.73),
        ("#0000ff", 32.30),
        ("#777777", 50.03),
    ],
)
def test_lightness_of_known_colours(swatch: str, expected: float) -> None:
    assert lightness(swatch) == pytest.approx(expected, abs=0.05)
