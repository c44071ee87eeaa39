"""Stacks follow the working order; what solvents reach; choices; what is done already."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime

import pytest
from coat_books import book_of, coat, part, steps_of, work

from planner.layers.coat_stack import Layer, reached, stack_of, walk
from planner.layers.disputed_choices import choices
from planner.layers.findings import find
from planner.layers.requirement import requirement
from planner.layers.solvent_strength import strength_of
from planner.values.book import Book
from planner.values.coating import State
from planner.values.mix import Mix, Portion
from planner.values.project import Logged
from planner.values.step import Application, Minutes, Role, Stage, Step, Tool

PRIME = coat(Stage.PRIME, "grey primer", name="prime")
JOIN = Step(
    id="join",
    stage=Stage.JOIN,
    applications=(Application(places=("hull/deck", "track/links"), coating="cement"),),
    tool=Tool.HAND,
    minutes=Minutes(fixed=5),
    scraped=True,
)


def _stacks(book: Book) -> dict[str, list[tuple[str, int]]]:
    project = book.projects[0]
    stacks = stack_of(book, project, project.models[0])
    return {place: [(film.step.id, film.coat) for film in films] for place, films in stacks.items()}


def test_each_place_has_its_own_films_from_the_plastic_up() -> None:
    book = book_of(
        PRIME,
        coat(Stage.BASE, "acrylic", "hull/deck", name="base", coats=2),
        work(Stage.MASK, "hull/deck"),
        coat(Stage.MATTE, "matte clear", "hull", name="matte"),
        parts=(part("hull", "deck", "side", "seat"),),
    )
    assert _stacks(book) == {
        "hull/deck": [("prime", 1), ("base", 1), ("base", 2), ("matte", 1)],
        "hull/side": [("prime", 1), ("matte", 1)],
        "hull/seat": [("prime", 1), ("matte", 1)],
    }


@pytest.mark.parametrize("behind", [(), (coat(Stage.BASE, "acrylic", name="base"),)])
def test_scraping_takes_every_film_off_a_face(behind: tuple[Step, ...]) -> None:
    both = (part("hull", "deck", "side"), part("track", "links"))
    prime = coat(Stage.PRIME, "grey primer", "hull", "track", name="prime")
    stacks = _stacks(book_of(prime, JOIN, *behind, parts=both))
    late = [(step.id, 1) for step in behind]
    assert stacks["hull/deck"] == [("join", 1), *late]
    assert stacks["hull/side"] == [("prime", 1), *late]
    assert stacks["track/links"] == [("join", 1)]


def test_a_model_without_steps_is_bare() -> None:
    book = book_of()
    assert _stacks(book) == {"hull/deck": []}
    assert find(book) == ()


def test_every_moment_sees_what_lies_before_it_only() -> None:
    book = book_of(PRIME, coat(Stage.BASE, "acrylic", name="base", coats=2), work(Stage.TURN))
    project = book.projects[0]
    seen = [len(m.stack("hull/deck")) for m in walk(book, project, project.models[0])]
    assert seen == [0, 1, 3]


def _films(*steps: Step) -> tuple[Layer, ...]:
    book = book_of(*steps)
    project = book.projects[0]
    return stack_of(book, project, project.models[0])["hull/deck"]


def test_what_a_solvent_reaches() -> None:
    base = coat(Stage.BASE, "acrylic", name="base")
    seal = coat(Stage.VARNISH, "gloss clear", name="seal", role=Role.SEAL)
    bar = coat(Stage.VARNISH, "gloss clear", name="bar", role=Role.BARRIER)
    late = coat(Stage.CAMO, "acrylic", name="late")
    for steps, strong, names in (
        ((PRIME, base), False, ["base", "prime"]),
        ((PRIME, base, seal, late), False, ["late", "seal"]),
        ((PRIME, base, seal, late), True, ["late", "seal", "base", "prime"]),
        ((PRIME, base, bar, late), True, ["late", "bar"]),
    ):
        assert [film.step.id for film in reached(_films(*steps), strong)] == names


def test_a_mix_is_as_strong_as_its_strongest_portion() -> None:
    portions = (Portion(coating="acrylic", parts=9), Portion(coating="strong thinner", parts=1))
    book = book_of(PRIME, mixes=(Mix(name="hot", portions=portions),))
    assert strength_of(book, "acrylic") == 0
    assert strength_of(book, "hot") == strength_of(book, "strong thinner") == 4


def _asked(step: Step, below: str, laid_by: Step | None = None, **between: bool) -> State | None:
    book = book_of(PRIME)
    coating = book.coating(step.applications[0].coating) if step.applications else None
    asked = requirement(step, coating, book.coating(below), laid_by, **between)
    return asked.state if asked else None


def test_what_each_operation_waits_for() -> None:
    """The gates between layers of common practice; ISO 9117-6 print-free for tape."""
    wash = coat(Stage.OIL_WASH, "oil", name="wash")
    clear = coat(Stage.VARNISH, "gloss clear", name="clear", role=Role.SEAL)
    assert _asked(coat(Stage.CAMO, "acrylic"), "acrylic") is State.DRY_TO_RECOAT
    assert _asked(work(Stage.MASK), "acrylic") is State.PRINT_FREE
    assert _asked(coat(Stage.DECAL, "decal sheet"), "gloss clear") is State.SOLVENT_SAFE
    assert _asked(wash, "gloss clear", clear) is State.SOLVENT_SAFE
    assert _asked(coat(Stage.CAMO, "lacquer"), "enamel") is State.DRY_THROUGH
    assert _asked(coat(Stage.MATTE, "matte clear"), "oil") is State.DRY_THROUGH
    assert _asked(coat(Stage.CHIP_FLUID, "fluid"), "acrylic", PRIME) is State.DRY_THROUGH
    assert _asked(coat(Stage.CHIP_FLUID, "fluid"), "gloss clear", clear) is State.DRY_TO_RECOAT
    assert _asked(work(Stage.TURN), "acrylic") is State.DRY_TO_HANDLE
    assert _asked(work(Stage.UNMASK), "acrylic") is None


def test_what_lies_between_shelters_and_bars() -> None:
    wash, lacquer = coat(Stage.OIL_WASH, "oil"), coat(Stage.CAMO, "lacquer")
    matte = coat(Stage.MATTE, "matte clear")
    assert _asked(wash, "acrylic", sheltered=True) is None
    assert _asked(lacquer, "enamel", sheltered=True) is State.DRY_THROUGH
    assert _asked(lacquer, "enamel", sheltered=True, barred=True) is None
    assert _asked(matte, "enamel", sheltered=True, barred=True) is State.DRY_THROUGH


def test_disputed_edges_are_choices_and_never_findings() -> None:
    """Wash and decals, chips and wash, gloss or flat, pigments: practitioners disagree."""
    clear = coat(Stage.VARNISH, "gloss clear", name="clear", role=Role.SEAL)
    wash = coat(Stage.OIL_WASH, "oil", name="wash")
    chips = coat(Stage.CHIP, "acrylic", name="chips")
    bed = coat(Stage.VARNISH, "gloss clear", name="bed", role=Role.DECAL_BED)
    decals = coat(Stage.DECAL, "decal sheet", name="decals")
    matte = coat(Stage.MATTE, "matte clear", name="matte")
    powder = coat(Stage.PIGMENT, "powder", name="powder")
    seal = replace(clear, id="seal")
    one = book_of(PRIME, chips, clear, wash, bed, decals, matte, powder)
    other = book_of(PRIME, bed, decals, seal, wash, chips, powder, matte)
    assert find(one) == find(other) == ()
    chosen = [{choice.question: choice.chosen for choice in choices(b)} for b in (one, other)]
    assert len(chosen[0]) == 6
    assert chosen[0].keys() == chosen[1].keys()
    for question in ("wash before or after the decals?", "painted chips before or after the wash?"):
        assert chosen[0][question] != chosen[1][question]
    assert chosen[0]["pigments fixed, or left as they are?"] == "pigments left unsealed"
    assert chosen[1]["pigments fixed, or left as they are?"] == "pigments fixed or coated"
    assert chosen[0]["the oil wash wiped back, or left?"] == "left as it is"
    assert chosen[0]["a clear coat over the last wash or dust?"] == "a clear coat over it"
    for choice in choices(one):
        assert len(choice.sides) == 2
        assert choice.sides[0][0] == choice.chosen
        assert all(reason for _, reason in choice.sides)


def test_a_flat_coat_below_a_grime_wash_is_a_choice_too() -> None:
    flat = coat(Stage.VARNISH, "matte clear", name="flat", role=Role.SEAL)
    wash = coat(Stage.OIL_WASH, "oil", name="wash")
    book = book_of(PRIME, flat, wash)
    assert find(book) == ()
    chosen = {choice.question: choice.chosen for choice in choices(book)}
    assert chosen["gloss or flat below the wash?"] == "flat below it"
    assert chosen["a clear coat over the last wash or dust?"] == "no clear coat over it"


@pytest.mark.parametrize(
    ("steps", "chosen"),
    [
        (("edges", "matte"), "dry-brushing below it"),
        (("matte", "edges"), "dry-brushing over it"),
        (("matte", "edges", "matte-2"), "dry-brushing below it"),
    ],
)
def test_dry_brushing_over_the_last_coat_is_a_choice(steps: tuple[str, ...], chosen: str) -> None:
    """Metal edges go over it (common practice); colour is better held below it."""
    by_name = {
        "edges": coat(Stage.DRY_BRUSH, "acrylic", name="edges"),
        "matte": coat(Stage.MATTE, "matte clear", name="matte"),
        "matte-2": coat(Stage.MATTE, "matte clear", name="matte-2"),
    }
    book = book_of(PRIME, *(by_name[name] for name in steps))
    assert find(book) == ()
    answers = {choice.question: choice.chosen for choice in choices(book)}
    assert answers["dry-brushing below or over the last coat?"] == chosen


def test_a_wiped_wash_is_told_from_one_that_is_left() -> None:
    wash = coat(Stage.OIL_WASH, "oil", name="wash")
    clear = coat(Stage.VARNISH, "gloss clear", name="clear", role=Role.SEAL)
    for steps, chosen in (((wash, work(Stage.WIPE)), "wiped back"), ((wash,), "left as it is")):
        answers = {
            choice.question: choice.chosen for choice in choices(book_of(PRIME, clear, *steps))
        }
        assert answers["the oil wash wiped back, or left?"] == chosen


def test_what_is_done_already_has_no_mend() -> None:
    start = datetime(2031, 3, 4, 19, tzinfo=UTC)
    bare = book_of(coat(Stage.DETAIL, "acrylic", name="rim"))
    (found,) = find(bare)
    assert found.mend is not None
    log = (Logged(model="tender", step="rim", start=start, end=start.replace(hour=20)),)
    done = replace(bare, projects=(replace(bare.projects[0], log=log),))
    (found,) = find(done)
    assert found.mend is None


def test_a_sleeping_project_is_left_alone() -> None:
    bare = book_of(coat(Stage.DETAIL, "acrylic", name="rim"))
    asleep = replace(bare, projects=(replace(bare.projects[0], active=False),))
    assert find(bare)
    assert find(asleep) == ()


def test_a_mend_takes_what_the_stock_has() -> None:
    book = book_of(coat(Stage.DETAIL, "acrylic", name="rim"))
    (found,) = find(book)
    assert found.mend is not None
    mended = found.mend.apply(book)
    assert mended.coatings == book.coatings
    first = steps_of(mended)[0]
    assert (first.stage, first.applications[0].coating) == (Stage.PRIME, "grey primer")
    assert first.tool is Tool.AIRBRUSH


def test_a_mend_enters_what_the_stock_lacks() -> None:
    book = book_of(coat(Stage.DETAIL, "acrylic", name="rim"))
    poor = replace(book, coatings=tuple(c for c in book.coatings if "primer" not in c.name))
    (found,) = find(poor)
    assert found.mend is not None
    mended = found.mend.apply(poor)
    assert len(mended.coatings) == len(poor.coatings) + 1
    assert find(mended) == ()


def test_pressing_what_was_only_painted_is_told_and_left_out():
    """Paint under the name of decals leaves nothing to press, and no step to go ahead of."""
    book = book_of(
        PRIME,
        coat(Stage.DECAL, "acrylic", name="decals"),
        work(Stage.PRESS, name="press"),
    )
    (found,) = (one for one in find(book) if one.rule == "pressing without decals")
    assert found.mend is not None
    mended = found.mend.apply(book)
    assert "press" not in [step.id for step in steps_of(mended)]
    assert "pressing without decals" not in {one.rule for one in find(mended)}
