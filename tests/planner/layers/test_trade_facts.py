"""Facts of the trade as checks.  All of them: common practice, no source."""

from __future__ import annotations

from dataclasses import replace

import pytest
from coat_books import book_of, coat, part, work

from planner.cure import Cure, Film
from planner.graph.gates import PassGate, gates_of
from planner.layers.findings import Finding, LayerVerdict, find
from planner.layers.hiding_coats import coats_to_hide
from planner.layers.overcoat_table import RECESS
from planner.values.book import Book
from planner.values.coating import State
from planner.values.model import Material, Part
from planner.values.moment import zone_named
from planner.values.room import AirPoint, Location, Room
from planner.values.step import Application, Bound, Minutes, Role, Stage, Step, Tool

PRIME = coat(Stage.PRIME, "grey primer", name="prime")
FINISHED = (
    PRIME,
    coat(Stage.BASE, "acrylic", name="base"),
    coat(Stage.VARNISH, "gloss clear", name="bed", role=Role.DECAL_BED),
    coat(Stage.DECAL, "decal sheet", name="decals"),
    work(Stage.PRESS, name="press"),
    coat(Stage.VARNISH, "gloss clear", name="seal", role=Role.SEAL),
    coat(Stage.OIL_WASH, "oil", name="wash"),
    work(Stage.WIPE, name="wipe"),
    coat(Stage.MATTE, "matte clear", name="matte", role=Role.FINAL),
)


def _rules(book: Book) -> dict[str, Finding]:
    return {one.rule: one for one in find(book)}


def _without(*ids: str) -> Book:
    return book_of(*(step for step in FINISHED if step.id not in ids))


def test_gloss_decals_gloss_wash_matte_is_sound() -> None:
    assert find(book_of(*FINISHED)) == ()


@pytest.mark.parametrize(
    ("missing", "rules"),
    [
        (("bed",), {"decals and their softening fluid over a waterborne coat"}),
        (("seal",), {"an oil or white-spirit wash over decals"}),
        (("wash",), {"wipe back without a wash"}),
        (("seal", "wash", "wipe", "matte"), {"decals not sealed"}),
        (("prime", "bed", "decals", "press", "seal", "wash", "wipe"),
         {"a waterborne coat over bare plastic"}),
    ],
)  # fmt: skip
def test_each_omission_is_a_finding(missing: tuple[str, ...], rules: set[str]) -> None:
    assert set(_rules(_without(*missing))) == rules


def test_no_gloss_before_an_oil_wash_is_a_finding() -> None:
    book = _without("bed", "decals", "press", "seal")
    found = _rules(book)["an oil or white-spirit wash over a waterborne coat"]
    assert found.verdict is LayerVerdict.BARRIER


def test_the_matte_coat_seals_decals_that_get_no_wash() -> None:
    assert find(_without("seal", "wash", "wipe")) == ()


@pytest.mark.parametrize(
    "last",
    [
        coat(Stage.DETAIL, "pencil", name="last"),
        coat(Stage.PIGMENT, "powder", name="last"),
        coat(Stage.VARNISH, "gloss clear", name="last"),
        coat(Stage.DETAIL, "gloss clear", name="last"),
        coat(Stage.DRY_BRUSH, "acrylic", name="last"),
    ],
)
def test_what_is_allowed_over_matte(last: Step) -> None:
    """Graphite, pigments left unsealed, clear gloss on lenses and wet spots, metal edges."""
    assert find(book_of(*FINISHED, last)) == ()


@pytest.mark.parametrize(
    ("last", "rule"),
    [
        (coat(Stage.HIGHLIGHT, "acrylic", name="last"), "matte coat not last"),
        (coat(Stage.VARNISH, "gloss clear", name="last", role=Role.SEAL), "matte coat not last"),
        (coat(Stage.WASH, "gloss wash", name="last"), "gloss wash over the matte coat"),
    ],
)
def test_what_is_not(last: Step, rule: str) -> None:
    assert set(_rules(book_of(*FINISHED, last))) == {rule}


