"""Rules of the layers at what they turn on: just so a finding, just so none; and what a mend does.

All of it common practice, no source, as it is told where the rules stand.
"""

from __future__ import annotations

from dataclasses import replace

import pytest
from coat_books import book_of, coat, part, steps_of, work

from planner.graph.gates import gates_of
from planner.layers.care import care_of
from planner.layers.customary import CAN_AGAIN, RUB, WIPE, after_film, can_again
from planner.layers.findings import Finding, find
from planner.layers.operation_kinds import below_kind
from planner.layers.overcoat_table import Below, Next
from planner.values.book import Book
from planner.values.coating import Coating, Effect, Family, Finish, Mark, Window
from planner.values.model import Material
from planner.values.project import Pin
from planner.values.step import Bound, Gate, Role, Stage, Tool
from planner.values.wishes import Care

PRIME = coat(Stage.PRIME, "grey primer", name="prime")
BASE = coat(Stage.BASE, "acrylic", name="base")


def found(book: Book, rule: str) -> Finding | None:
    return next((finding for finding in find(book) if finding.rule == rule), None)


def mended(book: Book, rule: str) -> list[str]:
    """Return the ids of the steps in order, once the mend of a finding was done, twice over."""
    finding = found(book, rule)
    assert finding is not None
    assert finding.mend is not None
    once = finding.mend.apply(book)
    assert finding.mend.apply(once) == once  # done already: nothing more
    return [step.id for step in steps_of(once)]


def after(step: str, *windows: Window, closing: Bound = Bound.START) -> Gate:
    return Gate(after=step, windows=windows, closing=closing)


# -- the windows of the trade -------------------------------------------------------------------


def test_the_minutes_of_custom():
    """Definition 6a: 5 to 60, best 15; within 90; 3 to 20 or after a day [min]."""
    (wipe,) = WIPE.windows
    marks = wipe.opens, wipe.best, wipe.closes
    assert [mark and mark.minutes for mark in marks] == [5, 15, 60]
    (rub,) = RUB.windows
    assert rub.closes == Mark(minutes=90)
    soon, late = CAN_AGAIN.windows
    assert (soon.opens, soon.closes) == (Mark(minutes=3), Mark(minutes=20))
    assert (late.opens, late.closes) == (Mark(minutes=1440), None)
    assert (WIPE.closing, RUB.closing, CAN_AGAIN.closing) == (Bound.START, Bound.END, Bound.START)


LACQUER = Coating(name="lacquer", family=Family.SOLVENT_LACQUER)


@pytest.mark.parametrize(
    ("step", "laid", "custom"),
    [
        ({"tool": Tool.CAN}, {"tool": Tool.CAN}, True),
        ({"tool": Tool.CAN}, {"tool": Tool.AIRBRUSH}, False),
        ({"tool": Tool.AIRBRUSH}, {"tool": Tool.CAN}, False),
        ({"tool": Tool.BRUSH}, {"tool": Tool.BRUSH}, False),
    ],
)
def test_a_second_coat_counts_from_can_to_can_alone(step, laid, custom):
    one, two = (coat(Stage.BASE, "lacquer", name=n, **how) for n, how in (("a", laid), ("b", step)))
    assert (can_again(two, LACQUER, LACQUER, one) is not None) is custom


def test_a_second_coat_of_another_can_or_with_a_label_is_free():
    one, two = (coat(Stage.BASE, "lacquer", name=n, tool=Tool.CAN) for n in "ab")
    other = Coating(name="other", family=Family.SOLVENT_LACQUER)
    labelled = replace(LACQUER, recoat=(Window(opens=Mark(minutes=30)),))
    water = Coating(name="water", family=Family.WATERBORNE_ACRYLIC)
    assert can_again(two, other, LACQUER, one) is None
    assert can_again(two, labelled, labelled, one) is None
    assert can_again(two, None, LACQUER, one) is None
    assert can_again(two, water, water, one) is None
    enamel = Coating(name="enamel", family=Family.ALKYD_ENAMEL)
    assert can_again(two, enamel, enamel, one) is CAN_AGAIN


