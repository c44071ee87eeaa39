"""Mends on drawn working orders: harmless twice, and they mend what they say."""

from __future__ import annotations

from dataclasses import replace

from coat_books import book_of, coat, part, work
from drawn_examples import drawn
from hypothesis import given
from hypothesis import strategies as st

from planner.layers.findings import Finding, find
from planner.values.book import Book
from planner.values.model import Material
from planner.values.step import Role, Stage, Step

PLACES = (("hull/deck",), ("hull/side",), ("hull",), ("hull/belly",), ("hull/deck", "hull/side"))
COATS = (
    (Stage.PRIME, "grey primer", None),
    (Stage.PRIME, "black primer", None),
    (Stage.PRIME, "lacquer", None),
    (Stage.BASE, "acrylic", None),
    (Stage.BASE, "pale yellow", None),
    (Stage.BASE, "enamel", None),
    (Stage.BASE, "gloss enamel", None),
    (Stage.CAMO, "lacquer", None),
    (Stage.OIL_WASH, "oil", None),
    (Stage.WASH, "gloss wash", None),
    (Stage.VARNISH, "gloss clear", Role.SEAL),
    (Stage.VARNISH, "gloss lacquer", Role.DECAL_BED),
    (Stage.VARNISH, "two-pack clear", None),
    (Stage.DECAL, "decal sheet", None),
    (Stage.CHIP_FLUID, "fluid", None),
    (Stage.PIGMENT, "powder", None),
    (Stage.MATTE, "matte clear", Role.FINAL),
    (Stage.MATTE, "matte lacquer", None),
)
WORKS = (Stage.MASK, Stage.UNMASK, Stage.TURN, Stage.WIPE, Stage.PRESS, Stage.CHIP_RUB)


@st.composite
def books(draw: st.DrawFn) -> Book:
    """Draw any order of any steps on one part, sound or not."""
    steps: list[Step] = []
    for number in range(draw(st.integers(1, 9))):
        places = draw(st.sampled_from(PLACES))
        if draw(st.integers(0, 3)):
            stage, coating, role = draw(st.sampled_from(COATS))
            step = coat(stage, coating, *places, role=role)
        else:
            step = work(draw(st.sampled_from(WORKS)), *places)
        steps.append(replace(step, id=f"s{number}"))
    hull = part(
        "hull",
        "deck",
        "side",
        under=("belly",),
        holder=draw(st.sampled_from(("", "stick"))),
        material=draw(st.sampled_from((Material.STYRENE, Material.SOFT))),
        stressed=draw(st.booleans()),
    )
    return book_of(*steps, parts=(hull,))


def _key(finding: Finding) -> tuple[str, str]:
    return finding.rule, finding.step.removesuffix("-first-side")  # a step split in two


@drawn(80)
@given(books())
def test_a_mend_is_harmless_twice(book: Book) -> None:
    for one in find(book):
        if one.mend is not None:
            mended = one.mend.apply(book)
            assert mended != book
            assert one.mend.apply(mended) == mended


@drawn(80)
@given(books())
def test_a_mend_removes_its_finding(book: Book) -> None:
    for one in find(book):
        if one.mend is not None:
            left = [other for other in find(one.mend.apply(book)) if _key(other) == _key(one)]
            assert not any(set(other.places) >= set(one.places) for other in left)


@drawn(80)
@given(books())
def test_a_mend_brings_no_worse_finding(book: Book) -> None:
    before = find(book)
    known = {_key(one) for one in before}
    for one in before:
        if one.mend is not None:
            fresh = [o for o in find(one.mend.apply(book)) if _key(o) not in known]
            assert all(o.verdict.rank <= one.verdict.rank for o in fresh)


@drawn(50)
@given(books())
def test_finding_needs_no_schedule_and_never_fails(book: Book) -> None:
    assert find(book) == find(book)
