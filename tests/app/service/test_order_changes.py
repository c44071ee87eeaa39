"""Named changes of models in a book: taken in and out, for some or all, whatever was done there."""

from __future__ import annotations

from dataclasses import replace

import pytest
from sequence_books import bare_book, bare_model
from small_book import ZONE, at

from app.service import demos
from app.service.build_edits.models import bare_model as model_of_kind
from app.service.order_changes import change_orders, possible
from app.service.sequences import give_sequence
from planner.layers.findings import find
from planner.sequences.built_in import ALL
from planner.sequences.difference import difference
from planner.sequences.references import normal
from planner.values.book import Book
from planner.values.coating import Coating, Family
from planner.values.keys import ModelKey
from planner.values.model import Model, ModelKind, NamedChange, PartsChange
from planner.values.moment import moment_of
from planner.values.project import Logged
from planner.values.refusal import Refused
from planner.values.step import Stage, Tool

NAMES = [one.name for one in ALL]
KEYS = (ModelKey("table", "truck"), ModelKey("table", "tracked"))
WEATHERED = "full weathered vehicle"


def book_with(sequence: str = WEATHERED) -> Book:
    tracked = model_of_kind("tracked", "1:72", kind=ModelKind.TRACKED, holder="handle")
    book = bare_book(bare_model(), tracked)
    return give_sequence(book, "table", ["truck", "tracked"], sequence).book


def models(book: Book) -> list[Model]:
    return list(book.projects[0].models)


def done(book: Book, model: str, *steps: str) -> Book:
    """Return the book with steps of a model done, one a day."""
    facts = tuple(
        Logged(
            model=model,
            step=step,
            start=moment_of(at("2031-02-01 18:00") + day * 1440, ZONE),
            end=moment_of(at("2031-02-01 18:20") + day * 1440, ZONE),
        )
        for day, step in enumerate(steps)
    )
    project = book.projects[0]
    return replace(book, projects=(replace(project, log=(*project.log, *facts)),))


@pytest.mark.parametrize("name", NAMES)
def test_taken_out_again_the_book_is_as_before(name: str) -> None:
    book = book_with(name)
    tried = 0
    for offer in possible(book, KEYS):
        if offer.out or isinstance(offer.change, PartsChange):
            continue
        tried += 1
        new = change_orders(book, offer.models, offer.change).book
        assert new != book
        assert not find(new), offer.change
        assert difference(new, ALL[NAMES.index(name)]) == ()  # the sequence has nothing new
        back = change_orders(new, offer.models, offer.change, out=True).book
        assert models(back) == models(book), offer.change
    assert tried >= 4


@pytest.mark.parametrize("name", NAMES)
def test_parts_glued_first_and_taken_apart_again_are_as_before(name: str) -> None:
    book = book_with(name)
    glued = change_orders(book, KEYS[1:], PartsChange.TOGETHER).book
    (part,) = models(glued)[1].parts
    assert [place.name for place in part.places][2:] == ["running gear", "tracks", "tools"]
    assert not find(glued)
    assert Stage.JOIN not in [step.stage for step in models(glued)[1].steps]
    back = change_orders(glued, KEYS[1:], PartsChange.APART).book
    assert models(back) == models(book)


def test_running_gear_that_is_glued_on_still_gets_its_colour() -> None:
    glued = change_orders(book_with(), KEYS[1:], PartsChange.TOGETHER).book
    steps = {step.id: step for step in models(glued)[1].steps}
    assert steps["running-gear"].applications[0].places == ("body/running gear", "body/tracks")
    assert "body/tracks" not in steps["chips"].applications[0].places


def test_a_stock_that_has_what_is_needed_gives_it() -> None:
    own = Coating(name="my fluid", family=Family.CHIPPING_FLUID)
    book = book_with("quick table-top")
    book = replace(book, coatings=(*book.coatings, own))
    new = change_orders(book, KEYS, NamedChange.CHIPPING).book
    fluids = [
        application.coating
        for step in models(new)[0].steps
        if step.stage is Stage.CHIP_FLUID
        for application in step.applications
    ]
    assert fluids == ["my fluid"]
    assert "chipping fluid" not in {coating.name for coating in new.coatings}


def test_the_same_sequence_given_again_keeps_what_was_changed() -> None:
    new = change_orders(book_with("quick table-top"), KEYS, NamedChange.CHIPPING).book
    again = give_sequence(new, "table", ["truck", "tracked"], "quick table-top").book
    assert models(again) == models(new)
    other = give_sequence(new, "table", ["truck"], WEATHERED).book
    made = models(other)[0].made
    assert made is not None
    assert made.changes == ()