def test_custom_is_released_by_a_gate_without_any_time_alone():
    oil = Coating(name="oil", family=Family.ARTISTS_OIL)
    wash, wipe = coat(Stage.OIL_WASH, "oil", name="wash"), work(Stage.WIPE, name="wipe")
    assert after_film(wipe, oil, wash, fluid=False) is WIPE
    freed = replace(wipe, gates=(after("wash", Window()),))
    assert after_film(freed, oil, wash, fluid=False) is None
    closed = replace(wipe, gates=(after("wash", Window(closes=Mark(minutes=30))),))
    assert after_film(closed, oil, wash, fluid=False) is WIPE
    other = replace(wipe, gates=(after("else", Window()),))
    assert after_film(other, oil, wash, fluid=False) is WIPE
    rub = work(Stage.CHIP_RUB, name="rub")
    assert after_film(rub, oil, wash, fluid=True) is RUB
    assert after_film(rub, oil, wash, fluid=False) is None


@pytest.mark.parametrize(
    ("opens", "closes", "closing", "clash"),
    [
        # Wiping back starts 5 min after the wash, of five, ends: 10 to 59 min from its start.
        (None, 9, Bound.START, True),
        (None, 10, Bound.START, True),  # half-open: the last start is 9
        (None, 11, Bound.START, False),
        (54, None, Bound.START, False),  # 5 + 54 = 59
        (55, None, Bound.START, True),
        (None, 14, Bound.END, True),  # five minutes of wiping end by then: start 9
        (None, 15, Bound.END, False),
    ],
)
def test_a_written_gate_that_meets_custom_in_a_minute_can_be_kept(opens, closes, closing, clash):
    window = Window(
        opens=None if opens is None else Mark(minutes=opens),
        closes=None if closes is None else Mark(minutes=closes),
    )
    wipe = replace(work(Stage.WIPE, name="wipe"), gates=(after("wash", window, closing=closing),))
    steps = (PRIME, BASE, coat(Stage.VARNISH, "gloss clear", name="seal"))
    of = book_of(*steps, coat(Stage.OIL_WASH, "oil", name="wash"), wipe)
    assert (found(of, "written gate that nothing can keep") is not None) is clash


@pytest.mark.parametrize(("minutes", "young"), [(20159, True), (20160, False), (20161, False)])
def test_enamel_is_young_for_two_weeks(minutes, young):
    """14 × 1440 = 20160."""
    top = replace(
        coat(Stage.CAMO, "lacquer", name="camo"),
        gates=(after("base", Window(opens=Mark(minutes=minutes))),),
    )
    of = book_of(PRIME, coat(Stage.BASE, "enamel", name="base"), top)
    rule = "a lacquer coat over enamel younger than two weeks"
    assert (found(of, rule) is not None) is young


@pytest.mark.parametrize(
    ("clear", "following", "kind"),
    [
        ("gloss clear", Next.WASH, Below.CLEAR),
        ("gloss clear", Next.WATERBORNE, Below.CLEAR),
        ("gloss clear", Next.LACQUER, Below.WATERBORNE),  # its strong solvent bites through
        ("gloss lacquer", Next.LACQUER, Below.CLEAR),
        ("gloss lacquer", Next.TWO_PACK, Below.LACQUER),  # no clear coat helps against two-pack
        ("gloss clear", Next.TWO_PACK, Below.WATERBORNE),
        ("two-pack clear", Next.WASH, Below.TWO_PACK),
    ],
)
def test_what_a_clear_coat_counts_as_by_what_follows(clear, following, kind):
    step = coat(Stage.VARNISH, clear, name="clear", role=Role.BARRIER)
    coating = book_of(step).coating(clear)
    assert below_kind(coating, step, following) is kind


# -- materials ----------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("coating", "cracks"),
    [("acrylic", False), ("enamel", False), ("ink", True), ("lacquer", True)],
)
def test_stressed_styrene_cracks_by_what_is_stronger_than_spirit(coating, cracks):
    rule = "strong solvent on stressed styrene"
    step = coat(Stage.PRIME, coating, name="prime")
    for stressed in (True, False):
        of = book_of(step, parts=(part("hull", "deck", stressed=stressed),))
        assert (found(of, rule) is not None) is (cracks and stressed)
    resin = part("hull", "deck", stressed=True, material=Material.RESIN)
    assert found(book_of(step, parts=(resin,)), rule) is None


# -- mends and where they put things --------------------------------------------------------------


def test_primer_is_put_before_the_first_step_once():
    assert mended(book_of(BASE), "a waterborne coat over bare plastic") == [
        "prime-for-base",
        "base",
    ]