def test_a_second_matte_coat_ends_the_finish_again() -> None:
    again = coat(Stage.MATTE, "matte clear", name="matte-again")
    late = coat(Stage.HIGHLIGHT, "acrylic", name="late")
    assert find(book_of(*FINISHED, late, again)) == ()


def test_pale_yellow_needs_more_coats_over_black_than_over_grey_or_white() -> None:
    yellow, black, grey, white = "#f2e08a", "#141414", "#8c8c8a", "#f4f4f4"
    assert coats_to_hide(yellow, black) > coats_to_hide(yellow, grey) > coats_to_hide(yellow, white)


def test_pale_over_black_is_advice_that_names_the_primer_that_would_save_coats() -> None:
    black = coat(Stage.PRIME, "black primer", name="prime")
    grey = coat(Stage.PRIME, "grey primer", name="prime")
    thin = coat(Stage.BASE, "pale yellow", name="base")
    found = _rules(book_of(black, thin))["pale over dark"]
    assert found.verdict is LayerVerdict.ADVICE
    assert "white primer" in found.message
    assert find(book_of(grey, thin)) == ()
    enough = coat(Stage.BASE, "pale yellow", name="base", coats=4)
    assert find(book_of(black, enough)) == ()


def _joined(face_painted: bool, scraped: bool = False, glue: str = "cement") -> Book:
    painted = ("hull", "track") if face_painted else ("hull/deck", "track/links")
    join = Step(
        id="join",
        stage=Stage.JOIN,
        applications=(Application(places=("hull/seat", "track/peg"), coating=glue),),
        minutes=Minutes(fixed=5),
        tool=Tool.HAND,
        scraped=scraped,
    )
    return book_of(
        coat(Stage.PRIME, "grey primer", *painted, name="prime"),
        join,
        parts=(part("hull", "deck", "seat"), part("track", "links", "peg")),
    )


def test_parts_painted_apart_are_joined_on_bare_faces() -> None:
    assert find(_joined(face_painted=False)) == ()
    assert find(_joined(face_painted=True, scraped=True)) == ()
    assert "bare plastic" in _rules(_joined(face_painted=True))["painted faces glued"].message
    assert "painted faces glued" in _rules(_joined(face_painted=True, glue="white glue"))


def test_an_oil_wash_left_unwiped_is_a_choice() -> None:
    assert find(_without("wipe")) == ()


def test_chipping_fluid_goes_between_two_colours() -> None:
    steps = (
        PRIME,
        coat(Stage.BASE, "acrylic", name="rust"),
        coat(Stage.CHIP_FLUID, "fluid", name="fluid"),
        coat(Stage.CAMO, "acrylic", name="green"),
        work(Stage.CHIP_RUB, name="rub"),
    )
    assert find(book_of(*steps)) == ()
    assert set(_rules(book_of(*steps[:2], *steps[3:]))) == {"chip rub without chipping fluid"}
    assert set(_rules(book_of(*steps[:3]))) == {"chipping fluid never overcoated"}


def test_chips_are_rubbed_before_a_clear_coat_shuts_the_fluid_in() -> None:
    """Water must reach the fluid through the colour; no clear coat lets it."""
    green = coat(Stage.CAMO, "acrylic", name="green")
    clear = coat(Stage.VARNISH, "gloss clear", name="clear")
    fluid = coat(Stage.CHIP_FLUID, "fluid", name="fluid")
    steps = (PRIME, coat(Stage.BASE, "acrylic", name="rust"), fluid, green)
    rub = work(Stage.CHIP_RUB, name="rub")
    found = _rules(book_of(*steps, clear, rub))
    assert set(found) == {"chip rub through a clear coat"}
    mend = found["chip rub through a clear coat"].mend
    assert mend is not None
    mended = mend.apply(book_of(*steps, clear, rub))
    assert [step.id for step in mended.projects[0].models[0].steps[-2:]] == ["rub", "clear"]
    assert find(mended) == ()
    below = (*steps[:2], clear, fluid, green, rub)
    assert find(book_of(*below)) == ()