def test_what_a_person_changed_by_hand_stays() -> None:
    book = book_with()
    first = models(book)[0]
    looked = replace(
        first.steps[0],
        id="look",
        title="look it over",
        applications=(),
        touches=("body",),
        stage=Stage.CLEAN,
        tool=Tool.HAND,
    )
    longer = replace(first.steps[1], title="my own way")
    changed = replace(first, steps=(first.steps[0], looked, longer, *first.steps[2:]))
    project = replace(book.projects[0], models=(changed, models(book)[1]))
    book = replace(book, projects=(project,))
    new = change_orders(book, KEYS, NamedChange.NO_DECALS).book
    steps = models(new)[0].steps
    assert [step.id for step in steps[:3]] == [first.steps[0].id, "look", longer.id]
    assert steps[2].title == "my own way"
    assert Stage.DECAL not in [step.stage for step in steps]
    back = change_orders(new, KEYS, NamedChange.NO_DECALS, out=True).book
    assert models(back) == models(book)


def test_what_was_begun_keeps_its_form_and_the_rest_changes() -> None:
    book = done(book_with(), "truck", "prime-airbrush")
    new = change_orders(book, KEYS, NamedChange.BRUSH).book
    steps = {step.id: step for step in models(new)[0].steps}
    assert steps["prime-airbrush"].tool is Tool.AIRBRUSH
    assert "prime-brush" not in steps
    assert {step.tool for name, step in steps.items() if name != "prime-airbrush"}.isdisjoint(
        {Tool.AIRBRUSH}
    )
    assert "prime-brush" in {step.id for step in models(new)[1].steps}
    back = change_orders(new, KEYS, NamedChange.BRUSH, out=True).book
    assert models(back) == models(book)


def test_what_is_done_and_would_be_gone_is_refused_with_its_name() -> None:
    book = done(book_with(), "truck", "prime-airbrush", "base-airbrush")
    with pytest.raises(Refused, match=r"Base colour.*logbook") as refused:
        change_orders(book, KEYS, NamedChange.CHIPPING)
    assert refused.value.place.startswith("truck")


def test_a_model_without_a_sequence_has_its_own_order_saved() -> None:
    book = book_with()
    own = replace(models(book)[0], made=None)
    book = replace(book, projects=(replace(book.projects[0], models=(own, models(book)[1])),))
    new = change_orders(book, KEYS[:1], NamedChange.NO_DECALS).book
    made = models(new)[0].made
    assert made is not None
    assert made.sequence == "order of truck"
    assert made.changes == (NamedChange.NO_DECALS,)
    assert not find(new)
    back = change_orders(new, KEYS[:1], NamedChange.NO_DECALS, out=True).book
    assert models(back)[0].steps == own.steps


def test_a_change_that_one_cannot_take_changes_none() -> None:
    book = book_with("figure")
    with pytest.raises(Refused, match="no base colour"):
        change_orders(book, KEYS, NamedChange.CHIPPING)
    assert NamedChange.CHIPPING not in {offer.change for offer in possible(book, KEYS)}


def test_nobody_without_an_airbrush_is_offered_one() -> None:
    tracked = model_of_kind("tracked", "1:72", kind=ModelKind.TRACKED, holder="handle")
    book = bare_book(bare_model(), tracked, airbrushes=0)
    book = give_sequence(book, "table", ["truck", "tracked"], WEATHERED).book
    assert NamedChange.AIRBRUSH not in {offer.change for offer in possible(book, KEYS)}
    with pytest.raises(Refused, match="no airbrush"):
        change_orders(book, KEYS, NamedChange.AIRBRUSH)


@pytest.mark.parametrize("name", demos.names())
def test_orders_of_a_persons_own_are_changed_soundly_and_back(name: str) -> None:
    """The demonstrations follow no sequence; enamel takes no waterborne coat, and that is told."""
    book = demos.read(name).book
    known = {finding.key for finding in find(book)}
    for project in book.projects:
        model = project.models[0]
        keys = (ModelKey(project.name, model.name),)
        tried = [one for one in possible(book, keys) if not isinstance(one.change, PartsChange)]
        assert tried
        for offer in tried:
            new = change_orders(book, keys, offer.change).book
            fresh = [one for one in find(new) if one.key not in known]
            assert not [one for one in fresh if "enamel" not in one.message], offer.change
            back = change_orders(new, keys, offer.change, out=True).book
            steps = back.project(project.name).model(model.name).steps
            assert [normal(model, step) for step in steps] == [
                normal(model, step) for step in model.steps
            ], offer.change