def test_decals_are_sealed_behind_their_pressing():
    steps = (
        PRIME,
        BASE,
        coat(Stage.VARNISH, "gloss clear", name="bed", role=Role.DECAL_BED),
        coat(Stage.DECAL, "decal sheet", name="decals"),
        work(Stage.PRESS, name="press"),
        work(Stage.CLEAN, name="dust"),
    )
    order = mended(book_of(*steps), "decals not sealed")
    assert order.index("press") + 1 == order.index(
        next(n for n in order if n not in {step.id for step in steps})
    )


def test_pressing_before_any_decals_goes_behind_the_first_of_them():
    steps = (
        PRIME,
        BASE,
        coat(Stage.VARNISH, "gloss clear", name="bed", role=Role.DECAL_BED),
        work(Stage.PRESS, name="press"),
        coat(Stage.DECAL, "decal sheet", name="first"),
        coat(Stage.DECAL, "decal sheet", name="second"),
        coat(Stage.VARNISH, "gloss clear", name="seal", role=Role.SEAL),
    )
    of = book_of(*steps)
    rule = next(one.rule for one in find(of) if one.step == "press")
    order = mended(of, rule)
    assert order.index("press") == order.index("first") + 1


def test_a_mask_comes_off_behind_the_last_coat_beside_it():
    """The wheels are another part; the deck again, under the mask, ends the search."""
    parts = (part("hull", "deck", "side"), part("wheels", "rim"))
    steps = (
        coat(Stage.PRIME, "grey primer", "hull", "wheels", name="prime"),
        coat(Stage.BASE, "acrylic", "hull", "wheels", name="base"),
        work(Stage.MASK, "hull/deck", name="mask"),
        coat(Stage.CAMO, "acrylic", "hull/side", name="camo"),
        coat(Stage.CAMO, "acrylic", "wheels/rim", name="rims"),
    )
    order = mended(book_of(*steps, parts=parts), "mask never taken off")
    assert order[3:5] == ["camo", "unmask-mask"]


def test_pins_of_steps_that_stay_outlast_a_mend_and_others_go():
    """Of three carts' steps one is left out as a whole."""
    steps = (
        PRIME,
        BASE,
        coat(Stage.VARNISH, "gloss clear", name="one", role=Role.DECAL_BED),
        coat(Stage.VARNISH, "gloss clear", name="two", role=Role.SEAL),
    )
    of = book_of(*steps)
    pins = tuple(
        Pin(model="tender", step=name, on=of.bench_time.stretches[0].since)
        for name in ("base", "two")
    )
    of = replace(of, projects=(replace(of.projects[0], pins=pins),))
    finding = found(of, "two clear coats in a row")
    assert finding is not None
    assert finding.mend is not None
    done = finding.mend.apply(of)
    assert [step.id for step in steps_of(done)] == ["prime", "base", "one"]
    assert [pin.step for pin in done.projects[0].pins] == ["base"]


def test_two_clear_coats_name_the_lower_of_the_first_place():
    parts = (part("hull", "deck", "side"),)
    steps = (
        coat(Stage.PRIME, "grey primer", name="prime"),
        coat(Stage.VARNISH, "gloss clear", "hull/deck", name="left"),
        coat(Stage.VARNISH, "gloss clear", "hull/side", name="right"),
        coat(Stage.VARNISH, "gloss clear", "hull/deck", "hull/side", name="both", role=Role.SEAL),
    )
    finding = found(book_of(*steps, parts=parts), "two clear coats in a row")
    assert finding is not None
    assert finding.places == ("hull/deck", "hull/side")
    assert "after left" in finding.message
    barrier = replace(steps[1], role=Role.BARRIER)
    part_of = found(book_of(steps[0], barrier, *steps[2:], parts=parts), "two clear coats in a row")
    assert part_of is not None
    assert part_of.places == ("hull/side",)


def test_a_colour_over_two_undercoats_wants_what_the_worse_asks():
    """White over L* 35 and less wants three coats more than over pale grey: four against one."""
    dark, mid = "#000000", "#525252"
    more = tuple(
        Coating(name=name, family=Family.WATERBORNE_ACRYLIC, swatch=swatch)
        for name, swatch in (("dark", dark), ("mid", mid), ("white", "#a8a8a8"))
    )
    parts = (part("hull", "deck", "side"),)
    steps = (
        coat(Stage.PRIME, "mid", "hull/deck", name="one"),
        coat(Stage.PRIME, "dark", "hull/side", name="two"),
        coat(Stage.BASE, "white", "hull", name="base"),
    )
    finding = found(book_of(*steps, parts=parts, more=more), "pale over dark")
    assert finding is not None
    assert finding.mend is not None
    laid = steps_of(finding.mend.apply(book_of(*steps, parts=parts, more=more)))[-1]
    assert laid.applications[0].coats == 4  # L* 68.6 over 0, more than 65; over 34.9 two would do