@pytest.mark.parametrize(
    ("material", "step", "sound"),
    [
        (Material.SOFT, coat(Stage.PRIME, "enamel", name="p"), False),
        (Material.SOFT, coat(Stage.PRIME, "lacquer", name="p", tool=Tool.CAN), False),
        (Material.SOFT, coat(Stage.PRIME, "grey primer", name="p"), True),
        (Material.STYRENE, coat(Stage.PRIME, "enamel", name="p"), True),
        (Material.STYRENE, coat(Stage.PRIME, "lacquer", name="p", tool=Tool.CAN), True),
    ],
)
def test_what_a_soft_polymer_forbids(material: Material, step: Step, sound: bool) -> None:
    book = book_of(step, parts=(part(material=material),))
    assert (find(book) == ()) is sound


@pytest.mark.parametrize(
    ("material", "stage", "coating", "sound"),
    [
        (Material.SOFT, Stage.VARNISH, "two-pack clear", False),
        (Material.SOFT, Stage.VARNISH, "gloss lacquer", False),
        (Material.SOFT, Stage.VARNISH, "gloss clear", True),
        (Material.STYRENE, Stage.VARNISH, "gloss lacquer", True),
    ],
)
def test_a_hard_coat_cracks_where_soft_polymer_bends(
    material: Material, stage: Stage, coating: str, sound: bool
) -> None:
    book = book_of(PRIME, coat(stage, coating, name="clear"), parts=(part(material=material),))
    found = _rules(book)
    assert set(found) == (set() if sound else {"hard coat on soft polymer"})
    for one in found.values():
        assert one.mend is not None
        assert find(one.mend.apply(book)) == ()


def test_strong_thinner_cracks_snapped_styrene_but_not_a_primed_one() -> None:
    snapped: tuple[Part, ...] = (part(stressed=True),)
    lacquer = coat(Stage.PRIME, "lacquer", name="strong")
    assert set(_rules(book_of(lacquer, parts=snapped))) == {"strong solvent on stressed styrene"}
    assert find(book_of(lacquer)) == ()
    assert find(book_of(PRIME, lacquer, parts=snapped)) == ()


def test_a_part_without_a_holder_is_turned_for_its_underside() -> None:
    loose = (part("hull", "deck", under=("belly",), holder=""),)
    top = coat(Stage.PRIME, "grey primer", "hull/deck", name="top")
    under = coat(Stage.PRIME, "grey primer", "hull/belly", name="under")
    both = coat(Stage.PRIME, "grey primer", name="both")
    turn = work(Stage.TURN, name="turn")
    assert find(book_of(top, turn, under, parts=loose)) == ()
    assert set(_rules(book_of(top, under, parts=loose))) == {"underside reached without a turn"}
    assert set(_rules(book_of(turn, top, parts=loose))) == {"topside reached without a turn"}
    assert set(_rules(book_of(both, parts=loose))) == {"both sides in one step"}
    held = (part("hull", "deck", under=("belly",)),)
    assert find(book_of(both, top, under, parts=held)) == ()


def test_masks_are_put_on_coated_beside_and_taken_off() -> None:
    two = (part("hull", "deck", "band"),)
    base = coat(Stage.BASE, "acrylic", name="base")
    on, off = work(Stage.MASK, "hull/deck", name="on"), work(Stage.UNMASK, "hull/deck", name="off")
    band = coat(Stage.CAMO, "acrylic", "hull/band", name="band")
    over = coat(Stage.CAMO, "acrylic", "hull", name="over")
    assert find(book_of(PRIME, base, on, band, off, parts=two)) == ()
    assert set(_rules(book_of(PRIME, base, on, band, parts=two))) == {"mask never taken off"}
    assert set(_rules(book_of(PRIME, base, band, off, parts=two))) == {"unmask without a mask"}
    assert set(_rules(book_of(PRIME, base, on, over, off, parts=two))) == {"coat on a masked place"}


