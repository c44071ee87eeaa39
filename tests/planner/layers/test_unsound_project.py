"""A deliberately unsound project: exactly its faults are found, and every one is mended."""

from __future__ import annotations

from pathlib import Path

import pytest

from planner.layers.findings import find
from planner.values.book import Book
from storage.exchange import Exchange, dump, load

FILE = Path(__file__).with_name("unsound_project.json")

# Where and what, written down when the project was invented.  Each rule is
# common practice, but for those that name a source.
FAULTS = {
    ("mixes[0].portions[1]", "white spirit in solvent lacquer"),  # TM 43-0139 par. 2-26
    ("mixes[1].portions[1]", "alkyd enamel in waterborne acrylic"),
    ("models[0].steps[1]", "pale over dark"),
    ("models[0].steps[2]", "decals and their softening fluid over a waterborne coat"),
    ("models[0].steps[3]", "an oil or white-spirit wash over decals"),
    ("models[0].steps[3]", "an oil or white-spirit wash over a waterborne coat"),
    ("models[0].steps[5]", "wipe back without a wash"),
    ("models[0].steps[6]", "gloss wash over the matte coat"),
    ("models[1].steps[0]", "strong solvent on stressed styrene"),
    ("models[1].steps[1]", "enamel or spray can on soft polymer"),
    ("models[1].steps[2]", "both sides in one step"),
    # UFC 3-190-06 par. 2.4.2
    ("models[1].steps[4]", "a lacquer coat over enamel younger than two weeks"),
    ("models[1].steps[5]", "underside reached without a turn"),
    ("models[1].steps[6]", "painted faces glued"),
    ("models[1].steps[8]", "hard coat on soft polymer"),
    ("models[2].steps[3]", "masking tape over chipping fluid"),
    ("models[2].steps[8]", "chip rub without chipping fluid"),
    ("models[2].steps[9]", "chipping fluid never overcoated"),
    ("models[3].steps[4]", "masking tape over an oil or white-spirit wash"),
    ("models[3].steps[5]", "coat on a masked place"),
    ("models[3].steps[7]", "mask never taken off"),
    ("models[3].steps[9]", "unmask without a mask"),
    ("models[3].steps[10]", "pressing without decals"),
    ("models[4].steps[1]", "a two-pack coat over a lacquer coat"),  # TB 43-0242 par. 5-2
    # UFC 3-190-06 par. 2.4.4
    ("models[4].steps[4]", "a waterborne coat over enamel younger than two weeks"),
    ("models[4].steps[5]", "matte coat not last"),
    ("models[4].steps[7]", "a waterborne coat over bare plastic"),
    ("models[4].steps[8]", "an oil or white-spirit wash over bare plastic"),
    ("models[4].steps[11]", "decals not sealed"),
}


@pytest.fixture(scope="module")
def book() -> Book:
    return load(FILE.read_bytes()).book


def _where(path: str) -> str:
    return path.removeprefix("projects[0].")


def test_exactly_these_faults_are_found(book: Book) -> None:
    found = [(_where(one.path), one.rule) for one in find(book)]
    assert set(found) == FAULTS
    assert len(found) == len(FAULTS) >= 12


def test_every_fault_has_a_reason_a_source_and_a_mend(book: Book) -> None:
    for one in find(book):
        assert one.message
        assert one.source
        assert one.mend is not None
        assert one.mend.title


def test_mended_one_by_one_nothing_is_left(book: Book) -> None:
    rounds = 0
    while found := find(book):
        assert found[0].mend is not None
        book = found[0].mend.apply(book)
        rounds += 1
        assert rounds <= 2 * len(FAULTS)
    again = load(dump(Exchange(book))).book
    assert find(again) == ()
    assert again == book


def test_mended_from_the_last_nothing_is_left_either(book: Book) -> None:
    rounds = 0
    while found := find(book):
        assert found[-1].mend is not None
        book = found[-1].mend.apply(book)
        rounds += 1
        assert rounds <= 2 * len(FAULTS)


def test_a_mend_removes_its_finding_and_brings_none_worse(book: Book) -> None:
    before = find(book)
    known = {(one.model, one.step, one.rule) for one in before}
    for one in before:
        assert one.mend is not None
        mended = one.mend.apply(book)
        after = find(mended)
        assert (one.model, one.step, one.rule) not in {(o.model, o.step, o.rule) for o in after}
        fresh = [o for o in after if (o.model, o.step, o.rule) not in known]
        assert all(o.verdict.rank < one.verdict.rank for o in fresh)
        assert one.mend.apply(mended) == mended