# -- chipping -------------------------------------------------------------------------------------

FLUID = coat(Stage.CHIP_FLUID, "fluid", name="fluid")
RUBBING = work(Stage.CHIP_RUB, name="rub")


def test_fluid_goes_below_the_last_colour_and_names_it_as_written():
    camo = replace(coat(Stage.CAMO, "acrylic", name="camo"), title="sand bands")
    of = book_of(PRIME, BASE, camo, RUBBING)
    finding = found(of, "chip rub without chipping fluid")
    assert finding is not None
    assert finding.mend is not None
    assert "sand bands" in finding.mend.title
    steps = steps_of(finding.mend.apply(of))
    assert [step.id for step in steps] == ["prime", "base", "fluid-for-rub", "camo", "rub"]
    assert "sand bands" in steps[2].title


def test_a_clear_coat_shuts_fluid_only_over_it():
    rule = "chip rub through a clear coat"
    clear = coat(Stage.VARNISH, "gloss clear", name="clear")
    camo = coat(Stage.CAMO, "acrylic", name="camo")
    assert found(book_of(PRIME, BASE, clear, FLUID, camo, RUBBING), rule) is None
    assert found(book_of(PRIME, BASE, FLUID, camo, clear, RUBBING), rule) is not None


def test_colour_over_chips_counts_where_fluid_was():
    rule = "colour over finished chips"
    camo, more = (coat(Stage.CAMO, "acrylic", name=name) for name in ("camo", "more"))
    assert found(book_of(PRIME, BASE, FLUID, camo, RUBBING, more), rule) is not None
    assert found(book_of(PRIME, BASE, FLUID, camo, RUBBING), rule) is None
    assert found(book_of(PRIME, BASE, camo, RUBBING, more), rule) is None


# -- turns ----------------------------------------------------------------------------------------


def test_each_turn_counts():
    """Underside after one turn and after three, topside after two."""
    loose = (part("hull", "deck", under=("belly",), holder=""),)

    def rules(turns: int, place: str) -> set[str]:
        turned = [work(Stage.TURN, name=f"turn-{n}") for n in range(turns)]
        step = coat(Stage.PRIME, "grey primer", f"hull/{place}", name="prime")
        return {one.rule for one in find(book_of(*turned, step, parts=loose))}

    for turns in range(4):
        odd = turns % 2 == 1
        assert ("underside reached without a turn" in rules(turns, "belly")) is not odd
        assert ("topside reached without a turn" in rules(turns, "deck")) is odd


def test_ids_of_steps_that_a_mend_makes_are_no_longer_than_fifty():
    long = coat(Stage.BASE, "acrylic", name="b" * 60)
    order = mended(book_of(long), "a waterborne coat over bare plastic")
    assert order == ["prime-for-" + "b" * 40, "b" * 60]


def test_gates_of_custom_reach_the_plan():
    """The gate of a wipe bears the windows of custom to the minute."""
    wash = coat(Stage.OIL_WASH, "oil", name="wash")
    of = book_of(PRIME, BASE, wash, work(Stage.WIPE, name="wipe"))
    project = of.projects[0]
    gates = [
        gate
        for gate in gates_of(of, project, project.models[0])
        if (gate.before.step, gate.after.step) == ("wash", "wipe") and gate.closes
    ]
    assert [gate.windows for gate in gates] == [WIPE.windows]


# -- what a mistake costs, and what a name tells --------------------------------------------------


@pytest.mark.parametrize(
    ("stage", "over", "below", "care"),
    [
        (Stage.BASE, "lacquer", "lacquer", Care.COAT),  # of one kind: it melts in
        (Stage.BASE, "lacquer", "acrylic", Care.HARD),
        (Stage.BASE, "ink", "lacquer", Care.HARD),
        (Stage.BASE, "enamel", "acrylic", Care.COAT),
        (Stage.BASE, "acrylic", "lacquer", Care.COAT),
        (Stage.VARNISH, "gloss clear", "acrylic", Care.CLEAR),
        (Stage.VARNISH, "gloss lacquer", "lacquer", Care.HARD),  # a hard coat, of one kind or not
        (Stage.MATTE, "matte clear", "acrylic", Care.LAST),
        (Stage.OIL_WASH, "oil", "acrylic", Care.WASH),
        (Stage.DECAL, "decal sheet", "acrylic", Care.DECAL),
    ],
)
def test_what_a_mistake_over_a_film_costs(stage, over, below, care):
    """Definition 6: what of it may be planned at likely."""
    step = coat(stage, over)
    of = book_of(step)
    assert care_of(step, of.coating(over), of.coating(below)) is care