@pytest.mark.parametrize(
    ("stage", "coating"),
    [
        (Stage.OIL_WASH, "oil"),
        (Stage.PIGMENT, "powder"),
        (Stage.CHIP_FLUID, "fluid"),
        (Stage.DECAL, "decal sheet"),
    ],
)
def test_tape_needs_a_film_that_bears_it(stage: Stage, coating: str) -> None:
    gloss = coat(Stage.VARNISH, "gloss clear", name="gloss", role=Role.BARRIER)
    tape = (work(Stage.MASK, name="on"), work(Stage.UNMASK, name="off"))
    weak = coat(stage, coating, name="weak")
    ours = [one for one in find(book_of(PRIME, gloss, weak, *tape)) if one.step == "on"]
    assert [one.verdict for one in ours] == [LayerVerdict.BARRIER]
    sealed = find(book_of(PRIME, gloss, weak, replace(gloss, id="seal"), *tape))
    assert not [one for one in sealed if one.step == "on"]


def _gates(book: Book, after: str) -> list[PassGate]:
    project = book.projects[0]
    gates = gates_of(book, project, project.models[0])
    return [gate for gate in gates if gate.after.step == after]


def _states(book: Book, after: str, before: str) -> set[State]:
    return {
        window.opens.state
        for gate in _gates(book, after)
        for window in gate.windows
        if gate.before.step == before and window.opens and window.opens.state
    }


def test_a_coat_over_a_wash_waits_until_the_wash_is_dry() -> None:
    clear = coat(Stage.VARNISH, "gloss clear", name="clear", role=Role.SEAL)
    book = book_of(*FINISHED[:-1], clear, FINISHED[-1])
    assert _states(book, "clear", "wash") == {State.DRY_TO_RECOAT}
    assert _states(book, "matte", "wash") == {State.DRY_THROUGH}


def test_an_oil_wash_is_wiped_back_within_about_an_hour() -> None:
    (gate,) = [gate for gate in _gates(book_of(*FINISHED), "wipe") if gate.closes]
    assert gate.closing is Bound.START  # several lorries may be washed, then wiped
    (window,) = gate.windows
    assert (window.opens, window.best, window.closes) != (None, None, None)
    minutes = [mark.minutes for mark in (window.opens, window.best, window.closes) if mark]
    assert minutes == [5, 15, 60]  # after 5 to 10 min, best 10 to 30, for about an hour


def test_a_seal_shelters_the_coats_below_from_a_wash() -> None:
    book = book_of(*FINISHED)
    assert _states(book, "wash", "seal") == {State.SOLVENT_SAFE}
    assert _states(book, "wash", "base") == set()


def _pooled(book: Book, after: str) -> set[float]:
    return {gate.pooled for gate in _gates(book, after) if not gate.is_order}


@pytest.mark.parametrize("gloss", ["gloss clear", "gloss lacquer"])
@pytest.mark.parametrize(
    ("stage", "wash"),
    [(Stage.WASH, "gloss wash"), (Stage.OIL_WASH, "oil"), (Stage.WASH, "enamel")],
)
def test_a_wash_over_gloss_waits_for_the_film_in_the_recesses(
    stage: Stage, wash: str, gloss: str
) -> None:
    """There a day was too short and up to two are told; elsewhere the film is as it is."""
    top = coat(Stage.VARNISH, gloss, name="top")
    flat = coat(Stage.VARNISH, "matte clear", name="flat")
    over = coat(stage, wash, name="wash")
    assert _pooled(book_of(PRIME, top, over), "wash") == {1.25}
    assert _pooled(book_of(PRIME, flat, over), "wash") == {1.0}
    assert _pooled(book_of(PRIME, top, flat, over), "wash") == {1.0}
    again = coat(Stage.DETAIL, "acrylic", name="spots")
    assert _pooled(book_of(PRIME, top, again), "spots") == {1.0}


