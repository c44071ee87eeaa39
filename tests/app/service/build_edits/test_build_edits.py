"""Edits of the table, worked out by hand on a small book."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, datetime

import pytest
from small_book import CART, PROJECT, ZONE, small_book

from app.service import wishes
from app.service.build_edits import bulk_change, models, names, order, parts, steps
from app.service.build_edits.advice import AdviceKind, add_dry_fit, advice, late_joined
from planner.values.book import Book
from planner.values.coating import State
from planner.values.keys import ModelKey, StepKey
from planner.values.model import Model, ModelKind, Part, Place
from planner.values.project import Logged, Observed, Pin
from planner.values.refusal import Refused
from planner.values.step import Stage, Step, Tool, Trait

AT = ModelKey(PROJECT, CART)


def cart(book: Book) -> Model:
    return book.project(PROJECT).models[0]


def ids(book: Book) -> list[str]:
    return [step.id for step in cart(book).steps]


def step(book: Book, name: str) -> Step:
    return next(step for step in cart(book).steps if step.id == name)


def spot(name: str) -> StepKey:
    return StepKey(PROJECT, CART, name)


def logged(book: Book, *names_: str) -> Book:
    start = datetime(2031, 3, 5, 19, 30, tzinfo=ZONE)
    log = tuple(Logged(model=CART, step=name, start=start, ticked=("tub/bed",)) for name in names_)
    project = replace(book.project(PROJECT), log=log)
    return replace(book, projects=(project,))


def test_a_written_gate_forbids_a_move_and_is_named() -> None:
    book = small_book()
    assert ids(book) == ["prime", "sand", "gloss", "wash", "wipe"]
    with pytest.raises(Refused, match="“wipe” must stay behind “wash”: its gate counts"):
        order.move_steps(book, AT, ["wipe"], 3)
    with pytest.raises(Refused, match="“wipe” must stay behind “wash”"):
        order.shift_steps(book, AT, ["wash"], down=True)


def test_a_model_of_no_kind_is_given_one() -> None:
    assert cart(small_book()).kind is ModelKind.OTHER
    edit = models.set_kind(small_book(), AT, ModelKind.WHEELED)
    assert cart(edit.book) == replace(cart(small_book()), kind=ModelKind.WHEELED)


def test_a_coat_may_change_places_with_another() -> None:
    moved = order.shift_steps(small_book(), AT, ["sand"], down=False)
    assert ids(moved.book) == ["sand", "prime", "gloss", "wash", "wipe"]
    both = order.move_steps(small_book(), AT, ["wash", "wipe"], 2).book
    assert ids(both) == ["prime", "sand", "wash", "wipe", "gloss"]


def test_a_move_to_where_a_coat_may_never_lie_is_refused() -> None:
    with pytest.raises(Refused, match="bare plastic"):
        order.move_steps(small_book(), AT, ["wash", "wipe"], 0)


def test_at_the_ends_of_the_order_nothing_moves() -> None:
    book = small_book()
    assert order.shift_steps(book, AT, ["prime"], down=False).book is book
    assert order.shift_steps(book, AT, ["wipe"], down=True).book is book


def test_nothing_goes_under_a_coat_that_is_done() -> None:
    book = logged(small_book(), "prime")
    with pytest.raises(Refused, match="“prime” has been done"):
        order.move_steps(book, AT, ["sand"], 0)


def test_a_logged_step_stays_and_another_goes_with_its_pins() -> None:
    book = logged(small_book(), "prime")
    pins = (
        Pin(model=CART, step="gloss", on=date(2031, 3, 6)),
        Pin(model=CART, step="sand", beside=f"{CART}/gloss"),
        Pin(model=CART, step="sand", on=date(2031, 3, 6)),
    )
    book = replace(book, projects=(replace(book.project(PROJECT), pins=pins),))
    with pytest.raises(Refused, match="logged"):
        steps.remove_steps(book, [spot("prime")])
    edit = steps.remove_steps(book, [spot("gloss")])
    assert ids(edit.book) == ["prime", "sand", "wash", "wipe"]
    assert edit.book.project(PROJECT).pins == pins[2:]


def test_what_waited_for_a_removed_step_waits_no_more() -> None:
    edit = steps.remove_steps(small_book(), [spot("wash")])
    assert step(edit.book, "wipe").gates == ()


def test_a_renamed_step_is_followed_by_log_pins_and_gates() -> None:
    book = logged(small_book(), "wash")
    seen = Observed(
        model=CART,
        step="wash",
        at=datetime(2031, 3, 5, 20, 0, tzinfo=ZONE),
        state=State.SET_TO_TOUCH,
        reached=True,
    )
    pins = (Pin(model=CART, step="wipe", beside=f"{CART}/wash"),)
    project = replace(book.project(PROJECT), pins=pins, observed=(seen,))
    book = replace(book, projects=(project,))
    after = names.rename_step(book, spot("wash"), "pin-wash").book
    assert step(after, "wipe").gates[0].after == "pin-wash"
    changed = after.project(PROJECT)
    assert [fact.step for fact in changed.log] == ["pin-wash"]
    assert [look.step for look in changed.observed] == ["pin-wash"]
    assert [pin.beside for pin in changed.pins] == [f"{CART}/pin-wash"]


def test_a_renamed_model_is_followed_by_log_pins_and_pilot() -> None:
    book = logged(small_book(), "prime")
    pins = (Pin(model=CART, step="wipe", beside=f"{CART}/wash"),)
    project = replace(book.project(PROJECT), pins=pins, pilot=CART)
    after = names.rename_model(replace(book, projects=(project,)), AT, "barrow").book
    changed = after.project(PROJECT)
    assert changed.pilot == "barrow"
    assert changed.log[0].model == "barrow"
    assert (changed.pins[0].model, changed.pins[0].beside) == ("barrow", "barrow/wash")


def test_renamed_places_are_followed_by_steps_and_ticks() -> None:
    book = logged(small_book(), "prime")
    after = names.rename_part(book, AT, "tub", "hopper").book
    assert step(after, "sand").references() == ("hopper/bed", "hopper/sides")
    assert step(after, "prime").references() == ("hopper",)
    assert after.project(PROJECT).log[0].ticked == ("hopper/bed",)
    again = names.rename_place(after, AT, "hopper", "bed", "floor").book
    assert step(again, "wash").references() == ("hopper/floor",)
    assert again.project(PROJECT).log[0].ticked == ("hopper/floor",)


def test_many_steps_change_at_once_or_not_at_all() -> None:
    book = small_book()
    spots = [spot("prime"), spot("sand"), spot("gloss")]
    wanted = bulk_change.StepChange(
        fixed=7, tool=Tool.BRUSH, gain=frozenset({Trait.SMELLS}), coats=2
    )
    after = bulk_change.change_steps(book, spots, wanted).book
    for name in ("prime", "sand", "gloss"):
        one = step(after, name)
        assert (one.minutes.fixed, one.tool, one.traits, one.coats) == (
            7,
            Tool.BRUSH,
            (Trait.SMELLS,),
            2,
        )
    assert step(after, "wash") is step(book, "wash")
    with pytest.raises(Refused, match=r"wipe\.gates|wipe\.split"):
        bulk_change.change_steps(
            book,
            [spot("prime"), spot("wipe")],
            bulk_change.StepChange(split_least=10, tool=Tool.BRUSH),
        )


def test_one_coating_gives_way_to_another_where_it_is_laid() -> None:
    wanted = bulk_change.StepChange(coating="sand", instead_of="grey primer")
    spots = [spot("prime"), spot("gloss")]
    after = bulk_change.change_steps(small_book(), spots, wanted).book
    assert step(after, "prime").applications[0].coating == "sand"
    assert step(after, "gloss").applications[0].coating == "gloss clear"


def test_same_again_has_everything_but_facts() -> None:
    book = logged(small_book(), "prime")
    after = models.same_again(book, AT, ["cart two"]).book.project(PROJECT)
    assert [model.name for model in after.models] == [CART, "cart two"]
    assert after.models[1].steps is after.models[0].steps
    assert after.models[0] is cart(book)
    assert {fact.model for fact in after.log} == {CART}


def test_steps_are_copied_behind_what_stands_ahead_of_them() -> None:
    book = models.same_again(small_book(), AT, ["bare"]).book
    bare = ModelKey(PROJECT, "bare")
    spots = [StepKey(PROJECT, "bare", name) for name in ("gloss", "wash", "wipe")]
    book = steps.remove_steps(book, spots).book
    copied = steps.Copied(AT, ("wash", "wipe"))
    after = steps.copy_steps(book, copied, [bare]).book.project(PROJECT).model("bare")
    assert [step.id for step in after.steps] == ["prime", "sand", "wash", "wipe"]
    assert after.steps[3].gates[0].after == "wash"
    with pytest.raises(Refused, match="copy both"):
        steps.copy_steps(book, steps.Copied(AT, ("wipe",)), [bare])


def test_copied_beside_its_like_a_step_gets_an_id_of_its_own() -> None:
    copied = steps.Copied(AT, ("wash", "wipe"))
    after = steps.copy_steps(small_book(), copied, [AT]).book
    assert ids(after)[-2:] == ["wash-2", "wipe-2"]
    assert step(after, "wipe-2").gates[0].after == "wash-2"


def test_steps_are_not_copied_onto_a_model_without_such_places() -> None:
    other = models.bare_model("crate")
    book = models.add_model(small_book(), PROJECT, other).book
    with pytest.raises(Refused, match="crate has none of the places"):
        steps.copy_steps(book, steps.Copied(AT, ("prime",)), [ModelKey(PROJECT, "crate")])


def test_a_place_that_goes_takes_along_what_worked_on_nothing_else() -> None:
    after = parts.remove_places(small_book(), AT, ["tub/bed"]).book
    assert ids(after) == ["prime", "sand", "gloss"]
    assert step(after, "sand").references() == ("tub/sides",)
    with pytest.raises(Refused, match="logged"):
        parts.remove_places(logged(small_book(), "wash"), AT, ["tub/bed"])
    with pytest.raises(Refused, match="no part left"):
        parts.remove_places(small_book(), AT, ["tub"])


def test_a_place_painted_apart_is_joined_last() -> None:
    after = parts.paint_apart(small_book(), AT, "tub", "bed").book
    assert [part.name for part in cart(after).parts] == ["tub", "bed"]
    assert step(after, "prime").references() == ("tub", "bed")
    assert step(after, "wash").references() == ("bed/bed",)
    assert cart(after).steps[-1].stage is Stage.JOIN
    assert late_joined(cart(after)) == ("tub", "bed")
    tried = add_dry_fit(after, AT).book
    assert cart(tried).steps[0].id == "dry-fit"
    assert late_joined(cart(tried)) == ()


def test_more_than_five_at_once_get_a_word_unless_one_goes_first() -> None:
    # Batches of three to five: common practice, no source.
    book = small_book()
    five = models.same_again(book, AT, [f"cart {n}" for n in range(4)]).book
    assert advice(five) == ()
    six = models.same_again(five, AT, ["sixth"]).book
    assert [advisory.kind for advisory in advice(six)] == [AdviceKind.BATCH]
    assert advice(wishes.set_pilot(six, PROJECT, CART).book) == ()


def test_a_model_in_the_logbook_stays() -> None:
    book = models.same_again(logged(small_book(), "prime"), AT, ["twin"]).book
    with pytest.raises(Refused, match="logged"):
        models.remove_models(book, PROJECT, [CART])
    left = models.remove_models(book, PROJECT, ["twin"]).book.project(PROJECT)
    assert [model.name for model in left.models] == [CART]
    with pytest.raises(Refused, match="no model left"):
        models.remove_models(small_book(), PROJECT, [CART])


def test_parts_are_joined_and_glued_first() -> None:
    ladder = Part(name="ladder", places=(Place(name="bed"),), holder="skewer")
    book = parts.add_part(small_book(), AT, ladder).book
    joined = parts.join_parts(book, AT, ["tub", "ladder"]).book
    assert cart(joined).steps[-1].touches == ("tub", "ladder")
    glued = parts.glue_first(joined, AT, "tub", "ladder").book
    (tub,) = cart(glued).parts
    assert [place.name for place in tub.places] == ["bed", "sides", "bed 2"]
    assert ids(glued) == ids(small_book())
    # A step on the whole part reaches what it reached, and not what was glued on.
    assert step(glued, "prime").references() == ("tub/bed", "tub/sides")