@pytest.mark.parametrize(
    ("name", "effect", "asked"),
    [
        ("chrome", Effect.PLAIN, "mirror"),  # told by its name
        ("plain name", Effect.MIRROR, "mirror"),
        ("aluminium", Effect.PLAIN, None),  # a metal is asked of only where that was set
        ("aluminium", Effect.METALLIC, "metallic"),
        ("plain name", Effect.METALLIC, "metallic"),
        ("plain name", Effect.PLAIN, None),
    ],
)
def test_a_shine_asks_for_its_base_as_the_book_or_its_name_tells(name, effect, asked):
    shining = Coating(name=name, family=Family.SOLVENT_LACQUER, finish=Finish.GLOSS, effect=effect)
    of = book_of(PRIME, coat(Stage.BASE, name, name="base"), more=(shining,))
    told = {one.rule.split(" on ")[0] for one in find(of) if one.rule.endswith("on the wrong base")}
    assert told == ({asked} if asked else set())


def test_fluid_rubbed_at_once_behind_its_colour_needs_no_other_rub():
    """Fluid over the last colour goes below it; the rub that follows that is rub enough."""
    steps = (PRIME, BASE, coat(Stage.CAMO, "acrylic", name="camo"), RUBBING, FLUID)
    order = mended(book_of(*steps), "chipping fluid never overcoated")
    assert order == ["prime", "base", "fluid", "camo", "rub"]
    order = mended(book_of(*steps[:3], FLUID), "chipping fluid never overcoated")
    assert order[:4] == ["prime", "base", "fluid", "camo"]
    assert len(order) == 5


def test_a_mend_of_what_no_longer_stands_does_nothing():
    """Somebody primed it meanwhile, in a step of another name."""
    finding = found(book_of(BASE), "a waterborne coat over bare plastic")
    assert finding is not None
    assert finding.mend is not None
    primed = book_of(PRIME, BASE)
    assert finding.mend.apply(primed) == primed


def test_a_step_is_put_in_once_at_the_very_beginning_too():
    finding = found(book_of(BASE), "a waterborne coat over bare plastic")
    assert finding is not None
    (settle,) = finding.mend.edits  # type: ignore[union-attr]
    (insert,) = settle.finding.mend.edits
    once = insert.apply(book_of(BASE))
    assert [step.id for step in steps_of(once)] == ["prime-for-base", "base"]
    assert insert.apply(once) == once


def test_ids_of_a_base_below_a_shine_are_no_longer_than_fifty():
    shining = Coating(
        name="chrome", family=Family.SOLVENT_LACQUER, finish=Finish.GLOSS, effect=Effect.MIRROR
    )
    of = book_of(PRIME, coat(Stage.BASE, "chrome", name="c" * 60), more=(shining,))
    finding = found(of, "mirror on the wrong base")
    assert finding is not None
    ids = [step.id for step in steps_of(finding.mend.apply(of))]  # type: ignore[union-attr]
    assert ids[1] == "base-for-" + "c" * 41


def test_parts_joined_lying_differently_are_turned_before_their_join():
    parts = (part("hull", "deck", holder=""), part("wheels", "rim", under=("hub",), holder=""))
    steps = (
        work(Stage.TURN, "wheels", name="turn"),
        coat(Stage.JOIN, "cement", "hull/deck", "wheels/rim", name="join"),
        work(Stage.CLEAN, "hull", name="dust"),
        coat(Stage.PRIME, "grey primer", "hull", "wheels/rim", name="prime"),
    )
    of = book_of(*steps, parts=parts)
    finding = found(of, "joined while lying on different sides")
    assert finding is not None
    assert finding.mend is not None
    edit = finding.mend.edits[0].finding.mend.edits[0]  # type: ignore[attr-defined]
    ids = [step.id for step in steps_of(edit.apply(of))]
    assert ids[0] == "turn"
    assert ids.index("join") == 2