def test_a_wait_for_the_flat_film_is_not_one_for_the_recesses() -> None:
    """An enamel detail waited until the gloss bears white spirit; a wash waits on."""
    gloss = coat(Stage.VARNISH, "gloss clear", name="gloss")
    detail = coat(Stage.DETAIL, "enamel", name="detail")
    wash = coat(Stage.OIL_WASH, "oil", name="wash")
    ways = {
        order: [
            gate.pooled
            for gate in gates_of(book, book.projects[0], book.projects[0].models[0])
            if gate.before.step == "gloss" and gate.windows[0].opens
        ]
        for order, book in (
            ("detail first", book_of(PRIME, gloss, detail, wash)),
            ("wash first", book_of(PRIME, gloss, wash, detail)),
        )
    }
    assert ways == {"detail first": [1.0, 1.25], "wash first": [1.25]}


@pytest.mark.parametrize("gloss", ["gloss clear", "gloss lacquer"])
def test_decals_wait_until_softening_fluid_does_no_harm(gloss: str) -> None:
    """Not for tape, which asks a print-free film: pressing decals is gentler."""
    bed = coat(Stage.VARNISH, gloss, name="bed", role=Role.DECAL_BED)
    book = book_of(PRIME, bed, coat(Stage.DECAL, "decal sheet", name="decals"))
    assert _states(book, "decals", "bed") == {State.SOLVENT_SAFE}
    assert _pooled(book, "decals") == {1.0}


@pytest.mark.parametrize("temperature_c", [18, 23])
@pytest.mark.parametrize("gloss", ["gloss clear", "gloss lacquer"])
def test_gloss_clear_bears_decals_after_a_night_and_a_wash_after_a_day(
    gloss: str, temperature_c: float
) -> None:
    """Decals overnight, and a wash the next evening: common practice, no source.

    Along recesses a day was too short for some and up to two are told; so the
    wash waits longer, and an evening ends at least 22 h before the next.
    """
    book = book_of(PRIME)
    air = (AirPoint(at="00:00", temperature_c=temperature_c, humidity_pct=50),)
    cure = Cure(
        Room(locations=(Location(name="bench", drying_places=1, workdays=air),)), zone_named("UTC")
    )
    flat = Film(book.coating(gloss), book.coating(gloss).dry_film_um, "bench", 0)
    recess = replace(flat, thickness_um=flat.thickness_um * RECESS)
    decals = cure.ready_at(flat, State.SOLVENT_SAFE)
    wash = cure.ready_at(recess, State.SOLVENT_SAFE)
    assert decals is not None
    assert wash is not None
    assert 5 * 60 <= decals < wash <= 22 * 60


def test_a_water_wash_waits_longer_on_gloss_than_on_matte() -> None:
    """It pools in recesses, where gloss stays soft longest."""
    wash = coat(Stage.WASH, "gloss wash", name="wash")
    gloss = book_of(PRIME, coat(Stage.VARNISH, "gloss clear", name="top"), wash)
    matte = book_of(PRIME, coat(Stage.BASE, "acrylic", name="top"), wash)
    assert _states(gloss, "wash", "top") == {State.SOLVENT_SAFE}
    assert _states(matte, "wash", "top") == {State.DRY_TO_RECOAT}


def test_two_coats_of_one_step_wait_for_a_recoat_only() -> None:
    matte = coat(Stage.MATTE, "matte clear", name="matte", coats=2)
    assert _states(book_of(PRIME, matte), "matte", "matte") == {State.DRY_TO_RECOAT}
